/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Text that can be seen and is no control that is out of use has a contrast of 4.5 : 1 with its ground at least, as
 * WCAG 2.1 asks for in 1.4.3 (level AA), light and dark. It is counted from the picture, so with whatever a style makes
 * half transparent. What lanes, marks and the week draw is no widget with text: its pairs of colours are in a table.
 */
#include "ui/windows.h"

#include "ui/palette.h"

#include <math.h>

#define SCALE 2   /* so large that the strokes of small letters have their own colour */
#define LEAST 4.5

typedef struct {
  GtkWidget       *top; /* what the picture is of */
  cairo_surface_t *picture;
  GString         *faults;
  guint            n;
} Look;

/* WCAG 2.1, "relative luminance" and "contrast ratio". */
static double
linear (guint32 channel)
{
  double c = channel / 255.0;

  return c <= 0.03928 ? c / 12.92 : pow ((c + 0.055) / 1.055, 2.4);
}

static double
luminance (guint32 pixel)
{
  return 0.2126 * linear (pixel >> 16 & 255) + 0.7152 * linear (pixel >> 8 & 255) + 0.0722 * linear (pixel & 255);
}

static double
contrast (guint32 one, guint32 other)
{
  double a = luminance (one), b = luminance (other);

  return (MAX (a, b) + 0.05) / (MIN (a, b) + 0.05);
}

static void
test_contrast (void)
{
  g_assert_cmpfloat_with_epsilon (contrast (0x000000, 0xffffff), 21, 1e-9);
  /* The grey that just passes on white, and the next one, known to whoever designs pages: common practice. */
  g_assert_cmpfloat (contrast (0x767676, 0xffffff), >=, LEAST);
  g_assert_cmpfloat (contrast (0x777777, 0xffffff), <, LEAST);
}

/* What lies under letters that are drawn, from the bottom. */
typedef struct {
  LapColour colour;
  double    alpha; /* 0 of the end */
} Coat;

#define PAPER  { LAP_COLOUR_PAPER, 1 }
#define FOLDED { LAP_COLOUR_FOLD, 1 }
#define WINDOW { LAP_COLOUR_WINDOW, 1 }
#define CARD   { LAP_COLOUR_CARD, 1 }
#define BODY   { LAP_COLOUR_WORK, 1 }      /* of a block or a class */
#define VEIL   { LAP_COLOUR_PAPER, 0.85 }  /* of what would land: score/landing-paint.c, week/ground.c, draw_ghost */
#define TINT   { LAP_COLOUR_WORK, 0.10 }   /* of what is selected: score/lane.c, draw_selection; week/card.c, draw_frame */
#define CLOSED { LAP_COLOUR_HEADER, 0.6 }  /* week/ground.c, shade */
#define SHORT  { LAP_COLOUR_NOTE, 0.35 }   /* for a change: score/posture.c, paint_lacking */

/* Which ink is put on what, and where that is done. Where letters may lie on paper, on what is folded and on either
 * where it is selected, these are all here. */
