"""Rules of care: cautions that defer. Sources stand beside their checks; none of them decides on a clearance."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, timedelta
from pathlib import Path

import pytest

from spotline.lint.engine.registry import all_rules
from spotline.lint.findings.finding import Finding
from spotline.lint.project.results import Review
from spotline.lint.project.review import review

Findings = Callable[..., list[Finding]]
Reviewed = Callable[..., Review]
Text = Callable[..., str]

TODAY = date(2026, 1, 5)
LEGS = {"Lower": ["leg press, sets: 3, reps: 8"]}
REHABILITATION = "rehabilitation: {{stage: return, advised by: physiotherapist, until: {until}}}"


@pytest.fixture
def filed(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Callable[..., list[Finding]]:
    """The findings of a rule in an athlete's file of its own, with further files beside it."""

    def run(text: str, rule: str, files: dict[str, str] | None = None, on: date = TODAY) -> list[Finding]:
        (tmp_path / ".git").mkdir(exist_ok=True)
        monkeypatch.chdir(tmp_path)
        for name, content in {"ida.athlete.yaml": text, **(files or {})}.items():
            (tmp_path / name).write_text(content, encoding="utf-8")
        whole = review(["ida.athlete.yaml"], on)
        assert not [fault.words for one in whole.files for fault in one.faults]
        return [finding for one in whole.files for finding in one.findings if finding.rule == rule]

    return run


def limits(rule: str, words: str) -> dict[str, str]:
    return {"spotline.yaml": f"rules: {{{rule}: {{{words}}}}}\n"}


def test_nothing_of_care_is_an_error_or_says_that_somebody_may_train() -> None:
    for rule in (one for one in all_rules() if one.family == "care"):
        assert rule.severity in ("note", "warning")
        assert "cleared" not in rule.page + rule.why
        assert rule.severity == "note" or rule.confidence in ("anatomy", "fact")


