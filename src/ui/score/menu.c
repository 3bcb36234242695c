/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/menu.h"

#include "ui/score/part-verbs.h"

#include <glib/gi18n-lib.h>

static const LapMenuItem clipboard[] = {
  { N_("Cu_t"), "score.cut" }, { N_("_Copy"), "score.copy", TRUE }, { N_("_Paste after it"), "score.paste" },
  { N_("_Duplicate"), "score.duplicate" }, { N_("_Remove"), "score.remove" }, { NULL, NULL },
};
static const LapMenuItem paste[] = { { N_("_Paste"), "score.paste" }, { NULL, NULL } };
static const LapMenuItem times[] = {
  { N_("Longer _work"), "score.work-more" }, { N_("Shorter work"), "score.work-less" },
  { N_("Longer r_est"), "score.rest-more" }, { N_("Shorter rest"), "score.rest-less" }, { NULL, NULL },
};
static const LapMenuItem places[] = {
  { N_("Move to the _left"), "score.move-left" }, { N_("Move to the ri_ght"), "score.move-right" }, { NULL, NULL },
};
static const LapMenuItem adding[] = {
  { N_("_Add a block"), "score.add" }, { N_("Add a tal_k"), "score.add-talk" },
  { N_("Add a pa_use"), "score.add-pause" }, { NULL, NULL },
};

/* One entry leads there and back. */
static void
add_only_here (GMenu *menu, LapBlock *block, int round, LapDocument *document)
{
  g_autoptr (GMenu) section = g_menu_new ();
  g_autofree char *only = g_strdup_printf (_("_Only in round %d"), round);

  lap_menu_add_item (section, lap_changes_find (block->in_round, round) != NULL ? _("As in r_ound 1 again") : only,
            "score.only-here", lap_document_is_editable (document));
  g_menu_append_section (menu, NULL, G_MENU_MODEL (section));
}

static void
add_part (GMenu *menu, const LapPart *part, LapDocument *document)
{
  g_autoptr (GMenu) section = g_menu_new (), within = g_menu_new ();

  lap_part_verbs_menu (within, part, document);
  g_menu_append_submenu (section, _("Pa_rt"), G_MENU_MODEL (within));
  g_menu_append_section (menu, NULL, G_MENU_MODEL (section));
}

GMenu *
lap_score_menu_new (LapScoreContext *context)
{
  LapDocument *document = context->document;
  GMenu *menu = g_menu_new ();
  LapBlock *block = context->block;

  lap_menu_add_section (menu, block != NULL ? clipboard : paste, document);
  if (block != NULL) {
    lap_menu_add_section (menu, times, document);
    lap_menu_add_section (menu, places, document);
  }
  lap_menu_add_section (menu, adding, document);
  if (block != NULL && block->kind == LAP_BLOCK_EXERCISE && context->round > 1)
    add_only_here (menu, block, context->round, document);
  if (block != NULL)
    add_part (menu, LAP_PART (LAP_OBJECT (block)->owner), document);
  return menu;
}
