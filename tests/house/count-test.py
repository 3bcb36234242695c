# SPDX-License-Identifier: GPL-3.0-or-later
"""Does the closing line of tests/run tell the truth? A run that looks green and is not would hide everything else."""
import os
import subprocess
import sys
import tempfile

from tap import Tap

COUNT = os.path.join(os.path.dirname(os.path.abspath(__file__)), 'count.py')
GOOD = '<testcase name="a"/>'
BAD = '<testcase name="b"><failure/></testcase>'
SKIPPED = '<testcase name="c"><skipped/></testcase>'

# name, what the log holds (None: there is none), how meson ended, the last line, the exit code
CASES = [
    ('all passed', GOOD * 3, 0, '3 passed, 0 failed', 0),
    ('one failed', GOOD + BAD, 1, '1 passed, 1 failed', 1),
    ('one skipped', GOOD + SKIPPED, 0, '1 passed, 1 failed', 1),
    ('ended badly with a clean log', GOOD, 1, '1 passed, 1 failed', 1),
    ('two failed and one of them was killed', GOOD + BAD, 2, '1 passed, 2 failed', 1),
    ('the whole was stopped', GOOD, 124, '1 passed, 1 failed', 1),
    ('nothing ran', '', 0, '0 passed, 1 failed', 1),
    ('no log, as without a display', None, 127, '0 passed, 1 failed', 1),
    ('a log cut short', GOOD + '<', 0, '0 passed, 1 failed', 1),
]

tap = Tap()
with tempfile.TemporaryDirectory() as folder:
    for name, cases, status, line, code in CASES:
        log = os.path.join(folder, name + '.xml')
        if cases is not None:
            with open(log, 'w', encoding='utf-8') as out:
                out.write(f'<testsuites><testsuite>{cases}</testsuite></testsuites>')
        run = subprocess.run([sys.executable, COUNT, log, str(status)], capture_output=True, text=True)
        tap.equal(name, (run.stdout.splitlines()[-1], run.returncode), (line, code))
tap.done()
