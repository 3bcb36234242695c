# SPDX-License-Identifier: GPL-3.0-or-later
"""Is everything that was written also built and run? A file that a list forgot is silent, and so is a test.

usage: lists.py [SOURCE-FOLDER]      without it: the tree this test stands in, and first a planted one"""
import os
import re
import sys
import tempfile

from tap import Tap

# Two branches that were never brought together. Spelled so that this file holds none itself.
CONFLICT = re.compile('^(?:%s |%s |%s$)' % ('<' * 7, '>' * 7, '=' * 7), re.M)
TEXTS = ('.c', '.h', '.py', '.ui', '.xml', '.in', '.build', '.json', '.lapwing', '.lapweek', '.page', '.md', '.1', '')


def read(*way):
    with open(os.path.join(*way), encoding='utf-8', errors='replace') as text:
        return text.read()


def walk(top, *below):
    """(folder below @top, its names), build folders and hidden ones left out."""
    for root in below or ['.']:
        for folder, folders, names in os.walk(os.path.join(top, root)):
            folders[:] = sorted(name for name in folders if not name.startswith(('.', 'build', '__pycache__')))
            yield os.path.normpath(os.path.relpath(folder, top)), sorted(names)


def unreached(top):
    """Folders with a meson.build that no other one enters."""
    for folder, names in walk(top, 'src', 'tests'):
        if 'meson.build' not in names or os.path.dirname(folder) == '':
            continue
        above, name = os.path.split(folder)
        if not any(re.search(r"'%s'" % re.escape(word), read(top, where, 'meson.build'))
                   for where, word in ((above, name), ('', folder))):
            yield f'{folder}/meson.build:1: no subdir() leads here'


def unlisted(top):
    """C files, and Python programs of the house, that no meson.build of theirs or above names."""
    helpers = {'tap.py', 'count.py'}
    for folder, names in walk(top, 'src', 'tests'):
        lists = {}
        for where, _ in walk(top, *sorted({folder.split('/')[0]})):
            path = os.path.join(top, where, 'meson.build')
            if os.path.exists(path):
                lists[where] = read(path)
        for name in names:
            if not (name.endswith('.c') or (folder == 'tests/house' and name.endswith('.py') and name not in helpers)):
                continue
            written = [os.path.relpath(os.path.join(folder, name), where) for where in lists]
            if not any(f"'{way}'" in text for way, text in zip(written, lists.values())):
                yield f'{folder}/{name}:1: no meson.build names it'


def torn(top):
    """Files in which a merge stopped half-way."""
    for folder, names in walk(top):
        for name in names:
            if os.path.splitext(name)[1] in TEXTS and os.path.isfile(os.path.join(top, folder, name)):
                text = read(top, folder, name)
                for mark in CONFLICT.finditer(text):
                    yield f'{os.path.normpath(os.path.join(folder, name))}:{text.count(chr(10), 0, mark.start()) + 1}: ' \
                          'a merge was left half-way'


RULES = {
    'every folder is entered': unreached,
    'every source is in a list': unlisted,
    'no merge was left half-way': torn,
}

PLANTED = {
    'meson.build': "subdir('src')\nsubdir('tests')\nsubdir('tests/house')\n",
    'src/meson.build': "foreach layer : ['base', 'model']\n  subdir(layer)\nendforeach\n",
    'src/base/meson.build': "core_sources += files('good.c')\n",
    'src/base/good.c': '',
    'src/base/lost.c': '',
    'src/model/meson.build': '',
    'src/gone/meson.build': "files('b.c')\n",
    'src/gone/b.c': '',
    'tests/meson.build': "subdir('base')\n",
    'tests/base/meson.build': "files('a.c', '../shared.c')\n",
    'tests/base/a.c': '%s HEAD\n' % ('<' * 7),
    'tests/shared.c': '',
    'tests/house/meson.build': "'lists': files('lists.py'),\n",
    'tests/house/lists.py': '',
    'tests/house/alone.py': '',
    'data/page.md': 'Title\n%s\n' % ('=' * 8),
}
NAMED = ['src/base/lost.c:1', 'src/gone/meson.build:1', 'tests/base/a.c:1', 'tests/house/alone.py:1']


def self_test(tap):
    with tempfile.TemporaryDirectory() as top:
        for path, text in PLANTED.items():
            os.makedirs(os.path.dirname(os.path.join(top, path)), exist_ok=True)
            with open(os.path.join(top, path), 'w', encoding='utf-8') as out:
                out.write(text)
        said = sorted(breach.split(': ')[0] for rule in RULES.values() for breach in rule(top))
    tap.equal('the planted breaches are named, and nothing else', said, NAMED)


def main(top=None):
    tap = Tap()
    if top is None:
        self_test(tap)
        top = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
    for name, rule in RULES.items():
        tap.check(name, rule(top))
    tap.done()


if __name__ == '__main__':
    main(*sys.argv[1:])
