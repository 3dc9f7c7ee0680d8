"""Equipment: what an exercise needs, and whether a list in a coach's words holds it.

Which words stand for which piece is common practice, no source. A word that may mean a piece is taken to mean
it, so that nothing is called missing unless it surely is.
"""

from __future__ import annotations

from functools import lru_cache

from . import built, catalogue
from .names import fold, words

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Collection, Iterable

    from .catalogue import Exercise

NO_PIECE = ("none", "bodyweight", "machine")
"""Implements that are not a piece of their own. A machine is known by its station."""

EVERYTHING = ("everything", "weight room", "fitness centre", "fitness center", "leisure centre")
"""Words that stand for all equipment, as a gym does."""

GYM = "gym"

NO_FULL_GYM = frozenset(
    (
        "home", "hotel", "garage", "small", "mini", "tiny", "basement", "apartment", "park", "outdoor",
        "playground", "travel", "no", "not", "without",
    )
)  # fmt: skip
"""Words for a gym in which much may be missing."""

ALWAYS_THERE = ("floor", "wall", "partner", "track", "hill", "stairs", "box")
"""Pieces that nobody needs to list (common practice, no source)."""

MACHINE = "machine "

CARDIO = ("cardio", "cardio machine", "ergometer")
"""Words for machines for endurance, of whatever kind."""

OTHER_WORDS: dict[str, tuple[str, ...]] = {
    "dumbbell": ("kettlebell", "DB", "free weights"),
    "kettlebell": ("dumbbell", "KB", "free weights"),
    "barbell": ("bar", "bar and plates", "free weights"),
    "plate": ("barbell", "weight vest", "weighted vest", "dumbbell", "kettlebell", "free weights"),
    "rack": ("squat stand", "cage", "rig"),
    "bench": ("incline",),
    "guided bar": ("guided barbell", "Smith machine", "Smith"),
    "cable": ("pulley", "functional trainer", "stack"),
    "machine pulldown": ("cable", "lat machine", "stack"),
    "machine cable row": ("cable", "seated row", "low row", "stack"),
    "machine fly": ("pec deck",),
    "pull-up bar": ("chin-up bar", "rig", "rings"),
    "dip bars": ("parallel bars", "dip station", "rings"),
    "suspension": ("rings", "straps", "sling trainer", "TRX"),
    "sliders": ("sliding discs", "towels"),
    "band": ("tube",),
    "box": ("step", "chair", "bench", "stairs"),
    "exercise ball": ("stability ball", "Swiss ball", "gym ball", "fitness ball"),
    "medicine ball": ("med ball", "slam ball", "wall ball", "small ball", "soft ball"),
    "trap bar": ("hex bar",),
    "ab wheel": ("ab roller", "wheel"),
    "sled": ("prowler",),
    "tire": ("tyre",),
    "rope": ("battle ropes", "skipping rope"),
    "machine rower": ("rowing machine", "rowing ergometer", "row ergometer", *CARDIO),
    "machine bike": ("bicycle", "cycle", "ergometer", "air bike", "fan bike", "spin bike", *CARDIO),
    "machine ski ergometer": ("ski", *CARDIO),
    "machine stair climber": ("stepper", "step machine", "stair machine", *CARDIO),
    "machine cross trainer": ("elliptical", *CARDIO),
    "machine arm ergometer": ("arm bike", "hand bike", *CARDIO),
    "treadmill": CARDIO,
    "45-degree bench": ("back extension", "hyperextension", "hyper bench", "Roman chair", "glute-ham bench"),
    "glute-ham bench": ("GHD", "GHR", "Roman chair", "glute-ham developer"),
    "preacher bench": ("preacher",),
    "knee raise stand": ("captain's chair",),
    "harness": ("belt", "vest"),
    "sandbag": ("sack", "ruck"),
}

RACKS = ("rack", "squat stand", "cage", "rig", "competition bench")

COMES_WITH: dict[str, tuple[str, ...]] = {
    "barbell": (*RACKS, "platform", "bumper"),
    "plate": (*RACKS, "platform", "bumper"),
    "rack": ("competition bench",),
    "pull-up bar": RACKS,
    "45-degree bench": (*RACKS, "platform"),
    "harness": ("sled", "prowler"),
    "landmine": ("barbell", "bar and plates", "Olympic bar", *RACKS),
}
"""What a piece comes with in most rooms: where there is a rack, there is a bar, and one to hang from; a sled
has something to drag it by."""

