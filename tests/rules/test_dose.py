"""Rules on dose: weekly sets over a limit, and under the least that trials can measure."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.findings.finding import Finding

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]

REHABILITATION = "rehabilitation: {stage: heel drops, advised by: physiotherapist, until: 2026-12-31}"


@pytest.fixture
def findings(implausible: Findings) -> Findings:
    """Some tests need more sets in a line than a coach writes."""
    return implausible


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
        assert finding.counted == "up to 22 direct sets for the chest."
        assert finding.wanted == "at most 20 a week"
        assert finding.change == "In Push, cut bench press to 10 sets."
        assert [one.words for one in finding.related if ", too: " not in one.words] == [
            "Push, bench press, Monday: 12 sets",
            "Push, dumbbell fly, Monday: 9-10 sets",
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
        assert finding.counted == "21 sets for the triceps (18 direct, the rest indirect)."  # 18 + 6 x 0.5

    def test_helpers_alone(self, findings: Findings, week: Text) -> None:
        said = findings(week({"Gym": ["lat pulldown, sets: 42"]}, "athlete: {name: A}"), self.RULE)
        assert "21 sets for the biceps (all indirect)" in " ".join(
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
        (finding,) = (
            one for one in findings(week({"Gym": ["bent-over row, sets: 21"]})) if one.rule == self.RULE
        )
        assert finding.counted.startswith("21 direct sets for the lats")
        assert "upper back" in [one.group for one in finding.follows]
        assert finding.change == "In Gym, cut bent-over row to 20 sets."

    def test_the_group_furthest_over_says_how_many_to_take_off(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["bent-over row, sets: 21", "straight-arm pulldown, sets: 4"]})
        lats, *others = findings(text, self.RULE)
        (finding,) = (one for one in (lats, *others) if one.group == "lats")
        assert finding.counted.startswith("25 direct sets for the lats")
        assert "upper back" in [one.group for one in others]
        assert finding.change == "In Gym, cut bent-over row to 16 sets."

    @pytest.mark.parametrize(
        ("exercise", "group"),
        [
            ("hip thrust", "gluteals"),
            ("hip adduction machine", "adductors"),
            ("cable hip flexion", "hip flexors"),
            ("Russian twist", "obliques"),
            ("prone back extension", "lower back"),
            ("plank", "abdominals"),
            ("wrist curl", "forearms"),
            ("hip abduction machine", "hip abductors"),
        ],
    )
    def test_groups_that_compounds_feed_have_no_limit(
        self, findings: Findings, week: Text, exercise: str, group: str
    ) -> None:
        text = week({"Gym": [f"{exercise}, sets: 30"]})
        assert not any(f"the {group}" in finding.counted for finding in findings(text, self.RULE))
        limited = findings(
            text, self.RULE, {"spotline.yaml": "rules: {weekly-sets-over-limit: {without limit: []}}\n"}
        )
        assert any(f"the {group}" in finding.counted for finding in limited)

    def test_one_muscle_is_one_finding_wherever_the_limit_is_crossed(
        self, findings: Findings, week: Text
    ) -> None:
        lines = ["dumbbell fly, sets: {1: 12, 2: 21}", "cable fly, sets: 10"]
        (finding,) = findings(week({"Gym": lines}, "weeks: 2"), self.RULE)
        assert (finding.place.excerpt, finding.weeks) == ("dumbbell fly", (1, 2))

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
        assert finding.counted == "12 direct sets for the chest."
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
        assert finding.counted.startswith("11 direct sets for the gluteals")

    def test_weeks_are_drawn_together_with_the_words_of_the_fullest(
        self, findings: Findings, week: Text
    ) -> None:
        (finding,) = findings(
            week({"Gym": ["dumbbell fly, sets: {1: 20, 2: 22, 3: 25, 4: 21}"]}, "weeks: 4"), self.RULE
        )
        assert finding.weeks == (2, 3, 4)
        assert finding.counted.startswith("25 direct sets")

    def test_a_repeated_day_counts_twice(self, findings: Findings) -> None:
        text = "programme: Test\nsessions:\n  - {session: Gym, day: [monday, thursday], exercises: [{exercise: dumbbell fly, sets: 11}]}\n"
        (finding,) = findings(text, self.RULE)
        assert finding.counted.startswith("22 direct sets")

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
        assert (finding.severity, finding.confidence) == ("warning", "meta-analysis")
        assert (finding.place.excerpt, finding.where) == ("barbell curl", "Arms, barbell curl")
        assert finding.counted == "3 sets a week for the biceps."
        assert finding.wanted == "at least 4"
        assert finding.change == "In Arms, raise barbell curl to 4 sets, or drop biceps from `priority`."
        assert [related.words for related in finding.related] == ["Arms, barbell curl, Monday: 3 sets"]
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
        assert finding.change == "In Gym, raise seated leg curl to 4 sets, or drop hams from `focus`."

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
    def test_no_phase_hides_a_whole_programme(self, findings: Findings, week: Text, phase: str) -> None:
        head = f"{self.HEAD}phase: {phase}\npriority: [biceps]"
        assert len(findings(week({"Gym": ["barbell curl, sets: 1"]}, head), self.RULE)) == 1

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
        ("line", "said"), [("moon walk, sets: 3", 1), ("lat pulldown, sets: x", 0), ("leg press, sets: x", 1)]
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


class TestCounting:
    """The team's way of counting moves both weekly limits: pelland-2026-frac."""

    @pytest.mark.parametrize(("counting", "said"), [("direct", 0), ("fractional", 0), ("total", 1)])
    def test_the_limit(self, findings: Findings, week: Text, counting: str, said: int) -> None:
        # triceps: 16 direct; with 5 presses 18.5 or 21
        text = week({"Gym": ["cable pushdown, sets: 16", "bench press, sets: 5"]})
        files = {"spotline.yaml": f"counting: {counting}\n"}
        assert len(findings(text, "weekly-sets-over-limit", files)) == said

    @pytest.mark.parametrize(
        ("counting", "counted"),
        [
            ("direct", "2 sets a week for the biceps, indirect sets not counted."),
            ("fractional", "3 sets a week for the biceps, indirect sets counted half."),
            ("total", None),
        ],
    )
    def test_the_floor(self, findings: Findings, week: Text, counting: str, counted: str | None) -> None:
        text = week(
            {"Gym": ["barbell curl, sets: 2", "lat pulldown, sets: 2"]},
            "goal: hypertrophy\npriority: [biceps]",
        )
        said = findings(text, "weekly-sets-under-floor", {"spotline.yaml": f"counting: {counting}\n"})
        assert [one.counted for one in said] == ([counted] if counted else [])

    def test_the_floor_in_full(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["lat pulldown, sets: 3"]}, "goal: hypertrophy\npriority: [biceps]")
        (finding,) = findings(text, "weekly-sets-under-floor", {"spotline.yaml": "counting: total\n"})
        assert finding.counted == "3 sets a week for the biceps, indirect sets counted in full."


