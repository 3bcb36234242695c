# SPDX-License-Identifier: GPL-3.0-or-later
"""What the tests of published files share: running the program, demo sessions, and sessions of a few blocks."""
import json
import os
import pathlib
import subprocess

SOURCE, PROGRAM = pathlib.Path(os.environ['LAP_SOURCE']), os.environ['LAP_PROGRAM']
DEMOS = sorted((SOURCE / 'data' / 'demo').glob('*.lapwing'))


def run(*words, **more):
    """The exit status, what was printed and what was complained about."""
    done = subprocess.run([PROGRAM, *map(str, words)], stdout=subprocess.PIPE, stderr=subprocess.PIPE, **more)
    return done.returncode, done.stdout, done.stderr.decode()


def publish(file, as_, *more, out='-'):
    """The bytes on standard output, or of the file @out."""
    status, printed, complaint = run('publish', file, '--as', as_, *more, '-o', out)
    if status != 0:
        raise RuntimeError(f'publish {file} --as {as_}: exit {status}: {complaint.strip()}')
    return printed if out == '-' else pathlib.Path(out).read_bytes()


def timeline(file):
    return json.loads(run('timeline', file, '--json')[1])


def ask(*words):
    """What another program says; it must end well."""
    done = subprocess.run(list(map(str, words)), stdout=subprocess.PIPE, stderr=subprocess.STDOUT)
    text = done.stdout.decode(errors='replace')
    if done.returncode != 0:
        raise RuntimeError(f'{words[0]}: exit {done.returncode}: {text}')
    return text


def session(folder, name, parts, **members):
    """Writes a session and returns its path."""
    path = pathlib.Path(folder, name + '.lapwing')
    path.write_text(json.dumps({'format': 'lapwing-session', 'version': 1, 'id': name, 'title': name, **members,
                                'parts': parts}), encoding='utf-8')
    return path


def part(kind, blocks, **members):
    return {'kind': kind, **members, 'blocks': blocks}


def block(work, rest=0, exercise='squat', **members):
    return {'exercise': exercise, 'work': work, 'rest': rest, **members}
