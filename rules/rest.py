"""Rest and tempo: time between sets, time under load, exercises that follow one another at once."""

from __future__ import annotations

from ..lint.body import catalogue
from ..lint.engine.limits import Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Related, found
from ..lint.model.naming import line_name
from ..lint.wording.words import first_of, listed, plain
from .offers import in_one_edit, writing
from .shared import capital, in_words

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.tally import Visit
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.model.pairings import Pairing
    from ..lint.model.quantities import Range
    from ..lint.model.sessions import Prescription


HEAVY_GOALS = ("", "strength", "power")
"""Goals for which hard sets of few repetitions are meant to be heavy; "" where none is written."""


HEAVY = (
    Condition("heavy", 85, "percent of the best lift from which a set is heavy", "nsca-zones"),
    Condition(
        "few repetitions",
        5,
        "repetitions up to which a hard set is heavy",
        "common practice, no source: a little stricter than the 1 to 6 repetitions of ACSM 2009",
    ),
    Condition("most left", 2, "repetitions in reserve up to which it is hard", "common practice"),
)
"""What makes a set heavy; see `made_heavy`."""


@rule(
    "rest-too-short-heavy",
    family="rest",
    severity="warning",
    confidence="guideline",
    why="A handbook and position stands give heavy sets of big lifts 2 to 5 minutes. A newer review found no"
    " consistent effect of rest, so a team may well decide otherwise.",
    sources=("nsca-zones", "acsm-2009", "acsm-2002", "mcleod-2023"),
    options=(
        Option("shortest", 120, "seconds between heavy sets", "nsca-zones"),
        *HEAVY,
    ),
    stands_back=("rehabilitation",),
    needs=("rest",),
)
def rest_too_short_heavy(entry: SetGroup, limits: Limits) -> Iterator[DraftFinding]:
    """Heavy sets of a big lift with less than two minutes between them.

    Looks at compound lifts at 85 % of the best lift and more, at 5 repetitions or fewer with 2 or fewer in
    reserve, or at a 5RM or heavier; wants 2 min, judged on the long end of a range. Where the goal is neither
    strength nor power, the level is novice, or nothing but the body is lifted, few repetitions alone make no
    set heavy. Silent for singles, sets on the clock, sets broken up (clusters, drop sets, rest-pause),
    contrast, supersets and circuits.

    Flags:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: back squat, sets: 4, reps: 3, load: 87 %, rest: 90 s}  # <- here

    Passes:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: back squat, sets: 4, reps: 3, load: 87 %, rest: 2-3 min}
    """
    rest = entry.work.rest
    if rest is None or rest.high >= limits.number("shortest") or not _straight_sets(entry):
        return
    said = made_heavy(entry, limits)
    if said:
        yield found(
            entry.work.places["rest"],
            f"Only {_rest_in_words(entry)} of rest between sets {said}.",
            wanted=limits.words("at least {:duration}", "shortest"),
            change="Write a longer rest, and save time on the small exercises.",
            where=line_name(entry.prescription),
            edits=writing(entry.work.places["rest"], as_rest(limits.number("shortest"))),
            group=entry.name,
            amount=Amount(rest.high, limits.number("shortest"), "s"),
        )


def as_rest(seconds: float) -> str:
    """Seconds as a coach writes them: ``90 s``, ``2 min``."""
    return f"{plain(seconds / 60)} min" if seconds >= 120 and seconds % 30 == 0 else f"{plain(seconds)} s"


def _straight_sets(entry: SetGroup) -> bool:
    """Whether several sets of a compound lift follow one another, with nothing between them but rest."""
    line = entry.prescription
    return line.paired is None and line.every is None and several_whole_sets(entry)


def several_whole_sets(entry: SetGroup) -> bool:
    """Whether it is several sets of a compound lift, none of them broken up or for contrast."""
    exercise = entry.exercise
    if exercise is None or exercise.kind != "dynamic" or not entry.compound or entry.sets.high <= 1:
        return False
    return entry.prescription.method != "contrast" and not entry.broken_up


def _rest_in_words(entry: SetGroup) -> str:
    return in_words(entry.work.places["rest"], f"{entry.work.rest} s")


