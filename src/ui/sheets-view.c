/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The page list is made anew after a change of the document or of an option, in an idle, and only while the view is
 * seen: a poster of forty stations takes longer than a key press.
 */
#include "ui/sheets-view.h"

#include "base/customs.h"
#include "place/week-sheet.h"
#include "sheets/week-sheets.h"
#include "ui/column.h"
#include "ui/document-sheets.h"
#include "ui/export.h"
#include "ui/field-row.h"
#include "ui/files.h"
#include "ui/number.h"
#include "ui/sheet-job.h"
#include "ui/sheet-page.h"
#include "ui/sheet-print.h"
#include "ui/worker.h"

#include <glib/gi18n-lib.h>

#define THUMB    110 /* px, the longer side of a small page */
#define WIDE 17.5 /* lines of text that the column at the side is wide */
#define PREVIEW  240 /* px, the least */

/* Switches beside those of lap_sheet_things. */
enum { SWITCH_BODY, SWITCH_UNFOLDED, SWITCH_DATED, SWITCH_BY_ROOM, N_SWITCHES };

/* What each sheet understands; the rest isn't shown with it. */
static const struct {
  const char *sheet;
  guint32 things;   /* LapHide */
  guint32 switches; /* bits */
  gboolean distance, cards;
} asked[] = {
  { "poster", LAP_HIDE_FIGURES | LAP_HIDE_OPTIONS | LAP_HIDE_DETAILS | LAP_HIDE_CODE,
    LAP_BIT (SWITCH_BODY) | LAP_BIT (SWITCH_DATED), TRUE, FALSE },
  { "stations", LAP_HIDE_FIGURES | LAP_HIDE_OPTIONS | LAP_HIDE_DETAILS, LAP_BIT (SWITCH_DATED), FALSE, TRUE },
  { "running-order", LAP_HIDE_FIGURES | LAP_HIDE_OPTIONS | LAP_HIDE_CAMERA | LAP_HIDE_BALANCE,
    LAP_BIT (SWITCH_UNFOLDED), FALSE, FALSE },
  { "week", 0, LAP_BIT (SWITCH_BY_ROOM), FALSE, FALSE },
};

static const guint card_counts[] = { 0, 1, 2, 4 };

struct _LapSheetsView {
  AdwBin          parent_instance;
  LapDocument    *document; /* of the window, which outlives the view */
  GtkWidget      *side, *flap, *sheet, *paper, *landscape, *ink, *pieces, *things, *distance_row, *distance, *cards, *reads;
  GtkWidget      *about, *save, *print, *thumbs_scroll, *thumbs, *preview, *progress, *page;
  GtkWidget      *thing_rows[32], *thing_switches[32], *rows[N_SWITCHES], *switches[N_SWITCHES];
  GtkWidget      *read_rows[LAP_N_READS], *read_labels[LAP_N_READS], *larger_row;
  LapSheetChoice  choice;
  LapSheetOptions larger; /* what larger_row offers */
  LapPages       *pages;   /* until others are laid out */
  LapWorker      *worker;  /* lays them out */
  gboolean        loading; /* rows are being set, not asked */
  gboolean        stale;   /* the pages don't show the document any more */
  guint           idle;
};

G_DEFINE_FINAL_TYPE (LapSheetsView, lap_sheets_view, ADW_TYPE_BIN)

const LapSheet *
lap_sheets_view_sheet (LapSheetsView *self)
{
  return lap_document_sheets_nth (self->document, MIN (adw_combo_row_get_selected (ADW_COMBO_ROW (self->sheet)),
                                                       lap_document_sheets_n (self->document) - 1));
}

const LapSheetChoice *
lap_sheets_view_choice (LapSheetsView *self)
{
  return &self->choice;
}

const LapPages *
lap_sheets_view_pages (LapSheetsView *self)
{
  return self->pages;
}