HAND_WEIGHTS = {"dumbbell": ("kettlebell", "KB"), "kettlebell": ("dumbbell", "DB")}
"""Of each, how the other one is called, which does instead."""


BESIDE = (
    "safety bar", "EZ bar", "curl bar", "bent bar", "cambered bar", "multi-grip bar", "Swiss bar", "axle",
    "log", "ankle weight", "backpack", "weights", "machines", "mat", "foam roller", "ball", "blocks",
    "chains", "collars", "belt", "straps", "chalk", "wedge", "slant board", "parallettes", "towel",
    "broomstick", "stick", "cones", "ladder", "stopwatch", "mirror", "pool", "pad", "bodyweight", "none",
    "nothing", "no equipment", "anchor", "rail", "bumper", "home gym", "hotel gym", "platform",
    "garage gym", "small gym", "timer", "clock", "bed", "sofa", "lane", "turf", "sand pit", "sandpit",
    "grass", "field", "pitch", "court", "beach", "lawn", "hurdle", "plinth", "balance board",
)  # fmt: skip
"""Words for equipment on which no exercise of the catalogue counts by itself."""


COUNTS = frozenset(
    (
        "kg", "lb", "cm", "mm", "m", "in", "to", "up", "down", "from", "of", "and", "a", "an", "the",
        "with", "each", "pair", "set", "one", "two", "three", "four", "five", "several", "some",
        "all", "every", "any", "various", "plenty", "lots",
        "light", "medium", "heavy", "long", "short", "new", "old", "full", "half", "about", "max",
    )
)  # fmt: skip
"""Words of an item that are no words of the piece: "two pairs of dumbbells to 22 kg"."""

LOW_SUPPORT = ("box", "chair", "step", "bed", "sofa", "couch")
"""What a foot, a knee or a hand can be put on instead of a bench."""

LAIN_ON = ("lying", "prone", "incline", "supported", "seated", "side-lying")
"""Stances of work for which a bench carries the body."""


@lru_cache(maxsize=5000)
def is_known(item: str) -> bool:
    """Whether an item of a coach's list may be a piece that an exercise needs, or is known without."""
    plain = item.lower().removesuffix("s")
    if plain in built.PIECES or item in built.PIECES or MACHINE + plain in built.PIECES:  # most are
        return True
    said = _said(item)
    if is_everything(item) or not _of_the_piece(_words(item)) or _means(said, (*BESIDE, *EVERYTHING)):
        return True
    if any(_holds([item], piece) for piece in built.PIECES if piece not in NO_PIECE):
        return True
    from .improvised import is_thing

    return is_thing(item)


@lru_cache(maxsize=500)
def is_everything(item: str) -> bool:
    """Whether an item is a whole gym: "club gym", "full commercial gym", but no "home gym" or "gym ball"."""
    parts = [words(part) for part in _parts(item)]
    if _means(_said(item), EVERYTHING):
        return True
    said = {word for part in parts for word in part}
    return any(part[-1:] == [GYM] for part in parts) and NO_FULL_GYM.isdisjoint(said)


def like(item: str, most: int = 3) -> list[str]:
    """Up to ``most`` pieces that an unknown item may mean, the likeliest first."""
    from .nearest import nearest

    others = {other: in_words(piece) for piece, several in OTHER_WORDS.items() for other in several}
    own = {in_words(piece): in_words(piece) for piece in built.PIECES if piece not in NO_PIECE}
    return nearest(item, (others | own).items(), most)  # a piece that may stand in for another is itself


def unknown(item: str) -> str:
    """What is wrong with an item that nobody knows."""
    return f"`{item}` is no equipment that is known, so no exercise counts on it."


REMEDY = "Write its usual name, or take it out."
"""What to do about such an item if nothing is like it."""


def needs(exercise: Exercise, implement: str = "") -> tuple[str, ...]:
    """The pieces that an exercise needs: its stations, and its implement if that is a piece.

    With another ``implement`` it needs that one, and nothing that only holds its own.
    """
    lifted = implement or exercise.implement
    stations = exercise.station
    if lifted != exercise.implement:
        stations = tuple(piece for piece in stations if not _holds_up(piece, exercise.implement))
    return tuple(dict.fromkeys((*stations, *(() if lifted in NO_PIECE else (lifted,)))))


