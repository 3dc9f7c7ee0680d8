"""Spellings of quantities that have one meaning -> the plain spelling, the one that the schema describes.

The one source of truth for how a quantity may be spelt. `pattern` gives the pattern that the schemas hold:
`tests/write_schemas.py` writes it there, so that every validator takes what the reader takes. All patterns
keep to what the regular expressions of Python and of JavaScript share.
"""

from __future__ import annotations

import re

from ... import schema as schemas
from .plain_patterns import PLAIN as PLAIN

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable


def _any_case(words: str) -> str:
    """A pattern for words, parted by |, in capitals or small letters."""
    return "".join(f"[{one.upper()}{one}]" if one.isalpha() else one for one in words)


# Parts of patterns

_DASH = "[-\u2010-\u2015\u2212]"
_TO = f" ?(?:{_DASH}|{_any_case('to')}) ?"
_N = "[0-9]{1,4}(?:[.,][0-9]{1,2})?"
_COUNT = "[1-9][0-9]{0,2}"
_COUNTS = f"{_COUNT}(?:{_TO}{_COUNT})?"
_SECONDS = _any_case("(?:seconds?|secs?|s)") + "|\"|\u2033|''"
_MINUTES = _any_case("(?:minutes?|mins?|mn)") + "|'|\u2032|\u2019"
_KG = _any_case("k(?:ilogram(?:me)?s?|ilos?|gs?)")
_LB = _any_case("(?:pounds?|lbs?)")
_PERCENT = f"(?:%|{_any_case('per ?cent|pct')})"
_BODYWEIGHT = _any_case("b(?:ody ?(?:weight|mass)|w)")
_TIMES = "[xX\u00d7*]"
_SIDES = _any_case("(?:side|leg|arm|hand|foot)")
_EACH_IN_FULL = (
    f" ?/ ?{_SIDES}| {_any_case('(?:per|a|each|every|on each|for each)')} {_SIDES}"
    f"| ?{_any_case('(?:each|ea[.]?)')}"
)
_EACH = f"(?:{_EACH_IN_FULL}| ?/ ?[sS]| ?{_any_case('(?:e|p)/s')})"
"""On each side. Of metres ``/s`` is a speed, so that a distance takes it in full alone."""
_OPEN = _any_case("(?:amrap|max(?: reps)?|as many(?: reps)? as possible)")
_FAILURE = _any_case("(?:to )?failure")
_ROUGH = f"(?:[~\u2248] ?|{_any_case('(?:about|around|roughly|approx[.]?|ca[.]?|c[.])')} )"
_FROM = f"(?:>=? ?|\u2265 ?|{_any_case('(?:at least|from|min[.]?)')} )"
_UP_TO = f"(?:<=? ?|\u2264 ?|{_any_case('(?:at most|up to|max[.]?)')} )"
_WORKING_UP_TO = f"{_any_case('(?:(?:work|working|build|building) )?(?:up )?to')} "
_BARE = "[1-9][0-9]{1,3}"
_ONE_TIME = (
    f"(?:[0-9]{{1,2}}:[0-5][0-9](?: ?(?:{_MINUTES}))?"
    f"|[0-9]{{1,2}} ?(?:{_MINUTES}|[mM]) ?(?:[0-5][0-9] ?(?:{_SECONDS})?|[0-9] ?(?:{_SECONDS}))"
    f"|{_N} ?(?:{_SECONDS}|{_MINUTES}))"
)
_TIME = f"{_ONE_TIME}(?:{_TO}{_ONE_TIME})?|{_N}{_TO}{_N} ?(?:{_SECONDS}|{_MINUTES})"
_TIMED = f"{_N}(?:{_TO}{_N})? ?(?:{_SECONDS}|{_MINUTES})"
_ROW = f"{_COUNT}(?: ?{_DASH} ?{_COUNT}){{2,}}|{_COUNT}(?:, ?{_COUNT}){{2,}}"
_REPS_WORD = f" ?{_any_case('rep(?:etition)?s?')}"
_FREE = (
    f"(?:(?:{_COUNTS}(?: ?/ ?{_COUNTS})+|{_COUNT}(?:(?: ?\\+ ?{_COUNT})+|{_TO}{_COUNT}))(?:{_REPS_WORD})?"
    f"|{_TIMED}|{_OPEN})(?:{_EACH})?"
    f"|{_COUNT}(?:{_REPS_WORD}|(?:{_REPS_WORD})?{_EACH})|{_COUNTS}(?: ?/ ?{_COUNTS})* ?\\+|{_FAILURE}"
)
"""Repetitions of which it is plain that they are repetitions."""
_SETS = f"[1-9][0-9]?(?:{_TO}[1-9][0-9]?)?"
_SET_BETWEEN = f" ?(?:{_any_case('sets?')} ?(?:{_any_case('of')}|{_TIMES})|{_TIMES}) ?"
_SETS_OF = f"{_SETS}{_SET_BETWEEN}"
_SETS_OF_COUNT = (
    f"[1-5](?:{_TO}[1-5])? ?{_TIMES} ?(?:[89]|[1-9][0-9]{{1,2}})"
    f"|{_SETS} ?{_any_case('sets?')} ?(?:{_any_case('of')}|{_TIMES}) ?{_COUNT}"
    f"|{'|'.join(f'{one} ?{_TIMES} ?{one}' for one in range(1, 11))}"
)
"""Sets of a bare number of repetitions: fewer than 6 sets of 8 or more, in words, or as many of each."""
_SETS_OF_REPS = f"{_SETS_OF}(?:{_FREE})|{_SETS_OF_COUNT}"
_MASS = f"{_N}(?:{_TO}{_N})? ?(?:{_KG}|{_LB})"
_SHARE = f"{_N}(?:{_TO}{_N})? ?{_PERCENT}"
_ONE_RM = _any_case("(?:1 ?rm|max)")
_LIFT = "[A-Za-z\u00c0-\u024f][^%(]{1,58}"
_OF = _any_case("of")
_OF_LIFT = f"{_any_case('of (?:the |my |your |his |her )?')}{_LIFT}"
_OF_WHAT = (
    f"(?: {_any_case('of (?:the )?top set')}|(?: {_OF})? {_BODYWEIGHT}(?: ?(?:[+]|{_DASH}) ?{_MASS})?"
    f"|(?: {_OF})? {_ONE_RM}| {_OF} {_COUNTS} ?{_any_case('rm')}"
    f"| {_OF_LIFT})?"
)
"""What a share may be of; another lift is any name."""
_TWO_FIGURES = (
    f"{_SHARE}(?: {_OF} {_ONE_RM}| {_OF_LIFT})? ?[(] ?{_MASS} ?[)]|{_MASS} ?[(] ?{_SHARE} ?[)]"
    f"|{_COUNTS} ?{_any_case('rm')} ?[(] ?{_SHARE} ?[)]"
)
"""One load in two figures: 80 % (160 kg)."""
_LOAD_WORDS = _any_case(
    "(?:(?:(?:very|moderately|fairly) )?(?:light|moderate|medium|heavy|hard|easy)"
    "(?:(?: to |[-/])(?:light|moderate|medium|heavy|hard))?|(?:empty )?bar(?: only)?)"
)
_HELP = _any_case("(?:assisted|(?:with |of )?(?:assistance|help))")
_ASSISTED = f"{_any_case('(?:band[- ]|machine[- ])?assisted')}|{_any_case('with (?:assistance|help)')}"
_HELPED = f"{_HELP} ?{_MASS}|{_MASS} (?:{_HELP})"
"""Less than body mass: by an amount that nobody wrote, or by a mass."""
"""Words for a load, of which nothing is worked out."""
_HALVES = "(?:10|[0-9](?:[.,][05])?)"
_RATING = "(?:10|[1-9](?:[.,][05])?)"


