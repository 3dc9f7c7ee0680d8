"""Sets that a proposal changes, written where they stand."""

from __future__ import annotations

from ..counting.proposals import evened, fewer, further
from ..findings.edits import in_one
from ..findings.finding import Edit
from ..syntax.enclosing import way_to
from ..wording.words import plain

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from ..counting.counts import Count
    from ..counting.proposals import LineChange
    from ..model.sessions import Work
    from ..text.places import Place


def cut(count: Count, most: float) -> Iterator[Edit]:
    """Cuts the fullest lines until a count is ``most`` at most, as the words of the finding say."""
    proposal = fewer(count, most)
    if proposal is not None:
        yield from written(proposal.changes, proposal.words("cut"))


def raised(count: Count, least: float, rivals: Sequence[Count] = ()) -> Iterator[Edit]:
    """Raises the line that gains most by it until a count is ``least``."""
    proposal = further(count, least, rivals)
    if proposal is not None:
        yield from written(proposal.changes, proposal.words("raise"))


def moved(more: Count, less: Count, most: float) -> Iterator[Edit]:
    """Moves sets from a line to one of the other side, so that one holds ``most`` times the other at most."""
    move = evened(more, less, most)
    if move is not None:
        yield from written([move.off, move.on], move.words())


def written(changes: Sequence[LineChange], label: str) -> Iterator[Edit]:
    """One edit with all changes; none where a line does not hold its sets as a number of its own."""
    edits = [_of_line(change) for change in changes]
    whole = in_one(label, [one for one in edits if one is not None])
    if whole is not None and None not in edits:
        yield whole


def _of_line(change: LineChange) -> Edit | None:
    place = own_number(change.entry.work)
    if place is None:
        return None
    low, high = plain(change.entry.sets.low + change.by), plain(change.entry.sets.high + change.by)
    return Edit(place, low if low == high else f"{low}-{high}", change.sets(), certain=False)


def own_number(work: Work) -> Place | None:
    """Where its sets stand as a number of their own: not as rounds of others, nor as long as a list."""
    place = work.places.get("sets")
    is_own = place is not None and any(step.key == "sets" for step in way_to(place))
    return place if is_own and not _says_each_set(work) else None


def _says_each_set(work: Work) -> bool:
    each = work.reps is not None and work.reps.each_set
    return each or (work.load is not None and len(work.load.values) > 1)
