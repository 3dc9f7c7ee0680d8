"""Rules on upkeep: names that nobody knows, numbers that cannot be meant."""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest

from spotline.lint.findings.finding import Finding
from spotline.lint.project.results import Review
from spotline.lint.project.review import review

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
            ("bulgarain split", "Bulgarian split squat"),
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
        assert finding.edits == ()
        assert finding.change == ("Write its usual name, or teach it: `our names: {xyzzy: EXERCISE}`.")

    def test_alternatives_are_looked_up_too(self, findings: Findings, week: Text) -> None:
        said = findings(
            week({"Gym": ["leg press, sets: 3, or: [hack sqat, moon walk, front squat]"]}), self.RULE
        )
        assert [finding.place.excerpt for finding in said] == ["hack sqat", "moon walk"]

    def test_each_week_of_a_line_that_changes(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["{1-2: back squat, 3: moon walk, 4: moon walk}, sets: 3"]}, "weeks: 4")
        (finding,) = findings(text, self.RULE)
        assert [place.column for place in (finding.place, *(one.place for one in finding.related))] == [
            text.splitlines()[-1].index("moon walk") + 1,
            text.splitlines()[-1].rindex("moon walk") + 1,
        ]

    def test_one_name_on_several_lines_is_one_finding(self, findings: Findings, week: Text) -> None:
        lines = {"A": ["moon walk, sets: 1", "back squat, sets: 9"], "B": ["Moon-walks, sets: 1", "sun walk"]}
        first, second = findings(week(lines), self.RULE)
        assert (first.place.excerpt, first.where) == ("moon walk", "A")
        assert [(one.place.excerpt, one.words) for one in first.related] == [
            ("Moon-walks", "B: `Moon-walks`")
        ]
        assert (second.place.excerpt, second.related) == ("sun walk", ())

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

    @pytest.mark.parametrize(
        ("name", "head", "severity"),
        [
            ("seated leg crul", "", "warning"),
            ("dumbell bench pres", "", "warning"),
            ("the usual", "", "note"),
            ("incline fly zigzag", "", "note"),
            ("squat + press + jump", "", "note"),
            ("the usual", "athlete: {name: Ida, protect: [{area: knee, advised by: coach}]}", "warning"),
        ],
    )
    def test_a_warning_where_it_is_a_slip_or_something_is_to_be_spared(
        self, findings: Findings, week: Text, name: str, head: str, severity: str
    ) -> None:
        (finding,) = findings(week({"Gym": [f"{name}, sets: 3"]}, head), self.RULE)
        assert finding.severity == severity

    def test_what_is_to_be_spared_is_named(self, findings: Findings, week: Text) -> None:
        head = "athlete: {name: Ida, protect: [{area: knee, advised by: coach}, {area: elbow, advised by: coach}]}"
        (finding,) = findings(week({"Gym": ["the usual, sets: 3"]}, head), self.RULE)
        assert finding.counted == (
            "`the usual` is not in the catalogue, so it counts for no muscle and cannot be checked"
            " against `knee` and `elbow`."
        )

    def test_two_lifts_in_one_name_are_told_apart(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"Gym": ["RDL to bent row, sets: 3"]}), self.RULE)
        assert finding.counted == "`RDL to bent row` names several lifts, so its sets count for no muscle."
        assert finding.change == (
            "Write a line for each: Romanian deadlift and bent-over row; or a complex, as `reps: 1+1`."
        )
        assert finding.edits == ()

    @pytest.mark.parametrize(
        ("name", "taught"),
        [
            ("incline fly zigzag", "our names: {incline fly zigzag: incline dumbbell fly}"),
            ("Drill #3, Mike's", "our names: {'Drill #3, Mike''s': EXERCISE}"),
            (
                "the usual " * 20,
                "our names: {'the usual the usual the usual the usual the usual the usu...': EXERCISE}",
            ),
        ],
    )
    def test_how_to_teach_a_name_is_said_in_a_line(
        self, findings: Findings, week: Text, name: str, taught: str
    ) -> None:
        (finding,) = findings(week({"Gym": [f'"{name.strip()}", sets: 3']}), self.RULE)
        assert finding.change.endswith(f"teach it: `{taught}`.")
        assert len(finding.change) < 250

    def test_nothing_above_the_athletes_level_is_offered(self, findings: Findings, week: Text) -> None:
        for level, offered in (("novice", False), ("advanced", True)):
            head = f"athlete: {{name: Ida, level: {level}}}"
            (finding,) = findings(week({"Gym": ["muscle-up zigzag, sets: 3"]}, head), self.RULE)
            assert ("muscle-up" in [edit.words for edit in finding.edits]) is offered


class TestAMuscleForAName:
    RULE = "exercise-unknown"

    @pytest.mark.parametrize(
        ("name", "muscle"),
        [
            ("triceps", "triceps"),
            ("abs", "abs"),
            ("Biceps work", "biceps"),
            ("glutes (your choice)", "glutes"),
            ("upper back, any machine", "upper back"),
        ],
    )
    def test_names_and_a_free_choice_are_offered(
        self, findings: Findings, week: Text, name: str, muscle: str
    ) -> None:
        text = week({"Gym": [f'"{name}", sets: 3, reps: 12, rpe: 7-8']}, "weeks: 2")
        (finding,) = findings(text, self.RULE)
        assert finding.severity == "note"
        assert finding.counted == f"`{name}` names no exercise, so its sets are not counted."
        assert re.fullmatch(
            rf"Name one, such as [\w -]+, or write `own choice: {re.escape(name)}` to leave it free.",
            finding.change,
        )
        free, *named = finding.edits
        assert free.words == (
            f"{{own choice: \"{name}\", minutes: 6, trains: [{muscle}], note: 'sets 3; reps 12; rpe 7-8'}}"
        )
        for edit in (free, *named):
            assert findings(text[: edit.place.start] + edit.words + text[edit.place.end :], self.RULE) == []
        assert named

    @pytest.mark.parametrize("name", ["triceps kickboxing", "the usual", "work", "any", "xyzzy biceps"])
    def test_not_where_the_name_says_more_or_less(self, findings: Findings, week: Text, name: str) -> None:
        (finding,) = findings(week({"Gym": [f"{name}, sets: 3"]}), self.RULE)
        assert "own choice" not in finding.change

    def test_nothing_of_the_line_is_lost(self, findings: Findings, week: Text) -> None:
        line = "triceps, in weeks: 1-3, sets: {1-2: 3, 3: 5}, rest: 90 s, note: 'don''t lock out'"
        (finding,) = findings(week({"Gym": [line]}, "weeks: 4"), self.RULE)
        assert finding.edits[0].words == (
            "{own choice: triceps, in weeks: 1-3, minutes: 10, trains: [triceps],"
            " note: 'sets {1-2: 3, 3: 5}; rest 90 s; don''t lock out'}"
        )

    def test_a_line_of_a_circuit_or_of_several_rows_keeps_its_form(self, findings: Findings) -> None:
        head = "programme: Test\nsessions:\n  - session: Gym\n    exercises:\n"
        for lines in (
            "      - circuit: {rounds: 3, exercises: [{exercise: triceps, reps: 8}, {exercise: plank}]}\n",
            "      - exercise: triceps\n        sets: 3\n",
        ):
            (finding,) = findings(head + lines, self.RULE)
            assert all("own choice" not in edit.words for edit in finding.edits)

    def test_what_is_spared_still_cannot_be_checked(self, findings: Findings, week: Text) -> None:
        head = "athlete: {name: Ida, protect: [{area: elbow, advised by: coach}]}"
        (finding,) = findings(week({"Gym": ["triceps, sets: 3"]}, head), self.RULE)
        assert finding.severity == "warning"
        assert finding.counted == (
            "`triceps` names no exercise, so it counts for no muscle and cannot be checked against `elbow`."
        )
        assert "pushdown" not in finding.change


