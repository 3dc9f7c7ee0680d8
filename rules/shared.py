"""Wordings and places that several rules share."""

from __future__ import annotations

import re
from functools import cache
from math import ceil

from ..lint.body import catalogue
from ..lint.counting.credits import DIRECT, HELPING, TOTAL
from ..lint.findings.finding import Related
from ..lint.model.naming import day_name, line_name
from ..lint.model.sessions import WEEKDAYS
from ..lint.wording.words import counted_noun, listed, says, sets_of, shortened

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Collection, Iterable, Iterator, Mapping

    from ..lint.body.catalogue import Exercise
    from ..lint.counting.counts import Count
    from ..lint.counting.header import ProgrammeHeader
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.suggestions import Suggestion
    from ..lint.counting.tally import Tally, Visit
    from ..lint.counting.week import Week
    from ..lint.findings.finding import Severity
    from ..lint.model.amounts import Load
    from ..lint.model.sessions import Prescription, Session
    from ..lint.text.places import Place

    Does = Callable[[Exercise], bool]


MOST_SUGGESTED = 50
"""Unknown names of one file for which others are looked up: more than are shown."""


def where_to_add(count: Count) -> Place:
    """The first line that was counted: what is missing could stand beside it."""
    return count.lines()[0][0].place


def where_named(count: Count) -> str:
    """The name of that line."""
    return line_name(count.lines()[0][0])


def session_of(count: Count) -> Session:
    """Its session."""
    return count.lines()[0][0].session


def session_named(count: Count) -> str:
    """The name of its session."""
    return session_of(count).name


DAYS_A_WEEK = 7

MOST_NAMED = 4
"""How many names a message gives before it only counts the rest."""


def each_line(entries: Iterable[SetGroup]) -> list[SetGroup]:
    """One entry for each line and exercise, in the order of the file."""
    each = {(entry.prescription, entry.name): entry for entry in reversed(list(entries))}
    return sorted(each.values(), key=lambda entry: (entry.prescription.place.start, entry.prescription.order))


def unless(
    tally: Tally, actions: Collection[str] = (), areas: Collection[str] = (), does: str = "does it"
) -> str:
    """``, unless `toe push` does it``: the unknown exercises whose words may mean what is missing."""
    return unless_one(tally.may_train(actions, areas), does)


def unless_one(names: list[str], does: str) -> str:
    """The same for some names; empty where there are none."""
    shown = [f"`{shortened(name)}`" for name in names]
    if len(shown) > MOST_NAMED:
        shown = [*shown[: MOST_NAMED - 1], f"one of {len(shown) - MOST_NAMED + 1} more"]
    return f", unless {listed(shown, 'or')} {does}" if shown else ""


LIFTS_OF_PARTS = ("snatch", "clean", "jerk")
"""Lifts whose pulls, forms from blocks and the like are loaded in percent of them (common practice)."""


def of_one_lift(one: Exercise, other: Exercise) -> bool:
    """Whether both are the snatch, the clean or the jerk, or a part or form of it."""
    words = set(one.name.split()) & set(other.name.split())
    return any(lift in words for lift in LIFTS_OF_PARTS)


AWAY = (
    "holiday", "holidays", "vacation", "away", "travel", "travelling", "trip", "not in week", "week off",
    "off sick", "exams", "half term", "camp", "tour", "closed", "only in week", "one session only",
)  # fmt: skip
"""Words for a week in which somebody cannot train as usual."""


def is_cut_short(week: Week, ledger: Ledger) -> bool:
    """Whether a week alone holds fewer sessions than those around it: somebody is away, and knows.

    At either end of a programme, where one week stands beside it, a note must say so.
    """
    at = week.number - 1
    around = [ledger.weeks[one] for one in (at - 1, at + 1) if 0 <= one < len(ledger.weeks)]
    if not around or any(len(other.visits) <= len(week.visits) for other in around):
        return False
    sessions = [visit.session.note for other in (week, *around) for visit in other.visits]
    return len(around) == 2 or says(AWAY, week.programme.note, week.block.note, *sessions)


def bests_on_file(entry: SetGroup) -> tuple[Related, ...]:
    """The best lifts by which a load in kg was put into %."""
    load = entry.work.load
    if load is None or load.kind not in ("mass", "bodyweight"):
        return ()
    return tuple(Related(best.exercise.place, f"best lift on file: {best.load.words}") for best in entry.best)


def is_added(load: Load) -> bool:
    """Whether a load of the body has, in any set, something on top."""
    return any(one.high > 0 for one in load.values)


def with_the(adviser: str) -> str:
    """``the physiotherapist``, or ``whoever advised it`` where no role is written."""
    return f"the {adviser}" if adviser else "whoever advised it"


