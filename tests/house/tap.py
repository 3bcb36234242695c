# SPDX-License-Identifier: GPL-3.0-or-later
"""The lines of the Test Anything Protocol, for the tests that are written in Python."""
import sys


class Tap:
    """Counts the subtests; each is a name and the list of what is wrong with it, empty when all is well."""

    def __init__(self):
        self.count = 0
        self.failed = 0

    def check(self, name, problems):
        self.count += 1
        problems = list(problems)
        if problems:
            self.failed += 1
        print('{} {} - {}'.format('not ok' if problems else 'ok', self.count, name))
        for problem in problems:
            print('# ' + str(problem).replace('\n', '\n# '))

    def equal(self, name, got, expected):
        self.check(name, [] if got == expected else [f'got {got!r}, expected {expected!r}'])

    def done(self):
        """The plan, last; ends the program."""
        print(f'1..{self.count}')
        sys.exit(1 if self.failed else 0)
