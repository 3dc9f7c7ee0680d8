"""What the review of a programme leaves to the next review of it, which then only looks at what is new."""

from __future__ import annotations

from ..counting.ledger import Ledger
from ..engine.run import RunCache
from ..syntax.cache import PartCache

TYPE_CHECKING = False
if TYPE_CHECKING:
    from datetime import date
    from typing import Any

    from ..counting.set_group import Slip
    from ..counting.team_resources import TeamResources
    from ..model.programme import Programme

_SESSIONS = frozenset({"sessions", "blocks", "shared", "waivers"})
"""Keys that hold sessions or parts of them, and those that no rule looks at."""


class IncrementalState:
    """What the last review of a programme has left: the ``parts`` it read, a run cache for each ledger."""

    __slots__ = ("_outside", "_waived", "caches", "parts")

    def __init__(self) -> None:
        self.parts = PartCache()
        self.caches: dict[Ledger, RunCache] = {}
        self._outside = ""
        self._waived = ""

    def ledgers(
        self,
        programme: Programme,
        plain: Any,
        today: date,
        around: TeamResources,
        slip: Slip | None = None,
        waived: str = "",
    ) -> list[Ledger]:
        """A ledger for each athlete on a later version of the programme, whose data are ``plain``.

        ``waived`` tells the waivers of what ``slip`` judges: where they change, all is counted anew.

        An athlete who was on it before has the same ledger as before, brought up to date.
        """
        outside = _outside_sessions(plain)
        if waived != self._waived:
            self.caches = {}
        self._waived = waived
        if outside != self._outside:
            for cache in self.caches.values():
                cache.clear()
        before = {ledger.member: (ledger, cache) for ledger, cache in self.caches.items()}
        self._outside = outside
        self.caches = {}
        for member in programme.members or (None,):
            kept = before.get(member)
            if kept is not None and _reads_alike(kept[0].programme, programme):
                ledger, cache = kept
                ledger.lay_out(programme, slip)
            else:
                ledger, cache = Ledger(programme, today, around, member, slip), RunCache()
            self.caches[ledger] = cache
        return list(self.caches)


def _reads_alike(before: Programme, now: Programme) -> bool:
    """Whether a line that is unchanged still means the same lift and the same load."""
    return before.names == now.names and before.working_best == now.working_best


def _outside_sessions(plain: dict[str, Any]) -> str:
    """All that a programme says outside its sessions, activities included."""
    return repr([*_but_sessions(plain), *(_but_sessions(one) for one in _dicts(plain.get("blocks")))])


def _but_sessions(plain: dict[str, Any]) -> list[object]:
    activities = [one for one in _dicts(plain.get("sessions")) if "activity" in one]
    return [*((key, value) for key, value in plain.items() if key not in _SESSIONS), activities]


def _dicts(value: object) -> list[dict[str, Any]]:
    """The groups of keys in a list."""
    return [one for one in value if isinstance(one, dict)] if isinstance(value, list) else []
