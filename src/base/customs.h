/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How people where the program runs write the time of day, order the days of a week and measure a distance, by the
 * system's locale. For what is shown on screen and on sheets; files, tables and published files are the same everywhere.
 *
 * Always true: the C locale, which is nobody's, stands for ISO 8601 and the metre. Nothing is kept: a test that sets
 * another locale sees it at once.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

typedef struct {
  guint    first_day;    /* of a week; 0 = Monday */
  gboolean twelve_hours; /* 6:30 PM, not 18:30 */
  gboolean feet;         /* not metres */
} LapCustoms;

LapCustoms lap_customs            (void);

/* "18:30", "6:30 PM": @minutes from midnight, up to 24:00. */
char      *lap_time_of_day_text   (int     minutes);
/* Cuts "AM" or "PM" off the end of @text, as the locale says it or in English. -1 without one, 0 before noon, 1 after. */
int        lap_cut_half_of_day    (char   *text);

/* "3.7 m", "12.2 ft": to the nearest tenth. */
char      *lap_distance_text      (double  metres);
/* The same, rounded up: what has to be there at least. */
char      *lap_distance_up_text   (double  metres);
/* Metres in what distances are told in. */
double     lap_distance_unit      (void);
/* Metres of "1.8 m", "180 cm", "6 ft", "5 ft 11 in" or "5' 11\""; a bare number is in what distances are told in. Points
 * and commas are both understood. FALSE where @text is none of these. */
gboolean   lap_distance_parse     (const char *text,
                                   double     *metres);
/* "37 m²", "398 ft²": to the nearest whole one, below ten to the tenth. */
char      *lap_area_text          (double  square_metres);
/* Square metres of "37 m²", "400 sq ft"; the same of areas. */
gboolean   lap_area_parse         (const char *text,
                                   double     *square_metres);

G_END_DECLS
