"""Rules on repetitions and effort."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.findings.finding import Finding

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]

REHABILITATION = "rehabilitation: {stage: return, advised by: physiotherapist, until: 2026-12-31}"


def twice(*lines: str, head: str = "") -> str:
    """A programme for size of eight weeks, its one session on two days."""
    return (
        f"programme: Test\ngoal: hypertrophy\nweeks: 8\n{head}sessions:\n  - session: Lower\n    day: [monday, thursday]\n    exercises:\n"
        + "".join(f"      - {{exercise: {line}}}\n" for line in lines)
    )


class TestRepRangeNarrow:
    """A heavy slot (4-8) and a light slot (8-20) in the week: cp-spread, common practice, no source."""

    RULE = "rep-range-narrow"

    def test_the_words_where_all_is_light(self, findings: Findings) -> None:
        (finding,) = findings(twice("leg extension, sets: 4, reps: 10-12"), self.RULE)
        assert (finding.severity, finding.confidence) == ("note", "convention")
        assert (finding.place.excerpt, finding.where) == ("leg extension", "Lower, leg extension")
        assert finding.counted == "No direct set under 8 repetitions for the quadriceps."
        assert finding.wanted == "some heavy sets in the block"
        assert finding.change == "Write `reps: 4-7` for one exercise on one day."
        assert "sources on fibre types conflict" in finding.why

    def test_a_team_has_to_ask_for_it(self, findings: Findings) -> None:
        text = twice("leg extension, sets: 4, reps: 10-12")
        assert self.RULE not in {one.rule for one in findings(text)}
        assert self.RULE in {
            one.rule for one in findings(text, files={"spotline.yaml": f"rules: {{{self.RULE}: run}}"})
        }

    def test_the_words_where_all_is_heavy(self, findings: Findings) -> None:
        (finding,) = findings(
            twice("leg extension, sets: 4, reps: 5", "seated leg curl, sets: 4, reps: 6"), self.RULE
        )
        assert finding.counted == "No direct set from 8 repetitions for the hamstrings and quadriceps."
        assert finding.wanted == "some light sets in the block"
        assert finding.change == "Write `reps: 8-20` for one exercise on one day."

    @pytest.mark.parametrize(
        ("lines", "said"),
        [
            (["leg extension, sets: 4, reps: 10"], 1),  # 4 x 2 days
            (["leg extension, sets: 3, reps: 10"], 0),  # 6 sets: too few for both
            (["leg extension, sets: 3-5, reps: 10"], 1),  # middle 8
            (["leg extension, sets: 3-4, reps: 10"], 0),  # middle 7
            (["leg extension, sets: 4, reps: 8"], 1),
            (["leg extension, sets: 4, reps: 7"], 1),  # heavy throughout
            (["leg extension, sets: 3, reps: 10", "leg extension, sets: 1, reps: 5"], 0),
            (["leg extension, sets: 3, reps: 10", "leg press, sets: 1, reps: 5"], 0),
            (
                ["leg extension, sets: 4, reps: 7-9", "leg extension, sets: 1, reps: 6-9"],
                0,
            ),  # middles 8 and 7.5
            (["leg extension, sets: 4, reps: 10, rir: 7"], 0),  # easy sets do not count
            (["leg extension, sets: 4, reps: amrap"], 0),  # nobody knows how many
            (["leg extension, sets: 4, reps: 10", "leg extension, sets: 1, reps: amrap"], 0),
            (["leg extension, sets: 4, load: 12RM"], 1),
            (["lat pulldown, sets: 3, reps: 10", "bent-over row, sets: 1, reps: 5"], 0),
            (["moon walk, sets: 9, reps: 10"], 0),
        ],
    )
    def test_edges(self, findings: Findings, lines: list[str], said: int) -> None:
        assert len(findings(twice(*lines), self.RULE)) == said

    def test_one_day_is_too_few(self, findings: Findings, week: Text) -> None:
        assert (
            findings(
                week({"monday": ["leg extension, sets: 8, reps: 10"]}, "goal: hypertrophy\nweeks: 8"),
                self.RULE,
            )
            == []
        )

    def test_sessions_without_a_day_are_left_alone(self, findings: Findings, week: Text) -> None:
        lines = {"A": ["leg extension, sets: 4, reps: 10"], "B": ["leg extension, sets: 4, reps: 10"]}
        assert findings(week(lines, "goal: hypertrophy\nweeks: 8"), self.RULE) == []

    @pytest.mark.parametrize("goal", ["strength", "power", "muscular endurance", "general health"])
    def test_only_for_size(self, findings: Findings, goal: str) -> None:
        assert (
            findings(twice("leg extension, sets: 4, reps: 10").replace("hypertrophy", goal), self.RULE) == []
        )

    @pytest.mark.parametrize(
        ("head", "said"),
        [
            ("athlete: {name: A, level: novice}\n", 0),
            ("athlete: {name: A, level: intermediate}\n", 1),
            ("athlete: {name: A}\n", 1),
            ("athletes: [{name: A, level: novice}, {name: B, level: advanced}]\n", 1),
            ("athletes: [{name: A, level: novice}, {name: B, level: novice}]\n", 0),
            ("phase: in-season\n", 0),
            ("phase: build\n", 1),
            (REHABILITATION + "\n", 0),
        ],
    )
    def test_off_for_novices_in_season_and_under_rehabilitation(
        self, findings: Findings, head: str, said: int
    ) -> None:
        assert len(findings(twice("leg extension, sets: 4, reps: 10", head=head), self.RULE)) == said

    def test_another_week_of_the_block_will_do(self, findings: Findings) -> None:
        assert findings(twice("leg extension, sets: 4, reps: {1-7: 10, 8: 6}"), self.RULE) == []

    def test_the_fullest_week_decides(self, findings: Findings) -> None:
        (finding,) = findings(twice("leg extension, sets: {1-7: 2, 8: 4}, reps: 10"), self.RULE)
        assert finding.weeks == tuple(range(1, 9))
        assert [related.words for related in finding.related] == ["Lower, leg extension, for the quadriceps"]

    @pytest.mark.parametrize(
        ("head", "keys", "said"),
        [
            ("phase: in-season\n", "", 0),
            ("phase: in-season\n", "phase: build, ", 1),
            ("", "phase: in-season, ", 0),
            ("", "", 1),
        ],
    )
    def test_the_phase_of_a_block_comes_first(
        self, findings: Findings, head: str, keys: str, said: int
    ) -> None:
        text = (
            f"programme: Test\ngoal: hypertrophy\n{head}blocks:\n  - {{name: One, weeks: 8, {keys}sessions: [{{session: A, "
            "day: [monday, thursday], exercises: [{exercise: leg extension, sets: 4, reps: 10}]}]}\n"
        )
        assert len(findings(text, self.RULE)) == said

    def test_each_block_is_judged_by_itself(self, findings: Findings) -> None:
        block = (
            "  - {{name: B{reps}, weeks: 8, {keys}sessions: [{{session: Gym, day: [monday, thursday], exercises: "
            "[{{exercise: leg extension, sets: 4, reps: {reps}}}]}}]}}\n"
        )
        head = "programme: Test\ngoal: hypertrophy\nblocks:\n"
        light, heavy, easy = (
            block.format(reps=10, keys=""),
            block.format(reps=5, keys=""),
            block.format(reps=12, keys="deload: true, "),
        )
        both = {finding.subject: finding.weeks for finding in findings(head + light + heavy, self.RULE)}
        first, second = tuple(range(1, 9)), tuple(range(9, 17))
        assert both == {"light": first, "heavy": second}
        assert [finding.weeks for finding in findings(head + light + easy, self.RULE)] == [first]
        assert [finding.weeks for finding in findings(head + easy + light, self.RULE)] == [second]


class TestRirRpeContradict:
    """The published scale: zourdos-2016, J Strength Cond Res 2016;30:267-275 (halves and below 7 from memory)."""

    RULE = "rir-rpe-contradict"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(
            week({"monday Push": ["bench press, sets: 3, reps: 5, rir: 2, rpe: 10"]}), self.RULE
        )
        assert (finding.severity, finding.confidence) == ("error", "model")
        assert (finding.place.excerpt, finding.where) == ("10", "Push, bench press")
        assert finding.counted == "RPE 10 leaves no repetition, but RIR is 2."
        assert finding.change == "Write RPE 8 or RIR 0, or only one of the two."
        assert [(edit.place.excerpt, edit.words) for edit in finding.edits][:2] == [("10", "8"), ("2", "0")]
        assert [edit.label for edit in finding.edits][2:] == ["keep only RPE 10", "keep only RIR 2"]
        assert [(related.place.excerpt, related.words) for related in finding.related] == [("2", "RIR 2")]

    @pytest.mark.parametrize(
        ("rir", "rpe", "said"),
        [
            ("2", "8", 0),
            ("2", "9", 1),
            ("2", "7", 1),
            ("0", "10", 0),
            ("0", "9.5", 0),
            ("0.5", "9.5", 1),
            ("0.5", "9-10", 0),
            ("1", "8.5", 0),
            ("2", "8.5", 0),
            ("3", "8.5", 1),
            ("0", "8.5", 1),
            ("2", "7.5", 0),
            ("3", "7.5", 0),
            ("3.5", "7.5", 1),
            ("4", "5", 0),
            ("6", "5-6", 0),
            ("6.5", "5", 1),
            ("3", "6", 1),
            ("4", "6.5", 0),
            ("8", "4.5", 0),  # no repetitions are counted there
            ("0", "4", 0),
            ("0", "4-5", 1),  # but they are at 5
            ("1-2", "8-9", 0),
            ("1-2", "7-8", 0),  # they share 2
            ("1-2", "7-7.5", 0),
            ("0-1", "7-7.5", 1),
            ("0-1", "8.5-10", 0),
            ("3", "7-8", 0),
            ("4", "7-8", 1),
            ("5", "5", 0),
        ],
    )
    def test_ranges_that_meet_agree(
        self, findings: Findings, week: Text, rir: str, rpe: str, said: int
    ) -> None:
        assert (
            len(findings(week({"Gym": [f"bench press, sets: 3, rir: {rir}, rpe: {rpe}"]}), self.RULE)) == said
        )

    @pytest.mark.parametrize("effort", ["rir: 2", "rpe: 10", "reps: 5"])
    def test_one_alone_contradicts_nothing(self, findings: Findings, week: Text, effort: str) -> None:
        assert findings(week({"Gym": [f"bench press, sets: 3, {effort}"]}), self.RULE) == []

    @pytest.mark.parametrize(
        ("rir", "rpe", "left"),
        [
            ("2", "10", "no repetition"),
            ("2", "9", "1 repetition"),
            ("5", "8", "2 repetitions"),
            ("5", "8-9", "1-2 repetitions"),
            ("5", "9.5", "no repetition"),
            ("0", "5.5", "4-6 repetitions"),
            ("5", "9-10", "0-1 repetition"),
        ],
    )
    def test_repetitions_in_words(
        self, findings: Findings, week: Text, rir: str, rpe: str, left: str
    ) -> None:
        (finding,) = findings(week({"Gym": [f"bench press, sets: 3, rir: {rir}, rpe: {rpe}"]}), self.RULE)
        assert finding.counted == f"RPE {rpe} leaves {left}, but RIR is {rir}."

    def test_no_rpe_is_advised_where_the_scale_counts_none(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"Gym": ["bench press, sets: 3, rir: 7, rpe: 5"]}), self.RULE)
        assert finding.change == "Write RIR 4-6, or only one of the two."
        assert [edit.label for edit in finding.edits] == [
            "write RIR 4-6",
            "keep only RPE 5",
            "keep only RIR 7",
        ]

    @pytest.mark.parametrize(
        ("effort", "rpe"),
        [
            ("rir: 1-2, rpe: 9.5-10", "8-9"),
            ("rir: 0.5, rpe: 9.5", "9-10"),
            ("rir: 3.5, rpe: 8", "5-7"),
            ("rir: 4-6, rpe: 8", "5-6"),
            ("rir: 3-5, rpe: 9", "5-7"),
            ("rir: 0, rpe: 7", "10"),
        ],
    )
    def test_every_edit_mends_it(self, findings: Findings, week: Text, effort: str, rpe: str) -> None:
        text = week({"Gym": [f"bench press, sets: 3, {effort}"]})
        (finding,) = findings(text, self.RULE)
        for edit in finding.edits:
            mended = text[: edit.place.start] + edit.words + text[edit.place.end :]
            assert findings(mended, self.RULE) == []
        assert finding.edits[0].words == rpe
        assert len(finding.edits) == 4

    def test_a_value_by_week_is_not_taken_out(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["bench press, sets: 3, rir: {1: 2, 2: 0}, rpe: 10"]}, "weeks: 2")
        (finding,) = findings(text, self.RULE)
        assert [edit.label for edit in finding.edits][2:] == ["keep only RIR 2"]

    @pytest.mark.parametrize(
        ("rir", "rpe", "severity"),
        [
            ("0", "7", "error"),
            ("0", "7-8", "error"),
            ("0", "6", "warning"),
            ("0", "6-8", "warning"),
            ("3", "9.5", "warning"),
            ("3", "9-9.5", "warning"),
            ("3", "9.5-10", "warning"),
        ],
    )
    def test_an_error_only_between_whole_points_that_were_read(
        self, findings: Findings, week: Text, rir: str, rpe: str, severity: str
    ) -> None:
        (finding,) = findings(week({"Gym": [f"bench press, sets: 3, rir: {rir}, rpe: {rpe}"]}), self.RULE)
        assert finding.severity == severity

    def test_only_the_weeks_in_which_they_contradict(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(
            week(
                {"Gym": ["bench press, sets: 3, rir: {1-2: 3, 3: 2, 4: 1}, rpe: {1-3: 7, 4: 9}"]}, "weeks: 4"
            ),
            self.RULE,
        )
        assert finding.weeks == (3,)

    def test_groups_of_sets_are_judged_each_by_itself(self, findings: Findings) -> None:
        text = (
            "programme: Test\nsessions: [{session: Gym, exercises: [{exercise: bench press, work: "
            "[{sets: 1, rpe: 9, rir: 1}, {sets: 3, rpe: 9, rir: 3}]}]}]\n"
        )
        (finding,) = findings(text, self.RULE)
        assert finding.counted == "RPE 9 leaves 1 repetition, but RIR is 3."

    def test_an_unknown_exercise_is_no_excuse(self, findings: Findings, week: Text) -> None:
        assert len(findings(week({"Gym": ["moon walk, sets: 3, rir: 2, rpe: 10"]}), self.RULE)) == 1

    def test_nor_is_rehabilitation(self, findings: Findings, week: Text) -> None:
        assert (
            len(findings(week({"Gym": ["bench press, sets: 3, rir: 2, rpe: 10"]}, REHABILITATION), self.RULE))
            == 1
        )


def settings(options: str) -> dict[str, str]:
    """A team's settings that move the rule on heavy and light."""
    return {"spotline.yaml": f"rules: {{heavy-light-not-crossed: {options}}}"}


