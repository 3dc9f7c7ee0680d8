"""Advice that fits the athlete: what is suggested, when rules are quiet, and what a finding tells to change.

Each case comes with a sibling of its kind. Levels, equipment and ranks are the catalogue's (common practice, no
source); the days before an event and the ramp-up sets are common practice, too.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from datetime import date, timedelta
from functools import partial

import pytest

from spotline.lint.body import catalogue, equipment, restrictions
from spotline.lint.body.catalogue import Exercise, rarity
from spotline.lint.counting.ledger import Ledger
from spotline.lint.counting.proposals import evened, fewer, further
from spotline.lint.counting.session_time import ramp_up
from spotline.lint.counting.suggestions import MOST, Suits, substitutes, suggest
from spotline.lint.engine.registry import STATES, all_rules
from spotline.lint.findings.finding import Finding

Findings = Callable[..., list[Finding]]
Build = Callable[..., Ledger]
Text = Callable[..., str]

LEVEL = catalogue.LEVELS.index


def only(found: list[Finding]) -> Finding:
    (finding,) = found
    return finding


def named(words: str) -> list[Exercise]:
    """The exercises of the catalogue that some advice names, the longest names first."""
    found = []
    for one in sorted(catalogue.exercises(), key=lambda one: -len(one.name)):
        if re.search(rf"(?<![\w-]){re.escape(one.name)}(?![\w-])", words):
            found.append(one)
            words = words.replace(one.name, "")
    return found


LEGS = {"Lower": ["leg press, sets: 3, reps: 8", "leg extension, sets: 3, reps: 10"]}


class TestSuggestions:
    @pytest.mark.parametrize("level", ["novice", "intermediate", "advanced"])
    @pytest.mark.parametrize("pieces", ["band, leg press", "dumbbells, bench", "full gym"])
    @pytest.mark.parametrize("spared", ["", "left shoulder", "lower back"])
    def test_they_pass_level_equipment_and_restrictions(
        self, programme: Build, week: Text, level: str, pieces: str, spared: str
    ) -> None:
        protect = f", protect: [{{area: {spared}, advised by: physician}}]" if spared else ""
        head = f"athlete: {{name: Ida, level: {level}, equipment: [{pieces}]{protect}}}"
        ledger = programme(week(LEGS, head))
        listed = [piece.strip() for piece in pieces.split(",")]
        traits = restrictions.read(spared).traits
        for action in ("knee flexion", "hip hinge", "vertical pull", "horizontal push", "plantarflexion"):
            found = suggest(ledger.header, lambda one, action=action: action in (*one.actions, *one.patterns))
            assert len(found.names) <= MOST
            assert bool(found.names) or bool(found.obstacles)
            exercises = [catalogue.exercise(name) for name in found.names]
            for one in exercises:
                assert one is not None
                assert LEVEL(one.level) <= LEVEL(level)
                assert not equipment.missing(one, listed, equipment.ALWAYS_THERE)
                assert not restrictions.loads(one, traits)
            ranks = [rarity(one) for one in exercises if one]
            assert ranks == sorted(ranks)

    def test_nobody_is_sent_to_a_lift_that_is_refused(self, findings: Findings, week: Text) -> None:
        head = "athlete: {name: Ida, level: novice, age: 70, equipment: [band, leg press]}"
        text = week({"Lower": ["leg press, sets: 3, reps: 8", "leg press, sets: 2, reps: 12"]}, head)
        finding = only(findings(text, "knee-flexion-missing"))
        # nobody of 70 is sent to the floor
        assert finding.change.startswith("Add seated band leg curl and ")
        exercise = finding.change.removeprefix("Add ").partition(" and ")[0]
        mended = findings(text.replace("sets: 2", f"sets: 1}}\n      - {{exercise: {exercise}, sets: 2"))
        rules = {"knee-flexion-missing", "lift-beyond-level", "equipment-missing"}
        assert not rules & {one.rule for one in mended}

    @pytest.mark.parametrize("level", ["novice", "advanced"])
    def test_a_sibling_for_the_calves(self, findings: Findings, week: Text, level: str) -> None:
        head = (
            f"focus: [calves]\nathlete: {{name: Ida, level: {level}, equipment: [machine seated calf raise]}}"
        )
        finding = only(
            findings(
                week({"Gym": ["seated calf raise, sets: 3, reps: 12"]}, head), "straight-knee-calf-missing"
            )
        )
        assert "standing calf raise" not in finding.change  # the machine is not there
        assert "bodyweight calf raise" in finding.change

    @pytest.mark.parametrize(
        "athlete",
        ["equipment: [dumbbells, bench]", "protect: [{area: shoulder, advised by: physician}]"],
    )
    def test_what_cannot_be_had_is_not_asked_for(self, findings: Findings, week: Text, athlete: str) -> None:
        lines = ["bench press, sets: 4, reps: 8", "one-arm dumbbell row, sets: 4, reps: 8"]
        head = f"athlete: {{name: Ida, level: novice, {athlete}}}"
        for finding in findings(week({"Gym": lines}, head), "pull-or-push-missing"):
            assert "vertical pull" not in finding.counted + finding.change

    def test_what_is_spared_is_not_missed(self, findings: Findings, week: Text) -> None:
        head = "athlete: {name: Ida, protect: [{area: knee, advised by: physician}]}"
        assert findings(week(LEGS, head), "knee-flexion-missing") == []
        assert findings(week(LEGS), "knee-flexion-missing") != []

    def test_the_room_is_asked(self, programme: Build, week: Text) -> None:
        room = {"spotline.yaml": "stations: {rack: 1}\ntraining together: 8\n"}
        squat = catalogue.exercise("back squat")
        assert squat is not None
        head = "athlete: {name: Ida, level: advanced}"
        assert "rack" in Suits(programme(week(LEGS, head), room).header).obstacle(squat)
        assert Suits(programme(week(LEGS, head)).header).obstacle(squat) == ""

    def test_an_exercise_is_named_once(self, findings: Findings, week: Text) -> None:
        text = week(
            {"Gym": ["plank, sets: 3"]}, "goal: general health\nathlete: {name: A, equipment: [dumbbells]}"
        )
        change = only(findings(text, "region-untrained")).change
        assert change.startswith("Add one each, such as ")
        assert len(named(change)) == 1

    def test_a_sibling_in_the_room(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["superset: [{exercise: back squat, sets: 3}, {exercise: back squat, sets: 2}]"]})
        text = text.replace("{exercise: superset:", "{superset:")
        room = {"spotline.yaml": "stations: {rack: 1}\ntraining together: 8\n"}
        assert only(findings(text, "room-too-small", room)).counted.count("back squat") == 1


class TestSubstitutes:
    @pytest.mark.parametrize(
        ("spared", "lift"),
        [
            ("area: shoulder", "seated dumbbell press"),
            ("movement: overhead pressing", "seated dumbbell press"),
            ("area: left knee", "back squat"),  # a sibling
            ("area: lower back", "deadlift"),
        ],
    )
    def test_a_refused_lift_names_one_that_is_not(
        self, findings: Findings, week: Text, spared: str, lift: str
    ) -> None:
        head = f"athlete: {{name: Ida, level: intermediate, protect: [{{{spared}, advised by: physician}}]}}"
        text = week({"Gym": [f"{lift}, sets: 3, reps: 8"]}, head)
        change = only(findings(text, "protected-area-loaded")).change
        others = [one for one in named(change.split(" for ")[1]) if one is not catalogue.exercise(lift)]
        assert 0 < len(others) <= 2
        for other in others:
            assert findings(text.replace(lift, other.name), "protected-area-loaded") == []

    def test_a_press_that_stays_below_the_head_is_no_overhead_press(
        self, findings: Findings, week: Text
    ) -> None:
        head = "athlete: {name: Ida, protect: [{movement: overhead pressing, advised by: physician}]}"
        lines = ["landmine press, sets: 3", "half-kneeling landmine press, sets: 3"]
        assert findings(week({"Gym": lines}, head), "protected-area-loaded") == []
        shoulder = head.replace("movement: overhead pressing", "area: shoulder")
        assert len(findings(week({"Gym": lines}, shoulder), "protected-area-loaded")) == 1

    def test_nothing_is_named_where_nothing_suits(self, programme: Build, week: Text) -> None:
        head = "athlete: {name: A, protect: [{area: hip, advised by: physician}, {area: knee, advised by: physician}]}"
        squat = catalogue.exercise("leg press")
        assert squat is not None
        for name in substitutes(programme(week(LEGS, head)).header, squat):
            other = catalogue.exercise(name)
            assert other is not None
            assert not restrictions.loads(other, restrictions.read("hip, knee").traits)


SIBLINGS = (
    ("push press", "dumbbell push press", "kettlebell push press"),
    ("Romanian deadlift", "dumbbell Romanian deadlift", "cable Romanian deadlift"),
    ("bench press", "dumbbell bench press", "guided-bar bench press"),
    ("split squat", "dumbbell split squat", "suspension lunge"),
    ("seated leg curl", "single-leg seated leg curl", "seated band leg curl"),
    ("thruster", "dumbbell thruster"),
    ("overhead press", "kettlebell overhead press", "band overhead press", "seated dumbbell shoulder press"),
    ("lat pulldown", "close-grip lat pulldown", "band pulldown"),
    ("front squat", "goblet squat", "dumbbell squat"),
)
"""Forms of one lift with other implements (common practice, no source)."""


@pytest.mark.parametrize("lifts", SIBLINGS, ids=[lifts[0] for lifts in SIBLINGS])
@pytest.mark.parametrize("area", ["knee", "hip", "ankle", "shoulder", "elbow"])
def test_siblings_of_one_lift_load_a_spared_area_alike(lifts: tuple[str, ...], area: str) -> None:
    traits = restrictions.read(area).traits
    exercises = [catalogue.exercise(name) for name in lifts]
    assert len({restrictions.loads(one, traits) for one in exercises if one}) == 1, lifts


def as_told(change: str, line: re.Match[str]) -> str:
    """A line of a text with the sets that some advice gives it; as it stands where the advice names others."""
    lift, sets = line[1], int(line[2])
    moved = re.search(r"[Mm]ove (\d+) sets? from (.+) to (.+)\.", change)
    told = re.search(rf"{lift}\b.*? to (\d+) sets?", change)
    if moved:
        sets += int(moved[1]) * ((lift == moved[3]) - (lift == moved[2]))
    elif told:
        sets = int(told[1])
    return f"exercise: {lift}, sets: {sets}"


class TestProposals:
    """What a finding proposes is applied to the text; then it is gone."""

    @pytest.mark.parametrize(
        ("rule", "head", "days"),
        [
            ("weekly-sets-over-limit", "", {"Push": ["bench press, sets: 12, reps: 8", "dumbbell fly, sets: 11, reps: 12"]}),
            ("weekly-sets-over-limit", "", {"monday": ["cable fly, sets: 7"], "thursday": ["dumbbell fly, sets: 9", "bench press, sets: 8"]}),
            ("weekly-sets-under-floor", "goal: hypertrophy\npriority: [biceps]", {"Arms": ["barbell curl, sets: 2, reps: 10"]}),
            ("weekly-sets-under-floor", "goal: hypertrophy\nfocus: [calves]", {"A": ["standing calf raise, sets: 1, reps: 10"]}),
            ("exercise-sets-high", "", {"Gym": ["leg press, sets: 11, reps: 8"]}),
            ("session-sets-for-muscle-high", "", {"Gym": ["cable fly, sets: 9, reps: 12", "dumbbell fly, sets: 8, reps: 12"]}),
            ("antagonist-imbalance", "", {"Legs": ["leg extension, sets: 9, reps: 10", "seated leg curl, sets: 4, reps: 10"]}),
            ("antagonist-imbalance", "", {"Up": ["bench press, sets: 12, reps: 8", "bent-over row, sets: 4, reps: 8"]}),
            ("priority-not-ahead", "goal: hypertrophy\npriority: [hamstrings]", {"G": ["leg extension, sets: 6, reps: 10", "seated leg curl, sets: 5, reps: 10"]}),
        ],
    )  # fmt: skip
    def test_applied_it_clears_the_finding(
        self, findings: Findings, week: Text, rule: str, head: str, days: dict[str, list[str]]
    ) -> None:
        text = week(days, head)
        finding = next(one for one in findings(text, rule))
        text = re.sub(r"exercise: ([\w -]+), sets: (\d+)", partial(as_told, finding.change), text)
        assert text != week(days, head), finding.change
        assert findings(text, rule) == []

    def test_a_line_on_two_days_counts_twice(self, programme: Build) -> None:
        text = (
            "programme: T\nsessions:\n  - session: A\n    day: [monday, thursday]\n"
            "    exercises: [{exercise: dumbbell fly, sets: 12, reps: 12}]\n"
        )
        count = programme(text).weeks[0].sets("chest")
        proposal = fewer(count, 20)
        assert proposal is not None
        assert proposal.words("cut") == "in A, cut dumbbell fly to 10 sets"
        more = further(count, 27)
        assert more is not None
        assert more.words("raise", placed=False) == "raise dumbbell fly to 14 sets"

    def test_sessions_are_told_apart_and_many_lines_counted(self, programme: Build, week: Text) -> None:
        flies = ["dumbbell fly, sets: 5", "cable fly, sets: 4"]
        count = programme(week({"A": flies, "B": flies})).weeks[0].sets("chest")
        proposal = fewer(count, 16)
        assert proposal is not None
        assert proposal.words("cut") == "cut dumbbell fly (A) and dumbbell fly (B) to 4 sets"
        proposal = fewer(count, 10)
        assert proposal is not None
        assert proposal.words("cut").endswith(" to 3 sets, and cut 1 more line")

    def test_where_no_change_is_enough(self, programme: Build, week: Text) -> None:
        lines = [f"{lift}, sets: 1" for lift in ("dumbbell fly", "cable fly", "bench press")]
        tally = programme(week({"A": lines})).weeks[0]
        assert fewer(tally.sets("chest"), 2) is None  # every line keeps a set
        assert evened(tally.sets("chest"), tally.sets("chest"), 2) is None  # each line serves both
        assert further(tally.sets("calves"), 2) is None

    def test_nothing_to_take_off_where_enough_is_left(self, programme: Build, week: Text) -> None:
        count = programme(week({"A": ["dumbbell fly, sets: 3"]})).weeks[0].sets("chest")
        assert fewer(count, 3) is None


BUILD = "  - {{name: Build, weeks: 4, sessions: [{build}]}}\n"
PEAK = "  - {{name: Peak, weeks: 2, {keys}sessions: [{peak}]}}\n"
SESSION = "{{session: {name}, exercises: [{lines}]}}"


def blocks(build: list[str], peak: list[str], keys: str = "phase: taper, ", head: str = "") -> str:
    def session(name: str, lines: list[str]) -> str:
        return SESSION.format(name=name, lines=", ".join(f"{{exercise: {line}}}" for line in lines))

    return (
        f"programme: Test\n{head}blocks:\n"
        + BUILD.format(build=session("Gym", build))
        + PEAK.format(keys=keys, peak=session("Gym", peak))
    )


EVEN = ["leg extension, sets: 6", "seated leg curl, sets: 5", "Romanian deadlift, sets: 1"]
UNEVEN = ["leg extension, sets: 9", "seated leg curl, sets: 2", "Romanian deadlift, sets: 1"]
STARTS = "starts: 2026-01-05\n"


class TestPeaks:
    @pytest.mark.parametrize("keys", ["phase: taper, ", "phase: test, "])
    def test_balance_is_quiet_in_peaks(self, findings: Findings, keys: str) -> None:
        assert findings(blocks(EVEN, UNEVEN, keys), "antagonist-imbalance") == []
        assert only(findings(blocks(UNEVEN, UNEVEN, keys), "antagonist-imbalance")).weeks == (1, 2, 3, 4)

    @pytest.mark.parametrize(
        ("event", "weeks"),
        [
            ("2026-02-14", (1, 2, 3, 4)),  # the Saturday of week 6
            ("2026-02-09", (1, 2, 3)),  # the Monday of week 6: weeks 4 and 5 lead up to it
            ("2026-03-20", (1, 2, 3, 4, 5, 6)),
        ],
    )
    def test_and_in_the_two_weeks_before_an_event(
        self, findings: Findings, event: str, weeks: tuple[int, ...]
    ) -> None:
        head = f"{STARTS}goal: hypertrophy\nevents: [{{date: {event}, event: meet}}]\n"
        found = only(findings(blocks(UNEVEN, UNEVEN, "", head), "antagonist-imbalance"))
        assert (found.weeks or tuple(range(1, 7))) == weeks

    def test_floors_and_limits_too(self, findings: Findings) -> None:
        curls, few = ["barbell curl, sets: 5"], ["barbell curl, sets: 2"]
        head = "goal: hypertrophy\npriority: [biceps]\n"
        assert findings(blocks(curls, few, head=head), "weekly-sets-under-floor") == []
        assert findings(blocks(few, few, head=head), "weekly-sets-under-floor") != []
        many = ["dumbbell fly, sets: 12", "cable fly, sets: 12"]
        assert findings(blocks(curls, many), "weekly-sets-over-limit") == []

    @pytest.mark.parametrize("phase", ["taper", "test"])
    def test_no_phase_hides_a_whole_programme(self, findings: Findings, phase: str) -> None:
        text = blocks(UNEVEN, UNEVEN, f"phase: {phase}, ", f"phase: {phase}\n")
        assert len(findings(text, "antagonist-imbalance")) == 1

    def test_nor_do_events(self, findings: Findings) -> None:
        days = (date(2026, 1, 10) + timedelta(days=14 * turn) for turn in range(3))
        head = (
            STARTS
            + f"goal: hypertrophy\nevents: [{', '.join(f'{{date: {day}, event: match}}' for day in days)}]\n"
        )
        assert len(findings(blocks(UNEVEN, UNEVEN, "", head), "antagonist-imbalance")) == 1

    LOWER = ("leg press, sets: 3, reps: 8", "leg extension, sets: 3, reps: 8")

    def test_coverage_stays_as_a_note_for_what_is_in_focus(self, findings: Findings) -> None:
        upper = ["bench press, sets: 3", "bent-over row, sets: 3"]
        text = blocks(upper, [*self.LOWER], "phase: taper, focus: [legs], ")
        assert [(one.severity, one.weeks) for one in findings(text, "knee-flexion-missing")] == [
            ("note", (5, 6))
        ]
        assert findings(text.replace("focus: [legs], ", ""), "knee-flexion-missing") == []

    def test_a_peak_is_judged_with_the_weeks_before_it(self, findings: Findings) -> None:
        text = blocks(
            [*self.LOWER, "seated leg curl, sets: 2"], [*self.LOWER], "phase: taper, focus: [legs], "
        )
        assert findings(text, "knee-flexion-missing") == []

    def test_coverage_is_a_note_in_a_return(self, findings: Findings, week: Text) -> None:
        text = week({"Lower": [*self.LOWER]}, "phase: return\ngoal: hypertrophy\nweeks: 3")
        assert only(findings(text, "knee-flexion-missing")).severity == "note"
        assert only(findings(text.replace("return", "build"), "knee-flexion-missing")).severity == "warning"

    def test_the_table_names_states_that_there_are(self) -> None:
        used = {state for rule in all_rules() for state in rule.stands_back}
        assert used == set(STATES)
        balance = [rule for rule in all_rules() if rule.family == "balance"]
        assert all("peak" in rule.stands_back for rule in balance)


STAGE = "rehabilitation: {stage: loading, advised by: physiotherapist, until: 2026-12-31}"


class TestRehabilitation:
    def test_a_steep_progression_is_told(self, findings: Findings, week: Text) -> None:
        line = "leg press, sets: 3, reps: 8, load: {1: 60 kg, 2: 90 kg}"
        assert len(findings(week({"Gym": [line]}, f"weeks: 2\n{STAGE}"), "load-step-large")) == 1
        sets = "dumbbell fly, sets: {1-2: 5, 3: 12}, reps: 12"
        assert len(findings(week({"Gym": [sets]}, f"weeks: 3\n{STAGE}"), "sets-step-large")) == 1

    @pytest.mark.parametrize(
        ("days", "head", "said"),
        [
            (("monday", "tuesday"), STAGE, 1),
            (("monday", "wednesday"), STAGE, 0),
            (("monday", "tuesday"), "phase: return", 1),
        ],
    )
    def test_impact_on_two_days_running(
        self, findings: Findings, week: Text, days: tuple[str, str], head: str, said: int
    ) -> None:
        text = week({f"{day} {day.title()}": ["pogo jump, sets: 3, reps: 10"] for day in days}, head)
        found = findings(text, "impact-days-consecutive")
        assert len(found) == said
        assert all(one.counted == "Jumps on Monday and Tuesday: 3 and 3 sets." for one in found)

    def test_a_run_counts_as_impact(self, findings: Findings, week: Text) -> None:
        text = week({"monday Hops": ["pogo jump, sets: 3, reps: 10"]}, STAGE)
        text += "  - {activity: easy run, day: tuesday}\n"
        assert "easy run" in only(findings(text, "impact-days-consecutive")).counted
        swim = text.replace("easy run", "easy swim")
        assert findings(swim, "impact-days-consecutive") == []

    def test_volume_floors_are_quiet(self, findings: Findings, week: Text) -> None:
        head = f"goal: hypertrophy\npriority: [biceps]\n{STAGE}"
        assert findings(week({"Gym": ["barbell curl, sets: 2"]}, head), "weekly-sets-under-floor") == []


SCREENS = {"spotline.yaml": "screening: {stated: 2026-01-02, by: head coach}\n"}


class TestOnFile:
    @pytest.mark.parametrize(
        ("athlete", "head"), [("age: 74", ""), ("age: 30", "phase: return"), ("age: 66", "phase: build")]
    )
    def test_a_screening_is_no_clearance(
        self, findings: Findings, week: Text, athlete: str, head: str
    ) -> None:
        text = week(LEGS, f"athlete: {{name: Ida, {athlete}}}" + (f"\n{head}" if head else ""))
        finding = only(findings(text, "clearance-missing", SCREENS))
        assert "screens" not in finding.change
        assert findings(text, "screening-missing", SCREENS) == []
        cleared = text.replace("{name: Ida,", "{name: Ida, clearance on file: 2026-01-02,")
        assert findings(cleared, "clearance-missing", SCREENS) == []

    @pytest.mark.parametrize(
        ("note", "read"),
        [
            ("Hip replaced 2019, cleared by surgeon", "Hip replaced"),
            ("left knee operated in May", "knee operated"),
            ("broke her wrist in March", "broke her wrist"),
            ("total hip replacement", "hip replacement"),
            ("torn biceps tendon, band work only", "torn"),
            ("shoulder fractured on the bench", "fractured"),
            ("she has torn something, bands only", "torn"),
            ("repaired rotator cuff", "repaired rotator cuff"),
            # no equipment has these, whatever it stands beside
            ("asthma since school, beside the bench", "asthma"),
            ("arthritis, worse with the bar", "arthritis"),
        ],
    )
    def test_what_is_said_of_a_body_is_a_diagnosis(
        self, findings: Findings, week: Text, note: str, read: str
    ) -> None:
        finding = only(findings(week(LEGS, f'note: "{note}"'), "diagnosis-in-programme"))
        assert finding.place.excerpt == read

    @pytest.mark.parametrize(
        "note",
        [
            "torn band, use the new one",
            "wrist wraps torn",
            "ruptured exercise ball",
            "torn knee sleeve, new one ordered",
            "hip thrust replaced by glute bridge",
            "back squat replaced in week 3",
            "broken leg press, use the hack squat",
            "arm day replaced",
            "scapular depression",
            "break the knee first",
        ],
    )
    def test_what_is_said_of_equipment_or_lifts_is_none(
        self, findings: Findings, week: Text, note: str
    ) -> None:
        assert findings(week(LEGS, f'note: "{note}"'), "diagnosis-in-programme") == []


class TestDays:
    def test_a_session_moves_to_a_day_that_is_free(self, findings: Findings, week: Text) -> None:
        head = "athlete: {name: A, days: [monday, thursday, friday]}"
        text = week({"monday A": ["plank, sets: 1"], "tuesday B": ["plank, sets: 1"]}, head)
        assert only(findings(text, "days-more-than-athlete")).change.startswith("Move B to Thursday,")

    def test_or_says_that_none_is(self, findings: Findings, week: Text) -> None:
        head = "athlete: {name: A, days: [monday]}"
        text = week({"monday A": ["plank, sets: 1"], "tuesday B": ["plank, sets: 1"]}, head)
        change = only(findings(text, "days-more-than-athlete")).change
        assert change.startswith("No day is free: merge B into another session, or drop it, or correct")

    @pytest.mark.parametrize(
        ("more", "change"),
        [({}, "Move some of its sets from A to "), ({"friday B": ["plank, sets: 2"]}, "Move some of its sets from A to another session.")],
    )  # fmt: skip
    def test_a_second_day_is_one_that_there_is(
        self, findings: Findings, week: Text, more: dict[str, list[str]], change: str
    ) -> None:
        text = week(
            {"monday A": ["back squat, sets: 3, reps: 3"], **more}, "goal: strength\npriority: [back squat]"
        )
        said = only(findings(text, "frequency-low")).change
        assert said.startswith(change)
        assert ("another session" in said) is bool(more)

    @pytest.mark.parametrize(("days", "free"), [("1", False), ("[monday]", False), ("2", True)])
    def test_who_has_one_day_is_not_told_to_take_a_second(
        self, findings: Findings, week: Text, days: str, free: bool
    ) -> None:
        text = week({"monday A": ["leg press, sets: 2"]}, f"athlete: {{name: A, age: 70, days: {days}}}")
        change = only(findings(text, "older-adult-days")).change
        assert change.startswith("Spread ") == free
        lift = week(
            {"monday A": ["back squat, sets: 3, reps: 3"]},
            f"goal: strength\npriority: [back squat]\nathlete: {{name: A, days: {days}}}",
        )
        assert only(findings(lift, "frequency-low")).change.startswith("Move some of its sets") == free
        many = week(
            {"monday A": ["cable fly, sets: 9", "dumbbell fly, sets: 8"]},
            f"athlete: {{name: A, days: {days}}}",
        )
        assert ("another day" in only(findings(many, "session-sets-for-muscle-high")).change) == free

    @pytest.mark.parametrize(("days", "free"), [("1", False), ("3", True)])
    def test_a_sibling_on_regions(self, findings: Findings, week: Text, days: str, free: bool) -> None:
        lines = ["leg press, sets: 2", "push-up, sets: 2", "seated cable row, sets: 2", "plank, sets: 2"]
        text = week({"monday A": lines}, f"goal: general health\nathlete: {{name: A, days: {days}}}")
        change = only(findings(text, "days-per-region-few")).change
        assert ("no other day" in change) != free


class TestBeyondLevel:
    RULE = "lift-beyond-level"
    NOVICE = "athlete: {name: Ida, level: novice}"

    @pytest.mark.parametrize(
        ("lift", "beside", "said"),
        [
            ("snatch", "deadlift", 1),
            ("snatch", "hang muscle snatch", 0),
            ("snatch", "overhead press", 1),
            ("split jerk", "overhead press", 1),
            ("split jerk", "push jerk", 0),
            ("Nordic curl", "assisted Nordic curl", 0),
            ("pistol squat", "single-leg box squat", 0),
        ],
    )
    def test_only_a_form_of_the_lift_leads_to_it(
        self, findings: Findings, week: Text, lift: str, beside: str, said: int
    ) -> None:
        text = week({"Gym": [f"{beside}, sets: 3", f"{lift}, sets: 3"]}, self.NOVICE)
        assert len(findings(text, self.RULE)) == said

    def test_the_advice_passes_the_rule(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["snatch, sets: 3"]}, self.NOVICE)
        change = only(findings(text, self.RULE)).change
        assert change.startswith("Start with ")
        for one in named(change):
            assert LEVEL(one.level) <= LEVEL("novice") + 1
            assert findings(text.replace("snatch,", f"{one.name},"), self.RULE) == []


class TestWaivers:
    LINES = ("bench press, sets: 9, reps: 8", "bent-over row, sets: 3, reps: 8", *UNEVEN)
    RULE = "antagonist-imbalance"

    def left(self, findings: Findings, week: Text, waiver: str) -> list[str]:
        text = week({"Gym": [*self.LINES]}) + f"waivers: [{{rule: {self.RULE}, {waiver}}}]\n"
        return sorted(one.subject for one in findings(text, self.RULE))

    def test_both_are_found(self, findings: Findings, week: Text) -> None:
        both = sorted(one.subject for one in findings(week({"Gym": [*self.LINES]}), self.RULE))
        assert both == ["front and back of the thigh", "pressing and pulling"]

    @pytest.mark.parametrize(
        ("waiver", "left"),
        [
            ("reason: pulling is done on the water", ["front and back of the thigh"]),
            ("subject: pulling, reason: they row", ["front and back of the thigh"]),
            ("subject: thigh, reason: agreed with the physiotherapist", ["pressing and pulling"]),
            ("reason: so agreed", []),
            ("subject: elbow, reason: so agreed", ["front and back of the thigh", "pressing and pulling"]),
        ],
    )
    def test_a_waiver_holds_for_its_subject(
        self, findings: Findings, week: Text, waiver: str, left: list[str]
    ) -> None:
        assert self.left(findings, week, waiver) == left

    @pytest.mark.parametrize(
        "words", ["for pulling because they row", "because pulling is done on the water"]
    )
    def test_in_a_comment_too(self, findings: Findings, week: Text, words: str) -> None:
        text = week({"Gym": [*self.LINES]}).replace(
            "- session: Gym", f"- session: Gym # spotline: waive {self.RULE} {words}"
        )
        assert [one.subject for one in findings(text, self.RULE)] == ["front and back of the thigh"]


class TestWords:
    def test_an_alias_is_never_quoted(self, findings: Findings) -> None:
        text = (
            "programme: T\ngoal: hypertrophy\nshared: {pause: &pause 30 s, slow: &slow 9-0-9-0, pounds: &pounds 135 lb}\n"
            "sessions:\n  - session: A\n    exercises:\n"
            "      - {exercise: back squat, sets: 3, reps: 10, rest: *pause, tempo: *slow}\n"
            "      - {exercise: leg press, sets: 3, reps: 3, load: 90 %, rest: *pause}\n"
            "      - {exercise: bench press, sets: 3, reps: 10, load: *pounds}\n"
            "      - {exercise: dip, sets: 3, reps: 10, load: bodyweight + 10 kg}\n"
            "      - {exercise: barbell curl, sets: 3, reps: 10, load: 30 kg}\n"
        )
        found = findings(text)
        assert {"rest-too-short-size", "rest-too-short-heavy", "tempo-too-long", "units-mixed"} <= {
            one.rule for one in found
        }
        assert [one.counted for one in found if "*" in one.counted + one.change] == []

    def test_lines_of_one_lift_are_named_once(self, findings: Findings, week: Text) -> None:
        lines = ["back squat, sets: 3, reps: 10, rest: 30 s"] * 3
        text = week({"A": lines, "B": lines[:1]}, "goal: hypertrophy")
        for rule in ("rest-too-short-size", "load-and-effort-missing"):
            assert only(findings(text, rule)).counted.count("back squat") == 1

    @pytest.mark.parametrize(
        ("line", "change"),
        [
            ("bench press, sets: 3, load: 28.7 kg", "Write 27.5 or 28.75 kg."),
            ("dumbbell curl, sets: 3, load: 28.75 kg", "Write 28 or 30 kg."),
            ("kettlebell deadlift, sets: 3, load: 17.3 kg", "Write 16 or 20 kg."),
        ],
    )
    def test_the_nearest_loads_are_those_that_gyms_stock(
        self, findings: Findings, week: Text, line: str, change: str
    ) -> None:
        finding = only(findings(week({"A": [line]}), "load-not-settable"))
        assert finding.change == change
        assert finding.amount is not None
        assert f"or {finding.amount.wanted:g} kg" in change


class TestRampUp:
    HEAVY = "back squat, sets: 5, reps: 3, rest: 3 min"

    def seconds(self, programme: Build, week: Text, *lines: str) -> float:
        (visit,) = programme(week({"A": list(lines)})).visits
        return ramp_up(visit.own).low

    def test_where_nobody_wrote_warm_up_sets(self, programme: Build, week: Text) -> None:
        assert self.seconds(programme, week, self.HEAVY) == 3 * 60
        assert self.seconds(programme, week, self.HEAVY, "bench press, sets: 3, reps: 5") == 4 * 60
        assert self.seconds(programme, week, self.HEAVY, "front squat, sets: 3, reps: 5") == 3 * 60

    @pytest.mark.parametrize(
        "line",
        [
            "back squat, sets: 5, reps: 3, warm-up sets: 3",
            "back squat, sets: 5, reps: 12",
            "back squat, sets: 5, reps: 3, load: 50 %",
            "seated leg curl, sets: 5, reps: 5",
            "push-up, sets: 5, reps: 5",
        ],
    )
    def test_and_where_it_is_none(self, programme: Build, week: Text, line: str) -> None:
        assert self.seconds(programme, week, line) == 0

    @pytest.mark.parametrize(("minutes", "severity"), [(11, "note"), (13, "note"), (14, None), (16, None)])
    def test_it_is_called_assumed_and_never_blocks_alone(
        self, findings: Findings, week: Text, minutes: int, severity: str | None
    ) -> None:
        text = week({"A": [self.HEAVY]}, f"athlete: {{name: A, minutes: {minutes}}}")
        found = findings(text, "session-too-long")
        assert [one.severity for one in found] == ([severity] if severity else [])
        assert all("assumed" in one.counted for one in found)
        assert all("3 min warm-up sets" in one.related[0].words for one in found)


class TestNewQuestions:
    LEGS = ("leg press, sets: 3, reps: 8", "seated leg curl, sets: 3, reps: 10")

    @pytest.mark.parametrize(
        ("head", "more", "said"),
        [
            ("focus: [legs]", "", 1),
            ("priority: [lower body]", "", 1),
            ("focus: [quadriceps]", "", 0),
            ("", "", 0),
            ("focus: [legs]\ngoal: strength", "", 0),
            ("focus: [legs]", "standing calf raise, sets: 1", 0),
            ("focus: [legs]", "pogo jump, sets: 2, reps: 10", 0),
        ],
    )
    def test_calves_left_out(self, findings: Findings, week: Text, head: str, more: str, said: int) -> None:
        text = week({"Lower": [*self.LEGS, *([more] if more else [])]}, head)
        assert len(findings(text, "calf-work-missing")) == said

    def test_directions_are_asked_where_health_is_the_goal(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["bench press, sets: 4", "bent-over row, sets: 4"]}, "goal: general health")
        finding = only(findings(text, "pull-or-push-missing"))
        assert finding.severity == "note"
        assert "no vertical pull or vertical push" in finding.counted


def rules_with_exercises() -> Iterator[str]:
    yield from ("knee-flexion-missing", "hip-hinge-missing", "pull-or-push-missing", "finer-points-missing")
    yield from ("region-untrained", "two-legged-only", "fast-work-missing", "calf-work-missing")


@pytest.mark.parametrize("rule", rules_with_exercises())
@pytest.mark.parametrize(
    "athlete", ["level: novice, equipment: [dumbbells]", "level: novice, equipment: [band]"]
)
def test_whatever_a_rule_names_this_athlete_can_do(
    findings: Findings, week: Text, rule: str, athlete: str
) -> None:
    goal = "power" if rule == "fast-work-missing" else "hypertrophy"
    head = f"goal: {goal}\npriority: [legs, chest]\nathlete: {{name: A, sport: hockey, {athlete}}}"
    lines = ["leg press, sets: 6, reps: 8", "push-up, sets: 6, reps: 8"]
    found = only(findings(week({"Gym": lines}, head), rule))
    listed = [athlete.split("[")[1].split("]")[0]]
    advice = re.sub(r"\([^()]*\)", "", found.change.replace("(`", ""))  # what is in the way names other lifts
    for one in named(advice):
        assert one.level == "novice"
        assert not equipment.missing(one, listed, equipment.ALWAYS_THERE), (one, found.change)
