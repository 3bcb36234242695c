# SPDX-License-Identifier: GPL-3.0-or-later
"""The sheets of a week as they are printed, judged by poppler's pdftotext, pdftoppm and pdfinfo: the right way round for
people who read from the right, in one ink when that is asked for, in pieces, and a page for each room."""
import json
import os
import pathlib
import re
import subprocess
import tempfile

from tap import Tap

PROGRAM = os.environ['LAP_PROGRAM']
DEMO = pathlib.Path(os.environ['LAP_SOURCE'], 'data', 'demo', 'kelpline-week.lapweek')
SHEETS = {'week': ['--sheet', 'week', '--paper', 'A3', '--landscape'], 'changes': ['--sheet', 'changes', '--week', '2027-01-20']}


def run(*words, **more):
    return subprocess.run([str(w) for w in words], capture_output=True, check=True, **more).stdout


def words_of(pdf):
    """Each word with the left and right edge of its first place, and the width of the page."""
    told = run('pdftotext', '-bbox', pdf, '-').decode()
    found = {}
    for left, right, word in re.findall(r'<word xMin="([\d.]+)" yMin="[\d.]+" xMax="([\d.]+)" yMax="[\d.]+">(.*?)</word>', told):
        found.setdefault(word, (float(left), float(right)))
    return found, float(re.search(r'<page width="([\d.]+)"', told).group(1))


def colours(pdf, folder):
    """How many pixels of the first page aren't grey."""
    run('pdftoppm', '-r', '40', '-f', '1', '-l', '1', '-singlefile', pdf, folder / 'page')
    data = (folder / 'page.ppm').read_bytes()
    pixels = data.split(b'\n', 3)[3]
    return sum(1 for k in range(0, len(pixels), 3) if max(pixels[k:k + 3]) - min(pixels[k:k + 3]) > 3)


def mirrored(week):
    week = json.loads(json.dumps(week))
    week['title'] = 'ورشة الحركة'
    return week


def directions(tap, week, folder):
    for sheet, words in SHEETS.items():
        for name, document in (('left', week), ('right', mirrored(week))):
            path = folder / 'week.lapweek'
            path.write_text(json.dumps(document), 'utf-8')
            run(PROGRAM, 'print', path, *words, '-o', folder / f'{name}.pdf')
        (left, width), (right, _) = words_of(folder / 'left.pdf'), words_of(folder / 'right.pdf')
        start, end = min(x for x, _ in left.values()), width - max(x for _, x in right.values())
        tap.check(f'{sheet}: lines begin at the right margin', [] if abs(start - end) < width * 0.01 else [start, end])
        if sheet == 'week':
            tap.check('week: each day stands as far from the right as it did from the left',
                      [f'{d}: {left[d]} and {right[d]} of {width}' for d in ('Monday', 'Tuesday', 'Saturday')
                       if abs(left[d][0] - (width - right[d][1])) > width * 0.01])


def inks(tap, folder):
    for sheet, words in SHEETS.items():
        for ink, grey in (('colour', False), ('one', True), ('outline', True)):
            run(PROGRAM, 'print', DEMO, *words, '--ink', ink, '-o', folder / 'ink.pdf')
            n = colours(folder / 'ink.pdf', folder)
            tap.check(f'{sheet} in {ink}: ' + ('no colour anywhere' if grey else 'colours'), [] if (n == 0) == grey else [n])


def pages(pdf):
    told = run('pdfinfo', pdf).decode()
    return int(re.search(r'Pages:\s+(\d+)', told).group(1)), re.search(r'Page size:.*', told).group(0)


def pieces(tap, folder):
    run(PROGRAM, 'print', DEMO, *SHEETS['week'], '--tile', 'A4', '-o', folder / 'tile.pdf')
    count, size = pages(folder / 'tile.pdf')
    tap.check('A3 in pieces of A4: at least two, each of A4', [] if count >= 2 and 'A4' in size else [count, size])
    text = run('pdftotext', folder / 'tile.pdf', '-').decode()
    tap.check('every day is on some piece', [d for d in ('Monday', 'Wednesday', 'Friday', 'Sunday') if d not in text])


def rooms(tap, week, folder):
    reads = {}
    for name, more in (('all', []), ('rooms', ['--by-room'])):
        told = run(PROGRAM, 'print', DEMO, *SHEETS['week'], *more, '--distances', '-o', folder / f'{name}.pdf').decode()
        reads[name] = float(re.search(r'Names: reads from ([\d.]+) m', told).group(1))
    tap.equal('a page for each room', pages(folder / 'rooms.pdf')[0], len(week['rooms']))
    tap.check('which reads from half as far again at least', [] if reads['rooms'] >= 1.5 * reads['all'] else [reads])
    for n, room in enumerate(week['rooms'], 1):
        text = run('pdftotext', '-f', n, '-l', n, '-layout', folder / 'rooms.pdf', '-').decode()
        wanted = sum(1 for c in week['classes'] if c.get('room') == room['id'] and 'day' in c)
        tap.equal(f'page {n} has the classes of {room["name"]}, each with its time',
                  (room['name'] in text, len(re.findall(r'\b\d\d:\d\d\b', text))), (True, wanted))


def main():
    tap = Tap()
    week = json.loads(DEMO.read_text('utf-8'))
    with tempfile.TemporaryDirectory() as scratch:
        folder = pathlib.Path(scratch)
        directions(tap, week, folder)
        inks(tap, folder)
        pieces(tap, folder)
        rooms(tap, week, folder)
    tap.done()


main()
