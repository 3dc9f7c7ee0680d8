"""The words for what an athlete spares, and the traits of exercises that each stands for.

Which words mean what is common practice, no source.
"""

from __future__ import annotations

from .names import words

Trait = tuple[str, ...]
"""A kind of trait of an exercise, and its name; where only an arc is meant, a joint and its degrees, too."""

OFF = ("from", "off")
ONE_LEG = ("single leg", "one leg", "one legged", "single legged", "unilateral")
ANY_WORK = ("work", "exercise", "training", "movement", "strength", "leg work", "leg exercise")
HINGES = ("hinge", "hip hinge", "deadlift")
GRIPS = {
    "close": ("close", "narrow"),
    "wide": ("wide",),
    "underhand": ("underhand", "supinated"),
    "overhand": ("overhand", "pronated"),
    "neutral": ("neutral",),
}
"""The grips of the catalogue, and what coaches call them."""
CHAINS = ("chain", "kinetic chain")
BACKS = ("back", "lower back", "spine", "trunk")
LIFTED = ("lift", "pull", "pick up", "pick thing up")

_LOWER_BACK: tuple[Trait, ...] = (
    ("axial", "moderate"),
    ("axial", "high"),
    ("trains", "lower back"),
    ("bends", "trunk"),
)
_WRIST: tuple[Trait, ...] = (("joint", "wrist"), ("hands", ""))
_ANKLE: tuple[Trait, ...] = (("joint", "ankle"), ("pattern", "jump"))
_JUMP: tuple[Trait, ...] = (("pattern", "jump"), ("kind", "plyometric"))
_RUN: tuple[Trait, ...] = (("station", "track"), ("station", "hill"), ("station", "treadmill"))
_DEEP: tuple[Trait, ...] = (("knee bent past", "100"),)
_LUNGE: tuple[Trait, ...] = (("lunge", ""),)
_PULLED_UP: tuple[Trait, ...] = (("pulled up", ""),)
_LEG_EXTENSION: tuple[Trait, ...] = (("called", "leg extension"),)
_PUSHED_OVERHEAD: tuple[Trait, ...] = (("pushed past", "150"),)
_OVERHEAD: tuple[Trait, ...] = (
    *_PUSHED_OVERHEAD,
    ("arm raised past", "150"),
    ("stance", "hanging"),
)
_LEGS_LIFTED: tuple[Trait, ...] = (("straight legs lifted", ""),)
_KNEE_LIFTED: tuple[Trait, ...] = (("action", "hip flexion"),)
_CURLED: tuple[Trait, ...] = (("trunk curled", ""), ("named", "curl-up"))
_SAT_UP: tuple[Trait, ...] = (("trunk curled", "trunk flexion"), ("named", "curl-up"))
_BENT_OVER: tuple[Trait, ...] = (("pattern", "hip hinge"), ("trunk curled", ""))
_PUSHED_UP: tuple[Trait, ...] = (("pattern", "vertical push"),)
_PULLED_DOWN: tuple[Trait, ...] = (("pattern", "vertical pull"),)
_TURNED: tuple[Trait, ...] = (("action", "trunk rotation"), ("pattern", "rotation"))
_PRESSED_BEHIND: tuple[Trait, ...] = (
    ("called", "behind-the-neck press"),
    ("called", "behind-the-neck push press"),
)
_PULLED_BEHIND: tuple[Trait, ...] = (("called", "behind-the-neck pulldown"),)
_FROM_THE_FLOOR: tuple[Trait, ...] = (("from the floor", ""),)
_DEADLIFTED: tuple[Trait, ...] = (("from the floor", "hip hinge"),)
STRAIN = "strain"
_HEAD_DOWN: tuple[Trait, ...] = (("named", "decline"), ("named", "handstand"), ("named", "pike push-up"))
_SKIPPED: tuple[Trait, ...] = (("called", "jump rope"), ("called", "A-skip"), ("called", "power skip"))
_ON_THE_TOES: tuple[Trait, ...] = (("action", "plantarflexion"),)

PARTS: dict[str, tuple[Trait, ...]] = {
    "knee": (("joint", "knee"), ("pattern", "jump")),
    "kneecap": (("joint", "knee"), ("pattern", "jump")),
    "shoulder": (("joint", "shoulder"), ("stance", "hanging")),
    "elbow": (("joint", "elbow"), ("joint", "forearm")),
    "wrist": _WRIST,
    "hand": _WRIST,
    "finger": _WRIST,
    "thumb": _WRIST,
    "hip": (("joint", "hip"),),
    "ankle": _ANKLE,
    "heel": _ANKLE,
    "foot": _ANKLE,
    "toe": _ANKLE,
    "achilles": _ANKLE,
    "lower back": _LOWER_BACK,
    "low back": _LOWER_BACK,
    "lumbar": _LOWER_BACK,
    "spine": _LOWER_BACK,
    "back": (*_LOWER_BACK, ("trains", "back")),
    "neck": (("joint", "neck"),),
    "rib": (("bends", "trunk"),),
    "trunk": (("bends", "trunk"),),
    "pelvic floor": (("axial", "high"), *_JUMP),
}
"""Parts of the body that are not muscles, with what loads them. Muscles are looked up in the catalogue."""

