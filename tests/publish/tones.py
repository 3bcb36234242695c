# SPDX-License-Identifier: GPL-3.0-or-later
"""The tones as a file, through decoders that aren't ours: sox reads WAV, flac and ffmpeg read FLAC, ffmpeg's ebur128
measures. Where each tone begins is worked out here from `lapwing timeline --json`, after the habits of the trade:
three short ones before work, a long one on it, a low one where it ends, a tick half-way. Loudness: EBU R 128, -23 LUFS
within 1 LU; peaks at or below -6 dBFS and -1 dBTP."""
import array
import json
import pathlib
import re
import subprocess
import tempfile

from publishing import DEMOS, PROGRAM, ask, block, part, publish, run, session, timeline
from tap import Tap

COUNT, WORK, REST, HALF = (880, 120), (1320, 500), (660, 400), (990, 60)  # Hz, milliseconds


def plan(file):
    """(seconds, tone) of every tone, by time."""
    intervals = timeline(file)['intervals']
    tones = {}
    for n, v in enumerate(intervals):
        if v['kind'] != 'work':
            continue
        start, end = v['start'], v['start'] + v['seconds']
        after = intervals[n + 1] if n + 1 < len(intervals) else None
        tones[start] = WORK
        if after is None or after['kind'] != 'work':
            tones[end] = REST
        if v['seconds'] >= 30 and not is_split(intervals, n):
            tones[start + v['seconds'] / 2] = HALF
    for n, v in enumerate(intervals):
        if v['kind'] == 'work':
            worked = [u for u in intervals[:n] if u['kind'] == 'work'][-1:]
            # The count doesn't begin before the end of the last work was told, or before it began.
            before = max([end if (end := u['start'] + u['seconds']) in tones and end != v['start'] else u['start']
                          for u in worked], default=0)
            for left in (3, 2, 1):
                if v['start'] - left >= before:
                    tones.setdefault(v['start'] - left, COUNT)
    return sorted(tones.items())


def is_split(intervals, n):
    """Whether one block's other side stands next to it."""
    v = intervals[n]
    near = [u for u in intervals[max(0, n - 2):n + 3] if u is not v and u['kind'] == 'work']
    return v['side'] is not None and any((u['part'], u['block'], u['round']) == (v['part'], v['block'], v['round'])
                                         and u['side'] not in (None, v['side']) for u in near)


def samples(file):
    """Signed 16-bit samples and their rate, as sox decodes the file."""
    rate = int(ask('soxi', '-r', file))
    raw = subprocess.run(['sox', str(file), '-t', 's16', '-L', '-'], stdout=subprocess.PIPE, check=True).stdout
    return array.array('h', raw), rate


