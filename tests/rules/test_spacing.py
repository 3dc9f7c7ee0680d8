"""Hard days too close to one another: hours, weightlifting, words, and where a session may move to."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.findings.finding import Finding

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]

PRESS = "leg press, sets: 4, reps: 6"
EXTENSION = "leg extension, sets: 4, reps: 12"
FAILS = f"{PRESS}, rir: 0"

MOVED = {"spotline.yaml": "rules: {sessions-too-close: {between sessions: 3}}\n"}
"""All sets up to 3 in reserve, and those that do not say, count between sessions, too."""


@pytest.fixture(scope="module")
def findings(findings: Findings) -> Findings:
    return lambda text, rule, files=None: findings(text, rule, {**MOVED, **(files or {})})


class TestSessionsTooClose:
    """48 hours: FM 21-20; 72 after failure: and the day by which recovery took longer in Moran-Navarro 2017."""

    RULE = "sessions-too-close"

    def timed(self, first: str, second: str, line: str = PRESS) -> str:
        return (
            "programme: Legs\nsessions:\n"
            f"  - {{session: A, day: {first}, exercises: [{{exercise: {line}}}]}}\n"
            f"  - {{session: B, day: {second}, exercises: [{{exercise: {EXTENSION}}}]}}\n"
        )

    @pytest.mark.parametrize(
        ("first", "second", "line", "hours"),
        [
            ("monday 06:30", "wednesday 06:00", PRESS, 47.5),
            ("monday 06:00", "wednesday 06:00", PRESS, None),
            ("monday 06:00", "wednesday 06:00", f"{PRESS}, rir: 1", None),
            ("monday 06:00", "wednesday 06:00", FAILS, 48),
            ("monday 20:00", "thursday 06:00", FAILS, 58),  # three days on, and yet too soon
            ("monday 20:00", "thursday 06:00", PRESS, None),
            ("monday 20:00", "thursday 20:00", FAILS, None),
            ("monday 20:00", "thursday", FAILS, None),  # one hour alone says nothing
        ],
    )
    def test_hours_are_counted_where_both_are_written(
        self, findings: Findings, first: str, second: str, line: str, hours: float | None
    ) -> None:
        said = [
            one.amount.counted for one in findings(self.timed(first, second, line), self.RULE) if one.amount
        ]
        assert said == ([] if hours is None else [hours])

    def test_hours_are_said_to_a_tenth(self, findings: Findings) -> None:
        (finding,) = findings(self.timed("monday 06:30", "wednesday 05:50"), self.RULE)
        assert finding.counted.endswith(" 47.3 h apart.")

    def test_one_line_that_fails_is_enough_to_say_so(self, findings: Findings, week: Text) -> None:
        lines = [f"{PRESS}, load: 6RM", "leg curl, sets: 4, reps: 8, rir: 1"]
        (finding,) = findings(week({"monday": lines, "tuesday": [PRESS, "leg curl, sets: 4"]}), self.RULE)
        assert "(to failure, worked out from 6RM and 6 repetitions)" in finding.counted

    @pytest.mark.parametrize(
        ("saturday", "hours"),
        [
            (["session: B, day: saturday 10:00, exercises: [{exercise: EXTENSION, sets: 4}]"], 28),
            (
                [
                    "session: B, day: saturday 10:00, exercises: [{exercise: EXTENSION, sets: 2}]",
                    "session: C, day: saturday 18:00, exercises: [{exercise: EXTENSION, sets: 2}]",
                ],
                28,  # to the first of them
            ),
            (
                [
                    "session: B, day: saturday 10:00, exercises: [{exercise: EXTENSION, sets: 2}]",
                    "session: C, day: saturday, exercises: [{exercise: EXTENSION, sets: 2}]",
                ],
                24,  # one of them may be earlier
            ),
            (
                [
                    "session: B, day: saturday 10:00, exercises: [{exercise: bench press, sets: 4}]",
                    "activity: match, day: saturday, loads: {legs: high}",
                ],
                24,  # nobody knows when the match begins
            ),
        ],
    )
    def test_hours_to_all_that_makes_the_day_hard(
        self, findings: Findings, saturday: list[str], hours: float
    ) -> None:
        days = [f"session: A, day: friday 06:00, exercises: [{{exercise: {PRESS}}}]", *saturday]
        text = "programme: T\nsessions:\n" + "".join(f"  - {{{day}}}\n" for day in days)
        (finding,) = findings(text.replace("EXTENSION", "leg extension"), self.RULE)
        assert finding.amount is not None
        assert finding.amount.counted == hours

    def test_hours_from_the_last_hard_session_of_the_day_before(self, findings: Findings) -> None:
        halves = "".join(
            f"  - {{session: {name}, day: friday {hour}, exercises: [{{exercise: leg press, sets: 2}}]}}\n"
            for name, hour in (("A", "06:00"), ("B", "18:00"))
        )
        later = f"  - {{session: C, day: saturday 10:00, exercises: [{{exercise: {EXTENSION}}}]}}\n"
        (finding,) = findings(f"programme: T\nsessions:\n{halves}{later}", self.RULE)
        assert finding.counted.endswith(" 16 h apart.")

    @pytest.mark.parametrize(
        ("first", "second", "said"),
        [("left", "left", 1), ("right", "right", 1), ("left", "right", 0), ("right", "left", 0)],
    )
    def test_one_leg_rests_while_the_other_works(
        self, findings: Findings, week: Text, first: str, second: str, said: int
    ) -> None:
        line = "leg extension, sets: 4, reps: 10, side:"
        text = week({"monday": [f"{line} {first}"], "tuesday": [f"{line} {second}"]})
        assert len(findings(text, self.RULE)) == said

    @pytest.mark.parametrize(("easy", "failing", "said"), [(3, 1, 0), (1, 3, 0), (0, 4, 1), (2, 4, 1)])
    def test_a_hard_day_of_failing_sets_takes_longer(
        self, findings: Findings, week: Text, easy: int, failing: int, said: int
    ) -> None:
        lines = [f"leg press, sets: {easy}, reps: 6, rir: 2", f"leg press, sets: {failing}, reps: 6, rir: 0"]
        assert len(findings(week({"monday": lines, "wednesday": [PRESS]}), self.RULE)) == said

    def test_an_area_that_nobody_knows_makes_no_day_hard(self, findings: Findings, week: Text) -> None:
        match = "  - {activity: match, day: tuesday, loads: {moon: high}}\n"
        assert findings(week({"monday": [PRESS]}) + match, self.RULE) == []

    @pytest.mark.parametrize(
        ("days", "severity"),
        [
            ({"monday": "snatch", "tuesday": "clean", "thursday": "jerk"}, None),
            ({"monday": "snatch", "tuesday": "clean"}, "warning"),  # two days make no weightlifter
            ({"monday": "snatch", "tuesday": "moon walk", "thursday": "jerk"}, "warning"),
        ],
    )
    def test_three_days_of_its_lifts_make_a_weightlifter(
        self, findings: Findings, week: Text, days: dict[str, str], severity: str | None
    ) -> None:
        lifts = {
            day: [f"{lift}, sets: 4, reps: 2", "front squat, sets: 4, reps: 3"] for day, lift in days.items()
        }
        if "thursday" in lifts:
            lifts["thursday"] = lifts["thursday"][:1]
        assert [one.severity for one in findings(week(lifts), self.RULE)] == ([severity] if severity else [])

    def test_of_a_weightlifters_days_only_failing_groups_are_told(
        self, findings: Findings, week: Text
    ) -> None:
        days = {
            "monday": ["snatch, sets: 4, reps: 2", "front squat, sets: 4, reps: 3, rir: 0", "lat pulldown, sets: 4"],
            "tuesday": ["clean, sets: 4, reps: 2", "back squat, sets: 4, reps: 3", "lat pulldown, sets: 4"],
            "thursday": ["jerk, sets: 4, reps: 2"],
        }  # fmt: skip
        (finding,) = findings(week(days), self.RULE)
        assert finding.severity == "note"
        assert finding.counted.startswith("Quadriceps, gluteals and adductors hard on Monday (to failure)")

    def test_where_failure_was_worked_out(self, findings: Findings, week: Text) -> None:
        text = week({"monday": [f"{PRESS}, load: 6RM"], "wednesday": [EXTENSION]})
        (finding,) = findings(text, self.RULE)
        assert finding.counted == (
            "Quadriceps hard on Monday (to failure, worked out from 6RM and 6 repetitions) and Wednesday,"
            " 48 h apart."
        )

    def test_failure_in_one_of_two_groups_is_enough_for_the_longer_time(
        self, findings: Findings, week: Text
    ) -> None:
        both = ["lat pulldown, sets: 4", EXTENSION]
        text = week({"monday": ["lat pulldown, sets: 4", f"{EXTENSION}, rir: 0"], "tuesday": both})
        (finding,) = findings(text, self.RULE)
        assert finding.amount is not None
        assert (finding.wanted, finding.amount.wanted) == ("72 h", 72)

    @pytest.mark.parametrize(
        ("sets", "first"), [((4, 6), "Hamstrings and quadriceps"), ((6, 4), "Quadriceps and hamstrings")]
    )
    def test_the_group_with_most_sets_comes_first(
        self, findings: Findings, week: Text, sets: tuple[int, int], first: str
    ) -> None:
        lines = [f"leg extension, sets: {sets[0]}", f"lying leg curl, sets: {sets[1]}"]
        (finding,) = findings(week({"monday": lines, "tuesday": lines}), self.RULE)
        assert finding.counted.startswith(f"{first} hard on Monday and Tuesday")

    @pytest.mark.parametrize(
        ("line", "said"),
        [
            ("banded squat, sets: 4, reps: 20", 0),
            ("banded squat, sets: 4, reps: 6", 1),
            ("bodyweight squat, sets: 4, reps: 20", 0),
            ("bodyweight squat, sets: 4, reps: 20, rir: 3", 1),
            ("bodyweight squat, sets: 4, reps: 20, rir: 4", 0),
            ("bodyweight squat, sets: 4, reps: 20+", 1),  # the last set goes as far as it goes
            ("goblet squat, sets: 4, reps: 20", 1),
            ("leg extension, sets: 4, reps: 20", 1),
        ],
    )
    def test_many_light_repetitions_make_no_hard_day_unsaid(
        self, findings: Findings, week: Text, line: str, said: int
    ) -> None:
        assert len(findings(week({"monday": [PRESS], "tuesday": [line]}), self.RULE)) == said

    def test_nor_is_all_work_with_the_body_alone_light(self, findings: Findings, week: Text) -> None:
        text = week({"monday": ["lat pulldown, sets: 4"], "tuesday": ["pull-up, sets: 4, reps: 15"]})
        assert len(findings(text, self.RULE)) == 1

    def labels(self, finding: Finding) -> list[str]:
        return [edit.label for edit in finding.edits]

    def test_either_session_may_move_to_a_day_far_enough_the_nearest_first(
        self, findings: Findings, week: Text
    ) -> None:
        (finding,) = findings(week({"monday A": [PRESS], "tuesday B": [PRESS]}), self.RULE)
        assert self.labels(finding) == [
            *(f"move B to {day}" for day in ("Wednesday", "Thursday", "Saturday", "Friday")),
            *(f"move A to {day}" for day in ("Sunday", "Saturday", "Friday", "Thursday")),
        ]

    def test_days_that_are_taken_and_other_hard_days_leave_fewer(
        self, findings: Findings, week: Text
    ) -> None:
        text = week({"monday A": [PRESS], "tuesday B": [PRESS], "friday C": [PRESS]})
        (finding,) = findings(text, self.RULE)
        assert self.labels(finding) == ["move B to Wednesday", "move A to Sunday"]
        upper = week({"monday A": [PRESS], "tuesday B": [PRESS], "friday C": ["bench press, sets: 4"]})
        (finding,) = findings(upper, self.RULE)
        assert "move B to Thursday" in self.labels(finding)
        assert "move B to Friday" not in self.labels(finding)  # C is there

    def test_after_failure_it_moves_further(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"monday A": [FAILS], "tuesday B": [PRESS]}), self.RULE)
        assert self.labels(finding) == [
            "move B to Thursday",
            "move B to Friday",
            "move A to Saturday",
            "move A to Friday",
        ]

    def test_it_moves_to_the_athletes_days_alone(self, findings: Findings, week: Text) -> None:
        head = "athlete: {name: Ida, days: [monday, tuesday, thursday]}"
        (finding,) = findings(week({"monday A": [PRESS], "tuesday B": [PRESS]}, head), self.RULE)
        assert self.labels(finding) == ["move B to Thursday", "move A to Thursday"]

    def test_a_match_stays_where_it_is(self, findings: Findings, week: Text) -> None:
        match = "  - {activity: match, day: saturday, loads: {legs: high}}\n"
        (finding,) = findings(week({"friday A": [PRESS]}) + match, self.RULE)
        assert (finding.where, finding.severity) == ("A", "warning")
        assert finding.counted.endswith("hard on Friday and Saturday (match), 24 h apart.")
        assert finding.change == "Move A further from match, or keep it under 4 hard sets."
        assert {label.split(" to ")[0] for label in self.labels(finding)} == {"move A"}
        assert "move A to Thursday" in self.labels(finding)