class TestProtectedAreaLoaded:
    """What the athlete's file says is the ground; which joints an exercise moves is anatomy."""

    RULE = "protected-area-loaded"
    KNEE = "athlete: {name: Ida, protect: [{area: knee, advised by: physiotherapist}]}"

    @pytest.mark.parametrize(
        "stage",
        ["", "rehabilitation: {stage: early loading, advised by: physiotherapist, until: 2026-12-01}"],
    )
    @pytest.mark.parametrize("lift", ["overhead press", "Z press", "kettlebell push press"])
    def test_a_movement_to_be_avoided_is_so_in_every_stage(
        self, findings: Findings, week: Text, stage: str, lift: str
    ) -> None:
        head = f"athlete: {{name: Ida, protect: [{{movement: overhead pressing, advised by: surgeon}}]}}\n{stage}"
        assert len(findings(week({"Gym": [f"{lift}, sets: 3"]}, head), self.RULE)) == 1
        assert findings(week({"Gym": ["landmine press, sets: 3"]}, head), self.RULE) == []

    def test_what_was_agreed_may_stay(self, findings: Findings, week: Text) -> None:
        head = (
            "athlete:\n  name: Ida\n  protect:\n"
            "    - {area: knee, advised by: physiotherapist, agreed: [leg press, sit-to-stand]}"
        )
        (finding,) = findings(
            week({"Gym": ["leg press, sets: 3", "leg extension, sets: 2"]}, head), self.RULE
        )
        assert finding.place.excerpt == "leg extension"
        assert "leg press" not in finding.counted
        assert findings(week({"Gym": ["Sit-to-stand, sets: 3"]}, head), self.RULE) == []
        one = head.replace("[leg press, sit-to-stand]", "[squats]")
        assert findings(week({"Gym": ["goblet squat, sets: 3"]}, one), self.RULE) == []
        assert findings(week(LEGS, head.replace("sit-to-stand", "chair thing")), "restriction-unclear") == []

    def test_an_area_is_loaded_in_a_stage(self, findings: Findings, week: Text) -> None:
        stage = "rehabilitation: {stage: early loading, advised by: physiotherapist, until: 2026-12-01}"
        assert findings(week({"Gym": ["leg press, sets: 3"]}, f"{self.KNEE}\n{stage}"), self.RULE) == []

    def test_the_words(self, findings: Findings, week: Text) -> None:
        head = "athlete:\n  name: Ida\n  protect: [{area: left knee, advised by: physiotherapist}]\nweeks: 4"
        text = week(
            {
                "monday Lower": ["bench press, sets: 3", "leg press, sets: 3", "leg extension, sets: 3"],
                "friday Again": ["leg press, sets: 2"],
            },
            head,
        )
        (finding,) = findings(text, self.RULE)
        assert (finding.severity, finding.confidence) == ("warning", "anatomy")
        assert (finding.place.excerpt, finding.place.line, finding.where) == (
            "leg press",
            11,
            "Lower, leg press",
        )
        assert finding.counted == "Leg press and leg extension load `left knee`, a protected area."
        assert finding.wanted == "only what is `agreed`"
        assert finding.change == (
            "Ask the physiotherapist what may stay; swap leg press for dumbbell Romanian deadlift, and swap or"
            " leave out the rest."
        )
        assert finding.weeks == (1, 2, 3, 4)
        assert [(one.place.line, one.words) for one in finding.related] == [
            (12, "Lower, leg extension: this too"),
            (16, "Again, leg press: this too"),
            (4, "protected, as advised by the physiotherapist"),
        ]
        assert finding.related[-1].place.excerpt == "left knee"

    def test_one_line(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week(LEGS, self.KNEE), self.RULE)
        assert finding.counted == "Leg press loads `knee`, a protected area."

    @pytest.mark.parametrize(
        ("others", "said"),
        [
            (2, "Leg press, back squat and front squat load"),
            (5, "Leg press, back squat, front squat and 3 more load"),
        ],
    )
    def test_many_lines(self, findings: Findings, week: Text, others: int, said: str) -> None:
        names = ["back squat", "front squat", "hack squat", "leg extension", "lying leg curl"][:others]
        lines = [f"{name}, sets: 3" for name in ("leg press", *names)]
        (finding,) = findings(week({"Lower": lines}, self.KNEE), self.RULE)
        assert finding.counted == f"{said} `knee`, a protected area."
        assert len(finding.related) == others + 1

    def test_whoever_advised_it(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week(LEGS, "athlete: {name: Ida, protect: [{area: knee}]}"), self.RULE)
        assert finding.change.startswith("Ask whoever advised it what may stay; swap leg press for")
        assert finding.related[-1].words == "protected, as advised by whoever advised it"

    @pytest.mark.parametrize(
        ("restriction", "line", "said"),
        [
            ("area: knee", "leg press, sets: 3", 1),
            ("area: knee", "bench press, sets: 3", 0),
            ("area: knee", "moon walk, sets: 3", 0),  # nobody knows what it loads
            ("area: knee", "leg press, sets: 0-1", 1),
            ("area: knee", "leg press, sets: {1: 0}", 0),
            ("area: the usual", "leg press, sets: 3", 0),
            ("area: left knee", "leg extension, sets: 3, side: left", 1),
            ("area: left knee", "leg extension, sets: 3, side: right", 0),
            ("area: right knee", "leg extension, sets: 3, side: right", 1),
            ("area: right knee", "leg extension, sets: 3, side: left", 0),
            ("area: left knee", "leg extension, sets: 3, side: each", 1),
            ("area: left knee", "leg extension, sets: 3", 1),
            ("area: knee", "leg extension, sets: 3, side: right", 1),
            ("area: left and right knee", "leg extension, sets: 3, side: right", 1),
            ("movement: front plank on the toes", "standing calf raise, sets: 3", 0),
            ("movement: front plank on the toes", "jump rope, sets: 3", 0),
            ("movement: front plank on the toes", "plank, sets: 3", 1),
            ("movement: both-legs lowering", "lying leg raise, sets: 3", 1),
            ("movement: both-legs lowering", "leg press, sets: 3", 0),
            ("area: knee", "kettlebell push press, sets: 3", 1),
            ("area: knee", "dumbbell push press, sets: 3", 1),
            ("movement: overhead pressing", "overhead press, sets: 3", 1),
            ("movement: overhead pressing", "bench press, sets: 3", 0),
        ],
    )
    def test_what_loads_it(
        self, findings: Findings, week: Text, restriction: str, line: str, said: int
    ) -> None:
        head = f"athlete: {{name: Ida, protect: [{{{restriction}, advised by: physician}}]}}"
        assert len(findings(week({"Gym": [line]}, head), self.RULE)) == said

    DEGREES = "athlete: {name: Ida, protect: [{movement: knee bend past 90, advised by: surgeon}]}"

    @pytest.mark.parametrize(
        "line",
        [
            "box squat to 90, sets: 3",
            "box squat, sets: 3",
            "leg press 0-90, sets: 3",
            'split squat, sets: 3, note: "short, to 70 degrees"',
            "back squat to 80 degrees, sets: 3",
            "step-up, sets: 3",
        ],
    )
    def test_work_within_the_degrees_may_stay(self, findings: Findings, week: Text, line: str) -> None:
        assert findings(week({"Gym": [line]}, self.DEGREES), self.RULE) == []
        assert findings(week({"Gym": [line]}, self.DEGREES), "restriction-unclear") == []

    def test_work_beyond_them_is_said_as_surely_as_is_known(self, findings: Findings, week: Text) -> None:
        lines = ["leg press, sets: 3", "front squat, sets: 3", "split squat to 100 degrees, sets: 3"]
        (finding,) = findings(week({"Gym": lines}, self.DEGREES), self.RULE)
        assert (finding.severity, finding.counted) == (
            "warning",
            "Front squat and split squat to 100 degrees involve `knee bend past 90`, to be avoided.",
        )
        assert [one.words for one in finding.related][:2] == [
            "Gym, split squat to 100 degrees: this too",
            "protected, as advised by the surgeon",
        ]
        assert findings(week({"Gym": lines[:1]}, self.DEGREES), self.RULE) == []

    @pytest.mark.parametrize("line", ["step-up, sets: 3", "lateral step-up, sets: 3"])
    def test_a_step_up_is_no_lunge(self, findings: Findings, week: Text, line: str) -> None:
        for words in ("lunges", "split squats"):
            head = f"athlete: {{name: Ida, protect: [{{movement: {words}, advised by: coach}}]}}"
            assert findings(week({"Gym": [line]}, head), self.RULE) == []
            assert findings(week({"Gym": ["walking lunge, sets: 3"]}, head), self.RULE)

    def test_nobody_to_spare_anything_for(self, findings: Findings, week: Text) -> None:
        assert findings(week(LEGS), self.RULE) == []
        assert findings(week(LEGS, "athlete: {name: Ida}"), self.RULE) == []

    def test_one_finding_a_restriction(self, findings: Findings, week: Text) -> None:
        head = (
            "athlete: {name: Ida, protect: [{area: knee, advised by: physician},"
            " {movement: knee, advised by: physician}, {area: hip, advised by: coach}]}"
        )
        said = findings(week(LEGS, head), self.RULE)
        assert [(one.subject, one.place.excerpt) for one in said] == [
            ("area: hip", "leg press"),
            ("area: knee", "leg press"),
            ("movement: knee", "leg press"),
        ]

    def test_a_stage_of_rehabilitation_is_for_its_adviser(self, findings: Findings, week: Text) -> None:
        head = f"{self.KNEE}\nstarts: 2026-01-05\nweeks: 4\n"
        state = REHABILITATION.format(until="2026-01-31")
        assert findings(week(LEGS, head + state), self.RULE) == []
        ending = REHABILITATION.format(until="2026-01-18")
        (finding,) = findings(week(LEGS, head + ending), self.RULE)
        assert finding.weeks == (3, 4)

    def test_only_the_weeks_that_load_it(self, findings: Findings, week: Text) -> None:
        text = week({"Lower": ["{1-2: bench press, 3-4: leg press}, sets: 3"]}, f"{self.KNEE}\nweeks: 4")
        (finding,) = findings(text, self.RULE)
        assert (finding.weeks, finding.place.excerpt) == ((3, 4), "leg press")

    def test_a_swap_is_pointed_at_where_it_is_written(self, findings: Findings, week: Text) -> None:
        head = (
            "athletes:\n  - {name: Bo}\n"
            "  - athlete: {name: Ida, protect: [{area: knee, advised by: physician}]}\n"
            "    adjust: [{exercise: bench press, swap: hack squat}]"
        )
        (finding,) = findings(week({"Gym": ["bench press, sets: 3"]}, head), self.RULE)
        assert (finding.place.line, finding.place.excerpt) == (5, "hack squat")
        assert finding.athletes == ("Ida",)
        assert finding.counted == "Hack squat loads `knee`, a protected area."

    def test_in_an_athletes_own_file(self, findings: Findings, week: Text) -> None:
        files = {"ida.athlete.yaml": "name: Ida\nprotect:\n  - {area: knee, advised by: physician}\n"}
        (finding,) = findings(week(LEGS, "athlete: ida.athlete.yaml"), self.RULE, files)
        assert finding.place.text.name.endswith("plan.programme.yaml")
        assert finding.related[0].place.text.name.endswith("ida.athlete.yaml")
        assert finding.related[0].place.line == 3


