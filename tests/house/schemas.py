# SPDX-License-Identifier: GPL-3.0-or-later
"""The schemas of the files and of what the commands print, through python3-jsonschema.

Each schema is valid against the meta-schema of JSON Schema 2020-12; takes the good documents of its fixture and none
of the bad ones; and the program agrees: it reads what the schema takes, refuses what it refuses, and prints what it
allows. A bad document is a good one with a few members set or dropped, so that only one thing is wrong with it.
"""
import copy
import json
import os
import pathlib
import re
import subprocess
import tempfile

import jsonschema

from tap import Tap

SOURCE, PROGRAM = pathlib.Path(os.environ['LAP_SOURCE']), os.environ['LAP_PROGRAM']
FIXTURES = SOURCE / 'tests' / 'data' / 'schemas'
SCHEMAS = {path.stem: json.loads(path.read_text(encoding='utf-8'))
           for path in sorted((SOURCE / 'data' / 'schemas').glob('*.json'))}
STORE = {schema['$id']: schema for schema in SCHEMAS.values()}
SHARED = {'words'}  # no document of its own

# What the commands print, and the schema that it must meet. FILE stands for each demo, WEEK for a week, OUT for what
# is written, which must be valid too.
WEEK = SOURCE / 'tests' / 'data' / 'fill' / 'tight-30.lapweek'
OUTPUTS = {
    'check-output': ('check', 'FILE', '--json'),
    'timeline-output': ('timeline', 'FILE', '--json'),
    'catalogue-output': ('catalogue', '--json'),
    'formats-output': ('formats', '--json'),
    'sheets-output': ('sheets', '--json'),
    'checks-output': ('checks', '--json'),
    'effort-output': ('effort', 'FILE', '--json'),
    'script-output': ('script', 'FILE', '--json'),
    'mend-output': ('mend', 'FILE', '-o', 'OUT', '--json'),
    'fill-output': ('fill', 'WEEK', '-o', 'OUT', '--json'),
    'order-output': ('order', 'FILE', '--costs', '--json'),
}


def validator(name):
    schema = SCHEMAS[name]
    resolver = jsonschema.RefResolver(schema['$id'], schema, store=STORE)
    return jsonschema.Draft202012Validator(schema, resolver=resolver,
                                           format_checker=jsonschema.draft202012_format_checker)


def complaints(name, document):
    return [f'/{"/".join(map(str, e.absolute_path))}: {e.message}'[:300]
            for e in validator(name).iter_errors(document)]


def changed(document, change):
    """A copy of @document with the members of change["set"] set and those of change["drop"] gone."""
    made = copy.deepcopy(document)
    steps = [(pointer, True, value) for pointer, value in change.get('set', {}).items()]
    steps += [(pointer, False, None) for pointer in change.get('drop', [])]
    for pointer, keep, value in steps:
        *way, last = [int(w) if w.isdigit() else w for w in pointer.split('/')[1:]]
        at = made
        for word in way:
            at = at[word]
        if keep:
            at[last] = 'x' * int(value[1:]) if isinstance(value, str) and value.startswith('*') else value
        else:
            del at[last]
    return made


def ended(*words, document=None):
    """The exit status of the program and its words, for the file FILE with @document."""
    with tempfile.TemporaryDirectory() as folder:
        path = os.path.join(folder, 'plan.lapwing')
        with open(path, 'w', encoding='utf-8') as stream:
            json.dump(document, stream)
        done = subprocess.run([PROGRAM, *[path if w == 'FILE' else w for w in words]], stdout=subprocess.PIPE,
                              stderr=subprocess.PIPE, text=True)
    return done.returncode, done.stderr.strip()


def as_session(name, document):
    """A session with the document in it: an exercise becomes one of its own."""
    if name != 'exercise':
        return document
    return {'format': 'lapwing-session', 'version': 1, 'id': 'x', 'title': '', 'exercises': [document], 'parts': []}


def fixtures(tap, name):
    cases = json.loads((FIXTURES / f'{name}.json').read_text(encoding='utf-8'))
    # How the program reads it, and how it ends then: a brief may ask for what cannot be had.
    words, well = (('compose', 'FILE', '-o', '-'), (0, 5)) if name == 'brief' else (('timeline', 'FILE'), (0,))
    read = name in ('session', 'exercise', 'brief')
    for title, document in cases['good'].items():
        tap.check(f'{name}: takes "{title}"', complaints(name, document))
        if read:
            status, said = ended(*words, document=as_session(name, document))
            tap.check(f'{name}: the program reads "{title}"', [] if status in well else [said])
    for title, change in cases['bad'].items():
        document = changed(cases['good'][change['of']], change)
        tap.check(f'{name}: refuses "{title}"', [] if complaints(name, document) else ['the schema takes it'])
        if read:
            status, said = ended(*words, document=as_session(name, document))
            tap.equal(f'{name}: the program refuses "{title}" in one line', (status, len(said.splitlines())), (3, 1))


def printed(tap, name, command):
    for demo in sorted((SOURCE / 'data' / 'demo').glob('*.lapwing')) if 'FILE' in command else [None]:
        title = f'lapwing {" ".join(command)}' + (f' of {demo.name}' if demo else '')
        with tempfile.TemporaryDirectory() as folder:
            out = pathlib.Path(folder, 'new.lapwing')
            words = [{'FILE': str(demo), 'WEEK': str(WEEK), 'OUT': str(out)}.get(w, w) for w in command]
            done = subprocess.run([PROGRAM, *words], stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True)
            try:
                tap.check(title, complaints(name, json.loads(done.stdout)))
                if 'OUT' in command:
                    tap.check(f'{title}: what it wrote', complaints('week' if 'WEEK' in command else 'session',
                                                                         json.loads(out.read_text('utf-8'))))
            except (json.JSONDecodeError, OSError) as error:
                tap.check(title, [f'{error}; {done.stderr.strip()}'])


def main():
    tap = Tap()
    tap.equal('each schema has its fixture', {path.stem for path in FIXTURES.glob('*.json')}, set(SCHEMAS) - SHARED)
    for name, schema in SCHEMAS.items():
        problems = []
        try:
            jsonschema.Draft202012Validator.check_schema(schema)
        except jsonschema.SchemaError as error:
            problems.append(error.message)
        tap.check(f'{name}: is a schema', problems)
        tap.equal(f'{name}: has its name', schema['$id'], f'urn:lapwing:schema:{name}')
    for name in set(SCHEMAS) - SHARED:
        fixtures(tap, name)
    for path in sorted((SOURCE / 'data' / 'exercises').glob('*.json')):
        tap.check(f'exercise: takes {path.name}', complaints('exercise', json.loads(path.read_text('utf-8'))))
    for path in sorted((SOURCE / 'data' / 'demo').iterdir()):
        name = {'.lapwing': 'session', '.lapweek': 'week'}.get(path.suffix)
        if name:
            tap.check(f'{name}: takes {path.name}', complaints(name, json.loads(path.read_text('utf-8'))))
    known = re.findall(r'^  lapwing ([a-z]+)(.*)', subprocess.run([PROGRAM, '--help'], stdout=subprocess.PIPE, text=True,
                                                                  check=True).stdout, re.M)
    tap.equal('every command that prints JSON has a schema',
              {name for name, synopsis in known if '--json' in synopsis} - {c[0] for c in OUTPUTS.values()}, set())
    for name, command in OUTPUTS.items():
        if command[0] in dict(known):
            printed(tap, name, command)
    tap.done()


main()