gboolean
lap_sheets_view_is_busy (LapSheetsView *self)
{
  return self->idle != 0 || self->worker != NULL;
}

/* Showing */

static void
show_reads (LapSheetsView *self)
{
  for (guint i = 0; i < LAP_N_READS; i++) {
    double cap = self->pages != NULL ? lap_pages_cap (self->pages, i) : 0;
    g_autofree char *text = lap_distance_text (lap_cap_distance (cap, LAP_ARC_READABLE));

    if (self->read_rows[i] == NULL)
      continue;
    gtk_widget_set_visible (self->read_rows[i], cap > 0);
    gtk_label_set_text (GTK_LABEL (self->read_labels[i]), text);
  }
}

/* What to ask for so that names read from as far as they are to. */
static void
show_larger (LapSheetsView *self)
{
  gboolean larger = lap_document_larger (self->document, lap_sheets_view_sheet (self), &self->choice.options,
                                         &self->larger);
  g_autofree char *words = larger ? lap_week_sheet_words (&self->larger) : NULL;

  gtk_widget_set_visible (self->larger_row, larger);
  if (larger)
    adw_action_row_set_subtitle (ADW_ACTION_ROW (self->larger_row), words);
}

static void
show_about (LapSheetsView *self)
{
  guint n = lap_pages_n (self->pages);
  double width, height;
  g_autofree char *pages = g_strdup_printf (g_dngettext (GETTEXT_PACKAGE, "%u page", "%u pages", n), n), *text = NULL;

  lap_paper_size (&self->choice.options, &width, &height);
  /* Translators: a paper, its size, and how many pages there are: "A3, 297 × 420 mm, 2 pages". */
  text = g_strdup_printf (_("%s, %.0f × %.0f mm, %s"), lap_words_label (&lap_papers, self->choice.options.paper), width,
                          height, pages);
  gtk_label_set_text (GTK_LABEL (self->about), text);
  gtk_widget_set_tooltip_text (self->about, text);
}

static void
page_cb (LapSheetsView *self, GtkListBoxRow *row)
{
  if (row != NULL && self->pages != NULL && self->page != NULL)
    lap_sheet_page_show (LAP_SHEET_PAGE (self->page), self->pages, gtk_list_box_row_get_index (row),
                         self->choice.options.ink);
}

/* As many small pages as there are, and the one that was looked at, or the last, selected. */
static void
show_thumbs (LapSheetsView *self)
{
  GtkListBox *box = GTK_LIST_BOX (self->thumbs);
  GtkListBoxRow *selected = gtk_list_box_get_selected_row (box);
  guint n = lap_pages_n (self->pages), at = selected != NULL ? gtk_list_box_row_get_index (selected) : 0;

  for (guint i = 0; i < n; i++) {
    GtkListBoxRow *row = gtk_list_box_get_row_at_index (box, i);

    if (row == NULL)
      gtk_list_box_append (box, lap_sheet_page_new (THUMB));
    row = gtk_list_box_get_row_at_index (box, i);
    lap_sheet_page_show (LAP_SHEET_PAGE (gtk_list_box_row_get_child (row)), self->pages, i, self->choice.options.ink);
  }
  for (GtkListBoxRow *row; (row = gtk_list_box_get_row_at_index (box, n)) != NULL;)
    gtk_list_box_remove (box, GTK_WIDGET (row));
  gtk_widget_set_visible (self->thumbs_scroll, n > 1);
  gtk_list_box_select_row (box, gtk_list_box_get_row_at_index (box, MIN (at, n - 1)));
  page_cb (self, gtk_list_box_get_selected_row (box));
}

static gpointer
lay_out (gpointer job, GCancellable *cancellable, LapWorkerTell tell, gpointer data, GError **error)
{
  return lap_sheet_job_pages (job);
}

static void
waits_cb (gpointer view)
{
  gtk_widget_set_visible (LAP_SHEETS_VIEW (view)->progress, TRUE);
}

