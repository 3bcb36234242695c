#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Holds Lapwing's first frame against that of an empty window of libadwaita, in processor time since the process began.

usage: start.py PRELOAD EMPTY PROGRAM SOURCE
The programs take turns, each time in a home of its own without anything kept; the least time of each is the one that
others disturbed least. Build with -Dbuildtype=release. Needs a display.
"""
import os
import subprocess
import sys
import tempfile

BAR = 1.5
ROUNDS = 11


def first_frame(preload, command):
    """Milliseconds of processor time until the first frame has been painted."""
    with tempfile.TemporaryDirectory() as home:
        os.mkdir(f'{home}/runtime', 0o700)
        env = {k: v for k, v in os.environ.items() if not k.startswith('XDG_')}
        env.update(HOME=home, XDG_RUNTIME_DIR=f'{home}/runtime', LD_PRELOAD=preload)
        run = subprocess.run(command, env=env, check=True, capture_output=True, text=True)
        return float(run.stdout)


def main():
    preload, empty, program, source = sys.argv[1:]
    commands = {'empty window': [empty], 'list of sessions': [program],
                'session': [program, f'{source}/data/demo/thirty-on-the-mat.lapwing'],
                'week': [program, f'{source}/data/demo/kelpline-week.lapweek']}
    least = {name: float('inf') for name in commands}
    for _ in range(ROUNDS):
        for name, command in commands.items():
            least[name] = min(least[name], first_frame(preload, command))
    floor = least['empty window']
    for name, time in least.items():
        print(f'{name}: {time:.1f} ms to the first frame, {time / floor:.2f} of an empty window')
    good = all(time <= BAR * floor for time in least.values())
    print('as held' if good else 'TOO MUCH')
    return 0 if good else 1


sys.exit(main())
