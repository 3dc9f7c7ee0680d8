"""Rules on dose: weekly sets over a limit, and under the least that trials can measure."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.finding import Finding

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]

REHABILITATION = "rehabilitation: {stage: heel drops, advised by: physiotherapist, until: 2026-12-31}"


class TestWeeklySetsOverLimit:
    """20 hard sets a muscle group: cp-cap, common practice, no source. Half for a helper: pelland-2026-frac."""

    RULE = "weekly-sets-over-limit"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(
            week({"monday Push": ["bench press, sets: 12, reps: 8", "dumbbell fly, sets: 9-10, reps: 12"]}),
            self.RULE,
        )
        assert (finding.severity, finding.confidence) == ("warning", "common practice")
        assert (finding.place.excerpt, finding.where) == ("dumbbell fly", "Push, dumbbell fly")
        assert finding.counted == "up to 22 sets for the chest (all direct)."
        assert finding.wanted == "at most 20 a week (common practice; no trial sets a ceiling)"
        assert finding.change == "Take 2 sets off, or move the limit in spotline.yaml."
        assert [related.words for related in finding.related] == [
            "Push, bench press: 12 sets",
            "Push, dumbbell fly: 9-10 sets",
        ]

    @pytest.mark.parametrize(
        ("lines", "said"),
        [
            (["dumbbell fly, sets: 20"], 0),  # at the limit
            (["dumbbell fly, sets: 21"], 1),
            (["dumbbell fly, sets: 18-20"], 0),
            (["dumbbell fly, sets: 18-21"], 1),  # judged on the high end
            (["dumbbell fly, sets: 12", "dumbbell fly, sets: 8"], 0),
            (["cable pushdown, sets: 18", "bench press, sets: 4"], 0),  # triceps 18 + 4 x 0.5 = 20
            (["cable pushdown, sets: 18", "bench press, sets: 5"], 1),  # 20.5
            (["dumbbell fly, sets: 15, rir: 6", "dumbbell fly, sets: 20"], 0),  # easy sets do not count
            (["dumbbell fly, sets: 15, rir: 5", "dumbbell fly, sets: 20"], 1),
            (["box jump, sets: 40, reps: 3"], 0),  # nor does fast work
            (
                ["leg extension, sets: 20, side: left", "leg extension, sets: 20, side: right"],
                0,
            ),  # each leg by itself
            (["leg extension, sets: 21, side: right"], 1),
        ],
    )
    def test_at_the_limit_and_just_past_it(
        self, findings: Findings, week: Text, lines: list[str], said: int
    ) -> None:
        assert len(findings(week({"Gym": lines}), self.RULE)) == said

    def test_helpers_are_told_apart(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"Gym": ["cable pushdown, sets: 18", "bench press, sets: 6"]}), self.RULE)
        assert finding.counted == "21 sets for the triceps (18 direct, the rest as a helper)."  # 18 + 6 x 0.5

    def test_helpers_alone(self, findings: Findings, week: Text) -> None:
        said = findings(week({"Gym": ["lat pulldown, sets: 42"]}, "athlete: {name: A}"), self.RULE)
        assert "21 sets for the biceps (as a helper only)" in " ".join(
            finding.counted for finding in said
        )  # 42 x 0.5

    def test_it_points_at_the_line_that_crosses(self, findings: Findings, week: Text) -> None:
        text = week(
            {
                "monday": ["dumbbell fly, sets: 12", "dumbbell fly, sets: 8"],
                "thursday": ["cable fly, sets: 1", "cable fly, sets: 9"],
            }
        )
        (finding,) = findings(text, self.RULE)
        assert (finding.place.line, finding.where) == (11, "thursday, cable fly")

    def test_groups_that_one_line_takes_over_share_a_finding(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"Gym": ["bent-over row, sets: 21"]}), self.RULE)
        assert finding.counted.startswith("21 sets for the lats (all direct)")
        assert "upper back" in finding.counted
        assert finding.change.startswith("Take 1 set off")

    @pytest.mark.parametrize(
        ("exercise", "group"),
        [
            ("hip thrust", "gluteals"),
            ("plank", "abdominals"),
            ("wrist curl", "forearms"),
            ("hip abduction machine", "hip abductors"),
        ],
    )
    def test_groups_that_compounds_feed_have_no_limit(
        self, findings: Findings, week: Text, exercise: str, group: str
    ) -> None:
        said = findings(week({"Gym": [f"{exercise}, sets: 30"]}), self.RULE)
        assert not any(f"the {group}" in finding.counted for finding in said)

    @pytest.mark.parametrize(
        ("limits", "said"),
        [
            ("{chest: 10}", 1),
            ("{chest: 12}", 0),
            ("{chest: 11.5}", 1),
            ("{pecs: 10}", 1),  # a coach's other word
            ("{Chest: 10}", 1),
            ("{lats: 2}", 0),
            ("{gluteals: 5}", 0),
        ],
    )
    def test_the_teams_own_limit(self, findings: Findings, week: Text, limits: str, said: int) -> None:
        text = week({"Gym": ["dumbbell fly, sets: 12"]})
        assert len(findings(text, self.RULE, {"spotline.yaml": f"weekly limits: {limits}\n"})) == said

    def test_the_teams_limit_is_said_to_be_the_teams(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(
            week({"Gym": ["dumbbell fly, sets: 12"]}),
            self.RULE,
            {"spotline.yaml": "weekly limits: {pecs: 10}\n"},
        )
        assert finding.counted == "12 sets for the chest (all direct)."
        assert finding.wanted == "at most 10 a week (your team's limit)"

    def test_a_team_may_raise_a_limit(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["dumbbell fly, sets: 24"]})
        assert len(findings(text, self.RULE)) == 1
        assert findings(text, self.RULE, {"spotline.yaml": "weekly limits: {chest: 24}\n"}) == []

    def test_a_team_may_limit_what_has_no_limit(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(
            week({"Gym": ["hip thrust, sets: 11"]}),
            self.RULE,
            {"spotline.yaml": "weekly limits: {glutes: 10}\n"},
        )
        assert finding.counted.startswith("11 sets for the gluteals")

    def test_weeks_are_drawn_together_with_the_words_of_the_fullest(
        self, findings: Findings, week: Text
    ) -> None:
        (finding,) = findings(
            week({"Gym": ["dumbbell fly, sets: {1: 20, 2: 22, 3: 25, 4: 21}"]}, "weeks: 4"), self.RULE
        )
        assert finding.weeks == (2, 3, 4)
        assert finding.counted.startswith("25 sets")

    def test_a_repeated_day_counts_twice(self, findings: Findings) -> None:
        text = "programme: Test\nsessions:\n  - {session: Gym, day: [monday, thursday], exercises: [{exercise: dumbbell fly, sets: 11}]}\n"
        (finding,) = findings(text, self.RULE)
        assert finding.counted.startswith("22 sets")

    def test_stands_back_under_rehabilitation(self, findings: Findings, week: Text) -> None:
        lines = {"Gym": ["heel drop, sets: 84, reps: 15"]}
        assert len(findings(week(lines), self.RULE)) == 1
        assert findings(week(lines, REHABILITATION), self.RULE) == []

    def test_unknown_exercises_bring_nothing(self, findings: Findings, week: Text) -> None:
        assert findings(week({"Gym": ["moon walk, sets: 50"]}), self.RULE) == []

    def test_the_focus_is_no_excuse(self, findings: Findings, week: Text) -> None:
        assert len(findings(week({"Gym": ["dumbbell fly, sets: 21"]}, "focus: [legs]"), self.RULE)) == 1


class TestWeeklySetsUnderFloor:
    """About 4 fractional sets a week: pelland-2026-min, Sports Med 2026;56(2):481-505, table 2 (secondary)."""

    RULE = "weekly-sets-under-floor"
    HEAD = "goal: hypertrophy\n"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(
            week({"monday Arms": ["barbell curl, sets: 3"]}, self.HEAD + "priority: [biceps]"), self.RULE
        )
        assert (finding.severity, finding.confidence) == ("warning", "trial")
        assert (finding.place.excerpt, finding.where) == ("barbell curl", "Arms, barbell curl")
        assert finding.counted == "3 sets a week for the biceps, counting half where it helps."
        assert finding.wanted == "at least 4, the least that trials can measure (no biological minimum)"
        assert finding.change == "Add 1 set, or take biceps out of the priorities."
        assert "not a minimum that the body sets" in finding.why

    @pytest.mark.parametrize(
        ("lines", "said"),
        [
            (["barbell curl, sets: 4"], 0),
            (["barbell curl, sets: 3"], 1),
            (["barbell curl, sets: 4-6"], 0),
            (["barbell curl, sets: 3-6"], 1),  # judged on the low end
            (["barbell curl, sets: 2", "lat pulldown, sets: 4"], 0),  # 2 + 4 x 0.5
            (["barbell curl, sets: 2", "lat pulldown, sets: 3"], 1),  # 3.5
            (["lat pulldown, sets: 8"], 0),  # helps only: 8 x 0.5
            (["barbell curl, sets: 3", "barbell curl, sets: 5, rir: 8"], 1),  # easy sets do not count
            (["leg press, sets: 3"], 0),  # nothing at all is for region-untrained to say
        ],
    )
    def test_at_the_floor_and_just_below(
        self, findings: Findings, week: Text, lines: list[str], said: int
    ) -> None:
        assert len(findings(week({"Gym": lines}, self.HEAD + "priority: [biceps]"), self.RULE)) == said

    @pytest.mark.parametrize(
        ("head", "severity"),
        [
            ("priority: [biceps]", "warning"),
            ("focus: [biceps]", "note"),
            ("focus: [biceps]\npriority: [biceps]", "warning"),
            ("focus: [arms]", None),
            ("priority: [arms]", None),
            ("priority: [triceps]", None),
            ("priority: [barbell curl]", None),
        ],
    )
    def test_only_muscles_that_are_named(
        self, findings: Findings, week: Text, head: str, severity: str | None
    ) -> None:
        said = findings(week({"Gym": ["barbell curl, sets: 3"]}, self.HEAD + head), self.RULE)
        assert [finding.severity for finding in said] == ([severity] if severity else [])

    def test_a_blocks_own_focus_comes_first(self, findings: Findings) -> None:
        text = (
            "programme: Test\ngoal: hypertrophy\nfocus: [biceps]\nblocks:\n"
            "  - {name: One, weeks: 1, focus: [triceps], sessions: [{session: A, exercises: [{exercise: barbell curl, sets: 1}, {exercise: cable pushdown, sets: 1}]}]}\n"
            "  - {name: Two, weeks: 1, sessions: [{session: A, exercises: [{exercise: barbell curl, sets: 1}, {exercise: cable pushdown, sets: 1}]}]}\n"
        )
        said = {finding.subject: finding.weeks for finding in findings(text, self.RULE)}
        assert said == {"triceps": (1,), "biceps": (2,)}

    def test_a_focus_is_taken_out_of_the_focus(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(
            week({"Gym": ["seated leg curl, sets: 1"]}, self.HEAD + "focus: [hams]"), self.RULE
        )
        assert finding.change == "Add 3 sets, or take hams out of the focus."

    def test_a_head_of_a_muscle_may_be_named(self, findings: Findings, week: Text) -> None:
        lines = {"Gym": ["Romanian deadlift, sets: 6", "seated leg curl, sets: 2"]}
        (finding,) = findings(week(lines, self.HEAD + "focus: [biceps femoris short head]"), self.RULE)
        assert finding.counted.startswith("2 sets a week")
        assert findings(week(lines, self.HEAD + "focus: [hamstrings]"), self.RULE) == []

    @pytest.mark.parametrize("goal", ["strength", "power", "muscular endurance", "general health"])
    def test_only_for_size(self, findings: Findings, week: Text, goal: str) -> None:
        assert (
            findings(week({"Gym": ["barbell curl, sets: 1"]}, f"goal: {goal}\npriority: [biceps]"), self.RULE)
            == []
        )

    def test_silent_without_a_goal(self, findings: Findings, week: Text) -> None:
        assert findings(week({"Gym": ["barbell curl, sets: 1"]}, "priority: [biceps]"), self.RULE) == []

    @pytest.mark.parametrize("phase", ["taper", "test"])
    def test_silent_in_taper_and_test(self, findings: Findings, week: Text, phase: str) -> None:
        assert (
            findings(
                week({"Gym": ["barbell curl, sets: 1"]}, f"{self.HEAD}phase: {phase}\npriority: [biceps]"),
                self.RULE,
            )
            == []
        )

    def test_silent_in_a_deload(self, findings: Findings) -> None:
        text = (
            "programme: Test\ngoal: hypertrophy\npriority: [biceps]\nblocks:\n"
            "  - {name: Full, weeks: 2, sessions: [{session: Gym, exercises: [{exercise: barbell curl, sets: 4}]}]}\n"
            "  - {name: Easy, weeks: 1, deload: true, sessions: [{session: Gym, exercises: [{exercise: barbell curl, sets: 1}]}]}\n"
        )
        assert findings(text, self.RULE) == []
        (finding,) = findings(text.replace(" deload: true,", ""), self.RULE)
        assert finding.weeks == (3,)

    @pytest.mark.parametrize(
        ("line", "said"), [("moon walk, sets: 3", 0), ("lat pulldown, sets: x", 0), ("leg press, sets: x", 1)]
    )
    def test_silent_where_a_line_that_cannot_be_counted_may_help(
        self, findings: Findings, week: Text, line: str, said: int
    ) -> None:
        assert (
            len(
                findings(
                    week({"Gym": ["barbell curl, sets: 3", line]}, self.HEAD + "priority: [biceps]"),
                    self.RULE,
                )
            )
            == said
        )

    def test_stands_back_under_rehabilitation(self, findings: Findings, week: Text) -> None:
        assert (
            findings(
                week({"Gym": ["barbell curl, sets: 1"]}, f"{self.HEAD}priority: [biceps]\n{REHABILITATION}"),
                self.RULE,
            )
            == []
        )

    def test_weeks_are_drawn_together_with_the_words_of_the_emptiest(
        self, findings: Findings, week: Text
    ) -> None:
        text = week(
            {"Gym": ["barbell curl, sets: {1: 3, 2: 2, 3: 4, 4: 3}"]},
            f"{self.HEAD}priority: [biceps]\nweeks: 4",
        )
        (finding,) = findings(text, self.RULE)
        assert finding.weeks == (1, 2, 4)
        assert finding.counted.startswith("2 sets a week")