class TestHeavyLightNotCrossed:
    """Heavy and light change places over the week: cp-cross, common practice, no source."""

    RULE = "heavy-light-not-crossed"

    def days(self, week: Text, *reps: tuple[str, str], head: str = "", days: tuple[str, ...] = ()) -> str:
        """Days with a hinge and a leg curl, by their repetitions."""
        names = days or ("monday", "thursday", "saturday")
        return week(
            {
                f"{day} L{number}": [
                    f"Romanian deadlift, sets: 3, reps: {hinge}",
                    f"seated leg curl, sets: 3, reps: {curl}",
                ]
                for number, (day, (hinge, curl)) in enumerate(zip(names, reps, strict=False), 1)
            },
            f"goal: hypertrophy\n{head}".strip(),
        )

    def test_the_words(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(self.days(week, ("12", "12"), ("6", "6"), head="weeks: 2"), self.RULE)
        assert (finding.severity, finding.confidence) == ("note", "common practice")
        assert (finding.place.line, finding.place.excerpt) == (14, "seated leg curl")
        assert finding.where == "L2, seated leg curl"
        assert finding.counted == "Hinges and leg curls both heavy on Thursday, both light on Monday."
        assert finding.wanted == ("one heavy and one light on each day")
        assert finding.change == "Swap the curls: light on Thursday, heavy on Monday."
        assert finding.weeks == (1, 2)
        assert [related.words for related in finding.related] == [
            "L1, Romanian deadlift, Monday: 3 sets",
            "L1, seated leg curl, Monday: 3 sets",
            "L2, Romanian deadlift, Thursday: 3 sets",
            "L2, seated leg curl, Thursday: 3 sets",
        ]

    @pytest.mark.parametrize(
        ("reps", "said"),
        [
            ([("6", "6"), ("12", "12")], 1),
            ([("7", "7"), ("8", "8")], 1),  # light from a middle of 8
            ([("6-8", "7"), ("8-12", "15")], 1),
            ([("6", "12"), ("12", "6")], 0),  # crossed
            ([("6", "12"), ("12", "12")], 0),
            ([("6", "6"), ("6", "6")], 0),  # only heavy: another rule
            ([("12", "12"), ("12", "12")], 0),
            ([("6", "6"), ("12", "6")], 0),
            ([("6", "6")], 0),
            ([("6", "6"), ("12", "12"), ("6", "6")], 1),
            ([("6", "6"), ("12", "12"), ("6", "12")], 0),
            ([("6", "6"), ("amrap", "amrap")], 0),
            ([("6", "6"), ("12", "amrap")], 0),
            ([("6", "6"), ("12", "12"), ("amrap", "amrap")], 0),  # nobody knows the third day
        ],
    )
    def test_days(self, findings: Findings, week: Text, reps: list[tuple[str, str]], said: int) -> None:
        assert len(findings(self.days(week, *reps), self.RULE)) == said

    def test_three_days_in_words(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(self.days(week, ("6", "6"), ("12", "12"), ("5", "5")), self.RULE)
        assert finding.counted == (
            "Hinges and leg curls both heavy on Monday and Saturday, both light on Thursday."
        )
        assert finding.change == "Swap the curls: light on Monday, heavy on Thursday."

    @pytest.mark.parametrize(
        ("line", "said"),
        [
            ("lying leg curl, sets: 1, reps: 12", 0),  # the heavy day holds both
            ("lying leg curl, sets: 1, reps: 5", 1),
            ("lying leg curl, sets: 1, reps: 12, rir: 8", 1),  # easy sets do not count
            ("kettlebell swing, sets: 3, reps: 15", 1),  # nor does fast work
            ("leg extension, sets: 3, reps: 15", 1),
            ("good morning, sets: 1, reps: 10", 0),
            ("moon walk, sets: 1, reps: 10", 0),
            ("lying leg curl, sets: x, reps: 5", 0),
            ("leg extension, sets: x, reps: 5", 1),
        ],
    )
    def test_a_further_line_on_the_heavy_day(
        self, findings: Findings, week: Text, line: str, said: int
    ) -> None:
        text = self.days(week, ("12", "12"), ("6", "6")) + f"      - {{exercise: {line}}}\n"
        assert len(findings(text, self.RULE)) == said

    def test_a_day_with_one_of_the_two_is_left_out(self, findings: Findings, week: Text) -> None:
        text = self.days(week, ("6", "6"), ("12", "12"))
        alone = "  - {session: C, day: saturday, exercises: [{exercise: lying leg curl, sets: 3, reps: 5}]}\n"
        (finding,) = findings(text + alone, self.RULE)
        assert len(finding.related) == 4

    @pytest.mark.parametrize("alone", ["Romanian deadlift", "seated leg curl"])
    def test_one_of_the_two_alone_makes_no_light_day(
        self, findings: Findings, week: Text, alone: str
    ) -> None:
        heavy = self.days(week, ("6", "6"))
        light = f"  - {{session: B, day: friday, exercises: [{{exercise: {alone}, sets: 3, reps: 12}}]}}\n"
        assert findings(heavy + light, self.RULE, settings("{least days: 1}")) == []
        assert findings(heavy + light, self.RULE) == []

    def test_sessions_without_a_day_are_left_alone(self, findings: Findings, week: Text) -> None:
        text = self.days(week, ("6", "6"), ("12", "12"))
        assert (
            findings(text.replace("    day: monday\n", "").replace("    day: thursday\n", ""), self.RULE)
            == []
        )

    @pytest.mark.parametrize(
        ("head", "said"),
        [
            ("athlete: {name: A, level: novice}", 0),
            ("athlete: {name: A, level: intermediate}", 1),
            ("phase: taper", 1),
            ("phase: in-season", 1),
            ("focus: [chest]", 0),
            ("focus: [hamstrings]", 1),
            (REHABILITATION, 0),
        ],
    )
    def test_when_it_is_silent(self, findings: Findings, week: Text, head: str, said: int) -> None:
        assert len(findings(self.days(week, ("6", "6"), ("12", "12"), head=head), self.RULE)) == said

    @pytest.mark.parametrize("goal", ["strength", "power", "muscular endurance", "general health"])
    def test_only_for_size(self, findings: Findings, week: Text, goal: str) -> None:
        text = self.days(week, ("6", "6"), ("12", "12")).replace("hypertrophy", goal)
        assert findings(text, self.RULE) == []

    @pytest.mark.parametrize(("least", "said"), [(2, 1), (3, 0)])
    def test_least_days(self, findings: Findings, week: Text, least: int, said: int) -> None:
        settings = {"spotline.yaml": f"rules: {{heavy-light-not-crossed: {{least days: {least}}}}}"}
        assert len(findings(self.days(week, ("6", "6"), ("12", "12")), self.RULE, settings)) == said


class TestSetsAgainstReps:
    """One number a set, as many numbers as sets: by what the words mean."""

    RULE = "sets-against-reps"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"Push": ["bench press, sets: 4, reps: 12/10/8"]}), self.RULE)
        assert (finding.severity, finding.confidence) == ("error", "fact")
        assert (finding.place.excerpt, finding.where) == ("12/10/8", "Push, bench press")
        assert finding.counted == "4 sets, but 3 numbers of repetitions."
        assert finding.wanted == "one number for each set"
        assert finding.change == "Write 3 sets, or give each set its number."
        assert [(related.place.excerpt, related.words) for related in finding.related] == [("4", "4 sets")]
        assert [(edit.place.excerpt, edit.words, edit.label, edit.certain) for edit in finding.edits] == [
            ("4", "3", "write 3 sets", False)
        ]

    @pytest.mark.parametrize(
        ("line", "said"),
        [
            ("sets: 3, reps: 12/10/8", 0),
            ("sets: 2, reps: 12/10/8", 1),
            ("sets: 4, reps: 12/10/8", 1),
            ("sets: 3-4, reps: 12/10/8", 0),
            ("sets: 2-3, reps: 12/10/8", 0),
            ("sets: 4-5, reps: 12/10/8", 1),
            ("sets: 1-2, reps: 12/10/8", 1),
            ("sets: 4, reps: 10", 0),
            ("sets: 4, reps: 2+2+2", 0),  # a cluster is one set
            ("sets: 4, reps: amrap", 0),
            ("sets: 3, load: 70/75/80 %", 0),
            ("sets: 4, load: 70/75/80 %", 1),
            ("sets: 2, load: 70/75/80 kg", 1),
            ("sets: 4, load: 80 %", 0),
            ("sets: 4", 0),
            ("sets: 3, reps: 12/10/8, load: 70/75/80 %", 0),
            ("sets: 2-3, reps: 12/10/8, load: 70/75 %", 1),
            ("sets: 2-3, reps: 12/10, load: 70/75 %", 0),
            ("sets: x, reps: 12/10/8", 0),
        ],
    )
    def test_what_agrees(self, findings: Findings, week: Text, line: str, said: int) -> None:
        assert len(findings(week({"Push": [f"bench press, {line}"]}), self.RULE)) == said

    def test_loads(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"Push": ["bench press, sets: 2, load: 70/75/80 %"]}), self.RULE)
        assert finding.place.excerpt == "70/75/80 %"
        assert finding.counted == "2 sets, but 3 loads."
        assert finding.change == "Write 3 sets, or give each set its number."

    def test_both_at_once_are_one_finding(self, findings: Findings, week: Text) -> None:
        line = "bench press, sets: 4, reps: 12/10/8, load: 70/75/80 %"
        (finding,) = findings(week({"Push": [line]}), self.RULE)
        assert finding.place.excerpt == "12/10/8"
        assert finding.counted == "4 sets, but 3 numbers of repetitions and 3 loads."
        assert finding.change == "Write 3 sets, or give each set its number."

    def test_both_wrong_and_different(self, findings: Findings, week: Text) -> None:
        line = "bench press, sets: 4, reps: 12/10/8, load: 70/75 %"
        (finding,) = findings(week({"Push": [line]}), self.RULE)
        assert finding.counted == "4 sets, but 3 numbers of repetitions and 2 loads."
        assert (finding.change, finding.edits) == ("Correct them.", ())

    def test_one_of_the_two_wrong(self, findings: Findings, week: Text) -> None:
        line = "bench press, sets: 3, reps: 12/10/8, load: 70/75 %"
        (finding,) = findings(week({"Push": [line]}), self.RULE)
        assert (finding.place.excerpt, finding.counted) == ("70/75 %", "3 sets, but 2 loads.")

    def test_sets_that_follow_from_the_repetitions(self, findings: Findings, week: Text) -> None:
        circuit = (
            "programme: Test\nsessions: [{session: Gym, exercises: [{circuit: {rounds: 2, exercises: "
            "[{exercise: push-up, reps: 12/10/8}]}}]}]\n"
        )
        (finding,) = findings(circuit, self.RULE)
        assert finding.counted == "2 sets, but 3 numbers of repetitions."
        assert finding.edits == ()  # the rounds belong to others too

    def test_repetitions_against_loads(self, findings: Findings, week: Text) -> None:
        line = "bench press, sets: 2-3, reps: 12/10/8, load: 70/75 %"
        (finding,) = findings(week({"Push": [line]}), self.RULE)
        assert finding.place.excerpt == "70/75 %"
        assert finding.counted == "2 loads for 3 numbers of repetitions."
        assert finding.wanted == "one number for each set"
        assert finding.change == "Correct one of them."
        assert finding.where == "Push, bench press"
        assert [(related.place.excerpt, related.words) for related in finding.related] == [
            ("12/10/8", "3 numbers of repetitions")
        ]

    def test_only_the_weeks_in_which_they_disagree(self, findings: Findings, week: Text) -> None:
        line = "bench press, sets: {1: 3, 2: 4, 3: 0, 4: 0-2, 5: 0-3}, reps: 12/10/8"
        (finding,) = findings(week({"Push": [line]}, "weeks: 5"), self.RULE)
        assert finding.weeks == (2, 4)

    def test_the_edit_mends_it(self, findings: Findings, week: Text) -> None:
        text = week({"Push": ["bench press, sets: 4, reps: 12/10/8"]})
        (finding,) = findings(text, self.RULE)
        (edit,) = finding.edits
        assert findings(text[: edit.place.start] + edit.words + text[edit.place.end :], self.RULE) == []

    def test_sets_every_minute_are_not_edited(self, findings: Findings, week: Text) -> None:
        line = "bench press, every: 60 s, for: 4 min, reps: 5, load: 70/75/80 %"
        (finding,) = findings(week({"Push": [line]}), self.RULE)
        assert (finding.counted, finding.edits) == ("4 sets, but 3 loads.", ())

    def test_an_unknown_exercise_is_no_excuse(self, findings: Findings, week: Text) -> None:
        assert len(findings(week({"Gym": ["moon walk, sets: 4, reps: 12/10/8"]}), self.RULE)) == 1


