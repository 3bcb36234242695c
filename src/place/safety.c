/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/safety.h"

#include <glib/gi18n-lib.h>

const char *
lap_safety_first (void)
{
  return _("Warm up first. Stop at pain, dizziness, chest tightness or unusual breathlessness.");
}

const char *
lap_safety_more (void)
{
  return _("New, pregnant, ill or injured: ask a clinician first. Your coach’s own training, the rules of the "
           "venue and local codes come before this plan.");
}
