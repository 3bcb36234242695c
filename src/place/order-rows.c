/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/order-rows.h"

#include "place/camera-plan.h"
#include "place/formula.h"
#include "place/stations.h"

#include <glib/gi18n-lib.h>
#include <string.h>

/* A row is never higher than a page: longer texts go on in rows of their own. */
#define LONGEST_TEXT  420 /* characters */
#define LISTED_ROUNDS 3   /* more are told by their spacing */

/* Texts */

static void
cell (LapOrder *o, LapTableRow *row, LapOrderColumn column, LapWeight weight, const char *text, const LapType *type)
{
  if (o->places[column] >= 0)
    lap_table_cell (o->table, row, o->places[column], 1, weight, text, type);
}

/* Up to LONGEST_TEXT letters of @text, to the last white space; *@text goes to what is left. */
static char *
take_text (const char **text)
{
  const char *end = *text, *space = NULL;
  char *taken;

  for (guint n = 0; n < LONGEST_TEXT && *end != '\0'; n++) {
    if (g_unichar_isspace (g_utf8_get_char (end)))
      space = end;
    end = g_utf8_next_char (end);
  }
  if (*end != '\0' && space != NULL)
    end = space;
  taken = g_strndup (*text, end - *text);
  *text = end;
  return taken;
}

/* A text of any length to be said, @span columns wide, in @row and, where it is long, in rows that follow. */
static void
say_cell (LapOrder *o, LapTableRow *row, guint span, const char *text)
{
  while (text != NULL && *text != '\0') {
    g_autofree char *piece = take_text (&text);

    lap_table_cell (o->table, row, o->places[LAP_ORDER_SAY], span, LAP_WEIGHT_PLAIN, piece, &o->plain);
    if (*text != '\0')
      row = lap_table_row (o->table, FALSE);
  }
}

/* Clocks */

static gboolean
is_even (GArray *starts)
{
  int step = g_array_index (starts, int, 1) - g_array_index (starts, int, 0);

  for (guint i = 2; i < starts->len; i++)
    if (g_array_index (starts, int, i) - g_array_index (starts, int, i - 1) != step)
      return FALSE;
  return TRUE;
}

static void
clocks_in (LapOrder *o, LapTableRow *row, LapOrderColumn column, GArray *starts, int shift, gboolean leads)
{
  for (guint i = 0; i < starts->len; i++) {
    g_autofree char *clock = lap_clock_text (g_array_index (starts, int, i) + shift);

    cell (o, row, column, i == 0 && leads ? LAP_WEIGHT_HEAVY : LAP_WEIGHT_PLAIN, clock,
          i > 0 ? &o->quiet : leads ? &o->strong : &o->second);
    if (i == 0 && starts->len > LISTED_ROUNDS && is_even (starts)) {
      g_autofree char *step = lap_clock_text (g_array_index (starts, int, 1) - g_array_index (starts, int, 0));
      g_autofree char *every = g_strdup_printf (_("every %s"), step);

      cell (o, row, column, LAP_WEIGHT_PLAIN, every, &o->quiet);
      i = starts->len - 2;
    }
  }
}

/* The clocks at which a row begins, one for each round. */
static void
clocks (LapOrder *o, LapTableRow *row, GArray *starts)
{
  gboolean film = o->places[LAP_ORDER_FILM] >= 0;

  if (film)
    clocks_in (o, row, LAP_ORDER_FILM, starts, (int) o->timeline->session->lead, TRUE);
  clocks_in (o, row, LAP_ORDER_CLOCK, starts, 0, !film);
}

/* The starts of a block, or of intervals of @kind that belong to no block, in the part at hand. */
static GArray *
starts_of (const LapOrder *o, guint block, LapIntervalKind kind)
{
  const LapStretch *stretch = &o->timeline->parts[o->p];
  GArray *starts = g_array_new (FALSE, FALSE, sizeof (int));
  int round = -1;

  for (guint i = 0; i < stretch->n_intervals; i++) {
    const LapInterval *interval = &o->timeline->intervals[stretch->interval + i];

    if (interval->block != block || (block == LAP_NO_BLOCK && interval->kind != kind) || interval->round == round ||
        (o->round != 0 && interval->round != 0 && interval->round != o->round))
      continue;
    g_array_append_val (starts, interval->start);
    round = interval->round;
  }
  return starts;
}

