/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How a name is set in a narrow place: in whole words over some lines, and with dots where not all of them fit. Only
 * widths are looked at, so that it costs nothing to ask in every frame; a name is measured once.
 *
 * Words end at spaces and after hyphens. Set up with lap_name_new(), then ask for as many widths as there are.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

#define LAP_NAME_WORDS 16 /* of a name; the rest is one word */

typedef struct {
  char    *text;
  guint    n;
  int      starts[LAP_NAME_WORDS], ends[LAP_NAME_WORDS]; /* bytes of the text; what lies between two words is a space */
  double   widths[LAP_NAME_WORDS];
  double   space, dots;
} LapName;

/* @width gives the width of @length bytes of @text. */
typedef double (*LapNameWidth) (const char *text, int length, gpointer data);

LapName *lap_name_new   (const char    *text,
                         LapNameWidth   width,
                         gpointer       data);
void     lap_name_free  (LapName       *name);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapName, lap_name_free)

/* How @name is set in @width and at most @lines: a number that is another one whenever the words or the breaks are.
 * 0: not at all, since its first word doesn't fit. */
guint32  lap_name_fit   (const LapName *name,
                         double         width,
                         guint          lines);
/* The text of such a setting, a line each. Transfer full. */
char    *lap_name_set   (const LapName *name,
                         guint32        fit);

G_END_DECLS
