"""Items of a session: tree -> lines, those of supersets and circuits in turn."""

from __future__ import annotations

import re

from ..syntax.tree import Mapping
from .read_line import LineReader
from .read_pairing import pairing
from .values import items_of, terms_of, text_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from ..findings.finding import Finding
    from .read_line import Member
    from .sessions import Prescription, Session
    from .values import LocatedNode


def read_lines(
    at: LocatedNode, session: Session, before: list[Prescription], findings: list[Finding]
) -> Iterator[Prescription]:
    """The prescriptions of one item of a session: the item itself, or what its superset or circuit holds.

    ``before`` are the lines before it in the session, to which those of the item come as they are read;
    ``findings`` takes what cannot be meant.
    """

    def open_line() -> LineReader:
        reader = LineReader(findings, session.block.weeks, before, session.in_weeks)
        reader.given = session.block.given
        return reader

    for reader, member, paired, rounds, shared in _members(at, open_line, session.block.one_lift):
        if not isinstance(member.node, Mapping):
            continue
        parts, written = None, member.node.entries
        if shared is None and not CHANGING.isdisjoint(written):
            parts = _parts(reader, member)
        line = reader.prescription(parts[0][1] if parts else member, len(before), rounds, shared)
        line.session = session
        line.paired = paired
        if shared is not None:
            from .read_other_work import finish

            finish(line, member)
        if "kind" in written:
            line.kinds = terms_of(member.get("kind"))
        if session.test or "test" in written:
            from .tested import set_test

            set_test(reader, member, line, session.test)
        if parts or (paired is not None and paired.parts):
            yield from _in_parts(reader, line, parts)
        else:
            yield line


def _parts(reader: LineReader, at: LocatedNode) -> list[tuple[frozenset[int], LocatedNode]] | None:
    """The parts of a line whose clock or words change by week; None where they do not."""
    if not any((part := at.get(key)) is not None and isinstance(part.node, Mapping) for key in CHANGING):
        return None
    from .by_parts import parts_of

    reader.begin(at)
    return parts_of(reader, at, sorted(CHANGING)) or None


def _in_parts(
    reader: LineReader, line: Prescription, parts: list[tuple[frozenset[int], LocatedNode]] | None
) -> Iterator[Prescription]:
    """A line once for each run of weeks in which its clock and its words, or those of its whole, stay."""
    from .by_parts import line_in_parts, paired_in_parts

    for part in [line] if parts is None else line_in_parts(reader, line, parts):
        if line.paired is not None and line.paired.parts:
            yield from paired_in_parts(part)
        else:
            yield part


def _members(
    at: LocatedNode, open_line: Callable[[], LineReader], one_lift: frozenset[str]
) -> Iterator[Member]:
    """The lines of an item; see `Block.one_lift`."""
    written = at.keys()
    if "exercise" in written and _WHOLES.isdisjoint(written) and not _joins_lifts(at, one_lift):
        yield open_line(), at, None, None, None
        return
    superset, circuit = at.get("superset"), at.get("circuit")
    if superset is not None and _is_plain(at):
        paired = pairing("superset", at, open_line())
        yield from ((open_line(), one, paired, at.get("rounds"), None) for one in superset.items())
    elif (
        circuit is not None
        and circuit.keys() <= _PLAIN_CIRCUIT
        and "in weeks" not in at
        and _is_plain(circuit)
    ):
        paired, rounds = pairing("circuit", circuit, open_line()), circuit.get("rounds")
        yield from ((open_line(), one, paired, rounds, None) for one in items_of(circuit.get("exercises")))
    elif superset is circuit is None and not _OTHER_WORK & written and not _joins_lifts(at, one_lift):
        yield open_line(), at, None, None, None
    else:
        from .read_other_work import read_other_work

        yield from read_other_work(at, open_line)


def _is_plain(at: LocatedNode) -> bool:
    """Whether a superset or circuit is done in all weeks of its session, with one rest."""
    rest = at.get("rest")
    return "in weeks" not in at and (rest is None or not isinstance(rest.node, Mapping))


def _joins_lifts(at: LocatedNode, one_lift: frozenset[str]) -> bool:
    """Whether a line is a complex in one: ``clean + front squat + jerk``, 1+1+1.

    ``clean + jerk``, 1+1, is one lift: the clean and jerk. So is a name that the coach gives to one.
    """
    name = at.get("exercise")
    if name is None or " + " not in name.words or "work" in at or name.words in one_lift:
        return False
    lifts, reps = name.words.lower().split(" + "), text_of(at.get("reps")).split("+")
    if len(lifts) != len(reps):
        return False
    return not re.fullmatch(_ONE_LIFT, " + ".join(lifts)) or reps[0].strip() != reps[1].strip()


_ONE_LIFT = r"([^+]*clean|[a-z]{0,2}c) \+ ([^+]*jerk|[a-z]?j)"
"""The clean and jerk, written with a plus."""

CHANGING = frozenset({"every", "for", "rest after", "warm-up sets", "method", "note", "cue", "stop when"})
"""Keys of a line that hold for all its weeks, or change by week."""

_WHOLES = frozenset({"superset", "circuit"})
_PLAIN_CIRCUIT = frozenset({"rounds", "rest", "exercises", "note"})
_OTHER_WORK = frozenset({"complex", "intervals", "own choice"})
