/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is printed, judged by readers that aren't ours: poppler's pdfinfo, pdffonts, pdftotext and pdfimages, and qpdf.
 */
#include "place/face.h"
#include "sheets/sheets.h"

#include <gio/gio.h>
#include <glib/gstdio.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

static char *folder;

/* Runs a reader; returns what it says, a NUL as a blank. */
static char *
ask (const char *first, ...)
{
  g_autoptr (GPtrArray) words = g_ptr_array_new ();
  g_autoptr (GSubprocess) process = NULL;
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) said = NULL;
  const char *bytes;
  char *out;
  gsize size;
  va_list args;

  va_start (args, first);
  for (const char *word = first; word != NULL; word = va_arg (args, const char *))
    g_ptr_array_add (words, (gpointer) word);
  va_end (args);
  g_ptr_array_add (words, NULL);
  process = g_subprocess_newv ((const char * const *) words->pdata,
                               G_SUBPROCESS_FLAGS_STDOUT_PIPE | G_SUBPROCESS_FLAGS_STDERR_MERGE, &error);
  g_assert_no_error (error);
  g_subprocess_communicate (process, NULL, NULL, &said, NULL, &error);
  g_assert_no_error (error);
  bytes = g_bytes_get_data (said, &size);
  out = g_strnfill (size, ' ');
  for (gsize i = 0; i < size; i++)
    out[i] = bytes[i] != '\0' ? bytes[i] : ' ';
  if (!g_subprocess_get_successful (process))
    g_error ("%s failed: %s", first, out);
  return out;
}

static GBytes *
print (LapTimeline *timeline, const char *sheet, LapSheetOptions options)
{
  g_autoptr (GError) error = NULL;
  GBytes *bytes = lap_sheet_print (lap_sheets_find (sheet), timeline, &options, &error);

  g_assert_no_error (error);
  return bytes;
}

/* The path of a PDF with @bytes. */
static char *
file_of (GBytes *bytes)
{
  static int n;
  g_autofree char *name = g_strdup_printf ("%d.pdf", n++);
  char *path = g_build_filename (folder, name, NULL);
  g_autoptr (GError) error = NULL;

  g_file_set_contents (path, g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes), &error);
  g_assert_no_error (error);
  return path;
}

static char *
print_file (LapTimeline *timeline, const char *sheet, LapSheetOptions options)
{
  g_autoptr (GBytes) bytes = print (timeline, sheet, options);

  return file_of (bytes);
}

/* The value behind "@key:" in what pdfinfo says. */
static char *
value_of (const char *info, const char *key)
{
  g_autofree char *start = g_strdup_printf ("%s:", key);
  g_auto (GStrv) lines = g_strsplit (info, "\n", -1);

  for (guint i = 0; lines[i] != NULL; i++)
    if (g_str_has_prefix (lines[i], start))
      return g_strstrip (g_strdup (lines[i] + strlen (start)));
  g_error ("pdfinfo says no %s", key);
}

/* White space as one blank, a hyphen at the end of a line taken out. */
static char *
flat (const char *text)
{
  GString *out = g_string_new (NULL);

  for (; *text != '\0'; text++) {
    if (!g_ascii_isspace (*text))
      g_string_append_c (out, *text);
    else if (out->len > 0 && out->str[out->len - 1] != ' ')
      g_string_append_c (out, ' ');
  }
  return g_string_free (out, FALSE);
}

/* ISO 216: A sizes; ANSI/ASME Y14.1: A is 8.5 by 11 inches (Letter), B 11 by 17 (Tabloid). A point is 1/72 inch. */
static void
test_paper (void)
{
  static const struct {
    LapPaper paper;
    double width, height; /* points */
  } rows[] = {
    { LAP_PAPER_A5, 148 * 72 / 25.4, 210 * 72 / 25.4 }, { LAP_PAPER_A4, 210 * 72 / 25.4, 297 * 72 / 25.4 },
    { LAP_PAPER_A3, 297 * 72 / 25.4, 420 * 72 / 25.4 }, { LAP_PAPER_A2, 420 * 72 / 25.4, 594 * 72 / 25.4 },
    { LAP_PAPER_LETTER, 8.5 * 72, 11 * 72 }, { LAP_PAPER_TABLOID, 11 * 72, 17 * 72 },
  };
  g_autoptr (LapTimeline) timeline = face_timeline (3, "", "");

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    for (guint landscape = 0; landscape < 2; landscape++) {
      g_autofree char *path = print_file (timeline, lap_sheets_nth (i % lap_sheets_n ())->id,
                                          (LapSheetOptions) { .paper = rows[i].paper, .landscape = landscape });
      g_autofree char *info = ask ("pdfinfo", path, NULL), *size = value_of (info, "Page size");
      g_auto (GStrv) words = g_strsplit (size, " ", -1);

      g_assert_cmpfloat_with_epsilon (g_ascii_strtod (words[0], NULL), landscape ? rows[i].height : rows[i].width, 0.01);
      g_assert_cmpfloat_with_epsilon (g_ascii_strtod (words[2], NULL), landscape ? rows[i].width : rows[i].height, 0.01);
    }
}

