"""What a line says in one value for two keys, and what could be read in two ways.

Nothing here is needed for a line in plain spelling, so that `read_line` imports it only when it is.
"""

from __future__ import annotations

from ..findings.edits import in_one
from ..findings.finding import Edit
from ..schemas import spellings
from ..schemas.doses import told_apart
from ..schemas.readings import RULE
from ..syntax.additions import before_next_key, key_added
from ..syntax.tree import Mapping, Scalar
from ..wording.words import plain
from .quantities import (
    KG_PER_LB,
    NOTHING,
    Load,
    Range,
    Reps,
    distance,
    duration,
    number_or_range,
    plain_reps,
    spelt,
)
from .sessions import Slice

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator, Sequence
    from typing import Protocol

    from ..findings.finding import Severity
    from ..syntax.tree import KeyValue
    from ..text.places import Place
    from .values import LocatedNode

    Values = dict[str, tuple[Slice, ...]]

    class LineBeingRead(Protocol):
        """What is needed here of the reader of a line."""

        held: Values
        pairs: Values
        sides: tuple[Slice, ...]
        unread: set[str]

        def within(self, kind: str, at: LocatedNode, value: object) -> bool:
            """Whether a value lies within what its kind takes; reports one that does not."""

        def follows_sets(self) -> bool:
            """Whether a set of the same exercise comes before."""

        def report(
            self,
            rule: str,
            place: Place,
            counted: str,
            *,
            change: str,
            severity: Severity = ...,
            edits: tuple[Edit, ...] = ...,
        ) -> None:
            """Adds a finding."""


MOST_POINTS = 2
"""A change of a percentage by up to this many per cent is read as points (common practice, no source)."""


def sets_of_reps(value: object) -> tuple[Range, Reps] | None:
    """Sets and repetitions in one value: ``3x12``, ``3 sets of 5``."""
    pair = spellings.sets_of_reps(value)
    if pair is None:
        return None
    sets, each = number_or_range(pair[0]), plain_reps(pair[1])
    return None if sets is None or each is None else (sets, each)


# A name with what belongs to other keys


def dose_in_name(reader: LineBeingRead, at: LocatedNode, name: Slice) -> None:
    """Tells of a name that ends in sets and repetitions, ``back squat 4x6``: to YAML these are words."""
    lift, several = told_apart(str(name.value))
    if several:
        dose = str(name.value)[len(lift) :].lstrip(" ,;:")
        keys = [", ".join(f"{key}: {value}" for key, value in one.items()) for one in several]
        is_said = bool({"sets", "work"} & _entries(at).keys())
        said = "Take it out of the name, or out of the other keys." if is_said else ""
        reader.report(
            "dose-in-name",
            name.place,
            f"`{dose}` stands in the name, where it counts for nothing.",
            change=said or f"Write {', or '.join(f'`{one}`' for one in keys)} beside `exercise: {lift}`.",
            edits=() if is_said else tuple(_dose_beside(at, name.place, lift, several)),
        )


def _dose_beside(at: LocatedNode, place: Place, lift: str, several: list[dict[str, str]]) -> Iterator[Edit]:
    """The lift alone as the name, and its sets, load and so on as keys behind it."""
    group, entry = at.node, _entries(at).get("exercise")
    if entry is None or not isinstance(entry.value, Scalar) or not isinstance(group, Mapping):
        return
    parted = before_next_key(group, "exercise")
    for keys in several:
        words = parted.join(f"{key}: {value}" for key, value in keys.items())
        added = key_added(group, "exercise", words, f"Write {words.replace(parted, ', ')}")
        if added is None:
            return
        if added.place.start == place.end:
            yield Edit(place, lift + added.words, added.label)
        elif whole := in_one(added.label, [Edit(place, lift, added.label), added], certain=True):
            yield whole


def _entries(at: LocatedNode) -> dict[str, KeyValue]:
    return at.node.entries if isinstance(at.node, Mapping) else {}


# One value for two keys


def read_apart(reader: LineBeingRead, at: LocatedNode, held: Values) -> None:
    """Puts what repetitions say of sets, sides, seconds and effort among the values of a line."""
    for key, said in reader.pairs.items():
        if key not in at:
            held[key] = said
            reader.unread.discard(key)
        elif [_as_data(one.value) for one in held.get(key, ())] != [_as_data(one.value) for one in said]:
            reader.report(
                "keys-at-odds",
                said[0].place,
                f"{said[0].place.excerpt} says how many {_NAMES[key]}, and so does `{key}`.",
                change="Leave one of them as it is meant, and take the other out.",
            )
    reps = [(one, one.value) for one in held.get("reps", ()) if isinstance(one.value, Reps)]
    each = _where(reps, lambda value: "each" if value.each_side else None) or reader.sides
    if each and "side" not in at:
        held["side"] = each
    elif each and any(one.value != "each" for one in held.get("side", ())):
        reader.report(
            "keys-at-odds",
            each[0].place,
            f"{each[0].place.excerpt} says each side, and `side` says {held['side'][0].value}.",
            change="Take one of the two out.",
        )
    none_left = _where(reps, lambda value: NOTHING if value.to_failure else None)
    if none_left and not {"rir", "rpe"} & held.keys():
        held["rir"] = none_left
    timed = _where(reps, lambda value: value.timed)
    if timed:
        held["timed"] = timed
        held["reps"] = tuple(one for one, value in reps if not value.timed)
    for one, value in reps:
        if value.parts:
            _ask_about_parts(reader, at, one.place, value.parts)


