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


def captions(tap, folder):
    """At most two lines of at most 37 characters (BBC Subtitle Guidelines), never two at once, at most 200 words a
    minute where the plan leaves the time (Ofcom), and every word of the script in its order."""
    vtt = pathlib.Path(folder, 'captions.vtt')
    for demo in DEMOS:
        lead = {'thirty-on-the-mat': 5}.get(demo.stem, 0)
        publish(demo, 'captions', out=vtt)
        read = cues(vtt)
        lines = json.loads(run('script', demo, '--json')[1])['lines']
        tap.equal(f'{demo.stem}: every word that is said, in order', ' '.join(text for _, _, text in read).split(),
                  ' '.join(line['text'] for line in lines).split())
        tap.check(f'{demo.stem}: two lines of 37 characters',
                  [text for _, _, text in read if text.count('\n') > 1 or max(map(len, text.split('\n'))) > 37])
        tap.check(f'{demo.stem}: one at a time', [b for a, b in zip(read, read[1:]) if a[1] > b[0] + 1e-3])
        tap.check(f'{demo.stem}: there is time to read', [c for c in read if c[1] - c[0] < 0.3 * len(c[2].split()) - 1e-3])
        tap.check(f'{demo.stem}: each begins where it is said',
                  {line['start'] + lead for line in lines} - {start for start, _, _ in read})


def filmed(folder, takes, takes_of=''):
    return session(folder, 'filmed', [part('main', [block(30, 10), block(30, 10, 'push-up'), block(30, 10, 'plank')])],
                   takes=takes, **{'takes-of': takes_of})


def take(at, clock, exercise, mark, over=0):
    return {'at': f'2027-01-11T10:{at // 60:02d}:{at % 60:02d}Z', 'clock': clock, 'exercise': exercise, 'round': 1,
            'mark': mark, **({'over': over} if over else {})}


def takes(tap, folder):
    """Squat is good; the push-up is broken off at 60 s, and taken again from its rest at 30 s after a count of 3 and
    4 s of waiting; the rest runs through. So the second push-up's rest begins at 67 s of the film."""
    file = filmed(folder, [take(32, 32, 'squat', 'good'), take(60, 60, 'push-up', 'again', 2.5),
                           take(107, 70, 'push-up', 'good')])
    rows = list(csv.DictReader(io.StringIO(publish(file, 'cut-list').decode(), newline=''), strict=True))
    tap.equal('the cut list', [(float(r['in']), float(r['out']), r['keep'], r['exercise'], r['mark']) for r in rows],
              [(0, 30, 'yes', 'squat', 'good'), (30, 60, 'no', 'push-up', 'again'), (67, 107, 'yes', 'push-up', 'good'),
               (107, 147, 'yes', 'plank', '')])
    vtt, table = pathlib.Path(folder, 'takes.vtt'), pathlib.Path(folder, 'takes.csv')
    publish(file, 'takes', '--offset', '10', out=vtt)
    tap.equal('the takes as cues', cues(vtt), [(10, 40, 'Squat, Good'), (40, 70, 'Push-up, Again'),
                                               (77, 117, 'Push-up, Good')])
    rows = list(csv.DictReader(io.StringIO(publish(file, 'takes', out=table).decode(), newline=''), strict=True))
    tap.equal('the takes as a table', [(r['film'], r['clock'], r['exercise'], r['mark'], r['over']) for r in rows],
              [('32', '32', 'squat', 'good', '0'), ('60', '60', 'push-up', 'again', '2.5'),
               ('107', '70', 'push-up', 'good', '0')])
    publish(file, 'chapters', '--takes', out=vtt)
    tap.equal('chapters on the takes', cues(vtt), [(0, 77, 'Squat'), (77, 117, 'Push-up'), (117, 147, 'Plank')])
    plain, moved = pathlib.Path(folder, 'plain.vtt'), pathlib.Path(folder, 'moved.vtt')
    publish(file, 'captions', out=plain)
    publish(file, 'captions', '--takes', out=moved)
    tap.equal('captions on the takes', [(round(a + (37 if a >= 30 else 0), 3), t) for a, _, t in cues(plain)],
              [(round(a, 3), t) for a, _, t in cues(moved)])
    complaint = run('publish', file, '--as', 'chapters', '--takes', '-o', '-')[2]
    tap.check('a plan that was changed since is told of', [] if 'changed' in complaint else [complaint])
    tap.equal('no takes at all', run('publish', filmed(folder, []), '--as', 'chapters', '--takes', '-o', '-')[0], 2)
    broken = filmed(folder, [{**take(1, 1, 'squat', 'good'), 'at': 'noon'}])
    tap.equal('a time of day that isn’t one', run('publish', broken, '--as', 'cut-list', '-o', '-')[0], 3)


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
        captions(tap, folder)
        takes(tap, folder)
        tables(tap)
        commands(tap, folder)
    tap.done()


main()
