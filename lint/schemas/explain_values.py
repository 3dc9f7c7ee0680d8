"""Findings for values, and for keys that name weeks: empty, unknown, out of range, not readable."""

from __future__ import annotations

import re

from ..findings.finding import Edit
from ..syntax.additions import before_next_key
from ..syntax.enclosing import way_to
from ..syntax.numbers import slips, with_number
from ..syntax.rewrites import key_out, one_of
from ..syntax.scalars import OutOfRangeError, core_value
from ..syntax.tree import Mapping, Scalar
from ..wording.words import listed, with_article
from .explain_shapes import ShapeExplainer, called, examples_of
from .readings import RULE, deload_ways, in_words, ways
from .slips import effort, nearest, repairs, with_units
from .spellings import plain_spelling
from .violation import last_key

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from typing import Any

    from ..findings.finding import Finding
    from ..text.places import Place
    from .corrected_data import CorrectedData, NodeAtPath
    from .lookup import SchemaLookup
    from .readings import Way
    from .violation import DataPath, Schema, Violation


IN_WORDS = frozenset(
    {
        *("load", "tempo", "rest", "rest after", "cluster rest", "distance", "hold", "velocity"),
        *("rir", "rpe", "warm-up sets", "add", "every", "up to", "then"),
    }
)
"""Keys of which a note beside them says what no quantity can."""

_DATE = "the day as year-month-day, like `2026-01-05`"
_COLON = re.compile(r"\s*:")

MOST_TRIED = 20_000
"""Values of a file up to which it is tried whether a key may be taken out, at the price of two checks."""