class TestSetsNotRead:
    RULE = "sets-not-read"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["back squat, sets: 5", "the usual, sets: {1: 2, 2: 3}"]}, "weeks: 3")
        (finding,) = findings(text.replace("2: 3}", "2: 3, 3: 1}"), self.RULE)
        assert (finding.severity, finding.place.excerpt, finding.weeks) == ("warning", "the usual", (1, 2))
        assert finding.counted == "3 of 8 sets not read: the usual is not known."
        assert finding.wanted == "at most 25 % of a week's sets, none at 80 % or more"
        assert [one.words for one in finding.related] == [
            "exercise-unknown, too: `the usual` is not in the catalogue, so its sets count for no muscle.",
            "Gym, the usual: 3 sets",
        ]

    def test_what_is_said_of_each_name_is_listed(self, findings: Findings, week: Text) -> None:
        gym = [
            "the usual, sets: 3, in weeks: 1",
            "the rest, sets: 2, in weeks: 2",
            "tackle, sets: 1, load: 60 % of sled",
        ]
        (finding,) = findings(week({"Gym": gym}, "weeks: 2"), self.RULE)
        assert finding.counted == "4 of 4 sets not read: the usual and tackle are not known."
        assert {(one.rule, one.place.excerpt) for one in finding.follows} == {
            ("exercise-unknown", "the usual"),
            ("exercise-unknown", "the rest"),
            ("exercise-unknown", "tackle"),
            ("lift-of-load-unknown", "60 % of sled"),
        }
        assert [one.share for one in finding.related if one.words == "in other weeks"] == [(0, 0)]

    def test_a_squad_is_told_once(self, findings: Findings, week: Text) -> None:
        head = (
            "athletes: [{athlete: {name: Ida}, adjust: [{exercise: plank, sets: 2}]}, {athlete: {name: Ulf}}]"
        )
        text = week({"Gym": ["the usual, sets: 3", "plank, sets: 1"]}, head)
        (finding,) = findings(text, self.RULE)
        assert finding.athletes == ()

    @pytest.mark.parametrize(
        ("line", "said"),
        [
            ("the usual, sets: 1", 0),  # 1 of 4
            ("the usual, sets: 2", 1),
            ("the usual, sets: 1-2", 1),
            ("the usual, sets: 1, load: 80 %", 1),
            ("the usual, sets: 1, load: 79 %", 0),
            ("the usual, sets: 0", 0),
            ("back sqat, sets: 9", 0),  # a slip is said by itself
            ("leg press, sets: 9", 0),
            ("quarry drill, sets: 2, load: 85-90 %", 1),
        ],
    )
    def test_how_much_is_too_much(self, findings: Findings, week: Text, line: str, said: int) -> None:
        assert len(findings(week({"Gym": ["back squat, sets: 3", line]}), self.RULE)) == said

    @pytest.mark.parametrize(("limits", "said"), [("{share: 70}", 0), ("{share: 60}", 1)])
    def test_a_team_may_move_it(self, findings: Findings, week: Text, limits: str, said: int) -> None:
        text = week({"Gym": ["back squat, sets: 1", "the usual, sets: 2"]})
        assert (
            len(findings(text, self.RULE, {"spotline.yaml": f"rules: {{sets-not-read: {limits}}}"})) == said
        )


class TestARestAsAnExercise:
    RULE = "exercise-unknown"

    @pytest.mark.parametrize("name", ["rest", "repos", "Pause", "1 min rest", "rest (full minute)"])
    def test_it_is_told_how_a_rest_is_written(self, findings: Findings, week: Text, name: str) -> None:
        (finding,) = findings(week({"Gym": [f'"{name}", sets: 3, reps: 1']}), self.RULE)
        assert finding.severity == "note"
        assert "`rest: 60 s`" in finding.change
        assert "our names" not in finding.change

    @pytest.mark.parametrize("name", ["restful thing", "minute station"])
    def test_other_names_are_taught(self, findings: Findings, week: Text, name: str) -> None:
        (finding,) = findings(week({"Gym": [f'"{name}", sets: 3, reps: 1']}), self.RULE)
        assert "our names" in finding.change


class TestAreaUnknown:
    RULE = "area-unknown"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"Gym": ["leg press, sets: 3"]}, "focus: [hamstrigns]"), self.RULE)
        assert (finding.severity, finding.where) == ("warning", "focus")
        assert finding.counted == "`hamstrigns` is no muscle, region or exercise that is known."
        assert finding.change == "Did you mean hamstrings?"
        assert finding.edits[0].words == "hamstrings"

    @pytest.mark.parametrize(
        ("word", "severity"),
        [("lgs", "warning"), ("left hamstrng", "warning"), ("footwork", "note"), ("left knee", "note")],
    )
    def test_what_is_no_slip_is_a_note(
        self, findings: Findings, week: Text, word: str, severity: str
    ) -> None:
        (finding,) = findings(week({"Gym": ["leg press, sets: 3"]}, f"focus: [{word}]"), self.RULE)
        assert finding.severity == severity

    @pytest.mark.parametrize("key", ["focus", "priority", "maintain", "not trained"])
    @pytest.mark.parametrize(
        "word", ["right arm", "left shoulder", "shoulder left", '"calves (right)"', "L quad", "both legs"]
    )
    def test_a_side_beside_an_area_is_read(self, findings: Findings, week: Text, key: str, word: str) -> None:
        assert not findings(week({"Gym": ["leg press, sets: 3"]}, f"{key}: [{word}]"), self.RULE)

    def test_what_an_activity_loads(self, findings: Findings) -> None:
        text = (
            "programme: A\nsessions:\n  - activity: match\n    day: friday\n"
            "    loads: {left leg: high, thumbs: low}\n"
        )
        (finding,) = findings(text, self.RULE)
        assert (finding.where, finding.place.excerpt) == ("match", "thumbs")

    def test_a_side_is_meant_where_rules_look(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["leg press, sets: 3"]}, "focus: [KEY]")
        told = [findings(text.replace("KEY", one), "region-untrained") for one in ("left arm", "arms")]
        assert [len(one) for one in told] == [1, 1]

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
            ("sets: 3, load: 110 %", 0),  # more-reps-than-load-allows says so
            ("sets: 3, load: 300 % bodyweight", 0),  # a share of the body, not of the best lift
            ("sets: 3, load: 900 kg", 0),  # nothing on file to compare with
            ("sets: 30, reps: 500, rest: 2 s", 3),
            ("every: 30 s, for: 10 min, reps: 3", 0),  # 20 sets against the clock are nothing unusual
        ],
    )
    def test_edges(self, findings: Findings, week: Text, words: str, said: int) -> None:
        assert len(findings(week({"Gym": [f"bench press, {words}"]}), self.RULE)) == said

    @pytest.mark.parametrize(
        ("words", "alike"),
        [
            ("sets: {1-3: 3, 4: 30}", "; 3 in other weeks"),
            ("sets: {1: 30, 2: 4, 3-4: 3}", "; 3 to 4 in other weeks"),
            ("sets: {1: 3, other: 30}", "; 3 in other weeks"),
            ("work: [{sets: 3, reps: 8}, {sets: 30, reps: 8}]", ""),  # other sets of the same weeks
        ],
    )
    def test_what_other_weeks_hold(self, findings: Findings, week: Text, words: str, alike: str) -> None:
        (finding,) = findings(week({"Gym": [f"bench press, {words}"]}, "weeks: 4"), self.RULE)
        assert finding.counted == f"30 sets in one line{alike}."

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
            ("100 kg", "load: bodyweight + 140 kg", 0),
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
        assert finding.counted == "bodyweight + 25 lb, the other loads in kg."
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
        assert finding.counted == "95 lb and 135 lb, the other loads in kg."
        assert [related.place.excerpt for related in finding.related] == ["135 lb"]

    def test_the_first_four_are_named(self, findings: Findings, week: Text) -> None:
        loads = [f"{mass} lb" for mass in range(95, 100)] + [f"{mass} kg" for mass in range(50, 56)]
        (finding,) = findings(
            week({"Gym": [f"bench press, sets: 3, load: {load}" for load in loads]}), self.RULE
        )
        assert finding.counted == "95 lb, 96 lb, 97 lb and 2 more, the other loads in kg."
        assert len(finding.related) == 4

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


RUN = {"spotline.yaml": "rules: {exercise-by-alias: run}\n"}
IDA = {"ida.athlete.yaml": "name: Ida\n"}
GYM = {"Gym": ["plank, sets: 3"]}


def limits(rule: str, words: str) -> dict[str, str]:
    return {"spotline.yaml": f"rules: {{{rule}: {{{words}}}}}\n"}


