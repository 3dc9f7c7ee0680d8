"""Order of exercises inside a session."""

from __future__ import annotations

from math import ceil

from ..lint.body import catalogue
from ..lint.counting.credits import credit
from ..lint.counting.effort import NO_LIFTS
from ..lint.counting.unknown import is_no_lift
from ..lint.engine.limits import Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Related, found
from ..lint.model.naming import line_name
from ..lint.wording.words import first_of, says, sets_of
from .offers import offering, putting_before

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.body.catalogue import Exercise
    from ..lint.counting.header import ProgrammeHeader
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.tally import Visit
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.text.places import Term


@rule(
    "priority-late",
    family="schedule",
    severity="note",
    confidence="training trial",
    why="The lift that comes first gains most strength; what comes last in every session may gain little. For"
    " size the order hardly matters.",
    sources=("simao-2010", "acsm-2026-order", "mcleod-2023"),
    options=(
        Option(
            "parts",
            3,
            "parts of a session, of which a priority belongs in the first",
            "common practice, no source: the first third; the trial compared first with last (Simao and"
            " others 2010)",
        ),
    ),
    stands_back=("rehabilitation",),
)
def priority_late(week: Week, limits: Limits) -> Iterator[DraftFinding]:
    """A declared priority that no session of the week comes to in its first third.

    Where the goal is strength, looks at the sessions that train a muscle or lift among the priorities; wants
    it in the first third of the exercises in at least one of them, a superset or circuit being one. Fast work
    may come before it, and so may other priorities. Sessions with an exercise that nobody knows are left
    alone, and so is a muscle that only exercises for one joint train: those come last.

    Flags:
        programme: Strength
        goal: strength
        priority: [bench press]
        sessions:
          - session: Upper
            exercises:
              - {exercise: overhead press, sets: 3, reps: 5}
              - {exercise: pull-up, sets: 3, reps: 6}
              - {exercise: bench press, sets: 3, reps: 5}  # <- here

    Passes:
        programme: Strength
        goal: strength
        priority: [bench press]
        sessions:
          - session: Upper
            exercises:
              - {exercise: bench press, sets: 3, reps: 5}
              - {exercise: overhead press, sets: 3, reps: 5}
              - {exercise: pull-up, sets: 3, reps: 6}
    """
    if week.programme.goal != "strength":
        return
    for term in week.programme.priority:
        turns = [turn for visit in week.visits if (turn := _turn(visit, term)) is not None]
        if any(turn.is_early(limits.number("parts")) for turn in turns):
            continue
        if not any(turn.entry.compound for turn in turns):
            continue
        turn = turns[0]
        line = turn.entry.prescription
        several = "; no session has it earlier" if len(turns) > 1 else ""
        yield found(
            line.place,
            f"{term.words} comes as exercise {turn.position} of {turn.of} in {line.session.name}{several}.",
            wanted=limits.words("a strength priority in the first {:part}", "parts"),
            change=f"Move {turn.entry.name} to the front of {line.session.name}.",
            where=line_name(line),
            edits=putting_before(turn.entry, turn.before[0], f"move {turn.entry.name} to the front"),
            subject=term.words,
            group=term.words,
            amount=Amount(turn.position, ceil(turn.of / limits.number("parts")), "exercises"),
            related=tuple(Related(one.prescription.place, "comes before it") for one in turn.before),
        )


class _Turn:
    """When a session comes to a priority: with which exercise of how many, after which that are none."""

    def __init__(self, entry: SetGroup, position: int, of: int, before: list[SetGroup]) -> None:
        self.entry = entry
        self.position = position
        self.of = of
        self.before = before

    def is_early(self, parts: float) -> bool:
        return len(self.before) * parts < self.of


