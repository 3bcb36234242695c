/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/week/menu.h"

#include "base/customs.h"
#include "ui/menus.h"

#include <glib/gi18n-lib.h>

static const LapMenuItem always[] = {
  { N_("_Add a class here"), "week.add-here" }, { N_("_Paste"), "week.paste" }, { NULL, NULL },
};
static const LapMenuItem one[] = {
  { N_("Cu_t"), "week.cut" }, { N_("_Copy"), "week.copy", TRUE }, { N_("_Duplicate"), "week.duplicate" }, { NULL, NULL },
};
static const LapMenuItem copied[] = { { N_("_Copy"), "week.copy", TRUE }, { NULL, NULL } };
static const LapMenuItem session[] = { { N_("_Open its session"), "week.enter", TRUE }, { NULL, NULL } };
static const LapMenuItem waiting[] = { { N_("P_lace it where there is room"), "week.enter" }, { NULL, NULL } };
static const LapMenuItem times[] = {
  { N_("_Earlier"), "week.earlier" }, { N_("_Later"), "week.later" }, { N_("Lo_nger"), "week.longer" },
  { N_("_Shorter"), "week.shorter" }, { N_("A day _before"), "week.day-before" }, { N_("A day a_fter"), "week.day-after" },
  { NULL, NULL },
};
static const LapMenuItem going[] = {
  { N_("Take _off the week"), "week.unplace" }, { N_("_Remove"), "week.remove" }, { NULL, NULL },
};
static const LapMenuItem dated[] = {
  { N_("_Cancel on this date"), "week.remove" }, { N_("As every _week again"), "week.as-always" }, { NULL, NULL },
};
static const LapMenuItem weekly[] = { { N_("Go to _every week"), "win.week-always", TRUE }, { NULL, NULL } };

static void
add_choice (GMenu *menu, const char *label, const char *action, const char *id)
{
  g_autoptr (GMenuItem) item = g_menu_item_new (label, NULL);

  g_menu_item_set_action_and_target (item, action, "s", id);
  g_menu_append_item (menu, item);
}

/* Who else could have it, and where else it could be. */
static void
add_choices (GMenu *menu, LapWeek *week)
{
  g_autoptr (GMenu) section = g_menu_new (), coaches = g_menu_new (), rooms = g_menu_new ();

  for (guint i = 0; i < lap_list_n (week->coaches); i++)
    add_choice (coaches, lap_coach_title (lap_list_nth (week->coaches, i)), "week.give",
                LAP_COACH (lap_list_nth (week->coaches, i))->id);
  for (guint i = 0; i < lap_list_n (week->rooms); i++)
    add_choice (rooms, lap_room_title (lap_list_nth (week->rooms, i)), "week.put",
                LAP_ROOM (lap_list_nth (week->rooms, i))->id);
  if (lap_list_n (week->coaches) > 0)
    g_menu_append_submenu (section, _("_Give it to"), G_MENU_MODEL (coaches));
  if (lap_list_n (week->rooms) > 0)
    g_menu_append_submenu (section, _("_Move it to"), G_MENU_MODEL (rooms));
  g_menu_append_section (menu, NULL, G_MENU_MODEL (section));
}

static void
add_copy_day (GMenu *menu, int day)
{
  g_autoptr (GMenu) section = g_menu_new (), days = g_menu_new ();
  /* Translators: %s is a day of the week; the other day follows in a list. */
  g_autofree char *label = g_strdup_printf (_("Copy all of %s to"), lap_words_label (&lap_days, day));

  for (int i = 0; i < LAP_N_DAYS; i++) {
    int other = lap_day_nth (lap_customs ().first_day, i);

    if (other != day)
      add_choice (days, lap_words_label (&lap_days, other), "week.copy-day", lap_words_id (&lap_days, other));
  }
  g_menu_append_submenu (section, label, G_MENU_MODEL (days));
  g_menu_append_section (menu, NULL, G_MENU_MODEL (section));
}

GMenu *
lap_week_menu_new (LapWeekScene *scene, int day)
{
  LapDocument *document = scene->document;
  GMenu *menu = g_menu_new ();
  LapClass *c = lap_week_scene_current (scene);
  gboolean has_date = lap_week_scene_date (scene) != 0, editable = lap_document_is_editable (document);

  if (c != NULL) {
    if (!lap_class_is_placed (c) && !has_date)
      lap_menu_add_section (menu, waiting, document);
    else if (c->session != NULL && *c->session != '\0')
      lap_menu_add_section (menu, session, document);
    lap_menu_add_section (menu, has_date ? copied : one, document);
    if (lap_class_is_placed (c))
      lap_menu_add_section (menu, times, document);
    if (editable)
      add_choices (menu, lap_week_scene_week (scene));
    lap_menu_add_section (menu, has_date ? dated : going, document);
  }
  lap_menu_add_section (menu, has_date ? weekly : always, document); /* on dates nothing is added: there it is every week */
  if (day >= 0 && !has_date && editable)
    add_copy_day (menu, day);
  return menu;
}
