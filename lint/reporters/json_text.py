"""JSON that is printed piece by piece, to the letter as Python's own writer would print it in one piece."""

from __future__ import annotations

import json
import sys

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator


class Pieces:
    """A list whose items were written before, by `written`, and are gone through once more."""

    __slots__ = ("_items",)

    def __init__(self, items: Iterable[str]) -> None:
        self._items = items

    def __iter__(self) -> Iterator[str]:
        return iter(self._items)


def written(value: object) -> str:
    """The JSON of a value, in plain letters, indented by two."""
    return json.dumps(value, indent=2, ensure_ascii=True, allow_nan=False)


def print_json(value: object) -> None:
    """Prints a value that may hold `Pieces`, and ends the line."""
    for text in texts(value):
        sys.stdout.write(text)
    print()


def texts(value: object, indent: str = "") -> Iterator[str]:
    """The JSON of a value that may hold `Pieces` in its lists and groups of keys."""
    inner = f"{indent}  "
    if isinstance(value, dict) and value:
        between = "{\n"
        for key, item in value.items():
            yield f"{between}{inner}{json.dumps(key)}: "
            yield from texts(item, inner)
            between = ",\n"
        yield f"\n{indent}}}"
    elif isinstance(value, list) and value:
        between = "[\n"
        for item in value:
            yield between + inner
            yield from texts(item, inner)
            between = ",\n"
        yield f"\n{indent}]"
    elif isinstance(value, Pieces):
        between = "[\n"
        for piece in value:
            yield between + inner + piece.replace("\n", f"\n{inner}")
            between = ",\n"
        yield "[]" if between == "[\n" else f"\n{indent}]"
    else:
        yield json.dumps(value, allow_nan=False)
