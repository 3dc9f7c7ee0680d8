"""What the words under the pointer mean: an exercise, a load, a muscle, a rule, a key."""

from __future__ import annotations

import re

from ...body import catalogue
from ...body.known import Known
from ...model.naming import line_name
from ...team.waivers import MARK
from ..caret.node_path import node_path_at
from ..caret.readable_review import ReadableReview
from ..caret.schema_description import description_of
from ..documents.answers import Hover
from ..explain import areas, effort, exercises, programme, rules
from ..explain.counts import HALF_NOTE, sets_of_exercises, sets_of_lines
from ..explain.markdown import Statement, md, merged_text, paragraphs

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable

    from ...body.catalogue import Exercise
    from ...counting.set_group import SetGroup
    from ...counting.tally import Visit
    from ...model.sessions import Prescription
    from ...team.settings import Team
    from ..caret.node_path import NodePath
    from ..documents.snapshot import Snapshot

LAST_READABLE = "_As last readable: the text cannot be read just now._"

LINE_PATH = ("sessions", 0, "exercises", 0)
"""Where the schema describes the keys of a line."""

EFFORT_KEYS = ("load", "reps", "rir", "rpe")
TIME_KEYS = ("rest", "tempo", "hold", "every", "for", "distance", "change every", "on", "off", "time cap")

KEYED_BY_AREA = ("loads", "weekly limits", "groups", "credit")
"""Keys under which every key names an area."""

NAMING_KEYS = ("best lifts", "our names")
"""Keys under which every key names an exercise."""

AREA_KEYS = ("focus", "priority", "not trained", "maintain", "area", "weekly sets of", "without limit")
"""Keys whose values name areas."""

ACTION_KEYS = ("weekly sets of", "in", "actions", "assists")
"""Keys whose values may name a joint action."""


def hover(snapshot: Snapshot, offset: int) -> Hover | None:
    """What stands at an offset of the document, in Markdown; None where there is nothing to say."""
    readable = ReadableReview(snapshot)
    waived = _waived_rule(snapshot, readable, offset)
    if waived is not None:
        return waived
    path = readable.path_at(offset)
    if path is None or not path.part:
        return None
    span = readable.span_in_document(path.start, path.end)
    if span is None:
        return None
    markdown = _Explanation(snapshot, readable, path).markdown()
    if not markdown:
        return None
    return Hover(*span, markdown if readable.is_current else paragraphs(markdown, LAST_READABLE))


_WAIVER = re.compile(rf"(?<!\S)#[ \t]*{MARK}[ \t]*waive[ \t]+([^\s,]+)")


def _waived_rule(snapshot: Snapshot, readable: ReadableReview, offset: int) -> Hover | None:
    """The rule that a comment at an offset waives."""
    line, column = snapshot.text.position(offset)
    found = _WAIVER.search(snapshot.text.whole_line(line))
    if found is None or not found.start() <= column - 1 <= found.end():
        return None
    start = offset - column + 1
    root = readable.reading.root
    if readable.is_current and root is not None and node_path_at(root, start + found.start() + 1).part:
        return None  # it stands inside a value
    page = _rule_in_short(found[1], snapshot.review.team)
    return Hover(start + found.start(), start + found.end(), page)


def _rule_in_short(name: str, team: Team) -> str:
    """The rule of a name in short, or the names nearest to it."""
    rule = rules.rules_of(team).get(name)
    return rules.rule_in_short(rule, team) if rule else rules.rule_markdown(name, team)


