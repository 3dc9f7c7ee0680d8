"""Rules on repetitions and effort."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.finding import Finding

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]

REHABILITATION = "rehabilitation: {stage: return, advised by: physiotherapist, until: 2026-12-31}"


def twice(*lines: str, head: str = "") -> str:
    """A programme for size, its one session on two days."""
    return (
        f"programme: Test\ngoal: hypertrophy\n{head}sessions:\n  - session: Lower\n    day: [monday, thursday]\n    exercises:\n"
        + "".join(f"      - {{exercise: {line}}}\n" for line in lines)
    )


class TestRepRangeNarrow:
    """A heavy slot (4-8) and a light slot (8-20) in the week: cp-spread, common practice, no source."""

    RULE = "rep-range-narrow"

    def test_the_words_where_all_is_light(self, findings: Findings) -> None:
        (finding,) = findings(twice("leg extension, sets: 4, reps: 10-12"), self.RULE)
        assert (finding.severity, finding.confidence) == ("note", "convention")
        assert (finding.place.excerpt, finding.where) == ("leg extension", "Lower, leg extension")
        assert finding.counted == "Every direct set for quadriceps is light (8 or more repetitions)."
        assert finding.wanted == "some heavy work in the block too"
        assert finding.change == "Make one of the exercises heavy (4-7 repetitions) on one of the days."
        assert "sources on fibre types conflict" in finding.why

    def test_the_words_where_all_is_heavy(self, findings: Findings) -> None:
        (finding,) = findings(
            twice("leg extension, sets: 4, reps: 5", "seated leg curl, sets: 4, reps: 6"), self.RULE
        )
        assert (
            finding.counted
            == "Every direct set for hamstrings and quadriceps is heavy (fewer than 8 repetitions)."
        )
        assert finding.wanted == "some light work in the block too"
        assert finding.change == "Make one of the exercises light (8-20 repetitions) on one of the days."

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
            findings(week({"monday": ["leg extension, sets: 8, reps: 10"]}, "goal: hypertrophy"), self.RULE)
            == []
        )

    def test_sessions_without_a_day_are_left_alone(self, findings: Findings, week: Text) -> None:
        lines = {"A": ["leg extension, sets: 4, reps: 10"], "B": ["leg extension, sets: 4, reps: 10"]}
        assert findings(week(lines, "goal: hypertrophy"), self.RULE) == []

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
        assert (
            findings(twice("leg extension, sets: 4, reps: {1-3: 10, 4: 6}", head="weeks: 4\n"), self.RULE)
            == []
        )

    def test_the_fullest_week_decides(self, findings: Findings) -> None:
        (finding,) = findings(
            twice("leg extension, sets: {1: 2, 2: 4}, reps: 10", head="weeks: 2\n"), self.RULE
        )
        assert finding.weeks == (1, 2)
        assert [related.words for related in finding.related] == ["Lower, leg extension: 8 sets"]

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
            f"programme: Test\ngoal: hypertrophy\n{head}blocks:\n  - {{name: One, weeks: 1, {keys}sessions: [{{session: A, "
            "day: [monday, thursday], exercises: [{exercise: leg extension, sets: 4, reps: 10}]}]}\n"
        )
        assert len(findings(text, self.RULE)) == said

    def test_each_block_is_judged_by_itself(self, findings: Findings) -> None:
        block = (
            "  - {{name: B{reps}, weeks: 1, {keys}sessions: [{{session: Gym, day: [monday, thursday], exercises: "
            "[{{exercise: leg extension, sets: 4, reps: {reps}}}]}}]}}\n"
        )
        head = "programme: Test\ngoal: hypertrophy\nblocks:\n"
        light, heavy, easy = (
            block.format(reps=10, keys=""),
            block.format(reps=5, keys=""),
            block.format(reps=12, keys="deload: true, "),
        )
        both = {finding.subject: finding.weeks for finding in findings(head + light + heavy, self.RULE)}
        assert both == {"light": (1,), "heavy": (2,)}
        assert [finding.weeks for finding in findings(head + light + easy, self.RULE)] == [(1,)]
        assert [finding.weeks for finding in findings(head + easy + light, self.RULE)] == [(2,)]


class TestRirRpeContradict:
    """RPE is 10 less the repetitions in reserve: zourdos-2016, J Strength Cond Res 2016;30:267-275."""

    RULE = "rir-rpe-contradict"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(
            week({"monday Push": ["bench press, sets: 3, reps: 5, rir: 2, rpe: 10"]}), self.RULE
        )
        assert (finding.severity, finding.confidence) == ("error", "trial")
        assert (finding.place.excerpt, finding.where) == ("10", "Push, bench press")
        assert finding.counted == "RPE 10 leaves no repetition; the same line says RIR 2."
        assert finding.change == "Write RPE 8 or RIR 0, whichever you mean, or state only one of them."
        assert [(edit.place.excerpt, edit.words) for edit in finding.edits] == [("10", "8"), ("2", "0")]
        assert [(related.place.excerpt, related.words) for related in finding.related] == [("2", "RIR 2")]

    @pytest.mark.parametrize(
        ("rir", "rpe", "said"),
        [
            ("2", "8", 0),
            ("2", "9", 1),
            ("2", "7", 1),
            ("0", "10", 0),
            ("0", "9.5", 1),
            ("0.5", "9.5", 0),
            ("1-2", "8-9", 0),
            ("1-2", "7-8", 0),  # they share 2
            ("1-2", "7-7.5", 1),
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
            ("5", "9.5", "0.5 repetitions"),
            ("5", "9-10", "0-1 repetition"),
        ],
    )
    def test_repetitions_in_words(
        self, findings: Findings, week: Text, rir: str, rpe: str, left: str
    ) -> None:
        (finding,) = findings(week({"Gym": [f"bench press, sets: 3, rir: {rir}, rpe: {rpe}"]}), self.RULE)
        assert finding.counted == f"RPE {rpe} leaves {left}; the same line says RIR {rir}."

    def test_no_rpe_below_one_is_advised(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"Gym": ["bench press, sets: 3, rir: 10, rpe: 5"]}), self.RULE)
        assert "RPE 0" not in finding.change
        assert [edit.words for edit in finding.edits] == ["5"]
        (finding,) = findings(week({"Gym": ["bench press, sets: 3, rir: 9, rpe: 5"]}), self.RULE)
        assert [edit.words for edit in finding.edits] == ["1", "5"]

    def test_every_edit_mends_it(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["bench press, sets: 3, rir: 1-2, rpe: 9.5-10"]})
        (finding,) = findings(text, self.RULE)
        for edit in finding.edits:
            mended = text[: edit.place.start] + edit.words + text[edit.place.end :]
            assert findings(mended, self.RULE) == []
        assert len(finding.edits) == 2

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
        assert finding.counted == "RPE 9 leaves 1 repetition; the same line says RIR 3."

    def test_an_unknown_exercise_is_no_excuse(self, findings: Findings, week: Text) -> None:
        assert len(findings(week({"Gym": ["moon walk, sets: 3, rir: 2, rpe: 10"]}), self.RULE)) == 1

    def test_nor_is_rehabilitation(self, findings: Findings, week: Text) -> None:
        assert (
            len(findings(week({"Gym": ["bench press, sets: 3, rir: 2, rpe: 10"]}, REHABILITATION), self.RULE))
            == 1
        )
