"""Coverage in detail: parts of trained muscles that no set reaches."""

from __future__ import annotations

from ..lint.body import catalogue
from ..lint.counting.credits import DIRECT, TOTAL
from ..lint.counting.week import BUILDING
from ..lint.engine.limits import COUNTING, Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Related, found
from ..lint.wording.words import first_of, sets_of
from .offers import adding_each
from .shared import added_for_each, is_for, session_of, where_named, where_to_add

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.body.catalogue import Exercise
    from ..lint.counting.counts import Count
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.tally import Tally
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding


class FinerPoint:
    """A part of the body, or a way of working it, that trained muscles can miss.

    Looked for where ``parent`` is trained and ``about`` is meant. It is reached by sets that count for
    ``area`` (by ``count``: direct, or as a helper too), at ``length`` where one is given; or by sets of
    ``actions``. ``none`` says in words that there are none.
    """

    __slots__ = ("about", "actions", "area", "count", "length", "name", "none", "parent")

    def __init__(
        self,
        name: str,
        parent: str,
        about: str,
        none: str,
        *,
        area: str = "",
        count: str = DIRECT,
        length: str = "",
        actions: tuple[str, ...] = (),
    ) -> None:
        self.name = name
        self.parent = parent
        self.about = about
        self.none = none
        self.area = area
        self.count = count
        self.length = length
        self.actions = actions

    def is_reached(self, tally: Tally) -> bool:
        """Whether any set reaches it, or a line that cannot be counted may."""
        if self.actions:
            return bool(tally.for_actions(self.actions)) or self.may_be_reached(tally)
        at_length = self.is_at_length if self.length else None
        return tally.brings(self.area, self.count, at_length) or self.may_be_reached(tally)

    def may_be_reached(self, tally: Tally) -> bool:
        """Whether a line that cannot be counted may reach it."""
        return (
            tally.could_hold(actions=self.actions) if self.actions else tally.could_hold(areas=(self.area,))
        )

    def is_trained_by(self, exercise: Exercise) -> bool:
        """Whether an exercise trains it directly, and little else."""
        if self.actions:
            return any(action in exercise.actions for action in self.actions)
        if not is_for(exercise, self.area) and not (
            exercise.weight(self.area) == 1 and is_for(exercise, self.about)
        ):
            return False
        return not self.length or exercise.lengths.get(self.area) == self.length

    def is_at_length(self, entry: SetGroup) -> bool:
        """Whether a group of sets works the area at the length that is asked for."""
        return entry.exercise is not None and entry.exercise.lengths.get(self.area) == self.length


FINER_POINTS = (
    # maeo-2021, maeo-2024: the three two-joint hamstrings, of which the semitendinosus is one, share a length
    FinerPoint(
        "hamstrings at long length",
        "hamstrings",
        "hamstrings",
        "none at long length",
        area="semitendinosus",
        length="long",
    ),
    # le-vs-squat-2025, zabaleta-2021, kubo-2019; kojic-2022 found some growth from squats
    FinerPoint(
        "rectus femoris",
        "quadriceps",
        "quadriceps",
        "none that reaches the rectus femoris",
        area="rectus femoris",
    ),
    FinerPoint(
        "hip abductors",
        "quadriceps",
        "hip abductors",
        "none for the hip abductors",
        area="hip abductors",
        count=TOTAL,
    ),
    FinerPoint(
        "adductors",
        "quadriceps",
        "adductors",
        "none for the adductors",
        area="adductors",
        count=TOTAL,
    ),
    # maeo-2023
    FinerPoint(
        "triceps long head",
        "triceps",
        "triceps",
        "none with the long head stretched",
        area="triceps long head",
        length="long",
    ),
    # campos-2020, botton-2013
    FinerPoint(
        "side shoulder",
        "deltoids",
        "side shoulder",
        "none for the side of them",
        area="side shoulder",
    ),
    FinerPoint(
        "rear shoulder",
        "deltoids",
        "rear shoulder",
        "none for the rear of them",
        area="rear shoulder",
        count=TOTAL,
    ),
    # ridao-2020, trebs-2010
    FinerPoint(
        "upper chest",
        "chest",
        "chest",
        "none aimed at the upper part",
        area="upper chest",
    ),
    FinerPoint(
        "trunk to the side",
        "abdominals",
        "obliques",
        "none that bends or turns the trunk to the side",
        actions=("trunk side bend", "trunk rotation"),
    ),
)
"""What the rule on finer points looks for, in the order of the body."""


