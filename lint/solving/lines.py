"""What of a programme can be edited: its lines and sessions as they stand in the text, and what must stay."""

from __future__ import annotations

import re
from itertools import pairwise

from ..body.catalogue import COMPOUND
from ..body.names import fold
from ..body.restrictions import read
from ..counting.effort import FAST_KINDS
from ..counting.suggestions import Suits
from ..syntax.enclosing import way_to
from ..syntax.tree import Mapping, Sequence
from ..text.places import line_end_of, line_stop

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable

    from ..body.catalogue import Exercise
    from ..counting.header import ProgrammeHeader
    from ..counting.ledger import Ledger
    from ..counting.set_group import SetGroup
    from ..model.sessions import Prescription, Session
    from ..syntax.enclosing import WayStep
    from ..text.places import Place, Text

JUNIOR, SENIOR = 18, 65
"""Years of age below which, and from which, more work is offered with a word of caution only."""


class Line:
    """A line of a session that can be edited, from ``start`` to ``end`` of the text.

    ``entries`` are its groups of sets over the weeks, those of one place of sets once; ``held`` are those of
    each week of the programme in which it is done. ``is_main`` says that the coach builds on it: a large lift
    that opens a session, after jumps and throws, a priority, or a lift with a best on file; ``noted`` that
    they wrote a note or a remark on it.
    """

    __slots__ = ("end", "entries", "held", "is_main", "line", "node", "noted", "session", "start")

    def __init__(self, line: Prescription, session: Session, node: Mapping) -> None:
        self.line = line
        self.session = session
        self.node = node
        self.start = node.start
        self.end = node.end
        self.entries: list[SetGroup] = []
        self.held: dict[int, list[SetGroup]] = {}
        self.is_main = False
        content = node.source.content
        self.noted = bool(line.note) or " #" in content[node.start : line_stop(content, node.end)]

    @property
    def exercise(self) -> Exercise | None:
        """The exercise that it names first."""
        return self.entries[0].exercise

    @property
    def name(self) -> str:
        """The exercise as it is written."""
        return self.entries[0].name

    @property
    def names_by_week(self) -> bool:
        """Whether it names other exercises in other weeks."""
        named = self.node.entries.get("exercise")
        return named is not None and isinstance(named.value, Mapping)

    @property
    def sets(self) -> float:
        """The most sets that it holds in any week."""
        return max(one.sets.high for one in self.entries)

    def exercises_in(self, weeks: Iterable[int]) -> list[Exercise]:
        """The exercises that it holds in some weeks; in all, where none is named."""
        several = [one for week in weeks or self.held for one in self.held.get(week, ())]
        return [one.exercise for one in several if one.exercise is not None]

    def does(self, exercise: Exercise, weeks: Iterable[int] = ()) -> bool:
        """Whether it holds an exercise in one of some weeks; in any, where none is named."""
        several = [self.held.get(week, []) for week in weeks] if weeks else [self.entries]
        return any(one.exercise is exercise for groups in several for one in groups)

    def in_block(self, weeks: Iterable[int]) -> list[int]:
        """Weeks of the programme as weeks of its block."""
        return sorted(week - self.session.block.first + 1 for week in weeks)

    @property
    def is_plain(self) -> bool:
        """Whether it stands by itself in its session: in no superset, circuit or complex, and by no clock."""
        return self.line.paired is None and not self.line.on_clock and not self.line.kind


class WrittenSession:
    """A session as it stands in the text, from ``start`` to ``end``; ``by_week`` are its days by week."""

    __slots__ = ("by_week", "days", "end", "lines", "node", "session", "start")

    def __init__(self, session: Session, node: Mapping) -> None:
        self.session = session
        self.node = node
        self.by_week: dict[int, set[int]] = {}
        self.start = node.start
        self.end = node.end
        self.lines: list[Line] = []
        self.days: set[int] = set()


