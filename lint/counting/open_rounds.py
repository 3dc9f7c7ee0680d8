"""As many rounds as possible: how many go into the time there is."""

from __future__ import annotations

from ..model.quantities import NOTHING, Range
from ..model.sessions import Slice
from .session_time import NEXT_STATION, work_time

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Sequence

    from ..model.pairings import Pairing
    from ..model.sessions import Work
    from .set_group import SetGroup

ONCE = Range(1, 1)


def with_rounds(groups: tuple[SetGroup, ...]) -> tuple[SetGroup, ...]:
    """The groups of sets of a session, those of rounds that nobody has written with the rounds that go in.

    A round takes as long as its exercises, the changes between them, and the rest after it. From the fewest
    to the most rounds is from the longest to the shortest round; the one that is begun is not counted.
    """
    together: dict[Pairing, list[SetGroup]] = {}
    for group in groups:
        paired = group.prescription.paired
        if paired is not None and paired.clock is not None and paired.clock.counts_rounds:
            together.setdefault(paired, []).append(group)
    rounds = {paired: rounds_in(paired, members) for paired, members in together.items()}
    return tuple(
        group.with_work(_in_rounds(group.work, rounds[paired]))
        if (paired := group.prescription.paired) in rounds and paired is not None
        else group
        for group in groups
    )


def rounds_in(paired: Pairing, groups: Sequence[SetGroup]) -> Range:
    """How many rounds go into the time of as many rounds as possible; one at least."""
    clock = paired.clock
    lasts = clock.lasts if clock is not None else None
    if lasts is None:
        return ONCE
    one = (paired.rest or NOTHING) + NEXT_STATION * max(len(groups) - 1, 0)
    for group in groups:
        one += work_time(group.work, group.seconds_said) + (group.work.rest or NOTHING)
    fewest, most = (int(lasts.low / one.high), int(lasts.high / one.low)) if one.low else (1, 1)
    return Range(float(max(fewest, 1)), float(max(most, 1)))


def _in_rounds(work: Work, rounds: Range) -> Work:
    return work.with_values({"sets": Slice(1, 1, rounds, work.places["sets"])})
