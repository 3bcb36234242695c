/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reads a figure: the member "figure" of an exercise. Members of its keys: key-read.c; of its kit:
 * gear-read.c; reuse ("like", "key", "as", "mirror"): reuse.c.
 *
 *   like       id of the figure this one starts from
 *   view       side (default; faces right), front
 *   above      true: seen from above; the picture is the floor. View front: lying on the back or the
 *              front; side: on the side
 *   tq         true or [kx, ky]: three-quarter view; a unit towards the viewer is drawn that far right and up
 *   wide       half the depth of its floor (20)
 *   cycle      there-and-back (default), loop, hold, hold-bottom, travel: see LapFigureCycle
 *   alt        true: the other side takes turns
 *   poster     the key that says most (default the last); ghost: the key shown pale behind it, false = none
 *   move       what is emphasised: parts, legs, arms, shanks, forearms. Parts: legR legL armR armL trunk head
 *   behind     parts drawn before the head; front: last; rear: first; far: in the far colour; solid: far
 *              limbs in the near colour; order: the whole order, parts left out are not drawn
 *   step       how high a foot that goes elsewhere is lifted (5); handstep: a hand (0)
 *   arc        [dx, dy] by which the way of the pelvis bulges; pike: degrees the trunk tips in the middle
 *   anchor     "neck": over planted hands the shoulders glide and the pelvis follows
 *   crop       nothing is drawn under this height; top: the tile reaches at least this high
 *   gear       kit; partner: x of the mirror behind which a second person does the same
 *   arrow      one or a list of {line: [x, y, x, y]}, {arc: [x, y, r, from, to]},
 *              {ell: [x, y, rx, ry, from, to]}, {of: joint, off: [dx, dy], range: [0, 1]}; both: two heads
 *   pause      [x, y] of the mark of a hold
 *   keys       1 to 12 key poses
 */
#include <glib/gi18n-lib.h>

#include "base/error.h"
#include "figure/key.h"

/* Cabinet projection of the three-quarter view: a unit towards the viewer is drawn this far left and down. */
#define DEPTH_X (-0.16)
#define DEPTH_Y (-0.5)

static gboolean
read_word (JsonObject *object, const char *name, const char *const *words, int *value, GError **error)
{
  const char *word = json_object_get_string_member_with_default (object, name, words[*value]);
  g_autofree char *all = NULL, *pointer = NULL;

  for (int i = 0; words[i] != NULL; i++)
    if (g_str_equal (words[i], word))
      {
        *value = i;
        return TRUE;
      }
  all = g_strjoinv (", ", (char **) words);
  pointer = g_strconcat ("/", name, NULL);
  lap_error_at (error, pointer, _("expected one of %s, not \"%s\""), all, word);
  return FALSE;
}

static gboolean
read_arrow (JsonObject *object, LapArrow *arrow, GError **error)
{
  const char *of = json_object_get_string_member_with_default (object, "of", NULL);

  *arrow = (LapArrow) { .kind = LAP_ARROW_LINE, .joint = -1 };
  if (!lap_fig_read_switch (object, "both", &arrow->both, error))
    return FALSE;
  if (of != NULL)
    {
      arrow->kind = LAP_ARROW_OF;
      arrow->joint = lap_fig_joint (of);
      arrow->v[2] = 0.0;
      arrow->v[3] = 1.0;
      return arrow->joint >= 0 && lap_fig_read_numbers (object, "off", 2, 2, arrow->v, error) &&
             lap_fig_read_numbers (object, "range", 2, 2, arrow->v + 2, error);
    }
  if (json_object_has_member (object, "line"))
    return lap_fig_read_numbers (object, "line", 4, 4, arrow->v, error);
  arrow->kind = LAP_ARROW_ARC;
  if (json_object_has_member (object, "ell"))
    return lap_fig_read_numbers (object, "ell", 6, 6, arrow->v, error);
  {
    double v[5] = { 0 };

    if (!lap_fig_read_numbers (object, "arc", 5, 5, v, error))
      return FALSE;
    memcpy (arrow->v, (double[]) { v[0], v[1], v[2], v[2], v[3], v[4] }, sizeof arrow->v);
  }
  return TRUE;
}

static gboolean
read_arrows (LapFigure *figure, JsonObject *object, GError **error)
{
  JsonNode *node = json_object_get_member (object, "arrow");

  if (node == NULL)
    return TRUE;
  if (JSON_NODE_HOLDS_OBJECT (node))
    {
      figure->n_arrows = 1;
      return read_arrow (json_node_get_object (node), &figure->arrows[0], error);
    }
  if (JSON_NODE_HOLDS_ARRAY (node) && json_array_get_length (json_node_get_array (node)) <= LAP_MAX_ARROWS)
    {
      JsonArray *array = json_node_get_array (node);

      for (guint i = 0; i < json_array_get_length (array); i++)
        {
          JsonNode *one = json_array_get_element (array, i);

          if (!JSON_NODE_HOLDS_OBJECT (one))
            break;
          if (!read_arrow (json_node_get_object (one), &figure->arrows[i], error))
            return FALSE;
          figure->n_arrows = i + 1;
        }
      if (figure->n_arrows == json_array_get_length (array))
        return TRUE;
    }
  lap_error_at (error, "/arrow", _("expected an arrow or a list of arrows"));
  return FALSE;
}

