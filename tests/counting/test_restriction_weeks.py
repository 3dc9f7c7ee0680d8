"""Restrictions that hold in some weeks, or between two days."""

from __future__ import annotations

import pytest

HEAD = "programme: P\nweeks: 4\nathlete:\n  name: Ida\n  protect: [{movement: overhead pressing, %s, advised by: physio}]\n"
SESSION = """\
sessions:
  - session: A
    day: thursday
    exercises:
      - {exercise: %s, sets: 3, reps: 5, rir: 2}
"""


def text(when, exercise="overhead press", starts="starts: 2026-01-05\n"):
    return HEAD % when + starts + SESSION % exercise


@pytest.fixture(scope="module")
def said(findings):
    """What is found on restrictions: rule and weeks."""

    def run(content, *rules):
        wanted = rules or (
            "protected-area-loaded",
            "restriction-weeks-beyond",
            "range-backwards",
            "weeks-beyond",
        )
        every = [said for one in findings(content) for said in (one, *one.follows)]
        return [one for one in every if one.rule in wanted]

    return run


@pytest.mark.parametrize(
    ("when", "weeks"),
    [
        ("in weeks: 2-3", (2, 3)),
        ("in weeks: 1+4", (1, 4)),
        ("from: 2026-01-16", (3, 4)),
        ("until: 2026-01-15", (1, 2)),
        ("from: 2026-01-15, until: 2026-01-15", (2,)),
    ],
)
def test_it_is_looked_for_in_its_weeks_and_on_its_days_only(when, weeks, said):
    (found,) = said(text(when))
    assert (found.rule, found.weeks) == ("protected-area-loaded", weeks)
    assert any("protected in week" in one.words or "protected from" in one.words or "protected until" in one.words for one in found.related)  # fmt: skip


@pytest.mark.parametrize("when", ["from: 2026-02-02", "until: 2026-01-04"])
def test_it_is_silent_outside_the_programme(when, said):
    assert said(text(when)) == []


def test_without_a_start_it_holds_unless_it_is_over_today(said):
    (found,) = said(text("until: 2099-01-15", starts=""))
    assert found.weeks == (1, 2, 3, 4)
    assert said(text("until: 2020-01-15", starts="")) == []


def test_weeks_that_no_programme_has(said):
    (found,) = said(text("in weeks: 5-6"))
    assert (found.rule, found.place.excerpt) == ("restriction-weeks-beyond", "overhead pressing")
    assert "weeks 5-6; the longest programme has 4 weeks" in found.counted


def test_days_the_wrong_way_round_spare_throughout(said):
    turned, loaded = said(text("from: 2026-02-02, until: 2026-01-12"))
    assert (turned.rule, turned.place.excerpt) == ("range-backwards", "2026-01-12")
    assert (loaded.rule, loaded.weeks) == ("protected-area-loaded", (1, 2, 3, 4))


def test_weeks_and_dates_together_are_one_finding(findings):
    found = [one for one in findings(text("in weeks: 2, until: 2026-01-12")) if not one.why]
    assert [one.rule for one in found] == ["keys-at-odds"]


def test_an_unknown_name_blocks_only_while_something_is_spared(said):
    unknown = text("in weeks: 1-2", exercise="zonk heave, in weeks: 1")
    assert [one.severity for one in said(unknown, "exercise-unknown")] == ["warning"]
    later = text("in weeks: 1-2", exercise="zonk heave, in weeks: 3-4")
    assert [one.severity for one in said(later, "exercise-unknown")] == ["note"]
