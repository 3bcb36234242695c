/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _GNU_SOURCE
#include "ui/quarks.h"

#include <link.h>
#include <string.h>

/* Names that GLib's first table has room for: QUARK_BLOCK_SIZE of its gquark.c. */
#define FIRST_TABLE (2048 * sizeof (char *))

/* Of the address sanitizer; absent in other builds. */
extern int    __sanitizer_get_ownership (const volatile void *p) __attribute__ ((weak));
extern size_t __sanitizer_get_allocated_size (const volatile void *p) __attribute__ ((weak));
extern void   __lsan_ignore_object (const void *p) __attribute__ ((weak));

static int
look_in_library (struct dl_phdr_info *info, size_t size, void *data)
{
  if (strstr (info->dlpi_name, "libglib-2.0") == NULL)
    return 0;
  for (int i = 0; i < info->dlpi_phnum; i++) {
    const ElfW (Phdr) *part = &info->dlpi_phdr[i];
    void **slots = (void **) ((info->dlpi_addr + part->p_vaddr + 7) & ~(ElfW (Addr)) 7);

    if (part->p_type != PT_LOAD || (part->p_flags & PF_W) == 0)
      continue;
    for (gsize j = 0; j + 2 < part->p_memsz / sizeof (void *); j++)
      if (slots[j] != NULL && __sanitizer_get_ownership (slots[j]) &&
          __sanitizer_get_allocated_size (slots[j]) == FIRST_TABLE)
        __lsan_ignore_object (slots[j]);
  }
  return 1;
}

void
quarks_keep_first_table (void)
{
  if (__lsan_ignore_object != NULL && __sanitizer_get_ownership != NULL)
    dl_iterate_phdr (look_in_library, NULL);
}
