"""Tree -> programme with typed values and their places, and findings for what cannot be meant."""

from __future__ import annotations

from functools import partial

from ..findings.finding import Finding
from ..syntax.cache import Fingerprint
from ..syntax.tree import Mapping
from ..syntax.tree import Sequence as TreeSequence
from ..text.places import Passage, Term
from .programme import Event, Member, Programme
from .read_athlete import AthleteReader
from .read_items import read_lines
from .read_line import LineReader
from .sessions import Block, Session
from .values import (
    MOST_WEEKS,
    LocatedNode,
    Reader,
    days_of,
    hours_of,
    items_of,
    later,
    once,
    place_of,
    places_of,
    share_of,
    term_of,
    terms_of,
    text_of,
    whole_number,
    within_weeks,
    word_of,
)
from .weeks import weeks

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator, Sequence
    from typing import TypeVar

    from ..syntax.cache import PartCache
    from ..syntax.tree import Node
    from .athlete import Athlete
    from .everything import EveryLine
    from .on_days import Activity, OnDays
    from .sessions import Prescription, Weeks
    from .where import Where

    Part = TypeVar("Part")

    OpenAthlete = Callable[[Term], "Athlete | Finding"]
    """An athlete's path as written in a programme -> the athlete, or a finding that says why not."""


def read_programme(
    root: Node, open_athlete: OpenAthlete, cache: PartCache | None = None
) -> tuple[Programme | None, list[Finding]]:
    """The programme of a tree and what cannot be meant in it.

    The tree may break the schema anywhere: what cannot be read is left out, and `Prescription.unread` names
    it. None where the root is no mapping. A session or an athlete whose text is unchanged since the last
    reading with the same ``cache`` is reused as the same object.
    """
    if not isinstance(root, Mapping):
        return None, []
    if cache is not None:
        cache.start_generation(root.source)
    return _ProgrammeReader(open_athlete, cache).programme(LocatedNode(root, root.source))


