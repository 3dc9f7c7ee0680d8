"""One way in which data break a schema."""

from __future__ import annotations

from ..syntax.scalars import OutOfRangeError, core_value
from ..syntax.tree import Scalar

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from jsonschema.exceptions import ValidationError

    from ..syntax.tree import Node
    from ..text.places import Place
    from .kinds import Path, Schema


class Violation:
    """One way in which the data breaks the schema: the library's error, its parts by plain names.

    ``keyword`` of the schema's ``part`` wants ``wants`` of the ``value`` at ``path``; it is "" for a key that
    must not be here. ``steps`` lead to the keyword through the schema.
    """

    __slots__ = ("keyword", "part", "path", "says", "steps", "value", "wants")

    def __init__(self, error: ValidationError) -> None:
        self.path: Path = tuple(error.absolute_path)
        self.steps = list(error.absolute_schema_path)
        self.keyword = error.validator if isinstance(error.validator, str) else ""
        self.wants: Any = error.validator_value
        self.part: Schema = error.schema if isinstance(error.schema, dict) else {}
        self.value: Any = error.instance
        self.says = error.message

    @property
    def title(self) -> str:
        """What the value should be."""
        return str(self.part.get("title") or last_key(self.path))

    def unknown(self) -> list[str]:
        """The keys that do not belong here."""
        return [key for key in self.value if key not in self.part.get("properties", ())]


class ValuePlace:
    """A place in the data and the node that stands there."""

    __slots__ = ("entry_place", "node", "through")

    def __init__(self, node: Node, entry_place: Place, through: tuple[Place, ...]) -> None:
        self.node = node
        self.entry_place = entry_place
        self.through = through

    @property
    def place(self) -> Place:
        """Where the words stand; for an alias that is the definition."""
        return (self.node.defined or self.node.place).reached(self.inner)

    @property
    def inner(self) -> tuple[Place, ...]:
        """The places through which the value is reached, the innermost last."""
        return self.through if self.node.defined is None else (*self.through, self.node.place)

    @property
    def words(self) -> str:
        """The words at the place."""
        return self.node.text if isinstance(self.node, Scalar) else ""

    @property
    def told(self) -> bool:
        """Whether reading has found fault with this value already."""
        if not isinstance(self.node, Scalar):
            return False
        if self.node.style == "*":
            return True
        if self.node.style or not self.node.text:
            return False
        try:
            core_value(self.node.text)
        except OutOfRangeError:
            return True
        return False


def last_key(path: Path) -> str:
    """The last key of a path."""
    return next((step for step in reversed(path) if isinstance(step, str)), "")
