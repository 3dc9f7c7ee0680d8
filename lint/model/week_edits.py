"""Edits of values by week that do not fit their weeks: filled, parted, stretched or cut."""

from __future__ import annotations

from ..findings.edits import in_one
from ..findings.finding import Edit
from ..syntax.additions import in_braces
from ..syntax.enclosing import way_to
from ..syntax.removals import removed
from ..syntax.rewrites import dropped, one_of
from ..syntax.tree import Mapping
from ..wording.words import week_list
from .weeks import weeks as weeks_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator

    from ..text.places import Place

    ByKey = dict[str, list[int]]
    """The weeks that each key of a map stands for."""


class WeekMap:
    """A map of values by week, where it is written and nothing else uses it."""

    def __init__(self, group: Mapping) -> None:
        self.group = group
        self.weeks: ByKey = {
            key: [week for first, last in weeks_of(key) for week in range(first, last + 1)]
            for key in group.entries
        }

    @property
    def last(self) -> int:
        """The last week that it has a value for."""
        return max((week for several in self.weeks.values() for week in several), default=0)

    def with_weeks(self, wanted: ByKey, label: str) -> Edit | None:
        """The map with other weeks for its keys; a key without any is taken out with its value."""
        edits: list[Edit | None] = []
        for key, several in wanted.items():
            if several != self.weeks[key]:
                edits.append(self._renamed(key, several, label) if several else self._without(key, label))
        if None in edits:
            return None
        return in_one(label, [edit for edit in edits if edit is not None])

    def _renamed(self, key: str, several: list[int], label: str) -> Edit:
        node = self.group.entries[key].key
        return Edit(node.place, f"{node.style}{runs(several)}{node.style}", label, certain=False)

    def _without(self, key: str, label: str) -> Edit | None:
        entry = self.group.entries[key]
        place = self.group.source.place(entry.key.start, max(entry.value.end, entry.key.end))
        return removed(place, label, braced=in_braces(self.group))


def runs(several: Iterable[int]) -> str:
    """``1-3+5`` for weeks 1, 2, 3 and 5."""
    found: list[list[int]] = []
    for week in sorted(set(several)):
        if found and week == found[-1][1] + 1:
            found[-1][1] = week
        else:
            found.append([week, week])
    return "+".join(str(first) if first == last else f"{first}-{last}" for first, last in found)


def map_at(place: Place) -> WeekMap | None:
    """The map that stands at a place, or that holds it; None where it is used elsewhere, too."""
    for step in reversed(way_to(place)):
        for node in (step.node, step.group):
            if isinstance(node, Mapping) and any(map(weeks_of, node.entries)):
                is_own = node.defined is None and not any(one.merged for one in node.entries.values())
                return WeekMap(node) if is_own else None
    return None


# The choices


def filled(place: Place, left_out: list[int]) -> Iterator[Edit]:
    """Gives weeks without a value that of the week before, or of the week after; or stretches the map."""
    held = map_at(place)
    if held is None:
        return
    yield from each_once(
        _filled(held, left_out, -1), _filled(held, left_out, 1), stretched(held, max(left_out), held.last)
    )


def _filled(held: WeekMap, left_out: list[int], side: int) -> Edit | None:
    """Each gap filled from one side, where that has none from the other."""
    wanted = {key: list(several) for key, several in held.weeks.items()}
    given: list[str] = []
    for gap in _gaps(left_out):
        for week in (gap[0] - 1, gap[-1] + 1)[::-side]:
            key = next((key for key, several in held.weeks.items() if week in several), None)
            if key is not None:
                wanted[key] += gap
                given.append(f"{week_list(gap)} like week {week}")
                break
        else:
            return None
    return held.with_weeks({key: sorted(several) for key, several in wanted.items()}, "; ".join(given))


def _gaps(weeks: list[int]) -> list[list[int]]:
    found: list[list[int]] = []
    for week in weeks:
        if found and week == found[-1][-1] + 1:
            found[-1].append(week)
        else:
            found.append([week])
    return found


def parted(place: Place, weeks: list[int], first: str, second: str) -> Iterator[Edit]:
    """Leaves weeks that stand under two keys to one of them."""
    held = map_at(place)
    if held is None or not {first, second} <= held.weeks.keys():
        return
    for kept, other in ((first, second), (second, first)):
        left = [week for week in held.weeks[other] if week not in weeks]
        edit = held.with_weeks({other: left}, f"leave {week_list(weeks)} to {kept}")
        if edit is not None:
            yield edit


