/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/warning-row.h"

#include "edit/verbs.h"
#include "ui/around.h"
#include "ui/mark.h"
#include "ui/flow.h"
#include "ui/help.h"

#include <glib/gi18n-lib.h>

struct _LapWarningRow {
  GtkListBoxRow parent_instance;
  LapDocument  *document;
  LapCheckup   *checkup; /* that holds the warning */
  guint         n;
  GPtrArray    *found;   /* LapRemedy, NULL until they are made for this checkup */
  GtkWidget    *mark, *message, *why, *remedies, *more;
  GMenuModel   *menu, *kept_menu;
};

static guint preview_signal;

G_DEFINE_FINAL_TYPE (LapWarningRow, lap_warning_row, GTK_TYPE_LIST_BOX_ROW)

const LapWarning *
lap_warning_row_warning (LapWarningRow *self)
{
  return lap_checkup_nth (self->checkup, self->n);
}

/* A label that says so already is not laid out anew. */
static void
set_text (GtkWidget *label, const char *text)
{
  if (!g_str_equal (gtk_label_get_text (GTK_LABEL (label)), text))
    gtk_label_set_text (GTK_LABEL (label), text);
}

static void
tell_preview (LapWarningRow *self, LapEdits *edits)
{
  g_signal_emit (self, preview_signal, 0, edits);
}

/* What @button says it does. An edit elsewhere may have made another remedy of it: then there is none. */
static LapRemedy *
remedy_of (LapWarningRow *self, GtkWidget *button)
{
  g_autofree char *said = g_strdup (gtk_button_get_label (GTK_BUTTON (button)));
  LapRemedy *remedy;

  lap_warning_row_fill (self);
  remedy = g_object_get_data (G_OBJECT (button), "remedy");
  return remedy != NULL && g_str_equal (remedy->label, said) ? remedy : NULL;
}

static void
preview_remedy (LapWarningRow *self, GtkWidget *button)
{
  LapRemedy *remedy = remedy_of (self, button);

  tell_preview (self, remedy != NULL ? remedy->edits : NULL);
}

static void
pointed_cb (GtkEventController *motion, double x, double y, LapWarningRow *self)
{
  preview_remedy (self, gtk_event_controller_get_widget (motion));
}

static void
left_cb (LapWarningRow *self)
{
  tell_preview (self, NULL);
}

static void
focus_cb (GtkWidget *button, GParamSpec *pspec, LapWarningRow *self)
{
  if (gtk_widget_has_focus (button))
    preview_remedy (self, button);
  else
    tell_preview (self, NULL);
}

/* Whoever points at a remedy or moves the focus to it sees what it would do. */
static void
add_preview (LapWarningRow *self, GtkWidget *button)
{
  GtkEventController *motion = gtk_event_controller_motion_new ();

  g_signal_connect (motion, "enter", G_CALLBACK (pointed_cb), self);
  g_signal_connect_swapped (motion, "leave", G_CALLBACK (left_cb), self);
  gtk_widget_add_controller (button, motion);
  g_signal_connect (button, "notify::has-focus", G_CALLBACK (focus_cb), self);
}

static void
remedy_cb (GtkWidget *button, LapWarningRow *self)
{
  LapRemedy *remedy = remedy_of (self, button);

  if (remedy != NULL)
    lap_document_apply (self->document, lap_edits_copy (remedy->edits));
}

static GtkWidget *
button_new (LapWarningRow *self)
{
  GtkWidget *button = gtk_button_new_with_label (""), *label = gtk_button_get_child (GTK_BUTTON (button));

  /* In a narrow list the end of it, who or when, is what counts. */
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_wrap_mode (GTK_LABEL (label), PANGO_WRAP_WORD_CHAR);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_widget_add_css_class (button, "remedy");
  g_signal_connect (button, "clicked", G_CALLBACK (remedy_cb), self);
  add_preview (self, button);
  gtk_box_append (GTK_BOX (self->remedies), button);
  return button;
}

