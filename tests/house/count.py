# SPDX-License-Identifier: GPL-3.0-or-later
"""count.py LOG STATUS: says how many tests passed and failed, subtests counted, from the log of `meson test`.

Fails when a test failed, when one was skipped (a skipped test proves nothing), when none ran, and when meson itself
ended badly, as after a crash that left no line in the log."""
import sys
import xml.etree.ElementTree as ElementTree


# A test that was killed, as for taking too long, leaves no line in the log; but meson ends with the number of programs
# that failed. Above this it is the status of something around it.
MOST_PROGRAMS = 100


def failing(case):
    return any(case.find(kind) is not None for kind in ('failure', 'error', 'skipped'))


def count(log):
    """(passed, failed, programs that failed) over all test cases; a skipped one counts as failed."""
    passed = failed = programs = 0
    for suite in ElementTree.parse(log).getroot().iter('testsuite'):
        cases = list(suite.iter('testcase'))
        bad = sum(failing(case) for case in cases)
        passed += len(cases) - bad
        failed += bad
        programs += bad > 0
    return passed, failed, programs


def main(log, status):
    try:
        passed, failed, programs = count(log)
    except (OSError, ElementTree.ParseError) as error:
        print(f'The log of the tests cannot be read: {error}')
        passed, failed, programs = 0, 0, 0
    if passed + failed == 0:
        print('No test ran.')
    if status > programs:
        failed += status - programs if status <= MOST_PROGRAMS else 1
    elif passed == 0 and failed == 0:
        failed = 1
    print(f'{passed} passed, {failed} failed')
    return 1 if failed else 0


if __name__ == '__main__':
    sys.exit(main(sys.argv[1], int(sys.argv[2])))
