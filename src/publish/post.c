/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "publish/post.h"

#include "place/formula.h"
#include "place/safety.h"
#include "publish/chapters.h"

#include <glib/gi18n-lib.h>

/* "30 minutes · mat · with Maren". */
static void
add_about (GString *text, const LapTimeline *timeline)
{
  const LapSession *session = timeline->session;
  int minutes = MAX (1, (timeline->length + 30) / 60);
  guint32 kit = lap_kit_mask (session->kit);
  g_autofree char *kit_words = lap_words_join (&lap_kit_words, kit);
  g_autofree char *focus = lap_words_join (&lap_regions,
                                           lap_words_mask (&lap_regions, (const char * const *) session->focus));

  g_string_append_printf (text, g_dngettext (GETTEXT_PACKAGE, "%d minute", "%d minutes", minutes), minutes);
  g_string_append_printf (text, " · %s", *focus != '\0' ? focus : _("whole body"));
  g_string_append_printf (text, " · %s", kit != 0 ? kit_words : _("no kit"));
  if (session->coach != NULL && *session->coach != '\0') {
    g_autofree char *with = g_strdup_printf (_("with %s"), session->coach);

    g_string_append_printf (text, " · %s", with);
  }
  g_string_append_c (text, '\n');
}

/* Each name once, in the order they come. */
static char *
names_of (const LapTimeline *timeline, const LapStretch *stretch)
{
  g_autoptr (GPtrArray) names = g_ptr_array_new ();
  g_autoptr (GHashTable) seen = g_hash_table_new (g_str_hash, g_str_equal);

  for (guint i = 0; i < stretch->n_turns; i++) {
    const char *name = lap_task_name (&timeline->tasks[timeline->turns[stretch->turn + i].task]);

    if (g_hash_table_add (seen, (gpointer) name))
      g_ptr_array_add (names, (gpointer) name);
  }
  g_ptr_array_add (names, NULL);
  return g_strjoinv (", ", (char **) names->pdata);
}

static void
add_part (GString *text, const LapTimeline *timeline, guint part)
{
  const LapStretch *stretch = &timeline->parts[part];
  g_autofree char *length = lap_duration_text (stretch->end - stretch->start);
  g_autofree char *names = names_of (timeline, stretch);

  if (*names == '\0')
    return;
  g_string_append_printf (text, "\n%s, %s", lap_part_title (stretch->part), length);
  if (stretch->part->kind == LAP_PART_MAIN) {
    g_autofree char *formula = lap_formula_text (timeline, part);

    g_string_append_printf (text, ": %s", formula);
  }
  g_string_append_printf (text, "\n%s\n", names);
}

/* "Music: …", where there is some. */
static void
add_known (GString *text, const char *format, const char *value)
{
  if (value == NULL || *value == '\0')
    return;
  g_string_append_c (text, '\n');
  g_string_append_printf (text, format, value);
  g_string_append_c (text, '\n');
}

static gboolean
add_all (GString *text, const LapPublication *what, GError **error)
{
  const LapTimeline *timeline = what->timeline;

  g_string_append_printf (text, "%s\n", timeline->session->title);
  add_about (text, timeline);
  for (guint i = 0; i < timeline->n_parts; i++)
    add_part (text, timeline, i);
  g_string_append_printf (text, "\n%s\n", _("Chapters"));
  if (!lap_chapter_list_add (text, what, error))
    return FALSE;
  add_known (text, _("Music: %s"), timeline->session->music);
  add_known (text, "%s", timeline->session->link);
  g_string_append_printf (text, "\n%s %s\n", lap_safety_first (), lap_safety_more ());
  return TRUE;
}

gboolean
lap_post_write (const LapPublication *what, const char *suffix, LapOutput *output, GError **error)
{
  GString *text = g_string_new (NULL);

  if (add_all (text, what, error))
    return lap_output_write_text (output, text, error);
  g_string_free (text, TRUE);
  return FALSE;
}
