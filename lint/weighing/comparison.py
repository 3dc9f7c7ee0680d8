"""Two versions of programmes and athletes compared: what changed in training, athlete by athlete."""

from __future__ import annotations

from ..body.names import fold
from .difference import PARTS, Difference, joined
from .dose import HELPING_AT_MOST, dose_changes
from .finding_changes import finding_changes
from .out_of_line import declared, out_of_line
from .person import athlete_changes, programme_changes, renamed, waiver_changes
from .sessions import LINE, session_changes, week_pairs
from .spacing import spacing_changes

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from ..counting.ledger import Ledger
    from ..project.results import FileReview
    from ..team.waivers import Waiver
    from .sessions import WeekPair

MOST_LINES = 12
"""Lines that say what changed before any details."""

MOST_OF_PART = {"person": 3, "out of line": 3, "dose": 4, "time": 3, "findings": 3, "lines": 12}
"""How many changes of each part stand among these lines."""

TOGETHER = 3
"""Muscle groups that are named in one line."""

FEW = 3
"""Lines up to which those of single lines of sessions are added to them."""

MOST_OF_LINES = 2
"""Lines of sessions gone, new or swapped that are added to more."""


class Compared:
    """What changed in one programme for one athlete, or in one file of another kind.

    ``file`` is its name as shown, ``who`` the athletes, ``weeks`` those that both versions have.
    """

    __slots__ = ("changes", "file", "title", "weeks", "who")

    def __init__(
        self, file: str, title: str, who: str, weeks: Sequence[int], changes: Iterable[Difference]
    ) -> None:
        self.file = file
        self.title = title
        self.who = who
        self.weeks = tuple(weeks)
        self.changes = sorted(changes, key=lambda one: (-one.weight, one.weeks))

    @property
    def weight(self) -> float:
        """That of its most telling change."""
        return max((one.weight for one in self.changes), default=0.0)

    def first(self, most: int = MOST_LINES) -> list[tuple[Difference, str]]:
        """The changes to say first, with their sentences: the most telling one, then those of each part."""
        if not self.changes:
            return []
        head, *_ = joined(self.changes)
        cause = self._with_cause(head)
        telling = ": ".join(dict.fromkeys([*(one.words for one in cause), self._sentence([head])]))
        said = [(head, telling)]
        told = {id(one) for one in (*cause, *self._like(head))}
        for part in PARTS:
            rest = joined(
                one
                for one in self.changes
                if one.part == part and id(one) not in told and not _helps_only(one)
            )
            most_of_part = MOST_OF_PART[part]
            if part == "lines" and len(said) > FEW:
                rest, most_of_part = [one for one in rest if one.weight >= LINE], MOST_OF_LINES
            said += [(one[0], self._sentence(one)) for one in _like_doses(rest)[:most_of_part]]
        return said[:most]

    def _sentence(self, several: list[Difference]) -> str:
        """The sentence of a change; of groups whose sets change in the same weeks, one for all."""
        if len(several) == 1:
            return several[0].sentence(self.weeks)
        groups = ", ".join(f"{one.subject} {one.before} -> {one.after}" for one in several)
        first = several[0]
        return Difference(first.kind, f"{groups} sets a week", 0, weeks=first.weeks).sentence(self.weeks)

    def details(self, part: str) -> list[Difference]:
        """All changes of a part; those of lines session by session."""
        own = joined(one for one in self.changes if one.part == part)
        return sorted(own, key=lambda one: one.session) if part == "lines" else own

    def _like(self, head: Difference) -> list[Difference]:
        """The changes that the first sentence says."""
        first = self.changes[0]
        rest = first.words[len(first.lead) :]
        alike = [one for one in self.changes if one.kind == first.kind and one.weeks == first.weeks]
        return [one for one in alike if one is first or (first.lead and one.words == one.lead + rest)]

    def _with_cause(self, head: Difference) -> list[Difference]:
        """The move of a session or line by which hours became fewer."""
        if head.kind != "hours":
            return []
        moves = [one for one in self.changes if one.kind in ("moved", "line moved", "activity")]
        return [one for one in moves if not one.weeks or set(one.weeks) & set(head.weeks)][:1]


def _helps_only(one: Difference) -> bool:
    """Whether it says only that a group helps more or less than before; that follows from what is said."""
    return one.kind == "sets" and one.weight <= HELPING_AT_MOST


def shared_out(several: Sequence[Compared], most: int) -> list[list[tuple[Difference, str]]]:
    """So many sentences at most: one of each thing that changed, then the most telling of all others."""
    said = [one.first(most) for one in several[:most]]
    further = [(change, at) for at, lines in enumerate(said) for change, _ in lines[1:]]
    further.sort(key=lambda one: -one[0].weight)
    chosen = {(id(change), at) for change, at in further[: most - len(said)]}
    return [
        [lines[0], *(line for line in lines[1:] if (id(line[0]), at) in chosen)]
        for at, lines in enumerate(said)
    ]