def blocks(*rows: tuple[str, list[str]], head: str = "") -> str:
    """A programme of blocks: their own keys, and the lines of their one session."""
    text = f"programme: Test\n{head}blocks:\n"
    for number, (keys, lines) in enumerate(rows, 1):
        text += f"  - name: Block {number}\n" + "".join(f"    {key}\n" for key in keys.split("; "))
        text += "    sessions:\n      - session: Gym\n        exercises:\n"
        text += "".join(f"          - {{exercise: {line}}}\n" for line in lines)
    return text


def team(**limits: str) -> dict[str, str]:
    """A settings file that moves limits of rules: ``team(a_rule="{most: 3}")``."""
    rows = "".join(f"  {rule.replace('_', '-')}: {words}\n" for rule, words in limits.items())
    return {"spotline.yaml": f"rules:\n{rows}"}


NOT_TYPICAL = ["deload: true"]
"""What makes a block's (first) week none to judge its dose by."""


class TestSessionSetsForMuscleHigh:
    """12 sets a session: common practice, no source; enes-2024 went on with 22 sets a week and more on two days."""

    RULE = "session-sets-for-muscle-high"

    @pytest.fixture
    def findings(self, implausible: Findings) -> Findings:
        """With a limit of 12, in place of the 16 of today."""

        def run(text: str, rule: str = "", files: dict[str, str] | None = None) -> list[Finding]:
            return implausible(
                text, rule, files or {"spotline.yaml": f"rules: {{{self.RULE}: {{most: 12}}}}\n"}
            )

        return run

    @pytest.mark.parametrize(("sets", "said"), [(16, 0), (17, 1)])
    def test_the_limit_of_today(self, implausible: Findings, week: Text, sets: int, said: int) -> None:
        found = implausible(week({"Gym": [f"dumbbell fly, sets: {sets}"]}), self.RULE)
        assert [one.wanted for one in found] == ["at most 16 a session"] * said

    def test_the_words(self, findings: Findings, week: Text) -> None:
        text = week(
            {"monday Push": ["bench press, sets: 8", "dumbbell fly, sets: 5-6", "cable fly, sets: 1"]}
        )
        (finding,) = findings(text, self.RULE)
        assert (finding.severity, finding.confidence) == ("note", "common practice")
        assert (finding.place.excerpt, finding.where) == ("dumbbell fly", "Push, dumbbell fly")
        assert finding.counted == "up to 15 direct sets for the chest in Push."
        assert finding.wanted == "at most 12 a session (your team's limit)"
        assert finding.change == ("Cut bench press to 5 sets, or move 3 sets to another day.")
        assert [one.words for one in finding.related] == [
            "Push, bench press, Monday: 8 sets",
            "Push, dumbbell fly, Monday: 5-6 sets",
            "Push, cable fly, Monday: 1 set",
        ]

    @pytest.mark.parametrize(
        ("lines", "said"),
        [
            (["dumbbell fly, sets: 12"], 0),
            (["dumbbell fly, sets: 13"], 1),
            (["dumbbell fly, sets: 10-12"], 0),
            (["dumbbell fly, sets: 10-13"], 1),
            (["cable pushdown, sets: 10", "bench press, sets: 4"], 0),  # 10 + 4 x 0.5
            (["cable pushdown, sets: 10", "bench press, sets: 5"], 1),
            (["dumbbell fly, sets: 12", "dumbbell fly, sets: 5, rir: 8"], 0),
            (["power clean, sets: 20"], 0),
            (["hip thrust, sets: 20"], 0),  # compounds feed the gluteals
            (["leg extension, sets: 12, side: left", "leg extension, sets: 12, side: right"], 0),
        ],
    )
    def test_at_the_limit_and_just_past_it(
        self, findings: Findings, week: Text, lines: list[str], said: int
    ) -> None:
        assert len(findings(week({"Gym": lines}), self.RULE)) == said

    def test_each_session_by_itself(self, findings: Findings, week: Text) -> None:
        assert (
            findings(week({"monday": ["cable fly, sets: 12"], "friday": ["cable fly, sets: 12"]}), self.RULE)
            == []
        )
        (finding,) = findings(
            week({"monday": ["cable fly, sets: 12"], "friday": ["cable fly, sets: 13"]}), self.RULE
        )
        assert finding.where == "friday, cable fly"

    def test_muscles_that_one_line_takes_over_are_one_finding(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["cable fly, sets: 13", "lateral raise, sets: 15", "front raise, sets: 1"]})
        assert {(one.group, one.counted) for one in findings(text, self.RULE)} == {
            ("chest", "13.5 sets for the chest (13 direct, the rest indirect) in Gym."),
            ("front shoulder", "15 sets for the front shoulder (1 direct, the rest indirect) in Gym."),
            ("side shoulder", "15 direct sets for the side shoulder in Gym."),
        }

    def test_a_session_is_one_finding_wherever_the_limit_is_crossed(
        self, findings: Findings, week: Text
    ) -> None:
        lines = ["dumbbell fly, sets: {1: 7, 2: 13}", "cable fly, sets: 6"]
        (finding,) = findings(week({"Gym": lines}, "weeks: 2"), self.RULE)
        assert (finding.place.excerpt, finding.weeks) == ("dumbbell fly", (1, 2))

    def test_half_a_set_is_rounded_up(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["cable pushdown, sets: 10", "bench press, sets: 5"]})
        (finding,) = findings(text, self.RULE)
        assert finding.change == "Cut cable pushdown to 9 sets, or move 1 set to another day."

    @pytest.mark.parametrize(
        ("settings", "said"),
        [
            ("rules:\n  session-sets-for-muscle-high: {most: 11}\n", 1),
            ("rules:\n  session-sets-for-muscle-high: {most: 11.5}\n", 0),
            ("rules:\n  session-sets-for-muscle-high: {most: 11, without limit: [triceps]}\n", 0),
            ("counting: total\nrules:\n  session-sets-for-muscle-high: {most: 12}\n", 1),
            ("counting: direct\n", 0),
        ],
    )
    def test_limits(self, findings: Findings, week: Text, settings: str, said: int) -> None:
        # triceps: 10 direct, 11.5 fractional, 13 total
        text = week({"Gym": ["cable pushdown, sets: 10", "bench press, sets: 3"]})
        assert len(findings(text, self.RULE, {"spotline.yaml": settings})) == said

    @pytest.mark.parametrize("keys", NOT_TYPICAL)
    def test_only_typical_weeks(self, findings: Findings, keys: str) -> None:
        assert findings(blocks((f"weeks: 1; {keys}", ["cable fly, sets: 13"])), self.RULE) == []

    def test_weeks_are_drawn_together_with_the_words_of_the_fullest(
        self, findings: Findings, week: Text
    ) -> None:
        (finding,) = findings(
            week({"Gym": ["cable fly, sets: {1: 12, 2: 14, 3: 15, 4: 13}"]}, "weeks: 4"), self.RULE
        )
        assert (finding.weeks, finding.counted[:7]) == ((2, 3, 4), "15 dire")

    def test_stands_back_under_rehabilitation(self, findings: Findings, week: Text) -> None:
        assert findings(week({"Gym": ["cable fly, sets: 13"]}, REHABILITATION), self.RULE) == []


