"""What happens to a text at the keyboard: edits by chance, and how a client tells a server of them.

An edit is a function of the text, of texts it was before and of a random source: the same source, the same edit.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from random import Random
from typing import Any

Edit = Callable[[str, Random, Sequence[str]], str]

_LINE_END = re.compile(r"\r\n|\r|\n")

EXERCISES = (
    "back squat",
    "front squat",
    "Romanian deadlift",
    "seated leg curl",
    "Nordic curl",
    "bench press",
    "pull-up",
    "lateral raise",
    "plank",
    "standing calf raise",
    "boathouse hinge",
    "pier curl",
    "back sqat",
    "RDL",
    "früher Vogel 🐦",
)

VALUES = {
    "exercise": EXERCISES,
    "swap": EXERCISES,
    "sets": ("3", "12", "40", "{1: 3, 2: 4}", "{1-2: 3, 3: 2}", "2-3", "three", ""),
    "reps": ("5", "8-12", "12/10/8", "2+2", "amrap", "8 to 10", "3–5", "30"),
    "load": (
        "80 %",
        "{1: 72.5 %, 2: 75 %}",
        "100 kg",
        "2 x 24 kg",
        "bodyweight",
        "10RM",
        "90 % of top set",
        "180 %",
    ),
    "rir": ("0", "2", "2-3", "5", "half"),
    "rpe": ("7", "8.5", "10", "11"),
    "rest": ("2 min", "90 s", "3-4 min", "90", "5 s"),
    "day": ("monday", "friday", "[tuesday, saturday]", "3", "wensday"),
    "weeks": ("1", "2", "6", "0", "52"),
    "goal": ("hypertrophy", "strength", "power", "general health", "hypertrofy", "{of: two}"),
    "phase": ("build", "taper", "in-season", "test"),
    "focus": ("[legs]", "[hamstrings, chest]", "[ears]", "legs"),
    "priority": ("[hamstrings]", "[back squat]"),
    "starts": ("2026-01-05", "2026-11-30", "2027-02-30", "soon"),
    "athlete": (
        "ana.athlete.yaml",
        "bo.athlete.yaml",
        "nobody.athlete.yaml",
        "{name: Ida, level: novice}",
        "../outside.athlete.yaml",
    ),
    "session": ("A", "Lower", "Übungstag 💪", "''"),
    "level": ("novice", "advanced", "élite"),
    "note": ("früh 🏋️‍♀️", "a: b", "'it''s'", "y̆ e̋ combined", "tab\there"),
    "tempo": ("3-1-X-0", "2-0-1"),
    "deload": ("true", "false", "no"),
}
"""What may be written behind a key."""

PIECES = (
    *"0123456789 .:,-#&*!|>'\"%@`?{}[]\t\n\r",
    "\r\n",
    "\u2028",
    "\x85",
    "\x0b",
    "\ufeff",
    "é",
    "e\u0301",
    "💪",
    "🏋️‍♀️",
    "日本",
    "\x00",
    "\x07",
    "~",
    "<<: ",
    "- ",
    ": ",
    " #",
    "&x ",
    "*x",
    "*fives",
    "---\n",
    "...\n",
    "%YAML 1.1\n",
    "|\n",
    "{sets: 3}",
    "\n\n\n",
)
"""What may be typed anywhere."""

WAIVERS = (
    "# spotline: waive exercise-unknown because that is what we call it",
    "# spotline: waive weekly-sets-under-floor until 2030-01-01 because she rows 🚣",
    "# spotline: waive region-untrained until 2020-01-01 because it is over",
    "# spotline: waive no-such-rule because",
    "# spotline: waive load-and-effort-missing",
    "# only a comment, übrigens",
)

ADJUSTMENTS = (
    "- {exercise: back squat, swap: front squat}",
    "- {exercise: bench press, sets: {1-2: 2, 3: 1}}",
    "- {exercise: plank, leave out: true}",
    "- {exercise: nothing of the kind, load: 40 kg}",
    "- {exercise: Romanian deadlift, load: 90 %, note: für die Füße}",
)


def _lines(text: str) -> list[str]:
    """The lines with their ends, as editors see them."""
    found = [one.end() for one in _LINE_END.finditer(text)]
    return [text[start:end] for start, end in zip([0, *found], [*found, len(text)], strict=True)]


def _offset(text: str, chance: Random) -> int:
    return chance.randrange(len(text) + 1)


def number(text: str, chance: Random, before: Sequence[str]) -> str:
    """Another number."""
    numbers = list(re.finditer(r"\d+", text))
    if not numbers:
        return text
    one = chance.choice(numbers)
    return text[: one.start()] + str(chance.choice((1, 2, 3, 4, 5, 6, 8, 10, 12, 20, 40))) + text[one.end() :]


def value(text: str, chance: Random, before: Sequence[str]) -> str:
    """Another value behind a key, of those that belong there for the most part."""
    found = list(re.finditer(r"([\w-]+(?: [\w-]+)?): ([^,{}\[\]\r\n]*)", text))
    if not found:
        return text
    one = chance.choice(found)
    known = VALUES.get(one[1]) or chance.choice(list(VALUES.values()))
    return text[: one.start(2)] + chance.choice(known) + text[one.end(2) :]


def head(text: str, chance: Random, before: Sequence[str]) -> str:
    """Another value behind a key at the top, or that key with a value where it is not there."""
    key = chance.choice(("goal", "focus", "priority", "starts", "weeks", "athlete", "phase", "note"))
    words = f"{key}: {chance.choice(VALUES[key])}"
    new, number = re.subn(rf"(?m)^{key}:[^\r\n]*", lambda _: words, text, count=1)
    lines = _lines(text)
    return new if number else "".join([*lines[:1], words, "\n", *lines[1:]])


def rename(text: str, chance: Random, before: Sequence[str]) -> str:
    """Another name for an exercise, everywhere or once."""
    found = re.findall(r"exercise: ([^,}\r\n]+)", text)
    if not found:
        return text
    return text.replace(chance.choice(found), chance.choice(EXERCISES), chance.choice((1, -1)))


def line_gone(text: str, chance: Random, before: Sequence[str]) -> str:
    """Without some lines."""
    lines = _lines(text)
    at = chance.randrange(len(lines))
    del lines[at : at + chance.choice((1, 1, 1, 2, 5))]
    return "".join(lines)


def line_again(text: str, chance: Random, before: Sequence[str]) -> str:
    """Lines once more, there or elsewhere."""
    lines = _lines(text)
    start = chance.randrange(len(lines))
    taken = lines[start : start + chance.choice((1, 1, 2, 6, 12))]
    at = chance.choice((start, chance.randrange(len(lines) + 1)))
    return "".join([*lines[:at], *taken, *lines[at:]])


def _sessions(lines: list[str]) -> list[tuple[int, int]]:
    """Where sessions begin and end, by their lines."""
    starts = [number for number, line in enumerate(lines) if re.match(r"\s*- session:", line)]
    found = []
    for start in starts:
        indent = len(lines[start]) - len(lines[start].lstrip(" "))
        end = start + 1
        while end < len(lines) and (
            not lines[end].strip() or len(lines[end]) - len(lines[end].lstrip(" ")) > indent
        ):
            end += 1
        found.append((start, end))
    return found


def session_moved(text: str, chance: Random, before: Sequence[str]) -> str:
    """A session moved to, or once more at, the beginning of another one."""
    lines = _lines(text)
    sessions = _sessions(lines)
    if not sessions:
        return text
    start, end = chance.choice(sessions)
    to, _ = chance.choice(sessions)
    taken = lines[start:end]
    shift = len(lines[to]) - len(lines[to].lstrip(" ")) - (len(taken[0]) - len(taken[0].lstrip(" ")))
    moved = [" " * shift + line if shift > 0 else line[-shift:] if line.strip() else line for line in taken]
    if chance.random() < 0.5:
        return "".join([*lines[:to], *moved, *lines[to:]])
    left = [*lines[:start], *lines[end:]]
    to = to if to <= start else to - (end - start)
    return "".join([*left[:to], *moved, *left[to:]])


def typed(text: str, chance: Random, before: Sequence[str]) -> str:
    """Something typed anywhere."""
    at = _offset(text, chance)
    return text[:at] + chance.choice(PIECES) + text[at:]


def deleted(text: str, chance: Random, before: Sequence[str]) -> str:
    """A few characters deleted."""
    at = _offset(text, chance)
    return text[:at] + text[at + chance.choice((1, 1, 2, 5)) :]


def comment(text: str, chance: Random, before: Sequence[str]) -> str:
    """A comment, a waiver for the most part, behind a line or before it."""
    lines = _lines(text)
    at = chance.randrange(len(lines))
    line = lines[at]
    words = chance.choice(WAIVERS)
    bare = line.rstrip("\r\n")
    if chance.random() < 0.5:
        lines[at] = f"{bare}  {words}{line[len(bare) :]}"
    else:
        lines[at] = f"{' ' * (len(line) - len(line.lstrip(' ')))}{words}\n{line}"
    return "".join(lines)


def comment_gone(text: str, chance: Random, before: Sequence[str]) -> str:
    """Without one of its comments."""
    found = list(re.finditer(r"[ \t]*#[^\r\n]*", text))
    if not found:
        return text
    one = chance.choice(found)
    return text[: one.start()] + text[one.end() :]


def listed_waiver(text: str, chance: Random, before: Sequence[str]) -> str:
    """A list of waivers at the end, or none any more."""
    if "\nwaivers:" in text:
        return text[: text.index("\nwaivers:") + 1]
    rule = chance.choice(("exercise-unknown", "region-untrained", "weekly-sets-under-floor", "nothing"))
    return f"{text}\nwaivers:\n  - {{rule: {rule}, because: we know, by: Ana, until: 2031-01-01}}\n"


def anchor(text: str, chance: Random, before: Sequence[str]) -> str:
    """An anchor for a line of a session, and that line once more by its name elsewhere."""
    items = list(re.finditer(r"(?m)^( *)- (\{exercise: [^\r\n]*\})[ \t]*$", text))
    if not items:
        return text
    one, other = chance.choice(items), chance.choice(items)
    name = chance.choice("abc")
    again = f"{other[0]}\n{other[1]}- *{name}"
    if chance.random() < 0.3:
        again = f"{other[0]}\n{other[1]}- {{exercise: {chance.choice(EXERCISES)}, <<: *{name}}}"
    new = text[: other.start()] + again + text[other.end() :]
    return new.replace(f"- {one[2]}", f"- &{name} {one[2]}", 1)


def adjusted(text: str, chance: Random, before: Sequence[str]) -> str:
    """One more adjustment for an athlete, or one less."""
    found = list(re.finditer(r"(?m)^( *)adjust:[ \t]*$", text))
    if not found:
        squad = f"athletes:\n  - ana.athlete.yaml\n  - athlete: bo.athlete.yaml\n    adjust:\n      {ADJUSTMENTS[0]}"
        return re.sub(r"(?m)^athlete:[^\r\n]*", squad, text, count=1)
    one = chance.choice(found)
    if chance.random() < 0.3:
        rest = re.sub(r"\A\r?\n *- [^\r\n]*", "", text[one.end() :])
        return text[: one.end()] + rest
    return f"{text[: one.end()]}\n{one[1]}  {chance.choice(ADJUSTMENTS)}{text[one.end() :]}"


def line_ends(text: str, chance: Random, before: Sequence[str]) -> str:
    """Other line ends, everywhere or at one line."""
    end = chance.choice(("\n", "\r\n", "\r"))
    if chance.random() < 0.5:
        return _LINE_END.sub(end, text)
    found = list(_LINE_END.finditer(text))
    if not found:
        return text
    one = chance.choice(found)
    return text[: one.start()] + end + text[one.end() :]


def undone(text: str, chance: Random, before: Sequence[str]) -> str:
    """A text as it was before."""
    return chance.choice(before[-8:]) if before else text


def cleared(text: str, chance: Random, before: Sequence[str]) -> str:
    """Nothing left, or only the byte order mark."""
    return chance.choice(("", "", "\ufeff", "\n", "# all gone\n"))


def marked(text: str, chance: Random, before: Sequence[str]) -> str:
    """With a byte order mark, or without."""
    return text.removeprefix("\ufeff") if text.startswith("\ufeff") else "\ufeff" + text


EDITS: tuple[tuple[int, Edit], ...] = (
    (20, number),
    (16, value),
    (4, head),
    (5, rename),
    (5, line_gone),
    (5, line_again),
    (6, session_moved),
    (7, typed),
    (4, deleted),
    (6, comment),
    (3, comment_gone),
    (1, listed_waiver),
    (3, anchor),
    (4, adjusted),
    (2, line_ends),
    (9, undone),
    (1, cleared),
    (1, marked),
)
"""Edits and how often they are made."""


def edited(text: str, chance: Random, before: Sequence[str]) -> str:
    """A text after one edit."""
    (edit,) = chance.choices([edit for _, edit in EDITS], [often for often, _ in EDITS])
    return edit(text, chance, before)


# As a client tells it


def units(words: str, encoding: str) -> int:
    """How many units of an encoding some words take."""
    codec, size = {"utf-8": ("utf-8", 1), "utf-16": ("utf-16-le", 2), "utf-32": ("utf-32-le", 4)}[encoding]
    return len(words.encode(codec)) // size


def position(text: str, at: int, encoding: str) -> dict[str, int]:
    """Line and character of an offset that does not lie between CR and LF."""
    ends = [one.end() for one in _LINE_END.finditer(text) if one.end() <= at]
    return {"line": len(ends), "character": units(text[ends[-1] if ends else 0 : at], encoding)}


def lines_in_units(text: str, encoding: str) -> list[int]:
    """How many units each line has, its end not counted."""
    return [units(line.rstrip("\r\n"), encoding) for line in _lines(text)]


def _shared(one: str, other: str) -> int:
    """How many characters two texts share at their beginning."""
    shared, most = 0, min(len(one), len(other))
    step = most
    while step:
        while one[shared : shared + step] == other[shared : shared + step] and shared + step <= most:
            shared += step
        step //= 2
    return shared


def change(old: str, new: str, encoding: str) -> dict[str, Any]:
    """The change that makes the new text of the old one, as small as it can be."""
    head = _shared(old, new)
    most = min(len(old), len(new)) - head
    tail = min(most, _shared(old[::-1], new[::-1]))
    start, end = head, len(old) - tail
    # No position lies between CR and LF.
    start -= old[start - 1 : start] == "\r" and old[start : start + 1] == "\n"
    end += end > start and old[end - 1 : end] == "\r" and old[end : end + 1] == "\n"
    words = new[start : len(new) - (len(old) - end)]
    return {
        "range": {"start": position(old, start, encoding), "end": position(old, end, encoding)},
        "text": words,
    }
