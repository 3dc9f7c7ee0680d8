"""A programme's text as it stands, with what all searches on it need: worked out once."""

from __future__ import annotations

from .candidates import Candidates
from .cannot import Conflicts
from .judge import Seen, marks_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable

    from ..findings.finding import Finding
    from .foresight import Foresight
    from .judge import Judgement, Mark
    from .lines import Plan


class Ground:
    """The ``plan`` of a text, the verdict on it ``before`` all edits, what is foreseen, and ``conflicts``."""

    __slots__ = ("_pools", "before", "conflicts", "foresight", "plan")

    def __init__(self, plan: Plan, before: Judgement, foresight: Foresight | None = None) -> None:
        self.plan = plan
        self.before = before
        self.foresight = foresight
        self._pools: dict[tuple[object, ...], Candidates] = {}
        self.conflicts = None if foresight is None else Conflicts(plan, foresight)

    def marks_for(self, aims: Iterable[Finding]) -> list[Mark]:
        """The marks of some findings in the text; from now on they stand for these findings."""
        marks: list[Mark] = []
        for aim in aims:
            seen = Seen(aim)
            own = [mark for mark in marks_of(seen) if mark in self.before.seen]
            self.before.seen.update(dict.fromkeys(own, seen))
            marks += own
        return marks

    def pool(self, seen: Seen, *, own: bool) -> Candidates:
        """The steps for a finding; ``own`` says whether it is one of this text."""
        levers = tuple((one.offset, one.share) for one in seen.levers)
        apart, weeks = round(seen.apart, 3), seen.finding.weeks
        key = (seen.rule, seen.group, seen.over, seen.unit, own, apart, weeks, levers)
        if key not in self._pools:
            self._pools[key] = Candidates(self.plan, seen, own=own)
        return self._pools[key]
