"""Rules on balance: opposing muscles against one another."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.finding import Finding

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]

THIGH = ("leg extension", "seated leg curl")
REHABILITATION = "rehabilitation: {stage: return, advised by: physiotherapist, until: 2026-12-31}"


def against(pair: tuple[str, str], more: str, less: str) -> dict[str, list[str]]:
    return {
        "Gym": [f"{name}, sets: {sets}" for name, sets in zip(pair, (more, less), strict=True) if sets != "0"]
    }


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
        assert (finding.severity, finding.confidence) == ("warning", "common practice")
        assert (finding.place.excerpt, finding.where) == ("leg extension", "Legs, leg extension")
        assert finding.counted == (
            "9 sets for the front of the thigh (knee extension) against 4 for the back of the thigh (leg curls and hip hinges)."
        )
        assert finding.wanted == "the two near one another, between 2:3 and 3:2 (common practice)"
        # 9 : 4 becomes 7 : 6; moving one, 8 : 5, would still be past 3 : 2
        assert finding.change.startswith(
            "Move about 2 sets from the first to the second, or add work for the back"
        )
        assert "forecasts no injury" in finding.why
        assert [related.words for related in finding.related] == [
            "Legs, leg extension: 9 sets",
            "Legs, seated leg curl: 2 sets",
            "Legs, Romanian deadlift: 2 sets",
        ]

    @pytest.mark.parametrize(
        ("more", "less", "severity"),
        [
            ("6", "4", None),  # 3 : 2
            ("7", "4", "note"),
            ("8", "4", "note"),  # 2 : 1
            ("9", "4", "warning"),
            ("3", "2", None),
            ("4", "1", None),  # five together: too few to compare
            ("5", "1", "warning"),  # six together
            ("4", "2", "note"),
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
            ("6", "0", 1),
            ("5", "0", 0),
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
        (finding,) = findings(week({"Push": ["bench press, sets: 6"]}), self.RULE)
        assert finding.counted == "6 sets for pressing against 0 for pulling."
        assert (
            finding.wanted
            == "the two near one another, no more than twice as many on one side (common practice)"
        )
        assert (
            finding.change == "Move about 2 sets from the first to the second, or add work for pulling."
        )  # 4 : 2

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
            week({"Gym": ["leg extension, sets: 9", "seated leg curl, sets: 4", line]}), self.RULE
        )
        assert finding.severity == "warning"

    def test_squats_count_at_the_front(self, findings: Findings, week: Text) -> None:
        # cp-squat: squats are not counted as hamstring work (common practice, no source)
        (finding,) = findings(week({"Gym": ["back squat, sets: 9", "seated leg curl, sets: 4"]}), self.RULE)
        assert finding.counted.startswith("9 sets for the front of the thigh")

    def test_a_line_that_does_both_jobs_counts_once(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(
            week({"Gym": ["leg extension, sets: 9", "glute-ham raise, sets: 4"]}), self.RULE
        )
        assert "against 4 for" in finding.counted

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
            ("moon walk, sets: 3", 0),
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
    def test_silent_in_taper_and_test(self, findings: Findings, week: Text, phase: str) -> None:
        assert findings(week(against(THIGH, "9", "4"), f"phase: {phase}"), self.RULE) == []

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
        (finding,) = findings(week(against(THIGH, "{1: 4, 2: 7, 3: 10}", "4"), "weeks: 3"), self.RULE)
        assert finding.weeks == (2, 3)
        assert finding.severity == "warning"
        assert finding.counted.startswith("10 sets")

    @pytest.mark.parametrize(("more", "less"), [(9, 4), (12, 6), (7, 4), (20, 1), (15, 9), (11, 7)])
    def test_moving_what_is_advised_is_enough(
        self, findings: Findings, week: Text, more: int, less: int
    ) -> None:
        (finding,) = findings(week(against(THIGH, str(more), str(less))), self.RULE)
        moved = int(finding.change.split()[2])
        assert findings(week(against(THIGH, str(more - moved), str(less + moved))), self.RULE) == []
        assert (
            len(findings(week(against(THIGH, str(more - moved + 1), str(less + moved - 1))), self.RULE)) == 1
        )
