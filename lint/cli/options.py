"""The words behind a command: its options with their values, and the rest."""

from __future__ import annotations

from .refused import RefusedError, no_such

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Collection, Mapping

MAY_FOLLOW = ("",)
"""Stands for any value of an option that may also have none."""


def split(words: list[str], known: Mapping[str, Collection[str] | None]) -> tuple[dict[str, str], list[str]]:
    """Options with their values, and the other words; ``--`` ends the options.

    An option takes one of the values known for it: none where there are none, any where that is None.
    One that `MAY_FOLLOW` takes the next word, if that is no option.
    """
    chosen: dict[str, str] = {}
    others: list[str] = []
    rest = list(reversed(words))
    while rest:
        word = rest.pop()
        if word == "--":
            others.extend(reversed(rest))
            break
        if word.startswith("-") and word != "-":
            name, equals, value = word.partition("=")
            if name not in known:
                raise no_such("option", name, known)
            values = known[name]
            if values is MAY_FOLLOW:
                follows = not equals and rest and not rest[-1].startswith("-")
                chosen[name] = rest.pop() if follows else value
                continue
            takes_one = values is None or len(values) > 0
            if takes_one and not equals:
                value = rest.pop() if rest else ""
            if values is None and not value:
                raise RefusedError(f"{name} takes a name")
            if values is not None and value not in (values or ("",)):
                one = f"one of {', '.join(values)}" if values else "no value"
                raise RefusedError(f"{name} takes {one}")
            chosen[name] = value
        else:
            others.append(word)
    return chosen, others
