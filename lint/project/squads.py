"""What holds for several athletes of a squad alike is said once, with their names."""

from __future__ import annotations

from ..findings.finding import Related

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from ..findings.finding import Finding
    from .results import FileReview


def say_once(files: list[FileReview]) -> None:
    """Draws together what is one decision of the coach for the athletes of a programme (`Finding.once`).

    The first of them carries it, with the names and places of the others. What is waived or on record must
    be taken out before.
    """
    for one in files:
        athletes = [ledger.athlete for ledger in one.ledgers if ledger.athlete is not None]
        if len(athletes) > 1:
            _together(files, {athlete.place.key: athlete.name for athlete in athletes})


def _together(files: Iterable[FileReview], squad: Mapping[tuple[str, int, int], str]) -> None:
    alike: dict[tuple[str, ...], list[tuple[FileReview, Finding]]] = {}
    for one in files:
        for finding in one.findings:
            if finding.once and finding.place.key in squad:
                words = (finding.rule, finding.severity, finding.counted, finding.change)
                alike.setdefault(words, []).append((one, finding))
    for (home, lead), *others in alike.values():
        if not others:
            continue
        names = tuple(squad[finding.place.key] for _, finding in ((home, lead), *others))
        also = (
            Related(finding.place, f"{name}: here too")
            for name, (_, finding) in zip(names[1:], others, strict=True)
        )
        said = lead.but(
            athletes=names,
            related=(*lead.related, *also),
            follows=(*lead.follows, *(finding for _, finding in others)),
        )
        home.findings = [said if finding is lead else finding for finding in home.findings]
        for one, gone in others:
            one.findings = [finding for finding in one.findings if finding is not gone]
