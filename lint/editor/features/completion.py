"""What may be typed at a caret: keys and values by the schema, exercises, athletes, rules, anchors."""

from __future__ import annotations

import re
from datetime import timedelta

from ...model.sessions import WEEKDAYS
from ...syntax.builder import parse
from ...syntax.tree import Mapping
from ...team.waivers import MARK
from ..caret.applicable_schema import KINDS, ApplicableSchema
from ..caret.candidates import Candidate, CandidateScope
from ..caret.context_finder import context_at
from ..caret.named_candidates import key_candidates, value_candidates
from ..caret.rule_candidates import waivable_rules
from ..caret.yaml_words import as_yaml
from ..documents.answers import Completion
from ..explain.markdown import md

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ...syntax.tree import Anchor
    from ..caret.applicable_schema import AllowedKey, AllowedValue
    from ..caret.context import CaretContext, KeyPath, SiblingKeys
    from ..documents.answers import CompletionKind
    from ..documents.snapshot import Snapshot


LINE_PATH: KeyPath = ("sessions", 0, "exercises", 0)
"""Where the schema describes the keys of a line, which is what mostly stands under ``shared``."""

LONGEST_EXCERPT = 60
"""Characters of an anchor's value that are shown."""

WAIVER_NOTE = "A finding that does not apply here, with the reason."

WAIVER_DAYS = 90
"""Days for which a waiver with an end is proposed."""


def complete(snapshot: Snapshot, offset: int, *, templates: bool = False) -> list[Completion]:
    """Proposals for what stands or may stand at an offset. The list of exercises is never complete.

    With ``templates``, whole lines, sessions and more come first, for clients that let one fill them in.
    """
    if snapshot.review.kind not in KINDS or _is_in_long_line(snapshot.text.content, offset):
        return []
    context = context_at(snapshot.text.content, offset)
    request = _CompletionRequest(snapshot, context, offset)
    if context.comment_start >= 0:
        return list(request.in_comment())
    if context.anchor_sign:
        return list(request.anchors() if context.anchor_sign == "*" else request.missing_anchors())
    return [*(request.templates() if templates else ()), *request.keys_and_values()]


LONGEST_LINE = 100_000
"""Letters of a line in which something is proposed; nobody types in a longer one."""


def _is_in_long_line(content: str, offset: int) -> bool:
    start, end = content.rfind("\n", 0, offset) + 1, content.find("\n", offset)
    return (len(content) if end < 0 else end) - start > LONGEST_LINE