class _ProgrammeReader(Reader):
    """Reads a programme, its blocks, sessions and athletes; `read_line` reads the lines of sessions.

    ``start_weekday`` is the weekday on which the programme starts, 0 for Monday; ``everything_at`` what
    changes for all its lines.
    """

    def __init__(self, open_athlete: OpenAthlete, cache: PartCache | None) -> None:
        super().__init__([])
        self.open_athlete = open_athlete
        self.cache = cache
        self.start_weekday = 0
        self.everything_at: LocatedNode | None = None

    def cached(
        self, at: LocatedNode, depends_on: tuple[object, ...], make: Callable[[LocatedNode], Part]
    ) -> Part:
        """What ``make`` makes of a node; the same object as last time where its text is unchanged.

        ``depends_on`` is all that ``make`` uses beside the node itself.
        """
        cache, node = self.cache, at.node
        if cache is None or at.through or node.defined is not None:
            return make(at)
        key = cache.key(node, depends_on)
        if key is None:
            return make(at)
        stored: tuple[Part, list[Finding]] | None = cache.reuse(key, node)
        if stored is not None:
            self.findings += stored[1]
            return stored[0]
        passage = Passage(node.source, node.start)
        before = len(self.findings)
        part = make(LocatedNode(node, passage))
        if part is not None:
            cache.store(key, passage, (part, self.findings[before:]))
        return part

    def programme(self, at: LocatedNode) -> tuple[Programme, list[Finding]]:
        name = at.get("programme")
        programme = Programme(text_of(name), name.place if name else at.place)
        programme.places = places_of(at, "goal", "phase", "starts")
        programme.goal = word_of(at.get("goal"))
        programme.phase = word_of(at.get("phase"))
        programme.focus = terms_of(at.get("focus"))
        programme.priority = terms_of(at.get("priority"))
        programme.note = text_of(at.get("note"))
        programme.our_names = _given_names(at.get("our names"))
        programme.working_best = share_of(at.get("working best"))
        programme.starts = self.day(at.get("starts"))
        if programme.starts:
            self.start_weekday = programme.starts.weekday()
        self.everything_at = at.get("everything")
        if "not trained" in at or "maintain" in at:
            from .left_alone import read_left_alone

            read_left_alone(self, at, programme)
        programme.blocks = self.blocks(at, programme)
        programme.weeks = sum(block.weeks for block in programme.blocks)
        programme.held_at = self.where(at, programme.weeks)
        programme.everything = self.everything(at, programme.weeks, programme.blocks, programme)
        if (easier := at.get("deload")) is not None:
            self.deload_weeks(easier, programme.blocks)
        programme.events = tuple(self.event(item) for item in items_of(at.get("events")))
        if (stage := at.get("rehabilitation")) is not None:
            from .read_rehabilitation import read_rehabilitation

            programme.rehabilitation = read_rehabilitation(self, stage)
        if (demands := at.get("must hold")) is not None:
            from .demands import read_demands

            programme.demands = read_demands(self, demands, programme.weeks)
        programme.members = tuple(self.members(at, programme.weeks))
        if any(session.by_athlete for session in programme.sessions()):
            from .by_athlete import check_athletes

            check_athletes(self, programme)
        if any(member.adjustments or member.everything for member in programme.members):
            from .adjustments import check_sessions

            check_sessions(self, programme)
        if any(one.rule in ("weeks-left-out", "weeks-beyond") for one in self.findings):
            from .lengths import by_length

            self.findings = by_length(self.findings, at, programme)
        return programme, once(self.findings)

    def members(self, at: LocatedNode, weeks: int) -> Iterator[Member]:
        named = [one for one in (at.get("athlete"),) if one is not None] + items_of(at.get("athletes"))
        for one in named:
            member = self.cached(one, ("member", weeks), lambda at: self.member(at, weeks))
            if member is not None:
                yield member

    def member(self, at: LocatedNode, weeks: int) -> Member | None:
        athlete = self.athlete(at.get("athlete") or at)
        if athlete is None:
            return None
        if "adjust" not in at:
            return Member(athlete)
        from .adjustments import read_adjustments

        return Member(athlete, *read_adjustments(self, at, weeks))

    def athlete(self, at: LocatedNode) -> Athlete | None:
        if isinstance(at.node, Mapping):
            return AthleteReader(self.findings).athlete(at)
        found = self.open_athlete(term_of(at)) if at.words else None
        if isinstance(found, Finding):
            self.findings.append(found)
            return None
        return found

    def event(self, at: LocatedNode) -> Event:
        name = at.get("event")
        place = name.place if name else at.place
        return Event(text_of(name), place, self.day(at.get("date")), text_of(at.get("note")))

    # Blocks and sessions

    def blocks(self, at: LocatedNode, programme: Programme) -> tuple[Block, ...]:
        stated = at.get("weeks")
        weeks = whole_number(stated, 1)
        listed = at.get("blocks")
        if listed is None:
            return (self.block(at, Block("", programme.place, 1, weeks), programme),)
        blocks: list[Block] = []
        first = 1
        for item in items_of(listed):
            name = item.get("block") or item.get("name")
            place = name.place if name else item.place
            block = Block(text_of(name), place, first, whole_number(item.get("weeks"), 1))
            if first + block.weeks - 1 > MOST_WEEKS:
                self.report(
                    "weeks-too-many",
                    place_of(item, "weeks"),
                    f"With this block the programme runs {first + block.weeks - 1} weeks; no block was read"
                    " from here on.",
                    change=f"Correct the weeks; what goes past {MOST_WEEKS} belongs in a file of its own.",
                )
                return tuple(blocks)
            block.held_at = self.where(item, block.weeks)
            blocks.append(self.block(item, block, programme))
            first += block.weeks
        if stated is not None and blocks and weeks != first - 1:
            self.report(
                "weeks-disagree",
                stated.place,
                f"The programme says {weeks} weeks; its blocks add up to {first - 1}.",
                change="Correct one of the two, or leave the weeks of the programme out.",
                edits=partial(later, "agreed", stated.place, first - 1),
            )
        return tuple(blocks)

    def block(self, at: LocatedNode, block: Block, programme: Programme) -> Block:
        block.phase = word_of(at.get("phase"))
        deload = at.get("deload")
        block.deload = deload is not None and deload.plain is True
        if deload is not None:
            self.deload_weeks(deload, [block])
        block.note = text_of(at.get("note"))
        block.focus = terms_of(at.get("focus"))
        if (rotation := at.get("rotation")) is not None:
            block.rotation = tuple(sorted(days_of(rotation, self.start_weekday)))
            block.hours = hours_of(rotation, self.start_weekday)
        visits = items_of(at.get("sessions"))
        if (own := at.get("everything")) is not None or self.everything_at is not None:
            from .everything import given_weeks

            block.given = given_weeks(block, self.everything_at, own)
        block.one_lift = frozenset([name.words for name, _ in programme.our_names if " + " in name.words])
        depends_on = ("session", block.weeks, self.start_weekday, block.one_lift, *block.given.items())
        sessions = tuple(
            self.cached(item, depends_on, lambda at: self.session(at, block))
            for item in visits
            if "activity" not in item
        )
        programme.sessions_by_block[block] = sessions
        for number, session in enumerate(sessions):
            session.block = block
            session.number = number
        if any(session.instead_of for session in sessions):
            from .replacing import find_replaced

            find_replaced(self, sessions)
        if any(session.by_visit for session in sessions):
            from .cycles import check_visits

            check_visits(self, block, sessions)
        if "blocks" not in at and block.name:
            block.everything = self.everything(at, block.weeks, (block,), programme)
        others = [item for item in visits if "activity" in item]
        block.activities = tuple(one for item in others for one in self.activities(item, block.weeks))
        return block

    def everything(
        self, at: LocatedNode, weeks: int, blocks: Sequence[Block], programme: Programme
    ) -> tuple[EveryLine, ...]:
        """What changes for all lines in some weeks of the programme or a block."""
        found = at.get("everything")
        if found is None:
            return ()
        from .everything import check_everything, read_everything

        entries = read_everything(self, found, weeks, LineReader(self.findings, weeks).one)
        first = blocks[0].first if blocks else 1
        check_everything(
            self, entries, [(one, one.first - first, programme.sessions_of(one)) for one in blocks]
        )
        return entries

    def deload_weeks(self, at: LocatedNode, blocks: Sequence[Block]) -> None:
        """Marks the weeks of a list in their blocks; they count from the first week of these blocks."""
        last = sum(block.weeks for block in blocks)
        for item in at.items() if isinstance(at.node, TreeSequence) else ():
            for start, end in weeks(str(item.plain)):
                if end > last:
                    self.report(
                        "weeks-beyond",
                        item.place,
                        f"{item.words} goes past week {last}, the last one here.",
                        change="Correct the weeks, or the length of the block or programme.",
                        edits=partial(within_weeks, item, last),
                    )
                for block in blocks:
                    for week in range(1, block.weeks + 1):
                        if start <= block.first - blocks[0].first + week <= end:
                            block.deload_weeks.setdefault(week, item.place)

    def set_days(self, of: OnDays, at: LocatedNode, weeks: int, spans: Weeks = ()) -> Weeks:
        """Gives what takes place its days; the runs of weeks in which it does, ``spans`` where none is
        off."""
        written = at.get("day") or at.get("days")
        if written is not None and isinstance(written.node, Mapping):
            from .read_days import read_days_by_week

            return read_days_by_week(self.findings, of, written, (weeks, spans), self.start_weekday)
        if written is not None:
            of.days = days_of(written, self.start_weekday)
            of.hours = hours_of(written, self.start_weekday)
        return spans

    def where(self, at: LocatedNode, last: int) -> Where | None:
        """Where it takes place, if that is written; ``last`` is the last week that there is."""
        found = at.get("where")
        if found is None:
            return None
        from .kits import read_where

        return read_where(self, found, last, self.start_weekday)

    def activities(self, at: LocatedNode, weeks: int) -> tuple[Activity, ...]:
        from .read_activity import read_activities

        return tuple(read_activities(at, weeks, self.findings, self.set_days))

    def session(self, at: LocatedNode, block: Block) -> Session:
        name = at.get("session")
        session = Session(text_of(name), name.place if name else at.place)
        session.block = block
        session.in_weeks = self.in_weeks(at.get("in weeks"), block.weeks)
        session.in_weeks = self.set_days(session, at, block.weeks, session.in_weeks)
        session.own_days = session.days
        session.fingerprint = None if self.cache is None else Fingerprint(at.node)
        session.preparation, session.cool_down = (
            terms_of(at.get("preparation")),
            terms_of(at.get("cool-down")),
        )
        if (minutes := at.get("minutes")) is not None:
            from .read_days import read_minutes

            session.minutes = read_minutes(self.findings, minutes, block.weeks, session.in_weeks)
        session.kinds = terms_of(at.get("kind"))
        session.note, session.test = text_of(at.get("note")), text_of(at.get("test"))
        instead = at.get("instead of")
        session.instead_of = None if instead is None else term_of(instead)
        session.held_at = self.where(at, block.weeks)
        lines: list[Prescription] = []
        for item in items_of(at.get("exercises")):
            for line in read_lines(item, session, lines, self.findings):
                lines.append(line)
        session.prescriptions = tuple(lines)
        session.by_visit = any(line.by_visit for line in lines)
        session.by_athlete = any(line.by_athlete for line in lines)
        session.counts_rounds = any(
            line.paired is not None and line.paired.clock is not None and line.paired.clock.counts_rounds
            for line in lines
        )
        return session


"""What may differ for one athlete."""


def _given_names(at: LocatedNode | None) -> tuple[tuple[Term, Term], ...]:
    """The names that the coach gives to exercises, each with what it means."""
    pairs = () if at is None else at.pairs()
    return tuple((Term(name, place), term_of(meant)) for name, place, meant in pairs if name and meant.words)
