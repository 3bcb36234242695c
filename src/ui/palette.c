/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/palette.h"

#include <adwaita.h>

typedef struct {
  const char *name;
  guint32     light, dark;
  LapColour   contrast; /* the role it takes the colour of in high contrast */
  const char *platform; /* names of the platform that mean the same */
} Role;

static const Role roles[LAP_N_COLOURS] = {
  [LAP_COLOUR_PAPER] = { "paper", 0xfdfcf9, 0x221f2c, LAP_COLOUR_PAPER, "view_bg_color" },
  [LAP_COLOUR_WINDOW] = { "window", 0xf4f2ed, 0x1e1b26, LAP_COLOUR_WINDOW, "window_bg_color" },
  [LAP_COLOUR_CARD] = { "card", 0xffffff, 0x2f2b3b, LAP_COLOUR_CARD, "card_bg_color popover_bg_color dialog_bg_color" },
  [LAP_COLOUR_HEADER] = { "header", 0xe8e5de, 0x2b2735, LAP_COLOUR_HEADER, "headerbar_bg_color" },
  [LAP_COLOUR_FOLD] = { "fold", 0xf3f0e8, 0x1b1924, LAP_COLOUR_FOLD, NULL },
  [LAP_COLOUR_BUTTON] = { "button", 0xe3dfd6, 0x3b3649, LAP_COLOUR_BUTTON, NULL },
  [LAP_COLOUR_INK] = { "ink", 0x1f1c2c, 0xf4f1fb, LAP_COLOUR_INK,
                       "window_fg_color view_fg_color card_fg_color popover_fg_color dialog_fg_color "
                       "headerbar_fg_color" },
  [LAP_COLOUR_INK2] = { "ink2", 0x575269, 0xb8b2ca, LAP_COLOUR_INK, NULL },
  [LAP_COLOUR_LINE2] = { "line2", 0x87819a, 0x8f89a6, LAP_COLOUR_INK2, NULL },
  [LAP_COLOUR_LINE] = { "line", 0xdad5ca, 0x3e394c, LAP_COLOUR_LINE2, NULL },
  [LAP_COLOUR_WORK] = { "work", 0x463a8c, 0xb9abf7, LAP_COLOUR_WORK, "accent_color accent_bg_color" },
  [LAP_COLOUR_ON_WORK] = { "on_work", 0xffffff, 0x1e1833, LAP_COLOUR_ON_WORK, "accent_fg_color" },
  [LAP_COLOUR_WORK2] = { "work2", 0xc6bee8, 0x655aa2, LAP_COLOUR_PAPER, NULL },
  [LAP_COLOUR_TALK] = { "talk", 0x0b6b6b, 0x5fcac4, LAP_COLOUR_TALK, NULL },
  [LAP_COLOUR_EFFORT] = { "effort", 0xa3461a, 0xf4906c, LAP_COLOUR_EFFORT, NULL },
  [LAP_COLOUR_NOTE] = { "note", 0xf2b81c, 0xffd95e, LAP_COLOUR_NOTE, "warning_bg_color" },
  [LAP_COLOUR_ON_NOTE] = { "on_note", 0x1f1c2c, 0x1e1833, LAP_COLOUR_ON_NOTE, "warning_fg_color" },
  [LAP_COLOUR_STOP] = { "stop", 0xb01e36, 0xff8f9a, LAP_COLOUR_STOP, "destructive_color error_color" },
};

static guint32
value_now (LapColour colour)
{
  AdwStyleManager *manager = adw_style_manager_get_default ();
  const Role *role = &roles[adw_style_manager_get_high_contrast (manager) ? roles[colour].contrast : colour];

  return adw_style_manager_get_dark (manager) ? role->dark : role->light;
}

GdkRGBA
lap_colour (LapColour colour)
{
  guint32 v = value_now (colour);

  return (GdkRGBA) { (v >> 16) / 255.0f, ((v >> 8) & 0xff) / 255.0f, (v & 0xff) / 255.0f, 1 };
}

static void
define_colours (GtkCssProvider *provider)
{
  g_autoptr (GString) css = g_string_new (NULL);

  for (guint i = 0; i < LAP_N_COLOURS; i++) {
    g_auto (GStrv) names = g_strsplit (roles[i].platform != NULL ? roles[i].platform : "", " ", -1);

    g_string_append_printf (css, "@define-color lap_%s #%06x;\n", roles[i].name, value_now (i));
    for (guint j = 0; names[j] != NULL; j++)
      g_string_append_printf (css, "@define-color %s #%06x;\n", names[j], value_now (i));
  }
  gtk_css_provider_load_from_data (provider, css->str, -1);
}

void
lap_palette_install (GdkDisplay *display)
{
  g_autoptr (GtkCssProvider) provider = gtk_css_provider_new (), style = gtk_css_provider_new ();
  AdwStyleManager *manager = adw_style_manager_get_default ();

  define_colours (provider);
  gtk_style_context_add_provider_for_display (display, GTK_STYLE_PROVIDER (provider),
                                              GTK_STYLE_PROVIDER_PRIORITY_APPLICATION);
  gtk_css_provider_load_from_resource (style, "/org/lapwing/Lapwing/style.css");
  gtk_style_context_add_provider_for_display (display, GTK_STYLE_PROVIDER (style),
                                              GTK_STYLE_PROVIDER_PRIORITY_APPLICATION);
  g_signal_connect_object (manager, "notify::dark", G_CALLBACK (define_colours), provider, G_CONNECT_SWAPPED);
  g_signal_connect_object (manager, "notify::high-contrast", G_CALLBACK (define_colours), provider, G_CONNECT_SWAPPED);
}
