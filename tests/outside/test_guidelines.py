"""Programmes written to the figures of published guidelines: the ledger finds the figures, the review finds nothing.

Each file of tests/guidelines names its source. What the guideline says (days a week, sets, repetitions, load, rest)
is checked first, so that a clean review says something about the guideline and not about another programme.
"""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date
from pathlib import Path

import pytest

from spotline.lint.body import catalogue
from spotline.lint.counting.credits import DIRECT
from spotline.lint.counting.ledger import Ledger
from spotline.lint.counting.set_group import SetGroup
from spotline.lint.model.quantities import Range
from spotline.lint.project.review import review

GUIDELINES = Path(__file__).parent.parent / "guidelines"
FILES = sorted(path.name.removesuffix(".programme.yaml") for path in GUIDELINES.iterdir())
TODAY = date(2026, 1, 5)
MINUTE = 60


def path_of(name: str) -> Path:
    return GUIDELINES / f"{name}.programme.yaml"


def ledger(name: str) -> Ledger:
    (one,) = review([str(path_of(name))], TODAY).files
    (found,) = one.ledgers
    return found


def entries(name: str, *, load: str = "", fast: bool | None = None) -> list[SetGroup]:
    """The work of all weeks; only of one kind of load, only throws, jumps and lifts done fast, or only the others."""
    found = [
        entry
        for _, entry in ledger(name).entries()
        if (not load or (entry.work.load is not None and entry.work.load.kind == load))
        and (fast is None or fast == is_fast(entry))
    ]
    assert found
    return found


def is_fast(entry: SetGroup) -> bool:
    """Throws, loaded jumps and Olympic lifts, and whatever is written to go up as fast as it will."""
    assert entry.exercise is not None
    return entry.exercise.kind == "ballistic" or entry.fast_tempo


def hull(values: Iterable[Range | None]) -> tuple[float, float]:
    """From the lowest to the highest; every value must be written."""
    spans = list(values)
    known = [span for span in spans if span is not None]
    assert known
    assert len(known) == len(spans)
    return min(span.low for span in known), max(span.high for span in known)


def sets(lines: list[SetGroup]) -> tuple[float, float]:
    """Sets of an exercise."""
    return hull(entry.sets for entry in lines)


def repetitions(lines: list[SetGroup]) -> tuple[float, float]:
    """Repetitions of a set."""
    return hull(entry.work.reps.a_set() if entry.work.reps else None for entry in lines)


def loads(lines: list[SetGroup]) -> tuple[float, float]:
    """What is written on the bar, in the unit of its kind."""
    return hull(entry.work.load.span if entry.work.load else None for entry in lines)


def rest(lines: list[SetGroup]) -> tuple[float, float]:
    """Seconds between sets."""
    return hull(entry.work.rest for entry in lines)


def days(name: str) -> int:
    """Training days of a week, the same in all weeks."""
    (count,) = {len(week.days()) for week in ledger(name).weeks}
    return count


def fewest_days(name: str, areas: Iterable[str]) -> float:
    """Days a week on which the least trained of these areas gets a set, in its poorest week."""
    return min(len(week.sets(area).days()) for week in ledger(name).weeks for area in areas)


def total(lines: Iterable[SetGroup]) -> float:
    """Sets of all these lines together."""
    return sum(entry.sets.high for entry in lines)


def within(span: tuple[float, float], low: float, high: float) -> bool:
    return low <= span[0] <= span[1] <= high


def test_every_guideline_is_here() -> None:
    assert len(FILES) == 13


@pytest.mark.parametrize("name", FILES)
def test_every_line_is_known_and_trains_what_guidelines_name(name: str) -> None:
    """Seven regions in all weeks: us-pag-2018 (secondary); "all major groups" of the others is read so."""
    assert all(entry.sure for _, entry in ledger(name).entries())
    assert len(catalogue.major_regions) == 7
    assert fewest_days(name, catalogue.major_regions) >= 1


@pytest.mark.parametrize("name", FILES)
def test_nothing_is_found_in_what_a_guideline_asks_for(name: str) -> None:
    (one,) = review([str(path_of(name))], TODAY).files
    assert not one.faults
    assert [(finding.severity, finding.rule, finding.counted) for finding in one.findings] == []


@pytest.mark.parametrize("name", FILES)
def test_the_file_names_its_source(name: str) -> None:
    source = path_of(name).read_text(encoding="utf-8").split(",")[0].removeprefix("# Source: ")
    assert name.startswith(source)
    assert any(known == source or known.startswith(f"{source}-") for known in catalogue.source_ids())


# who-2020, Br J Sports Med 2020;54:1451-1462 (secondary): 2 days or more, all major groups, moderate or more


