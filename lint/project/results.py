"""What a review says of one file, and of all files together."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..body.known import Known
    from ..counting.ledger import Ledger
    from ..engine.run import Fault
    from ..findings.finding import Finding
    from ..syntax.tree import Reading
    from ..team.settings import Team
    from ..team.waivers import Waived
    from ..text.repository import SourceFile


class FileReview:
    """What a review says of one file, under the settings of a team.

    ``kind`` is that of the file unless another is given. ``opened`` is False where the file could not be read
    at all; ``ledgers`` are those of a programme, one for each athlete on it, none where it could not be
    counted. ``waived`` and ``known`` are findings suppressed by waivers and by the record of known findings.
    """

    __slots__ = (
        "faults",
        "file",
        "findings",
        "kind",
        "known",
        "ledgers",
        "opened",
        "reading",
        "team",
        "waived",
    )

    def __init__(self, file: SourceFile, team: Team, kind: str = "") -> None:
        self.file = file
        self.kind = kind or file.kind
        self.team = team
        self.opened = True
        self.reading: Reading | None = None
        self.findings: list[Finding] = []
        self.faults: list[Fault] = []
        self.ledgers: list[Ledger] = []
        self.waived: list[Waived] = []
        self.known: list[Finding] = []

    @property
    def name(self) -> str:
        """The path of the file as shown."""
        return self.file.name

    @property
    def ledger(self) -> Ledger | None:
        """The ledger of the first athlete, or None."""
        return self.ledgers[0] if self.ledgers else None

    @property
    def exercises(self) -> Known:
        """The exercises that may be named in it."""
        return self.ledgers[0].known if self.ledgers else self.team.resources.known

    @property
    def blocked(self) -> bool:
        """Whether one of its findings blocks under the team's settings."""
        return any(finding.severity in self.team.blocking for finding in self.findings)

    @property
    def is_judged(self) -> bool:
        """Whether it was read whole and judged by every rule, so that what is not found is not there."""
        read = self.reading is None or self.reading.root is not None
        return self.opened and read and not self.faults and not self.team.broken

    @property
    def weeks(self) -> int:
        """Weeks of the programme; 0 where it is none."""
        return max((len(ledger.weeks) for ledger in self.ledgers), default=0)

    def add_fault(self, fault: Fault) -> None:
        """Notes that a rule failed, once a rule."""
        if fault.rule not in {known.rule for known in self.faults}:
            self.faults.append(fault)


class Review:
    """The reviews of all files, in order, and their outcome.

    ``may_be_empty`` says whether the job was done where there was nothing to review.
    """

    __slots__ = ("files", "may_be_empty")

    def __init__(self, files: list[FileReview], *, may_be_empty: bool = False) -> None:
        self.files = files
        self.may_be_empty = may_be_empty

    def count(self, severity: str) -> int:
        """How many findings of a severity there are."""
        return sum(finding.severity == severity for one in self.files for finding in one.findings)

    @property
    def blocked(self) -> bool:
        """Whether any finding blocks."""
        return any(one.blocked for one in self.files)

    def suppressed(self) -> tuple[int, int]:
        """How many findings are waived, and how many are on record."""
        return sum(len(one.waived) for one in self.files), sum(len(one.known) for one in self.files)

    @property
    def failed(self) -> bool:
        """Whether the job could not be done: no file, a file unread, settings broken, a rule failed."""
        if not self.files:
            return not self.may_be_empty
        return any(not one.opened or one.faults or one.team.broken for one in self.files)

    @property
    def exit_code(self) -> int:
        """2 where the job could not be done, else 1 where a finding blocks, else 0."""
        return 2 if self.failed else int(self.blocked)