def made_heavy(entry: SetGroup, limits: Limits) -> str:
    """What makes the sets heavy, ``of 3 at 87 %``, ``at 5RM``; empty where nothing does, and for singles."""
    load, reserve = entry.work.load, entry.reserve
    reps = entry.work.reps.a_set() if entry.work.reps else None
    few = limits.number("few repetitions")
    if load is not None and load.kind == "rm":
        return f"at {load.words}" if load.span is not None and 1 < load.span.high <= few else ""
    if reps is None or reps.high <= 1:
        return ""
    percent = entry.percent
    if load is not None and percent is not None and percent.low >= limits.number("heavy"):
        share = (
            ""
            if load.kind == "percent" and entry.counted_from == 100
            else f", {percent.low:.0f} % of the best lift"
        )
        return f"of {reps} at {load.words}{share}"
    if entry.programme.goal not in HEAVY_GOALS:
        return ""
    if entry.programme.level == "novice":
        return ""  # light in kilograms, whatever is left
    if entry.implement == "bodyweight" and not (load and any(one.high for one in load.values)):
        return ""  # nobody chose a load: the athlete does what they can
    if reps.high <= few and reserve is not None and reserve.high <= limits.number("most left"):
        return f"of {reps} with {entry.reserve_in_words}"
    return ""