class Plan:
    """A programme as it can be edited: its ``sessions`` and ``lines`` in the order of the file.

    ``kept`` are the words for what must stay as it is; ``apart`` the names of lines that are not edited since
    their words are used elsewhere, too.
    """

    __slots__ = (
        *("_exercises", "_spared", "_suits", "apart", "kept", "ledgers", "line_end", "lines", "sessions"),
        "text",
    )

    def __init__(self, text: Text, ledgers: list[Ledger], keep: Iterable[str] = ()) -> None:
        self.text = text
        self.ledgers = ledgers
        self.line_end = line_end_of(text.content)
        self.kept = [fold(one) for one in keep]
        self.sessions: list[WrittenSession] = []
        self.lines: list[Line] = []
        self.apart: list[str] = []
        self._exercises: list[Exercise] | None = None
        self._suits = [Suits(ledger.header) for ledger in ledgers]
        # What is agreed may stay as it is: more of it is for the clinician to say.
        self._spared = [
            read(one.subject.words, ledger.header.known)
            for ledger in ledgers
            for one in ledger.header.spared()
        ]
        self._take()

    def _take(self) -> None:
        held: dict[int, WrittenSession] = {}
        found: dict[int, Line] = {}
        places: dict[Prescription, tuple[Mapping | None, Mapping | None]] = {}
        for ledger in self.ledgers:
            for week in ledger.weeks:
                for visit, entry in week.entries():
                    line = entry.prescription
                    if line not in places:
                        steps = way_to(line.place)
                        places[line] = _holder(steps, "session"), _holder(steps, "exercise")
                    at, item = places[line]
                    if at is None or item is None or self._is_shared(at) or self._is_shared(item):
                        if entry.name not in self.apart:
                            self.apart.append(entry.name)
                        continue
                    session = held.setdefault(at.start, WrittenSession(visit.session, at))
                    session.days.add(visit.day)
                    session.by_week.setdefault(week.number, set()).add(visit.day)
                    one = found.get(item.start)
                    if one is None:
                        one = found[item.start] = Line(line, visit.session, item)
                        session.lines.append(one)
                    if entry.is_done and entry not in one.held.setdefault(week.number, []):
                        one.held[week.number].append(entry)
                    if all(_written(entry) != _written(known) for known in one.entries):
                        one.entries.append(entry)
        self.sessions = sorted(held.values(), key=lambda one: one.start)
        for session in self.sessions:
            session.lines.sort(key=lambda one: one.start)
            opening = next((one for one in session.lines if not _is_fast(one)), None)
            for one in session.lines:
                one.is_main = self._is_named(one) or (one is opening and _is_large(one))
        self.lines = [one for session in self.sessions for one in session.lines]

    def _is_shared(self, node: Mapping) -> bool:
        """Whether a group of keys is used elsewhere in the text, too, by the anchor before it."""
        content = self.text.content
        found = re.search(r"&([^\s,\[\]{}]+)\s+\Z", content[max(node.start - 200, 0) : node.start])
        return found is not None and re.search(rf"\*{re.escape(found[1])}(?![^\s,\]}}])", content) is not None

    def _is_named(self, line: Line) -> bool:
        """Whether a line is of a priority, or of a lift with a best on file."""
        named = {fold(one.words) for ledger in self.ledgers for one in ledger.header.priority}
        return bool(line.entries[0].best) or fold(line.name) in named

    @property
    def header(self) -> ProgrammeHeader:
        """What the programme says outside its sessions."""
        return self.ledgers[0].header

    def holds(self, place: Place) -> bool:
        """Whether a place is one of its text, which may have been read twice."""
        return (place.text.name, place.text.content) == (self.text.name, self.text.content)

    def is_kept(self, *names: str) -> bool:
        """Whether the coach wants to keep what goes by one of some names."""
        return any(word in fold(name) for word in self.kept for name in names)

    def may_touch(self, line: Line) -> bool:
        """Whether a line may be edited at all."""
        content = self.text.content[line.start : line.end]
        return not any(f"{mark}&" in content for mark in " [{") and not self.is_kept(
            line.name, line.session.name
        )

    def obstacle(self, exercise: Exercise | None) -> str:
        """What speaks against more work with an exercise, for anybody on the programme; empty if nothing."""
        words = self.ruled_out(exercise)
        if words or exercise is None:
            return words
        return next((words for one in self._suits if (words := one.obstacle(exercise))), "")

    def ruled_out(self, exercise: Exercise | None) -> str:
        """What speaks even against what the coach has the same line hold in other weeks; empty if nothing.

        Level, equipment, and whether somebody gets down to the floor: there the coach has decided.
        """
        if self.in_rehabilitation:
            return "is more work in rehabilitation: that is for the clinician to say"
        if exercise is None:
            return "is not known"
        return "loads what is spared" if any(one.forbids(exercise) for one in self._spared) else ""

    def is_spared(self, line: Line) -> bool:
        """Whether somebody is to spare what a line does."""
        return any(
            entry.exercise is not None and one.forbids(entry.exercise)
            for one in self._spared
            for entry in line.entries
        )

    @property
    def in_rehabilitation(self) -> bool:
        """Whether the programme states a stage of rehabilitation."""
        return any(ledger.header.rehabilitation is not None for ledger in self.ledgers)

    def meant(self, weeks: Iterable[int], done: Iterable[int], *, exactly: bool = False) -> list[int]:
        """The weeks of those in which something is ``done`` that a finding of some ``weeks`` means.

        They are all of them where the finding is not bound to weeks, or no other is a typical one: those are
        written on their own, or follow. Unless ``exactly`` those are meant, an easy week goes with the week
        before it.
        """
        done, weeks = sorted(done), set(weeks)
        if not weeks or not weeks & set(done):
            return [] if weeks else done
        others = [week for ledger in self.ledgers for week in ledger.weeks if week.number not in weeks]
        if not exactly and not any(
            week.is_typical() and not week.is_peak and week.number in done for week in others
        ):
            return done
        easy = {week.number for week in others if week.is_deload and not week.is_peak and not exactly}
        found: list[int] = []
        for week in done:
            if week in weeks or (week in easy and week - 1 in found):
                found.append(week)
        return found

    @property
    def exercises(self) -> list[Exercise]:
        """The exercises that it holds in any week: those of the most weeks first, then as in the file."""
        if self._exercises is None:
            found: dict[Exercise, set[int]] = {}
            for line in self.lines:
                for week in line.held:
                    for one in line.exercises_in([week]):
                        found.setdefault(one, set()).add(week)
            self._exercises = sorted(found, key=lambda one: -len(found[one]))
        return self._exercises

    def line_at(self, offset: int) -> Line | None:
        """The line that holds an offset."""
        return next((one for one in self.lines if one.start <= offset < one.end), None)

    def lines_at(self, offset: int) -> list[Line]:
        """The line that holds an offset; all lines of a session where only that holds it."""
        line = self.line_at(offset)
        if line is not None:
            return [line]
        session = self.session_at(offset)
        return session.lines if session is not None else []

    def session_at(self, offset: int) -> WrittenSession | None:
        """The session that holds an offset."""
        return next((one for one in self.sessions if one.start <= offset < one.end), None)


