# SPDX-License-Identifier: GPL-3.0-or-later
"""Can every word on the screen be translated, and are the ways to do it in order?

Every file with a message is in po/POTFILES, the template can be made (in a copy: it is written beside its sources), and
made-up translations of every message, half as long again and in another order, pass GNU msgfmt --check, which compares
the directives of each message with those of its original."""
import glob
import os
import re
import shutil
import subprocess
import sys
import tempfile

import polib

from tap import Tap

TOP = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
sys.path.insert(0, os.path.join(TOP, 'tests', 'support'))
import pseudo  # noqa: E402
MARKED = re.compile(r'\b(?:_|N_|C_|NC_|Q_|gettext|ngettext)\s*\(\s*"')
TRANSLATABLE = re.compile(r'translatable="(?:yes|true)"')
COMMENT = re.compile(r'/\*.*?\*/|^\s*#\s*define.*?$', re.S | re.M)


def read(path):
    with open(path, encoding='utf-8') as text:
        return text.read()


def listed():
    lines = read(os.path.join(TOP, 'po', 'POTFILES')).splitlines()
    return [line.strip() for line in lines if line.strip() and not line.startswith('#')]


def with_messages():
    """The sources that hold a message, from their folder's top."""
    for path in sorted(glob.glob(os.path.join(TOP, 'src', '**', '*.[ch]'), recursive=True)):
        if MARKED.search(COMMENT.sub('', read(path))):
            yield os.path.relpath(path, TOP)
    for path in sorted(glob.glob(os.path.join(TOP, 'src', '**', '*.ui'), recursive=True)):
        if TRANSLATABLE.search(read(path)):
            yield os.path.relpath(path, TOP)
    for ending in ('desktop.in', 'metainfo.xml.in', 'gschema.xml'):
        for path in sorted(glob.glob(os.path.join(TOP, 'data', '*.' + ending))):
            yield os.path.relpath(path, TOP)


def lists(tap):
    there = listed()
    tap.check('every file with a message is in po/POTFILES',
              [f'{path}:1: has messages and is not listed' for path in with_messages() if path not in there])
    tap.check('every file of po/POTFILES is there',
              [f'po/POTFILES: no file {path}' for path in there if not os.path.exists(os.path.join(TOP, path))])
    tap.check('po/POTFILES is in order, each file once',
              [] if there == sorted(set(there)) else ['expected: ' + ' '.join(sorted(set(there)))])


def template(tap, folder):
    """Makes the template in a copy of the tree, as a translator would; gives its text."""
    tree = os.path.join(folder, 'tree')
    shutil.copytree(TOP, tree, ignore=shutil.ignore_patterns('.git', '.build*', 'build*', '__pycache__'))
    build = os.path.join(folder, 'build')
    for words in (['meson', 'setup', build, tree], ['meson', 'compile', '-C', build, 'lapwing-pot']):
        run = subprocess.run(words, capture_output=True, text=True)
        if run.returncode:
            tap.check('the template can be made', [' '.join(words[:2]), run.stdout[-2000:], run.stderr[-2000:]])
            tap.done()
    text = read(os.path.join(tree, 'po', 'lapwing.pot'))
    tap.check('the template can be made', [] if 'msgid "Squat"' in text else ['it does not hold "Squat"'])
    return text


def check(folder, po):
    """What msgfmt --check says of a translation."""
    path = os.path.join(folder, 'pseudo.po')
    po.save(path)
    run = subprocess.run(['msgfmt', '--check', '--statistics', '-o', os.path.join(folder, 'pseudo.mo'), path],
                         capture_output=True, text=True, env={**os.environ, 'LC_ALL': 'C.UTF-8'})
    return run.returncode, run.stderr.strip()


def main():
    tap = Tap()
    lists(tap)
    with tempfile.TemporaryDirectory() as folder:
        pot = polib.pofile(template(tap, folder).replace('charset=CHARSET', 'charset=UTF-8'))
        for language, what in (('xx', 'a translation of every message'), ('yy', 'and one that turns the order')):
            code, said = check(folder, pseudo.translated(pot, language))
            tap.check(f'{what} passes msgfmt --check', [said] if code or 'untranslated' in said or 'fuzzy' in said else [])
        wrong = pseudo.translated(pot, 'xx')
        for entry in wrong:
            entry.msgstr = entry.msgstr.replace('%s', '%d')
        code, said = check(folder, wrong)
        tap.check('and one with wrong directives does not', [] if code else [said])
    tap.done()


if __name__ == '__main__':
    sys.exit(main())
