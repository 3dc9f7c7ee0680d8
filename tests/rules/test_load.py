"""Rules on load: zones, what a load allows, what effort it leaves, and whether anybody can set it."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.findings.finding import Finding

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]

REHABILITATION = "rehabilitation: {stage: return, advised by: physiotherapist, until: 2026-12-31}"


def settings(rule: str, options: str) -> dict[str, str]:
    """A team's settings that move a rule."""
    return {"spotline.yaml": f"rules: {{{rule}: {options}}}"}


def said(found: list[Finding]) -> list[tuple[str, str]]:
    """Severity and words of each finding."""
    return [(finding.severity, finding.counted) for finding in found]


class TestLoadOutsideZone:
    """80 % and more for strength, 30-70 % for power: acsm-2026-load, Med Sci Sports Exerc 2026;58:851-872 (secondary).

    At most 67 % for endurance: nsca-zones (secondary). 70-85 % at 65 and over: fragala-2019, JSCR 2019;33:2019-2052.
    About 60 % for the untrained: peterson-2005, from memory.
    """

    RULE = "load-outside-zone"

    def test_the_words_where_it_is_too_light(self, findings: Findings, week: Text) -> None:
        lines = [
            "leg extension, sets: 3, rir: 2",
            "back squat, sets: 3, load: 70 %",
            "bench press, sets: 3, load: 75-79 %",
        ]
        (finding,) = findings(week({"monday Gym": lines}, "goal: strength"), self.RULE)
        assert (finding.severity, finding.confidence) == ("note", "guideline")
        assert (finding.place.excerpt, finding.where) == ("75-79 %", "Gym, bench press")
        assert finding.counted == "Too light for strength: bench press up to 79 % and back squat up to 70 %."
        assert finding.wanted == "80 % or more"
        assert finding.change == "Go heavier when the lifter is ready, or correct the goal."
        assert [(related.place.excerpt, related.words) for related in finding.related] == [
            ("70 %", "Gym, back squat")
        ]

    def test_the_words_where_it_is_too_heavy(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(
            week({"Gym": ["back squat, sets: 3, load: 70/72.5/75 %"]}, "goal: muscular endurance"), self.RULE
        )
        assert finding.counted == "Too heavy for muscular endurance: back squat from 70 %."
        assert finding.wanted == "67 % or less"
        assert finding.change == "Go lighter in some sets, or correct the goal."
        assert finding.related == ()

    @pytest.mark.parametrize(
        ("lines", "number"),
        [
            (["back squat, sets: 3, load: 80 %"], 0),
            (["back squat, sets: 3, load: 79.5 %"], 1),
            (["back squat, sets: 3, load: 70-80 %"], 0),
            (["back squat, sets: 3, load: 70/75/80 %"], 0),
            (["back squat, sets: 3, load: 70 %", "bench press, sets: 3, load: 90 %"], 0),  # one is heavy
            (["back squat, sets: 3, load: 70 %", "front squat, sets: 3, load: 80 %"], 0),  # of one pattern
            (["front squat, sets: 3, load: 80 %", "back squat, sets: 3, load: 70 %"], 0),
            (["bench press, sets: 3, load: 85 %", "bent-over row, sets: 3, load: 60 %"], 0),  # goes with it
            (["bent-over row, sets: 3, load: 60 %"], 1),  # the heaviest work that there is
            (
                ["back squat, sets: 1, load: 85 %", "back squat, sets: 9, load: 60 %"],
                0,
            ),  # one heavy set will do
            (["back squat, sets: 9, load: 60 %", "back squat, sets: 1, load: 85 %"], 0),
            (["back squat, sets: 3, load: 10RM"], 1),  # about 79.5 %
            (["back squat, sets: 3, load: 8RM"], 0),
            (["back squat, sets: 3, rir: 2"], 0),
            (["back squat, sets: 3, load: 60 kg"], 0),
            (["leg extension, sets: 3, load: 60 %"], 0),  # no main lift
            (["goblet squat, sets: 3, load: 60 %"], 0),  # cannot be loaded heavily
            (["jump squat, sets: 3, load: 30 %"], 0),
            (["power clean, sets: 3, load: 60 %"], 0),  # work for speed
            (["back squat, sets: 1, load: 70 %", "back squat, sets: 1, load: 60-85 %"], 0),
            (["bench press, sets: 1, load: 80 %", "back squat, sets: 1, load: 79 %"], 0),
            (["bench press, sets: 1, load: 79 %", "back squat, sets: 1, load: 79 %"], 1),
            (["bench press, sets: 1, rir: 2", "back squat, sets: 1, load: 79 %"], 0),  # by feel it may be
            (["dumbbell curl, sets: 1, rir: 2", "back squat, sets: 1, load: 79 %"], 1),
            (["moon walk, sets: 3, load: 30 %"], 0),
        ],
    )
    def test_strength(self, findings: Findings, week: Text, lines: list[str], number: int) -> None:
        assert len(findings(week({"Gym": lines}, "goal: strength"), self.RULE)) == number

    def test_the_heaviest_week_decides(self, findings: Findings, week: Text) -> None:
        line = "back squat, sets: 3, load: {1: 70 %, 2: 75 %, 3: %s, 4: 72.5 %}"
        for heaviest, number in (("80 %", 0), ("77.5 %", 1)):
            text = week({"Gym": [line.replace("%s", heaviest)]}, "goal: strength\nweeks: 4")
            found = findings(text, self.RULE)
            assert [finding.counted for finding in found] == [
                "Too light for strength: back squat up to 77.5 %."
            ] * number

    @pytest.mark.parametrize(
        ("lines", "number"),
        [
            (["back squat, sets: 3, load: 60 %", "bench press, sets: 3, load: 67 %"], 0),
            (["back squat, sets: 3, load: 60 %", "bench press, sets: 3, load: 68 %"], 1),
            (["back squat, sets: 3, load: 75 %", "back squat, sets: 1, load: 60-80 %"], 0),
        ],
    )
    def test_endurance(self, findings: Findings, week: Text, lines: list[str], number: int) -> None:
        assert len(findings(week({"Gym": lines}, "goal: muscular endurance"), self.RULE)) == number

    def test_one_decimal_will_do(self, findings: Findings, week: Text) -> None:
        lines = ["back squat, load: 70 %", "bench press, load: 70.25 %", "overhead press, load: 75 %"]
        (finding,) = findings(
            week({"Gym": [f"{line}, sets: 3" for line in lines]}, "goal: strength"), self.RULE
        )
        assert finding.counted == (
            "Too light for strength: overhead press up to 75 %, bench press up to 70.2 % and back squat up to"
            " 70 %."
        )

    def test_the_lightest_week_decides_for_endurance(self, findings: Findings, week: Text) -> None:
        line = "back squat, sets: 3, load: {1: 80 %, 2: %s, 3: 75 %}"
        for lightest, number in (("67 %", 0), ("67.5 %", 1)):
            text = week({"Gym": [line.replace("%s", lightest)]}, "goal: muscular endurance\nweeks: 3")
            assert len(findings(text, self.RULE)) == number

    def test_best_lifts_on_file_put_kilograms_into_percent(self, findings: Findings, week: Text) -> None:
        head = "goal: strength\nathlete: {name: A, best lifts: {back squat: 100 kg}}"
        for load, number in (("79 kg", 1), ("80 kg", 0)):
            assert (
                len(findings(week({"Gym": [f"back squat, sets: 3, load: {load}"]}, head), self.RULE))
                == number
            )

    @pytest.mark.parametrize(
        ("athlete", "load", "number"),
        [
            ("{name: A, level: novice}", "60 %", 0),
            ("{name: A, level: novice}", "59 %", 1),
            ("{name: A, level: intermediate}", "79 %", 1),
            ("{name: A, age: 64}", "75 %", 1),
            ("{name: A, age: 65}", "70 %", 0),
            ("{name: A, age: 65}", "69 %", 1),
            ("{name: A, age: 70, level: novice}", "60 %", 0),
            ("{name: A, age: 70, level: novice}", "59 %", 1),
        ],
    )
    def test_novices_and_older_lifters(
        self, findings: Findings, week: Text, athlete: str, load: str, number: int
    ) -> None:
        head = f"goal: strength\nathlete: {athlete}"
        assert len(findings(week({"Gym": [f"back squat, sets: 3, load: {load}"]}, head), self.RULE)) == number

    @pytest.mark.parametrize(
        ("line", "number"),
        [
            ("barbell squat jump, sets: 3, load: 29 %", 1),
            ("barbell squat jump, sets: 3, load: 30 %", 0),
            ("barbell squat jump, sets: 3, load: 70 %", 0),
            ("barbell squat jump, sets: 3, load: 71 %", 1),
            ("bench press throw, sets: 3, load: 75 %", 1),
            ("power clean, sets: 3, load: 85 %", 0),  # Olympic lifts are done heavier: nsca-zones
            ("back squat, sets: 3, load: 85 %", 0),
        ],
    )
    def test_power(self, findings: Findings, week: Text, line: str, number: int) -> None:
        assert len(findings(week({"Gym": [line]}, "goal: power"), self.RULE)) == number

    @pytest.mark.parametrize(
        ("load", "words"),
        [
            (
                "20 %",
                ("Too light for power: barbell squat jump up to 20 %.", "30 % or more"),
            ),
            (
                "80 %",
                ("Too heavy for power: barbell squat jump from 80 %.", "70 % or less"),
            ),
        ],
    )
    def test_power_in_words(self, findings: Findings, week: Text, load: str, words: tuple[str, str]) -> None:
        (finding,) = findings(
            week({"Gym": [f"barbell squat jump, sets: 3, load: {load}"]}, "goal: power"), self.RULE
        )
        assert (finding.counted, finding.wanted) == words

    @pytest.mark.parametrize(
        ("line", "said"),
        [
            ("back squat, sets: 4, reps: 2-3, load: 90 %", ["back squat"]),
            ("back squat, sets: 4, reps: 5, load: 85 %", []),
            ("back squat, sets: 4, reps: 5, load: 86 %", ["back squat"]),
            ("back squat, sets: 4, reps: 3, load: {1: 90 %, 2: 80 %}", []),  # comes down once
            ("deadlift, sets: 5, reps: 2, load: 3RM", ["deadlift"]),
            ("bent-over row, sets: 4, reps: 3, load: 90 %", []),
            ("back squat, sets: 4, reps: 15, load: 40 %", []),  # for size light loads do as well
        ],
    )
    def test_size_from_above(self, findings: Findings, week: Text, line: str, said: list[str]) -> None:
        """67 to 85 %: nsca-zones (secondary); light loads do as well: acsm-2026-load."""
        lines = [line, "bench press, sets: 3, reps: 8, load: 75 %"]
        found = findings(week({"Gym": lines}, "goal: hypertrophy\nweeks: 2"), self.RULE)
        assert [one.counted.partition(" from ")[0] for one in found] == [
            f"Too heavy for hypertrophy: {one}" for one in said
        ]
        assert all("bench press" not in one.counted for one in found)

    def test_both_ends_of_the_zone_are_two_findings(self, findings: Findings, week: Text) -> None:
        lines = ["barbell squat jump, sets: 3, load: 20 %", "bench press throw, sets: 3, load: 80 %"]
        found = findings(week({"Gym": lines}, "goal: power"), self.RULE)
        assert [one.place.excerpt for one in found] == ["20 %", "80 %"]

    @pytest.mark.parametrize("goal", ["goal: general health", "note: no goal"])
    @pytest.mark.parametrize("load", ["40 %", "105 %"])
    def test_nothing_is_said_for_other_goals(
        self, findings: Findings, week: Text, goal: str, load: str
    ) -> None:
        assert findings(week({"Gym": [f"back squat, sets: 3, load: {load}"]}, goal), self.RULE) == []

    @pytest.mark.parametrize(
        ("priority", "number"),
        [
            ("[bench press]", 0),
            ("[squat]", 1),
            ("[chest]", 0),  # trained directly by the press alone
            ("[quads]", 1),
            ("[bench press, calves]", 0),  # one of them is enough
            ("[triceps]", 0),  # only helps: all lifts are looked at, and one is heavy
            ("[calves]", 0),
        ],
    )
    def test_priorities_come_first(self, findings: Findings, week: Text, priority: str, number: int) -> None:
        lines = ["back squat, sets: 3, load: 60 %", "bench press, sets: 3, load: 85 %"]
        assert (
            len(findings(week({"Gym": lines}, f"goal: strength\npriority: {priority}"), self.RULE)) == number
        )

    @pytest.mark.parametrize(
        ("head", "number"),
        [
            ("phase: build", 1),
            ("phase: in-season", 0),
            ("phase: taper", 1),
            ("phase: test", 1),
            ("phase: return", 0),
            (REHABILITATION, 0),
        ],
    )
    def test_when_it_stands_back(self, findings: Findings, week: Text, head: str, number: int) -> None:
        text = week({"Gym": ["back squat, sets: 3, load: 70 %"]}, f"goal: strength\nweeks: 2\n{head}")
        assert len(findings(text, self.RULE)) == number

    def test_weeks_under_rehabilitation_and_deloads_are_left_out(self, findings: Findings) -> None:
        block = (
            "  - {{name: B, weeks: 1, {keys}sessions: [{{session: Gym, exercises: "
            "[{{exercise: {lift}, sets: 3, load: {load}}}]}}]}}\n"
        )
        head = "programme: Test\ngoal: strength\nblocks:\n"
        easy = block.format(keys="deload: true, ", load="60 %", lift="back squat")
        light = block.format(keys="", load="60 %", lift="bench press")
        (finding,) = findings(head + easy + light, self.RULE)
        assert "squat" not in finding.counted
        (finding,) = findings(head + easy.replace("deload: true, ", "") + light, self.RULE)
        assert "squat" in finding.counted
        stage = "starts: 2026-01-05\nrehabilitation: {stage: return, advised by: physiotherapist, until: 2026-01-06}\n"
        squat = block.format(keys="", load="60 %", lift="back squat")
        assert "squat" not in findings(stage + head + squat + light, self.RULE)[0].counted
        assert "squat" in findings(stage + head + light + squat, self.RULE)[0].counted

    @pytest.mark.parametrize(
        ("options", "goal", "line", "athlete", "number"),
        [
            ("{strength from: 70}", "strength", "back squat, sets: 3, load: 70 %", "{name: A}", 0),
            (
                "{strength from when older: 65}",
                "strength",
                "back squat, sets: 3, load: 65 %",
                "{name: A, age: 65}",
                0,
            ),
            ("{older: 60}", "strength", "back squat, sets: 3, load: 70 %", "{name: A, age: 60}", 0),
            ("{power from: 20}", "power", "barbell squat jump, sets: 3, load: 20 %", "{name: A}", 0),
            ("{power to: 80}", "power", "barbell squat jump, sets: 3, load: 80 %", "{name: A}", 0),
            ("{endurance to: 60}", "muscular endurance", "back squat, sets: 3, load: 65 %", "{name: A}", 1),
        ],
    )
    def test_options(
        self, findings: Findings, week: Text, options: str, goal: str, line: str, athlete: str, number: int
    ) -> None:
        text = week({"Gym": [line]}, f"goal: {goal}\nathlete: {athlete}")
        assert len(findings(text, self.RULE)) == 1 - number
        assert len(findings(text, self.RULE, settings(self.RULE, options))) == number


class TestMoreRepsThanLoadAllows:
    """nuzzo-2024, Sports Med 2024;54:303-321 (table secondary): mean and SD of repetitions to failure.

    85 %: 7.15, SD 2.19; 80 %: 9.75, 2.51 (bench press 8.82, leg press 13.05); 70 %: 14.80, 3.31; 60 %: 19.53, 4.37.
    zourdos-2021: trained squatters do 6-26 repetitions at 70 %.
    """

    RULE = "more-reps-than-load-allows"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        line = "back squat, sets: 3, reps: 12, rir: 2-3, load: 85 %"
        (finding,) = findings(week({"Lower": [line]}, "weeks: 2"), self.RULE)
        assert (finding.severity, finding.confidence) == ("warning", "meta-analysis")
        assert (finding.place.excerpt, finding.where) == ("12", "Lower, back squat")
        assert finding.counted == "14 repetitions (2 of them in reserve) at 85 %."
        assert finding.wanted == "about 7 at 85 %, at most 11"
        assert finding.change == "Take about 72 %, or fewer repetitions."
        assert [(related.place.excerpt, related.words) for related in finding.related] == [("85 %", "85 %")]
        assert finding.weeks == (1, 2)

    def test_the_words_without_a_reserve(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(
            week({"Lower": ["back squat, sets: 3, reps: 30, load: 70 %, rir: 0"]}), self.RULE
        )
        assert finding.severity == "error"
        assert finding.counted == "30 repetitions at 70 %."
        assert finding.change == "Take less than 60 %, or fewer repetitions."

    @pytest.mark.parametrize(
        ("line", "severity"),
        [
            ("back squat, sets: 1, reps: 11, load: 85 %", ""),  # 7.15 + 2 x 2.19 = 11.53
            ("back squat, sets: 1, reps: 12, load: 85 %", "warning"),
            ("back squat, sets: 1, reps: 15, load: 85 %", "warning"),  # 7.15 + 4 x 2.19 = 15.91
            ("back squat, sets: 1, reps: 16, load: 85 %", "error"),
            ("back squat, sets: 1, reps: 9, rir: 2, load: 85 %", ""),
            ("back squat, sets: 1, reps: 9, rir: 3, load: 85 %", "warning"),
            ("back squat, sets: 1, reps: 9, rpe: 8, load: 85 %", ""),
            ("back squat, sets: 1, reps: 9, rpe: 7, load: 85 %", "warning"),
            ("back squat, sets: 1, reps: 8-20, load: 85 %", ""),  # the low end counts
            ("back squat, sets: 1, reps: 12, load: 80-85 %", ""),  # the light end counts: 14.77 at 80 %
            ("back squat, sets: 1, reps: 9, rir: 2-4, load: 85 %", ""),
            ("back squat, sets: 1, reps: 26, load: 70 %", "warning"),  # never an error: 26 have been done
            ("back squat, sets: 1, reps: 28, load: 60 %", ""),  # 19.53 + 2 x 4.37 = 28.27
            ("back squat, sets: 1, reps: 29, load: 60 %", "warning"),
            ("back squat, sets: 1, reps: 80, load: 59 %", ""),  # the table ends at 60 %
            ("back squat, sets: 1, reps: 5, load: 95 %", "warning"),  # 2.97 + 2 x 0.97 = 4.9
            ("back squat, sets: 1, reps: 4, load: 95 %", ""),
            ("leg press, sets: 1, reps: 5, load: 95 %", ""),  # about 5 on its own curve
            ("back squat, sets: 1, reps: 2, load: 99 %", ""),
            ("back squat, sets: 1, reps: 3, load: 99 %", "warning"),
            ("back squat, sets: 1, reps: 4, load: 99 %", "error"),
            ("back squat, sets: 1, reps: 1, load: 100 %", ""),
            ("back squat, sets: 3, reps: 1, load: 100 %", ""),
            ("bench press, sets: 1, reps: 13, load: 80 %", ""),  # 8.82 + 2 x 2.51 = 13.84
            ("bench press, sets: 1, reps: 14, load: 80 %", "warning"),
            ("back squat, sets: 1, reps: 14, load: 80 %", ""),  # 14.77
            ("leg press, sets: 1, reps: 18, load: 80 %", ""),  # 13.05 + 2 x 2.51 = 18.07
            ("leg press, sets: 1, reps: 19, load: 80 %", "warning"),
            ("leg press calf raise, sets: 1, reps: 18, load: 80 %", "warning"),  # no leg press
        ],
    )
    def test_both_sides_of_each_limit(self, findings: Findings, week: Text, line: str, severity: str) -> None:
        found = findings(week({"Lower": [line]}), self.RULE)
        assert [finding.severity for finding in found] == ([severity] if severity else [])

    @pytest.mark.parametrize(
        ("line", "words"),
        [
            ("sets: 3, reps: 8/8/14, load: 85 %", "14 repetitions at 85 %."),
            ("sets: 3, reps: 12/5/11, load: 85 %", "12 repetitions at 85 %."),  # too many even fresh
            ("sets: 3, reps: 9/5/11, load: 85 %", "11 in set 3 at 85 %."),
            (
                "sets: 3, reps: 11/5/10, load: 85 %",
                "10 in set 3 at 85 %.",
            ),  # the first is fresh
            ("sets: 3, reps: 20/8/6, load: 70/80/90 %", ""),
            ("sets: 3, reps: 8/8/20, load: 70/80/90 %", "20 repetitions at 70/80/90 %."),
            ("sets: 3, reps: 9, load: 70/80/90 %", "9 repetitions at 70/80/90 %."),
            ("sets: 3, reps: 8, load: 70/80/90 %", "3 sets of 8 at 70/80/90 %."),
            ("sets: 3, reps: 6, load: 70/80/90 %", "3 sets of 6 at 70/80/90 %."),  # 6 x 1.3 = 7.8, of 4.94
            ("sets: 3, reps: 5, load: 70/80/90 %", ""),
            (
                "sets: 3, reps: 15/12/12, load: 80/85/80 %",
                "12 repetitions at 80/85/80 %.",
            ),  # 12 are further out
        ],
    )
    def test_set_by_set(self, findings: Findings, week: Text, line: str, words: str) -> None:
        found = findings(week({"Lower": [f"back squat, {line}"]}), self.RULE)
        assert [finding.counted for finding in found] == ([words] if words else [])

    @pytest.mark.parametrize(
        ("line", "words"),
        [
            ("back squat, sets: 3, reps: 10, load: 10RM", ""),
            ("back squat, sets: 3, reps: 11, load: 10RM", ""),  # guesses are out by about one: hackett-2017
            ("back squat, sets: 3, reps: 12, load: 10RM", "12 repetitions at 10RM."),
            ("back squat, sets: 3, reps: 10, rir: 1, load: 10RM", ""),
            (
                "back squat, sets: 3, reps: 10, rir: 2, load: 10RM",
                "12 repetitions (2 of them in reserve) at 10RM.",
            ),
            ("back squat, sets: 3, reps: 11, load: 8-10RM", ""),
            ("back squat, sets: 3, reps: 10/12/8, load: 10RM", "12 repetitions at 10RM."),
            ("back squat, sets: 3, reps: 10-15, load: 10RM", ""),
            ("back squat, sets: 3, reps: 30, load: 28RM", "30 repetitions at 28RM."),
            ("back squat, sets: 3, reps: amrap, rir: 5, load: 2RM", ""),
            ("back squat, sets: 3, load: 10RM", ""),
        ],
    )
    def test_repetition_maxima(self, findings: Findings, week: Text, line: str, words: str) -> None:
        assert said(findings(week({"Lower": [line]}), self.RULE)) == ([("warning", words)] if words else [])

    def test_the_light_end_is_named(self, findings: Findings, week: Text) -> None:
        head = "athlete: {name: A, best lifts: {back squat: 100 kg}}"
        (finding,) = findings(
            week({"Lower": ["back squat, sets: 3, reps: 16, load: 80-85 %"]}, head), self.RULE
        )
        assert finding.wanted.startswith("about 10 at 80 %")
        assert [related.words for related in finding.related if not related.of] == [
            "80-85 %"
        ]  # no best lift was needed

    def test_repetition_maxima_in_words(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"Lower": ["back squat, sets: 3, reps: 20, load: 8-10RM"]}), self.RULE)
        assert finding.wanted == "at most 10, as 8-10RM means"
        assert finding.change == "Take a lighter load or fewer repetitions."
        assert [related.place.excerpt for related in finding.related if not related.of] == ["8-10RM"]

    def test_kilograms_against_the_best_lift_on_file(self, findings: Findings, week: Text) -> None:
        head = "athlete: {name: A, best lifts: {back squat: 100 kg}}"
        (finding,) = findings(
            week({"Lower": ["back squat, sets: 3, reps: 30, load: 85 kg"]}, head), self.RULE
        )
        assert finding.severity == "warning"  # the lift may have grown since
        assert finding.counted == "30 repetitions at 85 kg."
        assert finding.wanted == "about 7 at 85 %, at most 11"
        assert [related.words for related in finding.related if not related.of] == [
            "85 kg",
            "best lift on file: 100 kg",
        ]
        assert (
            findings(week({"Lower": ["back squat, sets: 1, reps: 11, load: 85 kg"]}, head), self.RULE) == []
        )

    @pytest.mark.parametrize(
        "line",
        [
            "back squat, sets: 3, reps: 10+10, load: 85 %",
            "back squat, sets: 3, reps: 20, load: 85 %, method: cluster",
            "back squat, sets: 3, reps: 20, load: 85 %, cluster rest: 20 s",
            "back squat, sets: 3, reps: 20, load: 85 %, method: drop set",
            "back squat, sets: 3, reps: 20, load: 85 %, method: rest-pause",
            "back squat, sets: 3, reps: amrap, load: 85 %",
            "back squat, sets: 3, load: 85 %",
            "back squat, sets: 3, reps: 20",
            "back squat, sets: 3, reps: 20, load: red band",
            "back squat, sets: 3, reps: 20, load: 90 % of top set",
            "back squat, sets: 3, reps: 20, load: 90 kg",
            "eccentric seated leg curl, sets: 3, reps: 20, load: 85 %",
            "negative pull-up, sets: 3, reps: 20, load: 85 %",
            "barbell squat jump, sets: 3, reps: 20, load: 85 %",
            "plank, sets: 3, reps: 20, load: 85 %",
            "moon walk, sets: 3, reps: 20, load: 85 %",
        ],
    )
    def test_silent(self, findings: Findings, week: Text, line: str) -> None:
        assert findings(week({"Lower": [line]}), self.RULE) == []

    @pytest.mark.parametrize("method", ["method: contrast", "side: each"])
    def test_what_is_no_excuse(self, findings: Findings, week: Text, method: str) -> None:
        text = week({"Lower": [f"back squat, sets: 3, reps: 20, load: 85 %, {method}"]}, REHABILITATION)
        assert [finding.severity for finding in findings(text, self.RULE)] == ["error"]

    @pytest.mark.parametrize(
        ("options", "line", "severity"),
        [
            ("{few manage: 3}", "reps: 13, load: 85 %", ""),  # 7.15 + 3 x 2.19 = 13.72
            ("{few manage: 3}", "reps: 14, load: 85 %", "warning"),
            ("{nobody manages: 3}", "reps: 14, load: 85 %", "error"),
            ("{nobody manages: 3}", "reps: 13, load: 85 %", "warning"),
            ("{beyond the RM: 0}", "reps: 11, load: 10RM", "warning"),
            ("{beyond the RM: 2}", "reps: 12, load: 10RM", ""),
        ],
    )
    def test_options(self, findings: Findings, week: Text, options: str, line: str, severity: str) -> None:
        text = week({"Lower": [f"back squat, sets: 1, {line}"]})
        found = findings(text, self.RULE, settings(self.RULE, options))
        assert [finding.severity for finding in found] == ([severity] if severity else [])

    def test_weeks_are_drawn_together_with_the_words_of_the_worst(
        self, findings: Findings, week: Text
    ) -> None:
        line = "back squat, sets: 3, reps: 15, load: {1: 60 %, 2: 80 %, 3: 85 %, 4: 82.5 %}"
        (finding,) = findings(week({"Lower": [line]}, "weeks: 4"), self.RULE)
        assert finding.weeks == (2, 3, 4)
        assert finding.counted == "15 repetitions at 85 %."

    # Several sets: that repetitions fall is in richmond-2004 and willardson-2006, how far is common practice

    @pytest.mark.parametrize(
        ("line", "words"),
        [
            ("back squat, sets: 1, reps: 8, load: 88 %", ""),
            ("back squat, sets: 4, reps: 8, load: 88 %", "4 sets of 8 at 88 %."),
            ("back squat, sets: 3-4, reps: 8, load: 88 %", "4 sets of 8 at 88 %."),
            (
                "back squat, sets: 3, reps: 6, load: 91 %, rir: 1",
                "3 sets of 7 (1 of them in reserve) at 91 %.",
            ),
            ("back squat, sets: 2, reps: 9, load: 88 %", "2 sets of 9 at 88 %."),
            ("bench press, sets: 3, reps: 11, load: 80 %", "3 sets of 11 at 80 %."),
            ("back squat, sets: 5, reps: 5, load: 85 %", ""),
            ("back squat, sets: 5, reps: 3, load: 90 %", ""),
            ("back squat, sets: 10, reps: 10, load: 70 %", ""),
            ("back squat, sets: 3, reps: 12, load: 75 %", ""),
            ("leg press, sets: 3, reps: 12, load: 80 %", ""),
            ("leg press, sets: 3, reps: 4, load: 95 %", ""),
            ("leg press, sets: 3, reps: 6, load: 95 %", "3 sets of 6 at 95 %."),
        ],
    )
    def test_what_fatigue_leaves(self, findings: Findings, week: Text, line: str, words: str) -> None:
        assert said(findings(week({"Lower": [line]}), self.RULE)) == ([("warning", words)] if words else [])

    @pytest.mark.parametrize(
        ("line", "words"),
        [  # past the mean and 1.25 standard deviations: one lifter in ten
            ("back squat, sets: 5, reps: 10, load: 80 %", "5 sets of 10 at 80 %."),
            ("leg press, sets: 3, reps: 5, load: 95 %", "3 sets of 5 at 95 %."),
            ("back squat, sets: 5, reps: 3, load: 95 %", "5 sets of 3 at 95 %."),
        ],
    )
    def test_what_few_have_left_is_a_note(
        self, findings: Findings, week: Text, line: str, words: str
    ) -> None:
        assert said(findings(week({"Lower": [line]}), self.RULE)) == [("note", words)]

    def test_the_words_for_several_sets(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"Lower": ["back squat, sets: 4, reps: 8, load: 88 %"]}), self.RULE)
        assert finding.wanted == "about 6 at 88 %, at most 7 in set 4"
        # 8 repetitions of a fourth set are as hard as 8 x 1.35 = 10.8 of a first one
        assert finding.change == "Take about 83 %, or fewer repetitions."
        (finding,) = findings(
            week({"Lower": ["back squat, sets: 3, reps: 6, rir: 1, load: 91 %"]}), self.RULE
        )
        assert finding.wanted.endswith("at most 6 in set 3")  # (8.06 - 1) / 1.3 + 1 = 6.4
        line = week({"Lower": ["back squat, sets: 4, reps: 8, load: 88 %"]})
        (finding,) = findings(line, self.RULE, settings(self.RULE, "{few manage: 1.5}"))
        assert "at most 6 in set 4" in finding.wanted
        again = week({"Lower": ["back squat, sets: 4, reps: 8, load: 83 %"]})
        assert findings(again, self.RULE) == []

    @pytest.mark.parametrize(
        ("options", "line", "severity"),
        [
            ("{few manage: 0}", "sets: 1, reps: 1, load: 100 %", ""),  # exactly the mean
            ("{few manage: 0}", "sets: 3, reps: 1, load: 100 %", "warning"),
            ("{few manage: 0, nobody manages: 0}", "sets: 3, reps: 1, load: 100 %", "warning"),
        ],
    )
    def test_exactly_at_a_limit(
        self, findings: Findings, week: Text, options: str, line: str, severity: str
    ) -> None:
        text = week({"Lower": [f"back squat, {line}"]})
        found = findings(text, self.RULE, settings(self.RULE, options))
        assert [finding.severity for finding in found] == ([severity] if severity else [])

    def test_no_number_of_sets_makes_it_an_error(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"Lower": ["back squat, sets: 9, reps: 15, load: 85 %"]}), self.RULE)
        assert finding.severity == "warning"  # 15.91 are four SD above the mean in a first set

    # 100 % is one repetition by definition

    @pytest.mark.parametrize(
        ("line", "severity", "words"),
        [
            ("back squat, sets: 3, reps: 2, load: 100 %", "error", "2 repetitions at 100 %."),
            ("bench press, sets: 1, reps: 1-2, load: 100 %", "", ""),
            (
                "bench press, sets: 1, reps: 1, rir: 1, load: 100 %",
                "error",
                "2 repetitions (1 of them in reserve) at 100 %.",
            ),
            ("front squat, sets: 2, reps: 1, load: 102.5 %", "error", "1 repetition at 102.5 %."),
            ("overhead press, sets: 2, reps: 5, load: 110 %", "error", "5 repetitions at 110 %."),
            ("deadlift, sets: 2, load: 101 %", "error", "1 repetition at 101 %."),
            ("back squat, sets: 2, reps: 3, load: 95-105 %", "", ""),
            (
                "back squat, sets: 3, reps: 5/3/2, load: 80/90/100 %",
                "error",
                "2 repetitions at 80/90/100 %.",
            ),
            ("back squat, sets: 3, reps: 1, load: 100/101/102 %", "error", "1 repetition at 100/101/102 %."),
            ("clean, sets: 3, reps: 2, load: 100 %", "error", "2 repetitions at 100 %."),
            ("clean, sets: 3, reps: 9, load: 95 %", "", ""),
            ("clean pull, sets: 3, reps: 3, load: 105 %", "note", "clean pull at 105 %: of which lift?"),
            ("snatch pull, sets: 3, reps: 3, load: 100 %", "note", "snatch pull at 100 %: of which lift?"),
            ("rack pull, sets: 3, reps: 3, load: 120 %", "note", "rack pull at 120 %: of which lift?"),
            ("half squat, sets: 3, reps: 5, load: 110 %", "note", "half squat at 110 %: of which lift?"),
            ("hip thrust, sets: 3, reps: 8, load: 100 %", "note", "hip thrust at 100 %: of which lift?"),
            ("moon walk, sets: 3, reps: 8, load: 100 %", "note", "moon walk at 100 %: of which lift?"),
            ("snatch pull, sets: 3, reps: 1, load: 100 %", "", ""),
            ("back squat, sets: 3, reps: 1+1, load: 102 %", "", ""),
            ("negative pull-up, sets: 3, reps: 3, load: 110 %", "", ""),
        ],
    )
    def test_at_the_maximum_and_above(
        self, findings: Findings, week: Text, line: str, severity: str, words: str
    ) -> None:
        found = findings(week({"Lower": [line]}), self.RULE)
        assert said(found) == ([(severity, words)] if severity else [])
        assert findings(week({"Lower": [line]}), "number-implausible") == []

    def test_the_words_at_the_maximum(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"Lower": ["back squat, sets: 3, reps: 2, load: 100 %"]}), self.RULE)
        assert (finding.place.excerpt, finding.where) == ("2", "Lower, back squat")
        assert finding.wanted == "one at 100 % of its own best, none above"
        assert finding.change == ("Take about 97 %, or write kg if it is a percentage of something else.")
        assert [related.words for related in finding.related] == ["100 %"]
        (finding,) = findings(week({"Lower": ["back squat, sets: 3, reps: 2, load: 101 %"]}), self.RULE)
        assert (finding.place.excerpt, finding.related) == ("101 %", ())

    def test_the_words_where_the_percentage_may_be_of_another_lift(
        self, findings: Findings, week: Text
    ) -> None:
        (finding,) = findings(week({"Lower": ["clean pull, sets: 3, reps: 3, load: 105 %"]}), self.RULE)
        assert (finding.place.excerpt, finding.where) == ("105 %", "Lower, clean pull")
        assert finding.wanted == "one repetition at 100 % of its own best"
        assert finding.change.startswith("Write the load in kg, or `105 % of`")

    def test_kilograms_above_the_best_lift_may_be_a_new_one(self, findings: Findings, week: Text) -> None:
        head = "athlete: {name: A, best lifts: {back squat: 100 kg}}"
        assert (
            findings(week({"Lower": ["back squat, sets: 1, reps: 2, load: 104 kg"]}, head), self.RULE) == []
        )

    def test_a_best_lift_on_file_is_the_lifts_own(self, findings: Findings, week: Text) -> None:
        text = week(
            {"Lower": ["rack pull, sets: 3, reps: 3, load: 105 %"]},
            "athlete: {name: A, best lifts: {rack pull: 150 kg}}",
        )
        assert [finding.severity for finding in findings(text, self.RULE)] == ["error"]

    @pytest.mark.parametrize(("phase", "reps", "number"), [("test", 1, 0), ("test", 2, 1), ("taper", 1, 1)])
    def test_an_attempt_in_a_test_week(
        self, findings: Findings, week: Text, phase: str, reps: int, number: int
    ) -> None:
        line = f"deadlift, sets: 1, reps: {reps}, load: 103 %"
        assert len(findings(week({"Lower": [line]}, f"phase: {phase}"), self.RULE)) == number

    def test_a_team_names_its_own_lifts_of_another(self, findings: Findings, week: Text) -> None:
        text = week({"Lower": ["deficit deadlift, sets: 1, reps: 2, load: 100 %"]})
        assert [one.severity for one in findings(text, self.RULE)] == ["error"]
        moved = settings(self.RULE, "{percent of another lift: [deficit]}")
        assert [one.severity for one in findings(text, self.RULE, moved)] == ["note"]


