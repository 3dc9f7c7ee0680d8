"""How common each exercise is: the limits of the word, and the order that it gives. Ground: common practice, no source."""

from __future__ import annotations

import re
from collections import Counter

import pytest

from spotline.lint.body import catalogue, equipment
from spotline.lint.body.catalogue import RANKS, Exercise, rarity
from spotline.lint.body.exercise_fields import fields
from spotline.lint.body.known import Known
from spotline.lint.body.nearest import nearest
from spotline.lint.body.search import search
from spotline.lint.editor.caret.exercise_prefixes import matching_exercises

CLASSIC_LIFTS = {"power clean"}
"""Advanced, and yet expected in most programmes that can teach them."""

CARE = re.compile(
    r"\b(?:pain|hurt|dizziness|stop|sore|only for|asks for|little room|stretch(?:es)? the front)\b"
)
"""Words of a note that asks for care."""


def test_every_exercise_has_a_rank_and_staples_are_few() -> None:
    counts = Counter(one.rank for one in catalogue.exercises())
    assert set(counts) == set(RANKS)
    assert counts["staple"] <= len(catalogue.exercises()) / 8
    assert counts["usual"] <= len(catalogue.exercises()) / 2


def test_no_advanced_lift_is_a_staple_but_for_the_classic_ones() -> None:
    advanced = {one.name for one in catalogue.exercises() if one.rank == "staple" and one.level == "advanced"}
    assert advanced == CLASSIC_LIFTS


def test_what_asks_for_care_is_no_staple() -> None:
    careful = [one for one in catalogue.exercises() if CARE.search(one.because.lower())]
    assert len(careful) > 25
    assert [one.name for one in careful if one.rank == "staple"] == []


def test_work_of_the_neck_is_no_staple() -> None:
    neck = set(catalogue.area("neck") or ())
    trained = [one for one in catalogue.exercises() if not neck.isdisjoint(one.direct)]
    assert trained
    assert [one.name for one in trained if one.rank == "staple"] == []


def test_every_major_region_has_a_staple() -> None:
    for region in catalogue.major_regions:
        muscles = set(catalogue.area(region) or ())
        staples = [one for one in catalogue.exercises() if one.rank == "staple"]
        assert any(not muscles.isdisjoint(one.direct) for one in staples), region


def test_of_names_as_near_the_more_common_comes_first() -> None:
    named = [(name, name) for name in ("red curl", "big curl", "old curl")]
    assert nearest("curls", named, 3) == ["big curl", "old curl", "red curl"]
    ranks = {"red curl": 0, "old curl": 1, "big curl": 2}
    assert nearest("curls", named, 3, ranks) == ["red curl", "old curl", "big curl"]
    assert nearest("big curls", named, 1, ranks) == ["big curl"]


def test_suggestions_put_the_more_common_first_and_leave_nothing_out() -> None:
    some = Known().nearest("quarry leg curl", 40)
    singles = [name for name in some if len(name.split()) == 3 and name.endswith("leg curl")]
    ranks = [rarity(one) for name in singles if (one := catalogue.exercise(name))]
    assert len(ranks) > 4
    assert ranks == sorted(ranks)
    assert set(ranks) == {0, 1, 2}


def own(name: str, **more: str) -> Exercise:
    entry = {"name": name, "path": {"hip": [85, 0], "knee": 15}, **more}
    return Exercise(fields(entry, catalogue.anatomy()))


def test_a_team_of_its_own_comes_first_whatever_its_rank() -> None:
    known = Known([own("quarry hinge"), own("harbour squat")])
    assert {one.rank for one in known.own} == {"usual"}
    assert known.nearest("harbour squats of old")[0] == "harbour squat"
    assert [fit.exercise.name for fit in matching_exercises("", known)][:2] == [
        "quarry hinge",
        "harbour squat",
    ]


def test_a_team_may_rank_its_own() -> None:
    known = Known([own("pier hinge", rank="special"), own("quay hinge"), own("dock hinge", rank="staple")])
    names = [fit.exercise.name for fit in matching_exercises("", known)]
    assert names[:3] == ["dock hinge", "quay hinge", "pier hinge"]


@pytest.mark.parametrize("words", ["hamstrings", "chest dumbbell", "row", "triceps long", "squat barbell"])
def test_a_search_puts_the_more_common_first_among_equals(words: str) -> None:
    found = [one for one in search(words).found if not one.exact]
    assert len({one.exercise.rank for one in found}) > 1
    for role in {one.role for one in found}:
        for sure in (True, False):
            alike = [one.exercise for one in found if one.role == role and one.sure is sure]
            by_name = [one for one in alike if set(words.split()) <= set(one.name.split())]
            for group in (by_name,) if words in ("row", "squat barbell") else (alike,):
                assert [rarity(one) for one in group] == sorted(map(rarity, group)), words


@pytest.mark.parametrize("typed", ["curl", "hamstrings", "row", "sq", "band"])
def test_completion_puts_the_more_common_first_among_equals(typed: str) -> None:
    fits = matching_exercises(typed, Known())
    assert len({fit.exercise.rank for fit in fits}) > 1
    order = [(fit.rank, rarity(fit.exercise)) for fit in fits]
    assert order == sorted(order)


def test_without_a_word_completion_begins_with_staples() -> None:
    ranks = [rarity(fit.exercise) for fit in matching_exercises("", Known())]
    assert len(ranks) == len(catalogue.exercises())
    assert ranks == sorted(ranks)


def test_what_replaces_an_exercise_is_the_more_common_of_what_trains_the_same() -> None:
    """The machine row and its plate-loaded and one-sided sisters train alike."""
    row = catalogue.exercise("seated cable row")
    assert row is not None
    there = ("machine", "dumbbells", "bench")
    offered = equipment.alternatives(row, lambda other: not equipment.missing(other, there, ()), 3)
    assert offered[0] == "machine row"
