#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""An independent, slow expansion after design §4.2, compared with `lapwing timeline --json` on 200 random
sessions and the demo. Written from the page alone: no round is copied, nothing is resolved ahead.

  reference.py SOURCE PROGRAM
"""
import json
import math
import pathlib
import random
import subprocess
import sys
import tempfile
from fractions import Fraction

SESSIONS = 200
SEED = 2027
MOST_SECONDS = 43200
MOST_INTERVALS = 20000


class Refused(Exception):
    """What can't be laid out, with the JSON Pointer of the place."""


def seconds_of_reps(reps, tempo, exercise, split):
    high = reps[1] if isinstance(reps, list) else reps
    each = sum(int(n) for n in tempo.split("-")) if tempo else 0
    if each == 0 and exercise is not None:
        each = Fraction(str(exercise["seconds-per-rep"]))
    return math.ceil(high * each * (2 if split else 1))


def shown_id(exercise):
    return exercise["id"] if exercise else None


class Reference:
    def __init__(self, session, exercises):
        self.session = session
        self.exercises = exercises | {e["id"]: e for e in session.get("exercises", [])}
        self.intervals = []
        self.clock = 0

    def add(self, kind, seconds, **more):
        if seconds <= 0:
            return
        interval = {"start": self.clock, "seconds": seconds, "kind": kind, "part": self.part,
                    "round": None, "block": None, "exercise": None, "shown": None, "side": None}
        self.intervals.append(interval | more)
        self.clock += seconds
        if self.clock > MOST_SECONDS or len(self.intervals) > MOST_INTERVALS:
            raise Refused(f"/parts/{self.part}")

    def shown(self, exercise, option):
        """The exercise one step along its chain, or itself where the chain ends."""
        if exercise is None or option == "as-shown":
            return exercise
        return self.exercises.get(exercise.get(option) or "") or exercise

    def add_work(self, work, block, named, index, round_):
        here = {"round": round_, "block": index, "exercise": block["exercise"], "shown": shown_id(named)}
        sides = block.get("sides") or (named["sides"] if named else "both")
        if sides != "split":
            self.add("work", work, **here, side=sides if sides in ("left", "right") else None)
            return
        switch = block.get("switch", 0)
        if work - switch < 2:
            raise Refused(f"/parts/{self.part}/blocks/{index}")
        order = ("left", "right") if round_ % 2 == 1 else ("right", "left")
        self.add("work", math.ceil((work - switch) / 2), **here, side=order[0])
        self.add("switch", switch, **here)
        self.add("work", math.floor((work - switch) / 2), **here, side=order[1])

    def add_block(self, part, index, round_, is_last):
        block = dict(part["blocks"][index])
        for kind in ("talk", "pause"):
            if kind in block:
                self.add(kind, block["seconds"], round=round_, block=index)
                return
        if part.get("steps"):
            block |= part["steps"][(round_ - 1) % len(part["steps"])]
        block |= block.get("in-round", {}).get(str(round_), {})
        named = self.shown(self.exercises.get(block["exercise"] or ""), block.get("option", "as-shown"))
        work, rest, sets = block["work"], block.get("rest", 0), part.get("sets", 1)
        if part.get("run") == "on-the-minute":
            split = (block.get("sides") or (named["sides"] if named else "both")) == "split"
            every, sets = part.get("every", 60), 1
            if block.get("reps", 0) != 0:
                work = seconds_of_reps(block["reps"], block.get("tempo"), named, split) or work
            work = min(every, work)
            rest = every - work
        here = {"round": round_, "block": index, "exercise": block["exercise"], "shown": shown_id(named)}
        for set_ in range(1, sets + 1):
            self.add_work(work, block, named, index, round_)
            if set_ < sets:
                self.add("set-rest", part.get("set-rest", 0), **here)
        if not is_last or part.get("keep-last-rest"):
            self.add("rest", rest, **here)

    def add_part(self, part):
        rounds, blocks = part.get("rounds", 1), part["blocks"]
        if part.get("run") == "own-pace":
            self.add("work", part["cap"], round=1)
        else:
            for round_ in range(1, rounds + 1):
                for index in range(len(blocks)):
                    self.add_block(part, index, round_, round_ == rounds and index == len(blocks) - 1)
                if round_ < rounds:
                    self.add("round-rest", part.get("round-rest", 0), round=round_)
        self.add("after", part.get("rest-after", 0))

    def expand(self):
        for self.part, part in enumerate(self.session["parts"]):
            self.add_part(part)
        return {"length": self.clock, "intervals": self.intervals}


