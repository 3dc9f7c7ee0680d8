"""Single values out of line, and what was done by half: a doubled line, a lost side, a missed week."""

from __future__ import annotations

from collections import Counter

from ..counting.change import PartChange
from ..wording.words import counted_noun, first_of, plain, sets_of, week_list
from .difference import Collector, Difference
from .sessions import lines_by_week

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Collection, Iterator, Mapping, Sequence

    from ..counting.set_group import SetGroup
    from ..counting.week import Week
    from .matching import Held, LinePairs
    from .sessions import WeekPair
    from .values import LineState

    Run = dict[int, tuple[str, str]]
    """By week: what a value of a line was, and what it is now."""

WATCHED = ("sets", "reps", "load", "effort")
"""Values whose course over the weeks is watched."""

SIDES = ("left", "right", "each")

FEWEST_WEEKS = 3
"""Weeks that a line must run for one of them to stand out."""

ONE_OF_MANY = 3
"""Lines that change in a week alone from which that is a plan, and no slip."""

MOSTLY, HARDLY = 0.8, 0.2
"""Shares of a week's lines that are eased: from the one it is an easier week, up to the other it is none."""

UNDONE, PLANNED = 77.0, 44.0
"""How telling it is that a week is eased by half or no more, and that one is made easier as it is called."""


def out_of_line(pairs: Sequence[WeekPair]) -> list[Difference]:
    """All of it, the most telling first."""
    found = Collector()
    for pair, old, new, lines in lines_by_week(pairs):
        _doubled(pair, new, lines, found)
        _lost_sides(pair, old, new, lines, found)
    _doubled_sessions(pairs, found)
    series, eased = _series(pairs), list(_eased_weeks(pairs))
    easier = {one.weeks[0] for one in eased if one.kind == "easier week"}
    easier |= {pair.number for pair in pairs if pair.new.is_deload}
    every = [
        *found.changes(),
        *_missed(series, easier),
        *_empty_weeks(pairs),
        *_one_week(series, {pair.number for pair in pairs if _is_declared(pair)}),
        *eased,
        *_kept_elsewhere(pairs),
    ]
    return sorted(every, key=lambda one: -one.weight)


def _doubled(pair: WeekPair, new: Held, lines: LinePairs, found: Collector) -> None:
    """A new line that says what another line of the session says."""
    said = Counter(map(_said, new.lines)) if lines.new else Counter[object]()
    for line in lines.new:
        if said[_said(line)] > 1:
            words = f"{new.name}: {line.name} stands twice, {sets_of(str(line.sets))} each time"
            found.add(pair.number, "doubled", words, 79, session=new.name, subject=line.name)


def _said(line: LineState) -> object:
    """What a line says: two that say the same are alike in it."""
    return line.lift, line.one_sided, tuple(sorted(line.values.items()))


def _doubled_sessions(pairs: Sequence[WeekPair], found: Collector) -> None:
    """New sessions that say what another one says, in programmes that do not repeat sessions anyway."""
    if any(len(_contents(pair)) < len(pair.visits.both) + len(pair.visits.gone) for pair in pairs):
        return
    for pair in pairs:
        for one in pair.visits.new:
            held = [(line.lift, line.values) for line in one.lines]
            for _, other, _ in pair.visits.both:
                if held and held == [(line.lift, line.values) for line in other.lines]:
                    at = f" on {one.day}" if one.day else ""
                    says = "once more" if one.name == other.name else f"says what {other.name} says"
                    words = f"{one.name}{at}, {says}: the session stands twice in the week"
                    found.add(pair.number, "doubled", words, 79, session=one.name, subject=one.name)


def _contents(pair: WeekPair) -> set[str]:
    """What the sessions of the old week say, those that say the same once."""
    olds = [*(one for one, _, _ in pair.visits.both), *pair.visits.gone]
    return {repr([(line.lift, line.values) for line in one.lines]) for one in olds}


def _lost_sides(pair: WeekPair, old: Held, new: Held, lines: LinePairs, found: Collector) -> None:
    """A line of both sides that is now for one, and a side whose line is gone while the other's stays."""
    for before, after in lines.both:
        was, now = before.values.get("side", ""), after.values.get("side", "")
        if was in SIDES and was != now and now != "each":
            if was == "each":
                words = f"{new.name}, {after.name}: `side: each` is {f'now {now} only' if now else 'gone'}"
            else:
                words = f"{new.name}, {after.name}: side {was} -> {now or 'none'}"
            found.add(
                pair.number,
                "lost side",
                words,
                78,
                session=new.name,
                subject=after.name,
                before=was,
                after=now,
            )
    for gone in lines.gone:
        side = gone.one_sided
        other = {"left": "right", "right": "left"}.get(side, "")
        if other and any(one.lift == gone.lift and one.one_sided == other for one in new.lines):
            words = f"{new.name}: {gone.name} is for the {other} side alone, the {side} is gone"
            found.add(
                pair.number,
                "lost side",
                words,
                78,
                session=new.name,
                subject=gone.name,
                before=f"{side} and {other}",
                after=other,
            )


