/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/script-view.h"

#include "ui/script-block.h"
#include "ui/script-pace.h"

#include <glib/gi18n-lib.h>

#define WIDE 760

struct _LapScriptView {
  AdwBin           parent_instance;
  LapScoreContext *context;
  GtkWidget       *page, *pace, *list;
  GPtrArray       *rows;   /* LapScriptBlock, held by the list */
  GPtrArray       *parts;  /* LapPart of each, to be compared only */
  GHashTable      *titles; /* LapPart -> its label */
  gboolean         stale;
  guint            idle;
};

G_DEFINE_FINAL_TYPE (LapScriptView, lap_script_view, ADW_TYPE_BIN)

/* Exercises and talks in the order of the session: a pause has nothing to say. */
static GPtrArray *
blocks_of (LapSession *session)
{
  GPtrArray *blocks = g_ptr_array_new ();

  for (guint p = 0; p < lap_session_n (session); p++) {
    LapPart *part = lap_session_nth (session, p);

    for (guint b = 0; b < lap_part_n (part); b++)
      if (lap_part_nth (part, b)->kind != LAP_BLOCK_PAUSE)
        g_ptr_array_add (blocks, lap_part_nth (part, b));
  }
  return blocks;
}

static LapPart *
part_of (LapBlock *block)
{
  return LAP_PART (LAP_OBJECT (block)->owner);
}

static gboolean
rows_hold (LapScriptView *self, GPtrArray *blocks)
{
  if (self->rows->len != blocks->len)
    return FALSE;
  for (guint i = 0; i < blocks->len; i++)
    if (lap_script_block_block (g_ptr_array_index (self->rows, i)) != g_ptr_array_index (blocks, i) ||
        g_ptr_array_index (self->parts, i) != part_of (g_ptr_array_index (blocks, i)))
      return FALSE;
  return TRUE;
}

/* The title of a part stands above its first block. */
static void
add_title (LapScriptView *self, LapBlock *block)
{
  GtkWidget *title = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (title), 0);
  gtk_label_set_wrap (GTK_LABEL (title), TRUE);
  gtk_widget_add_css_class (title, "heading");
  gtk_widget_add_css_class (title, "script-part");
  gtk_box_append (GTK_BOX (self->list), title);
  g_hash_table_insert (self->titles, part_of (block), title);
}

static void
make_rows (LapScriptView *self, GPtrArray *blocks)
{
  GtkWidget *child;

  g_ptr_array_set_size (self->rows, 0);
  g_ptr_array_set_size (self->parts, 0);
  g_hash_table_remove_all (self->titles);
  while ((child = gtk_widget_get_first_child (self->list)) != NULL)
    gtk_box_remove (GTK_BOX (self->list), child);
  for (guint i = 0; i < blocks->len; i++) {
    LapBlock *block = g_ptr_array_index (blocks, i);
    GtkWidget *row = lap_script_block_new (self->context, block);

    if (!g_hash_table_contains (self->titles, part_of (block)))
      add_title (self, block);
    gtk_box_append (GTK_BOX (self->list), row);
    g_ptr_array_add (self->rows, row);
    g_ptr_array_add (self->parts, part_of (block));
  }
}

static void
keep_first (GHashTable *first, LapBlock *block, guint index)
{
  if (!g_hash_table_contains (first, block))
    g_hash_table_insert (first, block, GUINT_TO_POINTER (index));
}

/* The first turn of each exercise, the first own words of each talk. */
static GHashTable *
first_of_each (const LapTimeline *t, const LapTalk *talk)
{
  GHashTable *first = g_hash_table_new (NULL, NULL);

  for (guint i = 0; i < talk->n; i++)
    keep_first (first, t->tasks[t->turns[i].task].block, i);
  for (guint i = 0; i < talk->n_own; i++)
    keep_first (first, t->tasks[t->intervals[talk->own[i].interval].task].block, i);
  return first;
}

/* Remedies cost a try each: one warning at a time, when there is time. */
static gboolean
fill_cb (gpointer data)
{
  LapScriptView *self = data;

  for (guint i = 0; i < self->rows->len; i++)
    if (lap_script_block_fill (g_ptr_array_index (self->rows, i)))
      return G_SOURCE_CONTINUE;
  self->idle = 0;
  return G_SOURCE_REMOVE;
}

