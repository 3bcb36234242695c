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


def told(pdf, *options):
    """From where names read, metres, as the command says it."""
    out = run(PROGRAM, 'print', DEMO, '--sheet', 'week', *options, '--distances', '-o', pdf).decode()
    return float(re.search(r'Names: reads from [\d.]+ m \(capitals of ([\d.]+) mm\)', out).group(1)) / CAP_AT_ONE_METRE


# NUREG-0700 1.3.1-4: H = 6.283 D A / 21600 under A minutes of arc; 16 are the least for reading.
CAP_AT_ONE_METRE = 6.283 * 1000 * 16 / 21600

# What the demo's week of 48 classes in 3 rooms is read from, at least: the paper, how many pages, metres.
READS = [
    (['--paper', 'A4'], 1, 0.95), (['--paper', 'A4', '--landscape'], 1, 0.95),
    (['--paper', 'A4', '--by-room'], 3, 1.5), (['--paper', 'A4', '--by-room', '--landscape'], 3, 1.5),
    (['--paper', 'A3'], 1, 1.35), (['--paper', 'A3', '--landscape'], 1, 1.35),
    (['--paper', 'A3', '--by-room'], 3, 2), (['--paper', 'A3', '--by-room', '--landscape'], 3, 2),
    (['--paper', 'A2'], 1, 2), (['--paper', 'A2', '--landscape'], 1, 2),
]


def ink_heights(pdf, pattern, dpi=200):
    """Height (mm) of what is drawn of each word of the first page that is like @pattern: poppler's own pixels, in a box
    that is as high as poppler says the word is."""
    found = run('pdftotext', '-bbox', '-l', '1', pdf, '-').decode()
    run('pdftoppm', '-r', dpi, '-l', '1', '-gray', '-singlefile', pdf, pdf.with_suffix(''))
    head, size, _, data = pdf.with_suffix('.pgm').read_bytes().split(b'\n', 3)
    width = int(size.split()[0])
    heights = []
    for *box, word in re.findall(r'xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">(.*?)</word>', found):
        if re.fullmatch(pattern, word):
            left, top, right, bottom = (round(float(edge) * dpi / 72) for edge in box)
            rows = [y for y in range(top, bottom) if min(data[y * width + left:y * width + right]) < 128]
            heights.append((rows[-1] - rows[0] + 1) * 25.4 / dpi)
    return heights


def distances(tap, week, folder):
    placed = sum(1 for c in week['classes'] if 'day' in c)
    for options, count, least in READS:
        name = ' '.join(options).replace('--', '')
        metres = told(folder / 'read.pdf', *options)
        tap.equal(f'{name}: pages', pages(folder / 'read.pdf')[0], count)
        tap.check(f'{name}: reads from {least} m at least', [] if metres >= least else [metres])
    for options in (['--paper', 'A2'], ['--paper', 'A3', '--landscape']):
        metres = told(folder / 'read.pdf', *options)
        times = ink_heights(folder / 'read.pdf', r'\d\d:\d\d')
        # Figures are about as high as capitals: within 4 hundredths in the faces that are used, and a pixel.
        drawn = min(times) / CAP_AT_ONE_METRE
        tap.check(f'{" ".join(options)}: times are drawn as high as it is said',
                  [] if len(times) == placed and abs(drawn / metres - 1) < 0.05 else [len(times), drawn, metres])


def larger(tap, folder):
    """What doesn't read from 2 m says what would, and that does."""
    out = run(PROGRAM, 'print', DEMO, '--sheet', 'week', '--paper', 'A4', '--distances', '-o', folder / 'small.pdf').decode()
    found = re.search(r'Names would read from 2.0 m with (.*)', out)
    tap.check('A4 is told what reads from 2 m', [] if found else [out])
    tap.check('and it does', [] if told(folder / 'large.pdf', *found.group(1).split()) >= 2 else [found.group(1)])
    out = run(PROGRAM, 'print', DEMO, '--sheet', 'week', '--paper', 'A2', '--distances', '-o', folder / 'large.pdf').decode()
    tap.check('A2 is told nothing', [] if 'would' not in out else [out])


def rooms(tap, week, folder):
    alone, together = (told(folder / f'{name}.pdf', *SHEETS['week'][2:], *more)
                       for name, more in (('rooms', ['--by-room']), ('all', [])))
    tap.equal('a page for each room', pages(folder / 'rooms.pdf')[0], len(week['rooms']))
    tap.check('which reads from half as far again at least', [] if alone >= 1.5 * together else [alone, together])
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
        distances(tap, week, folder)
        larger(tap, folder)
    tap.done()


main()
