"""Heavy sets that come around too soon in a superset: 2-5 min at 85 % and more (nsca-zones, secondary)."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.findings.finding import Finding

Findings = Callable[..., list[Finding]]

RULE = "rest-too-short-in-pairs"
BENCH = "bench press, sets: 4, reps: 3, rir: 1"
CURL = "leg extension, sets: 3, hold: 20 s, rest: 40 s"
HELD = "leg extension, sets: 3, hold: 20 s"


def pair(*members: str, head: str = "goal: strength\n", kind: str = "superset", more: str = "") -> str:
    """A programme whose one session is a superset."""
    lines = "".join(f"          - {{exercise: {one}}}\n" for one in members)
    return f"programme: T\n{head}sessions:\n  - session: Gym\n    exercises:\n      - {kind}:\n{lines}{more}"


def test_the_words(findings: Findings) -> None:
    (found,) = findings(pair(f"{BENCH}, rest: 10 s", CURL), RULE)
    assert (found.severity, found.confidence) == ("note", "guideline")
    assert (found.place.excerpt, found.where) == ("40 s", "Gym, leg extension")
    assert found.counted == "Bench press comes around after 70 s in the superset."
    assert found.wanted == "at least 2 min from set to set"
    assert found.change == "Rest 90 s there, or do it by itself."
    assert [edit.words for edit in found.edits] == ["90 s"]
    assert (found.amount.counted, found.amount.wanted, found.amount.unit) == (70, 120, "s")  # type: ignore[union-attr]


@pytest.mark.parametrize(
    ("members", "seconds"),
    [
        ((BENCH, CURL), 80),  # 20 s at most to the next station where nothing is written
        ((f"{BENCH}, rest: 59 s", CURL), 119),
        ((f"{BENCH}, rest: 60 s", CURL), None),
        ((f"{BENCH}, rest: 20-60 s", CURL), None),  # the long end
        ((f"{BENCH}, rest: 10 s", HELD), 50),
        ((BENCH, HELD), None),  # no rest is written
        ((f"{BENCH}, rest: 10 s",), None),  # nothing is done in turn
        ((f"{BENCH}, rest: 10 s", CURL.replace("sets: 3", "sets: 0")), None),  # nor here
        (("bench press, sets: 1, reps: 3, rir: 1", CURL), None),  # one set has no next
        (("bench press, sets: 2, reps: 3, rir: 1", CURL), 80),
        (("bench press, sets: 4, reps: 6, rir: 1", CURL), None),
        (("bench press, sets: 4, reps: 3, rir: 3", CURL), None),
        (("bench press, sets: 4, reps: 10, load: 85 %", CURL), 80),
        (("bench press, sets: 4, reps: 10, load: 84 %", CURL), None),
        (("leg curl, sets: 4, reps: 3, rir: 1", CURL), None),  # no big lift
        (("unheard of, sets: 4, reps: 3, rir: 1", CURL), None),
        (("box jump, sets: 4, reps: 3, rir: 1", CURL), None),
        (("wall sit, sets: 4, hold: 3 s, rir: 1", CURL), None),
        ((f"{BENCH}, method: contrast", CURL), None),
        ((f"{BENCH}, method: rest-pause", CURL), None),
        ((BENCH, HELD, CURL), None),  # two sets of 20 s, and three stations
        ((BENCH, f"{HELD}, rest: 10 s", CURL.replace("40 s", "30 s")), 100),
    ],
)
def test_when_a_heavy_set_comes_around(
    findings: Findings, members: tuple[str, ...], seconds: int | None
) -> None:
    found = findings(pair(*members), RULE)
    assert [one.amount.counted for one in found if one.amount] == ([] if seconds is None else [seconds])


def test_two_heavy_lifts_are_told_together_by_the_one_that_comes_sooner(findings: Findings) -> None:
    row = "bent-over row, sets: 4, reps: 5, rir: 1, rest: 45 s"
    (found,) = findings(pair("bench press, sets: 4, reps: 2, rir: 1", row), RULE)
    assert found.counted == "Bench press and bent-over row come around after 73 s in the superset."
    assert found.change == "Rest 105 s there, or do it by itself."
    assert found.amount is not None
    assert found.amount.counted == 73


def test_a_circuit_and_rest_elsewhere_are_no_matter(findings: Findings) -> None:
    other = "      - {exercise: plank, sets: 3, hold: 20 s, rest: 30 s}\n"
    assert findings(pair(BENCH, HELD, more=other), RULE) == []
    rounds = (
        "          - {exercise: bench press, reps: 3, rir: 1}\n          - {exercise: plank, hold: 20 s}\n"
    )
    head = "programme: T\ngoal: strength\nsessions:\n  - session: Gym\n    exercises:\n      - circuit:\n"
    assert (
        findings(f"{head}          rounds: 3\n          rest: 30 s\n          exercises:\n{rounds}", RULE)
        == []
    )


def test_a_line_of_several_groups_is_one_member(findings: Findings) -> None:
    groups = "work: [{sets: 1, reps: 3, rir: 1, rest: 30 s}, {sets: 2, reps: 6, rir: 4, rest: 30 s}]"
    assert findings(pair(f"bench press, {groups}"), RULE) == []


def test_the_rest_of_the_superset_itself_counts(findings: Findings) -> None:
    whole = "        rest: {}\n"
    for rest, told in (("39 s", 1), ("40 s", 0)):
        assert len(findings(pair(BENCH, CURL, more=whole.format(rest)), RULE)) == told


@pytest.mark.parametrize(
    ("head", "told"),
    [
        ("goal: strength\n", 1),
        ("goal: hypertrophy\n", 0),  # few repetitions alone make no set heavy
        ("goal: strength\nathlete: {name: A, level: novice}\n", 0),
        (
            "goal: strength\nrehabilitation: {stage: return, advised by: physiotherapist, until: 2026-12-31}\n",
            0,
        ),
    ],
)
def test_where_it_looks(findings: Findings, head: str, told: int) -> None:
    assert len(findings(pair(BENCH, CURL, head=head), RULE)) == told


def test_a_team_moves_its_limit(findings: Findings) -> None:
    for shortest, told in ((80, 0), (81, 1)):
        settings = {"spotline.yaml": f"rules: {{{RULE}: {{shortest: {shortest}}}}}"}
        assert len(findings(pair(BENCH, CURL), RULE, settings)) == told
