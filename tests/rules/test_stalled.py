"""Lifts in which nothing changes, and steps that are never reached."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.findings.finding import Finding

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]

PRESS = "bench press, sets: 3, reps: 5, load: 60 kg"


class TestNothingChanges:
    RULE = "nothing-changes"

    @pytest.mark.parametrize(
        ("line", "said"),
        [
            ("bench press, sets: 3, reps: 5, load: 60 kg", True),
            ("bench press, sets: {1-4: 3, 5-9: 4}, reps: 5, load: 60 kg", False),
            ("bench press, sets: 3, reps: {1-4: 5, 5-9: 6}, load: 60 kg", False),
            ("bench press, sets: 3, reps: {1-4: 2+2, 5-9: 3+1}, load: 60 kg", False),
            ("bench press, sets: 3, reps: 2+2, load: 60 kg", True),
            ("bench press, sets: 3, reps: 5, load: 60 kg, rir: {1-4: 3, 5-9: 2}", False),
            ("bench press, sets: 3, reps: 5, load: 60 kg, rpe: {1-4: 7, 5-9: 8}", False),
            ("plank, sets: 3, hold: 30 s, load: 10 kg", True),
            ("plank, sets: 3, hold: {1-4: 30 s, 5-9: 40 s}, load: 10 kg", False),
            ("farmer's carry, sets: 3, distance: 20 m, load: 2 x 20 kg", True),
            ("farmer's carry, sets: 3, distance: {1-4: 20 m, 5-9: 30 m}, load: 2 x 20 kg", False),
            ("moon walk, sets: 3, reps: 5, load: 60 kg", True),  # whatever it is
            # what leaves the lifter room to move
            ("bench press, sets: 3, reps: 5, load: 60-65 kg", False),
            ("bench press, sets: 3, reps: 5, load: 60/62.5/65 kg", True),
            ("bench press, sets: 3, reps: 5-6, load: 60 kg", False),
            ("bench press, sets: 3, reps: 6/5/5, load: 60 kg", True),
            ("bench press, sets: 3, reps: 5+, load: 60 kg", False),
            ("bench press, sets: 3, reps: 5", False),
            ("bench press, sets: 3, reps: 5, load: heavy", False),
            ("bench press, sets: 3, reps: 5, load: 6RM", False),
            ("bench press, sets: 3, reps: 5, load: 60 kg, progression: {add: 2.5 kg}", False),
            ("bench press, sets: 3, reps: 5, load: 60 kg, note: add when it is easy", False),
            ("bench press, sets: 3, reps: 5, load: 60 kg, note: keep it tidy", True),
        ],
    )
    def test_what_is_a_change(self, findings: Findings, week: Text, line: str, said: bool) -> None:
        assert bool(findings(week({"monday": [line]}, "weeks: 9"), self.RULE)) is said

    @pytest.mark.parametrize(
        ("other", "said"),
        [
            ("dumbbell bench press, sets: 3, reps: 8, load: {1-4: 20 kg, 5-9: 22 kg}", ""),
            (
                "back squat, sets: 3, reps: 8, load: {1-4: 80 kg, 5-9: 82 kg}",
                "bench press",
            ),  # another pattern
            ("dumbbell bench press, sets: 3, reps: 8, load: 20 kg", "bench press and dumbbell bench press"),
            ("bench press, sets: 2, reps: 8-10, load: 50 kg", ""),  # a line of it that may move
            ("bench press, sets: 2, reps: 8, load: 50 kg", "bench press"),
        ],
    )
    def test_a_lift_that_moves_speaks_for_its_pattern(
        self, findings: Findings, week: Text, other: str, said: str
    ) -> None:
        found = findings(week({"monday": [PRESS], "thursday": [other]}, "weeks: 9"), self.RULE)
        assert [one.counted for one in found] == ([f"9 weeks without a change: {said}."] if said else [])

    def test_where_most_lifts_move_one_may_stand(self, findings: Findings, week: Text) -> None:
        moving = [
            f"{lift}, sets: 3, reps: 8, load: {{1-4: 80 kg, 5-9: 82 kg}}" for lift in ("squat", "deadlift")
        ]
        assert len(findings(week({"monday": [PRESS, moving[0]]}, "weeks: 9"), self.RULE)) == 1
        assert findings(week({"monday": [PRESS, *moving]}, "weeks: 9"), self.RULE) == []

    def test_it_speaks_only_for_the_weeks_in_which_it_moves(self, findings: Findings, week: Text) -> None:
        late = "dumbbell bench press, sets: 3, reps: 8, load: {1-9: 20 kg, 10: 22 kg}"
        first = "bench press, sets: 3, reps: 5, load: {1-9: 60 kg, 10: 62.5 kg}"
        (finding,) = findings(week({"monday": [first], "thursday": [late]}, "weeks: 10"), self.RULE)
        assert finding.counted == "9 weeks without a change: bench press and dumbbell bench press."
        assert finding.weeks == tuple(range(1, 10))

    @pytest.mark.parametrize(
        ("head", "line", "weeks"),
        [
            ("weeks: 8", PRESS, None),
            ("weeks: 9", PRESS, (1, 2, 3, 4, 5, 6, 7, 8, 9)),
            ("weeks: 10\ndeload: [5]", PRESS, (1, 2, 3, 4, 6, 7, 8, 9, 10)),  # a deload is no change
            ("weeks: 9\ndeload: [5]", PRESS, None),
            ("weeks: 10", f"{PRESS}, in weeks: 1-5+7-10", None),  # a week without it breaks the run
            ("weeks: 12", PRESS.replace("60 kg", "{1-3: 55 kg, 4-12: 60 kg}"), tuple(range(4, 13))),
            ("weeks: 9\nphase: in-season", PRESS, None),
            ("weeks: 9\nnote: retest in week 10", PRESS, None),
        ],
    )
    def test_weeks_in_a_row(
        self, findings: Findings, week: Text, head: str, line: str, weeks: tuple[int, ...] | None
    ) -> None:
        found = findings(week({"monday": [line]}, head), self.RULE)
        assert [one.weeks for one in found] == ([] if weeks is None else [weeks])

    def test_the_longest_run_is_told_and_the_first_line_is_pointed_at(
        self, findings: Findings, week: Text
    ) -> None:
        squat = "back squat, sets: 3, reps: 5, load: {1: 70 kg, 2-10: 80 kg}"
        (finding,) = findings(week({"monday": [squat], "thursday": [PRESS]}, "weeks: 10"), self.RULE)
        assert finding.where == "monday, back squat"
        assert finding.counted.startswith("10 weeks without a change: ")
        assert [one.words for one in finding.related] == ["weeks 1-10", "weeks 2-10"]
        assert finding.amount is not None
        assert (finding.amount.counted, finding.amount.wanted) == (10, 8)

    def test_the_edit_writes_a_step_on_every_line(self, findings: Findings, week: Text) -> None:
        squat = "back squat, sets: 3, reps: 5, load: 80 kg"
        (finding,) = findings(week({"monday": [PRESS, squat]}, "weeks: 9"), self.RULE)
        (edit,) = finding.edits
        assert edit.label == "add progression: {add: 2.5 kg}"
        assert len(edit.parts) == 2


class TestProgressionNeverReached:
    RULE = "progression-never-reached"
    TOP = "progression: {add: 2.5 kg, when: top of range}"

    @pytest.mark.parametrize(
        ("line", "words"),
        [
            ("band pull-apart, sets: 3, reps: 10, progression: {add: 2.5 kg, every: week}", "2.5 kg cannot be"),
            ("banded squat, sets: 3, load: red band, progression: {add: 5 lb, every: week}", "5 lb cannot be"),
            ("band pull-apart, sets: 3, reps: 10, load: 5 kg, progression: {add: 1 kg, every: week}", ""),
            ("band pull-apart, sets: 3, reps: 10, progression: {add: 1 rep, every: week}", ""),
            ("back squat, sets: 3, reps: 10, progression: {add: 2.5 kg, every: week}", ""),
            ("back squat, sets: 3, reps: 10, progression: {add: 5 %, every: week}", "5 % more of a load"),
            ("back squat, sets: 3, reps: 10, rir: 2, progression: {add: 5 %, every: week}", ""),
            ("back squat, sets: 3, reps: 10, load: heavy, progression: {add: 5 %, every: week}", "5 % more of"),
            ("back squat, sets: 3, reps: 10, load: 80 kg, progression: {add: 5 %, every: week}", ""),
            ("chin-up, sets: 3, reps: 8, load: bodyweight, progression: {add: 5 %, every: week}", "5 % more of"),
            ("back squat, sets: 3, load: {1: heavy, 2: 80 kg}, progression: {add: 5 %, every: week}", ""),
            ("banded squat, sets: 3, load: {1: red band, 2: 20 kg}, progression: {add: 5 kg, every: week}", ""),
        ],
    )  # fmt: skip
    def test_what_can_be_added(self, findings: Findings, week: Text, line: str, words: str) -> None:
        found = findings(week({"monday": [line]}, "weeks: 2"), self.RULE)
        assert [words in one.counted for one in found] == ([True] if words else [])

    @pytest.mark.parametrize(
        ("line", "edit"),
        [
            ("back squat, sets: 3, reps: 10, load: 80 kg", "10-13"),
            ("back squat, sets: 3, reps: 8/10/12, load: 80 kg", "8-11"),
            ("back squat, sets: 3, reps: 8-10, load: 80 kg", None),
            ("back squat, sets: 3, reps: 8/8/8-10, load: 80 kg", None),
            ("back squat, sets: 3, reps: 10+, load: 80 kg", None),
            ("back squat, sets: 3, reps: {1: 5, 2: 5-8}, load: 80 kg", None),  # one week will do
            ("plank, sets: 3, hold: 30-40 s", None),
            ("plank, sets: 3, hold: 30 s", ""),
            ("farmer's carry, sets: 3, distance: 20-30 m, load: 2 x 20 kg", None),
            ("farmer's carry, sets: 3, distance: 20 m, load: 2 x 20 kg", ""),
        ],
    )
    def test_the_top_of_a_range_needs_a_range(
        self, findings: Findings, week: Text, line: str, edit: str | None
    ) -> None:
        found = findings(week({"monday": [f"{line}, {self.TOP}"]}, "weeks: 2"), self.RULE)
        assert len(found) == (edit is not None)
        assert [one.words for finding in found for one in finding.edits] == ([edit] if edit else [])

    def test_every_week_gets_its_range(self, findings: Findings, week: Text) -> None:
        line = f"back squat, sets: 3, reps: {{1: 5, 2: 6}}, load: 80 kg, {self.TOP}"
        (finding,) = findings(week({"monday": [line]}, "weeks: 2"), self.RULE)
        (edit,) = finding.edits
        assert [part.words for part in edit.parts] == ["5-8", "6-9"]

    def test_another_moment_waits_for_no_range(self, findings: Findings, week: Text) -> None:
        line = "back squat, sets: 3, reps: 5, load: 80 kg, progression: {add: 2.5 kg, when: it feels easy}"
        assert findings(week({"monday": [line]}), self.RULE) == []

    def test_where_and_how_it_is_said(self, findings: Findings, week: Text) -> None:
        line = f"back squat, sets: 3, reps: 5, load: 80 kg, {self.TOP}"
        (finding,) = findings(week({"monday": [line]}), self.RULE)
        assert finding.place.excerpt == "{add: 2.5 kg, when: top of range}"
        assert finding.counted == (
            "back squat: the next step waits for the top of a range, and there is none."
        )
        assert finding.change == "Write a range, such as `reps: 5-8`, or another `when`."
