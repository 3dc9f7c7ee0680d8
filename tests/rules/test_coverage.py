"""Rules on coverage: what is called missing, where, and when they keep silent."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.finding import Finding

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]

REHABILITATION = "rehabilitation: {stage: return to lifting, advised by: physiotherapist, until: 2026-12-31}"
SQUAT, HINGE, CURL = (
    "back squat, sets: 3, reps: 5",
    "Romanian deadlift, sets: 3, reps: 8",
    "seated leg curl, sets: 1, reps: 12",
)


def blocks(*rows: tuple[str, list[str]], head: str = "") -> str:
    """A programme of blocks of one week: further keys of the block, and its lines."""
    text = f"programme: Test\n{head}blocks:\n"
    for number, (keys, lines) in enumerate(rows, 1):
        text += f"  - name: Block {number}\n    weeks: 1\n" + "".join(
            f"    {key}\n" for key in keys.split("; ") if key
        )
        text += "    sessions:\n      - session: Gym\n        exercises:\n"
        text += "".join(f"          - {{exercise: {line}}}\n" for line in lines)
    return text


class TestKneeFlexionMissing:
    """The short head of biceps femoris crosses only the knee: bourne-2017, Br J Sports Med 2017;51:469-477."""

    RULE = "knee-flexion-missing"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(
            week({"monday Lower": ["back squat, sets: 3", "stiff-leg deadlift, sets: 4"]}), self.RULE
        )
        assert (finding.severity, finding.confidence) == ("warning", "trial")
        assert finding.place.excerpt == "stiff-leg deadlift"
        assert finding.where == "Lower, stiff-leg deadlift"
        assert (
            finding.counted == "4 sets for the hamstrings, all hinges; nothing bends the knee against load."
        )
        assert finding.wanted == (
            "at least one set of knee flexion in the block: hinges and squats leave out the short head of biceps femoris"
        )
        assert finding.change == "Add a leg curl of any kind or a Nordic curl to Lower."
        assert "short head of biceps femoris" in finding.why
        assert "forecasts no injury" in finding.why
        assert [related.words for related in finding.related] == [
            "Lower, back squat: 3 sets",
            "Lower, stiff-leg deadlift: 4 sets",
        ]

    def test_the_sessions_with_hinges_come_first(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"A": [SQUAT], "B": [HINGE], "C": [SQUAT]}), self.RULE)
        assert finding.change.endswith(" to B.")
        (finding,) = findings(week({"A": [SQUAT], "B": [SQUAT], "C": [SQUAT]}), self.RULE)
        assert finding.change.endswith(" to A or B.")

    def test_without_a_hinge_it_points_at_the_first_leg_exercise(
        self, findings: Findings, week: Text
    ) -> None:
        (finding,) = findings(
            week({"Gym": ["bench press, sets: 3", "leg press, sets: 3-4", "leg extension, sets: 1"]}),
            self.RULE,
        )
        assert finding.place.excerpt == "leg press"
        assert finding.counted == "4-5 sets for the legs; nothing bends the knee against load."

    @pytest.mark.parametrize(
        "exercise",
        [
            "seated leg curl",
            "lying leg curl",
            "Nordic curl",
            "slider leg curl",
            "glute-ham raise",
            "band leg curl",
            "razor curl",
        ],
    )
    def test_any_loaded_knee_flexion_will_do(self, findings: Findings, week: Text, exercise: str) -> None:
        # cp-curl: every loaded knee-flexion exercise is hamstring work (common practice, no source)
        assert findings(week({"Gym": [SQUAT, f"{exercise}, sets: 1"]}), self.RULE) == []

    @pytest.mark.parametrize(
        "exercise",
        [
            "good morning",
            "hip thrust",
            "standing calf raise",
            "kettlebell swing",
            "deadlift",
            "leg extension",
        ],
    )
    def test_what_does_not_bend_the_knee_will_not(
        self, findings: Findings, week: Text, exercise: str
    ) -> None:
        assert len(findings(week({"Gym": [SQUAT, f"{exercise}, sets: 9"]}), self.RULE)) == 1

    @pytest.mark.parametrize(
        "lines",
        [
            ["bench press, sets: 3"],
            ["standing calf raise, sets: 3"],
            ["plank, sets: 3"],
            ["box jump, sets: 3"],
            ["back squat, sets: 2, rir: 8"],
        ],
    )
    def test_silent_where_the_legs_are_not_trained(
        self, findings: Findings, week: Text, lines: list[str]
    ) -> None:
        assert findings(week({"Gym": lines}), self.RULE) == []

    @pytest.mark.parametrize(
        ("focus", "said"),
        [("[chest, arms]", 0), ("[calves]", 0), ("[hams]", 1), ("[legs]", 1), ("[posterior chain]", 1)],
    )
    def test_focus(self, findings: Findings, week: Text, focus: str, said: int) -> None:
        assert len(findings(week({"Gym": [SQUAT, HINGE]}, f"focus: {focus}"), self.RULE)) == said

    def test_stands_back_under_rehabilitation(self, findings: Findings, week: Text) -> None:
        assert findings(week({"Gym": [SQUAT, HINGE]}, REHABILITATION), self.RULE) == []

    @pytest.mark.parametrize(
        "line", ["moon walk, sets: 3", "seated leg crul, sets: 3", "seated leg curl, sets: many"]
    )
    def test_silent_where_a_line_that_cannot_be_counted_may_do_it(
        self, findings: Findings, week: Text, line: str
    ) -> None:
        assert findings(week({"Gym": [SQUAT, line]}), self.RULE) == []

    def test_a_hinge_that_cannot_be_counted_hides_nothing(self, findings: Findings, week: Text) -> None:
        assert len(findings(week({"Gym": [SQUAT, "good morning, sets: many"]}), self.RULE)) == 1

    def test_an_alternative_is_no_set(self, findings: Findings, week: Text) -> None:
        assert (
            len(findings(week({"Gym": [SQUAT, "good morning, sets: 3, or: [seated leg curl]"]}), self.RULE))
            == 1
        )

    @pytest.mark.parametrize(("sets", "said"), [("{1-3: 0, 4: 1}", 0), ("{1-4: 0}", 1)])
    def test_one_week_of_the_block_is_enough(
        self, findings: Findings, week: Text, sets: str, said: int
    ) -> None:
        assert (
            len(findings(week({"Gym": [SQUAT, f"seated leg curl, sets: {sets}"]}, "weeks: 4"), self.RULE))
            == said
        )

    def test_each_block_is_judged_by_itself(self, findings: Findings) -> None:
        (finding,) = findings(
            blocks(("", [SQUAT, CURL]), ("", [SQUAT, HINGE]), ("", [SQUAT, CURL])), self.RULE
        )
        assert finding.weeks == (2,)

    def test_blocks_that_lack_it_alike_share_a_finding(self, findings: Findings) -> None:
        (finding,) = findings(blocks(("", [SQUAT]), ("", [SQUAT, HINGE]), ("", [SQUAT, CURL])), self.RULE)
        assert finding.weeks == (1, 2)

    @pytest.mark.parametrize("keys", ["deload: true", "phase: taper", "phase: test"])
    def test_weeks_that_are_there_to_recover_may_go_without(self, findings: Findings, keys: str) -> None:
        assert findings(blocks(("", [SQUAT, CURL]), (keys, [SQUAT])), self.RULE) == []

    def test_like_weeks_are_one_finding(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"Gym": [SQUAT]}, "weeks: 6"), self.RULE)
        assert finding.weeks == (1, 2, 3, 4, 5, 6)


class TestHipHingeMissing:
    """Hip extension with a nearly straight knee: bourne-2017; both jobs of the hamstrings: cp-both."""

    RULE = "hip-hinge-missing"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        text = week(
            {"monday Lower": ["back squat, sets: 3", "hip thrust, sets: 2", "seated leg curl, sets: 2"]},
            "goal: strength",
        )
        (finding,) = findings(text, self.RULE)
        assert (finding.severity, finding.confidence) == ("warning", "trial")
        assert finding.place.excerpt == "seated leg curl"  # where the hamstrings work already
        assert finding.counted == "7 sets for the legs; none extends the hip with a nearly straight knee."
        assert finding.wanted == "at least one set of a hip hinge in the block"
        assert finding.change == "Add a hinge, such as a Romanian deadlift, to Lower."

    @pytest.mark.parametrize(
        ("goal", "severity"),
        [
            ("hypertrophy", "warning"),
            ("strength", "warning"),
            ("general health", "note"),
            ("power", "note"),
            ("muscular endurance", "note"),
            ("", "note"),
        ],
    )
    def test_a_note_but_for_size_and_strength(
        self, findings: Findings, week: Text, goal: str, severity: str
    ) -> None:
        (finding,) = findings(week({"Gym": [SQUAT]}, f"goal: {goal}" if goal else ""), self.RULE)
        assert finding.severity == severity

    @pytest.mark.parametrize(
        "exercise",
        [
            "Romanian deadlift",
            "stiff-leg deadlift",
            "good morning",
            "deadlift",
            "sumo deadlift",
            "back extension",
            "reverse hyperextension",
            "kettlebell swing",
        ],
    )
    def test_any_hinge_will_do(self, findings: Findings, week: Text, exercise: str) -> None:
        # cp-deadlift: deadlifts, back extensions and reverse hyperextensions (common practice, no source)
        assert findings(week({"Gym": [SQUAT, f"{exercise}, sets: 1"]}), self.RULE) == []

    @pytest.mark.parametrize("exercise", ["hip thrust", "front squat", "reverse lunge", "seated leg curl"])
    def test_hip_extension_with_a_bent_knee_will_not(
        self, findings: Findings, week: Text, exercise: str
    ) -> None:
        assert len(findings(week({"Gym": [f"{exercise}, sets: 9"]}), self.RULE)) == 1

    def test_the_sessions_with_curls_come_first(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"A": [SQUAT], "B": [CURL], "C": [SQUAT]}), self.RULE)
        assert finding.change.endswith(" to B.")
        (finding,) = findings(week({"A": [SQUAT], "B": [SQUAT]}), self.RULE)
        assert finding.change.endswith(" to A or B.")

    def test_points_at_the_first_leg_exercise_without_a_curl(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"Gym": ["bench press, sets: 3", "leg press, sets: 3", SQUAT]}), self.RULE)
        assert finding.place.excerpt == "leg press"

    def test_stands_back_under_rehabilitation(self, findings: Findings, week: Text) -> None:
        assert findings(week({"Gym": [SQUAT]}, REHABILITATION), self.RULE) == []

    @pytest.mark.parametrize(
        ("focus", "said"), [("[quadriceps]", 0), ("[hamstrings]", 1), ("[lower body]", 1)]
    )
    def test_focus(self, findings: Findings, week: Text, focus: str, said: int) -> None:
        assert len(findings(week({"Gym": [SQUAT]}, f"focus: {focus}"), self.RULE)) == said

    @pytest.mark.parametrize(
        ("line", "said"),
        [("moon walk, sets: 3", 0), ("good morning, sets: x", 0), ("seated leg curl, sets: x", 1)],
    )
    def test_lines_that_cannot_be_counted(self, findings: Findings, week: Text, line: str, said: int) -> None:
        assert len(findings(week({"Gym": [SQUAT, line]}), self.RULE)) == said

    @pytest.mark.parametrize("keys", ["deload: true", "phase: taper", "phase: test"])
    def test_deload_taper_and_test(self, findings: Findings, keys: str) -> None:
        assert findings(blocks(("", [SQUAT, HINGE]), (keys, [SQUAT])), self.RULE) == []

    def test_weeks_are_drawn_together(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"Gym": ["back squat, sets: {1-2: 3, 3: 5}"]}, "weeks: 3"), self.RULE)
        assert finding.weeks == (1, 2, 3)
        assert finding.counted.startswith("5 sets")


class TestRegionUntrained:
    """The seven major regions: us-pag-2018, Physical Activity Guidelines for Americans, 2nd ed., HHS 2018."""

    RULE = "region-untrained"
    ALL = (
        "leg press, sets: 1",
        "bent-over row, sets: 1",
        "bench press, sets: 1",
        "plank, sets: 1",
        "overhead press, sets: 1",
        "barbell curl, sets: 1",
    )
    HEALTH = "goal: general health"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"monday Push": ["bench press, sets: 3"]}, self.HEALTH), self.RULE)
        assert (finding.severity, finding.confidence) == ("warning", "guideline")
        assert (finding.place.excerpt, finding.where) == ("Push", "Push")
        assert finding.counted == "Nothing trains legs, hips, abdomen and back, not even as a helper."
        assert finding.wanted == "at least one set for each of the seven major regions"

    def test_all_seven(self, findings: Findings, week: Text) -> None:
        assert findings(week({"Gym": list(self.ALL)}, self.HEALTH), self.RULE) == []

    @pytest.mark.parametrize(("left_out", "missing"), [("plank", "abdomen"), ("leg press", "legs and hips")])
    def test_each_region_is_named(self, findings: Findings, week: Text, left_out: str, missing: str) -> None:
        lines = [line for line in self.ALL if not line.startswith(left_out)]
        (finding,) = findings(week({"Gym": lines}, self.HEALTH), self.RULE)
        assert finding.counted == f"Nothing trains {missing}, not even as a helper."

    def test_helping_is_enough(self, findings: Findings, week: Text) -> None:
        # shoulders and arms help in the bench press: nothing for them alone, and nothing said
        (finding,) = findings(week({"Gym": ["bench press, sets: 1"]}, self.HEALTH), self.RULE)
        assert "shoulders" not in finding.counted
        assert "arms" not in finding.counted

    @pytest.mark.parametrize("effort", ["rir: 8", "rpe: 2"])
    def test_easy_sets_are_enough(self, findings: Findings, week: Text, effort: str) -> None:
        assert (
            findings(week({"Gym": [f"{line}, {effort}" for line in self.ALL]}, self.HEALTH), self.RULE) == []
        )

    @pytest.mark.parametrize(
        ("goal", "severity"),
        [("general health", "warning"), ("hypertrophy", "note"), ("strength", "note"), ("", "note")],
    )
    def test_a_note_where_health_is_not_the_goal(
        self, findings: Findings, week: Text, goal: str, severity: str
    ) -> None:
        (finding,) = findings(
            week({"Gym": ["bench press, sets: 3"]}, f"goal: {goal}" if goal else ""), self.RULE
        )
        assert finding.severity == severity

    def test_one_week_of_the_programme_is_enough(self, findings: Findings, week: Text) -> None:
        lines = [*self.ALL[:3], "plank, sets: {1-3: 0, 4: 1}", *self.ALL[4:]]
        assert findings(week({"Gym": lines}, f"{self.HEALTH}\nweeks: 4"), self.RULE) == []

    @pytest.mark.parametrize(
        ("focus", "counted"),
        [
            ("[legs]", ["legs stands in the focus; nothing trains it."]),
            ("[chest]", []),
            ("[triceps]", []),  # as a helper
            ("[upper body]", ["upper body stands in the focus; nothing trains back and neck."]),
            (
                "[neck, calves]",
                [
                    "neck stands in the focus; nothing trains it.",
                    "calves stands in the focus; nothing trains it.",
                ],
            ),
            (
                "[biceps femoris short head]",
                ["biceps femoris short head stands in the focus; nothing trains it."],
            ),
            ("[whatever]", []),  # that is for area-unknown to say
        ],
    )
    def test_focus(self, findings: Findings, week: Text, focus: str, counted: list[str]) -> None:
        said = findings(week({"Gym": ["bench press, sets: 3"]}, f"focus: {focus}"), self.RULE)
        assert [finding.counted for finding in said] == counted
        assert all(finding.severity == "warning" and finding.place.line == 2 for finding in said)

    def test_a_block_means_its_own_focus(self, findings: Findings) -> None:
        both = blocks(
            ("focus: [chest]", ["bench press, sets: 3"]), ("focus: [legs]", ["bench press, sets: 3"])
        )
        (finding,) = findings(both, self.RULE)
        assert (finding.counted, finding.place.line) == ("legs stands in the focus; nothing trains it.", 12)
        assert findings(both.replace("focus: [legs]", "focus: [chest]"), self.RULE) == []

    def test_another_blocks_work_does_not_count_for_a_blocks_focus(self, findings: Findings) -> None:
        text = blocks(
            ("focus: [chest]", ["bench press, sets: 3"]), ("focus: [chest]", ["leg press, sets: 3"])
        )
        (finding,) = findings(text, self.RULE)
        assert finding.counted == "chest stands in the focus; nothing trains it."

    @pytest.mark.parametrize("line", ["moon walk, sets: 1", "plank, sets: x"])
    @pytest.mark.parametrize("head", ["goal: general health", "focus: [legs]"])
    def test_silent_where_a_line_cannot_be_counted(
        self, findings: Findings, week: Text, line: str, head: str
    ) -> None:
        assert findings(week({"Gym": ["bench press, sets: 3", line]}, head), self.RULE) == []

    def test_stands_back_under_rehabilitation(self, findings: Findings, week: Text) -> None:
        assert (
            findings(week({"Gym": ["bench press, sets: 3"]}, f"{self.HEALTH}\n{REHABILITATION}"), self.RULE)
            == []
        )

    def test_a_programme_of_activities_alone(self, findings: Findings) -> None:
        assert (
            findings(
                "programme: Test\ngoal: general health\nsessions: [{activity: run, day: monday}]\n", self.RULE
            )
            == []
        )
