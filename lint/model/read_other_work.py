"""Complexes, intervals, own choices, rounds by a clock: tree -> lines, with a value for every week.

They are rarer than plain lines, so that `read_items` imports this module only where one is written.
"""

from __future__ import annotations

from . import quantities
from .by_parts import merged, parts_of, spans_of
from .pairings import Clock
from .quantities import Load, Range
from .read_pairing import pairing
from .sessions import Slice
from .values import items_of, place_of, terms_of, text_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from .pairings import Pairing
    from .read_line import LineReader, Member, Values
    from .sessions import Prescription
    from .values import LocatedNode

    Open = Callable[[], LineReader]
    """Gives a reader for the next line of a session."""


KINDS = ("intervals", "own choice")
"""Keys that show a line to be no exercise."""

CLOCKS = ("every", "change every", "on", "off", "for", "for time", "time cap")
"""Keys of a circuit whose rounds go by a clock."""

WHOLE = (*CLOCKS, "rest")
"""Keys of a superset, circuit or complex that hold for all its weeks, or change by week."""


def read_other_work(at: LocatedNode, open_line: Open) -> Iterator[Member]:
    """The lines of a complex, of intervals, of an own choice, or of a circuit that goes by a clock."""
    circuit = at.get("circuit")
    if circuit is not None:
        yield from _circuit(at, circuit, open_line)
    elif "superset" in at:
        yield from _superset(at, open_line)
    elif "complex" in at:
        yield from _complex(at, open_line)
    elif "exercise" in at:
        yield from _joined_lifts(at, open_line)
    else:
        reader = _in_its_weeks(at, open_line)
        reader.reads_its_own, reader.named_by = False, next(one for one in KINDS if one in at)
        yield reader, at, None, None, _intervals(at, reader) if "intervals" in at else _own_choice(at, reader)


def _whole(
    kind: str, at: LocatedNode, reader: LineReader
) -> tuple[Pairing, list[tuple[frozenset[int], LocatedNode]]]:
    """What lines are paired in, and the weeks in which its clock and rest stay, with it as it is in them."""
    parts = parts_of(reader, at, WHOLE) or [(frozenset[int](), at)]
    made = []
    for weeks, part in parts:
        paired = pairing(kind, part, reader)
        _set_clock(paired, part, reader)
        made.append((weeks, paired))
    whole = made[0][1]
    whole.parts = tuple(made) if len(made) > 1 else ()
    return whole, parts


def _superset(at: LocatedNode, open_line: Open) -> Iterator[Member]:
    """The lines of a superset that is done in some weeks, or whose rest changes by week."""
    whole = _in_its_weeks(at, open_line)
    paired, _ = _whole("superset", at, whole)
    for member in items_of(at.get("superset")):
        reader = open_line()
        reader.spans = whole.spans
        yield reader, member, paired, at.get("rounds"), None


def _circuit(item: LocatedNode, at: LocatedNode, open_line: Open) -> Iterator[Member]:
    whole = _in_its_weeks(item, open_line)
    whole.begin(at)
    (paired, parts), members = _whole("circuit", at, whole), items_of(at.get("exercises"))
    of_parts = [paired] if not paired.parts else [one for _, one in paired.parts]
    for number, member in enumerate(members):
        reader = open_line()
        shared = []
        for (weeks, part), one in zip(parts, of_parts, strict=True):
            reader.spans = spans_of(weeks) or whole.spans
            shared.append(_rounds_by_clock(one, part, number, len(members), reader))
        reader.spans = whole.spans
        yield reader, member, paired, at.get("rounds"), merged(shared)


def finish(line: Prescription, at: LocatedNode) -> None:
    """Says of a line what kind of work it is, and what it trains."""
    line.kind = next((one for one in KINDS if one in at), "")
    line.trains = terms_of(at.get("trains"))


def _in_its_weeks(at: LocatedNode, open_line: Open) -> LineReader:
    reader = open_line()
    reader.begin(at)
    return reader


# Complexes


def _complex(at: LocatedNode, open_line: Open) -> Iterator[Member]:
    """The lifts of a complex; each has the sets and the load of the whole."""
    whole = _in_its_weeks(at, open_line)
    paired, shared = _complex_whole(at, whole)
    members = items_of(at.get("complex"))
    _set_reps(paired, sum(_most(one) for one in members))
    first = text_of(members[0].get("exercise")) if members else ""
    for number, member in enumerate(members):
        reader = open_line()
        reader.spans, reader.unread = whole.spans, set(whole.unread)
        reader.warm_up = None if number else at.get("warm-up sets")
        load = tuple(_of_first(one, first) if number else one for one in shared.get("load", ()))
        yield reader, member, paired, None, {**shared, **({"load": load} if load else {})}


