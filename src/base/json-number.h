/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The shortest way to write a number. Internal to base/json-writer.c.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/* Enough for any number, with its closing NUL. */
#define LAP_JSON_NUMBER_SIZE 32

/* Writes the finite @value as JSON, with as few digits as read back to the same double (the nearest of
 * those), in any locale. From 0.0001 up to 2^53 without an exponent; beyond, 1e20, as whole numbers end at 64
 * bits. -0.0 is 0. */
void lap_json_number (double value, char out[LAP_JSON_NUMBER_SIZE]);

G_END_DECLS
