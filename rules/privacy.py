"""Diagnoses, treatments and medicines, which have no place in git."""

from __future__ import annotations

import re
from functools import cache

from ..lint.engine.limits import Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Related, found
from ..lint.wording.words import first_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.ledger import Ledger, Lifter
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.model.athlete import Athlete
    from ..lint.text.places import Place, Text

MOST_LINES = 20_000
"""Lines that are remembered as holding no word of a diagnosis."""

NEARBY = 200
"""Characters to either side of a word that are looked at."""


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

OPERATIONS = Option(
    "words with a body part",
    (
        "replaced",
        "replacement",
        "operated",
        "operation",
        "reconstructed",
        "reconstruction",
        "repaired",
        "fused",
        "broke",
        "broken",
        "prosthesis",
    ),
    "words that read so where they stand beside a part of the body",
    "common practice",
)

_LIMB = (
    r"(?:hip|knee|shoulder|ankle|wrist|elbow|hand|foot|finger|thumb|toe|arm|leg|thigh|calf|shin|heel|neck"
    r"|heart)"
)
_PART = (
    rf"(?:{_LIMB}|spine|disc|vertebra|rib|collarbone|pelvis|kneecap|jaw|nose|tendon|ligament|cartilage|meniscus"
    r"|labrum|(?:rotator )?cuff|muscle|joint|bone|achilles|hamstring|quad|quadriceps|biceps|triceps|pec|groin"
    r"|adductor|valve|retina)s?"
)
_PERSON = r"(?:she|he|they|i|her|his|their|my|athlete|client)"
_LINK = r"(?:joint|was|were|is|has|had|been|got|fully|partly|total|totally)"
_WHOSE = r"(?:on|of|in|the|a|an|her|his|their|my|your|left|right|both|other|one)"
_STOP = (
    r"(?=s?\s*(?:$|[^\w\s-]|\d|\b(?:in|on|since|at|last|this|from|after|before|and|or|as|when|two|years?)\b))"
)
_EQUIPMENT = (
    r"(?:band|strap|belt|sleeve|wrap|glove|shoe|mat|pad|padding|ball|rope|bench|cable|plate|bar|barbell|dumbbell"
    r"|kettlebell|box|grip|net|shirt|suit|bag|sandbag|sling|ring|tape|cover|seat|machine|collar|sled|harness|tube"
    r"|handle|towel|upholstery|vinyl|cushion|rack|page|sheet|press)(?:e?s)?"
)
"""Words beside a word of the list: parts of the body, people, and equipment, which is torn too."""

_CLAUSE = r"[,;.(){}\[\]:\"#\r\n]"

_OF_THINGS_TOO = ("torn", "rupture", "fracture", "sprain", "dislocation")
"""Beginnings of words of the list that are said of equipment, too."""

_INJURIES = (
    "sprain",
    "fracture",
    "dislocation",
    "torn",
    "rupture",
    "broke",
    "hamstring strain",
    "muscle strain",
)
"""Beginnings of words of the list for what heals."""

_HEALED = (
    r"(?<!not )(?<!not yet )(?<!never )\b(?:sound|healed|recovered|resolved|mended|settled|fine now"
    r"|symptom-free|pain-free|no (?:trouble|symptoms|pain|problems?|limits?|limitations?)"
    r"(?! (?:under|below|up to|until|unless)))\b"
)
"""Words for what is over, as whoever coaches needs to know it."""

_LASTING = (
    "asthma", "COPD", "blood", "hypertens", "diabet", "epilep", "angina", "arrhythmia", "atrial", "coronary",
    "heart", "pacemaker", "arthritis", "osteo", "rheumatoid", "migraine", "pregnan", "postpartum", "insulin",
    "beta", "statin", "anticoagulant", "warfarin", "scoliosis", "kidney", "dialysis",
)  # fmt: skip
"""Beginnings of words of the list for what lasts: whoever leads a session may have to know of it."""

_SIDED = r"\b(?:left|right|bilateral)\b|(?<!\w)[LR](?=\s)"

_EMERGENCY = (
    r"\b(?:inhalers?|puffers?|relievers?|adrenaline|epinephrine|auto-?injectors?|GTN|nitro\w*|sprays?|glucose"
    r"|dextrose|sugar|gels?|sweets|juice|snacks?|hypos?|seizures?|fits?|recovery position|first aid|ambulance"
    r"|emergency|anaphyla\w+|allerg\w+|rescue|pumps?|pens?|pocket"
    r"|kit bag|(?:in|by) (?:the|her|his|their) bag)\b"
)
"""Words for what whoever leads a session must know when something happens."""

_TO_DO = (
    r"\b(?:if|when|above|over|below|under)\b[^.;]{0,60}"
    r"\b(?:stop|rest|walk|skip|ring|call|lighter|go home)(?:s|ping)?\b"
    r"|\b(?:check|measure|take|read|test)(?:ed|s)?\b[^.;]{0,40}\b(?:before|first|after)\b"
)
"""Words for what is done in a session by what is measured."""

_SENTENCE = r"[.;{}\[\]:\"#\r\n]"