class TestReserveHardToJudge:
    """hackett-2017, J Strength Cond Res 2017;31:2162-2168: about 1 repetition out with 0-5 left, more than 2 with 7-10."""

    RULE = "reserve-hard-to-judge"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        lines = [
            "bench press, sets: 3, rir: 3",
            "bench press, sets: 3, rir: 7-8",
            "leg press, sets: 2, rir: 6",
        ]
        (finding,) = findings(week({"Gym": lines}), self.RULE)
        assert (finding.severity, finding.confidence) == ("note", "acute study")
        assert (finding.place.excerpt, finding.where) == ("7-8", "Gym, bench press")
        assert finding.counted == "RIR 7-8 and no load: bench press and leg press."
        assert finding.wanted == "a load, or at most 5 repetitions in reserve"
        assert finding.change == ("Write a load in kg or % of the best lift, or a lower RIR.")
        assert [(related.place.excerpt, related.words) for related in finding.related] == [
            ("6", "leg press: RIR 6")
        ]

    def test_many_are_counted(self, findings: Findings, week: Text) -> None:
        names = ["leg press", "bench press", "lat pulldown", "leg extension", "barbell curl", "leg press"]
        (finding,) = findings(week({"Gym": [f"{name}, sets: 2, rir: 8" for name in names]}), self.RULE)
        assert finding.counted.endswith(": leg press, bench press, lat pulldown and 2 more.")
        assert len(finding.related) == 5

    @pytest.mark.parametrize(
        ("line", "said"),
        [
            ("leg press, sets: 3, rir: 5", 0),
            ("leg press, sets: 3, rir: 5.5", 1),
            ("leg press, sets: 3, rir: 5-6", 0),
            ("leg press, sets: 3, rir: 6-7", 1),
            ("leg press, sets: 3, rpe: 3", 0),  # an RPE so low counts no repetitions
            ("leg press, sets: 3", 0),
            ("leg press, sets: 3, rir: 8, load: 40 %", 0),
            ("leg press, sets: 3, rir: 8, load: 40 kg", 0),
            ("push-up, sets: 3, rir: 8", 0),  # nothing to load
            ("band curl, sets: 3, rir: 8", 0),
            ("kettlebell swing, sets: 3, rir: 8", 0),
            ("dumbbell curl, sets: 3, rir: 8", 1),
            ("cable pushdown, sets: 3, rir: 8", 1),
            ("moon walk, sets: 3, rir: 8", 0),
        ],
    )
    def test_edges(self, findings: Findings, week: Text, line: str, said: int) -> None:
        assert len(findings(week({"Gym": [line]}), self.RULE)) == said

    @pytest.mark.parametrize(("most", "said"), [(7.5, 1), (8, 0)])
    def test_the_limit_moves(self, findings: Findings, week: Text, most: float, said: int) -> None:
        settings = {"spotline.yaml": f"rules: {{reserve-hard-to-judge: {{most: {most}}}}}"}
        found = findings(week({"Gym": ["leg press, sets: 3, rir: 8"]}), self.RULE, settings)
        assert [finding.wanted for finding in found] == [
            "a load, or at most 7.5 repetitions in reserve (your team's limit)"
        ] * said

    def test_silent_in_a_deload(self, findings: Findings) -> None:
        text = (
            "programme: Test\nblocks: [{name: Easy, weeks: 1, deload: true, sessions: [{session: Gym, exercises: "
            "[{exercise: leg press, sets: 3, rir: 8}]}]}]\n"
        )
        assert findings(text, self.RULE) == []
        assert len(findings(text.replace(" deload: true,", ""), self.RULE)) == 1

    def test_stands_back_under_rehabilitation(self, findings: Findings, week: Text) -> None:
        assert findings(week({"Gym": ["leg press, sets: 3, rir: 8"]}, REHABILITATION), self.RULE) == []

    def test_said_once_for_words_used_again(self, findings: Findings) -> None:
        text = (
            "programme: Test\nshared: {easy: &easy {sets: 2, rir: 8}}\nsessions: [{session: Gym, exercises: "
            "[{exercise: leg press, <<: *easy}, {exercise: leg extension, <<: *easy}]}]\n"
        )
        (finding,) = findings(text, self.RULE)
        assert finding.counted.endswith(": leg press and leg extension.")
        assert finding.related == ()
