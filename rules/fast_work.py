"""Coverage of fast work, where the goal is power."""

from __future__ import annotations

from ..lint.counting.effort import FAST_KINDS
from ..lint.engine.limits import Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, found
from ..lint.model.quantities import Range
from ..lint.wording.words import says, sets_of
from .offers import adding
from .shared import add, session_named, session_of, suggested, unless_one, where_named, where_to_add

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from ..lint.body.catalogue import Exercise
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding


FAST_WORDS = ("fast", "faster", "explosive", "explosively", "quick", "quickly", "speed")
"""Words that say that work is done fast (common practice, no source)."""


@rule(
    "fast-work-missing",
    family="coverage",
    severity="warning",
    confidence="guideline",
    why="A position stand trains power with fast lifts at 30 to 70 % of the best lift; a handbook goes"
    " heavier. That jumps and throws count as fast work is common practice.",
    sources=("acsm-2026-load", "nsca-zones"),
    options=(
        Option("lightest", 30, "% of the best lift from which a load is one for power", "acsm-2026-load"),
        Option("heaviest", 70, "% of the best lift up to which a load is one for power", "acsm-2026-load"),
        Option(
            "words",
            (
                *FAST_WORDS,
                "sprint",
                "sprints",
                "jump",
                "jumps",
                "throw",
                "throws",
            ),
            "words in a name or note that mark work as fast",
            "common practice",
        ),
    ),
    stands_back=("rehabilitation",),
)
def fast_work_missing(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """A programme for power in which nothing is done fast.

    Counts jumps, throws and other ballistic lifts, sets with X as the lifting tempo, sets at 30 to 70 % of
    the best lift, and whatever a name or note calls fast, activities too; wants at least one set in the
    programme. Blocks are not asked one by one, since a base of strength often comes first.

    Flags:
        programme: Spring
        goal: power
        sessions:
          - session: Lower
            exercises:
              - {exercise: back squat, sets: 4, reps: 4, load: 85 %}  # <- here
              - {exercise: Romanian deadlift, sets: 3, reps: 6, rir: 2}

    Passes:
        programme: Spring
        goal: power
        sessions:
          - session: Lower
            exercises:
              - {exercise: back squat, sets: 4, reps: 4, load: 85 %, tempo: 2-0-X-0}
              - {exercise: Romanian deadlift, sets: 3, reps: 6, rir: 2}
    """
    if ledger.programme.goal != "power":
        return
    typical, sets = ledger.typical_weeks(), ledger.all_sets()
    power = Range(limits.number("lightest"), limits.number("heaviest"))
    if not typical or not sets or any(may_be_fast(entry, power) for entry in ledger.unsure()):
        return
    words = limits.names("words")
    if sets.where(lambda entry: is_fast(entry, power)) or calls_it_fast(ledger, words):
        return
    fast = suggested(ledger.header, _is_meant(ledger), FAST_KINDS)
    yield found(
        where_to_add(sets),
        f"{sets_of(str(typical[0].all_sets()))} a week for power, none of them fast"
        f"{unless_one(ledger.may_be(lambda exercise: exercise.kind in FAST_KINDS), 'is')}.",
        wanted=limits.worked_out(
            f"jumps, throws, tempo X or loads of {power} %", ("{:%}", "lightest"), ("{:%}", "heaviest")
        ),
        change=f"{add('jump or throw', fast, session_named(sets))}.",
        where=where_named(sets),
        edits=adding(ledger.header, session_of(sets), fast),
        amount=Amount(0, 1),
    )


def _is_meant(ledger: Ledger) -> Callable[[Exercise], bool]:
    """A test whether an exercise trains something that the programme means."""
    weeks = ledger.typical_weeks()
    return lambda exercise: any(weeks[0].means(muscle) for muscle in exercise.direct)


def is_fast(entry: SetGroup, power: Range) -> bool:
    """Whether sets are done fast by their kind or tempo, or the load is one for power."""
    fast_kind = entry.exercise is not None and entry.exercise.kind in FAST_KINDS
    percent = entry.percent
    return fast_kind or entry.fast_tempo or (percent is not None and percent.meets(power))


def may_be_fast(entry: SetGroup, power: Range) -> bool:
    """Whether a line that cannot be counted is fast by what is known of it."""
    slip = entry.programme.known.slip_of(entry.name) if entry.exercise is None else None
    return is_fast(entry, power) or (slip is not None and slip.kind in FAST_KINDS)


def calls_it_fast(ledger: Ledger, words: tuple[str, ...]) -> bool:
    """Whether a name or note of an activity or a line, or a note above it, holds one of these words."""
    programme = ledger.programme
    texts = [programme.note]
    for block in programme.blocks:
        texts += [block.note, *(text for one in block.activities for text in (one.name, one.note))]
    for session in programme.sessions():
        texts.append(session.note)
    for line in programme.prescriptions():
        texts += [line.note, *(term.words for term in line.names())]
    return says(words, *texts)