static void
give_up (LapSheetsView *self)
{
  g_clear_pointer (&self->worker, lap_worker_end);
  if (self->progress != NULL)
    gtk_widget_set_visible (self->progress, FALSE);
}

static void
laid_out_cb (gpointer view, gpointer pages)
{
  LapSheetsView *self = view;
  g_autoptr (LapPages) before = g_steal_pointer (&self->pages);

  give_up (self);
  self->pages = pages;
  show_thumbs (self);
  show_about (self);
  show_reads (self);
  show_larger (self);
}

static const LapWorkerKind worker_kind = {
  lay_out, waits_cb, laid_out_cb, NULL, (GDestroyNotify) lap_sheet_job_free, (GDestroyNotify) lap_pages_free,
};

/* What is laid out for what was asked before is given up. */
static void
rebuild (LapSheetsView *self)
{
  g_autofree char *date = NULL;
  LapSheetOptions options = lap_sheet_choice_options (&self->choice, &date);
  LapSheetJob *job = lap_sheet_job_new (self->document, lap_sheets_view_sheet (self), &options);

  give_up (self);
  self->stale = FALSE;
  self->worker = lap_worker_start (&worker_kind, job, GTK_PROGRESS_BAR (self->progress), self);
}

static gboolean
idle_cb (gpointer data)
{
  LapSheetsView *self = data;

  self->idle = 0;
  if (self->document != NULL && gtk_widget_get_mapped (GTK_WIDGET (self)))
    rebuild (self);
  return G_SOURCE_REMOVE;
}

static void
refresh (LapSheetsView *self)
{
  self->stale = TRUE;
  if (self->idle == 0)
    self->idle = g_idle_add (idle_cb, self);
}

static void
lap_sheets_view_map (GtkWidget *widget)
{
  LapSheetsView *self = LAP_SHEETS_VIEW (widget);

  GTK_WIDGET_CLASS (lap_sheets_view_parent_class)->map (widget);
  if (self->stale)
    refresh (self);
}

/* What nobody looks at is given up, and begun again when somebody does. */
static void
lap_sheets_view_unmap (GtkWidget *widget)
{
  LapSheetsView *self = LAP_SHEETS_VIEW (widget);

  self->stale = self->stale || self->worker != NULL;
  give_up (self);
  GTK_WIDGET_CLASS (lap_sheets_view_parent_class)->unmap (widget);
}

/* Asking */

static void
show_choice (LapSheetsView *self)
{
  const LapSheetOptions *options = &self->choice.options;
  const gboolean on[N_SWITCHES] = { options->body, options->unfolded, self->choice.dated,
                                   options->by_room };

  self->loading = TRUE;
  adw_combo_row_set_selected (ADW_COMBO_ROW (self->paper), options->paper);
  adw_combo_row_set_selected (ADW_COMBO_ROW (self->ink), options->ink);
  adw_combo_row_set_selected (ADW_COMBO_ROW (self->pieces), self->choice.pieces + 1);
  gtk_switch_set_active (GTK_SWITCH (self->landscape), options->landscape);
  gtk_spin_button_set_value (GTK_SPIN_BUTTON (self->distance), options->distance / lap_distance_unit ());
  for (guint i = 0; i < G_N_ELEMENTS (card_counts); i++)
    if (card_counts[i] == options->cards)
      adw_combo_row_set_selected (ADW_COMBO_ROW (self->cards), i);
  for (guint i = 0; i < lap_sheet_things.n; i++)
    gtk_switch_set_active (GTK_SWITCH (self->thing_switches[i]), (options->hide & LAP_BIT (i)) == 0);
  for (guint i = 0; i < N_SWITCHES; i++)
    gtk_switch_set_active (GTK_SWITCH (self->switches[i]), on[i]);
  self->loading = FALSE;
}