/* What is said, where the body goes, what is spared */

#define SAY(task, member) \
  ((task)->say != NULL && (task)->say->member != NULL ? (task)->say->member \
   : (task)->shown != NULL && (task)->shown->say != NULL ? (task)->shown->say->member : NULL)

/* Adds a sentence, with a full stop where its words have no end of their own. */
static void
add_sentence (GString *text, const char *words)
{
  g_string_append_printf (text, "%s%s", text->len > 0 ? " " : "", words);
  if (text->len > 0 && strchr (".!?:", text->str[text->len - 1]) == NULL)
    g_string_append_c (text, '.');
}

/* The setup, then the two cues that matter most. */
static char *
say_text (const LapTask *task)
{
  const char *setup = SAY (task, setup);
  char **cues = SAY (task, cues);
  GString *text = g_string_new (NULL);

  if (setup != NULL)
    add_sentence (text, setup);
  for (guint i = 0; cues != NULL && cues[i] != NULL && i < 2; i++)
    add_sentence (text, cues[i]);
  return g_string_free (text, FALSE);
}

/* The posture, and the seconds it takes to get there where it takes any; @rest is what there is. */
static void
put_goes (LapOrder *o, LapTableRow *row, const LapTask *task, int rest)
{
  LapChangeRule rule = lap_session_rule (o->timeline->session);
  const LapExercise *to = task->shown;
  g_autofree char *text = NULL;
  int seconds = 0;

  if (to == NULL)
    return;
  if (o->before != NULL)
    seconds = lap_change_seconds (&rule, o->before, to, o->timeline->parts[o->p].part->run == LAP_RUN_STATIONS);
  if (seconds > 0)
    text = g_strdup_printf (_("%s, %d\xc2\xa0s"), lap_words_label (&lap_postures, to->posture), seconds);
  else if (o->before != NULL && o->before->posture == to->posture)
    text = g_strdup (_("stays"));
  else
    text = g_strdup (lap_words_label (&lap_postures, to->posture));
  cell (o, row, LAP_ORDER_GOES, seconds > 0 ? LAP_WEIGHT_STRONG : LAP_WEIGHT_PLAIN, text, &o->plain);
  if (o->before != NULL && seconds > rest) {
    g_autofree char *short_by = g_strdup_printf (_("rest is %d s"), rest);

    cell (o, row, LAP_ORDER_GOES, LAP_WEIGHT_STRONG, short_by, &o->stop);
  }
  o->before = to;
}

/* Whether the screen is out of sight meanwhile: who leads has to say it all. */
static void
put_unseen (LapOrder *o, LapTableRow *row, const LapTask *task)
{
  if (task->shown == NULL || lap_posture_sees (task->shown->posture))
    return;
  lap_table_sign (o->table, row, o->places[LAP_ORDER_GOES], LAP_SIGN_UNSEEN, LAP_WEIGHT_PLAIN, _("no screen"), &o->plain);
  o->unseen = TRUE;
}

/* The side to film from, and how far away. */
static const char *const sides[] = {
  [LAP_VIEW_FRONT] = N_("front"), [LAP_VIEW_SIDE] = N_("side"), [LAP_VIEW_THREE_QUARTER] = N_("three-quarter"),
};

static void
put_camera (LapOrder *o, LapTableRow *row, const LapStation *station)
{
  const LapExercise *shown = station->task->shown;
  g_autofree char *away = lap_camera_block_text (o->timeline, o->p, station->turn->block);

  if (shown == NULL)
    return;
  cell (o, row, LAP_ORDER_CAMERA, LAP_WEIGHT_PLAIN, _(sides[shown->view]), &o->plain);
  cell (o, row, LAP_ORDER_CAMERA, LAP_WEIGHT_STRONG, away, &o->plain);
}

