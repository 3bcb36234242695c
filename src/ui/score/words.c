/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/words.h"

#include "edit/verbs.h"

#include <glib/gi18n-lib.h>

static LapPart *
part_of (const LapScore *score, const LapBox *box)
{
  return score->timeline->parts[box->part].part;
}

char *
lap_box_name (const LapScore *score, guint index)
{
  const LapBox *box = &score->boxes[index];
  const LapTask *task = box->task != LAP_NO_TASK ? &score->timeline->tasks[box->task] : NULL;

  switch ((LapBoxKind) box->kind) {
  case LAP_BOX_EXERCISE:
    return g_strdup (lap_task_name (task));
  case LAP_BOX_TALK:
    return g_strdup (_("Talk"));
  case LAP_BOX_PAUSE:
    if (task->block->pause == NULL || *task->block->pause == '\0')
      return g_strdup (_("Pause"));
    /* Translators: %s is what the pause is for, such as "water". */
    return g_strdup_printf (_("Pause: %s"), task->block->pause);
  case LAP_BOX_OWN_PACE:
    if (!lap_box_is_block (box))
      return g_strdup (_("At your own pace"));
    if (task != NULL)
      return g_strdup (lap_task_name (task));
    return lap_block_title (lap_part_nth (part_of (score, box), box->block), score->timeline->catalogue);
  case LAP_BOX_GAP:
  default:
    return g_strdup (_("Rest"));
  }
}

char *
lap_box_where (const LapScore *score, guint index)
{
  const LapBox *box = &score->boxes[index];
  LapPart *part = part_of (score, box);

  if (!lap_box_is_block (box))
    return g_strdup (lap_part_title (part));
  if (part->rounds > 1)
    return g_strdup_printf (_("block %1$d of %2$u, round %3$d"), box->block + 1, lap_part_n (part), box->round);
  return g_strdup_printf (_("block %1$d of %2$u"), box->block + 1, lap_part_n (part));
}

char *
lap_box_label (const LapScore *score, guint index)
{
  const LapBox *box = &score->boxes[index];
  g_autofree char *name = lap_box_name (score, index), *where = lap_box_where (score, index);
  g_autofree char *start = lap_clock_text (box->start), *length = NULL;

  if (box->kind == LAP_BOX_OWN_PACE)
    length = g_strdup (_("at your own pace"));
  else if (box->kind != LAP_BOX_EXERCISE)
    length = g_strdup_printf (ngettext ("%d second", "%d seconds", box->end - box->start), box->end - box->start);
  else if (box->end > box->body)
    /* Translators: seconds of work and of the rest after it. */
    length = g_strdup_printf (ngettext ("work %1$d second, rest %2$d", "work %1$d seconds, rest %2$d", box->work),
                              box->work, box->end - box->body);
  else
    length = g_strdup_printf (ngettext ("work %d second, no rest", "work %d seconds, no rest", box->work), box->work);
  /* Translators: a block as it is spoken: name, where it stands, how long it is, when it starts. */
  return g_strdup_printf (_("%1$s, %2$s, %3$s, starts at %4$s"), name, where, length, start);
}