static void
read_choice (LapSheetsView *self)
{
  LapSheetOptions *options = &self->choice.options;

  options->paper = adw_combo_row_get_selected (ADW_COMBO_ROW (self->paper));
  options->ink = adw_combo_row_get_selected (ADW_COMBO_ROW (self->ink));
  options->landscape = gtk_switch_get_active (GTK_SWITCH (self->landscape));
  options->distance = gtk_spin_button_get_value (GTK_SPIN_BUTTON (self->distance)) * lap_distance_unit ();
  options->cards = card_counts[adw_combo_row_get_selected (ADW_COMBO_ROW (self->cards))];
  options->body = gtk_switch_get_active (GTK_SWITCH (self->switches[SWITCH_BODY]));
  options->unfolded = gtk_switch_get_active (GTK_SWITCH (self->switches[SWITCH_UNFOLDED]));
  options->by_room = gtk_switch_get_active (GTK_SWITCH (self->switches[SWITCH_BY_ROOM]));
  options->hide = 0;
  for (guint i = 0; i < lap_sheet_things.n; i++)
    if (!gtk_switch_get_active (GTK_SWITCH (self->thing_switches[i])))
      options->hide |= LAP_BIT (i);
  self->choice.dated = gtk_switch_get_active (GTK_SWITCH (self->switches[SWITCH_DATED]));
  self->choice.pieces = (int) adw_combo_row_get_selected (ADW_COMBO_ROW (self->pieces)) - 1;
}

static void
changed_cb (LapSheetsView *self)
{
  if (self->loading || self->document == NULL)
    return;
  read_choice (self);
  lap_sheet_choice_keep (lap_sheets_view_sheet (self), &self->choice);
  refresh (self);
}

static void
larger_cb (LapSheetsView *self)
{
  self->choice.options.paper = self->larger.paper;
  self->choice.options.by_room = self->larger.by_room;
  show_choice (self);
  changed_cb (self);
}

/* A thing that this sheet doesn't know isn't asked. */
static void
show_rows (LapSheetsView *self)
{
  const char *id = lap_sheets_view_sheet (self)->id;
  guint32 things = 0, switches = 0;
  gboolean distance = FALSE, cards = FALSE;

  for (guint i = 0; i < G_N_ELEMENTS (asked); i++)
    if (g_str_equal (asked[i].sheet, id)) {
      things = asked[i].things;
      switches = asked[i].switches;
      distance = asked[i].distance;
      cards = asked[i].cards;
    }
  for (guint i = 0; i < lap_sheet_things.n; i++)
    gtk_widget_set_visible (self->thing_rows[i], (things & LAP_BIT (i)) != 0);
  for (guint i = 0; i < N_SWITCHES; i++)
    gtk_widget_set_visible (self->rows[i], (switches & LAP_BIT (i)) != 0);
  gtk_widget_set_visible (self->distance_row, distance);
  gtk_widget_set_visible (self->cards, cards);
  gtk_widget_set_visible (self->things, (things | switches) != 0);
}

static void
sheet_cb (LapSheetsView *self)
{
  if (self->loading || self->document == NULL)
    return;
  self->choice = lap_sheet_choice_load (lap_sheets_view_sheet (self));
  show_rows (self);
  show_choice (self);
  gtk_list_box_select_row (GTK_LIST_BOX (self->thumbs), gtk_list_box_get_row_at_index (GTK_LIST_BOX (self->thumbs), 0));
  refresh (self);
}

/* Doing */

static LapWindow *
window_of (LapSheetsView *self)
{
  return LAP_WINDOW (gtk_widget_get_root (GTK_WIDGET (self)));
}

typedef struct {
  LapWindow      *window;
  const LapSheet *sheet;
  LapSheetChoice  choice;
} Deed;

static Deed *
deed_new (LapSheetsView *self)
{
  Deed *deed = g_new (Deed, 1);

  *deed = (Deed) { g_object_ref (window_of (self)), lap_sheets_view_sheet (self), self->choice };
  return deed;
}