def mended(text: str, finding: Finding, edit: int = 0) -> str:
    """The text with one of a finding's edits made."""
    change = finding.edits[edit]
    return text[: change.place.start] + change.words + text[change.place.end :]


@pytest.fixture
def filed(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Callable[..., list[Finding]]:
    """The findings of a rule on all files of a repository, by their names."""

    def run(files: dict[str, str], rule: str, asked: str = ".") -> list[Finding]:
        (tmp_path / ".git").mkdir(exist_ok=True)
        monkeypatch.chdir(tmp_path)
        for name, content in files.items():
            (tmp_path / name).write_text(content, encoding="utf-8")
        whole = review([asked], date(2026, 1, 5))
        assert not [fault.words for one in whole.files for fault in one.faults]
        return [finding for one in whole.files for finding in one.findings if finding.rule == rule]

    return run


class TestExerciseUnknownInAdjustments:
    RULE = "exercise-unknown"

    def test_a_swap_is_looked_up_too(self, findings: Findings, week: Text) -> None:
        head = (
            "athletes:\n  - {name: Bo}\n  - athlete: {name: Ida}\n"
            "    adjust: [{exercise: leg press, swap: hack sqat}, {exercise: leg press, sets: 2}]"
        )
        (finding,) = findings(week({"Gym": ["leg press, sets: 3"]}, head), self.RULE)
        assert (finding.place.line, finding.place.excerpt) == (5, "hack sqat")
        assert finding.where == "adjust, leg press"
        assert finding.athletes == ("Ida",)
        assert finding.counted.startswith("`hack sqat` is not in the catalogue")
        assert finding.edits[0].words == "hack squat"


class TestExerciseByAlias:
    RULE = "exercise-by-alias"

    def test_off_until_asked_for(self, findings: Findings, week: Text) -> None:
        assert findings(week({"Gym": ["RDL, sets: 3"]}), self.RULE) == []

    def test_the_words(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["RDL, sets: 3"]})
        (finding,) = findings(text, self.RULE, RUN)
        assert (finding.severity, finding.place.excerpt, finding.where) == ("note", "RDL", "Gym")
        assert finding.counted == "`RDL` is another word for Romanian deadlift."
        assert finding.wanted == "one name throughout"
        assert finding.change == "Write Romanian deadlift."
        assert [(one.words, one.label) for one in finding.edits] == [
            ("Romanian deadlift", "write Romanian deadlift")
        ]
        assert finding.edits[0].certain  # two names of one lift
        assert findings(mended(text, finding), self.RULE, RUN) == []

    @pytest.mark.parametrize(
        ("name", "said"),
        [
            ("Romanian deadlift", 0),
            ("romanian Deadlifts", 0),
            ("Romanian dead-lift", 0),
            ("BB deadlift", 1),
            ('"Romanian deadlift, paused"', 0),  # the coach's wording is fine
            ('"BB RDL w/ straps"', 0),
            ("moon walk", 0),  # another rule's business
        ],
    )
    def test_spelling_is_not_minded(self, findings: Findings, week: Text, name: str, said: int) -> None:
        assert len(findings(week({"Gym": [f"{name}, sets: 3"]}), self.RULE, RUN)) == said

    def test_alternatives_and_swaps(self, findings: Findings, week: Text) -> None:
        head = "athletes: [{athlete: {name: Ida}, adjust: [{exercise: plank, swap: RDL}]}]"
        text = week({"Gym": ["plank, sets: 3, or: [DL]"]}, head)
        assert [one.place.excerpt for one in findings(text, self.RULE, RUN)] == ["RDL", "DL"]


class TestLiftUnknown:
    RULE = "lift-unknown"

    def test_the_words(self, filed: Callable[..., list[Finding]]) -> None:
        text = "name: Ida\nbest lifts:\n  back sqat: 80 kg\n  leg press: 90 kg\n  xyzzy: 5 kg\n"
        first, second = filed({"ida.athlete.yaml": text}, self.RULE)
        assert (first.severity, first.confidence) == ("warning", "fact")
        assert (first.place.line, first.place.excerpt, first.where) == (3, "back sqat", "Ida, best lifts")
        assert first.counted == "`back sqat` is not in the catalogue, so this best lift is used for no load."
        assert first.change.startswith("Did you mean back squat")
        assert (second.place.excerpt, second.change, second.edits) == (
            "xyzzy",
            "Write the exercise's usual name.",
            (),
        )
        (left,) = filed({"ida.athlete.yaml": mended(text, first)}, self.RULE)
        assert left.place.excerpt == "xyzzy"

    @pytest.mark.parametrize("name", ["back squat", "Back-Squats", "RDL"])
    def test_known_by_any_name(self, filed: Callable[..., list[Finding]], name: str) -> None:
        assert filed({"ida.athlete.yaml": f"name: Ida\nbest lifts: {{{name}: 80 kg}}\n"}, self.RULE) == []

    def test_an_exercise_of_the_teams_own(self, filed: Callable[..., list[Finding]]) -> None:
        files = {
            "ida.athlete.yaml": "name: Ida\nbest lifts: {pier hinge: 80 kg}\n",
            "own.exercises.yaml": "exercises: [{name: pier hinge, implement: sandbag, path: {hip: [90, 0], knee: 15}}]\n",
        }
        assert len(filed(files, self.RULE)) == 1
        assert filed({**files, "spotline.yaml": "exercises: [own.exercises.yaml]\n"}, self.RULE) == []


class TestAdjustmentUnmatched:
    RULE = "adjustment-unmatched"

    def squad(self, *adjusted: str) -> str:
        adjust = "".join(f"\n      - {{exercise: {one}, sets: 2}}" for one in adjusted)
        return f"athletes:\n  - {{name: Bo}}\n  - athlete: {{name: Ida}}\n    adjust:{adjust}"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["back squat, sets: 3", "bench press, sets: 3"]}, self.squad("back sqat"))
        (finding,) = findings(text, self.RULE)
        assert (finding.severity, finding.confidence) == ("warning", "fact")
        assert (finding.place.line, finding.place.excerpt) == (6, "back sqat")
        assert finding.where == "adjust, back sqat"
        assert finding.athletes == ("Ida",)
        assert finding.counted == "No line of this programme is called `back sqat`, so nothing is adjusted."
        assert finding.wanted == "an exercise that the programme has"
        assert finding.change == "Did you mean back squat?"
        assert findings(mended(text, finding), self.RULE) == []

    def test_nothing_near(self, findings: Findings, week: Text) -> None:
        lines = [f"{name}, sets: 3" for name in ("plank", "dip", "back squat", "leg press", "side plank")]
        (finding,) = findings(week({"Gym": lines}, self.squad("xyzzy")), self.RULE)
        assert finding.change == "Name one of its lines: plank, dip, back squat and leg press."
        assert [edit.words for edit in finding.edits] == ["plank", "dip", "back squat", "leg press"]

    @pytest.mark.parametrize(
        ("line", "adjusted", "said"),
        [
            ("back squat, sets: 3", "Back-Squats", 0),
            ("RDL, sets: 3", "Romanian deadlift", 0),
            ("moon walk, sets: 3", "Moon-Walks", 0),  # nobody knows it, but it is the same word
            ("moon walk, sets: 3", "mars walk", 1),
            ("back squat, sets: 3", "front squat", 1),
            ("back squat, sets: 3, or: [front squat]", "front squat", 1),  # no line of its own
            ("{1: back squat, 2: front squat}, sets: 3", "front squat", 0),
        ],
    )
    def test_what_matches(self, findings: Findings, week: Text, line: str, adjusted: str, said: int) -> None:
        text = week({"Gym": [line]}, f"weeks: 2\n{self.squad(adjusted)}")
        assert len(findings(text, self.RULE)) == said

    @pytest.mark.parametrize(
        ("names", "change"),
        [
            (["box squat"], "Did you mean box squat?"),
            (["box squat", "pin squat"], "Did you mean box squat or pin squat?"),
            (["box squat", "pin squat", "hack squat"], "Did you mean box squat, pin squat or hack squat?"),
            (
                ["box squat", "pin squat", "hack squat", "belt squat"],
                "Did you mean box squat, pin squat or belt squat?",
            ),
        ],
    )
    def test_up_to_three_are_offered(
        self, findings: Findings, week: Text, names: list[str], change: str
    ) -> None:
        text = week({"Gym": [f"{name}, sets: 3" for name in names]}, self.squad("squat"))
        (finding,) = findings(text, self.RULE)
        assert finding.change == change
        assert len(finding.edits) == min(len(names), 3)

    def test_an_adjustment_of_nothing_is_said_already(self, findings: Findings, week: Text) -> None:
        head = "athletes: [{athlete: {name: Ida}, adjust: [{sets: 2}]}]"
        assert findings(week({"Gym": ["plank, sets: 3"]}, head), self.RULE) == []

    def test_each_one(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["plank, sets: 3"]}, self.squad("dip", "plank", "leg press"))
        assert [one.place.excerpt for one in findings(text, self.RULE)] == ["dip", "leg press"]


