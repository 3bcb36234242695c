/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The groups are made once a catalogue: the session's own exercises, those of the user's other sessions, then one group
 * a region, by the first muscle an exercise works, each in the order of the names. A search only goes through them.
 */
#include "ui/shelf.h"

#include "catalogue/finder.h"
#include "edit/add.h"
#include "edit/own.h"
#include "edit/verbs-blocks.h"
#include "ui/desk.h"
#include "ui/help.h"
#include "ui/own-dialog.h"
#include "ui/personal.h"
#include "ui/shelf-details.h"
#include "ui/shelf-filter.h"

#include <adwaita.h>
#include <glib/gi18n-lib.h>
#include <string.h>

#define GROUP_OWN      0
#define GROUP_PERSONAL 1 /* the user's own, which this session hasn't got */
#define GROUP_REGIONS  2
#define GROUP_OTHER    (GROUP_REGIONS + LAP_N_REGIONS) /* works nothing hard */
#define N_GROUPS       (GROUP_OTHER + 1)

struct _LapShelf {
  GtkWidget        parent_instance;
  LapScoreContext *context;
  LapCatalogue    *catalogue;        /* that the groups are of */
  LapFinder       *finder;
  GPtrArray       *groups[N_GROUPS]; /* LapExercise, in the order of their names */
  GtkWidget       *search, *filter, *stack, *grid, *nothing, *clear, *hint, *details;
};

G_DEFINE_FINAL_TYPE (LapShelf, lap_shelf, GTK_TYPE_WIDGET)

static char *
title_of (guint group)
{
  if (group == GROUP_OWN)
    return g_strdup (_("Your own"));
  if (group == GROUP_PERSONAL)
    return g_strdup (_("From your other sessions"));
  return g_strdup (group == GROUP_OTHER ? _("Whole body") : lap_words_label (&lap_regions, group - GROUP_REGIONS));
}

static LapShelfOwner
owner_of (LapShelf *self, LapExercise *exercise)
{
  LapSession *session = lap_document_session (self->context->document);

  if (session->exercises != NULL && g_ptr_array_find (session->exercises, exercise, NULL))
    return LAP_SHELF_OF_SESSION;
  return lap_personal_has (lap_personal (), exercise) ? LAP_SHELF_OF_USER : LAP_SHELF_OF_EVERYBODY;
}

static guint
group_of (LapShelf *self, LapExercise *exercise)
{
  LapShelfOwner owner = owner_of (self, exercise);
  int muscle = exercise->primary != NULL && exercise->primary[0] != NULL
             ? lap_words_find (&lap_muscles, exercise->primary[0]) : -1;

  if (owner != LAP_SHELF_OF_EVERYBODY)
    return owner == LAP_SHELF_OF_SESSION ? GROUP_OWN : GROUP_PERSONAL;
  return muscle < 0 ? GROUP_OTHER : GROUP_REGIONS + (guint) g_bit_nth_lsf (lap_muscle_regions (LAP_BIT (muscle)), -1);
}

static int
by_name (gconstpointer a, gconstpointer b)
{
  return g_utf8_collate (lap_exercise_name (*(LapExercise * const *) a), lap_exercise_name (*(LapExercise * const *) b));
}

static void
sort_catalogue (LapShelf *self)
{
  for (guint g = 0; g < N_GROUPS; g++)
    g_ptr_array_set_size (self->groups[g], 0);
  for (guint i = 0; i < lap_catalogue_n (self->catalogue); i++) {
    LapExercise *e = lap_catalogue_nth (self->catalogue, i);

    g_ptr_array_add (self->groups[group_of (self, e)], lap_exercise_ref (e));
  }
  for (guint g = 0; g < N_GROUPS; g++)
    g_ptr_array_sort (self->groups[g], by_name);
}

/* The one that Enter in the search adds. */
static LapExercise *
nearest (LapShelf *self, GArray *groups)
{
  LapExercise *found = NULL;
  gsize least = G_MAXSIZE;

  for (guint g = 0; g < groups->len; g++) {
    GPtrArray *exercises = g_array_index (groups, LapShelfGroup, g).exercises;

    for (guint i = 0; i < exercises->len; i++) {
      gsize distance = lap_finder_distance (self->finder, g_ptr_array_index (exercises, i));

      if (found == NULL || distance < least) {
        found = g_ptr_array_index (exercises, i);
        least = distance;
      }
    }
  }
  return found;
}