static void
deed_free (Deed *deed)
{
  g_object_unref (deed->window);
  g_free (deed);
}

static void
where_cb (const char *path, gpointer data)
{
  Deed *deed = data;
  g_autofree char *date = NULL;
  LapSheetOptions options = lap_sheet_choice_options (&deed->choice, &date);

  if (path != NULL)
    lap_export_to (deed->window, deed->sheet, &options, deed->choice.pieces, path);
  deed_free (deed);
}

static void
save_cb (LapSheetsView *self)
{
  g_autofree char *name = g_strdup_printf (_("%1$s - %2$s"), lap_document_title (self->document),
                                           _(lap_sheets_view_sheet (self)->title));

  lap_files_save (GTK_WINDOW (window_of (self)), _("Save as PDF"), name, ".pdf", where_cb, deed_new (self));
}

static void
answer_cb (AdwMessageDialog *dialog, const char *response, gpointer data)
{
  Deed *deed = data;

  if (g_str_equal (response, "pieces"))
    deed->choice.pieces = lap_printer_paper ();
  if (!g_str_equal (response, "cancel"))
    lap_sheet_print_dialog (deed->window, deed->sheet, &deed->choice, NULL);
  deed_free (deed);
}

void
lap_sheets_view_print (LapSheetsView *self)
{
  const char *paper = lap_words_label (&lap_papers, lap_printer_paper ());
  g_autofree char *heading = NULL, *pieces = NULL;
  GtkWidget *dialog;

  if (self->choice.pieces >= 0 || !lap_sheet_is_large (&self->choice)) {
    lap_sheet_print_dialog (window_of (self), lap_sheets_view_sheet (self), &self->choice, NULL);
    return;
  }
  heading = g_strdup_printf (_("Does your printer take %s?"),
                             lap_words_label (&lap_papers, self->choice.options.paper));
  pieces = g_strdup_printf (_("In _pieces on %s"), paper);
  dialog = adw_message_dialog_new (GTK_WINDOW (window_of (self)), heading,
                                   _("If not, the sheet can be printed in pieces that overlap, with marks where to cut."));
  adw_message_dialog_add_response (ADW_MESSAGE_DIALOG (dialog), "cancel", _("_Cancel"));
  adw_message_dialog_add_response (ADW_MESSAGE_DIALOG (dialog), "pieces", pieces);
  adw_message_dialog_add_response (ADW_MESSAGE_DIALOG (dialog), "one", _("In _one piece"));
  adw_message_dialog_set_default_response (ADW_MESSAGE_DIALOG (dialog), "one");
  adw_message_dialog_set_close_response (ADW_MESSAGE_DIALOG (dialog), "cancel");
  g_signal_connect (dialog, "response", G_CALLBACK (answer_cb), deed_new (self));
  gtk_window_present (GTK_WINDOW (dialog));
}

/* Making */

static void
lap_sheets_view_dispose (GObject *object)
{
  LapSheetsView *self = LAP_SHEETS_VIEW (object);

  g_clear_handle_id (&self->idle, g_source_remove);
  g_clear_pointer (&self->worker, lap_worker_end);
  if (self->page != NULL)
    lap_sheet_page_show (LAP_SHEET_PAGE (self->page), NULL, 0, LAP_INK_COLOUR);
  self->page = NULL;
  self->document = NULL;
  G_OBJECT_CLASS (lap_sheets_view_parent_class)->dispose (object);
}

static void
lap_sheets_view_finalize (GObject *object)
{
  g_clear_pointer (&LAP_SHEETS_VIEW (object)->pages, lap_pages_free);
  G_OBJECT_CLASS (lap_sheets_view_parent_class)->finalize (object);
}