def _like_doses(changes: list[Difference]) -> list[list[Difference]]:
    """Changes one by one; muscle groups whose sets change in the same weeks together, the largest three."""
    found: list[list[Difference]] = []
    for one in changes:
        last = found[-1] if found else []
        is_plain = one.kind == "sets" and " in week" not in one.words
        if (
            is_plain
            and last
            and last[0].kind == "sets"
            and last[0].weeks == one.weeks
            and len(last) < TOGETHER
        ):
            last.append(one)
        else:
            found.append([one])
    return found


class Comparison:
    """All that changed. ``gone`` and ``new`` are sentences on files that one side alone has, ``faults`` on
    what could not be compared.
    """

    __slots__ = ("compared", "faults", "gone", "looked_at", "new")

    def __init__(self) -> None:
        self.compared: list[Compared] = []
        self.gone: list[tuple[str, str]] = []
        self.new: list[tuple[str, str]] = []
        self.faults: list[str] = []
        self.looked_at = 0

    @property
    def changed(self) -> list[Compared]:
        """What holds a change, that with the most telling one first."""
        return sorted(
            (one for one in self.compared if one.changes), key=lambda one: (-one.weight, one.file, one.who)
        )

    @property
    def is_nothing(self) -> bool:
        """Whether nothing changes in training."""
        return not (self.changed or self.gone or self.new or self.faults)


def compared_programme(
    old: FileReview, were: Iterable[Waiver], new: FileReview, are: Iterable[Waiver]
) -> list[Compared]:
    """What changed in a programme, for each athlete; athletes for whom the same did are named together.

    ``were`` and ``are`` are the waivers that hold in the two versions.
    """
    waivers = waiver_changes(were, are)
    found: list[Compared] = []
    pairs, gone, added = _by_athlete(old.ledgers, new.ledgers)
    squad = [
        Difference("athlete", f"{_name(one)} is no longer on it", 83, subject=_name(one), before=_name(one))
        for one in gone
    ] + [
        Difference("athlete", f"{_name(one)} is new on it", 60, subject=_name(one), after=_name(one))
        for one in added
    ]
    for before, after in pairs:
        week_by_week = week_pairs(before, after)
        changes = [*squad, *waivers, *ledger_changes(before, after, week_by_week)]
        names = session_names(week_by_week)
        changes += finding_changes(old.findings, new.findings, names, _name(after))
        weeks = [week.number for week in after.weeks][: len(before.weeks)]
        found.append(Compared(new.name, after.programme.name, _name(after), weeks, changes))
    return _joined(found)


def ledger_changes(old: Ledger, new: Ledger, pairs: Sequence[WeekPair]) -> list[Difference]:
    """What changed between two ledgers: the person, the sessions, the dose, days and hours."""
    before, after = (one.athlete for one in (old, new))
    around = programme_changes(old, new)
    changes = [*renamed(before, after), *athlete_changes(before, after), *around]
    is_same = all(pair.visits.are_same for pair in pairs)
    changes += [*session_changes(pairs), *declared(pairs)]
    if not is_same:
        changes += out_of_line(pairs)
        changes += dose_changes(pairs)
    if around or not is_same:
        changes += spacing_changes(old, new)
    return changes


def session_names(pairs: Iterable[WeekPair]) -> dict[str, str]:
    """The old names of sessions, each with the new one."""
    return {
        old.visit.session.name: new.visit.session.name
        for pair in pairs
        for old, new, _ in pair.visits.both
        if old.visit.session.name != new.visit.session.name
    }


def _by_athlete(
    old: Sequence[Ledger], new: Sequence[Ledger]
) -> tuple[list[tuple[Ledger, Ledger]], list[Ledger], list[Ledger]]:
    """The ledgers of one athlete in both versions; those of athletes gone, and new."""
    left, pairs, gone = list(new), [], []
    for one in old:
        other = next((two for two in left if fold(_name(two)) == fold(_name(one))), None)
        if other is None:
            gone.append(one)
        else:
            left.remove(other)
            pairs.append((one, other))
    if len(gone) == len(left) == 1 and not pairs:
        return [(gone[0], left[0])], [], []
    return pairs, gone, left


def _name(ledger: Ledger) -> str:
    return ledger.athlete.name if ledger.athlete else ""


def _joined(several: list[Compared]) -> list[Compared]:
    """Each change once, with all athletes for whom it is the same: what a squad shares stands once."""
    holders: dict[object, list[Compared]] = {}
    for one in several:
        for change in one.changes:
            holders.setdefault(_what(one, change), []).append(one)
    shared: dict[tuple[int, ...], tuple[list[Compared], list[Difference]]] = {}
    for one in several:
        for change in one.changes:
            group = holders[_what(one, change)]
            if group[0] is one:
                names = tuple(id(each) for each in group)
                shared.setdefault(names, (group, []))[1].append(change)
    return [
        Compared(
            group[0].file,
            group[0].title,
            ", ".join(dict.fromkeys(one.who for one in group if one.who)),
            group[0].weeks,
            changes,
        )
        for group, changes in shared.values()
    ]


def _what(one: Compared, change: Difference) -> object:
    return one.weeks, change.kind, change.words, change.weeks, change.session
