"""Faults that break a schema in several places at once: each is told once, where it is.

What they broke is put right in the copy of the data, so that the schema finds nothing more of them there.
"""

from __future__ import annotations

import re

from ..findings.finding import Edit
from ..syntax.additions import before_next_key
from ..syntax.tree import Mapping, Scalar, Sequence
from ..text.places import line_start
from .doses import keys_of, told_apart
from .readings import RULE, are_sets_and_reps
from .spellings import plain_spelling

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from typing import Any

    from ..findings.finding import Finding
    from ..syntax.tree import KeyValue
    from .corrected_data import CorrectedData
    from .lookup import SchemaLookup
    from .violation import DataPath

    Group = tuple[DataPath, Mapping, dict[str, Any]]
    """A mapping: its path, its node, and its keys in the copy."""

CLOCK_KEYS = ("every", "change every", "for", "on", "off")
"""Keys that say how the rounds of a circuit go by a clock."""

_STAND_IN: dict[str, Any] = {"session": "session", "exercises": [{"exercise": "exercise", "sets": 1}]}
"""A sound session, which stands in the copy where the coach's own session is meant."""


MOST_FAULTS = 600
"""Faults of one file that are explained."""


class CauseExplainer:
    """Makes the findings for faults that break a file's schema in several places."""

    def __init__(self, data: CorrectedData, schema: SchemaLookup) -> None:
        self.data = data
        self.schema = schema

    def findings(self) -> Iterator[Finding]:
        """The findings, in the order of the text within each kind of fault."""
        yield from self._misplaced_sessions()
        found = 0
        for group in list(self._groups()):
            for explain in (
                self._cut_values,
                self._in_a_circuit,
                self._every_minute,
                self._sets_elsewhere,
                self._bare_weeks,
            ):
                for one in explain(*group):
                    yield one
                    found += 1
            if found > MOST_FAULTS:
                return

    def _groups(self) -> Iterator[Group]:
        """Every mapping where it is written; what an alias repeats is not looked at again."""
        waiting: list[tuple[DataPath, Any, Any]] = [((), self.data.root, self.data.plain)]
        while waiting:
            path, node, plain = waiting.pop()
            if node.defined is not None:
                continue
            if isinstance(node, Mapping):
                yield path, node, plain
                held = [
                    ((*path, key), one.value, plain[key])
                    for key, one in node.entries.items()
                    if not one.merged and key in plain
                ]
                waiting += reversed(held)
            elif isinstance(node, Sequence):
                waiting += reversed([((*path, at), one, plain[at]) for at, one in enumerate(node.items)])

    # A value cut by a comma

    def _cut_values(self, path: DataPath, node: Mapping, keys: dict[str, Any]) -> Iterator[Finding]:
        """In braces a comma ends a value: what follows it stands alone, a key without a colon."""
        content = node.source.content
        if content[node.start : node.start + 1] != "{":
            return
        known = self.schema.kind(path, keys).get("properties", {}) if path else {}
        entries = list(node.entries.items())
        at = 0
        while at < len(entries):
            key, first = entries[at]
            pieces = [first]
            while at + 1 < len(entries) and _is_piece(content, pieces[-1], entries[at + 1][1], known):
                at += 1
                pieces.append(entries[at][1])
            at += 1
            if len(pieces) > 1:
                yield self._cut_value(path, key, pieces, keys)
                for piece in pieces[1:]:
                    keys.pop(piece.key.text, None)
                keys[key] = content[first.value.start : pieces[-1].key.end]

    def _cut_value(self, path: DataPath, key: str, pieces: list[KeyValue], keys: dict[str, Any]) -> Finding:
        first, last = pieces[0].value, pieces[-1].key
        place = first.source.place(first.start, last.end)
        words = place.excerpt
        if re.search("[0-9],[0-9]", words) and not self._takes_any_words(path, key):
            meant = re.sub("(?<=[0-9]),(?=[0-9])", ".", words)
            counted = f"Inside braces the comma of `{words}` ends the value, and `{last.text}` stands alone."
            change, label = f"Write `{meant}`, with a point.", f"Write {meant}"
        else:
            meant = "'" + words.replace("'", "''") + "'"
            alone = ", ".join(f"`{one.key.text}`" for one in pieces[1:])
            stand = "stands" if len(pieces) == 2 else "stand"
            counted = f"Inside braces a comma ends `{key}` after `{_text(first)}`, and {alone} {stand} alone."
            change, label = "Put quotes around the whole of it.", "Put quotes around the whole of it"
            if key == "exercise" and (said := _keys_said(pieces, keys)):
                meant = ", ".join([_text(first), *said])
                change, label = f"Write `{', '.join(said)}`.", f"Write {', '.join(said)}"
        return self.data.finding(
            "comma-cuts-value", path, place, counted, change=change, edits=(Edit(place, meant, label),)
        )

    def _takes_any_words(self, path: DataPath, key: str) -> bool:
        """Whether a key takes a sentence: a comma in it may be one of a number, or one of the sentence."""
        parts = self.schema.at((*path, key))
        return bool(parts) and all(self.schema.accepts(part, "a sentence, and its end") for part in parts)

    # Work that starts every so many minutes

    def _every_minute(self, path: DataPath, node: Mapping, keys: dict[str, Any]) -> Iterator[Finding]:
        """``emom: 10 min``: a set every minute for ten minutes, which two keys say."""
        for key, entry in node.entries.items():
            found = re.fullmatch(r"(?i)e([2-9]?)mom", key)
            if found is None or key not in keys or entry.merged:
                continue
            every = f"every: {int(found[1] or 1) * 60} s"
            lasts = re.fullmatch(r"(?i)([0-9]{1,3}) ?(?:min|mins|minutes|m|')?", _text(entry.value))
            wanted = f"{every}, for: {lasts[1] if lasts else 10} min"
            edits: tuple[Edit, ...] = ()
            if lasts and "exercise" in keys and not {"every", "for"} & keys.keys():
                place = node.source.place(entry.key.start, entry.value.end)
                words = wanted.replace(", ", before_next_key(node, key))
                edits = (Edit(place, words, f"Write {wanted}"),)
            keys.clear()
            keys.update(_STAND_IN["exercises"][0])
            yield self.data.finding(
                "key-unknown",
                path,
                entry.key.place,
                f"An exercise has no `{key}`; a set that starts every so often takes `every` and `for`.",
                change=f"Write `{wanted}` on the exercise.",
                edits=edits,
            )
            return

    def _in_a_circuit(self, path: DataPath, node: Mapping, keys: dict[str, Any]) -> Iterator[Finding]:
        """``emom: 12 min`` or ``amrap: 12 min`` on a circuit: exercises in turn, or open rounds."""
        for key, entry in node.entries.items() if path[-1:] == ("circuit",) else ():
            found = re.fullmatch(r"(?i)(?:e([2-9]?)mom|amrap)", key)
            if found is None or key not in keys or entry.merged:
                continue
            lasts = re.fullmatch(r"(?i)([0-9]{1,3}) ?(?:min|mins|minutes|m|')?", _text(entry.value))
            wanted = f"for: {lasts[1] if lasts else 10} min"
            if key.lower() != "amrap":
                wanted = f"change every: {int(found[1] or 1) * 60} s, {wanted}"
            edits: tuple[Edit, ...] = ()
            if lasts and not {*CLOCK_KEYS} & keys.keys():
                words = wanted.replace(", ", before_next_key(node, key))
                place = node.source.place(entry.key.start, entry.value.end)
                edits = (Edit(place, words, f"Write {wanted}"),)
            del keys[key]
            keys.setdefault("rounds", 1)
            yield self.data.finding(
                "key-unknown",
                path,
                entry.key.place,
                f"A circuit has no `{key}`; its clock takes `every`, `change every` and `for`.",
                change=f"Write `{wanted}`.",
                edits=edits,
            )
            return

    # Sets and repetitions in one value

    def _sets_elsewhere(self, path: DataPath, node: Mapping, keys: dict[str, Any]) -> Iterator[Finding]:
        """Sets that stand with the repetitions, ``reps: 3x5``, or in the name: that is what is told, and not
        that they are missing.
        """
        if "exercise" in keys and "sets" not in keys and not self._has_sets_of_the_whole(path):
            in_reps = any(are_sets_and_reps(one) for one in _words_in(keys.get("reps")))
            if in_reps or any(told_apart(one)[1] for one in _words_in(keys["exercise"])):
                keys["sets"] = 1
        return iter(())

    def _has_sets_of_the_whole(self, path: DataPath) -> bool:
        """Whether an exercise takes its sets from a circuit, a complex, or the rounds of a superset."""
        if len(path) < 3 or path[-2] not in ("superset", "complex", "exercises"):
            return False
        return path[-2] == "complex" or path[-3] == "circuit" or "rounds" in self.data.value(path[:-2])

    # Weeks of a session or line

    def _bare_weeks(self, path: DataPath, node: Mapping, keys: dict[str, Any]) -> Iterator[Finding]:
        """``weeks: 6`` on a session or line: the one week, or as many weeks."""
        entry = node.entries.get("weeks")
        if entry is None or entry.merged or "weeks" not in keys or not {"session", "exercise"} & keys.keys():
            return
        words = _text(entry.value)
        if not plain_spelling("weekNumbers", words) or "in weeks" in keys:
            return
        ways = [words] if not words.isdecimal() or words == "1" else [words, f"1-{words}"]
        del keys["weeks"]
        place = node.source.place(entry.key.start, entry.value.end)
        said = " or ".join(f"`in weeks: {one}`" for one in ways)
        two = f" has two readings: week {words} alone, or the first {words} weeks." if len(ways) > 1 else ""
        yield self.data.finding(
            RULE if two else "key-unknown",
            path,
            place if two else entry.key.place,
            f"`weeks: {words}`{two}" if two else "The weeks of a session or line stand under `in weeks`.",
            change=f"Write {said}.",
            edits=tuple(Edit(place, f"in weeks: {one}", f"Write in weeks: {one}") for one in ways),
        )

    # Sessions in the wrong column

    def _misplaced_sessions(self) -> Iterator[Finding]:
        """Sessions indented too far, or too little, so that they belong to something else."""
        root, plain = self.data.root, self.data.plain
        blocks = plain.get("blocks")
        if "sessions" in plain and isinstance(blocks, list) and blocks and isinstance(blocks[-1], dict):
            entry = root.entries["sessions"]
            last = root.entries["blocks"].value
            if "sessions" not in blocks[-1] and entry.key.start > last.start:
                name = blocks[-1].get("block") or blocks[-1].get("name", "the last one")
                del plain["sessions"]
                blocks[-1]["sessions"] = [_STAND_IN]
                block = last.items[-1] if isinstance(last, Sequence) else last
                yield self._misplaced(
                    entry,
                    _column(next(iter(block.entries.values()))) if isinstance(block, Mapping) else 0,
                    f"`sessions` stands at the left edge, outside the block {name} above it, which has none.",
                    "Indent it, and all that belongs to it, as far as the other keys of the block.",
                )
        elif not {"sessions", "blocks"} & plain.keys():
            for owner, entry in root.entries.items():
                held = entry.value.entries.get("sessions") if isinstance(entry.value, Mapping) else None
                if held is not None and entry.value.defined is None and isinstance(plain.get(owner), dict):
                    plain[owner].pop("sessions", None)
                    plain["sessions"] = [_STAND_IN]
                    nothing = ", where nothing is read" if owner == "shared" else ""
                    yield self._misplaced(
                        held,
                        0,
                        f"`sessions` stands under `{owner}`{nothing}, and the programme has none.",
                        "Move it, and all that belongs to it, to the left edge.",
                    )
                    return

    def _misplaced(self, entry: KeyValue, column: int, counted: str, change: str) -> Finding:
        """A key that belongs in another column, with all that belongs to it."""
        edits = tuple(_shifted(entry, column - _column(entry)))
        return self.data.finding("key-misplaced", (), entry.key.place, counted, change=change, edits=edits)


