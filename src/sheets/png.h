/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A picture as PNG, written fast: most of a picture that is laid over a film is empty, and thousands of them are
 * written. A page that is printed once goes through cairo.
 */
#pragma once

#include <cairo.h>
#include <glib.h>

G_BEGIN_DECLS

/* @surface is an image of CAIRO_FORMAT_ARGB32. FALSE with LAP_ERROR_UNWRITABLE. */
gboolean lap_png_write (cairo_surface_t *surface,
                        const char      *path,
                        GError         **error);

G_END_DECLS