def _turn(visit: Visit, term: Term) -> _Turn | None:
    items = _items(visit)
    if any(entry.exercise is None for item in items for entry in item):
        return None
    before: list[SetGroup] = []
    for position, item in enumerate(items, 1):
        for entry in item:
            if _is_for(entry, term, visit.programme):
                return _Turn(entry, position, len(items), before)
        if not any(
            _is_for(entry, other, visit.programme) for entry in item for other in visit.programme.priority
        ):
            before.append(item[0])
    return None


def _items(visit: Visit) -> list[list[SetGroup]]:
    """The exercises of a session in order, a superset or circuit being one; none that is fast or no lift."""
    items: list[list[SetGroup]] = []
    for entry in visit.own:
        fast = entry.exercise is not None and entry.exercise.kind in NO_LIFTS
        if not entry.sets.high or fast or is_no_lift(entry):
            continue
        if items and _belong_together(items[-1][0], entry):
            items[-1].append(entry)
        else:
            items.append([entry])
    return items


def _belong_together(one: SetGroup, other: SetGroup) -> bool:
    """Whether two entries are groups of one line, or stand in one superset or circuit."""
    first, second = one.prescription, other.prescription
    return first is second or (first.paired is not None and first.paired is second.paired)


def _is_for(entry: SetGroup, term: Term, programme: ProgrammeHeader) -> bool:
    """Whether an entry trains a muscle directly, or is the lift that is meant."""
    assert entry.exercise is not None
    if catalogue.area(term.words) is not None:
        return credit(entry.exercise, term.words) == 1
    return entry.exercise is programme.known.exercise(term.words)


MOST_SHOWN = 20
"""Lines of one exercise in a session that are compared with a compound: more are told by the first."""


@rule(
    "isolation-before-compound",
    family="schedule",
    severity="note",
    confidence="guideline",
    why="A position stand puts lifts over several joints before those over one, and in a trial the lifts that"
    " came last made no clear gain in strength. For size the order hardly matters, and some coaches turn"
    " it round on purpose.",
    sources=("acsm-2009-order", "simao-2010", "mcleod-2023"),
    options=(
        Condition("least sets", 2, "hard sets of the small exercise", "common practice"),
        Condition(
            "repetitions",
            15,
            "repetitions of the large exercise up to which helpers count",
            "the trial went from 12 to 15 repetitions down to 3 to 5 (Simao and others 2010, from memory)",
        ),
        Option(
            "small matter",
            ("hypertrophy", "muscular endurance", "general health"),
            "goals for which the order hardly matters",
            "size: McLeod and others 2024; endurance and health: common practice, no source",
        ),
        Option(
            "exempt",
            ("adductors", "hip abductors", "abdominals", "obliques", "lower back"),
            "muscle groups",
            "common practice: small exercises that wake the hip and trunk up",
        ),
        Option(
            "on purpose",
            ("pre-exhaust", "pre-exhaustion", "pre-fatigue", "activation", "warm-up", "primer"),
            "words in the note of the line or session",
            "common practice",
        ),
    ),
    stands_back=("rehabilitation", "careful return"),
)
def isolation_before_compound(visit: Visit, limits: Limits) -> Iterator[DraftFinding]:
    """A compound after an exercise for one joint that tires its prime mover, or a muscle that helps in it.

    Looks at squats, lunges, hinges, presses and pulls; wants no exercise for a single joint with 2 or more
    hard sets before them in the session: for one of the same muscles where they are done below 8
    repetitions, for a muscle that helps in them up to 15, as in the trial, where the triceps came before the
    bench press and the biceps before the pulldown. Silent where the goal is size, endurance or health, for a
    superset of the two, for a muscle among the priorities, for bands, which warm up for what comes, and where
    a note says that it is on purpose.

    Flags:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: leg extension, sets: 3, reps: 12}
              - {exercise: back squat, sets: 4, reps: 5}  # <- here

    Passes:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: back squat, sets: 4, reps: 5}
              - {exercise: leg extension, sets: 3, reps: 12}
    """
    words = limits.names("on purpose")
    if visit.programme.goal in limits.names("small matter") or says(words, visit.session.note):
        return
    small: dict[Exercise | None, list[SetGroup]] = {}
    late: list[tuple[SetGroup, dict[SetGroup, list[str]]]] = []
    for entry in visit.own:
        if not entry.hard or says(words, entry.prescription.note):
            continue
        if _isolates(entry, limits):
            small.setdefault(entry.exercise, []).append(entry)
        elif entry.compound:
            shared = {
                one: groups
                for several in small.values()
                if (groups := _shared_groups(several[0], entry, limits))
                for one in several[:MOST_SHOWN]
                if not _belong_together(one, entry)
            }
            if shared:
                late.append((entry, shared))
    if late:
        yield _late(visit, late)