class Maker:
    """Random sessions that use every member the expansion reads."""

    def __init__(self, rand, ids):
        self.rand = rand
        self.ids = ids

    def maybe(self, chance, target, name, value):
        if self.rand.random() < chance:
            target[name] = value

    def exercise(self):
        return self.rand.choice([None, "no-such-exercise", "own-hop"] + self.rand.choices(self.ids, k=12))

    def reps(self):
        low = self.rand.randint(1, 15)
        return self.rand.choice([low, [low, low + self.rand.randint(0, 5)]])

    def changes(self):
        rand, change = self.rand, {}
        self.maybe(0.3, change, "exercise", self.exercise())
        self.maybe(0.4, change, "work", rand.randint(8, 60))
        self.maybe(0.4, change, "rest", rand.choice([0, 0, 5, 30]))
        self.maybe(0.2, change, "reps", rand.choice([0, self.reps()]))
        self.maybe(0.3, change, "option", rand.choice(["as-shown", "easier", "harder"]))
        self.maybe(0.3, change, "sides", rand.choice(["both", "alternate", "split", "left", "right"]))
        return change

    def block(self, rounds):
        rand = self.rand
        if rand.random() < 0.15:
            return {rand.choice(["talk", "pause"]): "", "seconds": rand.randint(1, 90)}
        least = 1 if rand.random() < 0.15 else 10
        block = {"exercise": self.exercise(), "work": rand.randint(least, 60)}
        self.maybe(0.8, block, "rest", rand.randint(0, 30))
        self.maybe(0.3, block, "reps", self.reps())
        self.maybe(0.2, block, "tempo", rand.choice(["3-1-1", "2-0-1", "10-0-2"]))
        self.maybe(0.4, block, "sides", rand.choice(["both", "alternate", "split", "left", "right"]))
        self.maybe(0.3, block, "switch", rand.randint(0, 7))
        self.maybe(0.3, block, "option", rand.choice(["as-shown", "easier", "harder"]))
        if rounds > 1 and rand.random() < 0.3:
            numbers = rand.sample(range(2, rounds + 1), rand.randint(1, min(3, rounds - 1)))
            block["in-round"] = {str(n): self.changes() for n in sorted(numbers)}
        return block

    def part(self):
        rand = self.rand
        rounds = rand.choice([1, 1, 2, 3, 4, 7, 13]) if rand.random() < 0.97 else 100
        part = {"kind": rand.choice(["opening", "warm-up", "main", "cool-down", "closing"])}
        part["run"] = rand.choice(["together", "together", "stations", "own-pace", "on-the-minute"])
        part |= {"rounds": rounds, "cap": rand.randint(1, 900)}
        self.maybe(0.3, part, "sets", rand.randint(1, 4))
        self.maybe(0.4, part, "set-rest", rand.choice([0, 5, 15]))
        self.maybe(0.5, part, "round-rest", rand.choice([0, 30, 60]))
        self.maybe(0.3, part, "keep-last-rest", True)
        self.maybe(0.4, part, "rest-after", rand.choice([0, 20, 45]))
        self.maybe(0.5, part, "every", rand.choice([30, 45, 60, 90]))
        if rand.random() < 0.3:
            part["steps"] = [{"work": rand.randint(9, 50), "rest": rand.choice([0, 10, 20])}
                             for _ in range(rand.randint(1, 4))]
        part["blocks"] = [self.block(rounds) for _ in range(rand.choice([0, 1, 1, 2, 3, 5, 8]))]
        return part

    def session(self):
        own = {"id": "own-hop", "name": "Own hop", "for": ["work"], "pattern": "jump", "move": "own",
               "posture": "standing", "primary": ["calves"], "sides": "split", "impact": "high", "noise": "loud",
               "width": 1, "length": 1,
               "met": {"steady": {"value": 3, "code": "x"}, "hard": {"value": 4, "code": "y"}},
               "view": "side",
               "seconds-per-rep": 1.3, "harder": "squat-jump", "say": {"setup": "Hop."}}
        return {"format": "lapwing-session", "version": 1, "id": "i", "title": "t", "exercises": [own],
                "parts": [self.part() for _ in range(self.rand.randint(0, 4))]}


def compare(program, path, exercises):
    """What differs, or None; and whether the session was laid out."""
    command = [program, "timeline", str(path), "--json"]
    run = subprocess.run(command, capture_output=True, text=True, check=False)
    try:
        wanted = Reference(json.loads(path.read_text()), exercises).expand()
    except Refused as place:
        if run.returncode != 3 or f" {place}: " not in run.stderr:
            return f"expected it refused at {place}, found {run.returncode} {run.stderr}", False
        return None, False
    if run.returncode != 0:
        return f"refused: {run.stderr}", True
    found = json.loads(run.stdout)
    if found["length"] != sum(v["seconds"] for v in found["intervals"]):
        return "the intervals don't add up to the length", True
    for index, (one, other) in enumerate(zip(found["intervals"], wanted["intervals"])):
        if one != other or list(one) != list(other):
            return f"interval {index}: found {one}, expected {other}", True
    return (None if found == wanted else f"length {found['length']}, expected {wanted['length']}"), True


def main(source, program):
    exercises = {p.stem: json.loads(p.read_text()) for p in (source / "data/exercises").glob("*.json")}
    maker = Maker(random.Random(SEED), sorted(exercises))
    problems, laid_out = [], 0
    with tempfile.TemporaryDirectory() as folder:
        paths = sorted((source / "data/demo").glob("*.lapwing"))
        for index in range(SESSIONS):
            paths.append(pathlib.Path(folder) / f"{index}.lapwing")
            paths[-1].write_text(json.dumps(maker.session(), indent=2))
        for path in paths:
            problem, whole = compare(program, path, exercises)
            laid_out += whole
            if problem:
                problems.append(f"{path.name}: {problem}")
    if not len(paths) // 2 < laid_out < len(paths):
        problems.append(f"{laid_out} of {len(paths)} could be laid out: too few, or none was refused")
    print("1..1")
    print(f"{'not ok' if problems else 'ok'} 1 - timeline: {len(paths)} sessions, {laid_out} laid out")
    for problem in problems[:10]:
        print("#", problem)
    return bool(problems)


if __name__ == "__main__":
    sys.exit(main(pathlib.Path(sys.argv[1]), sys.argv[2]))
