"""How a line keeps to what the athlete spares: by the bounds of the restriction, by the coach's own words."""

from __future__ import annotations

import re

from ..lint.body.names import fold, words
from ..lint.body.restriction_words import HARMLESS, HEAVY, LEFT_OUT, ONE
from .files_words import is_professional

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from ..lint.body.catalogue import Exercise
    from ..lint.counting.set_group import SetGroup
    from ..lint.model.athlete import Restriction
    from ..lint.model.programme import Member

HEAVY_FROM = 80
"""% of the best lift from which a load is heavy whoever lifts it (common practice, no source)."""

_ALLOWED = re.compile(
    r"\b(?:ok(?:'?d|ayed)?|okay|allowed|agreed|approved|cleared|permitted|signed off|pain[- ]?free|no pain"
    r"|as tolerated|shallow|short|limited|partial|half|quarter|reduced|within|never|not below|not above"
    r"|elbows? (?:bent|at (?:the )?side)"
    r"|(?:arms?|knees?|elbows?) (?:stay )?bent|hand on|holding on"
    r"|(?:to|on) (?:a |the )?(?:high |low )?(?:box|chair|bench|pads?|pins?|blocks?|parallel))\b",
    re.IGNORECASE,
)
"""Words of a coach who has the restriction in mind: what may stay."""

_SO_FAR = re.compile(
    r"\b(?:above|below|under|up to|to|only) (?:the )?\d+\b|\b\d+ ?(?:deg(?:rees?)?\b|°)"
    r"|\b(?:stays?|kept|keep|stop(?:s|ped)?) (?:at|above|below|within) (?:[3-9]\d|1[0-5]\d)\b"
    r"(?! ?(?:kg|lb|%|s\b|rep))"
    r"|\b(?:[6-9]\d|1[0-5]\d) or (?:more|less)\b(?! (?:kg|lb|rep))"
    r"|\b(?:below|under|not past|no higher than|no lower than) (?:the )?(?:shoulder|chest|chin|eye|nose|head"
    r"|ear|hip|waist|navel|knee|mid-?thigh|mid-?shin|shin)s?\b"
    r"|\b(?:shoulder|chest|chin|eye|nose|head|ear|hip|waist|navel|knee|thigh|shin)[- ](?:height|level)\b",
    re.IGNORECASE,
)
"""Words for how far a line goes."""

_BACK_KEPT = re.compile(
    r"\b(?:(?:flat|straight|neutral|long|tall|braced) (?:lower |low )?(?:back|spine|trunk)"
    r"|(?:back|spine|trunk) (?:stays |kept |is )?(?:flat|straight|neutral|long|tall))\b",
    re.IGNORECASE,
)
"""Words for a back that does not bend."""

_NOT = re.compile(r"\b(?:no|not|never|without|nothing|avoid|keep off|below|under)\b([^.;]*)", re.IGNORECASE)


def is_within(entry: SetGroup, exercise: Exercise, bounds: Sequence[str]) -> bool:
    """Whether a line surely does what is spared by all words that bound it, such as ``heavy`` or ``barbell``;
    a word that nothing in a line can be held against leaves it unsure.
    """
    return all(_holds(entry, exercise, bound) for bound in bounds)


def _holds(entry: SetGroup, exercise: Exercise, bound: str) -> bool:
    if bound == "loaded":
        return _is_loaded(entry) or _is_carried_on_the_hands(exercise)
    if bound in HEAVY:
        return entry.percent is not None and entry.percent.low >= HEAVY_FROM
    if bound in ONE:
        return exercise.unilateral
    return entry.implement == bound


def _is_carried_on_the_hands(exercise: Exercise) -> bool:
    """Whether the arms carry the body overhead, as in a handstand."""
    return exercise.stance == "supported" and any(at > UP for at in exercise.path.get("shoulder", ()))


UP = 150
"""Degrees of the shoulder from which an arm is overhead (common practice, no source)."""


def _is_loaded(entry: SetGroup) -> bool:
    """Whether something is lifted with the body, or moved by it."""
    load = entry.work.load
    if load is None:
        return entry.implement not in ("bodyweight", "none", "band")
    return all(one.low > 0 for one in load.values)


def says_that_it_may(
    entry: SetGroup,
    restriction: Restriction,
    member: Member | None,
    *,
    is_measured: bool,
    spares_bending: bool,
) -> bool:
    """Whether what is noted on a line is the coach's answer to a restriction, or the line is what was agreed,
    by the words of both. ``is_measured`` says that its degrees were held against the restriction,
    ``spares_bending`` that the back is not to bend: a line on which it is kept straight does not.
    """
    noted = list(_noted(entry, member))
    if any(_works_the_other_side(text, restriction) for text in noted):
        return True
    name, beside = _folded(entry.name), _folded(" ".join(noted))
    agreed = [_folded(what) - name for what in restriction.may_stay]
    if any(more and more <= beside for more in agreed):
        return True
    answers = [_ALLOWED, *([] if is_measured else [_SO_FAR]), *([_BACK_KEPT] if spares_bending else [])]
    if any(one.search(text) for one in answers for text in (entry.name, *noted)) or is_professional(noted):
        return True
    spared = {word[:4] for word in _folded(restriction.subject.words)}
    told = [words_of for text in noted for words_of in _NOT.findall(text)]
    return any(word[:4] in spared for text in told for word in _folded(text))


_OTHER_SIDE = {
    side: re.compile(rf"\b(?:{other}|{other[0]})\b[. ]*(?:hand|arm|leg|side|foot|only|DB|KB)", re.IGNORECASE)
    for side, other in (("left", "right"), ("right", "left"))
}
"""By the side that is spared: words for the other one, "R hand only"."""


def _works_the_other_side(text: str, restriction: Restriction) -> bool:
    """Whether a note says that the side which is not spared does the work."""
    spared = restriction.subject.words.lower().split()
    return any(side in spared and said.search(text) for side, said in _OTHER_SIDE.items())


def _noted(entry: SetGroup, member: Member | None) -> Iterator[str]:
    """What stands beside the name of a line, or of what takes its place for an athlete."""
    line = entry.prescription
    yield line.note
    yield line.cue
    if line.paired:
        yield line.paired.note
    for one in member.adjustments if member else ():
        if fold(one.swap.words if one.swap else one.exercise.words) == fold(entry.name):
            yield one.note


_SAYS_NOTHING = HARMLESS | LEFT_OUT


def _folded(text: str) -> frozenset[str]:
    """The words of a text that say something."""
    return frozenset(map(fold, words(text))) - _SAYS_NOTHING
