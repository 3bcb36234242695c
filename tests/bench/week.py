#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Counts the instructions of all checks of a week of 200 classes under callgrind.

usage: week.py PROGRAM
The bar is a tenth of a frame of 16.7 ms at two instructions a nanosecond, which is below what callgrind's counts run
at on the machines the bars were set on.
"""
import re
import subprocess
import sys
import tempfile

BAR = 3_300_000


def main():
    with tempfile.TemporaryDirectory() as folder:
        run = subprocess.run(
            ['valgrind', '--tool=callgrind', '--toggle-collect=measured_week',
             f'--callgrind-out-file={folder}/out', sys.argv[1], '200'], check=True, capture_output=True, text=True)
    n = int(re.search(r'Collected : (\d+)', run.stderr).group(1))
    print(f'checks of 200 classes: {n:,} instructions, {run.stdout.strip()} warnings; bar {BAR:,}')
    sys.exit(0 if n <= BAR else 1)


main()
