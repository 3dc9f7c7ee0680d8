"""Balance: opposing muscles, left and right, two legs and one."""

from __future__ import annotations

from ..lint.body import catalogue
from ..lint.counting.counts import counted_lines
from ..lint.counting.credits import DIRECT
from ..lint.counting.week import muscles_of
from ..lint.engine.limits import Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, found
from ..lint.model.naming import line_name
from ..lint.wording.words import counted_noun, first_of, listed, says, sets_of
from .before_events import MEETS
from .beside import keeps_up_away
from .offers import adding, offering, raising, writing
from .shared import add, capital, serves, session_named, session_of, suggested

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.body.catalogue import Pair, Side
    from ..lint.counting.counts import Count
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.tally import Tally
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding, Edit, Severity
    from ..lint.model.sessions import Prescription
    from .offers import Offer


@rule(
    "antagonist-imbalance",
    family="balance",
    severity="warning",
    confidence="common practice",
    why="Coaches keep the work of opposing muscles near one another, with room on both sides. No trial sets"
    " a ratio of sets; this is about coverage and forecasts no injury.",
    sources=("cp-balance", "row-press-balance", "kellis-2023"),
    options=(
        Condition(
            "fewest together",
            6,
            "direct sets a week of both sides",
            "common practice, no source: with fewer sets a share says little",
        ),
        Condition("fewest apart", 3, "direct sets a week between the sides", "common practice, no source"),
        Option(
            "near",
            1.5,
            "times as many sets on one side: a note past it",
            "common practice, no source: 2 : 3 to 3 : 2; no trial sets a ratio of sets",
        ),
        Option(
            "far",
            2,
            "times as many sets on one side: a note past it, for other pairs than the thigh",
            "common practice, no source: 1 : 2 to 2 : 1; no trial sets a ratio of sets",
        ),
        Condition(
            "surely",
            3,
            "times as many sets on one side: a warning past it, for the thigh",
            "common practice, no source: what a coach may have meant does not block",
        ),
        Condition(
            "elsewhere",
            3,
            "times as many sets on one side: a note past it, where neither is to be built",
            "common practice, no source",
        ),
        Option(
            "lifting",
            ("powerlifting", "weightlifting", "strongman", "bench press"),
            "words in the name of a sport that is about certain lifts",
            "common practice",
        ),
        Option("meets", MEETS, "words in the name of an event, where no sport is written", "common practice"),
    ),
    stands_back=("rehabilitation", "peak"),
    follows=("hip-hinge-missing", "knee-flexion-missing", "pull-or-push-missing"),
)
def antagonist_imbalance(week: Week, ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """One side of an opposing pair gets far more direct sets than the other.

    Counts direct hard sets of each side of a pair (front and back of the thigh, pressing and pulling, elbow
    flexion and extension, outer and inner hip) in a typical week, or over a full turn where sessions rotate;
    compares the middles of ranges. The thigh is a note outside 2:3 to 3:2 and a warning outside 1:3 to 3:1;
    other pairs are a note outside 1:2 to 2:1. Where the goal is not size and nothing names the muscles, the
    thigh is left alone, and other pairs are a note outside 1:3 to 3:1; but none is in preparation for a meet,
    by the athlete's sport or by an event: there the lifts decide. Both the hard sets and all sets must say
    so, and of blocks of one week all together. Silent where a side is empty: other rules say what is missing;
    in season, for up to 6 weeks away from home, below 3 sets between the sides, in a week with fewer sessions
    than others of its block, and where a priority is trained by the stronger side more than by the other:
    more of it is meant.

    Flags:
        programme: Legs
        goal: hypertrophy
        sessions:
          - session: Lower
            exercises:
              - {exercise: leg extension, sets: 9, reps: 10}  # <- here
              - {exercise: hack squat, sets: 4, reps: 8}
              - {exercise: seated leg curl, sets: 2, reps: 10}
              - {exercise: Romanian deadlift, sets: 2, reps: 8}

    Passes:
        programme: Legs
        goal: hypertrophy
        sessions:
          - session: Lower
            exercises:
              - {exercise: leg extension, sets: 6, reps: 10}
              - {exercise: seated leg curl, sets: 2, reps: 10}
              - {exercise: Romanian deadlift, sets: 2, reps: 8}
    """
    if not week.is_typical():
        return
    for pair in catalogue.pairs:
        yield from _judged(week, ledger, pair, limits)


def _judged(week: Week, ledger: Ledger, pair: Pair, limits: Limits) -> Iterator[DraftFinding]:
    turn = week.turn()
    weak, strong = pair.sides
    less = turn.tally.for_actions(weak.trained_by, hard=True)
    more = turn.tally.for_actions(strong.trained_by, hard=True) if less else less
    if more.middle < less.middle:
        less, weak, more, strong = more, strong, less, weak
    if not less or turn.a_week(less.middle + more.middle) < limits.number("fewest together"):
        return
    ratio, allowed = more.middle / less.middle, limit_of(week, ledger, pair, limits)
    if allowed is None or ratio <= allowed:
        return
    limit, bound = ("near", "{:ratios}") if pair.serious else ("far", "at most {:times as many} on one side")
    most = limits.number(limit)
    if not (week.means(weak.area) and week.means(strong.area)) or turn.tally.could_hold(weak.trained_by):
        return
    if (
        week.phase == "in-season"
        or has_days_off(week, ledger)
        or keeps_up_away(ledger)
        or more.middle - less.middle < limits.number("fewest apart")
    ):
        return
    if not all(_is_uneven(tally, strong, weak, most) for tally in (turn.tally, of_rota(week, ledger))):
        return
    if _is_meant(week, more, less):
        return
    serious: Severity = "warning" if pair.serious and ratio > limits.number("surely") else "note"
    line = more.lines()[0][0]
    yield found(
        line.place,
        f"{capital(strong.words)} {sets_of(str(more))}, {weak.words} {less}{turn.words}.",
        severity=serious,
        wanted=limits.words(bound, limit),
        change=f"{_evened(week, more, less, weak, most)}.",
        where=line_name(line),
        edits=_evening(week, more, less, weak, most),
        subject=pair.name,
        group=pair.name,
        amount=Amount(more.middle, less.middle * most),
        related=(*counted_lines(more), *counted_lines(less, of=weak.words)),
        excess=ratio,
    )


def has_days_off(week: Week, ledger: Ledger) -> bool:
    """Whether a week holds fewer sessions than others of its block: what is uneven then is not meant so."""
    return any(
        len(week.visits) < len(other.visits) for other in ledger.typical_weeks() if other.block is week.block
    )


def _is_meant(week: Week, more: Count, less: Count) -> bool:
    """Whether one side trains a priority directly with more sets than the other does."""
    named = [muscles_of([term]) for term in week.programme.priority]
    return any(_for_any(more, muscles) > _for_any(less, muscles) for muscles in named)


def _for_any(count: Count, muscles: set[str]) -> float:
    """The sets that train any of some muscles directly."""
    return count.where(lambda entry: trains_any(entry, muscles)).middle


def trains_any(entry: SetGroup, muscles: set[str]) -> bool:
    """Whether it trains one of some muscles directly."""
    return entry.exercise is not None and not muscles.isdisjoint(entry.exercise.direct)


def limit_of(week: Week, ledger: Ledger, pair: Pair, limits: Limits) -> float | None:
    """How many times the sets of the other a side may have; None where nobody asks."""
    most = limits.number("near" if pair.serious else "far")
    if any(week.builds(side.area) for side in pair.sides):
        return most
    if pair.serious or _is_about_lifts(ledger, limits):
        return None
    return max(most, limits.number("elsewhere"))


def _is_about_lifts(ledger: Ledger, limits: Limits) -> bool:
    """Whether a programme prepares for certain lifts: by the sport, else by an event."""
    sport = ledger.athlete.sport if ledger.athlete else ""
    if sport:
        return says(limits.names("lifting"), sport)
    return any(says(limits.names("meets"), event.name) for _, event in ledger.events())


def of_rota(week: Week, ledger: Ledger) -> Tally:
    """A turn of the week's rotation, or all the blocks of one week that follow one another with it."""
    return ledger.judged_with(week) if week.block.weeks == 1 else week.turn().tally


def _is_uneven(tally: Tally, strong: Side, weak: Side, most: float) -> bool:
    """Whether all sets say so too, the easy ones with them: which of them are hard is often worked out."""
    more, less = (tally.for_actions(side.trained_by).middle for side in (strong, weak))
    return more > most * less


def _evened(week: Week, more: Count, less: Count, weak: Side, most: float) -> str:
    """How the sides come nearer: sets that move from a line to another, or work that is added."""
    from ..lint.counting.proposals import evened

    if move := evened(more, less, most):
        return capital(move.words())
    more_work = suggested(week.programme, serves(*weak.trained_by))
    return add(f"work for the {weak.area}", more_work, session_named(less))


def _evening(week: Week, more: Count, less: Count, weak: Side, most: float) -> Offer:
    """The same as edits."""

    def work_out() -> Iterator[Edit]:
        from ..lint.counting.proposals import evened
        from ..lint.remedies.sets_changed import moved

        if evened(more, less, most) is not None:
            yield from moved(more, less, most)
        else:
            work = suggested(week.programme, serves(*weak.trained_by))
            yield from adding(week.programme, session_of(less), work)()

    return work_out


@rule(
    "sides-uneven",
    family="balance",
    severity="warning",
    confidence="common practice",
    why="Unless somebody has decided otherwise, coaches give left and right about the same work. None of our"
    " sources sets a share; this is about what was meant, and forecasts no injury.",
    sources=(),
    options=(
        Option("apart", 25, "percent fewer sets on one side than on the other", "common practice"),
        Condition("fewest apart", 2, "sets a week between the sides", "common practice"),
        Condition(
            "on purpose",
            (
                "weak",
                "weaker",
                "stronger",
                "extra",
                "on purpose",
                "behind",
                "catch up",
                "dominant",
                "bad side",
            ),
            "words in a note that say why one side does more",
            "common practice",
        ),
    ),
    stands_back=("rehabilitation", "peak", "careful return"),
)
def sides_uneven(week: Week, limits: Limits) -> Iterator[DraftFinding]:
    """Left and right of a muscle group get clearly different numbers of sets.

    Counts direct hard sets of each side, from work with `side: left` or `side: right`, in a typical week, or
    over a full turn where sessions rotate, by the middles of ranges; wants the weaker side no more than a
    quarter below the other. Silent where a line that cannot be counted may even it out, where a note says why
    one side does more, where a restriction names a side, and in a return to training with something to spare:
    there it is meant to.

    Flags:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: single-leg leg press, sets: 5, reps: 8, side: left}  # <- here
              - {exercise: single-leg leg press, sets: 3, reps: 8, side: right}

    Passes:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: single-leg leg press, sets: 4, reps: 8, side: left}
              - {exercise: single-leg leg press, sets: 3, reps: 8, side: right}
    """
    turn = week.turn()
    if not turn.tally.one_sided or not week.is_typical() or _spares_a_side(week):
        return
    uneven: dict[Prescription, list[_Sides]] = {}
    for group in turn.tally.groups():
        sides = _Sides(turn.tally, group)
        if turn.a_week(sides.apart) < limits.number("fewest apart") or not week.means(group):
            continue
        bearable = sides.more.middle * limits.number("apart") / 100
        if sides.apart <= bearable or turn.tally.could_hold(areas=(group,)):
            continue
        uneven.setdefault(sides.line(), []).append(sides)
    for line, over in uneven.items():
        if says(limits.names("on purpose"), line.note, line.session.note, week.programme.note):
            continue
        worst, *others = sorted(over, key=lambda one: -one.apart)
        also = f"; {first_of([one.group for one in others], 2)} too" if others else ""
        yield found(
            line.place,
            f"{capital(worst.words(turn.words or ' a week'))}{also}.",
            wanted=limits.words("at most {:%} fewer on one side", "apart"),
            change=f"Add {sets_of(worst.apart)} on the {worst.weak}, or waive it if it is meant.",
            where=line_name(line),
            edits=offering(
                *(writing(one.work.places.get("side"), "each") for one in worst.unmatched()),
                raising(worst.one_sided(worst.less), worst.one_sided(worst.less).low + worst.apart),
            ),
            subject=listed([one.group for one in over]),
            group=worst.group,
            amount=Amount(worst.apart, worst.more.middle * limits.number("apart") / 100),
            related=counted_lines(*(one.one_sided(side) for one in over for side in (one.more, one.less))),
            excess=worst.apart,
        )


def _spares_a_side(week: Week) -> bool:
    """Whether what the athlete spares is of one side: then the other may do more."""
    athlete = week.programme.athlete
    return athlete is not None and any(says(("left", "right"), one.subject.words) for one in athlete.protect)


class _Sides:
    """The direct hard sets of both sides of a muscle group."""

    def __init__(self, tally: Tally, group: str) -> None:
        self.group = group
        self.left = tally.sets(group, DIRECT, side="left")
        self.right = tally.sets(group, DIRECT, side="right")
        self.less, self.more = sorted((self.left, self.right), key=lambda count: count.middle)
        self.weak = "left" if self.less is self.left else "right"
        self.apart = self.more.middle - self.less.middle

    def words(self, of: str) -> str:
        """``quadriceps: 5 direct sets a week left, 3 right``; ``of`` is the time that they are of."""
        return f"{self.group}: {counted_noun(str(self.left), 'direct set')}{of} left, {self.right} right"

    def one_sided(self, count: Count) -> Count:
        """The part of a count that one side alone does."""
        return count.where(lambda entry: entry.side != "")

    def unmatched(self) -> list[SetGroup]:
        """What the stronger side does with lifts that the weaker one has not: they may be meant for each."""
        matched = {part.entry.exercise for part in self.one_sided(self.less).parts}
        parts = self.one_sided(self.more).parts
        return list(dict.fromkeys(part.entry for part in parts if part.entry.exercise not in matched))

    def line(self) -> Prescription:
        """The first line that works the stronger side alone."""
        return self.one_sided(self.more).lines()[0][0]
