# SPDX-License-Identifier: GPL-3.0-or-later
"""A week as a mixed-integer model, from its file alone and apart from the program: a binary for each class, room and
start, one for each class, coach and start; what both say of when has to be the same.

usage: fill_mip.py FILE.lapweek SOLVER      prints unplaced and points of the optimum; SOLVER is glpk or cbc
"""
import json
import pathlib
import re
import subprocess
import sys
import tempfile

DAYS = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun']
UNPLACED = 1000
GAP = 5             # minutes more for other kit; the frozen weeks have none


def minutes(text):
    return int(text[:2]) * 60 + int(text[3:])


class Week:
    def __init__(self, doc):
        self.doc = doc
        self.rooms, self.coaches, self.classes = doc['rooms'], doc['coaches'], doc['classes']
        self.room = {r['id']: k for k, r in enumerate(self.rooms)}
        self.coach = {c['id']: k for k, c in enumerate(self.coaches)}
        self.fixed = [k for k, c in enumerate(self.classes) if c.get('fixed') and 'day' in c]
        self.loose = [k for k in range(len(self.classes)) if k not in self.fixed]

    def place(self, k):
        c = self.classes[k]
        return DAYS.index(c['day']), minutes(c['start']), self.room[c['room']], self.coach[c['coach']]

    def is_open(self, day, start, end):
        span = self.doc['open'].get(DAYS[day])
        return span is not None and minutes(span[0]) <= start and end <= minutes(span[1])

    def room_suits(self, k, r):
        return self.classes[k].get('places', 0) <= self.rooms[r].get('places', 10 ** 6)

    def coach_suits(self, k, c):
        return self.classes[k]['kind'] in self.coaches[c].get('can', [self.classes[k]['kind']])

    def is_free(self, c, day, start, end):
        return any(minutes(a) <= start and end <= minutes(b) for a, b in self.coaches[c]['free'].get(DAYS[day], []))

    def is_hard(self, k):
        return self.classes[k].get('effort') == 'hard'

    def points(self, k, day, start):
        """What its own wishes cost it then."""
        wish = self.classes[k].get('wish', {})
        cost = 4 if wish.get('days') and DAYS[day] not in wish['days'] else 0
        if 'between' in wish:
            a, b = map(minutes, wish['between'])
            outside = max(0, a - start) + max(0, start + self.classes[k]['minutes'] - b)
            cost += min(2 + outside // 60, 6) if outside else 0
        return cost

    def pairs(self):
        """Hard classes for the same people, and whether they share a region."""
        hard = [k for k in range(len(self.classes)) if self.is_hard(k) and self.classes[k].get('for')]
        for a in hard:
            for b in hard:
                if a < b and self.classes[a]['for'] == self.classes[b]['for']:
                    yield a, b, bool(set(self.classes[a].get('regions', [])) & set(self.classes[b].get('regions', [])))


def soon(a, b):
    """Less than 48 hours apart, in a week that is a circle; (day, start) each."""
    d = abs(a[0] * 1440 + a[1] - b[0] * 1440 - b[1])
    return min(d, 10080 - d) < 2880


def next_day(a, b):
    return (a - b) % 7 in (1, 6)


def build(week):
    """The lines of the model in the LP format, with names R_class_room_day_start and C_class_coach_day_start."""
    cost, rows, names = [], [], []
    in_room, with_coach, of_day = {}, {}, {}
    when = {}                                  # class -> (day, start) -> names of the rooms there
    standing = [(k, *week.place(k)) for k in week.fixed]
    for k in week.loose:
        length = week.classes[k]['minutes']
        rooms, coaches = {}, {}
        for day in range(7):
            for start in range(0, 1440 - length + 1, 15):
                end = start + length
                if not week.is_open(day, start, end):
                    continue
                r = [r for r, room in enumerate(week.rooms) if week.room_suits(k, r) and not any(
                    fd == day and fr == r and start < fs + week.classes[f]['minutes'] + room['turnaround'] and
                    fs < end + room['turnaround'] for f, fd, fs, fr, fc in standing)]
                c = [c for c in range(len(week.coaches)) if week.coach_suits(k, c) and
                     week.is_free(c, day, start, end) and not any(
                     fd == day and fc == c and start < fs + week.classes[f]['minutes'] and fs < end
                     for f, fd, fs, fr, fc in standing)]
                if r and c:
                    rooms[day, start], coaches[day, start] = r, c
        when[k] = {}
        for (day, start), r in rooms.items():
            when[k][day, start] = [f'R_{k}_{x}_{day}_{start}' for x in r]
            cost += [f'+ {week.points(k, day, start)} {n}' for n in when[k][day, start] if week.points(k, day, start)]
            others = [f'C_{k}_{x}_{day}_{start}' for x in coaches[day, start]]
            names += when[k][day, start] + others
            rows.append(' + '.join(when[k][day, start]) + ' - ' + ' - '.join(others) + ' = 0')
            for x, n in zip(r, when[k][day, start]):
                for q in range(start // 15, -(-(start + length + week.rooms[x]['turnaround']) // 15)):
                    in_room.setdefault((x, day, q), []).append(n)
            for x, n in zip(coaches[day, start], others):
                of_day.setdefault((x, day), []).append((k, n))
                for q in range(start // 15, -(-(start + length) // 15)):
                    with_coach.setdefault((x, day, q), []).append(n)
        out = f'U_{k}'
        names.append(out)
        cost.append(f'+ {UNPLACED} {out}')
        rows.append(' + '.join([out] + [n for l in when[k].values() for n in l]) + ' = 1')
    for cover in in_room, with_coach:
        rows += [' + '.join(l) + ' <= 1' for l in cover.values() if len(l) > 1]
    for (x, day), l in of_day.items():
        there = [f for f, fd, fs, fr, fc in standing if fd == day and fc == x]
        most = week.coaches[x].get('most-a-day', 0)
        if most:
            rows.append(' + '.join(n for k, n in l) + f' <= {max(0, most - len(there))}')
        hard = [n for k, n in l if week.is_hard(k)]
        if hard:
            rows.append(' + '.join(hard) + f' <= {max(0, 2 - sum(week.is_hard(f) for f in there))}')
    rhythm(week, when, cost, rows, names)
    return ['Minimize', 'obj: ' + ' '.join(cost), 'Subject To', *rows, 'Binary', *names, 'End']


def rhythm(week, when, cost, rows, names):
    for f in week.fixed:
        day, start, _, _ = week.place(f)
        when[f] = {(day, start): []}
    for a, b, shared in week.pairs():
        if a in week.fixed and b in week.fixed:
            continue
        for meet, points in (lambda s, t: next_day(s[0], t[0]), 3), (soon, 1):
            if points == 1 and not shared:
                continue
            y = f'Y_{a}_{b}_{points}'
            names.append(y)
            cost.append(f'+ {points} {y}')
            theirs = list(when[b])
            alike = {}                         # which of b's starts are met -> a's starts that meet them
            for s in when[a]:
                met = sum(1 << k for k, t in enumerate(theirs) if meet(s, t))
                alike.setdefault(met, []).append(s)
            for met in alike:
                # All of a's starts that meet these of b's, and perhaps more, at once.
                left = [n for more, l in alike.items() if more & met == met for s in l for n in when[a][s]]
                right = [n for k, t in enumerate(theirs) if met >> k & 1 for n in when[b][t]]
                if not met or (not left and a not in week.fixed) or (not right and b not in week.fixed):
                    continue
                rows.append(' + '.join(left + right) + f' - {y} <= {1 - (a in week.fixed) - (b in week.fixed)}')


def wrap(line):
    """Readers of the format have lines of a limited length."""
    words = line.split(' ')
    return '\n '.join(' '.join(words[k:k + 16]) for k in range(0, len(words), 16))


def solve(path, solver, limit=3600):
    week = Week(json.loads(pathlib.Path(path).read_text()))
    with tempfile.TemporaryDirectory() as folder:
        model, out = pathlib.Path(folder) / 'm.lp', pathlib.Path(folder) / 'out'
        model.write_text('\n'.join(map(wrap, build(week))) + '\n')
        if solver == 'glpk':
            subprocess.run(['glpsol', '--lp', model, '-o', out, '--cuts', '--tmlim', str(limit)], check=True,
                           capture_output=True)
            text = out.read_text()
            best = float(re.search(r'Objective:\s+obj\s+=\s+([\d.e+]+)', text)[1])
            status = re.search(r'Status:\s+(.*)', text)[1]
        else:
            subprocess.run(['cbc', model, 'sec', str(limit), 'ratio', '0', 'solve', 'solu', out], check=True,
                           capture_output=True)
            text = out.read_text()
            best = float(re.search(r'objective value\s+([\d.e+]+)', text)[1])
            status = text.split('\n')[0]
        if 'OPTIMAL' not in status.upper():
            raise RuntimeError(f'{path}: {status}')
    # What the fixed classes cost among themselves and for their own wishes is no choice of the model.
    fixed = sum(week.points(f, *week.place(f)[:2]) for f in week.fixed)
    total = round(best) + fixed
    return {'unplaced': total // UNPLACED, 'points': total % UNPLACED}


if __name__ == '__main__':
    print(json.dumps(solve(sys.argv[1], sys.argv[2])))
