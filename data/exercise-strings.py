#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Lists the words of all exercises in a form that xgettext can read, since it cannot read JSON.

usage: exercise-strings.py [FOLDER [OUT]]
Run it after a word of an exercise has changed; a test fails while the list is older than the exercises.
The strings are those of the JSON files, so that the program finds a translation by the text it has read.
"""
import json
import pathlib
import sys

HEAD = '''/* SPDX-License-Identifier: CC-BY-4.0 */
/* Made by data/exercise-strings.py from data/exercises. Only for translators: this file is never compiled. */
'''


def words(exercise):
    """The texts of one exercise in the order of its file, each with the field that it stands in."""
    yield 'name', exercise['name']
    for other in exercise.get('other-names', []):
        yield 'another name', other
    for joint, care in exercise.get('care', {}).items():
        if 'say' in care:
            yield f'to spare {joint}, in lower case', care['say']
    for field, text in exercise['say'].items():
        if isinstance(text, list):
            yield from ((f'{field} {n}', cue) for n, cue in enumerate(text, 1))
        else:
            yield field, text


def listing(folder):
    """The whole list as text; folder holds the exercises."""
    lines = []
    for file in sorted(pathlib.Path(folder).glob('*.json'), key=lambda f: f.stem):
        exercise = json.loads(file.read_text(encoding='utf-8'))
        for field, text in words(exercise):
            quoted = text.replace('\\', '\\\\').replace('"', '\\"')
            lines.append(f'/* Translators: {exercise["id"]}: {field} */\nN_("{quoted}")\n')
    return HEAD + ''.join(lines)


if __name__ == '__main__':
    here = pathlib.Path(__file__).resolve().parent
    source = pathlib.Path(sys.argv[1]) if len(sys.argv) > 1 else here / 'exercises'
    target = pathlib.Path(sys.argv[2]) if len(sys.argv) > 2 else here.parent / 'po' / 'exercise-strings.c'
    target.write_text(listing(source), encoding='utf-8')