static const struct {
  const char *where;
  LapColour   ink;
  Coat        coats[3];
} painted[] = {
  { "score/block.c, draw_number; score/bracket-paint.c, draw_round", LAP_COLOUR_WORK, { PAPER } },
  { "score/block.c, draw_number, selected", LAP_COLOUR_WORK, { PAPER, TINT } },
  { "score/block.c, draw_number, folded", LAP_COLOUR_WORK, { FOLDED } },
  { "score/block.c, draw_number, folded and selected", LAP_COLOUR_WORK, { FOLDED, TINT } },
  { "score/block.c, draw_name; score/bracket-paint.c, draw_part; score/muscles-label.c", LAP_COLOUR_INK, { PAPER } },
  { "score/block.c, draw_name, selected", LAP_COLOUR_INK, { PAPER, TINT } },
  { "score/block.c, draw_name, folded", LAP_COLOUR_INK, { FOLDED } },
  { "score/block.c, draw_name, folded and selected", LAP_COLOUR_INK, { FOLDED, TINT } },
  { "score/block.c, draw_seconds", LAP_COLOUR_ON_WORK, { BODY } },
  { "score/block.c, draw_seconds, of a later round", LAP_COLOUR_INK, { { LAP_COLOUR_WORK2, 1 } } },
  { "score/ruler.c, paint_label; score/bracket-paint.c, draw_rest; score/strip.c", LAP_COLOUR_INK2, { PAPER } },
  { "score/ruler.c, paint_label, selected", LAP_COLOUR_INK2, { PAPER, TINT } },
  { "score/captions.c; score/ruler.c, paint_label, folded", LAP_COLOUR_INK2, { FOLDED } },
  { "score/captions.c, selected", LAP_COLOUR_INK2, { FOLDED, TINT } },
  { "score/posture.c, paint_label", LAP_COLOUR_INK, { PAPER, SHORT } },
  { "score/posture.c, paint_label, selected", LAP_COLOUR_INK, { PAPER, TINT, SHORT } },
  { "score/posture.c, paint_label, folded", LAP_COLOUR_INK, { FOLDED, SHORT } },
  { "score/posture.c, paint_label, folded and selected", LAP_COLOUR_INK, { FOLDED, TINT, SHORT } },
  { "mark.c, a stop", LAP_COLOUR_PAPER, { { LAP_COLOUR_STOP, 1 } } },
  { "mark.c, a warning", LAP_COLOUR_ON_NOTE, { { LAP_COLOUR_NOTE, 1 } } },
  { "mark.c, a note; score/marks.c, paint_more; score/landing-paint.c, draw_words; tile.c", LAP_COLOUR_INK, { CARD } },
  { "score/landing-paint.c, draw_ghost, over a body", LAP_COLOUR_WORK, { BODY, VEIL } },
  { "score/preview.c, draw_box, over a body", LAP_COLOUR_WORK, { BODY, { LAP_COLOUR_PAPER, 0.9 } } },
  { "week/labels.c, draw_day; week/card.c, draw_words", LAP_COLOUR_INK, { PAPER } },
  { "week/card.c, draw_words, when the house is closed", LAP_COLOUR_INK, { PAPER, CLOSED } },
  { "week/card.c, draw_words, picked then", LAP_COLOUR_INK, { PAPER, CLOSED, TINT } },
  { "week/labels.c, dates, lines, hours; week/card.c, details, numbers, what is off", LAP_COLOUR_INK2, { PAPER } },
  { "week/card.c, details, picked", LAP_COLOUR_INK2, { PAPER, TINT } },
  { "week/card.c, details, when the house is closed", LAP_COLOUR_INK2, { PAPER, CLOSED } },
  { "week/card.c, details, picked then", LAP_COLOUR_INK2, { PAPER, CLOSED, TINT } },
  { "week/ground.c, draw_ghost, over a class", LAP_COLOUR_WORK, { BODY, VEIL } },
  { "week/strip.c, draw_tag", LAP_COLOUR_PAPER, { { LAP_COLOUR_INK, 1 } } },
  { "week-load.c, draw_heads; balance.c, draw_number", LAP_COLOUR_INK2, { CARD } },
  { "rehearse/say.c, rehearse/next.c, rehearse/head.c", LAP_COLOUR_INK2, { WINDOW } },
  { "rehearse/count.c, caption_colour, rehearse/figure.c, draw_label", LAP_COLOUR_WORK, { WINDOW } },
  { "rehearse/count.c, caption_colour, rehearse/say.c", LAP_COLOUR_TALK, { WINDOW } },
  { "rehearse/count.c, caption_colour, held", LAP_COLOUR_EFFORT, { WINDOW } },
};

/* 0xrrggbb of what is seen when they are laid over each other. */
static guint32
mixed (const Coat *coats, guint n)
{
  double channels[3] = { 0 };

  for (guint i = 0; i < n && coats[i].alpha > 0; i++) {
    GdkRGBA colour = lap_colour (coats[i].colour);
    const double own[] = { colour.red, colour.green, colour.blue };

    for (guint c = 0; c < 3; c++)
      channels[c] += (own[c] - channels[c]) * coats[i].alpha;
  }
  return (guint32) lround (channels[0] * 255) << 16 | (guint32) lround (channels[1] * 255) << 8 |
         (guint32) lround (channels[2] * 255);
}

static void
test_painted (void)
{
  guint faults = 0;

  for (guint i = 0; i < G_N_ELEMENTS (painted); i++) {
    Coat ink = { painted[i].ink, 1 };
    double now = contrast (mixed (&ink, 1), mixed (painted[i].coats, G_N_ELEMENTS (painted[i].coats)));

    if (now < LEAST) {
      g_test_message ("%s: %.2f : 1", painted[i].where, now);
      faults++;
    }
  }
  g_assert_cmpuint (faults, ==, 0);
}

