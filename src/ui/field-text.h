/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Values of the model as people type and read them in one line: texts, lists of words with commas between, times,
 * dates, hours ("06:00–12:00, 16:00–20:00"), closed dates ("2027-02-09, 2027-02-16–2027-02-20"), repetitions ("8–12"),
 * work and rest of rounds ("30/30, 40/20"). Times are spelt as the locale does, dates as in files; what is read is
 * generous: a time may be "18:30" or "6.30 pm" anywhere, a date as the locale has it.
 */
#pragma once

#include "base/record.h"

G_BEGIN_DECLS

/* Whether values of @field are typed in one line. */
gboolean lap_field_is_typed (const LapField *field);
/* Transfer full; "" for what is absent. */
char    *lap_field_text     (const LapField *field,
                             const GValue   *value);
/* Sets @value (zero-filled). FALSE where @text can't be read as that. */
gboolean lap_field_parse    (const LapField *field,
                             const char     *text,
                             GValue         *value);
/* What lap_field_parse() expects, translated and with an example as times are written here, or NULL where anything will
 * do. Transfer none. */
const char *lap_field_hint  (const LapField *field);

G_END_DECLS
