/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A page list: what a sheet shows, as plain boxes in millimetres from the top left corner of each page, in the order
 * they are painted and read. It is made by the layouts of this folder and painted by sheets/ and ui/; nothing in it
 * knows of a drawing library.
 *
 * Always true: a text mark is one line, and its box (from the top of its tallest letter to the bottom of its deepest)
 * is what it covers; begin and end marks nest and are balanced on each page; strings live as long as the list.
 *
 * Calling order: lap_pages_new(), then for each page lap_pages_add() and its marks; lap_page_mirror() last.
 */
#pragma once

#include "catalogue/catalogue.h"
#include "place/measure.h"

G_BEGIN_DECLS

/* What a thing means; the painter’s ink says what it looks like. HARD is the work of a body: solid even where an ink that
 * is saved makes an outline of WORK. */
typedef enum {
  LAP_ROLE_NONE, LAP_ROLE_PAPER, LAP_ROLE_INK, LAP_ROLE_INK2, LAP_ROLE_LINE2, LAP_ROLE_LINE, LAP_ROLE_SHADE,
  LAP_ROLE_WORK, LAP_ROLE_HARD, LAP_ROLE_ON_WORK, LAP_ROLE_WORK2, LAP_ROLE_TALK, LAP_ROLE_EFFORT, LAP_ROLE_NOTE, LAP_ROLE_STOP,
  LAP_N_ROLES,
} LapRole;

typedef enum {
  LAP_MARK_BEGIN,  /* opens a structure element: `tag`, and for a link its address in `text` */
  LAP_MARK_END,
  LAP_MARK_TEXT,
  LAP_MARK_BOX,    /* filled with `fill`, outlined with `line`, corners of `radius` */
  LAP_MARK_HATCH,  /* a box of 45° lines in `line`, outlined, for rest */
  LAP_MARK_RULE,   /* a line along the longer side of its box */
  LAP_MARK_SIGN,   /* a small drawing: `sign` */
  LAP_MARK_FIGURE, /* an exercise standing on the bottom of its box */
  LAP_MARK_CODE,   /* a square code (ISO/IEC 18004) that leads to the address `text` */
} LapMarkKind;

typedef enum {
  LAP_SIGN_EASIER,     /* a step down */
  LAP_SIGN_HARDER,     /* a step up */
  LAP_SIGN_SWAP,       /* two arrows: the other side */
  LAP_SIGN_BREATHLESS, /* a peak: out of breath */
  LAP_SIGN_TIMES,      /* × */
  LAP_SIGN_ROUND,      /* a ring with an arrow: a later round */
  LAP_SIGN_UNSEEN,     /* an eye, struck out: the screen is out of sight */
  LAP_SIGN_CREST,      /* the crest of a wave; one for easy, two for moderate, three for hard */
} LapSign;

/* What a line of text is for; the distances it reads from are told by these. */
typedef enum {
  LAP_READ_OTHER, LAP_READ_TITLE, LAP_READ_FORMULA, LAP_READ_NUMBER, LAP_READ_NAME, LAP_READ_OPTION, LAP_READ_DETAIL,
  LAP_READ_SAFETY, LAP_READ_TABLE,
  LAP_N_READS,
} LapRead;

typedef struct {
  LapMarkKind  kind;
  double       x, y, width, height; /* mm */
  LapRole      fill, line;          /* text and signs are drawn in `fill` */
  double       thick;               /* of lines, mm */
  double       radius;              /* of corners, mm */
  const char  *text;
  const char  *tag;                 /* a PDF structure type: "H1", "P", "Table", "Link" */
  double       em, baseline, cap;   /* of text: size, where it stands, height of a capital; mm */
  LapWeight    weight;
  gboolean     rtl;                 /* the paragraph of the text runs from right to left */
  LapRead      read;
  LapSign      sign;
  LapExercise *exercise;            /* held by the catalogue of the list */
} LapMark;

typedef struct {
  double  width, height; /* mm */
  char   *label;         /* "2 of 3" */
  GArray *marks;         /* LapMark */
  struct _LapPages *pages;
} LapPage;

typedef struct {
  char  *title;
  guint  page;  /* from 0 */
  guint  level; /* 0 outermost */
  double y;     /* mm */
} LapOutline;

typedef struct _LapPages {
  char         *title, *author;
  GPtrArray    *pages;   /* LapPage */
  GArray       *outline; /* LapOutline */
  GStringChunk *strings;
  LapCatalogue *catalogue; /* of the exercises in figures */
} LapPages;

LapPages *lap_pages_new     (const char   *title,
                             const char   *author,
                             LapCatalogue *catalogue);
void      lap_pages_free    (LapPages    *pages);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapPages, lap_pages_free)

LapPage  *lap_pages_add     (LapPages    *pages,
                             double       width,
                             double       height);
guint     lap_pages_n       (const LapPages *pages);
LapPage  *lap_pages_nth     (const LapPages *pages,
                             guint        n);
/* An outline entry that leads to @y of the newest page. */
void      lap_pages_outline (LapPages    *pages,
                             guint        level,
                             const char  *title,
                             double       y);

/* Marks. What they return is valid until the next mark and may be changed. */
LapMark  *lap_page_text     (LapPage     *page,
                             const LapMark *style,
                             const char  *text,
                             gssize       bytes);
LapMark  *lap_page_box      (LapPage     *page,
                             double       x,
                             double       y,
                             double       width,
                             double       height,
                             LapRole      fill);
LapMark  *lap_page_hatch    (LapPage     *page,
                             double       x,
                             double       y,
                             double       width,
                             double       height);
LapMark  *lap_page_rule     (LapPage     *page,
                             double       x,
                             double       y,
                             double       width,
                             double       height,
                             LapRole      role);
LapMark  *lap_page_sign     (LapPage     *page,
                             LapSign      sign,
                             double       x,
                             double       y,
                             double       width,
                             double       height,
                             LapRole      role);
LapMark  *lap_page_figure   (LapPage     *page,
                             LapExercise *exercise,
                             double       x,
                             double       y,
                             double       width,
                             double       height);
LapMark  *lap_page_code     (LapPage     *page,
                             const char  *address,
                             double       x,
                             double       y,
                             double       side);
void      lap_page_begin    (LapPage     *page,
                             const char  *tag);
/* A link to @address round what follows, to be ended like any other. */
void      lap_page_link     (LapPage     *page,
                             const char  *address);
void      lap_page_end      (LapPage     *page);

/* Left becomes right: for a sheet that is read from right to left. */
void      lap_page_mirror   (LapPage     *page);

/* "Names": what a kind of text is called where distances are told; NULL for what isn't read from afar. Translated. */
const char *lap_read_label (LapRead      read);

/* Angles under which letters are read, minutes of arc: ISO 9241-3 and NUREG-0700 1.3.1-4 name 16 as the least and
 * 20 to 22 as preferred. */
#define LAP_ARC_READABLE    16.0
#define LAP_ARC_COMFORTABLE 20.0

/* Height of a capital (mm) that is seen under @arc at @distance (m), h = 2 d tan (a / 2), and the other way round. */
double    lap_cap_height    (double       distance,
                             double       arc);
double    lap_cap_distance  (double       cap,
                             double       arc);

/* The smallest capitals drawn for @read, mm; 0 where there are none. */
double    lap_pages_cap     (const LapPages *pages,
                             LapRead      read);

G_END_DECLS