def _bounded(number: str) -> str:
    """A pattern for an effort with an open end, 3+ or up to 8, or one for each set, 1/1/0."""
    return f"{number} ?\\+|(?:{_FROM}|{_UP_TO}){number}|{number}(?: ?/ ?{number})+"


_EFFORT = f"{_HALVES}(?:{_TO}{_HALVES})?"
_WEEK = "[1-9][0-9]{0,2}"
_WEEKS = f"{_WEEK}(?:{_TO}{_WEEK})?"
_METRES = _any_case("(?:kilometres?|kilometers?|km|metres?|meters?|m|feet|foot|ft|yards?|yds?)")

_DAYS = (
    "mo(?:n(?:days?)?)?|tu(?:e(?:s(?:days?)?)?)?|we(?:d(?:s|nesdays?)?)?|th(?:u(?:r(?:s(?:days?)?)?)?)?"
    "|fr(?:i(?:days?)?)?|sa(?:t(?:urdays?)?)?|su(?:n(?:days?)?)?"
)

_SAME_BOTH_WAYS = "|".join(f"{one}[-/. ]?0[-/. ]?{one}" for one in range(1, 10)) + "|[xX][-/. ]?0[-/. ]?[xX]"
"""A tempo of three numbers that says the same whether it begins with lowering or with lifting."""

