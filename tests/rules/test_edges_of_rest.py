"""Rest, supersets and tempo at their edges; unknown names that may be what is missing."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.findings.finding import Finding

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]


class TestRestTooShortHeavy:
    RULE = "rest-too-short-heavy"

    @pytest.mark.parametrize(
        ("line", "how"),
        [
            ("load: 5RM", "at 5RM"),
            ("load: 1RM", ""),  # singles may come one by one
            ("load: 12RM", ""),
            ("reps: 3, load: 87 %", "of 3 at 87 %"),
            ("reps: 3, load: 96 %, working best: 90 %", "of 3 at 96 %, 86 % of the best lift"),
            ("reps: 3, load: 87 kg", "of 3 at 87 kg, 87 % of the best lift"),
            ("reps: 1, load: 87 %", ""),
            ("reps: 4, rir: 1", "of 4 with 1 in reserve"),
            ("reps: 4", ""),
        ],
    )
    def test_what_is_heavy(self, findings: Findings, week: Text, line: str, how: str) -> None:
        head = "athlete: {name: A, best lifts: {back squat: 100 kg}}"
        found = findings(week({"A": [f"back squat, sets: 3, rest: 60 s, {line}"]}, head), self.RULE)
        assert [one.counted for one in found] == ([f"Only 60 s of rest between sets {how}."] if how else [])


class TestSupersetShares:
    RULE = "superset-shares"

    def text(self, *members: str, goal: str = "", sets: int = 3) -> str:
        first, *others = members
        lines = [f"{{exercise: {first}, sets: {sets}}}", *(f"{{exercise: {one}, sets: 3}}" for one in others)]
        pair = f"{{superset: [{', '.join(lines)}]}}"
        return f"programme: T\n{goal}sessions: [{{session: A, exercises: [{pair}]}}]\n"

    @pytest.mark.parametrize(
        ("members", "counted"),
        [
            (("leg press", "leg extension"), "Leg press and leg extension both train the quadriceps"),
            (("leg press", "leg extension", "bench press"), "Leg press and leg extension both train the quadriceps"),
            (("leg extension", "sissy squat", "wall sit"), "Leg extension, sissy squat and wall sit all train the quadriceps"),
            (
                ("bench press", "dumbbell fly", "leg press", "leg extension"),
                "Bench press and dumbbell fly both train the chest; leg press and leg extension both train the quadriceps",
            ),
            (("leg press", "bench press"), ""),
        ],
    )  # fmt: skip
    def test_who_shares_what(self, findings: Findings, members: tuple[str, ...], counted: str) -> None:
        found = findings(self.text(*members), self.RULE)
        assert [one.counted for one in found] == ([f"{counted}."] if counted else [])

    @pytest.mark.parametrize(
        ("goal", "other", "sets", "said"),
        [
            ("", "leg extension", 3, True),
            ("", "leg extension", 0, False),  # nothing is done of one of them
            ("goal: hypertrophy\n", "hack squat", 3, True),
            ("goal: hypertrophy\n", "leg extension", 3, False),  # with work for one joint it is meant there
            ("goal: general health\n", "hack squat", 3, False),  # tiredness does no harm there
            ("goal: muscular endurance\n", "hack squat", 3, False),
        ],
    )
    def test_where_it_matters(self, findings: Findings, goal: str, other: str, sets: int, said: bool) -> None:
        text = self.text("leg press", other, goal=goal, sets=sets)
        assert bool(findings(text, self.RULE)) is said


class TestTempoTooLong:
    RULE = "tempo-too-long"

    @pytest.mark.parametrize(
        ("line", "counted"),
        [
            ("bench press, sets: 3, reps: 12, tempo: 5-1-4-0", ""),  # 120 s
            ("bench press, sets: 3, reps: 13, tempo: 5-1-4-0", "130 s: 13 repetitions at 5-1-4-0"),
            (
                "bench press, sets: 3, reps: 10-13, tempo: 5-1-4-0",
                "up to 130 s: 10-13 repetitions at 5-1-4-0",
            ),
            ("bench press, sets: 3, reps: 30, tempo: 5-0-X-0", "180 s: 30 repetitions at 5-0-X-0"),
            ("plank, sets: 3, hold: 200 s", ""),
            ("bench press, sets: 3, reps: 100", ""),
        ],
    )
    def test_how_long_a_set_lasts(self, findings: Findings, week: Text, line: str, counted: str) -> None:
        found = findings(week({"A": [line]}), self.RULE)
        assert [one.counted for one in found] == ([f"A set lasts {counted}."] if counted else [])


class TestKneeFlexionMissing:
    RULE = "knee-flexion-missing"

    @pytest.mark.parametrize(
        ("names", "unless"),
        [
            ("a", "`leg a` does it"),
            ("ab", "`leg a` or `leg b` does it"),
            ("abcd", "`leg a`, `leg b`, `leg c` or `leg d` does it"),
            ("abcde", "`leg a`, `leg b`, `leg c` or one of 2 more does it"),
        ],
    )
    def test_four_names_at_most(self, findings: Findings, week: Text, names: str, unless: str) -> None:
        lines = ["back squat, sets: 4", "leg press, sets: 3", *(f"leg {name}, sets: 3" for name in names)]
        (finding,) = findings(week({"A": lines}), self.RULE)
        assert finding.counted == f"7 sets of leg work, no knee flexion or hinge, unless {unless}."