def _complex_whole(at: LocatedNode, whole: LineReader) -> tuple[Pairing, Values]:
    """A complex, and the sets, load and effort of the whole."""
    paired, parts = _whole("complex", at, whole)
    shared = whole.values(at, ("sets", "load", "rir", "rpe"))
    if "sets" not in shared:
        implied, spans = [], whole.spans
        for weeks, part in parts:
            whole.spans = spans_of(weeks) or spans
            implied.append({"sets": found} if (found := whole.implied_sets(part, shared)) else {})
        whole.spans = spans
        shared.update(merged(implied))
    return paired, shared


def _set_reps(paired: Pairing, reps: float) -> None:
    """Says of a complex, and of its parts, how many repetitions its lifts have together."""
    for one in (paired, *(one for _, one in paired.parts)):
        one.reps = reps


def _joined_lifts(at: LocatedNode, open_line: Open) -> Iterator[Member]:
    """The lifts of a complex on one line: ``clean + front squat + jerk``, 1+1+1."""
    whole = _in_its_weeks(at, open_line)
    paired, shared = _complex_whole(at, whole)
    names = [one.strip() for one in text_of(at.get("exercise")).split(" + ")]
    reps = [quantities.reps(one.strip()) for one in text_of(at.get("reps")).split("+")]
    _set_reps(paired, sum(one.sets[0].high for one in reps if one and one.sets))
    for number, (name, each) in enumerate(zip(names, reps, strict=True)):
        reader = open_line()
        reader.reads_its_own = False
        reader.spans, reader.unread = whole.spans, set(whole.unread)
        held = {**shared, "exercise": reader.always(name, place_of(at, "exercise"))}
        if number and "load" in held:
            held["load"] = tuple(_of_first(one, names[0]) for one in held["load"])
        if each is not None:
            held["reps"] = reader.always(each, place_of(at, "reps"))
        yield reader, at, paired, None, held


def _most(member: LocatedNode) -> float:
    """The most repetitions of a lift, in any week; 0 where they are left open."""
    written = member.get("reps")
    values = (
        [value for _, _, value in written.pairs()] if written is not None and written.keys() else [written]
    )
    read = [quantities.reps(one.plain) for one in values if one is not None]
    return max((each.high for one in read if one and (each := one.a_set())), default=0.0)


def _of_first(held: Slice, first: str) -> Slice:
    """The load of a complex for its later lifts: one bar for all, so a bare share is of the first lift."""
    load = held.value
    if not isinstance(load, Load) or load.kind not in ("percent", "rm", "rm share") or not first:
        return held
    if load.kind != "percent":
        return Slice(held.first, held.last, Load("label", (), load.words), held.place)
    other = Load("lift", load.values, load.words)
    other.whole = first
    return Slice(held.first, held.last, other, held.place)


# Intervals and own choices


def _intervals(at: LocatedNode, reader: LineReader) -> Values:
    """The rounds, the work and the rest of intervals."""
    held = dict(reader.values(at, ("rounds", "distance", "rpe")))
    if "rounds" in held:
        held["sets"] = held.pop("rounds")
    spans, clocks = reader.spans, []
    for weeks, part in parts_of(reader, at, ("on", "off", "every", "for")):
        reader.spans = spans_of(weeks)
        clocks.append(_clock_of_intervals(part, reader, is_counted="sets" in held))
    reader.spans = spans
    held.update(merged(clocks))
    if "sets" not in held:
        reader.unread.add("sets")
    held["exercise"] = reader.always(text_of(at.get("intervals")), place_of(at, "intervals"))
    return held


def _clock_of_intervals(at: LocatedNode, reader: LineReader, *, is_counted: bool) -> Values:
    """What the clock of intervals says: the work, the rest, and how many where that is not written."""
    held: Values = {}
    on, off, lasts = (
        reader.duration(at.get("on")),
        reader.duration(at.get("off")),
        reader.length(at.get("for")),
    )
    every = reader.duration(at.get("every"))
    round_of = every or (on and on + (off or Range(0, 0)))
    if "on" in at and on is not None and on.high <= 0:
        reader.report(
            "no-set-fits",
            place_of(at, "on"),
            f"Intervals of {text_of(at.get('on'))} hold no work.",
            change="Write how long each stretch of work is, such as `on: 45 s`.",
        )
    elif not is_counted and lasts is not None and round_of is not None and round_of.low > 0:
        number = Range(float(int(lasts.low / round_of.high)), float(int(lasts.high / round_of.low)))
        held["sets"] = reader.always(number, place_of(at, "for"))
        if number.high < 1:
            _does_not_fit(reader, at, "A stretch of work and its rest", round_of)
    if on is not None:
        held["timed"] = reader.always(on, place_of(at, "on"))
    if off is not None:
        held["rest"] = reader.always(off, place_of(at, "off"))
    return held