def _holds_up(piece: str, implement: str) -> bool:
    """Whether a station is an implement itself or only there for it."""
    if implement == MACHINE.strip():
        return piece.startswith(MACHINE)
    return piece == implement or (piece == "rack" and implement == "barbell")


def missing(
    exercise: Exercise, equipment: Collection[str], always: Collection[str], implement: str = ""
) -> tuple[str, ...]:
    """The pieces that an exercise needs and a list lacks. Pieces in ``always`` are never missing.

    ``implement`` is what is lifted if it is not the exercise's own.
    """
    lacking = tuple(
        piece
        for piece in needs(exercise, implement)
        if piece not in always
        and not _holds(equipment, piece)
        and not any(_means(_said(item), COMES_WITH.get(piece, ())) for item in equipment)
        and not _is_put_on(piece, exercise, equipment, always)
    )
    return () if lacking and any(map(is_everything, equipment)) else lacking


def _is_put_on(piece: str, exercise: Exercise, items: Collection[str], always: Collection[str]) -> bool:
    """Whether a bench only takes a foot, a knee or a hand, and something else is there for that."""
    leans = exercise.stance == "supported" and exercise.unilateral
    if piece != "bench" or (exercise.stance in LAIN_ON and not leans):
        return False
    return not set(LOW_SUPPORT).isdisjoint(always) or any(_means(_said(item), LOW_SUPPORT) for item in items)


def is_said(piece: str, name: str) -> bool:
    """Whether the name of a lift says a piece, in whatever usual word or abbreviation."""
    return _holds([name], piece)


def in_words(piece: str) -> str:
    """A piece as a coach calls it: ``leg press`` for the machine of that name."""
    return piece.removeprefix(MACHINE)


def as_thing(piece: str) -> str:
    """The same, told from the exercise that may have its name: ``leg press machine``."""
    words = in_words(piece)
    return f"{words} machine" if words != piece and not words.endswith("machine") else words


def station_named(name: str, stations: Iterable[str]) -> str:
    """The one of a team's ``stations`` that is the piece ``name`` of the catalogue; empty if none is."""
    return next((own for own in stations if _holds([own], name)), "")


def weighs_as(piece: str, item: str) -> bool:
    """Whether an item tells the weights of a piece, and not only of what does instead."""
    return _holds([item], piece) and not _means(_said(item), HAND_WEIGHTS.get(piece, ()))


def _words(item: str) -> frozenset[str]:
    return frozenset(map(fold, words(item)))


def _parts(item: str) -> list[str]:
    """The parts of an item in small letters, without numbers: "2 racks + DB (to 40)" has four."""
    text = "".join(" " if letter.isdigit() or letter in "./" else letter for letter in item.lower())
    for mark in "+,;:&()[]":
        text = text.replace(mark, "|")
    return [part for part in text.replace(" and ", "|").split("|") if part.strip(" -")]


@lru_cache(maxsize=1000)
def _said(item: str, *, spelled: bool = False) -> frozenset[frozenset[str]]:
    """The words of an item and of each of its parts, as written or ``spelled`` out as in names of lifts."""
    read = spelled_out if spelled else _words
    whole = [_for_a_bar(read(text)) for text in (item, *_parts(item))]
    return frozenset((*filter(None, map(_of_the_piece, whole)), _for_a_bar(_words(item))))


def spelled_out(text: str) -> frozenset[str]:
    """The words of an item with abbreviations spelled out: DB, KB, leg ext."""
    from . import built_names
    from .name_tokens import MEASURE, tokens_of

    tokens = tokens_of(text, built_names.SPELLINGS)
    return frozenset(token.word for token in tokens if token.kind != MEASURE)


def _of_the_piece(said: frozenset[str]) -> frozenset[str]:
    """The words that name the piece."""
    return frozenset(word for word in said if word not in COUNTS and not word[:1].isdigit())


def _for_a_bar(said: frozenset[str]) -> frozenset[str]:
    """The words without a rack that is none for a bar: it holds dumbbells."""
    return said - {"rack"} if said & {"dumbbell", "kettlebell", "db", "kb"} else said


