#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Joins data/exercises/*.json into the one catalogue that the program carries: a line an exercise, its id first.

usage: bundle.py OUT DEPFILE FOLDER
The depfile names the folder too, so that a new exercise is one new file and nothing else.
"""
import json
import pathlib
import sys

out, depfile, folder = sys.argv[1:]
files = sorted(pathlib.Path(folder).glob('*.json'))
exercises = [json.loads(f.read_text(encoding='utf-8')) for f in files]
lines = [json.dumps({'id': e.pop('id'), **e}, ensure_ascii=False, separators=(',', ':')) for e in exercises]
pathlib.Path(out).write_text('\n'.join(lines) + '\n', encoding='utf-8')
names = ' '.join(str(p).replace(' ', '\\ ') for p in [pathlib.Path(folder), *files])
pathlib.Path(depfile).write_text(f'{out}: {names}\n', encoding='utf-8')