/* As it is once it has been laid out: till then there is nothing to paint. */
static GskRenderNode *
node_of (GtkWidget *widget)
{
  g_autoptr (GdkPaintable) paintable = gtk_widget_paintable_new (widget);

  for (;;) {
    GtkSnapshot *snapshot = gtk_snapshot_new ();
    GskRenderNode *node;

    gdk_paintable_snapshot (paintable, snapshot, gtk_widget_get_width (widget), gtk_widget_get_height (widget));
    node = gtk_snapshot_free_to_node (snapshot);
    if (node != NULL)
      return node;
    gtk_test_widget_wait_for_draw (widget);
  }
}

static cairo_surface_t *
picture_of (GtkWidget *widget)
{
  GskRenderNode *node = node_of (widget);
  int width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);
  cairo_surface_t *picture = cairo_image_surface_create (CAIRO_FORMAT_RGB24, width * SCALE, height * SCALE);
  cairo_t *cr = cairo_create (picture);

  cairo_scale (cr, SCALE, SCALE);
  gsk_render_node_draw (node, cr);
  gsk_render_node_unref (node);
  cairo_destroy (cr);
  cairo_surface_flush (picture);
  return picture;
}

/* All of it can be seen: nothing around cuts it. */
static gboolean
is_whole (GtkWidget *widget, GtkWidget *top, graphene_rect_t *at)
{
  if (!gtk_widget_compute_bounds (widget, top, at) || at->size.width < 4 || at->size.height < 6)
    return FALSE;
  for (GtkWidget *w = gtk_widget_get_parent (widget); w != NULL; w = w != top ? gtk_widget_get_parent (w) : NULL) {
    graphene_rect_t around;

    if ((w == top || GTK_IS_SCROLLED_WINDOW (w) || gtk_widget_get_overflow (w) == GTK_OVERFLOW_HIDDEN) &&
        gtk_widget_compute_bounds (w, top, &around) && !graphene_rect_contains_rect (&around, at))
      return FALSE;
  }
  return TRUE;
}

/* The greatest contrast of a colour in @at with the one that most of it has. */
static double
contrast_at (cairo_surface_t *picture, const graphene_rect_t *at)
{
  const guint32 *pixels = (guint32 *) (gpointer) cairo_image_surface_get_data (picture);
  int stride = cairo_image_surface_get_stride (picture) / 4;
  int left = at->origin.x * SCALE, right = (at->origin.x + at->size.width) * SCALE;
  int top = at->origin.y * SCALE, bottom = (at->origin.y + at->size.height) * SCALE;
  g_autoptr (GHashTable) counts = g_hash_table_new (NULL, NULL);
  GHashTableIter iter;
  gpointer pixel, count;
  guint32 ground = 0;
  guint most = 0;
  double best = 1;

  for (int y = top; y < bottom; y++)
    for (int x = left; x < right; x++) {
      gpointer key = GUINT_TO_POINTER (pixels[y * stride + x] & 0xffffff);

      g_hash_table_insert (counts, key, GUINT_TO_POINTER (GPOINTER_TO_UINT (g_hash_table_lookup (counts, key)) + 1));
    }
  g_hash_table_iter_init (&iter, counts);
  while (g_hash_table_iter_next (&iter, &pixel, &count))
    if (GPOINTER_TO_UINT (count) > most) {
      most = GPOINTER_TO_UINT (count);
      ground = GPOINTER_TO_UINT (pixel);
    }
  g_hash_table_iter_init (&iter, counts);
  while (g_hash_table_iter_next (&iter, &pixel, NULL))
    best = MAX (best, contrast (GPOINTER_TO_UINT (pixel), ground));
  return best;
}

static const char *
text_of (GtkWidget *widget)
{
  if (GTK_IS_LABEL (widget))
    return gtk_label_get_text (GTK_LABEL (widget));
  return GTK_IS_TEXT (widget) ? gtk_editable_get_text (GTK_EDITABLE (widget)) : "";
}

