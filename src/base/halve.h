/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Looking something up by halving, in what is in order.
 */
#pragma once

#include <glib.h>

/* How many of the first of @n things are behind what is looked for: @is_behind says so of the one with the number @i,
 * which it declares, and is true of all before one that it is true of. */
#define LAP_HALVE(n, i, is_behind) \
  __extension__ ({ \
    guint low_ = 0, high_ = (n); \
\
    while (low_ < high_) { \
      guint i = (low_ + high_) / 2; \
\
      if (is_behind) \
        low_ = i + 1; \
      else \
        high_ = i; \
    } \
    low_; \
  })

/* The last of @behind things, or the first of all where there are none. */
static inline guint
lap_last_of (guint behind)
{
  return behind > 0 ? behind - 1 : 0;
}