def each_side(reader: LineBeingRead, key: str, first: int, last: int, part: LocatedNode) -> Range | None:
    """A time or a distance that is meant for each side, ``30 s/side``; None where it is not."""
    words = spelt(key, part.plain, str) or ""
    read = duration if key == "hold" else distance
    value = read(words.removesuffix(" each")) if words.endswith(" each") else None
    if value is None or not reader.within(key, part, value):
        return None
    reader.sides = (*reader.sides, Slice(first, last, "each", part.place))
    return value


def check_listed(reader: LineBeingRead, key: str, place: Place, words: str) -> None:
    """Reports an effort for each set, ``1/1/0``, that is not as many as there are sets."""
    listed, sets = words.count("/") + 1, {str(one.value) for one in reader.held.get("sets", ())}
    if sets and str(listed) not in sets:
        reader.report(
            "keys-at-odds",
            place,
            f"{words} is {key.upper()} for {listed} sets; the line has {' or '.join(sorted(sets))}.",
            severity="warning",
            change="Give each set one, or write one for all.",
        )


def rounds_at_odds(reader: LineBeingRead, said: Sequence[Slice], rounds: Sequence[Slice]) -> None:
    """Sets that stand under repetitions, ``3x12``, in a circuit or superset whose rounds are its sets."""
    if {str(one.value) for one in said} != {str(one.value) for one in rounds}:
        reader.report(
            "keys-at-odds",
            said[0].place,
            f"{said[0].place.excerpt} says {said[0].value} sets; the rounds say {rounds[0].value}.",
            change="Write the repetitions alone; the rounds are their sets.",
        )


def _as_data(value: object) -> object:
    """What is equal for equal numbers of sets or repetitions."""
    return [getattr(value, name) for name in Reps.__slots__] if isinstance(value, Reps) else value


def _where(reps: list[tuple[Slice, Reps]], said: Callable[[Reps], object]) -> tuple[Slice, ...]:
    """What repetitions say of something else, in the weeks in which they say it."""
    found = [(one, said(value)) for one, value in reps]
    return tuple(one.with_value(value) for one, value in found if value is not None)


_NAMES = {"sets": "sets there are", "reps": "repetitions there are"}


# Repetitions


def _ask_about_parts(reader: LineBeingRead, at: LocatedNode, place: Place, parts: tuple[int, ...]) -> None:
    """``12+10+8`` in three sets: a cluster in each of them, or one number for each set."""
    sets = {str(one.value) for one in reader.held.get("sets", ())}
    said = "cluster rest" in at or ((method := at.get("method")) is not None and method.words == "cluster")
    if said or sets != {str(len(parts))} or len(set(parts)) == 1:
        return
    each = "/".join(map(str, parts))
    words = "+".join(map(str, parts))
    edits = [Edit(place, each, f"write {each}: one number for each set")]
    if isinstance(at.node, Mapping) and at.node.defined is None and "reps" in at.node.entries:
        own = at.node.entries["reps"].value
        if (own.start, own.end) == (place.start, place.end):
            further = f"{place.excerpt}{before_next_key(at.node, 'reps')}method: cluster"
            edits.append(Edit(place, further, "write method: cluster"))
    reader.report(
        RULE,
        place,
        f"{words} in {len(parts)} sets has two readings: a cluster of {sum(parts)} in each set, as it was"
        f" read, or {each}, one number for each set.",
        severity="warning",
        change=f"Write {each}, or `method: cluster` beside it.",
        edits=tuple(edits),
    )


def ask_about_two_sets(reader: LineBeingRead, place: Place, words: str, turned: str) -> None:
    """``10-8`` in two sets: one number for each set, or a range that runs backwards."""
    each = words.replace("-", "/")
    reader.report(
        RULE,
        place,
        f"{words} in two sets has two readings: {turned} in each of them, as it was read, or {each}, one"
        " number for each set.",
        severity="warning",
        change=f"Write {turned} or {each}.",
        edits=(Edit(place, turned, f"write {turned}"), Edit(place, each, f"write {each}")),
    )


def ask_about_tempo(reader: LineBeingRead, at: LocatedNode) -> None:
    """A tempo with X first: lowered as fast as possible, or written from the lifting on."""
    parts = spellings.plain_spelling("tempo", at.plain)
    if parts is None:
        return
    first, second, third, last = parts.split("-")
    if third == "X":
        return
    lifting_first, dropped = f"{third}-{last}-{first}-{second}", f"0-{second}-{third}-{last}"
    reader.report(
        RULE,
        at.place,
        f"{parts} has two readings: lowered as fast as possible, as it was read, or written from the"
        " lifting on.",
        severity="warning",
        change=f"Write {dropped} for the first, {lifting_first} for the second.",
        edits=(
            Edit(at.place, lifting_first, f"write {lifting_first}: lift as fast as possible"),
            Edit(at.place, dropped, f"write {dropped}: let it drop"),
        ),
    )


