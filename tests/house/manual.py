# SPDX-License-Identifier: GPL-3.0-or-later
"""The manual page and the completion of the shell, held against what the program itself says."""
import json
import os
import pathlib
import re
import subprocess
import tempfile

from tap import Tap

SOURCE, PROGRAM = pathlib.Path(os.environ['LAP_SOURCE']), os.environ['LAP_PROGRAM']
PAGE = SOURCE / 'data' / 'lapwing.1'
COMPLETION = SOURCE / 'data' / 'completions' / 'lapwing'


def output(*command):
    return subprocess.run(command, stdout=subprocess.PIPE, text=True, check=True).stdout


def said(*words):
    """What bash offers for the last of @words, which is being typed."""
    script = 'source "$1"; shift; COMP_WORDS=("$@"); COMP_CWORD=$(($# - 1)); _lapwing; printf "%s\\n" "${COMPREPLY[@]}"'
    return set(output('bash', '-c', script, 'bash', str(COMPLETION), *words).split())


def commands():
    """The commands of the program and the long options of each."""
    named = re.findall(r'^  lapwing ([a-z]+)', output(PROGRAM, '--help'), re.M)
    return {name: set(re.findall(r'--[a-z]+[a-z-]*', output(PROGRAM, name, '--help').split('\n\n', 2)[-1])) - {'--help-all'}
            for name in named}


def page_is_sound(tap):
    done = subprocess.run(['groff', '-man', '-ww', '-z', '-Tutf8', str(PAGE)], stderr=subprocess.PIPE, text=True)
    tap.check('groff reads the manual page without a warning', [done.stderr.strip()] if done.stderr.strip() else [])
    text = PAGE.read_text(encoding='utf-8').replace('\\-', '-')
    known = {'--help', '--version'}
    for name, options in commands().items():
        known |= options
        tap.check(f'the manual page tells of {name}',
                  [word for word in options | {f'lapwing {name}'} if word not in text])
    tap.check('the manual page tells of nothing else', set(re.findall(r'--[a-z][a-z-]*', text)) - known)


def completion_is_whole(tap):
    tap.equal('the completion offers the commands', said('lapwing', '') & set(commands()), set(commands()))
    for name, options in commands().items():
        tap.equal(f'the completion offers the options of {name}', said('lapwing', name, '-') - {'--help'},
                  options - {'--help'})
    tap.equal('a word begun is finished', said('lapwing', 'catalogue', '--posture', 'hands'), {'hands-and-feet'})
    tap.equal('a list goes on after its comma', said('lapwing', 'catalogue', '--without', 'wrists,kn'),
              {'wrists,knees'})
    with tempfile.TemporaryDirectory() as folder:
        for name in ('plan.lapwing', 'week.lapweek', 'other.txt'):
            pathlib.Path(folder, name).write_text('')
        tap.equal('only plans are offered where a plan is expected', said('lapwing', 'check', folder + '/'),
                  {f'{folder}/plan.lapwing', f'{folder}/week.lapweek'})


def words_are_known(tap):
    """Every word that the completion offers is one that the program takes."""
    for option in ('--region', '--posture', '--kit', '--impact', '--without'):
        offered = said('lapwing', 'catalogue', option, '')
        refused = [word for word in sorted(offered)
                   if subprocess.run([PROGRAM, 'catalogue', option, word], stdout=subprocess.DEVNULL,
                                     stderr=subprocess.DEVNULL).returncode != 0]
        tap.check(f'the words of {option} are known', refused or ([] if offered else ['nothing is offered']))
        complaint = subprocess.run([PROGRAM, 'catalogue', option, 'nothing-of-this-name'], stderr=subprocess.PIPE,
                                   text=True).stderr
        known = re.search(r'one of: (.*)', complaint).group(1)
        tap.check(f'the words of {option} are all', set(re.split(r',\s*', known.strip())) - offered)


def pairs_hold_one(tap):
    """Who has a pair of dumbbells can do what needs one; who has one can't do what needs a pair."""
    listed = lambda kit: {e['id'] for e in json.loads(subprocess.run(
        [PROGRAM, 'catalogue', '--json', '--kit', kit], stdout=subprocess.PIPE, text=True, check=True).stdout)['exercises']}
    needs = {path.stem: set(json.loads(path.read_text(encoding='utf-8')).get('kit', []))
             for path in (SOURCE / 'data' / 'exercises').glob('*.json')}
    for kit, held in (('dumbbells', {'dumbbells', 'dumbbell'}), ('dumbbell', {'dumbbell'})):
        tap.equal(f'what --kit {kit} finds', listed(kit), {name for name, wanted in needs.items() if wanted <= held})


def sheets_are_offered(tap):
    sheets = json.loads(output(PROGRAM, 'sheets', '--json'))['sheets']
    tap.equal('the completion offers the sheets', said('lapwing', 'print', '--sheet', ''), {s['id'] for s in sheets})


def formats_are_offered(tap):
    formats = json.loads(output(PROGRAM, 'formats', '--json'))['formats']
    tap.equal('the completion offers the formats', said('lapwing', 'publish', '--as', ''), {f['id'] for f in formats})


def main():
    tap = Tap()
    page_is_sound(tap)
    completion_is_whole(tap)
    words_are_known(tap)
    pairs_hold_one(tap)
    sheets_are_offered(tap)
    formats_are_offered(tap)
    tap.done()


main()