static void
test_metadata (void)
{
  g_autoptr (LapTimeline) timeline = face_timeline (10, "\"rounds\": 2,", "");

  for (guint i = 0; i < lap_sheets_n (); i++) {
    g_autofree char *path = print_file (timeline, lap_sheets_nth (i)->id, (LapSheetOptions) { .paper = LAP_PAPER_A3 });
    g_autofree char *info = ask ("pdfinfo", path, NULL), *title = value_of (info, "Title");
    g_autofree char *author = value_of (info, "Author"), *creator = value_of (info, "Creator");
    g_autofree char *tagged = value_of (info, "Tagged"), *structure = ask ("pdfinfo", "-struct-text", path, NULL);
    g_autofree char *json = ask ("qpdf", "--json", path, NULL);

    g_assert_cmpstr (title, ==, "Salt and Stairs");
    g_assert_cmpstr (author, ==, "Ines Varrow");
    g_assert_true (g_str_has_prefix (creator, "Lapwing"));
    g_assert_cmpstr (tagged, ==, "yes");
    g_assert_nonnull (strstr (structure, "Document"));
    g_assert_true (strstr (structure, "H1") != NULL || strstr (structure, "H2") != NULL);
    g_assert_null (strstr (structure, "rror"));
    g_assert_nonnull (strstr (json, "/Outlines"));
    g_assert_null (strstr (json, "nan"));
  }
}

/* Each font is embedded, cut to what is used, and can be read back. No picture is made of dots. */
static void
test_fonts (void)
{
  g_autoptr (LapTimeline) timeline = face_timeline (10, "\"rounds\": 2,", "");

  for (guint i = 0; i < lap_sheets_n (); i++) {
    g_autofree char *path = print_file (timeline, lap_sheets_nth (i)->id, (LapSheetOptions) { 0 });
    g_autofree char *fonts = ask ("pdffonts", path, NULL), *images = ask ("pdfimages", "-list", path, NULL);
    g_autofree char *checked = ask ("qpdf", "--check", path, NULL);
    g_auto (GStrv) lines = g_strsplit (g_strstrip (fonts), "\n", -1), pictures = g_strsplit (g_strstrip (images), "\n", -1);

    g_assert_cmpuint (g_strv_length (lines), >, 2);
    for (guint k = 2; lines[k] != NULL; k++)
      g_assert_nonnull (strstr (lines[k], "yes yes yes"));
    g_assert_cmpuint (g_strv_length (pictures), <=, 2);
    g_assert_nonnull (strstr (checked, "No syntax or stream encoding errors found"));
  }
}

static void
test_names (void)
{
  static const guint counts[] = { 1, 7, 23, 40 };

  for (guint i = 0; i < G_N_ELEMENTS (counts); i++) {
    g_autoptr (LapTimeline) timeline = face_timeline (counts[i], "\"rounds\": 2,", "");

    for (guint k = 0; k < lap_sheets_n (); k++) {
      g_autofree char *path = print_file (timeline, lap_sheets_nth (k)->id,
                                          (LapSheetOptions) { .paper = LAP_PAPER_A3, .landscape = i % 2 });
      g_autofree char *raw = ask ("pdftotext", "-raw", path, "-", NULL), *text = flat (raw);

      for (guint n = 0; n < timeline->n_turns; n++) {
        const char *name = lap_task_name (&timeline->tasks[timeline->turns[n].task]);
        g_auto (GStrv) words = g_strsplit_set (name, "- ", -1);

        if (strstr (text, name) == NULL && strchr (name, '-') == NULL)
          g_error ("%s isn't on the %s of %u", name, lap_sheets_nth (k)->id, counts[i]);
        for (guint w = 0; words[w] != NULL; w++)
          g_assert_nonnull (strstr (text, words[w]));
      }
      g_assert_nonnull (strstr (text, "clinician"));
    }
  }
}

/* The heights that the page list claims are those of the letters in the PDF: poppler's box of a word is as high as
 * the ascent and descent of its font, so two sizes are in proportion. */