class TestEffortAgainstLoad:
    """nuzzo-2024 as above: mean less 3 SD are 6.42 at 60 %, 4.87 at 70 %, 2.22 at 80 %.

    hackett-2017, JSCR 2017;31:2162-2168: guesses of what is left are out by about one repetition.
    """

    RULE = "effort-against-load"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(
            week({"Lower": ["back squat, sets: 3, reps: 3-5, load: 60 %, rpe: 10"]}), self.RULE
        )
        assert (finding.severity, finding.confidence) == ("warning", "meta-analysis")
        assert (finding.place.excerpt, finding.where) == ("10", "Lower, back squat")
        assert finding.counted == "RPE 10 after 3-5 repetitions at 60 %."
        assert finding.wanted == "about 15 left, of about 20 at 60 %"
        assert finding.change == ("Take about 90 %, or more repetitions, or correct the RPE.")
        assert [(related.place.excerpt, related.words) for related in finding.related] == [("60 %", "60 %")]

    def test_the_words_for_a_reserve(self, findings: Findings, week: Text) -> None:
        head = "athlete: {name: A, best lifts: {back squat: 100 kg}}"
        line = "back squat, sets: 3, reps: 2, load: 60 kg, rir: 1-2, rpe: 8-9"
        (finding,) = findings(week({"Lower": [line]}, head), self.RULE)
        assert finding.place.excerpt == "1-2"
        assert finding.counted == "RIR 1-2 after 2 repetitions at 60 kg."
        assert finding.change.startswith("Take about 92 %")  # for 2 and 2 left
        assert [related.words for related in finding.related] == ["60 kg", "best lift on file: 100 kg"]

    @pytest.mark.parametrize(
        ("line", "number"),
        [
            ("reps: 5, load: 60 %, rir: 0", 1),  # 6.42 - 5 = 1.42
            ("reps: 6, load: 60 %, rir: 0", 0),
            ("reps: 5, load: 60 %, rir: 0.5", 0),
            ("reps: 4, load: 60 %, rir: 1", 1),  # 2.42
            ("reps: 4, load: 60 %, rir: 1.5", 0),
            ("reps: 4, load: 60 %, rir: 0-1.5", 0),  # the high end counts
            ("reps: 4, load: 60 %, rpe: 9", 1),
            ("reps: 4, load: 60 %, rpe: 8.5", 0),
            ("reps: 4-6, load: 60 %, rir: 0", 0),  # so does that of the repetitions
            ("reps: 5, load: 60-70 %, rir: 0", 0),  # and of the load: 4.87
            ("reps: 3, load: 70 %, rir: 0", 1),  # 1.87
            ("reps: 4, load: 70 %, rir: 0", 0),
            ("reps: 1, load: 80 %, rir: 0", 1),  # 1.22
            ("reps: 2, load: 80 %, rir: 0", 0),
            ("reps: 3, load: 59 %, rir: 0", 1),  # the table ends, but a lighter load allows no fewer
            ("reps: 3, load: 40 %, rir: 0", 1),
            ("reps: 6, load: 40 %, rir: 0", 0),
            ("reps: 1, load: 101 %, rir: 0", 0),
            ("reps: 3/3/3, load: 60 %, rir: 0", 1),
            ("reps: 3/6/3, load: 60 %, rir: 0", 0),  # one set is hard enough
            ("reps: 3, load: 60/60/80 %, rir: 0", 0),
            ("reps: 3, load: 60/55/60 %, rir: 0", 1),
            ("reps: 3, load: 15RM, rir: 0", 1),  # about 69.6 %
            ("reps: 3, load: 60 %", 0),
            ("reps: 3, rir: 0", 0),
        ],
    )
    def test_both_sides_of_each_limit(self, findings: Findings, week: Text, line: str, number: int) -> None:
        assert len(findings(week({"Lower": [f"back squat, sets: 3, {line}"]}), self.RULE)) == number

    def test_the_heavy_end_is_named(self, findings: Findings, week: Text) -> None:
        text = week({"Lower": ["back squat, sets: 3, reps: 2, load: 60-65 %, rir: 0"]})
        (finding,) = findings(text, self.RULE)
        assert finding.wanted == "about 15 left, of about 17 at 65 %"

    def test_below_the_end_of_the_table_lifters_manage_at_least_as_many(
        self, findings: Findings, week: Text
    ) -> None:
        (finding,) = findings(
            week({"Lower": ["back squat, sets: 3, reps: 5, load: 40 %, rir: 0"]}), self.RULE
        )
        assert finding.wanted == "at least 15 left, of at least 20 at 40 %"

    @pytest.mark.parametrize(
        ("more", "number"),
        [
            ("sets: 5", 1),
            ("sets: 6", 0),
            ("sets: 4-6", 0),
            ("sets: 3, rest: 60 s", 1),
            ("sets: 3, rest: 59 s", 0),
            ("sets: 3, rest: 30-90 s", 0),
            ("sets: 3, tempo: 3-0-3-0", 1),
            ("sets: 3, tempo: 3-1-3-0", 0),
            ("sets: 3, tempo: 4-2-X-0", 1),
            ("every: 60 s, for: 3 min", 0),
            ("sets: 3, method: rest-pause", 0),
            ("sets: 3, method: cluster", 0),
            ("sets: 3, cluster rest: 20 s", 0),
        ],
    )
    def test_silent_where_something_else_tires(
        self, findings: Findings, week: Text, more: str, number: int
    ) -> None:
        line = f"back squat, {more}, reps: 3, load: 60 %, rir: 0"
        assert len(findings(week({"Lower": [line]}), self.RULE)) == number

    @pytest.mark.parametrize(
        "line",
        [
            "back squat, sets: 3, reps: 3+, load: 60 %, rir: 0",
            "back squat, sets: 3, reps: amrap, load: 60 %, rir: 0",
            "back squat, sets: 3, reps: 1+1+1, load: 60 %, rir: 0",
            "back squat, sets: 3, load: 60 %, rir: 0",
            "back squat, sets: 3, reps: 3, load: 60 kg, rir: 0",
            "barbell squat jump, sets: 3, reps: 3, load: 60 %, rir: 0",
            "eccentric seated leg curl, sets: 3, reps: 3, load: 60 %, rir: 0",
            "moon walk, sets: 3, reps: 3, load: 60 %, rir: 0",
        ],
    )
    def test_silent(self, findings: Findings, week: Text, line: str) -> None:
        assert findings(week({"Lower": [line]}), self.RULE) == []

    def test_silent_in_a_superset(self, findings: Findings) -> None:
        text = (
            "programme: Test\nsessions: [{session: Gym, exercises: [{superset: [{exercise: back squat, sets: 3, "
            "reps: 3, load: 60 %, rir: 0}, {exercise: lat pulldown, sets: 3}]}]}]\n"
        )
        assert findings(text, self.RULE) == []

    @pytest.mark.parametrize(
        ("options", "line", "number"),
        [
            ("{fewest manage: 2}", "reps: 6, load: 60 %, rir: 0", 1),  # 19.53 - 2 x 4.37 - 6 = 4.79
            ("{fewest manage: 4}", "reps: 3, load: 60 %, rir: 0", 0),
            ("{guess: 1.5}", "reps: 5, load: 60 %, rir: 0", 0),
            ("{fewest manage: 0, guess: 0}", "reps: 1, load: 100 %, rir: 0", 0),  # exactly what is left
            ("{fewest manage: 0, guess: 0}", "reps: 2, load: 90 %, rir: 0", 1),
            ("{guess: 0}", "reps: 6, load: 60 %, rir: 0", 1),
            ("{most sets: 2}", "reps: 3, load: 60 %, rir: 0", 0),
            ("{shortest rest: 30}", "reps: 3, load: 60 %, rir: 0, rest: 30 s", 1),
            ("{slowest: 5}", "reps: 3, load: 60 %, rir: 0, tempo: 3-0-3-0", 0),
            ("{slowest: 0.2}", "reps: 3, load: 60 %, rir: 0", 1),  # no tempo is no slow one
        ],
    )
    def test_options(self, findings: Findings, week: Text, options: str, line: str, number: int) -> None:
        text = week({"Lower": [f"back squat, sets: 3, {line}"]})
        assert len(findings(text, self.RULE, settings(self.RULE, options))) == number

    def test_weeks_are_drawn_together_with_the_words_of_the_worst(
        self, findings: Findings, week: Text
    ) -> None:
        line = "back squat, sets: 3, reps: {1: 5, 2: 3, 3: 4}, load: 60 %, rir: 0"
        (finding,) = findings(week({"Lower": [line]}, "weeks: 3"), self.RULE)
        assert finding.weeks == (1, 2, 3)
        assert finding.counted == "RIR 0 after 3 repetitions at 60 %."


