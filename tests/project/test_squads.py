"""Squads: several athletes on one programme, with what is adjusted for each."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.counting.ledger import Ledger
from spotline.lint.findings.finding import Finding
from spotline.lint.project.results import FileReview, Review
from spotline.lint.reporters.sentences import statement

Reviewed = Callable[..., Review]
Text = Callable[..., str]

SLIP = "number-implausible"


@pytest.fixture
def squad(reviewed: Reviewed) -> Callable[..., FileReview]:
    """The review of a programme for Bo, and for Ida with adjustments; ``lines`` of one session."""

    def run(
        lines: list[str],
        adjust: str = "",
        head: str = "weeks: 4",
        files: dict[str, str] | None = None,
        bo: str = "{name: Bo}",
        ida: str = "{name: Ida}",
    ) -> FileReview:
        adjusted = f"{{athlete: {ida}, adjust: [{adjust}]}}" if adjust else ida
        text = f"programme: Test\nathletes: [{bo}, {adjusted}]\n{head}\nsessions:\n  - session: A\n    exercises:\n"
        text += "".join(f"      - {{exercise: {line}}}\n" for line in lines)
        return reviewed(text, files).files[0]

    return run


Squad = Callable[..., FileReview]


def done(ledger: Ledger, week: int = 1) -> list[tuple[str, str, str]]:
    """Exercise, sets and load of each entry of a week."""
    entries = [entry for _, entry in ledger.weeks[week - 1].entries()]
    return [
        (entry.name, str(entry.sets), entry.work.load.words if entry.work.load else "") for entry in entries
    ]


def said(file: FileReview, rule: str) -> list[Finding]:
    return [finding for finding in file.findings if finding.rule == rule]


class TestAdjusting:
    """Only Ida's training changes; Bo does what is written."""

    LINES = ("back squat, sets: 4, reps: 5, load: 100 kg", "plank, sets: 3")

    @pytest.mark.parametrize(
        ("adjust", "week", "hers"),
        [
            ("{exercise: back squat, sets: 2}", 1, ("back squat", "2", "100 kg")),
            ("{exercise: back squat, sets: 2-3}", 1, ("back squat", "2-3", "100 kg")),
            ("{exercise: back squat, load: 60 kg}", 1, ("back squat", "4", "60 kg")),
            ("{exercise: back squat, sets: 2, load: 60 kg}", 1, ("back squat", "2", "60 kg")),
            ("{exercise: back squat, swap: leg press}", 1, ("leg press", "4", "100 kg")),
            ("{exercise: back squat, swap: leg press, sets: 2}", 1, ("leg press", "2", "100 kg")),
            ("{exercise: back squat, swap: moon walk}", 1, ("moon walk", "4", "100 kg")),
            ("{exercise: Back-Squats, sets: 2}", 1, ("back squat", "2", "100 kg")),
            ("{exercise: back squat, sets: {1-3: 2, 4: 1}}", 3, ("back squat", "2", "100 kg")),
            ("{exercise: back squat, sets: {1-3: 2, 4: 1}}", 4, ("back squat", "1", "100 kg")),
            ("{exercise: back squat, sets: {1: 0, 2-4: 3}}", 1, ("back squat", "0", "100 kg")),
            ("{exercise: back squat, leave out: false, sets: 2}", 1, ("back squat", "2", "100 kg")),
            (
                "{exercise: back squat, sets: 2}, {exercise: back squat, load: 60 kg}",
                1,
                ("back squat", "2", "60 kg"),
            ),
            (
                "{exercise: back squat, sets: 2}, {exercise: back squat, sets: 1}",
                1,
                ("back squat", "1", "100 kg"),
            ),
            ("{exercise: front squat, sets: 2}", 1, ("back squat", "4", "100 kg")),
            ("{exercise: back squat, note: gently}", 1, ("back squat", "4", "100 kg")),
        ],
    )
    def test_what_is_different(
        self, squad: Squad, adjust: str, week: int, hers: tuple[str, str, str]
    ) -> None:
        bo, ida = squad(list(self.LINES), adjust).ledgers
        assert done(bo, week) == [("back squat", "4", "100 kg"), ("plank", "3", "")]
        assert done(ida, week) == [hers, ("plank", "3", "")]

    def test_what_is_left_out(self, squad: Squad) -> None:
        bo, ida = squad(list(self.LINES), "{exercise: back squat, leave out: true, sets: 9}").ledgers
        assert len(done(bo)) == 2
        assert done(ida) == [("plank", "3", "")]

    def test_an_exercise_that_nobody_knows_can_be_adjusted_by_its_name(self, squad: Squad) -> None:
        _, ida = squad(
            ["moon walk, sets: 4", "mars walk, sets: 4"], "{exercise: Moon-Walks, sets: 1}"
        ).ledgers
        assert done(ida) == [("moon walk", "1", ""), ("mars walk", "4", "")]

    def test_every_line_of_the_exercise(self, squad: Squad) -> None:
        lines = ["RDL, sets: 4", "plank, sets: 3", "Romanian deadlift, sets: 2"]
        _, ida = squad(lines, "{exercise: Romanian deadlift, sets: 1}").ledgers
        assert [sets for _, sets, _ in done(ida)] == ["1", "3", "1"]

    def test_only_weeks_of_the_exercise(self, squad: Squad) -> None:
        lines = ["{1-2: back squat, 3-4: front squat}, sets: 4"]
        _, ida = squad(lines, "{exercise: front squat, sets: 1}").ledgers
        assert [done(ida, week)[0][:2] for week in (2, 3)] == [("back squat", "4"), ("front squat", "1")]

    def test_groups_of_sets_each_take_it(self, squad: Squad) -> None:
        lines = ["back squat, work: [{sets: 1, load: 90 %}, {sets: 3, load: 80 %}]"]
        _, ida = squad(lines, "{exercise: back squat, load: 60 kg}").ledgers
        assert done(ida) == [("back squat", "1", "60 kg"), ("back squat", "3", "60 kg")]

    def test_weeks_are_those_of_the_programme(self, reviewed: Reviewed) -> None:
        block = "{{name: {name}, weeks: 2, sessions: [{{session: A, exercises: [{{exercise: back squat, sets: 4}}]}}]}}"
        text = (
            "programme: Test\nathletes: [{athlete: {name: Ida},"
            " adjust: [{exercise: back squat, sets: {1: 1, 2: 2, 3: 3, 4: 5}}]}]\n"
            f"blocks: [{block.format(name='A')}, {block.format(name='B')}]\n"
        )
        (ida,) = reviewed(text).files[0].ledgers
        assert [done(ida, week)[0][1] for week in (1, 2, 3, 4)] == ["1", "2", "3", "5"]

    @pytest.mark.parametrize(
        ("weeks", "rule"),
        [("{1-3: 2}", "weeks-left-out"), ("{1-9: 2}", "weeks-beyond"), ("{1-4: 2, 4: 1}", "weeks-overlap")],
    )
    def test_weeks_that_do_not_fit(self, squad: Squad, weeks: str, rule: str) -> None:
        file = squad(list(self.LINES), f"{{exercise: back squat, sets: {weeks}}}")
        assert len(said(file, rule)) == 1

    def test_a_swap_takes_the_best_lift_of_what_is_done(self, squad: Squad) -> None:
        ida = "{name: Ida, best lifts: {back squat: 100 kg, leg press: 200 kg}}"
        _, hers = squad(list(self.LINES), "{exercise: back squat, swap: leg press}", ida=ida).ledgers
        (entry, _) = (entry for _, entry in hers.weeks[0].entries())
        assert entry.percent is not None
        assert entry.percent.middle == pytest.approx(50)

    def test_a_swap_counts_for_the_muscles_it_trains(self, squad: Squad) -> None:
        bo, ida = squad(["back squat, sets: 4"], "{exercise: back squat, swap: seated leg curl}").ledgers
        assert (bo.weeks[0].sets("quadriceps").high, bo.weeks[0].sets("hamstrings").high) == (4, 0)
        assert (ida.weeks[0].sets("quadriceps").high, ida.weeks[0].sets("hamstrings").high) == (0, 4)

    @pytest.mark.parametrize(
        "adjust",
        [
            "{exercise: back squat}",
            "{swap: leg press}",
            "{exercise: back squat, tempo: 3-0-1-0}",
            "{sets: 0}",
            "{exercise: back squat, sets: some}",
            "{exercise: back squat, sets: 0}",
            "{exercise: back squat, leave out: please}",
            "{exercise: [back squat], sets: 2}",
            "{exercise: back squat, swap: [a], sets: 2}",
            "back squat",
        ],
    )
    def test_bad_input_is_an_error_at_its_line_and_no_fault(self, squad: Squad, adjust: str) -> None:
        file = squad(list(self.LINES), adjust)
        errors = [finding for finding in file.findings if finding.severity == "error"]
        assert {finding.place.line for finding in errors} == {2}
        assert not file.faults
        assert [done(ledger)[1] for ledger in file.ledgers] == [("plank", "3", "")] * 2


