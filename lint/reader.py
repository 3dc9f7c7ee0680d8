"""Tree -> programme and athlete: typed values at their places, and findings for what cannot be meant."""

from __future__ import annotations

from datetime import date

from . import quantities
from .finding import Edit, Finding
from .fits import fits
from .kept import Meaning
from .places import Passage
from .programme import (
    WEEKDAYS,
    WORK_KEYS,
    Activity,
    Adjustment,
    Athlete,
    BestLift,
    Block,
    Event,
    Member,
    Pairing,
    Prescription,
    Programme,
    Progression,
    Rehabilitation,
    Restriction,
    Session,
    Slice,
    Term,
)
from .quantities import Range
from .yaml_tree import Mapping, Scalar, Sequence

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from typing import TypeVar

    from .finding import Severity
    from .kept import Kept
    from .places import Place, Text
    from .yaml_tree import Anchor, Node, Reading

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

MOST_WEEKS = 104
"""Weeks that a programme may run: what its schema lets one block or programme say."""

_RANGES = frozenset({"sets", "reps", "load", "rir", "rpe", "rest", "hold", "distance", "velocity"})
"""Keys whose values may be ranges."""


def checked(reading: Reading, schema: str) -> list[Finding]:
    """What reading a file found, and what its schema has against it.

    The quick check is right whenever it says that all is well; else the jsonschema library decides.
    """
    found = list(reading.findings)
    if reading.root is not None and not fits(schema)(reading.root.plain):
        from .explain import explain

        found += explain(reading.root, schema)
    if not any(finding.severity == "error" for finding in reading.findings):
        found += [_unused(anchor) for anchor in reading.anchors if not anchor.used]
    return found


def _unused(anchor: Anchor) -> Finding:
    return Finding(
        "anchor-unused",
        "note",
        anchor.place,
        f"Nothing uses the anchor `{anchor.name}`.",
        change="Take it out, or use it.",
    )


class _At:
    """A node of the tree, the text or passage it lies in, and the aliases and merge keys that led to it."""

    __slots__ = ("node", "through", "within")

    def __init__(self, node: Node, within: Text | Passage, through: tuple[Place, ...] = ()) -> None:
        self.node = node
        self.within = within
        self.through = through

    @property
    def place(self) -> Place:
        return self.within.place(self.node.start, self.node.end).reached(self.through)

    @property
    def written(self) -> Place:
        """Where the words stand, which for an alias is not where they are used."""
        return self.place if self.node.defined is None else self.node.defined.reached(self._inner())

    @property
    def plain(self) -> object:
        return self.node.plain

    @property
    def words(self) -> str:
        """The text of a single value, as written; empty for anything else."""
        return self.node.text if isinstance(self.node, Scalar) else ""

    def __contains__(self, key: str) -> bool:
        return isinstance(self.node, Mapping) and key in self.node.entries

    def get(self, key: str) -> _At | None:
        if not isinstance(self.node, Mapping):
            return None
        entry = self.node.entries.get(key)
        return None if entry is None else _At(entry.value, self.within, self._inner() + entry.merged)

    def pairs(self) -> Iterator[tuple[str, Place, _At]]:
        if isinstance(self.node, Mapping):
            inner = self._inner()
            for key, entry in self.node.entries.items():
                through = inner + entry.merged
                place = self.within.place(entry.key.start, entry.key.end).reached(through)
                yield key, place, _At(entry.value, self.within, through)

    def items(self) -> list[_At]:
        """The members of a list; a single value counts as a list of one."""
        if isinstance(self.node, Sequence):
            inner = self._inner()
            return [_At(item, self.within, inner) for item in self.node.items]
        return [self]

    def _inner(self) -> tuple[Place, ...]:
        return self.through if self.node.defined is None else (*self.through, self.node.place)


class _Reader:
    """Gathers findings while the model is built."""

    def __init__(self) -> None:
        self.findings: list[Finding] = []

    def say(
        self,
        rule: str,
        place: Place,
        counted: str,
        *,
        change: str,
        severity: Severity = "error",
        where: str = "",
        edits: tuple[Edit, ...] = (),
    ) -> None:
        """Notes a finding; words that several lines share by an alias are spoken of once."""
        if all((known.rule, known.place, known.counted) != (rule, place, counted) for known in self.findings):
            self.findings.append(
                Finding(rule, severity, place, counted, change=change, where=where, edits=edits)
            )

    def day(self, at: _At | None) -> date | None:
        """A calendar date; one that the calendar lacks is a finding."""
        if at is None or not at.words:
            return None
        parts = at.words.split("-")
        if [len(part) for part in parts] != [4, 2, 2] or not all(part.isdecimal() for part in parts):
            return None
        try:
            return date(*map(int, parts))
        except ValueError:
            self.say(
                "date-impossible",
                at.place,
                f"{at.words} is not in the calendar.",
                change="Write the date as year-month-day, a day that the month has.",
            )
            return None


