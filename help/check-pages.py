#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Makes the help's page of each check and the page that leads to them.

usage: check-pages.py PROGRAM
What a check is called, why it matters, whose rule it is and how it is kept quiet is what the program says of itself;
the example is its worst fixture; check-words.txt adds when it speaks up and what can be done. Run it after a check has
come or changed its words; a test fails while a page is older than the program, or a check has no words.
"""
import json
import os
import pathlib
import re
import subprocess
import sys
from xml.sax.saxutils import escape

HELP = pathlib.Path(__file__).parent
FIXTURES = HELP.parent / 'tests' / 'data' / 'checks'
LINE = re.compile(r'(?P<id>[a-z-]+) +(?P<severity>Stop|Warning|Note): (?P<title>[^.?]+)\. (?P<reason>.+?\.) '
                  r'\((?P<source>.+)\)')
HEAD = '''<?xml version="1.0" encoding="UTF-8"?>
<!-- SPDX-License-Identifier: GPL-3.0-or-later -->
<!-- Made by help/check-pages.py. -->
<page xmlns="http://projectmallard.org/1.0/" type="{type}" id="{id}">
  <info>
    <link type="guide" xref="{guide}"/>
    <revision version="0.1" date="2026-11-29" status="draft"/>
    <credit type="author">
      <name>The Lapwing contributors</name>
    </credit>
    <license>
      <p>GNU General Public License, version 3 or later</p>
    </license>
    <desc>{desc}</desc>
  </info>

  <title>{title}</title>
'''
CHECK = '''
  <p>{reason}</p>

  <terms>
    <item>
      <title>When it speaks up</title>
      <p>{when}</p>
    </item>
    <item>
      <title>What you can do</title>
      <p>{advice}</p>
    </item>
    <item>
      <title>Whose rule it is</title>
      <p>{rule}.</p>
    </item>
  </terms>

  <example>
    <p>It says, for instance:</p>
    <p>{severity}: {message}</p>{remedies}
  </example>

  <p>What is fine here can be kept quiet: <gui>Fine here</gui> in the menu of the warning, or
  <code>"fine": ["{id}"]</code> in the file.</p>
</page>
'''
LIST = '''
  <p>How grave a warning is can differ with the plan: what is a note for one group is a warning for people who are new
  or older.</p>
'''
SECTION = '''
  <section id="{id}" style="linklist">
    <title>{title}</title>
  </section>
'''


def said(program, *words):
    return subprocess.run([program, *words], stdout=subprocess.PIPE, text=True, check='check' not in words,
                          env={**os.environ, 'LC_ALL': 'C.UTF-8', 'LANGUAGE': ''}).stdout


def themes():
    """[(heading, {id: (when, advice)})] of check-words.txt, in its order."""
    found = []
    for line in (HELP / 'check-words.txt').read_text(encoding='utf-8').splitlines():
        if line.startswith('== '):
            found.append((line[3:], {}))
        elif line.startswith('  '):
            found[-1][1][name].append(line.strip())
        elif line and not line.startswith('#'):
            name = line
            found[-1][1][name] = []
    return found


def checks(program):
    """The members of LINE of every check, by id."""
    for line in said(program, 'checks').splitlines():
        found = LINE.fullmatch(line)
        if not found:
            sys.exit(f'check-pages.py: cannot read the line: {line}')
        yield found['id'], found.groupdict()


def example(program, check):
    """The first warning of its kind in the fixture that has one; of a week, in the first that it is valid for."""
    fixture = max(FIXTURES.glob(f'{check}.bad.lap*'))  # a session's before a week's
    first = json.loads(fixture.read_text(encoding='utf-8')).get('from')
    warnings = json.loads(said(program, 'check', str(fixture), *(['--week', first] if first else []), '--json'))['warnings']
    return next(warning for warning in warnings if warning['check'] == check)


def remedies(labels):
    if not labels:
        return ''
    items = ''.join(f'\n      <item><p>{escape(label)}</p></item>' for label in labels)
    return f'\n    <p>And offers:</p>\n    <list>{items}\n    </list>'


def check_page(program, theme, check, words):
    shown = example(program, check['id'])
    when, advice = words
    text = {name: escape(part) for name, part in check.items()}
    text['severity'] = shown['severity'].capitalize()
    text['message'] = escape(shown['message'])
    text['rule'] = text['source'][0].upper() + text['source'][1:]
    head = HEAD.format(type='topic', id=f"check-{check['id']}", guide=f'check-list#{theme}', title=text['title'],
                       desc=text['reason'])
    return head + CHECK.format(**text, when=when, advice=advice,
                               remedies=remedies([remedy['label'] for remedy in shown['remedies']]))


def slug(heading):
    return heading.lower().replace(',', '').replace(' ', '-')


def pages(program):
    """{name of a page: its text}."""
    told = dict(checks(program))
    made = {}
    leading = HEAD.format(type='guide', id='check-list', guide='checks', title='All checks',
                          desc='Every check, what it asks for and whose rule it is.') + LIST
    for heading, words in themes():
        leading += SECTION.format(id=slug(heading), title=heading)
        for check, text in words.items():
            made[f'check-{check}.page'] = check_page(program, slug(heading), told.pop(check), text)
    if told:
        sys.exit('check-pages.py: no words in check-words.txt for ' + ', '.join(told))
    return {'check-list.page': leading + '</page>\n', **made}


if __name__ == '__main__':
    for name, text in pages(sys.argv[1]).items():
        (HELP / 'C' / name).write_text(text, encoding='utf-8')
