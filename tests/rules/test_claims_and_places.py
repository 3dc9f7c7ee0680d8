"""What is claimed adds up, one cause is one finding, and it stands at the words to change: a case and a sibling each."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.findings.finding import Finding

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]

SWING = "kettlebell swing, sets: 3, reps: 10, rpe: 8"


class TestNumbersAndLines:
    @pytest.mark.parametrize(
        ("lines", "number", "listed"),
        [
            (["deadlift, sets: 3", "RDL, sets: 3", SWING], 9, ["deadlift", "RDL", "kettlebell swing"]),
            (["good morning, sets: 2", "kettlebell swing, sets: 4, reps: 10, rpe: 9"], 6, ["good morning", "kettlebell swing"]),
            (["deadlift, sets: 3", "box jump, sets: 4, reps: 3"], 3, ["deadlift"]),
        ],
    )  # fmt: skip
    def test_hinges_count_with_every_line(
        self, findings: Findings, week: Text, lines: list[str], number: int, listed: list[str]
    ) -> None:
        (one,) = findings(week({"monday": ["back squat, sets: 3", *lines]}), "knee-flexion-missing")
        assert one.counted.startswith(f"{number} sets of hip hinges")
        hinges = [related for related in one.related if related.of == "hip hinges"]
        assert [related.words.split(", ")[1] for related in hinges] == listed
        assert sum(related.share[0] for related in hinges if related.share) == number

    @pytest.mark.parametrize(
        ("line", "area", "sets"),
        [
            ("trap bar deadlift, sets: 4", "hamstrings", "2 sets"),
            ("bench press, sets: 6", "triceps", "3 sets"),
            ("lying leg curl, sets: 2", "hamstrings", "2 sets"),
        ],
    )
    def test_half_credit_is_half_in_the_words(
        self, findings: Findings, week: Text, line: str, area: str, sets: str
    ) -> None:
        text = week({"monday": [line]}, f"goal: hypertrophy\nfocus: [{area}]")
        (one,) = findings(text, "weekly-sets-under-floor")
        assert one.counted.startswith(f"{sets} a week for the {area}")

    @pytest.mark.parametrize(
        ("line", "mean", "sets"),
        [("lat pulldown", "{1: 4, 2-4: 3}", 6), ("leg extension", "{1: 4, 2-4: 3}", 6)],
    )
    def test_nothing_is_taken_off_where_the_mean_is_under_the_limit(
        self, findings: Findings, week: Text, line: str, mean: str, sets: int
    ) -> None:
        text = week({"monday": [f"{line}, sets: {mean}"], "friday": [f"{line}, sets: {sets}"]}, "weeks: 4")
        assert findings(text, "weekly-sets-over-limit") == []


class TestOneCause:
    @pytest.mark.parametrize("lift", ["wall sit, sets: 1, hold: 40 s", "bodyweight squat, sets: 1, reps: 15"])
    def test_one_set_for_the_legs_asks_for_no_leg_day(
        self, findings: Findings, week: Text, lift: str
    ) -> None:
        text = week({"monday": ["bench press, sets: 4", "seated cable row, sets: 4", lift]})
        for rule in ("hip-hinge-missing", "knee-flexion-missing"):
            assert findings(text, rule) == []

    @pytest.mark.parametrize("lines", [["back squat, sets: 4", "leg press, sets: 3"]])
    def test_two_lines_for_the_legs_do(self, findings: Findings, week: Text, lines: list[str]) -> None:
        assert findings(week({"monday": lines}), "knee-flexion-missing")

    @pytest.mark.parametrize(
        ("name", "spoken"),
        [("tibia wobble", True), ("ham blaster", False), ("chest blaster", True)],
    )
    def test_an_unknown_name_makes_conditional_and_never_silent(
        self, findings: Findings, week: Text, name: str, spoken: bool
    ) -> None:
        text = week({"monday": ["back squat, sets: 4", "leg press, sets: 3", f"{name}, sets: 3"]})
        (one,) = findings(text, "knee-flexion-missing")
        assert ("unless" not in one.counted) is spoken


class TestPlaces:
    @pytest.mark.parametrize(
        ("line", "week_of", "words"),
        [
            ("leg curl, sets: {1-2: 8, 3: 12, 4: 8}, reps: 10", 3, "12"),
            ("leg curl, sets: {1: 12, 2-4: 8}, reps: 10", 1, "12"),
        ],
    )
    def test_the_week_that_stands_out(
        self, findings: Findings, week: Text, line: str, week_of: int, words: str
    ) -> None:
        text = week({"monday": [line], "friday": ["seated leg curl, sets: 10, reps: 10"]}, "weeks: 4")
        (one,) = findings(text, "weekly-sets-over-limit")
        assert (one.place.excerpt, one.weeks) == (words, (week_of,))

    @pytest.mark.parametrize("line", ["back squat, reps: 5", "rope climb, rest: 2 min", "plank, hold: 30 s"])
    def test_where_sets_are_missing_the_whole_line_is_meant(
        self, findings: Findings, week: Text, line: str
    ) -> None:
        (one,) = findings(week({"monday": [line]}), "key-missing")
        assert one.place.excerpt == f"exercise: {line}"


class TestPartsOfABlock:
    """Weeks with exercises of their own are judged by themselves, from four on: common practice, no source."""

    def lines(self, first: str, then: str, weeks: str = "1-4", others: str = "5-8") -> str:
        return (
            "programme: T\ngoal: hypertrophy\nweeks: 8\nsessions:\n  - session: Lower\n    exercises:\n"
            "      - {exercise: hack squat, sets: 3, reps: 8}\n"
            f"      - {{exercise: {first}, in weeks: {weeks}, sets: 3, reps: 10}}\n"
            f"      - {{exercise: {then}, in weeks: {others}, sets: 3, reps: 10}}\n"
            "      - {exercise: stiff-leg deadlift, sets: 3, reps: 8}\n"
        )

    @pytest.mark.parametrize("curl", ["seated leg curl", "Nordic curl"])
    def test_four_weeks_without_a_curl(self, findings: Findings, curl: str) -> None:
        (finding,) = findings(self.lines(curl, "leg extension"), "knee-flexion-missing")
        assert finding.weeks == (5, 6, 7, 8)
        assert finding.wanted == "a set in weeks 5-8"
        assert finding.change.endswith(" to Lower in weeks 5-8.")
        assert all("in weeks: 5-8" in edit.words for edit in finding.edits)

    @pytest.mark.parametrize(("weeks", "others"), [("1-6", "7-8"), ("1+3+5+7", "2+4+6+8"), ("1-5", "6-8")])
    def test_fewer_in_a_row_are_a_change(self, findings: Findings, weeks: str, others: str) -> None:
        assert (
            findings(self.lines("seated leg curl", "leg extension", weeks, others), "knee-flexion-missing")
            == []
        )

    def test_another_curl_is_one(self, findings: Findings) -> None:
        assert findings(self.lines("seated leg curl", "lying leg curl"), "knee-flexion-missing") == []

    def test_hinges_too(self, findings: Findings) -> None:
        text = self.lines("Romanian deadlift", "leg extension").replace("stiff-leg deadlift", "leg press")
        (finding,) = findings(text, "hip-hinge-missing")
        assert finding.weeks == (5, 6, 7, 8)


class TestARowOfAnEarlierWeek:
    RULE = "week-pasted"
    LOADS = "1: 65 %, 2: 67.5 %, 3: 70 %, 4: 75 %, 5: 77.5 %, 6: {}, 7: 82.5 %"
    REPS = "1-3: 8, 4-5: 5, 6: {}, 7: 3"

    def text(self, load: str = "70 %", reps: str = "8", *, lift: str = "back squat", note: str = "") -> str:
        said = f", note: {note}" if note else ""
        return (
            f"programme: T\ngoal: strength\nweeks: 7\nsessions:\n  - session: A\n    exercises:\n"
            f"      - {{exercise: {lift}, sets: 4, reps: {{{self.REPS.format(reps)}}}, load: {{{self.LOADS.format(load)}}}{said}}}\n"
        )

    @pytest.mark.parametrize("lift", ["back squat", "bench press"])
    def test_is_told(self, findings: Findings, lift: str) -> None:
        (finding,) = findings(self.text(lift=lift), self.RULE)
        assert finding.weeks == (6,)
        assert finding.counted.endswith(
            "repeats week 3: 4 x 8 at 70 %, between 4 x 5 at 77.5 % and 4 x 3 at 82.5 %."
        )

    @pytest.mark.parametrize(
        ("load", "reps", "note"),
        [("80 %", "4", ""), ("72.5 %", "8", ""), ("70 %", "5", ""), ("70 %", "8", "week 6 is the light one")],
    )
    def test_others_are_not(self, findings: Findings, load: str, reps: str, note: str) -> None:
        assert findings(self.text(load, reps, note=note), self.RULE) == []

    def test_a_wave_is_none(self, findings: Findings) -> None:
        line = "{exercise: back squat, sets: 4, reps: {1: 8, 2: 5, 3: 3, 4: 8, 5: 5, 6: 3}, load: {1: 70 %, 2: 77.5 %, 3: 82.5 %, 4: 70 %, 5: 80 %, 6: 85 %}}"
        text = f"programme: T\nweeks: 6\nsessions: [{{session: A, exercises: [{line}]}}]\n"
        assert findings(text, self.RULE) == []