static void
test_heights (void)
{
  g_autoptr (LapTimeline) timeline = face_timeline (6, "\"rounds\": 2,", "");
  LapSheetOptions a3 = { .paper = LAP_PAPER_A3, .landscape = TRUE };
  g_autoptr (LapPages) pages = lap_sheet_build (lap_sheets_find ("poster"), timeline, &a3);

  face_check_pages (pages);
  g_assert_cmpfloat (lap_pages_cap (pages, LAP_READ_FORMULA), >=, lap_cap_height (3, 40));
  g_assert_cmpfloat (lap_pages_cap (pages, LAP_READ_NAME), >=, lap_cap_height (3, LAP_ARC_READABLE));
}

static void
test_same_bytes (void)
{
  g_autoptr (LapTimeline) timeline = face_timeline (10, "\"rounds\": 2,", "");

  for (guint i = 0; i < lap_sheets_n (); i++) {
    g_autoptr (GBytes) once = print (timeline, lap_sheets_nth (i)->id, (LapSheetOptions) { 0 });
    g_autoptr (GBytes) again = print (timeline, lap_sheets_nth (i)->id, (LapSheetOptions) { 0 });

    g_assert_true (g_bytes_equal (once, again));
  }
}

/* https://reproducible-builds.org/specs/source-date-epoch/: seconds since 1970. */
static void
test_date (void)
{
  g_autoptr (LapTimeline) timeline = face_timeline (1, "", "");
  g_autofree char *path = NULL, *info = NULL, *date = NULL;

  g_setenv ("SOURCE_DATE_EPOCH", "1000000000", TRUE);
  path = print_file (timeline, "poster", (LapSheetOptions) { 0 });
  g_unsetenv ("SOURCE_DATE_EPOCH");
  info = ask ("pdfinfo", "-isodates", path, NULL);
  date = value_of (info, "CreationDate");
  g_assert_true (g_str_has_prefix (date, "2001-09-09T"));
}

/* Everything asked for at once: still whole, no picture made of dots, and readable as text. */
static void
test_asked (void)
{
  static const char *const said[] = { "poster", "2027-01-31", "works hard", "stations", "2027-01-31", "harder",
                                      "running-order", "Round 2 of 2", "one fixed set-up" };
  g_autoptr (LapTimeline) timeline = face_timeline (12, "\"rounds\": 2, \"run\": \"stations\",",
                                                    ", \"load\": \"8 to 12 kg\"");

  for (guint i = 0; i < G_N_ELEMENTS (said); i += 3)
    for (guint ink = 0; ink < lap_inks.n; ink++) {
      LapSheetOptions options = { .paper = LAP_PAPER_A3, .ink = ink, .body = TRUE, .unfolded = TRUE, .cards = 2,
                                  .distance = 2, .date = "2027-01-31" };
      g_autofree char *path = print_file (timeline, said[i], options), *checked = ask ("qpdf", "--check", path, NULL);
      g_autofree char *images = ask ("pdfimages", "-list", path, NULL), *raw = ask ("pdftotext", "-raw", path, "-", NULL);
      g_autofree char *text = flat (raw);
      g_auto (GStrv) pictures = g_strsplit (g_strstrip (images), "\n", -1);

      g_assert_nonnull (strstr (checked, "No syntax or stream encoding errors found"));
      g_assert_cmpuint (g_strv_length (pictures), <=, 2);
      g_assert_nonnull (strstr (text, said[i + 1]));
      g_assert_nonnull (strstr (text, said[i + 2]));
    }
}

/* zbar reads the code from the paper as a telephone would, at 300 dots an inch. */
static void
test_code (void)
{
  static const char json[] =
    "{\"format\": \"lapwing-session\", \"version\": 1, \"id\": \"s\", \"title\": \"Stairs\", \"link\": "
    "\"https://example.org/it's?a=1&b=\\\\\", \"parts\": [{\"kind\": \"main\", \"blocks\": [{\"exercise\": "
    "\"squat\", \"work\": 40, \"rest\": 20}]}]}";
  g_autoptr (LapTimeline) timeline = face_from_json (json);
  g_autofree char *path = print_file (timeline, "poster", (LapSheetOptions) { 0 });
  g_autofree char *picture = g_strconcat (path, "-picture", NULL), *png = g_strconcat (picture, ".png", NULL);
  g_autofree char *drawn = ask ("pdftoppm", "-r", "300", "-singlefile", "-png", path, picture, NULL);
  g_autofree char *read = ask ("zbarimg", "--quiet", "--raw", png, NULL);
  g_autofree char *content = ask ("qpdf", "--qdf", "--object-streams=disable", path, "-", NULL);

  g_assert_nonnull (strstr (read, "https://example.org/it's?a=1&b=\\"));
  g_assert_nonnull (strstr (content, "/URI (https://example.org/it%27s?a=1&b=%5C)"));
}

