"""Restrictions in weeks that no programme has."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.findings.finding import Finding
from spotline.lint.project.results import Review

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]


class TestRestrictionWeeksBeyond:
    RULE = "restriction-weeks-beyond"
    LINES = {"Upper": ["bench press, sets: 3, reps: 8"]}  # noqa: RUF012

    def athlete(self, when: str) -> str:
        spared = f"protect: [{{movement: overhead pressing{when}, advised by: physiotherapist}}]"
        return f"name: Ida\n{spared}\n"

    def said(self, reviewed: Callable[..., Review], when: str, *weeks: int, week: Text) -> list[Finding]:
        """The findings on an athlete's file, beside whom stand programmes of so many weeks."""
        plans = {
            f"{number}.programme.yaml": week(self.LINES, f"athlete: ida.athlete.yaml\nweeks: {long}")
            for number, long in enumerate(weeks)
        }
        files = {"ida.athlete.yaml": self.athlete(when), **plans}
        review = reviewed(week(self.LINES), files, every=True)
        return [one for file in review.files for one in file.findings if one.rule == self.RULE]

    @pytest.mark.parametrize(
        ("when", "weeks", "counted"),
        [
            (", in weeks: 3-6", (4,), 6),
            (", in weeks: 3-4", (4,), None),
            (", in weeks: 3-6", (4, 8), None),  # the longer one has them
            (", in weeks: 3-6", (5, 4), 6),
            (", in weeks: 2+6", (4,), 6),  # one of the weeks is enough
            (", in weeks: 1-2+5+7", (4,), 7),  # the last of them is told
            (", in weeks: 2", (1,), 2),  # a programme of one week
            (", in weeks: 1", (1,), None),
            ("", (4,), None),  # throughout
            ("", (1,), None),
            (", in weeks: 3-6", (), None),  # no programme names the athlete
        ],
    )
    def test_the_longest_programme_decides(
        self,
        reviewed: Callable[..., Review],
        week: Text,
        when: str,
        weeks: tuple[int, ...],
        counted: int | None,
    ) -> None:
        said = [one.amount.counted for one in self.said(reviewed, when, *weeks, week=week) if one.amount]
        assert said == ([] if counted is None else [counted])

    def test_the_words(self, reviewed: Callable[..., Review], week: Text) -> None:
        (finding,) = self.said(reviewed, ", in weeks: 2", 1, week=week)
        assert finding.place.excerpt == "overhead pressing"
        assert finding.counted == (
            "`overhead pressing` is spared in week 2; the longest programme has 1 week."
        )
        assert (finding.where, finding.severity) == ("Ida, protect", "warning")
