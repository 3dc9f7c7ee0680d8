"""What changes in sessions and their lines, week by week."""

from __future__ import annotations

from ..wording.words import first_of, plain, sets_of
from .difference import Collector
from .matching import VisitPairs

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..counting.ledger import Ledger
    from ..counting.tally import Visit
    from ..counting.week import Week
    from .difference import Difference
    from .matching import Held, LinePairs
    from .values import LineState

    Matched = dict[tuple[tuple[Visit, ...], tuple[Visit, ...]], VisitPairs]
    """The visits of two versions of a week, matched."""

LEAST_MINUTES = 5
"""Minutes, in the middle of the range, from which a session's length is said to change."""

SESSION, MOVED, LINE, SWAP, VALUES, ORDER = 74.0, 45.0, 20.0, 25.0, 15.0, 12.0
"""How telling it is: a session gone or new, on another day; a line gone or new, swapped; other values."""

REST, MUCH_REST = 41.0, 1.5
"""How telling another rest is, from so many times as much."""


class WeekPair:
    """A week in both versions, with its visits matched."""

    __slots__ = ("new", "number", "old", "visits")

    def __init__(self, old: Week, new: Week, visits: VisitPairs) -> None:
        self.number = new.number
        self.old = old
        self.new = new
        self.visits = visits


def week_pairs(old: Ledger, new: Ledger, known: Matched | None = None) -> list[WeekPair]:
    """The weeks that both versions have. Weeks that hold the same are matched once.

    ``known`` are matches from an earlier comparison; those of these weeks are added to it.
    """
    known = {} if known is None else known
    found = []
    for before, after in zip(old.weeks, new.weeks, strict=False):
        key = (before.visits, after.visits)
        if key not in known:
            known[key] = VisitPairs(*key)
        found.append(WeekPair(before, after, known[key]))
    return found


def distinct(pairs: Iterable[WeekPair]) -> list[tuple[WeekPair, list[int]]]:
    """The first of the weeks that hold the same in both versions, with the numbers of all of these."""
    found: dict[int, tuple[WeekPair, list[int]]] = {}
    for pair in pairs:
        found.setdefault(id(pair.visits), (pair, []))[1].append(pair.number)
    return list(found.values())


def session_changes(pairs: Iterable[WeekPair]) -> list[Difference]:
    """Sessions that are new, gone or moved, and lines with other values."""
    found = Collector()
    for pair in pairs:
        _of_week(pair, found)
    return found.changes()


def _of_week(pair: WeekPair, found: Collector) -> None:
    moved = _moved_lines(pair.visits)
    week = pair.number
    for one in pair.visits.gone:
        words = f"{_with_day(one)} is gone: {_in_short(one)}"
        found.add(week, "session", words, SESSION, session=one.name, subject=one.name, before=_in_short(one))
    for one in pair.visits.new:
        words = f"{_with_day(one)} is new: {_in_short(one)}"
        found.add(week, "session", words, SESSION, session=one.name, subject=one.name, after=_in_short(one))
    for old, new, lines in pair.visits.both:
        _of_session(week, old, new, found)
        _of_lines(week, new.name, lines, moved, found)
    for line, old, new in moved:
        words = f"{line.name} moved from {_with_day(old)} to {_with_day(new)}"
        found.add(
            week,
            "line moved",
            words,
            MOVED - 5,
            session=new.name,
            subject=line.name,
            before=_with_day(old),
            after=_with_day(new),
        )


def _of_session(week: int, old: Held, new: Held, found: Collector) -> None:
    if old.day != new.day:
        before, after = old.day or "any day", new.day or "any day"
        words = f"{new.name} moved from {before} to {after}"
        found.add(week, "moved", words, MOVED, session=new.name, subject=new.name, before=before, after=after)
    one, other = old.visit.session, new.visit.session
    around = {
        "preparation": (bool(one.preparation), bool(other.preparation)),
        "cool-down": (bool(one.cool_down), bool(other.cool_down)),
    }
    for part, (was_there, is_there) in around.items():
        if was_there != is_there:
            words = f"{new.name}: {part} {'added' if is_there else 'dropped'}"
            found.add(week, "session", words, LINE, session=new.name, subject=part)
    if old.visit.minutes != new.visit.minutes:
        before, after = (f"{one.minutes} min" if one.minutes else "none" for one in (old.visit, new.visit))
        words = f"{new.name}: minutes written {before} -> {after}"
        found.add(
            week, "session", words, LINE, session=new.name, subject="minutes", before=before, after=after
        )
    was, takes = old.visit.time().total, new.visit.time().total
    change = round((takes.middle - was.middle) / 60)
    if abs(change) >= LEAST_MINUTES:
        before, after = minutes_in_words(was.ends), minutes_in_words(takes.ends)
        called = new.day or new.name
        words = f"{called} {abs(change)} min {'longer' if change > 0 else 'shorter'}: {before} -> {after}"
        weight = min(20 + abs(change) / 2, 40)
        found.add(
            week,
            "minutes",
            words,
            weight,
            session=new.name,
            subject=new.name,
            before=before,
            after=after,
            lead=called,
        )