_OTHER = {
    "sets": f"{_SETS} ?(?:{_any_case('(?:sets?|x)')})?|{_SETS_OF_REPS}",
    "roundCount": f"{_SETS} ?(?:{_any_case('(?:rounds?|sets?|x)')})?",
    "reps": f"(?:{_SETS_OF})?(?:{_FREE})|{_ROW}|{_SETS_OF_COUNT}",
    "load": (
        f"(?:{_ROUGH}|{_FROM}|{_UP_TO}|{_WORKING_UP_TO})?{_N}(?:{_TO}{_N})?(?: ?/ ?{_N}(?:{_TO}{_N})?)* ?"
        f"(?:{_KG}|{_LB}|{_PERCENT}{_OF_WHAT})"
        f"|[1-9] ?{_TIMES} ?{_MASS}"
        f"|{_BODYWEIGHT}(?: ?(?:[+]|{_DASH}) ?{_MASS})?"
        f"|(?:[+]|{_DASH}) ?{_N} ?(?:{_KG}|{_LB}|{_PERCENT})"
        f"|{_COUNTS} ?{_any_case('rm')}|{_TWO_FIGURES}|{_LOAD_WORDS}|{_ASSISTED}|{_HELPED}"
    ),
    "rir": (
        f"(?:{_any_case('rir')} ?)?(?:{_EFFORT}|{_bounded(_HALVES)})"
        f"(?: ?{_any_case('(?:rir|in reserve)')})?|{_FAILURE}"
    ),
    "rpe": (
        f"(?:(?:{_any_case('rpe')}|@) ?)?(?:{_RATING}(?:{_TO}{_RATING})?|{_bounded(_RATING)})|{_FAILURE}"
    ),
    "sessionEffort": _EFFORT,
    "rest": f"{_TIME}|{_BARE}(?:{_TO}{_BARE})?",
    "length": _TIME,
    "tempo": (
        f"{_SAME_BOTH_WAYS}|[0-9xX]{{4}}"
        "|(?:[0-9]{1,2}|[xX])(?: ?[-/:. \u2010-\u2015\u2212] ?(?:[0-9]{1,2}|[xX])){3}"
    ),
    "distance": f"{_N}(?:{_TO}{_N})? ?{_METRES}(?:{_EACH_IN_FULL})?",
    "velocity": f"[0-9](?:[.,][0-9]{{1,2}})?(?:{_TO}[0-9](?:[.,][0-9]{{1,2}})?)? ?[mM]/[sS]",
    "percent": f"[0-9]{{1,2}}(?:[.,][0-9])?(?:{_TO}[0-9]{{1,2}}(?:[.,][0-9])?)? ?{_PERCENT}",
    "mass": f"{_N} ?(?:{_KG}|{_LB})",
    "liftedLoad": (
        f"(?:[1-9] ?{_TIMES} ?)?{_N} ?(?:{_KG}|{_LB})|{_BODYWEIGHT}(?: ?[+] ?{_N} ?(?:{_KG}|{_LB}))?"
    ),
    "weekNumbers": (
        f"(?:{_any_case('(?:weeks?|wk|w)')} ?)?{_WEEKS}(?: ?(?:\\+|&|{_any_case('and')}) ?{_WEEKS})*"
    ),
    "weekday": f"{_any_case('(?:' + _DAYS + ')')}[.]?",
    "side": f"{_any_case('(?:left|right|each|l|r|(?:each|per|every) (?:side|leg|arm|hand))')}",
    "setsOfReps": _SETS_OF_REPS,
}
"""Each quantity's other spellings, of one meaning each: a pattern for the whole of the words."""
_OTHER["setsOfWeek"] = (
    f"0|{_OTHER['sets']}|{_any_case('half')}|[xX\u00d7] ?(?:0?[.,](?:[1-9][0-9]?|0[1-9])|[1-9]/[1-9])"
    f"|[-\u2212] ?[1-9](?: {_any_case('sets?')})?"
)
_OTHER["workingBest"] = f"(?:[1-9][0-9](?:[.,][0-9])?|100) ?{_PERCENT}"
_OTHER["time"] = _OTHER["rest"]
_OTHER["hold"] = f"(?:{_OTHER['rest']})(?:{_EACH})?"