def fitted(place: Place, length: int) -> Iterator[Edit]:
    """Cuts a map that goes past the last week, presses it together, or makes the programme longer."""
    held = map_at(place)
    if held is None:
        return
    yield from each_once(cut(held, length), stretched(held, length, held.last))
    yield from lengthened(place, held.last)


def cut(held: WeekMap, length: int) -> Edit | None:
    """The map without what goes past the last week."""
    wanted = {key: [week for week in several if week <= length] for key, several in held.weeks.items()}
    return held.with_weeks(wanted, f"cut it after week {length}") if any(wanted.values()) else None


def stretched(held: WeekMap, length: int, last: int) -> Edit | None:
    """The map spread evenly over another number of weeks, each value for a week at least."""
    keys = [key for key, several in held.weeks.items() if several]
    flat = [week for key in keys for week in held.weeks[key]]
    if flat != list(range(1, last + 1)) or length < len(keys):
        return None
    wanted: ByKey = {}
    done = 0
    for number, key in enumerate(keys, start=1):
        end = max(round(held.weeks[key][-1] * length / last), done + 1)
        end = min(end, length - (len(keys) - number))
        wanted[key] = list(range(done + 1, end + 1))
        done = end
    if any(held.weeks[key][-1] - held.weeks[key][0] + 1 != len(held.weeks[key]) for key in keys):
        return None
    return held.with_weeks(wanted, f"spread it over {length} weeks")


def lengthened(place: Place, length: int) -> Iterator[Edit]:
    """Writes the number of weeks of the block or programme that holds a place."""
    for step in reversed(way_to(place)):
        group = step.group
        if isinstance(group, Mapping) and "sessions" in group.entries and "weeks" in group.entries:
            yield Edit(
                group.entries["weeks"].value.place, str(length), f"write weeks: {length}", certain=False
            )
            return


def joined(place: Place, other: Place) -> Iterator[Edit]:
    """Puts the weeks of two values that are the same under the first."""
    held = map_at(place)
    keys = [] if held is None else [way_to(one)[-1].key for one in (place, other) if way_to(one)]
    if held is not None and len(keys) == 2 and set(keys) <= held.weeks.keys():
        first, second = map(str, keys)
        wanted = {first: sorted(held.weeks[first] + held.weeks[second]), second: []}
        edit = held.with_weeks(wanted, f"write one value for {week_list(wanted[first])}")
        if edit is not None:
            yield edit


def all_fitted(stated: Place, maps: list[Place], meant: int, length: int) -> Iterator[Edit]:
    """Writes the length that all maps have; or brings all of them to the length that is stated."""
    if stated.excerpt.isdecimal():
        yield Edit(stated, str(meant), f"write weeks: {meant}", certain=False)
    held = list(map(map_at, {place.key: place for place in maps}.values()))
    known = [one for one in held if one is not None]
    if len(known) < len(held):
        return
    shorter = meant > length

    def at_the_end(one: WeekMap) -> Edit | None:
        return cut(one, length) if shorter else _filled(one, list(range(one.last + 1, length + 1)), -1)

    said = f"cut all values after week {length}" if shorter else f"repeat the last value up to week {length}"
    yield from each_once(
        _all(known, at_the_end, said),
        _all(known, lambda one: stretched(one, length, one.last), f"spread all values over {length} weeks"),
    )


def _all(maps: list[WeekMap], change: Callable[[WeekMap], Edit | None], label: str) -> Edit | None:
    edits = [change(one) for one in maps]
    return None if None in edits else in_one(label, [edit for edit in edits if edit is not None])


def each_once(*edits: Edit | None) -> Iterator[Edit]:
    """The edits that there are, each text once."""
    seen: set[object] = set()
    for edit in edits:
        key = edit and tuple((part.place.key, part.words) for part in edit.parts)
        if edit is not None and key not in seen:
            seen.add(key)
            yield edit


def agreed(stated: Place, weeks: int) -> Iterator[Edit]:
    """The length that the blocks of a programme add up to, or none stated."""
    yield from one_of(stated, [str(weeks)])
    yield from dropped(stated)


def taken_out(place: Place) -> Iterator[Edit]:
    """A key with nothing left to say, taken out."""
    return dropped(place)