/* Takes @button and those after it away. */
static void
remove_buttons (LapWarningRow *self, GtkWidget *button)
{
  while (button != NULL) {
    GtkWidget *next = gtk_widget_get_next_sibling (button);

    if (gtk_widget_has_focus (button))
      gtk_widget_grab_focus (GTK_WIDGET (self));
    g_object_set_data (G_OBJECT (button), "remedy", NULL);
    gtk_box_remove (GTK_BOX (self->remedies), button);
    button = next;
  }
}

static void
show_remedies (LapWarningRow *self)
{
  GtkWidget *button = gtk_widget_get_first_child (self->remedies);

  for (guint i = 0; i < self->found->len; i++) {
    LapRemedy *remedy = g_ptr_array_index (self->found, i);

    if (button == NULL)
      button = button_new (self);
    g_object_set_data (G_OBJECT (button), "remedy", remedy);
    set_text (gtk_button_get_child (GTK_BUTTON (button)), remedy->label);
    button = gtk_widget_get_next_sibling (button);
  }
  remove_buttons (self, button);
  gtk_widget_set_visible (self->remedies, self->found->len > 0);
}

gboolean
lap_warning_row_fill (LapWarningRow *self)
{
  if (self->found != NULL)
    return FALSE;
  self->found = lap_warning_remedies (self->checkup, lap_warning_row_warning (self));
  show_remedies (self);
  return TRUE;
}

static void
fine_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapWarningRow *self = LAP_WARNING_ROW (widget);

  lap_document_apply (self->document, lap_warning_fine (self->checkup, lap_warning_row_warning (self)));
}

static gboolean
keeps (char **fine, const char *check)
{
  return fine != NULL && g_strv_contains ((const char * const *) fine, check);
}

/* The one of the warning's classes that keeps it quiet. */
static LapObject *
keeping_class (LapWarningRow *self)
{
  const LapWarning *warning = lap_warning_row_warning (self);

  for (guint i = 0; i < warning->n_classes; i++)
    if (keeps (lap_warning_class (self->checkup, warning, i)->fine, warning->check->id))
      return LAP_OBJECT (lap_warning_class (self->checkup, warning, i));
  return NULL;
}

/* What keeps the warning quiet: its block, its part or the session; one of its classes. */
static LapObject *
keeper (LapWarningRow *self)
{
  const LapWarning *warning = lap_warning_row_warning (self);
  LapSession *session = lap_document_session (self->document);
  LapPart *part = warning->part >= 0 ? lap_session_nth (session, warning->part) : NULL;
  LapBlock *block = part != NULL && warning->block >= 0 ? lap_part_nth (part, warning->block) : NULL;

  if (session == NULL)
    return keeping_class (self);
  if (block != NULL && keeps (block->fine, warning->check->id))
    return LAP_OBJECT (block);
  if (part != NULL && keeps (part->fine, warning->check->id))
    return LAP_OBJECT (part);
  return keeps (session->fine, warning->check->id) ? LAP_OBJECT (session) : NULL;
}

static void
speak_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapWarningRow *self = LAP_WARNING_ROW (widget);
  LapObject *holder = keeper (self);

  if (holder != NULL)
    lap_document_apply (self->document, lap_verb_fine (holder, lap_warning_row_warning (self)->check->id, FALSE));
}

static void
lap_warning_row_dispose (GObject *object)
{
  LapWarningRow *self = LAP_WARNING_ROW (object);

  g_clear_pointer (&self->found, g_ptr_array_unref);
  g_clear_pointer (&self->checkup, lap_checkup_unref);
  g_clear_object (&self->document);
  G_OBJECT_CLASS (lap_warning_row_parent_class)->dispose (object);
}

static void
lap_warning_row_class_init (LapWarningRowClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_warning_row_dispose;
  preview_signal = g_signal_new ("preview", LAP_TYPE_WARNING_ROW, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE,
                                 1, G_TYPE_POINTER);
  g_type_ensure (LAP_TYPE_AROUND);
  g_type_ensure (LAP_TYPE_MARK);
  g_type_ensure (LAP_TYPE_FLOW);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/lapwing/Lapwing/ui/warning-row.ui");
  gtk_widget_class_bind_template_child (widget_class, LapWarningRow, mark);
  gtk_widget_class_bind_template_child (widget_class, LapWarningRow, message);
  gtk_widget_class_bind_template_child (widget_class, LapWarningRow, why);
  gtk_widget_class_bind_template_child (widget_class, LapWarningRow, remedies);
  gtk_widget_class_bind_template_child (widget_class, LapWarningRow, more);
  gtk_widget_class_bind_template_child (widget_class, LapWarningRow, menu);
  gtk_widget_class_bind_template_child_full (widget_class, "kept-menu", FALSE,
                                             G_STRUCT_OFFSET (LapWarningRow, kept_menu));
  gtk_widget_class_install_action (widget_class, "warning.fine", NULL, fine_action);
  gtk_widget_class_install_action (widget_class, "warning.speak", NULL, speak_action);
}

