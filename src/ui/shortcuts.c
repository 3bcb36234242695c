/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/shortcuts.h"

#include <glib/gi18n-lib.h>
#include <string.h>

/* A sign that one layout has with Shift another has without: "+" is Shift and "=" in America, a key of its own in
 * Germany. So no key of a sign is bound with Shift, which would be another deed here than there; those of the number
 * pad are the same everywhere. */
static const LapShortcut shortcuts[] = {
  { LAP_SCOPE_WINDOW, N_("Session"), N_("New"), "app.new", "<Control>n" },
  { LAP_SCOPE_WINDOW, N_("Session"), N_("Open"), "app.open", "<Control>o" },
  { LAP_SCOPE_WINDOW, N_("Session"), N_("Open another file"), "app.open-file", "<Control><Shift>o" },
  { LAP_SCOPE_WINDOW, N_("Session"), N_("Save"), "win.save", "<Control>s" },
  { LAP_SCOPE_WINDOW, N_("Session"), N_("Save as"), "win.save-as", "<Control><Shift>s" },
  { LAP_SCOPE_WINDOW, N_("Session"), N_("Properties"), "win.properties", "<Alt>Return" },
  { LAP_SCOPE_WINDOW, N_("Session"), N_("Export PDF"), "win.export", "<Control>e" },
  { LAP_SCOPE_WINDOW, N_("Session"), N_("Export for film and web"), "win.publish", "<Control><Shift>e" },
  { LAP_SCOPE_WINDOW, N_("Session"), N_("Print a sheet"), "win.print", "<Control>p" },
  { LAP_SCOPE_WINDOW, N_("Session"), N_("Copy the warnings as text"), "win.copy-warnings", "<Control><Shift>c" },
  { LAP_SCOPE_WINDOW, N_("Session"), N_("Undo"), "win.undo", "<Control>z" },
  { LAP_SCOPE_WINDOW, N_("Session"), N_("Redo"), "win.redo", "<Control><Shift>z <Control>y" },
  { LAP_SCOPE_WINDOW, N_("Score"), N_("Zoom in"), "win.zoom-in", "<Control>plus <Control>equal" },
  { LAP_SCOPE_WINDOW, N_("Score"), N_("Zoom out"), "win.zoom-out", "<Control>minus" },
  { LAP_SCOPE_WINDOW, N_("Score"), N_("See the whole session"), "win.zoom-fit", "<Control>0" },
  { LAP_SCOPE_WINDOW, N_("Score"), N_("See the round"), "win.zoom-round", "<Control>9" },
  { LAP_SCOPE_WINDOW, N_("Score"), N_("See what is selected"), "win.zoom-selection", "<Control>8" },
  { LAP_SCOPE_WINDOW, N_("Score"), N_("All to one scale"), "win.unfold", "<Control>7" },
  { LAP_SCOPE_WINDOW, N_("Score"), N_("Type a formula"), "win.formula", "<Control>t" },
  { LAP_SCOPE_WINDOW, N_("Score"), N_("To the blocks"), "win.blocks", "F6" },
  { LAP_SCOPE_WINDOW, N_("Score"), N_("Choose the exercise of the block"), "win.exercise", "F2" },
  { LAP_SCOPE_OVERVIEW, N_("Overview"), N_("A little to the left"), "overview.left", "Left KP_Left" },
  { LAP_SCOPE_OVERVIEW, N_("Overview"), N_("A little to the right"), "overview.right", "Right KP_Right" },
  { LAP_SCOPE_OVERVIEW, N_("Overview"), N_("On by what is in view"), "overview.on", "Page_Down KP_Page_Down" },
  { LAP_SCOPE_OVERVIEW, N_("Overview"), N_("Back by what is in view"), "overview.back", "Page_Up KP_Page_Up" },
  { LAP_SCOPE_OVERVIEW, N_("Overview"), N_("To the start of the session"), "overview.first", "Home KP_Home" },
  { LAP_SCOPE_OVERVIEW, N_("Overview"), N_("To the end of the session"), "overview.last", "End KP_End" },
  { LAP_SCOPE_MARKS, N_("Marks on the clock"), N_("To the mark on the left"), "marks.left", "Left KP_Left" },
  { LAP_SCOPE_MARKS, N_("Marks on the clock"), N_("To the mark on the right"), "marks.right", "Right KP_Right" },
  { LAP_SCOPE_MARKS, N_("Marks on the clock"), N_("To the first mark"), "marks.first", "Home KP_Home" },
  { LAP_SCOPE_MARKS, N_("Marks on the clock"), N_("To the last mark"), "marks.last", "End KP_End" },
  { LAP_SCOPE_MARKS, N_("Marks on the clock"), N_("To its warning, or the list of its warnings"), "marks.open",
    "Return KP_Enter space" },
  { LAP_SCOPE_SCORE, N_("Blocks"), N_("To the block on the left"), "score.left", "Left" },
  { LAP_SCOPE_SCORE, N_("Blocks"), N_("To the block on the right"), "score.right", "Right" },
  { LAP_SCOPE_SCORE, N_("Blocks"), N_("To the first block"), "score.first", "Home" },
  { LAP_SCOPE_SCORE, N_("Blocks"), N_("To the last block"), "score.last", "End" },
  { LAP_SCOPE_SCORE, N_("Blocks"), N_("Select the block on the left, too"), "score.extend-left", "<Shift>Left" },
  { LAP_SCOPE_SCORE, N_("Blocks"), N_("Select the block on the right, too"), "score.extend-right", "<Shift>Right" },
  { LAP_SCOPE_SCORE, N_("Blocks"), N_("Select the whole part"), "score.all", "<Control>a" },
  { LAP_SCOPE_SCORE, N_("Blocks"), N_("Select nothing"), "score.clear", "Escape" },
  { LAP_SCOPE_SCORE, N_("Blocks"), N_("To what can be changed of it"), "win.fields", "Return KP_Enter" },
  { LAP_SCOPE_REHEARSE, N_("Rehearsal"), N_("Begin, hold, go on"), "rehearse.hold", "space period b F5" },
  { LAP_SCOPE_REHEARSE, N_("Rehearsal"), N_("On by one"), "rehearse.on", "Right Page_Down" },
  { LAP_SCOPE_REHEARSE, N_("Rehearsal"), N_("Back by one"), "rehearse.back", "Left Page_Up" },
  { LAP_SCOPE_REHEARSE, N_("Rehearsal"), N_("To the next part"), "rehearse.next-part", "<Control>Right Down" },
  { LAP_SCOPE_REHEARSE, N_("Rehearsal"), N_("To the part before"), "rehearse.previous-part", "<Control>Left Up" },
  { LAP_SCOPE_REHEARSE, N_("Rehearsal"), N_("To the beginning"), "rehearse.first", "Home" },
  { LAP_SCOPE_REHEARSE, N_("Rehearsal"), N_("Take the block again"), "rehearse.retake", "r" },
  { LAP_SCOPE_REHEARSE, N_("Rehearsal"), N_("Mark the take as good"), "rehearse.good", "g" },
  { LAP_SCOPE_REHEARSE, N_("Rehearsal"), N_("All is said"), "rehearse.said", "s" },
  { LAP_SCOPE_REHEARSE, N_("Rehearsal"), N_("Repeat the block"), "rehearse.repeat", "l" },
  { LAP_SCOPE_REHEARSE, N_("Rehearsal"), N_("The other clock large"), "rehearse.clock", "c" },
  { LAP_SCOPE_REHEARSE, N_("Rehearsal"), N_("Mirrored"), "rehearse.mirror", "m" },
  { LAP_SCOPE_REHEARSE, N_("Rehearsal"), N_("Fill the screen"), "rehearse.fullscreen", "F11 f" },
  { LAP_SCOPE_REHEARSE, N_("Rehearsal"), N_("Leave"), "rehearse.leave", "Escape" },
  { LAP_SCOPE_WINDOW, N_("Window"), N_("Plan, or Week"), "win.view::1", "<Alt>1" },
  { LAP_SCOPE_WINDOW, N_("Window"), N_("Rehearse, or the sheets of a week"), "win.view::2", "<Alt>2" },
  { LAP_SCOPE_WINDOW, N_("Window"), N_("Sheets"), "win.view::3", "<Alt>3" },
  { LAP_SCOPE_WINDOW, N_("Window"), N_("Script"), "win.view::4", "<Alt>4" },
  { LAP_SCOPE_SCORE, N_("Blocks"), N_("Menu of the block"), "score.menu", "Menu <Shift>F10" },
  { LAP_SCOPE_WINDOW, N_("Find"), N_("Find words"), "win.find", "<Control>f" },
  { LAP_SCOPE_WINDOW, N_("Find"), N_("The next that was found"), "win.find-next", "F3 <Control>g" },
  { LAP_SCOPE_WINDOW, N_("Find"), N_("The one before"), "win.find-previous", "<Shift>F3 <Control><Shift>g" },
  { LAP_SCOPE_SCORE, N_("Find"), N_("To the next round"), "score.next-round", "Page_Down" },
  { LAP_SCOPE_SCORE, N_("Find"), N_("To the round before"), "score.previous-round", "Page_Up" },
  { LAP_SCOPE_SCORE, N_("Find"), N_("To the next part"), "score.next-part", "<Control>Page_Down" },
  { LAP_SCOPE_SCORE, N_("Find"), N_("To the part before"), "score.previous-part", "<Control>Page_Up" },
  { LAP_SCOPE_SCORE, N_("Find"), N_("To the next block with a warning"), "score.next-warning", "F7" },
  { LAP_SCOPE_SCORE, N_("Find"), N_("To the block with a warning before"), "score.previous-warning", "<Shift>F7" },
  { LAP_SCOPE_SCORE, N_("Change blocks"), N_("Move to the left"), "score.move-left", "<Alt>Left" },
  { LAP_SCOPE_SCORE, N_("Change blocks"), N_("Move to the right"), "score.move-right", "<Alt>Right" },
  { LAP_SCOPE_SCORE, N_("Change blocks"), N_("Longer work"), "score.work-more", "plus equal KP_Add" },
  { LAP_SCOPE_SCORE, N_("Change blocks"), N_("Shorter work"), "score.work-less", "minus KP_Subtract" },
  { LAP_SCOPE_SCORE, N_("Change blocks"), N_("Work longer by a second"), "score.work-second-more",
    "<Alt>plus <Alt>equal <Alt>KP_Add" },
  { LAP_SCOPE_SCORE, N_("Change blocks"), N_("Work shorter by a second"), "score.work-second-less",
    "<Alt>minus <Alt>KP_Subtract" },
  { LAP_SCOPE_SCORE, N_("Change blocks"), N_("Longer rest"), "score.rest-more",
    "period <Shift>KP_Add" },
  { LAP_SCOPE_SCORE, N_("Change blocks"), N_("Shorter rest"), "score.rest-less",
    "comma <Shift>KP_Subtract" },
  { LAP_SCOPE_SCORE, N_("Change blocks"), N_("Rest longer by a second"), "score.rest-second-more",
    "<Alt>period <Alt><Shift>KP_Add" },
  { LAP_SCOPE_SCORE, N_("Change blocks"), N_("Rest shorter by a second"), "score.rest-second-less",
    "<Alt>comma <Alt><Shift>KP_Subtract" },
  { LAP_SCOPE_SCORE, N_("Change blocks"), N_("Add a block after it"), "score.add", "Insert <Control>Return" },
  { LAP_SCOPE_SCORE, N_("Change blocks"), N_("Duplicate"), "score.duplicate", "<Control>d" },
  { LAP_SCOPE_SCORE, N_("Change blocks"), N_("Remove"), "score.remove", "Delete BackSpace" },
  { LAP_SCOPE_SCORE, N_("Change blocks"), N_("Copy"), "score.copy", "<Control>c" },
  { LAP_SCOPE_SCORE, N_("Change blocks"), N_("Cut"), "score.cut", "<Control>x" },
  { LAP_SCOPE_SCORE, N_("Change blocks"), N_("Paste after it"), "score.paste", "<Control>v" },
  { LAP_SCOPE_SCORE, N_("Change blocks"), N_("Only in this round, or as in round 1 again"), "score.only-here",
    "<Control>l" },
  { LAP_SCOPE_PART, N_("Parts and rounds"), N_("One more round of the part"), "score.rounds-more", "<Control>Up" },
  { LAP_SCOPE_PART, N_("Parts and rounds"), N_("One round less of the part"), "score.rounds-less", "<Control>Down" },
  { LAP_SCOPE_PART, N_("Parts and rounds"), N_("Longer rest between rounds"), "score.between-more", "<Alt>Up" },
  { LAP_SCOPE_PART, N_("Parts and rounds"), N_("Shorter rest between rounds"), "score.between-less", "<Alt>Down" },
  { LAP_SCOPE_PART, N_("Parts and rounds"), N_("Longer rest after the part"), "score.after-more",
    "<Control><Shift>Up" },
  { LAP_SCOPE_PART, N_("Parts and rounds"), N_("Shorter rest after the part"), "score.after-less",
    "<Control><Shift>Down" },
  { LAP_SCOPE_PART, N_("Parts and rounds"), N_("Open the part alone"), "score.open-part", "<Control>6" },
  { LAP_SCOPE_PART, N_("Parts and rounds"), N_("Properties of the part"), "score.part-properties",
    "<Alt><Shift>Return" },
  { LAP_SCOPE_PART, N_("Parts and rounds"), N_("Add a part after it"), "score.add-part", "<Control><Shift>Return" },
  { LAP_SCOPE_PART, N_("Parts and rounds"), N_("Move the part earlier"), "score.part-earlier",
    "<Alt><Shift>Page_Up" },
  { LAP_SCOPE_PART, N_("Parts and rounds"), N_("Move the part later"), "score.part-later",
    "<Alt><Shift>Page_Down" },
  { LAP_SCOPE_PART, N_("Parts and rounds"), N_("Remove the part with its blocks"), "score.remove-part",
    "<Shift>Delete" },
  { LAP_SCOPE_BRACKET, N_("Brackets"), N_("To the bracket on the left"), "bracket.left", "Left" },
  { LAP_SCOPE_BRACKET, N_("Brackets"), N_("To the bracket on the right"), "bracket.right", "Right" },
  { LAP_SCOPE_BRACKET, N_("Brackets"), N_("To the part of the round"), "bracket.up", "Up" },
  { LAP_SCOPE_BRACKET, N_("Brackets"), N_("To the rounds of the part"), "bracket.down", "Down" },
  { LAP_SCOPE_BRACKET, N_("Brackets"), N_("Open it and fold the others, or open all"), "bracket.open",
    "Return KP_Enter space" },
  { LAP_SCOPE_BRACKET, N_("Brackets"), N_("Fold it, or open it beside the others"), "bracket.fold",
    "<Shift>Return <Shift>KP_Enter <Shift>space" },
  { LAP_SCOPE_BRACKET, N_("Brackets"), N_("One round more, or a longer rest"), "bracket.more", "plus equal KP_Add" },
  { LAP_SCOPE_BRACKET, N_("Brackets"), N_("One round less, or a shorter rest"), "bracket.less", "minus KP_Subtract" },
  { LAP_SCOPE_BRACKET, N_("Brackets"), N_("The rest longer by a second"), "bracket.second-more",
    "<Alt>plus <Alt>equal <Alt>KP_Add" },
  { LAP_SCOPE_BRACKET, N_("Brackets"), N_("The rest shorter by a second"), "bracket.second-less",
    "<Alt>minus <Alt>KP_Subtract" },
  { LAP_SCOPE_BRACKET, N_("Brackets"), N_("Menu of the bracket"), "bracket.menu", "Menu <Shift>F10" },
  { LAP_SCOPE_SHELF, N_("Catalogue"), N_("To the exercise on the left"), "shelf.left", "Left" },
  { LAP_SCOPE_SHELF, N_("Catalogue"), N_("To the exercise on the right"), "shelf.right", "Right" },
  { LAP_SCOPE_SHELF, N_("Catalogue"), N_("To the exercise above"), "shelf.up", "Up" },
  { LAP_SCOPE_SHELF, N_("Catalogue"), N_("To the exercise below"), "shelf.down", "Down" },
  { LAP_SCOPE_SHELF, N_("Catalogue"), N_("To the first exercise"), "shelf.first", "Home" },
  { LAP_SCOPE_SHELF, N_("Catalogue"), N_("To the last exercise"), "shelf.last", "End" },
  { LAP_SCOPE_SHELF, N_("Catalogue"), N_("Add it after the selected block"), "shelf.add", "Return KP_Enter" },
  { LAP_SCOPE_WEEK, N_("Timetable"), N_("To the class on the left"), "week.left", "Left" },
  { LAP_SCOPE_WEEK, N_("Timetable"), N_("To the class on the right"), "week.right", "Right" },
  { LAP_SCOPE_WEEK, N_("Timetable"), N_("To the line above"), "week.up", "Up" },
  { LAP_SCOPE_WEEK, N_("Timetable"), N_("To the line below"), "week.down", "Down" },
  { LAP_SCOPE_WEEK, N_("Timetable"), N_("To the first class"), "week.first", "Home" },
  { LAP_SCOPE_WEEK, N_("Timetable"), N_("To the last class"), "week.last", "End" },
  { LAP_SCOPE_WEEK, N_("Timetable"), N_("To the next day"), "week.next-day", "Page_Down" },
  { LAP_SCOPE_WEEK, N_("Timetable"), N_("To the day before"), "week.previous-day", "Page_Up" },
  { LAP_SCOPE_WEEK, N_("Timetable"), N_("To the next class with a warning"), "week.next-warning", "F7" },
  { LAP_SCOPE_WEEK, N_("Timetable"), N_("To the class with a warning before"), "week.previous-warning", "<Shift>F7" },
  { LAP_SCOPE_WEEK, N_("Timetable"), N_("Select the class on the left, too"), "week.extend-left", "<Shift>Left" },
  { LAP_SCOPE_WEEK, N_("Timetable"), N_("Select the class on the right, too"), "week.extend-right", "<Shift>Right" },
  { LAP_SCOPE_WEEK, N_("Timetable"), N_("Select all classes that are shown"), "week.all", "<Control>a" },
  { LAP_SCOPE_WEEK, N_("Timetable"), N_("Select nothing"), "week.clear", "Escape" },
  { LAP_SCOPE_WEEK, N_("Timetable"), N_("Open the session, or place a class that waits"), "week.enter", "Return KP_Enter" },
  { LAP_SCOPE_WEEK, N_("Timetable"), N_("Menu of the class"), "week.menu", "Menu <Shift>F10" },
  { LAP_SCOPE_WEEK, N_("Change classes"), N_("Earlier by a quarter of an hour"), "week.earlier", "<Alt>Left" },
  { LAP_SCOPE_WEEK, N_("Change classes"), N_("Later by a quarter of an hour"), "week.later", "<Alt>Right" },
  { LAP_SCOPE_WEEK, N_("Change classes"), N_("Earlier by 5 minutes"), "week.little-earlier", "<Alt><Shift>Left" },
  { LAP_SCOPE_WEEK, N_("Change classes"), N_("Later by 5 minutes"), "week.little-later", "<Alt><Shift>Right" },
  { LAP_SCOPE_WEEK, N_("Change classes"), N_("To the room or coach above"), "week.line-above", "<Alt>Up" },
  { LAP_SCOPE_WEEK, N_("Change classes"), N_("To the room or coach below"), "week.line-below", "<Alt>Down" },
  { LAP_SCOPE_WEEK, N_("Change classes"), N_("A day before"), "week.day-before", "<Control>Up" },
  { LAP_SCOPE_WEEK, N_("Change classes"), N_("A day after"), "week.day-after", "<Control>Down" },
  { LAP_SCOPE_WEEK, N_("Change classes"), N_("Longer by a quarter of an hour"), "week.longer", "plus equal KP_Add" },
  { LAP_SCOPE_WEEK, N_("Change classes"), N_("Shorter by a quarter of an hour"), "week.shorter", "minus KP_Subtract" },
  { LAP_SCOPE_WEEK, N_("Change classes"), N_("Longer by 5 minutes"), "week.little-longer",
    "<Alt>plus <Alt>equal <Alt>KP_Add" },
  { LAP_SCOPE_WEEK, N_("Change classes"), N_("Shorter by 5 minutes"), "week.little-shorter",
    "<Alt>minus <Alt>KP_Subtract" },
  { LAP_SCOPE_WEEK, N_("Change classes"), N_("Add a class"), "week.add", "n Insert" },
  { LAP_SCOPE_WEEK, N_("Change classes"), N_("Duplicate on another day"), "week.duplicate", "<Control>d" },
  { LAP_SCOPE_WEEK, N_("Change classes"), N_("Remove; on a date: cancel"), "week.remove", "Delete BackSpace" },
  { LAP_SCOPE_WEEK, N_("Change classes"), N_("Take off the week, to be placed anew"), "week.unplace", "<Shift>Delete" },
  { LAP_SCOPE_WEEK, N_("Change classes"), N_("On this date as every week again"), "week.as-always", "<Control>BackSpace" },
  { LAP_SCOPE_WEEK, N_("Change classes"), N_("Copy"), "week.copy", "<Control>c" },
  { LAP_SCOPE_WEEK, N_("Change classes"), N_("Cut"), "week.cut", "<Control>x" },
  { LAP_SCOPE_WEEK, N_("Change classes"), N_("Paste"), "week.paste", "<Control>v" },
  { LAP_SCOPE_WINDOW, N_("Week"), N_("The next week"), "win.week-next", "<Alt>Page_Down" },
  { LAP_SCOPE_WINDOW, N_("Week"), N_("The week before"), "win.week-previous", "<Alt>Page_Up" },
  { LAP_SCOPE_WINDOW, N_("Week"), N_("This week"), "win.week-today", "<Alt>Home" },
  { LAP_SCOPE_WINDOW, N_("Week"), N_("The week as it always is"), "win.week-always", "<Alt>End" },
  { LAP_SCOPE_WINDOW, N_("Week"), N_("Place what has no time"), "win.fill", "<Control><Shift>p" },
  { LAP_SCOPE_WINDOW, N_("Window"), N_("Find an exercise"), "win.find-exercise", "<Control>k" },
  { LAP_SCOPE_WINDOW, N_("Window"), N_("Show or hide the catalogue"), "win.catalogue", "F8" },
  { LAP_SCOPE_WINDOW, N_("Window"), N_("Show or hide the pane at the side"), "win.pane", "F9" },
  { LAP_SCOPE_WINDOW, N_("Window"), N_("Settings"), "app.preferences", "<Control>comma" },
  { LAP_SCOPE_WINDOW, N_("Window"), N_("Help on what has the focus"), "app.help", "F1" },
  { LAP_SCOPE_WINDOW, N_("Window"), N_("Shortcuts"), "win.shortcuts", "<Control>question" },
  { LAP_SCOPE_WINDOW, N_("Window"), N_("Close"), "window.close", "<Control>w" },
  { LAP_SCOPE_WINDOW, N_("Window"), N_("Close all windows"), "app.quit", "<Control>q" },
};

