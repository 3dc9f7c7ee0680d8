"""Names and lines at their edges: what may be loaded where something is spared, what is read, what stands twice."""

from __future__ import annotations

from collections.abc import Callable
from string import ascii_lowercase

import pytest

from spotline.lint.findings.finding import Finding
from spotline.lint.project.results import Review
from spotline.rules.shared import MOST_SUGGESTED

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]


class TestExerciseUnknown:
    RULE = "exercise-unknown"

    @pytest.mark.parametrize(
        ("when", "line", "loads"),
        [
            ("", "bottoms-up presss, sets: 3, in weeks: 3", True),
            ("in weeks: 1-2, ", "bottoms-up presss, sets: 3, in weeks: 2", True),
            ("in weeks: 1-2, ", "bottoms-up presss, sets: 3, in weeks: 3", False),
            ("until: 2026-01-11, ", "bottoms-up presss, sets: 3, in weeks: 1", True),
            ("until: 2026-01-11, ", "bottoms-up presss, sets: 3, in weeks: 2-3", False),
            ("from: 2026-01-12, ", "bottoms-up presss, sets: 3, in weeks: 1", False),
            ("from: 2026-01-12, ", "bottoms-up presss, sets: 3, in weeks: 2", True),
            ("in weeks: 3, ", "bench press, sets: 3, or: [bottoms-up presss]", True),  # whenever it is done
            ("", "bak squat, sets: 3", False),  # what it may mean loads nothing that is spared
        ],
    )
    def test_what_it_may_mean_is_held_against_what_is_spared_then(
        self, findings: Findings, week: Text, when: str, line: str, loads: bool
    ) -> None:
        spared = f"{{movement: overhead pressing, {when}advised by: physiotherapist}}"
        head = f"weeks: 4\nstarts: 2026-01-05\nathlete: {{name: Ida, protect: [{spared}]}}"
        (finding,) = findings(week({"monday": [line]}, head), self.RULE)
        assert ("which loads `overhead pressing`" in finding.counted) is loads


class TestSetsNotRead:
    RULE = "sets-not-read"

    @pytest.mark.parametrize(
        ("drill", "counted", "weeks"),
        [
            ("sets: {1: 3, 2: 5, 3: 4}", "5 of 8", (1, 2, 3)),
            ("sets: {1: 5, 2: 3, 3: 5}", "5 of 8", (1, 2, 3)),
            ("sets: {1: 1, 2: 2, 3: 1}", "2 of 5", (2,)),  # one of four is a quarter
        ],
    )
    def test_the_week_with_most_is_told(
        self, findings: Findings, week: Text, drill: str, counted: str, weeks: tuple[int, ...]
    ) -> None:
        text = week({"monday": ["back squat, sets: 3", f"quarry drill, {drill}"]}, "weeks: 3")
        (finding,) = findings(text, self.RULE)
        assert finding.counted == f"{counted} sets not read: quarry drill is not known."
        assert finding.weeks == weeks

    def test_several_names(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"A": ["quarry drill, sets: 3", "moon walk, sets: 2"]}), self.RULE)
        assert finding.counted == "5 of 5 sets not read: quarry drill and moon walk are not known."

    @pytest.mark.parametrize(
        ("load", "said"),
        [("80 %", True), ("79 %", False), ("70-80 %", True), ("5RM", True), ("100 kg", False)],
    )
    def test_a_little_is_told_where_it_is_heavy(
        self, findings: Findings, week: Text, load: str, said: bool
    ) -> None:
        lines = ["back squat, sets: 9", f"quarry drill, sets: 2, reps: 3, load: {load}"]
        assert bool(findings(week({"A": lines}), self.RULE)) is said


class TestOurNameUnclear:
    RULE = "our-name-unclear"

    @pytest.mark.parametrize(
        ("names", "excerpt", "change", "edits"),
        [
            ("{x: flubber, y: plank}", "flubber", "Write an exercise of the catalogue", ["take out x"]),
            ("{x: stiff-leg deadlft}", "stiff-leg deadlft", "Did you mean", ["write stiff-leg deadlift"]),
            ("{a: back squat, A: front squat}", "A", "Give each name one", ["take out A"]),
            ("{back squat: front squat, y: plank}", "back squat", "Choose another name", ["take out back squat"]),
            ("{x: plank, b: b}", "b", "Write the exercise that it means", ["take out b"]),
        ],
    )  # fmt: skip
    def test_where_and_what_to_do(
        self, findings: Findings, week: Text, names: str, excerpt: str, change: str, edits: list[str]
    ) -> None:
        (finding,) = findings(week({"A": ["plank, sets: 3"]}, f"our names: {names}"), self.RULE)
        assert finding.place.excerpt == excerpt
        assert finding.change.startswith(change)
        assert [one.label for one in finding.edits] == edits
        assert [one.words for one in finding.related] == (["here"] if excerpt == "A" else [])

    def test_a_programme_without_names_of_its_own(self, findings: Findings, week: Text) -> None:
        assert findings(week({"A": ["plank, sets: 3"]}), self.RULE) == []


