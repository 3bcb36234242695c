#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Makes the page of the help that tells of every check, from what the program itself says of them.

usage: check-list.py PROGRAM [OUT]
Run it after a check has come or changed its words; a test fails while the page is older than the program.
"""
import os
import pathlib
import re
import subprocess
import sys
from xml.sax.saxutils import escape

PAGE = pathlib.Path(__file__).parent / 'C' / 'check-list.page'
LINE = re.compile(r'(?P<id>[a-z-]+) +(?P<severity>Stop|Warning|Note): (?P<title>[^.?]+)\. (?P<reason>.+?\.) '
                  r'\((?P<source>.+)\)')
HEAD = '''<?xml version="1.0" encoding="UTF-8"?>
<!-- SPDX-License-Identifier: GPL-3.0-or-later -->
<!-- Made by help/check-list.py from `lapwing checks`. -->
<page xmlns="http://projectmallard.org/1.0/" type="topic" id="check-list">
  <info>
    <link type="guide" xref="checks"/>
    <revision version="0.1" date="2026-11-25" status="draft"/>
    <credit type="author">
      <name>The Lapwing contributors</name>
    </credit>
    <license>
      <p>GNU General Public License, version 3 or later</p>
    </license>
    <desc>Every check, what it asks for and whose rule it is.</desc>
  </info>

  <title>All checks</title>

  <p>The word in brackets is the name by which a file keeps a check quiet. How grave a warning is can differ with the
  plan: what is a note for one group is a warning for people who are new or older.</p>
'''
SECTION = '''
  <section id="{id}">
    <title>{title}</title>
    <p>{reason}</p>
    <p>{severity}. Source: {source}. (<code>{id}</code>)</p>
  </section>
'''


def checks(program):
    """The members of LINE of every check, in the order of the registry."""
    said = subprocess.run([program, 'checks'], stdout=subprocess.PIPE, text=True, check=True,
                          env={**os.environ, 'LC_ALL': 'C.UTF-8', 'LANGUAGE': ''}).stdout
    for line in said.splitlines():
        found = LINE.fullmatch(line)
        if not found:
            sys.exit(f'check-list.py: cannot read the line: {line}')
        yield {name: escape(text) for name, text in found.groupdict().items()}


def page(program):
    return HEAD + ''.join(SECTION.format(**check) for check in checks(program)) + '</page>\n'


if __name__ == '__main__':
    pathlib.Path(sys.argv[2] if len(sys.argv) > 2 else PAGE).write_text(page(sys.argv[1]), encoding='utf-8')