class TestLoadAndEffortMissing:
    """A line says how heavy or how hard: common practice, no source."""

    RULE = "load-and-effort-missing"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        lines = ["overhead press, sets: 3, reps: 8", "bench press, sets: 3, rir: 2"]
        (finding,) = findings(week({"monday Push": lines}), self.RULE)
        assert findings(week({"monday Push": lines[::-1]}), self.RULE) == []  # one that does not lead
        assert (finding.severity, finding.confidence) == ("note", "common practice")
        assert (finding.place.excerpt, finding.where) == ("overhead press", "Push, overhead press")
        assert finding.counted == "1 line says neither load nor effort: overhead press."
        assert finding.wanted == "a load, RM, RIR or RPE for each"
        assert finding.change == "Write one, such as `rir: 2`."
        assert finding.related == ()

    def test_a_session_without_a_name(self, findings: Findings) -> None:
        text = "programme: Test\nsessions: [{exercises: [{exercise: bench press, sets: 3, reps: 8}]}]\n"
        (finding,) = findings(text, self.RULE)
        assert finding.where == "bench press"

    def test_one_note_counts_them(self, findings: Findings, week: Text) -> None:
        names = ["bench press", "overhead press", "front squat", "back squat", "deadlift"]
        (finding,) = findings(
            week({"monday A": [f"{name}, sets: 3" for name in names]}, "weeks: 3"), self.RULE
        )
        assert finding.counted == (
            "2 lines say neither load nor effort: bench press and overhead press."
        )  # what comes third in its session is chosen by feel
        assert [related.words for related in finding.related] == ["A, overhead press"]

    @pytest.mark.parametrize(
        ("line", "number"),
        [
            ("bench press, sets: 3, reps: 8", 1),
            ("bench press, sets: 1, reps: 8", 1),
            ("bench press, sets: 3, load: 60 kg", 0),
            ("bench press, sets: 3, load: 8RM", 0),
            ("bench press, sets: 3, load: pin 7", 0),
            ("bench press, sets: 3, rir: 2", 0),
            ("bench press, sets: 3, rpe: 8", 0),
            ("bench press, sets: 3, reps: amrap", 0),
            ("bench press, sets: 3, reps: 5+", 0),
            ("bench press, sets: 3, reps: 5, velocity: 0.5 m/s", 0),
            ("bench press, sets: 3, reps: 5, velocity loss: 20 %", 0),
            ("bench press, sets: 3, reps: 5, load: heavy", 0),  # written, but cannot be read: said elsewhere
            ("bench press, sets: 3, reps: 5, rir: some", 0),
            ("bench press, sets: 3, reps: some", 1),
            ("bench press, sets: 3, reps: 5, RPE: 8", 0),  # the misspelt key is the one thing to say
            ("bench press, sets: 3, reps: 5, Rir: 2", 0),
            ("bench press, sets: 3, reps: 5, 'rpe ': 8", 0),
            ("bench press, sets: 3, reps: 5, laod: 60 kg", 0),
            ("bench press, sets: 3, reps: 5, weight: 60 kg", 0),
            ("bench press, work: [{sets: 1, reps: 3, RPE: 8}, {sets: 2, reps: 5, RPE: 7}]", 0),
            ("bench press, sets: 3, reps: 5, tmpo: 3010", 1),
            ("bench press, sets: 3, reps: 5, colour: red", 1),
            ("push-up, sets: 3, reps: 8", 0),
            ("band curl, sets: 3, reps: 8", 0),
            ("Nordic curl, sets: 3, reps: 8", 0),
            ("dumbbell curl, sets: 3", 0),
            ("goblet squat, sets: 3", 0),
            ("kettlebell deadlift, sets: 3", 0),
            ("seated leg curl, sets: 3", 0),
            ("cable pushdown, sets: 3", 0),
            ("trap bar deadlift, sets: 3", 1),
            ("guided-bar squat, sets: 3", 1),
            ("weighted back extension, sets: 3", 0),
            ("sandbag squat, sets: 3", 0),
            ("kettlebell swing, sets: 3, reps: 8", 0),
            ("farmer's carry, sets: 3, distance: 20 m", 0),
            ("bench press, sets: {1: 0-3}", 1),
            ("moon walk, sets: 3, reps: 8", 0),
        ],
    )
    def test_what_says_enough(self, findings: Findings, week: Text, line: str, number: int) -> None:
        assert len(findings(week({"Gym": [line]}), self.RULE)) == number

    def test_a_line_of_no_sets_needs_nothing(self, findings: Findings, week: Text) -> None:
        line = "bench press, sets: {1: 3, 2: 0}, rir: {1: 2}"
        (said,) = findings(week({"Gym": ["bench press, sets: {1: 0, 2: 3}"]}, "weeks: 2"), self.RULE)
        assert said.counted.startswith("1 line")
        assert findings(week({"Gym": [line]}, "weeks: 2"), self.RULE) == []

    def test_a_group_of_sets_among_others(self, findings: Findings) -> None:
        text = (
            "programme: Test\nsessions: [{session: Gym, exercises: [{exercise: bench press, work: "
            "[{sets: 1, reps: amrap}, {sets: 3, reps: 5}]}]}]\n"
        )
        (finding,) = findings(text, self.RULE)
        assert finding.counted == "1 line says neither load nor effort: bench press."

    def test_the_first_in_the_file_is_named(self, findings: Findings) -> None:
        text = (
            "programme: Test\nsessions:\n- {session: B, day: friday, exercises: [{exercise: back squat, sets: 3}]}\n"
            "- {session: A, day: monday, exercises: [{exercise: bench press, sets: 3}]}\n"
        )
        (finding,) = findings(text, self.RULE)
        assert finding.place.excerpt == "back squat"