def caution_for(ledgers: Iterable[Ledger]) -> str:
    """What has to be said beside more work for a junior or an older athlete; empty for others."""
    ages = [one.athlete.age for one in ledgers if one.athlete is not None and one.athlete.age is not None]
    if any(age < JUNIOR for age in ages):
        return "More work for a junior: agree it with whoever supervises them; technique comes first."
    if any(age >= SENIOR for age in ages):
        return "More work for an older athlete: raise it gently; ask their clinician where in doubt."
    return ""


def _is_fast(line: Line) -> bool:
    return line.exercise is not None and line.exercise.kind in FAST_KINDS


def _is_large(line: Line) -> bool:
    return line.exercise is not None and line.exercise.pattern in COMPOUND


def _written(entry: SetGroup) -> list[tuple[str, int, int]]:
    """Where the values of a group of sets are written."""
    return [place.key for place in entry.work.places.values()]


def _holder(steps: list[WayStep], key: str) -> Mapping | None:
    """The innermost group of keys on a way whose key is of a kind; None where it is used by an alias."""
    found = None
    for step in steps:
        group = step.group
        if isinstance(group, Mapping) and key in group.entries and group.defined is None:
            found = group
    in_session = any(
        step.key in ("sessions", "exercises") and isinstance(below.group, Sequence)
        for step, below in pairwise(steps)
    )
    return found if in_session else None
