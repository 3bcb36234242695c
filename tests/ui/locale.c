/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The windows where a day has twelve hours twice, a week begins on Sunday and a room is measured in feet: in a locale
 * of the United States made by localedef(1). Outside: Unicode CLDR 42, supplemental data: timeData h, weekData sun,
 * measurementData US. The foot: 0.3048 m (ISO 80000-3).
 */
#include "support/locales.h"
#include "ui/windows.h"

#include <string.h>

/* All that labels and fields in @widget say. */
static void
collect (GtkWidget *widget, GString *said)
{
  if (GTK_IS_LABEL (widget))
    g_string_append_printf (said, "%s\n", gtk_label_get_text (GTK_LABEL (widget)));
  else if (GTK_IS_EDITABLE (widget))
    g_string_append_printf (said, "%s\n", gtk_editable_get_text (GTK_EDITABLE (widget)));
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL; child = gtk_widget_get_next_sibling (child))
    collect (child, said);
}

static char *
said_in (gpointer widget)
{
  g_autoptr (GString) said = g_string_new ("\n");

  collect (widget, said);
  return g_string_free (g_steal_pointer (&said), FALSE);
}

static void
assert_said (const char *said, const char *words)
{
  if (strstr (said, words) == NULL)
    g_test_message ("without “%s”:\n%s", words, said);
  g_assert_nonnull (strstr (said, words));
}

/* What a dialog says that @action opens. */
static char *
said_by_dialog (LapWindow *window, const char *action)
{
  g_autoptr (GtkWindow) dialog = NULL;
  char *said;

  gtk_widget_activate_action (GTK_WIDGET (window), action, NULL);
  windows_settle (window);
  dialog = windows_dialog (window);
  said = said_in (dialog);
  gtk_window_close (dialog);
  windows_settle (window);
  return said;
}

static void
test_week (void)
{
  g_autofree char *path = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", "kelpline-week.lapweek", NULL);
  g_autofree char *said = NULL, *properties = NULL;
  LapWindow *window = windows_open (path);

  /* Two of its classes clash on Wednesday from 17:40; the studio is open till 21:30. */
  said = said_in (window);
  assert_said (said, "5:40\xc2\xa0PM to 6:15\xc2\xa0PM");
  g_assert_null (strstr (said, "17:40"));
  properties = said_by_dialog (window, "win.properties");
  assert_said (properties, "9:30\xc2\xa0PM");
  windows_close (window);
}

static void
test_session (void)
{
  LapWindow *window = windows_demo ();
  g_autofree char *properties = said_by_dialog (window, "win.properties");

  assert_said (properties, "Feet");
  g_assert_null (strstr (properties, "Metres"));
  /* The demo's place is 2.5 m by 2.6 m. */
  assert_said (properties, "\n8.2\n");
  assert_said (properties, "\n8.5\n");
  windows_close (window);
}

int
main (int argc, char **argv)
{
  locales_begin ("en_US.UTF-8", NULL);
  g_setenv ("LC_ALL", "en_US.UTF-8", TRUE);
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/locale/week", test_week);
  g_test_add_func ("/ui/locale/session", test_session);
  return g_test_run ();
}