def pattern(kind: str) -> str:
    """The pattern of a quantity in the schemas: its plain spelling first, then all others.

    Alternatives that stand by themselves are parted by ``$|^``, so that the fast check can ask one by one.
    """
    plain = f"^{PLAIN[kind]}$|" if kind in PLAIN else ""
    return f"{plain}^(?:{_OTHER[kind]})$"


KINDS = tuple(_OTHER)
"""The quantities there are, by the names of their parts of the schemas."""


def plain_spelling(kind: str, value: object) -> str | None:
    """The plain spelling of a value of one meaning; None for what has none, or is no quantity of this kind.

    A value that is plain already comes back unchanged. A number of seconds gets its unit.
    """
    if isinstance(value, bool) or not isinstance(value, (str, int, float)):
        return None
    words = str(int(value)) if isinstance(value, float) and value.is_integer() else str(value)
    if not isinstance(value, str) and kind not in ("rest", "time", "hold", "tempo"):
        return None
    if kind in PLAIN and isinstance(value, str) and re.search(f"^{PLAIN[kind]}$", words):
        return words
    if not re.search(f"^(?:{_OTHER[kind]})$", words):
        return None
    return _PLAINLY.get(kind, _quantity)(words)


def sets_of_reps(value: object) -> tuple[str, str] | None:
    """Sets and repetitions of ``3x12``, ``3 sets of 5``, each in its plain spelling; else None."""
    if not isinstance(value, str) or not re.search(f"^(?:{_SETS_OF_REPS})$", value):
        return None
    sets, reps = re.split(_SET_BETWEEN, value, maxsplit=1)
    return _quantity(sets), _repetitions(reps)


# From each spelling to the plain one

_STEPS: tuple[tuple[str, str], ...] = (
    (f"{_DASH}|(?<=[0-9 ]){_any_case('to')}(?=[ 0-9])", "-"),
    (r"(?<=[0-9]) ?- ?(?=[0-9])", "-"),
    (r"(?<=[0-9]),(?=[0-9])", "."),
    (rf"(?<=[0-9]) ?(?:{_KG})(?![A-Za-z])", " kg"),
    (rf"(?<=[0-9]) ?(?:{_LB})(?![A-Za-z])", " lb"),
    (rf"(?<=[0-9]) ?{_PERCENT}", " %"),
)
"""Patterns and replacements, in turn; they are applied only to words that are known to be a quantity."""


