/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The sound outputs of the computer, as GStreamer knows them; the list follows what is plugged in. Its first line is
 * no output but stands for none being chosen. An output is known by the name that people see, for that is what they
 * chose.
 *
 * lap_outputs_listen() before anything is listed, and while somebody looks.
 */
#pragma once

#include <gst/gst.h>
#include <gtk/gtk.h>

G_BEGIN_DECLS

typedef struct _LapOutputs LapOutputs;

LapOutputs *lap_outputs_new      (void);
void        lap_outputs_free     (LapOutputs *outputs);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapOutputs, lap_outputs_free)

/* Begins or ends to look at what is plugged in. Without GStreamer, or a part of it that knows outputs, only the
 * first line stays. */
void        lap_outputs_listen   (LapOutputs *outputs,
                                  gboolean    listen);
/* Of GtkStringObject. Transfer none. */
GListModel *lap_outputs_names    (LapOutputs *outputs);
/* What the first line says, translated. */
void        lap_outputs_set_none (LapOutputs *outputs,
                                  const char *none);
/* The line of an output; 0 where none of that name is there now. */
guint       lap_outputs_find     (LapOutputs *outputs,
                                  const char *name);
/* The end of a pipeline that is heard there: floating. NULL for line 0, or where it doesn't open. */
GstElement *lap_outputs_sink     (LapOutputs *outputs,
                                  guint       n);

G_END_DECLS