class TestExerciseTwice:
    """Common practice, no source."""

    RULE = "exercise-twice"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        text = week(
            {
                "monday Lower": [
                    "leg press, sets: 3",
                    "plank, sets: 3",
                    "Leg-Press, sets: 2",
                    "leg press, sets: 1",
                ]
            },
            "weeks: 4",
        )
        (finding,) = findings(text, self.RULE)
        assert (finding.severity, finding.confidence) == ("note", "common practice")
        assert (finding.place.line, finding.place.excerpt) == (9, "Leg-Press")
        assert finding.where == "Lower, Leg-Press"
        assert finding.counted == "Leg-Press on 3 lines of this session with the same load and effort."
        assert finding.wanted == "one line, or lines that differ"
        assert finding.change == ("Put all sets on one line, or write what differs.")
        assert [(one.place.line, one.words) for one in finding.related] == [
            (7, "Lower, leg press"),
            (10, "Lower, leg press"),
        ]
        assert finding.weeks == (1, 2, 3, 4)

    @pytest.mark.parametrize(
        ("first", "second", "said"),
        [
            ("leg press, sets: 3", "leg press, sets: 3", 1),
            ("leg press, sets: 3", "leg extension, sets: 3", 0),
            ("moon walk, sets: 3", "Moon-Walk, sets: 3", 1),
            ("leg press, sets: 3, reps: 8", "leg press, sets: 3, reps: 12", 1),  # both light
            ("leg press, sets: 3, reps: 7", "leg press, sets: 3, reps: 8", 0),
            ("leg press, sets: 3, reps: 8", "leg press, sets: 3", 0),
            ("leg press, sets: 3, load: 80 %", "leg press, sets: 3, load: 80 %", 1),
            ("leg press, sets: 3, load: 80 %", "leg press, sets: 3, load: 70 %", 0),
            ("leg press, sets: 3, rir: 2", "leg press, sets: 3, rpe: 8", 1),  # the same effort
            ("leg press, sets: 3, rir: 2", "leg press, sets: 3, rir: 3", 0),
            ("leg press, sets: 3, tempo: 3-0-X-0", "leg press, sets: 3, tempo: 3-0-X-0", 1),
            ("leg press, sets: 3, tempo: 3-0-X-0", "leg press, sets: 3", 0),
            ("leg press, sets: 3, side: left", "leg press, sets: 3, side: right", 0),
            ("leg press, sets: 3, side: left", "leg press, sets: 3, side: left", 1),
            ("leg press, sets: 1, method: drop set", "leg press, sets: 3", 0),
            ("plank, sets: 1, hold: 30 s", "plank, sets: 1, hold: 60 s", 0),
            ("plank, sets: 1, hold: 30 s", "plank, sets: 1, hold: 30 s", 1),
            ("farmer's carry, sets: 1, distance: 20 m", "farmer's carry, sets: 1, distance: 40 m", 0),
            ("leg press, sets: 3", "leg press, sets: {1: 0}", 0),
            ("leg press, sets: {1: 0}", "leg press, sets: 3", 0),
            ("leg press, work: [{sets: 1}, {sets: 2}]", "leg press, sets: 3", 0),
            ("leg press, sets: 3", "leg press, work: [{sets: 1}, {sets: 2}]", 0),
            ("leg press, work: [{sets: 1}]", "leg press, sets: 3", 1),
            ("bench press, sets: 3", "flat bench press, sets: 3", 1),  # two names of one lift
            # what stands beside the name says what differs
            ("rowing machine test, sets: 1, reps: 1", "rowing machine easy, sets: 1, reps: 1", 0),
            ("squat, sets: 3", '"squat, light", sets: 3', 0),
            ('"squat, light", sets: 3', "Squat (light), sets: 3", 1),
            ("leg press, sets: 1, reps: 1, test: 1RM", "leg press, sets: 1, reps: 1", 0),
        ],
    )
    def test_lines_that_read_alike(
        self, findings: Findings, week: Text, first: str, second: str, said: int
    ) -> None:
        assert len(findings(week({"Gym": [first, second]}), self.RULE)) == said

    def test_two_sessions_of_a_day_are_two(self, findings: Findings, week: Text) -> None:
        text = week({"monday A": ["leg press, sets: 3"], "monday B": ["leg press, sets: 3"]})
        assert findings(text, self.RULE) == []

    @pytest.mark.parametrize(
        "item",
        [
            "{superset: [{exercise: plank, sets: 3}, {exercise: leg press, sets: 3}]}",
            "{circuit: {rounds: 3, exercises: [{exercise: leg press}]}}",
        ],
    )
    def test_supersets_and_circuits_are_left_alone(self, findings: Findings, item: str) -> None:
        for items in (
            f"{item}, {{exercise: leg press, sets: 3}}",
            f"{{exercise: leg press, sets: 3}}, {item}",
        ):
            text = f"programme: Test\nsessions: [{{session: A, exercises: [{items}]}}]\n"
            assert findings(text, self.RULE) == []

    def test_one_finding_an_exercise(self, findings: Findings, week: Text) -> None:
        lines = ["dip, sets: 3", "leg press, sets: 3", "leg press, sets: 3", "dip, sets: 3"]
        said = findings(week({"Gym": lines}), self.RULE)
        assert [(one.place.line, one.place.excerpt) for one in said] == [(7, "leg press"), (8, "dip")]


