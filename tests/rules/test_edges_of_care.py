"""Care and equipment at their edges: failing lifts, reviews that are past, landings in a return, weights."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.findings.finding import Finding

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]

STAGE = "rehabilitation: {stage: early, advised by: physiotherapist, until: 2026-04-01}"


class TestFailureWithoutSpotter:
    RULE = "failure-without-spotter"

    @pytest.mark.parametrize(
        ("line", "how", "edit"),
        [
            ("sets: 3, reps: 5, rir: 0", "to failure with", "1"),
            ("sets: 3, reps: 5, rpe: 10", "to failure with", "9"),
            (
                "sets: 3, reps: 5, load: 5RM",
                "to failure (worked out from 5RM and 5 repetitions) with",
                "",
            ),
            ("sets: 1, load: 1RM", "for a maximal single (worked out from 1RM) with", ""),
            ("sets: 1, load: 5RM", "to failure (worked out from 5RM) with", ""),
            ("sets: 3, load: heavy, rir: 0", "to failure with", "1"),  # no number says that it is a single
            ("sets: 1, reps: 1, rir: 0", "for a maximal single with", ""),
            ("sets: 1, reps: 1+, rir: 0", "to failure with", "1"),  # as many as there are
            ("sets: 1, reps: 2, rir: 0", "to failure with", "1"),
        ],
    )
    def test_how_hard_and_what_leaves_one(
        self, findings: Findings, week: Text, line: str, how: str, edit: str
    ) -> None:
        (finding,) = findings(week({"monday": [f"bench press, {line}"]}), self.RULE)
        assert finding.counted == f"Bench press {how} no spotter or safety bars noted."
        assert [one.words for one in finding.edits] == ([edit] if edit else [])

    @pytest.mark.parametrize(
        ("press", "squat", "how"),
        [
            ("reps: 1", "reps: 1", "for a maximal single"),
            ("reps: 1", "reps: 5", "to failure or for a maximal single"),
            ("reps: 5", "reps: 5", "to failure"),
        ],
    )
    def test_singles_among_sets_to_failure(
        self, findings: Findings, week: Text, press: str, squat: str, how: str
    ) -> None:
        lines = [f"bench press, sets: 1, rir: 0, {press}", f"back squat, sets: 1, rir: 0, {squat}"]
        (finding,) = findings(week({"monday": lines}), self.RULE)
        assert finding.counted.startswith(f"Bench press and back squat {how} with")
        assert [one.words for one in finding.related] == ["monday, back squat: here too"]


class TestRestrictionReviewPast:
    RULE = "restriction-review-past"

    @pytest.mark.parametrize(
        ("when", "said"),
        [
            ("", True),
            ("until: 2026-01-05, ", True),  # the last day is today
            ("until: 2026-01-04, ", False),  # over: nothing is left to review
            ("in weeks: 1-2, ", True),
        ],
    )
    def test_what_is_over_needs_no_review(
        self, findings: Findings, week: Text, when: str, said: bool
    ) -> None:
        spared = f"{{area: left knee, advised by: physiotherapist, {when}review on: 2025-12-15}}"
        head = f"starts: 2025-12-01\nweeks: 8\nathlete: {{name: Ida, protect: [{spared}]}}"
        assert bool(findings(week({"monday": ["bench press, sets: 3"]}, head), self.RULE)) is said


class TestImpactDaysConsecutive:
    RULE = "impact-days-consecutive"
    JUMPS = "{session: A, day: %s, exercises: [{exercise: box jump, sets: 4, reps: 5}]}"

    @pytest.mark.parametrize(
        ("head", "days", "counted"),
        [
            ("", [JUMPS % "monday", "{activity: run, day: tuesday}"], None),
            ("phase: return", [JUMPS % "monday", "{activity: run, day: tuesday}"], "4 sets of jumps and run"),
            (STAGE, [JUMPS % "monday", "{activity: run, day: tuesday}"], "4 sets of jumps and run"),
            ("phase: return", ["{activity: run, day: monday}", JUMPS % "tuesday"], "run and 4 sets of jumps"),
            ("phase: return", [JUMPS % "monday", "{activity: swim, day: tuesday}"], None),
            ("phase: return", [JUMPS % "monday", "{activity: run, day: wednesday}"], None),
            # runs alone are left to whoever plans them
            ("phase: return", ["{activity: run, day: monday}", "{activity: run, day: tuesday}"], None),
        ],
    )
    def test_a_run_is_impact_where_something_heals(
        self, findings: Findings, head: str, days: list[str], counted: str | None
    ) -> None:
        text = f"programme: T\n{head}\nsessions:\n" + "".join(f"  - {day}\n" for day in days)
        said = [one.counted for one in findings(text, self.RULE)]
        assert said == ([f"Impact on Monday and Tuesday: {counted}."] if counted else [])


class TestCalfWorkMissing:
    RULE = "calf-work-missing"

    @pytest.mark.parametrize(
        ("lines", "head", "said"),
        [
            (["leg press, sets: 3"], "focus: [legs]", True),
            (["leg press, sets: 3"], "priority: [legs]", True),
            (["leg press, sets: 3"], "focus: [quadriceps]", False),
            (["leg press, sets: 3"], "focus: [moon]", False),
            (["bench press, sets: 3"], "focus: [legs]", False),
            (["leg press, sets: 3, rir: 6"], "focus: [legs]", False),
            (["leg press, sets: 3", "toe thing, sets: 3"], "focus: [legs]", False),  # that may be it
            (["leg press, sets: 3", "arm thing, sets: 3"], "focus: [legs]", True),
            (["leg press, sets: 3"], "focus: [legs]\ngoal: hypertrophy", True),
            (["leg press, sets: 3"], "focus: [legs]\ngoal: strength", False),
        ],
    )
    def test_where_whole_legs_are_meant(
        self, findings: Findings, week: Text, lines: list[str], head: str, said: bool
    ) -> None:
        assert bool(findings(week({"monday": lines}, head), self.RULE)) is said

    @pytest.mark.parametrize(("focus", "said"), [("legs", True), ("chest", False)])
    def test_the_focus_of_the_block_comes_first(self, findings: Findings, focus: str, said: bool) -> None:
        text = (
            f"programme: T\nfocus: [legs]\nblocks:\n  - {{name: B, weeks: 2, focus: [{focus}], sessions:"
            " [{session: A, exercises: [{exercise: leg press, sets: 3}]}]}\n"
        )
        assert bool(findings(text, self.RULE)) is said


class TestWeightNotThere:
    RULE = "weight-not-there"

    @pytest.mark.parametrize(
        ("line", "edits"),
        [
            ("kettlebell swing, sets: 3, load: 16 kg", None),
            ("kettlebell swing, sets: 3, load: 20 kg", ["16 kg"]),
            ("kettlebell swing, sets: 3, load: 2 x 20 kg", ["2 x 16 kg"]),
            ("kettlebell swing, sets: 3, load: {1: 12 kg, 2: 14 kg}", ["12 kg", "16 kg"]),
            ("kettlebell swing, sets: 0, load: 20 kg", None),  # not done
            ("kettlebell swing, sets: 3", None),
            ("kettlebell swing, sets: 3, load: heavy", None),
            ("kettlebell swing, sets: 3, load: 50 %", None),
            ("kettlebell twirl, sets: 3, load: 20 kg", None),  # whatever that is
            ("back squat, sets: 3, load: 20 kg", None),
        ],
    )
    def test_which_loads(self, findings: Findings, week: Text, line: str, edits: list[str] | None) -> None:
        head = "weeks: 2\nathlete: {name: Ida, equipment: [{kettlebells: [8, 12, 16 kg]}, bench]}"
        found = findings(week({"monday": [line]}, head), self.RULE)
        assert [[edit.words for edit in one.edits] for one in found] == ([] if edits is None else [edits])

    def test_at_another_place_what_is_there_counts(self, findings: Findings, week: Text) -> None:
        head = (
            "where: hotel\nathlete: {name: Ida, equipment: [full gym],"
            " places: {hotel: [{kettlebells: [8, 12 kg]}]}}"
        )
        (finding,) = findings(week({"A": ["kettlebell swing, sets: 3, load: 20 kg"]}, head), self.RULE)
        assert finding.counted == "Kettlebell swing: no kettlebells of 20 kg at hotel."
        assert finding.group == "kettlebell swing at hotel"


class TestDiagnosisInAthleteFile:
    RULE = "diagnosis-in-athlete-file"

    @pytest.mark.parametrize(
        ("note", "note_only"),
        [
            ("Old ankle sprain, sound.", True),
            ("Old ankle sprain, sound. Wrist fracture in May.", False),  # one of the two is not over
            ("Old ankle sprain, sound. Wrist fracture in 2015, healed.", True),
        ],
    )
    def test_all_of_it_must_have_healed(
        self, findings: Findings, week: Text, note: str, note_only: bool
    ) -> None:
        text = week({"A": ["plank, sets: 3"]}, f"athlete:\n  name: Ida\n  note: {note}")
        (finding,) = findings(text, self.RULE)
        assert (finding.severity == "note") is note_only
