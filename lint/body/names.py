"""How names are compared: case, hyphens, blanks and a plural s make no difference."""

from __future__ import annotations

SIDES = frozenset(
    [
        "left",
        "right",
        "l",
        "r",
        "lt",
        "rt",
        "both",
        "each",
        "either",
        "dominant",
        "weak",
        "weaker",
        "strong",
        "stronger",
    ]
)
"""Words that say on which side a part of the body is meant."""

ABOUT_A_SIDE = frozenset(["side", "sides", "of", "the", "and", "or", "only", "non"])
"""What stands beside such a word: "left side of the back", "non-dominant arm"."""


_LETTERS = str.maketrans({"ł": "l", "ø": "o", "æ": "ae", "ß": "ss", "œ": "oe"})
"""Small letters that no accent tells from a plain one."""


def fold(name: str) -> str:
    """The form of a name that is compared: "Push-Ups", "push up" and "pushup" all give "pushup"."""
    return "".join(map(_singular, words(name)))


def unaccented(name: str) -> str:
    """A name without accents: "développé" gives "developpe", "łydki" gives "lydki"."""
    from unicodedata import normalize  # only a name with an accent pays for it

    return normalize("NFKD", name.translate(_LETTERS)).encode("ascii", "ignore").decode()


def words(name: str) -> list[str]:
    """The words of a name in small letters, without hyphens and apostrophes."""
    return name.lower().replace("-", " ").replace("’", "").replace("'", "").split()


def without_side(name: str) -> str:
    """A part of the body without the side, wherever that stands: "left shoulder", "shoulder (left)".

    "" if no side is named.
    """
    said = [word.strip("(),.;:/") for word in words(name.replace("/", " "))]
    if SIDES.isdisjoint(said):
        return ""
    return " ".join(word for word in said if word not in SIDES and word not in ABOUT_A_SIDE)


def _singular(word: str) -> str:
    if len(word) < 3 or not word.endswith("s") or word.endswith("ss"):
        return word
    if word.endswith("ies"):
        return word[:-3] + "y"
    return word[:-2] if word.endswith(("sses", "ches", "shes", "xes")) else word[:-1]
