"""What a review says of one file, and what all files come to."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

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

    @property
    def outcome(self) -> Outcome:
        """What is left of it when all that it says has been told: numbers."""
        counts: dict[str, int] = {}
        for finding in self.findings:
            counts[finding.severity] = counts.get(finding.severity, 0) + 1
        return Outcome(
            self.kind,
            counts,
            len(self.waived),
            len(self.known),
            len(self.faults),
            blocked=self.blocked,
            failed=not self.opened or bool(self.faults) or self.team.broken,
        )

    def add_fault(self, fault: Fault) -> None:
        """Notes that a rule failed, once a rule."""
        if fault.rule not in {known.rule for known in self.faults}:
            self.faults.append(fault)


class Outcome:
    """What the review of one file has come to, in numbers; nothing of the file itself is kept by it.

    ``counts`` are findings by severity, ``waived``, ``known`` and ``faults`` how many there are of each.
    ``failed`` says that the job could not be done on the file: unread, settings broken, a rule failed.
    """

    __slots__ = ("blocked", "counts", "failed", "faults", "kind", "known", "waived")

    def __init__(
        self,
        kind: str,
        counts: dict[str, int],
        waived: int,
        known: int,
        faults: int,
        *,
        blocked: bool,
        failed: bool,
    ) -> None:
        self.kind = kind
        self.counts = counts
        self.waived = waived
        self.known = known
        self.faults = faults
        self.blocked = blocked
        self.failed = failed

    def plain(self) -> tuple[Any, ...]:
        """The same as plain data, in the order of the parameters."""
        return (self.kind, self.counts, self.waived, self.known, self.faults, self.blocked, self.failed)

    @classmethod
    def of(cls, plain: tuple[Any, ...]) -> Outcome:
        """The outcome that stands behind plain data."""
        *numbers, blocked, failed = plain
        return cls(*numbers, blocked=blocked, failed=failed)


class Verdict:
    """The outcomes of all files, in order, and what they come to.

    ``may_be_empty`` says whether the job was done where there was nothing to review.
    """

    __slots__ = ("_outcomes", "may_be_empty")

    def __init__(self, outcomes: list[Outcome], *, may_be_empty: bool = False) -> None:
        self._outcomes = outcomes
        self.may_be_empty = may_be_empty

    @property
    def outcomes(self) -> list[Outcome]:
        """The outcome of each file."""
        return self._outcomes

    def count(self, severity: str) -> int:
        """How many findings of a severity there are."""
        return sum(one.counts.get(severity, 0) for one in self.outcomes)

    @property
    def blocked(self) -> bool:
        """Whether any finding blocks."""
        return any(one.blocked for one in self.outcomes)

    def suppressed(self) -> tuple[int, int]:
        """How many findings are waived, and how many are on record."""
        return sum(one.waived for one in self.outcomes), sum(one.known for one in self.outcomes)

    @property
    def failed(self) -> bool:
        """Whether the job could not be done: no file, a file unread, settings broken, a rule failed."""
        if not self.outcomes:
            return not self.may_be_empty
        return any(one.failed for one in self.outcomes)

    @property
    def exit_code(self) -> int:
        """2 where the job could not be done, else 1 where a finding blocks, else 0."""
        return 2 if self.failed else int(self.blocked)


class Review(Verdict):
    """The reviews of some files, in order, with all that they hold; and their verdict as they are now."""

    __slots__ = ("files",)

    def __init__(self, files: list[FileReview], *, may_be_empty: bool = False) -> None:
        super().__init__([], may_be_empty=may_be_empty)
        self.files = files

    @property
    def outcomes(self) -> list[Outcome]:
        """The outcome of each file."""
        return [one.outcome for one in self.files]