def _quantity(words: str) -> str:
    """Numbers, ranges and units in their plain spelling; words around them that say nothing more go."""
    for written, plain in _STEPS:
        words = re.sub(written, plain, words)
    return re.sub(_SAID_AGAIN, "", words)


_SAID_AGAIN = _any_case(
    "^(?:weeks?|wk|w|rpe|rir|@) ?| ?(?:(?<!top )sets?|rounds?|x|rep(?:etition)?s?|rir|in reserve)$"
)
"""What the key says already."""


def _repetitions(words: str) -> str:
    if re.fullmatch(_OPEN, words):
        return "amrap"
    if re.fullmatch(_FAILURE, words):
        return "to failure"
    each = re.search(f"{_EACH}$", words)
    if each is not None and each.start():
        return f"{_repetitions(words[: each.start()])} each"
    if re.fullmatch(_TIMED, words):
        return _time(words)
    if re.fullmatch(_ROW, words):
        return "/".join(re.findall("[0-9]+", words))
    return re.sub(r" ?([/+]) ?", r"\1", _quantity(words))


def _load(words: str) -> str:
    if re.fullmatch(_ASSISTED, words):
        return "assisted"
    if re.fullmatch(_HELPED, words):
        return f"bodyweight - {_quantity(re.sub(f' ?{_HELP} ?', '', words))}"
    for rough, plain in ((_ROUGH, "about"), (_FROM, "from"), (_UP_TO, "up to"), (_WORKING_UP_TO, "up to")):
        found = re.match(rough, words)
        if found is not None and not re.match(_N, words):
            return f"{plain} {_load(words[found.end() :])}"
    if re.fullmatch(_LOAD_WORDS, words):
        return words.lower()
    if words.endswith(")"):
        return " (".join(_load(one.strip()) for one in words[:-1].split("(")) + ")"
    lift = re.fullmatch(
        f"([0-9].*?{_PERCENT}) {_any_case('of (?:(?:the|my|your|his|her) )?')}({_LIFT})", words
    )
    if lift is not None and not re.fullmatch(f"{_NO_LIFT}.*", lift[2]):
        return f"{_load(lift[1])} of {lift[2]}"
    words = re.sub(rf" (?:{_any_case('of ')})?{_ONE_RM}$", " of 1RM", words)
    words = re.sub(_any_case(r" of (?:the )?top set$"), " of top set", words)
    words = re.sub(f"(?:{_any_case('of ')})?{_BODYWEIGHT}", "bodyweight", words)
    words = re.sub(rf"(?<=[0-9]) ?{_any_case('rm')}$", "RM", words)
    words = re.sub(rf"^([1-9]) ?{_TIMES} ?(?=[0-9])", r"\1 x ", words)
    words = re.sub(f"bodyweight ?([+]|{_DASH}) ?", lambda one: f"bodyweight {_sign(one[1])} ", words)
    words = re.sub(f"^([+]|{_DASH}) ?", lambda one: _sign(one[1]), words)
    return re.sub(r" ?/ ?", "/", _quantity(words))


def _sign(written: str) -> str:
    return "+" if written == "+" else "-"


_NO_LIFT = f"(?:{_any_case('top set')}$|{_BODYWEIGHT}|{_ONE_RM}$)"
"""What is no name of another lift."""


_IN_MINUTES = re.compile(f"[0-9] ?(?:{_MINUTES})$").search


def _seconds(words: str) -> float:
    """One time in seconds."""
    numbers = [float(one.replace(",", ".")) for one in re.findall("[0-9]+(?:[.,][0-9]+)?", words)]
    if len(numbers) == 2:
        return numbers[0] * 60 + numbers[1]
    return numbers[0] * (60 if _IN_MINUTES(words) else 1)