def _text(at: _At | None) -> str:
    return "" if at is None else at.words


def _term(at: _At) -> Term:
    return Term(at.words, at.place)


def _terms(at: _At | None) -> tuple[Term, ...]:
    return () if at is None else tuple(_term(item) for item in at.items() if item.words)


def _range(at: _At | None) -> Range | None:
    return None if at is None else quantities.number_or_range(at.plain)


def _duration(at: _At | None) -> Range | None:
    return None if at is None else quantities.duration(at.plain)


# Programme


def read_programme(
    root: Node, open_athlete: OpenAthlete, kept: Kept | None = None
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
    return _ProgrammeReader(open_athlete, kept).programme(_At(root, root.source))


class _ProgrammeReader(_Reader):
    def __init__(self, open_athlete: OpenAthlete, kept: Kept | None) -> None:
        super().__init__()
        self.open_athlete = open_athlete
        self.kept = kept
        self.start_weekday = 0

    def part(self, at: _At, depends_on: tuple[object, ...], make: Callable[[_At], Part]) -> Part:
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
        part = make(_At(node, passage))
        if part is not None:
            kept.hold(key, passage, (part, self.findings[before:]))
        return part

    def programme(self, at: _At) -> tuple[Programme, list[Finding]]:
        name = at.get("programme")
        programme = Programme(_text(name), name.place if name else at.place)
        programme.places = _places(at, "goal", "phase", "starts")
        programme.goal = _text(at.get("goal"))
        programme.phase = _text(at.get("phase"))
        programme.focus = _terms(at.get("focus"))
        programme.priority = _terms(at.get("priority"))
        programme.note = _text(at.get("note"))
        programme.starts = self.day(at.get("starts"))
        if programme.starts:
            self.start_weekday = programme.starts.weekday()
        programme.blocks = self.blocks(at, programme)
        programme.weeks = sum(block.weeks for block in programme.blocks)
        programme.events = tuple(self.event(item) for item in _list(at.get("events")))
        programme.rehabilitation = self.rehabilitation(at.get("rehabilitation"))
        programme.members = tuple(self.members(at, programme.weeks))
        return programme, self.findings

    def members(self, at: _At, weeks: int) -> Iterator[Member]:
        named = [one for one in (at.get("athlete"),) if one is not None] + _list(at.get("athletes"))
        for one in named:
            member = self.part(one, ("member", weeks), lambda at: self.member(at, weeks))
            if member is not None:
                yield member

    def member(self, at: _At, weeks: int) -> Member | None:
        athlete = self.athlete(at.get("athlete") or at)
        if athlete is None:
            return None
        return Member(athlete, tuple(self.adjustment(item, weeks) for item in _list(at.get("adjust"))))

    def athlete(self, at: _At) -> Athlete | None:
        if isinstance(at.node, Mapping):
            return _AthleteReader(self.findings).athlete(at)
        found = self.open_athlete(_term(at)) if at.words else None
        if isinstance(found, Finding):
            self.findings.append(found)
            return None
        return found

    def adjustment(self, at: _At, weeks: int) -> Adjustment:
        exercise, swap, leave_out = at.get("exercise"), at.get("swap"), at.get("leave out")
        values: dict[str, tuple[Slice, ...]] = {}
        for key in ("sets", "load"):
            found = at.get(key)
            if found is not None:
                self.value(values, key, found, weeks, set())
        return Adjustment(
            _term(exercise or at),
            None if swap is None else _term(swap),
            leave_out is not None and leave_out.plain is True,
            values,
            _text(at.get("note")),
        )

    def event(self, at: _At) -> Event:
        name = at.get("event")
        place = name.place if name else at.place
        return Event(_text(name), place, self.day(at.get("date")), _text(at.get("note")))

    def rehabilitation(self, at: _At | None) -> Rehabilitation | None:
        if at is None or not isinstance(at.node, Mapping):
            return None
        return Rehabilitation(
            at.place,
            _text(at.get("stage")),
            _text(at.get("advised by")),
            self.day(at.get("until")),
            _places(at, "stage", "until"),
        )

    # Blocks and sessions

    def blocks(self, at: _At, programme: Programme) -> tuple[Block, ...]:
        stated = at.get("weeks")
        weeks = _whole(stated, 1)
        listed = at.get("blocks")
        if listed is None:
            return (self.block(at, Block("", programme.place, 1, weeks)),)
        blocks: list[Block] = []
        first = 1
        for item in _list(listed):
            name = item.get("name")
            place = name.place if name else item.place
            block = Block(_text(name), place, first, _whole(item.get("weeks"), 1))
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

    def block(self, at: _At, block: Block) -> Block:
        block.phase = _text(at.get("phase"))
        deload = at.get("deload")
        block.deload = deload is not None and deload.plain is True
        block.note = _text(at.get("note"))
        block.focus = _terms(at.get("focus"))
        block.rotation = tuple(sorted(self.days(at.get("rotation"))))
        visits = _list(at.get("sessions"))
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

    def days(self, at: _At | None) -> tuple[int, ...]:
        """Day numbers, 1 being the start day of the programme; each day once, in the order written."""
        days: list[int] = []
        for item in _list(at):
            day = item.plain
            if isinstance(day, str) and day.lower() in WEEKDAYS:
                day = (WEEKDAYS.index(day.lower()) - self.start_weekday) % 7 + 1
            if isinstance(day, int) and not isinstance(day, bool) and 1 <= day <= 7 and day not in days:
                days.append(day)
        return tuple(days)

    def activity(self, at: _At) -> Activity:
        name = at.get("activity")
        loads = at.get("loads")
        return Activity(
            _text(name),
            name.place if name else at.place,
            self.days(at.get("day")),
            minutes=_range(at.get("minutes")),
            effort=_range(at.get("effort")),
            loads=tuple((Term(area, place), how.words) for area, place, how in loads.pairs())
            if loads
            else (),
            note=_text(at.get("note")),
        )

    def session(self, at: _At, block: Block) -> Session:
        name = at.get("session")
        session = Session(_text(name), name.place if name else at.place, self.days(at.get("day")))
        session.block = block
        session.meaning = None if self.kept is None else Meaning(at.node)
        session.preparation = _terms(at.get("preparation"))
        session.note = _text(at.get("note"))
        lines: list[Prescription] = []
        for item in _list(at.get("exercises")):
            lines.extend(self.lines(item, session, len(lines)))
        session.prescriptions = tuple(lines)
        return session

    def lines(self, at: _At, session: Session, order: int) -> Iterator[Prescription]:
        """The prescriptions of one item: itself, or the members of its superset or circuit."""
        superset, circuit = at.get("superset"), at.get("circuit")
        members, head = [at], None
        if superset is not None:
            members, head = superset.items(), at
        elif circuit is not None:
            members, head = _list(circuit.get("exercises")), circuit
        paired = rounds = None
        if head is not None:
            kind = "superset" if superset is not None else "circuit"
            paired = Pairing(kind, head.place, _duration(head.get("rest")), _text(head.get("note")))
            rounds = head.get("rounds")
        for member in members:
            if isinstance(member.node, Mapping):
                yield self.prescription(member, session, order, paired, rounds)
                order += 1

    # A line

    def prescription(
        self, at: _At, session: Session, order: int, paired: Pairing | None, rounds: _At | None
    ) -> Prescription:
        weeks = session.block.weeks
        unread: set[str] = set()
        own = self.values(at, weeks, unread)
        if "sets" not in at and rounds is not None:
            self.value(own, "sets", rounds, weeks, unread)
        line = Prescription(_place_of(at, "exercise"), order, self.groups(at, own, weeks, unread))
        line.session = session
        line.paired = paired
        line.every = _duration(at.get("every"))
        line.lasts = _duration(at.get("for"))
        line.warm_up_sets = _range(at.get("warm-up sets"))
        line.cluster_rest = _duration(at.get("cluster rest"))
        loss = at.get("velocity loss")
        line.velocity_loss = None if loss is None else quantities.percent(loss.plain)
        line.method = _text(at.get("method"))
        line.note = _text(at.get("note"))
        line.alternates = _terms(at.get("or"))
        line.progression = _progression(at.get("progression"))
        if "exercise" not in at:
            unread.add("exercise")
        line.unread = frozenset(unread)
        return line

    def groups(
        self, at: _At, own: dict[str, tuple[Slice, ...]], weeks: int, unread: set[str]
    ) -> tuple[dict[str, tuple[Slice, ...]], ...]:
        """The groups of like sets of a line: those under ``work``, else the line itself."""
        if "work" in at:
            return tuple({**own, **self.values(group, weeks, unread)} for group in _list(at.get("work")))
        if "sets" not in own:
            implied = self.implied_sets(at, own, weeks, unread)
            if implied:
                own["sets"] = implied
        return (own,)

    def implied_sets(
        self, at: _At, own: dict[str, tuple[Slice, ...]], weeks: int, unread: set[str]
    ) -> tuple[Slice, ...]:
        """Sets that follow from the rest of the line: one every so often, or one number for each set."""
        every, lasts = _duration(at.get("every")), _duration(at.get("for"))
        if every is not None and lasts is not None and (every.low <= 0 or lasts.low < every.high):
            self.say(
                "no-set-fits",
                _place_of(at, "for"),
                f"A set every {_text(at.get('every'))} does not go into {_text(at.get('for'))}.",
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

    def values(self, at: _At, weeks: int, unread: set[str]) -> dict[str, tuple[Slice, ...]]:
        held: dict[str, tuple[Slice, ...]] = {}
        for key in WORK_KEYS:
            found = at.get(key)
            if found is not None:
                self.value(held, key, found, weeks, unread)
        return held

    def value(
        self, held: dict[str, tuple[Slice, ...]], key: str, at: _At, weeks: int, unread: set[str]
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

    def by_week(self, at: _At, weeks: int) -> list[tuple[int, int, _At]]:
        """First week, last week and value; weeks left out, stated twice or not there are findings."""
        if not isinstance(at.node, Mapping):
            return [(1, weeks, at)]
        parts: list[tuple[int, int, _At]] = []
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
                f"No value for {quantities.week_list(left_out)}; the values here must cover weeks 1-{weeks}.",
                change="Add the missing weeks.",
            )
        return parts


def _list(at: _At | None) -> list[_At]:
    return [] if at is None else at.items()


def _whole(at: _At | None, default: int) -> int:
    value = None if at is None else at.plain
    sound = isinstance(value, int) and not isinstance(value, bool) and 1 <= value <= MOST_WEEKS
    return value if sound and isinstance(value, int) else default


def _places(at: _At, *keys: str) -> dict[str, Place]:
    """Where the values of some keys stand, of those that are there."""
    return {key: found.place for key in keys if (found := at.get(key)) is not None}


def _place_of(at: _At, key: str) -> Place:
    found = at.get(key)
    return at.place if found is None else found.place


def _progression(at: _At | None) -> Progression | None:
    if at is None:
        return None
    if not isinstance(at.node, Mapping):
        return Progression(at.place, note=at.words)
    add, when, every, note = (_text(at.get(key)) for key in ("add", "when", "every", "note"))
    return Progression(at.place, add=add, when=when, every=every, note=note)


# Athlete


def read_athlete(root: Node) -> tuple[Athlete | None, list[Finding]]:
    """The athlete of a tree and what cannot be meant in it; None where not even a list of keys is there."""
    if not isinstance(root, Mapping):
        return None, []
    reader = _AthleteReader([])
    athlete = reader.athlete(_At(root, root.source))
    text = athlete.extent.text
    athlete.extent = text.place(0, len(text.content))
    return athlete, reader.findings


class _AthleteReader(_Reader):
    def __init__(self, findings: list[Finding]) -> None:
        super().__init__()
        self.findings = findings

    def athlete(self, at: _At) -> Athlete:
        name = at.get("name")
        athlete = Athlete(_text(name), name.place if name else at.place)
        athlete.extent = at.written
        athlete.level = _text(at.get("level"))
        athlete.sport = _text(at.get("sport"))
        athlete.age = _number(at.get("age"), OLDEST)
        mass = at.get("body mass")
        athlete.body_mass = None if mass is None else quantities.mass(mass.plain)
        athlete.best_lifts = tuple(self.best_lifts(at.get("best lifts")))
        athlete.equipment = _terms(at.get("equipment"))
        athlete.days = _days(at.get("days"))
        athlete.minutes = _number(at.get("minutes"), LONGEST)
        athlete.protect = tuple(self.restriction(item) for item in _list(at.get("protect")))
        athlete.clearance = self.day(at.get("clearance on file"))
        athlete.screening = self.day(at.get("screening on file"))
        athlete.supervision = _text(at.get("supervision"))
        athlete.note = _text(at.get("note"))
        return athlete

    def best_lifts(self, at: _At | None) -> Iterator[BestLift]:
        if at is None:
            return
        for exercise, place, value in at.pairs():
            stated = value.get("load") or value
            load = quantities.load(stated.plain)
            tested = self.day(value.get("tested"))
            if load is not None and load.kind in ("mass", "bodyweight"):
                yield BestLift(Term(exercise, place), load, _whole(value.get("reps"), 1), tested)

    def restriction(self, at: _At) -> Restriction:
        kind = "movement" if "movement" in at else "area"
        subject = at.get(kind) or at
        return Restriction(
            kind,
            _term(subject),
            _text(at.get("advised by")),
            self.day(at.get("review on")),
            _text(at.get("note")),
        )


OLDEST = Range(5, 110)
"""Years of age that the schema takes."""

LONGEST = Range(5, 300)
"""Minutes a session that the schema takes."""


def _number(at: _At | None, span: Range) -> float | None:
    """A number inside a span; one outside, which the schema reports, counts as not written."""
    value = None if at is None else at.plain
    number = float(value) if isinstance(value, (int, float)) and not isinstance(value, bool) else -1.0
    return number if span.low <= number <= span.high else None


def _days(at: _At | None) -> tuple[str, ...] | int | None:
    if at is None:
        return None
    if isinstance(at.plain, int):
        return at.plain
    return tuple(item.words.lower() for item in at.items() if item.words)
