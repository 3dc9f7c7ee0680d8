"""What rules of care, kit and adjusting say for certain, and where they are silent: siblings of coaches' sheets."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.body import catalogue
from spotline.lint.body.restrictions import read
from spotline.lint.findings.finding import Finding
from spotline.lint.project.results import Review

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]


class TestWhatIsSparedIsSurelyDone:
    RULE = "protected-area-loaded"

    def told(self, findings: Findings, week: Text, restriction: str, *lines: str) -> list[str]:
        head = f"athlete: {{name: Ida, protect: [{{movement: {restriction}, advised by: physician}}]}}"
        found = findings(week({"Gym": [f"{line}, sets: 3" for line in lines]}, head), self.RULE)
        assert all(one.severity == "warning" for one in found)
        return [place.excerpt for one in found for place in (one.place,)]

    @pytest.mark.parametrize(
        ("restriction", "line"),
        [
            # one leg
            ("single-leg standing", "goblet squat"),
            ("single-leg standing", "kettlebell swing"),
            ("single-leg standing", "bodyweight calf raise"),
            ("single-leg balance", "split squat"),
            ("standing on the left leg", "back squat"),
            # hanging and pulling
            ("pull-ups", "lat pulldown"),
            ("chin-ups", "neutral-grip lat pulldown"),
            ("pull-ups", "hanging leg raise"),
            ("hanging from straight arms", "lat pulldown"),
            # bounds that no line can be held against
            ("external rotation beyond 60 deg under load", "band external rotation"),
            ("pressing above head height", "bench press"),
            ("pressing above 10 kg", "dumbbell bench press"),
            ("lying flat straight after tablets", "bench press"),
            ("squats below parallel for long", "back squat"),
            ("heel drop below level", "heel drop"),
            ("fast running", "treadmill run"),
            ("quick twisting", "Russian twist"),
            # bounds that the line does not reach
            ("overhead with kettlebell", "dumbbell shoulder press, load: 2 x 8 kg"),
            ("overhead with kettlebell", "pull-up"),
            ("heavy deadlifts", "deadlift, load: 60 %"),
            ("heavy deadlifts", "deadlift"),
            ("squats under load", "bodyweight squat"),
            ("loaded lunges", "split squat, load: bodyweight"),
            ("barbell bench press", "dumbbell bench press"),
            # what the coach noted is the answer
            ("overhead pressing", "half-kneeling press, note: to eye height - not overhead"),
            ("shoulder external rotation", "band external rotation, note: elbow at side to 45 deg"),
            ("deep knee bend", "goblet squat, note: to box 50 - above 90 - ok"),
            ("elbow extension", "triceps pushdown, note: elbows never straight"),
            ("knee bends", "back squat, note: half range only"),
            ("hanging", "hanging knee raise, note: physio ok'd"),
            ("kneeling", "half-kneeling cable chop, cue: pain-free"),
            ("jumping", "box jump, note: no jump - step up and down"),
        ],
    )
    def test_silent(self, findings: Findings, week: Text, restriction: str, line: str) -> None:
        assert self.told(findings, week, restriction, line) == []

    @pytest.mark.parametrize(
        ("restriction", "line"),
        [
            ("single-leg standing", "pistol squat"),
            ("standing on one leg", "single-leg Romanian deadlift"),
            ("pull-ups", "chin-up"),
            ("pull-ups", "assisted pull-up"),
            ("hanging from straight arms", "dead hang"),
            ("overhead pressing", "seated dumbbell shoulder press"),
            ("overhead pressing", "seated dumbbell shoulder press, note: light"),
            ("overhead with kettlebell", "kettlebell push press"),
            ("heavy deadlifts", "deadlift, load: 85 %"),
            ("squats under load", "goblet squat, load: 16 kg"),
            ("deep knee bend", "goblet squat"),
            ("dips", "weighted dip"),
            ("jumping", "box jump"),
        ],
    )
    def test_said(self, findings: Findings, week: Text, restriction: str, line: str) -> None:
        assert self.told(findings, week, restriction, line) == [line.split(",")[0]]

    @pytest.mark.parametrize(
        ("restriction", "agreed", "line"),
        [
            ("deep knee bend", "box squat to box 50", "goblet squat, note: box squat to box 50"),
            ("single-leg standing", "step-up with hand on wall", "step-up, note: hand on wall"),
            ("single-leg standing", "step-up with hand on wall", "step-up"),
            ("overhead pressing", "half-kneeling landmine press", "half-kneeling landmine press"),
            ("hanging", "hang with feet on the floor", "dead hang, note: feet on the floor"),
        ],
    )
    def test_what_was_agreed(
        self, findings: Findings, week: Text, restriction: str, agreed: str, line: str
    ) -> None:
        assert self.told(findings, week, f"{restriction}, agreed: [{agreed}]", line) == []

    def test_what_was_agreed_is_no_more_than_that(self, findings: Findings, week: Text) -> None:
        said = self.told(findings, week, "jumping, agreed: [squats]", "squat jump")
        assert said == ["squat jump"]

    def test_the_note_on_a_swap_is_one_on_the_line(self, findings: Findings, week: Text) -> None:
        head = (
            "athletes:\n  - athlete: {name: Ida, protect: [{movement: deep knee bend, advised by: physician,"
            " agreed: [box squat to box 50]}]}\n"
            "    adjust: [{exercise: back squat, swap: goblet squat, note: %s}]"
        )
        for note, told in (("to box 50 - above 90", 0), ("slowly", 1)):
            text = week({"Gym": ["back squat, sets: 3"]}, head % note)
            assert len(findings(text, self.RULE)) == told

    @pytest.mark.parametrize(
        ("restriction", "risky"),
        [
            ("single-leg standing", "split squat"),
            ("deep knee bend", "sumo squat"),
            ("external rotation beyond 60 deg under load", "W raise"),
            ("standing on one leg", "step-up"),
        ],
    )
    def test_what_may_break_it_is_never_offered(self, restriction: str, risky: str) -> None:
        exercise = catalogue.exercise(risky)
        assert exercise is not None
        assert not read(restriction).clears(exercise)

    def test_where_nothing_is_surely_safe_only_the_professional_is_named(
        self, findings: Findings, week: Text
    ) -> None:
        head = "athlete: {name: Ida, protect: [{movement: heavy deadlifts, advised by: physician}]}"
        (finding,) = findings(week({"Gym": ["deadlift, sets: 3, reps: 3, load: 85 %"]}, head), self.RULE)
        assert (finding.change, finding.edits) == ("Ask the physician what may stay.", ())


class TestKitThatIsWritten:
    RULE = "equipment-missing"

    @pytest.mark.parametrize(
        ("has", "line"),
        [
            ("barbell, farmer's handles", "farmer's carry, load: 2 x 40 kg"),
            ("barbell, jugs", "farmer's carry, load: 2 x 10 kg"),
            ("rucksack", "suitcase carry, load: 15 kg"),
            ("trap bar, plates", "farmer's carry, load: 80 kg"),
            ("landmine, plates", "half-kneeling landmine press, load: 5 kg"),
            ("bands", "back squat, load: 40 kg"),
            ("mat", "pull-up"),
            ("kettlebells", "dumbbell row"),
            ("hex bar", "trap bar deadlift"),
            ("everything", "leg press"),
            ("dumbbells, flux coil", "leg press"),
        ],
    )
    def test_silent(self, findings: Findings, week: Text, has: str, line: str) -> None:
        text = week({"Gym": [f"{line}, sets: 3"]}, f'athlete: {{name: Ida, equipment: ["{has}"]}}')
        text = text.replace(f'["{has}"]', "[" + ", ".join(f'"{one}"' for one in has.split(", ")) + "]")
        assert findings(text, self.RULE) == []

    @pytest.mark.parametrize(
        ("has", "line"),
        [
            ("bands", "leg press"),
            ("bands", "barbell bent-over row"),
            ("barbell", "kettlebell swing"),
            ("dumbbells", "sled push"),
            ("dumbbells", "cable fly"),
        ],
    )
    def test_said(self, findings: Findings, week: Text, has: str, line: str) -> None:
        text = week({"Gym": [f"{line}, sets: 3"]}, f"athlete: {{name: Ida, equipment: [{has}]}}")
        assert [one.severity for one in findings(text, self.RULE)] == ["note"]

    @pytest.mark.parametrize(
        ("note", "told"),
        [
            ("Leg press in the hall next door.", 0),
            ("Full gym on Fridays", 0),
            ("club gym", 0),
            ("no leg press yet", 1),
            ("likes the music loud", 1),
        ],
    )
    def test_a_note_may_name_it(self, findings: Findings, week: Text, note: str, told: int) -> None:
        lines = {"Gym": ["leg press, sets: 3"]}
        of_athlete = f'athlete: {{name: Ida, equipment: [bands], note: "{note}"}}'
        of_programme = f'note: "{note}"\nathlete: {{name: Ida, equipment: [bands]}}'
        for head in (of_athlete, of_programme):
            assert len(findings(week(lines, head), self.RULE)) == told


class TestWhatIsAdjusted:
    RULE = "adjustment-unmatched"
    HALL = (
        "programme: Hall\nathletes: [{{athlete: {{name: Ida}}, adjust: [{{exercise: {named}, leave out: true}}]}}]\n"
        "sessions:\n  - session: THU\n    preparation: [hip circles]\n    exercises:\n"
        "      - {{intervals: rowing ergometer, rounds: 6, on: 1 min, off: 1 min}}\n"
        "      - {{exercise: back squat, sets: 3}}\n"
        "      - {{own choice: rice bucket, minutes: 3, trains: [forearms]}}\n"
        "      - circuit:\n          for: 10 min\n          exercises: [{{exercise: push-up, reps: 10}}]\n"
        "  - {{activity: water session, day: monday}}\n"
    )

    @pytest.mark.parametrize(
        ("named", "told"),
        [
            ("rowing ergometer", 0),
            ("rice bucket", 0),
            ("push-up", 0),
            ("water session", 0),
            ("hip circles", 0),
            ("THU", 0),
            ("squat", 0),
            ("bench press", 1),
            ("running", 1),
        ],
    )
    def test_everything_in_the_programme_is_there(self, findings: Findings, named: str, told: int) -> None:
        assert len(findings(self.HALL.format(named=named), self.RULE)) == told


class TestNoBestIsWanted:
    RULE = "best-lift-missing"

    @pytest.mark.parametrize(
        ("note", "line", "change"),
        [
            ("No % for him, no maxes.", "bench press", "The % is left over"),
            ("never tests a 1RM", "deadlift", "The % is left over"),
            ("likes squats", "bench press", "Write it under `best lifts`"),
            ("likes squats", "push-up", "The body alone has no best"),
        ],
    )
    def test_what_to_write(self, findings: Findings, week: Text, note: str, line: str, change: str) -> None:
        head = f'athlete: {{name: Leo, best lifts: {{back squat: 60 kg}}, note: "{note}"}}'
        (finding,) = findings(week({"Gym": [f"{line}, sets: 3, reps: 6, load: 70 %"]}, head), self.RULE)
        assert finding.change.startswith(change)


class TestAnOpenSetThatLeavesOne:
    RULE = "failure-without-spotter"

    @pytest.mark.parametrize(
        ("note", "has", "told"),
        [
            ("last set AMRAP leave one in", "barbell", 0),
            ("AMRAP, stop clean", "barbell", 0),
            ("as many as go, 1 in reserve", "barbell", 0),
            ("AMRAP (-2)", "barbell", 0),
            ("all out", "barbell", 1),
            ("all out", "barbell, power rack", 0),
            ("all out", "barbell, safety arms", 0),
            ("all out", "barbell, rack", 1),
        ],
    )
    def test_is_not_to_failure(self, findings: Findings, week: Text, note: str, has: str, told: int) -> None:
        head = f"athlete: {{name: Bo, equipment: [{has}]}}"
        line = f'bench press, sets: 3, reps: 5/5/5+, load: 80 %, note: "{note}"'
        assert len(findings(week({"Gym": [line]}, head), self.RULE)) == told


class TestWhatItMeansForTraining:
    RULE = "diagnosis-in-athlete-file"

    @pytest.mark.parametrize(
        ("note", "severity"),
        [
            ("Old ankle sprain (Oct), cleared 1 Dec by team physio, nothing forbidden.", None),
            ("wrist fracture last year, no restrictions", None),
            ("shoulder dislocation 2024, discharged", None),
            ("torn calf in May, full training since June", None),
            ("tendinopathy, no jumps until March", "note"),
            ("Osteoporosis of the spine. Doctor: no bending forward with load.", "note"),
            ("meniscus in May", "warning"),
            ("ACL in 2024", "warning"),
        ],
    )
    def test_is_said(self, findings: Findings, week: Text, note: str, severity: str | None) -> None:
        text = week({"Gym": ["leg press, sets: 3"]}, f'athlete: {{name: Ida, note: "{note}"}}')
        assert [one.severity for one in findings(text, self.RULE)] == ([severity] if severity else [])


class TestASquadOfJuniors:
    @pytest.mark.parametrize(
        ("note", "names"),
        [
            ("School ski camp in week 5", ("Anouk", "Boris", "Leif")),
            ("school holiday in May", ("Anouk", "Boris", "Leif")),
            ("trains at school with the PE teacher", ("Boris", "Leif")),
        ],
    )
    def test_all_are_named_in_one_finding(
        self, reviewed: Callable[..., Review], note: str, names: tuple[str, ...]
    ) -> None:
        files = {
            "anouk.athlete.yaml": f"name: Anouk\nage: 16\nlevel: novice\nnote: {note}\n",
            "boris.athlete.yaml": "name: Boris\nage: 17\nlevel: intermediate\n",
            "leif.athlete.yaml": "name: Leif\nage: 15\nlevel: novice\n",
        }
        text = (
            "programme: Squad\nathletes: [anouk.athlete.yaml, boris.athlete.yaml, leif.athlete.yaml]\n"
            "sessions: [{session: A, exercises: [{exercise: leg press, sets: 3, reps: 8}]}]\n"
        )
        review = reviewed(text, files, every=True)
        told = [one for file in review.files for one in file.findings if one.rule == "junior-unsupervised"]
        assert [one.athletes for one in told] == [names]


class TestWhatStandsBesideALine:
    """What coaches note beside a line answers a restriction; each beside the nearest that does not."""

    HEAD = "athlete: {name: Ida, protect: [{movement: %s, advised by: physiotherapist}]}"

    @pytest.mark.parametrize(
        ("movement", "line", "told"),
        [
            ("arm above shoulder height", "wall slide, note: to shoulder height", 0),
            ("arm above shoulder height", "wall slide, note: slowly", 1),
            ("deep knee bend", "leg press, note: seat back so the knee stays at 90 or more", 0),
            ("deep knee bend", "leg press, note: seat back", 1),
            ("weight through the left hand", "dumbbell Romanian deadlift, note: R hand DB only", 0),
            ("weight through the left hand", "dumbbell Romanian deadlift, note: slowly", 1),
            ("deep knee bend", "leg press, note: keep at 90 kg", 1),  # no degrees
            ("deep knee bend", "leg press, note: 90 or more reps in all", 1),
            ("pull-ups", "pull-up, note: Ida must not miss this", 1),  # a name answers nothing
            ("overhead loading", "handstand hold, hold: 15 s", 1),
            ("overhead loading", "dead hang, hold: 15 s", 0),
        ],
    )
    def test_an_answer(self, findings: Findings, week: Text, movement: str, line: str, told: int) -> None:
        text = week({"Gym": [f"{line}, sets: 3"]}, self.HEAD % movement)
        assert len(findings(text, "protected-area-loaded")) == told


class TestDaysMovedForOnce:
    RULE = "days-more-than-athlete"
    HEAD = "starts: 2026-01-05\nweeks: 4\nathlete: {name: Ida, days: [monday, saturday]}"

    @pytest.mark.parametrize(
        ("day", "told"),
        [
            ("{4: sunday, other: saturday}", 0),
            ("{3-4: sunday, other: saturday}", 1),  # half of the weeks
            ("sunday", 1),
        ],
    )
    def test_a_session_that_is_moved(self, findings: Findings, day: str, told: int) -> None:
        text = (
            f"programme: T\n{self.HEAD}\nsessions:\n  - session: Gym\n    day: {day}\n"
            "    exercises: [{exercise: leg press, sets: 3}]\n"
        )
        assert len(findings(text, self.RULE)) == told

    @pytest.mark.parametrize(("weeks", "told"), [("2", 0), ("1-2", 1), ("1-4", 1)])
    def test_a_session_of_few_weeks(self, findings: Findings, weeks: str, told: int) -> None:
        text = (
            f"programme: T\n{self.HEAD}\nsessions:\n  - session: Gym\n    day: monday\n"
            "    exercises: [{exercise: leg press, sets: 3}]\n  - session: Home\n    day: thursday\n"
            f"    in weeks: {weeks}\n    exercises: [{{exercise: push-up, sets: 3}}]\n"
        )
        assert len(findings(text, self.RULE)) == told


class TestWhatAnotherAimLeavesOut:
    """Coverage of muscles one by one is for those who train for muscle, or do not say what for."""

    LEGS = ("back squat, sets: 3, reps: 8", "leg press, sets: 3, reps: 8")

    @pytest.mark.parametrize(
        ("head", "told"),
        [
            ("athlete: {name: Ida}", 1),
            ("athlete: {name: Ida, sport: rowing}", 0),
            ("athlete: {name: Ida, sport: rowing}\ngoal: hypertrophy", 1),
            ("athlete: {name: Ida, sport: rowing}\nfocus: [hamstrings]", 1),
            ("athlete: {name: Ida, age: 17}", 0),
            ("athlete: {name: Ida, age: 18}", 1),
            ("phase: return", 0),
            ("starts: 2026-01-05\nevents: [{date: 2026-03-01, event: race}]", 0),
        ],
    )
    def test_a_missing_curl(self, findings: Findings, week: Text, head: str, told: int) -> None:
        assert len(findings(week({"Gym": [*self.LEGS]}, head), "knee-flexion-missing")) == told

    @pytest.mark.parametrize(("spared", "told"), [("deadlifting", 0), ("overhead pressing", 1)])
    def test_a_hinge_that_is_spared_is_not_missing(
        self, findings: Findings, week: Text, spared: str, told: int
    ) -> None:
        head = f"athlete: {{name: Ida, protect: [{{movement: {spared}, advised by: physiotherapist}}]}}"
        lines = ["back squat, sets: 3, reps: 8", "leg press, sets: 3, reps: 8", "leg curl, sets: 3, reps: 8"]
        assert len(findings(week({"Gym": lines}, head), "hip-hinge-missing")) == told


class TestTableCellDiffers:
    """Common practice, no source."""

    RULE = "table-cell-differs"
    SAME = "{1: 70 %, 2: 75 %, 3: 80 %, 4: 72.5 %, 5: 77.5 %}"

    def text(self, week: Text, *loads: str, weeks: int = 5) -> str:
        lifts = ("back squat", "bench press", "deadlift", "overhead press")
        lines = [f"{lift}, sets: 4, reps: 4, load: {load}" for lift, load in zip(lifts, loads, strict=False)]
        return week({"Gym": lines}, f"weeks: {weeks}")

    def test_the_words(self, findings: Findings, week: Text) -> None:
        odd = self.SAME.replace("4: 72.5 %", "4: 82.5 %")
        (finding,) = findings(self.text(week, self.SAME, odd, self.SAME), self.RULE)
        assert (finding.severity, finding.weeks, finding.place.excerpt) == ("warning", (4,), "82.5 %")
        assert finding.counted == (
            "bench press at 82.5 %; back squat and deadlift, alike in all other weeks, hold 72.5 %."
        )
        assert finding.change == "If it is a slip, write 72.5 %."

    @pytest.mark.parametrize(
        ("loads", "told"),
        [
            ((SAME, SAME.replace("4: 72.5", "4: 77.5"), SAME), 1),
            ((SAME, SAME.replace("4: 72.5", "4: 77"), SAME), 0),  # 4.5 apart
            ((SAME, SAME.replace("4: 72.5", "4: 82.5")), 0),  # one other tells nothing
            ((SAME, SAME.replace("4: 72.5", "4: 82.5").replace("1: 70", "1: 72"), SAME), 0),  # two cells
            ((SAME, SAME.replace("4: 72.5", "4: 82.5"), SAME.replace("4: 72.5", "4: 60")), 0),  # three ways
        ],
    )
    def test_when_it_speaks(self, findings: Findings, week: Text, loads: tuple[str, ...], told: int) -> None:
        assert len(findings(self.text(week, *loads), self.RULE)) == told

    def test_four_weeks_are_too_few(self, findings: Findings, week: Text) -> None:
        same = self.SAME.replace(", 5: 77.5 %", "")
        odd = same.replace("4: 72.5", "4: 82.5")
        assert findings(self.text(week, same, odd, same, weeks=4), self.RULE) == []

    def test_a_load_that_stays_is_no_table(self, findings: Findings, week: Text) -> None:
        assert findings(self.text(week, "70 %", "{1-4: 70 %, 5: 80 %}", "70 %"), self.RULE) == []


class TestOtherSureThings:
    @pytest.mark.parametrize(
        ("rule", "lines", "head", "told"),
        [
            # a pull from blocks is no stiff hinge
            ("stiff-hinge-too-heavy", ["rack pull, sets: 3, reps: 2, load: 90 % of deadlift"], "", 0),
            ("stiff-hinge-too-heavy", ["Romanian deadlift, sets: 3, reps: 2, rir: 0"], "", 1),
            # what is pushed some way at unknown effort is no dose
            ("session-sets-for-muscle-high", ["leg press, sets: 11, reps: 8", "sled push, sets: 6, distance: 20 m"], "", 0),
            ("session-sets-for-muscle-high", ["leg press, sets: 11, reps: 8", "hack squat, sets: 6, reps: 8"], "", 1),
            # a race that is trained through
            ("legs-heavy-before-event", ["back squat, sets: 6, reps: 3, load: 85 %"], "events: [{date: 2026-01-06, event: low key race}]", 0),
            ("legs-heavy-before-event", ["back squat, sets: 6, reps: 3, load: 85 %"], "events: [{date: 2026-01-06, event: race}]", 1),
            # one side is spared
            ("sides-uneven", ["one-arm dumbbell row, sets: 4, reps: 8, side: right"], "athlete: {name: A, protect: [{area: left wrist, advised by: GP}]}", 0),
            ("sides-uneven", ["one-arm dumbbell row, sets: 4, reps: 8, side: right"], "athlete: {name: A}", 1),
            # a factor is no weight of a rack
            ("weight-not-there", ["dumbbell row, sets: 3, load: 14.4 kg"], "athlete: {name: A, equipment: [{dumbbells: {up to: 30 kg, step: 2 kg}}]}", 0),
            ("weight-not-there", ["dumbbell row, sets: 3, load: 15 kg"], "athlete: {name: A, equipment: [{dumbbells: {up to: 30 kg, step: 2 kg}}]}", 1),
            # a dumbbell where there are kettlebells alone
            ("weight-not-there", ["dumbbell curl, sets: 3, load: 10 kg"], "athlete: {name: A, equipment: [{kettlebell: {weights: [12 kg]}}]}", 1),
            ("weight-not-there", ["dumbbell curl, sets: 3, load: 12 kg"], "athlete: {name: A, equipment: [{kettlebell: {weights: [12 kg]}}]}", 0),
            # nothing to hang off
            ("equipment-missing", ["pull-up, sets: 3, reps: 5"], "athlete: {name: A, equipment: [bands, mat], note: Nothing to hang off.}", 1),
            ("equipment-missing", ["pull-up, sets: 3, reps: 5"], "athlete: {name: A, equipment: [bands, mat]}", 0),
        ],
    )  # fmt: skip
    def test_said_or_silent(
        self, findings: Findings, week: Text, rule: str, lines: list[str], head: str, told: int
    ) -> None:
        text = week({"monday": lines}, f"starts: 2026-01-05\n{head}")
        assert len(findings(text, rule)) == told
