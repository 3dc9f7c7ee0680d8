"""What coaches say in their files' own words: of an athlete, and of a programme throughout."""

from __future__ import annotations

import re

from .shared import beginning, notes_on

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..lint.counting.ledger import Ledger, Lifter
    from ..lint.model.athlete import Athlete, Restriction
    from ..lint.model.programme import Programme

PROFESSIONALS = (
    "physician", "doctor", "GP", "general practitioner", "physio", "physical therapist", "surgeon",
    "consultant", "specialist", "osteopath", "chiropract", "cardiolog", "orthop", "rheumatolog", "clinic",
    "athletic trainer", "athletic therapist", "sports medic", "nurse", "midwife", "hospital", "rehab team",
    "cardiac rehab", "medical",
)  # fmt: skip
"""Beginnings of words for licensed professionals, and where they work."""

is_professional = beginning(PROFESSIONALS)

DOCTORS = (
    "physician", "doctor", "GP", "general practitioner", "surgeon", "consultant", "specialist", "cardiolog",
    "medical", "hospital",
)  # fmt: skip
"""Beginnings of words for those among them who look at all of somebody's health."""

is_doctor = beginning(DOCTORS)

_ASKED = (
    r"(?i)\b(?:ok(?:'?d|ayed)?|okay|clear(?:ed|ance|s)?|approv\w*|agree[ds]?|sign(?:ed)?[ -]?off|letter"
    r"|discharged|passed|fine|happy|said|says|saw|seen|check(?:ed|-?up)?|allow(?:s|ed)?|lets?"
    r"|go-?ahead|green light)\b"
)
"""Words for what a professional was asked and answered."""

_DATE = (
    r"(?i)\b(?:20\d\d|\d{1,2}[./]\d{1,2}|(?:jan|feb|mar|apr|may|june?|july?|aug|sept?|oct|nov|dec)[a-z]*)\b"
)

_NOT_SCREENED = r"(?i)\bno (?:par-?q|health (?:questionnaire|form|check)|screening|medical check)"

_REFUSED = r"(?i)\b(?:not|never|hasn'?t|haven'?t|without|awaiting|waiting|ask|needs?)\b"

_SCREENED = (
    r"(?i)\b(?:par-?q|health (?:questionnaire|form|check)|screen(?:ed|ing)|medical check"
    r"|nothing (?:wrong|to report|known)[^.;]*\b(?:medical|health)\w*"
    r"|no (?:known |other )?(?:medical|health) (?:issues?|problems?|conditions?|complaints?)"
    r"|medically (?:fine|well|sound|fit|clear))"
)

_SENTENCE = r"[.;!?]\s|\n"


def of_athlete(athlete: Athlete) -> Iterator[str]:
    """All that is noted of an athlete."""
    yield athlete.note
    yield athlete.supervision
    for restriction in athlete.protect:
        yield restriction.note


def of_programme(programme: Programme) -> Iterator[str]:
    """Every note of a programme, its blocks, sessions and lines."""
    yield programme.note
    for block in programme.blocks:
        yield block.note
        yield from (activity.note for activity in block.activities)
    for session in programme.sessions():
        yield session.note
    for line in programme.prescriptions():
        yield from notes_on(line)
        if line.progression is not None:
            yield line.progression.when
            yield line.progression.note


def of_lifter(lifter: Lifter) -> Iterator[str]:
    """All that is noted of an athlete and in their programmes."""
    yield from of_athlete(lifter.athlete)
    for plan in lifter.plans:
        yield from of_programme(plan.programme)


def is_word_of_a_professional(restriction: Restriction) -> bool:
    """Whether a licensed professional advised a restriction and a date says when it holds.

    Weeks of the programme are such a date; a day on which to ask again does not say when anybody was asked.
    """
    when = (restriction.begins, restriction.ends, restriction.in_weeks)
    return is_professional([restriction.adviser]) and any(when)


def who_cleared(texts: Iterable[str]) -> Iterator[str]:
    """The sentences that say that a professional was asked: ``GP ok'd 4 Jan``."""
    for text in texts:
        for sentence in re.split(_SENTENCE, text):
            asked = is_professional([sentence]) and re.search(_ASKED, sentence) is not None
            if asked and re.search(_REFUSED, sentence) is None:
                yield sentence


def says_who_cleared(texts: Iterable[str]) -> bool:
    """Whether a sentence says that a professional was asked, and when."""
    return any(re.search(_DATE, sentence) is not None for sentence in who_cleared(texts))


def plans_review(ledger: Ledger) -> bool:
    """Whether an event or a note of the programme says that a stage is looked at again."""
    names = (event.name for _, event in ledger.events())
    return any(re.search(_REVIEW, text) for text in (ledger.programme.note, *names))


_REVIEW = (
    r"(?i)\b(?:review|re-?check|check-?up|follow-?up|re-?assess\w*|re-?test|next appointment"
    r"|sees? (?:the )?(?:physio\w*|doctor|surgeon|consultant))\b"
)


def says_screened(texts: Iterable[str]) -> bool:
    """Whether a sentence says that the athlete's health was asked about."""
    return any(
        re.search(_SCREENED, sentence) is not None
        and re.search(f"{_REFUSED}|{_NOT_SCREENED[4:]}", sentence) is None
        for text in texts
        for sentence in re.split(_SENTENCE, text)
    )
