#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Counts instructions of expansion and checks under callgrind, at one size and at twice that.

usage: core.py PROGRAM
Counts don't depend on the load of the machine. The bars are those of the contributor guide.
"""
import re
import subprocess
import sys
import tempfile

BARS = {'measured_timeline': 45, 'measured_checks': 400}


def count(program, function, blocks, rounds):
    """Instructions spent in function and what it calls, and the number of intervals."""
    with tempfile.TemporaryDirectory() as folder:
        run = subprocess.run(
            ['valgrind', '--tool=callgrind', f'--toggle-collect={function}',
             f'--callgrind-out-file={folder}/out', program, str(blocks), str(rounds)],
            check=True, capture_output=True, text=True)
        total = re.search(r'Collected : (\d+)', run.stderr)
        return int(total.group(1)), int(run.stdout.split()[0])


def main():
    program = sys.argv[1]
    good = True
    for function, bar in BARS.items():
        one, n = count(program, function, 50, 100)
        two, m = count(program, function, 50 * 2, 100)
        per, ratio = one / n, two / one
        good &= per <= bar and ratio <= 2.05 * m / (2 * n)
        print(f'{function}: {per:.1f} instructions an interval at {n} (bar {bar}); '
              f'{ratio:.3f} times as many at {m} (bar {2.05 * m / (2 * n):.3f})')
    return 0 if good else 1


sys.exit(main())