MOVEMENTS: dict[str, tuple[Trait, ...]] = {
    "overhead press": _PUSHED_OVERHEAD,
    "overhead push": _PUSHED_OVERHEAD,
    "overhead": _OVERHEAD,
    **dict.fromkeys(("overhead pull", "pull from overhead", "pull from above"), _PULLED_DOWN),
    **dict.fromkeys(("vertical press", "vertical push"), _PUSHED_UP),
    **dict.fromkeys(("horizontal press", "horizontal push"), (("pattern", "horizontal push"),)),
    "vertical pull": _PULLED_DOWN,
    "horizontal pull": (("pattern", "horizontal pull"),),
    "arm over the head": _OVERHEAD,
    **dict.fromkeys(
        (
            "arm above the shoulder",
            "hand above the shoulder",
            "elbow above the shoulder",
            "above shoulder height",
            "above shoulder level",
            "arm above shoulder height",
            "hand above shoulder height",
            "arm above shoulder level",
            "reach overhead",
            "reach up",
        ),
        (("pushed past", "100"), ("arm raised past", "100"), ("stance", "hanging")),
    ),
    "arm raise": (("action", "shoulder flexion"), ("action", "shoulder abduction")),
    "press over the head": _PUSHED_OVERHEAD,
    "press behind the neck": _PRESSED_BEHIND,
    "pull behind the neck": _PULLED_BEHIND,
    "behind the neck": (*_PRESSED_BEHIND, *_PULLED_BEHIND),
    "shoulder press": _PUSHED_UP,
    "press": (("pattern", "vertical push"), ("pattern", "horizontal push")),
    "push": (("pattern", "vertical push"), ("pattern", "horizontal push")),
    "bench press": (("pattern", "horizontal push"),),
    "chest press": (("pattern", "horizontal push"),),
    "pull": (("pattern", "vertical pull"), ("pattern", "horizontal pull")),
    "row": (("pattern", "horizontal pull"),),
    "pull up": _PULLED_UP,
    "chin up": _PULLED_UP,
    "push up": (("pattern", "horizontal push"),),
    "press up": (("pattern", "horizontal push"),),
    **dict.fromkeys(
        ("hang", "hang from straight arm", "hang on straight arm", "straight arm hang", "hang from a bar"),
        (("stance", "hanging"),),
    ),
    "squat": (("pattern", "squat"),),
    "deep squat": _DEEP,
    "full squat": _DEEP,
    "squat below parallel": _DEEP,
    "knee bend": (("action", "knee extension"),),
    "deep knee bend": _DEEP,
    "deep knee flexion": _DEEP,
    "straighten the knee": (("action", "knee extension"),),
    "lunge": _LUNGE,
    "split squat": _LUNGE,
    **dict.fromkeys(
        (
            "stand on one leg",
            "stand on leg",
            "single leg stand",
            "one leg stand",
            "single leg stance",
            "single leg balance",
            "one leg balance",
            "balance on one leg",
            "balance on leg",
        ),
        (("stance", "single leg"),),
    ),
    **{f"{way} {what}": (("one leg at a time", ""),) for way in ONE_LEG for what in ANY_WORK},
    **{f"{way} squat": (("on one leg", "squat"),) for way in ONE_LEG},
    **{f"{way} {what}": (("on one leg", "hip hinge"),) for way in ONE_LEG for what in HINGES},
    **{f"{way} {what}": (("on one leg", "jump"),) for way in ONE_LEG for what in ("jump", "hop", "land")},
    "hinge": (("pattern", "hip hinge"),),
    "hip hinge": (("pattern", "hip hinge"),),
    "hip thrust": (("pattern", "hip thrust"),),
    "deadlift": (("pattern", "hip hinge"),),
    **{f"deadlift {way} the floor": _DEADLIFTED for way in OFF},
    **{f"{what} {way} the floor": _FROM_THE_FLOOR for what in LIFTED for way in OFF},
    "bend forward": _BENT_OVER,
    "bend over": _BENT_OVER,
    "bend the back": _BENT_OVER,
    "bend the hip": (("pattern", "hip hinge"), ("action", "hip flexion")),
    "leg raise": _LEGS_LIFTED,
    "leg lift": _LEGS_LIFTED,
    "leg lower": _LEGS_LIFTED,
    "straight leg raise": _LEGS_LIFTED,
    "straight leg lift": _LEGS_LIFTED,
    "straight leg lower": _LEGS_LIFTED,
    "knee raise": _KNEE_LIFTED,
    "knee lift": _KNEE_LIFTED,
    "knee drive": _KNEE_LIFTED,
    "jump": _JUMP,
    "hop": _JUMP,
    "land": _JUMP,
    "skip": _SKIPPED,
    "plyometric": _JUMP,
    "impact": (*_JUMP, *_RUN),
    "run": _RUN,
    "sprint": _RUN,
    "twist": _TURNED,
    "rotation": _TURNED,
    "turn the trunk": _TURNED,
    "turn the head": (("joint", "neck"),),
    "shoulder rotation": (("action", "shoulder external rotation"), ("action", "shoulder internal rotation")),
    "hip rotation": (("action", "hip external rotation"), ("action", "hip internal rotation")),
    "forearm rotation": (("joint", "forearm"),),
    "side bend": (("action", "trunk side bend"),),
    "crunch": _SAT_UP,
    "sit up": _SAT_UP,
    **dict.fromkeys(
        (
            "spinal flexion",
            *(f"{bend} the {part}" for bend in ("round", "curl", "flex") for part in BACKS),
            *(f"bend the {part}" for part in ("lower back", "spine")),
        ),
        _CURLED,
    ),
    "spinal extension": (("action", "trunk extension"),),
    "arch the back": (("action", "trunk extension"),),
    "arch the lower back": (("action", "trunk extension"),),
    "bend backward": (("action", "trunk extension"),),
    "spinal load": (("axial", "moderate"), ("axial", "high")),
    "axial load": (("axial", "moderate"), ("axial", "high")),
    "carry": (("pattern", "carry"),),
    "throw": (("pattern", "throw"),),
    "kneel": (("stance", "kneeling"), ("stance", "quadruped")),
    "lie on the back": (("stance", "lying"),),
    "supine": (("stance", "lying"),),
    "lie flat": (("stance", "lying"),),
    "lie on the front": (("stance", "prone"),),
    "lie face down": (("stance", "prone"),),
    "lie face up": (("stance", "lying"),),
    "prone": (("stance", "prone"),),
    **dict.fromkeys(
        ("head down", "head low", "head below the heart", "upside down", "inversion"), _HEAD_DOWN
    ),
    "grip": _WRIST,
    **{f"{said} grip": (("grip", grip),) for grip, ways in GRIPS.items() for said in ways},
    "bend the elbow": (("action", "elbow flexion"),),
    "straighten the elbow": (("action", "elbow extension"),),
    "bend the wrist": (("joint", "wrist"),),
    "calf raise": _ON_THE_TOES,
    "heel raise": _ON_THE_TOES,
    "rise on the toes": _ON_THE_TOES,
    "stand on the toes": _ON_THE_TOES,
    "leg curl": (("action", "knee flexion"),),
    "leg extension": _LEG_EXTENSION,
    **{f"open {chain} {limb} extension": _LEG_EXTENSION for chain in CHAINS for limb in ("leg", "knee")},
}
"""Movements in a coach's words. The names of joint actions are added from the catalogue."""