class ValueExplainer:
    """Makes the findings for the values of one file."""

    def __init__(self, data: CorrectedData, schema: SchemaLookup) -> None:
        self.data = data
        self.schema = schema
        self._shapes = ShapeExplainer(data, schema)

    def wrong_name(self, violation: Violation) -> Finding:
        """A key that should be a name is empty, or one that should be weeks cannot be read."""
        path = violation.path
        key = str(violation.value)
        place = self.data.node((*path, key)).entry_place
        if violation.keyword == "minLength":
            return self.data.finding(
                "key-empty", path, place, "The name before the colon is empty.", change="Write it."
            )
        return self._unreadable(violation, place, key, "weeks")

    def wrong_value(self, violation: Violation) -> Iterator[Finding]:
        """The finding for a value that breaks the schema; none where reading has reported it already."""
        at = self.data.node(violation.path)
        if at.reported:
            return
        value = violation.value
        asked = self._ways(violation.path, at) if isinstance(at.node, Scalar) else []
        if len(asked) > 1:
            yield self._asked(violation, at, asked)
        elif asked:
            yield self._meant(violation, at, asked[0])
        elif value in (None, "", []) or violation.keyword in ("minLength", "minProperties"):
            yield self._empty(violation, at)
        elif not isinstance(at.node, Scalar) and violation.keyword in ("enum", "pattern", "type"):
            yield self._shapes.wrong(violation, at)
        elif violation.keyword == "enum":
            yield self._unknown_word(violation, at)
        elif violation.keyword == "pattern":
            yield self._unreadable(violation, at.place, at.words)
        elif violation.keyword in ("minimum", "maximum", "multipleOf"):
            yield self._out_of_range(violation, at)
        elif violation.keyword == "minItems":
            yield self._too_few(violation, at)
        elif isinstance(at.node, Scalar) and "examples" in violation.part:
            yield self._unreadable(violation, at.place, at.words)
        else:
            yield self._shapes.wrong(violation, at)

    def _ways(self, path: DataPath, at: NodeAtPath) -> list[Way]:
        """The ways to read a single value."""
        if not path or path[-1] != "deload":
            return ways(at.words, _quantity_key(path))
        return deload_ways(at.words, self._weeks(self.data.value(path[:-1])))

    def _weeks(self, keys: dict[str, Any]) -> int:
        """How many weeks a block, or a programme with its blocks, runs."""
        blocks = keys.get("blocks")
        parts = [one for one in blocks if isinstance(one, dict)] if isinstance(blocks, list) else [keys]
        return sum(one["weeks"] for one in parts if isinstance(one.get("weeks"), int))

    def _asked(self, violation: Violation, at: NodeAtPath, asked: list[Way]) -> Finding:
        """A value of two readings, with an edit for each."""
        edits = [edit for way in asked if (edit := self._edit_for(violation.path, at, way)) is not None]
        return self.data.finding(
            RULE,
            violation.path,
            at.place,
            in_words(at.words, asked),
            change=f"Write {', or '.join(way.written for way in asked)}.",
            edits=tuple({edit.words: edit for edit in edits}.values()),
        )

    def _meant(self, violation: Violation, at: NodeAtPath, way: Way) -> Finding:
        """A value that is not written as it must be, but has one reading only."""
        edit = self._edit_for(violation.path, at, way)
        return self.data.finding(
            "value-unreadable",
            violation.path,
            at.place,
            f"`{at.words}` is not {with_article(violation.title)}.",
            change=f"Write {way.written}.",
            edits=() if edit is None else (edit,),
        )

    def _edit_for(self, path: DataPath, at: NodeAtPath, way: Way) -> Edit | None:
        """The edit that writes a value as it is meant; None where the keys for it cannot stand here."""
        apart = self._apart(path, at, way)
        if apart is not None:
            return apart
        if not way.keys:
            return Edit(at.place, way.words, f"Write {way.words}")
        group, key = self.data.node(path[:-1]).node, str(path[-1])
        added = way.keys.partition(":")[0]
        if not isinstance(group, Mapping) or key not in group.entries or added in group.entries:
            return None
        if at.node.defined is not None or group.entries[key].merged:
            return None
        if way.words:
            words = f"{way.words}{before_next_key(group, key)}{way.keys}"
            return Edit(at.place, words, f"Write {way.words} and {way.keys}")
        start = group.entries[key].key.start
        return Edit(group.source.place(start, at.node.end), way.keys, f"Write {way.keys}")

    def _apart(self, path: DataPath, at: NodeAtPath, way: Way) -> Edit | None:
        """``3 sets of 5`` in both its keys, where the other one stands beside it with a number of its own."""
        pair = re.fullmatch("([0-9]+) sets of ([0-9]+)", way.words)
        group, key = self.data.node(path[:-1]).node, str(path[-1])
        other = {"sets": "reps", "reps": "sets"}.get(key, "")
        beside = group.entries.get(other) if isinstance(group, Mapping) else None
        if pair is None or beside is None or beside.merged or not isinstance(beside.value, Scalar):
            return None
        own, their = pair.groups() if key == "sets" else pair.groups()[::-1]
        change = Edit(beside.value.place, their, f"Write {other}: {their}")
        further = (change,) if beside.value.text != their else ()
        return Edit(at.place, own, f"Write {way.words}", further=further)

    def _empty(self, violation: Violation, at: NodeAtPath) -> Finding:
        path = violation.path
        return self.data.finding(
            "value-missing",
            path,
            at.place,
            f"{called(path)} is empty.",
            change=f"Write it{self.schema.example(path)}, or take it out.",
            edits=lambda: self._without(path),
        )

    def _without(self, path: DataPath) -> Iterator[Edit]:
        """The example written behind the key at a path; or the key taken out, where it is not needed."""
        key, group = path[-1], self.data.node(path[:-1]).node
        if not isinstance(key, str) or not isinstance(group, Mapping) or group.defined is not None:
            return
        entry = group.entries[self.data.as_written(path[:-1], key)]
        for example in self.schema.examples(path)[:1]:
            behind = _COLON.match(group.source.content, entry.key.end)  # `{back squat}` has none
            end = max(behind.end() if behind else entry.key.end, entry.value.end)
            yield from one_of(group.source.place(entry.key.start, end), [f"{key}: {example}"])
        if not self._is_needed(path):
            yield from key_out(group, self.data.as_written(path[:-1], key))

    def _is_needed(self, path: DataPath) -> bool:
        """Whether the file would break more without the key at a path than it does elsewhere.

        In a large file that is not tried.
        """
        whole = self.data.value(())
        if self.data.root.size > MOST_TRIED:
            return True
        return self.schema.broken_in(_without(whole, path)) > self.schema.broken_in(whole, path)

    def _unknown_word(self, violation: Violation, at: NodeAtPath) -> Finding:
        known: list[str] = violation.wants
        meant = nearest(at.words, known) if at.words else None
        among = [meant] if meant else _known_among(at.words, known)
        return self.data.finding(
            "value-unknown",
            violation.path,
            at.place,
            f"`{at.words}` is not {with_article(violation.title)}.",
            change=f"Write {listed([f'`{one}`' for one in among or known], 'or')}.",
            edits=(Edit(at.place, meant, f"Write {meant}"),)
            if meant
            else lambda: _each(at.place, among or known),
        )

    def _out_of_range(self, violation: Violation, at: NodeAtPath) -> Finding:
        limits = violation.part
        number = "whole or half number" if "multipleOf" in limits else "number"
        return self.data.finding(
            "value-out-of-range",
            violation.path,
            at.place,
            f"{called(violation.path)} is {at.words}.",
            change=f"Write a {number} from {limits['minimum']} to {limits['maximum']}.",
            edits=lambda: _in_range(at.place, limits, violation.value),
        )

    def _too_few(self, violation: Violation, at: NodeAtPath) -> Finding:
        least = f"it takes at least {violation.wants}"
        return self.data.finding(
            "value-out-of-range",
            violation.path,
            at.place,
            f"`{last_key(violation.path)}` holds {len(violation.value)}; {least}.",
            change="Add what is missing, or write what is there as a line of its own.",
        )

    def _unreadable(self, violation: Violation, place: Place, words: str, key: str = "") -> Finding:
        """Words that cannot be read as the quantity that they should be.

        ``key`` is given where the words are a key themselves: "weeks".
        """

        def readable(text: str) -> bool:
            return bool(text) and self._reads(violation.part, text, bool(key))

        change, meant = _replacement(words, key or _quantity_key(violation.path), readable)
        offered = [Edit(place, one, f"Write {one}") for one in meant]
        return self.data.finding(
            "value-unreadable",
            violation.path,
            place,
            f"`{words}` is not {with_article(violation.title)}.",
            change=change or self._form(violation, words),
            edits=tuple(offered)
            or (lambda: _effort_apart(place, words, key or _quantity_key(violation.path))),
        )

    def _form(self, violation: Violation, words: str) -> str:
        """The form of a quantity that cannot be read, and where else the words may stand."""
        path, key = violation.path, _quantity_key(violation.path)
        if violation.title == "date":
            month = re.fullmatch("(20[0-9]{2}-(?:0[1-9]|1[0-2]))(?:-00)?", words)
            return f"Write its day, too: `{month[1]}-01`." if month else f"Write {_DATE}."
        if violation.title == "mass" and {"equipment", "places"} & {*path}:
            return "Write a weight, like `16 kg`; sizes, colours and grades stand in a `note`."
        reps = re.fullmatch("[xX]? ?([1-9][0-9]?) ?(?:[xX]|reps?|repetitions)?", words)
        if reps and "best lifts" in path and not words.isdecimal():
            return f"Write it with its load: `{{load: bodyweight, reps: {reps[1]}}}`."
        like = examples_of(violation.part)
        form = f"Write it like {listed(like, 'or')}" if like else "Write it anew"
        notes = any("note" in one["properties"] for one in self.schema.kinds(path[:-1]))
        return f"{form}, or say it in a `note`." if notes and key in IN_WORDS else f"{form}."

    def _reads(self, part: Schema, text: str, is_key: bool) -> bool:
        """Whether words without quotes would be valid for a part of the schema; keys are always text."""
        try:
            value: Any = text if is_key else core_value(text)
        except OutOfRangeError:
            return False
        return self.schema.accepts(part, value)