_NOTE = r"[{}\[\]\"#]|\n\s*[\w ]+:"
"""What ends a note, of however many sentences."""

_MOVEMENT = r"(?<!scapular )(?<!shoulder )(?<!blade )depression"
"""Depression of the shoulder blade is a joint action."""


@rule(
    "diagnosis-in-programme",
    family="care",
    severity="warning",
    confidence="fact",
    why="Files in git are read by many and forget nothing. Restrictions belong in movement terms, such as no"
    " overhead pressing; what lies behind them belongs with the clinician. What whoever leads a session must"
    " know in an emergency is theirs to read. Whoever keeps the repository can clear its history.",
    sources=(),
    options=(PRIVATE, OPERATIONS),
)
def diagnosis_in_programme(ledger: Ledger, text: Text, limits: Limits) -> Iterator[DraftFinding]:
    """A diagnosis, treatment or medicine written into a programme, be it in a note or a comment.

    Looks for the words of a list in the whole file, but for athletes who are written in it, and for
    operations beside a part of the body; wants none. What is said of equipment, such as a torn band, passes,
    and so does what to know in an emergency, such as where the inhaler is; an injury that is said to have
    healed, and a lasting condition without a side of the body, are notes. The lists are the team's to change.

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
        for place in _private(text.place(0, len(text.content)), limits)
        if not any(place.start in range(extent.start, extent.end) for extent in extents)
    ]
    if places:
        yield _told(places, ledger.programme.name)


@rule(
    "diagnosis-in-athlete-file",
    family="care",
    severity="warning",
    confidence="fact",
    why="Files in git are read by many and forget nothing. Restrictions belong in movement terms, such as no"
    " overhead pressing; what lies behind them belongs with the clinician. What whoever leads a session must"
    " know in an emergency is theirs to read. Whoever keeps the repository can clear its history.",
    sources=(),
    options=(PRIVATE, OPERATIONS),
)
def diagnosis_in_athlete_file(lifter: Lifter, limits: Limits) -> Iterator[DraftFinding]:
    """A diagnosis, treatment or medicine in an athlete's file, or where a programme describes an athlete.

    Looks for the words of a list in all that is written of the athlete, comments too, and for operations
    beside a part of the body; wants none. What is said of equipment, such as a torn band, passes, and so does
    what to know in an emergency, such as where the inhaler is. Silent where it is said what the words mean
    for training, but not in the words under `protect`: what is to be spared stands there, a clearance is on
    file, or a note says what may be done or not, or that all may. A note where it may be a remark for whoever
    leads: an injury that has healed, a lasting condition without a side of the body, whatever stands beside
    words on training. The lists are the team's to change.

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
    athlete = lifter.athlete
    places = _private(athlete.extent, limits)
    in_hand = athlete.clearance is not None or bool(athlete.protect)
    left = [
        place
        for place in places
        if _is_in_a_restriction(place, athlete) or not (in_hand or _is_explained(place))
    ]
    if left:
        yield _told(left, athlete.name, is_remark=any(map(_is_of_use, left)))


def _is_in_a_restriction(place: Place, athlete: Athlete) -> bool:
    """Whether it stands in the words of what is to be spared, which the lifter's sheet tells."""
    subjects = [one.subject.place for one in athlete.protect]
    return any(place.start in range(one.start, one.end) for one in subjects)


def _private(extent: Place, limits: Limits) -> list[Place]:
    """Where one of the words stands by itself, in the singular or plural, in a stretch of text."""
    words = limits.names("words"), limits.names("words with a body part")
    # A quick look first, at lines not seen before: nearly every text holds none of them.
    clean = _clean_lines(words)
    new = [line for line in extent.excerpt.casefold().splitlines() if line not in clean]
    content = "\n".join(new)
    alike = [alike for first, alike in _patterns(*words) if first in content]
    if not alike:
        if len(clean) > MOST_LINES:
            clean.clear()
        clean.update(new)
        return []
    pattern = re.compile(rf"(?<![\w-])(?:{'|'.join(alike)})s?(?![\w-])", re.IGNORECASE)
    matches = pattern.finditer(extent.text.content, extent.start, extent.end)
    places = [extent.text.place(*match.span()) for match in matches if not _is_of_a_thing(match)]
    return [place for place in places if not _is_for_the_session(place)]


def _is_of_a_thing(match: re.Match[str]) -> bool:
    """Whether a word is said of equipment: its clause holds some, and no part of the body or person."""
    if not match.group().casefold().startswith(_OF_THINGS_TOO):
        return False
    around = _around(match.string, *match.span(), _CLAUSE)
    clause = re.sub(rf"\b{_LIMB}[\s-]+(?={_EQUIPMENT}\b)", "", around, flags=re.IGNORECASE)
    told = re.search(rf"\b(?:{_PART}|{_PERSON})\b", clause, re.IGNORECASE)
    return told is None and re.search(rf"\b{_EQUIPMENT}\b", clause, re.IGNORECASE) is not None


