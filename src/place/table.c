/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/table.h"

#define COLUMN_GAP    2.0 /* mm */
#define ROW_PAD       1.1
#define PARAGRAPH_GAP 1.0
#define INTRO_PAD     2.2

typedef struct {
  guint    column, span;
  LapWrap *wrap;
  LapType  type;
  gboolean signed_; /* with `sign` before it */
  LapSign  sign;
} Paragraph;

struct _LapTableRow {
  GArray      *paragraphs; /* Paragraph */
  gboolean     introduces;
  LapRole      ground;
  int          work, rest;
  LapExercise *exercise; /* belongs to the timeline */
  guint        figure_column;
  double       figure_height;
};

struct _LapTable {
  const LapMeasure *measure;
  LapColumn  columns[LAP_TABLE_COLUMNS];
  guint      n;
  LapType    heading;
  GPtrArray *rows;
};

static void
paragraph_clear (gpointer data)
{
  lap_wrap_free (((Paragraph *) data)->wrap);
}

static void
row_free (gpointer data)
{
  LapTableRow *row = data;

  g_array_unref (row->paragraphs);
  g_free (row);
}

LapTable *
lap_table_new (const LapMeasure *measure, const LapColumn *columns, guint n, const LapType *heading)
{
  LapTable *table = g_new0 (LapTable, 1);

  g_return_val_if_fail (n <= LAP_TABLE_COLUMNS, NULL);
  table->measure = measure;
  for (guint i = 0; i < n; i++)
    table->columns[i] = columns[i];
  table->n = n;
  table->heading = *heading;
  table->rows = g_ptr_array_new_with_free_func (row_free);
  return table;
}

void
lap_table_free (LapTable *table)
{
  g_ptr_array_unref (table->rows);
  g_free (table);
}

guint
lap_table_n (const LapTable *table)
{
  return table->rows->len;
}

LapTableRow *
lap_table_row (LapTable *table, gboolean introduces)
{
  LapTableRow *row = g_new0 (LapTableRow, 1);

  row->paragraphs = g_array_new (FALSE, FALSE, sizeof (Paragraph));
  g_array_set_clear_func (row->paragraphs, paragraph_clear);
  row->introduces = introduces;
  g_ptr_array_add (table->rows, row);
  return row;
}

void
lap_table_cell (LapTable *table, LapTableRow *row, guint column, guint span, LapWeight weight, const char *text,
                const LapType *type)
{
  Paragraph paragraph = { .column = column, .span = span, .type = *type };

  if (text == NULL || *text == '\0')
    return;
  paragraph.wrap = lap_wrap_new (table->measure, weight, text);
  g_array_append_val (row->paragraphs, paragraph);
}

void
lap_table_sign (LapTable *table, LapTableRow *row, guint column, LapSign sign, LapWeight weight, const char *text,
                const LapType *type)
{
  Paragraph paragraph = { .column = column, .span = 1, .type = *type, .signed_ = TRUE, .sign = sign };

  paragraph.wrap = lap_wrap_new (table->measure, weight, text);
  g_array_append_val (row->paragraphs, paragraph);
}

void
lap_table_ground (LapTableRow *row, LapRole role, int work, int rest)
{
  row->ground = role;
  row->work = work;
  row->rest = rest;
}

void
lap_table_figure (LapTableRow *row, guint column, LapExercise *exercise, double height)
{
  row->exercise = exercise;
  row->figure_column = column;
  row->figure_height = height;
}

static double
column_x (const LapTable *table, guint column)
{
  double x = 0;

  for (guint i = 0; i < column; i++)
    x += table->columns[i].width;
  return x;
}

static double
span_width (const LapTable *table, guint column, guint span)
{
  return column_x (table, MIN (column + MAX (span, 1), table->n)) - column_x (table, column) - COLUMN_GAP;
}

/* What a sign takes before its words, mm. */
static double
sign_width (const Paragraph *p)
{
  return p->signed_ ? p->type.cap * 2.2 : 0;
}

/* Returns the height. */
static double
lay_paragraph (const Paragraph *p, LapPage *page, double x, double y, double width)
{
  double indent = sign_width (p), cap = p->type.cap;

  if (page != NULL && p->signed_)
    lap_page_sign (page, p->sign, x, y - cap * 0.15, cap * 1.82, cap * 1.3, p->type.role);
  if (page != NULL)
    lap_wrap_put (p->wrap, &p->type, page, x + indent, y, width - indent, 0);
  return lap_wrap_fit (p->wrap, &p->type, width - indent).height;
}