class TestSaying:
    def test_what_holds_for_all_is_said_once(self, squad: Squad) -> None:
        (finding,) = said(squad(["plank, sets: 30"]), SLIP)
        assert statement(finding) == "30 sets in one line."

    def test_what_holds_for_one_names_them_and_points_at_what_is_adjusted(self, squad: Squad) -> None:
        (finding,) = said(squad(["plank, sets: 3"], "{exercise: plank, sets: 30}"), SLIP)
        assert statement(finding) == "For Ida: 30 sets in one line."
        assert (finding.place.line, finding.place.excerpt) == (2, "30")
        assert finding.where == "A, plank, sets"

    def test_what_holds_for_the_others_names_them(self, squad: Squad) -> None:
        (finding,) = said(squad(["plank, sets: 30"], "{exercise: plank, sets: 3}"), SLIP)
        assert statement(finding) == "For Bo: 30 sets in one line."
        assert finding.place.line == 7

    def test_different_numbers_are_said_apart(self, squad: Squad) -> None:
        both = said(squad(["plank, sets: 30"], "{exercise: plank, sets: 31}"), SLIP)
        assert [statement(finding) for finding in both] == [
            "For Ida: 31 sets in one line.",
            "For Bo: 30 sets in one line.",
        ]

    def test_what_another_does_in_the_same_weeks_is_no_other_week(self, squad: Squad) -> None:
        (finding,) = said(squad(["plank, sets: {Bo: 3, Ida: 30}"]), SLIP)
        assert statement(finding) == "For Ida: 30 sets in one line."

    @pytest.mark.parametrize(
        ("without", "named"),
        [(("Cy",), "For Bo and Dee: "), (("Bo", "Cy"), "For Dee: "), ((), ""), (("Bo", "Cy", "Dee"), None)],
    )
    def test_several_of_several(
        self, reviewed: Reviewed, without: tuple[str, ...], named: str | None
    ) -> None:
        members = ", ".join(
            f"{{athlete: {{name: {name}}}, adjust: [{{exercise: plank, leave out: true}}]}}"
            if name in without
            else f"{{name: {name}}}"
            for name in ("Bo", "Cy", "Dee")
        )
        text = (
            f"programme: Test\nathletes: [{members}]\nsessions: [{{session: A, exercises:"
            " [{exercise: plank, sets: 30}, {exercise: dip, sets: 1}]}]\n"
        )
        found = said(reviewed(text).files[0], SLIP)
        assert [statement(finding) for finding in found] == (
            [] if named is None else [f"{named}30 sets in one line."]
        )

    def test_three_of_four_are_named_in_a_row(self, reviewed: Reviewed) -> None:
        text = (
            "programme: Test\nathletes: [{name: Bo}, {name: Cy}, {name: Dee}, {athlete: {name: Ida}, adjust:"
            " [{exercise: plank, sets: 1}]}]\nsessions: [{session: A, exercises: [{exercise: plank, sets: 30}]}]\n"
        )
        (finding,) = said(reviewed(text).files[0], SLIP)
        assert statement(finding) == "For Bo, Cy and Dee: 30 sets in one line."

    def test_weeks_that_differ_are_said_apart(self, squad: Squad) -> None:
        both = said(squad(["plank, sets: 30"], "{exercise: plank, sets: {1-2: 30, 3-4: 1}}"), SLIP)
        assert sorted((statement(finding), finding.weeks) for finding in both) == [
            ("For Bo: 30 sets in one line.", (1, 2, 3, 4)),
            ("For Ida: 30 sets in one line.", (1, 2)),
        ]

    def test_one_athlete_is_no_squad(self, reviewed: Reviewed) -> None:
        text = "programme: Test\nathletes: [{name: Ida}]\nsessions: [{session: A, exercises: [{exercise: plank, sets: 30}]}]\n"
        (finding,) = said(reviewed(text).files[0], SLIP)
        assert statement(finding) == "30 sets in one line."

    def test_limits_go_by_each_athletes_level(self, squad: Squad) -> None:
        lines = ["pistol squat, sets: 3"]
        file = squad(lines, bo="{name: Bo, level: advanced}", ida="{name: Ida, level: novice}")
        assert [statement(finding)[:9] for finding in said(file, "lift-beyond-level")] == ["For Ida: "]


