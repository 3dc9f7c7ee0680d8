"""Rules on balance: opposing muscles against one another."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.findings.finding import Finding

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]

THIGH = ("leg extension", "seated leg curl")
REHABILITATION = "rehabilitation: {stage: return, advised by: physiotherapist, until: 2026-12-31}"


def against(pair: tuple[str, str], more: str, less: str) -> dict[str, list[str]]:
    return {
        "Gym": [f"{name}, sets: {sets}" for name, sets in zip(pair, (more, less), strict=True) if sets != "0"]
    }


@pytest.fixture
def findings(implausible: Findings) -> Findings:
    """Some tests need more sets in a line than a coach writes."""
    return implausible


class TestAntagonistImbalance:
    """Front and back of the thigh 1 : 1 with room on both sides: cp-balance, common practice, no source.

    No trial sets a ratio of sets, so every bound here is common practice.
    """

    RULE = "antagonist-imbalance"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(
            week(
                {
                    "monday Legs": [
                        "leg extension, sets: 9",
                        "seated leg curl, sets: 2",
                        "Romanian deadlift, sets: 2",
                    ]
                }
            ),
            self.RULE,
        )
        assert (finding.severity, finding.confidence) == ("note", "common practice")
        assert (finding.place.excerpt, finding.where) == ("leg extension", "Legs, leg extension")
        assert finding.counted == ("Quadriceps side 9 sets, hamstring side 4.")
        assert finding.wanted == "2:3 to 3:2"
        # 9 : 4 becomes 7 : 6; moving one, 8 : 5, would still be past 3 : 2
        assert finding.change == ("In Legs, move 2 sets from leg extension to seated leg curl.")
        assert "forecasts no injury" in finding.why
        assert [related.words for related in finding.related] == [
            "Legs, leg extension, Monday: 9 sets",
            "Legs, seated leg curl, Monday: 2 sets",
            "Legs, Romanian deadlift, Monday: 2 sets",
        ]

    @pytest.mark.parametrize(
        ("more", "less", "severity"),
        [
            ("6", "4", None),  # 3 : 2
            ("7", "4", "note"),
            ("8", "4", "note"),  # 2 : 1
            ("12", "4", "note"),  # 3 : 1
            ("12", "3", "warning"),
            ("9-10", "3", "warning"),
            ("3", "2", None),
            ("4", "1", None),  # five together: too few to compare
            ("5", "1", "warning"),  # six together
            ("4", "2", None),  # two apart
            ("6-8", "4", "note"),  # middles: 7 : 4
            ("4-8", "4", None),  # 6 : 4
            ("8", "4-8", None),  # 8 : 6
            ("9", "0", None),  # an empty side is for the rules on coverage
        ],
    )
    def test_the_thigh(
        self, findings: Findings, week: Text, more: str, less: str, severity: str | None
    ) -> None:
        for pair in (THIGH, THIGH[::-1]):
            said = findings(week(against(pair, more, less)), self.RULE)
            assert [finding.severity for finding in said] == ([severity] if severity else [])

    @pytest.mark.parametrize(
        "pair",
        [
            ("bench press", "bent-over row"),
            ("overhead press", "lat pulldown"),
            ("barbell curl", "cable pushdown"),
            ("hip abduction machine", "hip adduction machine"),
        ],
    )
    @pytest.mark.parametrize(
        ("more", "less", "said"),
        [
            ("8", "4", 0),
            ("9", "4", 1),
            ("4", "2", 0),
            ("4", "1", 0),
            ("5", "1", 1),
            ("6", "0", 0),  # other rules say what is missing
            ("8-10", "4", 1),
        ],
    )
    def test_other_pairs_are_never_more_than_a_note(
        self, findings: Findings, week: Text, pair: tuple[str, str], more: str, less: str, said: int
    ) -> None:
        for way in (pair, pair[::-1]):
            found = findings(week(against(way, more, less)), self.RULE)
            assert [finding.severity for finding in found] == ["note"] * said

    def test_the_words_of_another_pair(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(
            week({"Push": ["bench press, sets: 6", "seated cable row, sets: 1"]}), self.RULE
        )
        assert finding.counted == "Pressing 6 sets, pulling 1."
        assert finding.wanted == "at most twice as many on one side"
        assert finding.change == "In Push, move 2 sets from bench press to seated cable row."  # 4 : 2

    @pytest.mark.parametrize(
        "line",
        [
            "seated leg curl, sets: 4",
            "Romanian deadlift, sets: 4",
            "Nordic curl, sets: 2-6",
            "good morning, sets: 4",
        ],
    )
    def test_curls_and_hinges_are_both_the_back_of_the_thigh(
        self, findings: Findings, week: Text, line: str
    ) -> None:
        assert findings(week({"Gym": ["leg extension, sets: 6", line]}), self.RULE) == []

    @pytest.mark.parametrize("line", ["hip thrust, sets: 9", "standing calf raise, sets: 9"])
    def test_other_work_is_on_neither_side(self, findings: Findings, week: Text, line: str) -> None:
        (finding,) = findings(
            week({"Gym": ["leg extension, sets: 10", "seated leg curl, sets: 3", line]}), self.RULE
        )
        assert finding.severity == "warning"

    def test_squats_count_at_the_front(self, findings: Findings, week: Text) -> None:
        # cp-squat: squats are not counted as hamstring work (common practice, no source)
        (finding,) = findings(week({"Gym": ["back squat, sets: 9", "seated leg curl, sets: 4"]}), self.RULE)
        assert finding.counted.startswith("Quadriceps side 9 sets")

    def test_a_line_that_does_both_jobs_counts_once(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(
            week({"Gym": ["leg extension, sets: 9", "glute-ham raise, sets: 4"]}), self.RULE
        )
        assert finding.counted.endswith("hamstring side 4.")

    def test_easy_sets_do_not_count(self, findings: Findings, week: Text) -> None:
        assert (
            findings(
                week(
                    {
                        "Gym": [
                            "leg extension, sets: 4",
                            "leg extension, sets: 5, rir: 8",
                            "seated leg curl, sets: 4",
                        ]
                    }
                ),
                self.RULE,
            )
            == []
        )

    @pytest.mark.parametrize(
        ("focus", "said"),
        [("[quadriceps]", 0), ("[hamstrings]", 0), ("[legs]", 1), ("[quads, hams]", 1), ("[chest]", 0)],
    )
    def test_both_sides_must_be_meant(self, findings: Findings, week: Text, focus: str, said: int) -> None:
        assert len(findings(week(against(THIGH, "9", "4"), f"focus: {focus}"), self.RULE)) == said

    @pytest.mark.parametrize(
        ("line", "said"),
        [
            ("the usual, sets: 3", 0),
            ("neck thing, sets: 3", 1),  # no leg curl by its words
            ("lying leg curl, sets: x", 0),
            ("good morning, sets: x", 0),
            ("leg press, sets: x", 1),
        ],
    )
    def test_silent_where_a_line_that_cannot_be_counted_may_even_it_out(
        self, findings: Findings, week: Text, line: str, said: int
    ) -> None:
        lines = [*against(THIGH, "9", "4")["Gym"], line]
        assert len(findings(week({"Gym": lines}), self.RULE)) == said

    @pytest.mark.parametrize("phase", ["taper", "test"])
    def test_no_phase_hides_a_whole_programme(self, findings: Findings, week: Text, phase: str) -> None:
        assert len(findings(week(against(THIGH, "9", "4"), f"phase: {phase}"), self.RULE)) == 1

    def test_silent_in_a_deload(self, findings: Findings) -> None:
        text = (
            "programme: Test\nblocks: [{name: Easy, weeks: 1, deload: true, sessions: [{session: Gym, exercises: "
            "[{exercise: leg extension, sets: 9}, {exercise: seated leg curl, sets: 4}]}]}]\n"
        )
        assert findings(text, self.RULE) == []
        assert len(findings(text.replace(" deload: true,", ""), self.RULE)) == 1

    def test_stands_back_under_rehabilitation(self, findings: Findings, week: Text) -> None:
        assert findings(week(against(THIGH, "9", "4"), REHABILITATION), self.RULE) == []

    def test_weeks_are_drawn_together_with_the_words_of_the_worst(
        self, findings: Findings, week: Text
    ) -> None:
        (finding,) = findings(week(against(THIGH, "{1: 4, 2: 7, 3: 12}", "3"), "weeks: 3"), self.RULE)
        assert finding.weeks == (2, 3)
        assert finding.severity == "warning"
        assert finding.counted.startswith("Quadriceps side 12 sets")

    @pytest.mark.parametrize(("more", "less"), [(9, 4), (12, 6), (7, 4), (20, 1), (15, 9), (11, 7)])
    def test_moving_what_is_advised_is_enough(
        self, findings: Findings, week: Text, more: int, less: int
    ) -> None:
        (finding,) = findings(week(against(THIGH, str(more), str(less))), self.RULE)
        moved = int(finding.change.partition(" move ")[2].split()[0])
        assert findings(week(against(THIGH, str(more - moved), str(less + moved))), self.RULE) == []
        assert (
            len(findings(week(against(THIGH, str(more - moved + 1), str(less + moved - 1))), self.RULE)) == 1
        )


SINGLE = "single-leg leg press"


def sided(left: str, right: str, name: str = SINGLE) -> dict[str, list[str]]:
    """One exercise, its sets on the left and on the right."""
    sides = (("left", left), ("right", right))
    return {"Gym": [f"{name}, sets: {sets}, side: {side}" for side, sets in sides if sets != "0"]}


class TestSidesUneven:
    """No more than a quarter fewer sets on one side: common practice, no source."""

    RULE = "sides-uneven"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week(sided("2", "5", "single-leg lying leg curl"), "weeks: 2"), self.RULE)
        assert (finding.severity, finding.confidence) == ("warning", "common practice")
        assert (finding.place.line, finding.place.excerpt) == (7, "single-leg lying leg curl")
        assert finding.where == "Gym, single-leg lying leg curl"
        assert finding.counted == "Hamstrings: 2 direct sets a week left, 5 right."
        assert finding.wanted == "at most 25 % fewer on one side"
        assert finding.change == ("Add 3 sets on the left, or waive it if it is meant.")
        assert "forecasts no injury" in finding.why
        assert finding.weeks == (1, 2)
        assert [(related.place.line, related.words) for related in finding.related] == [
            (6, "Gym, single-leg lying leg curl: 2 sets"),
            (7, "Gym, single-leg lying leg curl: 5 sets"),
        ]

    def test_groups_that_one_line_makes_uneven_are_one_finding(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week(sided("5", "2")), self.RULE)
        assert finding.place.line == 5
        assert finding.counted == (
            "Quadriceps: 5 direct sets a week left, 2 right; gluteals and adductors too."
        )
        assert finding.change.startswith("Add 3 sets on the right, ")
        assert finding.subject == "quadriceps, gluteals and adductors"

    def test_two_causes_are_two_findings(self, findings: Findings, week: Text) -> None:
        lines = (
            sided("5", "2", "single-leg lying leg curl")["Gym"] + sided("1", "4", "concentration curl")["Gym"]
        )
        said = findings(week({"Gym": lines}), self.RULE)
        assert [finding.place.line for finding in said] == [5, 8]
        assert said[1].counted.startswith("Biceps: 1 direct set a week left, 4 right;")

    @pytest.mark.parametrize(
        ("more", "less", "said"),
        [
            ("4", "3", 0),  # a quarter
            ("8", "6", 0),  # a quarter
            ("7", "5", 1),  # 2 of 7
            ("9", "7", 0),  # 2 of 9
            ("3", "2", 0),  # a third, but one set
            ("3", "1", 1),
            ("2", "0", 1),
            ("1", "0", 0),
            ("3-5", "2", 1),  # middles 4 and 2
            ("3", "1-2", 0),  # middles 3 and 1.5
            ("5", "5", 0),
            ("6-10", "5-6", 1),  # 2.5 of 8
            ("5", "1-4", 1),
            ("7", "2-8", 1),  # 7 and 5
        ],
    )
    def test_edges_on_either_side(
        self, findings: Findings, week: Text, more: str, less: str, said: int
    ) -> None:
        for left, right in ((more, less), (less, more)):
            assert len(findings(week(sided(left, right)), self.RULE)) == said

    def test_the_widest_gap_is_to_be_filled(self, findings: Findings, week: Text) -> None:
        lines = [*sided("6", "1")["Gym"], "single-leg leg extension, sets: 2, side: right"]
        (finding,) = findings(week({"Gym": lines}), self.RULE)
        assert finding.counted == (
            "Gluteals: 6 direct sets a week left, 1 right; adductors and quadriceps too."
        )
        assert finding.change.startswith("Add 5 sets on the right, ")

    def test_work_for_both_sides_counts_for_each(self, findings: Findings, week: Text) -> None:
        lines = sided("4", "2")["Gym"]
        assert len(findings(week({"Gym": lines}), self.RULE)) == 1
        assert findings(week({"Gym": [*lines, "leg press, sets: 4"]}), self.RULE) == []  # 8 and 6

    def test_the_place_is_the_one_sided_line(self, findings: Findings, week: Text) -> None:
        lines = ["leg press, sets: 1", *sided("4", "1")["Gym"]]
        (finding,) = findings(week({"Gym": lines}), self.RULE)
        assert finding.place.line == 6
        assert finding.counted.startswith("Quadriceps: 5 direct sets a week left, 2 right")
        assert [related.place.line for related in finding.related] == [6, 7]

    def test_helping_sets_do_not_count(self, findings: Findings, week: Text) -> None:
        # a one-arm press trains the chest; the triceps only helps in it
        (finding,) = findings(week(sided("4", "0", "one-arm dumbbell bench press")), self.RULE)
        assert finding.subject == "chest"

    def test_easy_sets_do_not_count(self, findings: Findings, week: Text) -> None:
        assert findings(week({"Gym": [f"{SINGLE}, sets: 5, side: left, rir: 6"]}), self.RULE) == []

    @pytest.mark.parametrize(
        ("options", "said"),
        [("{apart: 60}", 0), ("{apart: 59}", 1), ("{fewest apart: 3}", 1), ("{fewest apart: 4}", 0)],
    )
    def test_options(self, findings: Findings, week: Text, options: str, said: int) -> None:
        settings = {"spotline.yaml": f"rules: {{sides-uneven: {options}}}"}  # 5 and 2: 3 sets, 60 %
        found = findings(week(sided("5", "2")), self.RULE, settings)
        assert len(found) == said
        for finding in found:
            assert finding.wanted.startswith("at most 59 %" if "59" in options else "at most 25 %")

    def test_a_team_may_look_at_every_set(self, findings: Findings, week: Text) -> None:
        settings = {"spotline.yaml": "rules: {sides-uneven: {fewest apart: 0}}"}
        assert len(findings(week(sided("3", "2")), self.RULE, settings)) == 1
        assert (
            findings(week({"Gym": ["leg press, sets: 3", "plank, sets: 3, rir: 8"]}), self.RULE, settings)
            == []
        )

    @pytest.mark.parametrize(
        ("line", "said"),
        [
            ("moon walk, sets: 3, side: right", 0),
            ("single-leg leg press, sets: x, side: right", 0),
            ("seated leg curl, sets: x", 1),
        ],
    )
    def test_silent_where_a_line_that_cannot_be_counted_may_even_it_out(
        self, findings: Findings, week: Text, line: str, said: int
    ) -> None:
        assert len(findings(week({"Gym": [*sided("5", "2")["Gym"], line]}), self.RULE)) == said

    @pytest.mark.parametrize(
        ("head", "said"),
        [
            ("focus: [chest]", 0),
            ("focus: [quadriceps]", 1),
            ("phase: taper", 1),
            ("phase: build", 1),
            (REHABILITATION, 0),
        ],
    )
    def test_when_it_stands_back(self, findings: Findings, week: Text, head: str, said: int) -> None:
        found = findings(week(sided("5", "2"), head), self.RULE)
        assert len(found) == said
        if "quadriceps" in head:
            assert found[0].subject == "quadriceps"


class TestTwoLeggedOnly:
    """Some leg work on one leg for sports that load one leg at a time: common practice, no source."""

    RULE = "two-legged-only"
    SPORT = "athlete: {name: A, sport: Field Hockey}"

    def legs(self, week: Text, *lines: str, head: str = SPORT) -> str:
        return week({"Lower": ["back squat, sets: 3", "seated leg curl, sets: 3-4", *lines]}, head)

    def test_the_words(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(self.legs(week, head=self.SPORT + "\nweeks: 3"), self.RULE)
        assert (finding.severity, finding.confidence) == ("note", "common practice")
        assert (finding.place.excerpt, finding.where) == ("back squat", "Lower, back squat")
        assert finding.counted == "6-7 sets of leg work a week for Field Hockey, none on one leg."
        assert finding.wanted == "a set on one leg in the block"
        assert finding.change == "Add split squat or dumbbell split squat to Lower."
        assert "forecasts no injury" in finding.why
        assert finding.weeks == (1, 2, 3)
        assert [related.words for related in finding.related] == [
            "Lower, back squat: 3 sets",
            "Lower, seated leg curl: 3-4 sets",
        ]

    @pytest.mark.parametrize(
        ("sport", "said"),
        [
            ("running", 1),
            ("sprinting", 1),
            ("football", 1),
            ("women's soccer", 1),
            ("Rugby", 1),
            ("basketball", 1),
            ("handball", 1),
            ("netball", 1),
            ("speed skating", 1),
            ("ice hockey", 1),
            ("fencing", 1),
            ("running and throwing", 1),  # rowing is no part of it
            ("rowing", 0),
            ("kayak sprint", 0),
            ("sea-kayaking and sprints", 0),
            ("wheelchair basketball", 0),
            ("weightlifting", 0),
        ],
    )
    def test_which_sports(self, findings: Findings, week: Text, sport: str, said: int) -> None:
        assert len(findings(self.legs(week, head=f"athlete: {{name: A, sport: {sport}}}"), self.RULE)) == said

    @pytest.mark.parametrize("head", ["athlete: {name: A}", "goal: strength"])
    def test_silent_where_no_sport_is_written(self, findings: Findings, week: Text, head: str) -> None:
        assert findings(self.legs(week, head=head), self.RULE) == []

    @pytest.mark.parametrize(("sports", "said"), [("[rowing]", 0), ("[rowing, field]", 1), ("[hockey]", 1)])
    def test_a_team_may_list_its_own(self, findings: Findings, week: Text, sports: str, said: int) -> None:
        settings = {"spotline.yaml": f"rules: {{two-legged-only: {{sports: {sports}}}}}"}
        assert len(findings(self.legs(week), self.RULE, settings)) == said

    @pytest.mark.parametrize(
        ("line", "said"),
        [
            ("split squat, sets: 1", 0),
            ("step-up, sets: 1", 0),
            ("single-leg Romanian deadlift, sets: 1", 0),
            ("single-leg hop, sets: 1", 0),
            ("walking lunge, sets: 1, rir: 8", 0),
            ("leg press, sets: 1, side: each", 0),
            ("leg press, sets: 1, side: left", 0),
            ("leg press, sets: 1", 1),
            ("one-arm dumbbell row, sets: 3, side: each", 1),
            ("moon walk, sets: 1", 1),
            ("split squat, sets: x", 0),
            ("one-arm dumbbell row, sets: x", 1),
        ],
    )
    def test_what_counts_as_one_leg(self, findings: Findings, week: Text, line: str, said: int) -> None:
        assert len(findings(self.legs(week, line), self.RULE)) == said

    @pytest.mark.parametrize(
        "lines",
        [["bench press, sets: 3"], ["back squat, sets: 3, rir: 8"], ["box jump, sets: 3"]],
    )
    def test_silent_where_the_legs_are_not_trained_hard(
        self, findings: Findings, week: Text, lines: list[str]
    ) -> None:
        assert findings(week({"Gym": lines}, self.SPORT), self.RULE) == []

    @pytest.mark.parametrize(
        ("head", "said"),
        [
            ("focus: [chest]", 0),
            ("focus: [legs]", 1),
            ("phase: taper", 1),
            ("phase: test", 1),
            ("phase: in-season", 0),
            (REHABILITATION, 0),
        ],
    )
    def test_when_it_stands_back(self, findings: Findings, week: Text, head: str, said: int) -> None:
        assert len(findings(self.legs(week, head=f"{self.SPORT}\n{head}"), self.RULE)) == said

    def test_the_fullest_week_is_counted(self, findings: Findings, week: Text) -> None:
        text = week({"Lower": ["back squat, sets: {1: 3, 2: 5, 3: 4}"]}, f"{self.SPORT}\nweeks: 3")
        (finding,) = findings(text, self.RULE)
        assert finding.counted.startswith("5 sets")

    def test_the_high_end_decides_which_is_the_fullest(self, findings: Findings, week: Text) -> None:
        text = week({"Lower": ["back squat, sets: {1: 3-4, 2: 2-5}"]}, f"{self.SPORT}\nweeks: 2")
        (finding,) = findings(text, self.RULE)
        assert finding.counted.startswith("2-5 sets")
        block = "  - {{name: B, weeks: 1, sessions: [{{session: Gym, exercises: [{{exercise: {}, sets: {}}}]}}]}}\n"
        blocks = block.format("back squat", "3-4") + block.format("front squat", "2-5")
        (finding,) = findings(f"programme: Test\n{self.SPORT}\nblocks:\n{blocks}", self.RULE)
        assert finding.counted.startswith("2-5 sets")

    def test_one_week_on_one_leg_will_do_for_its_block(self, findings: Findings, week: Text) -> None:
        text = week(
            {"Lower": ["back squat, sets: 3", "split squat, sets: {1: 0, 2: 1}"]}, f"{self.SPORT}\nweeks: 2"
        )
        assert findings(text, self.RULE) == []

    def test_weeks_under_rehabilitation_are_left_out(self, findings: Findings, week: Text) -> None:
        stage = "rehabilitation: {stage: return, advised by: physiotherapist, until: 2026-01-10}"
        text = self.legs(week, head=f"{self.SPORT}\nstarts: 2026-01-05\nweeks: 3\n{stage}")
        (finding,) = findings(text, self.RULE)
        assert finding.weeks == (2, 3)

    def test_blocks_are_judged_each_by_itself_and_said_once(self, findings: Findings) -> None:
        block = (
            "  - {{name: B{name}, weeks: 1, {keys}sessions: [{{session: Gym, exercises: "
            "[{{exercise: {name}, sets: {sets}}}]}}]}}\n"
        )
        head = f"programme: Test\n{self.SPORT}\nblocks:\n"
        first = block.format(name="back squat", sets=3, keys="")
        second = block.format(name="front squat", sets=4, keys="")
        lunges = block.format(name="walking lunge", sets=4, keys="")
        (finding,) = findings(head + first + second, self.RULE)
        assert finding.weeks == (1, 2)
        assert finding.counted.startswith("4 sets")
        assert findings(head + lunges + first, self.RULE) == []  # another block holds some
        easy = block.format(name="front squat", sets=4, keys="deload: true, ")
        (finding,) = findings(head + easy + first, self.RULE)
        assert finding.weeks == (2,)
