"""Loads and effort at their edges: what the edits write."""

from __future__ import annotations

import re
from collections.abc import Callable

import pytest

from spotline.lint.findings.finding import Finding

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]


class TestMoreRepsThanLoadAllows:
    """Repetitions at 70, 80 and 85 %: nuzzo-2024 (table secondary)."""

    RULE = "more-reps-than-load-allows"

    @pytest.mark.parametrize(
        ("reps", "load", "edits"),
        [
            (30, "70 %", ["21"]),  # no load from 60 % allows so many
            (20, "80 %", ["14"]),
            (12, "85 %", ["76 %", "11"]),
        ],
    )
    def test_a_lighter_load_or_fewer_repetitions(
        self, findings: Findings, week: Text, reps: int, load: str, edits: list[str]
    ) -> None:
        text = week({"A": [f"back squat, sets: 1, reps: {reps}, load: {load}"]})
        (finding,) = findings(text, self.RULE)
        assert [one.words for one in finding.edits] == edits

    @pytest.mark.parametrize(
        ("line", "head", "said"),
        [
            ("back squat, sets: 1, reps: 1, load: 100 %", "", []),
            ("back squat, sets: 1, reps: 2, load: 100 %", "", ["2"]),
            ("back squat, sets: 1, reps: 1, rir: 1, load: 100 %", "", ["1"]),  # that would be two
            ("back squat, sets: 1, reps: 1, load: 101 %", "", ["101 %"]),
            ("back squat, sets: 1, load: 105 %", "", ["105 %"]),
            ("snatch pull, sets: 3, reps: 3, load: 105 %", "", ["105 %"]),  # of what?
            ("snatch pull, sets: 3, reps: 3, load: 105 %, note: % of snatch", "", []),
            ("snatch pull, sets: 3, reps: 3, load: 105 %, note: percent of the snatch", "", []),
            ("snatch pull, sets: 3, reps: 3, load: 105 %, note: of the snatch", "", ["105 %"]),
            ("snatch pull, sets: 3, reps: 3, load: 105 %", "note: all % of the snatch", []),
            ("snatch pull, sets: 3, reps: 3, load: 105 %", "athlete: {name: A, best lifts: {snatch: 80 kg}}", []),
            ("snatch pull, sets: 3, reps: 3, load: 105 %", "athlete: {name: A, best lifts: {quarry drill: 9 kg, snatch: 80 kg}}", []),
            ("quarry pull, sets: 3, reps: 3, load: 105 %", "athlete: {name: A, best lifts: {snatch: 80 kg}}", ["105 %"]),
            ("snatch pull, sets: 3, reps: 3, load: 105 %", "athlete: {name: A, best lifts: {back squat: 80 kg}}", ["105 %"]),
        ],
    )  # fmt: skip
    def test_the_whole_best_and_more(
        self, findings: Findings, week: Text, line: str, head: str, said: list[str]
    ) -> None:
        found = findings(week({"A": [line]}, head), self.RULE)
        assert [one.place.excerpt for one in found] == said

    @pytest.mark.parametrize("reps", ["1/2", "2/1"])
    def test_the_hardest_set_is_told(self, findings: Findings, week: Text, reps: str) -> None:
        (finding,) = findings(week({"A": [f"back squat, sets: 2, reps: {reps}, load: 105 %"]}), self.RULE)
        assert finding.counted == "2 repetitions at 105 %."

    def test_the_load_is_one_that_the_last_set_allows(self, findings: Findings, week: Text) -> None:
        """The first of five sets of 12 would go at 71 %; the last asks as much as a longer first set."""
        one, five = (
            findings(week({"A": [f"bench press, sets: {sets}, reps: 12, load: 85 %"]}), self.RULE)
            for sets in (1, 5)
        )
        lighter = [int(re.findall("about ([0-9]+) %", found[0].change)[0]) for found in (one, five)]
        assert lighter[1] < lighter[0] < 85


