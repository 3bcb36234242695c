/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is known of the sessions and weeks in a folder and those below it, without reading each file: title, length,
 * warnings, shape, and the words they are found by. A cache file keeps it from one start to the next; a file is looked
 * at again only when its time or size has changed.
 *
 * Always true: an index is immutable, its entries are too, so that a worker may make the next one while a list shows
 * this; an entry that still holds is the same object in the next index. The newest file comes first. A cache file that
 * is damaged, of another folder or of another version of the program is as good as none, and never harm. Bounded:
 * LAP_INDEX_MOST files, LAP_INDEX_DEPTH folders deep; hidden folders and links to folders are passed over.
 *
 * Order of calls: lap_index_load(); then, in a worker, lap_index_refresh() until the index is whole and lap_index_keep()
 * when that is another one. What a file says is up to a LapIndexLook: reading a session takes layers above this one.
 */
#pragma once

#include <gio/gio.h>

G_BEGIN_DECLS

#define LAP_INDEX_MOST  20000
#define LAP_INDEX_DEPTH 5

typedef enum { LAP_INDEX_SESSION, LAP_INDEX_WEEK, LAP_INDEX_UNREADABLE, LAP_N_INDEX_KINDS } LapIndexKind;

/* What a file is at a glance. All text is the facts' own. */
typedef struct {
  LapIndexKind kind;
  char        *title;
  guint        amount;   /* seconds of a session, classes of a week */
  guint        warnings; /* stops and warnings that nobody keeps as fine */
  char        *shape;    /* a letter a column, as whoever looks draws it */
  char        *found_by; /* what else it is found by than its title and its name */
} LapIndexFacts;

/* Fills @facts, which are zero, from what the file at @path holds; may be called in a worker. */
typedef void (*LapIndexLook) (const char *path, GBytes *bytes, LapIndexFacts *facts);

#define LAP_TYPE_INDEX_ENTRY (lap_index_entry_get_type ())
G_DECLARE_FINAL_TYPE (LapIndexEntry, lap_index_entry, LAP, INDEX_ENTRY, GObject)

struct _LapIndexEntry {
  GObject       parent_instance;
  char         *path, *etag;
  gint64        written; /* seconds since 1970 */
  LapIndexFacts facts;   /* found_by is NULL: see words */
  char         *words;   /* folded, a space before each */
};

typedef struct _LapIndex LapIndex;

/* The index of @folder (may be NULL) as the file @cache has it, else without an entry. */
LapIndex      *lap_index_load     (const char    *folder,
                                   const char    *cache);
/* What is so now, in the folder and of the files @also (may be NULL) wherever they are. At most @most files are looked
 * at, the newest first; what wasn't is left out, and the index isn't whole. NULL when it was cancelled. */
LapIndex      *lap_index_refresh  (LapIndex           *index,
                                   const char * const *also,
                                   LapIndexLook        look,
                                   guint               most,
                                   GCancellable       *cancellable);
/* Writes @cache, whole or not at all. */
gboolean       lap_index_keep     (LapIndex      *index,
                                   const char    *cache,
                                   GError       **error);
LapIndex      *lap_index_ref      (LapIndex      *index);
void           lap_index_unref    (LapIndex      *index);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapIndex, lap_index_unref)

const char    *lap_index_folder   (LapIndex      *index);
guint          lap_index_n        (LapIndex      *index);
/* Transfer none. */
LapIndexEntry *lap_index_nth      (LapIndex      *index,
                                   guint          n);
/* How many files were there when it was refreshed. */
guint          lap_index_n_there  (LapIndex      *index);
/* How many of them were looked at for it. */
guint          lap_index_n_looked (LapIndex      *index);
gboolean       lap_index_is_whole (LapIndex      *index);

/* The folded words of @text, as lap_index_entry_matches() takes them. */
char         **lap_index_fold     (const char    *text);
/* Whether each of @wanted begins a word of the entry; accents and case don't matter. */
gboolean       lap_index_entry_matches (LapIndexEntry      *entry,
                                        const char * const *wanted);

G_END_DECLS
