"""Tree -> programme: typed values at their places, and findings for what cannot be meant."""

from __future__ import annotations

from ..findings.finding import Edit, Finding
from ..syntax.cache import Fingerprint
from ..syntax.tree import Mapping
from ..text.places import Passage, Term
from ..wording.words import week_list
from . import quantities
from .programme import Adjustment, Event, Member, Programme, Rehabilitation
from .quantities import Range
from .read_athlete import AthleteReader
from .sessions import WEEKDAYS, WORK_KEYS, Activity, Block, Pairing, Prescription, Progression, Session, Slice
from .values import (
    MOST_WEEKS,
    Located,
    Reader,
    duration_of,
    items_of,
    range_of,
    term_of,
    terms_of,
    text_of,
    whole_number,
    word_of,
)

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from typing import TypeVar

    from ..syntax.cache import PartCache
    from ..syntax.tree import Node
    from ..text.places import Place
    from .athlete import Athlete

    Part = TypeVar("Part")

    OpenAthlete = Callable[[Term], "Athlete | Finding"]
    """Takes the path as written in a programme; gives the athlete, or the finding that says why not."""

_READ: dict[str, Callable[[object], object]] = {
    "exercise": lambda value: value if isinstance(value, str) else None,
    "sets": quantities.number_or_range,
    "reps": quantities.reps,
    "load": quantities.load,
    "rir": quantities.number_or_range,
    "rpe": quantities.number_or_range,
    "rest": quantities.duration,
    "tempo": quantities.tempo,
    "hold": quantities.duration,
    "distance": quantities.distance,
    "velocity": quantities.velocity,
    "side": lambda value: value if isinstance(value, str) else None,
}

_RANGES = frozenset({"sets", "reps", "load", "rir", "rpe", "rest", "hold", "distance", "velocity"})
"""Keys whose values may be ranges."""


# Programme


def read_programme(
    root: Node, open_athlete: OpenAthlete, kept: PartCache | None = None
) -> tuple[Programme | None, list[Finding]]:
    """The programme of a tree and what cannot be meant in it.

    The tree may break the schema anywhere: what cannot be read is left out, and the lines it belongs to
    say so (`Prescription.unread`). None where not even a list of keys is there. Sessions and athletes that
    the last reading has ``kept`` are taken over from it.
    """
    if not isinstance(root, Mapping):
        return None, []
    if kept is not None:
        kept.turn(root.source)
    return _ProgrammeReader(open_athlete, kept).programme(Located(root, root.source))