class TestBestLiftMissing:
    """A percentage is of a lift that is on file: common practice, no source."""

    RULE = "best-lift-missing"
    MARA = "athlete: {name: Mara, best lifts: {back squat: 100 kg}}"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        lines = ["back squat, sets: 3, load: 80 %", "bench press, sets: 3, load: 80 %"]
        (finding,) = findings(week({"monday Gym": lines}, self.MARA), self.RULE)
        assert (finding.severity, finding.confidence) == ("note", "common practice")
        assert (finding.place.line, finding.place.excerpt) == (8, "80 %")
        assert finding.where == "Gym, bench press"
        assert finding.counted == "80 % of bench press, but no best on file for Mara."
        assert finding.wanted == "the best lift on file"
        assert finding.change == ("Write it under `best lifts`, or write a load in kg or an effort.")
        assert finding.related == ()

    def test_one_note_for_all(self, findings: Findings, week: Text) -> None:
        names = ["bench press", "leg extension", "seated leg curl", "lat pulldown", "bench press"]
        (finding,) = findings(
            week({"Gym": [f"{name}, sets: 3, load: 80 %" for name in names]}, self.MARA), self.RULE
        )
        assert finding.counted == (
            "80 % of bench press, leg extension, seated leg curl and 1 more, but no best on file for Mara."
        )
        assert finding.change.startswith("Write them under")
        assert [related.words for related in finding.related] == [f"Gym, {name}" for name in names[1:4]]

    @pytest.mark.parametrize(
        ("line", "number"),
        [
            ("back squat, sets: 3, load: 80 %", 0),
            ("front squat, sets: 3, load: 80 %", 0),  # a near relative with the same implement
            ("leg press, sets: 3, load: 80 %", 1),  # the same pattern, a machine
            ("bench press, sets: 3, load: 80 %", 1),  # the same implement, another pattern
            ("barbell curl, sets: 3, load: 80 %", 1),
            ("bench press, sets: 3, load: 80 kg", 0),
            ("bench press, sets: 3, load: 8RM", 0),
            ("bench press, sets: 3, load: 90 % of top set", 0),
            ("bench press, sets: 3, load: 20 % bodyweight", 0),
            ("bench press, sets: 3, rir: 2", 0),
            ("bench press, sets: {1: 0}, load: 80 %", 0),
            ("bench press, sets: {1: 0-3}, load: 80 %", 1),
            ("moon walk, sets: 3, load: 80 %", 0),
        ],
    )
    def test_which_lines(self, findings: Findings, week: Text, line: str, number: int) -> None:
        assert len(findings(week({"Gym": [line]}, self.MARA), self.RULE)) == number

    def test_lifts_without_a_pattern_are_nobodys_relatives(self, findings: Findings, week: Text) -> None:
        head = "athlete: {name: Mara, best lifts: {leg extension: 80 kg}}"
        assert len(findings(week({"Gym": ["seated leg curl, sets: 3, load: 80 %"]}, head), self.RULE)) == 1

    def test_a_lift_without_a_pattern_is_its_own(self, findings: Findings, week: Text) -> None:
        head = "athlete: {name: Mara, best lifts: {leg extension: 80 kg}}"
        assert findings(week({"Gym": ["leg extension, sets: 3, load: 80 %"]}, head), self.RULE) == []

    @pytest.mark.parametrize(
        "head",
        ["goal: strength", "athlete: {name: Mara}", "athlete: {name: M, best lifts: {moon walk: 20 kg}}"],
    )
    def test_silent(self, findings: Findings, week: Text, head: str) -> None:
        assert findings(week({"Gym": ["bench press, sets: 3, load: 80 %"]}, head), self.RULE) == []

    @pytest.mark.parametrize(
        ("file", "number"), [("name: M\n", 1), ("name: M\nbest lifts: {bench press: 60 kg}\n", 0)]
    )
    def test_an_athlete_with_a_file_of_their_own(
        self, findings: Findings, week: Text, file: str, number: int
    ) -> None:
        text = week({"Gym": ["bench press, sets: 3, load: 80 %"]}, "athlete: m.athlete.yaml")
        assert len(findings(text, self.RULE, {"m.athlete.yaml": file})) == number


