"""What a programme puts first, against the rest."""

from __future__ import annotations

from math import floor

from ..lint.body import catalogue
from ..lint.counting.counts import counted_lines
from ..lint.counting.credits import DIRECT, TOTAL, credit
from ..lint.counting.week import muscles_of
from ..lint.engine.limits import COUNTING, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, found
from ..lint.wording.words import first_of, plain, sets_of
from .offers import dropping, offering
from .shared import add, capital, indirect_sets, suggested, unless

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.counts import Count
    from ..lint.counting.tally import Tally
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding, Edit
    from ..lint.text.places import Place, Term
    from .offers import Offer


@rule(
    "priority-not-ahead",
    family="coverage",
    severity="note",
    confidence="common practice",
    why="A muscle that comes first usually gets more than the rest; size rises with weekly sets, if ever more"
    " slowly. How much more is the coach's choice.",
    sources=("pelland-2026-hyp", "pelland-2026-frac"),
    options=(
        Option(
            "lead",
            0,
            "sets a week by which a priority must be ahead of the mean of the rest",
            "common practice",
        ),
        Option(
            "left out",
            ("gluteals", "adductors", "hip flexors", "lower back", "forearms"),
            "muscle groups that are not counted among the rest",
            "common practice: compounds feed them all",
        ),
        COUNTING,
    ),
    stands_back=("rehabilitation", "peak"),
    follows=("knee-flexion-missing", "hip-hinge-missing"),
)
def priority_not_ahead(week: Week, limits: Limits) -> Iterator[DraftFinding]:
    """A priority muscle that gets no more sets than the rest of its half of the body.

    Compares hard sets in a typical week, or a full turn where sessions rotate, helping ones as half, the
    middles of ranges: a priority against the mean of the other groups that are trained directly in the same
    half of the body, priorities and groups that compounds feed left out. Silent for strength and power, where
    order and load say what comes first.

    Flags:
        programme: Legs
        goal: hypertrophy
        priority: [hamstrings]  # <- here
        sessions:
          - session: Lower
            exercises:
              - {exercise: leg extension, sets: 6, reps: 10}
              - {exercise: seated leg curl, sets: 6, reps: 10}

    Passes:
        programme: Legs
        goal: hypertrophy
        priority: [hamstrings]
        sessions:
          - session: Lower
            exercises:
              - {exercise: leg extension, sets: 6, reps: 10}
              - {exercise: seated leg curl, sets: 7, reps: 10}
    """
    programme = week.programme
    if not week.is_typical() or programme.goal in ("strength", "power"):
        return
    counting, turn = limits.name("counting"), week.turn()
    tally = turn.tally
    first = muscles_of(programme.priority)
    for term in programme.priority:
        rest = rest_of_half(tally, term.words, first, limits.names("left out"))
        if not catalogue.is_group(term.words) or not rest or tally.leaves_open(areas=(term.words,)):
            continue
        own = tally.sets(term.words, counting)
        others = {group: tally.sets(group, counting) for group in rest}
        mean = sum(count.middle for count in others.values()) / len(others)
        if turn.a_week(own.middle - mean) > limits.number("lead"):
            continue
        ahead_of = mean + limits.number("lead")
        advice = _ahead(week, term.words, own, [*others.values()], ahead_of)
        yield found(
            term.place,
            f"{sets_of(str(own))}{turn.words or ' a week'} for the {term.words}, a priority;"
            f" {plain(mean)}{' on average' if len(rest) > 1 else ''} for the {first_of(rest)}"
            f"{indirect_sets(tally, (term.words, *rest), counting)}"
            f"{unless(tally, areas=(term.words,), does='adds to it')}.",
            wanted=limits.words("{:more sets} than the rest", "lead"),
            change=f"{advice}, or drop it from `priority`.",
            where="priority",
            edits=offering(_put_ahead(own, [*others.values()], ahead_of), dropping(term.place)),
            group=term.words,
            amount=Amount(own.middle, mean + max(limits.number("lead"), 1)),
            line=_beside(term, own, tally),
            related=counted_lines(own),
            excess=turn.a_week(mean - own.middle),
        )


def _beside(term: Term, own: Count, tally: Tally) -> Place | None:
    """The line of leg work beside which hamstrings lack any: what the rules on legs speak of, too."""
    if own.parts or not muscles_of([term]).issubset(catalogue.groups["hamstrings"]):
        return None
    return next((line.place for line, _ in tally.sets("quadriceps", TOTAL).lines()), None)


MOST_ADDED = 4
"""Sets that a priority is advised to take on at once (common practice, no source)."""


def _ahead(week: Week, area: str, own: Count, others: list[Count], mean: float) -> str:
    """How a priority comes ahead of a mean: more sets of a line that trains it, else an exercise."""
    from ..lint.counting.proposals import further

    proposal = further(own, floor(mean) + 1, others)
    if proposal is not None and proposal.changes[0].by <= MOST_ADDED:
        return capital(proposal.words("raise"))
    if proposal is not None:
        return f"Take sets off the rest: a lead would take {sets_of(proposal.changes[0].by)} more"
    session = week.visits[0].session.name
    return add(f"work for {area}", suggested(week.programme, lambda one: credit(one, area) == 1), session)


def _put_ahead(own: Count, others: list[Count], mean: float) -> Offer:
    """More sets of the line that trains it, where these are not too many at once."""

    def work_out() -> Iterator[Edit]:
        from ..lint.counting.proposals import further
        from ..lint.remedies.sets_changed import written

        proposal = further(own, floor(mean) + 1, others)
        if proposal is not None and proposal.changes[0].by <= MOST_ADDED:
            yield from written(proposal.changes, proposal.words("raise"))

    return work_out


def rest_of_half(tally: Tally, area: str, first: set[str], left_out: tuple[str, ...]) -> list[str]:
    """The other groups trained directly in the same half of the body, each muscle in one group only."""
    muscles = catalogue.area(area) or ()
    halves = [set(catalogue.area(name) or ()) for name in ("lower body", "upper body")]
    half = next((one for one in halves if one.intersection(muscles)), set())
    rest = [
        group
        for group, members in catalogue.groups.items()
        if half.issuperset(members)
        and not first.intersection(members)
        and group not in left_out
        and tally.sets(group, DIRECT)
    ]
    return [group for group in rest if not any(_is_within(group, other) for other in rest)]


def _is_within(group: str, other: str) -> bool:
    return set(catalogue.groups[group]) < set(catalogue.groups[other])