class _ProgrammeReader(Reader):
    def __init__(self, open_athlete: OpenAthlete, kept: PartCache | None) -> None:
        super().__init__()
        self.open_athlete = open_athlete
        self.kept = kept
        self.start_weekday = 0

    def part(self, at: Located, depends_on: tuple[object, ...], make: Callable[[Located], Part]) -> Part:
        """What is made of some words; of the same words as last time, the same."""
        kept, node = self.kept, at.node
        if kept is None or at.through or node.defined is not None:
            return make(at)
        key = kept.key(node, depends_on)
        if key is None:
            return make(at)
        known: tuple[Part, list[Finding]] | None = kept.taken(key, node)
        if known is not None:
            self.findings += known[1]
            return known[0]
        passage = Passage(node.source, node.start)
        before = len(self.findings)
        part = make(Located(node, passage))
        if part is not None:
            kept.hold(key, passage, (part, self.findings[before:]))
        return part

    def programme(self, at: Located) -> tuple[Programme, list[Finding]]:
        name = at.get("programme")
        programme = Programme(text_of(name), name.place if name else at.place)
        programme.places = _places(at, "goal", "phase", "starts")
        programme.goal = word_of(at.get("goal"))
        programme.phase = word_of(at.get("phase"))
        programme.focus = terms_of(at.get("focus"))
        programme.priority = terms_of(at.get("priority"))
        programme.note = text_of(at.get("note"))
        programme.starts = self.day(at.get("starts"))
        if programme.starts:
            self.start_weekday = programme.starts.weekday()
        programme.blocks = self.blocks(at, programme)
        programme.weeks = sum(block.weeks for block in programme.blocks)
        programme.events = tuple(self.event(item) for item in items_of(at.get("events")))
        programme.rehabilitation = self.rehabilitation(at.get("rehabilitation"))
        programme.members = tuple(self.members(at, programme.weeks))
        return programme, self.findings

    def members(self, at: Located, weeks: int) -> Iterator[Member]:
        named = [one for one in (at.get("athlete"),) if one is not None] + items_of(at.get("athletes"))
        for one in named:
            member = self.part(one, ("member", weeks), lambda at: self.member(at, weeks))
            if member is not None:
                yield member

    def member(self, at: Located, weeks: int) -> Member | None:
        athlete = self.athlete(at.get("athlete") or at)
        if athlete is None:
            return None
        return Member(athlete, tuple(self.adjustment(item, weeks) for item in items_of(at.get("adjust"))))

    def athlete(self, at: Located) -> Athlete | None:
        if isinstance(at.node, Mapping):
            return AthleteReader(self.findings).athlete(at)
        found = self.open_athlete(term_of(at)) if at.words else None
        if isinstance(found, Finding):
            self.findings.append(found)
            return None
        return found

    def adjustment(self, at: Located, weeks: int) -> Adjustment:
        exercise, swap, leave_out = at.get("exercise"), at.get("swap"), at.get("leave out")
        values: dict[str, tuple[Slice, ...]] = {}
        for key in ("sets", "load"):
            found = at.get(key)
            if found is not None:
                self.value(values, key, found, weeks, set())
        return Adjustment(
            term_of(exercise or at),
            None if swap is None else term_of(swap),
            leave_out is not None and leave_out.plain is True,
            values,
            text_of(at.get("note")),
        )

    def event(self, at: Located) -> Event:
        name = at.get("event")
        place = name.place if name else at.place
        return Event(text_of(name), place, self.day(at.get("date")), text_of(at.get("note")))

    def rehabilitation(self, at: Located | None) -> Rehabilitation | None:
        if at is None or not isinstance(at.node, Mapping):
            return None
        return Rehabilitation(
            at.place,
            text_of(at.get("stage")),
            text_of(at.get("advised by")),
            self.day(at.get("until")),
            _places(at, "stage", "until"),
        )

    # Blocks and sessions

    def blocks(self, at: Located, programme: Programme) -> tuple[Block, ...]:
        stated = at.get("weeks")
        weeks = whole_number(stated, 1)
        listed = at.get("blocks")
        if listed is None:
            return (self.block(at, Block("", programme.place, 1, weeks)),)
        blocks: list[Block] = []
        first = 1
        for item in items_of(listed):
            name = item.get("name")
            place = name.place if name else item.place
            block = Block(text_of(name), place, first, whole_number(item.get("weeks"), 1))
            if first + block.weeks - 1 > MOST_WEEKS:
                self.say(
                    "weeks-too-many",
                    _place_of(item, "weeks"),
                    f"With this block the programme runs {first + block.weeks - 1} weeks; no block was read"
                    " from here on.",
                    change=f"Correct the weeks; what goes past {MOST_WEEKS} belongs in a file of its own.",
                )
                return tuple(blocks)
            blocks.append(self.block(item, block))
            first += block.weeks
        if stated is not None and blocks and weeks != first - 1:
            self.say(
                "weeks-disagree",
                stated.place,
                f"The programme says {weeks} weeks; its blocks add up to {first - 1}.",
                change="Correct one of the two, or leave the weeks of the programme out.",
            )
        return tuple(blocks)

    def block(self, at: Located, block: Block) -> Block:
        block.phase = word_of(at.get("phase"))
        deload = at.get("deload")
        block.deload = deload is not None and deload.plain is True
        block.note = text_of(at.get("note"))
        block.focus = terms_of(at.get("focus"))
        block.rotation = tuple(sorted(self.days(at.get("rotation"))))
        visits = items_of(at.get("sessions"))
        depends_on = ("session", block.weeks, self.start_weekday)
        block.sessions = tuple(
            self.part(item, depends_on, lambda at: self.session(at, block))
            for item in visits
            if "activity" not in item
        )
        for number, session in enumerate(block.sessions):
            session.block = block
            session.number = number
        block.activities = tuple(self.activity(item) for item in visits if "activity" in item)
        return block

    def days(self, at: Located | None) -> tuple[int, ...]:
        """Day numbers, 1 being the start day of the programme; each day once, in the order written."""
        days: list[int] = []
        for item in items_of(at):
            day = item.plain
            if isinstance(day, str) and day.lower() in WEEKDAYS:
                day = (WEEKDAYS.index(day.lower()) - self.start_weekday) % 7 + 1
            if isinstance(day, int) and not isinstance(day, bool) and 1 <= day <= 7 and day not in days:
                days.append(day)
        return tuple(days)

    def activity(self, at: Located) -> Activity:
        name = at.get("activity")
        loads = at.get("loads")
        return Activity(
            text_of(name),
            name.place if name else at.place,
            self.days(at.get("day")),
            minutes=range_of(at.get("minutes")),
            effort=range_of(at.get("effort")),
            loads=tuple((Term(area, place), how.words) for area, place, how in loads.pairs())
            if loads
            else (),
            note=text_of(at.get("note")),
        )

    def session(self, at: Located, block: Block) -> Session:
        name = at.get("session")
        session = Session(text_of(name), name.place if name else at.place, self.days(at.get("day")))
        session.block = block
        session.meaning = None if self.kept is None else Fingerprint(at.node)
        session.preparation = terms_of(at.get("preparation"))
        session.note = text_of(at.get("note"))
        lines: list[Prescription] = []
        for item in items_of(at.get("exercises")):
            lines.extend(self.lines(item, session, len(lines)))
        session.prescriptions = tuple(lines)
        return session

    def lines(self, at: Located, session: Session, order: int) -> Iterator[Prescription]:
        """The prescriptions of one item: itself, or the members of its superset or circuit."""
        superset, circuit = at.get("superset"), at.get("circuit")
        members, head = [at], None
        if superset is not None:
            members, head = superset.items(), at
        elif circuit is not None:
            members, head = items_of(circuit.get("exercises")), circuit
        paired = rounds = None
        if head is not None:
            kind = "superset" if superset is not None else "circuit"
            paired = Pairing(kind, head.place, duration_of(head.get("rest")), text_of(head.get("note")))
            rounds = head.get("rounds")
        for member in members:
            if isinstance(member.node, Mapping):
                yield self.prescription(member, session, order, paired, rounds)
                order += 1

    # A line

    def prescription(
        self, at: Located, session: Session, order: int, paired: Pairing | None, rounds: Located | None
    ) -> Prescription:
        weeks = session.block.weeks
        unread: set[str] = set()
        own = self.values(at, weeks, unread)
        if "sets" not in at and rounds is not None:
            self.value(own, "sets", rounds, weeks, unread)
        line = Prescription(_place_of(at, "exercise"), order, self.groups(at, own, weeks, unread))
        line.session = session
        line.paired = paired
        line.every = duration_of(at.get("every"))
        line.lasts = duration_of(at.get("for"))
        line.warm_up_sets = range_of(at.get("warm-up sets"))
        line.cluster_rest = duration_of(at.get("cluster rest"))
        loss = at.get("velocity loss")
        line.velocity_loss = None if loss is None else quantities.percent(loss.plain)
        line.method = text_of(at.get("method"))
        line.note = text_of(at.get("note"))
        line.alternates = terms_of(at.get("or"))
        line.progression = _progression(at.get("progression"))
        if "exercise" not in at:
            unread.add("exercise")
        line.unread = frozenset(unread)
        return line

    def groups(
        self, at: Located, own: dict[str, tuple[Slice, ...]], weeks: int, unread: set[str]
    ) -> tuple[dict[str, tuple[Slice, ...]], ...]:
        """The groups of like sets of a line: those under ``work``, else the line itself."""
        if "work" in at:
            return tuple({**own, **self.values(group, weeks, unread)} for group in items_of(at.get("work")))
        if "sets" not in own:
            implied = self.implied_sets(at, own, weeks, unread)
            if implied:
                own["sets"] = implied
        return (own,)

    def implied_sets(
        self, at: Located, own: dict[str, tuple[Slice, ...]], weeks: int, unread: set[str]
    ) -> tuple[Slice, ...]:
        """Sets that follow from the rest of the line: one every so often, or one number for each set."""
        every, lasts = duration_of(at.get("every")), duration_of(at.get("for"))
        if every is not None and lasts is not None and (every.low <= 0 or lasts.low < every.high):
            self.say(
                "no-set-fits",
                _place_of(at, "for"),
                f"A set every {text_of(at.get('every'))} does not go into {text_of(at.get('for'))}.",
                change="Correct one of the two.",
            )
        elif every is not None and lasts is not None:
            sets = Range(float(int(lasts.low / every.high)), float(int(lasts.high / every.low)))
            return (Slice(1, weeks, sets, _place_of(at, "for")),)
        listed = own.get("reps", ())
        if listed and all(isinstance(held.value, quantities.Reps) and held.value.each_set for held in listed):
            return tuple(
                Slice(held.first, held.last, Range(len(held.value.sets), len(held.value.sets)), held.place)
                for held in listed
                if isinstance(held.value, quantities.Reps)
            )
        unread.add("sets")
        return ()

    def values(self, at: Located, weeks: int, unread: set[str]) -> dict[str, tuple[Slice, ...]]:
        held: dict[str, tuple[Slice, ...]] = {}
        for key in WORK_KEYS:
            found = at.get(key)
            if found is not None:
                self.value(held, key, found, weeks, unread)
        return held

    def value(
        self, held: dict[str, tuple[Slice, ...]], key: str, at: Located, weeks: int, unread: set[str]
    ) -> None:
        """Adds the value of a key, one or one a week, to ``held``."""
        slices = []
        for first, last, part in self.by_week(at, weeks):
            value = _READ[key](part.plain)
            if value is None:
                unread.add(key)
            else:
                if key in _RANGES and "-" in part.words:
                    self.order(part.place, part.words)
                slices.append(Slice(first, last, value, part.place))
        if slices:
            held[key] = tuple(slices)

    def order(self, place: Place, words: str) -> None:
        """Says so where a range runs from its high end to its low one; it is read as if turned round."""
        turned = quantities.in_order(words)
        if turned != words:
            self.say(
                "range-backwards",
                place,
                f"{words} runs backwards; it was read as {turned}.",
                severity="warning",
                change=f"Write {turned}, the smaller number first.",
                edits=(Edit(place, turned, f"write {turned}"),),
            )

    def by_week(self, at: Located, weeks: int) -> list[tuple[int, int, Located]]:
        """First week, last week and value; weeks left out, stated twice or not there are findings."""
        if not isinstance(at.node, Mapping):
            return [(1, weeks, at)]
        parts: list[tuple[int, int, Located]] = []
        taken: dict[int, str] = {}
        for key, place, value in at.pairs():
            span = quantities.weeks(key)
            if span is None:
                continue
            self.order(place, key)
            twice = [week for week in range(span[0], min(span[1], weeks) + 1) if week in taken]
            if twice:
                self.say(
                    "weeks-overlap",
                    place,
                    f"Week {twice[0]} stands under {taken[twice[0]]} and under {key}.",
                    change="Give each week one value.",
                )
            if span[1] > weeks:
                self.say(
                    "weeks-beyond",
                    place,
                    f"{key} goes past week {weeks}, the last one here.",
                    change="Correct the weeks, or the length of the block or programme.",
                )
            taken.update(dict.fromkeys(range(span[0], min(span[1], weeks) + 1), key))
            parts.append((span[0], min(span[1], weeks), value))
        left_out = [week for week in range(1, weeks + 1) if week not in taken]
        if parts and left_out:
            self.say(
                "weeks-left-out",
                at.written,
                f"No value for {week_list(left_out)}; the values here must cover weeks 1-{weeks}.",
                change="Add the missing weeks.",
            )
        return parts


def _places(at: Located, *keys: str) -> dict[str, Place]:
    """Where the values of some keys stand, of those that are there."""
    return {key: found.place for key in keys if (found := at.get(key)) is not None}


def _place_of(at: Located, key: str) -> Place:
    found = at.get(key)
    return at.place if found is None else found.place


def _progression(at: Located | None) -> Progression | None:
    if at is None:
        return None
    if not isinstance(at.node, Mapping):
        return Progression(at.place, note=at.words)
    add, when, every, note = (text_of(at.get(key)) for key in ("add", "when", "every", "note"))
    return Progression(at.place, add=add, when=when, every=every, note=note)
