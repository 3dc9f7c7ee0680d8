"""What is said beside a lift in a name: words that are tied to others or denied, qualifiers, seconds."""

from __future__ import annotations

from . import built_names
from .catalogue import NameReading
from .name_bags import (
    ATTACHED,
    DIRECTION,
    FREE,
    GRIP,
    IMPLEMENT,
    LIFT,
    MOVEMENT,
    POSITION,
    THING,
    VARIANT,
    bag_of,
    kind_of,
)
from .name_tokens import FILLER, JOINING, MEASURE, TEMPO, WORD, seconds_of, tokens_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from .catalogue import Exercise
    from .name_bags import Bag
    from .name_tokens import NameToken

SPLITTING = ("and", "or", "then")
"""Words that stand between two lifts."""

LABELS = frozenset(
    ("main", "lift", "primary", "secondary", "accessory", "assistance", "day", "block", "slot", "station")
)
"""Words for a place in a session, behind which the lift that stands there may be in brackets."""

NEGATING = ("no", "not", "without", "minus")
"""What makes the words behind it something that is not done."""

EITHER = {"sb": ("stability-ball", "sandbag")}
"""Abbreviations of two things: the one with which there is a lift is meant."""

CONTRASTED = ("jump", "hop", "bound", "throw", "slam", "sprint", "skip")
"""Movements that follow a lift as a contrast: "power clean (contrast w/ jump)". No set of theirs counts."""

WORN_AT = ("knee", "thigh")
"""Where a band is worn beside what is lifted: "hip thrust, band round the knees"."""

PARTNERS = ("partner", "coach", "spotter")
"""Who does what the rest of a part of a name says."""

ON_HANDS = ("push-up", "plank", "row", "bridge", "dip")
"""Movements in which raised feet lie on something (common practice, no source)."""

CUEING = ("push", "pull", "drive", "reach")
"""Movements that coaches also tell someone to think of."""

LED = ("through", "against")
"""What leads such a thought to a part of the body or the floor: "drive through the heels"."""

NAMING = {MOVEMENT, LIFT, VARIANT, IMPLEMENT, GRIP, POSITION}
"""Kinds of words that name lifts."""

MEASURED = "measured"
"""What ties words to a measure before them: "10 s holds", "2 x 32 KB"."""

ROWED = "rowing ergometer"
"""What is rowed for a time or over a distance."""

LONG = 10
"""Seconds from which a hold is no pause."""

LOWERING_ONLY = "lowering-only"
"""What makes another lift only where the catalogue has one: a negative pull-up."""

TIMES_AND_WAYS = ("s", "ct", "min", "in", "cm")
"""Units of what is done for a time or over a distance."""

NOT_BARE = {
    "partner",
    "resisted",
    "static",
    "easy",
    "moderate",
    "hard",
    "timed",
    "distance",
    "max",
    "test",
    "warm-up",
    "continuous",
    "sprint",
    "effort",
}
"""Words that may speak of something else than the bare lift: "row, easy" of a machine, "partner row"."""

WORN_IN = ("squat", "lunge", "hip hinge", "hip thrust")
"""Movement patterns whose load is another than a band at the knees. In others the band is the load."""

RAISED = ("bench", "box", "chair", "step", "table", "desk", "bed", "sofa", "couch")
"""What may lie on the floor's place below who lies or leans on the floor else: "leg raise on bench"."""

PLACES: dict[str, tuple[str, ...]] = {
    **dict.fromkeys(RAISED, ("bench", "box", "45-degree bench", "glute-ham bench", "preacher bench")),
    **dict.fromkeys(("floor", "ground", "mat"), ("floor",)),
    **dict.fromkeys(("bar", "parallel-bar"), ("dip bars", "pull-up bar", "barbell", "guided bar")),
    "wall": ("wall",),
}
"""What a lift is said to be done on, and the gear of entries that this is."""

SURFACES = frozenset(("dip bars", "pull-up bar", "wall", *PLACES["bench"], "floor"))
"""Gear that carries who lifts: whatever else carries them makes another lift."""

