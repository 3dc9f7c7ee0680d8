"""The last days before an event at their edges: heavy legs, and sets that are all but maximal."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.findings.finding import Finding

Findings = Callable[..., list[Finding]]

MEET = "starts: 2026-01-05\nweeks: 1\nevents: [{{date: 2026-01-{day:02}, event: {event}}}]\n"


def before(line: str, day: int, event: str = "meet", more: str = "") -> str:
    """A programme with a line on Monday the 5th, and an event on a later day of January."""
    return (
        f"programme: To the meet\n{MEET.format(day=day, event=event)}sessions:\n"
        f"  - {{session: Last, day: monday, exercises: [{{exercise: {line}}}]}}\n{more}"
    )


class TestLegsHeavyBeforeEvent:
    RULE = "legs-heavy-before-event"

    @pytest.mark.parametrize(
        ("day", "line", "said"),
        [
            ("friday", "back squat, sets: 4, reps: 4, rir: 2", "note"),
            ("friday", "back squat, sets: 6, reps: 4, rir: 2", "warning"),
            ("friday", "back squat, sets: 6, reps: 4", "note"),  # nothing says how heavy
            ("friday", "back squat, sets: 6, reps: 4, rir: 4", ""),
            ("friday", "back squat, sets: 6, reps: 8, rir: 3", ""),
            ("friday", "back squat, sets: 6, reps: 8, rir: 2", "warning"),
            ("friday", "back squat, sets: 3, reps: 4, rir: 2", ""),
            ("thursday", "back squat, sets: 6, reps: 4, rir: 2", "note"),
            ("wednesday", "back squat, sets: 9, reps: 4, rir: 2", ""),
            ("friday", "bench press, sets: 9, reps: 4, rir: 2", ""),
        ],
    )
    def test_how_many_sets_how_near(self, findings: Findings, day: str, line: str, said: str) -> None:
        """With a team's own number of sets that make the day before heavy: 6."""
        text = (
            f"programme: T\nsessions:\n  - {{session: A, day: {day}, exercises: [{{exercise: {line}}}]}}\n"
            "  - {activity: match, day: saturday}\n"
        )
        own = {"spotline.yaml": f"rules: {{{self.RULE}: {{many: 6}}}}\n"}
        found = findings(text, self.RULE, own)
        assert [one.severity for one in found] == ([said] if said else [])

    @pytest.mark.parametrize(
        ("told", "untold", "said"), [(2, 4, "note"), (3, 3, "warning"), (4, 2, "warning")]
    )
    def test_it_is_sure_where_half_of_the_sets_say_how_heavy(
        self, findings: Findings, told: int, untold: int, said: str
    ) -> None:
        lines = f"{{exercise: back squat, sets: {told}, reps: 4, rir: 2}}, {{exercise: front squat, sets: {untold}, reps: 4}}"
        text = (
            f"programme: T\nsessions:\n  - {{session: A, day: friday, exercises: [{lines}]}}\n"
            "  - {activity: match, day: saturday}\n"
        )
        (finding,) = findings(text, self.RULE)
        assert finding.severity == said


class TestNearMaximalBeforeEvent:
    """How near an all but maximal set may stand to a meet: common practice, no source."""

    RULE = "near-maximal-before-event"

    @pytest.mark.parametrize(
        ("line", "days", "said"),
        [
            ("bench press, sets: 2, reps: 1, load: 95 %", 3, True),
            ("bench press, sets: 2, reps: 1, load: 95 %", 4, False),
            ("deadlift, sets: 2, reps: 1, load: 95 %", 6, True),
            ("deadlift, sets: 2, reps: 1, load: 95 %", 7, False),
            ("back squat, sets: 2, reps: 3, load: 90 %", 2, True),
            ("back squat, sets: 2, reps: 3, load: 89 %", 2, False),
            ("back squat, sets: 2, reps: 4, load: 90 %", 2, False),
            ("back squat, sets: 3, reps: 3/2/1, load: 80/85/90 %", 2, True),
            ("back squat, sets: 2, reps: 2, rir: 1", 2, True),
            ("back squat, sets: 2, reps: 2, rir: 1-2", 2, False),
            ("back squat, sets: 2, reps: 2", 2, False),  # nothing says how heavy
            ("back squat, sets: 2, reps: 2, load: 80 %, rir: 0", 2, False),  # the load says
            ("back squat, sets: 2, rir: 0", 2, False),
            ("quarry lift, sets: 2, reps: 1, rir: 0", 2, False),
            ("snatch, sets: 2, reps: 1, load: 95 %", 2, False),
        ],
    )
    def test_which_sets_in_which_days(self, findings: Findings, line: str, days: int, said: bool) -> None:
        assert len(findings(before(line, 5 + days), self.RULE)) == said

    @pytest.mark.parametrize(
        ("event", "held", "said"),
        [
            ("meet", "", True),
            ("match", "", False),
            ("bench press test", "", True),
            ("squat and bench press test", "", True),
            ("deadlift test", "", False),
            ("meet", "bench press, sets: 1, reps: 1", True),
            ("meet", "close-grip bench press, sets: 1, reps: 1", True),
            ("meet", "deadlift, sets: 1, reps: 1", False),
            ("bench press test", "deadlift, sets: 1, reps: 1", False),  # the day itself says
            ("meet", "quarry lift, sets: 1, reps: 1", True),  # a lift that nobody knows says nothing
        ],
    )
    def test_of_which_lifts(self, findings: Findings, event: str, held: str, said: bool) -> None:
        more = f"  - {{session: Day, day: thursday, exercises: [{{exercise: {held}}}]}}\n" if held else ""
        text = before("bench press, sets: 2, reps: 1, load: 95 %", 8, event, more)
        assert len(findings(text, self.RULE)) == said

    def test_the_words(self, findings: Findings) -> None:
        (finding,) = findings(before("deadlift, sets: 2, reps: 1, load: 95 %", 9), self.RULE)
        assert finding.counted == "Deadlift at 95 % on Monday, 4 days before meet."
        assert finding.wanted == "nothing from 90 % in the last 6 days"
        assert finding.place.excerpt == "95 %"
        (finding,) = findings(before("bench press, sets: 2, reps: 2, rir: 0", 6), self.RULE)
        assert finding.counted == "Bench press on Monday, 1 day before meet."
        assert finding.wanted == "nothing from 90 % in the last 3 days"