static void
lap_sheets_view_class_init (LapSheetsViewClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);
  static const struct {
    const char *name;
    gsize offset;
  } children[] = {
#define CHILD(member) { #member, G_STRUCT_OFFSET (LapSheetsView, member) }
    CHILD (side), CHILD (flap), CHILD (sheet), CHILD (paper), CHILD (landscape), CHILD (ink), CHILD (pieces),
    CHILD (things),
    CHILD (distance_row), CHILD (distance), CHILD (cards), CHILD (reads), CHILD (about), CHILD (save), CHILD (print),
    CHILD (thumbs_scroll), CHILD (thumbs), CHILD (preview), CHILD (progress),
#undef CHILD
  };

  G_OBJECT_CLASS (klass)->dispose = lap_sheets_view_dispose;
  G_OBJECT_CLASS (klass)->finalize = lap_sheets_view_finalize;
  widget_class->map = lap_sheets_view_map;
  widget_class->unmap = lap_sheets_view_unmap;
  gtk_widget_class_set_template_from_resource (widget_class, "/org/lapwing/Lapwing/ui/sheets-view.ui");
  for (guint i = 0; i < G_N_ELEMENTS (children); i++)
    gtk_widget_class_bind_template_child_full (widget_class, children[i].name, FALSE, children[i].offset);
  gtk_widget_class_bind_template_callback (widget_class, sheet_cb);
  gtk_widget_class_bind_template_callback (widget_class, changed_cb);
  gtk_widget_class_bind_template_callback (widget_class, page_cb);
  gtk_widget_class_bind_template_callback (widget_class, save_cb);
  gtk_widget_class_bind_template_callback (widget_class, lap_sheets_view_print);
}

/* A row with a switch at the end of the group `things`. */
static GtkWidget *
add_switch (LapSheetsView *self, const char *title, GtkWidget **toggle)
{
  GtkWidget *row;

  *toggle = gtk_switch_new ();
  row = lap_field_row (title, NULL, *toggle);
  g_signal_connect_swapped (*toggle, "notify::active", G_CALLBACK (changed_cb), self);
  adw_preferences_group_add (ADW_PREFERENCES_GROUP (self->things), row);
  return row;
}

static void
add_reads (LapSheetsView *self)
{
  for (guint i = 0; i < LAP_N_READS; i++) {
    if (lap_read_label (i) == NULL)
      continue;
    self->read_rows[i] = adw_action_row_new ();
    self->read_labels[i] = gtk_label_new (NULL);
    gtk_widget_add_css_class (self->read_labels[i], "numeric");
    adw_preferences_row_set_title (ADW_PREFERENCES_ROW (self->read_rows[i]), lap_read_label (i));
    adw_action_row_add_suffix (ADW_ACTION_ROW (self->read_rows[i]), self->read_labels[i]);
    adw_preferences_group_add (ADW_PREFERENCES_GROUP (self->reads), self->read_rows[i]);
  }
}

static void
add_larger (LapSheetsView *self)
{
  g_autofree char *metres = lap_distance_text (LAP_WEEK_SHEET_AIM);
  /* Translators: a distance: "To read from 2.0 m"; under it stands the paper that it takes. */
  g_autofree char *title = g_strdup_printf (_("To read from %s"), metres);
  GtkWidget *button = gtk_button_new_with_mnemonic (_("_Use it"));

  self->larger_row = adw_action_row_new ();
  gtk_widget_set_visible (self->larger_row, FALSE);
  gtk_widget_set_valign (button, GTK_ALIGN_CENTER);
  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (self->larger_row), title);
  adw_action_row_add_suffix (ADW_ACTION_ROW (self->larger_row), button);
  adw_action_row_set_activatable_widget (ADW_ACTION_ROW (self->larger_row), button);
  g_signal_connect_swapped (button, "clicked", G_CALLBACK (larger_cb), self);
  adw_preferences_group_add (ADW_PREFERENCES_GROUP (self->reads), self->larger_row);
}

