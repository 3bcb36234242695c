/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Weeks for tests, from what a file has.
 */
#pragma once

#include "model/week.h"

/* The week in @text, with single quotes instead of double ones. Fails the test when it can't be read. */
LapWeek *test_week (const char *text);
