/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Outlines: they are convex pieces, they stay in their rectangle, limbs are cut apart, and the paint is
 * paths only.
 */
#include <cairo-pdf.h>

#include "figures.h"
#include "sheets/figure-paint.h"

static double
turn_at (const LapFigPoint *p, guint n, guint i)
{
  LapFigPoint a = p[i], b = p[(i + 1) % n], c = p[(i + 2) % n];

  return (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
}

static void
check_contours (const char *id, const LapFigureDrawing *drawing, double width, double height)
{
  guint contours = 0;

  for (guint i = 0; i < drawing->n_shapes; i++)
    {
      g_assert_cmpuint (drawing->shapes[i].first, ==, contours);
      contours += drawing->shapes[i].n;
    }
  g_assert_cmpuint (contours, ==, drawing->n_contours);
  for (guint i = 0; i < drawing->n_contours; i++)
    {
      const LapFigPoint *p = &drawing->points[drawing->contours[i].first];

      g_assert_cmpuint (drawing->contours[i].n, >=, 3);
      for (guint j = 0; j < drawing->contours[i].n; j++)
        {
          double x = drawing->x + drawing->scale * p[j].x, y = drawing->y - drawing->scale * p[j].y;

          g_assert_cmpfloat (turn_at (p, drawing->contours[i].n, j), <=, 1e-6);
          if (x < -1.0 || x > width + 1.0 || y < -1.0 || y > height + 1.0)
            g_error ("%s: %.1f, %.1f is outside %.0f × %.0f", id, x, y, width, height);
        }
    }
}

/* All looks of all exercises, at all sizes they are shown. */
static void
check_everywhere (void)
{
  g_autoptr (LapFigureSet) set = lap_figure_set_new (builtin_figure, NULL);
  LapCatalogue *catalogue = lap_catalogue_builtin ();

  for (guint i = 0; i < lap_catalogue_n (catalogue); i++)
    {
      const char *id = lap_catalogue_nth (catalogue, i)->id;
      const LapFigure *figure = lap_figure_set_get (set, id, NULL);
      static const double sizes[] = { 20.0, 48.0, 400.0 };

      for (guint look = LAP_FIGURE_ICON; look <= LAP_FIGURE_POSTER; look++)
        for (guint j = look == LAP_FIGURE_POSTER ? 2 : 0; j < G_N_ELEMENTS (sizes); j++)
          for (double phase = 0.0; phase < 1.0; phase += look == LAP_FIGURE_TILE ? 0.45 : 1.0)
            {
              g_autoptr (LapFigureDrawing) drawing = lap_figure_draw (figure, look, LAP_FIGURE_PLAIN, phase,
                                                                      sizes[j],
                                                                      sizes[j] * 0.8);

              check_contours (id, drawing, sizes[j], sizes[j] * 0.8);
            }
    }
}

/* What no shape of the body may cover: the way round a moving leg, a gap wide. The squat's trunk ends
 * above the thigh. */
static gboolean
is_covered (const LapFigureDrawing *drawing, LapFigureRole role, LapFigPoint at)
{
  for (guint i = 0; i < drawing->n_shapes; i++)
    for (guint j = drawing->shapes[i].first; drawing->shapes[i].role == role &&
                                             j < drawing->shapes[i].first + drawing->shapes[i].n; j++)
      {
        const LapFigureContour *contour = &drawing->contours[j];
        const LapFigPoint *p = &drawing->points[contour->first];
        gboolean inside = TRUE;

        for (guint k = 0; inside && k < contour->n; k++)
          {
            LapFigPoint a = p[k], b = p[(k + 1) % contour->n];

            inside = (b.x - a.x) * (at.y - a.y) - (b.y - a.y) * (at.x - a.x) <= 0.0;
          }
        if (inside)
          return TRUE;
      }
  return FALSE;
}

static void
check_gap (void)
{
  g_autoptr (LapFigure) figure = figure_of ("{'like': 'squat'}");
  g_autoptr (LapFigureDrawing) drawing = lap_figure_draw (figure, LAP_FIGURE_TILE, LAP_FIGURE_PLAIN, 0.5,
                                                          400.0, 400.0);
  LapFigurePose pose;
  guint body = 0, leg = 0, gap = 0;

  lap_figure_pose (figure, 0.5, &pose);
  /* Down from the middle of the trunk to the middle of the thigh: body, then nothing, then the moving leg. */
  for (guint i = 0; i <= 200; i++)
    {
      LapFigPoint at = lap_fig_mix (pose.spine[2],
                                    lap_fig_mix (pose.p[LAP_JOINT_HIP], pose.p[LAP_JOINT_KNEE], 0.2),
                                      i / 200.0);
      gboolean is_body = is_covered (drawing, LAP_FIGURE_ROLE_BODY, at);
      gboolean is_leg = is_covered (drawing, LAP_FIGURE_ROLE_MOVING, at);

      g_assert_false (is_body && is_leg);
      body += is_body;
      leg += is_leg;
      gap += !is_body && !is_leg;
    }
  g_assert_cmpuint (body, >, 10);
  g_assert_cmpuint (leg, >, 10);
  g_assert_cmpuint (gap, >, 5);
}

/* Playing never changes the scale or the place of a tile. */
static void
check_tile_stays (void)
{
  g_autoptr (LapFigure) figure = figure_of ("{'like': 'side-lunge'}");
  g_autoptr (LapFigureDrawing) first = lap_figure_draw (figure, LAP_FIGURE_TILE, LAP_FIGURE_PLAIN, 0.0, 120.0,
                                                        96.0);

  for (double phase = 0.0; phase < 1.0; phase += 0.07)
    {
      g_autoptr (LapFigureDrawing) other = lap_figure_draw (figure, LAP_FIGURE_TILE, LAP_FIGURE_PLAIN, phase,
                                                            120.0, 96.0);

      g_assert_cmpfloat (first->scale, ==, other->scale);
      g_assert_cmpfloat (first->x, ==, other->x);
      g_assert_cmpfloat (first->y, ==, other->y);
    }
}

static guint
count_role (const LapFigureDrawing *drawing, LapFigureRole role)
{
  guint n = 0;

  for (guint i = 0; i < drawing->n_shapes; i++)
    n += drawing->shapes[i].role == role;
  return n;
}

static void
check_roles (void)
{
  g_autoptr (LapFigure) figure = figure_of ("{'like': 'reverse-lunge'}");
  g_autoptr (LapFigureDrawing) poster = lap_figure_draw (figure, LAP_FIGURE_POSTER, LAP_FIGURE_PLAIN, 0.0,
                                                         400.0, 400.0);
  g_autoptr (LapFigureDrawing) icon = lap_figure_draw (figure, LAP_FIGURE_ICON, LAP_FIGURE_NO_FLOOR, 0.25,
                                                       48.0, 48.0);

  g_assert_cmpuint (count_role (poster, LAP_FIGURE_ROLE_GHOST), ==, 1);
  g_assert_cmpuint (count_role (poster, LAP_FIGURE_ROLE_ARROW), ==, 1);
  g_assert_cmpuint (count_role (poster, LAP_FIGURE_ROLE_FLOOR), ==, 1);
  g_assert_cmpuint (count_role (poster, LAP_FIGURE_ROLE_FAR_MOVING), ==, 1);
  g_assert_cmpuint (count_role (icon, LAP_FIGURE_ROLE_GHOST), ==, 0);
  g_assert_cmpuint (count_role (icon, LAP_FIGURE_ROLE_ARROW), ==, 0);
  g_assert_cmpuint (count_role (icon, LAP_FIGURE_ROLE_FLOOR), ==, 0);
}

/* On a line of somebody else's a figure seen from above lies as low as the others stand, however high the room is; with
 * room about it, it lies in the middle. */
static void
check_above_on_the_line (void)
{
  g_autoptr (LapFigure) figure = figure_of ("{'like': 'figure-four-stretch'}");

  for (double height = 60.0; height <= 240.0; height += 90.0)
    {
      g_autoptr (LapFigureDrawing) icon = lap_figure_draw (figure, LAP_FIGURE_ICON, LAP_FIGURE_NO_FLOOR, 0.0, 80.0,
                                                           height);
      g_autoptr (LapFigureDrawing) tile = lap_figure_draw (figure, LAP_FIGURE_TILE, LAP_FIGURE_PLAIN, 0.0, 80.0, height);

      g_assert_cmpfloat_with_epsilon (icon->y - icon->scale * icon->box.y0, height, 1.0);
      g_assert_cmpfloat_with_epsilon (tile->y - tile->scale * (tile->box.y0 + tile->box.y1) / 2.0, height / 2.0, 1.0);
    }
}

/* When the other side takes its turn, it is the other side that is emphasised. */
static void
check_other_side (void)
{
  g_autoptr (LapFigure) figure = figure_of ("{'like': 'reverse-lunge'}");
  g_autoptr (LapFigureDrawing) far = lap_figure_draw (figure, LAP_FIGURE_TILE, LAP_FIGURE_PLAIN, 0.25, 96.0,
                                                      96.0);
  g_autoptr (LapFigureDrawing) near = lap_figure_draw (figure, LAP_FIGURE_TILE, LAP_FIGURE_PLAIN, 0.75, 96.0,
                                                       96.0);

  g_assert_cmpuint (count_role (far, LAP_FIGURE_ROLE_FAR_MOVING), ==, 1);
  g_assert_cmpuint (count_role (far, LAP_FIGURE_ROLE_MOVING), ==, 0);
  g_assert_cmpuint (count_role (near, LAP_FIGURE_ROLE_FAR_MOVING), ==, 0);
  g_assert_cmpuint (count_role (near, LAP_FIGURE_ROLE_MOVING), ==, 1);
}

static cairo_status_t
keep (void *closure, const unsigned char *data, unsigned int length)
{
  g_string_append_len (closure, (const char *) data, length);
  return CAIRO_STATUS_SUCCESS;
}

static void
check_pdf_is_vector (void)
{
  g_autoptr (LapFigure) figure = figure_of ("{'like': 'kettlebell-swing'}");
  g_autoptr (LapFigureDrawing) drawing = lap_figure_draw (figure, LAP_FIGURE_POSTER, LAP_FIGURE_PLAIN, 0.0,
                                                          400.0, 400.0);
  g_autoptr (GString) pdf = g_string_new (NULL);
  cairo_surface_t *surface = cairo_pdf_surface_create_for_stream (keep, pdf, 400.0, 400.0);
  cairo_t *cr = cairo_create (surface);

  lap_figure_paint (cr, drawing, lap_figure_palette (LAP_FIGURE_PRINT));
  cairo_show_page (cr);
  lap_figure_paint_outline (cr, drawing, 0x000000, 0xFFFFFF, 1.0);
  cairo_destroy (cr);
  cairo_surface_destroy (surface);
  g_assert_cmpuint (pdf->len, >, 1000);
  g_assert_null (g_strstr_len (pdf->str, pdf->len, "/Image"));
  g_assert_null (g_strstr_len (pdf->str, pdf->len, "/SMask"));
}

/* WCAG 2.1: relative luminance and contrast; 3 : 1 is asked of graphics. */
static double
luminance (guint32 rgb)
{
  double sum = 0.0;
  static const double weights[] = { 0.2126, 0.7152, 0.0722 };

  for (guint i = 0; i < 3; i++)
    {
      double c = (rgb >> (16 - 8 * i) & 0xFF) / 255.0;

      sum += weights[i] * (c <= 0.04045 ? c / 12.92 : pow ((c + 0.055) / 1.055, 2.4));
    }
  return sum;
}

static double
contrast (guint32 a, guint32 b)
{
  double one = luminance (a) + 0.05, other = luminance (b) + 0.05;

  return MAX (one, other) / MIN (one, other);
}

static void
check_contrast (void)
{
  static const LapFigureRole strong[] = { LAP_FIGURE_ROLE_BODY, LAP_FIGURE_ROLE_MOVING, LAP_FIGURE_ROLE_KIT,
                                          LAP_FIGURE_ROLE_ARROW };

  for (guint i = 0; i < LAP_FIGURE_N_COLOURS; i++)
    {
      const LapFigurePalette *palette = lap_figure_palette (i);

      for (guint j = 0; j < G_N_ELEMENTS (strong); j++)
        g_assert_cmpfloat (contrast (palette->role[strong[j]], palette->paper), >=, 3.0);
      g_assert_cmpfloat (contrast (palette->role[LAP_FIGURE_ROLE_BODY],
                                   palette->role[LAP_FIGURE_ROLE_MOVING]), >=, 1.7);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/figure/drawing/everywhere", check_everywhere);
  g_test_add_func ("/figure/drawing/gap", check_gap);
  g_test_add_func ("/figure/drawing/tile-stays", check_tile_stays);
  g_test_add_func ("/figure/drawing/roles", check_roles);
  g_test_add_func ("/figure/drawing/other-side", check_other_side);
  g_test_add_func ("/figure/drawing/above-on-the-line", check_above_on_the_line);
  g_test_add_func ("/figure/drawing/pdf-is-vector", check_pdf_is_vector);
  g_test_add_func ("/figure/drawing/contrast", check_contrast);
  return g_test_run ();
}
