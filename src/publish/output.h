/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where a format writes to: a file, standard output or a folder. Bytes stream through; the person who waits is
 * told how far it is and may cancel.
 *
 * Always true: until lap_output_finish() returns TRUE, what was there before is untouched; freed without it,
 * nothing is left.
 *
 * Calling order: open, then writes or additions with progress in between, finish, free.
 */
#pragma once

#include "store/saving.h"

G_BEGIN_DECLS

/* @done goes from 0 to 1. Called in the thread that writes. */
typedef void (*LapProgressFunc) (double done, gpointer data);

typedef struct {
  LapProgressFunc progress; /* may be NULL */
  gpointer        data;
  GCancellable   *cancellable; /* may be NULL */
} LapProgress;

typedef struct _LapOutput LapOutput;

/* "-" as @path is standard output. @watch (copied) may be NULL. NULL with LAP_ERROR_UNWRITABLE where it can't be
 * written. */
LapOutput  *lap_output_open_file   (const char      *path,
                                    const LapProgress  *watch,
                                    GError         **error);
/* A folder that isn't there yet, or holds nothing but what was published there before. */
LapOutput  *lap_output_open_folder (const char      *path,
                                    const LapProgress  *watch,
                                    GError         **error);
void        lap_output_free        (LapOutput       *output);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapOutput, lap_output_free)

/* FALSE with LAP_ERROR_UNWRITABLE, or G_IO_ERROR_CANCELLED. */
gboolean    lap_output_write       (LapOutput       *output,
                                    gconstpointer    data,
                                    gsize            size,
                                    GError         **error);
/* The whole of a small format. lap_output_write_text() frees @text. */
gboolean    lap_output_write_bytes (LapOutput       *output,
                                    GBytes          *bytes,
                                    GError         **error);
gboolean    lap_output_write_text  (LapOutput       *output,
                                    GString         *text,
                                    GError         **error);
/* Tells how far it is, 0…1. FALSE with G_IO_ERROR_CANCELLED when nobody wants it any more. */
gboolean    lap_output_progress    (LapOutput       *output,
                                    double           done,
                                    GError         **error);
/* The file that is being written, for a library or a program that writes it itself; NULL for standard output. */
LapSaving  *lap_output_saving      (LapOutput       *output);
/* The folder that is being filled; NULL for a file. */
const char *lap_output_folder      (LapOutput       *output);
const LapProgress *lap_output_watch   (LapOutput       *output);
/* Runs another program until it ends or nobody wants it any more. @line (may be NULL) is given each line that it
 * says and tells what share of its work is done, or a number below 0 where the line is a complaint; from @done on
 * that is the progress. FALSE with the complaints (LAP_ERROR_UNWRITABLE), or G_IO_ERROR_CANCELLED after it was
 * ended. */
gboolean    lap_output_run         (LapOutput       *output,
                                    const char *const *words,
                                    double           done,
                                    double         (*line) (const char *line, gpointer data),
                                    gpointer         data,
                                    GError         **error);

gboolean    lap_output_finish      (LapOutput       *output,
                                    GError         **error);

G_END_DECLS