@lru_cache(maxsize=1000)
def _named(piece: str, *, spelled: bool = False) -> tuple[frozenset[str], ...]:
    """The words of each name of a piece, as written or spelled out; also in one word, as in "trapbar"."""
    read = spelled_out if spelled else _words
    names = (piece.removeprefix(MACHINE), *OTHER_WORDS.get(piece, ()))
    return (*map(read, names), *(frozenset((fold("".join(words(one))),)) for one in names if " " in one))


def _holds(items: Collection[str], piece: str) -> bool:
    """Whether an item of the list has all the words of the piece, or of another word for it.

    A machine may be called by a part of its words: a "calf raise machine", or a "leg curl", is one for
    standing or for sitting.
    """
    return any(
        _is_meant(said, name) or (piece.startswith(MACHINE) and _is_machine(said, name))
        for spelled in (False, True)  # to spell out takes longer, and few items need it
        for item in items
        for said in _said(item, spelled=spelled)
        for name in _named(piece, spelled=spelled)
    )


def _is_machine(said: frozenset[str], name: frozenset[str]) -> bool:
    """Whether words mean all machines, or name one by a part of its name."""
    bare = said - _MACHINE
    enough = len(bare) > 1 or said > _MACHINE or not bare.isdisjoint(_TELLING)
    return said == _MACHINE or (bool(bare) and enough and bare <= name)


def _is_meant(said: frozenset[str], wanted: frozenset[str]) -> bool:
    return wanted == said or (wanted <= said and wanted not in _WHOLE)


def _means(listed: Iterable[frozenset[str]], names: tuple[str, ...]) -> bool:
    """Whether words of the list are all the words of one of the names."""
    return any(_is_meant(said, wanted) for said in listed for wanted in _words_of(names))


@lru_cache(maxsize=100)
def _words_of(names: tuple[str, ...]) -> tuple[frozenset[str], ...]:
    return tuple(map(_words, names))


_MACHINE = _words(MACHINE)

_TELLING = frozenset(("calf", "adduction", "abduction", "pulldown"))
"""Words that by themselves tell a machine from all others."""

_WHOLE = frozenset(map(_words, ("machine", "bar", "gym", "belt", "vest", "incline")))
"""Words that mean a piece only if they stand alone: a "leg press machine" is not every machine."""


def alternatives(exercise: Exercise, fits: Callable[[Exercise], bool], most: int) -> list[str]:
    """Names of exercises for the same work that fit the athlete, nearest first.

    They come from the catalogue, have the same patterns, kind, sides and main joint actions, and are no
    harder. First come the easier and harder forms of the exercise, then those that train most of the same
    muscles, then the more common.
    """
    from .alike import do_the_same_work

    rank = catalogue.LEVELS.index(exercise.level)
    fitting = [
        other
        for other in catalogue.exercises()
        if other is not exercise
        and do_the_same_work(other, exercise)
        and catalogue.LEVELS.index(other.level) <= rank
        and fits(other)
    ]
    forms = (*exercise.easier, *exercise.harder)
    fitting.sort(
        key=lambda other: (
            other.name not in forms,
            unlike(exercise, other),
            other.capacity != exercise.capacity,
            catalogue.rarity(other),
            len(other.name),
            other.name,
        )
    )
    return [other.name for other in fitting[:most]]


def unlike(exercise: Exercise, other: Exercise) -> float:
    """How much two exercises differ in the muscles they train directly: 0 not at all, 1 completely."""
    both, either = set(exercise.direct) & set(other.direct), set(exercise.direct) | set(other.direct)
    return 1 - len(both) / len(either)


LOADED = (
    "barbell",
    "trap bar",
    "guided bar",
    "dumbbell",
    "kettlebell",
    "plate",
    "sandbag",
    "machine",
    "cable",
)
"""Implements whose load somebody has to choose. The body, bands and straps come with their own load."""

USUAL_STEPS = {
    "barbell": 2.5,
    "trap bar": 2.5,
    "guided bar": 2.5,
    "dumbbell": 2,
    "kettlebell": 4,
    "plate": 1.25,
}
"""kg from one load to the next, where no team has written its steps (common practice, no source)."""

USUAL_STEPS_LB = {"barbell": 5, "trap bar": 5, "guided bar": 5, "dumbbell": 5, "kettlebell": 5, "plate": 2.5}
"""The same in lb (common practice, no source)."""