static void
fill (GtkWidget *row, const LapWords *words, const char *before)
{
  g_autoptr (GtkStringList) list = gtk_string_list_new (NULL);

  if (before != NULL)
    gtk_string_list_append (list, before);
  for (guint i = 0; i < words->n; i++) {
    g_autofree char *pieces = before != NULL ? g_strdup_printf (_("In pieces on %s"), lap_words_label (words, i)) : NULL;

    gtk_string_list_append (list, pieces != NULL ? pieces : lap_words_label (words, i));
  }
  adw_combo_row_set_model (ADW_COMBO_ROW (row), G_LIST_MODEL (list));
}

static void
fill_rows (LapSheetsView *self)
{
  static const char *const switches[N_SWITCHES] = {
    N_("Body with the regions worked"), N_("Every round in order of time"), N_("Day it is printed"), N_("A page for each room"),
  };
  g_autoptr (GtkStringList) cards = gtk_string_list_new (NULL);

  for (guint i = 0; i < G_N_ELEMENTS (card_counts); i++) {
    g_autofree char *count = g_strdup_printf ("%u", card_counts[i]);

    gtk_string_list_append (cards, card_counts[i] == 0 ? _("As suits the paper") : count);
  }
  adw_combo_row_set_model (ADW_COMBO_ROW (self->cards), G_LIST_MODEL (cards));
  fill (self->paper, &lap_papers, NULL);
  fill (self->ink, &lap_inks, NULL);
  fill (self->pieces, &lap_papers, _("In one piece"));
  for (guint i = 0; i < lap_sheet_things.n; i++)
    self->thing_rows[i] = add_switch (self, lap_words_label (&lap_sheet_things, i), &self->thing_switches[i]);
  for (guint i = 0; i < N_SWITCHES; i++)
    self->rows[i] = add_switch (self, _(switches[i]), &self->switches[i]);
  add_reads (self);
  add_larger (self);
}

/* The distance that names are read from is typed in what the locale measures with. */
static void
say_unit (LapSheetsView *self)
{
  GtkAdjustment *range = gtk_spin_button_get_adjustment (GTK_SPIN_BUTTON (self->distance));
  gboolean feet = lap_customs ().feet;

  gtk_adjustment_set_upper (range, gtk_adjustment_get_upper (range) / lap_distance_unit ());
  lap_number_take_distance (GTK_SPIN_BUTTON (self->distance));
  adw_action_row_set_subtitle (ADW_ACTION_ROW (self->distance_row),
                               feet ? _("Feet; 0 suits the paper") : _("Metres; 0 suits the paper"));
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->distance), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  feet ? _("Names read from, feet") : _("Names read from, metres"), -1);
}

static void
lap_sheets_view_init (LapSheetsView *self)
{
  self->loading = TRUE;
  gtk_widget_init_template (GTK_WIDGET (self));
  lap_field_choice_tip (self->sheet);
  lap_field_choice_tip (self->pieces);
  lap_field_choice_tip (self->cards);
  gtk_widget_set_layout_manager (self->side, lap_column_new (WIDE));
  fill_rows (self);
  say_unit (self);
  self->loading = FALSE;
  self->page = lap_sheet_page_new (PREVIEW);
  adw_bin_set_child (ADW_BIN (self->preview), self->page);
}

void
lap_sheets_view_set_document (LapSheetsView *self, LapDocument *document)
{
  g_autoptr (GtkStringList) sheets = gtk_string_list_new (NULL);

  for (guint i = 0; i < lap_document_sheets_n (document); i++)
    gtk_string_list_append (sheets, _(lap_document_sheets_nth (document, i)->title));
  adw_combo_row_set_model (ADW_COMBO_ROW (self->sheet), G_LIST_MODEL (sheets));
  self->document = document;
  sheet_cb (self);
  g_signal_connect_object (document, "changed", G_CALLBACK (refresh), self, G_CONNECT_SWAPPED);
  refresh (self);
}
