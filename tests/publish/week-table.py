# SPDX-License-Identifier: GPL-3.0-or-later
"""A week as a table and the hours of its coaches, read by Python's own csv reader (strict) and added up again from the
file of the week."""
import copy
import csv
import io
import json
import os
import pathlib
import subprocess
import tempfile

from tap import Tap

PROGRAM = os.environ['LAP_PROGRAM']
DAYS = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun']
WEEK = {
    'format': 'lapwing-week', 'version': 1, 'id': 'x', 'title': 'A week', 'timezone': 'Europe/Lisbon',
    'rooms': [{'id': 'r', 'name': 'Loft, "upper"'}, {'id': 's'}],
    'coaches': [{'id': 'a', 'name': 'Ana Brook'}, {'id': 'b', 'name': 'Bo Fell'}],
    'classes': [
        {'id': 'k1', 'title': 'Early forty', 'kind': 'circuit', 'minutes': 45, 'day': 'mon', 'start': '06:30', 'room': 'r',
         'coach': 'a'},
        {'id': 'k2', 'kind': 'stretch', 'minutes': 60, 'for': 'early birds', 'places': 20, 'day': 'thu', 'start': '18:00',
         'room': 's', 'coach': 'a'},
        {'id': 'k3', 'kind': 'chair', 'minutes': 30, 'day': 'thu', 'start': '09:05', 'room': 'r', 'coach': 'b'},
        {'id': 'k4', 'kind': 'chair', 'minutes': 30}],
    'except': [{'class': 'k1', 'date': '2027-01-11', 'cancelled': True},
               {'class': 'k2', 'date': '2027-01-14', 'coach': 'b'}],
}


def publish(document, *words):
    with tempfile.NamedTemporaryFile('w', suffix='.lapweek') as stream:
        json.dump(document, stream)
        stream.flush()
        done = subprocess.run([PROGRAM, 'publish', stream.name, *words, '-o', '-'], capture_output=True)
    return done.returncode, list(csv.DictReader(io.StringIO(done.stdout.decode(), newline=''), strict=True)), done


def hours(document, *words):
    return {r['coach']: (int(r['classes']), int(r['minutes']), float(r['hours'])) for r in
            publish(document, '--as', 'hours', *words)[1]}


def main():
    tap = Tap()
    status, rows, done = publish(WEEK, '--as', 'table')
    tap.equal('every class has a row, in the order of time', [r['class'] for r in rows], ['k1', 'k3', 'k2', 'k4'])
    tap.equal('a row says when, where and with whom', rows[2],
              {'date': '', 'day': 'thu', 'start': '18:00', 'end': '19:00', 'minutes': '60', 'class': 'k2', 'title': 'stretch',
               'kind': 'stretch', 'for': 'early birds', 'room': 's', 'coach': 'Ana Brook', 'places': '20', 'state': 'held',
               'effort': '', 'session': '', 'regions': '', 'in-out': '', 'takes-part': 'yes', 'fixed': 'no', 'wish-days': '',
               'wish-between': ''})
    tap.equal('names with commas and quotation marks come back', rows[0]['room'], 'Loft, "upper"')
    tap.equal('lines end as RFC 4180 says', done.stdout.count(b'\n'), done.stdout.count(b'\r\n'))
    rows = publish(WEEK, '--as', 'table', '--from', '2027-01-13')[1]
    tap.equal('a dated week says what is different', [(r['date'], r['class'], r['coach'], r['state']) for r in rows],
              [('2027-01-11', 'k1', 'Ana Brook', 'cancelled'), ('2027-01-14', 'k3', 'Bo Fell', 'held'),
               ('2027-01-14', 'k2', 'Bo Fell', 'held'), ('', 'k4', '', 'unplaced')])
    tap.equal('hours of the week', hours(WEEK), {'a': (2, 105, 1.75), 'b': (1, 30, 0.5)})
    tap.equal('hours of a dated week', hours(WEEK, '--from', '2027-01-13'), {'a': (0, 0, 0.0), 'b': (2, 90, 1.5)})
    day = publish(WEEK, '--as', 'hours')[1][0]
    tap.equal('minutes day by day', [int(day[d]) for d in DAYS], [45, 0, 0, 60, 0, 0, 0])
    tap.equal('a wrong date is wrong use', publish(WEEK, '--as', 'hours', '--from', 'soon')[0], 2)
    tap.equal('what is made of a session isn’t made of a week', publish(WEEK, '--as', 'chapters')[0], 2)
    broken = copy.deepcopy(WEEK)
    broken['timezone'] = 'Nowhere'
    tap.equal('a broken week is refused', publish(broken, '--as', 'hours')[0], 3)
    demo = pathlib.Path(os.environ['LAP_SOURCE'], 'data', 'demo', 'twelve-at-twelve.lapwing')
    done = subprocess.run([PROGRAM, 'publish', demo, '--as', 'hours', '-o', '-'], capture_output=True)
    tap.equal('the hours are made of a week', done.returncode, 2)
    tap.done()


main()