def _in_range(place: Place, limits: Schema, number: float) -> Iterator[Edit]:
    """What a number could have been, and the nearest that a key takes."""
    low, high, step = limits["minimum"], limits["maximum"], limits.get("multipleOf")
    if step and low <= number <= high:
        return with_number(place, number, [number // step * step, number // step * step + step])
    return slips(place, low, high, bound=True)


MOST_WORDS = 7
"""Words of a list that are offered one by one, at most."""


def _known_among(words: str, known: list[str]) -> list[str]:
    """The words among others that are known: ``Tue evening``, ``sat or sun``."""
    said = [plain_spelling("weekday", one) or one for one in words.lower().split()]
    return [one for one in said if one in known] if len(said) > 1 else []


def _each(place: Place, words: list[str]) -> Iterator[Edit]:
    """Each word of a short list."""
    return one_of(place, words if len(words) <= MOST_WORDS else ())


def _effort_apart(place: Place, words: str, key: str) -> Iterator[Edit]:
    """An effort that stands under another key: under its own in that place, or taken out where it is said."""
    stated, steps = effort(words), way_to(place)
    if stated is None or stated[0] == key or not steps or not isinstance(steps[-1].group, Mapping):
        return
    group = steps[-1].group
    if stated[0] in group.entries:
        yield from key_out(group, str(steps[-1].key))
    elif steps[-1].key == key:
        whole = group.source.place(group.entries[key].key.start, group.entries[key].value.end)
        yield from one_of(whole, [f"{stated[0]}: {stated[1]}"])


def _replacement(words: str, key: str, readable: Callable[[str], bool]) -> tuple[str, tuple[str, ...]]:
    """What to write instead of unreadable words, and the new words: of several one is meant. Empty where none
    is near.
    """
    stated = effort(words)
    if stated is not None and stated[0] != key:
        return f"Effort stands on its own: write `{stated[0]}: {stated[1]}`.", ()
    for repaired in (words, *repairs(words, key)):
        if readable(repaired):
            return f"Write `{repaired}`.", (repaired,)
        units = with_units(repaired, readable)
        if len(units) == 1:
            return f"Write `{units[0]}`.", (units[0],)
        if units:
            return f"Say the unit: {listed([f'`{one}`' for one in units[:3]], 'or')}.", tuple(units[:3])
    return "", ()


def _quantity_key(path: DataPath) -> str:
    """The last key of a path that does not name weeks."""
    return next((step for step in reversed(path) if isinstance(step, str) and not step[:1].isdigit()), "")


def _without(data: Any, path: DataPath) -> Any:
    """Some data without what stands at a path."""
    step, *rest = path
    if isinstance(data, dict):
        kept = {key: value for key, value in data.items() if key != step or rest}
        return {**kept, step: _without(data[step], tuple(rest))} if rest else kept
    several = list(data)
    assert isinstance(step, int)
    several[step] = _without(several[step], tuple(rest))  # a list's item itself is never taken out
    return several