FILES = {"bo.athlete.yaml": "name: Bo\n", "deep/ida.athlete.yaml": "name: Ida\n"}


class TestFiles:
    def test_athletes_by_path_inline_and_adjusted(self, squad: Squad) -> None:
        file = squad(
            ["plank, sets: 3"],
            "{exercise: plank, sets: 1}",
            files=FILES,
            bo="bo.athlete.yaml",
            ida="deep/ida.athlete.yaml",
        )
        assert [ledger.athlete.name for ledger in file.ledgers if ledger.athlete] == ["Bo", "Ida"]
        assert [done(ledger)[0][1] for ledger in file.ledgers] == ["3", "1"]

    def test_one_that_is_missing_leaves_the_others(self, squad: Squad) -> None:
        file = squad(["plank, sets: 30"], files=FILES, bo="bo.athlete.yaml", ida="gone.athlete.yaml")
        (finding,) = said(file, "athlete-missing")
        assert finding.place.excerpt == "gone.athlete.yaml"
        assert [ledger.athlete.name for ledger in file.ledgers if ledger.athlete] == ["Bo"]
        assert said(file, SLIP)[0].counted == "30 sets in one line."

    def test_nobody_left(self, squad: Squad) -> None:
        file = squad(["plank, sets: 3"], bo="gone.athlete.yaml", ida="gone.athlete.yaml")
        assert [ledger.athlete for ledger in file.ledgers] == [None]

    def test_over_all_their_programmes(self, squad: Squad) -> None:
        """What a rule finds on athletes with all of their programmes is said where the first of them stands."""
        file = squad(
            ["plank, sets: 3"],
            bo="{name: Bo, level: novice, age: 50}",
            ida="{name: Ida, level: novice, age: 40}",
        )
        assert [(statement(one), one.place.excerpt) for one in said(file, "screening-missing")] == [
            ("For Bo and Ida: No health screening on file.", "Bo"),
        ]