class TestRestrictionUnclear:
    RULE = "restriction-unclear"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        head = "athlete: {name: Ida, protect: [{movement: the usual, advised by: physician}]}"
        (finding,) = findings(week(LEGS, head), self.RULE)
        assert (finding.severity, finding.place.excerpt, finding.where) == (
            "note",
            "the usual",
            "Ida, protect",
        )
        assert finding.counted == "`the usual` names no body part or movement."
        assert finding.wanted.startswith("words such as left shoulder")
        assert finding.change == "Reword it; check the lines yourself until then."

    def test_a_word_that_means_nothing_beside_others(self, findings: Findings, week: Text) -> None:
        head = "athlete: {name: Ida, protect: [{area: left knee (old sprain), advised by: physician}]}"
        assert findings(week(LEGS, head), self.RULE) == []
        assert findings(week(LEGS, head), "protected-area-loaded") == []

    @pytest.mark.parametrize("words", ["left", "right side"])
    def test_a_side_alone_is_nothing(self, findings: Findings, week: Text, words: str) -> None:
        head = f"athlete: {{name: Ida, protect: [{{movement: {words}, advised by: physician}}]}}"
        (finding,) = findings(week(LEGS, head), self.RULE)
        assert finding.counted == f"`{words}` names no body part or movement."

    @pytest.mark.parametrize(
        "more",
        [
            "agreed: [leg press]",
            "until: 2099-03-01",
            "in weeks: 1",
            "note: as she knows",
            "review on: 2099-03-01",
        ],
    )
    def test_what_else_is_said_explains_it(self, findings: Findings, week: Text, more: str) -> None:
        head = f"athlete: {{name: Ida, protect: [{{movement: the usual, advised by: physician, {more}}}]}}"
        assert findings(week(LEGS, head), self.RULE) == []

    @pytest.mark.parametrize(
        "words",
        [
            "left knee",
            "overhead pressing",
            "hamstrings",
            "deep squats",
            "front plank on the toes",
            "both-legs lowering",
            "deep knee bend under load",
        ],
    )
    def test_words_that_can_be_looked_for(self, findings: Findings, week: Text, words: str) -> None:
        head = f"athlete: {{name: Ida, protect: [{{area: {words}, advised by: physician}}]}}"
        assert findings(week(LEGS, head), self.RULE) == []

    def test_each_one(self, filed: Callable[..., list[Finding]]) -> None:
        text = (
            "name: Ida\nprotect:\n  - {area: this, advised by: physician}\n"
            "  - {area: knee, advised by: physician}\n  - {movement: that, advised by: physician}\n"
        )
        (finding,) = filed(text, self.RULE)
        assert finding.counted == "`this` and `that` name no body part or movement."
        assert (finding.place.line, [one.place.line for one in finding.related]) == (3, [5])


class TestRestrictionReviewPast:
    RULE = "restriction-review-past"

    def test_the_words(self, filed: Callable[..., list[Finding]]) -> None:
        text = (
            "name: Ida\nprotect:\n  - {area: left knee, advised by: physiotherapist, review on: 2025-12-31}\n"
        )
        (finding,) = filed(text, self.RULE)
        assert (finding.severity, finding.confidence) == ("warning", "fact")
        assert (finding.place.line, finding.place.excerpt, finding.where) == (3, "left knee", "Ida, protect")
        assert finding.counted == "`left knee` was due for review on 2025-12-31, 5 days ago."
        assert finding.wanted == "a date still to come"
        assert finding.change == ("Ask the physiotherapist, and write a new date or delete the entry.")

    @pytest.mark.parametrize(
        ("starts", "said"),
        [
            ("", 1),  # no end is written
            ("starts: 2025-11-17\nweeks: 5\n", 0),  # ends on 21 December, the review day
            ("starts: 2025-11-18\nweeks: 5\n", 1),
        ],
    )
    def test_a_programme_that_had_ended_by_then_asks_no_more(
        self, findings: Callable[..., list[Finding]], starts: str, said: int
    ) -> None:
        text = (
            f"programme: Past\n{starts}athlete: {{name: Ida, protect:"
            " [{area: left knee, advised by: physiotherapist, review on: 2025-12-21}]}\n"
            "sessions: [{session: A, exercises: [{exercise: bench press, sets: 3, reps: 8, rir: 2}]}]\n"
        )
        assert len(findings(text, self.RULE)) == said

    @pytest.mark.parametrize(("starts", "said"), [("2025-12-29", 1), ("2025-11-10", 0)])
    def test_one_programme_that_runs_on_is_enough(
        self, filed: Callable[..., list[Finding]], starts: str, said: int
    ) -> None:
        sessions = (
            "sessions: [{session: A, exercises: [{exercise: bench press, sets: 3, reps: 8, rir: 2}]}]\n"
        )
        files = {
            f"{name}.programme.yaml": f"programme: {name}\nathlete: ida.athlete.yaml\nstarts: {day}\n{sessions}"
            for name, day in (("first", "2025-11-03"), ("second", starts))
        }
        text = "name: Ida\nprotect: [{area: knee, advised by: physician, review on: 2025-12-21}]\n"
        assert len(filed(text, self.RULE, files)) == said

    @pytest.mark.parametrize(
        ("due", "said"),
        [("2026-01-04", "1 day ago"), ("2026-01-05", ""), ("2026-01-06", ""), ("2025-01-05", "365 days ago")],
    )
    def test_the_day_itself_is_not_past(
        self, filed: Callable[..., list[Finding]], due: str, said: str
    ) -> None:
        text = f"name: Ida\nprotect: [{{movement: jumping, advised by: physician, review on: {due}}}]\n"
        assert [said in one.counted for one in filed(text, self.RULE)] == ([True] if said else [])

    def test_no_date(self, filed: Callable[..., list[Finding]]) -> None:
        assert filed("name: Ida\nprotect: [{area: knee, advised by: physician}]\n", self.RULE) == []

    def test_each_one_and_nobody_named(self, filed: Callable[..., list[Finding]]) -> None:
        text = (
            "name: Ida\nprotect:\n  - {area: knee, review on: 2025-12-31}\n"
            "  - {area: hip, advised by: coach, review on: 2025-12-31}\n"
        )
        first, second = filed(text, self.RULE)
        assert (first.place.excerpt, second.place.excerpt) == ("knee", "hip")
        assert first.change.startswith("Ask whoever advised it, and")


SCREENS = {"spotline.yaml": "screening: {stated: 2026-01-02, by: head coach}\n"}


