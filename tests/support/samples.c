/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "support/samples.h"

#include "base/json-scan.h"

#include <string.h>

char *
written_field (gconstpointer object, const LapField *field)
{
  g_autoptr(LapJsonWriter) writer = lap_json_writer_new ();
  g_autoptr(GBytes) bytes = NULL;

  if (lap_field_is_preset (field, object))
    return NULL;
  field->kind->write (field, (const char *) object + field->offset, writer);
  bytes = lap_json_writer_finish (writer);
  return g_strdup (g_bytes_get_data (bytes, NULL));
}

/* Values of the kinds that a rule can't make one for, as they stand in a file. */
static const struct { const char *property, *json; } samples[] = {
  { "screened", "\"2027-01-05\"" },
  { "kit", "{\"mat\": 3, \"x\": 1, \"band\": 2}" },
  { "exercises", "[{\"id\": \"own-a\", \"name\": \"A\", \"for\": [\"work\"], \"pattern\": \"squat\", "
                 "\"move\": \"own\","
                 "\"posture\": \"standing\", \"primary\": [\"quads\"], \"sides\": \"both\", \"impact\": "
                 "\"none\","
                 "\"noise\": \"silent\", \"met\": {\"steady\": {\"value\": 3, \"code\": \"a\"},"
                 "\"hard\": {\"value\": 4, \"code\": \"b\"}}, \"width\": 1, \"length\": 1, \"view\": "
                 "\"side\","
                 "\"seconds-per-rep\": 2, \"say\": {\"setup\": \"Stand.\"}}]" },
  { "takes", "[{\"at\": \"2027-01-11T09:30:00Z\", \"clock\": 1.5, \"mark\": \"good\", \"x\": 1}]" },
  { "steps", "[{\"work\": 40, \"rest\": 20}, {\"work\": 30, \"rest\": 10, \"x\": 1}]" },
  { "reps", "[8, 10]" },
  { "tempo", "\"3-1-1\"" },
  { "say", "{\"cues\": [\"Chest up\", \"Knees out\"], \"x\": 1}" },
  { "in-round", "{\"2\": {\"exercise\": \"lunge\", \"work\": 30, \"reps\": 12, \"say\": {\"fault\": "
                "\"No.\"}}, \"3\": {\"x\": 1}}" },
  /* On its own a part at its own pace would need "cap" as well; low stays below high. */
  { "run", "\"on-the-minute\"" },
  { "band-low", "0.3" },
};

static char *
sample_text (const LapField *field, const char *property)
{
  for (guint i = 0; i < G_N_ELEMENTS (samples); i++)
    if (g_str_equal (samples[i].property, property))
      return g_strdup (samples[i].json);
  if (field->kind == &lap_kind_int)
    return g_strdup_printf ("%.0f", field->high);
  if (field->kind == &lap_kind_number)
    return g_strdup_printf ("%.17g", field->low + (field->high - field->low) * 0.75);
  if (field->kind == &lap_kind_flag)
    return g_strdup (field->preset != 0 ? "false" : "true");
  if (field->kind == &lap_kind_word)
    return g_strdup_printf ("\"%s\"", field->words->words[((int) field->preset + 1) % field->words->n].id);
  if (field->kind == &lap_kind_words)
    return g_strdup_printf ("[\"%s\", \"%s\"]", field->words->words[field->words->n - 1].id,
                            field->words->words[0].id);
  if (field->kind == &lap_kind_texts)
    return g_strdup ("[\"two\", \"t€xts\"]");
  if (field->kind == &lap_kind_text || field->kind == &lap_kind_id)
    return g_strdup ("\"“sample”\\n\\\\ 🦆\"");
  g_error ("no sample for \"%s\"", property);
}

char *
sample_value (const LapField *field, GValue *value)
{
  g_autofree char *property = lap_field_property (field);
  g_autofree char *text = sample_text (field, property);
  g_autoptr(GError) error = NULL;
  g_autoptr(JsonNode) node = lap_json_parse (text, strlen (text), &error);
  LapPath top = { NULL, NULL, 0 };
  LapField here = *field;
  union { int number; double real; gpointer pointer; } slot = { .pointer = NULL };
  char *written;

  g_assert_no_error (error);
  field->kind->read (field, node, &top, &slot, &error);
  g_assert_no_error (error);
  here.offset = 0;
  written = written_field (&slot, &here);
  lap_field_get (&here, &slot, value);
  if (G_TYPE_FUNDAMENTAL (G_VALUE_TYPE (value)) == G_TYPE_STRING)
    g_free (slot.pointer);
  else if (G_TYPE_FUNDAMENTAL (G_VALUE_TYPE (value)) == G_TYPE_BOXED)
    g_boxed_free (G_VALUE_TYPE (value), slot.pointer);
  return written;
}