def _empty_weeks(pairs: Sequence[WeekPair]) -> Iterator[Difference]:
    """Weeks between others that hold no session any more."""
    empty = [pair.number for pair in pairs if pair.old.visits and not pair.new.visits]
    if empty and len(empty) < len(pairs):
        yield Difference("week missed", f"no session any more in {week_list(empty)}", 80, subject="the week")


def _series(pairs: Sequence[WeekPair]) -> dict[tuple[str, str, str], Run]:
    """What each watched value was and is, from week to week, by session, line and key."""
    found: dict[tuple[str, str, str], Run] = {}
    for pair, _, new, lines in lines_by_week(pairs):
        seen: dict[str, int] = {}
        for before, after in lines.both:
            seen[after.lift] = seen.get(after.lift, 0) + 1
            number = f" ({seen[after.lift]})" if seen[after.lift] > 1 else ""
            for key in WATCHED:
                values = before.values.get(key, ""), after.values.get(key, "")
                if any(values):
                    line = found.setdefault((new.name, f"{after.name}{number}", key), {})
                    line.setdefault(pair.number, values)
    return found


def _missed(series: dict[tuple[str, str, str], Run], easier: Collection[int]) -> Iterator[Difference]:
    """A line that changes before and after a week that is no easier one, but not in it."""
    for (session, line, key), run in series.items():
        changed = [week for week, (was, now) in run.items() if was != now]
        if len(changed) < 2:
            continue
        missed = [
            week
            for week, (was, now) in run.items()
            if was == now and min(changed) < week < max(changed) and week not in easier
        ]
        if missed and len(missed) < len(changed):
            value = run[missed[0]][0]
            others = " and ".join(dict.fromkeys(run[week][1] for week in (changed[0], changed[-1])))
            yield Difference(
                "week missed",
                f"{session}, {line}: {week_list(missed)} keeps {key} {value}, those around go to {others}",
                75,
                session=session,
                subject=line,
                before=value,
                after=others,
            )


def _one_week(series: dict[tuple[str, str, str], Run], declared: set[int]) -> Iterator[Difference]:
    """A value that changes in one week alone, and there leaves what stands on both sides of it.

    In a week that is ``declared`` to be easier it does so on purpose.
    """
    alone: dict[int, list[tuple[str, str, str]]] = {}
    for at, run in series.items():
        changed = [week for week, (was, now) in run.items() if was != now]
        if len(changed) == 1 and len(run) >= FEWEST_WEEKS:
            alone.setdefault(changed[0], []).append(at)
    for week, several in alone.items():
        if week in declared or len({at[:2] for at in several}) >= ONE_OF_MANY:
            continue
        for session, line, key in several:
            was, now = series[session, line, key][week]
            yield Difference(
                "one week",
                f"{session}, {line}, week {week} alone: {key} {was or 'none'} -> {now or 'none'}",
                66,
                weeks=(week,),
                session=session,
                subject=line,
                before=was,
                after=now,
            )


# Easier weeks


def declared(pairs: Sequence[WeekPair]) -> Iterator[Difference]:
    """Weeks that are now meant to be easier and are not made so; and weeks that no longer are meant to be."""
    for at, pair in enumerate(pairs):
        if pair.new.is_deload == pair.old.is_deload:
            continue
        was, now = (str(week.all_sets()) for week in (pair.old, pair.new))
        sets = f"{was} -> {now} sets" if was != now else f"{sets_of(was)} before and after"
        before, eased = (_eased(weeks) for weeks in _up_to(pairs, at))
        if not _is_declared(pair):
            words, weight = f"week {pair.number} is no longer a deload: {sets}", UNDONE
        elif _is_made_easier(before, eased):
            continue
        elif eased:
            share = f"{sum(eased.values())} of {counted_noun(len(eased), 'lift')} eased"
            words = f"week {pair.number} is now a deload: {share}, {sets}"
            weight = PLANNED if _share(eased) >= MOSTLY else UNDONE
        else:
            words, weight = f"week {pair.number} is now a deload: {sets}", PLANNED
        yield Difference(
            "deload",
            words,
            weight,
            weeks=(pair.number,),
            subject=f"week {pair.number}",
            before="deload" if pair.old.is_deload else "",
            after="deload" if pair.new.is_deload else "",
        )


def _is_declared(pair: WeekPair) -> bool:
    """Whether the edit makes a week one that is meant to be easier."""
    return pair.new.is_deload and not pair.old.is_deload