class TestSessionEmpty:
    RULE = "session-empty"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        text = week(
            {"A": ["plank, sets: {1-4: 0}", "dip, sets: {1-3: 0, 4: 0}"], "B": ["dip, sets: 3"]}, "weeks: 4"
        )
        (finding,) = findings(text, self.RULE)
        assert (finding.severity, finding.confidence) == ("warning", "common practice")
        assert (finding.place.excerpt, finding.where) == ("A", "A")
        assert finding.counted == "A has no work set in any week."
        assert finding.wanted == "at least one work set"
        assert finding.change == "Add its work, or take the session out."

    @pytest.mark.parametrize(
        "line",
        [
            "plank, sets: {1-3: 2, 4: 0}",
            "plank, in weeks: 1-3, sets: 2",
            "plank, sets: {1-4: 0}, note: as she likes",
            "plank, test: longest hold",
        ],
    )
    def test_what_is_left_out_in_some_weeks_is_the_coachs_word(
        self, findings: Findings, week: Text, line: str
    ) -> None:
        assert findings(week({"A": [line], "B": ["dip, sets: 3"]}, "weeks: 4"), self.RULE) == []
        assert findings(week({"A": [line]}, "weeks: 4"), self.RULE) == []

    @pytest.mark.parametrize(
        ("line", "said"),
        [
            ("intervals: rowing machine, rounds: 4, distance: 500 m", 0),
            ("intervals: bike, rounds: 4, on: 60 s", 0),
            ("own choice: mobility, minutes: 20", 0),
            ("intervals: bike, in weeks: 1, rounds: 4, on: 60 s", 0),
        ],
    )
    def test_work_that_counts_no_sets_is_work(self, findings: Findings, line: str, said: int) -> None:
        other = "  - {session: B, exercises: [{exercise: dip, sets: 3}]}"
        text = f"programme: Test\nweeks: 2\nsessions:\n  - {{session: A, exercises: [{{{line}}}]}}\n{other}\n"
        assert len(findings(text, self.RULE)) == said

    def test_sessions_of_two_blocks_are_two(self, findings: Findings) -> None:
        block = "  - {{name: {name}, weeks: 1, sessions: [{{session: {name}, exercises: [{{exercise: plank, sets: {{1: 0}}}}]}}]}}\n"
        text = "programme: Test\nblocks:\n" + block.format(name="A") + block.format(name="B")
        assert [one.place.excerpt for one in findings(text, self.RULE)] == ["A", "B"]

    @pytest.mark.parametrize(
        ("line", "said"),
        [
            ("plank, sets: {1: 0}", 1),
            ("plank, sets: {1: 0-1}", 0),
            ("plank, sets: 1", 0),
            ("plank, sets: many", 0),  # what it holds nobody can read
            ("moon walk, sets: {1: 0}", 1),
            ("moon walk, sets: 1", 0),
        ],
    )
    def test_sets_left(self, findings: Findings, week: Text, line: str, said: int) -> None:
        assert len(findings(week({"A": [line], "B": ["dip, sets: 3"]}), self.RULE)) == said
        assert len(findings(week({"A": [line]}), self.RULE)) == said

    def test_what_cannot_be_read_may_hold_some(self, findings: Findings, week: Text) -> None:
        assert findings(week({"A": ["plank, sets: many", "dip, sets: {1: 0}"]}), self.RULE) == []

    def test_no_sessions_at_all(self, findings: Findings) -> None:
        assert findings("programme: Test\nsessions: []\n", self.RULE) == []

    def test_one_line_is_enough(self, findings: Findings, week: Text) -> None:
        assert findings(week({"A": ["plank, sets: {1: 0}", "dip, sets: 1"]}), self.RULE) == []

    def test_a_session_without_lines_is_said_already(self, findings: Findings) -> None:
        text = "programme: Test\nsessions: [{session: A, exercises: []}, {session: B, exercises: [{exercise: dip, sets: 3}]}]\n"
        assert findings(text, self.RULE) == []

    def test_a_week_of_activities_is_no_empty_week(self, findings: Findings) -> None:
        text = (
            "programme: Test\nsessions:\n  - {session: A, exercises: [{exercise: plank, sets: {1: 0}}]}\n"
            "  - {activity: run, day: monday}\n"
        )
        (finding,) = findings(text, self.RULE)
        assert finding.counted == "A has no work set in any week."
        assert findings("programme: Test\nsessions: [{activity: run, day: monday}]\n", self.RULE) == []

    def test_a_repeated_session_is_said_once(self, findings: Findings) -> None:
        text = (
            "programme: Test\nsessions:\n"
            "  - {session: A, day: [monday, friday], exercises: [{exercise: plank, sets: {1: 0}}]}\n"
            "  - {session: B, exercises: [{exercise: plank, sets: 1}]}\n"
        )
        assert len(findings(text, self.RULE)) == 1

    def test_what_is_left_out_for_one_athlete(self, findings: Findings, week: Text) -> None:
        head = "athletes: [{name: Bo}, {athlete: {name: Ida}, adjust: [{exercise: plank, leave out: true}]}]"
        assert findings(week({"A": ["plank, sets: 3"], "B": ["dip, sets: 3"]}, head), self.RULE) == []


class TestEquipmentMissing:
    RULE = "equipment-missing"

    @pytest.mark.parametrize(
        ("name", "equipment", "said"),
        [
            ("dumbbell wrist curl", "dumbbells, bench", 0),
            ("barbell wrist curl", "dumbbells, bench", 1),
            ("dumbbell sumo deadlift", "dumbbells", 0),
            ("good morning (dumbbells)", "dumbbells", 0),
            ("good morning", "dumbbells", 0),  # with those
            ("Bulgarian split squat, barbell", "dumbbells, bench", 1),
            ("bodyweight hip thrust", "bench", 0),
            ("barbell hip thrust", "bench", 1),
            ("squat, Smith machine", "barbell, rack", 1),
            ("squat, Smith machine", "guided bar", 0),
            ("sled drag", "sled", 0),
            ("sled drag", "harness", 1),
        ],
    )
    def test_a_name_takes_the_implement_that_it_states(
        self, findings: Findings, week: Text, name: str, equipment: str, said: int
    ) -> None:
        text = week({"Gym": [f'"{name}", sets: 3']}, self.head(equipment))
        assert len(findings(text, self.RULE)) == said

    def test_an_alternative_may_be_the_same_lift_with_another_implement(
        self, findings: Findings, week: Text
    ) -> None:
        line = '"wrist curl", sets: 3, or: [dumbbell wrist curl]'
        assert findings(week({"Gym": [line]}, self.head("dumbbells, bench")), self.RULE) == []

    def test_the_coachs_name_is_said_where_it_states_another_implement(
        self, findings: Findings, week: Text
    ) -> None:
        text = week({"Gym": ['"good morning (dumbbells)", sets: 3']}, self.head("barbell"))
        (finding,) = findings(text, self.RULE)
        assert finding.counted.startswith("No dumbbell for good morning (dumbbells).")

    def head(self, equipment: str) -> str:
        return f"athlete: {{name: Ida, equipment: [{equipment}]}}"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        text = week(
            {
                "monday A": [
                    "goblet squat, sets: 3",
                    "barbell back squat, sets: 3",
                    "elbow-crook squat, sets: 3",
                ],
                "friday B": ["barbell back squat, sets: 2", "barbell curl, sets: 2"],
            },
            self.head("dumbbells, bench"),
        )
        (found,) = findings(text, self.RULE)
        assert (found.severity, found.confidence, found.weeks) == ("note", "fact", ())
        assert (found.place.line, found.place.excerpt, found.where) == (
            8,
            "barbell back squat",
            "A, barbell back squat",
        )
        assert found.counted == ("No barbell for back squat and barbell curl.")
        assert found.wanted == "exercises for what is there"
        assert found.change == (
            "Swap back squat for goblet squat or dumbbell squat and swap 1 more, or write barbell"
            " under `equipment`."
        )
        assert [(one.place.line, one.words) for one in found.related] == [
            (13, "B, barbell back squat: takes barbell too; swap it for goblet squat or dumbbell squat"),
            (14, ("B, barbell curl: takes barbell too; swap it for dumbbell curl or incline dumbbell curl")),
        ]

    def test_nothing_where_the_list_has_what_nobody_knows(self, findings: Findings, week: Text) -> None:
        text = week({"A": ["barbell back squat, sets: 3"]}, self.head("dumbbells, flux coil"))
        assert findings(text, self.RULE) == []

    def test_what_is_akin_where_nothing_is_alike(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"Gym": ["leg press, sets: 3"]}, self.head("kettlebell")), self.RULE)
        assert finding.counted.startswith("No leg press machine for leg press.")
        assert finding.change == (
            "Swap leg press for dumbbell squat or goblet squat, or write leg press machine under `equipment`."
        )

    @pytest.mark.parametrize(
        ("equipment", "line", "said"),
        [
            ("barbell, rack", "barbell back squat, sets: 3", 0),
            ("barbell", "barbell back squat, sets: 3", 0),
            ("full gym", "barbell back squat, sets: 3", 0),
            ("band", "push-up, sets: 3", 0),
            ("band", "step-up, sets: 3", 0),  # without a load it is one without weights
            ("band", "step-up, sets: 3, load: 10 kg", 0),
            ("band", "dumbbell step-up, sets: 3", 1),
            ("band", "DB walking lunge, sets: 3", 1),
            ("band", "walking lunge, sets: 3", 0),
            ("band", "moon walk, sets: 3", 0),
            ("band", "barbell back squat, sets: {1: 0}", 0),
            ("band", "barbell back squat, sets: 0-1", 1),
            ("band", "barbell back squat, sets: 3, or: [banded squat]", 0),
            ("band", "barbell back squat, sets: 3, or: [front squat]", 1),
            ("band", "barbell back squat, sets: 3, or: [moon walk]", 1),
            ("band", "barbell back squat, sets: 3, or: [front squat, banded squat]", 0),
        ],
    )
    def test_what_is_missing(
        self, findings: Findings, week: Text, equipment: str, line: str, said: int
    ) -> None:
        assert len(findings(week({"Gym": [line]}, self.head(equipment)), self.RULE)) == said

    def test_nothing_listed(self, findings: Findings, week: Text) -> None:
        assert findings(week({"Gym": ["barbell back squat, sets: 3"]}), self.RULE) == []
        assert (
            findings(week({"Gym": ["barbell back squat, sets: 3"]}, "athlete: {name: Ida}"), self.RULE) == []
        )

    def test_the_teams_sets_are_spelled_out(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["barbell back squat, sets: 3"]}, self.head("home"))
        sets = {"spotline.yaml": "equipment: {home: [barbell, Squat Rack], shed: [band]}\n"}
        assert findings(text, self.RULE, sets) == []
        assert len(findings(text.replace("home", "shed"), self.RULE, sets)) == 1

    def test_for_one_athlete_of_several(self, findings: Findings, week: Text) -> None:
        head = "athletes: [{name: Bo}, {name: Ida, equipment: [band]}]"
        (finding,) = findings(week({"Gym": ["barbell back squat, sets: 3"]}, head), self.RULE)
        assert finding.athletes == ("Ida",)
        assert finding.counted.startswith("No barbell for back squat")

    @pytest.mark.parametrize(
        ("others", "said"), [("[full gym]", 0), ("[barbell, rack]", 0), ("[dumbbell]", 1)]
    )
    def test_who_trains_together_shares_what_there_is(
        self, findings: Findings, week: Text, others: str, said: int
    ) -> None:
        head = f"athletes: [{{name: Bo, equipment: {others}}}, {{name: Ida, equipment: [band]}}]"
        found = findings(week({"Gym": ["barbell back squat, sets: 3"]}, head), self.RULE)
        assert len(found) == said

    def test_a_swap_that_is_missing_and_one_that_is_not(self, findings: Findings, week: Text) -> None:
        head = (
            "athletes: [{{athlete: {{name: Ida, equipment: [band]}},"
            " adjust: [{{exercise: barbell back squat, swap: {swap}}}]}}]"
        )
        lines = {"Gym": ["barbell back squat, sets: 3"]}
        (finding,) = findings(week(lines, head.format(swap="dumbbell squat")), self.RULE)
        assert finding.place.excerpt == "dumbbell squat"
        assert findings(week(lines, head.format(swap="banded squat")), self.RULE) == []

    def test_what_is_always_there_can_be_moved(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["floor press, sets: 3", "barbell back squat, sets: 3"]}, self.head("band"))
        always = limits(self.RULE, "always there: [barbell, rack]")
        assert [one.place.excerpt for one in findings(text, self.RULE, always)] == ["floor press"]

    @pytest.mark.parametrize(
        ("offered", "swaps"),
        [
            (1, "Swap back squat for goblet squat, or write"),
            (3, "Swap back squat for goblet squat or dumbbell squat or "),
            (0, "Nothing else does the same work here: leave it out, or write"),
        ],
    )
    def test_how_many_are_offered_can_be_moved(
        self, findings: Findings, week: Text, offered: int, swaps: str
    ) -> None:
        text = week({"Gym": ["barbell back squat, sets: 3"]}, self.head("dumbbell"))
        (finding,) = findings(text, self.RULE, limits(self.RULE, f"offered: {offered}"))
        assert finding.change.startswith(swaps)


