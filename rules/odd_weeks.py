"""Weeks in which a line leaves the weeks around it, and returns."""

from __future__ import annotations

import re

from ..lint.counting.change import slip_in, weeks_of_lines
from ..lint.engine.limits import COUNTING, Condition
from ..lint.engine.registry import rule
from ..lint.findings.finding import Related, found
from ..lint.model.naming import line_name
from ..lint.wording.words import first_of, plain, says, sets_of
from .easier_weeks import CLEAR_CUT, EASY, is_easier
from .load_steps import load_in_words
from .set_steps import BACK, MOST, SHARE, TINY, grown_in

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding, Edit
    from ..lint.text.places import Place
    from .offers import Offer

    Line = list[tuple[Week, SetGroup]]


@rule(
    "week-out-of-line",
    family="progression",
    severity="note",
    confidence="common practice",
    why="A value that leaves its line for one week and returns is often a slip of the pen: two digits that"
    " changed places, a nought too few. Where it is meant, a word beside it spares the next reader the"
    " question.",
    sources=("bell-2022", "enes-2024", "campos-2002", "pelland-2026-min", "pelland-2026-frac"),
    options=(
        Condition("drop", 10, "% below the loads of the weeks around it", "common practice"),
        Condition(
            "lightest",
            10,
            "percent of the best lift, below which number-implausible speaks",
            "common practice",
        ),
        Condition("times", 2, "times as much as in the weeks around it, up or down", "common practice"),
        Condition("fewest apart", 2, "sets or repetitions from the weeks around it", "common practice"),
        Condition(
            "on purpose",
            (*EASY, "heavy", "peak", "test", "overreach", "overreaching", "shock"),
            "words in a note that say that a week is meant otherwise",
            "common practice",
        ),
        *map(Condition.like, (*CLEAR_CUT, MOST, SHARE, TINY, BACK)),
        COUNTING,
    ),
)
def week_out_of_line(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """A line that leaves the weeks around it for one week, and returns.

    Follows each line through the typical weeks. Points at a week, alone of its kind on the line, with twice
    the sets of the weeks before and after it, or half of them, 2 sets or more apart; with so many repetitions
    at the same load, or half as many more that fit in between once a digit is left out, 18 for 8; with a load
    more than 10 % below both, unless its sets are fewer, too; or with a number below both that fits in
    between once two digits change places or a nought is added. A dip counts where it is the only one of the
    week, this is no easier one otherwise, and the week before does not stand out itself. A load that leaves
    upwards, and sets that rise by more than a week should, are for load-step-large and sets-step-large to
    say, a load that can hardly be meant for number-implausible. Silent where a note says that the week is
    meant, stands with it alone or speaks of it by its number.

    Flags:
        programme: Squat
        weeks: 4
        sessions:
          - session: Lower
            exercises:
              - {exercise: leg curl, sets: 3, reps: 10, rir: 2}
              - exercise: back squat
                sets: 3
                reps: 5
                load: {1: 62.5 %, 2: 65 %, 3: 56 %, 4: 67.5 %}  # <- here

    Passes:
        programme: Squat
        weeks: 4
        sessions:
          - session: Lower
            exercises:
              - {exercise: leg curl, sets: 3, reps: 10, rir: 2}
              - exercise: back squat
                sets: 3
                reps: 5
                load: {1: 62.5 %, 2: 65 %, 3: 60 %, 4: 67.5 %}
    """
    weeks = tuple(week for week in ledger.weeks if week.is_typical())
    by_week: dict[tuple[int, str], list[_Odd]] = {}
    for line in ledger.recall(weeks_of_lines, weeks):
        for what in ("load", "sets", "reps"):
            odd = _odd_weeks(line, what, limits)
            for direction in ("down", "up"):
                alike = [one for one in odd if one.direction == direction]
                if len(alike) == 1 and not _follows_a_spike(line, alike[0], limits):  # twice is a pattern
                    by_week.setdefault((alike[0].week.number, direction), []).append(alike[0])
    for (number, direction), odd in by_week.items():
        week = ledger.weeks[number - 1]
        notes = [note for one in odd for note in one.notes()]
        spoken_of = says_week(number, notes) or any(one.has_own_note for one in odd)
        if spoken_of or says(limits.names("on purpose"), *notes):
            continue
        if direction == "down" and not _is_a_slip(odd, limits):
            continue
        if direction == "up" and grown_in(ledger, week, limits):
            continue
        yield _out_of_line(odd, number)


WEEK = (
    "weeks", "week", "wks", "wk", "w", "woche", "wo", "kw", "semana", "semanas", "semaine", "semaines", "sem",
    "settimana", "sett", "s", "uke", "uge", "vecka", "v", "viikko", "vko", "tydzień", "tydz", "týden", "t",
    "hét", "hafta", "nädal", "savaitė", "nedelja", "tjedan",
)  # fmt: skip
"""What coaches call a week before its number."""


def says_week(number: int, notes: Iterable[str]) -> bool:
    """Whether a note speaks of a week by its number: ``S4 light``."""
    called = rf"(?i)(?<![^\W_])(?:{'|'.join(WEEK)})[. ]{{0,2}}0?{number}(?![0-9])"
    return any(re.search(called, note) for note in notes)


class _Odd:
    """What a line holds in one odd week, with what it holds in the weeks before and after it."""

    def __init__(
        self,
        what: str,
        before: tuple[Week, SetGroup],
        at: tuple[Week, SetGroup],
        after: SetGroup,
        values: tuple[float, float, float],
    ) -> None:
        self.what = what
        self.week_before, self.before = before
        self.week, self.entry = at
        self.after = after
        self.values = values
        self.direction = "up" if values[1] == max(values) else "down"
        slip = slip_in(self.before, self.entry, after) if what == "load" else None
        self.meant = slip[0] if slip else _a_digit_too_many(self.entry, values) if what == "reps" else None

    def notes(self) -> tuple[str, ...]:
        line = self.entry.prescription
        return line.note, line.session.note, line.session.block.note

    @property
    def has_own_note(self) -> bool:
        """Whether a note stands with its weeks alone, and not with those around them."""
        line = self.entry.prescription
        return bool(line.note) and line.note not in (
            self.before.prescription.note,
            self.after.prescription.note,
        )

    @property
    def place(self) -> Place:
        return self.entry.work.places.get(self.what, self.entry.prescription.place)

    @property
    def is_eased(self) -> bool:
        """Whether it has fewer sets, too, than both weeks around it: then somebody meant it to be light."""
        return self.entry.sets.middle < min(self.before.sets.middle, self.after.sets.middle)

    def words(self) -> str:
        """``back squat at 56 %, between weeks at 65 % and 67.5 %``."""
        was, now, then = (in_words_of(one, self.what) for one in (self.before, self.entry, self.after))
        held = {"load": f"at {now}", "sets": f"with {sets_of(now)}", "reps": f"at {now} repetitions"}[
            self.what
        ]
        around = was if was == then else f"{was} and {then}"
        return f"{self.entry.name} {held}, between weeks {'with' if self.what == 'sets' else 'at'} {around}"


def in_words_of(entry: SetGroup, what: str) -> str:
    """The load, the number of sets, or the repetitions of a set."""
    if what == "load":
        return load_in_words(entry.work).words
    return str(entry.sets if what == "sets" or entry.work.reps is None else entry.work.reps.a_set())


def value_of(entry: SetGroup, what: str, like: SetGroup) -> float | None:
    """The sets or repetitions of an entry, or its load in the unit of another; None if it is not known."""
    if what == "sets":
        return entry.sets.middle
    if what == "reps":
        return repetitions_of(entry)
    unit = next(iter(like.measured), "")
    return entry.measured.get(unit)


def _odd_weeks(line: Line, what: str, limits: Limits) -> list[_Odd]:
    """The weeks of a line that leave both their neighbours."""
    entries = [entry for _, entry in line]
    if len({id(getattr(entry.work, what)) for entry in entries}) == 1:
        return []  # one value for all weeks
    odd, apart = [], limits.number("fewest apart")
    values = [] if what == "load" else [value_of(entry, what, entry) for entry in entries]
    for at in range(1, len(line) - 1):
        three = entries[at - 1 : at + 2]
        was, now, then = values[at - 1 : at + 2] or [value_of(one, what, entries[at]) for one in three]
        if was is None or now is None or then is None or now == sorted((was, now, then))[1]:
            continue
        if what == "sets" and (abs(now - was) < apart or not _stands_out(was, now, then, limits)):
            continue  # as `_leaves` says: sets change in most lines, and few stand out
        one = _Odd(what, line[at - 1], line[at], entries[at + 1], (was, now, then))
        if len({_beside(each, what) for each in three}) > 1 and (what == "load" or one.meant is None):
            continue
        if _leaves(one, limits):
            odd.append(one)
    return odd


def _follows_a_spike(line: Line, odd: _Odd, limits: Limits) -> bool:
    """Whether a value is low beside the week before alone, which stands out from the weeks around it."""
    at = [week for week, _ in line].index(odd.week)
    earlier = [value_of(one, odd.what, odd.entry) for _, one in line[: at - 1][-1:]]
    was, now, then = odd.values
    return any(
        one is not None and was > max(one, now, then) * (1 + limits.number("drop") / 100) for one in earlier
    )


MUCH, NEAR = 1.5, 2
"""How many times the repetitions of the weeks around are surely odd where they read as a slip of the pen, and
how near to those weeks what was meant must be (common practice, no source)."""


def _a_digit_too_many(entry: SetGroup, values: tuple[float, float, float]) -> float | None:
    """The repetitions meant where a digit slipped in, 18 for 8; None where none did, and for a range."""
    was, now, then = values
    digits = in_words_of(entry, "reps")
    if now < max(was, then) * MUCH or len(digits) < 2 or not digits.isdigit():
        return None
    found = {int(digits[:at] + digits[at + 1 :]) for at in range(len(digits))}
    near = [one for one in found if min(was, then) - NEAR <= one <= max(was, then) + NEAR]
    return float(near[0]) if len(near) == 1 else None


def _beside(entry: SetGroup, what: str) -> object:
    """What stays the same beside an odd value: the repetitions of a load, the load of repetitions."""
    if what == "load":
        return repetitions_of(entry)
    return (entry.work.load.words if entry.work.load else "") if what == "reps" else None


def repetitions_of(entry: SetGroup) -> float | None:
    """The repetitions of a set, the middle of a range; None if none are written."""
    reps = entry.work.reps.a_set() if entry.work.reps else None
    return reps.middle if reps else None


def _leaves(odd: _Odd, limits: Limits) -> bool:
    was, now, then = odd.values
    if odd.what == "load":
        percent = odd.entry.percent
        if percent is not None and percent.high < limits.number("lightest"):
            return False
        if odd.meant is None and odd.is_eased:
            return False
        return odd.meant is not None or now < min(was, then) * (1 - limits.number("drop") / 100)
    return odd.meant is not None or _stands_out(was, now, then, limits)


def _stands_out(was: float, now: float, then: float, limits: Limits) -> bool:
    """Whether sets or repetitions are so many times those before and after, or such a part of them."""
    times, apart = limits.number("times"), limits.number("fewest apart")
    low, high = min(was, then), max(was, then)
    return now >= max(high * times, high + apart) or now <= min(low / times, low - apart)


def _is_a_slip(odd: list[_Odd], limits: Limits) -> bool:
    """Whether a dip is of one value alone, in a week that is otherwise as hard as the one before.

    A number that reads as a slip of the pen is one even where its line is all that the week holds.
    """
    one = odd[0]
    return len(odd) == 1 and (one.meant is not None or not is_easier(one.week, one.week_before, limits))


def _out_of_line(odd: list[_Odd], number: int) -> DraftFinding:
    first = min(odd, key=lambda one: one.entry.prescription.place.start)
    others = [one.entry.name for one in odd if one is not first]
    meant = f"Write {plain(first.meant)} if that is meant" if first.meant else "Correct it if it is a slip"
    return found(
        first.place,
        f"{first.words()}{f'; also {first_of(others)}' if others else ''}.",
        wanted="in line with the weeks around it",
        change=f"{meant}, or say in a `note` why.",
        where=line_name(first.entry.prescription),
        edits=_in_line(first),
        subject=f"week {number} {first.direction}",
        related=tuple(
            Related(one.place, line_name(one.entry.prescription)) for one in odd if one is not first
        ),
        weeks=(number,),
    )


def _in_line(odd: _Odd) -> Offer:
    """The number that was meant; else what the week before or after holds."""

    def work_out() -> Iterator[Edit]:
        from ..lint.remedies.values import one_of, with_number

        around = [one.work.places.get(odd.what) for one in (odd.before, odd.after)]
        if odd.meant and odd.what == "reps":
            yield from one_of(odd.place, [plain(odd.meant)])
        elif odd.meant and odd.entry.work.load:
            yield from with_number(odd.place, odd.entry.work.load.values[0].low, [odd.meant])
        else:
            yield from one_of(odd.place, dict.fromkeys(one.excerpt for one in around if one is not None))

    return work_out
