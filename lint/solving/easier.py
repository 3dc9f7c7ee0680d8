"""Steps that ease a week: each line, or all at once, as the programme's other easy weeks are."""

from __future__ import annotations

import re
from itertools import pairwise

from ..findings.finding import Edit
from ..model.week_edits import runs
from ..model.weeks import weeks as weeks_of
from ..remedies.some_weeks import own_map, value_in
from ..syntax.additions import in_braces, key_added, words_added
from ..syntax.enclosing import way_to
from ..syntax.numbers import NUMBER
from ..syntax.tree import Mapping, Scalar, Sequence
from ..wording.words import listed, plain
from .lighter import beside, rounded, single
from .steps import PRICE, EditStep, are_apart, spans_of_all

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..counting.set_group import SetGroup
    from ..counting.week import Week
    from ..syntax.tree import Node
    from .judge import Seen
    from .lines import Line, Plan

FEWER = 0.5
"""The share of the sets that stays in an easy week, where the programme has no other (common practice, no
source)."""

EASY = {"rir": 4.0, "rpe": 6.0}
"""What is asked of the sets that are left, in the words of the programme (common practice, no source)."""

POINTS, HEAVY, MORE_POINTS = 10, 80, 15
"""Points of % by which loads are lowered, and by how many where some are above ``HEAVY`` (common practice, no
source)."""


def eased(plan: Plan, seen: Seen, family: str) -> Iterator[EditStep]:
    """Weeks that are to be easier, cut as the programme's other easy weeks are; else by half the sets.

    They are those that a finding on progression means and that are there to be easier; of a long run of
    weeks, the last one that may be hard. All lines change in one step: with sets, loads and effort, and with
    sets alone.
    """
    numbers = sorted(seen.finding.weeks)
    if family != "progression" or not numbers or plan.kept:
        return
    if seen.unit == "weeks" and seen.over and seen.wanted:
        numbers = numbers[int(seen.wanted) - 1 : int(seen.wanted)]
    elif not all(week.is_deload or week.first_back or week.is_peak for week in _weeks(plan, numbers)):
        return
    for later, number in enumerate(reversed(numbers)):
        pattern = _pattern(plan, number, set(numbers))
        for keys in (("sets",),) if _is_peak(plan, number) else (("sets", "load", "rir", "rpe"), ("sets",)):
            yield from _eased(plan, number, pattern, keys, later)
        yield from _for_all(plan, number, pattern, later)


def _is_peak(plan: Plan, number: int) -> bool:
    """Whether a week leads up to an event: there the work is cut, while its load and effort stay."""
    return any(week.is_peak and not week.is_deload for week in _weeks(plan, [number]))


def _weeks(plan: Plan, numbers: Iterable[int]) -> list[Week]:
    return [week for week in plan.ledgers[0].weeks if week.number in set(numbers)]


def _pattern(plan: Plan, number: int, meant: set[int]) -> tuple[Week, Week] | None:
    """Another easy week, and the typical one before it: the nearest to the week."""
    weeks = plan.ledgers[0].weeks
    pairs = [
        (easy, before)
        for before, easy in pairwise(weeks)
        if easy.is_deload and easy.number not in meant and not before.is_deload
    ]
    return min(pairs, key=lambda pair: (abs(pair[0].number - number), pair[0].number), default=None)


def _eased(
    plan: Plan, number: int, pattern: tuple[Week, Week] | None, keys: tuple[str, ...], later: int
) -> Iterator[EditStep]:
    edits: list[Edit] = []
    touches: list[int] = []
    for line in plan.lines:
        if number not in line.held or not plan.may_touch(line):
            continue
        own = _of_line(line, number, pattern, keys)
        if own:
            edits += own
            touches.append(line.start)
    spans = spans_of_all([*edits, *_marked(plan, number)], plan.line_end) if edits else ()
    if not spans or not are_apart(spans):
        return
    how = f"as week {pattern[0].number} is" if pattern is not None else "with about half the sets"
    what = "" if len(keys) > 1 else ": sets alone"
    cost = PRICE["ease"] + (0 if len(keys) > 1 else 4) + later
    yield EditStep("ease", spans, f"week {number} made easier {how}{what}", touches, (cost, 0, 0))