class TestBestLiftOld:
    """Twelve weeks from the test to the start: common practice, no source."""

    RULE = "best-lift-old"

    def text(
        self,
        week: Text,
        tested: str,
        line: str = "bench press, sets: 3, load: 80 %",
        head: str = "starts: 2026-03-02",
    ) -> str:
        best = f"{{bench press: {{load: 60 kg{tested}}}}}"
        return week({"Gym": [line]}, f"athlete: {{name: Mara, best lifts: {best}}}\n{head}".strip())

    def test_the_words(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(self.text(week, ", tested: 2025-11-10"), self.RULE)
        assert (finding.severity, finding.confidence) == ("note", "common practice")
        assert (finding.place.excerpt, finding.where) == ("80 %", "Gym, bench press")
        assert finding.counted == "Last tested: bench press 16 weeks before the start."
        assert finding.wanted == "a test no older than 12 weeks"
        assert finding.change == ("Test again, estimate it from a hard set, or go by RIR or RPE.")
        assert [(related.place.excerpt, related.words) for related in finding.related] == [
            ("bench press", "tested 2025-11-10")
        ]

    @pytest.mark.parametrize(
        ("tested", "number"),
        [
            (", tested: 2025-12-08", 0),  # 84 days
            (", tested: 2025-12-07", 1),
            (", tested: 2026-04-01", 0),
            ("", 0),
        ],
    )
    def test_twelve_weeks(self, findings: Findings, week: Text, tested: str, number: int) -> None:
        assert len(findings(self.text(week, tested), self.RULE)) == number

    @pytest.mark.parametrize(
        ("line", "number"),
        [
            ("bench press, sets: 3, load: 50 kg", 0),
            ("bench press, sets: 3, rir: 2", 0),
            ("back squat, sets: 3, load: 80 %", 0),
            ("bench press, sets: {1: 0}, load: 80 %", 0),
            ("bench press, sets: 3, load: 8RM", 0),
        ],
    )
    def test_only_what_rests_on_it(self, findings: Findings, week: Text, line: str, number: int) -> None:
        assert len(findings(self.text(week, ", tested: 2025-11-10", line), self.RULE)) == number

    @pytest.mark.parametrize(("tested", "number"), [("2025-10-13", 0), ("2025-10-12", 1)])
    def test_today_stands_in_for_a_start(
        self, findings: Findings, week: Text, tested: str, number: int
    ) -> None:
        text = self.text(week, f", tested: {tested}", head="goal: strength")  # today is 2026-01-05
        assert len(findings(text, self.RULE)) == number

    @pytest.mark.parametrize(("oldest", "number"), [(16, 0), (15.5, 1)])
    def test_the_limit_moves(self, findings: Findings, week: Text, oldest: float, number: int) -> None:
        found = findings(
            self.text(week, ", tested: 2025-11-10"), self.RULE, settings(self.RULE, f"{{oldest: {oldest}}}")
        )
        assert [finding.wanted for finding in found] == [
            "a test no older than 15.5 weeks (your team's limit)"
        ] * number

    def test_several_lifts_and_the_newest_test_of_each(self, findings: Findings, week: Text) -> None:
        best = (
            "{bench press: {load: 60 kg, tested: 2025-01-06}, flat bench press: {load: 60 kg, tested: %s},"
            " back squat: {load: 90 kg, tested: 2025-06-02}}"
        )
        lines = [
            "bench press, sets: 3, load: 80 %",
            "back squat, sets: 3, load: 80 %",
            "back squat, sets: 1, load: 85 %",
        ]
        for newest, counted in (
            ("2025-12-29", "Last tested: back squat 39 weeks before the start."),
            (
                "2025-11-10",
                "Last tested: bench press 16 weeks before the start and back squat 39 weeks before the start.",
            ),
        ):
            head = f"starts: 2026-03-02\nathlete: {{name: Mara, best lifts: {best.replace('%s', newest)}}}"
            (finding,) = findings(week({"Gym": lines}, head), self.RULE)
            assert finding.counted == counted
        assert [related.words for related in finding.related] == ["tested 2025-11-10", "tested 2025-06-02"]

    def test_silent_where_one_test_has_no_day(self, findings: Findings, week: Text) -> None:
        head = (
            "starts: 2026-03-02\nathlete: {name: Mara, best lifts: {bench press: {load: 60 kg, tested: 2025-01-06},"
            " flat bench press: 62 kg}}"
        )
        assert findings(week({"Gym": ["bench press, sets: 3, load: 80 %"]}, head), self.RULE) == []


class TestTopSetMissing:
    """A share of a top set needs one: by what the words mean."""

    RULE = "top-set-missing"
    SHARE = "{sets: 3, reps: 5, load: 90 % of top set}"

    def session(self, *lines: str) -> str:
        items = "".join(f"      - {line}\n" for line in lines)
        return f"programme: Test\nweeks: 2\nsessions:\n  - session: Gym\n    exercises:\n{items}"

    def test_the_words(self, findings: Findings) -> None:
        (finding,) = findings(self.session(f"{{exercise: back squat, work: [{self.SHARE}]}}"), self.RULE)
        assert (finding.severity, finding.confidence) == ("warning", "fact")
        assert (finding.place.excerpt, finding.where) == ("90 % of top set", "Gym, back squat")
        assert finding.counted == "90 % of top set, but no set of back squat comes before."
        assert finding.wanted == "a top set before it"
        assert finding.change == (
            "Put one above, such as `{sets: 1, reps: 3, rpe: 8}`, or write the load itself."
        )
        assert finding.weeks == (1, 2)

    @pytest.mark.parametrize(
        ("lines", "number"),
        [
            (["{exercise: back squat, work: [{sets: 1, reps: 3, rpe: 8}, SHARE]}"], 0),
            (["{exercise: back squat, work: [{sets: 1, load: 85 %}, SHARE, SHARE]}"], 0),
            (["{exercise: back squat, work: [SHARE, {sets: 1, reps: 3, rpe: 8}]}"], 1),
            (
                [
                    "{exercise: back squat, sets: 1, rpe: 8}",
                    "{exercise: squat, sets: 3, load: 90 % of top set}",
                ],
                0,
            ),
            (
                ["{exercise: back squat, sets: 3, load: 90 % of top set}", "{exercise: back squat, sets: 1}"],
                1,
            ),
            (
                [
                    "{exercise: bench press, sets: 1, rpe: 8}",
                    "{exercise: back squat, sets: 3, load: 90 % of top set}",
                ],
                1,
            ),
            (["{exercise: back squat, work: [{sets: {1: 0, 2: 1}, rpe: 8}, SHARE]}"], 1),
            (["{exercise: back squat, sets: {1-2: 0}, load: 90 % of top set}"], 0),
            (["{exercise: moon walk, work: [{sets: 1, rpe: 8}, SHARE]}"], 0),
            (
                [
                    "{exercise: moon walk, sets: 1, rpe: 8}",
                    "{exercise: moon walk, sets: 3, load: 90 % of top set}",
                ],
                0,
            ),
            (["{exercise: moon walk, work: [SHARE]}"], 1),
            (["{exercise: back squat, work: [{sets: {1-2: 0-1}, rpe: 8}, SHARE]}"], 0),
            (["{exercise: back squat, sets: {1-2: 0-3}, load: 90 % of top set}"], 1),
            (
                [
                    "{exercise: moon walk, sets: 1, rpe: 8}",
                    "{exercise: moon hop, sets: 3, load: 90 % of top set}",
                ],
                1,
            ),
            (["{exercise: back squat, sets: 3, load: 90 %}"], 0),
            (["{exercise: {1: back squat, 2: front squat}, work: [{sets: 1, rpe: 8}, SHARE]}"], 0),
        ],
    )
    def test_what_comes_before(self, findings: Findings, lines: list[str], number: int) -> None:
        text = self.session(*(line.replace("SHARE", self.SHARE) for line in lines))
        assert len(findings(text, self.RULE)) == number

    def test_only_the_weeks_without_one(self, findings: Findings) -> None:
        line = f"{{exercise: back squat, work: [{{sets: {{1: 0, 2: 1}}, rpe: 8}}, {self.SHARE}]}}"
        (finding,) = findings(self.session(line), self.RULE)
        assert finding.weeks == (1,)

    def test_each_session_by_itself(self, findings: Findings) -> None:
        text = self.session("{exercise: back squat, sets: 1, rpe: 8}")
        other = f"  - {{session: Other, exercises: [{{exercise: back squat, work: [{self.SHARE}]}}]}}\n"
        (finding,) = findings(text + other, self.RULE)
        assert finding.where == "Other, back squat"


class TestLoadNotSettable:
    """Steps of 0.5 kg, plates of 0.25 kg a side being the smallest in use: common practice, no source."""

    RULE = "load-not-settable"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"Push": ["bench press, sets: 3, load: 61.3 kg"]}), self.RULE)
        assert (finding.severity, finding.confidence) == ("note", "common practice")
        assert (finding.place.excerpt, finding.where) == ("61.3 kg", "Push, bench press")
        assert finding.counted == "Bench press: no barbell comes to 61.3 kg."
        assert finding.wanted == "a load that there is, such as in steps of 1.25 kg"
        assert finding.change == "Write 61.25 or 62.5 kg."

    @pytest.mark.parametrize(
        ("line", "number"),
        [
            ("bench press, sets: 3, load: 61 kg", 0),
            ("bench press, sets: 3, load: 61.5 kg", 0),
            ("bench press, sets: 3, load: 61.25 kg", 0),  # with a pair of discs of 0.625 kg
            ("bench press, sets: 3, load: 61.75 kg", 1),
            ("bench press, sets: 3, load: 60-61.3 kg", 1),
            ("bench press, sets: 3, load: 61.3-65 kg", 1),
            ("bench press, sets: 3, load: 60/61.3/62 kg", 1),
            ("bench press, sets: 3, load: 61.3 lb", 0),
            ("bench press, sets: 3, load: 61.3 %", 0),
            ("bench press, sets: 3, rir: 2", 0),
            ("dumbbell curl, sets: 3, load: 2 x 12.3 kg", 1),
            ("dumbbell curl, sets: 3, load: 2 x 12.5 kg", 0),
            ("dumbbell curl, sets: 3, load: 2 x 12.25 kg", 1),  # one bell at a time
            ("kettlebell deadlift, sets: 3, load: 16.2 kg", 1),
            ("kettlebell deadlift, sets: 3, load: 16.5 kg", 0),
            ("kettlebell deadlift, sets: 3, load: 17.5 kg", 0),
            ("trap bar deadlift, sets: 3, load: 90.1 kg", 1),
            ("trap bar deadlift, sets: 3, load: 90.5 kg", 0),
            ("guided-bar squat, sets: 3, load: 90.1 kg", 1),
            ("guided-bar squat, sets: 3, load: 90.5 kg", 0),
            ("weighted back extension, sets: 3, load: 5.25 kg", 0),
            ("weighted back extension, sets: 3, load: 5.5 kg", 0),
            ("weighted back extension, sets: 3, load: 5.3 kg", 1),
            ("seated leg curl, sets: 3, load: 31.3 kg", 0),  # stacks differ
            ("pull-up, sets: 3, load: bodyweight + 2.3 kg", 0),
            ("moon walk, sets: 3, load: 61.3 kg", 0),
        ],
    )
    def test_which_loads(self, findings: Findings, week: Text, line: str, number: int) -> None:
        assert len(findings(week({"Push": [line]}), self.RULE)) == number

    @pytest.mark.parametrize(
        ("load", "change"),
        [
            ("61 kg", "Write 60 or 62.5 kg."),
            ("61.5-64 kg", "Write 60 or 62.5 kg."),
            ("1 kg", "Write 2.5 kg."),
            ("62.5 kg", ""),
        ],
    )
    def test_steps_of_the_team(self, findings: Findings, week: Text, load: str, change: str) -> None:
        text = week({"Push": [f"bench press, sets: 3, load: {load}", "dumbbell curl, sets: 3, load: 7.3 kg"]})
        found = findings(text, self.RULE, settings(self.RULE, "{steps: {barbell: 2.5}}"))
        assert [finding.change for finding in found] == ([change] if change else [])

    def test_a_step_of_nothing_says_nothing(self, findings: Findings, week: Text) -> None:
        text = week({"Push": ["bench press, sets: 3, load: 61.3 kg"]})
        assert findings(text, self.RULE, settings(self.RULE, "{steps: {barbell: 0}}")) == []


