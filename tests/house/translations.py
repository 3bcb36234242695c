# SPDX-License-Identifier: GPL-3.0-or-later
"""Can every word on the screen be translated, and are the ways to do it in order?

Every file with a message is in po/POTFILES, the template can be made (in a copy: it is written beside its sources), and
a made-up translation of every message, with accents and half as long again, passes GNU msgfmt --check, which compares
the directives of each message with those of its original."""
import glob
import os
import re
import shutil
import subprocess
import sys
import tempfile

from tap import Tap

TOP = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
MARKED = re.compile(r'\b(?:_|N_|C_|NC_|Q_|gettext|ngettext)\s*\(\s*"')
TRANSLATABLE = re.compile(r'translatable="(?:yes|true)"')
COMMENT = re.compile(r'/\*.*?\*/|^\s*#\s*define.*?$', re.S | re.M)
# A directive of printf or an escape: what a translation keeps as it is.
KEPT = re.compile(r"""(%(?:\d+\$)?[-+ #0']*\d*(?:\.\d+)?(?:hh|h|ll|l|j|z|t|L)?[diouxXeEfFgGcspn%]|\\.)""")
ACCENTS = str.maketrans('aeiouyAEIOUYncs', 'àéîöûýÀÉÎÖÛÝñçš')
HEADER = '''msgid ""
msgstr ""
"Project-Id-Version: lapwing\\n"
"PO-Revision-Date: 2027-01-01 12:00+0000\\n"
"Last-Translator: Nobody <nobody@example.org>\\n"
"Language-Team: none\\n"
"Language: en@pseudo\\n"
"MIME-Version: 1.0\\n"
"Content-Type: text/plain; charset=UTF-8\\n"
"Content-Transfer-Encoding: 8bit\\n"
"Plural-Forms: nplurals=2; plural=(n != 1);\\n"
'''


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


def pseudo(line):
    """A line of a message as another language might have it: accents, and half as long again."""
    text = ''.join(piece if index % 2 else piece.translate(ACCENTS) for index, piece in enumerate(KEPT.split(line)))
    end = text.endswith('\\n')
    body = text[:-2] if end else text
    return body + '·' * (len(body) // 2) + ('\\n' if end else '')


def translate(po, change):
    """Every msgstr, which msgen filled with its msgid, changed."""
    out = [HEADER]
    inside = False
    for line in po.split('\n\n', 1)[1].splitlines():
        if line.startswith('msgstr'):
            inside = True
        elif not line.startswith('"'):
            inside = False
        start = line.find('"')
        if inside and start >= 0 and line.endswith('"') and len(line) > start + 2:
            line = line[:start + 1] + change(line[start + 1:-1]) + '"'
        out.append(line)
    return '\n'.join(out) + '\n'


def check(folder, po):
    """What msgfmt --check says of a translation."""
    path = os.path.join(folder, 'pseudo.po')
    with open(path, 'w', encoding='utf-8') as out:
        out.write(po)
    run = subprocess.run(['msgfmt', '--check', '--statistics', '-o', os.path.join(folder, 'pseudo.mo'), path],
                         capture_output=True, text=True, env={**os.environ, 'LC_ALL': 'C.UTF-8'})
    return run.returncode, run.stderr.strip()


def main():
    tap = Tap()
    lists(tap)
    with tempfile.TemporaryDirectory() as folder:
        pot = os.path.join(folder, 'lapwing.pot')
        with open(pot, 'w', encoding='utf-8') as out:
            out.write(template(tap, folder).replace('charset=CHARSET', 'charset=UTF-8'))
        filled = subprocess.run(['msgen', '--no-wrap', '--lang=en', pot], capture_output=True, text=True, check=True)
        code, said = check(folder, translate(filled.stdout, pseudo))
        tap.check('a translation of every message passes msgfmt --check',
                  [said] if code or 'untranslated' in said or 'fuzzy' in said else [])
        code, said = check(folder, translate(filled.stdout, lambda line: line.replace('%s', '%d')))
        tap.check('and one with wrong directives does not', [] if code else [said])
    tap.done()


if __name__ == '__main__':
    sys.exit(main())
