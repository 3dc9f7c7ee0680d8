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


class TestWordsAndLines:
    """What is said of a line is true of it as it is written."""

    @pytest.mark.parametrize(
        ("reps", "said"),
        [
            ("6-10", "No direct set under 8 repetitions"),  # its middle is 8
            ("7-9", "No direct set under 8 repetitions"),
            ("6-8", "No direct set from 8 repetitions"),
            ("5-10", "No direct set from 8 repetitions"),  # its middle is 7.5
        ],
    )
    def test_a_range_is_called_by_its_middle_and_by_numbers(
        self, findings: Findings, week: Text, reps: str, said: str
    ) -> None:
        lines = [f"leg extension, sets: 4, reps: {reps}", f"seated leg curl, sets: 3, reps: {reps}"]
        text = week({"monday": lines, "thursday": lines}, "goal: hypertrophy\nweeks: 8")
        (one,) = findings(text, "rep-range-narrow")
        assert one.counted == f"{said} for the quadriceps."
        assert all("light" not in related.words for related in one.related)

    @pytest.mark.parametrize(
        ("extensions", "curls", "weeks", "numbers"),
        [
            ("{1-2: 6, 3-8: 10}", "{1-2: 6, 3-8: 5}", tuple(range(3, 9)), (10, 5)),
            ("{1-2: 6, 3-8: 12}", "{1-2: 3, 3-8: 6}", tuple(range(1, 9)), (12, 6)),  # the fullest is told
            ("{1-4: 6, 5-8: 10}", "{1-4: 6, 5-8: 5}", (5, 6, 7, 8), (10, 5)),
        ],
    )
    def test_the_numbers_are_those_of_the_weeks_that_are_said(
        self,
        findings: Findings,
        week: Text,
        extensions: str,
        curls: str,
        weeks: tuple[int, ...],
        numbers: tuple[int, int],
    ) -> None:
        lines = [f"leg extension, sets: {extensions}", f"leg curl, sets: {curls}"]
        (one,) = findings(week({"monday": lines}, "weeks: 8"), "antagonist-imbalance")
        assert one.weeks == weeks
        assert one.counted == f"Quadriceps side {numbers[0]} sets, hamstring side {numbers[1]}."
        assert tuple(related.share[0] for related in one.related if related.share) == numbers

    @pytest.mark.parametrize(
        ("first", "second", "alike"),
        [
            ("sets: 1, reps: 8", "sets: 1, reps: 12", True),  # only of load and effort is this said
            ("sets: 1, reps: 8, rir: 2", "sets: 1, reps: 12, rir: 0", False),
            ("sets: 2, reps: 5, load: 80 %", "sets: 2, reps: 10, load: 70 %", False),
            ("sets: 2, reps: 5, load: 80 %", "sets: 2, reps: 10, load: 80 %", False),  # nor as hard
        ],
    )
    def test_lines_are_alike_in_what_is_named(
        self, findings: Findings, week: Text, first: str, second: str, alike: bool
    ) -> None:
        text = week({"monday": [f"bench press, {first}", f"bench press, {second}"]})
        said = [one.counted for one in findings(text, "exercise-twice")]
        assert said == (["bench press on 2 lines of this session with the same load and effort."] * alike)

    @pytest.mark.parametrize(
        ("line", "words"),
        [
            ("back extension hold, sets: 3, hold: 30 s", ", no hip hinge that moves."),
            ("glute bridge hold, sets: 3, hold: 30 s", ", no hip hinge that moves."),
            ("plank, sets: 3, hold: 30 s", ", no hip hinge."),
        ],
    )
    def test_a_hold_of_the_hips_is_not_overlooked(
        self, findings: Findings, week: Text, line: str, words: str
    ) -> None:
        text = week(
            {"monday": [line, "back squat, sets: 4", "leg press, sets: 3", "lying leg curl, sets: 3"]}
        )
        (one,) = findings(text, "hip-hinge-missing")
        assert one.counted.endswith(words)


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

    GROUPS = (
        "programme: Test\nathlete: {{name: Ida, level: novice, equipment: [band],"
        " protect: [{{area: lower back, advised by: physiotherapist}}]}}\nsessions:\n{}"
    )
    SESSION = (
        "  - session: A\n    day: {}\n    exercises:\n      - exercise: good morning\n"
        "        work: [{{sets: 1, reps: 5, tempo: 60-0-60-0}}, {{sets: 3, reps: 5, tempo: 60-0-60-0}}]\n"
        "      - {{exercise: barbell snatch, sets: 3, reps: 2}}\n"
    )

    @pytest.mark.parametrize(
        "days",
        [["monday"], ["'[monday, thursday]'"], ["monday", "thursday"]],
        ids=["groups", "days", "sessions"],
    )
    @pytest.mark.parametrize(
        "rule", ["equipment-missing", "protected-area-loaded", "tempo-too-long", "lift-beyond-level"]
    )
    def test_a_line_in_groups_or_a_session_written_twice_is_one_finding(
        self, findings: Findings, days: list[str], rule: str
    ) -> None:
        sessions = "".join(self.SESSION.format(day.strip("'")) for day in days)
        assert len(findings(self.GROUPS.format(sessions), rule)) == 1


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

    ANCHORED = (
        "programme: Test\nshared:\n"
        "  pair: &pair\n    superset:\n"
        "      - {exercise: leg press, sets: 3, reps: 10}\n"
        "      - {exercise: leg extension, sets: 3, reps: 12}\n"
        "  press: &press {exercise: leg press, sets: 4, reps: 8}\n"
        "sessions:\n"
        "  - {session: A, day: monday, exercises: [LINE]}\n"
        "  - {session: B, day: thursday, exercises: [LINE]}\n"
    )

    @pytest.mark.parametrize(
        ("line", "written", "days"),
        [
            ("*pair", 5, ["leg press, Monday: 3", "leg press, Thursday: 3", "leg extension, Monday: 3", "leg extension, Thursday: 3"]),
            ("*press", 7, ["leg press, Monday: 4", "leg press, Thursday: 4"]),
        ],
    )  # fmt: skip
    def test_a_line_from_an_anchor_is_meant_where_it_is_used(
        self, findings: Findings, line: str, written: int, days: list[str]
    ) -> None:
        (one,) = findings(self.ANCHORED.replace("LINE", line), "knee-flexion-missing")
        assert (one.place.line, one.place.excerpt) == (9, line)
        there, *lines = [related for related in one.related if related.of != "hip-hinge-missing"]
        assert (there.words, there.place.line) == ("written here, used there", written)
        assert [related.words.split(", ", 1)[1] for related in lines] == [f"{day} sets" for day in days]


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
        assert finding.counted.endswith(f"; {curl} is in weeks 1-4 only.")
        assert finding.change.startswith(f"Put {curl} back into Lower in weeks 5-8, or say")
        assert all("in weeks: 5-8" in edit.words for edit in finding.edits)

    def test_where_the_others_hold_it(self, findings: Findings) -> None:
        text = self.lines("seated leg curl", "leg extension").replace(
            "sessions:\n",
            "sessions:\n  - session: Arms\n    exercises:\n      - {exercise: curl, sets: 2}\n",
            1,
        )
        moved = text.replace(
            "      - {exercise: curl, sets: 2}\n",
            "      - {exercise: lying leg curl, sets: 2, in weeks: 1-3}\n      - {exercise: curl, sets: 2}\n",
        ).replace("seated leg curl, in weeks: 1-4", "leg extension, in weeks: 1-4")
        (finding,) = findings(moved, "knee-flexion-missing")
        assert finding.change.startswith("Put lying leg curl back into Arms")
        assert finding.place.excerpt == "lying leg curl"

    def test_a_session_of_that_name_without_a_line(self, findings: Findings) -> None:
        lower = "      - session: Lower\n        exercises:\n          - {exercise: hack squat, sets: 3, reps: 8}\n"
        press = "          - {exercise: leg press, sets: 3, reps: 8}\n"
        arms = "      - session: Arms\n        exercises:\n          - {exercise: lying leg curl, sets: 2}\n"
        text = (
            "programme: T\ngoal: hypertrophy\nblocks:\n"
            f"  - block: One\n    weeks: 4\n    sessions:\n{lower}{press}{arms}"
            f"  - block: Two\n    weeks: 4\n    sessions:\n{lower}{press}"
            "      - session: Arms\n        exercises: []\n"
        )
        (finding,) = findings(text, "knee-flexion-missing")
        assert finding.change.startswith("Put lying leg curl back into Lower")

    def test_curl_and_hinge_gone_together(self, findings: Findings) -> None:
        text = self.lines("seated leg curl", "leg extension").replace(
            "stiff-leg deadlift, sets", "stiff-leg deadlift, in weeks: 1-4, sets"
        )
        (finding,) = findings(text, "knee-flexion-missing")
        assert finding.counted == (
            "6 sets of leg work, no knee flexion or hinge;"
            " seated leg curl and stiff-leg deadlift are in weeks 1-4 only."
        )
        assert finding.change == (
            "Put seated leg curl and stiff-leg deadlift back into Lower in weeks 5-8,"
            " or say in a note that they are left out."
        )
        assert [edit.words.strip().split(",")[0] for edit in finding.edits][:1] == [
            "- {exercise: seated leg curl"
        ]

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


class TestSharesOfBodyMass:
    """C2 of the trials: a share of the lifter's own mass is so many kilograms, and these so many per cent."""

    HEAD = "athlete: {name: Ida, body mass: 80 kg, best lifts: {back squat: 100 kg, bench press: 90 kg}}"

    @pytest.mark.parametrize(
        ("line", "number"),
        [
            ("back squat, sets: 3, reps: 12, load: 110 % of bodyweight", 1),
            ("bench press, sets: 3, reps: 12, load: 100 % of bodyweight", 1),
            ("back squat, sets: 3, reps: 5, load: 100 % of bodyweight", 0),
        ],
    )
    def test_are_loads(self, findings: Findings, week: Text, line: str, number: int) -> None:
        text = week({"Gym": [line]}, self.HEAD)
        assert len(findings(text, "more-reps-than-load-allows")) == number