def heard(data):
    """(first, behind the last) of every run of samples that aren't silent; a tone crosses 0, silence lasts."""
    silence, chunk = bytes(2 * 600), bytes(2 * 4800)
    raw, found, at = data.tobytes(), [], 0
    while True:
        while raw[at:at + len(chunk)] == chunk:
            at += len(chunk)
        first = re.compile(b'[^\0]').search(raw, at)
        if not first:
            return found
        end = raw.find(silence, first.start())
        while end >= 0 and end % 2:
            end += 1
        end = len(raw) if end < 0 else end
        found.append((first.start() // 2, end // 2))
        at = end


def pitch(data, first, last, rate):
    """Hz, from the crossings of 0."""
    crossings = [i for i in range(first + 1, last) if (data[i - 1] < 0) != (data[i] < 0)]
    return (len(crossings) - 1) / 2 / ((crossings[-1] - crossings[0]) / rate)


def compare(file, wanted, offset):
    data, rate = samples(file)
    runs = heard(data)
    problems = [] if len(runs) == len(wanted) else [f'{len(runs)} tones, expected {len(wanted)}']
    for (first, last), (at, (frequency, length)) in zip(runs, wanted):
        start = (at + offset) * rate
        if abs(first - start) > 1:
            problems.append(f'the tone at {at} s begins {first - start:+.0f} samples off')
        if abs((last - first) / rate * 1000 - length) > 1.5:
            problems.append(f'the tone at {at} s lasts {(last - first) / rate * 1000:.1f} ms, expected {length}')
        if abs(pitch(data, first, last, rate) - frequency) > 12:
            problems.append(f'the tone at {at} s has {pitch(data, first, last, rate):.0f} Hz, expected {frequency}')
    return problems[:5]


def loudness(file):
    """Integrated loudness in LUFS, true peak in dBTP."""
    said = ask('ffmpeg', '-nostats', '-hide_banner', '-i', file, '-af', 'ebur128=peak=true', '-f', 'null', '-')
    said = said[said.rindex('Summary:'):]
    return float(re.search(r'I:\s+(-?[\d.]+) LUFS', said).group(1)), float(re.search(r'Peak:\s+(-?[\d.]+)', said).group(1))


def levels(tap, name, file):
    integrated, peak = loudness(file)
    tap.check(f'{name}: loudness is -23 LUFS within 1', [] if abs(integrated + 23) <= 1 else [integrated])
    tap.check(f'{name}: the peak is below -6 dBFS', [] if peak <= -6 else [peak])


def demos(tap, folder):
    for demo in DEMOS:
        wav, flac = pathlib.Path(folder, 'a.wav'), pathlib.Path(folder, 'a.flac')
        publish(demo, 'tones', out=wav)
        publish(demo, 'tones', out=flac)
        lead = {'thirty-on-the-mat': 5}.get(demo.stem, 0)
        tap.check(f'{demo.stem}: every tone begins within a sample of the plan', compare(wav, plan(demo), lead))
        length = timeline(demo)['length'] + lead
        tap.equal(f'{demo.stem}: as long as the film', float(ask('soxi', '-D', wav)), float(length))
        ask('flac', '-t', '-s', flac)
        sums = [subprocess.run(['ffmpeg', '-v', 'error', '-i', str(file), '-f', 's16le', '-'], stdout=subprocess.PIPE,
                               check=True).stdout for file in (wav, flac)]
        tap.check(f'{demo.stem}: FLAC holds the same samples as WAV', [] if sums[0] == sums[1] else ['they differ'])
        levels(tap, demo.stem, wav)


CASES = {
    'work to the very end, and none before it': [part('main', [block(20)])],
    'no rest between': [part('main', [block(20), block(2, exercise='plank'), block(1), block(31, exercise='lunge-hold')])],
    'a rest of two seconds': [part('main', [block(20, 2), block(20, 3), block(20, 1), block(20)], rounds=2)],
    'sides with and without a change': [part('main', [
        {'exercise': 'side-plank', 'work': 60, 'rest': 10, 'sides': 'split', 'switch': 4},
        {'exercise': 'side-plank', 'work': 61, 'sides': 'split'}])],
    'sets and rounds': [part('main', [block(30, 10)], rounds=2, sets=3)],
    'own pace and every minute': [part('main', [block(30)], run='own-pace', cap=120),
                                  part('main', [block(40)], run='on-the-minute', rounds=3)],
    'talk before and after': [part('opening', [{'talk': 'Welcome.', 'seconds': 5}]), part('main', [block(30)]),
                              part('closing', [{'talk': 'Thanks.', 'seconds': 5}])],
}


def cases(tap, folder):
    for number, (name, parts) in enumerate(CASES.items()):
        file, wav = session(folder, f'case-{number}', parts), pathlib.Path(folder, f'case-{number}.wav')
        publish(file, 'tones', out=wav)
        tap.check(name, compare(wav, plan(file), 0))
    publish(file, 'tones', '--offset', '-7.25', out=wav)
    tap.check('moved before the film: what is left is in place',
              compare(wav, [(at, tone) for at, tone in plan(file) if at >= 7.25], -7.25))
    publish(file, 'tones', '--offset', '0.1', out=wav)
    tap.check('moved by a tenth of a second', compare(wav, plan(file), 0.1))
    tap.equal('WAV goes to standard output, whole', publish(file, 'tones', '--offset', '0.1'), wav.read_bytes())


def spoken(tap, folder):
    """Names between the tones, by espeak-ng: loudness and peak hold for both together, and no tone is moved."""
    file = session(folder, 'spoken', [part('opening', [{'talk': 'Hello.', 'seconds': 20}]),
                                      part('main', [block(30, 20), block(30, 20, 'push-up'), block(30, 20, 'plank')])])
    plain, said = pathlib.Path(folder, 'plain.wav'), pathlib.Path(folder, 'said.wav')
    publish(file, 'tones', out=plain)
    publish(file, 'tones', '--spoken', out=said)
    (quiet, rate), (full, _) = samples(plain), samples(said)
    tap.equal('spoken names leave the length', len(full), len(quiet))
    names = [line['start'] for line in json.loads(run('script', file, '--json')[1])['lines'] if line['kind'] == 'name']
    tap.check('each name is said within its second and a half',
              [s for s in names if not any(full[i] != quiet[i] for i in range(s * rate, s * rate + rate * 3 // 2))])
    tap.check('nothing else is changed', [s for s in range(len(full) // rate) if not any(n <= s < n + 4 for n in names)
                                          and full[s * rate:(s + 1) * rate] != quiet[s * rate:(s + 1) * rate]])
    levels(tap, 'with names', said)
    done = subprocess.run([PROGRAM, 'publish', str(file), '--as', 'tones', '--spoken', '-o', folder + '/none.wav'],
                          env={'PATH': folder}, stderr=subprocess.PIPE, text=True)
    tap.equal('without espeak-ng: exit 6, one line', (done.returncode, done.stderr.count('\n')), (6, 1))
    tap.equal('other formats have no sound', run('publish', file, '--as', 'post', '--spoken', '-o', '-')[0], 2)


def refused(tap, folder):
    file = session(folder, 'short', [part('main', [block(20)])])
    tap.equal('a name that doesn’t say which', run('publish', file, '--as', 'tones', '-o', folder + '/a.mp3')[0], 2)
    long = session(folder, 'long', [part('main', [block(10800)] * 4)])
    tap.equal('more than WAV can hold', run('publish', long, '--as', 'tones', '--offset', '43200', '-o', folder + '/b.wav')[0],
              2)
    left = sorted(path.name for path in pathlib.Path(folder).iterdir() if path.suffix not in ('.lapwing', '.wav', '.flac'))
    tap.equal('nothing is left of what was refused', left + [p.name for p in pathlib.Path(folder).glob('[ab].mp3')], [])


def main():
    tap = Tap()
    with tempfile.TemporaryDirectory() as folder:
        demos(tap, folder)
        cases(tap, folder)
        spoken(tap, folder)
        refused(tap, folder)
    tap.done()


main()
