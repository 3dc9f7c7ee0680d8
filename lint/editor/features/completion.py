"""What may be typed at a caret: keys and values by the schema, exercises, athletes, rules, anchors."""

from __future__ import annotations

import re
from datetime import timedelta

from ...model.sessions import WEEKDAYS
from ...syntax.builder import parse
from ...syntax.scalars import OutOfRangeError, core_value, taken_elsewhere
from ...syntax.tree import Mapping
from ...team.waivers import MARK
from ..caret.allowed import KINDS, AllowedHere
from ..caret.context import context
from ..caret.names_in_scope import NamesInScope, Offer
from ..documents.answers import Completion
from ..explain.markdown import md

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ...syntax.tree import Anchor
    from ..caret.allowed import Key, Value
    from ..caret.context import Chain, Context
    from ..documents.view import View

A_LINE: Chain = ("sessions", 0, "exercises", 0)
"""Where the schema describes what mostly stands under ``shared``: the keys of a line."""

LONGEST_EXCERPT = 60
"""Characters of an anchor's value that are shown."""


def complete(view: View, offset: int) -> list[Completion]:
    """Proposals for what stands or may stand at an offset; the list of exercises is never the whole of it."""
    if view.review.kind not in KINDS:
        return []
    here = context(view.text.content, offset)
    asked = _Asked(view, here, offset)
    if here.comment >= 0:
        return list(asked.in_comment())
    if here.sign:
        return list(asked.anchors() if here.sign == "*" else asked.missing_anchors())
    return list(asked.all())