def _own_choice(at: LocatedNode, reader: LineReader) -> Values:
    """One stretch of time, as a single set."""
    spans, times = reader.spans, []
    for weeks, part in parts_of(reader, at, ("minutes",)):
        reader.spans = spans_of(weeks)
        minutes = reader.minutes(part.get("minutes")) or Range(0, 0)
        times.append({"timed": reader.always(minutes * 60, place_of(part, "minutes"))})
    reader.spans = spans
    return {
        "exercise": reader.always(text_of(at.get("own choice")), place_of(at, "own choice")),
        "sets": reader.always(Range(1, 1), place_of(at, "minutes")),
        **merged(times),
    }


def _does_not_fit(reader: LineReader, at: LocatedNode, what: str, needed: Range) -> None:
    reader.report(
        "no-set-fits",
        place_of(at, "for"),
        f"{what}, {needed} s, does not go into {text_of(at.get('for'))}.",
        change="Correct one of the two.",
    )


# Rounds by the clock


def _set_clock(paired: Pairing, at: LocatedNode, reader: LineReader) -> None:
    """Gives a circuit or complex the clock that it goes by, if any is written."""
    if not any(key in at for key in CLOCKS):
        return
    clock = paired.clock = Clock(place_of(at, next(key for key in CLOCKS if key in at)))
    clock.every, clock.turn = reader.duration(at.get("every")), reader.duration(at.get("change every"))
    clock.on, clock.off = reader.duration(at.get("on")), reader.duration(at.get("off"))
    clock.lasts, clock.cap = reader.length(at.get("for")), reader.length(at.get("time cap"))
    pace = clock.every or clock.turn or clock.on
    is_open = pace is None and clock.lasts is not None and "rounds" not in at
    clock.counts_rounds = is_open and paired.kind == "circuit"


def _rounds_by_clock(
    paired: Pairing, at: LocatedNode, number: int, several: int, reader: LineReader
) -> Values:
    """What the clock of a circuit says of one of its ``several`` exercises: rounds, how long it goes on."""
    clock = paired.clock
    if clock is None:
        return {}
    held: Values = {}
    if clock.on is not None:
        held["timed"] = reader.always(clock.on, place_of(at, "on"))
        if clock.on.high <= 0 and number == 0:
            reader.report(
                "no-set-fits",
                place_of(at, "on"),
                f"Intervals of {text_of(at.get('on'))} hold no work.",
                change="Write how long each exercise goes on, such as `on: 40 s`.",
            )
    rounds = _rounds(paired, clock, number, several)
    if clock.counts_rounds:  # the ledger works them out, which knows how long a round takes
        held["sets"] = reader.always(Range(1, 1), place_of(at, "for"))
    if rounds is None:
        return held
    if "rounds" in at:
        _check_rounds(reader, at, number, rounds)
        return held
    if rounds.high < 1 and number == 0:
        _does_not_fit(reader, at, "A round", _round(paired, clock, several) or rounds)
    held["sets"] = reader.always(rounds, place_of(at, "for"))
    return held


def _round(paired: Pairing, clock: Clock, several: int) -> Range | None:
    """Seconds of a round, with the rest after it; None where the clock does not say."""
    if clock.every is not None:
        return clock.every
    each = clock.turn or (clock.on and clock.on + (clock.off or Range(0, 0)))
    return None if each is None else each * several + (paired.rest or Range(0, 0))


def _rounds(paired: Pairing, clock: Clock, number: int, several: int) -> Range | None:
    """How often an exercise comes in the time there is; None where the clock does not say."""
    lasts, one = clock.lasts, _round(paired, clock, several)
    if lasts is None or one is None or one.low <= 0:
        return None
    rest = paired.rest or Range(0, 0)
    ends = []
    for time, length in ((lasts.low, one.high), (lasts.high, one.low)):
        whole = int((time + rest.low) / length)
        left = time - whole * length
        each = 0.0 if clock.every is not None else (length - rest.low) / several
        ends.append(float(whole + (each > 0 and left >= (number + 1) * each)))
    return Range(*ends)


def _check_rounds(reader: LineReader, at: LocatedNode, number: int, by_clock: Range) -> None:
    """Rounds that are written, and others that follow from the clock."""
    written = at.get("rounds")
    stated = None if written is None else quantities.number_or_range(written.plain)
    if number == 0 and stated is not None and not stated.meets(by_clock):
        reader.report(
            "keys-at-odds",
            place_of(at, "rounds"),
            f"{stated} rounds here; the clock leaves time for {by_clock}.",
            change="Correct one of the two, or leave the rounds out.",
        )
