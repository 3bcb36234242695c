/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Portable Network Graphics, W3C Recommendation, second edition (ISO/IEC 15948:2004): chunks in clause 5, the check
 * in annex D, colour type 6 in 11.2.2, filter type 0 in 9.2.
 */
#include "sheets/png.h"

#include "base/error.h"

#include <gio/gio.h>
#include <string.h>

#define LEVEL 1 /* of deflate: a film's worth in a minute matters more than a tenth of its size */

static guint32
check (const guchar *data, gsize n)
{
  static guint32 table[256];
  static gsize filled; /* several windows may publish at once */
  guint32 sum = 0xffffffff;

  if (g_once_init_enter (&filled)) {
    for (guint32 i = 0; i < 256; i++) {
      guint32 value = i;

      for (int k = 0; k < 8; k++)
        value = value & 1 ? 0xedb88320 ^ (value >> 1) : value >> 1;
      table[i] = value;
    }
    g_once_init_leave (&filled, 1);
  }
  for (gsize i = 0; i < n; i++)
    sum = table[(sum ^ data[i]) & 0xff] ^ (sum >> 8);
  return ~sum;
}

static void
put_number (GByteArray *to, guint32 number)
{
  const guchar bytes[] = { number >> 24, number >> 16, number >> 8, number };

  g_byte_array_append (to, bytes, sizeof bytes);
}

static void
put_chunk (GByteArray *to, const char *name, const guchar *data, guint n)
{
  guint start;

  put_number (to, n);
  start = to->len;
  g_byte_array_append (to, (const guchar *) name, 4);
  g_byte_array_append (to, data, n);
  put_number (to, check (to->data + start, to->len - start));
}

/* One row: a filter that changes nothing, then red, green, blue and alpha, which cairo has multiplied in. */
static void
fill_row (guchar *row, const guint32 *pixels, int width)
{
  *row++ = 0;
  for (int x = 0; x < width; x++, row += 4) {
    guint32 pixel = pixels[x], alpha = pixel >> 24;

    if (alpha == 0) {
      memset (row, 0, 4);
      continue;
    }
    row[0] = ((pixel >> 16 & 0xff) * 255 + alpha / 2) / alpha;
    row[1] = ((pixel >> 8 & 0xff) * 255 + alpha / 2) / alpha;
    row[2] = ((pixel & 0xff) * 255 + alpha / 2) / alpha;
    row[3] = alpha;
  }
}

static gboolean
squeeze (GConverter *converter, const guchar *data, gsize n, GByteArray *to, GError **error)
{
  guchar out[16384];
  gsize took, gave;
  GConverterResult result;

  do {
    result = g_converter_convert (converter, data, n, out, sizeof out, G_CONVERTER_INPUT_AT_END, &took, &gave, error);
    if (result == G_CONVERTER_ERROR)
      return FALSE;
    g_byte_array_append (to, out, gave);
    data += took;
    n -= took;
  } while (result != G_CONVERTER_FINISHED);
  return TRUE;
}

static GByteArray *
squeeze_rows (cairo_surface_t *surface, GError **error)
{
  int width = cairo_image_surface_get_width (surface), height = cairo_image_surface_get_height (surface);
  int stride = cairo_image_surface_get_stride (surface);
  const guchar *data = cairo_image_surface_get_data (surface);
  g_autoptr (GConverter) converter = G_CONVERTER (g_zlib_compressor_new (G_ZLIB_COMPRESSOR_FORMAT_ZLIB, LEVEL));
  g_autoptr (GByteArray) squeezed = g_byte_array_new ();
  gsize wide = 1 + 4 * (gsize) width;
  g_autofree guchar *rows = g_malloc (wide * height);

  for (int y = 0; y < height; y++)
    fill_row (rows + y * wide, (const guint32 *) (data + (gsize) y * stride), width);
  return squeeze (converter, rows, wide * height, squeezed, error) ? g_steal_pointer (&squeezed) : NULL;
}

gboolean
lap_png_write (cairo_surface_t *surface, const char *path, GError **error)
{
  static const guchar signature[] = { 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n' };
  static const guchar kind[] = { 8, 6, 0, 0, 0 }; /* bits, colour type, deflate, filters, not interlaced */
  g_autoptr (GByteArray) header = g_byte_array_new (), file = g_byte_array_new (), rows = NULL;
  g_autoptr (GError) why = NULL;

  cairo_surface_flush (surface);
  rows = squeeze_rows (surface, &why);
  put_number (header, cairo_image_surface_get_width (surface));
  put_number (header, cairo_image_surface_get_height (surface));
  g_byte_array_append (header, kind, sizeof kind);
  g_byte_array_append (file, signature, sizeof signature);
  put_chunk (file, "IHDR", header->data, header->len);
  if (rows != NULL) {
    put_chunk (file, "IDAT", rows->data, rows->len);
    put_chunk (file, "IEND", NULL, 0);
  }
  if (rows != NULL && g_file_set_contents_full (path, (const char *) file->data, file->len, G_FILE_SET_CONTENTS_NONE,
                                                0666, &why))
    return TRUE;
  g_set_error (error, LAP_ERROR, LAP_ERROR_UNWRITABLE, "%s: %s", path, why->message);
  return FALSE;
}