class _Explanation:
    """What there is to say of one path."""

    def __init__(self, snapshot: Snapshot, readable: ReadableReview, path: NodePath) -> None:
        self.workspace = snapshot.workspace
        self.path = path
        self.index = readable.index
        self.ledgers = readable.index.ledgers
        self.kind = readable.review.kind
        self.team = readable.review.team
        self.known: Known = readable.review.exercises
        if self.kind == "exercises":
            self.known = Known(self.workspace.exercises_at(snapshot.review.file).exercises)

    def markdown(self) -> str:
        """The explanation; the schema's words on the key where nothing better is known."""
        if self.path.part == "merged":
            return self.of_merged()
        found = self.of_key() if self.path.part == "key" else self.of_value()
        return found or self.of_schema()

    def of_schema(self) -> str:
        """What the schema says of the key; for an item of a list, of the list's key."""
        key_path = self.path.key_path
        while key_path and isinstance(key_path[-1], int):
            key_path = key_path[:-1]
        if self.kind == "programme" and key_path[:1] == ("shared",):
            key_path = (*LINE_PATH, self.path.key)  # what stands there is mostly meant for lines
        words = description_of(self.kind, self.path.nodes[0].plain, key_path)
        return f"**{md(str(key_path[-1]))}**: {md(words)}" if words else ""

    def of_merged(self) -> str:
        """What ``<<`` brings in here."""
        span = (self.path.start, self.path.end)
        entries = getattr(self.path.node, "entries", {})
        brought = [
            f"{md(key)}: {md(str(entry.value.plain))}"
            for key, entry in entries.items()
            if entry.merged and (entry.merged[0].start, entry.merged[0].end) == span
        ]
        return f"Brings in {', '.join(brought)}." if brought else ""

    # Keys

    def of_key(self) -> str:
        """A key that is itself a name or a week."""
        path = self.path
        if path.weeks:
            return "; ".join(filter(None, (self.weeks_of_key(*one) for one in path.weeks)))
        if path.parent_key in NAMING_KEYS:
            return self.exercise(path.key)
        if path.parent_key in KEYED_BY_AREA:
            return self.area(path.key)
        if path.parent_key == "rules" and self.kind == "team":
            return self.rule(path.key)
        if path.keys[-3:-2] == ("rules",) and self.kind == "team":
            return self.limit(path.parent_key, path.key)
        return ""

    def weeks_of_key(self, first: int, last: int) -> str:
        """The weeks of its block that a key stands for."""
        block = self.index.block(self.path)
        if block is None:
            return ""
        return programme.weeks_in_words(block, first, last, self.ledgers[0].programme.starts)

    # Values

    def of_value(self) -> str:
        """A value that names something, else one of a programme."""
        path = self.path
        key, text = path.key, path.text
        if key in ("exercise", "swap", "or") or path.parent_key == "our names":
            return self.exercise(text) or self.of_alias()
        if self.kind == "exercises" and key in ("name", "also", "easier", "harder"):
            is_faulty = key in ("name", "also") and self.known.exercise(text) is None
            return "" if is_faulty else self.exercise(text)  # a finding says what is wrong with it
        if key in ACTION_KEYS and (page := areas.action_page(text)):
            return page
        if key == "rule" and path.parent_key in ("waivers", "team rules"):
            return self.rule(text)
        if key in AREA_KEYS and not (key == "area" and catalogue.area(text) is None):
            return self.area_or_exercise(text)
        if path.parent_key in ("weekly limits", "groups"):
            return self.area(key)
        if path.keys[-3:-2] == ("best lifts",):
            return self.best_lift(path.parent_key)
        return self.of_programme(key)

    def of_programme(self, key: str) -> str:
        """A value that only a counted programme explains."""
        explain: dict[str, Callable[[], str]] = {
            **dict.fromkeys(EFFORT_KEYS, self.effort),
            **dict.fromkeys(TIME_KEYS, self.time),
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
            "athlete": self.athlete,
            "athletes": self.athlete,
        }
        if self.kind != "programme" or not self.ledgers:
            return ""
        if self.path.keys[-2:] in (("blocks", "name"), ("blocks", "block")):
            key = "weeks"
        found = explain[key]() if key in explain else ""
        return found or self.of_alias()

    def of_alias(self) -> str:
        """For an alias of a whole line or session: what it stands for."""
        node = self.path.node
        if node.defined is None or self.path.part != "value":
            return ""
        if self.index.sessions(self.path) and "session" in getattr(node, "entries", {}):
            return self.session()
        named = getattr(node, "entries", {}).get("exercise")
        return self.exercise(str(named.value.plain)) if named is not None else ""

    # Exercises and their lines

    def exercise(self, name: str) -> str:
        """An exercise, and how its sets count here."""
        if not name:
            return ""
        reading = self.known.reading(name)
        if reading is None:
            return exercises.unknown_exercise(name, self.known)
        return paragraphs(
            exercises.exercise_in_short(reading, name),
            self.counted(reading.exercise),
            exercises.exercise_in_detail(reading),
        )

    def counted(self, exercise: Exercise) -> str:
        """How the sets of an exercise count; for an alternate, how it differs from the line's exercise."""
        if not self.ledgers:
            return ""
        if self.path.key == "or":
            lines = self.index.lines(self.path)
            replaced = [self.known.exercise(term.words) for line in lines[:1] for term in line.names()[:1]]
            return "".join(exercises.compared(exercise, one) for one in replaced if one is not None)
        lines = self.lines_of(exercise)
        return sets_of_lines(self.ledgers, lines, exercise) if lines else ""

    def lines_of(self, exercise: Exercise) -> list[Prescription]:
        """The lines that the name at the path belongs to; outside lines, all lines with the exercise."""
        node = self.path.node
        entries = self.index.entries("exercise", node.start, node.end)
        if entries:
            return list(dict.fromkeys(entry.prescription for entry in entries))
        lines = self.index.lines(self.path)
        if lines:
            return lines
        by_name = [entry.prescription for entry in self.index.weeks if entry.exercise is exercise]
        return list(dict.fromkeys(by_name))

    def entries(self) -> list[SetGroup]:
        """The groups of sets that the value at the path sets out."""
        node = self.path.node
        return self.index.entries(self.path.key, node.start, node.end)

    def effort(self) -> str:
        """What a load, repetitions or reserve mean."""
        steps = effort.LoadSteps(self.workspace, self.team)
        return self.of_entries(self.entries(), lambda entry: effort.effort_in_words(entry, steps))

    def time(self) -> str:
        """What a rest, a tempo or another time means for its line."""
        lines = self.index.lines(self.path)
        entries = self.entries() or [entry for entry in self.index.weeks if entry.prescription in lines]
        entries = entries or self.by_clock()
        phases = entries[0].work.tempo if entries and self.path.key == "tempo" else None
        head = f"{programme.capitalised(effort.tempo_in_words(phases))}." if phases is not None else ""
        return paragraphs(head, self.of_entries(entries, self.time_of))

    def by_clock(self) -> list[SetGroup]:
        """The intervals, or the first line of the circuit or complex, whose clock the value is."""
        node = self.path.node
        wholes: dict[object, SetGroup] = {}
        for entry in self.index.weeks:
            line = entry.prescription
            at = [line.paired.place] if line.paired else list(entry.work.places.values()) if line.kind else []
            if any(one.start <= node.start and node.end <= one.end for one in at):
                wholes.setdefault(line.paired or line, entry)
        return list(wholes.values())

    def time_of(self, entry: SetGroup) -> str:
        """How long a group of sets takes."""
        visit = self.visit_of(entry)
        return effort.time_in_words(entry, visit) if visit else ""

    def visit_of(self, entry: SetGroup) -> Visit | None:
        """The first visit in which a group of sets is done."""
        week = self.index.ledger_of(entry).weeks[self.index.weeks[entry][0] - 1]
        return next((visit for visit, one in week.entries() if one is entry), None)

    def of_entries(self, entries: Iterable[SetGroup], explain: Callable[[SetGroup], str]) -> str:
        """The explanations of some groups of sets, merged."""
        statements = [
            Statement(
                explain(entry),
                self.ledgers.index(self.index.ledger_of(entry)),
                self.index.weeks[entry],
                about=md(line_name(entry.prescription)),
            )
            for entry in entries
        ]
        return merged_text([one for one in statements if one.words], self.ledgers)

    def sets(self) -> str:
        """How a number of sets counts."""
        entries = self.entries()
        lines = list(dict.fromkeys(entry.prescription for entry in entries))
        done = list(dict.fromkeys(entry.exercise for entry in entries if entry.exercise is not None))
        if not done:
            return ""
        if len(done) == 1:
            of_athletes = {self.index.ledger_of(entry) for entry in entries}
            return paragraphs(sets_of_lines(self.ledgers, lines, done[0], of_athletes), HALF_NOTE)
        return paragraphs(sets_of_exercises(self.ledgers, lines, done), HALF_NOTE)

    def best_lift(self, name: str) -> str:
        """What a best lift for several repetitions stands for."""
        written = self.path.nodes[-2].plain
        exercise = self.known.exercise(name)
        if exercise is None:
            return ""
        return effort.one_repetition_maximum(exercise.name, written.get("reps"), written.get("load"))

    # Areas and rules

    def area_or_exercise(self, text: str) -> str:
        """A value of the focus or the priorities, which may name an area or an exercise."""
        if text and catalogue.area(text) is None and self.known.exercise(text) is not None:
            return self.exercise(text)
        return self.area(text)

    def area(self, name: str) -> str:
        """An area, with its sets in each week."""
        return areas.area_page(name, self.ledgers, self.workspace, self.team) if name else ""

    def rule(self, name: str) -> str:
        """The rule of a name."""
        return _rule_in_short(name, self.team)

    def limit(self, rule_name: str, name: str) -> str:
        """A limit of a rule."""
        rule = rules.rules_of(self.team).get(rule_name)
        if rule is None:
            return ""
        return "".join(rules.limit(one, rule, self.team) for one in rule.options if one.name == name)

    # Sessions, weeks, days, athletes

    def session(self) -> str:
        """The session at the path."""
        visits = self.index.visits_of(self.index.sessions(self.path))
        return programme.session_page(visits, self.ledgers)

    def weeks(self) -> str:
        """The weeks of the block at the path, or of the whole programme."""
        block = self.index.block(self.path)
        blocks = (block,) if block is not None else self.index.blocks
        return programme.weeks_page(blocks, self.index.weeks_of(blocks), self.ledgers)

    def starts(self) -> str:
        """The start and the end of the programme."""
        return programme.start_and_end(self.ledgers[0])

    def event(self) -> str:
        """The event at the path."""
        mapping = self.path.enclosing("event")
        if mapping is None:
            return ""
        name = mapping.entries["event"].value
        return programme.event_in_words(self.ledgers[0], name.start, name.end)

    def athlete(self) -> str:
        """The athlete whose file is named here."""
        file_name = self.path.text.rpartition("/")[2]
        for ledger in self.ledgers:
            athlete = ledger.athlete
            if athlete is not None and self.path.text and _is_named(athlete.place.text.name, file_name):
                return programme.athlete_page(athlete)
        return ""


def _is_named(path: str, file_name: str) -> bool:
    """Whether a path ends in the name of a file."""
    return path.replace("\\", "/").endswith(file_name)
