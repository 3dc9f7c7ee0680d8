"""What an athlete's restrictions leave out."""

from __future__ import annotations

from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Related, found
from ..lint.model.naming import line_name, when_spared
from ..lint.wording.words import counted_noun, first_of, listed, says
from .offers import swapping
from .shared import MOST_NAMED, also, capital, each_line, is_added, named_at, names_of, with_the

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator
    from datetime import date

    from ..lint.body.catalogue import Exercise
    from ..lint.body.known import Known
    from ..lint.body.restrictions import Spared
    from ..lint.counting.ledger import Ledger, Lifter
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.model.athlete import Restriction


# What an athlete spares


def _spared(words: str, known: Known, may_stay: Iterable[str] = ()) -> Spared:
    """What the words of a restriction mean. Few athletes have one, so what reads them comes in here."""
    from ..lint.body.restrictions import read

    return read(words, known, may_stay)


@rule(
    "protected-area-loaded",
    family="care",
    severity="warning",
    confidence="anatomy",
    why="The athlete's file protects this. Which joints and muscles an exercise loads is anatomy;"
    " whether it may stay is for whoever advised it to say.",
    sources=("anatomy-crossing",),
)
def protected_area_loaded(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """An exercise that loads an area, or is a movement, that the athlete protects.

    Looks at every line in the weeks, or between the days, in which the restriction holds; wants none that
    moves or trains what the athlete's file says to spare, on the side that it names, but what is written
    there as agreed. Where the breath must go on, loaded sets at or near failure and long holds may be against
    it. One finding for each restriction, or for all that one line goes against alike; a note where some of
    the words mean nothing here. In a
    stated stage of rehabilitation an area may be loaded, for that is what the stage is for; a movement to be
    avoided still is to be avoided.

    Flags:
        programme: Press
        athlete: {name: Ida, protect: [{movement: overhead pressing, advised by: physiotherapist}]}
        sessions:
          - session: Upper
            exercises:
              - {exercise: bench press, sets: 3, reps: 8}
              - {exercise: overhead press, sets: 3, reps: 8}  # <- here

    Passes:
        programme: Press
        athlete: {name: Ida, protect: [{movement: overhead pressing, advised by: physiotherapist}]}
        sessions:
          - session: Upper
            exercises:
              - {exercise: bench press, sets: 3, reps: 8}
              - {exercise: incline bench press, sets: 3, reps: 8}
    """
    held: dict[object, _Against] = {}
    for restriction in ledger.athlete.protect if ledger.athlete else ():
        spared = spared_by(restriction, ledger)
        one = _looked_for(ledger, restriction, spared)
        if one.loading:
            like = held.setdefault(one.key, one)
            like.restrictions.append(restriction)
            like.spared.append(spared)
    for one in held.values():
        yield _loaded(ledger, one)


class _Against:
    """What loads a restriction, by lines, with the weeks, and all restrictions alike."""

    def __init__(
        self, restriction: Restriction, loading: list[SetGroup], weeks: tuple[int, ...], *, sure: bool
    ) -> None:
        self.sure = sure
        self.loading = loading
        self.weeks = weeks
        self.restrictions: list[Restriction] = []
        self.spared: list[Spared] = []
        lines = tuple(entry.prescription.place.start for entry in loading)
        self.key = (restriction.kind, restriction.adviser, sure, weeks, lines)


def _looked_for(ledger: Ledger, restriction: Restriction, spared: Spared) -> _Against:
    loading: list[SetGroup] = []
    weeks = []
    for week in () if spared.unknown else ledger.weeks:
        held = loaded_in(week, ledger, restriction, spared)
        if held:
            loading += held
            weeks.append(week.number)
    return _Against(restriction, each_line(loading), tuple(weeks), sure=not spared.strains)


def spared_by(restriction: Restriction, ledger: Ledger) -> Spared:
    """What the words of a restriction mean for an athlete."""
    return _spared(restriction.subject.words, ledger.known, restriction.may_stay)


def loaded_in(week: Week, ledger: Ledger, restriction: Restriction, spared: Spared) -> list[SetGroup]:
    """What loads, in a week, what a restriction spares on that day, if nothing says that it may."""
    from .held_back import says_that_it_may

    healing = restriction.kind == "area" and week.rehabilitation
    return [
        entry
        for visit, entry in (() if healing else week.entries())
        if _loads(entry, spared)
        and ledger.header.is_spared(restriction, week.number, visit.day)
        and not says_that_it_may(
            entry,
            restriction,
            ledger.member,
            is_measured=spared.is_measured and _said_of(entry) is not None,
            spares_bending=spared.spares_bending,
        )
    ]


def _loads(entry: SetGroup, spared: Spared) -> bool:
    """Whether an entry surely loads what is spared; work of the other side alone does not."""
    exercise = entry.exercise
    if exercise is None or (spared.side and entry.side and entry.side != spared.side):
        return False
    if not entry.is_done:
        return False
    from .held_back import is_within

    does = spared.surely_forbids(exercise, _said_of(entry)) and is_within(entry, exercise, spared.bounds)
    return does or (spared.strains and _strains(entry, exercise))


NEARLY_MAXIMAL = 85
"""% of the best lift from which the breath is held (common practice, no source)."""

LONG = 60
"""Seconds from which a hold is a long one (common practice, no source)."""


def _strains(entry: SetGroup, exercise: Exercise) -> bool:
    """Whether a loaded set goes to failure or near it, or a hold is long or as long as can be."""
    if exercise.kind == "endurance" or entry.prescription.test:
        return False
    if exercise.kind == "isometric":
        span = entry.work.hold
        return entry.to_failure or (span is not None and span.low >= LONG)
    load = entry.work.load
    of_body = load is None or (load.kind == "bodyweight" and not is_added(load))
    if of_body or entry.implement == "band":
        return False
    left, percent = entry.written_reserve, entry.percent
    is_heavy = percent is not None and percent.low >= NEARLY_MAXIMAL
    return entry.to_failure or is_heavy or (left is not None and left.high <= 1)


def _said_of(entry: SetGroup) -> tuple[float, float] | None:
    from ..lint.body.restriction_angles import said_of

    return said_of(entry.name, entry.prescription.note)


def _loaded(ledger: Ledger, one: _Against) -> DraftFinding:
    loading, sure, restriction = one.loading, one.sure, one.restrictions[0]
    instead = _instead(ledger, one)
    first, *others = loading
    subjects = listed([f"`{each.subject.words}`" for each in one.restrictions])
    adviser = with_the(restriction.adviser)
    names = names_of(loading)
    verb, protected = (
        ("load", "a protected area") if restriction.kind == "area" else ("involve", "to be avoided")
    )
    verb = f"{verb}{'s' if len(names) == 1 else ''}" if sure else f"may {verb}"
    return found(
        named_at(first),
        f"{capital(first_of(names))} {verb} {subjects}, {protected}.",
        severity="warning" if sure else "note",
        wanted="only what is `agreed`",
        change=f"{_until(one.restrictions)} {adviser} what may stay{instead}.",
        where=line_name(first.prescription),
        edits=swapping(ledger.header, loading, 1) if instead else (),
        subject=f"{restriction.kind}: {' and '.join(each.subject.words for each in one.restrictions)}",
        related=(
            *also(others, "this too"),
            *(
                Related(
                    each.subject.place,
                    " ".join(filter(None, ("protected", when_spared(each)))) + f", as advised by {adviser}",
                )
                for each in one.restrictions
            ),
        ),
        weeks=one.weeks,
    )


def _until(restrictions: list[Restriction]) -> str:
    """``Leave it out up to 2027-02-14, or ask``, where all that is spared has an end; else ``Ask``."""
    ends = [one.ends for one in restrictions]
    known = [end for end in ends if end is not None]
    return f"Leave it out up to {max(known)}, or ask" if len(known) == len(ends) else "Ask"


def _instead(ledger: Ledger, one: _Against) -> str:
    """``; swap press for lateral raise``: only what surely is none of what is spared; empty where none is."""
    from ..lint.counting.suggestions import substitutes

    alone = len(names_of(one.loading)) == 1
    written = {entry.exercise: entry.name for entry in one.loading[:MOST_NAMED]}
    for exercise, name in written.items():
        for other in substitutes(ledger.header, exercise, 1) if exercise else ():
            known = ledger.known.exercise(other)
            if known is not None and all(spared.clears(known) for spared in one.spared):
                return f"; swap {name} for {other}{'' if alone else ', and swap or leave out the rest'}"
    return ""


@rule(
    "restriction-unclear",
    family="care",
    severity="note",
    confidence="fact",
    why="What is not understood is not looked for: no line will be named as loading it.",
    sources=(),
)
def restriction_unclear(lifter: Lifter, limits: Limits) -> Iterator[DraftFinding]:
    """A restriction in words that name no part of the body and no movement, with nothing that explains them.

    Reads what the athlete protects; wants a muscle, a joint, a region, an exercise or a movement pattern.
    Silent on more than three words, which tell people what is meant; where a word is understood, where the
    words only say how things are done, such as getting up quickly, and where a note, what was agreed, or the
    dates or weeks in which it holds say more: that is for whoever leads to see to. One note an athlete.

    Flags:
        programme: Press
        athlete: {name: Ida, protect: [{movement: the usual, advised by: physiotherapist}]}  # <- here
        sessions: [{session: Upper, exercises: [{exercise: bench press, sets: 3, reps: 8}]}]

    Passes:
        programme: Press
        athlete: {name: Ida, protect: [{movement: overhead pressing, advised by: physiotherapist}]}
        sessions: [{session: Upper, exercises: [{exercise: bench press, sets: 3, reps: 8}]}]
    """
    unclear = [
        one
        for one in lifter.athlete.protect
        if _is_short(one) and not _is_explained(one) and _means_nothing(one, lifter)
    ]
    if unclear:
        subjects = [one.subject for one in unclear]
        yield found(
            subjects[0].place,
            f"{first_of([f'`{one.words}`' for one in subjects])}"
            f" name{'s' if len(subjects) == 1 else ''} no body part or movement.",
            wanted="words such as left shoulder or overhead pressing",
            change="Reword it; check the lines yourself until then.",
            where=f"{lifter.athlete.name}, protect",
            related=tuple(Related(one.place, "this too") for one in subjects[1:]),
        )


FEW = 3
"""Words at most that may be a slip or too short to tell (common practice, no source)."""
PLAIN = ("test", "tests", "testing", "max", "maxes", "maximum", "1RM", "heavy", "load", "kg")
"""Words that any coach understands, though no exercise is that by itself."""


def _is_short(one: Restriction) -> bool:
    return len(one.subject.words.split()) <= FEW and not says(PLAIN, one.subject.words)


def _is_explained(one: Restriction) -> bool:
    """Whether anything else says what is meant, or when."""
    return bool(one.agreed or one.note or one.begins or one.ends or one.in_weeks or one.review_on)


def _means_nothing(one: Restriction, lifter: Lifter) -> bool:
    spared = _spared(one.subject.words, lifter.resources.known)
    return not spared.traits and not spared.is_understood


@rule(
    "restriction-review-past",
    family="care",
    severity="warning",
    confidence="fact",
    why="The file itself says when to ask again. What was right then may be too careful, or not enough, now.",
    sources=(),
)
def restriction_review_past(lifter: Lifter, limits: Limits) -> Iterator[DraftFinding]:
    """A restriction whose review date is past.

    Looks at the date under `review on` of everything that the athlete protects; wants it today or later.
    Silent where all of the athlete's dated programmes had ended by then: nobody trains by them any more; and
    where the restriction itself is over.

    Flags:
        programme: Press
        athlete:
          name: Ida
          protect:
            - {area: left knee, advised by: physiotherapist, review on: 2025-12-01}  # <- here
        sessions: [{session: Upper, exercises: [{exercise: bench press, sets: 3, reps: 8}]}]

    Passes:
        programme: Press
        athlete:
          name: Ida
          protect:
            - {area: left knee, advised by: physiotherapist, review on: 2099-12-01}
        sessions: [{session: Upper, exercises: [{exercise: bench press, sets: 3, reps: 8}]}]
    """
    for restriction in lifter.athlete.protect:
        due = restriction.review_on
        over = restriction.ends is not None and restriction.ends < lifter.today
        if due is not None and due < lifter.today and not over and _trains_after(lifter, due):
            yield found(
                restriction.subject.place,
                f"`{restriction.subject.words}` was due for review on {due},"
                f" {counted_noun((lifter.today - due).days, 'day')} ago.",
                wanted="a date still to come",
                change=f"Ask {with_the(restriction.adviser)}, and write a new date or delete the entry.",
                where=f"{lifter.athlete.name}, protect",
            )


def _trains_after(lifter: Lifter, day: date) -> bool:
    """Whether a programme of the athlete runs on a later day, or does not say when it ends."""
    ends = [plan.ends for plan in lifter.plans]
    return not ends or any(end is None or end > day for end in ends)


@rule(
    "restriction-weeks-beyond",
    family="care",
    severity="warning",
    confidence="fact",
    why="What is to be spared in weeks that no programme has is looked for nowhere.",
    sources=(),
)
def restriction_weeks_beyond(lifter: Lifter, limits: Limits) -> Iterator[DraftFinding]:
    """A restriction in weeks that none of the athlete's programmes has.

    Weeks of a restriction count from the first week of each programme. Looks at the last of them; wants it to
    be a week of the athlete's longest programme. Silent where no programme names the athlete.

    Flags:
        programme: Press
        athlete:
          name: Ida
          protect:
            - {movement: overhead pressing, in weeks: 3-6, advised by: physiotherapist}  # <- here
        weeks: 4
        sessions: [{session: Upper, exercises: [{exercise: bench press, sets: 3, reps: 8}]}]

    Passes:
        programme: Press
        athlete:
          name: Ida
          protect:
            - {movement: overhead pressing, in weeks: 3-4, advised by: physiotherapist}
        weeks: 4
        sessions: [{session: Upper, exercises: [{exercise: bench press, sets: 3, reps: 8}]}]
    """
    longest = max((len(plan.weeks) for plan in lifter.plans), default=0)
    for restriction in lifter.athlete.protect:
        beyond = [end for _, end in restriction.in_weeks if end > longest]
        if longest and beyond:
            yield found(
                restriction.subject.place,
                f"`{restriction.subject.words}` is spared {when_spared(restriction)};"
                f" the longest programme has {counted_noun(longest, 'week')}.",
                wanted="weeks of a programme",
                change="Correct the weeks, or write `from:` and `until:` with dates.",
                where=f"{lifter.athlete.name}, protect",
                amount=Amount(max(beyond), longest, "weeks"),
            )