def test_who_days_groups_and_effort() -> None:
    assert days("who-2020") == 2
    assert fewest_days("who-2020", catalogue.major_regions) == 2
    assert hull(entry.work.rpe for entry in entries("who-2020"))[0] >= 5  # moderate, from memory


# us-pag-2018, 2nd edition (secondary): 2 days, seven regions, 1-3 sets of 8-12 until another would be hard


def test_us_guidelines_days_sets_and_repetitions() -> None:
    lines = entries("us-pag-2018")
    assert fewest_days("us-pag-2018", catalogue.major_regions) == days("us-pag-2018") == 2
    assert {sets([entry]) for entry in lines} == {(1, 1), (2, 2), (3, 3)}
    assert {repetitions([entry]) for entry in lines} == {(8, 12)}
    assert hull(entry.work.rir for entry in lines)[1] <= 2


# acsm-2009, Med Sci Sports Exerc 2009;41(3):687-708: 2-3, 3-4 and 4-5 days by level


@pytest.mark.parametrize(
    ("level", "least", "most"), [("novice", 2, 3), ("intermediate", 3, 4), ("advanced", 4, 5)]
)
def test_acsm_days_by_level(level: str, least: int, most: int) -> None:
    assert ledger(f"acsm-2009-{level}").level == level
    assert least <= days(f"acsm-2009-{level}") <= most
    assert (
        fewest_days(f"acsm-2009-{level}", ["legs", "hips", "back", "chest"]) >= 2
    )  # acsm-2026-freq, secondary


def test_acsm_novice_loads() -> None:
    """8-12RM for the novice; 60-70 %, 1-3 sets and the rests are from memory."""
    core, other = entries("acsm-2009-novice", load="percent"), entries("acsm-2009-novice", load="rm")
    assert repetitions(core) == repetitions(other) == loads(other) == (8, 12)
    assert loads(core) == (60, 70)
    assert within(sets(core + other), 1, 3)
    assert rest(core) == (2 * MINUTE, 3 * MINUTE)
    assert rest(other) == (MINUTE, 2 * MINUTE)


@pytest.mark.parametrize("level", ["intermediate", "advanced"])
def test_acsm_trained_loads_with_emphasis_on_the_heavy_end(level: str) -> None:
    """1-12RM, most of it 1-6RM, 3-5 min after heavy core lifts, 1-2 s up and down; other rests from memory."""
    lines = entries(f"acsm-2009-{level}", load="rm")
    assert len(lines) == len(entries(f"acsm-2009-{level}"))
    heavy = [entry for entry in lines if loads([entry])[1] <= 6]
    light = [entry for entry in lines if entry not in heavy]
    assert within(loads(lines), 1, 12)
    assert rest(heavy) == (3 * MINUTE, 5 * MINUTE)
    assert rest(light) == (MINUTE, 2 * MINUTE)
    assert {entry.work.tempo for entry in lines} == {(2, 0, 1, 0)}
    core = [entry for entry in lines if entry.compound]
    assert total(entry for entry in core if entry in heavy) > total(core) / 2


# nsca-zones, Essentials of Strength Training and Conditioning, 4th edition (secondary): loads, repetitions, sets, rest


def in_strength_zone(lines: list[SetGroup]) -> bool:
    """85 % or more (6RM and heavier where an RM is written), at most 6 repetitions, 2-6 sets, 2-5 min."""
    percent = [entry for entry in lines if entry.work.load and entry.work.load.kind == "percent"]
    maxima = [entry for entry in lines if entry not in percent]
    return (
        within(loads(percent), 85, 100)
        and within(loads(maxima), 1, 6)
        and within(repetitions(lines), 1, 6)
        and within(sets(lines), 2, 6)
        and within(rest(lines), 2 * MINUTE, 5 * MINUTE)
    )


def test_nsca_strength_zone() -> None:
    assert in_strength_zone(entries("nsca-zones-strength"))
    assert ledger("nsca-zones-strength").programme.goal == "strength"


def test_nsca_hypertrophy_zone() -> None:
    """67-85 %, 6-12 repetitions, 3-6 sets, 30-90 s."""
    lines = entries("nsca-zones-hypertrophy")
    assert within(loads(entries("nsca-zones-hypertrophy", load="percent")), 67, 85)
    assert within(loads(entries("nsca-zones-hypertrophy", load="rm")), 6, 12)
    assert repetitions(lines) == (6, 12)
    assert within(sets(lines), 3, 6)
    assert within(rest(lines), 30, 90)
    assert ledger("nsca-zones-hypertrophy").programme.goal == "hypertrophy"