class TestEquipmentUnknown:
    RULE = "equipment-unknown"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["plank, sets: 3"]}, "athlete: {name: Ida, equipment: [band, dumbels]}")
        (finding,) = findings(text, self.RULE)
        assert (finding.severity, finding.place.excerpt, finding.where) == (
            "note",
            "dumbels",
            "Ida, equipment",
        )
        assert finding.counted == "`dumbels` is no equipment that is known, so no exercise counts on it."
        assert finding.change.startswith("Did you mean dumbbell")
        assert findings(mended(text, finding), self.RULE) == []

    @pytest.mark.parametrize(
        ("item", "said"),
        [
            ("flux capacitor", 0),  # like nothing that is known
            ("hovercraft", 0),
            ("kettelbells", 1),
            ("calf raise machine", 0),
            ("airbike", 0),
            ("trapbar", 0),
            ("leg curl machine", 0),
            ("home", 0),  # a set of the team
            ("belt", 0),
            ("bodyweight", 0),
        ],
    )
    def test_which_words(self, findings: Findings, week: Text, item: str, said: int) -> None:
        text = week({"Gym": ["plank, sets: 3"]}, f"athlete: {{name: Ida, equipment: [{item}]}}")
        found = findings(text, self.RULE, {"spotline.yaml": "equipment: {home: [band]}\n"})
        assert len(found) == said
        assert all(one.change.startswith("Did you mean kettlebell") for one in found)

    @pytest.mark.parametrize(
        ("settings", "excerpt", "change"),
        [
            ("equipment: {home: [band, dumbels]}", "dumbels", "Did you mean dumbbell"),
            ("stations: {rack: 2, warp drive: 1}", "warp drive", "Write its usual name, or take it out."),
            ("equipment: {home: [calf raise machine]}", "", ""),
        ],
    )
    def test_words_of_the_teams_settings(
        self, reviewed: Callable[..., Review], week: Text, settings: str, excerpt: str, change: str
    ) -> None:
        result = reviewed(week({"Gym": ["plank, sets: 3"]}), {"spotline.yaml": f"{settings}\n"})
        said = [one for one in result.files[0].team.findings if one.rule == self.RULE]
        assert [one.place.excerpt for one in said] == [excerpt] * bool(excerpt)
        assert all(one.severity == "note" and one.change.startswith(change) for one in said)


