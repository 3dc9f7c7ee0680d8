"""Deloads that cut nothing."""

from __future__ import annotations

from math import ceil, floor

from ..lint.counting.change import Change, PartChange, weeks_of_lines
from ..lint.engine.limits import Condition
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Related, found
from ..lint.model.naming import line_name
from ..lint.wording.words import first_of, plain, says, sets_of
from .easier_weeks import CLEAR_CUT, EASY_WORDS, further, is_easier, notes_on_week

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Container, Iterator, Mapping

    from ..lint.counting.ledger import Ledger
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.text.places import Place


@rule(
    "deload-without-cut",
    family="progression",
    severity="note",
    confidence="survey",
    why="A deload is a time of less stress, coaches agree, and they make it mainly by fewer sets and"
    " repetitions. As it is written, this one asks about as much as the week before.",
    sources=("bell-2023", "bell-2022", "helms-taper"),
    options=(
        *CLEAR_CUT,
        Condition(
            "volume of novices",
            10,
            "% fewer sets or repetitions in a novice's week",
            "common practice, no source: half, for they are not worn down as far",
        ),
        EASY_WORDS,
    ),
    stands_back=("rehabilitation",),
)
def deload_without_cut(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """A deload that cuts neither sets nor load nor effort.

    Compares each week of a block marked `deload: true`, or called a deload, with the last typical week before
    the block, and each week named under `deload` with the last one before it. Says first where most of the
    loaded main lifts hold more sets than before, at a load as high and no fewer repetitions, whatever is cut
    beside them; or one of them does from 70 %, while all others are eased; or where they repeat a week since
    the last deload that was not its lightest. Else wants 20 % fewer sets or
    repetitions, or most of the hard work eased: 10 % less load, or 2 more repetitions in reserve; or a part
    of the sets and of the load that together comes to as much, or nearly. One note for the weeks of a
    programme. Silent in season, for novices of a group, where a note says how the week is easier, and where
    sets could not be read or cannot be meant.

    Flags:
        programme: Squat
        blocks:
          - name: Build
            weeks: 3
            sessions:
              - session: Lower
                exercises: [{exercise: back squat, sets: 5, reps: 5, load: 75 %}]
          - name: Recover  # <- here
            weeks: 1
            deload: true
            sessions:
              - session: Lower
                exercises: [{exercise: back squat, sets: 5, reps: 5, load: 72.5 %}]

    Passes:
        programme: Squat
        blocks:
          - name: Build
            weeks: 3
            sessions:
              - session: Lower
                exercises: [{exercise: back squat, sets: 5, reps: 5, load: 75 %}]
          - name: Recover
            weeks: 1
            deload: true
            sessions:
              - session: Lower
                exercises: [{exercise: back squat, sets: 4, reps: 5, load: 72.5 %}]
    """
    heavier = list(_heavier(ledger))
    yield from heavier
    volume = "volume of novices" if ledger.header.level == "novice" else "volume"
    cut = limits.number(volume)
    uncut = list(_uncut(ledger, limits, cut))
    told = {number for one in heavier for number in one.weeks}
    yield from _copied(ledger, {*told, *(week.number for _, _, week, _ in uncut)})
    if not uncut:
        return
    place, name, week, before = uncut[0]
    now, was = week.all_sets(), before.all_sets()
    fewer = ceil(now.middle - floor(was.middle * (100 - cut) / 100))
    yield found(
        place,
        f"{_hardly_easier(name, week, before)}.",
        wanted=limits.words(
            "{:%} less volume, {:%} less load or {} more in reserve", volume, "load", "effort"
        ),
        change=f"Take {sets_of(fewer)} off, or lower the load.",
        where=week.block.name,
        weeks=tuple(one.number for _, _, one, _ in uncut),
        amount=Amount(now.middle, now.middle - fewer),
        related=tuple(
            Related(at, _hardly_easier(called, one, other)) for at, called, one, other in uncut[1:]
        ),
        excess=now.middle,
    )


def _hardly_easier(name: str, week: Week, before: Week) -> str:
    return (
        f"{name}{' is hardly' if name else 'Hardly'} easier than week {before.number}:"
        f" {sets_of(str(week.all_sets()))} against {before.all_sets()}{further(Change(before, week))}"
    )


def _heavier(ledger: Ledger) -> Iterator[DraftFinding]:
    """Easier weeks in which most main lifts hold more sets than before at the same load."""
    for week, before, place in _deloads(ledger):
        parts = [part for part in Change(before, week).parts if _is_loaded(part)]
        grown = [part for part in parts if _has_grown(part)]
        if 2 * len(grown) <= len(parts) and not _stands_out(grown, parts):
            continue
        first = grown[0]
        entry = max(first.after, key=lambda one: one.sets.middle)
        now, was = (sum(one.sets.middle for one in groups) for groups in (first.after, first.before))
        others = [part.after[0] for part in grown[1:]]
        yield found(
            entry.work.places.get("sets", place),
            f"Meant to be easier, yet {entry.name} holds {sets_of(now)}, {plain(was)} in week {before.number}"
            f" at {'the same' if first.load == 100 else 'no less'} load"
            f"{f'; also {first_of([one.name for one in others])}' if others else ''}.",
            wanted="fewer sets or less load on the main lifts",
            change=f"Take {sets_of(now - was + 1)} off, or lower the load.",
            where=line_name(entry.prescription),
            subject="heavier deload",
            weeks=(week.number,),
            amount=Amount(now, was),
            related=tuple(Related(one.work.places.get("sets", place), one.name) for one in others),
            excess=now - was,
        )


def _copied(ledger: Ledger, told: Container[int]) -> Iterator[DraftFinding]:
    """Easier weeks whose main lifts are those of a week before, and not of the lightest of them."""
    since = 0
    for week, last, place in _deloads(ledger):
        lines = [dict(line) for line in ledger.recall(weeks_of_lines, ledger.weeks)]
        wave = [one for one in ledger.typical_weeks() if since < one.number <= last.number]
        since = week.number
        parts = [
            {one: PartChange([line[one]], [line[week]]) for one in wave if one in line}
            for line in lines
            if week in line and line[week].compound
        ]
        waved = [changes for changes in parts if _is_waved(changes)]
        for before in reversed(wave) if week.number not in told else ():
            same = [one[before] for one in waved if before in one and _is_repeated(one[before])]
            if len(same) < 2 or 2 * len(same) <= len(waved):
                continue
            entry = same[0].after[0]
            yield found(
                entry.work.places.get("load", place),
                f"Meant to be easier, yet {first_of([part.after[0].name for part in same])}"
                f" hold as much as in week {before.number}.",
                wanted="fewer sets or less load on the main lifts",
                change="Write the easier week's own sets and loads.",
                where=line_name(entry.prescription),
                subject="copied deload",
                weeks=(week.number,),
                related=tuple(
                    Related(part.after[0].work.places.get("load", place), part.after[0].name)
                    for part in same[1:]
                ),
            )
            break


def _is_waved(changes: Mapping[Week, PartChange]) -> bool:
    """Whether a loaded lift is lighter in another week of its wave than in the deload."""
    return any(part.load is not None and part.load > 100 for part in changes.values())


def _is_repeated(part: PartChange) -> bool:
    """Whether a lift is done as before, or more: as many sets and repetitions, at the same load or above."""
    return all(value is not None and value >= 100 for value in (part.sets, part.load, part.repetitions))


def _stands_out(grown: list[PartChange], parts: list[PartChange]) -> bool:
    """Whether one heavy lift alone is harder, while each of the others is eased."""
    heavy = [one for part in grown for one in part.after if one.percent and one.percent.high >= HEAVY]
    return len(grown) == 1 and bool(heavy) and all(_is_eased(part) for part in parts if part not in grown)


HEAVY = 70
"""% of the best lift from which a lift in an easier week is looked at by itself (common practice)."""


def _is_eased(part: PartChange) -> bool:
    """Whether a lift holds less of anything."""
    return any(value is not None and value < 100 for value in (part.sets, part.repetitions, part.load))


def _is_loaded(part: PartChange) -> bool:
    """Whether it is a lift over several joints whose loads can be compared."""
    return part.load is not None and part.after[0].compound


def _has_grown(part: PartChange) -> bool:
    """Whether it holds more sets than before, at no less load and with no fewer repetitions."""
    fuller = all(value is None or value > 100 for value in (part.sets, part.repetitions))
    return fuller and not _is_eased(part) and (part.reserve or 0) <= 0


def _deloads(ledger: Ledger) -> Iterator[tuple[Week, Week, Place]]:
    """The weeks that are to be easier, each with the last typical one before, and what says so."""
    typical = ledger.typical_weeks()
    for week in ledger.weeks:
        place, first, _ = _deload(week)
        before = [other for other in typical if other.number < first]
        if place is not None and before and week.phase != "in-season":
            yield week, before[-1], place


def _uncut(ledger: Ledger, limits: Limits, volume: float) -> Iterator[tuple[Place, str, Week, Week]]:
    """The deloads that cut nothing: what says that they are one, their name, the week and the one before."""
    if ledger.header.level == "novice" and len(ledger.programme.members) > 1:
        return  # the plan is the group's
    for week, before, place in _deloads(ledger):
        if _is_eased_in_words(week, before, limits):
            continue
        if Change(before, week).comes_to(volume, limits.number("load"), limits.number("effort")):
            continue
        if ledger.recall(is_easier, week, before, limits):
            continue
        if all(entry.work.readable and entry.meant for one in (week, before) for _, entry in one.entries()):
            yield place, _deload(week)[2], week, before


LABELS = ("easy", "easier")
"""Words that in a note on the whole programme only name a week, "week 4 is easy", and say nothing of how."""


def _is_eased_in_words(week: Week, before: Week, limits: Limits) -> bool:
    """Whether notes that the week before has not say how a week is easier, where its numbers do not."""
    block, *others = notes_on_week(week)
    others = [note for note in others if note not in notes_on_week(before)]
    words = limits.names("easy words")
    return says(words, *others) or says([one for one in words if one not in LABELS], block)


def _deload(week: Week) -> tuple[Place | None, int, str]:
    """What says that a week is a deload, None if nothing does; the first week of the deload, and its name."""
    block = week.block
    if block.deload or says(("deload",), block.name):
        return block.place, block.first, block.name
    return block.deload_weeks.get(week.number - block.first + 1), week.number, ""
