/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/rehearse/outputs.h"

struct _LapOutputs {
  GstDeviceMonitor *monitor; /* NULL while nobody looks */
  guint             watch;   /* of what it tells */
  GtkStringList    *names;
  GPtrArray        *devices; /* GstDevice, of the second line on */
};

LapOutputs *
lap_outputs_new (void)
{
  LapOutputs *self = g_new0 (LapOutputs, 1);

  self->names = gtk_string_list_new ((const char *const[]) { "", NULL });
  self->devices = g_ptr_array_new_with_free_func (gst_object_unref);
  return self;
}

void
lap_outputs_free (LapOutputs *self)
{
  lap_outputs_listen (self, FALSE);
  g_object_unref (self->names);
  g_ptr_array_unref (self->devices);
  g_free (self);
}

static void
add (LapOutputs *self, GstDevice *device)
{
  g_autofree char *name = gst_device_get_display_name (device);

  g_ptr_array_add (self->devices, gst_object_ref (device));
  gtk_string_list_append (self->names, name);
}

static void
take_out (LapOutputs *self, GstDevice *device)
{
  guint i;

  if (!g_ptr_array_find (self->devices, device, &i))
    return;
  g_ptr_array_remove_index (self->devices, i);
  gtk_string_list_remove (self->names, i + 1);
}

static gboolean
told_cb (GstBus *bus, GstMessage *message, gpointer data)
{
  GstDevice *device = NULL;

  if (GST_MESSAGE_TYPE (message) == GST_MESSAGE_DEVICE_ADDED) {
    gst_message_parse_device_added (message, &device);
    if (!g_ptr_array_find (((LapOutputs *) data)->devices, device, NULL))
      add (data, device);
  } else if (GST_MESSAGE_TYPE (message) == GST_MESSAGE_DEVICE_REMOVED) {
    gst_message_parse_device_removed (message, &device);
    take_out (data, device);
  }
  g_clear_pointer (&device, gst_object_unref);
  return G_SOURCE_CONTINUE;
}

static void
begin (LapOutputs *self)
{
  g_autoptr (GstBus) bus = NULL;
  GList *devices;

  if (!gst_init_check (NULL, NULL, NULL))
    return;
  self->monitor = gst_device_monitor_new ();
  gst_device_monitor_add_filter (self->monitor, "Audio/Sink", NULL);
  bus = gst_device_monitor_get_bus (self->monitor);
  self->watch = gst_bus_add_watch (bus, told_cb, self);
  gst_device_monitor_start (self->monitor);
  devices = gst_device_monitor_get_devices (self->monitor);
  for (GList *i = devices; i != NULL; i = i->next)
    add (self, i->data);
  g_list_free_full (devices, gst_object_unref);
}

static void
end (LapOutputs *self)
{
  g_clear_handle_id (&self->watch, g_source_remove);
  gst_device_monitor_stop (self->monitor);
  g_clear_pointer (&self->monitor, gst_object_unref);
  g_ptr_array_set_size (self->devices, 0);
  gtk_string_list_splice (self->names, 1, g_list_model_get_n_items (G_LIST_MODEL (self->names)) - 1, NULL);
}

void
lap_outputs_listen (LapOutputs *self, gboolean listen)
{
  if (listen && self->monitor == NULL)
    begin (self);
  else if (!listen && self->monitor != NULL)
    end (self);
}

GListModel *
lap_outputs_names (LapOutputs *self)
{
  return G_LIST_MODEL (self->names);
}

void
lap_outputs_set_none (LapOutputs *self, const char *none)
{
  gtk_string_list_splice (self->names, 0, 1, (const char *const[]) { none, NULL });
}

guint
lap_outputs_find (LapOutputs *self, const char *name)
{
  for (guint i = 1; i <= self->devices->len; i++)
    if (g_str_equal (gtk_string_list_get_string (self->names, i), name))
      return i;
  return 0;
}

GstElement *
lap_outputs_sink (LapOutputs *self, guint n)
{
  return n > 0 ? gst_device_create_element (g_ptr_array_index (self->devices, n - 1), NULL) : NULL;
}
