"""What plain words and numbers mean by the YAML 1.2 core schema, and how other programs would read them.

Sources: YAML 1.2.2, section 10.3.2 (core schema); YAML 1.1 type repository (bool, int, float, merge, value).
"""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    CoreValue = str | int | float | bool | None

CORE_TAG = "tag:yaml.org,2002:"
"""How the tags of the core schema begin."""

_TYPES = {"int": int, "float": float, "bool": bool, "null": type(None)}
_WORDS: dict[str, CoreValue] = {
    "": None,
    "~": None,
    "null": None,
    "Null": None,
    "NULL": None,
    "true": True,
    "True": True,
    "TRUE": True,
    "false": False,
    "False": False,
    "FALSE": False,
}
_YES = frozenset({"y", "Y", "yes", "Yes", "YES", "on", "On", "ON"})
_NO = frozenset({"n", "N", "no", "No", "NO", "off", "Off", "OFF"})
_NO_NUMBER = frozenset(sign + word for sign in ("", "+", "-") for word in (".inf", ".Inf", ".INF")) | {
    ".nan",
    ".NaN",
    ".NAN",
}
_NUMBER_STARTS = frozenset("+-.0123456789")
_HEX = "0123456789abcdefABCDEF"
_BASES = {"two": 2, "eight": 8, "ten": 10, "sixteen": 16}
_OLDER_NUMBER = (
    r"[-+]?(?:0b(?P<two>[01_]+)|0x(?P<sixteen>[0-9a-fA-F_]+)|0(?P<eight>[0-7_]+)|(?P<ten>0|[1-9][0-9_]*)"
    r"|(?P<sixty>[1-9][0-9_]*(?::[0-5]?[0-9])+|[0-9][0-9_]*(?::[0-5]?[0-9])+\.[0-9_]*)"
    r"|(?P<point>(?:[0-9][0-9_]*\.[0-9_]*|(?<![-+])\.[0-9][0-9_]*)(?:[eE][-+][0-9]+)?))"
)
_OLDER_SIGNS = "0123456789abcdefABCDEFx_:.+-"
"""What a number of YAML 1.1 is written with."""
_LONGEST = 18
"""Digits of a whole number; more do not fit the 64 bits that other programs have for it."""


class OutOfRangeError(ValueError):
    """A number that no program can hold exactly: too many digits, infinite, or not a number."""


def core_value(words: str) -> CoreValue:
    """What plain ``words`` mean by the core schema: a number, true, false, nothing, and otherwise text.

    Raises OutOfRangeError for infinities, not-a-number, whole numbers of more than 18 digits, and decimals
    that a double cannot hold.
    """
    if words in _WORDS:
        return _WORDS[words]
    if words[0] not in _NUMBER_STARTS:
        return words
    if not words.strip("0123456789+-.eE"):
        return _decimal(words)
    if words[0] == "0" and words[1:2] in ("x", "o"):
        return _based(words)
    if words in _NO_NUMBER:
        raise OutOfRangeError(words)
    return words


def tagged_value(words: str, tag: str) -> tuple[CoreValue, bool]:
    """What ``words`` with a tag mean, and whether the tag belongs to the core schema and fits them.

    Raises OutOfRangeError as `core_value` does.
    """
    if tag in ("!", CORE_TAG + "str"):
        return words, True
    value = core_value(words)
    kind = tag.removeprefix(CORE_TAG)
    if kind == "float" and type(value) is int:
        return float(value), True
    return value, tag != kind and kind in _TYPES and type(value) is _TYPES[kind]


def _decimal(words: str) -> CoreValue:
    digits = words[1:] if words[0] in "+-" else words
    if digits.isdigit():
        if len(digits) > _LONGEST and len(digits.lstrip("0")) > _LONGEST:
            raise OutOfRangeError(words)
        return int(words)
    if len(words) > 400:  # longer than any double written out in full
        raise OutOfRangeError(words)
    try:
        value = float(words)
    except ValueError:
        return words
    if value in (float("inf"), float("-inf")):
        raise OutOfRangeError(words)
    return value


def _based(words: str) -> CoreValue:
    allowed, base = (_HEX, 16) if words[1] == "x" else ("01234567", 8)
    digits = words[2:]
    if not digits or digits.strip(allowed):
        return words
    if len(digits.lstrip("0")) > 15:  # 60 bits
        raise OutOfRangeError(words)
    return int(digits, base)


def taken_elsewhere(words: str) -> str:
    """How a YAML 1.1 program reads plain ``words`` where YAML 1.2 reads them otherwise; else "".

    Dates are left out, because whoever writes a date means a date.
    """
    if words[:1] in _NUMBER_STARTS:
        return _number_elsewhere(words)
    if words in _YES:
        return "true"
    if words in _NO:
        return "false"
    return "an instruction" if words in ("=", "<<") else ""


def _number_elsewhere(words: str) -> str:
    if words.isdigit() and words[0] != "0":  # most numbers
        return ""
    try:
        here, there = core_value(words), _older_value(words)
    except OutOfRangeError:
        return ""
    if here == there:
        return ""
    return "words, not a number" if there is None else f"the number {there}"


def _older_value(words: str) -> CoreValue:
    """The number that YAML 1.1 reads in ``words``; ``words`` if neither version reads one; else None."""
    found = None
    if _may_be_older_number(words):
        import re

        found = re.fullmatch(_OLDER_NUMBER, words)
    if found is None:
        return words if isinstance(core_value(words), str) else None
    kind = str(found.lastgroup)
    digits = found[kind].replace("_", "")
    if len(digits) > 64:
        raise OutOfRangeError(words)
    sign = -1 if words[0] == "-" else 1
    if kind in ("point", "sixty"):
        value: float = 0
        for part in digits.split(":"):
            value = value * 60 + (float(part) if "." in part else int(part))
        return sign * value
    return sign * int(digits or "0", _BASES[kind])


def _may_be_older_number(words: str) -> bool:
    """A quick look that spares most words the pattern, whose compiling costs more than reading a file."""
    if words.strip(_OLDER_SIGNS):
        return False
    inner = words[1:]
    return "e" in inner or "E" in inner or not ("-" in inner or "+" in inner)
