/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/warnings-text.h"

#include <glib/gi18n-lib.h>

static void
add_warning (GString *text, const LapCheckup *checkup, const LapWarning *warning, guint n)
{
  g_autofree char *message = lap_warning_message (checkup, warning), *clock = lap_warning_clock (warning);
  g_autofree char *why = lap_warning_why (checkup, warning);
  const char *rank = lap_words_label (&lap_severities, warning->severity), *source = lap_warning_source (warning);

  g_string_append_c (text, '\n');
  if (*clock != '\0')
    /* Translators: number of a warning, its rank, the time it is about, and what it says. */
    g_string_append_printf (text, _("%1$u. %2$s, %3$s: %4$s"), n, rank, clock, message);
  else
    /* Translators: number of a warning, its rank, and what it says. */
    g_string_append_printf (text, _("%1$u. %2$s: %3$s"), n, rank, message);
  /* Translators: why a warning matters, and who says so. */
  g_string_append_printf (text, _("\n   Why: %1$s\n   Source: %2$s\n"), why, source);
}

char *
lap_warnings_counts (const LapCheckup *checkup)
{
  guint stops = lap_checkup_count (checkup, LAP_SEVERITY_STOP), notes = lap_checkup_count (checkup, LAP_SEVERITY_NOTE);
  guint warnings = lap_checkup_count (checkup, LAP_SEVERITY_WARNING);
  g_autoptr (GPtrArray) words = g_ptr_array_new_with_free_func (g_free);

  if (stops > 0)
    g_ptr_array_add (words, g_strdup_printf (ngettext ("%u stop", "%u stops", stops), stops));
  if (warnings > 0)
    g_ptr_array_add (words, g_strdup_printf (ngettext ("%u warning", "%u warnings", warnings), warnings));
  if (notes > 0)
    g_ptr_array_add (words, g_strdup_printf (ngettext ("%u note", "%u notes", notes), notes));
  g_ptr_array_add (words, NULL);
  return lap_join ((const char * const *) words->pdata);
}

char *
lap_warnings_text (const LapCheckup *checkup, const char *title)
{
  GString *text = g_string_new (NULL);
  guint n = lap_checkup_n (checkup), told = 0, left = 0;

  /* Translators: the title of a session or week. */
  g_string_append_printf (text, _("Warnings: %s\n"), title);
  for (guint i = 0; i < n; i++) {
    const LapWarning *warning = lap_checkup_nth (checkup, i);

    if (warning->fine)
      continue;
    if (told < LAP_WARNINGS_TEXT_MOST)
      add_warning (text, checkup, warning, ++told);
    else
      left++;
  }
  if (told == 0)
    g_string_append (text, _("\nNone.\n"));
  if (left > 0)
    g_string_append_printf (text, ngettext ("\n%u more.\n", "\n%u more.\n", left), left);
  return g_string_free (text, FALSE);
}