class TestLiftOfLoadUnknown:
    RULE = "lift-of-load-unknown"

    @pytest.mark.parametrize(
        ("load", "change"),
        [
            ("load: 80 % of back squat", ""),
            ("load: 80 %", ""),
            ("load: 80 kg", ""),
            ("rir: 2", ""),
            ("load: 80 % of sqat", "Did you mean back squat?"),
            ("load: 80 % of flubber", "Name a lift, or write the load in kg."),
            ("load: {1: 80 % of back squat, 2: 80 % of sqat}", "Did you mean back squat?"),
        ],
    )
    def test_what_it_is_a_share_of(self, findings: Findings, week: Text, load: str, change: str) -> None:
        text = week({"A": [f"front squat, sets: 3, reps: 5, {load}"]}, "weeks: 2")
        assert [one.change for one in findings(text, self.RULE)] == ([change] if change else [])

    def test_it_is_told_once_for_all_weeks(self, findings: Findings, week: Text) -> None:
        text = week({"A": ["front squat, sets: 3, load: 80 % of sqat"]}, "weeks: 4")
        (finding,) = findings(text, self.RULE)
        assert [one.words for one in finding.edits] == ["80 % of back squat"]


class TestExerciseTwice:
    RULE = "exercise-twice"

    @pytest.mark.parametrize(
        ("first", "second", "edits"),
        [
            ("sets: 3, reps: 8", "sets: 2, reps: 8", ["put all 5 sets on one line"]),
            ("sets: 3", "sets: 2", ["put all 5 sets on one line"]),
            ("sets: 3, reps: 8", "sets: 2-3, reps: 8", ["put all 5-6 sets on one line"]),
            ("sets: 3, reps: 8", "sets: 2, reps: 10", []),  # nobody knows which repetitions
        ],
    )
    def test_lines_of_like_repetitions_can_be_one(
        self, findings: Findings, week: Text, first: str, second: str, edits: list[str]
    ) -> None:
        (finding,) = findings(week({"A": [f"bench press, {first}", f"bench press, {second}"]}), self.RULE)
        assert [one.label for one in finding.edits] == edits


class TestNumberImplausible:
    RULE = "number-implausible"

    @pytest.mark.parametrize(
        ("line", "edits"),
        [
            ("sets: 12, reps: 5", None),
            ("sets: 13, reps: 5", []),
            ("sets: 33, reps: 5", ["3"]),
            ("sets: 33, reps: 5, rir: 7", None),  # easy ones may be many
            ("sets: 3, reps: 100", None),
            ("sets: 3, reps: 300", ["30"]),
            ("sets: 3, reps: 5, rest: 10 s", None),
            ("sets: 3, reps: 5, rest: 5 s", ["10 s"]),
            ("sets: 3, reps: 5, rest: 15 min", None),
            ("sets: 3, reps: 5, load: 10 %", None),
            ("sets: 3, reps: 5, load: 8 %", ["10 %"]),
            ("sets: 3, reps: 5, load: 7.5 %", ["75 %"]),  # the point
        ],
    )
    def test_what_it_could_have_been(
        self, findings: Findings, week: Text, line: str, edits: list[str] | None
    ) -> None:
        found = findings(week({"A": [f"back squat, {line}"]}), self.RULE)
        assert len(found) == (edits is not None)
        if edits:
            assert [edit.words for one in found for edit in one.edits] == edits

    def test_a_line_without_sets_is_no_session_without_work(self, findings: Findings, week: Text) -> None:
        """What is missing there is said at the line."""
        assert findings(week({"A": ["back squat, reps: 5"]}), "session-empty") == []
        assert (
            len(findings(week({"A": ["back squat, sets: 0"], "B": ["plank, sets: 2"]}), "session-empty")) == 1
        )

    def test_in_a_superset_nobody_rests(self, findings: Findings) -> None:
        pair = "{superset: [{exercise: back squat, sets: 3, rest: 5 s}, {exercise: plank, sets: 3}]}"
        text = f"programme: T\nsessions: [{{session: A, exercises: [{pair}]}}]\n"
        assert findings(text, self.RULE) == []