/* Lays the paragraphs of each cell one below the other; returns the height of the highest cell. */
static double
lay_cells (const LapTable *table, const LapTableRow *row, LapPage *page, double x, double y)
{
  double used[LAP_TABLE_COLUMNS] = { 0 }, height = 0;
  guint open = G_MAXUINT;

  for (guint i = 0; i < row->paragraphs->len; i++) {
    const Paragraph *p = &g_array_index (row->paragraphs, Paragraph, i);
    double width = span_width (table, p->column, p->span);

    used[p->column] += used[p->column] > 0 ? PARAGRAPH_GAP : 0;
    if (page != NULL && open != p->column) {
      if (open != G_MAXUINT)
        lap_page_end (page);
      lap_page_begin (page, row->introduces ? "TH" : "TD");
      open = p->column;
    }
    used[p->column] += lay_paragraph (p, page, x + column_x (table, p->column), y + used[p->column], width);
    height = MAX (height, used[p->column]);
  }
  if (page != NULL && open != G_MAXUINT)
    lap_page_end (page);
  return height;
}

static double
row_height (const LapTable *table, const LapTableRow *row)
{
  double height = lay_cells (table, row, NULL, 0, 0);

  return MAX (height, row->figure_height) + 2 * ROW_PAD + (row->introduces ? INTRO_PAD : 0);
}

static void
put_ground (const LapTableRow *row, LapPage *page, double x, double y, double height)
{
  double solid = row->rest > 0 && row->work > 0 ? height * row->work / (row->work + row->rest) : height;

  solid = row->rest > 0 ? CLAMP (solid, height * 0.25, height * 0.8) : solid;
  if (row->ground == LAP_ROLE_NONE)
    return;
  if (row->work > 0)
    lap_page_box (page, x, y, 3.6, solid, row->ground)->radius = 0.6;
  else
    solid = 0;
  if (solid < height)
    lap_page_hatch (page, x + 0.7, y + solid, 2.2, height - solid)->thick = 0.3;
}

static void
put_row (const LapTable *table, const LapTableRow *row, LapPage *page, double x, double y, double height)
{
  double lead = row->introduces ? INTRO_PAD : 0, width = column_x (table, table->n) - COLUMN_GAP;

  put_ground (row, page, x, y + 0.5, height - 1);
  if (row->exercise != NULL)
    lap_page_figure (page, row->exercise, x + column_x (table, row->figure_column), y + ROW_PAD,
                     span_width (table, row->figure_column, 1), height - 2 * ROW_PAD);
  lap_page_begin (page, "TR");
  lay_cells (table, row, page, x, y + ROW_PAD + lead);
  lap_page_end (page);
  lap_page_rule (page, x, y + height - 0.1, width, row->introduces ? 0.4 : 0.2,
                 row->introduces ? LAP_ROLE_INK : LAP_ROLE_LINE);
}

static double
put_headings (const LapTable *table, LapPage *page, double x, double y)
{
  double height = 0, width = column_x (table, table->n) - COLUMN_GAP;

  for (guint i = 0; i < table->n; i++) {
    g_autoptr (LapWrap) wrap = lap_wrap_new (table->measure, LAP_WEIGHT_STRONG, table->columns[i].heading);

    height = MAX (height, lap_wrap_fit (wrap, &table->heading, span_width (table, i, 1)).height);
  }
  height += 3;
  if (page == NULL)
    return height;
  lap_page_box (page, x, y, width, height, LAP_ROLE_SHADE);
  lap_page_begin (page, "TR");
  for (guint i = 0; i < table->n; i++) {
    lap_page_begin (page, "TH");
    lap_text_put (table->measure, LAP_WEIGHT_STRONG, table->columns[i].heading, &table->heading, page,
                  x + column_x (table, i), y + 1.5, span_width (table, i, 1), 0);
    lap_page_end (page);
  }
  lap_page_end (page);
  return height;
}

/* How many rows from @from on must stand together. */
static guint
together (const LapTable *table, guint from)
{
  guint n = 1;

  while (from + n < table->rows->len && ((LapTableRow *) g_ptr_array_index (table->rows, from + n - 1))->introduces)
    n++;
  return n;
}

guint
lap_table_put (LapTable *table, guint from, LapPage *page, double x, double y, double bottom)
{
  guint i = from;

  if (page != NULL)
    lap_page_begin (page, "Table");
  y += put_headings (table, page, x, y);
  while (i < table->rows->len) {
    guint n = together (table, i);
    double sum = 0;

    for (guint k = i; k < i + n; k++)
      sum += row_height (table, g_ptr_array_index (table->rows, k));
    if (y + sum > bottom && i > from)
      break;
    for (; n > 0; n--, i++) {
      const LapTableRow *row = g_ptr_array_index (table->rows, i);
      double height = row_height (table, row);

      if (page != NULL)
        put_row (table, row, page, x, y, height);
      y += height;
    }
  }
  if (page != NULL)
    lap_page_end (page);
  return i;
}
