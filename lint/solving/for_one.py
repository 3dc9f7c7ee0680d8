"""Steps for some athletes of a squad: an exercise swapped or left out under ``adjust``."""

from __future__ import annotations

from ..body.restrictions import read
from ..counting.effort import FAST_KINDS
from ..counting.suggestions import Suits, substitutes
from ..findings.finding import Edit
from ..model.week_edits import runs
from ..model.weeks import weeks as weeks_of
from ..remedies.some_weeks import within_braces
from ..syntax.additions import key_added, words_added
from ..syntax.enclosing import way_to
from ..syntax.tree import Mapping, Scalar, Sequence
from ..wording.words import listed, week_list
from .offered import gentler
from .steps import PRICE, EditStep, are_apart, spans_of_all

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..body.catalogue import Exercise
    from ..counting.ledger import Ledger
    from ..syntax.tree import Node
    from .judge import Seen
    from .lines import Line, Plan

    Meant = dict[str, tuple[Line, set[int]]]
    """By the name of an exercise as written: a line with it, and the weeks in which it does not suit."""


def for_one(plan: Plan, seen: Seen) -> Iterator[EditStep]:
    """What does not suit some athletes of a squad, swapped or left out for them alone."""
    names = seen.finding.athletes
    if not names or len(names) >= len(plan.ledgers):
        return
    found = [line for one in seen.levers if (line := plan.line_at(one.offset)) is not None]
    lines = {line.start: line for line in found if not plan.is_kept(line.name, line.session.name)}
    for kind in ("swap", "drop"):
        edits: list[Edit] = []
        said: list[str] = []
        touches: list[int] = []
        for ledger in plan.ledgers:
            member = _written(plan, ledger)
            if ledger.athlete is None or ledger.athlete.name not in names or member is None:
                continue
            meant = _unsuited(ledger, list(lines.values()), seen.finding.weeks)
            own = _adjusted(plan, member, ledger, meant, kind, said)
            if own:
                edits += own
                touches.append(member.start)
        spans = spans_of_all(edits, plan.line_end)
        if spans and are_apart(spans) and len(touches) == len(names):
            label = f"for {listed(list(names))}: {'; '.join(said)}"
            cost = (PRICE[kind] + len(said) - 1, 0, 0)
            yield EditStep(kind, spans, label, touches, cost, adds_work=kind == "swap")


def _written(plan: Plan, ledger: Ledger) -> Node | None:
    """The item of an athlete in the list of athletes; None where the list is not written there."""
    steps = way_to(plan.lines[0].line.place) if plan.lines else []
    root = steps[0].group if steps else None
    entry = root.entries.get("athletes") if isinstance(root, Mapping) else None
    items = entry.value.items if entry is not None and isinstance(entry.value, Sequence) else []
    number = plan.ledgers.index(ledger)
    return items[number] if len(items) == len(plan.ledgers) and items[number].defined is None else None


def _unsuited(ledger: Ledger, lines: list[Line], weeks: tuple[int, ...]) -> Meant:
    """The exercises of some lines that do not suit an athlete, in the weeks of a finding."""
    suits = Suits(ledger.header)
    spared = [read(one.subject.words, ledger.header.known) for one in ledger.header.spared()]
    found: Meant = {}
    for line in lines:
        for week, groups in line.held.items():
            for entry in groups:
                exercise = entry.exercise
                if exercise is None or (weeks and week not in weeks):
                    continue
                if suits.obstacle(exercise) or any(one.forbids(exercise) for one in spared):
                    found.setdefault(entry.name, (line, set()))[1].add(week)
    return found


def _adjusted(
    plan: Plan, member: Node, ledger: Ledger, meant: Meant, kind: str, said: list[str]
) -> list[Edit]:
    """Edits of what is adjusted for an athlete: a swap of the coach's goes on, else a new one is written."""
    edits: list[Edit] = []
    new: list[str] = []
    for name, (line, weeks) in meant.items():
        held = _own_swap(member, name) if kind == "swap" else None
        if held is not None:
            entry = held.entries["in weeks"]
            block = line.session.block
            known = _own_weeks(member, name)
            words = runs(known | weeks) if set(line.held) - known - weeks else ""
            place = entry.value.place
            to = words or runs(range(block.first, block.first + block.weeks))
            edits.append(Edit(place, to, "", certain=False))
            said.append(f"{_word(held, 'swap')} in place of {name} in {week_list(sorted(known | weeks))}")
            continue
        entry_of = next(one for groups in line.held.values() for one in groups if one.name == name)
        others = _instead(plan, ledger, entry_of.exercise, line) if entry_of.exercise else []
        known = _own_weeks(member, name)
        weeks = weeks - known
        only = f", in weeks: {runs(weeks)}" if weeks < set(line.held) else ""
        if kind == "swap" and others:
            new.append(f"{{exercise: {within_braces(name)}{only}, swap: {others[0]}}}")
            said.append(f"{others[0]} in place of {name}")
        else:
            new.append(f"{{exercise: {within_braces(name)}{only}, leave out: true}}")
            said.append(f"{name} left out")
    return [*edits, *_put_in(member, new)] if not new or _put_in(member, new) else []


def _instead(plan: Plan, ledger: Ledger, exercise: Exercise, line: Line) -> list[str]:
    """The name of what an athlete may do in place of an exercise, if anything suits."""
    if plan.is_spared(line) and exercise.kind not in FAST_KINDS:
        there = [other for other in plan.lines if other.session is line.session]
        return [one.name for one in gentler(plan, exercise) if not any(other.does(one) for other in there)][
            :1
        ]
    return substitutes(ledger.header, exercise, 1)


def _put_in(member: Node, new: list[str]) -> list[Edit]:
    """Edits that put adjustments behind those of an athlete, or are the first of them."""
    if not new:
        return []
    if isinstance(member, Scalar) or (isinstance(member, Mapping) and "athlete" not in member.entries):
        words = f"{{athlete: {member.source.content[member.start : member.end]}, adjust: [{', '.join(new)}]}}"
        return [Edit(member.place, words, "", certain=False)]
    if not isinstance(member, Mapping):
        return []
    entry = member.entries.get("adjust")
    if entry is None:
        last = next(reversed(member.entries), "")
        edit = key_added(member, last, f"adjust: [{', '.join(new)}]", "") if last else None
        return [] if edit is None else [edit]
    if entry.merged or not isinstance(entry.value, Sequence) or not entry.value.items:
        return []
    return list(words_added(entry.value, len(entry.value.items) - 1, new, ""))


def _own_swap(member: Node, name: str) -> Mapping | None:
    """The coach's own swap of an exercise in some weeks for an athlete; None where there is none."""
    entry = member.entries.get("adjust") if isinstance(member, Mapping) else None
    for one in entry.value.items if entry is not None and isinstance(entry.value, Sequence) else []:
        if not isinstance(one, Mapping) or one.defined is not None or _word(one, "exercise") != name:
            continue
        if "swap" in one.entries and "in weeks" in one.entries:
            return one
    return None


def _own_weeks(member: Node, name: str) -> set[int]:
    """The weeks in which the coach swaps an exercise for an athlete already."""
    held = _own_swap(member, name)
    if held is None:
        return set()
    spans = weeks_of(str(held.entries["in weeks"].value.plain))
    return {week for first, last in spans for week in range(first, last + 1)}


def _word(group: Mapping, key: str) -> str:
    value = group.entries[key].value if key in group.entries else None
    return value.text if isinstance(value, Scalar) else ""