static void
show_nothing (LapShelf *self, const char *text)
{
  g_autofree char *words = *text != '\0' ? g_strdup_printf (_("Nothing called “%s”."), text)
                                         : g_strdup (_("Nothing is all of that."));

  gtk_label_set_text (GTK_LABEL (self->nothing), words);
}

static void
current_cb (LapShelf *self)
{
  LapExercise *current = lap_shelf_grid_current (LAP_SHELF_GRID (self->grid));

  gtk_widget_set_visible (self->hint, current == NULL && lap_document_is_editable (self->context->document));
  lap_shelf_details_show (LAP_SHELF_DETAILS (self->details), self->catalogue, current,
                          current != NULL ? owner_of (self, current) : LAP_SHELF_OF_EVERYBODY,
                          lap_document_is_editable (self->context->document));
}

static void
search_cb (LapShelf *self)
{
  const char *text = gtk_editable_get_text (GTK_EDITABLE (self->search));
  LapFilter filter = lap_shelf_filter_get (LAP_SHELF_FILTER (self->filter));
  g_autoptr (GArray) groups = lap_shelf_groups_new ();

  if (self->catalogue == NULL)
    return;
  lap_finder_set_text (self->finder, text);
  for (guint g = 0; g < N_GROUPS; g++) {
    LapShelfGroup group = { NULL, g_ptr_array_new_with_free_func ((GDestroyNotify) lap_exercise_unref) };

    for (guint i = 0; i < self->groups[g]->len; i++) {
      LapExercise *e = g_ptr_array_index (self->groups[g], i);

      if (lap_filter_matches (&filter, e) && lap_finder_matches (self->finder, e))
        g_ptr_array_add (group.exercises, lap_exercise_ref (e));
    }
    if (group.exercises->len > 0) {
      group.title = title_of (g);
      g_array_append_val (groups, group);
    } else
      g_ptr_array_unref (group.exercises);
  }
  lap_shelf_grid_show (LAP_SHELF_GRID (self->grid), self->catalogue, groups);
  if (*text != '\0')
    lap_shelf_grid_go (LAP_SHELF_GRID (self->grid), nearest (self, groups), FALSE);
  show_nothing (self, text);
  gtk_stack_set_visible_child_name (GTK_STACK (self->stack), groups->len > 0 ? "tiles" : "nothing");
  current_cb (self);
}

static void
clear_cb (LapShelf *self)
{
  gtk_editable_set_text (GTK_EDITABLE (self->search), "");
  lap_shelf_filter_clear (LAP_SHELF_FILTER (self->filter));
  gtk_widget_grab_focus (self->search);
}

/* Escape first takes the search back, then what lies over the plan. */
static void
stop_cb (LapShelf *self)
{
  GtkWidget *desk = gtk_widget_get_ancestor (GTK_WIDGET (self), LAP_TYPE_DESK);

  if (*gtk_editable_get_text (GTK_EDITABLE (self->search)) != '\0')
    gtk_editable_set_text (GTK_EDITABLE (self->search), "");
  else if (desk != NULL && lap_desk_is_folded (LAP_DESK (desk), LAP_DESK_START))
    lap_desk_set_shown (LAP_DESK (desk), LAP_DESK_START, FALSE);
}

/* The new block is selected, so that the next one goes after it. */
static void
add_cb (LapShelf *self, const char *id)
{
  LapDocument *document = self->context->document;
  g_autoptr (GPtrArray) brought = g_ptr_array_new ();
  LapBlock *added = NULL;
  LapEdits *edits = lap_verb_add_exercise (lap_document_session (document), self->context->block, id, self->catalogue,
                                           &added);

  g_ptr_array_add (brought, lap_catalogue_find (self->catalogue, id));
  lap_verb_take_own (edits, lap_document_session (document), brought, lap_document_catalogue (document));
  if (lap_document_apply (document, edits))
    lap_score_select (self->context, lap_score_locate (self->context, added, MAX (1, self->context->round)));
}

static void
enter_cb (LapShelf *self)
{
  LapExercise *current = lap_shelf_grid_current (LAP_SHELF_GRID (self->grid));

  if (current == NULL)
    return;
  add_cb (self, current->id);
  gtk_editable_select_region (GTK_EDITABLE (self->search), 0, -1);
}

/* Down leads from the search into what it found. */
static gboolean
key_cb (LapShelf *self, guint key)
{
  if (key != GDK_KEY_Down && key != GDK_KEY_KP_Down)
    return FALSE;
  return gtk_widget_child_focus (self->grid, GTK_DIR_TAB_FORWARD);
}