guint
lap_shortcuts_n (void)
{
  return G_N_ELEMENTS (shortcuts);
}

const LapShortcut *
lap_shortcuts_nth (guint n)
{
  return n < G_N_ELEMENTS (shortcuts) ? &shortcuts[n] : NULL;
}

char *
lap_shortcuts_key (const char *action)
{
  for (guint i = 0; i < G_N_ELEMENTS (shortcuts); i++)
    if (g_str_equal (shortcuts[i].action, action))
      return g_strndup (shortcuts[i].keys, strcspn (shortcuts[i].keys, " "));
  return NULL;
}

void
lap_shortcuts_bind (GtkApplication *application)
{
  for (guint i = 0; i < G_N_ELEMENTS (shortcuts); i++) {
    g_auto (GStrv) keys = g_strsplit (shortcuts[i].keys, " ", -1);

    if (shortcuts[i].scope == LAP_SCOPE_WINDOW)
      gtk_application_set_accels_for_action (application, shortcuts[i].action, (const char * const *) keys);
  }
}

void
lap_shortcuts_bind_class (GtkWidgetClass *klass, LapScope scope)
{
  for (guint i = 0; i < G_N_ELEMENTS (shortcuts); i++) {
    g_auto (GStrv) keys = g_strsplit (shortcuts[i].keys, " ", -1);

    for (guint k = 0; shortcuts[i].scope == scope && keys[k] != NULL; k++) {
      g_autoptr (GtkShortcut) shortcut = gtk_shortcut_new (gtk_shortcut_trigger_parse_string (keys[k]),
                                                           gtk_named_action_new (shortcuts[i].action));

      gtk_widget_class_add_shortcut (klass, shortcut);
    }
  }
}
