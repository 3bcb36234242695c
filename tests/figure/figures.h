/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Figures for tests: those of the catalogue, and those written down in a test.
 */
#pragma once

#include "catalogue/catalogue.h"
#include "figure/figure.h"
#include "figure/figure-limits.h"

/* The figure of a built-in exercise, for lap_figure_set_new() and lap_figure_new(). */
JsonObject *builtin_figure (const char *id, gpointer data);

/* The JSON object in @text (apostrophes stand for quotation marks); unref it. */
JsonObject *object_of (const char *text);

/* The figure written in @text; it must be readable. */
LapFigure *figure_of (const char *text);

/* All problems of @figure, a line each. */
char *problems_of (const LapFigure *figure);