class TestRoomTooSmall:
    """Common practice, no source."""

    RULE = "room-too-small"

    def room(self, together: int = 4, stations: str = "rack: 1", more: str = "") -> dict[str, str]:
        return {"spotline.yaml": f"stations: {{{stations}}}\ntraining together: {together}\n{more}"}

    def superset(self, *names: str) -> str:
        members = ", ".join(f"{{exercise: {name}, sets: 3}}" for name in names)
        return f"programme: Test\nsessions: [{{session: A, exercises: [{{superset: [{members}]}}]}}]\n"

    def circuit(self, *names: str) -> str:
        members = ", ".join(f"{{exercise: {name}}}" for name in names)
        return f"programme: Test\nsessions: [{{session: A, exercises: [{{circuit: {{rounds: 3, exercises: [{members}]}}}}]}}]\n"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        text = week(
            {"monday A": ["plank, sets: 3", "back squat, sets: 3"], "friday B": ["front squat, sets: 3"]},
            "weeks: 4",
        )
        (finding,) = findings(text, self.RULE, self.room(8, "rack: 2"))
        assert (finding.severity, finding.confidence) == ("note", "common practice")
        assert (finding.place.excerpt, finding.where) == ("back squat", "A, back squat")
        assert finding.counted == "8 at a time need the rack for back squat; the room has 2."
        assert finding.wanted == "at most 3 to a station in straight sets"
        assert finding.change == ("Start groups on other lines, or choose work without the rack.")
        assert finding.weeks == (1, 2, 3, 4)

    def test_the_words_on_a_superset(self, findings: Findings) -> None:
        text = self.superset("back squat", "plank", "overhead press")
        (finding,) = findings(text, self.RULE, self.room(3))
        assert finding.counted == (
            "3 at a time need the rack for back squat and overhead press; the room has 1."
        )
        assert finding.wanted == "at most 2 to a station in supersets"
        assert [one.words for one in finding.related] == ["A, overhead press needs it too"]

    def test_the_words_on_a_circuit(self, findings: Findings) -> None:
        (finding,) = findings(self.circuit("back squat", "plank", "dip"), self.RULE, self.room(4))
        assert finding.counted == "2 at a time need the rack for back squat; the room has 1."
        assert finding.wanted == "at most 1 to a station in circuits"

    @pytest.mark.parametrize(
        ("together", "stations", "said"),
        [
            (3, "rack: 1", 0),
            (4, "rack: 1", 1),
            (6, "rack: 2", 0),
            (7, "rack: 2", 1),
            (4, "squat racks: 1", 1),
            (4, "rack: 1, barbell: 1", 2),
            (4, "rack: 1, bench: 1", 1),
            (4, "bench: 1", 0),
            (40, "leg press: 1", 0),
        ],
    )
    def test_straight_sets(
        self, findings: Findings, week: Text, together: int, stations: str, said: int
    ) -> None:
        text = week({"Gym": ["back squat, sets: 3"]})
        assert len(findings(text, self.RULE, self.room(together, stations))) == said

    @pytest.mark.parametrize(
        ("names", "together", "said"),
        [
            (["back squat", "plank"], 2, 0),
            (["back squat", "plank"], 3, 1),
            (["plank", "dip"], 30, 0),
            (["moon walk", "plank"], 30, 0),
        ],
    )
    def test_supersets(self, findings: Findings, names: list[str], together: int, said: int) -> None:
        assert len(findings(self.superset(*names), self.RULE, self.room(together))) == said

    @pytest.mark.parametrize(
        ("others", "together", "said"),
        [(0, 1, 0), (0, 2, 1), (1, 2, 0), (1, 3, 1), (3, 4, 0), (3, 5, 1)],
    )
    def test_circuits(self, findings: Findings, others: int, together: int, said: int) -> None:
        text = self.circuit("back squat", *["plank", "dip", "push-up"][:others])
        assert len(findings(text, self.RULE, self.room(together))) == said

    def test_two_supersets_are_two(self, findings: Findings) -> None:
        pair = "{superset: [{exercise: back squat, sets: 3}, {exercise: plank, sets: 3}]}"
        text = f"programme: Test\nsessions: [{{session: A, exercises: [{pair}, {pair}]}}]\n"
        (finding,) = findings(text, self.RULE, self.room(3))  # the rack is one thing to say
        assert [one.words for one in finding.related] == ["A, back squat: here too"]

    def test_two_lines_come_one_after_the_other(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(
            week({"Gym": ["back squat, sets: 3", "elbow-crook squat, sets: 3"]}), self.RULE, self.room()
        )
        assert finding.counted.startswith("4 at a time need the rack for back squat;")
        assert finding.related == ()

    def test_groups_of_sets_are_one_line(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["back squat, work: [{sets: 1}, {sets: 2}]"]})
        (finding,) = findings(text, self.RULE, self.room())
        assert finding.counted.startswith("4 at a time need the rack for back squat;")

    def test_sets_of_none(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["back squat, sets: {1: 0}", "plank, sets: 1"]})
        assert findings(text, self.RULE, self.room()) == []

    def test_the_worst_session_speaks(self, findings: Findings) -> None:
        text = (
            "programme: Test\nsessions:\n  - {session: A, exercises: [{exercise: back squat, sets: 3}]}\n"
            "  - session: B\n    exercises: [{superset: [{exercise: front squat, sets: 3}, {exercise: plank, sets: 3}]}]\n"
        )
        (finding,) = findings(text, self.RULE, self.room(4))
        assert finding.place.excerpt == "front squat"

    @pytest.mark.parametrize("settings", ["stations: {rack: 1}\n", "training together: 40\n", ""])
    def test_a_room_that_is_not_described(self, findings: Findings, week: Text, settings: str) -> None:
        files = {"spotline.yaml": settings} if settings else {}
        assert findings(week({"Gym": ["back squat, sets: 3"]}), self.RULE, files) == []

    @pytest.mark.parametrize(
        ("option", "text", "together"),
        [
            ("straight sets", "{exercise: back squat, sets: 3}", 2),
            ("superset", "{superset: [{exercise: back squat, sets: 3}, {exercise: plank, sets: 3}]}", 5),
            ("circuit", "{circuit: {rounds: 2, exercises: [{exercise: back squat}]}}", 5),
        ],
    )
    def test_how_many_share_can_be_moved(
        self, findings: Findings, option: str, text: str, together: int
    ) -> None:
        text = f"programme: Test\nsessions: [{{session: A, exercises: [{text}]}}]\n"
        for share, said in ((together - 1, 1), (together, 0)):
            files = self.room(together, more=f"rules: {{{self.RULE}: {{{option}: {share}}}}}\n")
            assert len(findings(text, self.RULE, files)) == said

    def test_a_squad_is_told_once(self, findings: Findings, week: Text) -> None:
        head = "athletes: [{name: Ida}, {name: Bo}]"
        (finding,) = findings(week({"Gym": ["back squat, sets: 3"]}, head), self.RULE, self.room())
        assert finding.counted.startswith("4 at a time")


class TestProgrammesOverlap:
    RULE = "programmes-overlap"

    def plan(self, name: str, head: str, athlete: str = "athlete: ida.athlete.yaml") -> dict[str, str]:
        text = f"programme: {name}\n{athlete}\n{head}\nsessions: [{{session: A, exercises: [{{exercise: plank, sets: 1}}]}}]\n"
        return {f"{name.lower()}.programme.yaml": text}

    def test_the_words(self, filed: Callable[..., list[Finding]]) -> None:
        files = {
            **IDA,
            **self.plan("Winter", "starts: 2026-02-02\nweeks: 4"),
            **self.plan("Autumn", "starts: 2026-01-05\nweeks: 5"),
        }
        (finding,) = filed(files, self.RULE)
        assert (finding.severity, finding.confidence) == ("warning", "fact")
        assert finding.place.text.name == "winter.programme.yaml"
        assert (finding.place.line, finding.place.excerpt, finding.where) == (3, "2026-02-02", "starts")
        assert finding.counted == ("Winter starts on 2026-02-02, but Autumn runs until 2026-02-08.")
        assert finding.wanted == "one programme at a time"
        assert finding.change == ("Start it on 2026-02-09, end the other sooner, or merge the two.")
        (related,) = finding.related
        assert (related.place.text.name, related.place.excerpt) == ("autumn.programme.yaml", "2026-01-05")
        assert related.words == "Autumn starts here"

    @pytest.mark.parametrize(
        ("starts", "said"),
        [
            ("2026-01-05", 1),
            ("2026-02-08", 1),
            ("2026-02-09", 0),
            ("2026-03-01", 0),
            ("2025-12-02", 1),
            ("2025-12-01", 0),
        ],
    )
    def test_the_last_day_is_still_the_programmes(
        self, filed: Callable[..., list[Finding]], starts: str, said: int
    ) -> None:
        files = {
            **IDA,
            **self.plan("Autumn", "starts: 2026-01-05\nweeks: 5"),
            **self.plan("Winter", f"starts: {starts}\nweeks: 5"),
        }
        assert len(filed(files, self.RULE)) == said

    def test_blocks_add_up(self, filed: Callable[..., list[Finding]]) -> None:
        blocks = "\n".join(
            f"  - {{name: {name}, weeks: 2, sessions: [{{session: A, exercises: [{{exercise: plank, sets: 1}}]}}]}}"
            for name in "AB"
        )
        first = f"programme: Autumn\nathlete: ida.athlete.yaml\nstarts: 2026-01-05\nblocks:\n{blocks}\n"
        files = {**IDA, "a.programme.yaml": first, **self.plan("Winter", "starts: 2026-02-01")}
        assert len(filed(files, self.RULE)) == 1
        files["winter.programme.yaml"] = files["winter.programme.yaml"].replace("2026-02-01", "2026-02-02")
        assert filed(files, self.RULE) == []

    @pytest.mark.parametrize(
        ("head", "athlete"),
        [
            ("weeks: 4", "athlete: ida.athlete.yaml"),  # no start
            ("starts: 2026-01-05", "athlete: bo.athlete.yaml"),
            (
                "starts: 2026-01-05\nrehabilitation: {stage: s, advised by: physician, until: 2026-02-01}",
                "athlete: ida.athlete.yaml",
            ),
        ],
    )
    def test_none_of_this(self, filed: Callable[..., list[Finding]], head: str, athlete: str) -> None:
        for names in (("Autumn", "Winter"), ("Winter", "Autumn")):  # whichever comes first
            files = {
                **IDA,
                "bo.athlete.yaml": "name: Bo\n",
                **self.plan(names[0], "starts: 2026-01-05"),
                **self.plan(names[1], head, athlete),
            }
            assert filed(files, self.RULE) == []

    def test_twice_on_one_programme_is_one_programme(self, filed: Callable[..., list[Finding]]) -> None:
        athletes = "athletes: [ida.athlete.yaml, ida.athlete.yaml]"
        assert filed({**IDA, **self.plan("Autumn", "starts: 2026-01-05", athletes)}, self.RULE) == []

    def test_of_several_the_one_that_runs_longest(self, filed: Callable[..., list[Finding]]) -> None:
        files = {
            **IDA,
            **self.plan("Summer", "starts: 2026-01-05\nweeks: 9"),
            **self.plan("Autumn", "starts: 2026-01-12\nweeks: 4"),
            **self.plan("Winter", "starts: 2026-02-02\nweeks: 4"),
        }
        said = filed(files, self.RULE)
        assert [one.counted for one in said] == [
            "Autumn starts on 2026-01-12, but Summer runs until 2026-03-08.",
            "Winter starts on 2026-02-02, but Summer runs until 2026-03-08.",
        ]

    def test_a_squad_on_both(self, filed: Callable[..., list[Finding]]) -> None:
        both = "athletes: [ida.athlete.yaml, bo.athlete.yaml]"
        files = {
            **IDA,
            "bo.athlete.yaml": "name: Bo\n",
            **self.plan("Autumn", "starts: 2026-01-05\nweeks: 5", both),
            **self.plan("Winter", "starts: 2026-02-02\nweeks: 4", both),
        }
        (finding,) = filed(files, self.RULE)
        assert finding.athletes == ()
        assert finding.counted.startswith("Winter starts")
        files["winter.programme.yaml"] = files["winter.programme.yaml"].replace("bo.", "cy.")
        (finding,) = filed({**files, "cy.athlete.yaml": "name: Cy\n"}, self.RULE)
        assert finding.athletes == ("Ida",)
        assert finding.counted.startswith("Winter starts")

    def test_the_earlier_need_not_be_asked_for(self, filed: Callable[..., list[Finding]]) -> None:
        files = {
            **IDA,
            **self.plan("Autumn", "starts: 2026-01-05\nweeks: 5"),
            **self.plan("Winter", "starts: 2026-02-02\nweeks: 4"),
        }
        assert len(filed(files, self.RULE, "winter.programme.yaml")) == 1
        assert filed(files, self.RULE, "autumn.programme.yaml") == []