def _column(entry: KeyValue) -> int:
    content, start = entry.key.place.text.content, entry.key.place.start
    return start - line_start(content, start)


def _shifted(entry: KeyValue, by: int) -> Iterator[Edit]:
    """The whole lines of a key and its value so many columns further in, or out where it is below 0."""
    text, content = entry.key.place.text, entry.key.place.text.content
    start = line_start(content, entry.key.place.start)
    if content[start : entry.key.place.start].strip() or not by:
        return
    lines = content[start : entry.value.end].splitlines(keepends=True)
    if any(line.strip() and len(line) - len(line.lstrip(" ")) < -by for line in lines):
        return
    shifted = [" " * by + line if by > 0 and line.strip() else line[max(-by, 0) :] for line in lines]
    words = "".join(shifted)
    label = (
        "move it in, with all that belongs to it" if by > 0 else "move it out, with all that belongs to it"
    )
    yield Edit(text.place(start, entry.value.end), words, label, certain=False)


def _keys_said(pieces: list[KeyValue], keys: dict[str, Any]) -> list[str]:
    """The keys that the pieces behind the first stand for, as they are written; none where one is there."""
    found = keys_of(", ".join(piece.key.text for piece in pieces[1:]))
    return [] if found.keys() & keys.keys() else [f"{key}: {value}" for key, value in found.items()]


def _words_in(value: object) -> list[str]:
    """The words of a value, or of its values by week."""
    several = value.values() if isinstance(value, dict) else [value]
    return [one for one in several if isinstance(one, str)]


def _text(node: object) -> str:
    return node.text if isinstance(node, Scalar) else ""


def _is_piece(content: str, before: KeyValue, entry: KeyValue, known: dict[str, Any]) -> bool:
    """Whether an entry is the rest of the value before it: it has no colon, and only a comma parts them."""
    value, key = entry.value, entry.key
    if value.plain is not None or value.end > key.end or entry.merged or key.style or key.text in known:
        return False
    end = before.value.end if before.value.plain is not None else before.key.end
    is_text = isinstance(before.value, Scalar) and not before.value.style
    return is_text and content[end : key.start].strip() == "," and content[key.end : key.end + 1] != ":"
