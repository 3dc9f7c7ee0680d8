"""What a team provides for its programmes besides limits: its own exercises, equipment, the room."""

from __future__ import annotations

from ..body.known import CATALOGUE

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..body.known import Known
    from ..model.kits import Kit, Stock


class TeamResources:
    """What a team provides for its programmes.

    - ``known``: the exercises that a programme may name.
    - ``equipment``: the team's equipment sets by name, each with its pieces.
    - ``kits``: the places of the team with their equipment; its equipment sets are places, too.
    - ``stocks``: what there is of the pieces in its equipment sets, by the name of the set.
    - ``stations``: how many of each station the room has.
    - ``together``: how many athletes train at the same time; 0 if not stated.
    - ``screened``: whether the team states, once for all, that its athletes are screened.
    """

    __slots__ = ("equipment", "kits", "known", "screened", "stations", "stocks", "together")

    def __init__(self, known: Known = CATALOGUE) -> None:
        self.known = known
        self.equipment: dict[str, tuple[str, ...]] = {}
        self.kits: tuple[Kit, ...] = ()
        self.stocks: dict[str, tuple[Stock, ...]] = {}
        self.stations: dict[str, int] = {}
        self.together = 0
        self.screened = False


NO_RESOURCES = TeamResources()
"""A team that has stated nothing."""