class TestDatesAtOdds:
    """Common practice, no source."""

    RULE = "dates-at-odds"

    def test_the_words_on_an_event_after_the_end(self, findings: Findings, week: Text) -> None:
        head = "starts: 2026-01-05\nweeks: 4\nevents:\n  - {date: 2027-03-14, event: regatta}"
        (finding,) = findings(week(GYM, head), self.RULE)
        assert (finding.severity, finding.confidence) == ("note", "common practice")
        assert (finding.place.line, finding.place.excerpt, finding.where) == (5, "regatta", "events, regatta")
        assert finding.counted == "regatta on 2027-03-14 is 406 days after the programme ends."
        assert finding.wanted == "events it leads up to"
        assert finding.change == "Correct the dates, or delete the event."

    @pytest.mark.parametrize(
        ("day", "counted"),
        [
            ("2026-01-03", "match on 2026-01-03 is 2 days before the programme starts."),
            ("2026-01-04", "match on 2026-01-04 is 1 day before the programme starts."),
            ("2026-01-05", ""),
            ("2026-02-01", ""),  # the last day
            ("2026-05-03", ""),  # a quarter of a year later
            ("2026-05-04", "match on 2026-05-04 is 92 days after the programme ends."),
        ],
    )
    def test_events_on_the_edge(self, findings: Findings, week: Text, day: str, counted: str) -> None:
        head = f"starts: 2026-01-05\nweeks: 4\nevents: [{{date: {day}, event: match}}]"
        assert [one.counted for one in findings(week(GYM, head), self.RULE)] == ([counted] if counted else [])

    @pytest.mark.parametrize(("day", "said"), [("2026-02-01", 0), ("2026-02-02", 1)])
    def test_the_days_after_can_be_moved(self, findings: Findings, week: Text, day: str, said: int) -> None:
        head = f"starts: 2026-01-05\nweeks: 4\nevents: [{{date: {day}, event: match}}]"
        found = findings(week(GYM, head), self.RULE, limits(self.RULE, "days after: 0"))
        assert [one.counted for one in found] == [
            "match on 2026-02-02 is 1 day after the programme ends."
        ] * said

    def test_no_start_or_no_date(self, findings: Findings, week: Text) -> None:
        assert findings(week(GYM, "events: [{date: 2020-01-01, event: match}]"), self.RULE) == []
        assert findings(week(GYM, "starts: 2026-01-05\nevents: [{event: match}]"), self.RULE) == []

    def test_each_event(self, findings: Findings, week: Text) -> None:
        head = (
            "starts: 2026-01-05\nevents: [{date: 2027-01-01, event: a}, {date: 2026-01-07, event: b},"
            " {date: 2025-01-01, event: c}]"
        )
        assert [one.place.excerpt for one in findings(week(GYM, head), self.RULE)] == ["a", "c"]

    def test_the_words_on_a_long_peak(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week(GYM, "phase: taper\nweeks: 5"), self.RULE)
        assert (finding.place.line, finding.place.excerpt, finding.where) == (2, "taper", "phase")
        assert finding.counted == "All 5 weeks are marked taper."
        assert finding.wanted == "at most 4 weeks"
        assert finding.change == "Mark the building weeks `phase: build`, or shorten the programme."

    @pytest.mark.parametrize(
        ("head", "said"),
        [
            ("phase: taper\nweeks: 4", 0),
            ("phase: test\nweeks: 5", 1),
            ("phase: build\nweeks: 5", 0),
            ("phase: in-season\nweeks: 50", 0),
            ("weeks: 50", 0),
        ],
    )
    def test_how_long_a_peak_may_be(self, findings: Findings, week: Text, head: str, said: int) -> None:
        assert len(findings(week(GYM, head), self.RULE)) == said

    @pytest.mark.parametrize(("weeks", "said"), [(2, 0), (3, 1)])
    def test_the_length_can_be_moved(self, findings: Findings, week: Text, weeks: int, said: int) -> None:
        text = week(GYM, f"phase: taper\nweeks: {weeks}")
        assert len(findings(text, self.RULE, limits(self.RULE, "longest peak: 2"))) == said

    BLOCKS = """\
programme: Test
{head}
blocks:
  - {{name: A, weeks: 3, {first} sessions: &s [{{session: A, exercises: [{{exercise: plank, sets: 1}}]}}]}}
  - {{name: B, weeks: 3, {second} sessions: *s}}
"""

    @pytest.mark.parametrize(
        ("first", "second", "counted"),
        [
            ("phase: taper,", "phase: test,", "All 6 weeks are marked taper and test."),
            ("phase: taper,", "phase: taper,", "All 6 weeks are marked taper."),
            ("phase: build,", "phase: taper,", ""),
            ("", "phase: taper,", ""),
        ],
    )
    def test_phases_of_blocks(self, findings: Findings, first: str, second: str, counted: str) -> None:
        text = self.BLOCKS.format(head="weeks: 6", first=first, second=second)
        said = findings(text, self.RULE)
        assert [one.counted for one in said] == ([counted] if counted else [])
        assert [one.place.excerpt for one in said] == (["Test"] if counted else [])

    def test_a_block_that_builds_in_a_taper(self, findings: Findings) -> None:
        text = self.BLOCKS.format(head="phase: taper", first="phase: build,", second="")
        assert findings(text, self.RULE) == []

    def test_the_words_on_goal_and_phase(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week(GYM, "goal: general health\nphase: test\nweeks: 9"), self.RULE)
        assert (finding.place.excerpt, finding.where) == ("general health", "goal")
        assert finding.counted == "The goal is general health, but there is a test phase."
        assert finding.wanted == "a goal and phases that match"
        assert finding.change == "Correct the goal, or delete the phase."

    @pytest.mark.parametrize(
        ("goal", "phase", "said"),
        [
            ("general health", "build", 0),
            ("general health", "taper", 1),
            ("strength", "test", 0),
            ("general health", "return", 0),
        ],
    )
    def test_which_do_not_go_together(
        self, findings: Findings, week: Text, goal: str, phase: str, said: int
    ) -> None:
        assert len(findings(week(GYM, f"goal: {goal}\nphase: {phase}"), self.RULE)) == said

    def test_one_block_of_test_is_enough(self, findings: Findings) -> None:
        text = self.BLOCKS.format(head="goal: general health", first="", second="phase: test,")
        assert len(findings(text, self.RULE)) == 1
