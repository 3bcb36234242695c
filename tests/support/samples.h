/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * For the tests that walk the tables of the model: a value for every property that may be written.
 */
#pragma once

#include "model/object.h"

/* A value that isn't the preset of @field, and what it looks like written (transfer full). Fails the test
 * where no value is known for the kind of the field. */
char *sample_value (const LapField *field, GValue *value);

/* What @field of @object holds, as it is written, or NULL where it is at its preset. Transfer full. */
char *written_field (gconstpointer object, const LapField *field);
