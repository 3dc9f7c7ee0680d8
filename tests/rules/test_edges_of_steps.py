"""Steps from week to week at their edges: stated ones, odd weeks, a week that was pasted."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.findings.finding import Finding

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]

IDA = "weeks: 4\nathlete: {name: Ida, body mass: 80 kg, best lifts: {back squat: 100 kg}}"


class TestLoadStepLarge:
    """10 % a step: acsm-2009."""

    RULE = "load-step-large"

    @pytest.mark.parametrize(
        ("line", "counted"),
        [
            ("back squat, sets: 3, reps: 5, load: 80 kg, progression: {add: 10 kg, every: week}", "10 kg every week, 12 % of 80 kg"),
            ("back squat, sets: 3, reps: 5, load: 80 kg, progression: {add: 8 kg, every: week}", ""),
            ("back squat, sets: 3, reps: 5, load: 80 kg, progression: {add: 9 kg}", "9 kg at a time, 11 % of 80 kg"),
            # it starts again three repetitions lower: 10 % and three times 4 %
            ("back squat, sets: 3, reps: 5-8, load: 80 kg, progression: {add: 17 kg, when: top of range}", ""),
            ("back squat, sets: 3, reps: 5-8, load: 80 kg, progression: {add: 20 kg, when: top of range}", "20 kg at a time, 25 % of 80 kg"),
            ("back squat, sets: 3, reps: 5-8, load: 80 kg, progression: {add: 15 kg, every: week}", "15 kg every week, 19 % of 80 kg"),
            # a load in % comes to kilograms by the best lift
            ("back squat, sets: 3, reps: 5, load: 80 %, progression: {add: 10 kg, every: week}", "10 kg every week, 12 % of 80 %"),
            ("front squat, sets: 3, reps: 5, load: 80 %, progression: {add: 50 kg, every: week}", ""),
            # with the body: 90 kg in all
            ("chin-up, sets: 3, reps: 5, load: bodyweight + 10 kg, progression: {add: 12 kg, every: week}", "12 kg every week, 13 % of bodyweight + 10 kg"),
            ("chin-up, sets: 3, reps: 5, load: bodyweight + 10 kg, progression: {add: 9 kg, every: week}", ""),
            ("back squat, sets: 3, load: 80 kg, progression: {add: 20 %, every: 2 weeks}", "20 % every 2 weeks"),
            ("back squat, sets: 3, load: 80 kg, progression: {add: 10 %, every: week}", ""),
            # what nobody can hold against anything
            ("back squat, sets: 3, reps: 5, progression: {add: 50 kg, every: week}", ""),
            ("back squat, sets: 3, reps: 5, load: heavy, progression: {add: 50 kg, every: week}", ""),
            ("back squat, sets: 3, reps: 5, load: 80 kg, progression: {add: 1 rep, every: week}", ""),
        ],
    )  # fmt: skip
    def test_stated_steps(self, findings: Findings, week: Text, line: str, counted: str) -> None:
        found = findings(week({"A": [line]}, IDA), self.RULE)
        name = line.partition(",")[0]
        assert [one.counted for one in found] == ([f"{name} is to go up by {counted}."] if counted else [])

    @pytest.mark.parametrize(
        ("loads", "said"),
        [
            ("{1: 70 kg, 2: 52 kg, 3: 75 kg, 4: 76 kg}", 0),  # 72, with its digits turned round
            ("{1: 70 kg, 2: 52 kg, 3: 90 kg, 4: 91 kg}", 1),  # too far from 72, too
            ("{1: 70 kg, 2: 71 kg, 3: 90 kg, 4: 91 kg}", 1),
            ("{1: 158 kg, 2: 16 kg, 3: 176 kg, 4: 177 kg}", 0),  # 10 % above the 160 that was meant
            ("{1: 158 kg, 2: 16 kg, 3: 177 kg, 4: 178 kg}", 1),
        ],
    )
    def test_what_follows_a_slip_is_held_against_what_was_meant(
        self, findings: Findings, week: Text, loads: str, said: int
    ) -> None:
        text = week({"A": [f"back squat, sets: 3, reps: 5, load: {loads}"]}, "weeks: 4")
        assert len(findings(text, self.RULE)) == said

    @pytest.mark.parametrize(
        ("tempo", "said"), [("3-0-1-0", False), ("2-0-1-0", True), ("1-3-1-0", False), ("4-1-1-0", False)]
    )
    def test_slow_lifting_is_another_lift(
        self, findings: Findings, week: Text, tempo: str, said: bool
    ) -> None:
        """Three seconds down: what comes after at the usual speed is no step from it."""
        lines = [
            f"back squat, sets: 3, reps: 5, load: 60 %, tempo: {tempo}, in weeks: 1",
            "back squat, sets: 3, reps: 5, load: 75 %, in weeks: 2",
        ]
        assert bool(findings(week({"A": lines}, "weeks: 2"), self.RULE)) is said

    def test_a_load_that_goes_back_is_told_of_its_own_line(self, findings: Findings, week: Text) -> None:
        lines = [
            "leg curl, sets: 3, reps: {1-2: 10, 3: 9, 4: 10}, load: 30 kg",
            "back squat, sets: 3, reps: 5, load: {1: 70 %, 2: 72.5 %, 3: 90 %, 4: 72.5 %}",
        ]
        (finding,) = findings(week({"A": lines}, "weeks: 4"), self.RULE)
        assert "and back to 72.5 % in week 4" in finding.counted


class TestWeekOutOfLine:
    RULE = "week-out-of-line"

    @pytest.mark.parametrize(
        ("line", "words", "edit"),
        [
            ("sets: 3, reps: 5, load: {1: 62.5 %, 2: 65 %, 3: 56 %, 4: 67.5 %}", "at 56 %, between weeks at 65 % and 67.5 %", "65 %"),
            ("sets: 3, reps: 5, load: {1: 65 %, 2: 56 %, 3: 65 %, 4: 67.5 %}", "at 56 %, between weeks at 65 %", "65 %"),
            ("sets: 3, load: {1: 70 %, 2: 50 %, 3: 70 %, 4: 70 %}", "at 50 %, between weeks at 70 %", "70 %"),
            ("sets: {1: 3, 2: 6, 3: 3, 4: 3}, reps: 5", "with 6 sets, between weeks with 3", "3"),
            ("sets: {1: 3, 2: 5, 3: 3, 4: 3}, reps: 5", "", ""),
            ("sets: {1: 1, 2: 2, 3: 1, 4: 1}, reps: 5", "", ""),  # twice as many, but one set
            ("sets: 3, reps: {1: 5, 2: 15, 3: 5, 4: 5}", "at 15 repetitions, between weeks at 5", "5"),
            ("sets: 3, reps: {1: 5, 2: 6, 3: 5, 4: 5}", "", ""),
        ],
    )  # fmt: skip
    def test_a_number_that_leaves_and_returns(
        self, findings: Findings, week: Text, line: str, words: str, edit: str
    ) -> None:
        lines = ["leg curl, sets: 3, reps: 10, rir: 2", f"back squat, {line}"]
        found = findings(week({"A": lines}, "weeks: 4"), self.RULE)
        assert [one.counted for one in found] == ([f"back squat {words}."] if words else [])
        assert [one.words for finding in found for one in finding.edits] == ([edit] if edit else [])

    @pytest.mark.parametrize(("weeks", "said"), [(2, 0), (3, 1)])
    def test_it_takes_a_week_on_either_side(
        self, findings: Findings, week: Text, weeks: int, said: int
    ) -> None:
        loads = {2: "{1: 70 %, 2: 50 %}", 3: "{1: 70 %, 2: 50 %, 3: 70 %}"}[weeks]
        lines = ["leg curl, sets: 3, reps: 10, rir: 2", f"back squat, sets: 3, reps: 5, load: {loads}"]
        assert len(findings(week({"A": lines}, f"weeks: {weeks}"), self.RULE)) == said


class TestWeekPasted:
    RULE = "week-pasted"

    @pytest.mark.parametrize(
        ("line", "head", "said"),
        [
            ("sets: 3, reps: 5, load: {1: 70 %, 2: 72.5 %, 3: 72.5 %, 4: 77.5 %}", "weeks: 4", True),
            ("sets: 3, reps: {1: 5, 2: 6, 3: 6, 4: 8}, load: 70 %", "weeks: 4", True),
            ("sets: {1: 3, 2: 4, 3: 4, 4: 5}, reps: 5", "weeks: 4", True),
            ("sets: 3, load: {1: 70 %, 2: 72.5 %, 3: 72.5 %, 4: 77.5 %}", "weeks: 4", True),  # no repetitions
            ("sets: 3, reps: 5, load: {1: 70 %, 2-3: 72.5 %, 4: 77.5 %}", "weeks: 4", False),  # meant so
            ("sets: 3, reps: 5, load: {1: 72.5 %, 2: 72.5 %, 3: 75 %}", "weeks: 3", False),
            ("sets: 3, reps: 5, load: {1: 72.5 %, 2: 72.5 %, 3: 75 %, 4: 77.5 %}", "weeks: 4", False),
            ("sets: 3, reps: 5, load: {1: 72.5 %, 2: 72.5 %, 3: 72.5 %, 4: 77.5 %}", "weeks: 4", False),
            ("sets: 3, reps: 5, load: {1: 72.5 %, 2: 72.5 %, 3: 77.5 %, 4: 77.5 %}", "weeks: 4", False),
            ("sets: 3, reps: 5, load: {1: 70 %, 2: 72.5 %, 3: 72.5 %, 4: 72.4 %}", "weeks: 4", False),
            ("sets: 3, reps: 5, load: {1: 70 %, 2: 72.5 %, 3: 72.5 %, 4: heavy}", "weeks: 4", False),
        ],
    )  # fmt: skip
    def test_a_week_like_the_one_before_while_all_else_rises(
        self, findings: Findings, week: Text, line: str, head: str, said: bool
    ) -> None:
        found = findings(week({"A": [f"back squat, {line}"]}, head), self.RULE)
        assert [one.weeks for one in found] == ([(3,)] if said else [])

    @pytest.mark.parametrize(
        ("loads", "weeks", "said"),
        [
            ("1: 70 %, 2: 72.5 %, 3: 60 %, 4: 74 %, 5: 74 %, 6: 77 %, 7: 80 %", 7, [(5,)]),
            ("1: 70 %, 2: 72.5 %, 3: 60 %, 4: 74 %, 5: 74 %, 6: 77 %", 6, []),  # two steps are no habit
            (
                "1: 73 %, 2: 72.5 %, 3: 60 %, 4: 74 %, 5: 74 %, 6: 77 %, 7: 80 %",
                7,
                [],
            ),  # it does not always rise
            (
                "1: 70 %, 2: 72.5 %, 3: 72.5 %, 4: 74 %, 5: 75 %, 6: 77 %, 7: 80 %",
                7,
                [],
            ),  # an easier week repeats
            ("1: 70 %, 2: 72.5 %, 3: 60 %, 4: 74 %, 5: 75 %, 6: 75 %, 7: 80 %", 7, [(6,)]),
        ],
    )
    def test_the_first_weeks_after_a_deload_may_be_alike(
        self, findings: Findings, week: Text, loads: str, weeks: int, said: list[tuple[int, ...]]
    ) -> None:
        line = f"back squat, sets: 3, reps: 5, load: {{{loads}}}"
        found = findings(week({"A": [line]}, f"weeks: {weeks}\ndeload: [3]"), self.RULE)
        assert [one.weeks for one in found] == said

    @pytest.mark.parametrize(
        ("doses", "said"),
        [
            ("10 at 70, 8 at 72, 10 at 70, 6 at 76, 5 at 78", [(3,)]),
            ("10 at 70, 8 at 72, 10 at 70, 6 at 76", []),  # four weeks are too few to tell
            ("10 at 70, 8 at 70, 10 at 70, 6 at 76, 5 at 78", []),  # as heavy as the week before
            ("10 at 70, 10 at 72, 10 at 70, 6 at 76, 5 at 78", []),  # as long as the week before
            ("10 at 70, 8 at 72, 10 at 71, 6 at 76, 5 at 78", []),  # of no week before
            ("10 at 70, 8 at 76, 10 at 70, 6 at 72, 5 at 78", []),  # the others do not rise
        ],
    )
    def test_a_week_that_falls_back_to_an_earlier_one(
        self, findings: Findings, week: Text, doses: str, said: list[tuple[int, ...]]
    ) -> None:
        pairs = [one.split(" at ") for one in doses.split(", ")]
        reps = ", ".join(f"{number}: {reps}" for number, (reps, _) in enumerate(pairs, 1))
        loads = ", ".join(f"{number}: {load} %" for number, (_, load) in enumerate(pairs, 1))
        line = f"back squat, sets: 4, reps: {{{reps}}}, load: {{{loads}}}"
        found = findings(week({"A": [line]}, f"weeks: {len(pairs)}"), self.RULE)
        assert [one.weeks for one in found] == said
        assert all(
            one.counted
            == "Back squat repeats week 1: 4 x 10 at 70 %, between 4 x 8 at 72 % and 4 x 6 at 76 %."
            for one in found
        )

    def test_lines_that_are_done_in_other_weeks_alone(self, findings: Findings, week: Text) -> None:
        lines = [
            "back squat, sets: 3, reps: 5, load: {1: 70 %, 2: 72.5 %, 3: 72.5 %, 4: 77.5 %}",
            "plank, sets: 2, hold: 30 s, in weeks: 1",
            "dead bug, sets: {1: 2, 2: 0, 3: 0, 4: 2}, reps: 8",
        ]
        assert [one.weeks for one in findings(week({"A": lines}, "weeks: 4"), self.RULE)] == [(3,)]

    def test_lines_that_fall_back_together_are_one_finding(self, findings: Findings, week: Text) -> None:
        dose = "sets: 4, reps: {1: 10, 2: 8, 3: 10, 4: 6, 5: 5}, load: {1: 70 %, 2: 72 %, 3: 70 %, 4: 76 %, 5: 78 %}"
        (finding,) = findings(
            week({"A": [f"back squat, {dose}", f"bench press, {dose}"]}, "weeks: 5"), self.RULE
        )
        assert finding.counted.startswith("Back squat and bench press repeat week 1: ")
        assert [one.words for one in finding.related] == ["bench press"]

    def test_lines_that_rise_and_lines_that_stay(self, findings: Findings, week: Text) -> None:
        rising = "sets: 3, reps: 5, load: {1: 60 kg, 2: 62.5 kg, 3: 62.5 kg, 4: 65 kg}"
        lines = ["leg curl, sets: 3, reps: 10, rir: 2", f"back squat, {rising}", f"bench press, {rising}"]
        (finding,) = findings(week({"A": lines}, "weeks: 4"), self.RULE)
        assert finding.counted == (
            "Every line repeats week 2, while back squat and bench press rise before and after."
        )
        assert [one.words for one in finding.related] == ["bench press"]
        assert [one.label for one in finding.edits] == ["write one value for both weeks"]
