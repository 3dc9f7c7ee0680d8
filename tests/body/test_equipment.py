"""What exercises take, and what a list in a coach's words holds. Common practice, no source."""

from __future__ import annotations

import pytest

from spotline.lint.body import built, catalogue
from spotline.lint.body.equipment import (
    EVERYTHING,
    NO_PIECE,
    OTHER_WORDS,
    alternatives,
    in_words,
    is_known,
    like,
    missing,
    needs,
    station_named,
)

# A piece is known by its name and by each other word for it


def test_every_piece_is_known() -> None:
    assert {piece for piece in built.PIECES if piece not in NO_PIECE} == PIECES | {
        piece for piece in built.PIECES if piece not in PIECES and piece not in NO_PIECE
    }
    assert set(built.PIECES) >= PIECES
    words = [*map(in_words, PIECES), *(word for others in OTHER_WORDS.values() for word in others)]
    assert not [word for word in words if not is_known(word)]


@pytest.mark.parametrize(
    "item",
    [
        "calf raise machine",
        "leg curl machine",
        "Smith machine",
        "plyo box",
        "EZ bar",
        "10 kg plates",
        "2 bars",
        "two pairs of 0.5",
        "DB 2-30",
        "sled + 15 m lane",
        "home gym",
    ],
)
def test_items_in_a_coachs_words_are_known(item: str) -> None:
    assert is_known(item)


@pytest.mark.parametrize(
    ("item", "near"),
    [("flux capacitor", []), ("hovercraft", []), ("dumbels", ["dumbbell"]), ("ketlebell", ["kettlebell"])],
)
def test_items_that_nobody_knows(item: str, near: list[str]) -> None:
    assert not is_known(item)
    assert like(item)[:1] == near


@pytest.mark.parametrize(
    ("name", "item", "there"),
    [
        ("standing calf raise", "calf raise machine", True),
        ("seated calf raise", "calf machine", True),
        ("lying leg curl", "leg curl machine", True),
        ("lying leg curl", "leg press machine", False),
        ("leg press", "calf raise machine", False),
        ("bench press", "machine", False),
    ],
)
def test_a_machine_may_be_called_by_a_part_of_its_name(name: str, item: str, there: bool) -> None:
    assert (lacks(name, item) == ()) is there


ALWAYS = ("floor", "wall", "partner", "track", "hill", "stairs", "box")
PIECES = {piece for one in catalogue.exercises() for piece in needs(one)}


def lacks(name: str, *equipment: str) -> tuple[str, ...]:
    exercise = catalogue.exercise(name)
    assert exercise is not None, name
    return missing(exercise, equipment, ALWAYS)


@pytest.mark.parametrize(
    ("name", "pieces"),
    [
        ("bench press", ("barbell", "bench", "rack")),
        ("push-up", ("floor",)),
        ("leg press", ("machine leg press",)),
        ("sled push", ("sled", "track")),
        ("isometric neck flexion", ()),
        ("dumbbell curl", ("dumbbell",)),
        ("hack squat calf raise", ("machine hack squat",)),
    ],
)
def test_what_an_exercise_takes(name: str, pieces: tuple[str, ...]) -> None:
    exercise = catalogue.exercise(name)
    assert exercise is not None
    assert needs(exercise) == pieces


def test_an_implement_that_is_no_station_is_taken_too() -> None:
    for one in catalogue.exercises():
        own = one.implement not in ("none", "bodyweight", "machine")
        assert (one.implement in needs(one)) is (own or one.implement in one.station), one.name


