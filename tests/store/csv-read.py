# SPDX-License-Identifier: GPL-3.0-or-later
"""Tables read by the program against Python's own csv module (strict): what its writer makes in many manners and
encodings, and a soup of the characters that matter, right or wrong."""
import csv
import io
import json
import pathlib
import random
import subprocess
import sys
import tempfile

from tap import Tap

ROWS = sys.argv[1]
WORDS = ['', 'Circuit', 'Loft, "upper"', 'a;b', 'tab\there', 'two\r\nlines', 'two\nlines', 'Ação', '力', 'ß', '"', '""', ' x ',
         "'", '18:30', '-1', 'caf\u0065\u0301', '=1+1', '\u2028', '🙂']
SOUP = ['a', 'b', '"', '"', ',', ',', ';', '\t', '\n', '\r\n', '\r', ' ', 'é', '""', '","']


def read_all(files):
    with tempfile.TemporaryDirectory() as folder:
        names = []
        for i, data in enumerate(files):
            names.append(pathlib.Path(folder, f'{i}.csv'))
            names[-1].write_bytes(data)
        done = subprocess.run([ROWS, *names], capture_output=True, check=True)
    return [json.loads(x) for x in done.stdout.decode().split('\x1e')[:-1]]


def expected(text, separator):
    try:
        return [row for row in csv.reader(io.StringIO(text, newline=''), strict=True, delimiter=separator)]
    except csv.Error:
        return None


def differing(cases, results):
    problems = []
    for (text, wanted), got in zip(cases, results, strict=True):
        if (wanted is None) != isinstance(got, str) or (wanted is not None and got != wanted):
            problems.append(f'{text!r}: got {got!r}, expected {wanted!r}')
    return problems[:5]


def written(dice, separator, end, quoting):
    rows = [['day', 'start', 'title', 'room']]
    rows += [[dice.choice(WORDS) for _ in range(dice.randint(2, 4))] for _ in range(dice.randint(0, 8))]
    out = io.StringIO(newline='')
    csv.writer(out, delimiter=separator, lineterminator=end, quoting=quoting).writerows(rows)
    return out.getvalue(), rows


def main():
    tap = Tap()
    dice = random.Random(6)
    for encoding in ['utf-8', 'utf-8-sig', 'utf-16']:
        cases = []
        for n in range(300):
            end = dice.choice(['\r\n', '\n', '\r'])
            quoting = csv.QUOTE_ALL if end == '\r' else dice.choice([csv.QUOTE_MINIMAL, csv.QUOTE_ALL])
            cases.append(written(dice, dice.choice(',;\t'), end, quoting))
        tap.check(f'300 tables written in {encoding}', differing(cases, read_all([t.encode(encoding) for t, _ in cases])))
    cases = []
    for n in range(3000):
        separator = dice.choice(',;\t')
        text = f'x{separator}y\n' + ''.join(dice.choice(SOUP) for _ in range(dice.randint(0, 14)))
        cases.append((text, expected(text, separator)))
    tap.check('3000 soups, of which many are wrong',
              differing(cases, read_all([t.encode() for t, _ in cases])))
    tap.check('some of them are, most are not',
              [] if 300 < sum(w is None for _, w in cases) < 2700 else [sum(w is None for _, w in cases)])
    latin = 'título;sala\r\nForça;Salão\r\n'
    tap.equal('Windows-1252', read_all([latin.encode('cp1252')])[0], [['título', 'sala'], ['Força', 'Salão']])
    tap.equal('a line that says the separator', read_all([b'sep=;\r\na,b;c\r\n'])[0], [['a,b', 'c']])
    wrong = read_all([b'a\0b', b'\xff\xfea', b'a,b\n"c"d', b'a\n\n"b\nc', b'a,' * 300, b'a\n' * 6000])
    tap.equal('what is refused says where', wrong,
              ['it is no text; save it as CSV in UTF-8', 'it is no text; save it as CSV in UTF-8',
               'line 2: expected a separator behind the closing quotation mark', 'line 3: a quotation mark is never closed',
               'line 1: too many columns', 'line 5001: too many rows'])
    tap.equal('nothing is nothing', read_all([b'', b'\xef\xbb\xbf']), [[], []])
    tap.done()


main()