def test_nsca_power_zones() -> None:
    """One effort 80-90 % for 1-2, several 75-85 % for 3-5; 3-5 sets, 2-5 min; the rest is the zone of strength."""
    fast = entries("nsca-zones-power", fast=True)
    one = [entry for entry in fast if repetitions([entry])[1] <= 2]
    several = [entry for entry in fast if entry not in one]
    assert (repetitions(one), loads(one)) == ((1, 2), (80, 90))
    assert repetitions(several) == (3, 5)
    assert within(loads(several), 75, 85)
    assert within(sets(fast), 3, 5)
    assert within(rest(fast), 2 * MINUTE, 5 * MINUTE)
    assert in_strength_zone(entries("nsca-zones-power", fast=False))
    assert ledger("nsca-zones-power").programme.goal == "power"


def test_nsca_endurance_zone() -> None:
    """67 % or less, 12 repetitions or more, 2-3 sets, 30 s or less."""
    lines = entries("nsca-zones-endurance")
    assert loads(entries("nsca-zones-endurance", load="percent"))[1] <= 67
    assert loads(entries("nsca-zones-endurance", load="rm"))[0] >= 12
    assert repetitions(lines)[0] >= 12
    assert within(sets(lines), 2, 3)
    assert rest(lines)[1] <= 30
    assert ledger("nsca-zones-endurance").programme.goal == "muscular endurance"


# fragala-2019, J Strength Cond Res 2019;33(8):2019-2052 (secondary), and who-2020 for 65 and over: 3 days or more


def test_older_adults() -> None:
    """2-3 days, 8-10 exercises, one set at first, then 2-3, 70-85 %, about 2 min; power at 40-60 %."""
    counted = ledger("fragala-2019")
    athlete = counted.athlete
    assert athlete is not None
    assert athlete.age is not None
    assert athlete.age >= 65
    assert days("fragala-2019") == 3
    assert fewest_days("fragala-2019", catalogue.major_regions) == 3
    assert {len(visit.lifts()) for week in counted.weeks for visit in week.visits} <= {8, 9, 10}
    strength, power = entries("fragala-2019", fast=False), entries("fragala-2019", fast=True)
    assert within(loads(strength), 70, 85)
    assert loads(power) == (40, 60)
    assert rest(strength) == rest(power) == (2 * MINUTE, 2 * MINUTE)
    by_week = [hull(entry.sets for _, entry in week.entries()) for week in counted.weeks]
    assert by_week[0] == (1, 1)
    assert within(by_week[-1], 2, 3)


@pytest.mark.parametrize(
    "group", ["quadriceps", "hamstrings", "gluteals", "chest", "upper back", "lats", "shoulders"]
)
def test_older_adults_have_lifts_for_several_joints_for_each_group(group: str) -> None:
    """One or two a group: fragala-2019 (secondary)."""
    visit = ledger("fragala-2019").weeks[0].visits[0]
    direct = visit.sets(group, DIRECT).where(lambda entry: entry.compound)
    assert len({part.entry.name for part in direct.parts}) in (1, 2)


# acsm-2026, Med Sci Sports Exerc 2026;58(4):851-872 (secondary)


def test_acsm_2026_strength() -> None:
    """80 % or more, 2-3 sets of an exercise, every major group on 2 days, priority lifts first."""
    name = "acsm-2026-strength"
    lines = entries(name)
    assert within(loads(lines), 80, 100)
    assert len(entries(name, load="percent")) == len(lines)
    assert within(sets(lines), 2, 3)
    assert fewest_days(name, catalogue.major_regions) == days(name) == 2
    priority = [term.words for term in ledger(name).programme.priority]
    assert priority
    for visit in ledger(name).weeks[0].visits:
        assert [entry.name for entry in visit.own][: len(priority)] == priority


@pytest.mark.parametrize(
    "group",
    [
        *("quadriceps", "hamstrings", "gluteals", "calves", "abdominals"),
        *("lats", "upper back", "chest", "shoulders", "biceps", "triceps"),
    ],
)
def test_acsm_2026_size(group: str) -> None:
    """10 sets or more a week for each muscle group, on 2 days or more."""
    counted = ledger("acsm-2026-hypertrophy")
    assert counted.programme.goal == "hypertrophy"
    for week in counted.weeks:
        assert week.sets(group).low >= 10
        assert len(week.sets(group).days()) >= 2


def test_acsm_2026_power() -> None:
    """30-70 %, lifted fast, low volume, every major group on 2 days; 3-6 repetitions are acsm-2009, from memory."""
    name = "acsm-2026-power"
    fast = entries(name, fast=True)
    assert ledger(name).programme.goal == "power"
    assert loads(fast) == (30, 70)
    assert within(repetitions(fast), 3, 6)
    assert within(sets(fast), 1, 3)  # few: our reading
    assert fewest_days(name, catalogue.major_regions) == days(name) == 2
