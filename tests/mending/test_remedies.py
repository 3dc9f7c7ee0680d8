"""Every finding that names its remedy carries it as an edit, or as a choice; each is applied and reviewed.

The texts are those of the faulty examples, of the pages of all rules, and cases from trials of the first version.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from pathlib import Path

import pytest

from spotline.lint.engine.registry import all_rules
from spotline.lint.engine.rule_page import Page
from spotline.lint.findings.finding import Edit, Finding
from spotline.lint.mending.edits import with_edits
from spotline.lint.project.overlay import Overlay
from spotline.lint.project.results import FileReview
from spotline.lint.project.review import review_on
from spotline.lint.project.workspace import Workspace
from spotline.tests.conftest import TODAY

RULES = all_rules()
UPKEEP = {rule.name for rule in RULES if rule.family == "upkeep"}

PERSON = "only a person can do it, and then write down what is so"
COACH = "how much, and where, is the coach's to say: it changes what the programme is"
NUMBER = "nobody but the coach knows the number or the words that were meant"
CLINICIAN = "whoever advised it decides; the tool changes no restriction"
NAMED_THERE = "each line that it lists carries its own edits"

NO_EDIT = {
    "best-lift-missing": NUMBER,
    "best-lift-old": PERSON,
    "clearance-missing": PERSON,
    "demand-not-held": COACH,
    "day-too-long": COACH,
    "deload-missing": COACH,
    "deload-without-cut": COACH,
    "diagnosis-in-athlete-file": PERSON,
    "diagnosis-in-programme": PERSON,
    "circuit-step-large": COACH,
    "endurance-step-large": COACH,
    "frequency-low": COACH,
    "impact-days-consecutive": COACH,
    "junior-unsupervised": PERSON,
    "legs-heavy-before-event": COACH,
    "lift-left-out": COACH,
    "light-implement-heavy": COACH,
    "load-outside-zone": COACH,
    "near-maximal-before-event": COACH,
    "nordics-too-rare": COACH,
    "older-adult-days": COACH,
    "rehabilitation-open": CLINICIAN,
    "rest-day-missing": COACH,
    "restriction-review-past": CLINICIAN,
    "restriction-unclear": NUMBER,
    "restriction-weeks-beyond": CLINICIAN,
    "return-week-not-lighter": COACH,
    "room-too-small": COACH,
    "screening-missing": PERSON,
    "session-empty": COACH,
    "session-too-long": COACH,
    "sets-not-read": NAMED_THERE,
    "sets-step-large": COACH,
    "start-does-not-follow": COACH,
    "stop-signs-missing": CLINICIAN,
    "superset-shares": COACH,
    "taper-missing": COACH,
    "tempo-too-long": COACH,
    "times-clash": COACH,
    "work-step-large": COACH,
}
"""Rules whose findings carry no edit, with the reason."""

NO_EDIT_ON_ITS_PAGE = {
    "load-step-large": "the load stays up, so nobody knows how much of the step was meant",
    "exercise-twice": "the lines differ in their repetitions, so nobody knows what one line should hold",
    "our-name-unclear": "it is the only name in its group, and the group stands in braces",
    "rep-range-narrow": "each muscle has one line alone, which would only change sides",
}
"""Rules that carry edits elsewhere, but not on their own pages."""

NO_EDIT_IN_EXAMPLES = {
    "sessions-too-close": "no day of the week is far enough from all that is as hard",
    "value-unreadable": NUMBER,
}
"""The same in the faulty examples."""

Files = dict[str, str]


class Case:
    """Files in a repository of their own, one of which is looked at."""

    def __init__(self, folder: Path, files: Files, name: str) -> None:
        self.folder = folder
        (folder / ".git").mkdir(parents=True)
        for path, text in files.items():
            (folder / path).write_bytes(text.encode())
        self.name = name
        self.before = self.reviewed(Overlay())

    def reviewed(self, overlay: Overlay) -> FileReview:
        """The review of the file with texts that are not on the disk."""
        workspace = Workspace(TODAY, RULES, overlay)
        files = review_on(workspace, [str(self.folder / self.name)]).files
        return next(one for one in files if one.name.endswith(self.name))

    def after(self, edit: Edit) -> FileReview:
        """The review once an edit is made."""
        overlay = Overlay()
        text = edit.place.text
        overlay.open(str(self.folder / Path(text.name).name), with_edits(text.content, [edit]))
        return self.reviewed(overlay)


def faults(before: FileReview, finding: Finding, after: FileReview) -> list[str]:
    """What speaks against an edit: the finding is still there, or an error or a warning is new.

    What rules find once words are read, or are what was meant, was there all the time; so was what may
    follow from the finding itself.
    """
    uncovers = not finding.why or finding.rule in UPKEEP
    was = Counter((one.rule, one.subject) for one in before.findings)
    now = Counter((one.rule, one.subject) for one in after.findings)
    said = [f"still {one.counted}" for one in after.findings if one.counted == finding.counted]
    if (
        now[finding.rule, finding.subject] >= was[finding.rule, finding.subject]
        and finding in before.findings
    ):
        said.append(f"as often {finding.rule}")
    said += [
        f"new {one.rule}: {one.counted}"
        for one in after.findings
        if not (uncovers and one.why)
        and finding.rule not in one.causes
        and one.severity != "note"
        and now[one.rule, one.subject] > was[one.rule, one.subject]
    ]
    return said


def every(findings: list[Finding]) -> Iterator[Finding]:
    for finding in findings:
        yield finding
        yield from finding.follows


# The faulty examples

FAULTY = Path(__file__).parent.parent.parent / "examples" / "faulty"


@pytest.mark.parametrize("name", sorted(path.name for path in FAULTY.iterdir()))
def test_the_faulty_examples_carry_what_they_name(name: str, tmp_path: Path) -> None:
    files = {path.name: path.read_text(encoding="utf-8") for path in FAULTY.iterdir()}
    case = Case(tmp_path / "here", files, name)
    without = {one.rule: one.change for one in case.before.findings if not one.edits}
    assert {
        rule: change for rule, change in without.items() if rule not in {**NO_EDIT, **NO_EDIT_IN_EXAMPLES}
    } == {}
    for finding in case.before.findings:
        for edit in finding.edits:
            assert (finding.rule, edit.label, faults(case.before, finding, case.after(edit))) == (
                finding.rule,
                edit.label,
                [],
            )


def test_most_findings_of_the_faulty_examples_carry_an_edit(tmp_path: Path) -> None:
    files = {path.name: path.read_text(encoding="utf-8") for path in FAULTY.iterdir()}
    found = [
        one for name in files for one in Case(tmp_path / name.partition(".")[0], files, name).before.findings
    ]
    assert sum(bool(one.edits) for one in found) >= len(found) - 3


# The pages of the rules


@pytest.mark.parametrize("rule", RULES, ids=[rule.name for rule in RULES])
def test_what_a_rule_names_on_its_page_it_offers(rule: object, tmp_path: Path) -> None:
    page = Page(rule)  # type: ignore[arg-type]
    name: str = rule.name  # type: ignore[attr-defined]
    files = {**page.beside, "plan.programme.yaml": page.flags}
    if rule.off:  # type: ignore[attr-defined]
        files["spotline.yaml"] = f"rules: {{{name}: run}}\n"
    case = Case(tmp_path / "here", files, "plan.programme.yaml")
    own = [one for one in every(case.before.findings) if one.rule == name]
    assert own
    for finding in own:
        assert bool(finding.edits) == (name not in {**NO_EDIT, **NO_EDIT_ON_ITS_PAGE}), finding.change
        for edit in finding.edits:
            assert (edit.label, faults(case.before, finding, case.after(edit))) == (edit.label, [])


def test_each_reason_is_of_a_rule_that_there_is() -> None:
    names = {rule.name for rule in RULES}
    assert set(NO_EDIT) <= names
    assert not set(NO_EDIT) & {*NO_EDIT_ON_ITS_PAGE, *NO_EDIT_IN_EXAMPLES}


# Cases from trials

LINE = "programme: Quarry\nweeks: {weeks}\nsessions:\n  - session: A\n    day: monday\n    exercises:\n      - {line}\n      - {{exercise: bent-over row, sets: 3, reps: 8, rir: 2}}\n"

DATES = ("2026-02-30", "2026-13-01", "2025-04-31")


@pytest.mark.parametrize("day", DATES)
def test_a_day_that_the_calendar_does_not_have_is_offered_its_neighbours(day: str, tmp_path: Path) -> None:
    text = LINE.format(weeks=6, line="{exercise: back squat, sets: 3, reps: 5, rir: 2}")
    text = text.replace("weeks:", f"starts: {day}\nweeks:", 1)
    case = Case(tmp_path / "here", {"plan.programme.yaml": text}, "plan.programme.yaml")
    (finding,) = [one for one in case.before.findings if not one.why]
    assert finding.edits
    for edit in finding.edits:
        assert faults(case.before, finding, case.after(edit)) == []


WRITTEN = {
    "5 January 2027": ("2027-01-05",),
    "5.1.2027": ("2027-01-05",),
    "Jan 5th, 2027": ("2027-01-05",),
    "'20270105'": ("2027-01-05",),
    "tue 05/01/2027": ("2027-01-05",),
    "05/01/2027": ("2027-05-01", "2027-01-05"),
    "5-1-2027": ("2027-05-01", "2027-01-05"),
}
WHERE = {
    "starts": ("starts: {}\nweeks: 6", "plan.programme.yaml"),
    "date": ('events: [{{date: "{}", event: match}}]\nweeks: 6', "plan.programme.yaml"),
    "until": (
        'rehabilitation: {{stage: late, advised by: physiotherapist, until: "{}"}}\nweeks: 6',
        "plan.programme.yaml",
    ),
    "tested": ('best lifts: {{back squat: {{load: 100 kg, tested: "{}"}}}}', "mara.athlete.yaml"),
    "review on": (
        'protect: [{{movement: overhead press, advised by: physiotherapist, review on: "{}"}}]',
        "mara.athlete.yaml",
    ),
    "screening on file": ("screening on file: {}", "mara.athlete.yaml"),
}


@pytest.mark.parametrize("key", WHERE)
@pytest.mark.parametrize("written", WRITTEN)
def test_a_date_as_people_write_it_is_mended_or_asked_about(key: str, written: str, tmp_path: Path) -> None:
    around, name = WHERE[key]
    words = written if around.count('"') == 0 else written.strip("'")
    if name.endswith("athlete.yaml"):
        text = f"name: Mara\n{around.format(words)}\n"
    else:
        text = LINE.format(weeks=6, line="{exercise: back squat, sets: 3, reps: 5, rir: 2}")
        text = text.replace("weeks: 6", around.format(words), 1)
    case = Case(tmp_path / "here", {name: text}, name)
    (finding,) = [one for one in case.before.findings if not one.why]
    assert tuple(edit.words for edit in finding.edits) == WRITTEN[written]
    assert (finding.surely is not None) == (len(WRITTEN[written]) == 1)
    for edit in finding.edits:
        assert not [one for one in case.after(edit).findings if not one.why]


LINES = {
    "unit-of-a-load": "{exercise: back squat, sets: 3, reps: 5, load: 100}",
    "minutes-or-seconds": "{exercise: back squat, sets: 3, reps: 5, load: 80 kg, rest: 3}",
    "sets-or-reps": "{exercise: back squat, sets: 3x5, reps: 5, rir: 2}",
    "no-sets": "{exercise: back squat, reps: 5, rir: 2}",
    "no-sets-in-lines": "exercise: back squat\n        reps: 5   # five\n        rir: 2",
    "a-key-twice": "{exercise: back squat, sets: 3, reps: 5, sets: 4, rir: 2}",
    "a-key-twice-in-lines": "exercise: back squat\n        sets: 3\n        reps: 5\n        sets: 4   # more\n        rir: 2",
    "the-same-twice": "{exercise: back squat, sets: 3, reps: 5, sets: 3, rir: 2}",
    "a-week-left-out": "{exercise: back squat, sets: {1-2: 3, 4-6: 4}, reps: 5, rir: 2}",
    "weeks-twice": "{exercise: back squat, sets: {1-4: 3, 3-6: 4}, reps: 5, rir: 2}",
    "weeks-beyond": "{exercise: back squat, sets: {1-3: 3, 4-8: 4}, reps: 5, rir: 2}",
    "weeks-beyond-whole": "{exercise: back squat, sets: {1-6: 3, 7-8: 4}, reps: 5, rir: 2}",
    "weeks-in-lines": "exercise: back squat\n        sets:\n          1-2: 3\n          4-6: 4   # up\n        reps: 5\n        rir: 2",
    "quoted-weeks": "{exercise: back squat, sets: {'1-2': 3, \"4-6\": 4}, reps: 5, rir: 2}",
    "other-without-a-week": "{exercise: back squat, sets: {1-6: 3, other: 4}, reps: 5, rir: 2}",
    "in-weeks-beyond": "{exercise: back squat, in weeks: 3-9, sets: 3, reps: 5, rir: 2}",
    "decimal-comma": "{exercise: back squat, sets: 3, reps: 5, load: 72,5 %}",
    "a-backwards-range": "{exercise: back squat, sets: 3, reps: 8-5, rir: 2}",
    "effort-in-reps": "{exercise: back squat, sets: 3, reps: 5 @8}",
    "effort-under-load": "{exercise: back squat, sets: 3, reps: 5, load: RPE 8}",
    "rir-over-its-end": "{exercise: back squat, sets: 3, reps: 5, rpe: 75}",
    "sets-over-a-limit": "{exercise: back squat, sets: 40, reps: 5, rir: 2}",
    "an-unknown-side": "{exercise: split squat, sets: 3, reps: 8, rir: 2, side: both}",
    "a-key-of-another": "{exercise: back squat, sets: 3, reps: 5, rir: 2, rounds: 3}",
    "nothing-behind-a-key": "{exercise: back squat, sets: 3, reps: 5, rir: 2, note: }",
    "too-many-at-a-load": "{exercise: back squat, sets: 3, reps: 12, load: 90 %}",
    "two-at-the-best": "{exercise: back squat, sets: 3, reps: 2, load: 100 %}",
    "above-the-best": "{exercise: back squat, sets: 1, reps: 1, load: 120 %}",
    "rir-against-rpe": "{exercise: back squat, sets: 3, reps: 5, rir: 2, rpe: 10}",
    "no-top-set": "{exercise: overhead press, sets: 3, reps: 5, load: 90 % of top set}",
}


@pytest.mark.parametrize("kind", LINES)
def test_a_case_of_the_trials_carries_its_remedy(kind: str, tmp_path: Path) -> None:
    text = LINE.format(weeks=6, line=LINES[kind])
    case = Case(tmp_path / "here", {"plan.programme.yaml": text}, "plan.programme.yaml")
    assert case.before.findings
    for finding in case.before.findings:
        if finding.severity == "note":
            continue
        assert finding.edits, (finding.rule, finding.change)
        for edit in finding.edits:
            assert (edit.label, faults(case.before, finding, case.after(edit))) == (edit.label, [])


PAPER = {
    "sets x repetitions": "{exercise: back squat, sets: 3, reps: 3x5}",
    "a side a set": "{exercise: split squat, sets: 2, reps: 8/8}",
    "a step in percent": "{exercise: back squat, sets: 3, reps: 5, load: {1-3: 70 %, again: +5 %}}",
    "a change without a base": "{exercise: back squat, sets: 3, reps: 5, load: -12 %}",
    "kilograms more": "{exercise: back squat, sets: 3, reps: 5, load: +10 kg}",
    "a pull above the best": "{exercise: deadlift, sets: 3, reps: 5, load: 105 %}",
    "a pointed rest": "{exercise: back squat, sets: 3, reps: 5, rest: 1.30}",
    "minutes or metres": "{exercise: back squat, sets: 3, reps: 5, rest: 20 m}",
    "thousands": "{exercise: back squat, sets: 3, reps: 5, load: '1,250 kg'}",
    "down in two sets": "{exercise: back squat, sets: 2, reps: 10-8}",
    "alternating": "{exercise: walking lunge, sets: 2, reps: 10 alternating}",
    "a pair of dumbbells": "{exercise: dumbbell bench press, sets: 3, reps: 8, load: 28 kg}",
    "an at sign": "{exercise: back squat, sets: 3, reps: 5, load: '@8'}",
    "three phases": "{exercise: back squat, sets: 3, reps: 5, tempo: 3-1-1}",
    "and more": "{exercise: back squat, sets: 3, reps: 5, load: 85+ %}",
    "a hold on a jump": "{exercise: box jump, sets: 3, hold: 30 s}",
    "a note cut by a comma": "{exercise: Nordic curl, sets: 3, reps: 5, note: eccentric only, left first}",
    "bare weeks": "{exercise: back squat, weeks: 6, sets: 3, reps: 5}",
    "on the minute": "{exercise: back squat, emom: 10 min, reps: 3}",
    "a comma in a week": "{exercise: back squat, sets: 3, reps: 5, load: {1-3: 70 %, 4-6: 72,5 %}}",
    "no braces": "exercise: back squat, sets: 3, reps: 5, rir: 2   # first",
    "no braces, further keys": "exercise: back squat, sets: 3, reps: 5\n        rir: 2",
    "a week out of line": "{exercise: back squat, sets: 3, reps: 5, load: {1: 67.5 %, 2: 80 %, 3: 72.5 %, 4-6: 75 %}}",
    "figures changed over": "{exercise: back squat, sets: 3, reps: 5, load: {1: 65 %, 2: 56 %, 3: 67.5 %, 4-6: 70 %}}",
    "a figure lost": "{exercise: back squat, sets: 3, reps: 5, load: {1-2: 70 %, 3: 7 %, 4-6: 75 %}}",
    "sets doubled": "{exercise: back squat, sets: {1-3: 4, 4: 8, 5-6: 4}, reps: 5, load: 70 %}",
    "no such plate": "{exercise: bench press, sets: 3, reps: 5, load: 28.75 kg}",
    "a step too far": "{exercise: back squat, sets: 3, reps: 5, load: 60 kg, progression: {add: 20 %, every: week}}",
    "a misspelt name": "{exercise: bak squot, sets: 3, reps: 5, rir: 2}",
    "a misspelt effort": "{exercise: back squat, sets: 3, reps: 5, RPE: 8}",
    "no rest to speak of": "{exercise: back squat, sets: 5, reps: 5, rir: 1, rest: 20 s}",
    "far too many sets": "{exercise: back squat, sets: 1e308, reps: 5, rir: 2}",
}
"""What coaches write, from the trials: kinds, not the only case of each."""

AROUND = {
    "days of a programme": ("day: monday", "days: [mon, wed, fri]"),
    "a misspelt day": ("day: monday", "day: mondag"),
    "a diagnosis": ("day: monday", "day: monday\n    note: torn meniscus in 2024"),
    "sessions under shared": ("sessions:", "shared:\n  sessions:"),
    "a tab": ("    day: monday", "\tday: monday"),
    "a deload of one number": ("weeks: 6", "weeks: 6\ndeload: 4"),
    "a slashed date": ("weeks: 6", "weeks: 6\nstarts: 5/7/27"),
    "a year far off": ("weeks: 6", "weeks: 6\nstarts: 9999-12-31"),
    "equipment that nobody knows": (
        "weeks: 6",
        "weeks: 6\nathlete: {name: A, equipment: [barbells, rack, flux capacitor]}",
    ),
    "a shoulder to spare": (
        "weeks: 6",
        "weeks: 6\nathlete: {name: A, protect: [{movement: row, advised by: physiotherapist}]}",
    ),
    "a novice with bands": (
        "weeks: 6",
        "weeks: 6\nathlete: {name: A, age: 70, level: novice, equipment: [bands]}",
    ),
}

NO_EDIT_IN_TRIALS = {
    "load-step-large": "a stated step: how much of it was meant nobody knows",
    "value-out-of-range": NUMBER,
    "value-unreadable": NUMBER,
    "region-untrained": COACH,
    "pull-or-push-missing": COACH,
}


@pytest.mark.parametrize("kind", [*PAPER, *AROUND])
def test_what_coaches_write_carries_its_remedy(kind: str, tmp_path: Path) -> None:
    if kind in PAPER:
        text = LINE.format(weeks=6, line=PAPER[kind])
    else:
        before, after = AROUND[kind]
        text = LINE.format(weeks=6, line="{exercise: back squat, sets: 3, reps: 5, rir: 2}")
        assert before in text
        text = text.replace(before, after, 1)
    case = Case(tmp_path / "here", {"plan.programme.yaml": text}, "plan.programme.yaml")
    assert case.before.findings
    for finding in case.before.findings:
        assert finding.edits or finding.rule in {**NO_EDIT, **NO_EDIT_IN_TRIALS}, finding.change
        for edit in finding.edits:
            assert (edit.label, faults(case.before, finding, case.after(edit))) == (edit.label, [])


MAPS = (
    "{exercise: back squat, sets: {1-3: 3, 4-5: 4, 6: 2}, reps: 5, load: {1-3: 80 kg, 4-6: 90 kg}}",
    "{exercise: bench press, sets: {1-3: 3, 4-6: 4}, reps: 5, rir: 2}",
)


@pytest.mark.parametrize(
    ("weeks", "label", "wanted"),
    [
        (6, "", ""),
        (7, "write weeks: 6", "weeks: 6"),
        (7, "repeat the last value up to week 7", "{1-3: 3, 4-5: 4, 6-7: 2}"),
        (12, "spread all values over 12 weeks", "{1-6: 3, 7-10: 4, 11-12: 2}"),
        (4, "cut all values after week 4", "{1-3: 3, 4: 4}"),
        (4, "spread all values over 4 weeks", "{1-2: 3, 3: 4, 4: 2}"),
    ],
)
def test_maps_of_weeks_follow_a_changed_number_of_weeks(
    weeks: int, label: str, wanted: str, tmp_path: Path
) -> None:
    text = LINE.format(weeks=weeks, line="\n      - ".join(MAPS))
    case = Case(tmp_path / "here", {"plan.programme.yaml": text}, "plan.programme.yaml")
    found = [one for one in case.before.findings if one.rule == "weeks-disagree"]
    assert len(found) == bool(label)
    for finding in found:
        (edit,) = [one for one in finding.edits if one.label == label]
        after = case.after(edit)
        assert after.reading is not None
        assert wanted in after.reading.text.content
        assert not [one for one in after.findings if not one.why]


# New lines in the neighbours' style

LEGS = """\
programme: Legs
goal: hypertrophy
focus: [legs]
sessions:
  - session: Lower
    exercises:
{lines}  - session: Upper
    exercises:
      - {{exercise: bench press, sets: 3, reps: 8, rir: 2}}
