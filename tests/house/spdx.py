# SPDX-License-Identifier: GPL-3.0-or-later
"""Does every file say its licence in its first five lines? data/LICENCE.md speaks for those that cannot.

usage: spdx.py [SOURCE-FOLDER]      without it: the tree this test stands in, and first a planted one"""
import os
import re
import sys
import tempfile

from tap import Tap

LINE = re.compile(rb'SPDX-License-Identifier: (\S+)')
# The licences in use, and where one other than that of the code is right.
CODE = b'GPL-3.0-or-later'
OTHER = {'metainfo.xml.in': b'CC0-1.0', 'po/exercise-strings.c': b'CC-BY-4.0'}
# What has no room for a comment, or none that a reader would want.
EXEMPT_ENDS = ('.json', '.lapwing', '.lapweek', '.md', '.png', '.pdf', '.supp', '.pyc')
EXEMPT = {'COPYING', '.git', '.gitignore', '.editorconfig'}
FIXTURES = os.path.join('tests', 'data')
HIDDEN = {'.ci'}


def files(top):
    for folder, folders, names in os.walk(top):
        folders[:] = sorted(name for name in folders if name in HIDDEN or
                            not name.startswith(('.', 'build', '__pycache__')))
        below = os.path.relpath(folder, top)
        if below == FIXTURES:
            folders[:] = []
            continue
        for name in sorted(names):
            if name not in EXEMPT and not name.endswith(EXEMPT_ENDS) and os.path.isfile(os.path.join(folder, name)):
                yield os.path.normpath(os.path.join(below, name))


def breaches(top):
    for path in files(top):
        with open(os.path.join(top, path), 'rb') as text:
            found = LINE.search(b''.join(text.readlines(4096)[:5]))
        wanted = next((licence for end, licence in OTHER.items() if path.endswith(end)), CODE)
        if not found:
            yield f'{path}:1: no SPDX line in the first five lines'
        elif found.group(1) != wanted:
            yield f'{path}: {found.group(1).decode()}, expected {wanted.decode()}'


PLANTED = {
    'src/good.c': b'/* SPDX-License-Identifier: GPL-3.0-or-later */\n',
    'src/run': b'#!/bin/sh\n# SPDX-License-Identifier: GPL-3.0-or-later\n',
    'src/none.c': b'int a;\n',
    'src/late.h': b'\n\n\n\n\n/* SPDX-License-Identifier: GPL-3.0-or-later */\n',
    'src/other.py': b'# SPDX-License-Identifier: MIT\n',
    '.ci/run': b'#!/bin/sh\n',
    'data/a.metainfo.xml.in': b'<?xml version="1.0"?>\n<!-- SPDX-License-Identifier: CC0-1.0 -->\n',
    'data/squat.json': b'{}\n',
    'tests/data/cut-short.c': b'int\n',
    '.build/made.c': b'int b;\n',
}
NAMED = ['.ci/run', 'src/late.h', 'src/none.c', 'src/other.py']


def main(top=None):
    tap = Tap()
    if top is None:
        with tempfile.TemporaryDirectory() as planted:
            for path, text in PLANTED.items():
                os.makedirs(os.path.dirname(os.path.join(planted, path)), exist_ok=True)
                with open(os.path.join(planted, path), 'wb') as out:
                    out.write(text)
            tap.equal('the planted breaches are named, and nothing else',
                      sorted(breach.split(':')[0] for breach in breaches(planted)), NAMED)
        top = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
    tap.check('every file says its licence', breaches(top))
    tap.done()


if __name__ == '__main__':
    main(*sys.argv[1:])