class TestExerciseSetsHigh:
    """10 sets of 10 against 5: hackett-2018, Sports 2018;6(1):7; 4-6 sets, then flat: krieger-2010 (secondary)."""

    RULE = "exercise-sets-high"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        text = week(
            {
                "monday Push": [
                    "bench press, sets: 8, reps: 8",
                    "dip, sets: 2",
                    "Bench Press, sets: 5-7, reps: 12",
                ]
            }
        )
        (finding,) = findings(text, self.RULE)
        assert (finding.severity, finding.confidence) == ("warning", "growth trial")
        assert (finding.place.line, finding.where) == (8, "Push, Bench Press")
        assert finding.counted == "up to 15 hard sets of bench press in Push."
        assert finding.wanted == "at most 10"
        assert finding.change == (
            "Cut bench press to 5 sets and Bench Press to 3-5 sets, or use a second exercise."
        )
        assert [one.words for one in finding.related if ", too: " not in one.words] == [
            "Push, bench press, Monday: 8 sets",
            "Push, Bench Press, Monday: 5-7 sets",
        ]

    @pytest.mark.parametrize(
        ("line", "severity"),
        [
            ("sets: 10, reps: 10", None),
            ("sets: 11, reps: 10", "note"),
            ("sets: 8-10, reps: 10", None),
            ("sets: 8-11, reps: 10", "note"),
            ("sets: 11, reps: 5", "note"),
            ("sets: 11, reps: 4", None),
            ("sets: 11, reps: 4-6", None),
            ("sets: 11, reps: 5-6", "note"),
            ("sets: 11, reps: 10, rir: 3", "note"),
            ("sets: 11, reps: 10, rir: 4", None),
            ("sets: 11, reps: 10, rir: 3-5", "note"),
            ("sets: 11, reps: 10, rpe: 7", "note"),
            ("sets: 11, reps: 10, rpe: 6", None),
            ("sets: 11", None),
            ("sets: 11, reps: amrap", None),
        ],
    )
    def test_what_counts(self, findings: Findings, week: Text, line: str, severity: str | None) -> None:
        said = findings(week({"Gym": [f"back squat, {line}"]}), self.RULE)
        assert [one.severity for one in said] == ([severity] if severity else [])

    @pytest.mark.parametrize(
        ("line", "said"),
        [
            ("kettlebell swing, sets: 11, reps: 10", 0),  # fast work is never hard
            ("moon walk, sets: 11, reps: 10", 0),
            ("push-up, every: 60 s, for: 11 min, reps: 10", 0),
            ("push-up, every: 60 s, for: 11 min, reps: 10, rir: 2", 1),
            ("push-up, every: 60 s, for: 11 min, reps: 10, rir: 4", 0),
        ],
    )
    def test_work_that_is_paced_or_fast(self, findings: Findings, week: Text, line: str, said: int) -> None:
        assert len(findings(week({"Gym": [line]}), self.RULE)) == said

    def test_sides_count_by_themselves(self, findings: Findings, week: Text) -> None:
        lines = [
            "leg extension, sets: 10, reps: 10, side: left",
            "leg extension, sets: 10, reps: 10, side: right",
        ]
        assert findings(week({"Gym": lines}), self.RULE) == []

    def test_each_exercise_in_each_session(self, findings: Findings, week: Text) -> None:
        squats, presses = "back squat, sets: 11, reps: 8", "bench press, sets: 12, reps: 8"
        said = findings(
            week({"monday": [squats, presses], "friday": [squats, "dip, sets: 6, reps: 8"]}), self.RULE
        )
        assert [(one.place.line, one.counted[:2]) for one in said] == [(7, "12"), (6, "11")]
        assert [(one.place.line, one.of) for one in said[1].related] == [(6, ""), (11, "friday, 11 sets")]

    def test_ten_on_each_of_two_days(self, findings: Findings, week: Text) -> None:
        squats = ["back squat, sets: 10, reps: 8"]
        assert findings(week({"monday": squats, "friday": squats}), self.RULE) == []

    @pytest.mark.parametrize(
        ("limits", "severity"),
        [
            ("{most: 8}", None),
            ("{most: 7}", "note"),
            ("{most: 7, far: 8}", "warning"),
            ("{most: 7, far: 9}", "note"),
            ("{most: 7, repetitions: 11}", None),
            ("{most: 7, repetitions: 10}", "note"),
            ("{most: 7, hard set: 1}", None),
            ("{most: 7, hard set: 2}", "note"),
        ],
    )
    def test_limits(self, findings: Findings, week: Text, limits: str, severity: str | None) -> None:
        text = week({"Gym": ["back squat, sets: 8, reps: 10, rir: 2"]})
        said = findings(text, self.RULE, team(exercise_sets_high=limits))
        assert [one.severity for one in said] == ([severity] if severity else [])

    @pytest.mark.parametrize("keys", NOT_TYPICAL)
    def test_only_typical_weeks(self, findings: Findings, keys: str) -> None:
        assert findings(blocks((f"weeks: 1; {keys}", ["back squat, sets: 11, reps: 8"])), self.RULE) == []

    def test_weeks_are_drawn_together_with_the_words_of_the_fullest(
        self, findings: Findings, week: Text
    ) -> None:
        text = week({"Gym": ["back squat, sets: {1: 10, 2: 11, 3: 12, 4: 11}, reps: 8"]}, "weeks: 4")
        (finding,) = findings(text, self.RULE)
        assert (finding.weeks, finding.counted[:7], finding.severity) == ((2, 3, 4), "12 hard", "note")
        (finding,) = findings(text.replace("3: 12", "3: 11"), self.RULE)
        assert finding.counted[:7] == "11 hard"

    def test_an_exercise_is_one_finding_wherever_the_limit_is_crossed(
        self, findings: Findings, week: Text
    ) -> None:
        lines = ["bench press, sets: {1: 10, 2: 11}, reps: 8", "bench press, sets: 2, reps: 12"]
        (finding,) = findings(week({"Gym": lines}, "weeks: 2"), self.RULE)
        assert (finding.place.line, finding.weeks, finding.counted[:7]) == (6, (1, 2), "13 hard")

    def test_it_points_at_the_line_that_crosses(self, findings: Findings, week: Text) -> None:
        lines = [
            "bench press, sets: 10, reps: 8",
            "bench press, sets: 1, reps: 12",
            "bench press, sets: 1, reps: 15",
        ]
        (finding,) = findings(week({"Gym": lines}), self.RULE)
        assert finding.place.line == 6

    def test_stands_back_under_rehabilitation(self, findings: Findings, week: Text) -> None:
        assert findings(week({"Gym": ["back squat, sets: 11, reps: 8"]}, REHABILITATION), self.RULE) == []