ON = {"spotline.yaml": "rules: {light-implement-heavy: note}"}


class TestLightImplementHeavy:
    """Dumbbells serve the high-repetition hinge: cp-implement, common practice, no source."""

    RULE = "light-implement-heavy"

    def test_off_until_asked_for(self, findings: Findings, week: Text) -> None:
        text = week({"Legs": ["dumbbell Romanian deadlift, sets: 3, reps: 4-5"]})
        assert findings(text, self.RULE) == []

    def test_the_words(self, findings: Findings, week: Text) -> None:
        text = week({"Legs": ["dumbbell Romanian deadlift, sets: 3, reps: 4-5"]})
        (finding,) = findings(text, self.RULE, ON)
        assert (finding.severity, finding.confidence) == ("note", "common practice")
        assert finding.place.excerpt == "dumbbell Romanian deadlift"
        assert finding.where == "Legs, dumbbell Romanian deadlift"
        assert finding.counted == "Heavy for a dumbbell: dumbbell Romanian deadlift for 4-5 repetitions."
        assert finding.wanted == "6 repetitions or more"
        assert finding.change == "Use a bar for the heavy sets, or a lighter load for more repetitions."

    @pytest.mark.parametrize(
        ("line", "number"),
        [
            ("dumbbell Romanian deadlift, sets: 3, reps: 5", 1),
            ("dumbbell Romanian deadlift, sets: 3, reps: 6", 0),
            ("dumbbell Romanian deadlift, sets: 3, reps: 4-6", 0),
            ("dumbbell Romanian deadlift, sets: 3, load: 5RM", 1),
            ("dumbbell Romanian deadlift, sets: 3, load: 6RM", 0),
            ("dumbbell Romanian deadlift, sets: 3, load: 20 kg", 0),
            ("dumbbell Romanian deadlift, sets: 3, load: 5 kg", 0),
            ("dumbbell Romanian deadlift, sets: 3", 0),
            ("dumbbell Romanian deadlift, sets: 3, reps: amrap", 0),
            ("dumbbell Romanian deadlift, sets: 3, reps: 5, rir: 8", 0),
            ("kettlebell deadlift, sets: 3, reps: 5", 1),
            ("band good morning, sets: 3, reps: 5", 1),
            ("cable pull-through, sets: 3, reps: 5", 1),
            ("Romanian deadlift, sets: 3, reps: 5", 0),
            ("goblet squat, sets: 3, reps: 5", 0),
            ("kettlebell swing, sets: 3, reps: 5", 0),
            ("moon walk, sets: 3, reps: 5", 0),
        ],
    )
    def test_which_lines(self, findings: Findings, week: Text, line: str, number: int) -> None:
        assert len(findings(week({"Legs": [line]}), self.RULE, ON)) == number

    @pytest.mark.parametrize(
        ("options", "number"),
        [
            ("{severity: note, fewest: 8}", 1),
            ("{severity: note, fewest: 7}", 0),
            ("{severity: note, fewest: 8, implements: [band]}", 0),
        ],
    )
    def test_options(self, findings: Findings, week: Text, options: str, number: int) -> None:
        text = week({"Legs": ["dumbbell Romanian deadlift, sets: 3, reps: 7"]})
        assert len(findings(text, self.RULE, settings(self.RULE, options))) == number