@pytest.mark.parametrize(
    ("name", "equipment", "lacking"),
    [
        ("bench press", ["barbell", "bench", "rack"], ()),
        ("bench press", ["barbell", "bench"], ("rack",)),
        ("bench press", ["barbell"], ("bench", "rack")),
        ("bench press", ["Barbells and plates", "flat bench", "squat rack"], ()),
        ("bench press", ["BAR", "adjustable bench", "power cage"], ()),
        ("bench press", ["bar", "bench", "hooks on the wall"], ("rack",)),
        ("bench press", ["bar", "bench", "cage"], ()),
        ("bench press", ["bench press station"], ("barbell", "rack")),
        ("bench press", ["full gym"], ()),
        ("bench press", ["gym ball"], ("barbell", "bench", "rack")),  # a ball is no gym
        ("barbell curl", ["pull-up bar"], ("barbell",)),  # a bar to hang from is none to curl
        ("pull-up", ["chin-up bar"], ()),
        ("pull-up", ["bar"], ("pull-up bar",)),
        ("push-up", ["kettlebell"], ()),
        ("goblet squat", ["kettlebells"], ()),
        ("kettlebell swing", ["a pair of dumbbells"], ()),
        ("weighted pull-up", ["pull-up bar", "weight vest"], ()),
        ("leg press", ["leg press"], ()),
        ("leg press", ["Leg-press machine"], ()),
        ("leg press", ["machines"], ()),
        ("leg press", ["leg extension machine"], ("machine leg press",)),
        ("leg extension", ["leg press machine"], ("machine leg extension",)),
        ("lat pulldown", ["cable machine"], ()),
        ("seated cable row", ["cables"], ()),
        ("ball leg curl", ["stability ball"], ()),
        ("slider leg curl", ["towels"], ()),
        ("suspension row", ["gymnastic rings"], ()),
        ("band curl", ["resistance bands"], ()),
        ("single-leg calf raise", ["band"], ()),  # a step is always there
        ("Nordic curl", ["band"], ()),
        ("dip", ["parallel bars"], ()),
        ("dip", [""], ("dip bars",)),
        # a gym has everything, some of what is called one has not
        ("leg press", ["big commercial gym"], ()),
        ("leg press", ["physio gym (Tue)"], ()),
        ("leg press", ["club gym", "4 racks"], ()),
        ("leg press", ["home gym"], ("machine leg press",)),
        ("leg press", ["small hotel gym"], ("machine leg press",)),
        ("leg press", ["gym mat"], ("machine leg press",)),
        # what comes with a rack
        ("back squat", ["2 racks"], ()),
        ("deadlift", ["platform"], ()),
        ("deadlift", ["light bumpers"], ()),
        ("bench press", ["competition bench"], ()),
        ("deadlift", ["15 kg bar (upper)"], ()),
        ("pull-up", ["rack"], ()),
        ("back squat", ["dumbbell rack"], ("barbell", "rack")),  # it holds dumbbells
        # stacks and cables
        ("lat pulldown", ["pulldown stack"], ()),
        ("seated cable row", ["cable stack"], ()),
        ("cable curl", ["1 cable"], ()),
        # numbers, units and counts
        ("dumbbell curl", ["DB to 40"], ()),
        ("dumbbell curl", ["two pairs of dumbbells 2-22 kg"], ()),
        ("kettlebell swing", ["KBs 8-24"], ()),
        # several pieces in one item
        ("lying leg curl", ["lying + seated leg curl"], ()),
        ("seated leg curl", ["leg press, leg curl and calf"], ()),
        ("leg press", ["machines (leg press, leg ext)"], ()),
        ("leg extension", ["leg press / leg ext"], ()),
        ("hip adduction machine", ["adductor"], ()),
        ("hip abduction machine", ["adductor"], ("machine hip abduction",)),
        ("seated calf raise", ["calf machines"], ()),
        ("leg extension", ["lying + seated leg curl"], ("machine leg extension",)),
        # a bench that only takes a foot or a hand
        ("rear-foot-elevated split squat", ["dumbbells"], ()),
        ("one-arm dumbbell row", ["dumbbells"], ()),
        ("dumbbell bench press", ["dumbbells"], ("bench",)),
    ],
)
def test_what_a_list_lacks(name: str, equipment: list[str], lacking: tuple[str, ...]) -> None:
    assert lacks(name, *equipment) == lacking


