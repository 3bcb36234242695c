/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A sound output for tests that is plugged in and pulled out, and hears nothing: what GStreamer finds beside those
 * of the machine.
 */
#pragma once

#include <gst/gst.h>

/* Once, before anybody looks for outputs. */
void  false_output_register (void);
void  false_output_plug     (const char *name);
void  false_output_pull     (void);
/* How many times it was opened. */
guint false_output_opened   (void);
