/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/part-verbs.h"

#include "edit/verbs-part.h"
#include "edit/verbs.h"
#include "ui/part-properties.h"
#include "ui/score/folds.h"
#include "ui/score/menu.h"
#include "ui/shortcuts.h"

#include <glib/gi18n-lib.h>

#define MOST_ROUNDS 100 /* design, limits of files */

/* A deed on a part; FALSE where there is nothing to do. */
typedef gboolean (*Deed) (LapScoreContext *context, LapPart *part, guint index, int by);

gboolean
lap_part_add_rounds (LapScoreContext *context, LapPart *part, int by)
{
  if (part->run == LAP_RUN_OWN_PACE || part->rounds + by < 1 || part->rounds + by > MOST_ROUNDS)
    return FALSE;
  return lap_document_apply (context->document, lap_verb_set_rounds (part, part->rounds + by));
}

gboolean
lap_part_change_time (LapScoreContext *context, const LapTimeSource *source, int by)
{
  return lap_document_apply (context->document, lap_verb_set_time (source, lap_time_next (source, by),
                                                                   lap_document_catalogue (context->document)));
}

static gboolean
change_rounds (LapScoreContext *context, LapPart *part, guint index, int by)
{
  return lap_part_add_rounds (context, part, by);
}

static gboolean
change_between (LapScoreContext *context, LapPart *part, guint index, int by)
{
  LapTimeSource source;

  lap_time_source_round_rest (part, &source);
  return part->rounds > 1 && part->run != LAP_RUN_OWN_PACE && lap_part_change_time (context, &source, by);
}

static gboolean
change_after (LapScoreContext *context, LapPart *part, guint index, int by)
{
  LapTimeSource source;

  lap_time_source_rest_after (part, &source);
  return lap_part_change_time (context, &source, by);
}

static gboolean
open_alone (LapScoreContext *context, LapPart *part, guint index, int by)
{
  lap_folds_open (context, index, 0, FALSE);
  return TRUE;
}

/* What mostly follows a part of that kind: common practice, no source. */
static LapPartKind
kind_after (const LapPart *part)
{
  static const LapPartKind next[] = {
    [LAP_PART_OPENING] = LAP_PART_WARM_UP, [LAP_PART_WARM_UP] = LAP_PART_MAIN, [LAP_PART_MAIN] = LAP_PART_MAIN,
    [LAP_PART_COOL_DOWN] = LAP_PART_CLOSING, [LAP_PART_CLOSING] = LAP_PART_CLOSING,
  };

  return next[part->kind];
}

static gboolean
add_after (LapScoreContext *context, LapPart *part, guint index, int by)
{
  LapSession *session = lap_document_session (context->document);
  LapBlock *added;

  if (!lap_document_apply (context->document, lap_verb_add_part (session, index + 1, kind_after (part), &added)))
    return FALSE;
  lap_score_select (context, lap_score_locate (context, added, 1));
  return TRUE;
}

static gboolean
move_part (LapScoreContext *context, LapPart *part, guint index, int by)
{
  return lap_document_apply (context->document,
                             lap_verb_move_part (lap_document_session (context->document), part, by));
}

static gboolean
remove_part (LapScoreContext *context, LapPart *part, guint index, int by)
{
  return lap_document_apply (context->document,
                             lap_verb_remove_part (lap_document_session (context->document), part));
}

static const struct { const char *action; Deed deed; int by; } deeds[] = {
  { "score.rounds-more", change_rounds, 1 },    { "score.rounds-less", change_rounds, -1 },
  { "score.between-more", change_between, 5 },  { "score.between-less", change_between, -5 },
  { "score.after-more", change_after, 5 },      { "score.after-less", change_after, -5 },
  { "score.open-part", open_alone, 0 },         { "score.add-part", add_after, 0 },
  { "score.part-earlier", move_part, -1 },      { "score.part-later", move_part, 1 },
  { "score.remove-part", remove_part, 0 },
};

static void
deed_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapLane *lane = LAP_LANE (widget);
  guint i = 0, index = 0;
  LapPart *part = LAP_LANE_GET_CLASS (lane)->part (lane, &index);

  while (!g_str_equal (deeds[i].action, name))
    i++;
  if (part == NULL || !deeds[i].deed (lap_lane_context (lane), part, index, deeds[i].by))
    gtk_widget_error_bell (widget);
}

/* It says what it is of a plan that can only be read, too. */
static void
properties_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapLane *lane = LAP_LANE (widget);
  guint index = 0;
  LapPart *part = LAP_LANE_GET_CLASS (lane)->part (lane, &index);

  if (part != NULL)
    lap_part_properties_open (GTK_WINDOW (gtk_widget_get_root (widget)), lap_lane_context (lane)->document, part);
  else
    gtk_widget_error_bell (widget);
}

void
lap_part_verbs_install (GtkWidgetClass *klass)
{
  for (guint i = 0; i < G_N_ELEMENTS (deeds); i++)
    gtk_widget_class_install_action (klass, deeds[i].action, NULL, deed_action);
  gtk_widget_class_install_action (klass, "score.part-properties", NULL, properties_action);
  lap_shortcuts_bind_class (klass, LAP_SCOPE_PART);
}

static const LapMenuItem rounds[] = {
  { N_("One _more round"), "score.rounds-more" }, { N_("O_ne round less"), "score.rounds-less" }, { NULL, NULL },
};
static const LapMenuItem between[] = {
  { N_("Longer rest _between rounds"), "score.between-more" },
  { N_("Shorter rest between rounds"), "score.between-less" }, { NULL, NULL },
};
static const LapMenuItem after[] = {
  { N_("Longer rest a_fter the part"), "score.after-more" }, { N_("Shorter rest after the part"), "score.after-less" },
  { NULL, NULL },
};
static const LapMenuItem whole[] = {
  { N_("_Properties of the part"), "score.part-properties", TRUE }, { N_("_Add a part after it"), "score.add-part" },
  { N_("Move the part _earlier"), "score.part-earlier" }, { N_("Move the part _later"), "score.part-later" },
  { N_("_Remove the part"), "score.remove-part" }, { NULL, NULL },
};
static const LapMenuItem scale[] = {
  { N_("O_pen the part alone"), "score.open-part", TRUE }, { N_("All to one _scale"), "win.unfold", TRUE }, { NULL, NULL },
};

void
lap_part_verbs_menu (GMenu *menu, const LapPart *part, LapDocument *document)
{
  if (part->run != LAP_RUN_OWN_PACE)
    lap_menu_add_section (menu, rounds, document);
  if (part->run != LAP_RUN_OWN_PACE && part->rounds > 1)
    lap_menu_add_section (menu, between, document);
  lap_menu_add_section (menu, after, document);
  lap_menu_add_section (menu, whole, document);
  lap_menu_add_section (menu, scale, document);
}
