"""Bounds after reading: of many alike the first are shown, and twice as much takes about twice the steps."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest

from spotline.lint.project.results import Review
from spotline.lint.project.review import review
from spotline.lint.text.places import Place
from spotline.tests.steps import growth

DAY = date(2026, 1, 5)
HEAD = "programme: Test\nstarts: 2026-01-05\nsessions:\n  - session: A\n    exercises:\n"
SOUND = "      - {exercise: back squat, sets: 3, reps: 5, rir: 2}\n"

MANY = {
    "unknown names": (HEAD, "      - {exercise: wobble press N, sets: 3, reps: 5}\n"),
    "long unknown names": (HEAD, "      - {exercise: " + "wobble " * 30 + "N, sets: 3, reps: 5}\n"),
    "unknown keys": (HEAD, "      - {exercise: back squat, sets: 3, reps: 5, wobble N: 5}\n"),
    "slips": (HEAD, "      - {exercise: back squat, sets: 300, reps: 5}\n"),
    "misspelt keys": (HEAD, "      - {exercise: back squat, sets: 3, rets: 5}\n"),
    "waivers of no rule": (HEAD + SOUND + "waivers:\n", "  - {rule: nothing-N, reason: it is}\n"),
    "impossible dates": (
        HEAD + SOUND + "waivers:\n",
        "  - {rule: tempo-too-long, reason: it is, until: 2026-02-31}\n",
    ),
    "ranges that run backwards": (HEAD, "      - {exercise: back squat, sets: 3, reps: 8-5}\n"),
    "loads that cannot be": (HEAD, "      - {exercise: back squat, sets: 3, reps: 5, load: 9999 kg}\n"),
    "compounds after small lifts": (
        HEAD,
        "      - {exercise: leg extension, sets: 3, reps: 9}\n      - {exercise: back squat, sets: 3, reps: 5}\n",
    ),
    "restrictions": (
        HEAD + SOUND + "athlete:\n  name: Mara\n  protect:\n",
        "    - {movement: back squat, advised by: coach, note: N}\n",
    ),
    "events": (
        HEAD.replace("sessions", "weeks: 4\nsessions") + SOUND + "events:\n",
        "  - {event: race N, date: 2026-01-20}\n",
    ),
    "waivers that waive nothing": (HEAD, SOUND.rstrip() + "  # spotline: waive tempo-too-long because N\n"),
}


def text_of(name: str, count: int) -> str:
    head, line = MANY[name]
    return head + "".join(line.replace("N", str(number)) for number in range(count))


@pytest.mark.parametrize("name", MANY)
def test_twice_as_much_takes_no_more_than_about_twice_the_steps(name: str, tmp_path: Path) -> None:
    def work(count: int) -> Callable[[], object]:
        folder = tmp_path / str(count)
        (folder / ".git").mkdir(parents=True, exist_ok=True)
        path = folder / "plan.programme.yaml"
        path.write_text(text_of(name, count), encoding="utf-8")
        return lambda: review([str(path)], DAY)

    assert growth(work, 100) < 2.4


def test_lines_of_the_same_words_are_drawn_together_without_comparing_each_with_each(
    reviewed: Callable[..., Review], monkeypatch: pytest.MonkeyPatch
) -> None:
    asked: list[Place] = []
    key = Place.key.fget
    assert key is not None
    monkeypatch.setattr(Place, "key", property(lambda place: asked.append(place) or key(place)))
    counts = []
    for lines in (200, 400):
        asked.clear()
        reviewed(text_of("slips", lines))
        counts.append(len(asked))
    assert counts[1] < 2.2 * counts[0]


class TestMany:
    def test_the_first_are_shown_and_the_others_counted(self, reviewed: Callable[..., Review]) -> None:
        settings = {"spotline.yaml": "rules: {sets-not-read: skip}\n"}
        (one,) = reviewed(text_of("unknown names", 80), settings).files
        found = [finding for finding in one.findings if finding.rule == "exercise-unknown"]
        assert len(found) == 51
        assert [finding.counted for finding in found if finding.subject == "more"] == [
            "And 30 more of this kind in this file."
        ]

    def test_those_of_one_cause_are_one(self, reviewed: Callable[..., Review]) -> None:
        (one,) = reviewed(text_of("unknown names", 80)).files
        (lead,) = [
            finding for finding in one.findings if finding.rule in ("sets-not-read", "exercise-unknown")
        ]
        assert len(lead.follows) == 80

    def test_what_blocks_still_does(self, reviewed: Callable[..., Review]) -> None:
        """The one that stands for the others is as serious as the worst of them."""
        settings = {
            "spotline.yaml": "block commit on: [error]\nrules: {number-implausible: {severity: error}}\n"
        }
        result = reviewed(text_of("slips", 60).replace("300", "40"), settings)
        found = [finding for finding in result.files[0].findings if finding.rule == "number-implausible"]
        assert {finding.severity for finding in found} == {"error"}
        assert result.exit_code == 1

    def test_faults_of_form(self, reviewed: Callable[..., Review]) -> None:
        (one,) = reviewed(text_of("unknown keys", 700)).files
        assert len(one.findings) < 120
        assert "faults-many" in {finding.rule for finding in one.findings}
        assert one.ledgers == []  # whatever were counted of it would be wrong