class TestWeeklyHardSetsHigh:
    """The team's own limit; no source."""

    RULE = "weekly-hard-sets-high"

    def test_off_until_the_team_asks_for_it(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["back squat, sets: 60", "bench press, sets: 41"]})
        assert findings(text, self.RULE) == []
        assert len(findings(text, self.RULE, team(weekly_hard_sets_high="warning"))) == 1
        assert findings(text.replace("41", "40"), self.RULE, team(weekly_hard_sets_high="warning")) == []

    def test_the_words(self, findings: Findings, week: Text) -> None:
        days = {
            "monday Push": ["bench press, sets: 3-4", "dip, sets: 3"],
            "friday Pull": ["bent-over row, sets: 8"],
        }
        on = team(weekly_hard_sets_high="{most: 13, severity: warning}")
        (finding,) = findings(week(days), self.RULE, on)
        assert (finding.severity, finding.confidence) == ("warning", "common practice")
        assert (finding.place.excerpt, finding.where) == ("Pull", "Pull")
        assert finding.counted == "up to 15 hard sets in the week; Pull holds the most, 8."
        assert finding.wanted == "at most 13 a week (your team's limit)"
        assert finding.change == "In Pull, cut bent-over row to 6 sets."

    @pytest.mark.parametrize(
        ("lines", "said"),
        [
            (["bench press, sets: 10"], 0),
            (["bench press, sets: 11"], 1),
            (["bench press, sets: 9-10"], 0),
            (["bench press, sets: 9-11"], 1),
            (["bench press, sets: 10", "dip, sets: 5, rir: 7"], 0),
            (["bench press, sets: 10", "box jump, sets: 5"], 0),
            (["bench press, sets: 10", "moon walk, sets: 1"], 1),
        ],
    )
    def test_at_the_limit_and_just_past_it(
        self, findings: Findings, week: Text, lines: list[str], said: int
    ) -> None:
        on = team(weekly_hard_sets_high="{most: 10, severity: note}")
        assert len(findings(week({"Gym": lines}), self.RULE, on)) == said

    def test_a_rule_like_others_once_it_is_on(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["back squat, sets: 60", "bench press, sets: 41"]})
        assert [one.severity for one in findings(text, self.RULE, team(weekly_hard_sets_high="run"))] == [
            "warning"
        ]

    def test_the_session_with_most_hard_sets_is_named(self, findings: Findings, week: Text) -> None:
        days = {
            "monday A": ["back squat, sets: 5", "bench press, sets: 9, rir: 8"],
            "friday B": ["back squat, sets: {1: 7, 2: 3}", "leg press, sets: 4, rir: 8"],
        }
        on = team(weekly_hard_sets_high="{most: 6, severity: note}")
        (finding,) = findings(week(days, "weeks: 2"), self.RULE, on)
        assert finding.counted == "12 hard sets in the week; B holds the most, 7."
        assert finding.weeks == (1, 2)

    @pytest.mark.parametrize("keys", NOT_TYPICAL)
    def test_only_typical_weeks(self, findings: Findings, keys: str) -> None:
        on = team(weekly_hard_sets_high="{most: 10, severity: note}")
        assert findings(blocks((f"weeks: 1; {keys}", ["back squat, sets: 11"])), self.RULE, on) == []

    def test_weeks_are_drawn_together(self, findings: Findings, week: Text) -> None:
        on = team(weekly_hard_sets_high="{most: 10, severity: note}")
        text = week({"Gym": ["back squat, sets: {1: 11, 2: 13, 3: 10}"]}, "weeks: 3")
        (finding,) = findings(text, self.RULE, on)
        assert (finding.weeks, finding.counted[:7]) == ((1, 2), "13 hard")

    def test_stands_back_under_rehabilitation(self, findings: Findings, week: Text) -> None:
        on = team(weekly_hard_sets_high="{most: 10, severity: note}")
        assert findings(week({"Gym": ["back squat, sets: 11"]}, REHABILITATION), self.RULE, on) == []


