#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""The search for the best order: instructions a transition under callgrind, and its time against a general-purpose
MIP solver (GLPK) on the same instances, which must come to the same optimum.

usage: arrange.py SOURCE BENCH PROGRAM
A transition is a first block, a set of others and the last of them.
"""
import importlib.util
import json
import os
import pathlib
import random
import re
import subprocess
import sys
import tempfile
import time

source, bench, program = pathlib.Path(sys.argv[1]), sys.argv[2], sys.argv[3]
os.environ['LAP_PROGRAM'] = program
spec = importlib.util.spec_from_file_location('order', source / 'tests/arrange/order.py')
order = importlib.util.module_from_spec(spec)
sys.argv = ['order.py', str(source)]
spec.loader.exec_module(order)

INSTRUCTIONS, TIMES_FASTER = 45, 1000


def plan(rng, n):
    """A circle of n different exercises, two rounds, all free to move."""
    blocks = [{'exercise': e, 'work': 40, 'rest': 20} for e in rng.sample(order.exercises, n)]
    return {'format': 'lapwing-session', 'version': 1, 'id': 'x', 'title': 'x',
            'parts': [{'kind': 'main', 'rounds': 2, 'blocks': blocks}]}


def main():
    rng = random.Random(7)
    good = True
    with tempfile.TemporaryDirectory() as folder:
        file = pathlib.Path(folder, 'plan.lapwing')
        for n in (12, 14, 16):
            file.write_text(json.dumps(plan(rng, n)))
            run = subprocess.run(['valgrind', '--tool=callgrind', '--toggle-collect=measured_bound',
                                  f'--callgrind-out-file={folder}/out', bench, file, '1'],
                                 check=True, capture_output=True, text=True)
            transitions = n * (n - 1) * 2 ** (n - 2)
            per = int(re.search(r'Collected : (\d+)', run.stderr).group(1)) / transitions
            good &= per <= INSTRUCTIONS
            print(f'{n} blocks: {per:.1f} instructions a transition (bar {INSTRUCTIONS})')
        for n in (10, 12):
            doc = plan(rng, n)
            file.write_text(json.dumps(doc))
            bound, micro = map(float, subprocess.run([bench, file, '20'], check=True, capture_output=True,
                                                     text=True).stdout.split())
            part = order.ask(doc)
            start = time.perf_counter()
            optimum = order.solve(part)
            ratio = (time.perf_counter() - start) * 1e6 / micro
            good &= ratio >= TIMES_FASTER and abs(optimum - bound) < 1e-6
            print(f'{n} blocks: {ratio:.0f} times as fast as the solver (bar {TIMES_FASTER}), '
                  f'bound {bound:g}, optimum {optimum:g}')
    return 0 if good else 1


sys.exit(main())