class TestUnitsMixed:
    RULE = "units-mixed"

    @pytest.mark.parametrize(
        ("loads", "place", "edits"),
        [
            (["100 kg", "60 kg", "225 lb"], "225 lb", ["102 kg", "225 kg"]),
            (["200 lb", "160 lb", "100 kg"], "100 kg", ["220.5 lb", "100 lb"]),
        ],
    )
    def test_either_unit_may_be_the_rarer_one(
        self, findings: Findings, week: Text, loads: list[str], place: str, edits: list[str]
    ) -> None:
        lifts = ("back squat", "bench press", "deadlift")
        lines = [f"{lift}, sets: 3, load: {load}" for lift, load in zip(lifts, loads, strict=True)]
        (finding,) = findings(week({"A": lines}), self.RULE)
        assert finding.place.excerpt == place
        assert [one.words for one in finding.edits] == edits


SLIPS = [f"back sq{letter}uat" for letter in ascii_lowercase] + [
    f"ba{letter}ck squat" for letter in ascii_lowercase
]
"""More names than others are looked up for."""


class TestManyNamesThatNobodyKnows:
    @pytest.mark.parametrize(
        ("rule", "head", "lines"),
        [
            ("exercise-unknown", "", SLIPS),
            (
                "lift-unknown",
                f"athlete: {{best lifts: {{{', '.join(f'{one}: 80 kg' for one in SLIPS)}}}}}",
                [],
            ),
            (
                "adjustment-unmatched",
                "athletes: [{athlete: {name: Ida}, adjust: ["
                + ", ".join(f"{{exercise: {one}, sets: 2}}" for one in SLIPS)
                + "]}]",
                [],
            ),
        ],
    )
    def test_fifty_are_looked_up(
        self, findings: Findings, week: Text, rule: str, head: str, lines: list[str]
    ) -> None:
        text = week({"Gym": [f"{name}, sets: 3" for name in ("back squat", *lines)]}, head)
        asked = [one for one in findings(text, rule) if one.change.startswith("Did you mean")]
        assert len(asked) == MOST_SUGGESTED == 50


class TestWhichNameIsSure:
    @pytest.mark.parametrize(
        ("rule", "head", "name", "certain"),
        [
            ("exercise-by-alias", "", "RDL", [True]),
            ("exercise-unknown", "", "back sqat", [True]),
            ("area-unknown", "focus: [hamstrigns]", "leg curl", [False]),
            ("sets-not-read", "", "cellar deadlift", [False]),
            ("lift-unknown", "athlete: {best lifts: {back sqat: 80 kg}}", "leg curl", [False]),
            ("our-name-unclear", "our names: {quarry drill: seated leg crul}", "leg curl", [False]),
        ],
    )
    def test_is_written_unasked(
        self, findings: Findings, week: Text, rule: str, head: str, name: str, certain: list[bool]
    ) -> None:
        asked = {"spotline.yaml": f"rules: {{{rule}: run}}\n"}
        (finding,) = findings(week({"Gym": [f"{name}, sets: 3"]}, head), rule, asked)
        assert [edit.certain for edit in finding.edits] == certain


class TestOffUntilATeamAsks:
    def said(self, review: Review, rule: str) -> list[Finding]:
        return [one for file in review.files for one in file.findings if one.rule == rule]

    @pytest.mark.parametrize(
        ("rule", "head", "line"),
        [
            ("exercise-by-alias", "", "RDL, sets: 3, reps: 8"),
            ("finer-points-missing", "goal: hypertrophy\nfocus: [chest]", "bench press, sets: 4, reps: 8"),
        ],
    )
    def test_runs_where_settings_say_so(
        self, reviewed: Callable[..., Review], week: Text, rule: str, head: str, line: str
    ) -> None:
        text, asked = week({"Gym": [line]}, head), {"spotline.yaml": f"rules: {{{rule}: run}}\n"}
        assert self.said(reviewed(text), rule) == []
        assert len(self.said(reviewed(text, asked), rule)) == 1
