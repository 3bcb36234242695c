# SPDX-License-Identifier: GPL-3.0-or-later
"""The help: judged by yelp-check, the validator of the desktop's help, and held against what the program says."""
import os
import pathlib
import re
import runpy
import subprocess
import xml.etree.ElementTree as ET

from tap import Tap

SOURCE, PROGRAM = pathlib.Path(os.environ['LAP_SOURCE']), os.environ['LAP_PROGRAM']
PAGES = sorted((SOURCE / 'help' / 'C').glob('*.page'))
# What must be said wherever a plan is read.
SAFETY = ['warm up first', 'pain, dizziness, chest tightness or unusual breathlessness', 'pregnant', 'clinician first',
          'own training', 'local codes come before']


def words(element):
    return ' '.join(''.join(element.itertext()).split())


def judged(tap):
    for question in ('validate', 'links', 'ids', 'orphans', 'media'):
        done = subprocess.run(['yelp-check', question, *map(str, PAGES)], stdout=subprocess.PIPE,
                              stderr=subprocess.STDOUT, text=True)
        tap.check(f'yelp-check {question}', [done.stdout] if done.returncode or done.stdout.strip() else [])


def installed(tap):
    listing = (SOURCE / 'help' / 'meson.build').read_text(encoding='utf-8')
    tap.equal('every page is installed', re.findall(r"'([a-z-]+\.page)'", listing), [path.name for path in PAGES])


def told(tap):
    """The commands, and the words of safety as they stand on the sheets."""
    commands = re.findall(r'^  lapwing ([a-z]+)',
                          subprocess.run([PROGRAM, '--help'], stdout=subprocess.PIPE, text=True, check=True).stdout, re.M)
    page = words(ET.parse(SOURCE / 'help' / 'C' / 'commands.page').getroot())
    tap.check('the help tells of every command', [name for name in commands if f'lapwing {name}' not in page])
    places = {'help': words(ET.parse(SOURCE / 'help' / 'C' / 'safety.page').getroot()),
              'sheets': ''.join(re.findall(r'"([^"]*)"', (SOURCE / 'src/place/safety.c').read_text(encoding='utf-8'))),
              'manual page': ' '.join((SOURCE / 'data' / 'lapwing.1').read_text(encoding='utf-8').split())}
    for place, text in places.items():
        tap.check(f'the safety words are on the {place}', [w for w in SAFETY if w not in text.lower()])


def formats(tap):
    root = ET.parse(SOURCE / 'help' / 'C' / 'publish.page').getroot()
    page = {element.text for element in root.iter('{http://projectmallard.org/1.0/}title')}
    listed = subprocess.run([PROGRAM, 'formats'], stdout=subprocess.PIPE, text=True, check=True).stdout.splitlines()
    tap.check('the help tells of every format', [line.split()[0] for line in listed if line.split()[0] not in page])


def fresh(tap):
    """The pages of the checks are those that their script makes now."""
    made = runpy.run_path(str(SOURCE / 'help' / 'check-pages.py'))['pages'](PROGRAM)
    held = {path.name: path.read_text(encoding='utf-8') for path in PAGES if path.name.startswith('check-')}
    tap.check('each check has its page, and no page is older than the program',
              [f'{name}: run help/check-pages.py PROGRAM' for name in sorted(made.keys() | held.keys())
               if made.get(name) != held.get(name)])


def windows(tap):
    """Each kind of window is told of somewhere; one of a document by its views."""
    source = {path: path.read_text(encoding='utf-8') for path in sorted((SOURCE / 'src' / 'ui').rglob('*.c'))}
    table = set(re.findall(r'^  \{ "(Lap\w+)", "', source[SOURCE / 'src' / 'ui' / 'help.c'], re.M))
    views = {'LapSessionWindow', 'LapWeekWindow'}
    kinds = {kind for text in source.values() for kind in
             re.findall(r'^G_DEFINE_FINAL_TYPE \((\w+), \w+, (?:ADW|GTK|LAP)_TYPE_(?:\w+_)?(?:WINDOW|DIALOG)\)', text, re.M)}
    tap.check('there are windows', [] if len(kinds) > 8 else [str(kinds)])
    tap.check('F1 knows a page for every kind of window', sorted(kinds - table - views))
    tap.check('a window of the library’s kind says what it is about',
              [str(path) for path, text in source.items()
               if 'adw_preferences_window_new' in text and 'LAP_HELP_' not in text])


def main():
    tap = Tap()
    judged(tap)
    fresh(tap)
    installed(tap)
    told(tap)
    formats(tap)
    windows(tap)
    tap.done()


main()