/* The joints it really loads, and how to spare those the session is also for. */
static void
put_care (LapOrder *o, LapTableRow *row, const LapTask *task)
{
  const LapSession *session = o->timeline->session;
  guint32 also = lap_words_mask (&lap_care_words, (const char * const *) session->also_for);

  for (guint word = 0; word < LAP_N_CARE; word++) {
    const LapCare *care = task->shown != NULL ? lap_exercise_care (task->shown, word) : NULL;
    gboolean spared = (also & LAP_BIT (word)) != 0 && care != NULL && care->say != NULL;
    g_autofree char *text = NULL;

    if (care == NULL || (care->load < 2 && !spared))
      continue;
    text = spared ? g_strdup_printf ("%s: %s", lap_words_label (&lap_care_words, word), care->say)
                  : g_strdup (lap_words_label (&lap_care_words, word));
    cell (o, row, LAP_ORDER_CARE, LAP_WEIGHT_PLAIN, text, &o->quiet);
  }
}

/* Rows */

static void
put_name (LapOrder *o, LapTableRow *row, const LapStation *station)
{
  const LapInterval *first = &o->timeline->intervals[station->turn->interval];
  g_autofree char *numbered = g_strdup_printf ("%u %s", station->number, station->name);
  g_autofree char *swap = g_strdup_printf (_("swap sides at %d s"), first->seconds);
  g_autofree char *later = station->later != NULL ? g_strdup_printf (_("round %s"), station->later) : NULL;
  g_autofree char *easier = station->easier != NULL ? g_strdup_printf (_("easier: %s"), station->easier) : NULL;
  LapType changed = o->quiet;

  changed.role = LAP_ROLE_EFFORT;
  cell (o, row, LAP_ORDER_DO, LAP_WEIGHT_HEAVY, lap_part_is_shown (o->timeline, o->p) ? numbered : station->name, &o->name);
  cell (o, row, LAP_ORDER_DO, LAP_WEIGHT_PLAIN, station->detail, &o->quiet);
  if (station->swaps && station->work > 0)
    cell (o, row, LAP_ORDER_DO, LAP_WEIGHT_PLAIN, swap, &o->quiet);
  cell (o, row, LAP_ORDER_DO, LAP_WEIGHT_STRONG, later, &changed);
  if ((o->options->hide & LAP_HIDE_OPTIONS) == 0)
    cell (o, row, LAP_ORDER_DO, LAP_WEIGHT_PLAIN, easier, &o->quiet);
  cell (o, row, LAP_ORDER_DO, LAP_WEIGHT_PLAIN, station->task->note, &o->quiet);
}

/* The seconds without work just before @start, for getting there. */
static int
rest_before (const LapOrder *o, int start)
{
  int seconds = 0;

  while (start > 0) {
    const LapInterval *interval = lap_timeline_at (o->timeline, start - 1);

    if (interval->kind == LAP_INTERVAL_WORK)
      break;
    seconds += interval->seconds;
    start = interval->start;
  }
  return seconds;
}

static void
exercise_row (LapOrder *o, const LapStation *station)
{
  LapTableRow *row = lap_table_row (o->table, FALSE);
  g_autoptr (GArray) starts = starts_of (o, station->turn->block, LAP_INTERVAL_WORK);
  g_autofree char *say = say_text (station->task);

  lap_table_ground (row, LAP_ROLE_WORK, MAX (station->work, 1), station->rest);
  clocks (o, row, starts);
  if (o->places[LAP_ORDER_FIGURE] >= 0 && station->task->shown != NULL)
    lap_table_figure (row, o->places[LAP_ORDER_FIGURE], station->task->shown, 8 * o->unit);
  put_name (o, row, station);
  put_goes (o, row, station->task, rest_before (o, station->turn->start));
  put_unseen (o, row, station->task);
  put_camera (o, row, station);
  put_care (o, row, station->task);
  say_cell (o, row, 1, say);
}

static void
words_row (LapOrder *o, guint i, const LapBlock *block)
{
  LapTableRow *row = lap_table_row (o->table, FALSE);
  g_autoptr (GArray) starts = starts_of (o, i, 0);
  g_autofree char *length = lap_duration_text (block->seconds);
  gboolean talk = block->kind == LAP_BLOCK_TALK;
  gboolean noted = talk || (block->note != NULL && *block->note != '\0');
  g_autofree char *what = g_strdup_printf ("%s, %s", talk ? _("Talk") : block->pause != NULL && *block->pause != '\0'
                                                                           ? block->pause : _("Pause"), length);

  lap_table_ground (row, LAP_ROLE_TALK, talk ? 1 : 0, talk ? 0 : 1);
  clocks (o, row, starts);
  lap_table_cell (o->table, row, o->places[LAP_ORDER_DO], noted ? 1 : 2, LAP_WEIGHT_STRONG, what, &o->name);
  if (talk)
    say_cell (o, row, LAP_N_ORDER_COLUMNS, block->talk);
  else
    cell (o, row, LAP_ORDER_SAY, LAP_WEIGHT_PLAIN, block->note, &o->plain);
}

