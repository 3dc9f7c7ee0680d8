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
from spotline.lint.ledger import Entry, Ledger
from spotline.lint.quantities import Range
from spotline.lint.review import review

GUIDELINES = Path(__file__).parent.parent / "guidelines"
FILES = sorted(path.name.removesuffix(".programme.yaml") for path in GUIDELINES.iterdir())
TODAY = date(2026, 1, 5)
MINUTE = 60

NOTES: dict[str, dict[str, str]] = {}
"""Notes that a guideline's own figures bring, by file and rule, each with the reason why it may stand."""


def path_of(name: str) -> Path:
    return GUIDELINES / f"{name}.programme.yaml"


def ledger(name: str) -> Ledger:
    (one,) = review([str(path_of(name))], TODAY).files
    (found,) = one.ledgers
    return found


def entries(name: str, *, load: str = "", fast: bool | None = None) -> list[Entry]:
    """The work of all weeks; only of one kind of load, only jumps and lifts done fast, or only the others."""
    found = [
        entry
        for _, entry in ledger(name).entries()
        if (not load or (entry.work.load is not None and entry.work.load.kind == load))
        and (fast is None or fast == is_fast(entry))
    ]
    assert found
    return found


def is_fast(entry: Entry) -> bool:
    """Jumps, throws and Olympic lifts, and whatever is written to go up as fast as it will."""
    assert entry.exercise is not None
    tempo = entry.work.tempo
    return entry.exercise.kind == "ballistic" or (tempo is not None and tempo[2] is None)


def hull(values: Iterable[Range | None]) -> tuple[float, float]:
    """From the lowest to the highest; every value must be written."""
    spans = list(values)
    known = [span for span in spans if span is not None]
    assert known
    assert len(known) == len(spans)
    return min(span.low for span in known), max(span.high for span in known)


def sets(lines: list[Entry]) -> tuple[float, float]:
    """Sets of an exercise."""
    return hull(entry.sets for entry in lines)


def repetitions(lines: list[Entry]) -> tuple[float, float]:
    """Repetitions of a set."""
    return hull(entry.work.reps.a_set() if entry.work.reps else None for entry in lines)


def loads(lines: list[Entry]) -> tuple[float, float]:
    """What is written on the bar, in the unit of its kind."""
    return hull(entry.work.load.span if entry.work.load else None for entry in lines)


def rest(lines: list[Entry]) -> tuple[float, float]:
    """Seconds between sets."""
    return hull(entry.work.rest for entry in lines)


def days(name: str) -> int:
    """Training days of a week, the same in all weeks."""
    (count,) = {len(week.days()) for week in ledger(name).weeks}
    return count


def fewest_days(name: str, areas: Iterable[str]) -> float:
    """Days a week on which the least trained of these areas gets a set, in its poorest week."""
    return min(len(week.sets(area).days()) for week in ledger(name).weeks for area in areas)


def total(lines: Iterable[Entry]) -> float:
    """Sets of all these lines together."""
    return sum(entry.sets.high for entry in lines)


def within(span: tuple[float, float], low: float, high: float) -> bool:
    return low <= span[0] <= span[1] <= high


def test_every_guideline_is_here() -> None:
    assert len(FILES) == 5


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
    said = {finding.rule: f"{finding.severity}: {finding.counted}" for finding in one.findings}
    allowed = NOTES.get(name, {})
    assert {rule: words for rule, words in said.items() if rule not in allowed} == {}
    assert allowed.keys() <= said.keys()
    assert all(words.startswith("note: ") for words in said.values())


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
    assert {hull([entry.sets]) for entry in lines} == {(1, 1), (2, 2), (3, 3)}
    assert {hull([entry.work.reps and entry.work.reps.a_set()]) for entry in lines} == {(8, 12)}
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
