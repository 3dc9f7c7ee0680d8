"""Values, lines and days in some weeks alone: written as a coach writes them, and read back as they were meant."""

from __future__ import annotations

import re
from collections.abc import Collection

import pytest
from hypothesis import given
from hypothesis import strategies as st

from spotline.lint.model.week_edits import runs
from spotline.lint.model.weeks import weeks as weeks_of
from spotline.lint.remedies.some_weeks import carried_on, kept_to, value_in, value_of
from spotline.lint.solving.judge import with_spans
from spotline.lint.solving.steps import are_apart, spans_of_all
from spotline.lint.syntax.builder import parse
from spotline.lint.syntax.tree import Mapping, Scalar

WEEKS = range(1, 9)


def line(words: str) -> Mapping:
    """A line of a session, as a group of keys."""
    root = parse("line.yaml", words).root
    assert isinstance(root, Mapping)
    return root


def written(group: Mapping, edits: object) -> str:
    assert edits is not None
    spans = spans_of_all(edits, "\n")  # type: ignore[arg-type]
    assert are_apart(spans)
    return with_spans(group.source.content, spans)


def by_week(words: str, key: str, done: Collection[int]) -> dict[int, str]:
    """What a value of a line says in each week."""
    value = line(words).entries[key].value
    if isinstance(value, Scalar):
        return dict.fromkeys(done, value.text)
    assert isinstance(value, Mapping)
    found: dict[int, str] = {}
    for one, entry in value.entries.items():
        assert isinstance(entry.value, Scalar)
        for first, last in weeks_of(one):
            for week in range(first, last + 1):
                assert week not in found, words
                found[week] = entry.value.text
    if "other" in value.entries:
        assert set(done) - set(found), words  # else no week is left for it
        other = value.entries["other"].value
        assert isinstance(other, Scalar)
        found |= {week: other.text for week in done if week not in found}
    return found


@pytest.mark.parametrize(
    ("words", "weeks", "wanted"),
    [
        ("{sets: 3}", [5, 6, 7, 8], "{sets: {5-8: 2, other: 3}}"),
        ("{sets: 3}", list(WEEKS), "{sets: 2}"),
        ("{sets: {1-4: 3, 5-8: 4}}", [8], "{sets: {1-4: 3, 5-7: 4, 8: 2}}"),
        ("{sets: {1-4: 3, 5-8: 4}}", [5, 6, 7, 8], "{sets: {1-4: 3, 5-8: 2}}"),
        ("{sets: {4: 2, other: 3}}", [8], "{sets: {4+8: 2, other: 3}}"),
        ("{sets: {4: 1, other: 3}}", [8], "{sets: {4: 1, 8: 2, other: 3}}"),
        ("{sets: {1-4: 2, 5-8: 4}}", [5, 6, 7, 8], "{sets: 2}"),
        ("sets:\n  1-4: 3   # easy\n  5-8: 4\n", [8], "sets:\n  1-4: 3   # easy\n  5-7: 4\n  8: 2\n"),
        ("sets: '3'   # as ever\n", [1], "sets: {1: 2, other: '3'}   # as ever\n"),
    ],
)
def test_a_value_is_written_in_some_weeks(words: str, weeks: list[int], wanted: str) -> None:
    group = line(words)
    assert written(group, value_in(group, "sets", weeks, WEEKS, "2")) == wanted


@pytest.mark.parametrize(
    "words",
    [
        "{sets: {1: 3, again: 4}}",
        "{load: {1: 60 kg, 2-8: +5 kg}}",
        "{sets: {Bo: 3, Cy: 4}}",
        "{load: '+5 kg'}",
    ],
)
def test_a_value_that_hangs_on_others_is_left_alone(words: str) -> None:
    group = line(words)
    assert value_in(group, next(iter(group.entries)), [3], WEEKS, "2") is None


def test_a_merged_value_and_one_used_elsewhere_are_left_alone() -> None:
    root = line("a: &a {sets: 3}\nb: {<<: *a, reps: 5}\nc: *a\n")
    for key in "bc":
        group = root.entries[key].value
        assert isinstance(group, Mapping)
        assert value_in(group, "sets", [1], WEEKS, "2") is None


PARTS = st.lists(st.sets(st.sampled_from(WEEKS), min_size=1), min_size=1, max_size=4)


def shared_out(parts: list[set[int]]) -> str:
    """Values by week: the first part of the weeks has 1, what is left of the second 2; those of none 5."""
    given_so_far: set[int] = set()
    words = []
    for number, own in enumerate(parts, start=1):
        left = own - given_so_far
        given_so_far |= left
        if left:
            words.append(f"{runs(left)}: {number}")
    if given_so_far < set(WEEKS):
        words.append("other: 5")
    return ", ".join(words)


@given(PARTS, st.sets(st.sampled_from(WEEKS), min_size=1), st.sampled_from("12345"))
def test_other_weeks_keep_what_they_had(parts: list[set[int]], weeks: set[int], new: str) -> None:
    text = f"{{sets: {{{shared_out(parts)}}}}}"
    before = by_week(text, "sets", WEEKS)
    group = line(text)
    after = by_week(written(group, value_in(group, "sets", weeks, WEEKS, new)), "sets", WEEKS)
    assert after == before | dict.fromkeys(weeks, new)
    assert value_of(group, "sets", [min(weeks)]) == before[min(weeks)]


@given(PARTS, st.sets(st.sampled_from(WEEKS), min_size=1, max_size=7))
def test_a_line_kept_to_some_weeks_keeps_their_values(parts: list[set[int]], weeks: set[int]) -> None:
    text = f"{{exercise: dip, sets: {{{shared_out(parts)}}}, reps: 8}}"
    before = by_week(text, "sets", WEEKS)
    group = line(text)
    after = written(group, kept_to(group, weeks))
    assert f"in weeks: {runs(weeks)}" in after
    assert by_week(after, "sets", weeks) == {week: before[week] for week in weeks}


def test_a_line_that_goes_on_everywhere_needs_no_weeks() -> None:
    group = line("{exercise: leg curl, in weeks: 1-4, sets: {1-3: 3, 4: 2}, reps: 8}")
    on = carried_on(group, [1, 2, 3, 4], [5, 6, 7, 8], WEEKS)
    assert written(group, on) == "{exercise: leg curl, sets: {1-3: 3, 4-8: 2}, reps: 8}"
    some = carried_on(group, [1, 2, 3, 4], [5, 6], WEEKS)
    assert re.search(r"in weeks: 1-6, sets: \{1-3: 3, 4-6: 2\}", written(group, some))