def _of_lines(
    week: int, session: str, lines: LinePairs, moved: list[tuple[LineState, Held, Held]], found: Collector
) -> None:
    elsewhere = {id(line.line) for line, _, _ in moved}
    for before, after in lines.both:
        words, was, now = _values(before, after)
        if words:
            weight = max(
                VALUES + min(abs(after.sets.middle - before.sets.middle), 5), _of_rest(before, after)
            )
            found.add(
                week,
                "line",
                f"{session}, {after.name}: {words}",
                weight,
                session=session,
                subject=after.name,
                before=was,
                after=now,
                lead=session,
            )
    for before, after in lines.swapped:
        words, _, _ = _values(before, after)
        found.add(
            week,
            "line",
            f"{session}: {before.name} -> {after.name}{f' ({words})' if words else ''}",
            SWAP,
            session=session,
            subject=after.name,
            before=before.name,
            after=after.name,
            lead=session,
        )
    for one in lines.gone:
        if id(one.line) not in elsewhere:
            words = f"{session}: {one.name} is gone, {_work(one)}"
            found.add(
                week,
                "line",
                words,
                _of(one),
                session=session,
                subject=one.name,
                before=_work(one),
                lead=session,
            )
    for one in lines.new:
        if not any(one.lift == line.lift and session == new.name for line, _, new in moved):
            words = f"{session}: {one.name} is new, {_work(one)}"
            found.add(
                week,
                "line",
                words,
                _of(one),
                session=session,
                subject=one.name,
                after=_work(one),
                lead=session,
            )
    if lines.reordered:
        words = f"{session}: {first_of(lines.reordered)} in another place of the order"
        found.add(week, "order", words, ORDER, session=session, subject=lines.reordered[0])


def _moved_lines(visits: VisitPairs) -> list[tuple[LineState, Held, Held]]:
    """Lines that went from one session to another with the same sets."""
    found = []
    arrived = [(line, new) for _, new, lines in visits.both for line in lines.new]
    for old, _, lines in visits.both:
        for line in lines.gone:
            to = next((one for one in arrived if one[0].lift == line.lift and one[0].sets == line.sets), None)
            if to is not None:
                arrived.remove(to)
                found.append((line, old, to[1]))
    return found


def _values(before: LineState, after: LineState) -> tuple[str, str, str]:
    """``sets 4 -> 3, load 80 % -> 75 %``, and both sides of it by themselves; empty where all is alike."""
    keys = [
        key for key in {**before.values, **after.values} if before.values.get(key) != after.values.get(key)
    ]
    sides = [[f"{key} {one.values.get(key, 'none')}" for key in keys] for one in (before, after)]
    words = [f"{key} {before.values.get(key, 'none')} -> {after.values.get(key, 'none')}" for key in keys]
    return ", ".join(words), ", ".join(sides[0]), ", ".join(sides[1])


def _of_rest(before: LineState, after: LineState) -> float:
    """How telling another rest is: where it is a half more or less, more so than the minutes it brings."""
    was, now = (one.groups[0].work.rest for one in (before, after))
    if was is None or now is None or not was.middle or not now.middle:
        return VALUES
    return REST if max(was.middle / now.middle, now.middle / was.middle) >= MUCH_REST else VALUES


def _of(line: LineState) -> float:
    return LINE + min(line.sets.middle, 5)


def _work(line: LineState) -> str:
    reps = line.values.get("reps", "")
    return f"{line.sets} x {reps}" if reps else sets_of(str(line.sets))


def _with_day(one: Held) -> str:
    return f"{one.name} ({one.day})" if one.day and one.day != one.name else one.name


def _in_short(one: Held) -> str:
    return sets_of(str(one.visit.all_sets()))


def minutes_in_words(seconds: tuple[float, float]) -> str:
    """``54 min``, ``50-70 min``: whole minutes."""
    low, high = (plain(round(end / 60)) for end in seconds)
    return f"{low} min" if low == high else f"{low}-{high} min"


def lines_by_week(pairs: Iterable[WeekPair]) -> Iterator[tuple[WeekPair, Held, Held, LinePairs]]:
    """Every matched session of every week, with its lines."""
    for pair in pairs:
        for old, new, lines in pair.visits.both:
            yield pair, old, new, lines
