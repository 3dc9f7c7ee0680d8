"""Finds the names that are most like a misspelt or half-remembered one, word by word."""

from __future__ import annotations

from difflib import SequenceMatcher

from .names import words

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

LIKE = 0.65
"""Likeness from which two words count as alike, 0 to 1."""

ENOUGH = 0.6
"""Score that a candidate must exceed to be offered."""

LIGHTLY = 0.04
"""What a word too many costs; an alias costs half of it."""

FAR = 0.15
"""What a candidate may score below the nearest: a slip of a name is like others by chance."""

LONGEST = 100
"""Letters of a name up to which it is compared with others."""


def nearest(
    name: str, named: Iterable[tuple[str, str]], most: int, ranks: Mapping[str, int] | None = None
) -> list[str]:
    """Up to ``most`` results, nearest first, from pairs of (name or alias, result).

    A word counts by how like it is to its best partner. Words of the candidate that were not asked for count
    against it, and so does being an alias, but lightly: "bulgarian split" finds "Bulgarian split squat". Of
    results that are as near, those with the lowest of ``ranks`` come first.
    """
    asked = words(name) if len(name) <= LONGEST else []
    if not asked:
        return []
    likeness: dict[str, dict[str, float]] = {word: {} for word in asked}
    best: dict[str, float] = {}
    for candidate, result in named:
        has = words(candidate)
        if not has:
            continue
        score = max(
            _score(asked, has, likeness), _alike("".join(asked), "".join(has)) if len(has) < 3 else 0.0
        )
        if candidate != result:
            score -= LIGHTLY / 2
        if score > best.get(result, ENOUGH):
            best[result] = score
    ranks = ranks or {}
    least = max(best.values(), default=0.0) - FAR
    near = [result for result, score in best.items() if score >= least]
    return sorted(near, key=lambda result: (-best[result], ranks.get(result, 0), len(result), result))[:most]


def _score(asked: list[str], has: list[str], likeness: dict[str, dict[str, float]]) -> float:
    total = 0.0
    for word in asked:
        known = likeness[word]
        for other in has:
            if other not in known:
                known[other] = _alike(word, other)
        total += max(known[other] for other in has)
    extra = max(0, len(has) - len(asked))
    return total / len(asked) - LIGHTLY * extra


def _alike(word: str, other: str) -> float:
    if word == other:
        return 1.0
    if len(word) > 2 and other.startswith(word):
        return 0.95
    matcher = SequenceMatcher(None, word, other)
    if matcher.real_quick_ratio() < LIKE or matcher.quick_ratio() < LIKE:
        return 0.0
    ratio = matcher.ratio()
    return ratio if ratio >= LIKE else 0.0