@rule(
    "finer-points-missing",
    family="coverage",
    severity="note",
    confidence="growth trial",
    why="In trials parts of the hamstrings, quadriceps and triceps grew more from some exercises than from"
    " others; for shoulder and upper chest only muscle activity was measured, for hip abductors and trunk"
    " hardly anything. Where size is the aim a set or two can round a programme off; none of it is a must.",
    sources=(
        "maeo-2021",
        "maeo-2023",
        "maeo-2024",
        "kubo-2019",
        "le-vs-squat-2025",
        "zabaleta-2021",
        "kojic-2022",
        "campos-2020",
        "botton-2013",
        "ridao-2020",
        "trebs-2010",
        "pelland-2026-min",
        "pelland-2026-frac",
    ),
    options=(
        Option(
            "points",
            tuple(point.name for point in FINER_POINTS),
            "what is looked for",
            "hamstrings, rectus femoris, triceps: growth trials; adductors: grew in deep squats (Kubo and"
            " others 2019); shoulder and upper chest: muscle activity; hip abductors and trunk: common"
            " practice, no source",
        ),
        Condition("least", 4, "sets a week for a muscle before its parts are looked at", "pelland-2026-min"),
        COUNTING,
    ),
    stands_back=("rehabilitation", "peak"),
    off=True,
)
def finer_points_missing(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Parts of trained muscles that no set reaches, all in one note.

    Where size is the goal, or none is written, it looks at the priorities; without any, at what the focus
    names. Other goals ask for no parts, nor does a programme that names nothing. Where a muscle gets 4 hard
    sets or more in a typical week, it wants some set somewhere in the programme for: hamstrings at long
    length, rectus femoris, triceps with the arm overhead, side and rear shoulder, upper chest, hip abductors,
    adductors, and the trunk to the side. Off until a team asks for it.

    Flags:
        programme: Chest day
        goal: hypertrophy
        focus: [chest]
        sessions:
          - session: Chest
            exercises:
              - {exercise: bench press, sets: 4, reps: 8}  # <- here
              - {exercise: cable fly, sets: 2, reps: 12}

    Passes:
        programme: Chest day
        goal: hypertrophy
        focus: [chest]
        sessions:
          - session: Chest
            exercises:
              - {exercise: bench press, sets: 4, reps: 8}
              - {exercise: incline bench press, sets: 2, reps: 12}
    """
    missing: list[tuple[FinerPoint, Count]] = []
    typical = ledger.typical_weeks()
    for point in FINER_POINTS:
        if point.name not in limits.names("points") or not is_wanted(ledger, point):
            continue
        weeks = [week for week in typical if week.means(point.about)]
        counts = [week.sets(point.parent, limits.name("counting")) for week in weeks]
        fullest = max(counts, key=lambda count: count.high, default=None)
        if fullest and fullest.high >= limits.number("least") and not point.is_reached(ledger):
            missing.append((point, fullest))
    if not missing:
        return
    first = missing[0][1]
    wanted = {point.name: point.is_trained_by for point, _ in missing}
    yield found(
        where_to_add(first),
        f"No set for the {first_of(list(wanted))}.",
        wanted="a set for each",
        change=f"{added_for_each(ledger.header, wanted)}, where it matters.",
        where=where_named(first),
        edits=adding_each(
            ledger.header, [(session_of(count), point.is_trained_by) for point, count in missing]
        ),
        amount=Amount(0, len(missing), "points"),
        related=tuple(
            Related(
                where_to_add(count),
                f"{where_named(count)}: {sets_of(count.most)} a week for the {point.parent}, {point.none}",
            )
            for point, count in missing
        ),
    )


def is_wanted(ledger: Ledger, point: FinerPoint) -> bool:
    """Whether a programme for size names what the point is about: among its priorities, else in its focus."""
    goal, priority = ledger.programme.goal, ledger.programme.priority
    if goal not in BUILDING or not (priority or goal):
        return False
    about = set(catalogue.area(point.about) or ())
    named = priority or ledger.programme.focus
    return any(about.intersection(catalogue.area(term.words) or ()) for term in named)
