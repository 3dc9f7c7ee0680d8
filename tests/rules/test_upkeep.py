"""Rules on upkeep: names that nobody knows, numbers that cannot be meant."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.finding import Finding

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]

REHABILITATION = "rehabilitation: {stage: return, advised by: physiotherapist, until: 2026-12-31}"


class TestExerciseUnknown:
    RULE = "exercise-unknown"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"monday Lower": ["seated leg crul, sets: 3"]}), self.RULE)
        assert (finding.severity, finding.confidence) == ("warning", "fact")
        assert (finding.place.excerpt, finding.where) == ("seated leg crul", "Lower")
        assert (
            finding.counted == "`seated leg crul` is not in the catalogue, so its sets count for no muscle."
        )
        assert finding.change.startswith("Did you mean ")
        assert "seated leg curl" in finding.change
        assert finding.edits[0].words == "seated leg curl"

    @pytest.mark.parametrize(
        "name",
        [
            "back squat",
            "Back Squat",
            "BACK-SQUAT",
            "back squats",
            "backsquat",
            "RDL",
            "Push-ups",
            "push up",
            "farmer's carry",
            "farmers carry",
            "farmer’s carry",
        ],
    )
    def test_names_are_known_however_they_are_written(
        self, findings: Findings, week: Text, name: str
    ) -> None:
        assert findings(week({"Gym": [f'"{name}", sets: 3']}), self.RULE) == []

    @pytest.mark.parametrize(
        ("name", "meant"),
        [
            ("back sqat", "back squat"),
            ("romanian dedlift", "Romanian deadlift"),
            ("bulgarian split", "Bulgarian split squat"),
            ("benchpres", "bench press"),
        ],
    )
    def test_the_nearest_name_is_offered_and_mends_it(
        self, findings: Findings, week: Text, name: str, meant: str
    ) -> None:
        text = week({"Gym": [f"{name}, sets: 3"]})
        (finding,) = findings(text, self.RULE)
        assert 1 <= len(finding.edits) <= 3
        for edit in finding.edits:
            assert findings(text[: edit.place.start] + edit.words + text[edit.place.end :], self.RULE) == []

    def test_nothing_is_offered_for_what_is_like_nothing(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"Gym": ["xyzzy, sets: 3"]}), self.RULE)
        assert (finding.change, finding.edits) == ("Write the exercise's usual name.", ())

    def test_alternatives_are_looked_up_too(self, findings: Findings, week: Text) -> None:
        said = findings(
            week({"Gym": ["leg press, sets: 3, or: [hack sqat, moon walk, front squat]"]}), self.RULE
        )
        assert [finding.place.excerpt for finding in said] == ["hack sqat", "moon walk"]

    def test_each_week_of_a_line_that_changes(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["{1-2: back squat, 3: moon walk, 4: moon walk}, sets: 3"]}, "weeks: 4")
        assert [finding.place.column for finding in findings(text, self.RULE)] == [
            text.splitlines()[-1].index("moon walk") + 1,
            text.splitlines()[-1].rindex("moon walk") + 1,
        ]

    def test_one_finding_for_all_weeks(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"Gym": ["moon walk, sets: {1-2: 3, 3-4: 4}"]}, "weeks: 4"), self.RULE)
        assert finding.place.excerpt == "moon walk"

    def test_it_is_said_under_rehabilitation_too(self, findings: Findings, week: Text) -> None:
        assert len(findings(week({"Gym": ["moon walk, sets: 3"]}, REHABILITATION), self.RULE)) == 1

    def test_a_repeated_line_is_said_where_it_stands(self, findings: Findings) -> None:
        text = (
            "programme: Test\nshared: [&walk {exercise: moon walk, sets: 3}]\nsessions:\n"
            "  - {session: A, exercises: [*walk]}\n  - {session: B, exercises: [*walk]}\n"
        )
        (finding,) = findings(text, self.RULE)
        assert (finding.place.line, [place.excerpt for place in finding.place.through]) == (2, ["*walk"])


class TestAreaUnknown:
    RULE = "area-unknown"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"Gym": ["leg press, sets: 3"]}, "focus: [hamstrigns]"), self.RULE)
        assert (finding.severity, finding.where) == ("warning", "focus")
        assert finding.counted == "`hamstrigns` is no muscle, region or exercise that is known."
        assert finding.change == "Did you mean hamstrings?"
        assert finding.edits[0].words == "hamstrings"

    @pytest.mark.parametrize(
        "word",
        [
            "hams",
            "Hamstrings",
            "legs",
            "lower body",
            "biceps femoris short head",
            "posterior chain",
            "back squat",
            "trunk",
            "glutes",
            "core",
        ],
    )
    def test_words_that_are_known(self, findings: Findings, week: Text, word: str) -> None:
        assert (
            findings(week({"Gym": ["leg press, sets: 3"]}, f"focus: [{word}]\npriority: [{word}]"), self.RULE)
            == []
        )

    @pytest.mark.parametrize(
        ("head", "where"), [("focus: [xyzzy]", "focus"), ("priority: [xyzzy]", "priority")]
    )
    def test_focus_and_priority(self, findings: Findings, week: Text, head: str, where: str) -> None:
        (finding,) = findings(week({"Gym": ["leg press, sets: 3"]}, head), self.RULE)
        assert (finding.where, finding.change, finding.edits) == (
            where,
            "Name a muscle group, a region or a lift.",
            (),
        )

    def test_the_focus_of_a_block(self, findings: Findings) -> None:
        text = "programme: Test\nblocks:\n  - name: One\n    weeks: 1\n    focus: [legs, quadz]\n    sessions: [{session: A, exercises: [{exercise: plank, sets: 1}]}]\n"
        (finding,) = findings(text, self.RULE)
        assert (finding.place.line, finding.place.excerpt) == (5, "quadz")

    def test_every_word_is_said_once(self, findings: Findings, week: Text) -> None:
        said = findings(
            week({"Gym": ["leg press, sets: 3"]}, "focus: [quadz, xyzzy]\npriority: [quadz]\nweeks: 4"),
            self.RULE,
        )
        assert [(finding.place.line, finding.place.excerpt, finding.weeks) for finding in said] == [
            (2, "quadz", ()),
            (2, "xyzzy", ()),
            (3, "quadz", ()),
        ]

    def test_the_nearest_mends_it(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["leg press, sets: 3"]}, "focus: [shoulderz]")
        (finding,) = findings(text, self.RULE)
        edit = finding.edits[0]
        assert findings(text[: edit.place.start] + edit.words + text[edit.place.end :], self.RULE) == []

    def test_it_is_said_under_rehabilitation_too(self, findings: Findings, week: Text) -> None:
        assert (
            len(
                findings(
                    week({"Gym": ["leg press, sets: 3"]}, f"focus: [xyzzy]\n{REHABILITATION}"), self.RULE
                )
            )
            == 1
        )


class TestNumberImplausible:
    """Common practice, no source."""

    RULE = "number-implausible"

    @pytest.mark.parametrize(
        ("words", "place", "counted", "wanted"),
        [
            ("sets: 30", "30", "30 sets in one line.", "at most 12 sets"),
            ("sets: 10-13", "10-13", "10-13 sets in one line.", "at most 12 sets"),
            ("sets: 3, reps: 101", "101", "101 repetitions in one set.", "at most 100 repetitions"),
            ("sets: 3, rest: 9 s", "9 s", "9 s of rest.", "between 10 s and 15 min"),
            ("sets: 3, rest: 20 min", "20 min", "20 min of rest.", "between 10 s and 15 min"),
            ("sets: 3, load: 110 %", "110 %", "110 % of the best lift.", "at most 105 %"),
        ],
    )
    def test_the_words(
        self, findings: Findings, week: Text, words: str, place: str, counted: str, wanted: str
    ) -> None:
        (finding,) = findings(week({"monday Push": [f"bench press, {words}"]}), self.RULE)
        assert (finding.severity, finding.confidence) == ("warning", "common practice")
        assert (finding.place.excerpt, finding.counted, finding.wanted) == (place, counted, wanted)
        assert finding.change == "If it is a slip, correct it."
        assert finding.where.startswith("Push, bench press, ")

    @pytest.mark.parametrize(
        ("words", "said"),
        [
            ("sets: 12", 0),
            ("sets: 13", 1),
            ("sets: 10-12", 0),
            ("sets: 3, reps: 100", 0),
            ("sets: 3, reps: 90-101", 1),
            ("sets: 3, reps: 20/20/101", 1),
            ("sets: 3, reps: 60+60", 1),
            ("sets: 3, reps: amrap", 0),
            ("sets: 3, rest: 10 s", 0),
            ("sets: 3, rest: 5-60 s", 1),
            ("sets: 3, rest: 15 min", 0),
            ("sets: 3, rest: 15.5 min", 1),
            ("sets: 3, rest: 2-16 min", 1),
            ("sets: 3, load: 105 %", 0),
            ("sets: 3, load: 105.5 %", 1),
            ("sets: 3, load: 100-110 %", 1),
            ("sets: 3, load: 90/100/106 %", 1),
            ("sets: 3, load: 300 % bodyweight", 0),  # a share of the body, not of the best lift
            ("sets: 3, load: 900 kg", 0),  # nothing on file to compare with
            ("sets: 30, reps: 500, rest: 2 s, load: 300 %", 4),
            ("every: 30 s, for: 10 min, reps: 3", 0),  # 20 sets against the clock are nothing unusual
        ],
    )
    def test_edges(self, findings: Findings, week: Text, words: str, said: int) -> None:
        assert len(findings(week({"Gym": [f"bench press, {words}"]}), self.RULE)) == said

    @pytest.mark.parametrize(
        "kind",
        [
            "superset: [{member}, {{exercise: pull-up, sets: 3}}]",
            "circuit: {{rounds: 3, exercises: [{member}]}}",
        ],
    )
    def test_no_rest_inside_a_superset_or_circuit_is_usual(self, findings: Findings, kind: str) -> None:
        member = (
            "{exercise: push-up, rest: 0 s}"
            if "circuit" in kind
            else "{exercise: push-up, sets: 3, rest: 0 s}"
        )
        text = (
            "programme: Test\nsessions: [{session: Gym, exercises: [{" + kind.format(member=member) + "}]}]\n"
        )
        assert findings(text, self.RULE) == []

    @pytest.mark.parametrize(
        ("best", "words", "said"),
        [
            ("100 kg", "load: 105 kg", 0),
            ("100 kg", "load: 105.5 kg", 1),
            ("100 kg", "load: 90-106 kg", 1),
            ("100 kg", "load: 250 lb", 1),  # 113 kg
            ("100 kg", "load: 220 lb", 0),  # 99.8 kg
            ("220 lb", "load: 104 kg", 0),  # the best is 99.8 kg, 105 % of it 104.8
            ("220 lb", "load: 105 kg", 1),
            ("2 x 40 kg", "load: 2 x 42 kg", 0),
            ("2 x 40 kg", "load: 2 x 43 kg", 1),
            ("{load: 100 kg, reps: 5}", "reps: 1, load: 110 kg", 0),  # heavier for fewer
            ("{load: 100 kg, reps: 5}", "reps: 5, load: 106 kg", 1),
            ("{load: 100 kg, reps: 5}", "reps: 3-6, load: 106 kg", 0),
            ("{load: 100 kg, reps: 5}", "load: 106 kg", 0),  # nobody knows for how many
            ("{load: 100 kg, reps: 1}", "load: 106 kg", 1),
            ("bodyweight + 10 kg", "load: 40 kg", 0),  # what hung from the body is no load to compare
        ],
    )
    def test_the_best_lift_on_file(
        self, findings: Findings, week: Text, best: str, words: str, said: int
    ) -> None:
        text = week(
            {"Gym": [f"bench press, sets: 3, {words}"]},
            f"athlete: {{name: A, best lifts: {{bench press: {best}}}}}",
        )
        assert len(findings(text, self.RULE)) == said

    def test_the_words_on_a_best_lift(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["bench press, sets: 3, load: 140 kg"]}, "athlete: a.athlete.yaml")
        (finding,) = findings(
            text,
            self.RULE,
            {"a.athlete.yaml": "name: A\nbest lifts:\n  Bench-Press: {load: 90 kg, tested: 2026-01-02}\n"},
        )
        assert finding.counted == "140 kg where the best on file is 90 kg."
        assert finding.wanted == "at most 105 % of it"
        (related,) = finding.related
        assert related.words == "best lift on file: 90 kg"
        assert related.place.text.name.endswith("a.athlete.yaml")
        assert related.place.line == 3

    def test_another_lift_is_no_measure(self, findings: Findings, week: Text) -> None:
        text = week(
            {"Gym": ["bench press, sets: 3, load: 140 kg"]},
            "athlete: {name: A, best lifts: {overhead press: 60 kg}}",
        )
        assert findings(text, self.RULE) == []

    def test_one_finding_for_all_weeks_with_the_same_slip(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(
            week({"Gym": ["bench press, sets: 30, reps: {1-3: 5, 4: 3}"]}, "weeks: 4"), self.RULE
        )
        assert finding.weeks == (1, 2, 3, 4)

    def test_only_the_week_of_the_slip(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"Gym": ["bench press, sets: {1-3: 3, 4: 30}"]}, "weeks: 4"), self.RULE)
        assert (finding.weeks, finding.place.excerpt) == ((4,), "30")

    def test_unknown_exercises_are_looked_at_too(self, findings: Findings, week: Text) -> None:
        assert len(findings(week({"Gym": ["moon walk, sets: 30"]}), self.RULE)) == 1

    def test_a_slip_is_a_slip_under_rehabilitation(self, findings: Findings, week: Text) -> None:
        assert len(findings(week({"Gym": ["heel drop, sets: 30"]}, REHABILITATION), self.RULE)) == 1


class TestUnitsMixed:
    """Common practice, no source. A pound is 0.45359237 kg exactly (from memory)."""

    RULE = "units-mixed"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        text = week(
            {
                "monday Push": [
                    "bench press, sets: 3, load: 60 kg",
                    "overhead press, sets: 3, load: 40 kg",
                    "dip, sets: 3, load: bodyweight + 25 lb",
                ]
            }
        )
        (finding,) = findings(text, self.RULE)
        assert (finding.severity, finding.place.excerpt, finding.where) == (
            "warning",
            "bodyweight + 25 lb",
            "Push, dip",
        )
        assert finding.counted == "bodyweight + 25 lb in lb, the other loads in kg."
        assert finding.wanted == "one unit throughout"
        assert finding.change.startswith("Write it in kg (1 lb is 0.45 kg)")

    @pytest.mark.parametrize(
        ("loads", "places"),
        [
            (["60 kg", "40 kg"], []),
            (["135 lb", "95 lb"], []),
            (["60 kg", "95 lb", "40 kg"], ["95 lb"]),
            (["135 lb", "40 kg", "95 lb"], ["40 kg"]),  # the rarer one
            (["60 kg", "2 x 50 lb", "40 kg", "95 lb", "20 kg"], ["2 x 50 lb"]),  # one finding, at the first
            (["60 kg", "80 %", "bodyweight", "10RM", "red band", "pin 7"], []),
            (["80 %", "95 lb"], []),
        ],
    )
    def test_which_line(self, findings: Findings, week: Text, loads: list[str], places: list[str]) -> None:
        said = findings(week({"Gym": [f"bench press, sets: 3, load: {load}" for load in loads]}), self.RULE)
        assert [finding.place.excerpt for finding in said] == places

    def test_the_others_are_named(self, findings: Findings, week: Text) -> None:
        loads = ["60 kg", "95 lb", "40 kg", "135 lb", "20 kg"]
        (finding,) = findings(
            week({"Gym": [f"bench press, sets: 3, load: {load}" for load in loads]}), self.RULE
        )
        assert finding.counted == "95 lb and 135 lb in lb, the other loads in kg."
        assert [related.place.excerpt for related in finding.related] == ["135 lb"]

    def test_over_the_weeks_of_a_line(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(
            week({"Gym": ["bench press, sets: 3, load: {1-2: 60 kg, 3: 62.5 kg, 4: 140 lb}"]}, "weeks: 4"),
            self.RULE,
        )
        assert (finding.place.excerpt, finding.weeks) == ("140 lb", ())

    def test_unknown_exercises_are_looked_at_too(self, findings: Findings, week: Text) -> None:
        assert (
            len(
                findings(
                    week({"Gym": ["moon walk, sets: 3, load: 60 kg", "bench press, sets: 3, load: 95 lb"]}),
                    self.RULE,
                )
            )
            == 1
        )

    def test_so_is_rehabilitation(self, findings: Findings, week: Text) -> None:
        text = week(
            {"Gym": ["heel drop, sets: 3, load: 10 kg", "heel drop, sets: 3, load: 20 lb"]}, REHABILITATION
        )
        assert len(findings(text, self.RULE)) == 1