class TestSessionTooLong:
    """Session time as the sum that loadit prints: Pilot Feasibility Stud 2020;6:99, table 1."""

    RULE = "session-too-long"
    LINE = "leg press, sets: 5, reps: 10, rest: 5 min, tempo: 3-0-3-0"
    """5 x 10 x 6 s = 5 min of work and 4 x 5 min of rest: 25 min."""

    @staticmethod
    def has(minutes: float) -> str:
        return f"athlete: {{name: A, minutes: {minutes}}}"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        lines = [f"{self.LINE}, warm-up sets: 2", self.LINE]
        (finding,) = findings(week({"monday Lower": lines}, self.has(39)), self.RULE)
        # 2 x 25 min, 2 warm-up sets and one change-over of at least 1 min each
        assert (finding.severity, finding.confidence) == ("warning", "common practice")
        assert (finding.place.excerpt, finding.where) == ("Lower", "Lower")
        assert finding.counted == (
            "Lower takes at least 53 min: 10 work, 40 rest and 3 assumed, not written."
        )
        assert finding.wanted == "the athlete's 39 min"
        assert finding.change == ("Save 14 min: superset lifts that share no muscle, or move one.")

    @pytest.mark.parametrize(
        ("minutes", "severity"), [(25, None), (24.9, "note"), (20, "note"), (19.9, "warning"), (26, None)]
    )
    def test_at_the_limit_and_just_past_it(
        self, findings: Findings, week: Text, minutes: float, severity: str | None
    ) -> None:
        said = findings(week({"Gym": [self.LINE]}, self.has(minutes)), self.RULE)
        assert [one.severity for one in said] == ([severity] if severity else [])

    @pytest.mark.parametrize(
        ("line", "minutes", "severity", "shares"),
        [
            (
                "back squat, sets: 9, reps: 5",
                12,
                "note",
                "2 work and 19 assumed, not written.",
            ),
            (
                "back squat, sets: 9, reps: 5, rest: 2 min",
                12,
                "warning",
                "2 work, 16 rest and 3 assumed, not written.",
            ),
            (
                "leg extension, sets: {1: 9}, reps: 12",
                5,
                "note",
                "4 work and 4 assumed, not written.",
            ),
        ],
    )
    def test_assumed_rest_is_called_assumed_and_never_blocks_alone(
        self, findings: Findings, week: Text, line: str, minutes: float, severity: str, shares: str
    ) -> None:
        (finding,) = findings(week({"Gym": [line]}, self.has(minutes)), self.RULE)
        assert finding.severity == severity
        assert finding.counted.partition(": ")[2] == shares

    def test_nor_does_changing_over(self, findings: Findings, week: Text) -> None:
        lines = ["leg extension, sets: 1, reps: 5, rest: 1 min"] * 9
        (finding,) = findings(week({"Gym": lines}, self.has(5)), self.RULE)
        assert finding.severity == "note"
        assert finding.counted == "Gym takes at least 10 min: 2 work and 8 assumed, not written."

    def test_written_rest_beside_assumed_rest(self, findings: Findings, week: Text) -> None:
        lines = ["back squat, sets: 4, reps: 5", "leg press, sets: 5, reps: 5, rest: 5 min"]
        (finding,) = findings(week({"Gym": lines}, self.has(10)), self.RULE)
        assert finding.severity == "warning"
        assert finding.counted.endswith("2 work, 20 rest and 10 assumed, not written.")
        assert [(one.place.excerpt, one.words) for one in finding.related] == [
            (
                "Gym",
                "assumed: 6 min rest (none is written), 3 min warm-up sets and 1 min preparation and changing over",
            )
        ]

    def test_what_is_saved_is_rounded_up(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"Gym": [self.LINE]}, self.has(23.5)), self.RULE)
        assert finding.change.startswith("Save 2 min")

    def test_only_the_low_end_is_held_against_the_time(self, findings: Findings, week: Text) -> None:
        line = "leg press, sets: 5, reps: 10, rest: 5-10 min, tempo: 3-0-3-0"
        assert findings(week({"Gym": [line]}, self.has(25)), self.RULE) == []

    @pytest.mark.parametrize(
        ("minutes", "rest", "said"), [("", "13.75 min", 0), ("", "14 min", 1), (", minutes: 70", "14 min", 0)]
    )
    def test_an_hour_for_health(
        self, findings: Findings, week: Text, minutes: str, rest: str, said: int
    ) -> None:
        text = week(
            {"Gym": [self.LINE.replace("5 min", rest)]},
            f"goal: general health\nathlete: {{name: A{minutes}}}",
        )
        found = findings(text, self.RULE)
        assert [one.severity for one in found] == ["note"] * said  # 5 min + 4 x 13.75 min = 60 min
        assert [one.wanted for one in found] == ["at most 60 min"] * said

    def test_past_an_hour_and_a_quarter_for_health_is_still_a_note(
        self, findings: Findings, week: Text
    ) -> None:
        text = week({"Gym": [self.LINE.replace("5 min", "25 min")]}, "goal: general health")
        assert [one.severity for one in findings(text, self.RULE)] == ["note"]

    @pytest.mark.parametrize(
        "head", ["", "goal: strength", "athlete: {name: A}", "goal: hypertrophy\nathlete: {name: A}"]
    )
    def test_silent_where_nobody_names_minutes(self, findings: Findings, week: Text, head: str) -> None:
        assert findings(week({"Gym": [self.LINE] * 9}, head), self.RULE) == []

    @pytest.mark.parametrize(
        ("limits", "head", "severity"),
        [
            ("{far: 1.1}", "athlete: {name: A, minutes: 22}", "warning"),
            ("{far: 1.2}", "athlete: {name: A, minutes: 22}", "note"),
            ("{for health: 24}", "goal: general health", "note"),
            ("{for health: 25}", "goal: general health", None),
        ],
    )
    def test_limits(
        self, findings: Findings, week: Text, limits: str, head: str, severity: str | None
    ) -> None:
        said = findings(week({"Gym": [self.LINE]}, head), self.RULE, team(session_too_long=limits))
        assert [one.severity for one in said] == ([severity] if severity else [])

    def test_each_session_by_itself_and_weeks_together(self, findings: Findings, week: Text) -> None:
        days = {
            "monday A": ["leg press, sets: {1: 5, 2: 6, 3: 4}, reps: 10, rest: 5 min, tempo: 3-0-3-0"],
            "friday B": [self.LINE],
        }
        said = findings(week(days, f"weeks: 3\n{self.has(24)}"), self.RULE)
        assert [(one.where, one.weeks, one.counted.split()[4]) for one in said] == [
            ("A", (1, 2), "31"),  # 6 min of work, 25 of rest
            ("B", (1, 2, 3), "25"),
        ]

    def test_a_session_that_comes_again_is_one_finding(self, findings: Findings) -> None:
        longer = self.LINE.replace("5 min", "6 min")
        text = blocks(("weeks: 1", [self.LINE]), ("weeks: 1", [longer]), head=f"{self.has(20)}\n")
        (finding,) = findings(text, self.RULE)
        assert (finding.weeks, finding.counted[:25]) == ((1, 2), "Gym takes at least 29 min")

    def test_a_deload_must_fit_too(self, findings: Findings) -> None:
        text = blocks(("weeks: 1; deload: true", [self.LINE]), head=f"{self.has(24)}\n")
        assert len(findings(text, self.RULE)) == 1


