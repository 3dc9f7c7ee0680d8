"""Says whether a line that stands for no exercise surely is no lift: then there is nothing to count."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..body.known import Known
    from ..model.sessions import Prescription, Work


def is_no_lift(line: Prescription, work: Work, known: Known) -> bool:
    """Whether work of an unknown exercise surely is no lift: by its line's kind, or the words of its name.

    A percentage may be one of speed; whatever else has a load is lifted.
    """
    if line.kind:
        return True
    load = work.load
    lifted = load is not None and load.span is not None and load.span.high > 0 and load.kind != "percent"
    return not lifted and known.is_no_lift(work.exercise)
