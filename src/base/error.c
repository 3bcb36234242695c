/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "base/error.h"

G_DEFINE_QUARK (lap-error-quark, lap_error)

int
lap_error_exit_code (const GError *error)
{
  if (error == NULL)
    return 0;
  if (error->domain != LAP_ERROR)
    return LAP_ERROR_INVALID;
  return error->code == LAP_ERROR_CHANGED ? LAP_ERROR_UNWRITABLE : error->code;
}
