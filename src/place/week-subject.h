/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a sheet of a week is about: a plain value.
 */
#pragma once

#include "effort/attached.h"
#include "model/week.h"

G_BEGIN_DECLS

typedef struct {
  const LapWeek  *week;
  int             date;        /* in the week that is meant, with what is different then; 0 = the week as it always is */
  LapAttachments *attachments; /* what the sessions say that its classes hold; NULL = none can be read */
} LapWeekSubject;

G_END_DECLS