def named_at(entry: SetGroup) -> Place:
    """Where the exercise is named, which for one that is swapped is the swap."""
    return entry.work.places["exercise"]


def in_test(entry: SetGroup) -> bool:
    """Whether it measures what training has brought: the line says that it tests, or its phase does."""
    line = entry.prescription
    return bool(line.test) or (line.session.block.phase or entry.programme.phase) == "test"


def is_test(entry: SetGroup) -> bool:
    """Whether it is a test, or in one a single; a maximal single is one, whatever it is called."""
    reps = entry.work.reps.a_set() if entry.work.reps else None
    is_single = reps is not None and reps.middle == 1
    if in_test(entry):
        return is_single or entry.prescription.test != ""
    load = entry.work.load
    is_whole = load is not None and load.kind == "percent" and load.span is not None and load.span.low >= 100
    return is_single and (entry.to_failure or is_whole)


KETTLEBELLS_EVERY = 4
"""Kilograms from one kettlebell to the next (common practice, no source)."""
KETTLEBELLS, DUMBBELLS = ("kettlebell", "kettlebells", "KB"), ("dumbbell", "dumbbells", "DB")


def may_be_a_kettlebell(entry: SetGroup) -> bool:
    """Whether what is usually done with a dumbbell may be done with a kettlebell, by what there is.

    Where neither is listed it may, if the line says no dumbbell, the exercise is also called by a kettlebell,
    as a goblet squat is, and there are kettlebells of its load: every 4 kg.
    """
    has = entry.programme.equipment or ()
    if says(KETTLEBELLS, *has):
        return not says(DUMBBELLS, *has) or not says(DUMBBELLS, entry.name)
    names = entry.exercise.aliases if entry.exercise else ()
    of_a_size = all(one.low % KETTLEBELLS_EVERY == 0 for one in entry.kilograms)
    return of_a_size and not has and not says(DUMBBELLS, entry.name) and says(KETTLEBELLS, *names)


def also(entries: Iterable[SetGroup], words: str) -> Iterator[Related]:
    """Further lines of the same kind, as related places."""
    return (Related(named_at(entry), f"{line_name(entry.prescription)}: {words}") for entry in entries)


def in_words(place: Place, words: str) -> str:
    """A time or a tempo as it stands at a place, or ``words`` where that is an alias or spelt otherwise."""
    plain = re.fullmatch(r"['\"]?(?:[0-9.-]+ ?(?:s|min)|[0-9X]+(?:-[0-9X]+){3})['\"]?", place.excerpt)
    return words if plain is None else place.excerpt


def names_of(entries: Iterable[SetGroup]) -> list[str]:
    """The names of the exercises, each once."""
    return list(dict.fromkeys(entry.name for entry in entries))


def as_name(name: str) -> str:
    """The name of a session among words: in quotes where it could be read as one of them.

    ``hamstrings moved`` is; ``Lower`` and ``Lower A`` are not.
    """
    return name if name[:1].isupper() and len(name.split()) <= MOST_PLAIN else f"`{name}`"


def joined(session: str) -> str:
    """What becomes of a session for which no day is left."""
    return f"merge {as_name(session)} into another session, or drop it"


def of_days(number: float) -> str:
    """``1 day``, ``3 days``."""
    return counted_noun(number, "day")


MOST_PLAIN = 2
"""Words of the name of a session that stand out by their capital letter."""


def capital(words: str) -> str:
    """The words with a capital first letter."""
    return words[:1].upper() + words[1:]


def lower(words: str) -> str:
    """The words with a small first letter."""
    return words[:1].lower() + words[1:]


def notes_on(line: Prescription) -> Iterator[str]:
    """The notes on a line, what it is paired with, and its session."""
    yield line.note
    yield line.paired.note if line.paired else ""
    yield line.session.note
    yield line.session.block.note


def beginning(words: Iterable[str]) -> Callable[[Iterable[str]], bool]:
    """A test whether one of several texts holds a word that begins so, whatever the case."""
    begins = tuple(words)
    return lambda texts: any(_beginning(begins).search(text) for text in texts)


@cache
def _beginning(words: tuple[str, ...]) -> re.Pattern[str]:
    return re.compile("|".join(rf"\b{re.escape(word)}" for word in words), re.IGNORECASE)


def free_day(week: Week) -> str:
    """A day on which the athlete could train and has no session; ``another day`` where nobody says when they
    can, empty where all their days are taken.
    """
    athlete, days = week.programme.athlete, week.by_day()
    if athlete is None or athlete.days is None:
        return "another day"
    if isinstance(athlete.days, int):
        trained = len(days) + sum(not visit.day for visit in week.visits)
        return "another day" if athlete.days > trained else ""
    taken = {day_name(week.programme.starts, day).lower() for day, _ in days}
    free = [day.capitalize() for day in athlete.days if day in WEEKDAYS and day not in taken]
    return free[0] if free else ""