class _Asked:
    """One question, and all that is offered in answer."""

    def __init__(self, view: View, here: Context, offset: int) -> None:
        self.view = view
        self.here = here
        self.offset = offset
        self.content = view.text.content
        self.kind = view.review.kind
        self.count = 0

    def all(self) -> Iterator[Completion]:
        """Keys first, then values, then items of a list."""
        here = self.here
        if here.key:
            yield from self.keys(here.chain, here.groups)
        if here.value:
            yield from self.values(here.chain, here.groups)
        if here.item is not None:
            yield from self.items(here.item)

    def place(self, chain: Chain, groups: tuple[frozenset[str], ...]) -> AllowedHere:
        """What the schema says of a place; what stands under ``shared`` is taken for a part of a line."""
        if self.kind == "programme" and len(chain) > 1 and chain[0] == "shared":
            begin = next(
                (at for at, step in enumerate(chain) if at > 1 and isinstance(step, str)), len(chain)
            )
            none: frozenset[str] = frozenset()
            chain, groups = (*A_LINE, *chain[begin:]), (*(none for _ in A_LINE), *groups[begin:])
        return AllowedHere(self.kind, chain, groups)

    def subjects(self, chain: Chain) -> NamesInScope:
        return NamesInScope(self.view, self.here, chain, self.content[self.here.start : self.offset])

    # Keys

    def keys(
        self, chain: Chain, groups: tuple[frozenset[str], ...], before: str = ""
    ) -> Iterator[Completion]:
        """Keys that may be added to a group, what it must have first."""
        place = self.place(chain, groups)
        if not place.takes("object"):
            return
        here, present = self.here, groups[-1]
        named = self.subjects(chain).keys()
        bare = here.colon or bool(here.quote)
        if named is not None:
            one = self.place((*chain, ""), (*groups, frozenset()))
            after = ": " if here.brackets or one.takes("scalar") else ":"
            for offer in named:
                if offer.words not in present:
                    yield self.made(offer, before, "" if bare else f"{after}{offer.behind}")
        elif chain[:1] != ("shared",) or place.may_add(present, ()):
            keys = place.keys(present, self.data(chain))
            for key in sorted(keys, key=lambda key: not key.required):
                after = ": " if here.brackets or "scalar" in key.forms else ":"
                yield self.made(_key_offer(key), before, "" if bare else after)

    def data(self, chain: Chain) -> object:
        """What stood at a chain when the text could last be read; None where nothing did."""
        reviews = (self.view.review, self.view.good)
        readings = (one.reading for one in reviews if one is not None and one.reading is not None)
        root = next((reading.root for reading in readings if reading.root is not None), None)
        data: object = root.plain if root is not None else None
        for step in chain:
            if isinstance(data, dict) and isinstance(step, str):
                data = data.get(step)
            elif isinstance(data, list) and isinstance(step, int) and step < len(data):
                data = data[step]
            else:
                return None
        return data

    # Values

    def values(self, chain: Chain, groups: tuple[frozenset[str], ...]) -> Iterator[Completion]:
        """Single values; where only a list may stand, its first item with what begins the list."""
        place = self.place(chain, groups)
        if place.takes("scalar") or chain[:1] == ("shared",):
            for offer in self.single(place, chain):
                yield self.made(offer)
        elif place.takes("array") and not self.here.quote:
            if self.here.key:
                yield from self.items((*chain, 0))
            else:
                for offer in self.single(place.item(), (*chain, 0)):
                    yield self.made(offer, "[", "]", in_brackets=True)

    def items(self, chain: Chain) -> Iterator[Completion]:
        """A list's item on a line of its own."""
        here = self.here
        groups = (*here.groups, *(frozenset[str]() for _ in chain))[: len(chain) + 1]
        yield from self.keys(chain, groups, "- ")
        place = self.place(chain, groups)
        if place.takes("scalar"):
            for offer in self.single(place, chain):
                yield self.made(offer, "- ")

    def single(self, place: AllowedHere, chain: Chain) -> Iterator[Offer]:
        """Single values for a place, by name or by the schema."""
        named = self.subjects(chain).values()
        if named is not None:
            yield from named
            return
        for value in place.values():
            yield self.value_offer(value, chain)

    def value_offer(self, value: Value, chain: Chain) -> Offer:
        words = str(value.plain).lower() if isinstance(value.plain, bool) else str(value.plain)
        if _DATE.fullmatch(words):
            words = self.date(chain)
        kind = "day" if words in WEEKDAYS else "value"
        form = "" if isinstance(value.plain, str) else words
        return Offer(
            words, "day" if kind == "day" else "value", value.title, md(value.description), form=form
        )

    def date(self, chain: Chain) -> str:
        """A likely day: today, or for the start of a programme the next Monday."""
        today = self.view.workspace.today
        ahead = -today.weekday() % 7 if chain == ("starts",) else 0
        return (today + timedelta(days=ahead)).isoformat()

    # Anchors

    def anchors(self) -> Iterator[Completion]:
        """Names of what stands above and fits here, the nearest first."""
        here, chain = self.here, self.here.chain
        review = self.view.review
        reading = review.reading or parse(self.view.path, self.content)
        named: dict[str, Anchor] = {}
        for anchor in reading.anchors:
            if anchor.place.start < here.start and anchor.node is not None:
                named[anchor.name] = anchor
        for anchor in reversed(named.values()):
            if self.anchor_fits(anchor, chain):
                excerpt = (
                    " ".join(self.content[anchor.node.start : anchor.node.end].split()) if anchor.node else ""
                )
                short = excerpt[:LONGEST_EXCERPT] + ("…" if len(excerpt) > LONGEST_EXCERPT else "")
                yield self.made(Offer(anchor.name, "value", short, form=anchor.name))

    def anchor_fits(self, anchor: Anchor, chain: Chain) -> bool:
        """Whether what an anchor stands for may stand at the caret."""
        here, node = self.here, anchor.node
        if node is None:
            return False
        if chain[-1:] == ("<<",) or chain[-2:-1] == ("<<",):
            at = len(chain) - 1 - chain[::-1].index("<<")
            present = here.groups[at] - {"<<"}
            place = self.place(chain[:at], (*here.groups[:at], present))
            return isinstance(node, Mapping) and place.may_add(node.entries, present)
        if chain[:1] == ("shared",):
            return True
        return self.place(chain, here.groups).fits(node.plain)

    def missing_anchors(self) -> Iterator[Completion]:
        """Names that aliases use and nothing has yet."""
        there = set(_ANCHOR.findall(self.content))
        used = [name for name in _ALIAS.findall(self.content) if name not in there]
        for name in dict.fromkeys(used):
            yield self.made(Offer(name, "value", f"used as *{name}", form=name))

    # Comments

    def in_comment(self) -> Iterator[Completion]:
        """The parts of a waiver in a comment."""
        here, start = self.here, self.here.comment
        if self.kind == "team":
            return  # what is wrong with settings cannot be waived
        written = self.content[start : self.offset]
        rest = re.match(r"[^\s,]*", self.content[self.offset :])
        here.end = self.offset + (rest.end() if rest else 0)
        last = _LAST_WORD.search(written)
        here.start = start + last.start() if last else self.offset
        words = written[1:].split()
        done = words if written[-1:].isspace() else words[:-1]
        behind = re.split(r"[\r\n]", self.content[here.end :], maxsplit=1)[0].strip()
        if not done:
            yield self.made(
                _waiver_part(f"{MARK} waive ", "A finding that does not apply here, with the reason.")
            )
        elif done == [MARK]:
            yield self.made(_waiver_part("waive ", "A finding that does not apply here, with the reason."))
        elif done == [MARK, "waive"]:
            for offer in self.subjects(()).waivable():
                offer.form = offer.words if behind else f"{offer.words} because "
                yield self.made(offer)
        elif done[:2] == [MARK, "waive"] and len(done) == 3 and not behind:
            yield self.made(_waiver_part("because ", "Why the finding does not apply."))
            day = self.view.workspace.today + timedelta(days=90)
            yield self.made(
                _waiver_part(f"until {day.isoformat()} because ", "The last day on which it holds.")
            )

    # How it is written

    def made(
        self, offer: Offer, before: str = "", after: str = "", *, in_brackets: bool = False
    ) -> Completion:
        """A proposal that is written as its place asks."""
        here = self.here
        words = offer.form
        if not words or here.quote:
            words = _written(offer.words, here.quote, here.brackets or in_brackets)
        self.count += 1
        return Completion(
            offer.words,
            f"{' ' if here.glued else ''}{before}{words}{after}",
            here.start,
            here.end,
            offer.detail,
            offer.note,
            offer.kind,
            f"{self.count:04}",
            offer.filter,
        )


