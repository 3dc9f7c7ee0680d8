"""What is missing in some weeks of a programme and stands in others: most often it fell out by mistake."""

from __future__ import annotations

from ..lint.wording.words import listed, shortened, week_list

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.suggestions import Suggestion
    from ..lint.model.sessions import Session


class FallenOut:
    """A lift that other weeks hold for what is missing: ``entry`` is its first group of sets, ``weeks`` all
    that hold it.
    """

    __slots__ = ("entry", "weeks")

    def __init__(self, entry: SetGroup, weeks: tuple[int, ...]) -> None:
        self.entry = entry
        self.weeks = weeks

    @property
    def name(self) -> str:
        """As the coach wrote it."""
        return shortened(self.entry.name)

    def session(self, others: Iterable[Session]) -> Session | None:
        """The one of some sessions that is called like the one that it stands in."""
        name = self.entry.prescription.session.name
        return next((one for one in others if one.name == name), None)

    def before(self, suggestion: Suggestion) -> Suggestion:
        """What is suggested, the lift itself first."""
        assert self.entry.exercise is not None  # it trains something
        return suggestion.with_first(self.entry.exercise.name)


def fallen_out(ledger: Ledger, action: str) -> FallenOut | None:
    """The lift that most weeks hold for a joint action or pattern; None where no week holds any."""
    held: dict[object, list[tuple[int, SetGroup]]] = {}
    for week in ledger.weeks:
        for entry, *_ in week.lifts().values():
            if entry.trains((action,)):
                held.setdefault(entry.exercise, []).append((week.number, entry))
    most = max(held.values(), key=len, default=None)
    return FallenOut(most[0][1], tuple(number for number, _ in most)) if most else None


def held_in(lost: Sequence[FallenOut]) -> str:
    """``; leg curl and deadlift are in weeks 1-4 only``, to follow what is missing; empty without any."""
    if not lost:
        return ""
    alike = [one for one in lost if one.weeks == lost[0].weeks]
    names = listed([one.name for one in alike])
    return f"; {names} {'is' if len(alike) == 1 else 'are'} in {week_list(lost[0].weeks)} only"


def put_back(lost: Sequence[FallenOut], others: Sequence[Session], session: Session, weeks: str) -> str:
    """Advice to write each again in the one of some sessions that held it, else in ``session``, in some
    ``weeks``; no full stop.
    """
    homes: dict[str, list[str]] = {}
    for one in lost:
        homes.setdefault((one.session(others) or session).name, []).append(one.name)
    put = listed([f"{listed(names)} back into {home}" for home, names in homes.items()])
    left_out = "it is" if len(lost) == 1 else "they are"
    return f"Put {put}{weeks}, or say in a note that {left_out} left out"
