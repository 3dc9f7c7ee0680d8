"""What programs know a finding by: its file from the root, and a fingerprint that outlasts edits."""

from __future__ import annotations

from hashlib import sha256

from ..team.known_findings import key_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..findings.finding import Finding
    from ..project.results import FileReview
    from ..text.repository import SourceFile


class RootPaths:
    """The paths of files from the roots of their repositories, with / between folders, by the names shown.

    ``file`` is any file of the review, which has resolved the others already.
    """

    __slots__ = ("_file", "_known")

    def __init__(self, file: SourceFile) -> None:
        self._file = file
        self._known: dict[str, str] = {}

    def of(self, name: str) -> str:
        """The path of the file that is shown by a name."""
        if name not in self._known:
            self._known[name] = self._file.shown_as(name).path_from_root
        return self._known[name]


def all_findings(one: FileReview) -> list[Finding]:
    """What was found in a file, whether it is told, waived or on record; in the order of its places."""
    found = [*one.findings, *(waived.finding for waived in one.waived), *one.known]
    return sorted(found, key=lambda finding: (finding.place.start, finding.rule, finding.subject))


def fingerprints(one: FileReview) -> dict[Finding, str]:
    """A fingerprint of every finding of a file: 32 hexadecimal digits, each of them once.

    It is made from what a finding is on record by: file, rule, session and line by name, subject. So it stays
    when lines move, and when a finding is waived or put on record. What has no such name is known by its
    words in the file; like ones are numbered.
    """
    found: dict[Finding, str] = {}
    seen: dict[tuple[str, ...], int] = {}
    paths = RootPaths(one.file)
    for finding in all_findings(one):
        key = key_of(finding, paths.of(finding.place.text.name))
        named = (*key, "" if finding.where else finding.place.excerpt)
        seen[named] = seen.get(named, 0) + 1
        words = "\0".join([*named, str(seen[named])])
        found[finding] = sha256(words.encode(errors="surrogateescape")).hexdigest()[:32]
    return found