class TestClearanceMissing:
    """riebe-2015: screening, never a verdict; whitfield-2017: it would be common, so it stays quiet."""

    RULE = "clearance-missing"

    def test_the_words(self, filed: Callable[..., list[Finding]]) -> None:
        (finding,) = filed("name: Ida\nage: 71\n", self.RULE)
        assert (finding.severity, finding.sources) == ("note", ("riebe-2015", "whitfield-2017"))
        assert (finding.place.excerpt, finding.where) == ("Ida", "Ida")
        assert finding.counted == "No clearance on file (age 71)."
        assert finding.wanted == "its date"
        assert finding.change.startswith("Ask a physician or other licensed professional")

    def test_all_reasons_at_once(self, findings: Findings, week: Text) -> None:
        head = (
            "phase: return\nathlete: {name: Ida, age: 65, protect: [{area: knee, advised by: physician},"
            " {area: hip, advised by: physician}]}"
        )
        (finding,) = findings(week(LEGS, head), self.RULE)
        assert finding.counted == ("No clearance on file (a restriction, a return to training, age 65).")

    @pytest.mark.parametrize(
        ("athlete", "head", "said"),
        [
            ("age: 65", "", 1),
            ("age: 64", "", 0),
            ("level: novice", "", 0),
            ("age: 65, clearance on file: 2020-01-01", "", 0),
            ("age: 65, screening on file: 2026-01-01", "", 1),  # a screening is no clearance
            ("protect: [{area: knee, advised by: physician}]", "", 1),
            ("protect: [{area: knee, advised by: physician}], clearance on file: 2026-01-01", "", 0),
            ("age: 30", "phase: return", 1),
            ("age: 30, clearance on file: 2026-01-01", "phase: return", 0),
            ("age: 30", "phase: build", 0),
        ],
    )
    def test_who_is_asked(self, findings: Findings, week: Text, athlete: str, head: str, said: int) -> None:
        text = week(LEGS, f"athlete: {{name: Ida, {athlete}}}" + (f"\n{head}" if head else ""))
        assert len(findings(text, self.RULE)) == said
        by_screening = said and "protect" not in athlete  # an adviser has seen what is spared
        assert len(findings(text, self.RULE, SCREENS)) == by_screening

    def test_a_block_of_return(self, findings: Findings) -> None:
        text = (
            "programme: Test\nathlete: {name: Ida}\nblocks:\n"
            "  - {name: A, weeks: 1, sessions: &s [{session: A, exercises: [{exercise: plank, sets: 1}]}]}\n"
            "  - {name: B, weeks: 1, phase: return, sessions: *s}\n"
        )
        assert len(findings(text, self.RULE)) == 1
        assert findings(text.replace("return", "build"), self.RULE) == []

    def test_any_of_the_athletes_programmes(self, filed: Callable[..., list[Finding]]) -> None:
        plan = "programme: {name}\nathlete: ida.athlete.yaml\n{phase}sessions: [{{session: A, exercises: [{{exercise: plank, sets: 1}}]}}]\n"
        files = {
            "a.programme.yaml": plan.format(name="A", phase=""),
            "b.programme.yaml": plan.format(name="B", phase="phase: return\n"),
        }
        (finding,) = filed("name: Ida\n", self.RULE, files)
        assert finding.place.text.name == "ida.athlete.yaml"
        files["b.programme.yaml"] = files["b.programme.yaml"].replace("return", "build")
        assert filed("name: Ida\n", self.RULE, files) == []

    @pytest.mark.parametrize(("age", "said"), [(69, 0), (70, 1)])
    def test_the_age_can_be_moved(self, filed: Callable[..., list[Finding]], age: int, said: int) -> None:
        files = limits(self.RULE, "age: 70")
        assert len(filed(f"name: Ida\nage: {age}\n", self.RULE, files)) == said


class TestScreeningMissing:
    """riebe-2015: activity, symptoms and intended effort; only the date is kept here."""

    RULE = "screening-missing"

    def test_the_words(self, filed: Callable[..., list[Finding]]) -> None:
        (finding,) = filed("name: Ida\nlevel: novice\nage: 45\n", self.RULE)
        assert (finding.severity, finding.sources) == ("note", ("riebe-2015", "whitfield-2017"))
        assert (finding.place.excerpt, finding.where, finding.counted) == (
            "Ida",
            "Ida",
            "No health screening on file.",
        )
        assert finding.wanted == "its date"
        assert finding.change.endswith("or say it once: `screening` in spotline.yaml.")

    @pytest.mark.parametrize(
        ("athlete", "said"),
        [
            ("level: novice", 0),  # a placeholder, as in a published trial
            ("level: novice, note: tall", 0),
            ("level: novice, age: 45", 1),
            ("level: novice, age: 40", 1),
            ("level: novice, age: 39", 0),  # young adults, of whom few would be sent to a physician
            ("level: novice, age: 27, best lifts: {leg press: 100 kg}", 0),
            ("level: novice, age: 18", 0),
            ("level: novice, age: 17", 1),
            ("level: novice, age: 27, protect: [{area: knee, advised by: physician}]", 1),
            ("level: novice, body mass: 70 kg", 1),
            ("level: novice, days: 3", 1),
            ("level: novice, days: [monday]", 1),
            ("level: novice, minutes: 60", 1),
            ("level: novice, equipment: [barbell]", 1),
            ("level: novice, best lifts: {leg press: 100 kg}", 1),
            ("level: novice, protect: [{area: knee, advised by: physician}]", 1),
            ("level: novice, age: 45, screening on file: 2020-01-01", 0),
            ("level: novice, age: 45, clearance on file: 2020-01-01", 0),
        ],
    )
    def test_who_is_asked(self, findings: Findings, week: Text, athlete: str, said: int) -> None:
        text = week(LEGS, f"athlete: {{name: Ida, {athlete}}}")
        assert len(findings(text, self.RULE)) == said
        assert findings(text, self.RULE, SCREENS) == []

    def test_nobody_named(self, findings: Findings, week: Text) -> None:
        assert findings(week(LEGS), self.RULE) == []

    def test_once_an_athlete_however_many_programmes(self, filed: Callable[..., list[Finding]]) -> None:
        plan = "programme: P\nathlete: ida.athlete.yaml\nsessions: [{session: A, exercises: [{exercise: plank, sets: 1}]}]\n"
        files = {"a.programme.yaml": plan, "b.programme.yaml": plan}
        assert len(filed("name: Ida\nlevel: novice\nage: 45\n", self.RULE, files)) == 1


class TestJuniorUnsupervised:
    """faigenbaum-2009: qualified supervision first."""

    RULE = "junior-unsupervised"

    def test_the_words(self, filed: Callable[..., list[Finding]]) -> None:
        (finding,) = filed("name: Ida\nage: 16\n", self.RULE)
        assert (finding.severity, finding.sources) == ("note", ("faigenbaum-2009",))
        assert (finding.place.excerpt, finding.where) == ("Ida", "Ida")
        assert finding.counted == "No supervision of a junior written down."
        assert finding.wanted == "a qualified coach at each session"
        assert "Follow your local rules on young people" in finding.change

    @pytest.mark.parametrize(
        ("athlete", "said"),
        [
            ("age: 17", 1),
            ("age: 18", 0),
            ("age: 17, supervision: coach present", 0),
            ("level: novice", 0),
            ("age: 71", 0),
        ],
    )
    def test_who_is_asked(self, findings: Findings, week: Text, athlete: str, said: int) -> None:
        assert len(findings(week(LEGS, f"athlete: {{name: Ida, {athlete}}}"), self.RULE)) == said

    @pytest.mark.parametrize(("age", "said"), [(15, 1), (16, 0)])
    def test_the_age_can_be_moved(self, filed: Callable[..., list[Finding]], age: int, said: int) -> None:
        assert len(filed(f"name: Ida\nage: {age}\n", self.RULE, limits(self.RULE, "age: 16"))) == said


