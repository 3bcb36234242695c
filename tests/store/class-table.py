# SPDX-License-Identifier: GPL-3.0-or-later
"""Spreadsheets of classes: what Python's csv module writes becomes a week; each wrong row is named by its line and
nothing is imported then; and what `publish --as table` writes of a week makes the same week again."""
import csv
import io
import json
import os
import pathlib
import subprocess
import sys
import tempfile

from tap import Tap

TOLD, PROGRAM = sys.argv[1], os.environ['LAP_PROGRAM']
DEMO = pathlib.Path(os.environ['LAP_SOURCE'], 'data', 'demo', 'kelpline-week.lapweek')


def told(table, week=None):
    with tempfile.TemporaryDirectory() as folder:
        path = pathlib.Path(folder, 'table.csv')
        path.write_bytes(table if isinstance(table, bytes) else table.encode())
        words = [TOLD, path]
        if week is not None:
            words.append(pathlib.Path(folder, 'week.lapweek'))
            words[-1].write_text(json.dumps(week))
        return json.loads(subprocess.run(words, capture_output=True, check=True).stdout)


def table(*rows, delimiter=','):
    out = io.StringIO(newline='')
    csv.writer(out, delimiter=delimiter).writerows(rows)
    return out.getvalue()


def classes(said):
    """Without ids, and with rooms and coaches by name."""
    week = said['week']
    names = {x['id']: x.get('name', x['id']) for m in ('rooms', 'coaches') for x in week.get(m, [])}
    return [{m: names[v] if m in ('room', 'coach') else v for m, v in c.items() if m != 'id'} for c in week.get('classes', [])]


def people_write(tap):
    said = told(table(['Day', 'Time', 'Class', 'Instructor', 'Studio', 'Length'],
                      ['Monday', '6:30 pm', 'Circuit', 'Ana Brook', 'Loft', '45 min'],
                      ['Tue, Thu', '07.00', 'Stretch', 'BO FELL', 'loft', '1h'], [],
                      ['', '', 'Chair', 'Bo Fell', '', '30']))
    tap.equal('a timetable as people type it', classes(said), [
        {'kind': 'Circuit', 'minutes': 45, 'day': 'mon', 'start': '18:30', 'room': 'Loft', 'coach': 'Ana Brook'},
        {'kind': 'Stretch', 'minutes': 60, 'day': 'tue', 'start': '07:00', 'room': 'Loft', 'coach': 'BO FELL'},
        {'kind': 'Stretch', 'minutes': 60, 'day': 'thu', 'start': '07:00', 'room': 'Loft', 'coach': 'BO FELL'},
        {'kind': 'Chair', 'minutes': 30, 'coach': 'BO FELL'}])
    tap.equal('rooms and coaches are made once', [len(said['week'][m]) for m in ('rooms', 'coaches')], [1, 2])
    said = told('Spring timetable;;;\r\n;;;\r\nTÍTLE;Dáy;Start;Colour\r\nSpin;fri;17:00–17:45;red\r\n')
    tap.equal('semicolons, a title above, accents, a column that means nothing', (classes(said), said['unknown']),
              ([{'kind': 'Spin', 'minutes': 45, 'day': 'fri', 'start': '17:00'}], ['Colour']))
    said = told(table(['title', 'kind', 'start', 'end', 'date'], ['Early', 'circuit', '6:30', '7:15', '2027-01-13']))
    tap.equal('a date names its day', classes(said),
              [{'title': 'Early', 'kind': 'circuit', 'minutes': 45, 'day': 'wed', 'start': '06:30'}])