def _time(words: str) -> str:
    if re.fullmatch(_TIMED, words):
        unit = "min" if _IN_MINUTES(words) else "s"
        return f"{'-'.join(re.findall('[0-9]+(?:[.,][0-9]+)?', words)).replace(',', '.')} {unit}"
    found = re.fullmatch(f"({_ONE_TIME}|{_BARE})(?:{_TO}({_ONE_TIME}|{_BARE}))?", words)
    ends = [_seconds(one) for one in found.groups() if one] if found else []
    in_minutes = not words.isdecimal() and all(one % 60 == 0 and one for one in ends)
    numbers = "-".join(f"{one / 60 if in_minutes else one:g}" for one in ends)
    return f"{numbers} {'min' if in_minutes else 's'}"


def _tempo(words: str) -> str:
    if re.fullmatch(_SAME_BOTH_WAYS, words):
        return "-".join((words[0], "0", words[-1], "0")).upper()
    return "-".join(re.findall("[0-9xX]" if len(words) == 4 else "[0-9]{1,2}|[xX]", words)).upper()


def _hold(words: str) -> str:
    return _on_each_side(words, _EACH, _time)


def _on_each_side(words: str, each: str, plainly: Callable[[str], str]) -> str:
    """The plain spelling of what may be done on each side."""
    found = re.search(f"(?:{each})$", words)
    return plainly(words) if found is None else f"{plainly(words[: found.start()])} each"


def _distance(words: str) -> str:
    return _on_each_side(words, _EACH_IN_FULL, _length)


def _length(words: str) -> str:
    for unit, plain in (("k[a-z]*", "km"), ("m[a-z]*", "m"), ("f[a-z]*", "ft"), ("y[a-z]*", "yd")):
        words = re.sub(rf"(?i)(?<=[0-9]) ?{unit}$", f" {plain}", words)
    return _quantity(words)


def _weekday(words: str) -> str:
    days: list[str] = schemas.load("athlete")["$defs"]["weekday"]["else"]["enum"]
    return next(day for day in days if day.startswith(words[:2].lower()))


def _side(words: str) -> str:
    return {"l": "left", "r": "right"}.get(words[0].lower(), "each")


def _velocity(words: str) -> str:
    return _quantity(words[:-3]).strip() + " m/s"


def _weeks(words: str) -> str:
    return re.sub(rf" ?(?:&|\+|{_any_case('and')}) ?", "+", _quantity(words))


def _effort(words: str) -> str:
    if re.fullmatch(_FAILURE, words):
        return "to failure"
    words = re.sub(_any_case("^(?:rpe|rir|@) ?"), "", words)
    if re.match(_UP_TO, words):
        return f"up to {_quantity(re.sub(_UP_TO, '', words))}"
    if re.match(_FROM, words):
        words = f"{_quantity(re.sub(_FROM, '', words))}+"
    return re.sub(" ?([/+]) ?", r"\1", _quantity(words)).strip()


def _sets(words: str) -> str:
    if words[0] in "hHxX\u00d7-\u2212":
        return words.lower().replace("\u00d7", "x").replace("\u2212", "-").replace(",", ".")
    pair = sets_of_reps(words)
    return _quantity(words) if pair is None else " sets of ".join(pair)


def _reps(words: str) -> str:
    pair = sets_of_reps(words)
    return _repetitions(words) if pair is None else " sets of ".join(pair)


_PLAINLY: dict[str, Callable[[str], str]] = {
    "sets": _sets,
    "setsOfWeek": _sets,
    "reps": _reps,
    "load": _load,
    "liftedLoad": _load,
    "rir": _effort,
    "rpe": _effort,
    "rest": _time,
    "time": _time,
    "hold": _hold,
    "length": _time,
    "tempo": _tempo,
    "distance": _distance,
    "velocity": _velocity,
    "weekNumbers": _weeks,
    "weekday": _weekday,
    "side": _side,
}
"""What makes the plain spelling, where it is more than numbers and units."""
