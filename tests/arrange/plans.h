/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Plans for the tests of arranging: the demo's files, and sessions by chance from a seed.
 */
#pragma once

#include "checks/checks.h"

/* The session of data/demo/@name.lapwing. Fails the test when it can't be read. */
LapSession  *plan_demo   (const char *name);

/* A session of one or two parts with exercises from all the catalogue in it: the checks have much to say of most.
 * The same again from the same state of @rand. */
LapSession  *plan_random (GRand *rand);

/* Its timeline or checkup. Fails the test when it can't be laid out. */
LapTimeline *plan_lay_out (LapSession *session);
LapCheckup  *plan_check   (LapSession *session);

/* The text of its file. */
char        *plan_text    (LapSession *session);
