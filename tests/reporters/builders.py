"""Findings and reviews made by hand, for reporters to print."""

from __future__ import annotations

from typing import TYPE_CHECKING

from spotline.lint.engine.run import Fault
from spotline.lint.findings.finding import Finding, Related
from spotline.lint.project.results import FileReview
from spotline.lint.team.settings import Team
from spotline.lint.text.places import Place, Text
from spotline.lint.text.repository import FileResolver

if TYPE_CHECKING:
    from spotline.lint.findings.finding import Confidence, Severity

CONTENT = (
    "programme: Test\nsessions:\n  - session: Lower\n    exercises: [{exercise: back squat, sets: 30}]\n"
)


def place(name: str = "a.programme.yaml", words: str = "30") -> Place:
    start = CONTENT.index(words)
    return Text(name, CONTENT).place(start, start + len(words))


def finding(
    counted: str = "30 sets in one line.",
    *,
    severity: Severity = "warning",
    name: str = "a.programme.yaml",
    wanted: str = "at most 12 sets",
    change: str = "If it is a slip, correct it.",
    where: str = "Lower, back squat",
    related: tuple[Related, ...] = (),
    weeks: tuple[int, ...] = (),
    at: Place | None = None,
    why: str = "Numbers like these are nearly always slips of the pen.",
    sources: tuple[str, ...] = (),
    confidence: Confidence = "common practice",
    athletes: tuple[str, ...] = (),
) -> Finding:
    return Finding(
        "number-implausible",
        severity,
        at or place(name),
        counted,
        wanted=wanted,
        change=change,
        where=where,
        related=related,
        weeks=weeks,
        why=why,
        sources=sources,
        confidence=confidence,
        athletes=athletes,
    )


def reviewed(
    *findings: Finding,
    name: str = "a.programme.yaml",
    faults: tuple[Fault, ...] = (),
) -> FileReview:
    one = FileReview(FileResolver().file(name), Team())
    one.findings = list(findings)
    one.faults = list(faults)
    return one