/* Rests that belong to the part: between rounds, or after it. */
static void
rest_row (LapOrder *o, LapIntervalKind kind, int seconds, const char *what)
{
  g_autoptr (GArray) starts = starts_of (o, LAP_NO_BLOCK, kind);
  g_autofree char *length = lap_duration_text (seconds);
  g_autofree char *text = g_strdup_printf ("%s, %s", what, length);
  LapTableRow *row;

  if (starts->len == 0)
    return;
  row = lap_table_row (o->table, FALSE);
  lap_table_ground (row, LAP_ROLE_WORK, 0, 1);
  clocks (o, row, starts);
  lap_table_cell (o->table, row, o->places[LAP_ORDER_DO], 2, LAP_WEIGHT_STRONG, text, &o->name);
}

static void
part_row (LapOrder *o)
{
  const LapStretch *stretch = &o->timeline->parts[o->p];
  LapTableRow *row = lap_table_row (o->table, TRUE);
  g_autofree char *length = lap_duration_text (stretch->end - stretch->start);
  g_autofree char *formula = stretch->n_turns > 0 ? lap_formula_text (o->timeline, o->p) : NULL;
  GString *info = g_string_new (length);
  guint to = o->places[LAP_ORDER_DO];

  if (formula != NULL)
    g_string_append_printf (info, " · %s", formula);
  if (stretch->part->rounds > 1 && stretch->part->run != LAP_RUN_OWN_PACE && !o->options->unfolded)
    g_string_append_printf (info, " · %s", _("each row: round 1 above, later rounds below"));
  lap_table_cell (o->table, row, 1, to - 1, LAP_WEIGHT_HEAVY, lap_part_title (stretch->part), &o->part);
  lap_table_cell (o->table, row, to, LAP_N_ORDER_COLUMNS, LAP_WEIGHT_PLAIN, info->str, &o->quiet);
  g_string_free (info, TRUE);
}

static void
round_row (LapOrder *o, guint rounds)
{
  LapTableRow *row = lap_table_row (o->table, TRUE);
  g_autofree char *text = g_strdup_printf (_("Round %u of %u"), o->round, rounds);

  lap_table_cell (o->table, row, o->places[LAP_ORDER_DO], LAP_N_ORDER_COLUMNS, LAP_WEIGHT_HEAVY, text, &o->name);
}

/* The blocks of the part in order->round, or of all rounds folded. */
static void
put_blocks (LapOrder *o)
{
  const LapPart *part = o->timeline->parts[o->p].part;
  g_autoptr (GPtrArray) stations = o->round > 0 ? lap_stations_in (o->timeline, o->p, o->round)
                                                : lap_stations_of (o->timeline, o->p);
  guint next = 0;

  for (guint i = 0; i < lap_part_n (part); i++) {
    const LapBlock *block = lap_part_nth (part, i);

    if (block->kind == LAP_BLOCK_EXERCISE && next < stations->len)
      exercise_row (o, g_ptr_array_index (stations, next++));
    else if (block->kind != LAP_BLOCK_EXERCISE)
      words_row (o, i, block);
  }
  rest_row (o, LAP_INTERVAL_ROUND_REST, part->round_rest, _("Break between rounds"));
}

void
lap_order_put_part (LapOrder *o)
{
  const LapPart *part = o->timeline->parts[o->p].part;
  gboolean unfolded = o->options->unfolded && part->rounds > 1 && part->run != LAP_RUN_OWN_PACE;

  part_row (o);
  rest_row (o, LAP_INTERVAL_WORK, part->cap, _("As many rounds as you can"));
  for (o->round = 1; unfolded && o->round <= (guint) part->rounds; o->round++) {
    round_row (o, part->rounds);
    put_blocks (o);
  }
  o->round = 0;
  if (!unfolded)
    put_blocks (o);
  rest_row (o, LAP_INTERVAL_AFTER, part->rest_after, _("Break"));
}
