"""What the review says of the trials' prescriptions, finding by finding, and why it is right to say it.

Each file of tests/published names its source. A trial answers one question on purpose; what the review says is
about using its prescription as somebody's whole programme, and blames no trial. The texts and sums of the files are
checked in test_published.py.
"""

from __future__ import annotations

from collections import Counter
from datetime import date
from pathlib import Path

import pytest

from spotline.lint.findings.finding import Finding
from spotline.lint.project.review import review

PUBLISHED = Path(__file__).parent.parent / "published"
ENDING = ".programme.yaml"
TODAY = date(2026, 1, 5)

Said = dict[str, tuple[str, str]]
"""By rule: the severity, and the reason why it is right."""

NO_HINGE = (
    "No hip extension with a nearly straight knee: cp-both, common practice, no source. No goal, so a note."
)
SQUATS = "No lift bends the knee against load: squats left the hamstrings as they were (kubo-2019)."
CALVES = "4 sets of two raises on 3 days are 24, past the 20 of cp-cap: common practice, no source; no trial's limit."
STAYS = (
    "12 weeks at 70 % x 10 x 5 as printed, no word here of how the load moves on: common practice, no source."
)

ONE_LIFT: Said = {}
"""Nordic curls alone: one lift, on purpose, and nothing to say."""

NO_HINGE_AT_ALL: Said = {"hip-hinge-missing": ("note", NO_HINGE)}

FRONT_ONLY: Said = {**NO_HINGE_AT_ALL, "knee-flexion-missing": ("note", SQUATS)}
"""Squats, with presses and leg extensions or without; the finding lists that there is no hinge."""

CALF_RAISES: Said = {"weekly-sets-over-limit": ("warning", CALVES)}

EXPECTED: dict[str, Said] = {
    "alfredson-type": {},  # 84 sets a week in rehabilitation under a clinician: nothing but silence
    "alonso-fernandez": ONE_LIFT,
    "alt": ONE_LIFT,
    "anastasi-hamzeh": ONE_LIFT,
    "beyer-2015": {
        "stop-signs-missing": ("note", "The copy prints no pain limit, which the treatment surely had."),
    },
    "botton-2018": {
        "antagonist-imbalance": (
            "note",
            "Leg press and extension against one leg curl are 2 : 1, past 3 : 2 but not past 2 : 1: cp-balance,"
            " common practice, no source.",
        ),
        "hip-hinge-missing": ("note", NO_HINGE),
        "pull-or-push-missing": (
            "note",
            "An incline press and a low row go to the front; nothing goes overhead. Common practice, no source.",
        ),
    },
    "campos-2002-high": FRONT_ONLY,  # 12, then 18 sets a week: inside the limit, and a step of 6
    "campos-2002-intermediate": {
        **FRONT_ONLY,
        "weekly-sets-over-limit": (
            "warning",
            "27 sets for the quadriceps from week 5, as printed; cp-cap is 20: common practice, no source.",
        ),
        "sets-step-large": (
            "note",
            "18 to 27 sets at once; the boldest arm of enes-2024 added 6 a fortnight.",
        ),
    },
    "campos-2002-low": {
        **NO_HINGE_AT_ALL,
        "weekly-sets-over-limit": (
            "warning",
            "24, then 36 sets for the quadriceps, as printed; cp-cap is 20: common practice, no source.",
        ),
        "sets-step-large": (
            "note",
            "24 to 36 sets at once; the boldest arm of enes-2024 added 6 a fortnight.",
        ),
    },
    "clark": ONE_LIFT,
    "delahunt": ONE_LIFT,
    "freeman": ONE_LIFT,
    "jphysiol-2015": {
        **NO_HINGE_AT_ALL,
        "antagonist-imbalance": (
            "warning",
            "6 leg presses, 3 leg extensions and 3 lunges against 3 leg curls are 4 : 1 however many sessions a"
            " week there were: cp-balance, common practice, no source.",
        ),
    },
    "kinoshita-2023": {"nothing-changes": ("note", STAYS)},
    "loadit-2020-1": CALF_RAISES,
    "loadit-2020-2": CALF_RAISES,
    "loadit-2020-3": CALF_RAISES,
    "loadit-2020-4": CALF_RAISES,
    "maeo-2021": {**ONE_LIFT, "nothing-changes": ("note", STAYS)},
    "petersen-2011": ONE_LIFT,  # repetitions more than double in weeks 2 and 3, from a tiny start: no word on it
    "van-der-horst-2015": ONE_LIFT,
    "weiss-1999-13-15": FRONT_ONLY,
    "weiss-1999-23-25": FRONT_ONLY,
    "weiss-1999-3-5": NO_HINGE_AT_ALL,
}


@pytest.fixture(scope="module")
def found() -> dict[str, list[Finding]]:
    """The findings of every file by its name, listed ones too, from one review of them all."""
    files = review([str(PUBLISHED)], TODAY).files
    assert not [fault.words for file in files for fault in file.faults]
    return {
        Path(file.name).name.removesuffix(ENDING): [
            finding for lead in file.findings for finding in (lead, *lead.follows)
        ]
        for file in files
    }


def with_focus(name: str, focus: str, folder: Path) -> set[str]:
    """The rules that speak of a file once it says what it means to train."""
    text = (PUBLISHED / f"{name}{ENDING}").read_text(encoding="utf-8")
    (folder / ".git").mkdir()
    path = folder / f"{name}{ENDING}"
    path.write_text(text.replace("\nathlete:", f"\nfocus: [{focus}]\nathlete:", 1), encoding="utf-8")
    (file,) = review([str(path)], TODAY).files
    assert file.ledger is not None
    assert [term.words for term in file.ledger.programme.focus] == [focus]
    return {finding.rule for finding in file.findings}


def test_every_file_is_reviewed(found: dict[str, list[Finding]]) -> None:
    assert set(found) == set(EXPECTED) == {path.name.removesuffix(ENDING) for path in PUBLISHED.iterdir()}


@pytest.mark.parametrize("name", EXPECTED)
def test_what_is_said_of_a_trial(found: dict[str, list[Finding]], name: str) -> None:
    """Each rule once, with its severity, and nothing else; no trial that was run is an error."""
    said = sorted((finding.rule, finding.severity) for finding in found[name])
    assert said == sorted((rule, severity) for rule, (severity, _) in EXPECTED[name].items())
    assert "error" not in {severity for _, severity in said}


def test_no_rule_speaks_of_most_trials(found: dict[str, list[Finding]]) -> None:
    """A trial trains one muscle or one lift by design, and is not told so."""
    speaks = Counter(rule for findings in found.values() for rule in {finding.rule for finding in findings})
    assert {rule for rule, files in speaks.items() if files > len(found) / 2} == set()


@pytest.mark.parametrize(
    ("name", "focus", "left"),
    [
        ("campos-2002-high", "quadriceps", set()),
        ("weiss-1999-3-5", "quadriceps", set()),
        ("kinoshita-2023", "calves", {"nothing-changes"}),
        # curls alone are no training of the legs, in whatever focus
        ("clark", "hamstrings", set()),
    ],
)
def test_a_focus_takes_away_what_a_trial_left_out_by_design(
    name: str, focus: str, left: set[str], tmp_path: Path
) -> None:
    assert with_focus(name, focus, tmp_path) == left
