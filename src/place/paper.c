/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/paper.h"

#include <glib/gi18n-lib.h>

static const LapWord papers[] = {
  { "A4", N_("A4") }, { "A3", N_("A3") }, { "A2", N_("A2") }, { "A5", N_("A5") }, { "Letter", N_("Letter") },
  { "Tabloid", N_("Tabloid") },
};
const LapWords lap_papers = { "a paper", papers, G_N_ELEMENTS (papers) };

static const LapWord inks[] = {
  { "colour", N_("Colour") }, { "one", N_("One colour") }, { "outline", N_("Outline, saves ink") },
};
const LapWords lap_inks = { "an ink", inks, G_N_ELEMENTS (inks) };

static const LapWord things[] = {
  { "figures", N_("Figures") }, { "options", N_("Easier and harder") },
  { "details", N_("Weights, kit, repetitions, sides") },
  { "link", N_("Square code of the link") }, { "camera", N_("Camera") }, { "balance", N_("Chart of balance") },
};
const LapWords lap_sheet_things = { "a thing on a sheet", things, G_N_ELEMENTS (things) };

static const struct {
  double width, height;
} sizes[] = {
  [LAP_PAPER_A4] = { 210, 297 }, [LAP_PAPER_A3] = { 297, 420 }, [LAP_PAPER_A2] = { 420, 594 },
  [LAP_PAPER_A5] = { 148, 210 }, [LAP_PAPER_LETTER] = { 215.9, 279.4 }, [LAP_PAPER_TABLOID] = { 279.4, 431.8 },
};

void
lap_paper_size (const LapSheetOptions *options, double *width, double *height)
{
  double short_side = sizes[options->paper].width, long_side = sizes[options->paper].height;

  *width = options->landscape ? long_side : short_side;
  *height = options->landscape ? short_side : long_side;
}

char *
lap_version_text (const LapSheetOptions *options)
{
  /* Translators: a sheet on the wall says which day's plan it shows. */
  return options->date != NULL ? g_strdup_printf (_("Version of %s"), options->date) : NULL;
}
