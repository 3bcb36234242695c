# SPDX-License-Identifier: GPL-3.0-or-later
"""Do README.md and DEVELOPERS.md tell of what is there, and of nothing else? Commands are held against the program,
paths and names of tests against the tree."""
import os
import re
import subprocess

from tap import Tap

SOURCE, PROGRAM = os.environ['LAP_SOURCE'], os.environ['LAP_PROGRAM']
# What a path in a text may leave open, and what stands for any of several.
OPEN = re.compile(r'[<>*…{}]')
PATH = re.compile(r'`(\.?/?(?:src|data|tests|help|po|\.ci)/[^\s`]*)`')


def read(name):
    with open(os.path.join(SOURCE, name), encoding='utf-8') as text:
        return text.read()


def main():
    tap = Tap()
    page = subprocess.run([PROGRAM, '--help'], stdout=subprocess.PIPE, text=True, check=True).stdout
    commands = set(re.findall(r'^  lapwing ([a-z]+)', page, re.M))
    readme = read('README.md')
    named = set(re.findall(r'`lapwing ([a-z]+)', readme))
    tap.equal('README.md names every command, and no other', named, commands)
    for name in ('README.md', 'DEVELOPERS.md', 'data/LICENCE.md'):
        text = read(name)
        missing = [path for path in PATH.findall(text)
                   if not OPEN.search(path) and not os.path.exists(os.path.join(SOURCE, path.split(':')[0]))]
        tap.check(f'{name}: every path is there', missing)
    text = read('DEVELOPERS.md')
    where = [os.path.join(SOURCE, 'src'), os.path.join(SOURCE, 'tests')]
    functions = set(re.findall(r'`(lap_[a-z_]+)(?:\(\))?`', text))
    tap.check('DEVELOPERS.md: every function it names is there',
              [name for name in sorted(functions)
               if subprocess.run(['grep', '-rqw', name, *where]).returncode])
    tap.done()


main()
