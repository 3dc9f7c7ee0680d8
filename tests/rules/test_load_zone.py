"""Main lifts against the zone of the goal: which weeks, which sets and whose percentages count."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.findings.finding import Finding

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]

SQUAT = "back squat, sets: 3, reps: 5, load: 70 %"
MEET = "weeks: 4\nstarts: 2026-01-05\nevents: [{date: 2026-01-31, event: meet}]"


class TestLoadOutsideZone:
    """80 % and more for strength: acsm-2026-load (secondary); 85 % for size: nsca-zones (secondary)."""

    RULE = "load-outside-zone"

    @pytest.mark.parametrize(
        ("goal", "loads", "said"),
        [
            ("strength", "{1-3: 75 %, 4: 85 %}", False),  # before the meet it gets heavy
            ("strength", "{1-3: 75 %, 4: 79 %}", True),
            ("strength", "{1-3: 80 %, 4: 60 %}", False),
            ("hypertrophy", "{1-3: 90 %, 4: 80 %}", True),  # what the meet takes off is no training for size
            ("hypertrophy", "{1-3: 85 %, 4: 95 %}", False),
        ],
    )
    def test_weeks_before_an_event_count_for_the_heaviest_load_alone(
        self, findings: Findings, week: Text, goal: str, loads: str, said: bool
    ) -> None:
        line = f"back squat, sets: 3, reps: 3, load: {loads}"
        assert bool(findings(week({"monday": [line]}, f"goal: {goal}\n{MEET}"), self.RULE)) is said

    def test_a_lift_of_the_last_week_alone_is_not_looked_at(self, findings: Findings, week: Text) -> None:
        lines = ["back squat, sets: 3, reps: 3, load: 75 %", "bench press, sets: 3, load: 85 %, in weeks: 4"]
        assert len(findings(week({"monday": lines}, f"goal: strength\n{MEET}"), self.RULE)) == 1
        lines[1] = lines[1].replace("in weeks: 4", "in weeks: 2-4")
        assert findings(week({"monday": lines}, f"goal: strength\n{MEET}"), self.RULE) == []

    @pytest.mark.parametrize(
        ("goal", "load", "other", "said"),
        [
            ("strength", "70 %", "sets: 2, reps: 5, rir: 1", False),  # by feel it may be heavy enough
            ("strength", "70 %", "sets: 2, reps: 5", False),
            ("strength", "70 %", "sets: 2, reps: 5, rir: 6", False),  # whatever the effort that is written
            ("strength", "70 %", "sets: 0, reps: 5", True),  # not done
            ("strength", "70 %", "sets: 2, reps: 5, load: heavy", False),
            ("hypertrophy", "90 %", "sets: 2, reps: 5, rir: 1", False),
            ("hypertrophy", "90 %", "sets: 0, reps: 5", True),
        ],
    )
    def test_of_a_lift_that_goes_by_feel_nobody_knows(
        self, findings: Findings, week: Text, goal: str, load: str, other: str, said: bool
    ) -> None:
        lines = [f"back squat, sets: 3, reps: 3, load: {load}", f"back squat, {other}"]
        assert bool(findings(week({"monday": lines}, f"goal: {goal}"), self.RULE)) is said

    @pytest.mark.parametrize(
        ("lines", "said"),
        [
            (["back squat, sets: 6, reps: 2, load: 60 %, note: as fast as you can"], False),
            (["back squat, sets: 6, reps: 2, load: 60 %, note: speed", "back squat, sets: 3, reps: 5, load: 70 %"], True),
            (["back squat, sets: 6, reps: 2, load: 60 %, note: speed", "back squat, sets: 3, reps: 5, load: 82 %"], False),
            (["back squat, sets: 6, reps: 2, load: 60 %, note: pause"], True),
        ],
    )  # fmt: skip
    def test_a_lift_that_is_done_for_speed_alone_is_not_too_light(
        self, findings: Findings, week: Text, lines: list[str], said: bool
    ) -> None:
        assert bool(findings(week({"monday": lines}, "goal: strength"), self.RULE)) is said

    def test_an_easier_week_before_an_event_counts_for_nothing(self, findings: Findings, week: Text) -> None:
        line = "back squat, sets: 3, reps: 3, load: {1-3: 75 %, 4: 85 %}"
        assert findings(week({"monday": [line]}, f"goal: strength\n{MEET}"), self.RULE) == []
        assert findings(week({"monday": [line]}, f"goal: strength\ndeload: [4]\n{MEET}"), self.RULE)

    def test_jumps_without_a_load_are_no_work_by_feel(self, findings: Findings, week: Text) -> None:
        lines = ["barbell jump squat, sets: 3, reps: 3, load: 90 %", "barbell jump squat, sets: 3, reps: 3"]
        assert len(findings(week({"monday": lines}, "goal: power"), self.RULE)) == 1

    @pytest.mark.parametrize(("age", "said"), [(17, False), (18, True)])
    def test_no_load_is_too_light_for_the_young(
        self, findings: Findings, week: Text, age: int, said: bool
    ) -> None:
        head = f"goal: strength\nathlete: {{name: A, age: {age}}}"
        assert bool(findings(week({"monday": [SQUAT]}, head), self.RULE)) is said

    @pytest.mark.parametrize(
        ("squat", "press", "weeks"),
        [
            ("2-3", "load: 75 %, in weeks: 2", (2, 3)),
            ("3-4", "load: 75 %, in weeks: 1-2", ()),  # together all weeks
            ("3-4", "load: 75 %, in weeks: 1", (1, 3, 4)),
        ],
    )
    def test_the_weeks_are_those_of_the_lifts_that_are_named(
        self, findings: Findings, week: Text, squat: str, press: str, weeks: tuple[int, ...]
    ) -> None:
        lines = [f"{SQUAT}, in weeks: {squat}", f"bench press, sets: 3, reps: 5, {press}"]
        (finding,) = findings(week({"monday": lines}, "goal: strength\nweeks: 4"), self.RULE)
        assert finding.weeks == weeks

    @pytest.mark.parametrize(
        ("swap", "said"),
        [
            ("", True),
            ("swap: front squat", False),  # 70 % of what?
            ("swap: front squat, load: 70 %", True),  # of the front squat
        ],
    )
    def test_a_percentage_that_was_written_for_another_lift(
        self, findings: Findings, week: Text, swap: str, said: bool
    ) -> None:
        adjust = f", adjust: [{{exercise: back squat, {swap}}}]" if swap else ""
        head = f"goal: strength\nathletes: [{{athlete: {{name: Ida}}{adjust}}}]"
        assert bool(findings(week({"monday": [SQUAT]}, head), self.RULE)) is said

    @pytest.mark.parametrize(
        ("goal", "back", "build", "weeks"),
        [
            ("strength", 60, 75, (3, 4)),
            ("strength", 60, 80, None),
            ("muscular endurance", 60, 82, (3, 4)),  # the easy return is not the work
            ("strength", 85, 75, (3, 4)),
        ],
    )
    def test_a_return_is_left_out(
        self, findings: Findings, goal: str, back: int, build: int, weeks: tuple[int, ...] | None
    ) -> None:
        block = (
            "  - {{name: {}, weeks: 2, sessions: [{{session: A, exercises:"
            " [{{exercise: back squat, sets: 3, reps: 5, load: {} %}}]}}]}}\n"
        )
        text = f"programme: T\ngoal: {goal}\nblocks:\n{block.format('Back, phase: return', back)}"
        found = findings(text + block.format("Build", build), self.RULE)
        assert [one.weeks for one in found] == ([] if weeks is None else [weeks])

    def test_three_are_named_and_the_first_numbers_are_told(self, findings: Findings, week: Text) -> None:
        lifts = ("back squat", "deadlift", "bench press", "overhead press")
        lines = [f"{lift}, sets: 3, reps: 5, load: 70 %" for lift in lifts]
        (finding,) = findings(week({"monday": lines}, "goal: strength"), self.RULE)
        assert finding.counted == (
            "Too light for strength: back squat up to 70 %, deadlift up to 70 %, bench press up to 70 % and 1"
            " more."
        )
        assert finding.amount is not None
        assert (finding.amount.counted, finding.amount.wanted, finding.amount.unit) == (70, 80, "%")
        assert len(finding.related) == 3