class _CompletionRequest:
    """One request, and all that is proposed in answer."""

    def __init__(self, snapshot: Snapshot, context: CaretContext, offset: int) -> None:
        self.snapshot = snapshot
        self.context = context
        self.offset = offset
        self.content = snapshot.text.content
        self.kind = snapshot.review.kind
        self.count = 0

    def keys_and_values(self) -> Iterator[Completion]:
        """Keys first, then values, then items of a list."""
        context = self.context
        if context.takes_key:
            yield from self.keys(context.key_path, context.sibling_keys)
        if context.takes_value:
            yield from self.values(context.key_path, context.sibling_keys)
        if context.item_path is not None:
            yield from self.items(context.item_path)

    def templates(self) -> Iterator[Completion]:
        """What is often written, with stops to fill in."""
        from ..caret.templates import templates

        context = self.context
        path = context.key_path if context.item_path is None else context.item_path
        for one in templates(self.scope(path)):
            self.count += 1
            start = self.content.rfind("\n", 0, context.start) + 1 if one.takes_line else context.start
            space = " " if context.needs_space and not one.takes_line else ""
            yield Completion(
                one.label,
                f"{space}{one.plain}",
                start,
                context.end,
                one.detail,
                "",
                "exercise" if one.is_exercise else "template",
                f"{self.count:04}",
                one.typed,
                f"{space}{one.snippet}",
            )

    def schema_at(self, path: KeyPath, sibling_keys: SiblingKeys) -> ApplicableSchema:
        """What the schema says of a path; what stands under ``shared`` is taken for part of a line."""
        if self.kind == "programme" and len(path) > 1 and path[0] == "shared":
            start = next((at for at, step in enumerate(path) if at > 1 and isinstance(step, str)), len(path))
            none: frozenset[str] = frozenset()
            path = (*LINE_PATH, *path[start:])
            sibling_keys = (*(none for _ in LINE_PATH), *sibling_keys[start:])
        return ApplicableSchema(self.kind, path, sibling_keys)

    def scope(self, path: KeyPath) -> CandidateScope:
        """What named candidates for a path are drawn from."""
        typed = self.content[self.context.start : self.offset]
        return CandidateScope(self.snapshot, self.context, path, typed)

    # Keys

    def keys(self, path: KeyPath, sibling_keys: SiblingKeys, before: str = "") -> Iterator[Completion]:
        """Keys that may be added to a group, required ones first; ``before`` is written before each."""
        schema = self.schema_at(path, sibling_keys)
        if not schema.takes("object"):
            return
        context, present = self.context, sibling_keys[-1]
        named = key_candidates(self.scope(path))
        has_colon = context.has_colon or bool(context.quote)
        if named is not None:
            of_value = self.schema_at((*path, ""), (*sibling_keys, frozenset()))
            colon = ": " if context.in_flow or of_value.takes("scalar") else ":"
            for candidate in named:
                if candidate.name not in present:
                    after = "" if has_colon else f"{colon}{candidate.value}"
                    yield self.completion(candidate, before, after)
        elif path[:1] != ("shared",) or schema.may_add(present, ()):
            keys = schema.keys(present, self.scope(path).last_data(path))
            for key in sorted(keys, key=lambda key: not key.required):
                colon = ": " if context.in_flow or "scalar" in key.value_types else ":"
                yield self.completion(_key_candidate(key), before, "" if has_colon else colon)

    # Values

    def values(self, path: KeyPath, sibling_keys: SiblingKeys) -> Iterator[Completion]:
        """Single values; where only a list may stand, its first item with the start of the list."""
        schema = self.schema_at(path, sibling_keys)
        if schema.takes("scalar") or path[:1] == ("shared",):
            for candidate in self.single_values(schema, path):
                yield self.completion(candidate)
        elif schema.takes("array") and not self.context.quote:
            if self.context.takes_key:
                yield from self.items((*path, 0))
            else:
                for candidate in self.single_values(schema.of_item(), (*path, 0)):
                    yield self.completion(candidate, "[", "]", in_flow=True)

    def items(self, path: KeyPath) -> Iterator[Completion]:
        """Items of a list, each on a line of its own."""
        own = self.context.sibling_keys
        sibling_keys = (*own, *(frozenset[str]() for _ in path))[: len(path) + 1]
        yield from self.keys(path, sibling_keys, "- ")
        schema = self.schema_at(path, sibling_keys)
        if schema.takes("scalar"):
            for candidate in self.single_values(schema, path):
                yield self.completion(candidate, "- ")

    def single_values(self, schema: ApplicableSchema, path: KeyPath) -> Iterator[Candidate]:
        """Single values for a path: what is named there, else what the schema names."""
        named = value_candidates(self.scope(path))
        if named is not None:
            yield from named
            return
        typed = self.scope(path).typed
        for value in schema.values():
            if not typed and isinstance(value.data, str) and _TIME_OF_DAY.search(value.data):
                continue  # the day is asked for; its time is for who begins to write one
            candidate = self.value_candidate(value, path)
            if _HAS_NUMBER.search(candidate.name):
                if not candidate.name.lower().startswith(typed.lower()):
                    continue
                # Clients match words by their parts, and would make `2-3 min` of a `3 min` typed in full.
                candidate.filter_text = typed + _SEPARATOR.sub("", candidate.name[len(typed) :])
            yield candidate

    def value_candidate(self, value: AllowedValue, path: KeyPath) -> Candidate:
        """A value that the schema names; a date becomes a likely one."""
        name = str(value.data).lower() if isinstance(value.data, bool) else str(value.data)
        if _DATE.fullmatch(name):
            name = self.likely_date(path)
        kind: CompletionKind = "day" if name in WEEKDAYS else "value"
        written = "" if isinstance(value.data, str) else name
        return Candidate(name, kind, value.title, md(value.description), written=written)

    def likely_date(self, path: KeyPath) -> str:
        """Today, or for the start of a programme the next Monday."""
        today = self.snapshot.workspace.today
        days_ahead = -today.weekday() % 7 if path == ("starts",) else 0
        return (today + timedelta(days=days_ahead)).isoformat()

    # Anchors

    def anchors(self) -> Iterator[Completion]:
        """Names of the anchors above whose values fit here, the nearest first."""
        context = self.context
        reading = self.snapshot.review.reading or parse(self.snapshot.path, self.content)
        by_name: dict[str, Anchor] = {}
        for anchor in reading.anchors:
            if anchor.place.start < context.start and anchor.node is not None:
                by_name[anchor.name] = anchor
        for anchor in reversed(by_name.values()):
            if anchor.node is not None and self.anchor_fits(anchor, context.key_path):
                excerpt = " ".join(self.content[anchor.node.start : anchor.node.end].split())
                short = excerpt[:LONGEST_EXCERPT] + ("…" if len(excerpt) > LONGEST_EXCERPT else "")
                yield self.completion(Candidate(anchor.name, "value", short, written=anchor.name))

    def anchor_fits(self, anchor: Anchor, path: KeyPath) -> bool:
        """Whether an anchor's value may stand at the caret."""
        siblings, node = self.context.sibling_keys, anchor.node
        if node is None:
            return False
        if path[-1:] == ("<<",) or path[-2:-1] == ("<<",):
            at = len(path) - 1 - path[::-1].index("<<")
            present = siblings[at] - {"<<"}
            schema = self.schema_at(path[:at], (*siblings[:at], present))
            return isinstance(node, Mapping) and schema.may_add(node.entries, present)
        if path[:1] == ("shared",):
            return True
        return self.schema_at(path, siblings).fits(node.plain)

    def missing_anchors(self) -> Iterator[Completion]:
        """Names that aliases use and no anchor has yet."""
        defined = set(_ANCHOR.findall(self.content))
        used = [name for name in _ALIAS.findall(self.content) if name not in defined]
        for name in dict.fromkeys(used):
            yield self.completion(Candidate(name, "value", f"used as *{name}", written=name))

    # Comments

    def in_comment(self) -> Iterator[Completion]:
        """The parts of a waiver, in a comment."""
        context, start = self.context, self.context.comment_start
        if self.kind == "team":
            return  # what is wrong with settings cannot be waived
        typed = self.content[start : self.offset]
        rest_of_word = re.match(r"[^\s,]*", self.content[self.offset :])
        context.end = self.offset + (rest_of_word.end() if rest_of_word else 0)
        last_word = _LAST_WORD.search(typed)
        context.start = start + last_word.start() if last_word else self.offset
        words = typed[1:].split()
        done = words if typed[-1:].isspace() else words[:-1]
        rest_of_line = re.split(r"[\r\n]", self.content[context.end :], maxsplit=1)[0].strip()
        if not done:
            yield self.completion(_waiver_part(f"{MARK} waive ", WAIVER_NOTE))
        elif done == [MARK]:
            yield self.completion(_waiver_part("waive ", WAIVER_NOTE))
        elif done == [MARK, "waive"]:
            for candidate in waivable_rules(self.scope(())):
                candidate.written = candidate.name if rest_of_line else f"{candidate.name} because "
                yield self.completion(candidate)
        elif done[:2] == [MARK, "waive"] and len(done) == 3 and not rest_of_line:
            yield self.completion(_waiver_part("because ", "Why the finding does not apply."))
            last_day = (self.snapshot.workspace.today + timedelta(days=WAIVER_DAYS)).isoformat()
            yield self.completion(
                _waiver_part(f"until {last_day} because ", "The last day on which it holds.")
            )

    # How it is written

    def completion(
        self, candidate: Candidate, before: str = "", after: str = "", *, in_flow: bool = False
    ) -> Completion:
        """A proposal for a candidate, written as its place asks, with what comes before and after it."""
        context = self.context
        written = candidate.written
        if not written or context.quote:
            written = as_yaml(candidate.name, context.quote, context.in_flow or in_flow)
        self.count += 1
        return Completion(
            candidate.name,
            f"{' ' if context.needs_space else ''}{before}{written}{after}",
            context.start,
            context.end,
            candidate.detail,
            candidate.documentation,
            candidate.kind,
            f"{self.count:04}",
            candidate.filter_text,
        )


_HAS_NUMBER = re.compile(r"[0-9]")
_TIME_OF_DAY = re.compile(r"^[a-z]+ [0-9]{2}:[0-9]{2}$")
_SEPARATOR = re.compile(r"[^0-9A-Za-z]+")
_DATE = re.compile(r"20[0-9]{2}-[0-9]{2}-[0-9]{2}")
_ANCHOR = re.compile(r"(?<![^\s,\[\]{}])&([^\s,\[\]{}]+)")
_ALIAS = re.compile(r"(?<![^\s,\[\]{}])\*([^\s,\[\]{}]+)")
_LAST_WORD = re.compile(r"[^\s#]*$")


def _key_candidate(key: AllowedKey) -> Candidate:
    title = "" if key.title == "text" else key.title
    parts = [part for part in (title, _needed(key)) if part]
    return Candidate(key.name, "key", ", ".join(parts), md(key.description))


def _needed(key: AllowedKey) -> str:
    """Whether a key must be there, or which others would do in its place."""
    if key.instead:
        return " or ".join(("this", *key.instead))
    return "must be there" if key.required else ""


def _waiver_part(written: str, note: str) -> Candidate:
    return Candidate(written.strip(), "value", "waiver", note, written=written)