class TestStiffHingeTooHeavy:
    """Stiff-knee hinges no heavier than the hamstrings can own, 4 repetitions: cp-heavy-hinge, common practice, no source."""

    RULE = "stiff-hinge-too-heavy"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(
            week({"Legs": ["stiff-leg deadlift, sets: 3, reps: 3, rir: 0, load: 3RM"]}), self.RULE
        )
        assert (finding.severity, finding.confidence) == ("note", "common practice")
        assert (finding.place.excerpt, finding.where) == ("stiff-leg deadlift", "Legs, stiff-leg deadlift")
        assert finding.counted == "Heavy on straight legs: stiff-leg deadlift for 3 repetitions at 3RM."
        assert finding.wanted == "a load for 4 repetitions or more"
        assert finding.change == "Go lighter, or do the heavy sets as deadlifts."

    def test_the_words_with_a_reserve(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"Legs": ["good morning, sets: 3, reps: 2-3, rir: 1-2"]}), self.RULE)
        assert (
            finding.counted == "Heavy on straight legs: good morning for 2-3 repetitions with 1-2 in reserve."
        )

    @pytest.mark.parametrize(
        ("line", "number"),
        [
            ("stiff-leg deadlift, sets: 3, reps: 3", 1),
            ("stiff-leg deadlift, sets: 3, reps: 4", 0),
            ("stiff-leg deadlift, sets: 3, reps: 3-5", 1),  # the heavy end counts
            ("stiff-leg deadlift, sets: 3, reps: 5/4/3", 1),
            ("stiff-leg deadlift, sets: 3, reps: 3, rir: 1", 0),
            ("stiff-leg deadlift, sets: 3, reps: 3, rir: 0.5", 1),
            ("stiff-leg deadlift, sets: 3, reps: 2, rpe: 8", 0),
            ("stiff-leg deadlift, sets: 3, reps: 2, rpe: 9", 1),
            ("stiff-leg deadlift, sets: 3, load: 3RM", 1),
            ("stiff-leg deadlift, sets: 3, load: 4RM", 0),
            ("stiff-leg deadlift, sets: 3, load: 3-5RM", 1),
            ("stiff-leg deadlift, sets: 3, reps: 2, load: 6RM", 0),
            ("stiff-leg deadlift, sets: 3, reps: 3, load: 90 %", 0),  # 4.94 repetitions: nuzzo-2024
            ("stiff-leg deadlift, sets: 3, reps: 3, load: 93 %", 1),  # 3.76
            ("stiff-leg deadlift, sets: 3, reps: 3, load: 90-93 %", 1),
            ("stiff-leg deadlift, sets: 3, reps: 1, load: 100 %", 1),
            ("stiff-leg deadlift, sets: 3, reps: 1, load: 105 %", 0),  # more-reps-than-load-allows speaks
            ("stiff-leg deadlift, sets: 3, reps: 3, load: 50 %", 0),
            ("stiff-leg deadlift, sets: 3, reps: 3, load: 120 kg", 1),
            ("stiff-leg deadlift, sets: 3, reps: amrap", 0),
            ("stiff-leg deadlift, sets: 3", 0),
            ("stiff-leg deadlift, sets: 3, reps: 1+1+1", 0),
            ("stiff-leg deadlift, sets: 3, reps: 3, method: cluster", 0),
            ("stiff-leg deadlift, sets: 3, reps: 3, cluster rest: 20 s", 0),
            ("stiff-leg deadlift, sets: 3, reps: 3, rir: 8", 0),
            ("stiff-leg deadlift, sets: 3, reps: 3, rir: 8, load: 95 %", 0),
            ("standing calf raise, sets: 3, reps: 3", 0),
            ("kettlebell swing, sets: 3, reps: 3", 0),
            ("Romanian deadlift, sets: 3, reps: 3", 1),
            ("good morning, sets: 3, reps: 3", 1),
            ("deadlift, sets: 3, reps: 3", 0),
            ("trap bar deadlift, sets: 3, reps: 3", 0),
            ("back extension, sets: 3, reps: 3", 0),  # nothing to load
            ("back squat, sets: 3, reps: 3", 0),
            ("seated leg curl, sets: 3, reps: 3", 0),
            ("moon walk, sets: 3, reps: 3", 0),
        ],
    )
    def test_which_lines(self, findings: Findings, week: Text, line: str, number: int) -> None:
        assert len(findings(week({"Legs": [line]}), self.RULE)) == number

    @pytest.mark.parametrize(
        ("options", "line", "number"),
        [
            ("{fewest: 5}", "stiff-leg deadlift, sets: 3, reps: 4", 1),
            ("{fewest: 3}", "stiff-leg deadlift, sets: 3, reps: 3", 0),
            ("{straight: 60}", "deadlift, sets: 3, reps: 3", 1),
            ("{straight: 20}", "good morning, sets: 3, reps: 3", 1),
            ("{straight: 19}", "good morning, sets: 3, reps: 3", 0),
        ],
    )
    def test_options(self, findings: Findings, week: Text, options: str, line: str, number: int) -> None:
        assert len(findings(week({"Legs": [line]}), self.RULE, settings(self.RULE, options))) == number

    @pytest.mark.parametrize(
        ("keys", "number"),
        [
            ("path: {hip: [90, 0], knee: 30, ankle: 0}", 1),
            ("path: {hip: [90, 0], knee: 31, ankle: 0}", 0),
            ("kind: isometric\n    actions: [hip extension]", 0),  # nobody says how straight it is held
        ],
    )
    def test_how_straight_the_knee_must_be(
        self, findings: Findings, week: Text, keys: str, number: int
    ) -> None:
        own = (
            "exercises:\n  - name: boathouse hinge\n    implement: sandbag\n    pattern: hip hinge\n"
            f"    {keys}\n"
        )
        files = {"own.exercises.yaml": own, "spotline.yaml": "exercises: [own.exercises.yaml]\n"}
        text = week({"Legs": ["boathouse hinge, sets: 3, reps: 3"]})
        assert len(findings(text, self.RULE, files)) == number

    def test_stands_back_under_rehabilitation(self, findings: Findings, week: Text) -> None:
        assert (
            findings(week({"Legs": ["stiff-leg deadlift, sets: 3, reps: 3"]}, REHABILITATION), self.RULE)
            == []
        )