static void
lap_warning_row_init (LapWarningRow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

/* A span of time stays in one line. */
static char *
unbroken (const char *clock)
{
  g_auto (GStrv) times = g_strsplit (clock, "–", -1);

  return g_strjoinv ("\u2060–\u2060", times);
}

static LapClass *
first_class (LapCheckup *checkup, const LapWarning *warning)
{
  return warning->n_classes > 0 ? lap_warning_class (checkup, warning, 0) : NULL;
}

gboolean
lap_warning_row_is (LapWarningRow *self, const LapWarning *warning)
{
  const LapWarning *is = lap_warning_row_warning (self);

  return is->check == warning->check && is->severity == warning->severity && is->fine == warning->fine &&
         is->part == warning->part && is->block == warning->block && is->round == warning->round &&
         first_class (self->checkup, is) == first_class (lap_document_checkup (self->document), warning);
}

static void
show_words (LapWarningRow *self, const LapWarning *warning)
{
  g_autofree char *message = lap_warning_message (self->checkup, warning), *clock = lap_warning_clock (warning);
  g_autofree char *why = lap_warning_why (self->checkup, warning), *span = unbroken (clock), *reason = NULL, *what = NULL;

  what = *clock != '\0' ? g_strdup_printf ("%s  %s", message, span) : g_strdup (message);
  /* Translators: the reason of a warning, and who says so. */
  reason = g_strdup_printf (_("Why: %1$s (%2$s)"), why, lap_warning_source (warning));
  set_text (self->message, what);
  set_text (self->why, reason);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, what, -1);
}

/* Each check has its page in the help. */
static void
name_page (LapWarningRow *self, const LapWarning *warning)
{
  g_autofree char *page = g_strconcat (LAP_HELP_CHECK, warning->check->id, NULL);

  gtk_widget_set_name (GTK_WIDGET (self), page);
}

void
lap_warning_row_show (LapWarningRow *self, guint n)
{
  LapCheckup *checkup = lap_document_checkup (self->document);
  const LapWarning *warning = lap_checkup_nth (checkup, n);
  GMenuModel *menu = warning->fine ? self->kept_menu : self->menu;

  if (self->checkup == NULL || !lap_warning_row_is (self, warning)) {
    remove_buttons (self, gtk_widget_get_first_child (self->remedies));
    name_page (self, warning);
  }
  for (GtkWidget *b = gtk_widget_get_first_child (self->remedies); b != NULL; b = gtk_widget_get_next_sibling (b))
    g_object_set_data (G_OBJECT (b), "remedy", NULL);
  g_clear_pointer (&self->found, g_ptr_array_unref);
  g_clear_pointer (&self->checkup, lap_checkup_unref);
  self->checkup = lap_checkup_ref (checkup);
  self->n = n;
  lap_mark_set (LAP_MARK (self->mark), warning->severity, n + 1);
  show_words (self, warning);
  if (gtk_menu_button_get_menu_model (GTK_MENU_BUTTON (self->more)) != menu)
    gtk_menu_button_set_menu_model (GTK_MENU_BUTTON (self->more), menu);
  /* A week as a whole keeps nothing quiet. */
  gtk_widget_set_visible (self->more, lap_document_is_editable (self->document) &&
                                      (lap_document_session (self->document) != NULL || warning->n_classes > 0));
}

GtkWidget *
lap_warning_row_new (LapDocument *document, guint n)
{
  LapWarningRow *self = g_object_new (LAP_TYPE_WARNING_ROW, NULL);

  self->document = g_object_ref (document);
  lap_warning_row_show (self, n);
  return GTK_WIDGET (self);
}