/* An A3 poster on A4: each piece says where it belongs, and together they show every name. */
static void
test_tiles (void)
{
  g_autoptr (LapTimeline) timeline = face_timeline (4, "", "");
  LapSheetOptions options = { .paper = LAP_PAPER_A3 };
  g_autoptr (LapPages) pages = lap_sheet_build (lap_sheets_find ("poster"), timeline, &options);
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) bytes = lap_pages_tile (pages, LAP_INK_COLOUR, LAP_PAPER_A4, NULL, &error);
  g_autofree char *path = file_of (bytes), *info = ask ("pdfinfo", path, NULL), *size = value_of (info, "Page size");
  g_autofree char *count = value_of (info, "Pages"), *raw = ask ("pdftotext", "-raw", path, "-", NULL);
  g_autofree char *text = flat (raw), *checked = ask ("qpdf", "--check", path, NULL);

  g_assert_no_error (error);
  g_assert_true (g_str_has_suffix (size, "(A4)"));
  g_assert_cmpint (atoi (count), ==, 2 * (int) lap_pages_n (pages));
  g_assert_nonnull (strstr (text, "row 2 of 2, column 1 of 1"));
  for (guint i = 0; i < timeline->n_tasks; i++) {
    g_auto (GStrv) words = g_strsplit_set (lap_task_name (&timeline->tasks[i]), "- ", -1);

    for (guint w = 0; words[w] != NULL; w++)
      g_assert_nonnull (strstr (text, words[w]));
  }
  g_assert_nonnull (strstr (checked, "No syntax"));
}

/* Gives up after the first page. */
static void
tell_cb (double share, gpointer cancellable)
{
  g_assert_cmpfloat (share, <=, 0.5);
  if (share > 0)
    g_cancellable_cancel (cancellable);
}

static void
test_given_up (void)
{
  g_autoptr (LapTimeline) timeline = face_timeline (4, "", "");
  LapSheetOptions options = { .paper = LAP_PAPER_A3 };
  g_autoptr (LapPages) pages = lap_sheet_build (lap_sheets_find ("poster"), timeline, &options);
  g_autoptr (GCancellable) cancellable = g_cancellable_new ();
  const LapSheetWatch watch = { cancellable, tell_cb, cancellable };
  g_autoptr (GError) error = NULL;

  /* Two pieces of A4. */
  g_assert_null (lap_pages_tile (pages, LAP_INK_COLOUR, LAP_PAPER_A4, &watch, &error));
  g_assert_error (error, G_IO_ERROR, G_IO_ERROR_CANCELLED);
  g_clear_error (&error);
  g_assert_null (lap_pages_print (pages, LAP_INK_COLOUR, &watch, &error));
  g_assert_error (error, G_IO_ERROR, G_IO_ERROR_CANCELLED);
}

static void
test_inks (void)
{
  g_autoptr (LapTimeline) timeline = face_timeline (4, "", "");

  for (guint ink = 0; ink < lap_inks.n; ink++) {
    g_autofree char *path = print_file (timeline, "poster", (LapSheetOptions) { .ink = ink });
    g_autofree char *content = ask ("qpdf", "--qdf", "--object-streams=disable", path, "-", NULL);

    /* Violet, 3b2f80, is there in colour only. */
    g_assert_cmpint (strstr (content, "0.231373 0.184314 0.501961") != NULL, ==, ink == LAP_INK_COLOUR);
  }
}

static void
clear_folder (void)
{
  const char *name;
  GDir *dir = g_dir_open (folder, 0, NULL);

  while ((name = g_dir_read_name (dir)) != NULL) {
    g_autofree char *path = g_build_filename (folder, name, NULL);

    g_unlink (path);
  }
  g_dir_close (dir);
  g_rmdir (folder);
  g_free (folder);
}

int
main (int argc, char **argv)
{
  int status;

  g_test_init (&argc, &argv, NULL);
  folder = g_dir_make_tmp ("lapwing-sheets-XXXXXX", NULL);
  g_test_add_func ("/sheets/print/date", test_date); /* first: it sets the environment */
  g_test_add_func ("/sheets/print/paper", test_paper);
  g_test_add_func ("/sheets/print/metadata", test_metadata);
  g_test_add_func ("/sheets/print/fonts", test_fonts);
  g_test_add_func ("/sheets/print/names", test_names);
  g_test_add_func ("/sheets/print/heights", test_heights);
  g_test_add_func ("/sheets/print/same-bytes", test_same_bytes);
  g_test_add_func ("/sheets/print/inks", test_inks);
  g_test_add_func ("/sheets/print/asked", test_asked);
  g_test_add_func ("/sheets/print/code", test_code);
  g_test_add_func ("/sheets/print/tiles", test_tiles);
  g_test_add_func ("/sheets/print/given-up", test_given_up);
  status = g_test_run ();
  clear_folder ();
  return status;
}
