/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/moment.h"

void
lap_moment_forget (LapMoment *self)
{
  if (self->frame != 0)
    g_signal_handler_disconnect (gtk_widget_get_frame_clock (self->widget), self->frame);
  self->frame = 0;
  g_clear_handle_id (&self->idle, g_source_remove);
}

static void
idle_cb (gpointer data)
{
  LapMoment *self = data;

  self->idle = 0;
  self->run (self->widget);
}

/* The frame goes out before anything is done. */
static void
painted_cb (LapMoment *self)
{
  lap_moment_forget (self);
  self->idle = g_idle_add_once (idle_cb, self);
}

void
lap_moment_wait (LapMoment *self, GtkWidget *widget, GSourceOnceFunc run)
{
  lap_moment_forget (self);
  self->widget = widget;
  self->run = run;
  self->frame = g_signal_connect_swapped (gtk_widget_get_frame_clock (widget), "after-paint", G_CALLBACK (painted_cb), self);
}
