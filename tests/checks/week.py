#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""What `lapwing check` says of weeks, against others.

Clashes of random weeks: the pairs that an interval-overlap join in SQLite finds. People and air: the worked numbers of
International Building Code table 1004.5 (120 m2 hold 25 people) and ASHRAE 62.1 table 6-1 (24 people in 120 m2 need
276 L/s, 11.5 each). Dates: a class that is cancelled, moved or given away clashes where it is then.
"""
import json
import os
import pathlib
import random
import sqlite3
import subprocess
import sys
import tempfile

sys.path.insert(0, str(pathlib.Path(sys.argv[1]) / 'tests' / 'house'))
from tap import Tap  # noqa: E402

PROGRAM = os.environ['LAP_PROGRAM']
DAYS = ('mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun')


def clock(minutes):
    return f'{minutes // 60:02}:{minutes % 60:02}'


def week(classes, rooms=(), coaches=(), **more):
    return {'format': 'lapwing-week', 'version': 1, 'id': 'w', 'title': 't', 'timezone': 'Europe/Lisbon',
            'rooms': list(rooms), 'coaches': list(coaches), 'classes': classes, **more}


def warnings(document, *words):
    with tempfile.TemporaryDirectory() as folder:
        path = pathlib.Path(folder, 'w.lapweek')
        path.write_text(json.dumps(document), encoding='utf-8')
        done = subprocess.run([PROGRAM, 'check', str(path), *words, '--json'], stdout=subprocess.PIPE,
                              stderr=subprocess.PIPE, text=True)
    if done.returncode not in (0, 1) or done.stderr:
        raise SystemExit(f'exit {done.returncode}: {done.stderr}')
    return json.loads(done.stdout)['warnings']


def pairs(found, check):
    return sorted(tuple(sorted(w['classes'])) for w in found if w['check'] == check)


def random_week(rng):
    """Few classes in little time, so that many clash, touch, and start at the same minute."""
    classes = []
    for i in range(rng.randrange(0, 40)):
        minutes = rng.choice((1, 15, 30, 45, 60, 90))
        classes.append({'id': f'c{i}', 'kind': 'k', 'minutes': minutes})
        if rng.random() < 0.9:
            classes[-1].update(day=rng.choice(DAYS[:3] + DAYS[6:]), start=clock(15 * rng.randrange(0, (1440 - minutes) // 15 // 3)))
        for member, things in (('room', 'rs'), ('coach', 'pq')):
            if rng.random() < 0.9:
                classes[-1][member] = rng.choice(things)
    return week(classes, [{'id': r} for r in 'rs'], [{'id': c} for c in 'pq'])


def joined(document, member):
    base = sqlite3.connect(':memory:')
    base.execute('create table classes (id text, thing text, start int, stop int)')
    for c in document['classes']:
        if 'day' in c and member in c:
            hours, minutes = c['start'].split(':')
            start = DAYS.index(c['day']) * 1440 + int(hours) * 60 + int(minutes)
            base.execute('insert into classes values (?, ?, ?, ?)', (c['id'], c[member], start, start + c['minutes']))
    rows = base.execute('select a.id, b.id from classes a join classes b on a.id < b.id and a.thing = b.thing '
                        'and a.start < b.stop and b.start < a.stop')
    return sorted(tuple(sorted(row)) for row in rows)


def random_weeks(tap):
    rng = random.Random(48)
    clashes = 0
    for n in range(60):
        document = random_week(rng)
        found = warnings(document)
        for member in ('room', 'coach'):
            expected = joined(document, member)
            clashes += len(expected)
            tap.equal(f'week {n}: every {member} clash and no other', pairs(found, f'{member}-clash'), expected)
    tap.check('the weeks had clashes to find', [] if clashes > 300 else [f'only {clashes}'])


def rooms(tap):
    room = {'id': 'r', 'area': 120}
    for places, over in ((25, 0), (26, 1)):
        c = {'id': 'c', 'kind': 'k', 'minutes': 30, 'places': places, 'day': 'mon', 'start': '10:00', 'room': 'r'}
        tap.equal(f'{places} people in 120 m2', len(pairs(warnings(week([c], [room])), 'over-area')), over)
    c['places'] = 24
    said = [w['message'] for w in warnings(week([c], [room])) if w['check'] == 'fresh-air']
    tap.check('fresh air of 24 people in 120 m2',
              [] if len(said) == 1 and '276 litres' in said[0] and '11.5 each' in said[0] else said)


def dates(tap):
    a = {'id': 'a', 'kind': 'k', 'minutes': 60, 'day': 'mon', 'start': '10:00', 'room': 'r'}
    b = {'id': 'b', 'kind': 'k', 'minutes': 60, 'day': 'tue', 'start': '10:30', 'room': 'r'}
    for title, exception, clash in (
            ('as always', None, []),
            ('moved onto another', {'class': 'a', 'date': '2027-01-11', 'to': '2027-01-12'}, [('a', 'b')]),
            ('moved clear of it', {'class': 'a', 'date': '2027-01-11', 'to': '2027-01-12', 'start': '09:30'}, []),
            ('cancelled', {'class': 'b', 'date': '2027-01-12', 'cancelled': True}, []),
            ('moved in another week', {'class': 'a', 'date': '2027-01-18', 'to': '2027-01-19'}, []),
            ('moved here from another week', {'class': 'a', 'date': '2027-01-18', 'to': '2027-01-12'}, [('a', 'b')])):
        document = week([a, b], [{'id': 'r'}], **({'except': [exception]} if exception else {}))
        tap.equal(f'a date: {title}', pairs(warnings(document, '--week', '2027-01-13'), 'room-clash'), clash)


def substitutes(tap):
    """However many could step in, cancelling is offered as well, last (design: cancelled, moved, substituted)."""
    c = {'id': 'c', 'kind': 'k', 'minutes': 30, 'day': 'wed', 'start': '10:00', 'coach': 'a'}
    away = [{'coach': 'a', 'from': '2027-01-13', 'until': '2027-01-13'}]
    for others in range(5):
        document = week([c], coaches=[{'id': x} for x in 'abcdef'[:others + 1]], away=away)
        said = [w for w in warnings(document, '--week', '2027-01-13') if w['check'] == 'coach-away']
        labels = [r['label'] for w in said for r in w['remedies']]
        tap.check(f'{others} could step in: cancelling is the last',
                  [] if len(labels) == min(others, 2) + 1 and labels[-1].startswith('Cancel') else labels)


def main():
    tap = Tap()
    random_weeks(tap)
    rooms(tap)
    dates(tap)
    substitutes(tap)
    tap.done()


main()
