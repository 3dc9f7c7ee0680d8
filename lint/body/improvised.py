"""What stands in for equipment at home and on the road: a bed for a bench, a rucksack for a dumbbell.

Which thing may serve for which piece is common practice, no source. A thing that may serve is taken to serve;
whether it bears the load is for whoever trains with it to try.
"""

from __future__ import annotations

from functools import lru_cache

from .names import fold, words

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Collection, Iterable

    from .catalogue import Exercise

WEIGHTS = (
    "rucksack", "ruck", "backpack", "back pack", "daypack", "bag", "suitcase", "holdall",
    "duffel", "water bottle", "bottle", "jug", "canister", "jerrycan", "jerry can", "bucket", "tin",
    "soup can", "handle", "book", "brick", "rock", "sack", "crate", "wine box", "paint pot", "toddler",
)  # fmt: skip
"""What is held in the hands or worn on the back."""

SEATS = (
    "bed", "sofa", "couch", "settee", "futon", "armchair", "chair", "stool", "ottoman", "table",
    "coffee table", "desk", "stairs", "staircase", "kerb", "curb", "ledge", "windowsill",
    "worktop", "counter", "kitchen counter", "crate", "tree trunk", "bath tub", "bathtub",
)  # fmt: skip
"""What the body, a foot or a hand is put on."""

RAILS = (
    "table", "desk", "railing", "handrail", "rail", "fence", "low bar", "broom", "broomstick", "branch",
    "tree", "beam", "playground", "climbing frame", "monkey bars", "goalpost", "crossbar", "doorframe",
    "door frame", "doorway", "door", "sheet", "bed sheet", "towel", "chair", "sink",
)  # fmt: skip
"""What the hands hold while the body is pulled."""

HANGING = (
    "doorframe", "door frame", "doorway", "branch", "tree", "beam", "playground", "climbing frame",
    "monkey bars", "goalpost", "crossbar", "scaffold", "stairs", "swing",
)  # fmt: skip
"""What the body hangs from."""

CLOTHS = ("towel", "tea towel", "sock", "cloth", "rag", "flannel", "paper plate", "magazine", "carpet")
"""What slides under a hand or a foot."""

SERVES: dict[str, tuple[str, ...]] = {
    **dict.fromkeys(("dumbbell", "kettlebell", "plate", "sandbag", "bucket", "harness"), WEIGHTS),
    "medicine ball": (*WEIGHTS, "football", "basketball", "volleyball", "pillow", "cushion"),
    "bench": SEATS,
    "box": SEATS,
    "sliders": CLOTHS,
    "ab wheel": CLOTHS,
    "suspension": ("sheet", "bed sheet", "towel", "scarf"),
    "pull-up bar": HANGING,
    "dip bars": ("chair", "stool", "worktop", "counter", "kitchen counter", "playground", "railing", "desk"),
    "band": ("tights", "inner tube", "bungee"),
}
"""By piece the things that may stand in for it."""

HELD_UP = ("rack", "barbell")
"""Pieces that only hold the body up where the body is what is lifted: there a rail serves."""

WORN = ("barbell", "trap bar", "rack")
"""Pieces for which a weight on the back may be meant; it is not the same lift."""


def is_thing(item: str) -> bool:
    """Whether an item of a coach's list is such a thing, or a text names one."""
    return _any((*WEIGHTS, *SEATS, *RAILS, *HANGING, *CLOTHS), [item])


def is_a_weight(item: str) -> bool:
    """Whether an item of a coach's list is a thing that is held or worn as a weight."""
    return _any(WEIGHTS, [item])


def serves(piece: str, exercise: Exercise, texts: Collection[str]) -> bool:
    """Whether one of the things that texts name may stand in for a piece that an exercise takes.

    ``texts`` are items of the athlete's list, the coach's name of the lift, and what is noted beside it.
    """
    things = SERVES.get(piece, ())
    if piece in HELD_UP and exercise.implement in ("bodyweight", "none"):
        things = RAILS
    return _any(things, texts)


def is_a_seat(piece: str) -> bool:
    """Whether a chair or a low wall serves as well, and one is nearly everywhere."""
    return SERVES.get(piece) is SEATS


def may_be_worn(pieces: Iterable[str], texts: Collection[str]) -> bool:
    """Whether a weight that texts name may be meant for pieces that it does not replace."""
    return set(pieces) <= {*WORN, *SERVES} and _any(WEIGHTS, texts)


def _any(things: Iterable[str], texts: Collection[str]) -> bool:
    said = [_said(text) for text in texts]
    return any(_of_thing(thing) <= words_of for thing in things for words_of in said)


def _said(text: str) -> frozenset[str]:
    return frozenset(map(fold, words(text)))


_of_thing = lru_cache(maxsize=200)(_said)
"""The words of one of the things above."""
