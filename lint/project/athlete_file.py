"""An athlete file as read."""

from __future__ import annotations

from ..model.check import checked, further
from ..model.read_athlete import read_athlete

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..findings.finding import Finding
    from ..model.athlete import Athlete
    from ..syntax.tree import Reading


class AthleteFile:
    """An athlete file as read: ``athlete`` is None where it holds none that can be read."""

    __slots__ = ("athlete", "findings", "reading")

    def __init__(self, reading: Reading) -> None:
        self.reading = reading
        self.athlete: Athlete | None = None
        self.findings: list[Finding] = checked(self.reading, "athlete")
        if self.reading.root is not None:
            self.athlete, meant = read_athlete(self.reading.root)
            self.findings += further(self.findings, meant)