def _root(plan: Plan) -> Mapping | None:
    steps = way_to(plan.lines[0].line.place) if plan.lines else []
    return steps[0].group if steps and isinstance(steps[0].group, Mapping) else None


def _marked(plan: Plan, number: int) -> Iterator[Edit]:
    """What says that a week is meant to be easier, where nothing does so yet."""
    root, week = _root(plan), plan.ledgers[0].weeks[number - 1]
    if (
        root is None
        or week.is_deload
        or week.is_peak
        or "weeks" not in root.entries
        or "blocks" in root.entries
    ):
        return
    entry = root.entries.get("deload")
    if entry is None:
        edit = key_added(root, "weeks", f"deload: [{number}]", "")
        if edit is not None:
            yield edit
    elif isinstance(entry.value, Sequence) and entry.value.items and in_braces(entry.value):
        yield from words_added(entry.value, len(entry.value.items) - 1, [str(number)], "")


def _easy_words(plan: Plan, number: int) -> tuple[str, str]:
    """What holds for all lines in an easy week, as keys; and the same said."""
    groups = [one for ledger in plan.ledgers for _, one in ledger.weeks[number - 1].entries()]
    loads = [
        one.percent.high
        for one in groups
        if one.work.load and one.work.load.kind == "percent" and one.percent
    ]
    keys, said = ["sets: half"], ["half the sets"]
    if _is_peak(plan, number):
        return "{sets: half}", "half the sets"
    if loads:
        points = MORE_POINTS if max(loads) > HEAVY else POINTS
        keys.append(f"load: -{points} points")
        said.append(f"loads {points} points lower")
    for key in EASY:
        words = _effort(groups, key)
        if words:
            keys.append(f"{key}: {words}")
            said.append(f"{words} in reserve" if key == "rir" else f"RPE {words}")
            break
    return f"{{{', '.join(keys)}}}", listed(said)


def _effort(groups: Iterable[SetGroup], key: str) -> str:
    """An easy effort in reserve or RPE, never harder than what any line has; empty where none is written."""
    held = [value for one in groups if (value := getattr(one.work, key)) is not None]
    if not held:
        return ""
    easy = EASY[key]
    return plain(
        max(easy, *(one.high for one in held)) if key == "rir" else min(easy, *(one.low for one in held))
    )


def _own_values(plan: Plan, number: int) -> Iterator[Edit]:
    """What lines say of their own for an easy week, eased too: it goes before what holds for all."""
    for line in plan.lines:
        if number not in line.held or not plan.may_touch(line):
            continue
        (own,) = line.in_block([number])
        for key in ("load", *EASY):
            entry = line.node.entries.get(key)
            held = own_map(entry.value) if entry is not None else None
            alone = next((one for one, weeks in held.weeks.items() if weeks == [own]), None) if held else None
            words = held.group.entries[alone].value if held is not None and alone is not None else None
            was = single(words.text) if isinstance(words, Scalar) else None
            if held is None or was is None or not isinstance(words, Scalar):
                continue
            new = _effort(line.held[number], key) if key in EASY else ""
            if key == "load":
                new = NUMBER.sub(
                    plain(rounded(was * (100 - POINTS) / 100, words.text, beside(held))), words.text
                )
            elif (float(new) <= was) is (key == "rir"):
                continue
            yield from value_in(line.node, key, [own], line.in_block(line.held), new) or ()


