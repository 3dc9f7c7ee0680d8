"""Diagnoses, treatments and medicines, which have no place in git."""

from __future__ import annotations

import re
from functools import cache

from ..lint.engine.limits import Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Related, found
from .shared import some_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.ledger import Ledger, Lifter
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.text.places import Place, Text

MOST_LINES = 20_000
"""Lines that are remembered as holding no word of a diagnosis."""


# Privacy

_DIAGNOSES = """
ACL, PCL, ADHD, COPD, angina, anorexia, anticoagulant, antidepressant, anxiety disorder, arrhythmia,
arthritis, asthma, atrial fibrillation, beta blocker, blood pressure, blood thinner, bulimia, bursitis,
cancer, chemotherapy, concussion, coronary, depression, diabetes, diabetic, dialysis, disc bulge,
dislocation, eating disorder, epilepsy, epileptic, fasciitis, fracture, fractured, frozen shoulder, golfer's
elbow, hamstring strain, heart attack, heart disease, heart failure, hernia, herniated, hypertension,
hypertensive, ibuprofen, impingement, insulin, kidney disease, labrum tear, ligament tear, meniscus,
migraine, muscle strain, osteoarthritis, osteopenia, osteoporosis, pacemaker, Parkinson's, post-op,
postpartum, pregnancy, pregnant, rheumatoid, rupture, ruptured, sciatica, scoliosis, shin splints, slipped
disc, spondylolisthesis, spondylolysis, sprain, sprained, statin, stenosis, surgery, tendinitis,
tendinopathy, tendonitis, tendonopathy, tennis elbow, torn, warfarin
"""

PRIVATE = Option(
    "words",
    tuple(" ".join(word.split()) for word in _DIAGNOSES.split(",")),
    "words that read like a diagnosis, a treatment or a medicine",
    "common practice",
)

_NO_MOVEMENT = r"(?<!scapular )(?<!shoulder )(?<!blade )"
"""Depression of the shoulder blade is a joint action."""


@rule(
    "diagnosis-in-programme",
    family="care",
    severity="warning",
    confidence="fact",
    why="Files in git are read by many and forget nothing. Restrictions belong in movement terms; what lies"
    " behind them belongs with the clinician.",
    sources=(),
    options=(PRIVATE,),
)
def diagnosis_in_programme(ledger: Ledger, text: Text, limits: Limits) -> Iterator[DraftFinding]:
    """A diagnosis, treatment or medicine written into a programme, be it in a note or a comment.

    Looks for the words of a list in the whole file, but for athletes who are written in it; wants none. The
    list is the team's to change.

    Flags:
        programme: Calf
        note: tendinopathy since March  # <- here
        sessions: [{session: Daily, exercises: [{exercise: heel drop, sets: 3, reps: 15}]}]

    Passes:
        programme: Calf
        note: loaded since March
        sessions: [{session: Daily, exercises: [{exercise: heel drop, sets: 3, reps: 15}]}]
    """
    extents = [athlete.extent for athlete in ledger.programme.athletes if athlete.extent.text is text]
    places = [
        place
        for place in _private(text.place(0, len(text.content)), limits.names("words"))
        if not any(extent.start <= place.start < extent.end for extent in extents)
    ]
    if places:
        yield _told(places, ledger.programme.name)


@rule(
    "diagnosis-in-athlete-file",
    family="care",
    severity="warning",
    confidence="fact",
    why="Files in git are read by many and forget nothing. Restrictions belong in movement terms; what lies"
    " behind them belongs with the clinician.",
    sources=(),
    options=(PRIVATE,),
)
def diagnosis_in_athlete_file(lifter: Lifter, limits: Limits) -> Iterator[DraftFinding]:
    """A diagnosis, treatment or medicine in an athlete's file, or where a programme describes an athlete.

    Looks for the words of a list in all that is written of the athlete, comments too; wants none. The list
    is the team's to change.

    Flags:
        programme: Knee
        athlete:
          name: Ida
          note: meniscus in May  # <- here
        sessions: [{session: Lower, exercises: [{exercise: leg press, sets: 3, reps: 8}]}]

    Passes:
        programme: Knee
        athlete:
          name: Ida
          note: lighter since May
        sessions: [{session: Lower, exercises: [{exercise: leg press, sets: 3, reps: 8}]}]
    """
    places = _private(lifter.athlete.extent, limits.names("words"))
    if places:
        yield _told(places, lifter.athlete.name)


def _private(extent: Place, words: tuple[str, ...]) -> list[Place]:
    """Where one of the words stands by itself, in the singular or plural, in a stretch of text."""
    # A quick look first, at lines not seen before: nearly every text holds none of them.
    clean = _clean_lines(words)
    new = [line for line in extent.excerpt.casefold().splitlines() if line not in clean]
    content = "\n".join(new)
    alike = [alike for first, alike in _patterns(words) if first in content]
    if not alike:
        if len(clean) > MOST_LINES:
            clean.clear()
        clean.update(new)
        return []
    pattern = re.compile(rf"{_NO_MOVEMENT}(?<![\w-])(?:{'|'.join(alike)})s?(?![\w-])", re.IGNORECASE)
    matches = pattern.finditer(extent.text.content, extent.start, extent.end)
    return [extent.text.place(*match.span()) for match in matches]


@cache
def _clean_lines(words: tuple[str, ...]) -> set[str]:
    """Lines of texts looked through before in which none of some words begins."""
    return set()


@cache
def _patterns(words: tuple[str, ...]) -> list[tuple[str, str]]:
    """The beginning of each of some words, and a pattern for all of it, hyphens and blanks alike."""
    parts = [re.split(r"[\s-]", word) for word in words]
    return [(each[0].casefold(), r"[\s-]+".join(map(re.escape, each))) for each in parts]


def _told(places: list[Place], where: str) -> DraftFinding:
    first, *others = places
    words = list(dict.fromkeys(f"`{place.excerpt}`" for place in places))
    read = "reads" if len(words) == 1 else "read"
    return found(
        first,
        f"{some_of(words)} {read} like a diagnosis, a treatment or a medicine.",
        wanted="restrictions in movement terms, such as: no overhead pressing until 1 June",
        change="Take it out, say what movement to spare and who advised it, and ask whoever keeps the"
        " repository about its history. If it means something else, take the word off the list in"
        " spotline.yaml.",
        where=where,
        related=tuple(Related(place, "here too") for place in others),
    )