MANOEUVRES: dict[str, tuple[Trait, ...]] = dict.fromkeys(
    (
        "hold the breath", "straining", "bear down", "valsalva", "valsalva manoeuvre", "valsalva maneuver",
        "max effort", "maximal effort", "maximum effort", "all out effort", "max lift", "maximal lift",
        "max load", "maximal load", "near maximal load", "one rep max", "max out", "failure", "go to failure",
    ),
    ((STRAIN, ""),),
)  # fmt: skip
"""Words for what no exercise is by itself, but heavy work is: the breath held against a load."""

LEFT_OUT = frozenset(
    words(
        "a all an any anything both double hard heavy her his its light loaded my of the their two"
        " weighted your"
    )
)
"""Words that no phrase needs: "lowering of both legs" is "leg lower", "heavy squats" are squats."""

SIDES_OF_A_PART = frozenset(words("back bottom front inside outside side top"))
"""Words before "of": the back of a knee is no back."""

BESIDE = frozenset(
    words(
        "above against at avoid band bar barbell below bench bent beyond body bodyweight box by cable deep"
        " down dumbbell during end exercise fast floor for forward free from front full ground half high"
        " implement in inner into kettlebell lift load low machine more motion movement muscle never no not"
        " off on one only out outer over parallel part partial past please position quarter quick range rear"
        " repeated same seat sideway single slow stand step straight sudden than through to train under up"
        " upper very wall weight when while with without work"
    )
)
"""Words that may stand beside what is spared and change nothing of what is looked for."""

HARMLESS = frozenset(
    words(
        "against at avoid by do doing during exercise for from in into lift motion movement never no not of"
        " on position please the through to train use with work"
    )
)
"""Words of those above that say nothing more of what is spared."""

LOADED = frozenset(words("load loaded loading weight weighted"))
"""Words for a load, with which alone something is to be spared."""

HEAVY = frozenset(words("hard heavy"))
"""Words for much of it."""

ONE = frozenset(words("one single"))
"""Words for one limb at a time."""

MANNER = frozenset(
    words(
        "abrupt again alone bounce bounced bouncing breath breathe breathing cold crossed crossing dizzy"
        " effort explosive fasted fasting flat get getting go height hot intense jerk jerking jerky kipping"
        " long lying maximal moderate momentum prolonged quickly rapid rapidly rest room rush rushing"
        " sitting standing strenuous sudden suddenly tired tiring too turn turns twice very vigorous without"
    )
)
"""Words for how something is done, not what: what is written so is for whoever leads to see to."""