# Loads


def changed_load(
    reader: LineBeingRead, at: LocatedNode, change: Load, before: Sequence[Slice]
) -> Load | None:
    """The load that a change such as ``+5 kg`` or ``-12 %`` leads to; None where that is asked about."""
    by = change.values[0].low
    last = max(
        (one for one in before if one.place.key != at.place.key), key=lambda one: one.last, default=None
    )
    base = None if last is None else last.value
    if last is not None and _is_back_off(last) and by < 0 and change.unit == "%":
        base = None  # each week's back-off is from the top set of that week
    if isinstance(base, Load) and len(base.values) == 1 and base.pieces == 1:
        return _changed(reader, at, change, base)
    if change.unit != "%":
        sign = "+" if by >= 0 else "-"
        words = f"bodyweight {sign} {change.words.lstrip('+-').strip()}"
        return Load("bodyweight", change.values, words, unit=change.unit)
    if by < 0 and reader.follows_sets():
        return Load("top set", (Range(100 + by, 100 + by),), f"{plain(100 + by)} % of top set")
    _ask_about_share(reader, at, change.words, 100 + by)
    return None


def _is_back_off(held: Slice) -> bool:
    """Whether a load is written as ``-12 %`` and was read as a share of the top set."""
    is_share = isinstance(held.value, Load) and held.value.kind == "top set"
    return is_share and not held.place.excerpt[:1].isalnum()


def _changed(reader: LineBeingRead, at: LocatedNode, change: Load, base: Load) -> Load | None:
    """A load changed from that of the weeks before."""
    by, value = change.values[0].low, base.values[0]
    if change.unit != "%" and base.kind in ("mass", "bodyweight"):
        unit = base.unit or change.unit
        return _like(base, Range(value.low + by, value.high + by), unit)
    if change.unit != "%" and base.kind == "share":
        carried = Load("share", base.values, "", unit=base.unit or change.unit)
        carried.added = base.added + by
        return _like(carried, value, "%")
    if change.unit == "%" and base.kind == "mass":
        return _like(base, value * (1 + by / 100), base.unit)
    if change.unit == "%" and base.kind in ("percent", "top set", "share", "lift", "rm share"):
        points = Range(value.low + by, value.high + by)
        if abs(by) <= MOST_POINTS:
            return _like(base, points, "%")
        _ask_about_points(reader, at, change.words, base, points, value * (1 + by / 100))
        return None
    reader.report(
        RULE,
        at.place,
        f"{change.words} cannot be reckoned from {base.words}, the load of the weeks before.",
        change="Write the load itself.",
    )
    return None


def _like(base: Load, value: Range, unit: str) -> Load:
    """A load of the same kind with another value, in words of the same form."""
    shown = value * (1 / KG_PER_LB) if unit == "lb" else value
    numbers = str(Range(round(shown.low, 2), round(shown.high, 2)))
    of = f" of {base.whole}" if base.whole else ""
    words = {
        "percent": f"{numbers} %{of}",
        "lift": f"{numbers} %{of}",
        "rm share": f"{numbers} %{of}",
        "top set": f"{numbers} % of top set",
        "share": f"{numbers} % bodyweight{_added(base)}",
        "mass": f"{numbers} {unit}",
        "bodyweight": f"bodyweight {'-' if numbers.startswith('-') else '+'} {numbers.lstrip('-')} {unit}",
    }[base.kind]
    changed = Load(base.kind, (value,), words, unit=base.unit)
    changed.whole, changed.added = base.whole, base.added
    return changed


def _added(base: Load) -> str:
    """What is carried on top of a share of body mass: `` + 5 kg``."""
    if not base.added:
        return ""
    shown = abs(base.added) / KG_PER_LB if base.unit == "lb" else abs(base.added)
    return f" {'+' if base.added > 0 else '-'} {plain(round(shown, 2))} {base.unit or 'kg'}"


def _ask_about_points(
    reader: LineBeingRead, at: LocatedNode, words: str, base: Load, points: Range, factor: Range
) -> None:
    one, other = _like(base, points, "%").words, _like(base, factor, "%").words
    reader.report(
        RULE,
        at.place,
        f"{words} on {base.words} has two readings: {one} (points) or {other} (a factor).",
        change=f"Write {one} or {other}.",
        edits=(Edit(at.place, one, f"write {one}"), Edit(at.place, other, f"write {other}")),
    )


def _ask_about_share(reader: LineBeingRead, at: LocatedNode, words: str, share: float) -> None:
    one, other = f"{plain(share)} % of top set", f"{plain(share)} %"
    reader.report(
        RULE,
        at.place,
        f"{words} has two readings where no set comes before: a share of a top set that is missing, or"
        f" {other} of the best lift.",
        change=f"Write {one} and put the top set above, or write {other}.",
        edits=(Edit(at.place, one, f"write {one}"), Edit(at.place, other, f"write {other}")),
    )
