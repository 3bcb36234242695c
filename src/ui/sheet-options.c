/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/sheet-options.h"

#include "ui/settings.h"

#include <glib/gi18n-lib.h>
#include <string.h>

#define KEY "sheets"

/* The members of a remembered choice, as a{si}. */
static const struct {
  const char *name;
  gsize offset;
} members[] = {
#define MEMBER(name, member) { name, G_STRUCT_OFFSET (LapSheetChoice, member) }
  MEMBER ("paper", options.paper), MEMBER ("landscape", options.landscape), MEMBER ("ink", options.ink),
  MEMBER ("hide", options.hide), MEMBER ("body", options.body), MEMBER ("unfolded", options.unfolded),
  MEMBER ("by-room", options.by_room), MEMBER ("cards", options.cards), MEMBER ("dated", dated), MEMBER ("pieces", pieces),
#undef MEMBER
};

#define DECIMETRES "decimetres" /* the distance, which is no whole number of metres */

/* What a settings file from elsewhere holds is kept within what there is. */
static void
make_sound (LapSheetChoice *choice)
{
  LapSheetOptions *options = &choice->options;

  options->paper = CLAMP ((int) options->paper, 0, (int) lap_papers.n - 1);
  options->ink = CLAMP ((int) options->ink, 0, (int) lap_inks.n - 1);
  options->hide &= LAP_BIT (lap_sheet_things.n) - 1;
  options->cards = options->cards == 1 || options->cards == 2 || options->cards == 4 ? options->cards : 0;
  options->distance = CLAMP (options->distance, 0, 20);
  choice->pieces = CLAMP (choice->pieces, -1, (int) lap_papers.n - 1);
}

LapSheetChoice
lap_sheet_choice_load (const LapSheet *sheet)
{
  LapSheetChoice choice = { .dated = TRUE, .pieces = -1 };
  g_autoptr (GVariant) all = lap_settings_value (KEY, g_variant_new_array (G_VARIANT_TYPE ("{sa{si}}"), NULL, 0));
  g_autoptr (GVariant) mine = g_variant_lookup_value (all, sheet->id, G_VARIANT_TYPE ("a{si}"));
  gboolean week = g_str_equal (sheet->id, "week");
  int decimetres = 0;

  choice.options.paper = week || g_str_equal (sheet->id, "poster") ? LAP_PAPER_A3 : LAP_PAPER_A4;
  choice.options.landscape = week;
  if (mine == NULL)
    return choice;
  for (guint i = 0; i < G_N_ELEMENTS (members); i++) {
    int value;

    if (g_variant_lookup (mine, members[i].name, "i", &value))
      memcpy ((char *) &choice + members[i].offset, &value, sizeof value);
  }
  if (g_variant_lookup (mine, DECIMETRES, "i", &decimetres))
    choice.options.distance = decimetres / 10.0;
  make_sound (&choice);
  return choice;
}

void
lap_sheet_choice_keep (const LapSheet *sheet, const LapSheetChoice *choice)
{
  g_autoptr (GVariant) all = lap_settings_value (KEY, g_variant_new_array (G_VARIANT_TYPE ("{sa{si}}"), NULL, 0));
  g_autoptr (GVariantBuilder) out = g_variant_builder_new (G_VARIANT_TYPE ("a{sa{si}}"));
  GVariantIter iter;
  const char *id;
  GVariant *other;

  g_variant_iter_init (&iter, all);
  while (g_variant_iter_loop (&iter, "{&s@a{si}}", &id, &other))
    if (!g_str_equal (id, sheet->id))
      g_variant_builder_add (out, "{s@a{si}}", id, other);
  g_variant_builder_open (out, G_VARIANT_TYPE ("{sa{si}}"));
  g_variant_builder_add (out, "s", sheet->id);
  g_variant_builder_open (out, G_VARIANT_TYPE ("a{si}"));
  for (guint i = 0; i < G_N_ELEMENTS (members); i++) {
    int value;

    memcpy (&value, (const char *) choice + members[i].offset, sizeof value);
    g_variant_builder_add (out, "{si}", members[i].name, value);
  }
  g_variant_builder_add (out, "{si}", DECIMETRES, (int) (choice->options.distance * 10 + 0.5));
  g_variant_builder_close (out);
  g_variant_builder_close (out);
  lap_settings_keep (KEY, g_variant_builder_end (out));
}

LapSheetOptions
lap_sheet_choice_options (const LapSheetChoice *choice, char **date)
{
  LapSheetOptions options = choice->options;
  g_autoptr (GDateTime) now = choice->dated ? g_date_time_new_now_local () : NULL;

  /* Translators: a day on a printed sheet, as g_date_time_format() takes it. */
  *date = now != NULL ? g_date_time_format (now, _("%-d %B %Y")) : NULL;
  options.date = *date;
  return options;
}
