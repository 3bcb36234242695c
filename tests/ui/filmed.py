# SPDX-License-Identifier: GPL-3.0-or-later
"""Judges what is published of the session that filmed.c has filmed: filmed.py FILE WHEN. Cues are read by webvtt-py
and by ffprobe, tables by Python's csv, pictures by ImageMagick."""
import csv
import datetime
import io
import json
import os
import pathlib
import subprocess
import sys
import tempfile

import webvtt

PROGRAM = os.environ['LAP_PROGRAM']
FILE, WHEN = sys.argv[1:]


def ask(*words):
    done = subprocess.run(list(map(str, words)), stdout=subprocess.PIPE, stderr=subprocess.PIPE)
    assert done.returncode == 0, (words, done.stderr.decode())
    return done.stdout.decode(), done.stderr.decode()


def publish(folder, as_, name, *more):
    out = pathlib.Path(folder, name)
    said = ask(PROGRAM, 'publish', FILE, '--as', as_, *more, '-o', out)[1]
    # A plan that was changed since it was filmed is told of, in a line, and published all the same.
    assert ('changed' in said) == (WHEN != 'as filmed') and said.count('\n') <= 1, said
    return out


def rows_of(path):
    return list(csv.DictReader(io.StringIO(path.read_bytes().decode(), newline=''), strict=True))


def cues_of(path):
    cues = [(c.start_in_seconds, c.end_in_seconds, c.text) for c in webvtt.read(str(path))]
    packets = ask('ffprobe', '-v', 'error', '-show_entries', 'packet=pts_time', '-of', 'csv=p=0', path)[0].split()
    assert [round(c[0], 2) for c in cues] == [round(float(p.strip(',')), 2) for p in packets], (cues, packets)
    return cues


def is_empty(picture):
    return float(ask('convert', picture, '-channel', 'A', '-separate', '-format', '%[fx:maxima]', 'info:')[0]) == 0


def takes_in_file():
    """What the keys have left there; the moments between them as the wall's clock has them."""
    session = json.loads(pathlib.Path(FILE).read_text('utf-8'))
    takes = session['takes']
    assert [(t.get('exercise'), t['mark']) for t in takes] == [('squat', 'good'), ('push-up', 'again'),
                                                             ('push-up', 'good')], takes
    assert 1 <= takes[2]['over'] <= 4, takes
    at = [datetime.datetime.fromisoformat(t['at'].replace('Z', '+00:00')) for t in takes]
    assert at == sorted(at) and (at[2] - at[1]).total_seconds() > 10, at


def cut_list(folder):
    rows = rows_of(publish(folder, 'cut-list', 'cuts.csv'))
    kept = [(float(r['in']), float(r['out'])) for r in rows if r['keep'] == 'yes']
    dropped = [(float(r['in']), float(r['out'])) for r in rows if r['keep'] == 'no']
    assert [r['exercise'] for r in rows if r['keep'] == 'yes'] == ['squat', 'push-up', 'plank'], rows
    assert ('push-up', 'again', 'no') in [(r['exercise'], r['mark'], r['keep']) for r in rows], rows
    assert ('push-up', 'good', 'yes') in [(r['exercise'], r['mark'], r['keep']) for r in rows], rows
    assert abs(kept[0][0] - 2) < 0.001 and all(a[1] <= b[0] + 0.001 for a, b in zip(kept, kept[1:])), kept
    # The one that was broken off was filmed before the one that is kept, which came after a count of three.
    assert dropped[0][1] <= kept[1][0] + 0.001, rows
    return kept, dropped


def main():
    takes_in_file()
    with tempfile.TemporaryDirectory() as folder:
        kept, dropped = cut_list(folder)
        inside = lambda second: any(a - 0.01 <= second <= b + 0.01 for a, b in kept)
        chapters = cues_of(publish(folder, 'chapters', 'chapters.vtt', '--takes'))
        assert chapters[0][0] == 0 and [c[2] for c in chapters] == ['Squat', 'Push-up', 'Plank'], chapters
        rests = [b['rest'] for b in json.loads(pathlib.Path(FILE).read_text('utf-8'))['parts'][0]['blocks']]
        # A chapter begins with its work, a cut with the rest before it.
        assert all(abs(c[0] - k[0] - rest) < 0.01 for c, k, rest in zip(chapters[1:], kept[1:], rests)), (chapters, kept)
        captions = cues_of(publish(folder, 'captions', 'captions.vtt', '--takes'))
        assert captions and all(inside(c[0]) for c in captions), (captions, kept)
        overlay = publish(folder, 'overlay', 'overlay', '--takes')
        timing = [(float(r['start']), float(r['start']) + float(r['seconds']), r['file'])
                  for r in rows_of(overlay / 'timing.csv')]
        shown = lambda second: next(overlay / n for a, b, n in timing if a <= second < b)
        assert all(not is_empty(shown((a + b) / 2)) for a, b in kept), timing
        assert all(is_empty(shown((a + b) / 2)) for a, b in dropped if not inside((a + b) / 2)), timing
        assert abs(timing[-1][1] - kept[-1][1]) < 0.01, timing


main()