class TestFailureWithoutSpotter:
    """Common practice, no source."""

    RULE = "failure-without-spotter"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        text = week(
            {
                "monday Push": ["dip, sets: 3, rir: 0", "bench press, sets: 3, rir: 0"],
                "friday Legs": ["back squat, sets: 3, rpe: 10", "bench press, sets: 1, reps: amrap"],
            },
            "weeks: 4",
        )
        (finding,) = findings(text, self.RULE)
        assert (finding.severity, finding.confidence) == ("note", "common practice")
        assert (finding.place.excerpt, finding.where) == ("bench press", "Push, bench press")
        assert (
            finding.counted == "Bench press and back squat to failure with no spotter or safety bars noted."
        )
        assert finding.wanted == "a way out of a failed lift"
        assert finding.change == "Note the spotters, pins or safety bars, or leave 1 in reserve."
        assert [one.words for one in finding.related] == [
            "Legs, back squat: here too",
            "Legs, bench press: here too",
        ]

    @pytest.mark.parametrize(
        ("line", "said"),
        [
            ("bench press, sets: 3, rir: 0", 1),
            ("bench press, sets: 3, rir: 0-2", 0),
            ("bench press, sets: 3, rir: 0.5", 0),
            ("bench press, sets: 3, rir: 1", 0),
            ("bench press, sets: 3, rpe: 10", 1),
            ("bench press, sets: 3, rpe: 9-10", 0),  # 9 will do
            ("bench press, sets: 3, rpe: 8-10", 0),
            ("bench press, sets: 3, reps: 6, load: 6RM", 1),
            ("bench press, sets: 3, load: 6RM", 1),
            ("bench press, sets: 3, reps: 5, load: 6RM", 0),
            ("bench press, sets: 1, reps: 1, load: 100 %", 1),
            ("bench press, sets: 1, reps: 1, load: 95 %", 0),
            ("bench press, sets: 1, reps: amrap, load: 70 %", 1),
            ("bench press, sets: 3, reps: 5/3/1+, load: 75/85/95 %", 1),
            ("bench press, sets: 3, rpe: 9.5", 0),
            ("bench press, sets: 3, reps: amrap", 1),
            ("bench press, sets: 3, reps: amrap, rir: 1", 0),
            ("bench press, sets: 3, reps: 5+", 1),
            ("bench press, sets: 3, reps: 5+, rir: 1", 0),
            ("bench press, sets: 3, reps: 5", 0),
            ("bench press, sets: 3", 0),
            ("incline bench press, sets: 3, rir: 0", 1),
            ("close-grip bench press, sets: 3, rir: 0", 1),
            ("floor press, sets: 3, rir: 0", 1),
            ("pin bench press, sets: 3, rir: 0", 0),  # the bar starts from the pins
            ("dumbbell bench press, sets: 3, rir: 0", 0),
            ("guided-bar bench press, sets: 3, rir: 0", 0),
            ("machine chest press, sets: 3, rir: 0", 0),
            ("overhead press, sets: 3, rir: 0", 0),
            ("bent-over row, sets: 3, rir: 0", 0),
            ("lying triceps extension, sets: 3, rir: 0", 0),
            ("back squat, sets: 3, rir: 0", 1),
            ("front squat, sets: 3, rir: 0", 1),
            ("pin squat, sets: 3, rir: 0", 0),
            ("isometric squat, sets: 3, rir: 0", 0),
            ("goblet squat, sets: 3, rir: 0", 0),
            ("thruster, sets: 3, rir: 0", 0),
            ("landmine squat, sets: 3, rir: 0", 0),
            ("barbell lunge, sets: 3, rir: 0", 0),
            ("deadlift, sets: 3, rir: 0", 0),
            ("leg press, sets: 3, rir: 0", 0),
            ("moon walk, sets: 3, rir: 0", 0),
        ],
    )
    def test_which_sets_of_which_lifts(self, findings: Findings, week: Text, line: str, said: int) -> None:
        assert len(findings(week({"Gym": [line]}), self.RULE)) == said

    @pytest.mark.parametrize(
        "note",
        [
            "two spotters",
            "Spot from behind",
            "use the safety bars",
            "safeties at chest height",
            "pins just below the chest",
            "train with a partner",
            "bars catch it",
            "coach stands by",
        ],
    )
    def test_a_word_on_it(self, findings: Findings, week: Text, note: str) -> None:
        assert findings(week({"Gym": [f"bench press, sets: 3, rir: 0, note: {note}"]}), self.RULE) == []

    @pytest.mark.parametrize("note", ["slowly", "mind the spine", "a good despot"])
    def test_other_words(self, findings: Findings, week: Text, note: str) -> None:
        assert len(findings(week({"Gym": [f"bench press, sets: 3, rir: 0, note: {note}"]}), self.RULE)) == 1

    PLACES = """\
programme: Test
{programme}
athlete: {{name: Ida, {athlete}}}
blocks:
  - name: One
    weeks: 1
    {block}
    sessions:
      - session: Gym
        {session}
        exercises:
          - superset: [{{exercise: bench press, sets: 3, rir: 0, {line}}}, {{exercise: plank, sets: 3}}]
            {superset}
"""
    NOTES = ("programme", "athlete", "block", "session", "line", "superset")

    @pytest.mark.parametrize("where", NOTES)
    def test_wherever_it_is_said(self, findings: Findings, where: str) -> None:
        words = {
            place: ("supervision: " if place == "athlete" else "note: ")
            + ("with a spotter" if place == where else "slowly")
            for place in self.NOTES
        }
        assert findings(self.PLACES.format(**words), self.RULE) == []

    def test_nowhere(self, findings: Findings) -> None:
        words = {
            place: ("supervision: " if place == "athlete" else "note: ") + "slowly" for place in self.NOTES
        }
        (finding,) = findings(self.PLACES.format(**words), self.RULE)
        assert finding.related == ()

    def test_only_lines_of_which_nothing_is_said(self, findings: Findings, week: Text) -> None:
        lines = ["bench press, sets: 3, rir: 0, note: spotter", "back squat, sets: 3, rir: 0"]
        (finding,) = findings(week({"Gym": lines}), self.RULE)
        assert (finding.place.excerpt, finding.related) == ("back squat", ())

    def test_the_words_can_be_moved(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["bench press, sets: 3, rir: 0, note: Kim is there"]})
        assert len(findings(text, self.RULE)) == 1
        assert findings(text, self.RULE, limits(self.RULE, "words: [kim]")) == []
        spotted = text.replace("Kim is there", "spotter")
        assert len(findings(spotted, self.RULE, limits(self.RULE, "words: [kim]"))) == 1
        assert len(findings(spotted, self.RULE, limits(self.RULE, "words: []"))) == 1


