"""Coverage: what the programme means to train and leaves out."""

from __future__ import annotations

from ..lint.body import catalogue
from ..lint.finding import Related, found
from ..lint.ledger import DIRECT, FAST_KINDS, TOTAL, Ledger, Week
from ..lint.quantities import Range, plain
from ..lint.registry import Limits, Option, rule
from .words import COUNTING, HELPING, counted_lines, line_name, listed, says, sets_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.finding import Finding, Severity
    from ..lint.ledger import Count, Entry, Tally, Visit
    from ..lint.places import Place
    from ..lint.programme import Term

LEG_WORK = ("knee extension", "hip extension", "knee flexion", "hip hinge", "squat", "lunge")
"""Joint actions and patterns by which a week counts as training the legs."""


@rule(
    "knee-flexion-missing",
    family="coverage",
    severity="warning",
    confidence="trial",
    why="The short head of biceps femoris crosses only the knee, so squats and hinges leave it out, and the"
    " hamstrings near the knee answer to bending it. This is about coverage; it forecasts no injury.",
    sources=("bourne-2017", "kubo-2019", "maeo-2021", "cp-both"),
    stands_back=True,
)
def knee_flexion_missing(week: Week, limits: Limits) -> Iterator[Finding]:
    """Lower-body work without a single set of knee flexion.

    Counts direct sets of knee flexion in the weeks of a block that train the legs hard; wants at least one.

    Flags:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: back squat, sets: 3, reps: 5}
              - {exercise: stiff-leg deadlift, sets: 3, reps: 8}  # <- here

    Passes:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: back squat, sets: 3, reps: 5}
              - {exercise: stiff-leg deadlift, sets: 3, reps: 8}
              - {exercise: seated leg curl, sets: 1, reps: 12}
    """
    if not _legs_lack(week, "knee flexion"):
        return
    hamstrings = week.for_actions(("hip hinge",))
    legs = week.for_actions(LEG_WORK, hard=True)
    if hamstrings:
        counted = (
            f"{sets_of(str(hamstrings))} for the hamstrings, all hinges; nothing bends the knee against load."
        )
    else:
        counted = f"{sets_of(str(legs))} for the legs; nothing bends the knee against load."
    yield found(
        _where_to_add(hamstrings or legs),
        counted,
        wanted="at least one set of knee flexion in the block: hinges and squats leave out the short head of"
        " biceps femoris",
        change=f"Add a leg curl of any kind or a Nordic curl to {_sessions(hamstrings or legs)}.",
        where=_where(hamstrings or legs),
        subject="knee flexion",
        related=counted_lines(legs),
        excess=legs.high,
    )


@rule(
    "hip-hinge-missing",
    family="coverage",
    severity="warning",
    confidence="trial",
    why="Extending the hip with a nearly straight knee is the hamstrings' other job, and the one that"
    " trains them long; squats and hip thrusts leave it to the gluteals.",
    sources=("bourne-2017", "kubo-2019", "cp-both"),
    stands_back=True,
)
def hip_hinge_missing(week: Week, limits: Limits) -> Iterator[Finding]:
    """Lower-body work without a hip hinge: hip extension with a nearly straight knee.

    Counts sets of exercises that hinge, in the weeks of a block that train the legs hard; wants at least
    one. A warning where the goal is size or strength, else a note. Trials train one muscle or one lift by
    design and get one note; a `focus` without the hamstrings takes it away.

    Flags:
        programme: Legs
        goal: strength
        sessions:
          - session: Lower
            exercises:
              - {exercise: back squat, sets: 3, reps: 5}  # <- here
              - {exercise: hip thrust, sets: 3, reps: 8}
              - {exercise: leg press, sets: 2, reps: 8}

    Passes:
        programme: Legs
        goal: strength
        sessions:
          - session: Lower
            exercises:
              - {exercise: back squat, sets: 3, reps: 5}
              - {exercise: Romanian deadlift, sets: 3, reps: 8}
              - {exercise: leg press, sets: 2, reps: 8}
    """
    if not _legs_lack(week, "hip hinge"):
        return
    curls = week.for_actions(("knee flexion",))
    legs = week.for_actions(LEG_WORK, hard=True)
    serious: Severity = "warning" if week.programme.goal in ("hypertrophy", "strength") else "note"
    yield found(
        _where_to_add(curls or legs),
        f"{sets_of(str(legs))} for the legs; none extends the hip with a nearly straight knee.",
        severity=serious,
        wanted="at least one set of a hip hinge in the block",
        change=f"Add a hinge, such as a Romanian deadlift, to {_sessions(curls or legs)}.",
        where=_where(curls or legs),
        subject="hip hinge",
        related=counted_lines(legs),
        excess=legs.high,
    )


