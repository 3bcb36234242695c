/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/settings.h"

#define SCHEMA "org.lapwing.Lapwing"

static GSettings *
open_settings (void)
{
  GSettingsSchemaSource *source = g_settings_schema_source_get_default ();
  GSettingsSchema *schema = source != NULL ? g_settings_schema_source_lookup (source, SCHEMA, TRUE) : NULL;

  if (schema == NULL)
    return NULL;
  g_settings_schema_unref (schema);
  return g_settings_new (SCHEMA);
}

GSettings *
lap_settings (void)
{
  static GSettings *settings;
  static gboolean looked;

  if (!looked)
    settings = open_settings ();
  looked = TRUE;
  return settings;
}

GSettings *
lap_settings_child (const char *name)
{
  return lap_settings () != NULL ? g_settings_get_child (lap_settings (), name) : NULL;
}

void
lap_settings_bind (const char *key, gpointer object, const char *property)
{
  if (lap_settings () != NULL)
    g_settings_bind (lap_settings (), key, object, property, G_SETTINGS_BIND_DEFAULT);
}

GVariant *
lap_settings_value (const char *key, GVariant *without)
{
  if (lap_settings () == NULL)
    return g_variant_ref_sink (without);
  g_variant_unref (g_variant_ref_sink (without));
  return g_settings_get_value (lap_settings (), key);
}

void
lap_settings_keep (const char *key, GVariant *value)
{
  g_autoptr (GVariant) kept = g_variant_ref_sink (value);

  if (lap_settings () != NULL)
    g_settings_set_value (lap_settings (), key, kept);
}