def _eased_weeks(pairs: Sequence[WeekPair]) -> Iterator[Difference]:
    """Weeks that the edit makes easier ones, or leaves easier in a part of their lifts only."""
    for at, pair in enumerate(pairs):
        was, now = (_eased(weeks) for weeks in _up_to(pairs, at))
        if was == now or not now or (_is_declared(pair) and not _is_made_easier(was, now)):
            continue
        before, after = sum(was.values()), sum(now.values())
        lost = [lift for lift, eased in now.items() if not eased and was.get(lift)]
        kept = [lift for lift, eased in now.items() if not eased]
        is_deload = pair.new.is_deload or pair.old.is_deload
        week = f"{'deload ' if is_deload else ''}week {pair.number}"
        if lost and before > 1 and (is_deload or 3 * len(lost) >= before):
            kind, words = "deload", f"{week} no longer eases {first_of(_names(pair.new, lost))}"
            rest = f"{after} of {counted_noun(len(now), 'lift')} eased, {before} before"
        elif HARDLY < _share(now) < MOSTLY and _share(was) <= HARDLY and after > 1:
            kind, words = "by half", f"{week} is eased in {after} of {counted_noun(len(now), 'lift')}"
            rest = f"not in {first_of(_names(pair.new, kept))}"
        elif _is_made_easier(was, now):
            kind, words = "easier week", f"week {pair.number} is now an easier week"
            rest = f"{after} of {counted_noun(len(now), 'lift')} eased"
        else:
            continue
        yield Difference(
            kind,
            f"{words}: {rest}",
            UNDONE,
            weeks=(pair.number,),
            subject=f"week {pair.number}",
            before=plain(before),
            after=plain(after),
        )


def _up_to(pairs: Sequence[WeekPair], at: int) -> tuple[list[Week], list[Week]]:
    """The weeks up to one of them, in both versions."""
    return [one.old for one in pairs[: at + 1]], [one.new for one in pairs[: at + 1]]


def _is_made_easier(was: Mapping[object, bool], now: Mapping[object, bool]) -> bool:
    """Whether an edit makes a week of usual work one in which most of it is eased."""
    return _share(now) >= MOSTLY and _share(was) <= HARDLY and sum(now.values()) > 1


def _share(eased: Mapping[object, bool]) -> float:
    return sum(eased.values()) / len(eased) if eased else 0.0


def _names(week: Week, lifts: Sequence[object]) -> list[str]:
    """The names of lifts as the coach wrote them."""
    return [week.lifts()[lift][0].name for lift in lifts]  # type: ignore[index]


def _eased(weeks: Sequence[Week]) -> dict[object, bool]:
    """For each lift of the last of some weeks, whether it asks for less than in the last usual week before.

    Where sessions rotate, that is the last week before in the same place of the turn. Lifts that only one
    of the two weeks has are left out.
    """
    turn = weeks[-1].turn_weeks
    earlier = next((one for one in weeks[-1 - turn :: -turn] if not one.is_deload), None)
    if earlier is None:
        return {}
    if earlier.visits == weeks[-1].visits:
        return dict.fromkeys(earlier.lifts(), False)
    known = earlier.lifts()
    return {
        lift: _is_less(known[lift], groups) for lift, groups in weeks[-1].lifts().items() if lift in known
    }


def _is_less(before: list[SetGroup], after: list[SetGroup]) -> bool:
    """Whether a lift is done for fewer sets, with less load or with more in reserve, and none the other way.

    Fewer sets that are heavier or harder are no easier work.
    """
    was, now = (sum(one.sets.middle for one in groups) for groups in (before, after))
    change = PartChange(before, after)
    signs = [
        (now > was) - (now < was),
        0 if change.load is None else (change.load > 100) - (change.load < 100),
        0 if change.reserve is None else (change.reserve < 0) - (change.reserve > 0),
    ]
    return min(signs) < 0 and max(signs) <= 0


# Elsewhere


def _kept_elsewhere(pairs: Sequence[WeekPair]) -> Iterator[Difference]:
    """What was alike in two sessions, and is changed in one of them only."""
    told = set()
    for pair in pairs:
        places: dict[tuple[str, str], list[tuple[str, str, str, str]]] = {}
        for _, new, lines in pair.visits.both:
            for before, after in [*lines.both, *lines.swapped]:
                was, now = _in_short(before), _in_short(after)
                places.setdefault((before.lift, was), []).append((new.name, before.name, after.name, now))
        for (_, was), several in places.items():
            changed = [one for one in several if one[3] != was or one[1] != one[2]]
            kept = [one for one in several if one not in changed]
            key = (was, tuple(several))
            if changed and kept and changed[0][0] != kept[0][0] and key not in told:
                told.add(key)
                session, name, other, now = changed[0]
                what = f"{name} -> {other}" if name != other else f"{name} {was} -> {now}"
                yield Difference(
                    "by half",
                    f"{what} in {session}; {first_of([one[0] for one in kept])} keeps {name} {was}",
                    50,
                    weeks=_weeks_with(pairs, several),
                    subject=name,
                    before=was,
                    after=now,
                )


def _weeks_with(pairs: Sequence[WeekPair], several: list[tuple[str, str, str, str]]) -> list[int]:
    """The weeks in which all these sessions take place."""
    names = {one[0] for one in several}
    return [pair.number for pair in pairs if names <= {new.name for _, new, _ in pair.visits.both}]


def _in_short(line: LineState) -> str:
    """``4 x 5 at 80 %``"""
    reps, load = line.values.get("reps", ""), line.values.get("load", "")
    return f"{line.sets}{f' x {reps}' if reps else ''}{f' at {load}' if load else ''}"
