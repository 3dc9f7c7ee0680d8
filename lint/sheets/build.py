"""From the ledger of a programme to the sheet of its athlete."""

from __future__ import annotations

from datetime import timedelta

from ..model.naming import day_name
from ..wording.words import counted_noun, listed, safe, says
from .doses import CHOOSE, OWN_CHOICE, dose, spoken
from .sheet import Sheet, SheetDay, SheetItem, SheetLine, SheetSession, SheetWeek

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator, Mapping
    from datetime import date

    from ..counting.ledger import Ledger
    from ..counting.set_group import SetGroup
    from ..counting.tally import Visit
    from ..counting.week import Week
    from ..model.pairings import Clock, Pairing
    from ..model.progression import Progression
    from ..model.sessions import Prescription
    from .sheet import Entry

    Told = Callable[[str], str]
    """A coach's note as it may be told: safe to print, empty where it holds what is nobody's business."""


class _Manner:
    """How things are said on one sheet: by which steps, in which unit, with which notes."""

    def __init__(self, ledger: Ledger, steps: Mapping[str, float], told: Told) -> None:
        self.steps = steps
        self.told = told
        lifts = ledger.athlete.best_lifts if ledger.athlete else ()
        loads = [lift.load for lift in lifts]
        loads += [group.work.load for _, group in ledger.entries() if group.work.load]
        self.unit = "lb" if any(load.unit == "lb" for load in loads) else "kg"


TERMS = {
    CHOOSE: "so heavy that your sets end with what is written in reserve, and no heavier",
    "in reserve": "repetitions that you could still have done when a set ends; RIR in the boxes",
    "RPE": "how hard a set felt, from 1 to 10: 10 is all you had, 8 leaves about two repetitions",
    "tempo": "seconds for lowering, the bottom, lifting and the top; X is as fast as you can",
    "warm-up": "lighter sets before the first that is written; they are not counted",
}
"""Words on a sheet that need telling. RPE as the published scale reads it (zourdos-2016)."""


def build(
    ledger: Ledger, steps: Mapping[str, float], told: Told, weeks: frozenset[int] = frozenset()
) -> Sheet:
    """The sheet of a ledger's athlete, for all weeks or for those named."""
    programme = ledger.programme
    chosen = [week for week in ledger.weeks if not weeks or week.number in weeks]
    manner = _Manner(ledger, steps, told)
    built = tuple(_week(ledger, week, manner) for week in chosen)
    starts, ends = programme.starts, ledger.ends
    dates = f"{long_date(starts)} to {long_date(ends)}" if starts and ends else ""
    lasts = counted_noun(programme.weeks, "week")
    return Sheet(
        safe(programme.name),
        safe(ledger.athlete.name) if ledger.athlete else "",
        f"{lasts}, {dates}" if dates else lasts,
        _when_to_stop(ledger, told),
        tuple(_left_out(ledger, told)),
        tuple(_terms(built)),
        built,
    )


UNTOLD = "a movement that your coach will name"
"""Stands for a movement whose words say more than its name."""

ANY_DAY = 8
"""Sorts what has no day behind the seven that there are."""


def short_date(day: date) -> str:
    """``30 Nov``."""
    return f"{day.day} {day:%b}"


def long_date(day: date) -> str:
    """``30 November 2026``."""
    return f"{day.day} {day:%B %Y}"


def _when_to_stop(ledger: Ledger, told: Told) -> str:
    """The notes of the programme and its blocks that say when to stop."""
    programme = ledger.programme
    notes = dict.fromkeys((programme.note, *(block.note for block in programme.blocks)))
    return " ".join(told(note) for note in notes if says(("stop", "stops"), note))


def _left_out(ledger: Ledger, told: Told) -> Iterator[str]:
    """Movements that the athlete leaves out, with the day of the next check, never with a reason."""
    for one in ledger.athlete.protect if ledger.athlete else ():
        if one.kind == "movement":
            may_stay = told(listed(one.may_stay, "or"))
            stays = f", but for {may_stay}" if may_stay else ""
            checked = f" (to be looked at again on {long_date(one.review_on)})" if one.review_on else ""
            yield f"{told(one.subject.words) or UNTOLD}{stays}{checked}"
    for adjustment in ledger.member.adjustments if ledger.member else ():
        if adjustment.leave_out:
            yield safe(adjustment.exercise.words)


