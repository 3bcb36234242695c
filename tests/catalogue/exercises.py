#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Judges the exercises in data/exercises, their METs in data/met.json and the list of their words.

usage: exercises.py SOURCE-FOLDER
Prints TAP. Every check is a function in CHECKS that yields one complaint, a line, for each thing found wrong.
"""
import json
import pathlib
import re
import runpy
import sys

SOURCE = pathlib.Path(sys.argv[1])
FOLDER = SOURCE / 'data' / 'exercises'

MEMBERS = ('id name other-names for pattern move posture primary secondary sides impact noise kit met '
           'width length height easier harder care view seconds-per-rep say figure').split()
REQUIRED = ('id name for pattern move posture primary sides impact noise met width length view '
            'seconds-per-rep say').split()
WORDS = {
    'for': 'work warm-up cool-down',
    'pattern': 'squat lunge hinge hip-extension hip-abduction hip-adduction push-horizontal push-vertical '
               'pull-horizontal pull-vertical isolation core-flexion core-extension core-rotation '
               'core-lateral core-anti-extension core-anti-rotation jump cardio-step cardio-floor full-body '
               'locomotion carry mobilise stretch',
    'move': 'strength core dynamic explosive hold mobilise stretch weights swing step rope chair own',
    'posture': 'standing on-chair kneeling seated all-fours hands-and-feet prone supine side-lying',
    'primary': 'chest front-shoulder side-shoulder rear-shoulder upper-back lats biceps triceps '
               'forearms abs obliques lower-back hip-flexors glutes outer-hip inner-thigh quads '
               'hamstrings calves shins neck',
    'sides': 'both alternate split',
    'impact': 'none low high',
    'noise': 'silent soft loud',
    'kit': 'mat dumbbells dumbbell kettlebell band loop-band chair bench step wall rope bar strap '
           'anchor roller ball medicine-ball bike rower partner',
    'care': 'wrists knees lower-back shoulders neck hips ankles grip balance pelvic-floor pressure',
    'view': 'front side three-quarter',
}
WORDS['secondary'] = WORDS['primary']
REGIONS = {
    'thighs': 'quads inner-thigh outer-hip', 'glutes': 'glutes hamstrings', 'calves': 'calves shins',
    'front-core': 'abs hip-flexors', 'side-core': 'obliques', 'lower-back': 'lower-back', 'chest': 'chest',
    'upper-back': 'upper-back lats', 'shoulders': 'front-shoulder side-shoulder rear-shoulder neck',
    'arms': 'biceps triceps forearms',
}
# Metres, where an exercise says nothing; a jump rises 0.4 above it.
HEIGHTS = {'standing': 1.9, 'on-chair': 1.4, 'kneeling': 1.4, 'seated': 1.4, 'all-fours': 0.9,
           'hands-and-feet': 0.9, 'prone': 0.5, 'supine': 0.5, 'side-lying': 0.5}

# Rows of the 2024 Adult Compendium of Physical Activities (Herrmann SD et al., J Sport Health Sci
# 2024;13:6-12) as transcribed, read second-hand. No row for resting was among them, so resting is of the 2011
# edition (Ainsworth BE et al., Med Sci Sports Exerc 2011;43:1575-81), whose codes mean other things: edition
# and code go together.
COMPENDIUM = {2024: {
    '02020': 7.5, '02022': 3.8, '02024': 2.8, '02030': 3.5, '02032': 6.0, '02034': 3.5, '02035': 5.0,
    '02040': 7.5, '02210': 7.0, '02214': 11.0, '02056': 3.0, '02057': 6.5, '02050': 6.0, '02052': 5.0,
    '02054': 3.5, '02055': 5.8, '02058': 9.8, '02101': 2.3, '02000': 7.3, '02001': 5.5, '02002': 7.3,
    '02003': 9.0, '02004': 7.8, '02005': 4.8, '02006': 8.0, '02008': 5.0, '02060': 5.5, '02061': 5.0,
    '02062': 7.8, '02064': 3.8, '02065': 9.3, '02068': 11.0, '15552': 8.3, '15551': 11.8, '15550': 12.3,
    '02078': 11.0, '02085': 10.5, '02103': 1.8, '02105': 2.8, '02110': 6.8, '02140': 2.5, '02143': 4.0,
    '02145': 6.0, '02150': 2.3, '02160': 4.0, '02175': 2.3, '02180': 3.5, '02185': 2.7, '02340': 2.8,
    '02344': 4.0, '02310': 6.5, '02315': 5.5, '12020': 7.5, '12025': 4.8, '15110': 5.8, '15125': 9.3,
    '17133': 4.5, '17131': 6.8, '17134': 9.3,
}, 2011: {'07010': 1.0, '07021': 1.3, '07040': 1.3}}
# The codes that each kind of move stands for, steady and hard.
ROWS = {
    'core': ('02024', '02022'), 'strength': ('02022', '02057'), 'dynamic': ('02022', '02020'),
    'explosive': ('02020', '02214'), 'hold': ('02024', '02022'), 'mobilise': ('02024', '02022'),
    'stretch': ('02101', '02101'), 'weights': ('02054', '02050'), 'swing': ('02040', '02058'),
    'step': ('02001', '02002'), 'rope': ('15552', '15551'), 'chair': ('02101', '02024'),
}

# An easier or harder step may ask for these; anything else must be the obvious step, listed below.
AT_HAND = {'mat', 'wall', 'chair', 'dumbbell', 'dumbbells'}
OBVIOUS_KIT = {('seated-blade-squeeze', 'seated-band-row')}
LIMITS = {'setup': 18, 'fault': 14, 'easier': 12, 'harder': 12}
JARGON = re.compile(
    r'\b(reps?|sets|core|glutes?|abs|quads|hamstrings?|delts?|pecs|lats|biceps|triceps|engage|brace|activate|'
    r'scapula\w*|neutral|eccentric|isometric|cardio|burn|crush|smash|guys|gonna|ok|okay|belly|butt|'
    r'bum|tailbone)\b',
    re.I)
NOT_BRITISH = re.compile(
    r'\b(color|center(ed)?|gray|\w+ize[ds]?|\w+izing|favor\w*|toward|farther|half way|program)\b', re.I)


def load():
    found = {}
    for file in sorted(FOLDER.glob('*.json')):
        found[file.stem] = json.loads(file.read_text(encoding='utf-8'))
    return found


def muscles(exercise):
    return set(exercise['primary']) | set(exercise.get('secondary', []))


def kit(exercise):
    return set(exercise.get('kit', []))


def load_on(exercise, joint):
    return exercise.get('care', {}).get(joint, {}).get('load', 0)


def texts(exercise):
    """Every text that is read or heard, with the field it stands in."""
    for field, text in exercise['say'].items():
        for part in text if isinstance(text, list) else [text]:
            yield field, part
    for joint, care in exercise.get('care', {}).items():
        if 'say' in care:
            yield f'care {joint}', care['say']


def files_are_whole(all_):
    for id_, e in all_.items():
        text = (FOLDER / f'{id_}.json').read_text(encoding='utf-8')
        rest = {k: v for k, v in e.items() if k != 'figure'}
        without_figure = json.dumps(rest, indent=2, ensure_ascii=False)
        if not text.startswith(without_figure[:-2]) or not text.endswith('\n}\n'):
            yield f'{id_}: not two-space indent with one trailing newline'
        if e['id'] != id_:
            yield f'{id_}: the file holds {e["id"]}'
        if list(e) != [m for m in MEMBERS if m in e]:
            yield f'{id_}: members unknown or out of order: {", ".join(e)}'
        for member in REQUIRED:
            if member not in e:
                yield f'{id_}: no {member}'
        for member, value in e.items():
            if value in (None, [], {}) and member != 'primary':
                yield f'{id_}: {member} is empty, leave it out'


def words_are_allowed(all_):
    for id_, e in all_.items():
        for member, allowed in WORDS.items():
            value = e.get(member, [])
            value = [value] if isinstance(value, str) else list(value)
            for word in set(value) - set(allowed.split()):
                yield f'{id_}: {member} has {word}'
            if len(set(value)) != len(value):
                yield f'{id_}: {member} says a word twice'
        if set(e['primary']) & set(e.get('secondary', [])):
            yield f'{id_}: a muscle is primary and secondary'
        # Lying still works no muscle; everything else names what limits it.
        if not (id_ == 'quiet-lying-breath' or 1 <= len(e['primary']) <= 3):
            yield f'{id_}: {len(e["primary"])} primary muscles, 1 to 3 expected'
        if e['for'] != [w for w in WORDS['for'].split() if w in e['for']] or not e['for']:
            yield f'{id_}: for is not in the order {WORDS["for"]}'


def numbers_are_sane(all_):
    for id_, e in all_.items():
        if not (0.8 <= e['width'] <= 3.5 and 0.8 <= e['length'] <= 4.0):
            yield f'{id_}: floor of {e["width"]} by {e["length"]} m'
        if not 0 <= e['seconds-per-rep'] <= 6:
            yield f'{id_}: {e["seconds-per-rep"]} s a repetition'
        still = e['seconds-per-rep'] == 0
        if still != (e['move'] in ('hold', 'stretch') or id_ == 'quiet-lying-breath'):
            yield f'{id_}: a hold and seconds for each repetition go apart'
        if still and e['sides'] == 'alternate':
            yield f'{id_}: a hold cannot change sides by itself'
        default = HEIGHTS[e['posture']] + (0.4 if e['impact'] == 'high' else 0)
        if 'height' in e and (round(e['height'] - default, 3) == 0 or not 0.5 <= e['height'] <= 2.5):
            yield f'{id_}: height {e["height"]} where the default is {default}'


def heights_of_practice(all_):
    """The heights of the worked camera distances; the rest is common practice, no source."""
    expected = {'jumping-jack': 2.3, 'squat': 1.9, 'push-up': 0.9, 'skater': 1.9, 'walking-lunge': 1.9}
    for id_, metres in expected.items():
        e = all_[id_]
        high = e.get('height', HEIGHTS[e['posture']] + (0.4 if e['impact'] == 'high' else 0))
        if abs(high - metres) > 0.001:
            yield f'{id_}: {high} m high, {metres} expected'
    for id_, e in all_.items():
        stands = e['posture'] == 'on-chair' and re.search(r'\b[Ss]tand', ' '.join(e['say']['cues']))
        if stands and e.get('height', 0) < 1.9:
            yield f'{id_}: ends standing, but is not as high as standing'


def names_are_unique(all_):
    seen = {}
    for id_, e in all_.items():
        for name in [e['name'], *e.get('other-names', [])]:
            key = re.sub(r'[^a-zé]', '', name.lower())
            if key in seen:
                yield f'{id_}: {name} is also a name of {seen[key]}'
            seen[key] = id_


def chains_hold(all_):
    below = {id_: set() for id_ in all_}
    for id_, e in all_.items():
        for side in ('easier', 'harder'):
            other = e.get(side)
            if other is None:
                continue
            if other not in all_ or other == id_:
                yield f'{id_}: {side} leads to {other}'
                continue
            if side not in e['say']:
                yield f'{id_}: {side} is {other}, but no words say so'
            hard, easy = (id_, other) if side == 'easier' else (other, id_)
            below[hard].add(easy)
            for pace in ('steady', 'hard'):
                if all_[hard]['met'][pace]['value'] < all_[easy]['met'][pace]['value']:
                    yield f'{id_}: {easy} counts as easier than {hard}, but asks for more breath when {pace}'
            if not muscles(all_[hard]) & muscles(all_[easy]):
                yield f'{id_}: {side} {other} works other muscles'
            more = kit(all_[other]) - kit(e) - AT_HAND
            if more and (id_, other) not in OBVIOUS_KIT:
                yield f'{id_}: {side} {other} needs {", ".join(more)}'
    done = {}

    def walk(id_, path):
        done[id_] = False
        for easy in sorted(below[id_]):
            if done.get(easy) is False:
                yield f'a loop: {" ".join(path + [id_, easy])}'
            elif easy not in done:
                yield from walk(easy, path + [id_])
        done[id_] = True

    for id_ in all_:
        if id_ not in done:
            yield from walk(id_, [])


def care_is_real(all_):
    for id_, e in all_.items():
        for joint, care in e.get('care', {}).items():
            order = [k for k in ('load', 'say', 'instead') if k in care]
            if list(care) != order or care['load'] not in (1, 2):
                yield f'{id_}: {joint} is not load, say, instead'
            if care['load'] == 2 and not ('say' in care or 'instead' in care):
                yield f'{id_}: {joint} is loaded and nothing says what to do'
            if 'instead' not in care:
                continue
            other = all_.get(care['instead'])
            if other is None or other is e:
                yield f'{id_}: {joint} leads to {care["instead"]}'
                continue
            where = f'{id_}: {care["instead"]} instead for {joint}'
            if load_on(other, joint) >= 2:
                yield f'{where} loads it as well'
            if not set(e['primary']) & muscles(other):
                yield f'{where} works none of its primary muscles'
            for more in other.get('care', {}):
                if load_on(other, more) == 2 and load_on(e, more) < 2:
                    yield f'{where} loads {more}, which the exercise does not'
            if kit(other) - kit(e) - AT_HAND:
                yield f'{where} needs other kit'
            if other['impact'] == 'high' and e['impact'] != 'high':
                yield f'{where} jumps'


def bodies_are_true(all_):
    """What follows from how the exercise is done; common practice, no source."""
    for id_, e in all_.items():
        care = e.get('care', {})
        said = ' '.join([e['say']['setup'], *e['say']['cues']])
        if e['impact'] == 'high' and (e['noise'] != 'loud' or load_on(e, 'pelvic-floor') < 2):
            yield f'{id_}: a jump is loud and loads the pelvic floor'
        on_one_leg = e['posture'] == 'standing' and re.search(r'\bon(to)? one (leg|foot)\b', said)
        if on_one_leg and 'balance' not in care:
            yield f'{id_}: on one leg, but no care for balance'
        if e['posture'] in ('hands-and-feet', 'all-fours') and 'wrists' not in care \
                and not re.search('forearm', said):
            yield f'{id_}: weight on the hands, but no care for wrists'
        if e['posture'] in ('prone', 'supine', 'side-lying', 'kneeling', 'all-fours') \
                and not kit(e) & {'mat', 'bar'}:
            yield f'{id_}: on the floor without a mat'
        if e['posture'] == 'on-chair' and not kit(e) & {'chair', 'bike'}:
            yield f'{id_}: sits on nothing'
        held = kit(e) & {'kettlebell', 'dumbbells', 'dumbbell'}
        if held and e['pattern'] == 'hinge' and load_on(e, 'lower-back') < 2:
            yield f'{id_}: bending forward with a weight loads the lower back'


def words_are_kind(all_):
    for id_, e in all_.items():
        say = e['say']
        if list(say) != [k for k in ('setup', 'cues', 'fault', 'easier', 'harder') if k in say]:
            yield f'{id_}: say is out of order'
        for field in ('setup', 'cues', 'fault'):
            if not say.get(field):
                yield f'{id_}: no {field}'
        if not 2 <= len(say['cues']) <= 4:
            yield f'{id_}: {len(say["cues"])} cues, 2 to 4 expected'
        if not re.fullmatch(r'[^?]+\? [A-Z][^?]+\.', say['fault']):
            yield f'{id_}: a fault is a question and its mend: {say["fault"]}'
        for field, text in texts(e):
            short = field == 'cues' or field.startswith('care')
            if len(text.split()) > (8 if short else LIMITS[field]):
                yield f'{id_}: {field} is too long to say: {text}'
            if text.endswith('.') == short or '..' in text or '  ' in text or text != text.strip():
                yield f'{id_}: {field} ends or is spaced wrongly: {text}'
            if text[0].isupper() == field.startswith('care'):
                yield f'{id_}: {field} begins with the wrong letter: {text}'
            if field in ('easier', 'harder') and len(text.split(',')[0].split()) > 3 and ',' in text:
                yield f'{id_}: {field} cannot be cut to three words: {text}'
            if '!' in text or '"' in text or JARGON.search(text):
                yield f'{id_}: {field} is not plain: {text}'
            if NOT_BRITISH.search(text):
                yield f'{id_}: {field} is not British: {text}'


def rows_are_of_the_compendium(all_):
    met = json.loads((SOURCE / 'data' / 'met.json').read_text(encoding='utf-8'))
    if met.get('edition') != 2024 or list(met['moves']) != list(ROWS):
        yield f'met.json: edition {met.get("edition")}, moves {", ".join(met["moves"])}'
    for move, codes in ROWS.items():
        for pace, code in zip(('steady', 'hard'), codes):
            if met['moves'][move][pace] != {'value': COMPENDIUM[2024][code], 'code': code}:
                yield f'met.json: {move} {pace} is {met["moves"][move][pace]}'


def mets_are_their_rows(all_):
    rows = json.loads((SOURCE / 'data' / 'met.json').read_text(encoding='utf-8'))['moves']
    for id_, e in all_.items():
        met = e['met']
        if list(met) != ['steady', 'hard', 'edition', 'confidence']:
            yield f'{id_}: met is not steady, hard, edition, confidence'
        if met['confidence'] not in ('low', 'medium', 'high'):
            yield f'{id_}: confidence is {met["confidence"]}'
        for pace in ('steady', 'hard'):
            if COMPENDIUM.get(met['edition'], {}).get(met[pace]['code']) != met[pace]['value']:
                yield f'{id_}: {pace} {met[pace]} is not in the {met["edition"]} table'
            if e['move'] != 'own' and met[pace] != rows[e['move']][pace]:
                yield f'{id_}: {pace} {met[pace]} is not the row of {e["move"]}'
        if met['steady']['value'] > met['hard']['value']:
            yield f'{id_}: steady is above hard'


def weights_never_lighten(all_):
    """The same movement with a weight asks for no less than without; common practice, no source."""
    pairs = {'goblet-squat': 'squat', 'dumbbell-reverse-lunge': 'reverse-lunge',
             'rack-march': 'march-on-the-spot', 'suitcase-march': 'march-on-the-spot',
             'dumbbell-romanian-deadlift': 'good-morning'}
    for heavy, bare in pairs.items():
        for pace in ('steady', 'hard'):
            if all_[heavy]['met'][pace]['value'] < all_[bare]['met'][pace]['value']:
                yield f'{heavy}: {pace} is below {bare}'


def shelves_are_filled(all_):
    chair = [e for e in all_.values() if e['posture'] == 'on-chair' and 'chair' in kit(e)]
    shelves = {
        'on a chair': (24, chair),
        'warm-up on a chair': (3, [e for e in chair if 'warm-up' in e['for']]),
        'cool-down on a chair': (3, [e for e in chair if 'cool-down' in e['for']]),
        'with a partner': (4, [e for e in all_.values() if 'partner' in kit(e)]),
        'with a ball': (4, [e for e in all_.values() if kit(e) & {'ball', 'medicine-ball'}]),
        'on a machine': (3, [e for e in all_.values() if kit(e) & {'bike', 'rower'}]),
        'that raise the pulse in a warm-up without a jump': (3, [
            e for e in all_.values() if 'warm-up' in e['for'] and e['posture'] == 'standing' and not kit(e)
            and e['pattern'] in ('cardio-step', 'locomotion') and e['impact'] != 'high']),
    }
    for title, (wanted, found) in shelves.items():
        if len(found) < wanted:
            yield f'{len(found)} exercises {title}, {wanted} expected'
    for region, members in REGIONS.items():
        if not any(set(e['primary']) & set(members.split()) for e in chair):
            yield f'no exercise on a chair for {region}'


def strings_are_fresh(all_):
    script = SOURCE / 'data' / 'exercise-strings.py'
    wanted = runpy.run_path(str(script))['listing'](FOLDER)
    if (SOURCE / 'po' / 'exercise-strings.c').read_text(encoding='utf-8') != wanted:
        yield 'po/exercise-strings.c is older than the exercises: run data/exercise-strings.py'
    if 'po/exercise-strings.c' not in (SOURCE / 'po' / 'POTFILES').read_text(encoding='utf-8').split():
        yield 'po/POTFILES does not name po/exercise-strings.c'


CHECKS = [files_are_whole, words_are_allowed, numbers_are_sane, heights_of_practice, names_are_unique,
          chains_hold, care_is_real, bodies_are_true, words_are_kind, rows_are_of_the_compendium,
          mets_are_their_rows, weights_never_lighten, shelves_are_filled, strings_are_fresh]


def main():
    all_ = load()
    print(f'1..{len(CHECKS)}')
    failed = 0
    for number, check in enumerate(CHECKS, 1):
        try:
            complaints = list(check(all_))
        except (KeyError, TypeError, AttributeError, IndexError, OSError) as error:
            complaints = [f'{type(error).__name__}: {error}']
        failed += bool(complaints)
        print(f'{"not " if complaints else ""}ok {number} - {check.__name__.replace("_", " ")}')
        for complaint in complaints:
            print(f'# {complaint}')
    return 1 if failed else 0


sys.exit(main())
