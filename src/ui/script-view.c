/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/script-view.h"

#include "ui/script-block.h"
#include "ui/script-pace.h"

#include <glib/gi18n-lib.h>

#define WIDE   760
#define INDENT 24 /* of a round, under its block */

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

/* Where words stand: those of a block, or of one round of it. */
typedef struct {
  LapBlock *block;
  int       round;
  guint     index; /* of its first turn, or of a talk among the own; G_MAXUINT for none */
} Place;

static void
add_block (GArray *places, LapBlock *block)
{
  Place place = { block, 1, G_MAXUINT };

  g_array_append_val (places, place);
}

/* Exercises and talks in the order of the session, each followed by the rounds in which it has other words. A pause
 * has nothing to say. */
static GArray *
places_of (LapSession *session, GHashTable *found)
{
  GArray *places = g_array_new (FALSE, FALSE, sizeof (Place));

  for (guint p = 0; p < lap_session_n (session); p++) {
    LapPart *part = lap_session_nth (session, p);

    for (guint b = 0; b < lap_part_n (part); b++) {
      LapBlock *block = lap_part_nth (part, b);
      GArray *own = g_hash_table_lookup (found, block);

      if (own != NULL)
        g_array_append_vals (places, own->data, own->len);
      else if (block->kind != LAP_BLOCK_PAUSE)
        add_block (places, block);
    }
  }
  return places;
}

static LapPart *
part_of (LapBlock *block)
{
  return LAP_PART (LAP_OBJECT (block)->owner);
}

static gboolean
rows_hold (LapScriptView *self, GArray *places)
{
  if (self->rows->len != places->len)
    return FALSE;
  for (guint i = 0; i < places->len; i++) {
    const Place *place = &g_array_index (places, Place, i);
    LapScriptBlock *row = g_ptr_array_index (self->rows, i);

    if (lap_script_block_block (row) != place->block || lap_script_block_round (row) != place->round ||
        g_ptr_array_index (self->parts, i) != part_of (place->block))
      return FALSE;
  }
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
make_rows (LapScriptView *self, GArray *places)
{
  GtkWidget *child;

  g_ptr_array_set_size (self->rows, 0);
  g_ptr_array_set_size (self->parts, 0);
  g_hash_table_remove_all (self->titles);
  while ((child = gtk_widget_get_first_child (self->list)) != NULL)
    gtk_box_remove (GTK_BOX (self->list), child);
  for (guint i = 0; i < places->len; i++) {
    const Place *place = &g_array_index (places, Place, i);
    GtkWidget *row = lap_script_block_new (self->context, place->block, place->round);

    if (!g_hash_table_contains (self->titles, part_of (place->block)))
      add_title (self, place->block);
    gtk_widget_set_margin_start (row, place->round > 1 ? INDENT : 0);
    gtk_box_append (GTK_BOX (self->list), row);
    g_ptr_array_add (self->rows, row);
    g_ptr_array_add (self->parts, part_of (place->block));
  }
}

/* The places of a block that has been found at a turn or among the own; its first is the block's itself. */
static void
keep (GHashTable *found, const LapTimeline *t, guint32 task, int round, guint index)
{
  LapBlock *block = t->tasks[task].block;
  GArray *places = g_hash_table_lookup (found, block);
  Place place = { block, round, index };

  if (places == NULL) {
    places = g_array_new (FALSE, FALSE, sizeof (Place));
    g_hash_table_insert (found, block, places);
    place.round = 1;
    g_array_append_val (places, place);
  } else if (block->kind == LAP_BLOCK_EXERCISE) {
    const LapTask *first = &t->tasks[t->turns[g_array_index (places, Place, 0).index].task];

    if (lap_script_block_is_apart (first, &t->tasks[task], round))
      g_array_append_val (places, place);
  }
}

/* LapBlock -> Place: its first turn or own words, and where a round has other words. Every such round is a task. */
static GHashTable *
find_places (const LapTimeline *t, const LapTalk *talk)
{
  GHashTable *found = g_hash_table_new_full (NULL, NULL, NULL, (GDestroyNotify) g_array_unref);
  g_autofree guint8 *met = g_malloc0 (MAX (1, t->n_tasks));

  for (guint i = 0; i < talk->n; i++) {
    guint32 task = t->turns[i].task;

    if (!met[task])
      keep (found, t, task, t->turns[i].round, i);
    met[task] = TRUE;
  }
  for (guint i = 0; i < talk->n_own; i++)
    if (!g_hash_table_contains (found, t->tasks[t->intervals[talk->own[i].interval].task].block))
      keep (found, t, t->intervals[talk->own[i].interval].task, 1, i);
  return found;
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
  g_autoptr (GHashTable) found = find_places (lap_document_timeline (document),
                                              lap_checkup_talk (lap_document_checkup (document)));
  g_autoptr (GArray) places = places_of (lap_document_session (document), found);

  self->stale = FALSE;
  if (!rows_hold (self, places))
    make_rows (self, places);
  for (guint i = 0; i < self->rows->len; i++) {
    gtk_label_set_text (g_hash_table_lookup (self->titles, g_ptr_array_index (self->parts, i)),
                        lap_part_title (g_ptr_array_index (self->parts, i)));
    lap_script_block_show (g_ptr_array_index (self->rows, i), g_array_index (places, Place, i).index);
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
