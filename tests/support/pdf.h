/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What poppler's pdfinfo says of a file.
 */
#pragma once

#include <glib.h>

/* "4 842 x 595": how many pages the PDF at @path has, and how many points wide and high. Transfer full. */
char *pdf_pages (const char *path);
