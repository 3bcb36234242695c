# SPDX-License-Identifier: GPL-3.0-or-later
"""Who may include whom, and how long a file or a function may be; names file and line of each breach.

usage: layers.py [SOURCE-FOLDER]      without it: the tree this test stands in, and first a planted one"""
import os
import re
import statistics
import sys
import tempfile

from tap import Tap

BASE = {'base'}
MODEL = BASE | {'catalogue', 'model'}
EFFORT = MODEL | {'timeline', 'effort'}
CHECKS = EFFORT | {'edit', 'talk', 'checks'}
CLOCK = {'base', 'catalogue', 'timeline', 'talk', 'clock'}
FIGURE = {'base', 'catalogue', 'figure'}
ARRANGE = CHECKS | {'arrange'}
PLACE = ARRANGE | CLOCK | FIGURE | {'place'}
STORE = MODEL | {'edit', 'store'}
SHEETS = (PLACE | STORE | {'sheets'}) - {'clock'}

# What the files of a folder may include; its own folder is among them.
MAY = {
    'base': BASE,
    'catalogue': BASE | {'catalogue'},
    'model': MODEL,
    'edit': MODEL | {'edit'},
    'timeline': MODEL | {'timeline'},
    'effort': EFFORT,
    'talk': EFFORT | {'talk'},
    'checks': CHECKS,
    'arrange': ARRANGE,
    'clock': CLOCK,
    'figure': FIGURE,
    'place': PLACE,
    'store': STORE,
    'sheets': SHEETS,
    'publish': PLACE | SHEETS | {'publish'},
    'cli': PLACE | SHEETS | {'publish', 'cli'},
    'ui': PLACE | SHEETS | {'publish', 'cli', 'ui'},
    '': PLACE | SHEETS | {'publish', 'cli', 'ui'},      # main.c
}

# Which folders may see a library that draws.
DRAWING = {
    'gtk/': {'ui'}, 'gdk/': {'ui'}, 'gsk/': {'ui'}, 'adwaita': {'ui'},
    'cairo': {'sheets', 'publish', 'ui'}, 'pango': {'sheets', 'publish', 'ui'},
}

FILE_LINES = 700
FUNCTION_LINES = 80
MEDIAN_LINES = 300

# A header of ours so named would be found in place of the C library's, or hide it (C17 §7, POSIX.1-2017 "Headers", and
# a few of the GNU library). <error.h> is left out: nothing here uses it, and ours is asked for as "base/error.h".
LIBC = set('''aio assert complex cpio ctype dirent dlfcn errno fcntl fenv float fmtmsg fnmatch ftw glob grp iconv
inttypes iso646 langinfo libgen limits locale math monetary mqueue ndbm netdb nl_types poll pthread pwd regex sched
search semaphore setjmp signal spawn stdalign stdarg stdatomic stdbool stddef stdint stdio stdlib stdnoreturn string
strings stropts syslog tar termios tgmath threads time uchar ulimit unistd utime utmpx wchar wctype wordexp
malloc memory features byteswap endian values'''.split())

INCLUDE = re.compile(r'\s*#\s*include\s*([<"])([^>"]+)[>"]')


def sources(top, below='src'):
    """(path below that folder, lines) of every C file and header, sorted."""
    root = os.path.join(top, below)
    for folder, folders, names in sorted(os.walk(root)):
        folders.sort()
        for name in sorted(names):
            if name.endswith(('.c', '.h')):
                path = os.path.join(folder, name)
                with open(path, encoding='utf-8') as text:
                    yield os.path.relpath(path, root), text.read().splitlines()


def layer_of(path):
    return path.split('/')[0] if '/' in path else ''


def include_breaches(top):
    for path, lines in sources(top):
        layer = layer_of(path)
        if layer not in MAY:
            yield f'src/{path}:1: the folder {layer}/ is not in the table of the house'
            continue
        for number, line in enumerate(lines, 1):
            found = INCLUDE.match(line)
            if not found:
                continue
            quote, name = found.groups()
            where = f'src/{path}:{number}'
            if quote == '<':
                for prefix, may in DRAWING.items():
                    if name.startswith(prefix) and layer not in may:
                        yield f'{where}: <{name}> belongs to {", ".join(sorted(may))}'
            elif '/' not in name:
                if not name.startswith('lapwing-'):      # the header of the compiled exercises
                    yield f'{where}: "{name}" is not written from src/'
            elif not os.path.exists(os.path.join(top, 'src', name)):
                yield f'{where}: "{name}" is not a file below src/'
            elif name.split('/')[0] not in MAY[layer]:
                yield f'{where}: {layer or "src"}/ may not include "{name}"'


def code(top):
    """(path below the top, lines) of the program and its tests."""
    for below in 'src', 'tests':
        for path, lines in sources(top, below):
            yield f'{below}/{path}', lines


