"""One way in which data break a schema."""

from __future__ import annotations

from itertools import islice

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    Schema = dict[str, Any]

    DataPath = tuple[str | int, ...]
    """The keys and list indexes that lead from the top of the data to a value."""


MOST_KEYS = 50
"""Unknown keys of one mapping that are explained."""


class Violation:
    """The value at ``path`` in the data breaks ``keyword`` of the schema's ``part``, which wants ``wants``.
    ``keyword`` is empty for a key that must not stand there. ``steps`` lead to it through the schema, with
    references left out. ``missing`` is the key that is not there.
    """

    __slots__ = ("keyword", "missing", "part", "path", "steps", "value", "wants")

    def __init__(
        self,
        path: DataPath,
        steps: tuple[str, ...],
        keyword: str,
        wants: Any,
        part: Schema,
        value: Any,
        missing: str = "",
    ) -> None:
        self.path = path
        self.steps = steps
        self.keyword = keyword
        self.wants = wants
        self.part = part
        self.value = value
        self.missing = missing

    @property
    def title(self) -> str:
        """What the value should be."""
        return str(self.part.get("title") or last_key(self.path))

    def unknown_keys(self) -> list[str]:
        """The keys of the value that the schema does not have, the first `MOST_KEYS` of them."""
        known = self.part.get("properties", ())
        return list(islice((key for key in self.value if key not in known), MOST_KEYS))


def last_key(path: DataPath) -> str:
    """The last key of a path."""
    return next((step for step in reversed(path) if isinstance(step, str)), "")