CONTRARY: dict[str, tuple[str, ...]] = {
    "flat": ("incline", "steep-incline", "decline"),
    "conventional": ("sumo",),
    "narrow": ("wide-grip", "snatch-grip"),
    "close": ("wide-grip", "snatch-grip"),
    "wide": ("close-grip",),
    "full": ("quarter", "half", "partial"),
    "high-bar": ("low-bar",),
}
"""Words that change no lift, but those whose names say the contrary: "incline press, flat"."""

LOWERED = {"eccentric", "negative", "lowering-only", "lowering", "lower", "down"}
PAUSED = {"paused", "held", "squeeze", "stop", "stretch", "isometric", "dead-stop", "dead-hang"}
"""Words that say of which part of a repetition seconds are."""


def is_contrary(token: NameToken, tokens: list[NameToken], exercise: Exercise, bag: Bag) -> bool:
    """Whether a word says the contrary of what the lift is: "tuck hold on wall" of one on bars.

    Silent where it is of a part of the body: "hand on wall", "flat back".
    """
    beside = [one for one in tokens if one.part == token.part and one is not token]
    before = [one.word for one in beside if one.end < token.start and kind_of(one.word) != FILLER]
    behind = [one for one in beside if one.start > token.start]
    if token.word in CONTRARY:
        last = not behind or behind[0].word in bag.words
        return last and not bag.words.isdisjoint(CONTRARY[token.word])
    carrying = SURFACES.intersection(exercise.station)
    if token.word not in PLACES or not carrying or not carrying.isdisjoint(PLACES[token.word]):
        return False
    if carrying == {"floor"} and token.word in RAISED:
        return False
    parts = [word for word in before if kind_of(word) == THING and word not in bag.words]
    return not beside or (before[-1:] in (["on"], ["onto"]) and not parts)


def is_of_a_thing(token: NameToken, tokens: list[NameToken], bag: Bag) -> bool:
    """Whether a word says how a part of the body is held: "arms overhead", "shins vertical"."""
    before = [one.word for one in tokens if one.part == token.part and one.end < token.start]
    return bool(before) and kind_of(before[-1]) == THING and before[-1] not in bag.words


def stands_in_brackets(name: str, tokens: list[NameToken], part: int, behind: NameToken) -> bool:
    """Whether a part of a name stands in brackets behind a word, which may be the name: "Umsetzen (hang)".

    Behind words for a place in the session it is what stands there: "day 1 (hang)". A movement in brackets is
    the name itself, in another language: "Gainage (plank)".
    """
    inside = [one for one in tokens if one.part == part]
    bracketed = name[: inside[0].start].rstrip().endswith("(")
    if behind.part >= part or not bracketed or any(kind_of(one.word) == MOVEMENT for one in inside):
        return False
    return LABELS.isdisjoint(one.word for one in tokens if one.part == behind.part)


def may_lead(token: NameToken) -> bool:
    """Whether a word may be what is done, where those behind it are only a thing: "wrist work, bench"."""
    return kind_of(token.word) in (MOVEMENT, LIFT, THING, "") and token.kind == WORD


def unmeant(name: str, tokens: list[NameToken]) -> Iterator[NameToken]:
    """The words of what is not done, only thought of or done as a contrast."""
    yield from denied(name, tokens)
    yield from cues(tokens)
    yield from contrasts(tokens)
    yield from of_a_partner(tokens)


def denied(name: str, tokens: list[NameToken]) -> Iterator[NameToken]:
    """The words behind a "no" in their part, or the one that a hyphen ties to it: "no-hook power snatch"."""
    part, tied = -1, False
    for token in tokens:
        if tied or token.part == part:
            yield token
            tied = False
        elif token.word in NEGATING:
            tied = name[token.end : token.end + 1] == "-"
            part = -1 if tied else token.part


def of_a_partner(tokens: list[NameToken]) -> Iterator[NameToken]:
    """The words of parts that say what somebody else does: "partner pushes from the side"."""
    for number in {token.part for token in tokens} - {0}:
        words = [token for token in tokens if token.part == number]
        if words[0].word in PARTNERS:
            yield from words


def contrasts(tokens: list[NameToken]) -> Iterator[NameToken]:
    """The words behind "contrast" in its part, or in the next if it ends its own, if all there is quick."""
    for token, after in zip(tokens, [*tokens[1:], None], strict=False):
        if token.word == "contrast" and after is not None:
            behind = [one for one in tokens if one.part == after.part and one.start > token.start]
            if all(one.word in CONTRASTED for one in behind if kind_of(one.word) == MOVEMENT):
                yield from (token, *behind)