/* What is asked for may be left out by the search or a chip: then these go. */
static void
show_exercise_cb (LapShelf *self, const char *id)
{
  LapExercise *exercise = lap_catalogue_find (self->catalogue, id);

  lap_shelf_grid_go (LAP_SHELF_GRID (self->grid), exercise, FALSE);
  if (lap_shelf_grid_current (LAP_SHELF_GRID (self->grid)) == exercise)
    return;
  clear_cb (self);
  search_cb (self);
  lap_shelf_grid_go (LAP_SHELF_GRID (self->grid), exercise, FALSE);
}

/* Kept for other sessions, too; where that can't be the session has it all the same. */
static void
keep_personal (LapShelf *self, const char *id)
{
  g_autoptr (GError) error = NULL;

  if (!lap_personal_keep (lap_personal (), lap_catalogue_find (lap_document_catalogue (self->context->document), id),
                          &error))
    lap_document_tell (self->context->document, error->message);
}

void
lap_shelf_make_own (LapShelf *self, const char *name)
{
  LapExercise *current = lap_shelf_grid_current (LAP_SHELF_GRID (self->grid));
  LapSession *session = lap_document_session (self->context->document);
  g_autofree char *id = NULL;

  if (current == NULL || *name == '\0' ||
      !lap_document_apply (self->context->document, lap_verb_make_own (session, current, name, self->catalogue, &id)))
    return;
  keep_personal (self, id);
  show_exercise_cb (self, id);
}

static void
named_cb (AdwMessageDialog *dialog, const char *response, LapShelf *self)
{
  if (g_str_equal (response, "name"))
    lap_shelf_make_own (self, gtk_editable_get_text (GTK_EDITABLE (adw_message_dialog_get_extra_child (dialog))));
}

