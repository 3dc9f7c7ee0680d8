"""Equipment that is not there: what it is taken for, what is surely missing, and how it is said."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.findings.finding import Finding

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]


class TestEquipmentMissing:
    RULE = "equipment-missing"

    def one(self, findings: Findings, week: Text, has: str, *lines: str, rules: str = "") -> Finding:
        text = week(
            {"Gym": [f"{line}, sets: 3" for line in lines]}, f"athlete: {{name: Ida, equipment: [{has}]}}"
        )
        (finding,) = findings(text, self.RULE, {"spotline.yaml": rules} if rules else None)
        return finding

    @pytest.mark.parametrize(
        ("has", "lines", "severity"),
        [
            ("band", ["incline push-up"], None),  # any seat does
            ("band", ["incline push-up", "leg press"], "note"),  # no seat is a leg press
            ("band", ["leg press", "incline push-up"], "note"),
            (
                "dumbbells",
                ["dumbbell bench press"],
                "note",
            ),  # with weights in the hands a chair will not do
            ("band", ["hanging leg curl"], None),  # a bar to hang from is not written
            ("band", ["feet-elevated plank"], None),
            ("band", ["feet-elevated inverted row"], None),  # what it takes is not written
        ],
    )
    def test_a_seat_may_be_meant_for_a_bench_where_the_body_alone_is_moved(
        self, findings: Findings, week: Text, has: str, lines: list[str], severity: str | None
    ) -> None:
        head = f"athlete: {{name: Ida, equipment: [{has}]}}"
        found = findings(week({"Gym": [f"{line}, sets: 3" for line in lines]}, head), self.RULE)
        assert [one.severity for one in found] == ([severity] if severity else [])

    @pytest.mark.parametrize(
        ("line", "said"),
        [
            ("walking lunge", False),
            ("walking lunge, load: bodyweight", False),
            ("dumbbell walking lunge", True),
            ("kettlebell walking lunge", True),
            ("sandbag walking lunge", True),
            ("walking lunge, load: heavy", False),
            ("walking lunge, load: bodyweight + 1 kg", False),
            ("walking lunge, load: bodyweight + 0/5/10 kg", False),
            ("walking lunge, load: 2 x 8 kg", False),
            ("barbell lunge", True),
            ("front-rack reverse lunge", True),
            ("overhead walking lunge", False),
            ("lateral raise", False),  # with the band
            ("lateral raise, load: 2 x 8 kg", False),
        ],
    )
    def test_a_lunge_without_a_load_is_one_without_weights(
        self, findings: Findings, week: Text, line: str, said: bool
    ) -> None:
        text = week({"Gym": [f"{line}, sets: 3"]}, "athlete: {name: Ida, equipment: [band]}")
        assert bool(findings(text, self.RULE)) is said

    @pytest.mark.parametrize(
        ("line", "said"),
        [
            ("standing calf raise", False),
            ("standing calf raise, load: bodyweight", False),
            ("standing calf raise, load: 40 kg", True),
            ("standing leg curl", False),
            ("seated calf raise", True),  # nobody does it seated without a machine
            ("ski ergometer", True),  # a chin-up works the same joint, but nobody stands at it
        ],
    )
    def test_on_a_step_or_with_the_body_alone_where_that_is_usual(
        self, findings: Findings, week: Text, line: str, said: bool
    ) -> None:
        text = week({"Gym": [f"{line}, sets: 3, reps: 12"]}, "athlete: {name: Ida, equipment: [band]}")
        assert bool(findings(text, self.RULE)) is said

    @pytest.mark.parametrize(
        ("lines", "more"),
        [
            (["barbell back squat", "leg press", "sled push"], False),
            (["barbell back squat", "leg press", "sled push", "cable curl"], True),
        ],
    )
    def test_three_pieces_are_named_at_most(
        self, findings: Findings, week: Text, lines: list[str], more: bool
    ) -> None:
        counted = self.one(findings, week, "band", *lines).counted
        assert counted.startswith(
            "No barbell for back squat; no leg press machine for leg press; no sled for sled push"
        )
        assert counted.endswith("sled push; and more." if more else "sled push.")

    @pytest.mark.parametrize(
        ("lines", "swaps"),
        [
            (["barbell back squat"], "Swap back squat for goblet squat or dumbbell squat, or write"),
            (["barbell back squat", "leg press"], "Swap back squat for goblet squat or dumbbell squat and swap 1 more, or"),
        ],
    )  # fmt: skip
    def test_how_many_to_swap(self, findings: Findings, week: Text, lines: list[str], swaps: str) -> None:
        assert self.one(findings, week, "dumbbells", *lines).change.startswith(swaps)

    def test_the_edit_swaps_every_line(self, findings: Findings, week: Text) -> None:
        finding = self.one(findings, week, "dumbbells", "barbell back squat", "barbell curl")
        first = finding.edits[0]
        assert {edit.words for edit in (first, *first.parts)} >= {"goblet squat", "dumbbell curl"}

    def test_another_spelling_is_told_by_the_usual_name(self, findings: Findings, week: Text) -> None:
        assert self.one(findings, week, "mat", "barbell RDL").counted == "No barbell for Romanian deadlift."

    @pytest.mark.parametrize(
        ("has", "line", "said"),
        [
            ("dumbbells", "Romanian deadlift, load: 2 x 14 kg", False),
            ("dumbbells", "Romanian deadlift, load: 60 kg", False),
            ("dumbbells", "Romanian deadlift, load: 70 %", False),
            ("dumbbells", "barbell Romanian deadlift", True),  # the name says the bar
            ("kettlebells", "deadlift, load: 24 kg", False),
            ("dumbbells", "dumbbell shoulder press", False),  # standing up
            ("dumbbells", "seated dumbbell shoulder press", False),
            ("dumbbells", "incline dumbbell press", False),
            ("bands", "shoulder press", False),
            ("bands", "curl, load: red band", False),
            ("bands", "curl, load: 12 kg", False),
            ("bands, step", "reverse lunge, load: green band", False),
            ("mat", "reverse lunge, load: green band", False),
            ("bands, mat", "mini-band glute bridge", False),
            ("bands, mat", "band hip thrust, load: black band", False),  # on any seat
            ("bands", "leg press", True),
            ("dumbbells", "bench press, load: 2 x 20 kg", True),  # no bench either
            ("dumbbells, bench", "bench press, load: 2 x 20 kg", False),
            ("suspension trainer", "row", False),
            ("suspension trainer", "leg curl, note: on the straps", False),
            ("kettlebells", "hip thrust, load: 24 kg", False),  # on any seat
            ("ankle weights, chairs", "leg extension, load: 1 kg", False),
            ("ankle weights, chairs", "leg extension, load: 20 kg", True),
            ("barbell, rack", "landmine press, load: 30 kg", False),
            ("barbell, rack", "goblet squat", False),
        ],
    )
    def test_another_form_that_the_name_allows_takes_what_is_there(
        self, findings: Findings, week: Text, has: str, line: str, said: bool
    ) -> None:
        text = week({"Gym": [f"{line}, sets: 3, reps: 8"]}, f"athlete: {{name: Ida, equipment: [{has}]}}")
        assert bool(findings(text, self.RULE)) is said

    @pytest.mark.parametrize(
        ("has", "line", "severity"),
        [
            ("bands", "leg curl", None),
            ("bands", "lying leg curl machine", "note"),
            ("bands", "leg curl, load: 30 kg", None),
            ("dumbbells", "leg press", "note"),
        ],
    )
    def test_a_machines_lift_may_be_done_with_a_band(
        self, findings: Findings, week: Text, has: str, line: str, severity: str | None
    ) -> None:
        text = week({"Gym": [f"{line}, sets: 3, reps: 8"]}, f"athlete: {{name: Ida, equipment: [{has}]}}")
        assert [one.severity for one in findings(text, self.RULE)] == ([severity] if severity else [])

    def test_where_nothing_is_offered_a_line_says_what_it_takes_and_no_more(
        self, findings: Findings, week: Text
    ) -> None:
        none = "rules: {equipment-missing: {offered: 0}}\n"
        finding = self.one(findings, week, "dumbbells", "barbell back squat", "barbell curl", rules=none)
        assert [one.words for one in finding.related] == ["Gym, barbell curl: takes barbell too"]

    def test_the_weeks_in_which_a_session_is_somewhere_else(self, findings: Findings, week: Text) -> None:
        head = (
            "weeks: 4\nathlete: {name: Ida, equipment: [full gym], places: {hotel: [dumbbells]}}\n"
            "where: {2+4: hotel}"
        )
        text = week(
            {"monday A": ["barbell back squat, sets: 3"], "friday B": ["goblet squat, sets: 3"]}, head
        )
        (finding,) = findings(text, self.RULE)
        assert (finding.counted, finding.weeks) == ("At hotel: no barbell for back squat.", (2, 4))
        assert finding.subject == "barbell at hotel"

    def test_where_no_place_is_said_it_holds_throughout(self, findings: Findings, week: Text) -> None:
        head = "weeks: 4\nathlete: {name: Ida, equipment: [dumbbells]}"
        (finding,) = findings(week({"Gym": ["barbell back squat, sets: 3"]}, head), self.RULE)
        assert (finding.weeks, finding.subject) == ((), "barbell")

    def test_one_session_of_the_week_at_a_place_is_enough(self, findings: Findings, week: Text) -> None:
        head = (
            "weeks: 2\nathlete: {name: Ida, equipment: [full gym], places: {hotel: [dumbbells]}}\n"
            "where: {friday: hotel}"
        )
        text = week(
            {"monday A": ["barbell back squat, sets: 3"], "friday B": ["barbell back squat, sets: 3"]}, head
        )
        (finding,) = findings(text, self.RULE)
        assert (finding.where, finding.weeks) == ("B, barbell back squat", (1, 2))
        assert finding.change.endswith("write barbell under `hotel`.")

    @pytest.mark.parametrize(
        ("line", "severity"),
        [
            ("dumbbell row, note: with the rucksack", None),
            ("inverted row, note: under the table", None),
            ("barbell back squat, note: with the rucksack", None),
            ("barbell back squat", "note"),
            ("leg press, note: with the rucksack", "note"),
        ],
    )
    def test_what_a_note_says_may_stand_in(
        self, findings: Findings, week: Text, line: str, severity: str | None
    ) -> None:
        text = week({"Home": [f"{line}, sets: 3"]}, "athlete: {name: Ida, equipment: [mat]}")
        assert [one.severity for one in findings(text, self.RULE)] == ([severity] if severity else [])
