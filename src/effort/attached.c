/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "effort/attached.h"

#include "effort/balance.h"
#include "effort/effort.h"

#include <gio/gio.h>

#define MODERATE 0.40
#define HARD     0.60
/* The share of the main work, one in so many, from which on a region counts. */
#define SHARE    10

struct _LapAttachments {
  gatomicrefcount  references;
  LapSessionSource source;
  LapCatalogue    *builtin;
  GHashTable      *known; /* path -> LapAttached */
  gboolean         waiting;
};

static void
attached_free (gpointer data)
{
  LapAttached *attached = data;

  g_object_unref (attached->session);
  g_free (attached);
}

LapAttachments *
lap_attachments_new (const LapSessionSource *source)
{
  LapAttachments *self = g_new0 (LapAttachments, 1);

  g_atomic_ref_count_init (&self->references);
  self->source = *source;
  self->builtin = lap_catalogue_builtin ();
  self->known = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, attached_free);
  return self;
}

LapAttachments *
lap_attachments_ref (LapAttachments *self)
{
  g_atomic_ref_count_inc (&self->references);
  return self;
}

void
lap_attachments_unref (LapAttachments *self)
{
  if (!g_atomic_ref_count_dec (&self->references))
    return;
  g_hash_table_unref (self->known);
  lap_catalogue_unref (self->builtin);
  g_free (self);
}

void
lap_attachments_set_waiting (LapAttachments *self, gboolean waiting)
{
  self->waiting = waiting;
}

gboolean
lap_attachments_are_waiting (LapAttachments *self)
{
  return self->waiting;
}

/* Mean effort of the main parts; of all where there is none. */
static double
mean_of (const LapTimeline *timeline)
{
  g_autoptr (LapEffort) effort = lap_effort_new ((LapTimeline *) timeline);
  double sum = 0, seconds = 0;

  for (guint p = 0; p < timeline->n_parts; p++) {
    const LapStretch *part = &timeline->parts[p];

    if (part->part->kind != LAP_PART_MAIN || part->end == part->start)
      continue;
    sum += lap_effort_mean (effort, part->start, part->end) * (part->end - part->start);
    seconds += part->end - part->start;
  }
  return seconds > 0 ? sum / seconds : effort->mean;
}

static LapAttached *
attached_new (LapTimeline *timeline)
{
  const guint32 fixtures = LAP_BIT (LAP_KIT_WALL) | LAP_BIT (LAP_KIT_PARTNER);
  LapAttached *attached = g_new0 (LapAttached, 1);
  double mean = mean_of (timeline);
  LapBalance balance;

  attached->session = g_object_ref (timeline->session);
  attached->length = timeline->length;
  attached->strain = mean < MODERATE ? LAP_STRAIN_EASY : mean < HARD ? LAP_STRAIN_MODERATE : LAP_STRAIN_HARD;
  lap_balance_of (timeline, LAP_BIT (LAP_PART_MAIN), &balance);
  for (guint i = 0; i < LAP_N_REGIONS; i++)
    if (balance.primary[i] > 0 && balance.primary[i] * SHARE >= balance.work)
      attached->regions |= LAP_BIT (i);
  for (guint i = 0; i < timeline->n_tasks; i++) {
    const LapTask *task = &timeline->tasks[i];

    attached->kit |= task->kit & ~fixtures;
    attached->loud = attached->loud || (task->shown != NULL && task->shown->noise == LAP_NOISE_LOUD);
  }
  return attached;
}

const LapAttached *
lap_attachments_find (LapAttachments *self, const char *path, GError **error)
{
  LapAttached *known = g_hash_table_lookup (self->known, path);
  const gboolean reads = self->source.load != NULL && !self->waiting;
  LapSession *session = reads ? self->source.load (path, self->source.data, error) : NULL;
  g_autoptr (LapTimeline) timeline = NULL;

  if (!reads)
    g_set_error_literal (error, G_IO_ERROR, G_IO_ERROR_NOT_FOUND, "");
  if (session != NULL && known != NULL && known->session == session)
    return known;
  g_hash_table_remove (self->known, path);
  if (session != NULL)
    timeline = lap_timeline_new (session, self->builtin, error);
  if (timeline == NULL)
    return NULL;
  known = attached_new (timeline);
  g_hash_table_insert (self->known, g_strdup (path), known);
  return known;
}

void
lap_class_facts (const LapClass *c, LapAttachments *attachments, LapClassFacts *facts)
{
  const gboolean waits = attachments != NULL && attachments->waiting;
  const gboolean named = !waits && c->session != NULL && *c->session != '\0';
  const LapAttached *attached = named && attachments != NULL ? lap_attachments_find (attachments, c->session, NULL) : NULL;

  *facts = (LapClassFacts) { .named = named, .found = attached != NULL, .strain = c->strain,
                             .regions = lap_words_mask (&lap_regions, (const char * const *) c->regions) };
  if (attached == NULL)
    return;
  facts->length = attached->length;
  facts->strain = attached->strain;
  facts->regions = attached->regions;
  facts->kit = attached->kit;
  facts->loud = attached->loud;
}

char *
lap_attachments_seek (LapAttachments *self, const char *path)
{
  return self->source.seek != NULL ? self->source.seek (path, self->source.data) : NULL;
}