"""

STYLES = {
    "braces": (
        "      - {exercise: back squat, sets: 3, reps: 6-8, rir: 2, rest: 3 min}   # first\n"
        "      - {exercise: stiff-leg deadlift, sets: 3, reps: 8, rir: 2, rest: 2 min}\n"
        "      - {exercise: standing calf raise, sets: 3, reps: 12, rir: 1, rest: 90 s}\n",
        "      - {exercise: seated leg curl, sets: 3, reps: 10-15, rir: 2, rest: 90 s}\n",
    ),
    "lines": (
        "      - exercise: back squat\n        sets: 2\n        reps: 6-8\n        rpe: 8\n"
        "      - exercise: stiff-leg deadlift   # slowly\n        sets: 2\n        reps: 8\n        rpe: 8\n"
        "      - exercise: standing calf raise\n        sets: 2\n        reps: 12\n        rpe: 9\n",
        "      - exercise: seated leg curl\n        sets: 2\n        reps: 10-15\n        rpe: 8\n",
    ),
    "wide dashes": (
        "      -   exercise: back squat\n          sets: 2\n          reps: 6-8\n"
        "      -   exercise: stiff-leg deadlift\n          sets: 2\n          reps: 8\n          load: 60 %\n"
        "      -   exercise: standing calf raise\n          sets: 2\n          reps: 12\n",
        "      -   exercise: seated leg curl\n          sets: 2\n          reps: 10-15\n          rir: 2\n",
    ),
}


@pytest.mark.parametrize("style", STYLES)
@pytest.mark.parametrize("ends", ["\n", "\r\n"])
def test_a_missing_curl_is_a_line_like_its_neighbours_where_a_coach_would_put_it(
    style: str, ends: str, tmp_path: Path
) -> None:
    lines, wanted = STYLES[style]
    text = LEGS.format(lines=lines).replace("\n", ends)
    case = Case(tmp_path / "here", {"plan.programme.yaml": text}, "plan.programme.yaml")
    (finding,) = [one for one in case.before.findings if one.rule == "knee-flexion-missing"]
    edit = finding.edits[0]
    assert edit.label == "add seated leg curl to Lower"
    assert case.before.reading is not None
    now = with_edits(case.before.reading.text.content, [edit])
    at = lines.index("      -", lines.index("stiff-leg"))
    assert now == LEGS.format(lines=lines[:at] + wanted + lines[at:]).replace("\n", ends)
    assert faults(case.before, finding, case.after(edit)) == []