class TestLiftSetsUnderFloor:
    """One set, 1-3 times a week: androulakis-2020, Sports Med 2020;50:751-765; about 1 a week: pelland-2026-min."""

    RULE = "lift-sets-under-floor"
    HEAD = "goal: strength\npriority: [deadlift]\nweeks: 4"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        text = week(
            {"monday Pull": ["rack pull, sets: {1: 1, 2-4: 0}", "deadlift, sets: {1: 0, 2: 1-2, 3-4: 0}"]},
            self.HEAD,
        )
        (finding,) = findings(text, self.RULE)
        assert (finding.severity, finding.confidence) == ("note", "meta-analysis")
        assert (finding.place.excerpt, finding.where) == ("rack pull", "Pull, rack pull")
        assert finding.counted == (
            "2-3 hard or heavy sets of deadlift or close variants in 4 weeks, 0.5 a week."
        )
        assert finding.wanted == "at least 1 a week"
        assert finding.change == "Add a set in weeks 3-4."
        assert [one.words for one in finding.related] == [
            "Pull, rack pull, Monday: 1 set",
            "Pull, deadlift, Monday: 1-2 sets",
        ]

    @pytest.mark.parametrize(
        ("lines", "said"),
        [
            (["deadlift, sets: 1"], 0),
            (["deadlift, sets: {1: 4, 2-4: 0}"], 0),
            (["deadlift, sets: {1: 3, 2-4: 0}"], 1),
            (["deadlift, sets: {1: 3-4, 2-4: 0}"], 1),  # the low end
            (["deadlift, sets: {1: 4-5, 2-4: 0}"], 0),
            (["deadlift, sets: 1, rir: 6"], 1),  # easy
            (["deadlift, sets: 1, reps: 3, load: 72.5 %"], 0),  # with much in reserve, and heavy all the same
            (["deadlift, sets: 5, reps: 2, load: 60-65 %"], 0),  # light, and meant so
            (["deadlift, sets: 5, reps: 2, rir: 6"], 1),
            (["deadlift, sets: {1: 3, 2-4: 0}", "paused deadlift, sets: {1: 1, 2-4: 0}"], 0),
            (["deadlift, sets: {1: 3, 2-4: 0}", "trap bar deadlift, sets: {1: 1, 2-4: 0}"], 0),  # next easier
            (["deadlift, sets: {1: 3, 2-4: 0}", "kettlebell swing, sets: 5"], 1),
            (["deadlift, sets: {1: 3, 2-4: 0}", "dumbbell Romanian deadlift, sets: 5"], 1),
            (["deadlift, sets: {1: 3, 2-4: 0}", "back squat, sets: 5"], 1),
        ],
    )
    def test_at_the_floor_and_just_below(
        self, findings: Findings, week: Text, lines: list[str], said: int
    ) -> None:
        assert len(findings(week({"Gym": lines}, self.HEAD), self.RULE)) == said

    def test_a_priority_that_is_never_trained(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"Gym": ["bench press, sets: 3"]}, self.HEAD), self.RULE)
        assert (finding.place.line, finding.place.excerpt, finding.where) == (3, "deadlift", "priority")
        assert finding.counted == "0 hard or heavy sets of deadlift or close variants in 4 weeks, 0 a week."

    def test_two_lifts_with_the_same_sets_are_one_finding(self, findings: Findings, week: Text) -> None:
        head = self.HEAD.replace("[deadlift]", "[deadlift, sumo deadlift]")
        (finding,) = findings(week({"Gym": ["deadlift, sets: {1: 1, 2-4: 0}"]}, head), self.RULE)
        assert "of deadlift or close variants" in finding.counted

    def test_one_set_in_one_week_is_said_so(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["deadlift, sets: 0-1"]}, self.HEAD.replace("weeks: 4", "weeks: 1"))
        (finding,) = findings(text, self.RULE)
        assert finding.counted == "0-1 hard or heavy sets of deadlift or close variants in 1 week, 0 a week."
        text = week({"Gym": ["deadlift, sets: {1: 1, 2: 0}"]}, self.HEAD.replace("weeks: 4", "weeks: 2"))
        (finding,) = findings(text, self.RULE)
        assert finding.counted.startswith("1 hard or heavy set of deadlift")

    @pytest.mark.parametrize(
        ("priority", "said"),
        [
            ("[bench press]", 1),
            ("[Bench Press]", 1),
            ("[chest]", 0),
            ("[moon walk]", 0),
            ("[power clean]", 0),
        ],
    )
    def test_only_lifts_that_can_be_hard(
        self, findings: Findings, week: Text, priority: str, said: int
    ) -> None:
        text = week({"Gym": ["leg press, sets: 3"]}, f"goal: strength\npriority: {priority}")
        assert len(findings(text, self.RULE)) == said

    @pytest.mark.parametrize(
        ("load", "best", "said"),
        [
            ("80 %", "{deadlift: 200 kg}", 1),
            ("160 kg", "{deadlift: 200 kg}", 0),
            ("80 %", "{bench press: 100 kg}", 0),
            ("", "{deadlift: 200 kg}", 0),
        ],
    )
    def test_a_lift_on_file_that_is_loaded_in_percent(
        self, findings: Findings, week: Text, load: str, best: str, said: int
    ) -> None:
        head = f"goal: strength\nweeks: 4\nathlete: {{name: A, best lifts: {best}}}"
        line = "deadlift, sets: {1: 3, 2-4: 0}" + (f", load: {load}" if load else "")
        assert len(findings(week({"Gym": [line]}, head), self.RULE)) == said

    @pytest.mark.parametrize("goal", ["hypertrophy", "power", "general health"])
    def test_only_for_strength(self, findings: Findings, week: Text, goal: str) -> None:
        text = week({"Gym": ["bench press, sets: 3"]}, self.HEAD.replace("strength", goal))
        assert findings(text, self.RULE) == []

    @pytest.mark.parametrize(
        ("limits", "said"), [("{least: 0.75}", 0), ("{least: 0.8}", 1), ("{least: 2}", 1)]
    )
    def test_limits(self, findings: Findings, week: Text, limits: str, said: int) -> None:
        text = week({"Gym": ["deadlift, sets: {1: 3, 2-4: 0}"]}, self.HEAD)
        assert len(findings(text, self.RULE, team(lift_sets_under_floor=limits))) == said

    @pytest.mark.parametrize(
        ("line", "said"),
        [("moon walk, sets: 3", 1), ("Romanian deadlift, sets: x", 0), ("bench press, sets: x", 1)],
    )
    def test_lines_that_cannot_be_counted(self, findings: Findings, week: Text, line: str, said: int) -> None:
        text = week({"Gym": ["deadlift, sets: {1: 3, 2-4: 0}", line]}, self.HEAD)
        assert len(findings(text, self.RULE)) == said

    @pytest.mark.parametrize("keys", NOT_TYPICAL)
    def test_only_typical_weeks(self, findings: Findings, keys: str) -> None:
        head = "goal: strength\npriority: [deadlift]\n"
        assert findings(blocks((f"weeks: 1; {keys}", ["plank, sets: 3"]), head=head), self.RULE) == []
        both = blocks(
            ("weeks: 1", ["deadlift, sets: 1"]), (f"weeks: 1; {keys}", ["plank, sets: 3"]), head=head
        )
        assert findings(both, self.RULE) == []

    def test_stands_back_under_rehabilitation(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["bench press, sets: 3"]}, f"{self.HEAD}\n{REHABILITATION}")
        assert findings(text, self.RULE) == []