def _is_over(place: Place) -> bool:
    """Whether an injury is said to have healed, by its sentence: ``old left ankle sprain, sound``."""
    injured = place.excerpt.casefold().startswith(_INJURIES)
    return injured and re.search(_HEALED, _sentence(place), re.IGNORECASE) is not None


def _lasts(place: Place) -> bool:
    """Whether it is a condition or a medicine, with no side of the body: more a remark than a record."""
    begins = re.split(r"[\s-]", place.excerpt)[0].casefold().startswith(tuple(map(str.casefold, _LASTING)))
    return begins and re.search(_SIDED, _sentence(place), re.IGNORECASE) is None


_MEANT = (
    r"\b(?:cleared|clear to|clearance|nothing forbidden|no restrictions?|no limits?|no limitations?"
    r"|unrestricted|signed off|discharged|allowed|may (?:do|lift|train|squat|press|run|jump|row|pull)"
    r"|ok(?:'?d|ayed)? (?:to|by|for)|fine (?:for|to|with)|fit (?:for|to)|full training|trains? normally"
    r"|avoid\w*|careful with|watch (?:the|her|his)"
    r"|if (?:it|she|he|pain|sore|dizzy)\b[^.;]{0,40}\b(?:stop|rest|ring|call|tell|skip)\w*)\b"
)
"""Words for what a medical detail means for training."""


_OF_TRAINING = (
    r"\b(?:doctor|physician|GP|physio\w*|surgeon|consultant|clinic|no|not|only|until|till|careful|easy|light|pain"
    r"|load|lift\w*|squat\w*|press\w*|pull\w*|jump\w*|run\w*|train\w*|tablets?|controlled|breath\w*)\b"
)
"""Words beside which a medical detail is of use to whoever leads."""


def _is_of_use(place: Place) -> bool:
    """Whether the note around a place may be a remark for whoever leads."""
    return re.search(_OF_TRAINING, _sentence(place, _NOTE), re.IGNORECASE) is not None


def _is_explained(place: Place) -> bool:
    """Whether the note around a place says what it means for training: ``old sprain, cleared 1 Dec``."""
    return re.search(_MEANT, _sentence(place), re.IGNORECASE) is not None


def _is_for_the_session(place: Place) -> bool:
    """Whether a note says what to know in an emergency, ``Asthma. Inhaler in the top pocket``, or what to do
    in a session: ``blood pressure first, above 170 only a walk``.
    """
    return _lasts(place) and (
        re.search(_EMERGENCY, _sentence(place, _NOTE), re.IGNORECASE) is not None
        or re.search(_TO_DO, _sentence(place), re.IGNORECASE) is not None
    )


def _sentence(place: Place, ends: str = _SENTENCE) -> str:
    """What stands around a place up to the next full stop, or key, or line."""
    return _around(place.text.content, place.start, place.end, ends)


def _around(content: str, start: int, end: int, ends: str) -> str:
    """What stands before and after a stretch of a text, up to the next of some ends."""
    before = re.split(ends, content[:start][-NEARBY:])[-1]
    after = re.split(ends, content[end:][:NEARBY])[0]
    return f"{before} {after}"


@cache
def _clean_lines(words: tuple[tuple[str, ...], ...]) -> set[str]:
    """Lines of texts looked through before in which none of some words begins."""
    return set()


@cache
def _patterns(words: tuple[str, ...], operations: tuple[str, ...]) -> list[tuple[str, str]]:
    """The beginning of each of some words, and a pattern for all of it, hyphens and blanks alike; that of an
    operation holds the part of the body, too.
    """
    parts = [re.split(r"[\s-]", word) for word in words]
    movement = {"depression": _MOVEMENT}
    alone = [
        (each[0].casefold(), movement.get(each[0], r"[\s-]+".join(map(re.escape, each)))) for each in parts
    ]
    return alone + [(word.casefold(), _beside_part(re.escape(word))) for word in operations]


def _beside_part(word: str) -> str:
    """A pattern for a word beside a part of the body, ``hip was replaced`` and ``broke her wrist``, but no
    lift or piece of equipment that is named by one.
    """
    return rf"{_PART}(?:\s+{_LINK})*[\s-]+{word}(?!\s+(?:by|with)\b)|{word}(?:\s+{_WHOSE})*\s+{_PART}{_STOP}"


def _told(places: list[Place], where: str, *, is_remark: bool = False) -> DraftFinding:
    first, *others = places
    words = list(dict.fromkeys(f"`{place.excerpt}`" for place in places))
    detail = "reads like a medical detail" if len(words) == 1 else "read like medical details"
    is_remark = is_remark or all(_is_over(place) or _lasts(place) for place in places)
    return found(
        first,
        f"{first_of(words)} {detail}.",
        severity="note" if is_remark else "error",
        wanted="movement terms, and what whoever leads must know" if is_remark else "movement terms only",
        change="Keep what a session needs, write limits under `protect`, and take out the rest."
        if is_remark
        else "Write under `protect` what to spare, or take the word off the list in spotline.yaml.",
        where=where,
        related=tuple(Related(place, "here too") for place in others),
    )