def worn(tokens: list[NameToken]) -> Iterator[NameToken]:
    """What is put on beside the load: a band at the legs, a belt behind "with" or "and"."""
    for index, token in enumerate(tokens):
        before, after = tokens[max(0, index - 1) : index], tokens[index + 1 : index + 3]
        if token.word == "belt" and any(one.word in ("with", "and") for one in before):
            yield token
        elif token.word == "band" and [one.part for one in after] == [token.part] * 2:
            tie, place = after
            if kind_of(tie.word) == JOINING and place.word in WORN_AT:
                yield token


def cues(tokens: list[NameToken]) -> Iterator[NameToken]:
    """The words of parts that say what to think of: "push floor away", "drive knees out"."""
    for number in {token.part for token in tokens} - {0}:
        words = [token for token in tokens if token.part == number]
        kinds = [kind_of(token.word) for token in words]
        led = kinds[-1] == DIRECTION or (words[1:2] and words[1].word in LED)
        if words[0].word in CUEING and led and NAMING.isdisjoint(kinds[1:]):
            yield from words


def senses(tokens: list[NameToken], own: Sequence[Bag]) -> Iterator[str]:
    """Each thing that an abbreviation may stand for, while it stands in its place. "" where there is none."""
    short = next((token for token in tokens if token.word in EITHER), None)
    if short is None or any(short.word in bag.words for bag in own):
        yield ""
        return
    for word in EITHER[short.word]:
        short.word = word
        yield word


def reworded(name: str, tokens: list[NameToken]) -> Iterator[tuple[NameToken, str]]:
    """The words that mean something else where they stand, each with the word that says it.

    A hold that opens a part of a lift is a pause ("shrug, hold top 3 s"), what lies on the back is a weight
    ("10 kg on back"), and the knee from which a bar is snatched or cleaned is where it hangs. SA is a
    straight arm where one is spelled out too. Who leans on the hands, or on the shoulders, has the feet up on
    something; who lies on a bench has them in the air. A ball with a weight is a medicine ball, and a part
    that is no more than "reverse band" takes weight off a bar.
    """
    holds = not any(seconds_of(one) >= LONG for one in tokens)
    hung = any(one.word in ("snatch", "clean") for one in tokens)
    raised = any(one.word in ON_HANDS for one in tokens)
    spelled_out = any(one.word == "straight-arm" for one in tokens)
    lightened = [one.word for one in tokens if one.part == tokens[-1].part] == ["reverse", "band"]
    around = [*tokens, None]
    for index, token in enumerate(tokens):
        said = " ".join(name[token.start : token.end].lower().replace("-", " ").split())
        before, after = around[index - 1], around[index + 1]
        follows = before is not None and before.part == token.part
        if said == "hold" and holds and before and not follows and after and after.part == token.part:
            yield token, "paused"
        elif said == "on back" and before and follows and (before.kind == MEASURE or _is_load(before)):
            yield token, "weighted"
        elif said == "sa" and spelled_out:
            yield token, "straight-arm"
        elif said == "ball" and before and follows and before.word.endswith("kg"):
            yield token, "medicine-ball"
        elif lightened and token in tokens[-2:]:
            yield token, "lightened"
        elif raised and token.word == "feet-up" and said.startswith("feet"):
            yield token, "foot-elevated"
        elif hung and said in ("from knee", "from knees", "from the knee"):
            yield token, "from-mid-thigh"


def _is_load(token: NameToken) -> bool:
    return kind_of(token.word) in (IMPLEMENT, THING, FREE, "") and token.kind == WORD


def bare_reading(
    name: str, tokens: list[NameToken], exercise: Exercise | None, beside: list[NameToken]
) -> NameReading | None:
    """What bare words mean, with what stands beside them."""
    if exercise is None:
        return None
    reading = NameReading(exercise)
    reading.qualifiers = tuple(written(name, tokens, beside))
    take_times(reading, tokens)
    return reading