static void
show_script (LapScriptView *self)
{
  LapDocument *document = self->context->document;
  g_autoptr (GPtrArray) blocks = blocks_of (lap_document_session (document));
  g_autoptr (GHashTable) first = first_of_each (lap_document_timeline (document),
                                                lap_checkup_talk (lap_document_checkup (document)));
  gpointer index;

  self->stale = FALSE;
  if (!rows_hold (self, blocks))
    make_rows (self, blocks);
  for (guint i = 0; i < self->rows->len; i++) {
    gboolean there = g_hash_table_lookup_extended (first, g_ptr_array_index (blocks, i), NULL, &index);

    gtk_label_set_text (g_hash_table_lookup (self->titles, g_ptr_array_index (self->parts, i)),
                        lap_part_title (g_ptr_array_index (self->parts, i)));
    lap_script_block_show (g_ptr_array_index (self->rows, i), there ? GPOINTER_TO_UINT (index) : G_MAXUINT);
  }
  lap_script_pace_show (LAP_SCRIPT_PACE (self->pace));
  if (self->idle == 0)
    self->idle = g_idle_add_full (G_PRIORITY_LOW, fill_cb, self, NULL);
}

static void
context_cb (LapScriptView *self, guint change)
{
  if (!(change & LAP_SCORE_PLAN))
    return;
  self->stale = TRUE;
  if (gtk_widget_get_mapped (GTK_WIDGET (self)))
    show_script (self);
}

/* Words change no row of the list. */
void
lap_script_view_commit (LapScriptView *self)
{
  for (guint i = 0; !self->stale && i < self->rows->len; i++)
    lap_script_block_commit (g_ptr_array_index (self->rows, i));
}

static void
lap_script_view_map (GtkWidget *widget)
{
  LapScriptView *self = LAP_SCRIPT_VIEW (widget);

  if (self->stale)
    show_script (self);
  GTK_WIDGET_CLASS (lap_script_view_parent_class)->map (widget);
}

static void
lap_script_view_unmap (GtkWidget *widget)
{
  lap_script_view_commit (LAP_SCRIPT_VIEW (widget));
  GTK_WIDGET_CLASS (lap_script_view_parent_class)->unmap (widget);
}

static void
lap_script_view_dispose (GObject *object)
{
  LapScriptView *self = LAP_SCRIPT_VIEW (object);

  self->stale = TRUE;
  g_clear_handle_id (&self->idle, g_source_remove);
  g_ptr_array_set_size (self->rows, 0);
  g_clear_object (&self->context);
  G_OBJECT_CLASS (lap_script_view_parent_class)->dispose (object);
}

static void
lap_script_view_finalize (GObject *object)
{
  LapScriptView *self = LAP_SCRIPT_VIEW (object);

  g_ptr_array_unref (self->rows);
  g_ptr_array_unref (self->parts);
  g_hash_table_unref (self->titles);
  G_OBJECT_CLASS (lap_script_view_parent_class)->finalize (object);
}

static void
lap_script_view_class_init (LapScriptViewClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = lap_script_view_dispose;
  G_OBJECT_CLASS (klass)->finalize = lap_script_view_finalize;
  GTK_WIDGET_CLASS (klass)->map = lap_script_view_map;
  GTK_WIDGET_CLASS (klass)->unmap = lap_script_view_unmap;
}

static void
lap_script_view_init (LapScriptView *self)
{
  GtkWidget *scroll = gtk_scrolled_window_new (), *clamp = adw_clamp_new ();

  self->stale = TRUE;
  self->rows = g_ptr_array_new ();
  self->parts = g_ptr_array_new ();
  self->titles = g_hash_table_new (NULL, NULL);
  self->page = gtk_box_new (GTK_ORIENTATION_VERTICAL, 18);
  self->list = gtk_box_new (GTK_ORIENTATION_VERTICAL, 12);
  gtk_widget_add_css_class (self->page, "script-page");
  gtk_box_append (GTK_BOX (self->page), self->list);
  adw_clamp_set_maximum_size (ADW_CLAMP (clamp), WIDE);
  adw_clamp_set_child (ADW_CLAMP (clamp), self->page);
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroll), GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroll), clamp);
  adw_bin_set_child (ADW_BIN (self), scroll);
}

void
lap_script_view_set_context (LapScriptView *self, LapScoreContext *context)
{
  g_return_if_fail (self->context == NULL);
  self->context = g_object_ref (context);
  self->pace = lap_script_pace_new (context->document);
  gtk_box_prepend (GTK_BOX (self->page), self->pace);
  g_signal_connect_object (context, "changed", G_CALLBACK (context_cb), self, G_CONNECT_SWAPPED);
}