@rule(
    "rest-too-short-size",
    family="rest",
    severity="note",
    confidence="common practice",
    why="Reviews find no clear effect of rest on size, and a handbook allows 30 s. In bench press tests"
    " repetitions fell from set to set even after minutes of rest, and three minutes kept more of them"
    " than one.",
    sources=("mcleod-2023", "nsca-zones", "richmond-2004", "willardson-2006"),
    options=(
        Option(
            "shortest",
            60,
            "seconds between sets of big lifts",
            "common practice, no source; reviews find no clear effect of rest (McLeod and others 2024)",
        ),
    ),
    stands_back=("rehabilitation",),
    needs=("rest",),
)
def rest_too_short_size(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Big lifts with less than a minute between sets, where the goal is size.

    Looks at hard sets of compound lifts; wants 60 s, judged on the long end of a range. Long rest is never
    spoken of. One note a programme. Silent for sets on the clock, sets broken up, contrast, supersets and
    circuits, and in deloads.

    Flags:
        programme: Press
        goal: hypertrophy
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 4, reps: 10, rir: 2, rest: 45 s}  # <- here
              - {exercise: lateral raise, sets: 3, reps: 15, rir: 2, rest: 45 s}

    Passes:
        programme: Press
        goal: hypertrophy
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 4, reps: 10, rir: 2, rest: 90 s}
              - {exercise: lateral raise, sets: 3, reps: 15, rir: 2, rest: 45 s}
    """
    if ledger.programme.goal != "hypertrophy":
        return
    short: dict[Prescription, tuple[SetGroup, Range]] = {}
    for _, entry in (one for week in ledger.weeks if not week.is_deload for one in week.entries()):
        rest = entry.work.rest
        if rest is None or rest.high >= limits.number("shortest"):
            continue
        if entry.hard and _straight_sets(entry):
            short.setdefault(entry.prescription, (entry, rest))
    if not short:
        return
    (first, rest), *more = sorted(short.values(), key=lambda one: one[0].work.places["rest"].start)
    others = [entry for entry, _ in more]
    named = [f"{entry.name} {_rest_in_words(entry)}" for entry in (first, *others)]
    longer = as_rest(limits.number("shortest"))
    yield found(
        first.work.places["rest"],
        f"Short rest on big lifts: {first_of(list(dict.fromkeys(named)))}.",
        wanted=limits.words("at least {:s}", "shortest"),
        change="Write a longer rest, or keep it if the repetitions hold up.",
        where=line_name(first.prescription),
        edits=in_one_edit(
            f"write rest: {longer}", [writing(one.work.places["rest"], longer) for one in (first, *others)]
        ),
        amount=Amount(rest.high, limits.number("shortest"), "s"),
        related=tuple(Related(entry.work.places["rest"], line_name(entry.prescription)) for entry in others),
    )


@rule(
    "superset-shares",
    family="rest",
    severity="note",
    confidence="meta-analysis",
    why="In a review of 19 studies pairs of opposing muscles kept their repetitions and pairs of the same"
    " muscle lost some. One grip and one bar cannot serve two exercises at once.",
    sources=("zhang-2025",),
    options=(
        Option(
            "exempt",
            ("abdominals", "obliques"),
            "muscle groups that may follow themselves",
            "common practice",
        ),
        Option(
            "hanging on the grip",
            ("hip hinge", "vertical pull", "horizontal pull", "carry"),
            "movement patterns in which the hands hold the load for long",
            "common practice",
        ),
        Option(
            "one of each",
            ("barbell", "rack", "trap bar", "guided bar"),
            "stations that one person holds once",
            "common practice",
        ),
        Condition(
            "apart", 60, "seconds of rest between the two from which they share nothing", "common practice"
        ),
    ),
    off=True,
)
def superset_shares(visit: Visit, limits: Limits) -> Iterator[DraftFinding]:
    """Two exercises of a superset that need the same muscle, the same grip or the same bar.

    Looks at hard sets of exercises in one superset: muscles that both train directly, loads that both hold in
    the hands in hinges, pulls and carries, and racks that both need with different loads (unless the team has
    two), or bars, where the team says that it has one. Wants none of it. Silent for circuits, for pairs with
    a `method` such as contrast, for left against right, and where a minute or more of rest stands between the
    two. Silent where health or endurance is the goal: getting tired is meant there. Where size is, so are two
    exercises for one muscle of which one is for one joint.

    Flags:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - superset:
                  - {exercise: leg press, sets: 3, reps: 10}
                  - {exercise: leg extension, sets: 3, reps: 12}  # <- here

    Passes:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - superset:
                  - {exercise: leg press, sets: 3, reps: 10}
                  - {exercise: seated leg curl, sets: 3, reps: 12}
    """
    if visit.programme.goal in ("general health", "muscular endurance"):
        return
    supersets: dict[Pairing, dict[Prescription, SetGroup]] = {}
    for entry in visit.own:
        paired = entry.prescription.paired
        if paired is not None and paired.kind == "superset" and entry.hard and entry.sets.high:
            supersets.setdefault(paired, {}).setdefault(entry.prescription, entry)
    for members in supersets.values():
        entries = list(members.values())
        pairs = [(one, other) for at, one in enumerate(entries) for other in entries[at + 1 :]]
        shared = [(one, other, said) for one, other in pairs if (said := _shared(one, other, limits))]
        if not shared:
            continue
        first, second, _ = shared[0]
        yield found(
            second.prescription.place,
            f"{_by_what_is_shared(shared)}.",
            wanted="opposing or unrelated exercises",
            change="Pair one with something else, or do them as straight sets.",
            where=line_name(second.prescription),
            subject=f"{first.name} {second.name}",
            related=(Related(first.prescription.place, line_name(first.prescription)),),
        )


def _by_what_is_shared(shared: list[tuple[SetGroup, SetGroup, str]]) -> str:
    """``Leg press and leg extension both train the quadriceps``: who shares what, each thing once."""
    names: dict[str, list[str]] = {}
    for one, other, said in shared:
        names.setdefault(said, []).extend((one.name, other.name))
    parts = []
    for said, several in names.items():
        who = list(dict.fromkeys(several))
        parts.append(f"{listed(who)} {'all' if len(who) > 2 else 'both'} {said}")
    return capital("; ".join(parts))


def _shared(one: SetGroup, other: SetGroup, limits: Limits) -> str:
    """What two members of a superset both need, in words; empty where it is nothing, or meant."""
    first, second = one.exercise, other.exercise
    if first is None or second is None or one.prescription.method or other.prescription.method:
        return ""
    rest = one.work.rest
    if {one.side, other.side} == {"left", "right"} or (rest and rest.low >= limits.number("apart")):
        return ""
    said = []
    groups = _groups(set(first.direct) & set(second.direct), limits.names("exempt"))
    is_meant = one.programme.goal == "hypertrophy" and not (one.compound and other.compound)
    if groups and not is_meant:
        said.append(f"train the {first_of(groups)}")
    held = limits.names("hanging on the grip")
    if all(_tires_the_grip(each, held) for each in (one, other)) and first.hands and second.hands:
        said.append("need grip")
    stations = _one_of_each(one, other, {*first.station} & {*second.station}, limits)
    if stations:
        said.append(f"need the {listed(stations)} at different loads")
    return listed(said)


def _tires_the_grip(entry: SetGroup, held: tuple[str, ...]) -> bool:
    """Whether it hangs on the grip for long: a strap or a band takes little of it."""
    return entry.trains(held) and entry.implement not in ("band", "suspension")


def _groups(muscles: set[str], exempt: tuple[str, ...]) -> list[str]:
    """The fewest muscle groups that name all these muscles, without those that are exempt."""
    named: list[str] = []
    left = muscles.difference(*(catalogue.groups.get(group, ()) for group in exempt))
    for group, members in sorted(catalogue.groups.items(), key=lambda one: -len(left.intersection(one[1]))):
        if left.intersection(members):
            named.append(group)
            left.difference_update(members)
    return [group for group in catalogue.groups if group in named]


SEVERAL = ("barbell",)
"""Stations of which a room has several where nobody says: a gym with one bar says so (common practice)."""


def _one_of_each(one: SetGroup, other: SetGroup, needed: set[str], limits: Limits) -> list[str]:
    """Stations that both need and the room has once, where the loads written differ."""
    loads = [entry.work.load.words for entry in (one, other) if entry.work.load is not None]
    if len(set(loads)) < 2:
        return []
    room = one.programme.resources.stations
    return [
        station
        for station in limits.names("one of each")
        if station in needed and (room[station] < 2 if station in room else station not in SEVERAL)
    ]