def test_what_is_always_there_is_the_askers_to_say() -> None:
    exercise = catalogue.exercise("push-up")
    assert exercise is not None
    assert missing(exercise, ["band"], ()) == ("floor",)


@pytest.mark.parametrize("piece", sorted(PIECES))
def test_every_piece_is_held_by_its_own_name_its_other_words_and_a_whole_gym(piece: str) -> None:
    taking = next(one for one in catalogue.exercises() if piece in needs(one))
    for word in (
        piece,
        in_words(piece),
        f"{piece.removesuffix('s')}s",
        *OTHER_WORDS.get(piece, ()),
        *EVERYTHING,
    ):
        assert piece not in missing(taking, [word], ()), word
    assert piece in missing(taking, ["broomstick"], ())


def test_other_words_stand_for_pieces_that_exercises_take() -> None:
    assert set(OTHER_WORDS) <= PIECES


@pytest.mark.parametrize(
    ("piece", "words"), [("machine leg press", "leg press"), ("rack", "rack"), ("machine", "machine")]
)
def test_a_piece_in_words(piece: str, words: str) -> None:
    assert in_words(piece) == words


@pytest.mark.parametrize(
    ("piece", "stations", "name"),
    [
        ("rack", ["bench", "squat rack"], "squat rack"),
        ("rack", ["bench"], ""),
        ("machine leg press", ["leg press", "machines"], "leg press"),
        ("rack", [], ""),
    ],
)
def test_a_station_as_the_team_calls_it(piece: str, stations: list[str], name: str) -> None:
    assert station_named(piece, stations) == name


class TestAlternatives:
    def offered(self, name: str, *equipment: str, most: int = 9) -> list[str]:
        exercise = catalogue.exercise(name)
        assert exercise is not None
        return alternatives(exercise, lambda other: not missing(other, equipment, ALWAYS), most)

    @pytest.mark.parametrize(
        ("name", "equipment", "first"),
        [
            ("back squat", "dumbbells", "goblet squat"),
            ("inverted row", "suspension", "suspension row"),
            ("leg press", "kettlebell", "dumbbell squat"),
            ("hip thrust", "dumbbell", "glute bridge"),
            ("barbell curl", "dumbbell", "dumbbell curl"),
        ],
    )
    def test_the_nearest_first(self, name: str, equipment: str, first: str) -> None:
        assert self.offered(name, equipment)[0] == first

    def test_its_own_forms_come_before_others(self) -> None:
        exercise = catalogue.exercise("back squat")
        assert exercise is not None
        forms = {*exercise.easier, *exercise.harder}
        own = [name in forms for name in self.offered("back squat", "full gym", most=99)]
        assert own == sorted(own, reverse=True)
        assert any(own)
        assert not all(own)

    def test_no_more_than_asked_for(self) -> None:
        assert len(self.offered("back squat", "full gym", most=2)) == 2
        assert self.offered("back squat", "full gym", most=2) == self.offered("back squat", "full gym")[:2]

    def test_nothing_where_nothing_will_do(self) -> None:
        assert self.offered("leg extension", "kettlebell") == []

    @pytest.mark.parametrize(
        "name",
        ["back squat", "bench press", "pull-up", "Romanian deadlift", "dumbbell curl", "plank", "box jump"],
    )
    def test_the_same_work_no_harder_and_with_what_there_is(self, name: str) -> None:
        exercise = catalogue.exercise(name)
        assert exercise is not None
        levels = ("novice", "intermediate", "advanced")
        found = self.offered(name, "dumbbell", "bench", "band", most=99)
        assert name not in found
        for other_name in found:
            other = catalogue.exercise(other_name)
            assert other is not None
            assert other.kind == exercise.kind
            assert other.unilateral == exercise.unilateral
            assert other.patterns == exercise.patterns
            assert set(other.actions) == set(exercise.actions)
            assert levels.index(other.level) <= levels.index(exercise.level)
            assert missing(other, ["dumbbell", "bench", "band"], ALWAYS) == ()
