#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Made-up languages, to see that every word can be translated before the real ones come.

usage: pseudo.py SOURCE OUT
Writes OUT/xx/LC_MESSAGES/lapwing.mo, every message with accents and half as long again, as German is; and OUT/yy/…,
the same in another order: what a message is given comes last first, as in many languages. Both keep the directives.
"""
import os
import pathlib
import re
import subprocess
import sys

import polib

# A directive of printf or an escape: what a translation keeps as it is.
DIRECTIVE = re.compile(r"(%(?:\d+\$)?[-+ #0']*\d*(?:\.\d+)?(?:hh|h|ll|l|j|z|t|L)?[diouxXeEfFgGcs%]|</?[a-z]+[^>]*>|_(?=\w))")
ACCENTS = str.maketrans('aeiouyAEIOUYncs', 'àéîöûýÀÉÎÖÛÝñçš')
KEYWORDS = ['_', 'N_', 'C_:1c,2', 'NC_:1c,2', 'ngettext:1,2', 'g_dngettext:2,3']


def template(source):
    """The template, from the files that po/POTFILES lists."""
    run = subprocess.run(['xgettext', '--files-from=po/POTFILES', '--from-code=UTF-8', '--output=-', '--force-po',
                          *('--keyword=' + word for word in KEYWORDS)],
                         cwd=source, stdout=subprocess.PIPE, text=True, check=True)
    return polib.pofile(run.stdout.replace('charset=CHARSET', 'charset=UTF-8'))


def longer(text):
    pieces = DIRECTIVE.split(text.rstrip('\n'))
    said = ''.join(piece if index % 2 else piece.translate(ACCENTS) for index, piece in enumerate(pieces))
    letters = sum(map(len, pieces[::2]))
    # A long word now and then, as they come in German, where a line may break between them.
    return said + ('········ ' * letters)[:letters // 2].rstrip() + '\n' * text.endswith('\n')


def turned(text):
    """The directives are numbered, where they aren't already, and the last comes first."""
    pieces = DIRECTIVE.split(text)
    given = [index for index in range(1, len(pieces), 2) if pieces[index][0] == '%' and pieces[index] != '%%']
    numbered = [pieces[index] if '$' in pieces[index] else f'%{n + 1}${pieces[index][1:]}'
                for n, index in enumerate(given)]
    if len(given) < 2:
        return longer(text)
    for index, directive in zip(given, reversed(numbered)):
        pieces[index] = directive
    return longer(''.join(pieces))


def is_printf(entry):
    return 'c-format' in entry.flags


def translated(pot, language):
    po = polib.POFile()
    po.metadata = {'Content-Type': 'text/plain; charset=UTF-8', 'Content-Transfer-Encoding': '8bit',
                   'Language': language, 'Plural-Forms': 'nplurals=2; plural=(n != 1);'}
    for entry in pot:
        change = turned if language == 'yy' and is_printf(entry) else longer
        made = polib.POEntry(msgid=entry.msgid, msgctxt=entry.msgctxt, msgid_plural=entry.msgid_plural,
                             flags=entry.flags)
        if entry.msgid_plural:
            made.msgstr_plural = {0: change(entry.msgid), 1: change(entry.msgid_plural)}
        else:
            made.msgstr = change(entry.msgid)
        po.append(made)
    return po


if __name__ == '__main__':
    pot = template(sys.argv[1])
    for language in ('xx', 'yy'):
        folder = pathlib.Path(sys.argv[2], language, 'LC_MESSAGES')
        os.makedirs(folder, exist_ok=True)
        translated(pot, language).save_as_mofile(str(folder / 'lapwing.mo'))
