"""What may be proposed at the caret, and what such proposals are drawn from."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...body.known import Known
    from ...counting.ledger import Ledger
    from ...engine.registry import Rule
    from ..documents.answers import CompletionKind
    from ..documents.snapshot import Snapshot
    from .context import CaretContext, KeyPath


class Candidate:
    """A name or value that may stand at a place.

    ``name`` is what the list shows. ``written`` is how it is written where that differs, else "". The client
    compares what is typed with ``filter_text``. ``value`` is the value that comes with a key.
    ``documentation`` is Markdown.
    """

    __slots__ = ("detail", "documentation", "filter_text", "kind", "name", "value", "written")

    def __init__(
        self,
        name: str,
        kind: CompletionKind,
        detail: str = "",
        documentation: str = "",
        *,
        written: str = "",
        filter_text: str = "",
        value: str = "",
    ) -> None:
        self.name = name
        self.kind: CompletionKind = kind
        self.detail = detail
        self.documentation = documentation
        self.written = written
        self.value = value
        self.filter_text = filter_text or name


class CandidateScope:
    """What candidates are drawn from: a document, a place in it, and ``typed``, the word so far.

    ``key_path`` is the place for which candidates are sought. It may lie below the caret's own.
    """

    __slots__ = ("context", "key_path", "snapshot", "team", "typed", "workspace")

    def __init__(self, snapshot: Snapshot, context: CaretContext, key_path: KeyPath, typed: str) -> None:
        self.snapshot = snapshot
        self.workspace = snapshot.workspace
        self.team = snapshot.review.team
        self.context = context
        self.key_path = key_path
        self.typed = typed

    @property
    def known(self) -> Known:
        """The exercises that may be named."""
        return self.team.resources.known

    @property
    def ledgers(self) -> list[Ledger]:
        """The ledgers of the last good review, one for each athlete."""
        return self.snapshot.last_good.ledgers if self.snapshot.last_good is not None else []

    @property
    def ledger(self) -> Ledger | None:
        """The ledger of the first athlete; None where no programme could be counted yet."""
        return self.ledgers[0] if self.ledgers else None

    def rule(self, name: str) -> Rule | None:
        """The rule of a name."""
        return next((rule for rule in self.workspace.rules if rule.name == name), None)

    def last_data(self, path: KeyPath) -> object:
        """What stood at a path when the text could last be read; None where nothing did."""
        reviews = (self.snapshot.review, self.snapshot.last_good)
        readings = (one.reading for one in reviews if one is not None and one.reading is not None)
        root = next((reading.root for reading in readings if reading.root is not None), None)
        data: object = root.plain if root is not None else None
        for step in path:
            if isinstance(data, dict) and isinstance(step, str):
                data = data.get(step)
            elif isinstance(data, list) and isinstance(step, int) and step < len(data):
                data = data[step]
            else:
                return None
        return data