class TestLiftBeyondLevel:
    """Common practice, no source; the levels are the catalogue's."""

    RULE = "lift-beyond-level"

    def head(self, level: str, more: str = "") -> str:
        return f"athlete: {{name: Ida, level: {level}{more}}}\nweeks: 4"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        text = week({"monday Lower": ["Pistol Squats, sets: 2, reps: 5"]}, self.head("novice"))
        (finding,) = findings(text, self.RULE)
        assert (finding.severity, finding.confidence) == ("note", "common practice")
        assert (finding.place.excerpt, finding.where) == ("Pistol Squats", "Lower, Pistol Squats")
        assert finding.counted == "Pistol Squats (advanced) for a novice with no easier form first."
        assert finding.wanted == "an easier form first or under `or`"
        assert finding.change == (
            "Start with rear-foot-elevated split squat or single-leg box squat, or correct the level."
        )
        assert [one.words for one in finding.edits] == [
            "rear-foot-elevated split squat",
            "single-leg box squat",
        ]

    @pytest.mark.parametrize(
        ("level", "name", "said"),
        [
            ("novice", "pistol squat", 1),
            ("novice", "back squat", 0),  # intermediate: one step
            ("novice", "leg press", 0),
            ("intermediate", "pistol squat", 0),
            ("advanced", "pistol squat", 0),
            ("novice", "moon walk", 0),
            ("begginer", "pistol squat", 0),  # not a level
        ],
    )
    def test_two_steps(self, findings: Findings, week: Text, level: str, name: str, said: int) -> None:
        assert len(findings(week({"Gym": [f"{name}, sets: 3"]}, self.head(level)), self.RULE)) == said

    @pytest.mark.parametrize(
        ("level", "name", "said"),
        [
            ("novice", "back squat", 1),
            ("novice", "leg press", 0),
            ("intermediate", "pistol squat", 1),
            ("intermediate", "back squat", 0),
            ("advanced", "pistol squat", 0),
        ],
    )
    def test_the_steps_can_be_moved(
        self, findings: Findings, week: Text, level: str, name: str, said: int
    ) -> None:
        text = week({"Gym": [f"{name}, sets: 3"]}, self.head(level))
        assert len(findings(text, self.RULE, limits(self.RULE, "steps: 1"))) == said

    def test_nobody_or_no_level(self, findings: Findings, week: Text) -> None:
        assert findings(week({"Gym": ["pistol squat, sets: 3"]}), self.RULE) == []
        assert findings(week({"Gym": ["pistol squat, sets: 3"]}, "athlete: {name: Ida}"), self.RULE) == []

    @pytest.mark.parametrize(
        ("other", "said"),
        [
            ("single-leg box squat, sets: 3", 0),
            ("step-down, sets: 3", 1),  # two levels down
            ("single-leg box squat, sets: {1: 3, 2-4: 0}", 0),
            ("single-leg box squat, sets: {1-4: 0}", 1),
            ("back extension, sets: 3", 1),
            ("moon walk, sets: 3", 1),
        ],
    )
    def test_an_easier_form_beside_it(self, findings: Findings, week: Text, other: str, said: int) -> None:
        text = week({"Gym": ["pistol squat, sets: 3", other]}, self.head("novice"))
        assert len(findings(text, self.RULE)) == said

    @pytest.mark.parametrize(
        ("names", "said"),
        [
            ("{1-2: single-leg box squat, 3-4: pistol squat}", 0),
            ("{1-2: pistol squat, 3-4: single-leg box squat}", 1),  # too late
        ],
    )
    def test_before_it(self, findings: Findings, week: Text, names: str, said: int) -> None:
        assert len(findings(week({"Gym": [f"{names}, sets: 3"]}, self.head("novice")), self.RULE)) == said

    @pytest.mark.parametrize(
        ("other", "said"), [("single-leg box squat", 0), ("leg extension", 1), ("moon walk", 1)]
    )
    def test_named_as_an_alternative(self, findings: Findings, week: Text, other: str, said: int) -> None:
        text = week({"Gym": [f"pistol squat, sets: 3, or: [{other}]"]}, self.head("novice"))
        assert len(findings(text, self.RULE)) == said

    def test_a_best_lift_shows_that_it_is_known(self, findings: Findings, week: Text) -> None:
        lines = {"Gym": ["power clean, sets: 3"]}
        assert len(findings(week(lines, self.head("novice")), self.RULE)) == 1
        known = self.head("novice", ", best lifts: {power clean: 60 kg}")
        assert findings(week(lines, known), self.RULE) == []
        other = self.head("novice", ", best lifts: {back squat: 60 kg}")
        assert len(findings(week(lines, other), self.RULE)) == 1

    def test_each_exercise_once(self, findings: Findings, week: Text) -> None:
        lines = ["pistol squat, sets: 3", "power clean, sets: 3", "pistol squat, sets: 2"]
        said = findings(week({"Gym": lines}, self.head("novice")), self.RULE)
        assert [(one.subject, one.place.line) for one in said] == [("pistol squat", 7), ("power clean", 8)]

    def test_an_exercise_of_the_teams_own_without_easier_forms(self, findings: Findings, week: Text) -> None:
        files = {
            "spotline.yaml": "exercises: [own.exercises.yaml]\n",
            "own.exercises.yaml": "exercises:\n  - {name: pier leap, implement: bodyweight, level: advanced, path: {hip: [90, 0], knee: 15}}\n",
        }
        (finding,) = findings(week({"Gym": ["pier leap, sets: 3"]}, self.head("novice")), self.RULE, files)
        assert not finding.change.startswith("Start with")
        easier = "15}, easier: [quay leap, box jump, broad jump]}"
        files["own.exercises.yaml"] = files["own.exercises.yaml"].replace("15}}", easier)
        (finding,) = findings(week({"Gym": ["pier leap, sets: 3"]}, self.head("novice")), self.RULE, files)
        assert finding.change.startswith("Start with box jump or broad jump,")  # nobody knows the first