def alone(tokens: list[NameToken]) -> tuple[str, list[NameToken]] | None:
    """The exercise that bare words mean by themselves, and the words beside them: "press", "incline DB 3x8".

    None if anything else is named, or a time or a way, which speak of a machine: "row 500 m".
    """
    beside = [one for one in tokens if _is_dose(one) or kind_of(one.word) in (FREE, FILLER, JOINING)]
    words = sorted(one.word for one in tokens if one not in beside)
    meant = built_names.ALONE.get(" ".join(words))
    return (meant, beside) if meant and NOT_BARE.isdisjoint(one.word for one in beside) else None


def is_called(tokens: list[NameToken], beside: list[NameToken]) -> bool:
    """Whether bare words with what stands beside them are a lift's name: "row, plate-loaded".

    What is put on a cable or the hands is only part of a name in front of the lift: "row, straps".
    """
    tied = {token for token, _ in ties(tokens)}
    words = {token.word for token in tokens if kind_of(token.word) not in (JOINING, FILLER)}
    behind = {token.word for token in beside if token.part > 0 or token is tokens[-1]}
    return tied.isdisjoint(beside) and behind.isdisjoint(ATTACHED) and bag_of(words) is not None


def is_rowed(tokens: list[NameToken]) -> bool:
    """Whether a row is one for a time or over a distance, on the machine for it: "row 500 m"."""
    words = {one.word for one in tokens if one.kind == WORD and kind_of(one.word) not in (FREE, FILLER)}
    return (
        "row" in words
        and words <= {"row", "machine"}
        and any(one.word.endswith(("min", "cm")) for one in tokens)
    )


def is_bare(name: str) -> bool:
    """Whether a name is read only because nothing else stands in it: "row" may also be any of the rows."""
    return alone(tokens_of(name, built_names.SPELLINGS)) is not None


def _is_dose(token: NameToken) -> bool:
    return token.kind == TEMPO or (token.kind == MEASURE and not token.word.endswith(TIMES_AND_WAYS))


def ties(tokens: list[NameToken]) -> Iterator[tuple[NameToken, str]]:
    """The words that are tied, each with what ties it: all behind a joining word or a measure in their part,
    the one in front of a joining word or a direction, and a direction behind a tied word.
    """
    tie, part, tied = "", -1, False
    for token, after in zip(tokens, [*tokens[1:], None], strict=True):
        kind = kind_of(token.word)
        if token.part != part:
            tie, part, tied = "", token.part, False
        ahead = kind_of(after.word) if after is not None and after.part == part else ""
        if kind == JOINING or token.kind == MEASURE:
            tie = MEASURED if token.kind == MEASURE else token.word
        elif tie or ahead in (JOINING, DIRECTION) or (kind == DIRECTION and tied):
            tied = True
            yield token, tie or (after.word if after is not None else token.word)
            continue
        tied = False


def written(name: str, tokens: list[NameToken], left: list[NameToken]) -> Iterator[str]:
    """The qualifiers as they were written; words that stand together make one."""
    runs: list[list[NameToken]] = [[]]
    for token in tokens:
        kind = kind_of(token.word)
        ties = kind in (JOINING, FILLER) and token not in left
        if not (token in left or ties) or (runs[-1] and runs[-1][0].part != token.part):
            runs.append([])
        if token in left or (ties and (runs[-1] or kind == JOINING)):
            runs[-1].append(token)
    for run in runs:
        last = max((index for index, token in enumerate(run) if token in left), default=-1)
        if last >= 0:
            yield " ".join(name[run[0].start : run[last].end].split())


def take_times(reading: NameReading, tokens: list[NameToken]) -> None:
    """Takes over the tempo and the seconds in the name."""
    for index, token in enumerate(tokens):
        seconds = seconds_of(token)
        if token.kind == TEMPO and token.word.count("-") == 3:
            reading.tempo = token.word
        elif token.kind == TEMPO:
            reading.lowering, reading.pause = map(float, token.word.split("-")[:2])
        elif seconds and reading.exercise.kind == "isometric":
            reading.hold = reading.hold or seconds
        elif seconds:
            near = tokens[max(0, index - 2) : index + 4]
            beside = {one.word for one in near if one.part == token.part}
            behind = [kind_of(one.word) for one in tokens[index + 1 : index + 2]]
            if beside & LOWERED:
                reading.lowering = seconds
            elif {one.word for one in tokens} & PAUSED or JOINING in behind:
                reading.pause = seconds
