# SPDX-License-Identifier: GPL-3.0-or-later
"""count.py LOG STATUS: says how many tests passed and failed, subtests counted, from the log of `meson test`.

Fails when a test failed, when one was skipped (a skipped test proves nothing), when none ran, and when meson itself
ended badly, as after a crash that left no line in the log."""
import sys
import xml.etree.ElementTree as ElementTree


def count(log):
    """(passed, failed) over all test cases; a skipped one counts as failed."""
    passed = failed = 0
    for case in ElementTree.parse(log).getroot().iter('testcase'):
        if any(case.find(kind) is not None for kind in ('failure', 'error', 'skipped')):
            failed += 1
        else:
            passed += 1
    return passed, failed


def main(log, status):
    try:
        passed, failed = count(log)
    except (OSError, ElementTree.ParseError) as error:
        print(f'The log of the tests cannot be read: {error}')
        passed, failed = 0, 0
    if passed + failed == 0:
        print('No test ran.')
    if (status != 0 or passed == 0) and failed == 0:
        failed = 1
    print(f'{passed} passed, {failed} failed')
    return 1 if failed else 0


if __name__ == '__main__':
    sys.exit(main(sys.argv[1], int(sys.argv[2])))