class TestStopSignsMissing:
    """haroy-pain: past 3 of 10 the easier variant; otago-stop: dizziness, chest pain, too breathless to speak."""

    RULE = "stop-signs-missing"
    STAGE = REHABILITATION.format(until="2026-03-01")

    def test_the_words(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week(LEGS, self.STAGE), self.RULE)
        assert (finding.severity, finding.sources) == ("note", ("haroy-pain", "otago-stop"))
        assert (finding.place.excerpt, finding.where) == ("return", "rehabilitation, return")
        assert finding.counted == "Rehabilitation without a word on pain or when to stop."
        assert finding.wanted == "a pain limit and stop signs in a note"
        assert finding.change == "Ask the physiotherapist, and note both."
        assert "when pain is above 3 of 10" in finding.why
        assert "ring a doctor for chest pain, dizziness or breath too short to speak" in finding.why

    def test_no_rehabilitation(self, findings: Findings, week: Text) -> None:
        assert findings(week(LEGS), self.RULE) == []
        assert findings(week(LEGS, "phase: return"), self.RULE) == []

    def test_a_stage_without_adviser_or_name(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week(LEGS, "rehabilitation: {until: 2026-03-01}"), self.RULE)
        assert finding.change.startswith("Ask whoever advised it, and")
        assert finding.place.line == 2

    @pytest.mark.parametrize(
        ("note", "said"),
        [
            ("stop when it hurts", 0),
            ("Pain up to 3 of 10 may pass", 0),
            ("no aches the day after", 0),
            ("aching is a sign", 0),
            ("soreness is fine", 0),
            ("without discomfort", 0),
            ("ring for any new symptoms", 0),
            ("painless as can be", 0),
            ("up with both, down with one", 1),
            ("Achilles work", 1),  # no ache
            ("a moustache", 1),
        ],
    )
    def test_words_on_pain(self, findings: Findings, week: Text, note: str, said: int) -> None:
        assert len(findings(week(LEGS, f"{self.STAGE}\nnote: {note}"), self.RULE)) == said

    PLACES = """\
programme: Test
rehabilitation: {{stage: return, advised by: physiotherapist, until: 2026-03-01}}
note: {programme}
blocks:
  - name: One
    weeks: 1
    note: {block}
    sessions:
      - session: Gym
        note: {session}
        exercises:
          - superset:
              - {{exercise: plank, sets: 3, note: {line}}}
              - {{exercise: leg press, sets: 3, progression: {{add: 5 kg, when: {when}, note: {progression}}}}}
            note: {superset}
"""
    NOTES = ("programme", "block", "session", "line", "when", "progression", "superset")

    @pytest.mark.parametrize("where", NOTES)
    def test_wherever_it_is_said(self, findings: Findings, where: str) -> None:
        words = {place: "free of pain" if place == where else "slowly" for place in self.NOTES}
        assert findings(self.PLACES.format(**words), self.RULE) == []

    def test_nowhere(self, findings: Findings) -> None:
        assert len(findings(self.PLACES.format(**dict.fromkeys(self.NOTES, "slowly")), self.RULE)) == 1

    def test_the_words_can_be_moved(self, findings: Findings, week: Text) -> None:
        text = week(LEGS, f"{self.STAGE}\nnote: traffic light is red")
        assert findings(text, self.RULE, limits(self.RULE, "words: [traffic light]")) == []
        text = week(LEGS, f"{self.STAGE}\nnote: no pain")
        assert len(findings(text, self.RULE, limits(self.RULE, "words: [traffic light]"))) == 1


