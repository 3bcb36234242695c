# SPDX-License-Identifier: GPL-3.0-or-later
"""The overlay and the pack, read by others: ffprobe counts pictures and looks for alpha, ImageMagick sees where there
is something to be seen. The safe area for titles is 5 % from each edge (EBU R 95): 96 and 54 pixels of 1920 by 1080."""
import csv
import io
import json
import pathlib
import re
import signal
import subprocess
import tempfile

import icalendar
import jsonschema
import webvtt

from publishing import PROGRAM, SOURCE, ask, block, part, publish, run, session, timeline
from tap import Tap

PARTS = [part('opening', [{'talk': 'Welcome to a short one.', 'seconds': 4}]),
         part('main', [block(6, 3), block(5, 2, 'push-up')], rounds=2)]


def shown(path, width):
    """Left, top, right and bottom of what isn't transparent; None where nothing is."""
    alpha = subprocess.run(['convert', str(path), '-alpha', 'extract', '-depth', '8', 'gray:-'], stdout=subprocess.PIPE,
                           check=True).stdout
    rows = [(y, alpha[y * width:(y + 1) * width]) for y in range(len(alpha) // width)]
    seen = [(y, len(row) - len(row.lstrip(b'\0')), len(row.rstrip(b'\0'))) for y, row in rows if row.strip(b'\0')]
    return (min(s[1] for s in seen), seen[0][0], max(s[2] for s in seen), seen[-1][0] + 1) if seen else None


def pictures(tap, folder, name, size, **members):
    file, out = session(folder, name, PARTS, **members), pathlib.Path(folder, name)
    run('publish', file, '--as', 'overlay', '--offset', '2.5', '-o', out)
    rows = list(csv.DictReader(io.StringIO((out / 'timing.csv').read_text('utf-8'), newline=''), strict=True))
    length = timeline(file)['length']
    starts = [(float(r['start']), float(r['seconds'])) for r in rows]
    tap.equal(f'{name}: an empty picture, then one for each second', starts,
              [(0, 2.5)] + [(2.5 + s, 1) for s in range(length)])
    files = {path.name for path in out.glob('*.png')}
    tap.equal(f'{name}: all pictures are listed', {r['file'] for r in rows}, files)
    probed = {ask('ffprobe', '-v', 'error', '-show_entries', 'stream=width,height,pix_fmt', '-of', 'csv=p=0', out / f).strip()
              for f in files}
    tap.equal(f'{name}: each has its size, and alpha', probed, {f'{size[0]},{size[1]},rgba'})
    boxes = [shown(out / f, size[0]) for f in sorted(files)]
    tap.equal(f'{name}: the first is empty, and no other', [i for i, box in enumerate(boxes) if box is None], [0])
    safe = (size[0] * .05, size[1] * .05, size[0] * .95, size[1] * .95)
    tap.check(f'{name}: all is in the safe area for titles', [b for b in boxes[1:] if not (
        b[0] >= safe[0] and b[1] >= safe[1] and b[2] <= safe[2] and b[3] <= safe[3])])
    return file, out


def films(tap, file, folder):
    length = timeline(file)['length']
    for suffix, codec in (('mov', 'png'), ('webm', 'vp9')):
        film = pathlib.Path(folder, 'film.' + suffix)
        status, _, said = run('publish', file, '--as', 'overlay', '-o', film)
        tap.equal(f'{suffix}: is written', (status, said), (0, ''))
        probe = json.loads(ask('ffprobe', '-v', 'error', '-show_streams', '-show_packets', '-of', 'json', film))
        stream, times = probe['streams'][0], [float(p['pts_time']) for p in probe['packets']]
        tap.equal(f'{suffix}: the codec', stream['codec_name'], codec)
        tap.check(f'{suffix}: has alpha', [] if stream['pix_fmt'] == 'rgba' or
                  stream.get('tags', {}).get('alpha_mode') == '1' else [stream])
        missed = [s for s in range(length) if not any(abs(t - s) < 0.06 for t in times)]
        tap.check(f'{suffix}: a picture on every second', missed)
        lasts = float(ask('ffprobe', '-v', 'error', '-show_entries', 'format=duration', '-of', 'csv=p=0', film))
        tap.check(f'{suffix}: lasts as long as the session', [lasts] if abs(lasts - length) > 0.002 else [])
        tap.equal(f'{suffix}: one picture a second, the first twice', len(times), length + 1)
    complaint = subprocess.run([PROGRAM, 'publish', str(file), '--as', 'overlay', '-o', folder + '/none.mov'],
                               env={'PATH': folder}, stderr=subprocess.PIPE, text=True)
    tap.equal('without ffmpeg: exit 6, one line', (complaint.returncode, complaint.stderr.count('\n')), (6, 1))


def folders(tap, file, out, folder):
    run('publish', file, '--as', 'overlay', '-o', out)
    first = (out / 'timing.csv').read_text('utf-8').splitlines()[1]
    tap.equal('a folder that was published is replaced', first.split(',')[0], '0')
    (out / 'mine.txt').write_text('mine')
    status = run('publish', file, '--as', 'overlay', '-o', out)[0]
    tap.equal('one with other files isn’t', (status, (out / 'mine.txt').read_text()), (4, 'mine'))
    tap.equal('a folder can’t go to standard output', run('publish', file, '--as', 'overlay', '-o', '-')[0], 2)
    tap.equal('nothing is left beside', [p.name for p in pathlib.Path(folder).iterdir() if p.name.startswith('.')], [])


def nothing(tap, folder):
    file, film = session(folder, 'nothing', []), pathlib.Path(folder, 'nothing.mov')
    tap.equal('a session without anything has an empty picture', (run('publish', file, '--as', 'overlay', '-o', film)[0],
              ask('ffprobe', '-v', 'error', '-show_entries', 'stream=pix_fmt,duration', '-of', 'csv=p=0', film).strip()),
              (0, 'rgba,1.000000'))


def interrupted(tap, file, folder):
    """Ended by a signal while it works, nothing is left and the exit status says so."""
    long = session(folder, 'long', [part('main', [block(10800)] * 4)])
    for name, as_ in (('half', 'overlay'), ('half.wav', 'tones'), ('half.mov', 'overlay')):
        work = subprocess.Popen([PROGRAM, 'publish', str(long), '--as', as_, '-o', f'{folder}/{name}'],
                                stderr=subprocess.PIPE, text=True)
        while not any(p.name.startswith('.lapwing') for p in pathlib.Path(folder).iterdir()) and work.poll() is None:
            pass
        work.send_signal(signal.SIGINT)
        said = work.communicate()[1]
        left = [p.name for p in pathlib.Path(folder).iterdir() if p.name.startswith(('.', 'half'))]
        tap.equal(f'{name}: nothing is left of it', (work.returncode, said.count('\n'), left), (4, 1, []))


def pack(tap, file, folder):
    out = pathlib.Path(folder, 'film day')
    status, _, said = run('publish', file, '--as', 'pack', '-o', out)
    tap.equal('the pack is written', (status, said), (0, ''))
    tap.equal('all of it is there', sorted(p.name for p in out.iterdir()), sorted(
        'poster.pdf running-order.pdf poster.png running-order.csv timeline.json post.txt chapters.txt chapters.vtt '
        'captions.vtt tones.flac overlay.mov'.split()))
    for name in ('poster.pdf', 'running-order.pdf'):
        ask('qpdf', '--check', out / name)
        tap.check(f'{name}: has pages that poppler reads', [] if int(re.search(r'Pages:\s+(\d+)', ask('pdfinfo', out / name)).group(1))
                  else [name])
    ask('flac', '-t', '-s', out / 'tones.flac')
    schemas = {s['$id']: s for s in (json.loads(p.read_text('utf-8')) for p in (SOURCE / 'data' / 'schemas').glob('*.json'))}
    schema = next(s for name, s in schemas.items() if name.endswith('timeline-output'))
    jsonschema.Draft202012Validator(schema, resolver=jsonschema.RefResolver('', schema, schemas)).validate(
        json.loads((out / 'timeline.json').read_text('utf-8')))
    with open(out / 'running-order.csv', newline='', encoding='utf-8') as table:
        rows = list(csv.DictReader(table, strict=True))
    tap.equal('the running order has a row for each interval', len(rows), len(timeline(file)['intervals']))
    for name in ('chapters.vtt', 'captions.vtt'):
        cues = webvtt.read(str(out / name))
        packets = ask('ffprobe', '-v', 'error', '-show_entries', 'packet=pts_time', '-of', 'csv=p=0', out / name).split()
        tap.equal(f'{name}: two parsers find the same cues', [round(c.start_in_seconds, 2) for c in cues],
                  [round(float(p.strip(',')), 2) for p in packets])
    tap.check('the words are text', [n for n in ('post.txt', 'chapters.txt') if not (out / n).read_text('utf-8').strip()])
    tap.equal('the poster is a picture of A3', ask('identify', '-format', '%w x %h', out / 'poster.png'), '1754 x 2480')


def ink(picture, size):
    """The picture as ImageMagick reads it, in that size: a row of bytes for each line, 0 black to 255 white."""
    width, height = size
    flat = subprocess.run(['convert', str(picture), '-resize', f'{width}x{height}!', '-background', 'white', '-flatten',
                           '-colorspace', 'Gray', '-depth', '8', 'gray:-'], stdout=subprocess.PIPE, check=True).stdout
    return [flat[y * width:(y + 1) * width] for y in range(height)]


def pages(tap, file, folder):
    """The poster as pictures beside the poster that is printed, which poppler draws and whose words it finds, at one
    pixel a point: as large, with the same ink, and with every word in its place."""
    pdf, svg, png = (pathlib.Path(folder, name) for name in ('page.pdf', 'page.svg', 'page.png'))
    run('print', file, '--sheet', 'poster', '--paper', 'A3', '-o', pdf)
    for out in (svg, png):
        publish(file, 'page', out=out)
    ask('xmllint', '--noout', svg)
    ask('pdftoppm', '-png', '-r', '72', '-singlefile', pdf, pathlib.Path(folder, 'printed'))
    ask('rsvg-convert', svg, '-d', '72', '-p', '72', '-o', pathlib.Path(folder, 'drawn.png'))
    drawn = ask('identify', '-format', '%w %h', pathlib.Path(folder, 'drawn.png')).split()
    size = [int(n) for n in ask('identify', '-format', '%w %h', pathlib.Path(folder, 'printed.png')).split()]
    tap.check('the page as SVG is as large as the sheet',
              [] if all(abs(int(a) - b) <= 1 for a, b in zip(drawn, size)) else [(drawn, size)])
    tap.equal('the page as PNG is A3 at 150 dots an inch', ask('identify', '-format', '%w x %h', png), '1754 x 2480')
    words = re.findall(r'<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">',
                       ask('pdftotext', '-bbox', pdf, '-'))
    printed = ink(pathlib.Path(folder, 'printed.png'), size)
    tap.check('the printed sheet has words to look for', [] if len(words) > 50 else [len(words)])
    for name, picture in (('SVG', pathlib.Path(folder, 'drawn.png')), ('PNG', png)):
        seen, gone = ink(picture, size), []
        for box in words:
            left, top, right, bottom = (int(float(n)) for n in box)
            patch = b''.join(line[left:right + 1] for line in seen[top:bottom + 1])
            if max(patch) - min(patch) < 64:
                gone.append(box)
        tap.check(f'the page as {name} has ink for every word', gone)
        apart = sum(abs(a - b) for one, other in zip(printed, seen) for a, b in zip(one, other)) / (size[0] * size[1])
        tap.check(f'the page as {name} looks like the sheet', [] if apart < 6 else [apart])


def held(tap, file, folder):
    """With a day the pack has a calendar as well, and with names the tones are spoken."""
    out = pathlib.Path(folder, 'held')
    status, _, said = run('publish', file, '--as', 'pack', '--at', '2027-03-28T18:30', '--timezone', 'Europe/Lisbon',
                          '--spoken', '-o', out)
    tap.equal('the pack with a day is written', (status, said), (0, ''))
    event = next(iter(icalendar.Calendar.from_ical((out / 'calendar.ics').read_bytes()).walk('VEVENT')))
    tap.equal('it is on that day', event['dtstart'].dt.isoformat(), '2027-03-28T18:30:00+01:00')
    plain = pathlib.Path(folder, 'film day', 'tones.flac')
    sums = [subprocess.run(['flac', '-d', '-s', '-c', str(p)], stdout=subprocess.PIPE, check=True).stdout
            for p in (plain, out / 'tones.flac')]
    tap.equal('with names it sounds otherwise, and is as long', (len(sums[0]), sums[0] != sums[1]), (len(sums[1]), True))
    tap.equal('a time without a day is refused', run('publish', file, '--as', 'pack', '--at', 'noon', '--timezone',
                                                     'Europe/Lisbon', '-o', folder + '/no')[0], 2)


def main():
    tap = Tap()
    with tempfile.TemporaryDirectory() as folder:
        file, out = pictures(tap, folder, 'landscape', (1920, 1080))
        pictures(tap, folder, 'upright', (1080, 1920), film={'frame': 'portrait'})
        films(tap, file, folder)
        folders(tap, file, out, folder)
        nothing(tap, folder)
        interrupted(tap, file, folder)
        pack(tap, file, folder)
        pages(tap, file, folder)
        held(tap, file, folder)
    tap.done()


main()
