#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Python's json module as a second opinion on what is JSON and what it says.

  rows FOLDER   every text of the corpus: does the module accept it, as its row says?
  pairs FILE    lines of two texts in base64, what was read and what was written from it (or "refused"): with
                our limits on top, does the module accept the same texts, and do both say the same, in the same
                order?
"""
import base64
import json
import math
import pathlib
import sys

DEPTH = 64


class Pairs(list):
    """The members of an object in their order, told apart from an array."""


def plain(text):
    if "\0" in text or any("\ud800" <= c <= "\udfff" for c in text):
        raise ValueError("half of a pair, or NUL")
    return text


def whole(digits):
    number = int(digits) if len(digits) < 30 else 1 << 64
    if not -(1 << 63) <= number < 1 << 63:
        raise ValueError("beyond 64 bits")
    return number


def fraction(digits):
    number = float(digits)
    if math.isinf(number):
        raise ValueError("beyond a double")
    return number


def constant(word):
    raise ValueError(word)


def members(pairs):
    names = [plain(name) for name, _ in pairs]
    if len(set(names)) != len(names):
        raise ValueError("a name used twice")
    return Pairs(pairs)


def walk(value, depth=1):
    """Holds the texts and the depth, which have no hook."""
    if isinstance(value, str):
        plain(value)
    if isinstance(value, list):
        if depth > DEPTH:
            raise ValueError("too deep")
        for item in value:
            walk(item[1] if isinstance(value, Pairs) else item, depth + 1)


def strict(data):
    """The value of @data within our limits; ValueError (or RecursionError) where it isn't."""
    value = json.loads(data.decode("utf-8"), parse_int=whole, parse_float=fraction, parse_constant=constant,
                       object_pairs_hook=members)
    walk(value)
    return value


def tell(value):
    """A value as text: 40, 40.0 and 4e1 are one number, true is none."""
    if isinstance(value, Pairs):
        return "{" + ",".join(json.dumps(name) + ":" + tell(item) for name, item in value) + "}"
    if isinstance(value, list):
        return "[" + ",".join(tell(item) for item in value) + "]"
    if isinstance(value, float):
        return str(int(value)) if value == int(value) and abs(value) < 1e15 else value.hex()
    return json.dumps(value)


def accepts(data):
    try:
        json.loads(data.decode("utf-8"))
    except (ValueError, RecursionError):
        return False
    return True


def check_rows(folder):
    for line in (folder / "rows.tsv").read_text().splitlines():
        if not line.startswith("#"):
            verdict, name, _, python = line.split("\t")[:4]
            wanted = verdict == "good" or python == "takes"
            if accepts((folder / verdict / f"{name}.json").read_bytes()) != wanted:
                yield f"{name}: Python says {'no' if wanted else 'yes'}"


def check_pairs(path):
    for line in path.read_text().splitlines():
        text, written = line.split("\t")
        data = base64.b64decode(text)
        try:
            value = strict(data)
        except (ValueError, RecursionError) as problem:
            if written != "refused":
                yield f"{data!r}: Python refuses it, {problem}"
            continue
        if written == "refused":
            yield f"{data!r}: Python reads it"
        elif tell(strict(base64.b64decode(written))) != tell(value):
            yield f"{data!r}: written as {base64.b64decode(written)!r}"


if __name__ == "__main__":
    checks = {"rows": check_rows, "pairs": check_pairs}
    problems = list(checks[sys.argv[1]](pathlib.Path(sys.argv[2])))
    sys.exit("\n".join(problems[:20]) if problems else 0)
