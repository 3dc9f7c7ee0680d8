"""Places in texts: they move with their passage, so what looks them up takes their key at that moment."""

from __future__ import annotations

import pytest

from spotline.lint.text.places import Passage, Place, Text


def test_a_place_moves_with_its_passage_and_its_key_with_it() -> None:
    passage = Passage(Text("a", "one two"), 4)
    place = passage.place(4, 7)
    assert (place.key, place.excerpt) == (("a", 4, 7), "two")
    passage.text, passage.start = Text("a", "one and two"), 8
    assert (place.key, place.excerpt) == (("a", 8, 11), "two")


def test_a_place_cannot_be_hashed() -> None:
    with pytest.raises(TypeError):
        hash(Text("a", "one").place(0, 1))


def test_two_places_are_equal_while_they_have_one_key() -> None:
    passage = Passage(Text("a", "one two"), 4)
    moving, fixed = passage.place(4, 7), Text("a", "one two").place(4, 7)
    assert moving == fixed
    passage.start = 5
    assert moving != fixed
    assert moving != moving.key


@pytest.mark.parametrize(("name", "start", "end"), [("b", 0, 3), ("a", 1, 3), ("a", 0, 2)])
def test_another_text_start_or_end_is_another_place(name: str, start: int, end: int) -> None:
    assert Text(name, "one").place(start, end) != Text("a", "one").place(0, 3)


def test_the_way_by_which_a_place_is_used_does_not_tell_it_apart() -> None:
    text = Text("a", "one two")
    place: Place = text.place(0, 3)
    assert place.reached((text.place(4, 7),)) == place
