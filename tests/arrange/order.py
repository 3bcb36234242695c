#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""The order of a part against two things outside the project, from the costs that the program prints:
brute force over all permutations up to 8 blocks, and a general-purpose MIP solver (GLPK) for 10 and 12.

usage: order.py SOURCE   with the program in LAP_PROGRAM
"""
import itertools
import json
import os
import pathlib
import random
import re
import subprocess
import sys
import tempfile

source = pathlib.Path(sys.argv[1])
program = os.environ['LAP_PROGRAM']
exercises = sorted(p.stem for p in (source / 'data/exercises').glob('*.json'))


def session(rng, n):
    blocks = [{'exercise': rng.choice(exercises), 'work': rng.choice([20, 40]), 'rest': rng.choice([5, 10, 20])}
              for _ in range(n)]
    if n > 4 and rng.random() < 0.4:
        blocks[rng.randrange(n)]['fixed'] = True
    if n > 4 and rng.random() < 0.4:
        blocks[rng.randrange(n)] = {'talk': 'A word.', 'seconds': 20}
    rounds = rng.choice([1, 2, 3])
    for b in blocks:
        if 'exercise' in b and rounds > 1 and rng.random() < 0.2:
            b['in-round'] = {'2': {'exercise': rng.choice(exercises)}}
    return {'format': 'lapwing-session', 'version': 1, 'id': 'x', 'title': 'x',
            'parts': [{'kind': 'main', 'run': rng.choice(['together', 'stations']), 'rounds': rounds,
                       'round-rest': rng.choice([0, 30]), 'blocks': blocks}]}


def ask(doc):
    with tempfile.NamedTemporaryFile('w', suffix='.lapwing') as f:
        json.dump(doc, f)
        f.flush()
        run = subprocess.run([program, 'order', f.name, '--costs', '--json'], check=True, capture_output=True, text=True)
    return json.loads(run.stdout)['parts'][0]


def cost(part, order):
    n = len(order)
    places = [part['places'][i][k] for k, i in enumerate(order)]
    if None in places:
        return None
    return (sum(places) + sum(part['pairs'][a][b] for a, b in zip(order, order[1:])) +
            part['seam'][order[-1]][order[0]])


def brute(part):
    n = len(part['order'])
    costs = (cost(part, p) for p in itertools.permutations(range(n)))
    return min(c for c in costs if c is not None)


def solve(part):
    """The same as a mixed-integer model: y[i,k] block i at place k, x[i,j,k] i at k and j at k + 1."""
    n = len(part['order'])
    rows = ['Minimize', 'obj:']
    terms, cons, binaries = [], [], []
    for i in range(n):
        for k in range(n):
            binaries.append(f'y_{i}_{k}')
            place = part['places'][i][k]
            if place is None:
                cons.append(f'y_{i}_{k} = 0')
            else:
                terms.append(f'+ {place} y_{i}_{k}')
    for k in range(n):
        cons.append(' + '.join(f'y_{i}_{k}' for i in range(n)) + ' = 1')
        matrix = part['pairs'] if k + 1 < n else part['seam']
        for i in range(n):
            cons.append(' + '.join(f'x_{i}_{j}_{k}' for j in range(n) if j != i) + f' - y_{i}_{k} = 0')
            cons.append(' + '.join(f'x_{j}_{i}_{k}' for j in range(n) if j != i) + f' - y_{i}_{(k + 1) % n} = 0')
            for j in range(n):
                if i != j:
                    terms.append(f'+ {matrix[i][j]} x_{i}_{j}_{k}')
    for i in range(n):
        cons.append(' + '.join(f'y_{i}_{k}' for k in range(n)) + ' = 1')
    rows += terms + ['Subject To'] + [f'c{q}: {c}' for q, c in enumerate(cons)] + ['Binary'] + binaries + ['End']
    with tempfile.TemporaryDirectory() as folder:
        lp = pathlib.Path(folder, 'order.lp')
        lp.write_text('\n'.join(rows) + '\n')
        subprocess.run(['glpsol', '--lp', lp, '-o', f'{folder}/out'], check=True, capture_output=True)
        text = pathlib.Path(folder, 'out').read_text()
    return float(re.search(r'Objective:\s+obj = (\S+)', text).group(1))


def main():
    rng = random.Random(20270111)
    checks = []
    for n in (2, 3, 4, 5, 6, 7):
        for _ in range(6):
            part = ask(session(rng, n))
            checks.append((f'bound of {n} blocks is that of brute force', part['bound'] == brute(part)))
            checks.append((f'cost of {n} blocks is that of the printed costs', part['cost'] == cost(part, part['order'])))
            checks.append((f'{n} blocks are proven and no worse than before',
                           part['proven'] and part['total'] <= part['was'] and
                           part['total'] == part['cost'] + 1000 * part['runs']))
    part = ask(session(rng, 8))
    checks.append(('bound of 8 blocks is that of brute force', part['bound'] == brute(part)))
    for n in (10, 12):
        part = ask(session(rng, n))
        checks.append((f'bound of {n} blocks is the MIP optimum', abs(part['bound'] - solve(part)) < 1e-6))
    print(f'1..{len(checks)}')
    for i, (name, good) in enumerate(checks, 1):
        print(f'{"ok" if good else "not ok"} {i} - {name}')
    return 0 if all(good for _, good in checks) else 1


if __name__ == '__main__':
    sys.exit(main())
