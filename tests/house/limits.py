# SPDX-License-Identifier: GPL-3.0-or-later
"""Do the schema of sessions and the program draw every line at the same place?

Each value of a session that holds every member is replaced, one at a time, by values at its limits, just beyond them,
and of other types; the schema and the program must agree on each. What only the program can know, being a matter of two
values, is listed."""
import copy
import json
import os
import pathlib
import re
import subprocess
import sys
import tempfile

import jsonschema

from tap import Tap

SOURCE, VERDICTS = pathlib.Path(os.environ['LAP_SOURCE']), sys.argv[1]
SCHEMAS = [json.loads(path.read_text(encoding='utf-8')) for path in (SOURCE / 'data' / 'schemas').glob('*.json')]
STORE = {schema['$id']: schema for schema in SCHEMAS}
SESSION = STORE['urn:lapwing:schema:session']
FIXTURE = SOURCE / 'tests' / 'data' / 'schemas' / 'session.json'

# Every limit of the formats, so that each value meets its own and its neighbours'.
NUMBERS = [-43201, -43200, -1, -0.5, 0, 0.05, 0.1, 0.5, 0.9, 1, 1.5, 2, 2.5, 3, 4, 5, 10, 10.5, 19, 20, 25, 26, 29, 30, 30.5,
           50, 51, 100, 101, 120, 121, 300, 301, 600, 601, 1000, 1001, 1992, 1993, 2100, 2101, 10000, 10001, 10800,
           10801, 43200, 43201, 1000000, 1000001]
OTHERS = [None, True, '', 'x', 'x' * 100, 'x' * 101, 'x' * 200, 'x' * 201, 'x' * 10000, 'x' * 10001, '3-1-1', '0-0-0',
          '3-1', '100-1-1', [], [1, 2], [0, 0], [0, 2], [1, 1001], ['x'], ['mat', 'mat'], ['x'] * 21, {}, {'mat': -1},
          {'x': 1}, {'2': {}}, {'1': {}}, {'02': {}}, {'101': {}}]

# What no schema can say: the place, and what the program says there. A prefix of the pointer is enough.
BETWEEN_TWO = [
    ('/band', 'expected "low" below "high"'),
    ('/parts', 'the rounds of the part'), ('/parts', 'has no later rounds'),
    ('/parts', 'expected repetitions'),
    ('/parts', 'too short to split over two sides'), ('/parts', 'the session is longer than 43200 s'),
    ('/exercises', 'its own easier or harder'),
]


def leaves(value, pointer=''):
    """(pointer, value) of every value, lists and objects too."""
    if pointer:
        yield pointer, value
    items = value.items() if isinstance(value, dict) else enumerate(value) if isinstance(value, list) else ()
    for name, inner in items:
        yield from leaves(inner, f'{pointer}/{name}')


def changed(document, pointer, value):
    made = copy.deepcopy(document)
    *way, last = [int(word) if word.isdigit() else word for word in pointer.split('/')[1:]]
    at = made
    for word in way:
        at = at[str(word) if isinstance(at, dict) else word]
    at[str(last) if isinstance(at, dict) else last] = value
    return made


def cases(document):
    """(pointer, value, document): each value, the first of its name and kind, replaced by many of
    its own kind and some of every other."""
    met = set()
    for pointer, old in leaves(document):
        kind = re.sub(r'/\d+', '/*', pointer), type(old)
        if kind in met or '/figure' in pointer:
            continue
        met.add(kind)
        number = isinstance(old, (int, float)) and not isinstance(old, bool)
        for value in NUMBERS + OTHERS[::6] if number else NUMBERS[::12] + OTHERS:
            yield pointer, value, changed(document, pointer, value)


def verdicts(documents):
    """What the program says of each."""
    with tempfile.TemporaryDirectory() as folder:
        paths = []
        for number, document in enumerate(documents):
            paths.append(os.path.join(folder, str(number)))
            with open(paths[-1], 'w', encoding='utf-8') as out:
                json.dump(document, out)
        said = []
        for start in range(0, len(paths), 1000):
            said += subprocess.run([VERDICTS, *paths[start:start + 1000]], stdout=subprocess.PIPE, text=True,
                                   check=True).stdout.splitlines()
    assert len(said) == len(documents)
    return said


def disagreements(document):
    check = jsonschema.Draft202012Validator(SESSION,
                                            resolver=jsonschema.RefResolver(SESSION['$id'], SESSION, store=STORE))
    tried = list(cases(document))
    for (pointer, value, made), said in zip(tried, verdicts([made for _, _, made in tried])):
        takes = check.is_valid(made)
        if takes == (said == 'ok'):
            continue
        if takes and any(pointer.startswith(place) and words in said for place, words in BETWEEN_TWO):
            continue
        value = json.dumps(value)
        yield f'{pointer} = {value[:40]}: the schema {"takes" if takes else "refuses"} it, the program says {said}'


def main():
    tap = Tap()
    document = json.loads(FIXTURE.read_text(encoding='utf-8'))['good']['whole']
    tap.check('the schema and the program draw the same lines', disagreements(document))
    tap.done()


main()
