"""How names are compared: case, hyphens, blanks and a plural s make no difference."""

from __future__ import annotations


def fold(name: str) -> str:
    """The form of a name that is compared: "Push-Ups", "push up" and "pushup" all give "pushup"."""
    return "".join(map(_singular, words(name)))


def words(name: str) -> list[str]:
    """The words of a name in small letters, without hyphens and apostrophes."""
    return name.lower().replace("-", " ").replace("’", "").replace("'", "").split()


def _singular(word: str) -> str:
    if len(word) < 3 or not word.endswith("s") or word.endswith("ss"):
        return word
    if word.endswith("ies"):
        return word[:-3] + "y"
    return word[:-2] if word.endswith(("sses", "ches", "shes", "xes")) else word[:-1]
