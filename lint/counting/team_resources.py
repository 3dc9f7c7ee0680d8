"""What a team provides for its programmes besides limits: its own exercises, equipment, the room."""

from __future__ import annotations

from ..body.known import CATALOGUE

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..body.known import Known


class TeamResources:
    """What a team provides for its programmes.

    - ``known``: the exercises that a programme may name.
    - ``equipment``: the team's equipment sets by name, each with its pieces.
    - ``stations``: how many of each station the room has.
    - ``together``: how many athletes train at the same time; 0 if not stated.
    - ``screened``: whether the team states, once for all, that its athletes are screened.
    """

    __slots__ = ("equipment", "known", "screened", "stations", "together")

    def __init__(self, known: Known = CATALOGUE) -> None:
        self.known = known
        self.equipment: dict[str, tuple[str, ...]] = {}
        self.stations: dict[str, int] = {}
        self.together = 0
        self.screened = False


NO_RESOURCES = TeamResources()
"""A team that has stated nothing."""