def _for_all(plan: Plan, number: int, pattern: tuple[Week, Week] | None, later: int) -> Iterator[EditStep]:
    """The week under ``everything``: with what another easy week has there, else with half the sets.

    ``later`` is how many of the weeks that are meant come after it.
    """
    root = _root(plan)
    entry = root.entries.get("everything") if root is not None else None
    if root is None or "weeks" not in root.entries:
        return
    dearer = 0 if pattern is None else 12
    words, how = _easy_words(plan, number)
    if entry is None:
        edit = key_added(root, "weeks", f"everything: {{{number}: {words}}}", "")
    elif entry.merged or not isinstance(entry.value, Mapping) or entry.value.defined is not None:
        return
    else:
        like = _key_of(entry.value, pattern[0].number) if pattern is not None else None
        own = _key_of(entry.value, number)
        if own is None and like is not None and pattern is not None:
            node = entry.value.entries[like].key
            edit = Edit(node.place, runs({*_weeks_in(like), number}), "", certain=False)
            how, dearer = f"what week {pattern[0].number} has", 0
        elif own is None:
            edit = key_added(entry.value, next(reversed(entry.value.entries)), f"{number}: {words}", "")
        else:
            edit = _halved(entry.value.entries[own].value) if _weeks_in(own) == {number} else None
            how = "half the sets"
    marked = next(_marked(plan, number), None)
    if edit is None or (marked is not None and not edit.words):
        return
    both = [edit] if marked is None else [marked, edit]
    if marked is not None and marked.place.key == edit.place.key:  # one behind the other
        both = [Edit(edit.place, marked.words + edit.words, "", certain=False)]
    values = [] if _is_peak(plan, number) else _own_values(plan, number)
    spans = spans_of_all([*both, *values], plan.line_end)
    if are_apart(spans):
        label = f"week {number} for all lines: {how}"
        yield EditStep("ease", spans, label, [root.start], (PRICE["ease"] - 2 + dearer + later, 0, 0))


def _weeks_in(key: str) -> set[int]:
    return {week for first, last in weeks_of(key) for week in range(first, last + 1)}


def _key_of(group: Mapping, number: int) -> str | None:
    return next((key for key in group.entries if number in _weeks_in(key)), None)


def _halved(inner: Node) -> Edit | None:
    """Half the sets beside what holds for all lines in a week already; None where sets stand there."""
    if not isinstance(inner, Mapping) or not inner.entries or "sets" in inner.entries:
        return None
    return key_added(inner, next(reversed(inner.entries)), "sets: half", "")


def _of_line(line: Line, number: int, pattern: tuple[Week, Week] | None, keys: tuple[str, ...]) -> list[Edit]:
    easy = line.held.get(pattern[0].number) if pattern is not None else None
    before = line.held.get(pattern[1].number) if pattern is not None else None
    now = line.held[number]
    edits: list[Edit] = []
    if len(now) != 1:
        return edits
    shares = _shares(easy[0], before[0]) if easy and before else {"sets": FEWER} if pattern is None else {}
    for key in keys:
        entry = line.node.entries.get(key)
        words = _cut(now[0], key, shares, beside(own_map(entry.value)) if entry is not None else [])
        if words is None or key not in line.node.entries:
            continue
        found = value_in(line.node, key, line.in_block([number]), line.in_block(line.held), words)
        edits += found or []
    return edits


def _shares(easy: SetGroup, before: SetGroup) -> dict[str, float]:
    """What an easy week keeps of sets and load, and how much more is left in reserve."""
    found: dict[str, float] = {}
    if before.sets.high:
        found["sets"] = easy.sets.high / before.sets.high
    for unit, was in before.measured.items():
        if was and unit in easy.measured:
            found["load"] = easy.measured[unit] / was
            break
    for key in ("rir", "rpe"):
        one, other = getattr(easy.work, key), getattr(before.work, key)
        if one is not None and other is not None:
            found[key] = one.high - other.high
    return found


def _cut(now: SetGroup, key: str, shares: dict[str, float], around: list[float]) -> str | None:
    """The words of a value in an easy week; None where it stays, or is no plain number."""
    share, place = shares.get(key), now.work.places.get(key)
    if share is None or place is None:
        return None
    if key == "sets":
        least = max(round(now.sets.high * share), 1)
        return plain(least) if least < now.sets.high and place.excerpt.isdigit() else None
    if key == "load":
        was = single(place.excerpt)
        less = None if was is None or share >= 1 else rounded(was * share, place.excerpt, around)
        if was is None or not less or less >= was or place.excerpt.startswith("2"):
            return None
        return NUMBER.sub(plain(less), place.excerpt, count=1)
    if not re.fullmatch(r"[0-9]+(?:\.5)?", place.excerpt):
        return None
    number = float(place.excerpt) + share
    easier = share > 0 if key == "rir" else share < 0
    return plain(number) if easier and 1 <= number <= 10 else None