static void
copy_cb (LapShelf *self)
{
  LapExercise *current = lap_shelf_grid_current (LAP_SHELF_GRID (self->grid));
  GtkWindow *window = GTK_WINDOW (gtk_widget_get_root (GTK_WIDGET (self)));
  GtkWidget *dialog, *entry = gtk_entry_new ();

  dialog = adw_message_dialog_new (window, _("Make your own exercise"),
                                   _("It begins as a copy, with the same figure. The session keeps it, and your other "
                                     "sessions can use it."));
  gtk_widget_set_name (dialog, LAP_HELP_OWN);
  gtk_editable_set_text (GTK_EDITABLE (entry), lap_exercise_name (current));
  gtk_entry_set_activates_default (GTK_ENTRY (entry), TRUE);
  gtk_accessible_update_property (GTK_ACCESSIBLE (entry), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Name"), -1);
  adw_message_dialog_set_extra_child (ADW_MESSAGE_DIALOG (dialog), entry);
  adw_message_dialog_add_responses (ADW_MESSAGE_DIALOG (dialog), "cancel", _("_Cancel"), "name", _("_Keep"), NULL);
  adw_message_dialog_set_default_response (ADW_MESSAGE_DIALOG (dialog), "name");
  adw_message_dialog_set_close_response (ADW_MESSAGE_DIALOG (dialog), "cancel");
  g_signal_connect_object (dialog, "response", G_CALLBACK (named_cb), self, 0);
  gtk_window_present (GTK_WINDOW (dialog));
}

static void
edit_cb (LapShelf *self)
{
  lap_own_dialog_open (GTK_WINDOW (gtk_widget_get_root (GTK_WIDGET (self))), self->context->document,
                       lap_shelf_grid_current (LAP_SHELF_GRID (self->grid))->id);
}

/* Out of the session, or out of what other sessions left. */
static void
remove_cb (LapShelf *self)
{
  LapExercise *current = lap_shelf_grid_current (LAP_SHELF_GRID (self->grid));
  LapDocument *document = self->context->document;
  g_autoptr (GError) error = NULL;
  LapEdits *edits;

  if (owner_of (self, current) == LAP_SHELF_OF_USER) {
    if (!lap_personal_forget (lap_personal (), current->id, &error))
      lap_document_tell (document, error->message);
    return;
  }
  edits = lap_verb_remove_own (lap_document_session (document), current, &error);
  if (edits != NULL)
    lap_document_apply (document, edits);
  else
    lap_document_tell (document, error->message);
}

static void
show_plan (LapShelf *self)
{
  LapDocument *document = self->context->document;
  g_autoptr (LapCatalogue) catalogue = lap_personal_under (lap_personal (), lap_document_catalogue (document));

  lap_shelf_filter_set_kit (LAP_SHELF_FILTER (self->filter), lap_kit_mask (lap_document_session (document)->kit));
  /* An edit leaves the exercises as they are, unless it was about one of the session's own. */
  if (self->catalogue != NULL && lap_catalogue_is_same (self->catalogue, catalogue))
    return;
  g_clear_pointer (&self->finder, lap_finder_free);
  g_clear_pointer (&self->catalogue, lap_catalogue_unref);
  self->catalogue = lap_catalogue_ref (catalogue);
  self->finder = lap_finder_new (catalogue);
  sort_catalogue (self);
  search_cb (self);
}

static void
context_cb (LapShelf *self, guint change)
{
  if (change & LAP_SCORE_PLAN)
    show_plan (self);
}

static void
lap_shelf_dispose (GObject *object)
{
  LapShelf *self = LAP_SHELF (object);
  GtkWidget *child = gtk_widget_get_first_child (GTK_WIDGET (self));

  g_clear_pointer (&self->finder, lap_finder_free);
  g_clear_pointer (&self->catalogue, lap_catalogue_unref);
  g_clear_pointer (&child, gtk_widget_unparent);
  g_clear_object (&self->context);
  for (guint g = 0; g < N_GROUPS; g++)
    g_clear_pointer (&self->groups[g], g_ptr_array_unref);
  G_OBJECT_CLASS (lap_shelf_parent_class)->dispose (object);
}

static void
lap_shelf_class_init (LapShelfClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_shelf_dispose;
  g_type_ensure (LAP_TYPE_SHELF_DETAILS);
  g_type_ensure (LAP_TYPE_SHELF_FILTER);
  g_type_ensure (LAP_TYPE_SHELF_GRID);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/lapwing/Lapwing/ui/shelf.ui");
  gtk_widget_class_bind_template_child (widget_class, LapShelf, search);
  gtk_widget_class_bind_template_child (widget_class, LapShelf, filter);
  gtk_widget_class_bind_template_child (widget_class, LapShelf, stack);
  gtk_widget_class_bind_template_child (widget_class, LapShelf, grid);
  gtk_widget_class_bind_template_child (widget_class, LapShelf, nothing);
  gtk_widget_class_bind_template_child (widget_class, LapShelf, clear);
  gtk_widget_class_bind_template_child (widget_class, LapShelf, hint);
  gtk_widget_class_bind_template_child (widget_class, LapShelf, details);
  gtk_widget_class_bind_template_callback (widget_class, current_cb);
  gtk_widget_class_bind_template_callback (widget_class, show_exercise_cb);
  gtk_widget_class_bind_template_callback (widget_class, copy_cb);
  gtk_widget_class_bind_template_callback (widget_class, edit_cb);
  gtk_widget_class_bind_template_callback (widget_class, remove_cb);
  gtk_widget_class_bind_template_callback (widget_class, search_cb);
  gtk_widget_class_bind_template_callback (widget_class, enter_cb);
  gtk_widget_class_bind_template_callback (widget_class, stop_cb);
  gtk_widget_class_bind_template_callback (widget_class, key_cb);
  gtk_widget_class_bind_template_callback (widget_class, add_cb);
  gtk_widget_class_bind_template_callback (widget_class, clear_cb);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (widget_class, "shelf");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_REGION);
}

static void
lap_shelf_init (LapShelf *self)
{
  for (guint g = 0; g < N_GROUPS; g++)
    self->groups[g] = g_ptr_array_new_with_free_func ((GDestroyNotify) lap_exercise_unref);
  gtk_widget_init_template (GTK_WIDGET (self));
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Catalogue"), -1);
}

void
lap_shelf_set_context (LapShelf *self, LapScoreContext *context)
{
  g_return_if_fail (self->context == NULL);
  self->context = g_object_ref (context);
  g_signal_connect_object (context, "changed", G_CALLBACK (context_cb), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (lap_personal (), "changed", G_CALLBACK (show_plan), self, G_CONNECT_SWAPPED);
  show_plan (self);
}

void
lap_shelf_find (LapShelf *self)
{
  gtk_widget_grab_focus (self->search);
  gtk_editable_select_region (GTK_EDITABLE (self->search), 0, -1);
}

LapShelfGrid *
lap_shelf_grid (LapShelf *self)
{
  return LAP_SHELF_GRID (self->grid);
}