class TestPullOrPushMissing:
    RULE = "pull-or-push-missing"

    @pytest.mark.parametrize(
        ("athlete", "lines", "missing"),
        [
            ("{name: A, age: 64}", ["bench press", "seated cable row"], "vertical pull or vertical push"),
            ("{name: A, age: 65}", ["bench press", "seated cable row"], ""),  # overhead is not asked of them
            ("{name: A, level: novice}", ["bench press", "seated cable row"], ""),
            ("{name: A}", ["bench press", "seated cable row", "lat pulldown"], ""),  # one of the two will do
            ("{name: A}", ["overhead press", "lat pulldown"], "horizontal pull or horizontal push"),
            ("{name: A, age: 70}", ["overhead press", "lat pulldown"], "horizontal pull or horizontal push"),
        ],
    )
    def test_what_health_asks_for(
        self, findings: Findings, week: Text, athlete: str, lines: list[str], missing: str
    ) -> None:
        text = week(
            {"A": [f"{line}, sets: 4" for line in lines]}, f"goal: general health\nathlete: {athlete}"
        )
        found = [one.counted for one in findings(text, self.RULE)]
        assert found == ([f"8 sets of presses and pulls a week; no {missing}."] if missing else [])

    def test_who_rows_on_a_machine_may_lack_something_else(self, findings: Findings, week: Text) -> None:
        rowing = "  - {session: Row, exercises: [{intervals: rowing machine, rounds: 4, distance: 500 m}]}\n"
        presses = ["bench press, sets: 4", "overhead press, sets: 4"]
        (finding,) = findings(week({"A": presses}) + rowing, self.RULE)
        assert finding.counted.endswith("no vertical pull.")
        (finding,) = findings(week({"A": [*presses, "bent-over row, sets: 4"]}) + rowing, self.RULE)
        assert finding.counted.endswith("no vertical pull.")

    @pytest.mark.parametrize(("easy", "said"), [("rir: 2", 1), ("rir: 6", 0)])
    def test_one_hard_line_is_no_plan_for_all_directions(
        self, findings: Findings, week: Text, easy: str, said: int
    ) -> None:
        lines = ["bench press, sets: 9, reps: 8, rir: 2", f"bent-over row, sets: 2, reps: 8, {easy}"]
        assert len(findings(week({"A": lines}), self.RULE)) == said


class TestIsolationBeforeCompound:
    RULE = "isolation-before-compound"

    @pytest.mark.parametrize(
        ("more", "said", "advice"),
        [
            ([], "back squat at 5 repetitions comes after leg extension", "Put it first"),
            (["front squat, sets: 3, reps: 5"], "back squat at 5 repetitions and 1 more come after leg extension", "Put them first"),
        ],
    )  # fmt: skip
    def test_one_compound_or_several(
        self, findings: Findings, week: Text, more: list[str], said: str, advice: str
    ) -> None:
        lines = ["leg extension, sets: 3, reps: 12", "back squat, sets: 3, reps: 5", *more]
        (finding,) = findings(week({"A": lines}), self.RULE)
        assert finding.counted.startswith(said)
        assert finding.change.startswith(advice)

    @pytest.mark.parametrize(
        ("load", "words"),
        [
            ("load: 5RM", "back squat at 5RM"),
            ("reps: 5", "back squat at 5 repetitions"),
            ("load: 12RM", ""),
            ("load: 80 %", ""),  # nobody knows how many
            ("reps: 12", ""),
        ],
    )
    def test_heavy_work_after_a_tired_prime_mover(
        self, findings: Findings, week: Text, load: str, words: str
    ) -> None:
        text = week({"A": ["leg extension, sets: 3, reps: 10", f"back squat, sets: 3, {load}"]})
        found = [one.counted for one in findings(text, self.RULE)]
        assert found == ([f"{words} comes after leg extension, which tires the quadriceps."] if words else [])

    @pytest.mark.parametrize(
        ("load", "said"), [("load: 9RM", True), ("reps: 10", True), ("load: 80 %", False)]
    )
    def test_a_tired_helper_counts_where_the_repetitions_are_known(
        self, findings: Findings, week: Text, load: str, said: bool
    ) -> None:
        text = week({"A": ["triceps extension, sets: 3, reps: 10", f"bench press, sets: 3, {load}"]})
        assert bool(findings(text, self.RULE)) is said


class TestFastWorkMissing:
    RULE = "fast-work-missing"

    @pytest.mark.parametrize(
        ("line", "unless"),
        [("zonk, sets: 3", ", unless `zonk` is"), ("box jmp, sets: 3", None), ("bench press, sets: 3", "")],
    )
    def test_a_slip_of_a_jump_is_a_jump(
        self, findings: Findings, week: Text, line: str, unless: str | None
    ) -> None:
        text = week({"A": ["back squat, sets: 4, load: 80 %", line]}, "goal: power")
        found = [one.counted for one in findings(text, self.RULE)]
        said = [] if unless is None else [f"7 sets a week for power, none of them fast{unless}."]
        assert found == said


class TestEffortAgainstLoad:
    RULE = "effort-against-load"

    @pytest.mark.parametrize(
        ("line", "place", "edits"),
        [
            ("reps: 5, load: 60 %, rir: 0", "0", ["90 %"]),  # nobody judges 15 in reserve
            ("reps: 5, load: 60 %, rpe: 10", "10", ["90 %"]),
            ("reps: 8, load: 70 %, rir: 0", "", []),
        ],
    )
    def test_a_load_for_the_effort(
        self, findings: Findings, week: Text, line: str, place: str, edits: list[str]
    ) -> None:
        found = findings(week({"A": [f"back squat, sets: 3, {line}"]}), self.RULE)
        assert [one.place.excerpt for one in found] == ([place] if place else [])
        assert [edit.words for one in found for edit in one.edits] == edits
