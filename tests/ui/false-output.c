/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/false-output.h"

typedef GstDevice FalseDevice;
typedef GstDeviceClass FalseDeviceClass;
typedef GstDeviceProvider FalseProvider;
typedef GstDeviceProviderClass FalseProviderClass;

static GType false_device_get_type (void);
static GType false_provider_get_type (void);
G_DEFINE_TYPE (FalseDevice, false_device, GST_TYPE_DEVICE)
G_DEFINE_TYPE (FalseProvider, false_provider, GST_TYPE_DEVICE_PROVIDER)

static GstDeviceProvider *provider; /* that was started last */
static GstDevice *device;
static guint opened;

static GstElement *
create_element (GstDevice *self, const char *name)
{
  opened++;
  return gst_element_factory_make_full ("fakesink", "sync", TRUE, NULL);
}

static void
false_device_class_init (FalseDeviceClass *klass)
{
  klass->create_element = create_element;
}

static void
false_device_init (FalseDevice *self)
{
}

static gboolean
start (GstDeviceProvider *self)
{
  provider = self;
  if (device != NULL)
    gst_device_provider_device_add (self, device);
  return TRUE;
}

static void
stop (GstDeviceProvider *self)
{
  provider = NULL;
}

static void
false_provider_class_init (FalseProviderClass *klass)
{
  klass->start = start;
  klass->stop = stop;
  gst_device_provider_class_set_static_metadata (klass, "False outputs", "Sink/Audio", "For tests", "Lapwing");
}

static void
false_provider_init (FalseProvider *self)
{
}

void
false_output_register (void)
{
  gst_init (NULL, NULL);
  g_assert_true (gst_device_provider_register (NULL, "falseprovider", GST_RANK_PRIMARY, false_provider_get_type ()));
}

void
false_output_plug (const char *name)
{
  g_autoptr (GstCaps) caps = gst_caps_new_empty_simple ("audio/x-raw");

  g_assert_null (device);
  device = gst_object_ref_sink (g_object_new (false_device_get_type (), "display-name", name, "device-class", "Audio/Sink",
                                              "caps", caps, NULL));
  if (provider != NULL)
    gst_device_provider_device_add (provider, device);
}

void
false_output_pull (void)
{
  if (provider != NULL)
    gst_device_provider_device_remove (provider, device);
  g_clear_pointer (&device, gst_object_unref);
}

guint
false_output_opened (void)
{
  return opened;
}
