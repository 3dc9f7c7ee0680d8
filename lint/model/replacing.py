"""Sessions that take the place of another in some weeks.

Nothing here is needed where no session does, so that `read_programme` imports it only when one does.
"""

from __future__ import annotations

from ..findings.finding import Edit
from ..wording.words import did_you_mean, near_names

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .sessions import Session
    from .values import Reader


def find_replaced(reader: Reader, sessions: tuple[Session, ...]) -> None:
    """Finds what each session replaces, and gives it that one's days if it has none of its own."""
    named = {_folded(session.name): session for session in reversed(sessions) if not session.instead_of}
    for session in sessions:
        term = session.instead_of
        if term is None:
            continue
        session.replaces = replaced = named.get(_folded(term.words))
        if replaced is not None and not session.own_days:
            session.hours, session.by_week = replaced.hours, replaced.by_week
        session.days = session.own_days or (replaced.days if replaced else ())
        if replaced is None:
            near = near_names(term.words, [one.name for one in named.values()], 2)
            reader.report(
                "session-unknown",
                term.place,
                f"`{term.words}` is no session here that can be replaced.",
                change=did_you_mean(near) or "Write the name of a session of the same weeks.",
                edits=tuple(Edit(term.place, one, f"write {one}", certain=False) for one in near),
            )
        elif not session.in_weeks:
            reader.report(
                "session-never",
                term.place,
                f"Without weeks, {session.name} replaces {replaced.name} always.",
                severity="warning",
                change=f"Write `in weeks:` beside it, or take {replaced.name} out.",
            )


def _folded(name: str) -> str:
    return " ".join(name.casefold().split())