def other_day(week: Week, day: int) -> str:
    """A day to move work to, other than a certain ``day`` of the week: with a session, else a free one."""
    others = [number for number, _ in week.by_day() if number != day]
    return day_name(week.programme.starts, others[0]) if others else free_day(week)


def taken_off(count: Count, most: float, *, placed: bool = True) -> str:
    """``In Push, cut bench press to 6 sets``: brings a count down to a limit. No full stop.

    Without ``placed``, a session that is the only one is not named.
    """
    from ..lint.counting.proposals import fewer

    proposal = fewer(count, most)
    if proposal is None:
        return f"Drop a line: {sets_of(ceil(count.high - most))} must go"
    return capital(proposal.words("cut", placed=placed))


def put_on(count: Count, least: float) -> str:
    """``In Push, raise bench press to 4 sets``: brings a count up to a floor. No full stop."""
    from ..lint.counting.proposals import further

    proposal = further(count, least)
    assert proposal is not None
    return capital(proposal.words("raise"))


def indirect_sets(tally: Tally, areas: Iterable[str], counting: str) -> str:
    """``, indirect sets counted half``; empty where no area has any."""
    has_any = any(tally.sets(area, TOTAL).high > tally.sets(area, DIRECT).high for area in areas)
    return f", {HELPING[counting]}" if has_any else ""


def suggested(header: ProgrammeHeader, does: Does, kinds: tuple[str, ...] = ()) -> Suggestion:
    """Exercises that do what is missing and suit the athlete; ``kinds`` replace the slow kinds."""
    from ..lint.counting.suggestions import suggest

    return suggest(header, does, kinds) if kinds else suggest(header, does)


def add(what: str, suggestion: Suggestion, to: str) -> str:
    """Advice to add what is missing, ``Add a or b to Lower A``, or that it cannot be had; no full stop."""
    if suggestion.names:
        return f"Add {listed(suggestion.names, 'or')} to {to}"
    return f"{capital(_not_to_be_had(what, suggestion))}; waive this and say so"


def added_for_each(header: ProgrammeHeader, wanted: Mapping[str, Does], to: str = "") -> str:
    """Advice to add an exercise for each thing that is missing, ``Add a and b to Lower A``.

    Each exercise is named once; of three and more the first, ``Add one each to Lower A, such as a``. At the
    end stands what cannot be had, and why; no full stop.
    """
    from ..lint.counting.suggestions import suggest

    found = {what: suggest(header, does) for what, does in wanted.items()}
    names = list(dict.fromkeys(one.names[0] for one in found.values() if one.names))
    place = f" to {to}" if to else ""
    named = f"{listed(names)}{place}" if len(names) < 3 else f"one each{place}, such as {names[0]}"
    without = [_not_to_be_had(what, one) for what, one in found.items() if not one.names]
    parts = [*([f"add {named}"] if names else []), *without]
    return capital("; ".join(parts)) + ("; waive what cannot be had" if without else "")


def _not_to_be_had(what: str, suggestion: Suggestion) -> str:
    """That nothing for ``what`` suits the athlete, and what is in the way."""
    why = f" ({'; '.join(suggestion.obstacles)})" if suggestion.obstacles else ""
    return f"no {what} suits the athlete{why}"


@cache
def serves(*actions: str) -> Does:
    """A test whether an exercise is for one of these joint actions or movement patterns; the same each time,
    so that what is suggested is recalled by it.
    """
    return lambda exercise: any(one in exercise.actions or one in exercise.patterns for one in actions)


def is_for(exercise: Exercise, area: str) -> bool:
    """Whether an exercise is mostly for an area: more than half of the muscles that it trains directly."""
    muscles = set(catalogue.area(area) or ())
    return 2 * len(muscles.intersection(exercise.direct)) > len(exercise.direct)


def coverage_severity(week: Week, severity: Severity, suggestion: Suggestion) -> Severity:
    """How serious it is that something is missing: a note in peak weeks, in a return, and where nothing suits
    the athlete; else ``severity``.
    """
    return severity if suggestion.names and not week.is_peak and week.phase != "return" else "note"


def is_of_another(entry: SetGroup) -> bool:
    """Whether its percentage is that of the lift which another takes the place of: nobody knows of what."""
    line, load = entry.prescription, entry.work.places.get("load")
    is_swapped = all(term.words != entry.name for term in line.names())
    return is_swapped and any(held.place == load for group in line.groups for held in group.get("load", ()))


def are_apart(visits: Iterable[Visit]) -> bool:
    """Whether hours lie between the sessions of a day: they are written, or a note speaks of some."""
    several = tuple(visits)
    return all(visit.hour is not None for visit in several) or says(
        ("hour", "hours"), *(visit.session.note for visit in several)
    )
