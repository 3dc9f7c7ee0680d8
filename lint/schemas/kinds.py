"""What a schema allows at a place of the data."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from typing import Any

    Schema = dict[str, Any]

    Path = tuple[str | int, ...]


class SchemaKinds:
    """What a schema says of a place in the data, whichever way its conditions turn out there."""

    def __init__(self, root: Schema) -> None:
        self.root = root

    def whole(self, part: Schema) -> Schema:
        """A part of the schema that stands on its own."""
        return {"$defs": self.root.get("$defs", {}), **part}

    def follow(self, reference: str) -> Any:
        """The part of the schema that a reference names."""
        return self.root["$defs"][reference.removeprefix("#/$defs/")]

    def branches(self, part: Any) -> Iterator[Schema]:
        """The part itself and all that it refers to or may turn into."""
        if not isinstance(part, dict):
            return
        yield part
        if "$ref" in part:
            yield from self.branches(self.follow(part["$ref"]))
        for key in ("then", "else"):
            yield from self.branches(part.get(key))

    def at(self, path: Path) -> list[Schema]:
        """All that may be said of the value at a path."""
        parts = list(self.branches(self.root))
        for step in path:
            parts = [
                branch for part in parts for below in _below(part, step) for branch in self.branches(below)
            ]
        return parts

    def groups(self, path: Path) -> list[Schema]:
        """The kinds of group that may stand at a path: superset, circuit, exercise."""
        return [part for part in self.at(path) if "properties" in part and "additionalProperties" in part]

    def group(self, path: Path, keys: dict[str, Any]) -> Schema:
        """The kind that stands there: the one whose name key is there, else the usual one."""
        kinds = self.groups(path)
        named = [kind for kind in kinds if name_key(kind) in keys]
        return (named or kinds or [{"title": "part"}])[-1]

    def owners(self, key: str) -> list[str]:
        """Titles of the groups, anywhere, that have a key."""
        kinds = [self.root, *self.root.get("$defs", {}).values()]
        titles = [kind["title"] for kind in kinds if key in kind.get("properties", ()) and "title" in kind]
        return list(dict.fromkeys(titles))

    def route(self, steps: list[Any], part: Any) -> list[tuple[Any, Schema]] | None:
        """The steps from a part of the schema to a keyword, each with the part it starts from.

        The library leaves references out of its paths; None where the steps lead nowhere.
        """
        if len(steps) == 1 and isinstance(part, dict) and steps[0] in part:
            return [(steps[0], part)]
        if not steps or not isinstance(part, dict):
            return None
        if steps[0] in part:
            rest = self.route(steps[1:], part[steps[0]])
            if rest is not None:
                return [(steps[0], part), *rest]
        return self.route(steps, self.follow(part["$ref"])) if "$ref" in part else None


def _below(part: Schema, step: str | int) -> Iterator[Any]:
    if isinstance(step, int):
        yield part.get("items")
    elif step in part.get("properties", {}):
        yield part["properties"][step]
    else:
        yield part.get("additionalProperties")


def name_key(kind: Schema) -> str:
    """The key by which a kind of group is told: the first that it requires."""
    required = kind.get("required")
    return required[0] if required else ""