static void
look_at (Look *look, GtkWidget *widget)
{
  graphene_rect_t at;

  if (!gtk_widget_get_mapped (widget) || !gtk_widget_is_sensitive (widget) ||
      (widget != look->top && GTK_IS_NATIVE (widget)))
    return;
  if (*text_of (widget) != '\0' && gtk_widget_get_opacity (widget) > 0 && is_whole (widget, look->top, &at)) {
    double has = contrast_at (look->picture, &at);

    look->n++;
    if (has < LEAST)
      g_string_append_printf (look->faults, "“%s” has %.2f\n", text_of (widget), has);
  }
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL; child = gtk_widget_get_next_sibling (child))
    look_at (look, child);
}

/* Looks at @top, in which there are @least texts or more. */
static void
assert_readable (GtkWidget *top, const char *what, guint least)
{
  g_autoptr (GString) faults = g_string_new (NULL);
  Look look = { top, picture_of (top), faults };

  look_at (&look, top);
  if (faults->len > 0)
    g_test_message ("%s:\n%s", what, faults->str);
  g_assert_cmpuint (look.n, >=, least);
  g_assert_cmpuint (faults->len, ==, 0);
  cairo_surface_destroy (look.picture);
}

static void
look_at_dialogs (LapWindow *window, const char *const *actions, guint n)
{
  for (guint i = 0; i < n; i++) {
    g_autoptr (GtkWindow) dialog = NULL;

    gtk_widget_activate_action (GTK_WIDGET (window), actions[i], NULL);
    windows_settle (window);
    dialog = windows_dialog (window);
    gtk_test_widget_wait_for_draw (GTK_WIDGET (dialog));
    assert_readable (GTK_WIDGET (dialog), actions[i], 3);
    gtk_window_destroy (dialog);
  }
}

static void
test_session (void)
{
  static const char *const views[] = { "plan", "rehearse", "sheets", "script" };
  static const char *const dialogs[] = { "win.properties", "win.export", "win.publish", "win.mend", "win.shortcuts",
                                         "app.new", "app.preferences", "app.about" };
  LapWindow *window = windows_demo ();
  GtkMenuButton *button = GTK_MENU_BUTTON (windows_find (GTK_WIDGET (window), GTK_TYPE_MENU_BUTTON, "menu_button"));

  windows_click_box (window, 2);
  for (guint i = 0; i < G_N_ELEMENTS (views); i++) {
    gtk_widget_activate_action (GTK_WIDGET (window), "win.view", "s", views[i]);
    windows_settle (window);
    assert_readable (GTK_WIDGET (window), views[i], 10);
  }
  look_at_dialogs (window, dialogs, G_N_ELEMENTS (dialogs));
  gtk_menu_button_popup (button);
  windows_settle (window);
  assert_readable (GTK_WIDGET (gtk_menu_button_get_popover (button)), "menu", 10);
  gtk_menu_button_popdown (button);
  windows_settle (window);
  windows_close (window);
}

static void
test_week (void)
{
  static const char *const dialogs[] = { "win.properties", "win.publish", "win.import" };
  g_autofree char *path = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", "kelpline-week.lapweek", NULL);
  LapWindow *window = windows_open (path);

  assert_readable (GTK_WIDGET (window), "week", 10);
  look_at_dialogs (window, dialogs, G_N_ELEMENTS (dialogs));
  windows_close (window);
}

static void
in_scheme (gconstpointer test)
{
  static const AdwColorScheme schemes[] = { ADW_COLOR_SCHEME_FORCE_LIGHT, ADW_COLOR_SCHEME_FORCE_DARK };
  AdwStyleManager *manager = adw_style_manager_get_default ();

  for (guint i = 0; i < G_N_ELEMENTS (schemes); i++) {
    adw_style_manager_set_color_scheme (manager, schemes[i]);
    g_assert_cmpint (adw_style_manager_get_dark (manager), ==, i == 1);
    ((void (*) (void)) test) ();
  }
  adw_style_manager_set_color_scheme (manager, ADW_COLOR_SCHEME_DEFAULT);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/readable/contrast", test_contrast);
  g_test_add_data_func ("/ui/readable/painted", (gconstpointer) test_painted, in_scheme);
  g_test_add_data_func ("/ui/readable/session", (gconstpointer) test_session, in_scheme);
  g_test_add_data_func ("/ui/readable/week", (gconstpointer) test_week, in_scheme);
  return g_test_run ();
}