class TestRehabilitationOpen:
    """Common practice, no source."""

    RULE = "rehabilitation-open"

    def text(self, week: Text, until: str, head: str = "starts: 2026-01-05\nweeks: 4") -> str:
        return week(
            LEGS,
            f"{REHABILITATION.format(until=until)}\n{head}" if head else REHABILITATION.format(until=until),
        )

    def test_the_words_before_the_end_of_the_programme(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(self.text(week, "2026-01-20"), self.RULE)
        assert (finding.severity, finding.confidence) == ("note", "common practice")
        assert (finding.place.excerpt, finding.where) == ("2026-01-20", "rehabilitation, return")
        assert finding.counted == "The stage ends on 2026-01-20, but the last week begins on 2026-01-26."
        assert finding.wanted == "a later end, within 26 weeks"
        assert finding.change == "Ask the physiotherapist for the next stage, and write it."

    @pytest.mark.parametrize(
        ("until", "said"),
        [("2026-01-25", 1), ("2026-01-26", 0), ("2026-01-27", 0), ("2025-12-01", 1)],
    )
    def test_every_week_begins_before_the_end(
        self, findings: Findings, week: Text, until: str, said: int
    ) -> None:
        assert len(findings(self.text(week, until), self.RULE)) == said

    @pytest.mark.parametrize(
        ("until", "counted"),
        [
            ("2026-01-04", "The stage ended on 2026-01-04."),
            ("2026-01-05", ""),
            ("2026-01-06", ""),
            ("2026-07-06", ""),  # 26 weeks from 5 January
            ("2026-07-07", "The stage ends on 2026-07-07, 26 weeks from now."),
            ("2027-01-04", "The stage ends on 2027-01-04, 52 weeks from now."),
        ],
    )
    def test_without_a_start_today_counts(
        self, findings: Findings, week: Text, until: str, counted: str
    ) -> None:
        for head in ("", "weeks: 4"):  # the weeks lie nowhere
            said = findings(self.text(week, until, head), self.RULE)
            assert [one.counted for one in said] == ([counted] if counted else [])

    @pytest.mark.parametrize(("days", "said"), [(26 * 7, 0), (26 * 7 + 1, 1)])
    def test_half_a_year_from_the_start(self, findings: Findings, week: Text, days: int, said: int) -> None:
        until = date(2026, 2, 2) + timedelta(days=days)
        found = findings(self.text(week, str(until), "starts: 2026-02-02"), self.RULE)
        assert [one.counted for one in found] == [
            f"The stage ends on {until}, 26 weeks from the start."
        ] * said

    @pytest.mark.parametrize(("until", "said"), [("2026-02-02", 0), ("2026-02-03", 1)])
    def test_the_length_can_be_moved(self, findings: Findings, week: Text, until: str, said: int) -> None:
        found = findings(self.text(week, until), self.RULE, limits(self.RULE, "longest: 4"))
        assert [one.wanted for one in found] == ["an end within 4 weeks (your team's limit)"] * said

    def test_nothing_to_look_at(self, findings: Findings, week: Text) -> None:
        assert findings(week(LEGS), self.RULE) == []
        open_end = week(LEGS, "rehabilitation: {stage: return, advised by: physiotherapist}")
        assert findings(open_end, self.RULE) == []


class TestDiagnosisInProgramme:
    RULE = "diagnosis-in-programme"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        text = week(
            {"Gym": ["leg press, sets: 3, note: since the Rupture", "plank, sets: 3, note: beta-blockers"]},
            "note: rupture in May",
        )
        (finding,) = findings(text, self.RULE)
        assert (finding.severity, finding.confidence, finding.where) == ("warning", "fact", "Test")
        assert (finding.place.line, finding.place.excerpt) == (2, "rupture")
        assert finding.counted == "`rupture`, `Rupture` and `beta-blockers` read like medical details."
        assert finding.wanted == "movement terms only"
        assert finding.change == (
            "Write under `protect` what to spare, or take the word off the list in spotline.yaml."
        )
        assert [(one.place.line, one.place.excerpt, one.words) for one in finding.related] == [
            (6, "Rupture", "here too"),
            (7, "beta-blockers", "here too"),
        ]

    @pytest.mark.parametrize(
        "note",
        [
            "ACL",
            "after acl, nine months",
            "tendinopathy",
            "Tendonitis (left)",
            "a torn muscle",
            "herniated disc",
            "slipped discs",
            "diabetes",
            "high blood pressure",
            "hypertension",
            "pregnant",
            "osteoarthritis",
            "stress fractures",
            "depression",
            "on beta blockers",
            "on statins",
            "Parkinson's",
            "post-op",
            "post op",
            "heart-attack",
            "frozen   shoulder",
        ],
    )
    def test_words_that_are_private(self, findings: Findings, week: Text, note: str) -> None:
        (finding,) = findings(week(LEGS, f"note: {note}"), self.RULE)
        assert "reads like" in finding.counted

    @pytest.mark.parametrize(
        "note",
        [
            "no overhead pressing until June",
            "scapular depression",
            "shoulder depression and retraction",
            "shoulder-blade depression",
            "uninterrupted",
            "the stroke is long",
            "pain at 3 of 10",
            "practical",  # ...acl...
            "surgeon",
            "sprained-looking",
            "spread the strain",
            "rest after the heart of the session",
        ],
    )
    def test_words_that_are_not(self, findings: Findings, week: Text, note: str) -> None:
        assert findings(week(LEGS, f"note: {note}"), self.RULE) == []

    def test_comments_names_and_waivers_are_read_too(self, findings: Findings, week: Text) -> None:
        for text in (
            week(LEGS) + "# sciatica again\n",
            week({"Sciatica day": ["plank, sets: 3"]}),
            week(LEGS, "rehabilitation: {stage: sciatica, advised by: physician, until: 2026-02-01}"),
        ):
            (finding,) = findings(text, self.RULE)
            assert finding.place.excerpt.lower() == "sciatica"

    def test_an_athlete_in_the_programme_is_spoken_of_once(self, findings: Findings, week: Text) -> None:
        text = week(LEGS, "athlete:\n  name: Ida\n  note: sciatica\nnote: slowly")
        assert findings(text, self.RULE) == []
        (finding,) = findings(text, "diagnosis-in-athlete-file")
        assert finding.place.line == 4
        both = text.replace("slowly", "meniscus").replace("programme: Test", "programme: Hernia")
        assert [one.place.excerpt for one in findings(both, self.RULE)] == ["Hernia"]
        assert [one.place.excerpt for one in findings(both, self.RULE)[0].related] == ["meniscus"] * 1

    def test_athletes_with_files_of_their_own_are_not_the_programmes_business(
        self, findings: Findings, week: Text
    ) -> None:
        files = {"ida.athlete.yaml": f"name: Ida\n{'#' * 200}\nnote: sciatica\n"}
        assert findings(week(LEGS, "athlete: ida.athlete.yaml"), self.RULE, files) == []
        text = week(LEGS, "athlete: ida.athlete.yaml\nnote: sciatica")
        assert len(findings(text, self.RULE, files)) == 1

    def test_a_squad_is_told_once(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week(LEGS, "athletes: [{name: Ida}, {name: Bo}]\nnote: sciatica"), self.RULE)
        assert finding.counted.startswith("`sciatica`")

    @pytest.mark.parametrize(
        ("text", "place"),
        [
            ("sciatica: x\nprogramme: Test\n", 0),
            ("programme: Test\nathlete:\n  sciatica: x\n  name: Ida\n", None),
            ("programme: Test\nathlete: {name: Ida}\nsciatica: x\n", 37),
            ("programme: Test\nathlete:\n  name: Ida\nsciatica: x\n", 37),
        ],
    )
    def test_where_the_file_and_the_athlete_begin_and_end(
        self, findings: Findings, text: str, place: int | None
    ) -> None:
        text += "sessions: [{session: A, exercises: [{exercise: plank, sets: 1}]}]\n"
        said = [one.place.start for one in findings(text, self.RULE)]
        assert said == ([] if place is None else [place])

    def test_the_words_can_be_moved(self, findings: Findings, week: Text) -> None:
        moved = limits(self.RULE, "words: [wonky knee]")
        assert len(findings(week(LEGS, "note: Wonky-knees"), self.RULE, moved)) == 1
        assert findings(week(LEGS, "note: sciatica"), self.RULE, moved) == []
        assert findings(week(LEGS, "note: sciatica"), self.RULE, limits(self.RULE, "words: []")) == []


class TestDiagnosisInAthleteFile:
    RULE = "diagnosis-in-athlete-file"

    def test_the_words(self, filed: Callable[..., list[Finding]]) -> None:
        text = (
            "# ACL in 2024\nname: Ida\n# meniscus\nage: 30\nlevel: novice\n"
            "sport: judo\nnote: torn in May\n# and asthma\n"
        )
        (finding,) = filed(text, self.RULE)
        assert (finding.severity, finding.where) == ("warning", "Ida")
        assert (finding.place.line, finding.place.excerpt) == (1, "ACL")
        assert finding.counted == "`ACL`, `meniscus`, `torn` and 1 more read like medical details."
        assert [one.place.line for one in finding.related] == [3, 7, 8]

    def test_clean(self, filed: Callable[..., list[Finding]]) -> None:
        assert filed("name: Ida\nnote: likes to know why\n", self.RULE) == []

    def test_in_a_programme_only_what_is_said_of_the_athlete(self, findings: Findings, week: Text) -> None:
        text = week(
            LEGS, "athletes:\n  - {name: Ida, note: asthma}\n  - {name: Bo, note: tall}\nnote: asthma"
        )
        (finding,) = findings(text, self.RULE)
        assert (finding.place.line, finding.where, finding.related) == (3, "Ida", ())

    def test_an_athlete_by_an_anchor(self, findings: Findings) -> None:
        text = (
            "programme: Test\nshared: {ida: &ida {name: Ida, note: asthma}}\nathlete: *ida\n"
            "sessions: [{session: A, exercises: [{exercise: plank, sets: 1}]}]\n"
        )
        (finding,) = findings(text, self.RULE)
        assert finding.place.line == 2
        assert findings(text, "diagnosis-in-programme") == []

    def test_the_words_can_be_moved(self, filed: Callable[..., list[Finding]]) -> None:
        moved = limits(self.RULE, "words: [tall]")
        assert len(filed("name: Ida\nnote: tall\n", self.RULE, moved)) == 1
        assert filed("name: Ida\nnote: asthma\n", self.RULE, moved) == []
