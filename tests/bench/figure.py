#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Counts instructions of posing, outlining and painting all figures under callgrind.

usage: figure.py PROGRAM
A pose may cost a tenth of painting it, and a figure on a sheet three times the painting of its outlines.
"""
import re
import subprocess
import sys

POSE, SHEET = 0.1, 3.0
CASES = [(48, 'raster'), (96, 'raster'), (400, 'vector')]


def count(program, function, size, surface):
    run = subprocess.run(
        ['valgrind', '--tool=callgrind', f'--toggle-collect={function}', '--callgrind-out-file=/dev/null',
         program, str(size), surface], check=True, capture_output=True, text=True)
    return int(re.search(r'Collected : (\d+)', run.stderr).group(1))


def main():
    good = True
    for size, surface in CASES:
        poses, outlines, paint = (count(sys.argv[1], f'measured_{what}', size, surface)
                                  for what in ('poses', 'outlines', 'paint'))
        pose, sheet = poses / paint, (outlines + paint) / paint
        good &= pose <= POSE and (surface == 'raster' or sheet <= SHEET)
        print(f'{size} px, {surface}: posing {pose:.3f} of painting (bar {POSE}), '
              f'outlining and painting {sheet:.2f} times painting' +
              (f' (bar {SHEET:.0f})' if surface == 'vector' else ''))
    return 0 if good else 1


sys.exit(main())
