/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/loads.h"

#include <glib/gi18n-lib.h>
#include <string.h>

#define K(kit) LAP_BIT (LAP_KIT_##kit)

static const guint32 weights = K (DUMBBELLS) | K (DUMBBELL) | K (KETTLEBELL) | K (BAR) | K (MEDICINE_BALL);
static const guint32 strengths = K (BAND) | K (LOOP_BAND);

/* The next number of *@text with digits and a decimal sign, NULL where there is none; *@text goes behind it. */
static char *
take_number (const char **text)
{
  const char *start = *text + strcspn (*text, "0123456789"), *end = start;

  while (g_ascii_isdigit (*end) || (strchr (".,", *end) != NULL && *end != '\0' && g_ascii_isdigit (end[1])))
    end++;
  *text = end;
  return end > start ? g_strndup (start, end - start) : NULL;
}

gboolean
lap_loads_of (const LapTask *task, LapLoads *loads)
{
  const char *text = task->load != NULL ? task->load : "";
  g_autofree char *low = NULL, *high = NULL;

  *loads = (LapLoads) { .unit = task->kit & weights ? _("kg") : "" };
  if ((task->kit & (weights | strengths)) == 0)
    return FALSE;
  low = take_number (&text);
  high = low != NULL ? take_number (&text) : NULL;
  if (high != NULL) {
    loads->texts[LAP_LOAD_EASIER] = g_strconcat (low, text, NULL);
    loads->texts[LAP_LOAD_HARDER] = g_strconcat (high, text, NULL);
  } else if (task->load != NULL && *task->load != '\0') {
    loads->texts[LAP_LOAD_AS_SHOWN] = g_strdup (task->load);
  }
  return TRUE;
}

void
lap_loads_clear (LapLoads *loads)
{
  for (guint i = 0; i < LAP_N_LOADS; i++)
    g_clear_pointer (&loads->texts[i], g_free);
}
