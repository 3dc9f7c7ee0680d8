"""What the words under the pointer mean: an exercise, a load, a muscle, a rule, a key."""

from __future__ import annotations

import re
from datetime import timedelta

from ...body import catalogue, curves
from ...body.known import Known
from ...model import quantities
from ...model.naming import line_name
from ...team.waivers import MARK
from ...wording.words import counted_noun, listed, plain, week_list
from ..caret.schema_text import described
from ..caret.tree_path import MappedReading, path_at
from ..documents.answers import Hover
from ..explain import areas, effort, exercises, rules
from ..explain.counts import HALF, of_lines, of_session, of_several, of_week, session_in_short
from ..explain.markdown import Statement, bullets, md, paragraphs, several
from ..explain.rules import rule_markdown

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable
    from datetime import date

    from ...body.catalogue import Exercise
    from ...counting.set_group import SetGroup
    from ...counting.tally import Visit
    from ...model.sessions import Block, Prescription
    from ...team.settings import Team
    from ..caret.tree_path import ProgrammeIndex, TreePath
    from ..documents.view import View

__all__ = ["hover", "rule_markdown"]

LAST_READABLE = "_As last readable: the text cannot be read just now._"

A_LINE = ("sessions", 0, "exercises", 0)
"""Where the schema describes the keys of a line."""

EFFORT = ("load", "reps", "rir", "rpe")
TIMES = ("rest", "tempo", "hold", "every", "for", "distance")
BY_AREA = ("loads", "weekly limits", "groups", "credit")
"""Keys under which every key names an area."""

AREAS = ("focus", "priority", "area", "weekly sets of", "without limit")
"""Keys whose values name areas."""

ACTIONS = ("weekly sets of", "in", "actions", "assists")
"""Keys whose values may name a joint action."""


def hover(view: View, offset: int) -> Hover | None:
    """What stands at an offset of the document, in Markdown; None where there is nothing to say."""
    mapped = MappedReading(view)
    waived = _waived(view, mapped, offset)
    if waived is not None:
        return waived
    at_path = mapped.at(offset)
    if at_path is None or not at_path.part:
        return None
    stretch = mapped.stretch(at_path.start, at_path.end)
    if stretch is None:
        return None
    words = _Page(view, mapped, at_path).words()
    if not words:
        return None
    return Hover(*stretch, words if mapped.current else paragraphs(words, LAST_READABLE))


_WAIVER = re.compile(rf"(?<!\S)#[ \t]*{MARK}[ \t]*waive[ \t]+([^\s,]+)")


def _waived(view: View, mapped: MappedReading, offset: int) -> Hover | None:
    """The rule that a comment waives."""
    line, column = view.text.position(offset)
    found = _WAIVER.search(view.text.whole_line(line))
    if found is None or not found.start() <= column - 1 <= found.end():
        return None
    start = offset - column + 1
    root = mapped.reading.root
    if mapped.current and root is not None and path_at(root, start + found.start() + 1).part:
        return None  # it stands inside a value
    page = _rule(found[1], view.review.team)
    return Hover(start + found.start(), start + found.end(), page)


def _rule(name: str, team: Team) -> str:
    """The rule of a name in passing, or the names nearest to it."""
    rule = rules.rules_of(team).get(name)
    return rules.in_short(rule, team) if rule else rule_markdown(name, team)