def _legs_lack(week: Week, action: str) -> bool:
    """Whether a typical week trains the legs, hamstrings meant, and its whole block lacks an action."""
    if not week.is_typical() or not week.means("hamstrings"):
        return False
    block = week.ledger.of_block(week.block)
    return bool(week.for_actions(LEG_WORK, hard=True)) and not (
        block.for_actions((action,)) or block.could_hold(actions=(action,))
    )


def _where_to_add(count: Count) -> Place:
    return count.lines()[0][0].place


def _where(count: Count) -> str:
    return line_name(count.lines()[0][0])


def _sessions(count: Count) -> str:
    """The sessions that a count falls on, ``Lower A or Lower B``."""
    names = list(dict.fromkeys(line.session.name for line, _ in count.lines()))
    return " or ".join(names[:2])


@rule(
    "region-untrained",
    family="coverage",
    severity="warning",
    confidence="guideline",
    why="Adults are advised to train all major muscle groups: legs, hips, back, chest, abdomen, shoulders"
    " and arms. A programme that means less can say so in its focus.",
    sources=("us-pag-2018", "who-2020"),
    stands_back=True,
)
def region_untrained(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """A region in focus that gets nothing at all; without a focus, one of the seven major regions.

    Counts every set that trains a muscle of the region, directly or not, over the whole programme, or over
    the block for a focus of its own; wants at least one. A note where the programme names neither a focus
    nor general health as its goal. Trials train one muscle or one lift by design and get one note; a `focus`
    on what they train takes it away.

    Flags:
        programme: Push
        goal: general health
        sessions:
          - session: Gym  # <- here
            exercises:
              - {exercise: bench press, sets: 3, reps: 8}

    Passes:
        programme: Push
        goal: general health
        focus: [chest]
        sessions:
          - session: Gym
            exercises:
              - {exercise: bench press, sets: 3, reps: 8}
    """
    programme = ledger.programme
    if ledger.unsure():
        return
    meant: list[tuple[Tally, Term]] = [(ledger, term) for term in programme.focus]
    meant += [(ledger.of_block(block), term) for block in programme.blocks for term in block.focus]
    for tally, term in meant:
        muscles = catalogue.area(term.words)
        parts = _parts(muscles) if muscles else {}
        missing = _untrained(tally, parts)
        if missing:
            whole = len(missing) == len(parts)
            yield found(
                term.place,
                f"`{term.words}` is in the focus; nothing trains {'it' if whole else listed(missing)}.",
                wanted="at least one set, directly or as a helper",
                change="Add an exercise for it, or take it out of the focus.",
                where="focus",
                subject=term.words,
            )
    if programme.focus or all(block.focus for block in programme.blocks):
        return
    missing = _untrained(ledger, {region: catalogue.regions[region] for region in catalogue.major_regions})
    session = next(programme.sessions(), None)
    if missing and session is not None:
        yield found(
            session.place,
            f"Nothing trains {listed(missing)}, not even as a helper.",
            severity="warning" if programme.goal == "general health" else "note",
            wanted="at least one set for each of the seven major regions",
            change="Add an exercise for each, or say in `focus` what this programme means to train.",
            where=session.name,
        )


def _parts(muscles: tuple[str, ...]) -> dict[str, tuple[str, ...]]:
    """The major regions that an area holds whole, by name; the area itself, as ``it``, where it holds none.

    Whoever writes upper body does not mean the neck, nor the hips by thighs.
    """
    whole = {region: catalogue.regions[region] for region in catalogue.major_regions}
    held = {region: members for region, members in whole.items() if set(members) <= set(muscles)}
    return held or {"it": muscles}


def _untrained(tally: Tally, parts: dict[str, tuple[str, ...]]) -> list[str]:
    """The parts of which no muscle gets a set."""
    return [name for name, members in parts.items() if not any(tally.brings(muscle) for muscle in members)]


@rule(
    "straight-knee-calf-missing",
    family="coverage",
    severity="warning",
    confidence="trial",
    why="With the knee bent the gastrocnemius is slack: seated raises grew it by 1 to 2 % where standing ones"
    " gave 9 to 12 %, and the soleus grew by as much in both.",
    sources=("kinoshita-2023", "anatomy-crossing"),
    stands_back=True,
)
def straight_knee_calf_missing(week: Week, limits: Limits) -> Iterator[Finding]:
    """Calf work with the knee bent only, which leaves the gastrocnemius out.

    Looks at typical weeks that hold hard sets of calf raises; wants at least one set in the block that trains
    the gastrocnemius, be it as a helper or in jumps. A warning where the calves stand in the focus or among
    the priorities, else a note.

    Flags:
        programme: Calves
        focus: [calves]
        sessions:
          - session: Lower
            exercises:
              - {exercise: seated calf raise, sets: 3, reps: 15}  # <- here
              - {exercise: seated calf raise, sets: 2, reps: 8}

    Passes:
        programme: Calves
        focus: [calves]
        sessions:
          - session: Lower
            exercises:
              - {exercise: seated calf raise, sets: 3, reps: 15}
              - {exercise: standing calf raise, sets: 2, reps: 8}
    """
    if not week.is_typical() or not week.means("gastrocnemius"):
        return
    raises = week.for_actions(("plantarflexion",), hard=True)
    block = week.ledger.of_block(week.block)
    straight = block.sets("gastrocnemius", TOTAL, hard=False) or block.could_hold(areas=("gastrocnemius",))
    if not raises or straight:
        return
    named = [*(week.block.focus or week.programme.focus), *week.programme.priority]
    in_sight = any(
        catalogue.is_group(term.words) and "gastrocnemius" in (catalogue.area(term.words) or ())
        for term in named
    )
    yield found(
        _where_to_add(raises),
        f"{sets_of(str(raises))} for the calves, all with the knee bent; the gastrocnemius gets nothing.",
        severity="warning" if in_sight else "note",
        wanted="at least one set with the knee straight in the block; it trains the soleus as well",
        change=f"Do some of them standing, or add a standing calf raise to {_sessions(raises)}.",
        where=_where(raises),
        subject="gastrocnemius",
        related=counted_lines(raises),
        excess=raises.high,
    )


PRESSES_AND_PULLS = {
    "vertical pull": ("lats", "a lat pulldown"),
    "horizontal pull": ("upper back", "a row"),
    "vertical push": ("front shoulder", "an overhead press"),
    "horizontal push": ("chest", "a bench press or push-up"),
}
"""The four directions in which the arms press and pull: what each is for, and an exercise."""


@rule(
    "pull-or-push-missing",
    family="coverage",
    severity="note",
    confidence="common practice",
    why="Pulls from overhead and from the front, and presses overhead and to the front, load different"
    " muscles: a bench press hardly reaches the side of the shoulder, and the middle of the back is for rows."
    " No trial says that a block needs all four.",
    sources=("anatomy-crossing", "campos-2020"),
    options=(
        Option(
            "fewest together",
            6,
            "sets of presses and pulls a week from which the upper body counts as trained",
            "common practice",
        ),
    ),
    stands_back=True,
)
def pull_or_push_missing(week: Week, limits: Limits) -> Iterator[Finding]:
    """Upper-body training that leaves out vertical or horizontal pulling or pressing.

    Counts hard sets of presses and pulls in typical weeks; from 6 on it wants each of vertical pull,
    horizontal pull, vertical push and horizontal push somewhere in the block, as far as the focus means what
    it trains. Silent where health is the goal: guidelines ask for regions there, not for directions.

    Flags:
        programme: Upper
        sessions:
          - session: Upper
            exercises:
              - {exercise: bench press, sets: 3, reps: 8}  # <- here
              - {exercise: bent-over row, sets: 3, reps: 8}
              - {exercise: overhead press, sets: 2, reps: 8}

    Passes:
        programme: Upper
        sessions:
          - session: Upper
            exercises:
              - {exercise: bench press, sets: 3, reps: 8}
              - {exercise: bent-over row, sets: 3, reps: 8}
              - {exercise: overhead press, sets: 2, reps: 8}
              - {exercise: lat pulldown, sets: 2, reps: 8}
    """
    upper = week.for_actions(PRESSES_AND_PULLS, hard=True)
    if (
        not week.is_typical()
        or week.programme.goal == "general health"
        or upper.high < limits.number("fewest together")
    ):
        return
    block = week.ledger.of_block(week.block)
    missing = [
        direction
        for direction, (area, _) in PRESSES_AND_PULLS.items()
        if week.means(area) and not (block.for_actions((direction,)) or block.could_hold((direction,)))
    ]
    if missing:
        yield found(
            _where_to_add(upper),
            f"{sets_of(str(upper))} of presses and pulls a week; {listed([f'no {one}' for one in missing])}.",
            wanted="pulls and presses, both overhead and to the front (common practice)",
            change=f"Add {listed([PRESSES_AND_PULLS[one][1] for one in missing])} to {_sessions(upper)}, or"
            " say in `focus` what this programme means to train.",
            where=_where(upper),
            subject="presses and pulls",
            related=counted_lines(upper),
            excess=len(missing) * upper.high,
        )


class FinerPoint:
    """A part of the body, or a way of working it, that trained muscles can miss.

    Looked for where ``parent`` is trained and ``about`` is meant. It is reached by sets that count for
    ``area`` (by ``count``: direct, or as a helper too), at ``length`` where one is given; or by sets of
    ``actions``. ``none`` says in words that there are none, ``add`` names a remedy.
    """

    __slots__ = ("about", "actions", "add", "area", "count", "length", "name", "none", "parent")

    def __init__(
        self,
        name: str,
        parent: str,
        about: str,
        none: str,
        add: str,
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
        self.add = add
        self.area = area
        self.count = count
        self.length = length
        self.actions = actions

    def is_reached(self, tally: Tally) -> bool:
        """Whether any set reaches it, or a line that cannot be counted may."""
        if self.actions:
            return bool(tally.for_actions(self.actions)) or tally.could_hold(actions=self.actions)
        at_length = self._is_at_length if self.length else None
        return tally.brings(self.area, self.count, at_length) or tally.could_hold(areas=(self.area,))

    def _is_at_length(self, entry: Entry) -> bool:
        return entry.exercise is not None and entry.exercise.lengths.get(self.area) == self.length


FINER_POINTS = (
    # maeo-2021, maeo-2024: the three two-joint hamstrings, of which the semitendinosus is one, share a length
    FinerPoint(
        "hamstrings at long length",
        "hamstrings",
        "hamstrings",
        "none at long length",
        "a seated leg curl or a Romanian deadlift",
        area="semitendinosus",
        length="long",
    ),
    # le-vs-squat-2025, zabaleta-2021, kubo-2019; kojic-2022 found some growth from squats
    FinerPoint(
        "rectus femoris",
        "quadriceps",
        "quadriceps",
        "none that reaches the rectus femoris",
        "a leg extension",
        area="rectus femoris",
    ),
    FinerPoint(
        "hip abductors",
        "quadriceps",
        "hip abductors",
        "none for the hip abductors",
        "a hip abduction",
        area="hip abductors",
        count=TOTAL,
    ),
    FinerPoint(
        "adductors",
        "quadriceps",
        "adductors",
        "none for the adductors",
        "a hip adduction or a deep squat",
        area="adductors",
        count=TOTAL,
    ),
    # maeo-2023
    FinerPoint(
        "triceps long head",
        "triceps",
        "triceps",
        "none with the long head stretched",
        "an overhead triceps extension",
        area="triceps long head",
        length="long",
    ),
    # campos-2020, botton-2013
    FinerPoint(
        "side shoulder",
        "deltoids",
        "side shoulder",
        "none for the side of them",
        "a lateral raise",
        area="side shoulder",
    ),
    FinerPoint(
        "rear shoulder",
        "deltoids",
        "rear shoulder",
        "none for the rear of them",
        "a row or a rear delt fly",
        area="rear shoulder",
        count=TOTAL,
    ),
    # ridao-2020, trebs-2010
    FinerPoint(
        "upper chest",
        "chest",
        "chest",
        "none aimed at the upper part",
        "an incline press",
        area="upper chest",
    ),
    FinerPoint(
        "trunk to the side",
        "abdominals",
        "obliques",
        "none that bends or turns the trunk to the side",
        "a side plank or a woodchop",
        actions=("trunk side bend", "trunk rotation"),
    ),
)
"""What the rule on finer points looks for, in the order of the body."""


@rule(
    "finer-points-missing",
    family="coverage",
    severity="note",
    confidence="trial",
    why="Parts of a muscle answer to different work: long lengths, an arm overhead, an incline, a bend to the"
    " side. Where size is the aim a set or two can round a programme off; none of it is a must.",
    sources=(
        "maeo-2021",
        "maeo-2023",
        "maeo-2024",
        "kubo-2019",
        "le-vs-squat-2025",
        "kojic-2022",
        "campos-2020",
        "botton-2013",
        "ridao-2020",
        "trebs-2010",
    ),
    options=(
        Option(
            "points",
            tuple(point.name for point in FINER_POINTS),
            "what is looked for",
            "the trials named; hip abductors, adductors and trunk: common practice",
        ),
        Option("least", 4, "sets a week for a muscle before its parts are looked at", "pelland-2026-min"),
        COUNTING,
    ),
    stands_back=True,
)
def finer_points_missing(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """Parts of trained muscles that no set reaches, all in one note.

    For size it looks at every muscle that the programme means, for other goals at its priorities only. Where
    a muscle gets 4 hard sets or more in a typical week, it wants some set somewhere in the programme for:
    hamstrings at long length, rectus femoris, triceps with the arm overhead, side and rear shoulder, upper
    chest, hip abductors, adductors, and the trunk to the side.

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
        if point.name not in limits.names("points") or not _is_wanted(ledger, point):
            continue
        weeks = [week for week in typical if week.means(point.about)]
        counts = [week.sets(point.parent, limits.name("counting")) for week in weeks]
        fullest = max(counts, key=lambda count: count.high, default=None)
        if fullest and fullest.high >= limits.number("least") and not point.is_reached(ledger):
            missing.append((point, fullest))
    if not missing:
        return
    first = missing[0][1]
    yield found(
        _where_to_add(first),
        f"{'; '.join(_what_is_missing(missing))}.",
        wanted="something for each part of a muscle that the programme means to build",
        change=f"Where they matter to you, add {listed([point.add for point, _ in missing])}; a set or two"
        " of each will do.",
        where=_where(first),
        related=tuple(
            Related(_where_to_add(count), f"{_where(count)}: {point.none}") for point, count in missing
        ),
    )


def _is_wanted(ledger: Ledger, point: FinerPoint) -> bool:
    """Whether size is the goal, or a priority names what the point is about."""
    if ledger.programme.goal == "hypertrophy":
        return True
    about = set(catalogue.area(point.about) or ())
    return any(about.intersection(catalogue.area(term.words) or ()) for term in ledger.programme.priority)


def _what_is_missing(missing: list[tuple[FinerPoint, Count]]) -> list[str]:
    """``12 sets a week for the quadriceps, none that reaches ...``, each muscle once."""
    said: dict[str, str] = {}
    for point, count in missing:
        start = said.get(point.parent, f"{sets_of(count.most)} a week for the {point.parent}")
        said[point.parent] = f"{start}, {point.none}"
    return list(said.values())


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
    stands_back=True,
)
def priority_not_ahead(week: Week, limits: Limits) -> Iterator[Finding]:
    """A priority muscle that gets no more sets than the rest of its half of the body.

    Compares hard sets in a typical week, helping ones as half, the middles of ranges: a priority against the
    mean of the other groups that are trained directly in the same half of the body, priorities and groups
    that compounds feed left out. Silent for strength and power, where order and load say what comes first.

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
    counting = limits.name("counting")
    first = {muscle for term in programme.priority for muscle in catalogue.area(term.words) or ()}
    for term in programme.priority:
        rest = _rest_of_half(week, term.words, first, limits.names("left out"))
        if not catalogue.is_group(term.words) or not rest or week.could_hold(areas=(term.words,)):
            continue
        own = week.sets(term.words, counting)
        others = {group: week.sets(group, counting) for group in rest}
        mean = sum(count.middle for count in others.values()) / len(others)
        if own.middle > mean + limits.number("lead"):
            continue
        most = max(others, key=lambda group: others[group].middle)
        yield found(
            term.place,
            f"{sets_of(str(own))} a week for the {term.words}, a priority, against {plain(mean)} on average"
            f" for {listed(rest)}, {HELPING[counting]}.",
            wanted="more for a priority than for the rest (common practice)",
            change=f"Move a set or two from the {most} ({others[most]}) to the {term.words}, or take"
            f" {term.words} out of the priorities.",
            where="priority",
            related=counted_lines(own),
            excess=mean - own.middle,
        )


def _rest_of_half(week: Week, area: str, first: set[str], left_out: tuple[str, ...]) -> list[str]:
    """The other groups trained directly in the same half of the body, each muscle in one group only."""
    muscles = set(catalogue.area(area) or ())
    halves = [set(catalogue.area(name) or ()) for name in ("lower body", "upper body")]
    half = next((one for one in halves if muscles <= one), set())
    rest = [
        group
        for group, members in catalogue.groups.items()
        if half.issuperset(members)
        and not first.intersection(members)
        and group not in left_out
        and week.sets(group, DIRECT)
    ]
    return [group for group in rest if not any(_is_within(group, other) for other in rest)]


def _is_within(group: str, other: str) -> bool:
    return set(catalogue.groups[group]) < set(catalogue.groups[other])


@rule(
    "fast-work-missing",
    family="coverage",
    severity="warning",
    confidence="guideline",
    why="Power is trained with fast lifts at light to middling loads, with jumps and with throws; heavy or"
    " slow lifts alone leave the speed out.",
    sources=("acsm-2026-load",),
    options=(
        Option("lightest", 30, "% of the best lift from which a load is one for power", "acsm-2026-load"),
        Option("heaviest", 70, "% of the best lift up to which a load is one for power", "acsm-2026-load"),
        Option(
            "words",
            (
                "fast",
                "faster",
                "explosive",
                "explosively",
                "quick",
                "quickly",
                "speed",
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
    stands_back=True,
)
def fast_work_missing(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
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
    if not typical or not sets or ledger.unsure():
        return
    power = Range(limits.number("lightest"), limits.number("heaviest"))
    words = limits.names("words")
    if sets.where(lambda entry: _is_fast(entry, power)) or _calls_it_fast(ledger, words):
        return
    yield found(
        _where_to_add(sets),
        f"{sets_of(str(typical[0].all_sets()))} a week for power; no jump or throw, nothing lifted as fast as"
        f" possible, no load of {power} %.",
        wanted=f"fast lifts at {power} %, jumps or throws",
        change=f"Add some to {_sessions(sets)}; where a line is meant fast already, write it, such as"
        " `tempo: 2-0-X-0`.",
        where=_where(sets),
    )


def _is_fast(entry: Entry, power: Range) -> bool:
    """Whether sets are done fast by their kind or tempo, or the load is one for power."""
    fast_kind = entry.exercise is not None and entry.exercise.kind in FAST_KINDS
    percent = entry.percent
    return fast_kind or entry.fast_tempo or (percent is not None and percent.meets(power))


def _calls_it_fast(ledger: Ledger, words: tuple[str, ...]) -> bool:
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


@rule(
    "nordics-too-rare",
    family="coverage",
    severity="note",
    confidence="trial",
    why="Nordic curls showed a benefit where athletes did them more often than once in three weeks. What is"
    " rarer costs sore hamstrings and earns nothing known. This speaks of a dose, and forecasts no injury.",
    sources=("ripley-2021", "impellizzeri-2021"),
    options=(
        Option("weeks", 3, "weeks for each session with Nordic curls", "ripley-2021"),
        Option(
            "exercises",
            ("Nordic curl", "assisted Nordic curl", "weighted Nordic curl"),
            "exercises that count",
            "ripley-2021",
        ),
    ),
    stands_back=True,
)
def nordics_too_rare(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """Nordic curls less often than once in three weeks.

    Counts the sessions of the whole programme that hold a set of Nordic curls; wants one in 3 weeks on
    average, or none. Silent where a session names them in its preparation.

    Flags:
        programme: Season
        weeks: 7
        sessions:
          - session: Gym
            exercises:
              - {exercise: Nordic curl, sets: {1: 2, 2-4: 0, 5: 2, 6-7: 0}, reps: 5}  # <- here

    Passes:
        programme: Season
        weeks: 6
        sessions:
          - session: Gym
            exercises:
              - {exercise: Nordic curl, sets: {1: 2, 2-4: 0, 5: 2, 6: 0}, reps: 5}
    """
    names = limits.names("exercises")
    counted = ledger.all_sets().where(lambda entry: _is_one_of(entry, names))
    sessions = ledger.how_often(lambda entry: _is_one_of(entry, names))
    weeks = len(ledger.weeks)
    prepared = any(
        name.casefold() in term.words.casefold()
        for session in ledger.programme.sessions()
        for term in session.preparation
        for name in names
    )
    if not sessions or prepared or ledger.could_hold(actions=("knee flexion",)):
        return
    apart = weeks / sessions
    if apart > limits.number("weeks"):
        most = plain(limits.number("weeks"))
        yield found(
            _where_to_add(counted),
            f"{sessions} {'session' if sessions == 1 else 'sessions'} with Nordic curls in {weeks} weeks.",
            wanted=f"at least one in {most} weeks; rarer ones showed no benefit",
            change="Put a set or two into every week or two, or give their place to another leg curl.",
            where=_where(counted),
            related=counted_lines(counted),
        )


def _is_one_of(entry: Entry, names: tuple[str, ...]) -> bool:
    return entry.exercise is not None and entry.exercise.name in names


@rule(
    "days-per-region-few",
    family="coverage",
    severity="warning",
    confidence="guideline",
    why="Health guidelines advise adults to train all major muscle groups on two or more days a week. They"
    " are written for the population; an adviser's word for one person comes first.",
    sources=("who-2020", "us-pag-2018", "uk-cmo-2019"),
    options=(
        Option("days", 2, "days a week for each of the seven major regions", "who-2020"),
        Option(
            "loads that count",
            ("moderate", "high"),
            "words for what an activity asks of a muscle, from which its day counts",
            "who-2020, which counts heavy work of other kinds",
        ),
    ),
    stands_back=True,
    looks_beyond=True,
)
def days_per_region_few(week: Week, limits: Limits) -> Iterator[Finding]:
    """A major region that is trained on fewer than two days of the week, where health is the goal.

    Looks at typical weeks whose sessions all have days. Counts the days with a set that trains a muscle of
    the region, be it as a helper, and days whose activities load it; wants 2 for each region that the focus
    means. A region that gets nothing in the whole programme is left to another rule.

    Flags:
        programme: Two days
        goal: general health
        sessions:
          - session: Monday
            day: monday
            exercises:
              - {exercise: leg press, sets: 2, reps: 10}
              - {exercise: push-up, sets: 2, reps: 10}
              - {exercise: seated cable row, sets: 2, reps: 10}
              - {exercise: plank, sets: 2, hold: 20 s}
          - session: Thursday  # <- here
            day: thursday
            exercises:
              - {exercise: leg press, sets: 2, reps: 10}
              - {exercise: overhead press, sets: 2, reps: 10}
              - {exercise: lat pulldown, sets: 2, reps: 10}

    Passes:
        programme: Two days
        goal: general health
        sessions:
          - session: Monday
            day: monday
            exercises:
              - {exercise: leg press, sets: 2, reps: 10}
              - {exercise: push-up, sets: 2, reps: 10}
              - {exercise: seated cable row, sets: 2, reps: 10}
              - {exercise: plank, sets: 2, hold: 20 s}
          - session: Thursday
            day: thursday
            exercises:
              - {exercise: leg press, sets: 2, reps: 10}
              - {exercise: overhead press, sets: 2, reps: 10}
              - {exercise: lat pulldown, sets: 2, reps: 10}
              - {exercise: dead bug, sets: 1, reps: 8}
    """
    if week.programme.goal != "general health" or not week.is_typical():
        return
    if not all(visit.day for visit in week.visits):
        return
    few = {}
    for region in catalogue.major_regions:
        days = {*week.sets(region, TOTAL, hard=False).days(), *_active_days(week, region, limits)}
        trained = week.ledger.brings(region)
        if len(days) >= limits.number("days") or not trained or not week.means(region):
            continue
        if not week.could_hold(areas=(region,)):
            few[region] = days
    lacking: dict[Visit | None, list[str]] = {}
    for region, days in few.items():
        lacking.setdefault(next((one for one in week.visits if one.day not in days), None), []).append(region)
    if not few:
        return
    session = (next(iter(lacking)) or week.visits[0]).session
    yield found(
        session.place,
        f"{listed([f'{region} on {_days(len(days))}' for region, days in few.items()])} of the week.",
        wanted=f"{_days(limits.number('days'))} or more for each major region, as health guidelines ask",
        change=f"Add something {listed([_where_it_lacks(*one) for one in lacking.items()])}.",
        where=session.name,
        subject="days a week",
        excess=len(few),
    )


def _where_it_lacks(visit: Visit | None, regions: list[str]) -> str:
    return f"for {listed(regions)} {'to ' + visit.session.name if visit else 'on another day'}"


def _active_days(week: Week, region: str, limits: Limits) -> set[int]:
    """Days with an activity that loads a region."""
    muscles, loads = set(catalogue.area(region) or ()), limits.names("loads that count")
    return {
        day
        for activity in week.block.activities
        for day in activity.days
        if any(
            load in loads and muscles.intersection(catalogue.area(term.words) or ())
            for term, load in activity.loads
        )
    }


def _days(number: float) -> str:
    return f"{plain(number)} {'day' if number == 1 else 'days'}"
