"""What a schema allows at a place in the data, and what data break in it."""

from __future__ import annotations

from itertools import islice

from .walk import SchemaWalk

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator
    from typing import Any

    from ..findings.finding import Finding
    from .violation import DataPath, Schema, Violation

MOST_EXPLAINED = 600
"""Faults of form of one file that are explained: more than anybody mends at once."""


MANY = "faults-many"
"""What is found where a file has more faults of form than are explained."""


def has_many_faults(found: Iterable[Finding]) -> bool:
    """Whether a file has more faults of form than are explained: who knows what it means."""
    return any(one.rule == MANY for one in found)


class SchemaLookup:
    """Answers questions about one schema.

    A kind is the part of a schema for one sort of mapping, such as an exercise or a superset.
    """

    def __init__(self, root: Schema) -> None:
        self.root = root
        self._walk = SchemaWalk(root)
        self._at: dict[DataPath, list[Schema]] = {}

    def violations(self, data: dict[str, Any], most: int = MOST_EXPLAINED + 1) -> list[Violation]:
        """The first ``most`` things that a file's data break in the schema."""
        return list(islice(self._walk.broken(self.root, data), most))

    def broken_in(self, data: Any, but_at: DataPath | None = None) -> int:
        """How much the data of a file break; what they break at one path, or below, does not count."""
        found = (
            one
            for one in self._walk.broken(self.root, data)
            if but_at is None or one.path[: len(but_at)] != but_at
        )
        return sum(1 for _ in islice(found, MOST_EXPLAINED))

    def accepts(self, part: Schema, value: Any) -> bool:
        """Whether a value is valid for one part of the schema."""
        return self._walk.accepts(part, value)

    def accepts_type(self, path: DataPath, value: Any) -> bool:
        """Whether a value has a type that may stand at a path; what it holds does not matter."""
        found = (one for part in self.at(path)[:1] for one in self._walk.broken(part, value))
        return not any(one.keyword == "type" and not one.path for one in found)

    def at(self, path: DataPath) -> list[Schema]:
        """Every part of the schema that may apply at a path, for any outcome of its conditions.

        What may stand in a list is the same at each of its places.
        """
        steps = tuple(0 if isinstance(step, int) else step for step in path)
        known = self._at.get(steps)
        if known is None:
            parts = self.at(steps[:-1]) if steps else [{"items": self.root}]
            step = steps[-1] if steps else 0
            known = self._at[steps] = [
                branch for part in parts for below in _below(part, step) for branch in self._branches(below)
            ]
        return known

    def kinds(self, path: DataPath) -> list[Schema]:
        """The kinds of mapping that may stand at a path: superset, circuit, exercise."""
        return [part for part in self.at(path) if "properties" in part and "additionalProperties" in part]

    def kind(self, path: DataPath, keys: dict[str, Any]) -> Schema:
        """The kind of a mapping with these keys: the kind whose name key is there, else the last one."""
        kinds = self.kinds(path)
        named = [kind for kind in kinds if name_key(kind) in keys]
        return (named or kinds or [{"title": "part"}])[-1]

    def owners(self, key: str) -> list[str]:
        """The titles of all kinds in the schema that have a key."""
        kinds = [self.root, *self.root.get("$defs", {}).values()]
        titles = [kind["title"] for kind in kinds if key in kind.get("properties", ()) and "title" in kind]
        return list(dict.fromkeys(titles))

    def examples(self, path: DataPath) -> list[Any]:
        """The examples of single values at a path."""
        parts = (part for part in self.at(path) if "examples" in part and part.get("type") != "object")
        return next((part["examples"] for part in parts), [])

    def example(self, path: DataPath) -> str:
        """Words such as ``, like `sets: 3```; empty where the schema has no example."""
        examples = self.examples(path)
        return f", like `{path[-1]}: {examples[0]}`" if examples else ""

    def items_of(self, part: Schema) -> Schema:
        """What a list holds: the part with examples, else the only one with keys that must stand there."""
        several = list(self._branches(part.get("items")))
        with_keys = [one for one in several if one.get("required")]
        only = with_keys[0] if len(with_keys) == 1 else {}
        return next((one for one in several if one.get("examples")), only)

    def route(self, violation: Violation) -> list[tuple[Any, Schema]]:
        """The steps from the top of the schema to the broken keyword, each with the part that it starts from.

        The steps of a violation leave references out; this puts them back in.
        """
        return self._route(list(violation.steps), self.root) or []

    def _route(self, steps: list[Any], part: Any) -> list[tuple[Any, Schema]] | None:
        if len(steps) == 1 and isinstance(part, dict) and steps[0] in part:
            return [(steps[0], part)]
        if not steps or not isinstance(part, dict):
            return None
        if steps[0] in part:
            rest = self._route(steps[1:], part[steps[0]])
            if rest is not None:
                return [(steps[0], part), *rest]
        return self._route(steps, self._referred(part["$ref"])) if "$ref" in part else None

    def _branches(self, part: Any) -> Iterator[Schema]:
        """The part itself, what it refers to, and the branches of its conditions."""
        if not isinstance(part, dict):
            return
        yield part
        if "$ref" in part:
            yield from self._branches(self._referred(part["$ref"]))
        for key in ("then", "else"):
            yield from self._branches(part.get(key))

    def _referred(self, reference: str) -> Any:
        return self.root["$defs"][reference.removeprefix("#/$defs/")]


def _below(part: Schema, step: str | int) -> Iterator[Any]:
    if isinstance(step, int):
        yield part.get("items")
    elif step in part.get("properties", {}):
        yield part["properties"][step]
    else:
        yield part.get("additionalProperties")


def name_key(kind: Schema) -> str:
    """The key that shows which kind a mapping is: the first one that the kind requires."""
    required = kind.get("required")
    return required[0] if required else ""