def _terms(weeks: tuple[SheetWeek, ...]) -> Iterator[tuple[str, str]]:
    """The words that need telling, as far as they are on the sheet."""
    lines = [line for week in weeks for session in week.sessions for line in session.lines]
    doses = [one for line in lines for one in line.doses]
    used = {
        CHOOSE: any(one.load == CHOOSE for one in doses),
        "in reserve": any(blank == "RIR" for one in doses for blank in one.blanks),
        "RPE": any("RPE" in part for one in doses for part in (*one.parts, *one.blanks)),
        "tempo": any(one.tempo for one in doses),
        "warm-up": any(line.warm_up for line in lines),
    }
    yield from ((term, meaning) for term, meaning in TERMS.items() if used[term])


# Weeks and days


def _week(ledger: Ledger, week: Week, manner: _Manner) -> SheetWeek:
    starts = ledger.programme.starts
    words = [f"Week {week.number} of {len(ledger.weeks)}"]
    if starts:
        first = starts + timedelta(days=7 * (week.number - 1))
        last = first + timedelta(days=6)
        begins = str(first.day) if first.month == last.month else short_date(first)
        words.append(f"{begins} to {short_date(last)} {last.year}")
    if len(ledger.programme.blocks) > 1 and week.block.name:
        words.append(safe(week.block.name))
    if week.is_deload:
        words.append("an easier week")
    alike = _alike(week)
    sessions = tuple(_session(ledger, week, visits, manner) for visits in alike)
    numbers = {visit: number for number, visits in enumerate(alike, start=1) for visit in visits}
    return SheetWeek(week.number, " · ".join(words), tuple(_plan(ledger, week, numbers)), sessions)


def _alike(week: Week) -> list[list[Visit]]:
    """The visits of a week with something to do, those of one session with the same sets together."""
    together: dict[tuple[object, ...], list[Visit]] = {}
    for visit in week.visits:
        if any(_is_done(group) for group in visit.own):
            together.setdefault((visit.session, visit.own), []).append(visit)
    return list(together.values())


def _is_done(group: SetGroup) -> bool:
    """Whether the coach has it done in this week; what is not counted is done all the same."""
    return group.work.sets is None or group.work.sets.high > 0


def _day(ledger: Ledger, week: Week, day: int) -> SheetDay:
    starts = ledger.programme.starts
    if not day:
        return SheetDay("any day", "any day")
    weekday = day_name(starts, day)
    if starts is None:
        return SheetDay(weekday, weekday, weekday)
    on = starts + timedelta(days=7 * (week.number - 1) + day - 1)
    return SheetDay(f"{weekday} {long_date(on)}", f"{weekday[:3]} {short_date(on)}", weekday, on)


def _when_and_where(ledger: Ledger, week: Week, visit: Visit) -> SheetDay:
    """The day of a visit, with its hour and its place where they are written."""
    day, hour = _day(ledger, week, visit.day), visit.hour
    clock = f", {int(hour)}:{round(hour % 1 * 60):02}" if hour is not None else ""
    place = f", at {safe(visit.at)}" if visit.at else ""
    return SheetDay(f"{day.words}{clock}{place}", day.short, day.weekday, day.date)


def _plan(
    ledger: Ledger, week: Week, numbers: Mapping[Visit, int]
) -> Iterator[tuple[str, tuple[Entry, ...]]]:
    """What each day of the week holds: sessions, activities and events, in the order of the days."""
    held: list[tuple[int, int, str]] = []
    for visit, number in numbers.items():
        held.append((visit.day or ANY_DAY, number, visit.session.name or "Session"))
    for activity in week.activities:
        minutes = f", {activity.minutes} min" if activity.minutes else ""
        held += [
            (day, 0, f"{activity.name}{minutes}") for day in activity.days_in(week.in_block) or (ANY_DAY,)
        ]
    for on, event in ledger.events():
        if (on - 1) // 7 + 1 == week.number:
            held.append(((on - 1) % 7 + 1, 0, event.name))
    days: dict[int, list[Entry]] = {}
    for day, number, words in sorted(held, key=lambda one: (one[0], not one[1])):
        days.setdefault(day, []).append((safe(words), number))
    for day, entries in days.items():
        yield _day(ledger, week, day % ANY_DAY).short, tuple(entries)


# Sessions and lines


def _session(ledger: Ledger, week: Week, visits: list[Visit], manner: _Manner) -> SheetSession:
    session = visits[0].session
    return SheetSession(
        safe(session.name) or "Session",
        tuple(_when_and_where(ledger, week, visit) for visit in visits),
        tuple(_items(visits[0], manner)),
        preparation=safe(", ".join(term.words for term in session.preparation)),
        note=manner.told(session.note),
        pain=week.rehabilitation,
        cool_down=safe(", ".join(term.words for term in session.cool_down)),
        lasts=f"{visits[0].minutes} min in all" if visits[0].minutes else "",
    )


