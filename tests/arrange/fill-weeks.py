#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Writes the frozen weeks of tests/data/fill: made up from a set seed, the same wherever this runs.

Lengths and hours are such that no coach can have a short night or no minute between two rooms, so that every point
of these weeks can be said in a linear model (tests/arrange/fill_mip.py).

usage: fill-weeks.py FOLDER [--check]      --check: says whether the files there are those that would be written
"""
import json
import pathlib
import sys

DAYS = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun']
KINDS = ['strength', 'stretch', 'circuit', 'chair']
REGIONS = ['thighs', 'glutes', 'chest', 'shoulders', 'front-core']

# name: classes, rooms, coaches, most classes a day for a coach, days a coach is there at least
WEEKS = {'30': (30, 2, 6, 2, 3), '80': (80, 4, 12, 2, 3),
         'tight-30': (30, 1, 4, 3, 2), 'tight-80': (80, 2, 8, 3, 2), 'tight-200': (200, 4, 18, 3, 2)}


class Draw:
    """Park and Miller's generator (1988, Comm. ACM 31:1192), so that no library's choice of one matters."""

    def __init__(self, seed):
        self.state = seed

    def below(self, n):
        self.state = self.state * 48271 % 2147483647
        return self.state * n // 2147483647

    def of(self, items):
        return items[self.below(len(items))]

    def some(self, items, count):
        items = list(items)
        return sorted((items.pop(self.below(len(items))) for _ in range(count)))


def room(d, k):
    return {'id': f'r{k}', 'name': f'Room {k + 1}', 'places': d.of([12, 16, 20, 24]) if k else 28, 'turnaround': 10}


def coach(d, k, most, days):
    shifts = [[['07:00', '12:00']], [['16:00', '20:00']], [['07:00', '09:00'], ['17:00', '20:00']], [['11:30', '14:30']]]
    return {'id': f'c{k}', 'name': f'Coach {k + 1}',
            'free': {DAYS[i]: d.of(shifts) for i in d.some(range(7), days + d.below(2))},
            'most-a-day': most, 'can': d.some(KINDS, 1 + d.below(3))}


def lesson(d, k):
    kind = d.of(KINDS)
    made = {'id': f'k{k}', 'title': f'{kind.title()} {k + 1}', 'kind': kind, 'minutes': d.of([25, 40, 50, 50, 55, 70]),
            'places': d.of([8, 10, 12, 14, 18, 22, 26]), 'effort': d.of(['easy', 'moderate', 'hard'])}
    if made['effort'] == 'hard':
        made['regions'] = [REGIONS[i] for i in d.some(range(5), 2)]
        if d.below(2):
            made['for'] = f'group {1 + k // 10}'
    wish = {}
    if d.below(2):
        wish['days'] = [DAYS[i] for i in d.some(range(7), 2)]
    if d.below(2):
        wish['between'] = d.of([['07:00', '10:00'], ['16:30', '19:30'], ['11:00', '14:00']])
    if wish:
        made['wish'] = wish
    return made


def week(name):
    n, rooms, coaches, most, days = WEEKS[name]
    d = Draw(4711 + n + rooms)
    made = {'format': 'lapwing-week', 'version': 1, 'id': f'00000000-0000-4000-8000-{n:06}{rooms:06}',
            'title': f'{n} classes', 'timezone': 'Europe/Lisbon',
            'open': {day: ['07:00', '20:00'] for day in DAYS},
            'rooms': [room(d, k) for k in range(rooms)],
            'coaches': [coach(d, k, most, days) for k in range(coaches)],
            'classes': [lesson(d, k) for k in range(n)]}
    # Some stand fixed, one of them between two quarters; each in a room and with a coach of its own.
    for k, day, start in (0, 'tue', '18:10'), (1, 'thu', '08:00'):
        if k < coaches:
            made['classes'][k].update({'day': day, 'start': start, 'room': 'r0', 'coach': f'c{k}', 'fixed': True})
    return json.dumps(made, indent=2) + '\n'


folder = pathlib.Path(sys.argv[1])
stale = 0
for name in WEEKS:
    path = folder / f'{name}.lapweek'
    if '--check' in sys.argv:
        if path.read_text() != week(name):
            print(f'{path}: not what {sys.argv[0]} writes')
            stale = 1
    else:
        path.write_text(week(name))
sys.exit(stale)
