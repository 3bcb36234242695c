/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "model/class.h"

#include <glib/gi18n-lib.h>

static const LapWord strains[] = {
  { "easy", N_("Easy") },
  { "moderate", N_("Moderate") },
  { "hard", N_("Hard") },
};
const LapWords lap_strains = { "an effort", strains, G_N_ELEMENTS (strains) };

#define AT(member) G_STRUCT_OFFSET (LapClass, member)

static const LapField fields[] = {
  { "", "id", &lap_kind_text, AT (id), LAP_FIELD_REQUIRED, 1, 200 },
  { "", "title", &lap_kind_text, AT (title) },
  { "", "kind", &lap_kind_text, AT (kind), LAP_FIELD_REQUIRED, 1 },
  { "", "minutes", &lap_kind_int, AT (minutes), LAP_FIELD_REQUIRED, 1, LAP_DAY_MINUTES, 45 },
  { "", "session", &lap_kind_text, AT (session) },
  { "", "for", &lap_kind_text, AT (for_whom) },
  { "", "places", &lap_kind_int, AT (places), 0, 0, 1000000 },
  { "", "effort", &lap_kind_word, AT (strain), 0, .preset = -1, .words = &lap_strains },
  { "", "regions", &lap_kind_words, AT (regions), .words = &lap_regions },
  { "", "in-out", &lap_kind_int, AT (in_out), 0, 0, LAP_DAY_MINUTES },
  { "", "takes-part", &lap_kind_flag, AT (takes_part), .preset = TRUE },
  { "", "day", &lap_kind_word, AT (day), 0, .preset = -1, .words = &lap_days },
  { "", "start", &lap_kind_time, AT (start), 0, .preset = -1 },
  { "", "room", &lap_kind_text, AT (room), 0, 1, 200 },
  { "", "coach", &lap_kind_text, AT (coach), 0, 1, 200 },
  { "", "fixed", &lap_kind_flag, AT (fixed) },
  { "wish", "days", &lap_kind_words, AT (wish_days), .words = &lap_days },
  { "wish", "between", &lap_kind_pair, AT (wish_between) },
  { "", "fine", &lap_kind_texts, AT (fine) },
};

static gboolean
check (gpointer self, guint64 seen, const LapPath *path, GError **error)
{
  const LapClass *c = self;

  if (c->day >= 0 && c->start < 0) {
    lap_path_error (error, path, "a class with a \"day\" needs a \"start\"");
    return FALSE;
  }
  if (c->start >= 0 && lap_class_end (c) > LAP_DAY_MINUTES) {
    lap_path_error (error, LAP_PATH_MEMBER (path, "start"), "expected a class of %d minutes to end by 24:00", c->minutes);
    return FALSE;
  }
  return TRUE;
}

static const LapRecord record = {
  "a class", fields, G_N_ELEMENTS (fields), .extras = G_STRUCT_OFFSET (LapObject, extras), .check = check,
};

G_DEFINE_TYPE (LapClass, lap_class, LAP_TYPE_OBJECT)

static void
lap_class_class_init (LapClassClass *klass)
{
  lap_object_class_install (LAP_OBJECT_CLASS (klass), &record);
}

static void
lap_class_init (LapClass *self)
{
  lap_object_setup (LAP_OBJECT (self));
}

LapClass *
lap_class_new (const char *kind, int minutes)
{
  LapClass *c = g_object_new (LAP_TYPE_CLASS, NULL);

  c->id = g_uuid_string_random ();
  c->kind = g_strdup (kind);
  c->minutes = minutes;
  return c;
}

const char *
lap_class_title (const LapClass *c)
{
  return c->title != NULL && *c->title != '\0' ? c->title : c->kind;
}

gboolean
lap_class_is_placed (const LapClass *c)
{
  return c->day >= 0;
}

int
lap_class_end (const LapClass *c)
{
  return c->start + c->minutes;
}