def _items(visit: Visit, manner: _Manner) -> Iterator[SheetItem]:
    """What a session holds in order: lines, and lines in turn together."""
    lines: dict[Prescription, list[SetGroup]] = {}
    for group in visit.own:
        if _is_done(group):
            lines.setdefault(group.prescription, []).append(group)
    runs: list[list[Prescription]] = []
    for line in lines:
        if runs and line.paired is not None and line.paired is runs[-1][-1].paired:
            runs[-1].append(line)
        else:
            runs.append([line])
    for number, run in enumerate(runs, start=1):
        marks = [f"{number}{'abcdefghijklmnopqrstuvwxyz'[at % 26]}" for at in range(len(run))]
        marks = marks if len(run) > 1 else [str(number)]
        built = tuple(_line(mark, lines[line], manner) for mark, line in zip(marks, run, strict=True))
        paired = run[0].paired
        if paired is None:
            yield SheetItem(built)
        else:
            yield SheetItem(built, _in_turn(paired, marks), manner.told(paired.note))


def _in_turn(paired: Pairing, marks: list[str]) -> str:
    """``In turn: a set of 3a, then of 3b. Rest 2 min after each round.``"""
    turn = f"In turn: a set of {', then of '.join(marks)}." if len(marks) > 1 else ""
    if paired.kind == "complex":
        turn = f"One set is {', then '.join(marks)}, without putting the load down."
    rest = f"Rest {spoken(paired.rest)} after each round." if paired.rest is not None else ""
    return " ".join(part for part in (turn, *_by_clock(paired.clock), rest) if part)


def _by_clock(clock: Clock | None) -> Iterator[str]:
    """``The next exercise every 60 s, for 12 min.``"""
    if clock is None:
        return
    lasts = f", for {spoken(clock.lasts)}" if clock.lasts is not None else ""
    if clock.counts_rounds and clock.lasts is not None:
        yield f"As many rounds as you can in {spoken(clock.lasts)}."
    elif clock.every is not None:
        yield f"A round every {spoken(clock.every)}{lasts}."
    elif clock.turn is not None:
        yield f"The next exercise every {spoken(clock.turn)}{lasts}."
    elif clock.on is not None:
        off = f", {spoken(clock.off)} off" if clock.off is not None else ""
        yield f"{spoken(clock.on)} on{off}{lasts}."
    if clock.cap is not None:
        yield f"Stop after {spoken(clock.cap)}."


def _line(mark: str, groups: list[SetGroup], manner: _Manner) -> SheetLine:
    line = groups[0].prescription
    doses = tuple(dose(group, manner.steps, manner.unit) for group in groups)
    alternates = [safe(term.words) for term in line.alternates]
    return SheetLine(
        mark,
        _exercise(line, groups),
        tuple(doses),
        instead=f"If you cannot do it here: {listed(alternates, 'or')}." if alternates else "",
        warm_up=_warm_up(line, doses[0].amounts.weights, doses[0].amounts.unit),
        progression=_progression(line.progression, manner.told),
        note=manner.told(line.note),
        cue=_sentence("Think of: ", manner.told(line.cue)),
        stop=_sentence("Stop when: ", manner.told(line.stop_when)),
    )


def _exercise(line: Prescription, groups: list[SetGroup]) -> str:
    """The names of what is done; of what is left to the athlete, that it is."""
    names = safe(listed(list(dict.fromkeys(group.name for group in groups))))
    return f"{names}, your own choice" if line.kind == OWN_CHOICE and "choice" not in names else names


def _sentence(head: str, words: str) -> str:
    """``Think of: knees out.``; empty where there are no words."""
    return f"{head}{words.rstrip('.')}." if words else ""


def _warm_up(line: Prescription, weights: tuple[str, ...], unit: str) -> str:
    sets = line.warm_up_sets
    if sets is None or sets.high == 0:
        return ""
    up_to = f", working up to {weights[0].partition('-')[0]} {unit}" if weights and unit else ""
    return f"Warm-up: {counted_noun(str(sets), 'lighter set')} first{up_to}."


def _progression(progression: Progression | None, told: Told) -> str:
    """``Next time: add 2.5 kg when top of range in all sets, every session.``"""
    if progression is None:
        return ""
    note = told(progression.note)
    said = told(progression.words)
    return " ".join([f"Going on: {said}." if said else "", note]).strip() if said or note else ""
