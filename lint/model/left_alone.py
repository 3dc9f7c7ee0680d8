"""Areas that a programme leaves alone on purpose, and those that it keeps and does not build.

Nothing here is needed where none are written, so that `read_programme` imports it only where some are.
"""

from __future__ import annotations

from .values import terms_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .programme import Programme
    from .values import LocatedNode, Reader


def read_left_alone(reader: Reader, at: LocatedNode, programme: Programme) -> None:
    """Reads both; reports an area that is to be left alone and trained, or kept, as well."""
    programme.not_trained, programme.maintain = terms_of(at.get("not trained")), terms_of(at.get("maintain"))
    meant = {"focus": programme.focus, "priority": programme.priority, "maintain": programme.maintain}
    for term in programme.not_trained:
        keys = [
            key for key, terms in meant.items() if term.words.lower() in {one.words.lower() for one in terms}
        ]
        if keys:
            reader.report(
                "keys-at-odds",
                term.place,
                f"`{term.words}` stands under `not trained`, and under `{keys[0]}`.",
                change="Take it out of one of the two.",
            )