class TestSpreadTooThin:
    """Every second week, 4 sets in four weeks: common practice, no source; far below pelland-2026-min."""

    RULE = "spread-too-thin"
    HEAD = "focus: [calves]\nweeks: 8"
    REST = "bench press, sets: 1"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        text = week(
            {"monday Lower": ["standing calf raise, sets: {1: 3, 2-4: 0, 5: 3-4, 6-8: 0}"]}, self.HEAD
        )
        (finding,) = findings(text, self.RULE)
        assert (finding.severity, finding.confidence) == ("note", "common practice")
        assert (finding.place.excerpt, finding.where) == ("standing calf raise", "Lower, standing calf raise")
        assert finding.counted == ("6-7 sets for the calves in 2 of 8 weeks.")
        assert finding.wanted == "sets every 2 weeks, at least 4 in 4 weeks"
        assert finding.change == ("Add a set or two every week, or drop calves from `focus` and `priority`.")
        assert [one.words for one in finding.related] == ["Lower, standing calf raise, Monday: 6-7 sets"]

    @pytest.mark.parametrize(("sets", "of"), [("{1-3: 4, 4-8: 0}", "12 sets"), ("{1-7: 1, 8: 0}", "")])
    def test_what_the_lines_add_up_to(self, findings: Findings, week: Text, sets: str, of: str) -> None:
        (finding,) = findings(week({"monday": [f"standing calf raise, sets: {sets}"]}, self.HEAD), self.RULE)
        assert [one.of for one in finding.related] == [of]

    @pytest.mark.parametrize(
        ("sets", "said"),
        [
            ("{1-4: 4, 5-8: 0}", 0),  # every second week
            ("{1-3: 4, 4-8: 0}", 1),
            ("{1-3: 4, 4: 0-4, 5-8: 0}", 1),  # perhaps
            ("{1-4: 2, 5-8: 0}", 0),  # 8 in 8 weeks, 4 in four
            ("{1-3: 2, 4: 1, 5-8: 0}", 1),
            ("1", 0),
            ("{1-7: 1, 8: 0}", 1),  # 3.5 in four
            ("{1-7: 1, 8: 0-1}", 1),
            ("0", 0),  # nothing at all is for another rule
        ],
    )
    def test_at_the_floor_and_just_below(self, findings: Findings, week: Text, sets: str, said: int) -> None:
        text = week({"Gym": [f"standing calf raise, sets: {sets}", self.REST]}, self.HEAD)
        assert len(findings(text, self.RULE)) == said

    @pytest.mark.parametrize(("goal", "said"), [("hypertrophy", 0), ("strength", 1), ("general health", 1)])
    def test_for_size_the_weekly_floor_speaks_on_few_sets(
        self, findings: Findings, week: Text, goal: str, said: int
    ) -> None:
        text = week({"Gym": ["standing calf raise, sets: {1-7: 1, 8: 0}"]}, f"goal: {goal}\n{self.HEAD}")
        assert len(findings(text, self.RULE)) == said
        rare = text.replace("{1-7: 1, 8: 0}", "{1-3: 6, 4-8: 0}")
        assert len(findings(rare, self.RULE)) == 1

    def test_helping_counts_half(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["bench press, sets: 1"]}, "focus: [triceps]\nweeks: 4")
        (finding,) = findings(text, self.RULE)
        assert finding.counted.startswith("2 sets for the triceps in 4 weeks")

    def test_easy_sets_do_not_count(self, findings: Findings, week: Text) -> None:
        lines = ["standing calf raise, sets: {1-2: 9, 3-8: 0}", "standing calf raise, sets: 3, rir: 8"]
        assert len(findings(week({"Gym": lines}, self.HEAD), self.RULE)) == 1

    @pytest.mark.parametrize(
        ("settings", "said"),
        [
            ("rules:\n  spread-too-thin: {weeks: 5}\n", 0),
            ("rules:\n  spread-too-thin: {weeks: 4}\n", 1),
            ("rules:\n  spread-too-thin: {apart: 4}\n", 0),
            ("rules:\n  spread-too-thin: {apart: 3}\n", 1),
            ("rules:\n  spread-too-thin: {apart: 4, least: 6}\n", 0),
            ("rules:\n  spread-too-thin: {apart: 4, least: 7}\n", 1),
        ],
    )
    def test_limits(self, findings: Findings, week: Text, settings: str, said: int) -> None:
        text = week({"Gym": ["standing calf raise, sets: {1: 6, 2-4: 0}"]}, "focus: [calves]\nweeks: 4")
        assert len(findings(text, self.RULE, {"spotline.yaml": settings})) == said

    @pytest.mark.parametrize(
        ("counting", "counted"),
        [
            ("direct", []),  # nothing at all then
            (
                "fractional",
                ["2 sets for the triceps in 4 weeks, indirect sets counted half."],
            ),
            ("total", []),
        ],
    )
    def test_counting(self, findings: Findings, week: Text, counting: str, counted: list[str]) -> None:
        text = week({"Gym": ["bench press, sets: 1"]}, "focus: [triceps]\nweeks: 4")
        said = findings(text, self.RULE, {"spotline.yaml": f"counting: {counting}\n"})
        assert [one.counted for one in said] == counted

    @pytest.mark.parametrize(("weeks", "said"), [(3, 0), (4, 1)])
    def test_short_programmes_are_left_alone(
        self, findings: Findings, week: Text, weeks: int, said: int
    ) -> None:
        text = week(
            {"Gym": ["standing calf raise, sets: {1: 3, 2-8: 0}"]}, f"focus: [calves]\nweeks: {weeks}"
        )
        text = text.replace("2-8", f"2-{weeks}")
        assert len(findings(text, self.RULE)) == said

    @pytest.mark.parametrize(
        ("head", "said"),
        [
            ("priority: [calves]", 1),
            ("focus: [legs]", 1),
            ("focus: [chest]", 0),
            ("", 0),
            ("focus: [nonsense]", 0),
            ("focus: [calves]\npriority: [calves]", 1),
        ],
    )
    def test_only_what_is_named(self, findings: Findings, week: Text, head: str, said: int) -> None:
        text = week({"Gym": ["standing calf raise, sets: {1: 3, 2-8: 0}", self.REST]}, f"weeks: 8\n{head}")
        assert len(findings(text, self.RULE)) == said

    def test_one_muscle_by_two_names_is_one_finding(self, findings: Findings, week: Text) -> None:
        head = "weeks: 8\nfocus: [chest, triceps]\npriority: [pecs]"
        said = findings(week({"Gym": ["bench press, sets: {1: 3, 2-8: 0}"]}, head), self.RULE)
        assert [one.counted.split(" in ")[0] for one in said] == [
            "3 sets for the pecs",
            "1.5 sets for the triceps",
        ]

    def test_a_block_with_a_focus_of_its_own(self, findings: Findings) -> None:
        thin = "standing calf raise, sets: {1: 4, 2-4: 0}"
        full = "standing calf raise, sets: 2"
        own = blocks(("weeks: 4; focus: [calves]", [thin]), ("weeks: 4", [full]), head="focus: [chest]\n")
        assert len(findings(own, self.RULE)) == 1
        other = blocks(("weeks: 4; focus: [chest]", [thin]), ("weeks: 4", [full]), head="focus: [calves]\n")
        assert findings(other, self.RULE) == []
        each = blocks(("weeks: 4; focus: [chest]", [full]), ("weeks: 4", [thin]), head="focus: [calves]\n")
        assert len(findings(each, self.RULE)) == 1

    @pytest.mark.parametrize(
        ("line", "said"), [("moon walk, sets: 3", 1), ("toe walk, sets: x", 0), ("bench press, sets: x", 1)]
    )
    def test_lines_that_cannot_be_counted(self, findings: Findings, week: Text, line: str, said: int) -> None:
        text = week({"Gym": ["standing calf raise, sets: {1: 3, 2-8: 0}", line]}, self.HEAD)
        assert len(findings(text, self.RULE)) == said

    @pytest.mark.parametrize("keys", ["deload: true", "phase: taper", "phase: test"])
    def test_only_typical_weeks(self, findings: Findings, keys: str) -> None:
        lines = ["standing calf raise, sets: 1"]
        text = blocks(
            ("weeks: 4", lines), (f"weeks: 8; {keys}", ["plank, sets: 1"]), head="focus: [calves]\n"
        )
        assert findings(text, self.RULE) == []

    def test_stands_back_under_rehabilitation(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["standing calf raise, sets: {1: 3, 2-8: 0}"]}, f"{self.HEAD}\n{REHABILITATION}")
        assert findings(text, self.RULE) == []
