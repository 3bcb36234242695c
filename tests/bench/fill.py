#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""A first timetable against the search that improves it: instructions of both under callgrind, and what the search
gains. A try is counted over the first few thousand, which move the most.

usage: fill.py FOLDER BENCH PROGRAM
"""
import json
import pathlib
import re
import subprocess
import sys
import tempfile

FOLDER, BENCH, PROGRAM = pathlib.Path(sys.argv[1]), sys.argv[2], sys.argv[3]
TRIES = {'30': 450_000, '80': 1_200_000, 'tight-200': 800_000}
SAMPLE = 8192
TIMES = 100


def instructions(week, function, scratch):
    run = subprocess.run(['valgrind', '--tool=callgrind', f'--toggle-collect={function}',
                          f'--callgrind-out-file={scratch}/out', BENCH, week, str(SAMPLE)],
                         check=True, capture_output=True, text=True)
    count = int(re.search(r'Collected : (\d+)', run.stderr).group(1))
    assert count > 0, f'{function} is in no symbol table: nothing was counted'
    return count


def main():
    good = True
    for name, tries in TRIES.items():
        with tempfile.TemporaryDirectory() as scratch:
            week = FOLDER / f'{name}.lapweek'
            first = instructions(week, 'construct', scratch)
            each = instructions(week, 'lap_fill_cool', scratch) / SAMPLE
            said = json.loads(subprocess.run([PROGRAM, 'fill', week, '-o', f'{scratch}/out.lapweek', '--json'],
                                             capture_output=True, text=True).stdout)
        ratio = each * tries / first
        good &= ratio >= TIMES
        print(f'{name}: first {first:,} instructions, {each:,.0f} a try, {tries:,} tries are {ratio:,.0f} times as many '
              f'(bar {TIMES}); {said["first-unplaced"]} without a place and {said["first-points"]} points became '
              f'{len(said["unplaced"])} and {said["points"]}')
    sys.exit(0 if good else 1)


main()
