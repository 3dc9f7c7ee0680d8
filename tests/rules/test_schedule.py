"""Rules on the schedule: time between hard days."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.finding import Finding

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]

REHABILITATION = "rehabilitation: {{stage: return, advised by: physiotherapist, until: {until}}}"
PRESS, EXTENSION = "leg press, sets: 4, reps: 6", "leg extension, sets: 4, reps: 12"


def days(first: str, second: str, one: str = PRESS, other: str = EXTENSION) -> dict[str, list[str]]:
    return {f"{first} Heavy": [one], f"{second} Light": [other]}


class TestSessionsTooClose:
    """At least 48 h for the same muscles: fm21-20-48, US Army FM 21-20 ch. 3 (secondary).

    Sets to failure slow recovery by 24 to 48 h: moran-2017, Eur J Appl Physiol 2017;117:2387-2399.
    """

    RULE = "sessions-too-close"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week(days("monday", "tuesday")), self.RULE)
        assert (finding.severity, finding.confidence) == ("warning", "guideline")
        assert (finding.place.excerpt, finding.where) == ("Light", "Light")
        assert finding.counted == "Monday and Tuesday both work quadriceps hard, 24 h apart."
        assert finding.wanted == "48 h between two such days"
        assert (
            finding.change
            == "Move one of the two sessions, or bring one of the days below 4 hard sets for the muscle."
        )
        assert [related.words for related in finding.related] == [
            "Heavy, leg press: 4 sets",
            "Light, leg extension: 4 sets",
        ]

    @pytest.mark.parametrize(
        ("second", "said"), [("tuesday", 1), ("wednesday", 0), ("thursday", 0), ("sunday", 0)]
    )
    def test_forty_eight_hours(self, findings: Findings, week: Text, second: str, said: int) -> None:
        assert len(findings(week(days("monday", second)), self.RULE)) == said

    @pytest.mark.parametrize(("second", "said"), [("tuesday", 1), ("wednesday", 1), ("thursday", 0)])
    @pytest.mark.parametrize("effort", ["rir: 0", "rpe: 10", "rir: 0-2", "rpe: 9-10"])
    def test_seventy_two_after_failure(
        self, findings: Findings, week: Text, second: str, said: int, effort: str
    ) -> None:
        assert len(findings(week(days("monday", second, f"{PRESS}, {effort}")), self.RULE)) == said

    def test_the_words_after_failure(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week(days("monday", "wednesday", f"{PRESS}, rir: 0")), self.RULE)
        assert (
            finding.counted
            == "Monday and Wednesday both work quadriceps hard, 48 h apart, and Monday goes to failure."
        )
        assert finding.wanted == "72 h between two such days"

    def test_failure_is_said_whatever_the_hours(self, findings: Findings, week: Text) -> None:
        both = ["leg press, sets: 4", "dumbbell fly, sets: 4, rir: 0"]
        (finding,) = findings(week({"monday": both, "tuesday": both}), self.RULE)
        assert finding.counted.endswith("24 h apart, and Monday goes to failure.")
        assert finding.wanted == "72 h between two such days"

    @pytest.mark.parametrize(
        ("first", "second"),
        [
            (PRESS, f"{EXTENSION}, rir: 0"),
            (f"{PRESS}, rir: 1", EXTENSION),
            ("leg press, sets: 3, rir: 0", EXTENSION),
        ],
    )
    def test_only_failure_of_a_hard_first_day_takes_longer(
        self, findings: Findings, week: Text, first: str, second: str
    ) -> None:
        assert findings(week(days("monday", "wednesday", first, second)), self.RULE) == []

    @pytest.mark.parametrize(
        ("line", "said"),
        [
            ("leg extension, sets: 4", 1),
            ("leg extension, sets: 3", 0),
            ("leg extension, sets: 3-5", 1),  # middle 4
            ("leg extension, sets: 3-4", 0),  # middle 3.5
            ("leg extension, sets: 4, rir: 3", 1),
            ("leg extension, sets: 4, rir: 4", 0),
            ("leg extension, sets: 4, rir: 3-5", 1),  # may be as hard as 3 in reserve
            ("leg extension, sets: 4, rpe: 7", 1),
            ("leg extension, sets: 4, rpe: 6.5", 0),
            ("leg extension, sets: 4, rpe: 5-7", 1),
            ("box jump, sets: 9, reps: 3", 0),  # fast work
            ("seated leg curl, sets: 9", 0),  # another muscle
            ("moon walk, sets: 9", 0),
        ],
    )
    def test_what_makes_a_day_hard(self, findings: Findings, week: Text, line: str, said: int) -> None:
        for one, other in ((PRESS, line), (line, PRESS)):
            assert len(findings(week(days("monday", "tuesday", one, other)), self.RULE)) == said

    def test_helping_sets_make_no_day_hard(self, findings: Findings, week: Text) -> None:
        assert (
            findings(
                week(days("monday", "tuesday", "bench press, sets: 9", "cable pushdown, sets: 9")), self.RULE
            )
            == []
        )

    def test_lines_of_a_day_are_taken_together(self, findings: Findings, week: Text) -> None:
        text = week(
            {
                "monday Morning": ["leg press, sets: 2"],
                "monday Evening": ["leg press, sets: 2"],
                "tuesday Light": [EXTENSION],
            }
        )
        (finding,) = findings(text, self.RULE)
        assert finding.counted == "Monday and Tuesday both work quadriceps hard, 24 h apart."

    def test_two_sessions_of_one_day_are_one_day(self, findings: Findings, week: Text) -> None:
        assert findings(week({"monday Morning": [PRESS], "monday Evening": [PRESS]}), self.RULE) == []

    @pytest.mark.parametrize(
        "exercise", ["standing calf raise", "plank", "wrist curl", "tibialis raise", "neck flexion"]
    )
    def test_muscles_that_may_work_daily(self, findings: Findings, week: Text, exercise: str) -> None:
        assert (
            findings(
                week(days("monday", "tuesday", f"{exercise}, sets: 6", f"{exercise}, sets: 6")), self.RULE
            )
            == []
        )

    def test_several_muscles_are_one_finding(self, findings: Findings, week: Text) -> None:
        both = [PRESS, "seated leg curl, sets: 4", "hip abduction machine, sets: 4"]
        (finding,) = findings(week({"monday": both, "tuesday": both}), self.RULE)
        assert "hamstrings, quadriceps" in finding.counted

    @pytest.mark.parametrize("session", ["A", "monday"])
    def test_days_that_are_not_stated_are_left_alone(
        self, findings: Findings, week: Text, session: str
    ) -> None:
        assert findings(week({session: [PRESS], "B": [PRESS]}), self.RULE) == []

    def test_over_the_end_of_a_week(self, findings: Findings, week: Text) -> None:
        assert findings(week(days("monday", "sunday")), self.RULE) == []  # one week: nothing follows
        (finding,) = findings(week(days("monday", "sunday"), "weeks: 3"), self.RULE)
        assert finding.counted == "Sunday and Monday both work quadriceps hard, 24 h apart."
        assert finding.weeks == (2, 3)
        assert finding.place.excerpt == "Heavy"

    def test_over_the_end_of_a_block(self, findings: Findings) -> None:
        block = "  - {{name: {name}, weeks: 1, sessions: [{{session: {name}, day: {day}, exercises: [{{exercise: leg press, sets: 4}}]}}]}}\n"
        text = (
            "programme: Test\nblocks:\n"
            + block.format(name="One", day="sunday")
            + block.format(name="Two", day="monday")
        )
        (finding,) = findings(text, self.RULE)
        assert (finding.place.excerpt, finding.weeks) == ("Two", (2,))

    def test_weeks_are_drawn_together(self, findings: Findings, week: Text) -> None:
        text = week(days("monday", "tuesday", other="leg extension, sets: {1: 3, 2-4: 4, 5: 2}"), "weeks: 5")
        (finding,) = findings(text, self.RULE)
        assert finding.weeks == (2, 3, 4)

    def test_a_repeated_day_is_close_to_itself(self, findings: Findings) -> None:
        text = "programme: Test\nsessions: [{session: Legs, day: [monday, tuesday], exercises: [{exercise: leg press, sets: 4}]}]\n"
        (finding,) = findings(text, self.RULE)
        assert finding.counted.startswith("Monday and Tuesday")
        assert [related.words for related in finding.related] == ["Legs, leg press: 4 sets"]

    def test_weekdays_keep_their_names_whatever_day_the_programme_starts(
        self, findings: Findings, week: Text
    ) -> None:
        # 1 January 2026 is a Thursday, so Monday and Tuesday are days 5 and 6
        (finding,) = findings(week(days("monday", "tuesday"), "starts: 2026-01-01"), self.RULE)
        assert finding.counted.startswith("Monday and Tuesday")
        (finding,) = findings(week(days("wednesday", "thursday"), "starts: 2026-01-01\nweeks: 2"), self.RULE)
        assert finding.counted.startswith("Wednesday and Thursday")  # over the end of its week
        assert finding.weeks == (2,)

    def test_a_rotation_is_laid_out_first(self, findings: Findings) -> None:
        text = (
            "programme: Test\nrotation: [monday, tuesday, friday]\nsessions:\n"
            "  - {session: A, exercises: [{exercise: leg press, sets: 4}]}\n  - {session: B, exercises: [{exercise: leg press, sets: 4}]}\n"
        )
        (finding,) = findings(text, self.RULE)
        assert (finding.place.excerpt, finding.counted[:18]) == ("B", "Monday and Tuesday")

    @pytest.mark.parametrize(
        ("until", "weeks"), [("2026-01-04", [(1, 2, 3)]), ("2026-01-11", [(2, 3)]), ("2026-12-31", [])]
    )
    def test_stands_back_under_rehabilitation(
        self, findings: Findings, week: Text, until: str, weeks: list[tuple[int, ...]]
    ) -> None:
        head = f"starts: 2026-01-05\nweeks: 3\n{REHABILITATION.format(until=until)}"
        assert [
            finding.weeks for finding in findings(week(days("monday", "tuesday"), head), self.RULE)
        ] == weeks

    @pytest.mark.parametrize("head", ["focus: [chest]", "phase: taper", "goal: strength"])
    def test_neither_focus_nor_phase_nor_goal_matters(
        self, findings: Findings, week: Text, head: str
    ) -> None:
        assert len(findings(week(days("monday", "tuesday"), head), self.RULE)) == 1

    def test_sides_are_compared_with_themselves(self, findings: Findings, week: Text) -> None:
        left, right = "leg extension, sets: 4, side: left", "leg extension, sets: 4, side: right"
        assert len(findings(week(days("monday", "tuesday", left, left)), self.RULE)) == 1
        assert findings(week(days("monday", "tuesday", left, right)), self.RULE) == []