class _Page:
    """What is to be said of a spot."""

    def __init__(self, view: View, mapped: MappedReading, at_path: TreePath) -> None:
        self.view = view
        self.workspace = view.workspace
        self.mapped = mapped
        self.at_path = at_path
        self.kind = mapped.review.kind
        self.team = mapped.review.team
        self.known: Known = self.team.resources.known
        if self.kind == "exercises":
            self.known = Known(self.workspace.exercises_at(view.review.file).exercises)

    @property
    def standing(self) -> ProgrammeIndex:
        return self.mapped.standing

    def words(self) -> str:
        """The page; the schema's word on the key where nothing better is known."""
        at_path = self.at_path
        if at_path.part == "merged":
            return self.merged()
        said = self.of_key() if at_path.part == "key" else self.of_value()
        return said or self.schema()

    def schema(self) -> str:
        """What the schema says of the key; for a word of a list, of the list's key."""
        keys = self.at_path.keys
        while keys and isinstance(keys[-1], int):
            keys = keys[:-1]
        if self.kind == "programme" and keys[:1] == ("shared",):
            keys = (*A_LINE, self.at_path.name)  # what stands there is mostly meant for lines
        words = described(self.kind, self.at_path.nodes[0].plain, keys)
        return f"**{md(str(keys[-1]))}**: {md(words)}" if words else ""

    def merged(self) -> str:
        """What ``<<`` brings in here."""
        node = self.at_path.node
        entries = getattr(node, "entries", {})
        brought = [
            f"{md(key)}: {md(str(entry.value.plain))}"
            for key, entry in entries.items()
            if entry.merged
            and (entry.merged[0].start, entry.merged[0].end) == (self.at_path.start, self.at_path.end)
        ]
        return f"Brings in {', '.join(brought)}." if brought else ""

    # Keys

    def of_key(self) -> str:
        at_path = self.at_path
        if at_path.by_week is not None:
            return self.week_key(*at_path.by_week)
        if at_path.owner == "best lifts":
            return self.exercise(at_path.name)
        if at_path.owner in BY_AREA:
            return self.area(at_path.name)
        if at_path.owner == "rules" and self.kind == "team":
            return self.rule(at_path.name)
        if at_path.path[-3:-2] == ("rules",) and self.kind == "team":
            return self.option(at_path.owner, at_path.name)
        return ""

    def week_key(self, first: int, last: int) -> str:
        block = self.standing.block(self.at_path)
        if block is None:
            return ""
        weeks = range(block.first + first - 1, block.first + min(last, block.weeks))
        of = (
            f" of the programme, {week_list([*range(first, last + 1)])} of {md(block.name)}"
            if block.name
            else ""
        )
        return f"{_capital(week_list(weeks))}{of}{self.dates(weeks)}." if weeks else ""

    # Values

    def of_value(self) -> str:
        at_path = self.at_path
        name, words = at_path.name, at_path.words
        if name in ("exercise", "swap", "or"):
            return self.exercise(words) or self.line_in_short()
        if self.kind == "exercises" and name in ("name", "also", "easier", "harder"):
            own = name in ("name", "also") and self.known.exercise(words) is None
            return "" if own else self.exercise(words)  # one that is still faulty says so by a finding
        if name in ACTIONS and (said := areas.action(words)):
            return said
        if name == "rule" and at_path.owner in ("waivers", "team rules"):
            return self.rule(words)
        if name in AREAS and not (name == "area" and catalogue.area(words) is None):
            return self.of_area(words)
        if at_path.owner in ("weekly limits", "groups"):
            return self.area(name)
        if at_path.path[-3:-2] == ("best lifts",):
            return self.best_lift(at_path.owner)
        return self.of_programme(name)

    def of_programme(self, name: str) -> str:
        """Values that only a counted programme explains."""
        says: dict[str, Callable[[], str]] = {
            **dict.fromkeys(EFFORT, self.effort),
            **dict.fromkeys(TIMES, self.times),
            "sets": self.sets,
            "rounds": self.sets,
            "session": self.session,
            "day": self.session,
            "weeks": self.weeks,
            "programme": self.weeks,
            "deload": self.weeks,
            "starts": self.starts,
            "date": self.event,
            "event": self.event,
            "athlete": self.athletes,
            "athletes": self.athletes,
        }
        if self.kind != "programme" or not self.standing.ledgers:
            return ""
        if self.at_path.path[-2:] == ("blocks", "name"):
            name = "weeks"
        said = says[name]() if name in says else ""
        return said or self.line_in_short()

    # Exercises and their lines

    def exercise(self, words: str) -> str:
        if not words:
            return ""
        exercise = self.known.exercise(words)
        if exercise is None:
            return exercises.unknown(words, self.known)
        return paragraphs(exercises.profile(exercise, words), self.counted(words, exercise))

    def counted(self, words: str, exercise: Exercise) -> str:
        """How the sets of an exercise count, or what would change where it is only an alternate."""
        if not self.standing.ledgers:
            return ""
        if self.at_path.name == "or":
            lines = self.standing.lines(self.at_path)
            meant = [self.known.exercise(term.words) for line in lines[:1] for term in line.names()[:1]]
            return "".join(exercises.against(exercise, one) for one in meant if one is not None)
        lines = self.lines_of(exercise)
        said = of_lines(self.standing.ledgers, lines, exercise) if lines else ""
        return paragraphs(said, HALF) if said else ""

    def lines_of(self, exercise: Exercise) -> list[Prescription]:
        """The lines that the words belong to; by name where they stand in none."""
        entries = self.standing.entries("exercise", self.at_path.node.start, self.at_path.node.end)
        if entries:
            return list(dict.fromkeys(entry.prescription for entry in entries))
        lines = self.standing.lines(self.at_path)
        if lines:
            return lines
        by_name = [entry.prescription for entry in self.standing.weeks if entry.exercise is exercise]
        return list(dict.fromkeys(by_name))

    def entries(self, name: str) -> list[SetGroup]:
        """What is done by the value here."""
        written = self.at_path.node
        return self.standing.entries(name, written.start, written.end)

    def effort(self) -> str:
        settable = effort.Settable(self.workspace, self.team)
        return self.of_entries(self.entries(self.at_path.name), lambda entry: effort.effort(entry, settable))

    def times(self) -> str:
        name = self.at_path.name
        entries = self.entries(name) or [
            entry for entry in self.standing.weeks if entry.prescription in self.standing.lines(self.at_path)
        ]
        head = ""
        phases = entries[0].work.tempo if entries and name == "tempo" else None
        if phases is not None:
            head = f"{_capital(effort.tempo(phases))}."
        return paragraphs(head, self.of_entries(entries, self.timing))

    def timing(self, entry: SetGroup) -> str:
        visit = self.visit_of(entry)
        return effort.timing(entry, visit) if visit else ""

    def visit_of(self, entry: SetGroup) -> Visit | None:
        week = self.standing.ledger_of(entry).weeks[self.standing.weeks[entry][0] - 1]
        return next((visit for visit, one in week.entries() if one is entry), None)

    def of_entries(self, entries: Iterable[SetGroup], say: Callable[[SetGroup], str]) -> str:
        """What is said of each group of sets that the words belong to, like words once."""
        told = [
            Statement(
                say(entry),
                self.standing.ledgers.index(self.standing.ledger_of(entry)),
                self.standing.weeks[entry],
                of=md(line_name(entry.prescription)),
            )
            for entry in entries
        ]
        return several([one for one in told if one.words], self.standing.ledgers)

    def sets(self) -> str:
        entries = self.entries(self.at_path.name)
        lines = list(dict.fromkeys(entry.prescription for entry in entries))
        exercises = list(dict.fromkeys(entry.exercise for entry in entries if entry.exercise is not None))
        if not exercises:
            return ""
        ledgers = self.standing.ledgers
        if len(exercises) == 1:
            whose = {self.standing.ledger_of(entry) for entry in entries}
            return paragraphs(of_lines(ledgers, lines, exercises[0], whose), HALF)
        return paragraphs(of_several(ledgers, lines, exercises), HALF)

    def line_in_short(self) -> str:
        """For an alias that stands for a whole line, session or group: what it stands for."""
        node = self.at_path.node
        if node.defined is None or self.at_path.part != "value":
            return ""
        if self.standing.sessions(self.at_path) and "session" in getattr(node, "entries", {}):
            return self.session()
        held = getattr(node, "entries", {}).get("exercise")
        return self.exercise(str(held.value.plain)) if held is not None else ""

    def best_lift(self, name: str) -> str:
        """What a best lift for several repetitions stands for."""
        held = self.at_path.nodes[-2].plain
        reps, load = held.get("reps"), quantities.load(held.get("load"))
        exercise = self.known.exercise(name)
        if exercise is None or not isinstance(reps, int) or reps < 2 or load is None or load.kind != "mass":
            return ""
        percent = curves.percent_for(reps, curves.curve_of(exercise.name))
        if percent is None or load.span is None:
            return ""
        one = plain(round(load.span.middle * 100 / percent))
        return paragraphs(
            f"{md(load.words)} for {reps} is about **{one} kg** for one"
            f" ({reps} repetitions lie at {plain(round(percent))} %).",
            effort.ESTIMATE,
        )

    # Areas and rules

    def of_area(self, words: str) -> str:
        """A word of the focus or the priorities, which may also name an exercise."""
        if words and catalogue.area(words) is None and self.known.exercise(words) is not None:
            return self.exercise(words)
        return self.area(words) if words else ""

    def area(self, words: str) -> str:
        return areas.area(words, self.standing.ledgers, self.workspace, self.team) if words else ""

    def rule(self, name: str) -> str:
        return _rule(name, self.team)

    def option(self, rule_name: str, name: str) -> str:
        rule = rules.rules_of(self.team).get(rule_name)
        if rule is None:
            return ""
        return "".join(rules.limit(one, rule, self.team) for one in rule.options if one.name == name)

    # Sessions, weeks, days, athletes

    def session(self) -> str:
        sessions = self.standing.sessions(self.at_path)
        told = [
            Statement(
                of_session(visit),
                at,
                numbers,
                short=session_in_short(visit),
                of=md(visit.session.name),
            )
            for visit, at, numbers in self.standing.visits_of(sessions)
        ]
        return several(told, self.standing.ledgers)

    def weeks(self) -> str:
        block = self.standing.block(self.at_path)
        blocks = (block,) if block is not None else self.standing.blocks
        return self.of_blocks(blocks)

    def of_blocks(self, blocks: tuple[Block, ...]) -> str:
        numbers = [week for one in blocks for week in range(one.first, one.first + one.weeks)]
        told = [Statement(of_week(week), at, alike) for week, at, alike in self.standing.weeks_of(blocks)]
        head = f"{_capital(week_list(numbers))}{self.dates(numbers)}"
        return paragraphs(head, several(told, self.standing.ledgers, len(numbers)), HALF)

    def starts(self) -> str:
        ledger = self.standing.ledgers[0]
        if ledger.programme.starts is None or ledger.ends is None:
            return ""
        weeks = counted_noun(len(ledger.weeks), "week")
        return f"{_day(ledger.programme.starts)}; {weeks} end on {_day(ledger.ends)}."

    def event(self) -> str:
        """The week and day that an event falls on."""
        ledger = self.standing.ledgers[0]
        held = self.at_path.around("event")
        if held is None:
            return ""
        place = (held.entries["event"].value.start, held.entries["event"].value.end)
        for number, event in ledger.events():
            if (event.place.start, event.place.end) == place and event.date is not None:
                week = (number - 1) // 7 + 1
                within = (
                    f"week {week} of {len(ledger.weeks)}"
                    if 1 <= week <= len(ledger.weeks)
                    else "outside the programme"
                )
                return f"{_day(event.date)}: {within}."
        return ""

    def dates(self, weeks: Iterable[int]) -> str:
        """``, 30 November to 20 December 2026``: the days that weeks run from and to."""
        starts = self.standing.ledgers[0].programme.starts
        numbers = [*weeks]
        if starts is None or not numbers:
            return ""
        first, last = starts + timedelta(7 * numbers[0] - 7), starts + timedelta(7 * numbers[-1] - 1)
        return f", {_day(first)} to {_day(last)}"

    def athletes(self) -> str:
        """The athlete whose file is named here."""
        words = self.at_path.words
        for ledger in self.standing.ledgers:
            athlete = ledger.athlete
            if athlete is None or not words or not _is_file(athlete.place.text.name, words):
                continue
            age = f"{plain(athlete.age)} years" if athlete.age is not None else ""
            mass = f"{plain(athlete.body_mass)} kg" if athlete.body_mass is not None else ""
            lifts = [effort.on_file(lift) for lift in athlete.best_lifts]
            spared = [md(one.subject.words) for one in athlete.protect]
            about = ", ".join(md(part) for part in (athlete.level, age, mass) if part)
            return paragraphs(
                f"**{md(athlete.name)}**{f': {about}' if about else ''}",
                f"spares {listed(spared)}" if spared else "",
                bullets(lifts) if lifts else "No best lift on file, so kg and % of 1RM cannot be told.",
            )
        return ""


def _is_file(name: str, words: str) -> bool:
    """Whether a file's path ends as it is written in a programme."""
    return name.replace("\\", "/").endswith(words.rpartition("/")[2])


def _day(day: date) -> str:
    return f"{day.day} {day:%B %Y}"


def _capital(words: str) -> str:
    return f"{words[:1].upper()}{words[1:]}"
