"""Weekly sets at the limits: which count blocks, which week stands out, and a mean at the limit itself."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.findings.finding import Finding

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]


class TestWeeklySetsOverLimit:
    """20 sets: cp-cap, common practice, no source."""

    RULE = "weekly-sets-over-limit"

    def rules(self, options: str) -> dict[str, str]:
        return {"spotline.yaml": f"rules: {{{self.RULE}: {{{options}}}}}\n"}

    @pytest.mark.parametrize(
        ("direct", "presses", "options", "severity"),
        [
            (20, 0, "", None),
            (21, 0, "", "warning"),
            (18, 4, "", None),  # 18 + 4 x 0.5
            (18, 5, "", "note"),  # what indirect sets add is worth a note
            (21, 5, "", "warning"),
            (18, 5, "most: 20", "warning"),  # the same number, but now the team's
            (18, 5, "most: 19", "warning"),
            (18, 5, "groups: {triceps: 20}", "warning"),
            (18, 4, "groups: {triceps: 20}", None),
            (18, 5, "counting: [direct]", None),
            (21, 0, "counting: [direct]", "warning"),
            (18, 5, "counting: [total]", "note"),
            (18, 3, "counting: [total]", "note"),  # 18 + 3
            (18, 2, "counting: [total]", None),
            (18, 5, "blocks on: [fractional]", "warning"),
            (18, 5, "counting: [direct], blocks on: [fractional]", None),
            (18, 5, "counting: [total], blocks on: [fractional]", "warning"),
            (18, 3, "counting: [total], blocks on: [fractional]", "note"),
        ],
    )
    def test_direct_sets_block_and_indirect_ones_are_noted(
        self, implausible: Findings, week: Text, direct: int, presses: int, options: str, severity: str | None
    ) -> None:
        lines = [f"cable pushdown, sets: {direct}", *([f"bench press, sets: {presses}"] if presses else [])]
        found = implausible(week({"Gym": lines}), self.RULE, self.rules(options) if options else None)
        assert [one.severity for one in found if one.group == "triceps"] == ([severity] if severity else [])

    @pytest.mark.parametrize(
        ("first", "severity", "mean"), [(22, "note", "20"), (23, "warning", "20.5"), (21, "note", "19.5")]
    )
    def test_a_turn_that_keeps_to_the_limit_in_the_mean(
        self, implausible: Findings, first: int, severity: str, mean: str
    ) -> None:
        text = (
            "programme: Turns\nweeks: 4\nrotation: [monday]\nsessions:\n"
            f"  - {{session: A, exercises: [{{exercise: dumbbell fly, sets: {first}}}]}}\n"
            "  - {session: B, exercises: [{exercise: dumbbell fly, sets: 18}]}\n"
        )
        (finding,) = implausible(text, self.RULE)
        assert (finding.severity, finding.weeks) == (severity, (1, 3))
        assert finding.counted == (
            f"{first} direct sets for the chest in one week of the rotation, {mean} on average over its 2."
        )

    def test_the_line_of_the_week_that_stands_out_is_named(self, implausible: Findings, week: Text) -> None:
        text = week(
            {"monday": ["leg curl, sets: {1-2: 8, 3: 12, 4: 8}"], "friday": ["seated leg curl, sets: 10"]},
            "weeks: 4",
        )
        (finding,) = implausible(text, self.RULE)
        assert (finding.place.excerpt, finding.where, finding.weeks) == ("12", "monday, leg curl", (3,))
        level = week({"monday": ["leg curl, sets: 12"], "friday": ["seated leg curl, sets: 10"]}, "weeks: 4")
        (finding,) = implausible(level, self.RULE)
        assert (finding.place.excerpt, finding.where) == ("seated leg curl", "friday, seated leg curl")