def length_breaches(top):
    for path, lines in code(top):
        if len(lines) > FILE_LINES:
            yield f'{path}:{FILE_LINES + 1}: {len(lines)} lines, at most {FILE_LINES}'


def function_breaches(top):
    """A function's body stands between a { and a } in the first column; its head is not counted."""
    for path, lines in code(top):
        opened = None
        for number, line in enumerate(lines, 1):
            if line.startswith('{'):
                opened = number
            elif line.startswith('}') and opened:
                if number - opened + 1 > FUNCTION_LINES:
                    yield f'{path}:{opened}: a function of {number - opened + 1} lines, at most {FUNCTION_LINES}'
                opened = None


def median_breaches(top):
    counts = [len(lines) for _, lines in sources(top)]
    if not counts:
        yield 'src/: no files'
    elif statistics.median(counts) > MEDIAN_LINES:
        yield f'src/: the median file has {statistics.median(counts)} lines, at most {MEDIAN_LINES}'


def name_breaches(top):
    for path, _ in sources(top):
        stem, suffix = os.path.splitext(os.path.basename(path))
        if suffix == '.h' and stem in LIBC:
            yield f'src/{path}:1: named like a header of the C library'


RULES = {
    'each folder includes only what stands below it': include_breaches,
    'files are short': length_breaches,
    'functions are short': function_breaches,
    'most files are short': median_breaches,
    'no header is named like one of the C library': name_breaches,
}

# A planted tree: file, text, and the place each rule must name. A rule that finds nothing here guards nothing.
GOOD = '/* good */\n#include "base/good.h"\n\n#include <glib.h>\n'
PLANTED = [
    ('base/good.h', '#pragma once\n', None),
    ('base/good.c', GOOD, None),
    ('base/up.c', '#include <glib.h>\n#include "model/thing.h"\n', 'src/base/up.c:2'),
    ('model/thing.h', '#pragma once\n', None),
    ('model/near.c', '#include "thing.h"\n', 'src/model/near.c:1'),
    ('model/gone.c', '\n\n#include "base/gone.h"\n', 'src/model/gone.c:3'),
    ('checks/remedy.c', '#include "edit/splice.h"\n#include "store/save.h"\n', 'src/checks/remedy.c:2'),
    ('edit/splice.h', '', None),
    ('store/save.h', '', None),
    ('store/save.c', '# include "checks/all.h"\n', 'src/store/save.c:1'),
    ('checks/all.h', '', None),
    ('clock/tick.c', '#include "model/thing.h"\n', 'src/clock/tick.c:1'),
    ('place/box.c', '#include "store/save.h"\n', 'src/place/box.c:1'),
    ('sheets/page.c', '#include <cairo-pdf.h>\n#include <pango/pangocairo.h>\n#include "store/save.h"\n', None),
    ('figure/pose.c', '#include <cairo.h>\n', 'src/figure/pose.c:1'),
    ('talk/words.c', '#include <pango/pango.h>\n', 'src/talk/words.c:1'),
    ('cli/view.c', '#include <gtk/gtk.h>\n', 'src/cli/view.c:1'),
    ('sheets/view.c', '#include <adwaita.h>\n', 'src/sheets/view.c:1'),
    ('ui/window.c', '#include <adwaita.h>\n#include "store/save.h"\n#include "clock/tick.h"\n', None),
    ('clock/tick.h', '', None),
    ('odd/thing.c', '', 'src/odd/thing.c:1'),
    ('base/time.h', '', 'src/base/time.h:1'),
    ('base/time.c', '', None),
    ('base/long.c', '\n' * 701, 'src/base/long.c:701'),
    ('base/full.c', '\n' * 700, None),
    ('base/body.c', 'int\na (void)\n{\n' + '\n' * 79 + '}\n', 'src/base/body.c:3'),
    ('base/short.c', 'int\na (void)\n{\n' + '\n' * 78 + '}\n', None),
    ('../tests/base/long.c', '\n' * 701, 'tests/base/long.c:701'),
    ('../tests/base/body.c', 'int\na (void)\n{\n' + '\n' * 79 + '}\n', 'tests/base/body.c:3'),
]


def plant(top, files):
    for path, text, _ in files:
        path = os.path.join(top, 'src', path)
        os.makedirs(os.path.dirname(path), exist_ok=True)
        with open(path, 'w', encoding='utf-8') as out:
            out.write(text)


def self_test(tap):
    with tempfile.TemporaryDirectory() as top:
        plant(top, PLANTED)
        said = [breach for rule in RULES.values() for breach in rule(top)]
    places = sorted(breach.split(': ')[0] for breach in said)
    tap.equal('the planted breaches are named, and nothing else', places,
              sorted(place for _, _, place in PLANTED if place))
    with tempfile.TemporaryDirectory() as top:
        plant(top, [('base/a.c', '\n' * 301, None), ('base/b.c', '\n' * 301, None), ('base/c.c', '', None)])
        tap.equal('a long median is named', len(list(median_breaches(top))), 1)


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
