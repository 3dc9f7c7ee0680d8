"""Weeks that were pasted: written like another one while the weeks around them rise."""

from __future__ import annotations

from bisect import bisect_left
from itertools import pairwise

from ..lint.counting.change import weeks_of_lines
from ..lint.engine.registry import rule
from ..lint.findings.finding import Related, found
from ..lint.model.naming import line_name
from ..lint.wording.words import first_of, says
from .easier_weeks import EASY
from .odd_weeks import in_words_of, repetitions_of, value_of
from .shared import capital

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding, Edit
    from ..lint.model.sessions import Work
    from ..lint.text.places import Place
    from .odd_weeks import Line
    from .offers import Offer


@rule(
    "week-pasted",
    family="progression",
    severity="note",
    confidence="common practice",
    why="A week that repeats another, in a programme that rises on both sides of it, is often a copy"
    " that was never changed.",
    sources=(),
    asks=True,
)
def week_pasted(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """A week written like another one while the weeks around it rise.

    Compares what all lines hold in typical weeks that follow one another: sets, repetitions, load, effort.
    Points at two weeks alike, if no other two are, where a line rises into the first and again out of the
    second, in load, repetitions or sets; or where the first begins after a deload, and the line rises from
    week to week everywhere else. A value that is written for both weeks at once is meant. Points also
    at a single week in which a line repeats sets, repetitions and load of an earlier week, with a lower load
    and more repetitions than before and after it, where without that week the load never falls; and at a
    week behind a deload that is an earlier one in all lines, where the next goes on above all before.

    Flags:
        programme: Squat
        weeks: 4
        sessions:
          - session: Lower
            exercises:
              - exercise: back squat
                sets: 3
                reps: 5
                load: {1: 70 %, 2: 72.5 %, 3: 72.5 %, 4: 77.5 %}  # <- here

    Passes:
        programme: Squat
        weeks: 4
        sessions:
          - session: Lower
            exercises:
              - exercise: back squat
                sets: 3
                reps: 5
                load: {1: 70 %, 2-3: 72.5 %, 4: 77.5 %}
    """
    weeks = tuple(week for week in ledger.weeks if week.is_typical())
    lines: list[Line] = ledger.recall(weeks_of_lines, weeks)
    doses = [_doses(week) for week in weeks]
    has_gaps = len(weeks) < len(ledger.weeks)
    yield from _fallen_back(lines, _written_before(weeks, doses) if has_gaps else {})
    alike = [at for at in range(1, len(weeks)) if doses[at] == doses[at - 1]]
    if len(alike) != 1:
        return
    rising = [one for line in lines if (one := _repeated(line, weeks[alike[0]].number))]
    if not rising:
        return
    at, again, key = rising[0]
    first, second = at[0].number, again[0].number
    names = list(dict.fromkeys(one[1].name for _, one, _ in rising))
    yield found(
        again[1].work.places[key],
        f"Every line repeats week {first}, while {first_of(names)}"
        f" {'rises' if len(names) == 1 else 'rise'} before and after.",
        wanted="a step in this week too",
        change=f"Write what week {second} holds, or one value for both, `{first}-{second}`.",
        where=line_name(again[1].prescription),
        edits=_as_one([(one[1].work.places[what], two[1].work.places[what]) for one, two, what in rising]),
        subject="pasted week",
        related=tuple(Related(two[1].work.places[what], two[1].name) for _, two, what in rising[1:]),
        weeks=(second,),
        once=True,
    )


def _written_before(weeks: tuple[Week, ...], doses: list[list[tuple[object, ...]]]) -> dict[int, int]:
    """The numbers of weeks that hold in all lines what an earlier week held, each with that one's."""
    first = {week.number: weeks[doses.index(dose)].number for week, dose in zip(weeks, doses, strict=True)}
    return {number: earlier for number, earlier in first.items() if earlier < number}


def _fallen_back(lines: list[Line], alike: dict[int, int]) -> Iterator[DraftFinding]:
    """One finding on the week in which lines hold what they held in an earlier one."""
    by_week: dict[int, list[tuple[Line, int, int]]] = {}
    for line in lines:
        for at, like in (*_repeats(line), *_begins_again(line, alike)):
            by_week.setdefault(line[at][0].number, []).append((line, at, like))
    if len(by_week) != 1:
        return  # twice is a pattern: somebody means it
    ((number, repeating),) = by_week.items()
    line, at, like = repeating[0]
    entry = line[at][1]
    names = list(dict.fromkeys(one[where][1].name for one, where, _ in repeating))
    yield found(
        entry.work.places["load"],
        f"{capital(first_of(names))} {'repeat' if names[1:] else 'repeats'} week {line[like][0].number}:"
        f" {_set_out(entry)}, between {_set_out(line[at - 1][1])} and {_set_out(line[at + 1][1])}.",
        wanted="a step in this week too",
        change=f"Write what week {number} holds, or say in a `note` that it is meant.",
        where=line_name(entry.prescription),
        subject="pasted week",
        related=tuple(
            Related(one[where][1].work.places["load"], one[where][1].name) for one, where, _ in repeating[1:]
        ),
        weeks=(number,),
        once=True,
    )


def _repeats(line: Line) -> Iterator[tuple[int, int]]:
    """Where a line that rises otherwise falls back to what it held, and where it held that."""
    if len(line) < 5 or not (loads := _known(value_of(entry, "load", entry) for _, entry in line)):
        return
    reps = _known(repetitions_of(entry) for _, entry in line)
    if not reps or says(EASY, *_notes_on(line)):
        return
    for at in range(2, len(line) - 1):
        others = [load for number, load in enumerate(loads) if number != at]
        rises = all(was <= now for was, now in pairwise(others))
        lighter = loads[at] < loads[at - 1]
        longer = reps[at] > max(reps[at - 1], reps[at + 1])
        dose = _dose(line[at][1].work)
        like = next((one for one in range(at - 1) if _dose(line[one][1].work) == dose), None)
        in_a_row = line[at + 1][0].number - line[at - 1][0].number == 2  # behind a deload one begins lower
        if rises and lighter and longer and in_a_row and like is not None:
            yield at, like


FAR = 1.5
"""How many times its largest step before a line rises out of a week that was pasted (common practice)."""


def _begins_again(line: Line, alike: dict[int, int]) -> Iterator[tuple[int, int]]:
    """Where a line begins again behind a deload at what it held, to go on above all that it held; and where
    it held that. Whoever means to begin anew climbs anew.
    """
    numbers = [week.number for week, _ in line]
    loads = _known(value_of(entry, "load", entry) for _, entry in line)
    reps = _known(repetitions_of(entry) for _, entry in line)
    for at in range(2, len(line) - 1) if loads and reps and alike else ():
        earlier = alike.get(numbers[at])
        before, steps = loads[:at], [now - was for was, now in pairwise(loads[:at])]
        behind_a_deload = numbers[at - 1] < numbers[at] - 1 == numbers[at + 1] - 2
        goes_on = loads[at + 1] > max(before) and reps[at + 1] == reps[at]
        leaps = min(steps) >= 0 and loads[at + 1] - loads[at] > FAR * max(steps) > 0
        if earlier in numbers[:at] and behind_a_deload and goes_on and leaps:
            yield at, numbers.index(earlier)


def _known(values: Iterable[float | None]) -> list[float]:
    """Some values, if all of them are known; else none."""
    known = []
    for value in values:
        if value is None:
            return []
        known.append(value)
    return known


def _notes_on(line: Line) -> Iterator[str]:
    for _, entry in line:
        yield entry.prescription.note
        yield entry.prescription.session.note


def _set_out(entry: SetGroup) -> str:
    """``4 x 8 at 70 %``."""
    return f"{entry.sets} x {in_words_of(entry, 'reps')} at {in_words_of(entry, 'load')}"


def _as_one(places: list[tuple[Place, Place]]) -> Offer:
    """One value for both weeks, where each has the same of its own."""

    def work_out() -> Iterator[Edit]:
        from ..lint.findings.edits import in_one
        from ..lint.model.week_edits import joined

        whole = in_one("write one value for both weeks", [edit for pair in places for edit in joined(*pair)])
        if whole is not None:
            yield whole

    return work_out


def _doses(week: Week) -> list[tuple[object, ...]]:
    """What a week holds, line by line, as the coach wrote it."""
    return [
        (visit.session.name, visit.day, group.name, *_dose(group.work))
        for visit in week.visits
        for group in visit.own
    ]


def _dose(work: Work) -> tuple[object, ...]:
    reps = (work.reps.sets, work.reps.parts) if work.reps else None
    load = work.load.words if work.load else ""
    return work.sets, reps, load, work.rir, work.rpe, work.hold, work.distance


def _repeated(line: Line, second: int) -> tuple[tuple[Week, SetGroup], tuple[Week, SetGroup], str] | None:
    """The two weeks in which a line holds the same, and by which key it rises around them; None if not."""
    numbers = [week.number for week, _ in line]
    at = bisect_left(numbers, second)
    if at < 2 or numbers[at - 1 : at + 2] != [second - 1, second, second + 1]:
        return None
    for key in ("load", "reps", "sets"):
        places = [one.work.places.get(key) for _, one in line[at - 1 : at + 1]]
        if len({place.key for place in places if place}) < 2:
            continue
        values = _known(value_of(one, key, line[at][1]) for _, one in line)
        if not values or values[at] >= values[at + 1]:
            continue
        steps = [
            values[number] < values[number + 1]
            for number, (week, after) in enumerate(pairwise(numbers))
            if after == week + 1 and number != at - 1
        ]
        if numbers[at - 2] == second - 2:
            rose = values[at - 2] < values[at - 1]
        else:
            rose = len(steps) > 2 and all(steps)
        if rose:
            return line[at - 1], line[at], key
    return None