_DATE = re.compile(r"20[0-9]{2}-[0-9]{2}-[0-9]{2}")
_ANCHOR = re.compile(r"(?<![^\s,\[\]{}])&([^\s,\[\]{}]+)")
_ALIAS = re.compile(r"(?<![^\s,\[\]{}])\*([^\s,\[\]{}]+)")
_LAST_WORD = re.compile(r"[^\s#]*$")
_PLAIN = re.compile(r"(?![-?:](?:\s|$)|[\s,\[\]{}#&*!|>'\"%@`=])(?:(?!:(?:\s|$)|\s#)[^\r\n])+(?<!\s)")


def _key_offer(key: Key) -> Offer:
    title = "" if key.title == "text" else key.title
    parts = [part for part in (title, "must be there" if key.required else "") if part]
    return Offer(key.name, "key", ", ".join(parts), md(key.description))


def _waiver_part(words: str, says: str) -> Offer:
    return Offer(words.strip(), "value", "waiver", says, form=words)


def _written(words: str, quote: str, in_brackets: bool) -> str:
    """Words as YAML reads them back: within the quotes that are there, plain, or in quotes of their own."""
    if quote == "'":
        return words.replace("'", "''")
    if quote == '"':
        return words.replace("\\", "\\\\").replace('"', '\\"')
    if _PLAIN.fullmatch(words) and not (in_brackets and re.search(r"[,\[\]{}]", words)):
        try:
            if isinstance(core_value(words), str) and not taken_elsewhere(words):
                return words
        except OutOfRangeError:
            pass
    return f"'{words.replace(chr(39), chr(39) * 2)}'"
