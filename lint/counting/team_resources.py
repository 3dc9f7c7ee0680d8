"""What a team brings to its programmes besides limits: exercises of its own, equipment, the room."""

from __future__ import annotations

from ..body.known import CATALOGUE

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..body.known import Known


class TeamResources:
    """Exercises a programme may name, equipment sets by name, stations of the room, athletes at once.

    ``together`` is 0 where the team does not say how many train at once; ``screened`` says that it has stated
    once for all that athletes are screened.
    """

    __slots__ = ("equipment", "known", "screened", "stations", "together")

    def __init__(self, known: Known = CATALOGUE) -> None:
        self.known = known
        self.equipment: dict[str, tuple[str, ...]] = {}
        self.stations: dict[str, int] = {}
        self.together = 0
        self.screened = False


NO_RESOURCES = TeamResources()
"""A team that has said nothing."""
