/* SPDX-License-Identifier: GPL-3.0-or-later */
int
main (int argc, char **argv)
{
  return 0;
}