def faults(tap):
    head = ['title', 'day', 'start', 'end', 'minutes', 'places', 'fixed', 'effort', 'state', 'regions', 'wish-between']
    good = ['Spin', 'mon', '18:00', '', '45']
    for row, wanted in (
            (['', 'mon', '18:00', '', '45'], 'it has neither a title nor a kind'),
            (['Spin', 'Funday', '18:00', '', '45'], '“Funday” isn’t a day such as Monday or Mon'),
            (['Spin', 'mon', 'half six', '', '45'], '“half six” isn’t a time such as 18:30'),
            (['Spin', 'mon', '18:00', '17:00', ''], 'it ends before it begins'),
            (['Spin', 'mon', '18:00', '19:00', '45'], 'from start to end it is 60 minutes, and not 45'),
            (['Spin', 'mon', '18:00', '', ''], 'its length isn’t said'),
            (['Spin', 'mon', '18:00', '', '0'], '“0” isn’t a length in minutes such as 45'),
            (['Spin', 'mon', '', '', '45'], 'it has a day, and no start'),
            (['Spin', 'mon', '23:30', '', '45'], 'it doesn’t end by 24:00'),
            ([*good, 'many'], '“many” isn’t a number such as 20'),
            ([*good, '-1'], '“-1” isn’t a number such as 20'),
            ([*good, '', 'perhaps'], '“perhaps” is neither yes nor no'),
            ([*good, '', '', 'brutal'], '“brutal” isn’t an effort: easy, moderate or hard'),
            ([*good, '', '', 'easy hard'], '“easy hard” isn’t an effort: easy, moderate or hard'),
            ([*good, '', '', '', 'cancelled'],
             '“cancelled” says what happens on one date; a table of the week as it always is has no such rows'),
            ([*good, '', '', '', '', 'elbow'], '“elbow” aren’t regions such as chest or thighs'),
            ([*good, '', '', '', '', '', '20:00-17:00'], '“20:00-17:00” aren’t hours such as 17:00–20:00')):
        said = told(table(head, good, ['two\r\nlines', *good[1:]], row, good))
        tap.check(f'a fault in {row}', [] if 'week' not in said and said['faults'] == ['Line 5: ' + wanted] else [said])
    said = told(table(head, ['Spin', 'x', '18:00', '', '45'], good, ['Spin', 'y', 'z', '', '45']))
    tap.equal('every wrong row is named', [f[:7] for f in said['faults']][:3], ['Line 2:', 'Line 4:', 'Line 4:'])
    for text, wanted in (('', 'there is nothing in it'), ('\n\n', 'there is nothing in it'),
                         ('colour,shape\nred,round', 'line 1: no column is called “title” or “kind”'),
                         ('title,day\nSpin,mon', 'line 1: no column says how long classes are, as “minutes” or “end”'),
                         ('title,start\n"Spin,18:00', 'line 2: a quotation mark is never closed')):
        tap.equal(f'what is no table of classes: {text!r}', told(text).get('error'), wanted)
    said = told(table(['title', 'minutes'], *[['Spin', '45']] * 2001))
    tap.equal('at most 2,000 classes', said['faults'], ['Line 2002: a week has at most 2000 classes'])


def again(tap):
    week = json.loads(DEMO.read_text('utf-8'))
    week['classes'][0] |= {'title': 'Quoted, "so"\nand on two lines', 'effort': 'hard', 'regions': ['thighs', 'front-core'],
                           'in-out': 5, 'takes-part': False, 'fixed': True, 'session': 'a, b.lapwing', 'for': 'ï; "x"',
                           'wish': {'days': ['mon', 'sun'], 'between': ['17:00', '20:00']}, 'places': 12}
    for unit in week['classes'][1:3]:
        unit.pop('day'), unit.pop('start')
    week['rooms'].append({'id': 'twin', 'name': week['rooms'][0]['name']})
    week['classes'][5]['room'] = 'twin'
    with tempfile.NamedTemporaryFile('w', suffix='.lapweek') as stream:
        json.dump(week, stream)
        stream.flush()
        written = subprocess.run([PROGRAM, 'publish', stream.name, '--as', 'table', '-o', '-'], capture_output=True, check=True)
    said = told(written.stdout, week)
    tap.equal('a table of the week changes nothing in it', (said['faults'], said['unknown'], said['week']),
              ([], [], json.loads(json.dumps(week))))
    said = told(table(['title', 'minutes', 'room'], ['Spin', '45', week['rooms'][0]['name']]), week)
    tap.equal('which of two rooms of one name is meant isn’t guessed', said['faults'],
              [f'Line 2: two are called “{week["rooms"][0]["name"]}”'])
    week['rooms'].pop()
    week['classes'][5]['room'] = week['rooms'][0]['id']
    fresh = told(written.stdout)
    plain = [{m: v for m, v in c.items() if m != 'fine'} for c in classes({'week': week})]
    tap.equal('nor when it becomes a new week, but for the order', sorted(map(str, map(sorted, map(dict.items, classes(fresh))))),
              sorted(map(str, map(sorted, map(dict.items, plain)))))
    rows = list(csv.reader(io.StringIO(written.stdout.decode(), newline='')))
    at = rows[0].index('start'), rows[0].index('end'), rows[0].index('class')
    changed = rows[3][at[2]]
    rows[3][at[0]], rows[3][at[1]] = '05:00', ''
    said = told(table(*rows), week)
    tap.equal('a changed row changes its class alone',
              [c['id'] for c, d in zip(week['classes'], said['week']['classes'], strict=True) if c != d], [changed])
    tap.equal('a class twice is a fault', told(table(*rows, rows[3]), week)['faults'],
              [f'Line {len(rows) + 2}: the class “{changed}” is there twice'])


def main():
    tap = Tap()
    people_write(tap)
    faults(tap)
    again(tap)
    tap.done()


main()
