# SPDX-License-Identifier: GPL-3.0-or-later
"""Published texts, read by others: WebVTT by python3-webvtt and by ffprobe, CSV by Python's strict reader, JSON by
Python. Where chapters begin is worked out here from `lapwing timeline --json`."""
import csv
import html
import io
import json
import pathlib
import tempfile

import webvtt

from publishing import DEMOS, ask, block, part, publish, run, session, timeline
from tap import Tap


def cues(file):
    """(start, end, text) in seconds, as python3-webvtt reads the file; ffprobe must see the same times."""
    read = [(c.start_in_seconds, c.end_in_seconds, c.text) for c in webvtt.read(str(file))]
    said = ask('ffprobe', '-v', 'error', '-show_entries', 'packet=pts_time,duration_time', '-of', 'csv=p=0', file)
    seen = [tuple(map(float, line.split(',')[:2])) for line in said.split()]
    assert len(seen) == len(read), f'ffprobe sees {len(seen)} cues, python3-webvtt {len(read)}'
    for (start, end, _), (at, length) in zip(read, seen):
        assert abs(at - start) < 1e-3 and abs(at + length - end) < 1e-3, (start, end, at, length)
    return [(start, end, html.unescape(text)) for start, end, text in read]


def main_chapters(file):
    """(start, end) of every chapter of a session in which only main parts have rounds."""
    plan, document = timeline(file), json.loads(pathlib.Path(file).read_text('utf-8'))
    starts, seen = [], set()
    for v in plan['intervals']:
        kind = document['parts'][v['part']]['kind']
        key = (v['part'], v['round'], v['block']) if kind == 'main' else v['part']
        if key not in seen and (kind != 'main' or v['kind'] == 'work'):
            seen.add(key)
            starts.append(v['start'])
    ends = starts[1:] + [plan['length']]
    kept = [[0, ends[0]]]
    for start, end in list(zip(starts, ends))[1:]:
        if end - start >= 10:
            kept.append([start, end])
        else:
            kept[-1][1] = end
    return kept


def chapters(tap, folder):
    vtt = pathlib.Path(folder, 'chapters.vtt')
    for demo in DEMOS:
        lead = {'thirty-on-the-mat': 5}.get(demo.stem, 0)
        for offset in (0, 12.5):
            publish(demo, 'chapters', '--offset', offset, out=vtt)
            read = cues(vtt)
            wanted = [(start + lead + offset if start else 0, end + lead + offset) for start, end in main_chapters(demo)]
            tap.equal(f'{demo.stem}: chapters moved by {offset} s', [(a, b) for a, b, _ in read], wanted)
        listed = publish(demo, 'chapter-list').decode().splitlines()
        tap.equal(f'{demo.stem}: the list has the same chapters', [line.split(' ', 1)[1] for line in listed],
                  [text for _, _, text in read])
        tap.equal(f'{demo.stem}: the list begins at 0', listed[0].split()[0], '0:00')
    odd = session(folder, 'odd', [
        part('main', [{'pause': 'water', 'seconds': 30}]),
        part('main', [{'talk': 'Hm.', 'seconds': 20}, block(20, 5), block(5, 4, 'lunge-with-rotation'), block(30)],
             title='A & B <i>', rounds=2),
        part('cool-down', [block(30)], title='Out --> & <slow>'), part('closing', [{'talk': 'Bye.', 'seconds': 9}])])
    publish(odd, 'chapters', out=vtt)
    tap.equal('what is short or only talk joins the chapter before', cues(vtt), [
        (0, 50, 'Main'), (50, 84, 'Round 1: Squat'), (84, 134, 'Round 1: Squat'), (134, 168, 'Round 2: Squat'),
        (168, 198, 'Round 2: Squat'), (198, 237, 'Out --> & <slow>')])
    publish(odd, 'chapters', '--offset', '-60', out=vtt)
    tap.equal('the first that can be seen begins at 0', cues(vtt)[0][0], 0)


def tables(tap):
    for demo in DEMOS:
        text = publish(demo, 'table')
        tap.equal(f'{demo.stem}: the table is that of the timeline', text, run('timeline', demo, '--csv')[1])
        rows = list(csv.DictReader(io.StringIO(text.decode(), newline=''), strict=True))
        tap.equal(f'{demo.stem}: the table has every interval', [(int(r['start']), int(r['seconds'])) for r in rows],
                  [(v['start'], v['seconds']) for v in timeline(demo)['intervals']])
        tap.equal(f'{demo.stem}: the timeline is the same JSON', json.loads(publish(demo, 'timeline')), timeline(demo))
        post = publish(demo, 'post').decode()
        tap.check(f'{demo.stem}: the post has title, chapters and the words of safety',
                  [w for w in (json.loads(demo.read_text('utf-8'))['title'], 'Stop at pain', 'ask a clinician first',
                               publish(demo, 'chapter-list').decode()) if w not in post])


def commands(tap, folder):
    demo, out = DEMOS[0], pathlib.Path(folder, 'old.txt')
    formats = json.loads(run('formats', '--json')[1])['formats']
    lines = run('formats')[1].decode().splitlines()
    tap.equal('formats lists the same with and without --json', [line.split()[0] for line in lines],
              [f['id'] for f in formats])
    for words, status in ((('--as', 'nothing', '-o', out), 2), (('--as', 'chapters'), 2), (('-o', out), 2),
                          (('--as', 'table', '--offset', '3', '-o', out), 2),
                          (('--as', 'chapters', '--offset', 'x', '-o', out), 2),
                          (('--as', 'chapters', '--offset', 'nan', '-o', out), 2),
                          (('--as', 'chapters', '--at', '2027-01-11T18:30', '-o', out), 2),
                          (('--as', 'chapters', '-o', folder), 4),
                          (('--as', 'chapters', '-o', folder + '/gone/out.vtt'), 4)):
        out.write_text('old')
        got, printed, complaint = run('publish', demo, *words)
        tap.equal(f'publish {" ".join(map(str, words)).replace(folder, "")}: exit, one line, the old file',
                  (got, complaint.count('\n'), printed, out.read_text()), (status, 1, b'', 'old'))
    broken = pathlib.Path(folder, 'broken.lapwing')
    broken.write_text('{')
    tap.equal('a file that isn’t valid', run('publish', broken, '--as', 'chapters', '-o', out)[0], 3)


def main():
    tap = Tap()
    with tempfile.TemporaryDirectory() as folder:
        chapters(tap, folder)
        tables(tap)
        commands(tap, folder)
    tap.done()


main()
