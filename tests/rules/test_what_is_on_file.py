"""What the files say already, in a coach's own words, is not asked for again."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.findings.finding import Finding

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]

LEGS = {"Legs": ["leg press, sets: 3, reps: 8"]}
DATED = "protect: [{movement: overhead pressing, advised by: %s, %s}]"


def said(findings: Findings, text: str, rule: str) -> int:
    return len(findings(text, rule))


class TestClearance:
    RULE = "clearance-missing"

    @pytest.mark.parametrize(
        ("athlete", "head", "told"),
        [
            (DATED % ("physiotherapist", "from: 2027-01-11, until: 2027-02-07"), "", 0),
            (DATED % ("squad physio", "from: 2027-01-11"), "", 0),
            (DATED % ("GP", "until: 2027-02-07"), "", 0),
            (DATED % ("athletic trainer", "from: 2027-01-11"), "", 0),
            (DATED % ("coach", "from: 2027-01-11"), "", 0),  # a choice of exercises
            (
                DATED.replace("movement: overhead pressing", "area: shoulder")
                % ("coach", "from: 2027-01-11"),
                "",
                1,
            ),
            (DATED % ("physiotherapist", "review on: 2099-04-01"), "", 1),  # when was it?
            (DATED % ("physiotherapist", "in weeks: 1"), "", 0),
            (DATED % ("coach", "in weeks: 1"), "phase: return", 1),
            (DATED % ("physiotherapist", "from: 2027-01-11"), "phase: return", 0),
            (DATED % ("physiotherapist", "until: 2027-02-07"), "phase: return", 0),
            (DATED % ("physiotherapist", "from: 2027-01-11") + ", age: 70", "", 1),
            ("age: 72, note: GP letter 14 Jan 2027 says fine for moderate training", "", 0),
            ("age: 72, note: cleared by the cardiologist in March", "", 0),
            ("age: 72, note: doctor says go slowly", "", 1),  # no day
            ("age: 72, note: not cleared by the GP before 4 Jan", "", 1),
            ("age: 72, note: ask the GP in January", "", 1),
            ("age: 72, note: ok since January", "", 1),  # who says so?
            ("age: 30", "phase: return\nnote: Physio discharged her on 12/8. Slowly now.", 0),
        ],
    )
    def test_who_said_it_and_when(
        self, findings: Findings, week: Text, athlete: str, head: str, told: int
    ) -> None:
        text = week(LEGS, f"athlete: {{name: Ida, {athlete}}}" + (f"\n{head}" if head else ""))
        assert said(findings, text, self.RULE) == told


@pytest.mark.parametrize(
    ("athlete", "told"),
    [
        ("level: novice, age: 45", 1),
        ("level: novice, age: 45, note: PAR-Q done 3 January", 0),
        ("level: novice, age: 45, note: health questionnaire on paper", 0),
        ("level: novice, age: 45, note: PAR-Q not back yet", 1),
        ("level: novice, age: 45, note: nothing wrong medically", 0),
        ("level: novice, age: 45, note: no known health problems", 0),
        ("level: novice, age: 45, note: no health form yet", 1),
        ("level: novice, age: 45, note: no medical check so far", 1),
        ("level: novice, age: 45, note: no medical cover at the hall", 1),
        ("level: novice, age: 45, note: GP ok'd 4 Jan", 0),
        (f"level: novice, age: 45, {DATED % ('physiotherapist', 'from: 2027-01-11')}", 0),
    ],
)
def test_a_screening_in_words(findings: Findings, week: Text, athlete: str, told: int) -> None:
    assert said(findings, week(LEGS, f"athlete: {{name: Ida, {athlete}}}"), "screening-missing") == told


@pytest.mark.parametrize(
    ("note", "counted", "change"),
    [
        ("GP happy", "A clearance without a date", "Write the day under `clearance on file`."),
        ("Doctor OK, no rushing", "A clearance without a date", "Write the day under `clearance on file`."),
        ("ask the doctor", "No clearance on file", "Ask a physician or other licensed professional,"),
        ("the doctor lives next door", "No clearance on file", "Ask a physician or other licensed"),
    ],
)
def test_a_clearance_without_a_day(
    findings: Findings, week: Text, note: str, counted: str, change: str
) -> None:
    text = week(LEGS, f'athlete: {{name: Ida, age: 70, note: "{note}"}}')
    (finding,) = findings(text, "clearance-missing")
    assert finding.counted == f"{counted} (age 70)."
    assert finding.change.startswith(change)


@pytest.mark.parametrize(
    ("head", "athlete", "told"),
    [
        ("", "age: 15", 1),
        ("note: Coach in the room.", "age: 15", 0),
        ("note: I'm there every time.", "age: 15", 0),
        ("note: warm up well", "age: 15", 1),
        ("", "age: 15, note: trains with his dad", 0),
        ("", "age: 15, note: with the PE teacher", 0),
        ("", "age: 15, note: strong legs", 1),
    ],
)
def test_who_leads_juniors(findings: Findings, week: Text, head: str, athlete: str, told: int) -> None:
    text = week(LEGS, f"athlete: {{name: Ida, {athlete}}}" + (f"\n{head}" if head else ""))
    assert said(findings, text, "junior-unsupervised") == told


STAGE = "rehabilitation: {stage: heel drops, advised by: physiotherapist, until: 2026-02-01}"


@pytest.mark.parametrize(
    ("athlete", "note", "told"),
    [
        ("level: novice", "slowly down", 1),
        ("note: Stop if the tendon hurts more than 4/10", "slowly down", 0),
        ("note: below 4 of 10, else call me", "slowly down", 0),
        ("protect: [{area: knee, advised by: physio, note: not past a mild ache}]", "slowly down", 0),
        ("level: novice", "if it grumbles one step back", 0),
        ("level: novice", "no swelling next morning", 0),
        ("level: novice", "10 of each", 1),
    ],
)
def test_stop_signs_wherever_they_stand(
    findings: Findings, week: Text, athlete: str, note: str, told: int
) -> None:
    head = f"athlete: {{name: Ida, {athlete}}}\n{STAGE}\nnote: {note}"
    assert said(findings, week({"Daily": ["heel drop, sets: 3"]}, head), "stop-signs-missing") == told


@pytest.mark.parametrize(
    ("athlete", "told"),
    [
        ("equipment: [barbell, bench, rack]", 1),
        ("equipment: [barbell, bench, rack with spotter arms]", 0),
        ("equipment: [barbell, bench, rack, safety bars]", 0),
        ("equipment: [full powerlifting gym]", 0),
        ("note: her husband spots", 0),
        ("note: trains alone", 1),
    ],
)
def test_a_way_out_of_a_failed_lift(findings: Findings, week: Text, athlete: str, told: int) -> None:
    text = week({"Push": ["bench press, sets: 1, reps: 1, load: 1RM"]}, f"athlete: {{name: Ida, {athlete}}}")
    assert said(findings, text, "failure-without-spotter") == told


class TestTheBreath:
    """Common practice, no source: heavy work is done with the breath held, however small the lift."""

    HEAD = "athlete: {name: Ida, best lifts: {leg press: 100 kg}, protect: [{movement: %s, advised by: GP}]}"

    @pytest.mark.parametrize(
        "words",
        [
            "breath holding", "straining", "holding her breath", "Valsalva", "no straining or breath holding",
            "bearing down", "maximal effort", "heavy lifting", "training to failure", "getting up quickly",
            "head-down positions", "hot rooms", "lying flat quickly and up again",
        ],
    )  # fmt: skip
    def test_is_understood(self, findings: Findings, week: Text, words: str) -> None:
        assert said(findings, week(LEGS, self.HEAD % words), "restriction-unclear") == 0

    @pytest.mark.parametrize("words", ["the usual", "wobbling", "as last time"])
    def test_what_is_not(self, findings: Findings, week: Text, words: str) -> None:
        assert said(findings, week(LEGS, self.HEAD % words), "restriction-unclear") == 1

    @pytest.mark.parametrize(
        ("line", "told"),
        [
            ("leg press, sets: 2, reps: 10, load: 40 kg, rpe: 5-6", 0),
            ("leg press, sets: 2, reps: 10, load: 60 kg, rpe: 10", 1),
            ("leg press, sets: 2, reps: 3, load: 90 %", 1),
            ("leg press, sets: 2, reps: 10, load: 60 kg, rir: 1", 1),
            ("leg press, sets: 2, reps: amrap, load: 60 kg", 1),
            ("leg press, sets: 2, reps: 10, load: 60 kg, rir: 3", 0),
            ("single-leg balance, sets: 2, hold: 20 s", 0),
            ("wall sit, sets: 2, hold: 90 s", 1),
            ("chair squat, test: most repetitions", 0),
            ("push-up, sets: 2, reps: amrap", 0),
            ("band row, sets: 2, reps: 15, load: red band, rpe: 9-10", 0),
            ("lat pulldown, sets: 2, reps: 10, load: 20 kg", 0),
        ],
    )
    def test_only_hard_work_may_be_against_it(
        self, findings: Findings, week: Text, line: str, told: int
    ) -> None:
        found = findings(week({"Gym": [line]}, self.HEAD % "straining"), "protected-area-loaded")
        assert [one.severity for one in found] == ["note"] * told

    def test_no_plank_is_offered(self, programme: Callable[..., object], week: Text) -> None:
        from spotline.lint.body import catalogue
        from spotline.lint.body.restrictions import read

        plank, curl = (catalogue.exercise(name) for name in ("plank", "dumbbell curl"))
        assert plank is not None
        assert curl is not None
        assert (read("straining").suits(plank), read("straining").suits(curl)) == (False, True)


class TestOneSentenceIsOneFinding:
    RULE = "protected-area-loaded"

    def head(self, *movements: str) -> str:
        protect = ", ".join(f"{{movement: {one}, advised by: physio}}" for one in movements)
        return f"athlete: {{name: Ida, protect: [{protect}]}}"

    def test_all_that_a_line_goes_against_is_named(self, findings: Findings, week: Text) -> None:
        head = self.head("jumping", "hopping", "skipping", "running")
        (finding,) = findings(week({"Gym": ["jump rope, sets: 3"]}, head), self.RULE)
        assert finding.counted == "Jump rope involves `jumping`, `hopping` and `skipping`, to be avoided."
        assert [one.place.excerpt for one in finding.related] == ["jumping", "hopping", "skipping"]

    def test_other_lines_are_other_findings(self, findings: Findings, week: Text) -> None:
        head = self.head("jumping", "overhead pressing")
        text = week({"Gym": ["jump rope, sets: 3", "overhead press, sets: 3, reps: 8"]}, head)
        assert [one.counted.split(" ")[0] for one in findings(text, self.RULE)] == ["Jump", "Overhead"]

    def test_other_advisers_are(self, findings: Findings, week: Text) -> None:
        head = self.head("jumping", "hopping").replace(
            "hopping, advised by: physio", "hopping, advised by: GP"
        )
        assert len(findings(week({"Gym": ["jump rope, sets: 3"]}, head), self.RULE)) == 2


class TestWhatWhoeverLeadsMustKnow:
    RULE = "diagnosis-in-athlete-file"

    @pytest.mark.parametrize(
        ("note", "severity"),
        [
            ("Asthma - blue inhaler in the top pocket, GP ok'd.", None),
            ("Type 1 diabetes, glucose tablets in the bag", None),
            ("epilepsy - if a seizure, time it and ring", None),
            ("angina: GTN spray with her at all times", None),
            ("insulin before the session, sugar at hand", None),
            ("Asthma. Inhaler with her coach.", None),
            ("Asthma. Longer warm-up when it freezes.", "note"),
            ("Blood-pressure tablets, controlled, fine for moderate work", None),
            ("Blood-pressure tablets, controlled", "note"),
            ("on beta blockers, so go by effort", "note"),
            ("pregnant, week 20", "note"),
            ("Blood pressure first, above 170 we only walk", None),
            ("Check blood pressure before the session", None),
            ("High blood pressure, above average for her age", "note"),
            ("diabetes when pregnant, no insulin now", "note"),
            ("left knee: torn meniscus in May", "warning"),
            ("ACL reconstruction 2024", "warning"),
            ("torn meniscus, ice spray in the bag", "warning"),
            ("arthritis of the right hip", "warning"),
        ],
    )
    def test_a_remark_for_safety_never_blocks(
        self, findings: Findings, week: Text, note: str, severity: str | None
    ) -> None:
        text = week(LEGS, f'athlete: {{name: Ida, note: "{note}"}}')
        found = findings(text, self.RULE)
        assert [one.severity for one in found] == ([severity] if severity else [])
        assert all("history" not in one.change for one in found)

    @pytest.mark.parametrize("more", ["clearance on file: 2027-01-14", DATED % ("GP", "from: 2027-01-14")])
    def test_what_is_in_hand(self, findings: Findings, week: Text, more: str) -> None:
        for note, told in (("blood-pressure tablets, controlled", 0), ("torn meniscus, left", 0)):
            text = week(LEGS, f'athlete: {{name: Ida, {more}, note: "{note}"}}')
            assert said(findings, text, self.RULE) == told
