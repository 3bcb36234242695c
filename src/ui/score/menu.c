/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/menu.h"

#include "ui/score/part-verbs.h"
#include "ui/shortcuts.h"

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

static void
add_item (GMenu *section, const char *label, const char *action, gboolean possible)
{
  /* No such action: what is there to be read, but not to be used. */
  g_autoptr (GMenuItem) item = g_menu_item_new (label, possible ? action : "read-only.never");
  g_autofree char *key = lap_shortcuts_key (action);

  if (key != NULL)
    g_menu_item_set_attribute (item, "accel", "s", key);
  g_menu_append_item (section, item);
}

void
lap_menu_add_section (GMenu *menu, const LapMenuItem *items, LapDocument *document)
{
  g_autoptr (GMenu) section = g_menu_new ();
  gboolean first = g_menu_model_get_n_items (G_MENU_MODEL (menu)) == 0;
  const char *why = first && !lap_document_is_editable (document) ? _("Read-only: it can’t be changed") : NULL;

  for (; items->label != NULL; items++)
    add_item (section, _(items->label), items->action, items->reads || lap_document_is_editable (document));
  g_menu_append_section (menu, why, G_MENU_MODEL (section));
}

/* One entry leads there and back. */
static void
add_only_here (GMenu *menu, LapBlock *block, int round, LapDocument *document)
{
  g_autoptr (GMenu) section = g_menu_new ();
  g_autofree char *only = g_strdup_printf (_("_Only in round %d"), round);

  add_item (section, lap_changes_find (block->in_round, round) != NULL ? _("As in r_ound 1 again") : only,
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

GtkWidget *
lap_menu_popover (GMenu *menu)
{
  GtkWidget *popover = gtk_popover_menu_new_from_model (G_MENU_MODEL (menu));

  gtk_popover_set_has_arrow (GTK_POPOVER (popover), FALSE);
  gtk_widget_set_halign (popover, GTK_ALIGN_START);
  return popover;
}

GtkWidget *
lap_score_menu_new (LapScoreContext *context)
{
  LapDocument *document = context->document;
  g_autoptr (GMenu) menu = g_menu_new ();
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
  return lap_menu_popover (menu);
}
