#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Filling the frozen weeks of tests/data/fill: what the program wrote is checked for itself, from the file alone, and
held against the optimum of a mixed-integer model (fill_mip.py). GLPK proves the two smallest again each time; how the
others were proven stands beside them in optima.json.

usage: fill.py SOURCE   with the program in LAP_PROGRAM
"""
import json
import os
import pathlib
import subprocess
import sys
import tempfile

source = pathlib.Path(sys.argv[1])
sys.path[:0] = [str(source / 'tests/house'), str(source / 'tests/arrange')]
from fill_mip import DAYS, Week, minutes, next_day, solve, soon  # noqa: E402
from tap import Tap  # noqa: E402

program = os.environ['LAP_PROGRAM']
folder = source / 'tests/data/fill'
SLACK = 3               # points that the wishes may be from the optimum


def fill(path, *words):
    with tempfile.TemporaryDirectory() as scratch:
        out = pathlib.Path(scratch, 'out.lapweek')
        done = subprocess.run([program, 'fill', str(path), '-o', str(out), '--json', *words], capture_output=True, text=True)
        return done, json.loads(done.stdout), json.loads(out.read_text('utf-8'))


def breaches(before, after):
    """Whatever a timetable must not do."""
    week = Week(after)
    placed = [(k, *week.place(k)) for k, c in enumerate(week.classes) if 'day' in c]
    for k, (was, now) in enumerate(zip(before['classes'], after['classes'])):
        if was.get('fixed') and was != now:
            yield f'{now["id"]} is fixed and was changed'
        if {m: v for m, v in was.items() if m not in ('day', 'start', 'room', 'coach')} != \
           {m: v for m, v in now.items() if m not in ('day', 'start', 'room', 'coach')}:
            yield f'{now["id"]} is another class'
    count = {}
    for k, day, start, r, c in placed:
        end, name = start + week.classes[k]['minutes'], week.classes[k]['id']
        count.setdefault((c, day), []).append(k)
        if k in week.fixed:
            continue
        if start % 15:
            yield f'{name} starts between two quarters'
        if not week.is_open(day, start, end):
            yield f'{name} is outside the opening hours'
        if not week.room_suits(k, r):
            yield f'{name} has too small a room'
        if not week.coach_suits(k, c) or not week.is_free(c, day, start, end):
            yield f'{name} has the wrong coach'
    for (c, day), there in count.items():
        if len(there) > week.coaches[c]['most-a-day']:
            yield f'{week.coaches[c]["id"]} has {len(there)} classes on {DAYS[day]}'
        if sum(map(week.is_hard, there)) > 2:
            yield f'{week.coaches[c]["id"]} takes part in too many hard classes on {DAYS[day]}'
    for a in placed:
        for b in placed:
            if a[0] >= b[0] or a[1] != b[1]:
                continue
            length = [week.classes[x[0]]['minutes'] for x in (a, b)]
            gap = week.rooms[a[3]]['turnaround'] if a[3] == b[3] else 0
            if (a[3] == b[3] or a[4] == b[4]) and a[2] < b[2] + length[1] + gap and b[2] < a[2] + length[0] + gap:
                yield f'{week.classes[a[0]]["id"]} and {week.classes[b[0]]["id"]} meet'


def points(after):
    week = Week(after)
    placed = {k: week.place(k)[:2] for k, c in enumerate(week.classes) if 'day' in c}
    sum_of = sum(week.points(k, *at) for k, at in placed.items())
    for a, b, shared in week.pairs():
        if a in placed and b in placed:
            sum_of += 3 * next_day(placed[a][0], placed[b][0]) + (shared and soon(placed[a], placed[b]))
    return sum_of


def frozen(tap, name, best):
    path = folder / f'{name}.lapweek'
    before = json.loads(path.read_text('utf-8'))
    done, said, after = fill(path)
    out = [c['id'] for c in after['classes'] if 'day' not in c]
    tap.check(f'{name}: nothing clashes', breaches(before, after))
    tap.equal(f'{name}: as many classes are placed as can be', len(out), best['unplaced'])
    tap.equal(f'{name}: it says which are left', [u['class'] for u in said['unplaced']], out)
    tap.equal(f'{name}: its points are those of the timetable', said['points'], points(after))
    tap.check(f'{name}: wishes within {SLACK} points of the optimum',
              [] if said['points'] <= best['points'] + SLACK else [f'{said["points"]}, not {best["points"]}'])
    tap.check(f'{name}: what it says can’t be passed isn’t passed',
              [] if said['least-unplaced'] <= best['unplaced'] and
              said['least'] <= 1000 * best['unplaced'] + best['points'] else [str(said['least'])])
    tap.check(f'{name}: the search left fewer out, or better ones in',
              [] if (len(out), said['points']) < (said['first-unplaced'], said['first-points']) else [str(said['points'])])
    tap.equal(f'{name}: ends with 5 for what isn’t met', done.returncode, 5 if out or said['missed'] else 0)
    for each in said['unplaced']:
        if not each['relax'] or not each['nearest']:
            tap.check(f'{name}: {each["class"]} is told what would help', [each['words']])
    return after


def relaxed(tap):
    """What it says would help does help: one class, one room, one coach."""
    coach = {'id': 'c', 'most-a-day': 1, 'free': {'mon': [['09:00', '12:00']]}, 'can': ['yoga']}
    lesson = {'id': 'a', 'kind': 'yoga', 'minutes': 60, 'places': 10}
    base = {'format': 'lapwing-week', 'version': 1, 'id': 'x', 'title': '', 'timezone': 'UTC',
            'open': {'mon': ['08:00', '20:00']}, 'rooms': [{'id': 'r', 'places': 12}], 'coaches': [coach],
            'classes': [lesson]}
    stands = {'id': 'b', 'kind': 'yoga', 'minutes': 60, 'day': 'mon', 'start': '09:00', 'room': 'r', 'coach': 'c',
              'fixed': True}
    cases = {
        'it fits': (base, None),
        'most-a-day': ({**base, 'classes': [lesson, stands]}, ['most-a-day']),
        'free': ({**base, 'coaches': [{**coach, 'free': {'mon': [['09:00', '09:30']]}}]}, ['free']),
        'can': ({**base, 'coaches': [{**coach, 'can': ['spin']}]}, ['can']),
        'places': ({**base, 'rooms': [{'id': 'r', 'places': 9}]}, ['places']),
        'open': ({**base, 'open': {'mon': ['09:00', '09:45']}}, ['open']),
        'hours that touch are one': ({**base, 'coaches': [{**coach, 'free': {'mon': [['09:00', '09:30'],
                                                                                    ['09:30', '10:00']]}}]}, None),
    }
    for title, (week, relax) in cases.items():
        with tempfile.NamedTemporaryFile('w', suffix='.lapweek') as stream:
            json.dump(week, stream)
            stream.flush()
            done, said, after = fill(stream.name)
        tap.equal(f'what stands in the way: {title}', [u['relax'] for u in said['unplaced']], [relax] if relax else [])


def in_words(tap):
    """What no search could place is said first, then what found no room beside the others, then wishes not kept."""
    coach = {'id': 'c', 'name': 'Ana', 'most-a-day': 2, 'free': {'mon': [['09:00', '12:00']]}, 'can': ['yoga']}
    one = {'kind': 'yoga', 'minutes': 60}
    week = {'format': 'lapwing-week', 'version': 1, 'id': 'x', 'title': '', 'timezone': 'UTC', 'rooms': [{'id': 'r'}],
            'coaches': [coach],
            'classes': [{**one, 'id': 'wish', 'title': 'Wished', 'wish': {'days': ['tue']}},
                        {**one, 'id': 'a', 'title': 'First', 'day': 'mon', 'start': '09:00', 'room': 'r', 'coach': 'c',
                         'fixed': True},
                        {**one, 'id': 'out', 'title': 'Longer', 'minutes': 120, 'wish': {'days': ['tue']}},
                        {**one, 'id': 'never', 'title': 'Never', 'kind': 'spin'}]}
    with tempfile.TemporaryDirectory() as scratch:
        path = pathlib.Path(scratch, 'week.lapweek')
        path.write_text(json.dumps(week), 'utf-8')
        done = subprocess.run([program, 'fill', path, '-o', path], capture_output=True, text=True)
    lines = done.stdout.splitlines()
    tap.check('what is said comes in the order of what can be done about it',
              [] if len(lines) == 4 and lines[1].startswith('  Never has no place in this week at all.') and
              ' could be on ' in lines[2] and ' is on Monday' in lines[3] else lines)
    tap.check('the conflict is the first of them', [] if ': 2, ' in done.stderr and ': 1: Never has' in done.stderr else
              [done.stderr])


def main():
    tap = Tap()
    optima = json.loads((folder / 'optima.json').read_text('utf-8'))
    run = subprocess.run([sys.executable, source / 'tests/arrange/fill-weeks.py', folder, '--check'], capture_output=True,
                         text=True)
    tap.check('the frozen weeks are those of the script', [] if run.returncode == 0 else [run.stdout])
    filled = {name: frozen(tap, name, best) for name, best in optima.items()}
    tap.equal('the same timetable again', fill(folder / '30.lapweek')[2], filled['30'])
    for name in '30', 'tight-30':
        best = solve(folder / f'{name}.lapweek', 'glpk')
        tap.equal(f'{name}: GLPK finds the optimum that is written down', best,
                  {k: optima[name][k] for k in ('unplaced', 'points')})
    relaxed(tap)
    in_words(tap)
    tap.done()


main()
