/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/library-row.h"

#include "base/customs.h"
#include "base/seconds.h"
#include "model/when.h"
#include "ui/profile.h"

#include <glib/gi18n-lib.h>

struct _LapLibraryRow {
  GtkWidget  parent_instance;
  GtkWidget *profile, *title, *told, *where;
};

G_DEFINE_FINAL_TYPE (LapLibraryRow, lap_library_row, GTK_TYPE_WIDGET)

static GtkWidget *
add_label (GtkWidget *box, const char *class)
{
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_ellipsize (GTK_LABEL (label), PANGO_ELLIPSIZE_END);
  gtk_widget_add_css_class (label, class);
  gtk_box_append (GTK_BOX (box), label);
  return label;
}

static void
lap_library_row_dispose (GObject *object)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (object))) != NULL)
    gtk_widget_unparent (child);
  G_OBJECT_CLASS (lap_library_row_parent_class)->dispose (object);
}

static void
lap_library_row_class_init (LapLibraryRowClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = lap_library_row_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (klass), GTK_TYPE_BOX_LAYOUT);
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass), GTK_ACCESSIBLE_ROLE_GROUP);
  gtk_widget_class_set_css_name (GTK_WIDGET_CLASS (klass), "libraryrow");
}

static void
lap_library_row_init (LapLibraryRow *self)
{
  GtkWidget *words = gtk_box_new (GTK_ORIENTATION_VERTICAL, 2);
  GtkLayoutManager *layout = gtk_widget_get_layout_manager (GTK_WIDGET (self));

  gtk_box_layout_set_spacing (GTK_BOX_LAYOUT (layout), 14);
  self->profile = lap_profile_new ();
  gtk_widget_set_valign (self->profile, GTK_ALIGN_CENTER);
  gtk_widget_set_parent (self->profile, GTK_WIDGET (self));
  self->title = add_label (words, "session-list-title");
  self->told = add_label (words, "session-list-told");
  gtk_label_set_ellipsize (GTK_LABEL (self->told), PANGO_ELLIPSIZE_NONE);
  gtk_label_set_wrap (GTK_LABEL (self->told), TRUE);
  self->where = add_label (words, "session-list-told");
  gtk_label_set_ellipsize (GTK_LABEL (self->where), PANGO_ELLIPSIZE_MIDDLE);
  gtk_widget_set_hexpand (words, TRUE);
  gtk_widget_set_valign (words, GTK_ALIGN_CENTER);
  gtk_widget_set_parent (words, GTK_WIDGET (self));
}

GtkWidget *
lap_library_row_new (void)
{
  return g_object_new (LAP_TYPE_LIBRARY_ROW, NULL);
}

/* Whole days from the one of @then to the one of @now. */
static int
days_between (GDateTime *then, GDateTime *now)
{
  GDate a, b;
  int year, month, day;

  g_date_time_get_ymd (then, &year, &month, &day);
  g_date_set_dmy (&a, day, month, year);
  g_date_time_get_ymd (now, &year, &month, &day);
  g_date_set_dmy (&b, day, month, year);
  return g_date_days_between (&a, &b);
}

static char *
day_told (gint64 written, GDateTime *now)
{
  g_autoptr (GDateTime) utc = g_date_time_new_from_unix_utc (written), then = NULL;
  int days;

  if (utc == NULL)
    return g_strdup ("");
  then = g_date_time_to_timezone (utc, g_date_time_get_timezone (now));
  days = days_between (then, now);
  if (days == 0)
    return g_strdup (_("today"));
  if (days == 1)
    return g_strdup (_("yesterday"));
  return g_date_time_format (then, "%x");
}

static char *
amount_told (const LapIndexFacts *facts)
{
  if (facts->kind == LAP_INDEX_WEEK)
    return g_strdup_printf (ngettext ("%u class", "%u classes", facts->amount), facts->amount);
  return lap_clock_text (facts->amount);
}

static char *
warnings_told (guint n)
{
  return n > 0 ? g_strdup_printf (ngettext ("%u warning", "%u warnings", n), n) : g_strdup (_("no warnings"));
}

char *
lap_library_told (LapIndexEntry *entry, GDateTime *now)
{
  const LapIndexFacts *facts = &entry->facts;
  g_autofree char *amount = amount_told (facts), *warnings = warnings_told (facts->warnings);
  g_autofree char *day = day_told (entry->written, now);

  if (facts->kind == LAP_INDEX_UNREADABLE)
    /* Translators: a file in the list of sessions, and the day it was written. */
    return g_strdup_printf (_("can’t be read, %s"), day);
  /* Translators: "30:00, 3 warnings, yesterday", or "48 classes, 3 warnings, yesterday". */
  return g_strdup_printf (_("%1$s, %2$s, %3$s"), amount, warnings, day);
}

/* The folder of @path below @folder; NULL where it lies in @folder itself. */
static char *
where_told (const char *path, const char *folder)
{
  g_autofree char *in = g_path_get_dirname (path);
  gsize n = folder != NULL ? strlen (folder) : 0;

  if (folder != NULL && g_str_equal (in, folder))
    return NULL;
  return g_filename_display_name (n > 0 && g_str_has_prefix (in, folder) && in[n] == G_DIR_SEPARATOR ? in + n + 1 : in);
}

/* Of a week a column for each day, which the index has from Monday on. */
static char *
shape_of (const LapIndexFacts *facts)
{
  const char *shape = facts->shape != NULL ? facts->shape : "";
  const guint first = lap_customs ().first_day;

  if (facts->kind != LAP_INDEX_WEEK || strlen (shape) != LAP_N_DAYS)
    return g_strdup (shape);
  return g_strdup_printf ("%s%.*s", shape + first, (int) first, shape);
}

void
lap_library_row_show (LapLibraryRow *self, LapIndexEntry *entry, const char *folder)
{
  g_autoptr (GDateTime) now = g_date_time_new_now_local ();
  g_autofree char *told = lap_library_told (entry, now), *where = where_told (entry->path, folder);
  g_autofree char *path = g_filename_display_name (entry->path), *shape = shape_of (&entry->facts);

  lap_profile_set_shape (LAP_PROFILE (self->profile), shape);
  gtk_label_set_text (GTK_LABEL (self->title), entry->facts.title);
  gtk_label_set_text (GTK_LABEL (self->told), told);
  gtk_label_set_text (GTK_LABEL (self->where), where != NULL ? where : "");
  gtk_widget_set_visible (self->where, where != NULL);
  gtk_widget_set_tooltip_text (GTK_WIDGET (self), path);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, entry->facts.title,
                                  GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, told, -1);
}
