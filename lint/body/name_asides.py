"""What is said beside a lift in a name: words that are tied to others or denied, qualifiers, seconds."""

from __future__ import annotations

from .name_bags import DIRECTION, GRIP, IMPLEMENT, LIFT, MOVEMENT, POSITION, VARIANT, kind_of
from .name_tokens import FILLER, JOINING, MEASURE, TEMPO, seconds_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from .catalogue import NameReading
    from .name_tokens import NameToken

NEGATING = ("no", "not", "without", "minus")
"""What makes the words behind it something that is not done."""

CONTRASTED = ("jump", "hop", "bound", "throw", "slam", "sprint", "skip")
"""Movements that follow a lift as a contrast: "power clean (contrast w/ jump)". No set of theirs counts."""

WORN_AT = ("knee", "thigh")
"""Where a band is worn beside what is lifted: "hip thrust, band round the knees"."""

CUEING = ("push", "pull", "drive", "reach")
"""Movements that coaches also tell someone to think of."""

NAMING = {MOVEMENT, LIFT, VARIANT, IMPLEMENT, GRIP, POSITION}
"""Kinds of words that name lifts."""

MEASURED = "measured"
"""What ties words to a measure before them: "10 s holds", "2 x 32 KB"."""

LONG = 10
"""Seconds from which a hold is no pause."""

LOWERING_ONLY = "lowering-only"
"""What makes another lift only where the catalogue has one: a negative pull-up."""

WORN_IN = ("squat", "lunge", "hip hinge", "hip thrust")
"""Movement patterns whose load is another than a band at the knees. In others the band is the load."""

LOWERED = {"eccentric", "negative", "lowering-only", "lowering", "lower", "down"}
PAUSED = {"paused", "held", "squeeze", "stop", "stretch", "isometric", "dead-stop", "dead-hang"}
"""Words that say of which part of a repetition seconds are."""


def unmeant(tokens: list[NameToken]) -> Iterator[NameToken]:
    """The words of what is not done, only thought of or done as a contrast."""
    yield from denied(tokens)
    yield from cues(tokens)
    yield from contrasts(tokens)


def denied(tokens: list[NameToken]) -> Iterator[NameToken]:
    """The words behind a "no" in their part."""
    part = -1
    for token in tokens:
        if token.part == part:
            yield token
        elif token.word in NEGATING:
            part = token.part


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
        if words[0].word in CUEING and kinds[-1] == DIRECTION and NAMING.isdisjoint(kinds[1:-1]):
            yield from words


def holding(name: str, tokens: list[NameToken]) -> Iterator[NameToken]:
    """The words "hold" that open a part and do not name a static lift: "shrug, hold top 3 s"."""
    if any(seconds_of(one) >= LONG for one in tokens):
        return
    for before, token, after in zip(tokens, tokens[1:], tokens[2:], strict=False):
        said = name[token.start : token.end].lower()
        if said == "hold" and before.part != token.part == after.part:
            yield token


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