/* "tq": true or [kx, ky] */
static gboolean
read_depth (LapFigure *figure, JsonObject *object, GError **error)
{
  JsonNode *node = json_object_get_member (object, "tq");

  figure->depth = (LapFigPoint) { DEPTH_X, DEPTH_Y };
  if (node == NULL)
    return TRUE;
  if (!JSON_NODE_HOLDS_ARRAY (node))
    return lap_fig_read_switch (object, "tq", &figure->tq, error);
  figure->tq = TRUE;
  return lap_fig_read_numbers (object, "tq", 2, 2, &figure->depth.x, error);
}

/* "ghost": false or the key shown pale; "poster": the key shown strong, counted from the end when
 * negative. */
static gboolean
read_shown_keys (LapFigure *figure, JsonObject *object, GError **error)
{
  JsonNode *node = json_object_get_member (object, "ghost");
  double poster = -1.0, ghost = 0.0;

  if (node != NULL && JSON_NODE_HOLDS_VALUE (node) && json_node_get_value_type (node) == G_TYPE_BOOLEAN)
    ghost = -1.0;
  else if (!lap_fig_read_number (object, "ghost", &ghost, error))
    return FALSE;
  if (!lap_fig_read_number (object, "poster", &poster, error))
    return FALSE;
  figure->poster = poster < 0.0 ? (int) figure->n_keys + (int) poster : (int) poster;
  figure->ghost = (int) ghost;
  if (figure->poster < 0 || figure->poster >= (int) figure->n_keys || figure->ghost >= (int) figure->n_keys)
    {
      lap_error_at (error, "/poster", _("expected \"poster\" and \"ghost\" to be the number of a key"));
      return FALSE;
    }
  if (figure->ghost == figure->poster)
    figure->ghost = figure->n_keys > 1 && node == NULL ? (figure->poster == 0 ? 1 : 0) : -1;
  return TRUE;
}

static gboolean
read_settings (LapFigure *figure, JsonObject *object, GError **error)
{
  const char *anchor = json_object_get_string_member_with_default (object, "anchor", NULL);
  JsonNode *partner = json_object_get_member (object, "partner");
  struct {
    const char *name;
    double *value;
  } all[] = {
    { "wide", &figure->wide }, { "step", &figure->step }, { "handstep", &figure->handstep },
    { "pike", &figure->pike }, { "crop", &figure->crop }, { "top", &figure->top },
    { "partner", &figure->partner_about },
  };

  figure->anchor_neck = g_strcmp0 (anchor, "neck") == 0;
  figure->partner = partner != NULL;
  for (guint i = 0; i < G_N_ELEMENTS (all); i++)
    if (!lap_fig_read_number (object, all[i].name, all[i].value, error))
      return FALSE;
  return lap_fig_read_switch (object, "above", &figure->above, error) &&
         lap_fig_read_switch (object, "alt", &figure->alternates, error) &&
         lap_fig_read_numbers (object, "arc", 2, 2, &figure->arc.x, error) &&
         lap_fig_read_numbers (object, "pause", 2, 2, &figure->pause.x, error) &&
           read_depth (figure, object, error) &&
         lap_fig_read_parts (object, "move", &figure->moving, NULL, error) &&
         lap_fig_read_parts (object, "behind", &figure->behind, NULL, error) &&
         lap_fig_read_parts (object, "solid", &figure->solid, NULL, error) &&
         lap_fig_read_parts (object, "far", &figure->far_parts, NULL, error) &&
         lap_fig_read_parts (object, "order", NULL, &figure->order, error);
}

static gboolean
read_keys (LapFigure *figure, JsonObject *object, GError **error)
{
  JsonArray *keys = json_object_has_member (object, "keys") ? json_object_get_array_member (object, "keys")
    : NULL;
  guint n = keys != NULL ? json_array_get_length (keys) : 0;

  if (n < 1 || n > LAP_MAX_KEYS)
    {
      lap_error_at (error, "/keys", _("expected 1 to %d key poses"), LAP_MAX_KEYS);
      return FALSE;
    }
  for (guint i = 0; i < n; i++)
    {
      GError *inner = NULL;

      if (!lap_key_read (figure, json_array_get_object_element (keys, i), &figure->keys[i], &inner))
        {
          g_autofree char *pointer = g_strdup_printf ("/keys/%u%s", i, lap_error_pointer (inner));

          lap_error_at (error, pointer, "%s", inner->message);
          g_error_free (inner);
          return FALSE;
        }
    }
  figure->n_keys = n;
  return TRUE;
}

gboolean
lap_figure_read (LapFigure *figure, JsonObject *object, GError **error)
{
  static const char *const views[] = { "side", "front", NULL };
  static const char *const cycles[] = { "there-and-back", "loop", "hold", "hold-bottom", "travel", NULL };
  int view = 0, cycle = 0;

  figure->wide = 20.0;
  figure->step = 5.0;
  figure->crop = NAN;
  figure->pause = (LapFigPoint) { NAN, NAN };
  if (!read_word (object, "view", views, &view, error) || !read_word (object, "cycle", cycles, &cycle, error))
    return FALSE;
  figure->view = view;
  figure->cycle = cycle;
  return read_settings (figure, object, error) && lap_figure_read_gear (figure, object, error) &&
         read_keys (figure, object, error) && read_shown_keys (figure, object, error) &&
         read_arrows (figure, object, error);
}