def _late(visit: Visit, late: list[tuple[SetGroup, dict[SetGroup, list[str]]]]) -> DraftFinding:
    """What is said of a session's compounds, each with the small exercises before it and what they tire."""
    (entry, _), *others = late
    before = list(dict.fromkeys(one for _, shared in late for one in shared))
    names = first_of(list(dict.fromkeys(one.name for one in before)))
    tired = dict.fromkeys(group for _, shared in late for groups in shared.values() for group in groups)
    also = f" and {len(others)} more" if others else ""
    return found(
        entry.prescription.place,
        f"{entry.name} at {_repetitions(entry)}{also} {'come' if also else 'comes'} after {names},"
        f" which {'tire' if len(before) > 1 else 'tires'} the {first_of(list(tired))}.",
        wanted="compound lifts first",
        change=f"Put {'them' if also else 'it'} first, or write `pre-exhaustion` in a `note`.",
        where=line_name(entry.prescription),
        edits=offering(
            *(
                putting_before(
                    one, min(shared, key=lambda each: each.prescription.order), f"put {one.name} first"
                )
                for one, shared in late
            )
        ),
        subject=visit.session.name,
        related=(
            *(
                Related(one.prescription.place, f"{line_name(one.prescription)}: late, too")
                for one, _ in others
            ),
            *(
                Related(one.prescription.place, f"{line_name(one.prescription)}: {sets_of(str(one.sets))}")
                for one in before
            ),
        ),
    )


def _isolates(entry: SetGroup, limits: Limits) -> bool:
    """Whether it is enough work of an exercise for one joint, for a muscle that is no priority.

    With a band it warms up for what comes (common practice, no source).
    """
    exercise = entry.exercise
    if exercise is None or entry.compound or exercise.kind != "dynamic" or entry.implement == "band":
        return False
    if entry.sets.middle < limits.number("least sets"):
        return False
    return not any(_is_for(entry, term, entry.programme) for term in entry.programme.priority)


def _shared_groups(small: SetGroup, large: SetGroup, limits: Limits) -> list[str]:
    """Muscle groups that the small exercise trains directly, and that count in the large one."""
    assert small.exercise is not None
    assert large.exercise is not None
    counting = large.exercise.direct if large.slot == "heavy" else ()
    if _is_as_in_the_trial(large, limits):
        counting = (*counting, *large.exercise.indirect)
    shared = set(small.exercise.direct).intersection(counting)
    return [
        group
        for group, members in catalogue.groups.items()
        if shared.intersection(members) and group not in limits.names("exempt")
    ]


def _is_as_in_the_trial(entry: SetGroup, limits: Limits) -> bool:
    """Whether its repetitions are known, and few enough for helpers to matter."""
    reps = entry.a_set
    return reps is not None and reps.middle <= limits.number("repetitions")


def _repetitions(entry: SetGroup) -> str:
    """``5 repetitions`` or ``6RM``."""
    reps = entry.work.reps.a_set() if entry.work.reps else None
    if reps is not None:
        return f"{reps} repetitions"
    assert entry.work.load is not None
    return entry.work.load.words
