"""The review as JUnit XML, the form in which build servers take the outcome of tests.

A file is a suite, a finding a test case that fails where it blocks; what does not block passes with a word to
read, what is waived or on record is skipped. A file in which nothing is found is one case that passes. Names
of cases hold no numbers of lines, so that a server knows a case again when lines move.
"""

from __future__ import annotations

from xml.sax.saxutils import escape, quoteattr

from ..wording.words import safe
from .identities import RootPaths, all_findings
from .sentences import sentence

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..findings.finding import Finding
    from ..project.results import FileReview, Review, Verdict

    Part = tuple[dict[str, str], list[str]]


def report(parts: Iterable[Part], verdict: Verdict) -> None:
    """Prints it, in plain letters, whatever the terminal takes."""
    for line in _lines(parts):
        print(line.encode("ascii", "xmlcharrefreplace").decode("ascii"))


def junit(review: Review) -> Iterator[str]:
    """The lines of the document."""
    return _lines([part(one) for one in review.files])


def part(one: FileReview, look: tuple[object, ...] = ()) -> Part:
    """The numbers of the suite of a file, and its lines."""
    suite = _Suite(one, safe(RootPaths(one.file).of(one.name)))
    return suite.numbers, list(suite.lines())


def _lines(parts: Iterable[Part]) -> Iterator[str]:
    yield '<?xml version="1.0" encoding="UTF-8"?>'
    yield _opening("testsuites", name="spotline", **_added_up(numbers for numbers, _ in parts))
    for _, lines in parts:
        yield from lines
    yield "</testsuites>"


class _Suite:
    """The cases of one file; ``outcome`` is what each of them ends in: failure, error, skipped or passed."""

    def __init__(self, one: FileReview, path: str) -> None:
        self.path = path
        reasons = {kept.finding: f"waived: {kept.waiver.reason}" for kept in one.waived}
        reasons |= dict.fromkeys(one.known, "on record from before")
        self.cases: list[tuple[str, str, list[str]]] = []
        seen: dict[str, int] = {}
        for finding in all_findings(one):
            name = _case_name(finding)
            seen[name] = seen.get(name, 0) + 1
            outcome = _outcome(finding, one, reasons)
            number = f" ({seen[name]})" if seen[name] > 1 else ""
            self.cases.append((name + number, outcome, list(self._said(finding, outcome, reasons))))
        for fault in one.faults:
            words = safe(f"The rule {fault.rule} failed: {fault.words}")
            body = [f"{_opening('error', type='rule-failed', message=words)}</error>"]
            self.cases.append((f"{fault.rule}: failed", "error", body))
        if not self.cases:
            self.cases.append(("review", "passed", []))

    def count(self, outcome: str) -> int:
        """How many of its cases end so."""
        return sum(ending == outcome for _, ending, _ in self.cases)

    @property
    def numbers(self) -> dict[str, str]:
        """How many cases there are, and how many of each outcome, as attributes."""
        counts = {"failures": "failure", "errors": "error", "skipped": "skipped"}
        return {
            "tests": str(len(self.cases)),
            **{key: str(self.count(outcome)) for key, outcome in counts.items()},
        }

    def lines(self) -> Iterator[str]:
        """Its part of the document."""
        yield "  " + _opening("testsuite", name=self.path, **self.numbers)
        for name, _, body in self.cases:
            case = _opening("testcase", name=name, classname=self.path)
            if not body:
                yield f"    {case}</testcase>"
                continue
            yield f"    {case}"
            yield from (f"      {line}" for line in body)
            yield "    </testcase>"
        yield "  </testsuite>"

    def _said(self, finding: Finding, outcome: str, reasons: dict[Finding, str]) -> Iterator[str]:
        """The element inside a case."""
        words = sentence(finding)
        place = f"{self.path}:{finding.place.line}:{finding.place.column}"
        located = escape(f"{place}: {finding.severity}: {finding.rule}: {words}")
        if outcome == "skipped":
            yield f"{_opening('skipped', message=safe(reasons[finding]))}</skipped>"
        elif outcome == "passed":
            yield f"<system-out>{located}</system-out>"
        else:
            yield f"{_opening(outcome, type=finding.severity, message=words)}{located}</{outcome}>"


def _outcome(finding: Finding, one: FileReview, reasons: dict[Finding, str]) -> str:
    if finding in reasons:
        return "skipped"
    if not one.opened:
        return "error"
    return "failure" if finding.severity in one.team.blocking else "passed"


def _case_name(finding: Finding) -> str:
    """``rep-range-narrow: Lower A, back squat (quadriceps)``."""
    where = f": {finding.where}" if finding.where else ""
    return safe(f"{finding.rule}{where}" + (f" ({finding.subject})" if finding.subject else ""))


def _added_up(suites: Iterable[dict[str, str]]) -> dict[str, str]:
    """The numbers of all suites together, those that the whole document may state."""
    sums = dict.fromkeys(("tests", "failures", "errors"), 0)
    for numbers in suites:
        for key in sums:
            sums[key] += int(numbers[key])
    return {key: str(number) for key, number in sums.items()}


def _opening(element: str, **attributes: str) -> str:
    said = "".join(f" {name}={quoteattr(value)}" for name, value in attributes.items())
    return f"<{element}{said}>"
