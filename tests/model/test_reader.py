"""All that a coach may write is read, typed and located; what cannot be meant is a finding."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from typing import Any

import pytest

from spotline.lint.counting.ledger import Ledger
from spotline.lint.findings.finding import Finding
from spotline.lint.model.athlete import Athlete
from spotline.lint.model.check import checked
from spotline.lint.model.programme import Programme
from spotline.lint.model.quantities import Load, Range, Reps
from spotline.lint.model.read_athlete import read_athlete
from spotline.lint.model.read_programme import read_programme
from spotline.lint.model.sessions import Prescription, Slice
from spotline.lint.project.results import Review
from spotline.lint.syntax.builder import parse
from spotline.lint.text.places import Place, Term
from spotline.lint.wording.words import week_list

WHOLE = """\
programme: Winter base, lower body first
athlete: athletes/mara.athlete.yaml
goal: hypertrophy
phase: build
focus: [legs, trunk]
priority: [hamstrings]
starts: 2026-01-05
weeks: 6
events: [{date: 2026-02-14, event: regatta}]
note: one line that every level may carry
sessions:
  - session: Lower A
    day: monday
    preparation: [hip mobility, 5 min bike]
    exercises:
      - exercise: stiff-leg deadlift
        sets: {1-3: 3, 4-5: 4, 6: 2}
        reps: 5-8
        load: 80-85 %
        rir: 2
        rest: 3 min
        tempo: 3-1-X-0
        warm-up sets: 2
        or: [good morning]
        progression: {add: 2.5 kg, when: top of range in all sets}
      - exercise: back squat
        work:
          - {sets: 1, reps: 3, rpe: 8}
          - {sets: 3, reps: 5, load: 90 % of top set}
      - superset:
          - {exercise: seated leg curl, sets: 3, reps: 10-15, rest: 90 s}
          - {exercise: standing calf raise, sets: 3, reps: 10-15}
      - circuit: {rounds: 3, rest: 2 min, exercises: [{exercise: push-up, reps: 12}, {exercise: side plank, hold: 30 s, side: each}]}
      - {exercise: kettlebell swing, every: 60 s, for: 10 min, reps: 10}
  - activity: water session
    day: wednesday
    minutes: 75
    effort: 7
    loads: {hamstrings: high, lower back: high}
"""

MARA = """\
name: Mara
level: intermediate
sport: rowing
age: 27
body mass: 68 kg
best lifts:
  back squat: {load: 105 kg, tested: 2025-12-12, reps: 2}
  pull-up: bodyweight + 10 kg
  dumbbell bench press: 2 x 24 kg
equipment: [barbell, rack]
days: [monday, thursday]
minutes: 60
protect:
  - {area: left shoulder, advised by: physiotherapist, review on: 2026-03-01, note: no pain so far}
  - {movement: deep knee bend under load, advised by: physician}
clearance on file: 2025-11-01
screening on file: 2025-10-01
supervision: coach present
note: rows at seven
"""


def read(text: str) -> tuple[Programme, list[Finding]]:
    """The programme of a text, and what reading and the schema have against it."""
    reading = parse("plan.programme.yaml", text)
    assert reading.root is not None
    programme, meant = read_programme(reading.root, lambda term: Athlete(term.words, term.place))
    assert programme is not None
    return programme, checked(reading, "programme") + meant


def sound(text: str) -> Programme:
    programme, found = read(text)
    assert not found, [finding.counted for finding in found]
    return programme


def said(text: str) -> list[tuple[str, int, int]]:
    """Name, line and column of every finding of reading and schema."""
    return [(finding.rule, finding.place.line, finding.place.column) for finding in read(text)[1]]


def at(place: Place) -> tuple[int, int, str]:
    return place.line, place.column, place.excerpt


def line_of(text: str, index: int = 0) -> Prescription:
    return list(read(text)[0].prescriptions())[index]


def one_line(words: str, head: str = "") -> str:
    return f"programme: Test\n{head}sessions:\n  - session: Gym\n    exercises:\n      - {{{words}}}\n"


def values(line: Prescription, key: str, group: int = 0) -> list[tuple[int, int, str]]:
    """A value by week: first week, last week, and the value in words."""
    found: tuple[Slice, ...] = line.groups[group].get(key, ())
    return [(held.first, held.last, str(held.value)) for held in found]


def words(terms: tuple[Term, ...]) -> list[str]:
    return [term.words for term in terms]


@pytest.fixture(scope="module")
def ledger(programme: Callable[..., Ledger]) -> Ledger:
    return programme(WHOLE, {"athletes/mara.athlete.yaml": MARA})


@pytest.fixture(scope="module")
def plan(ledger: Ledger) -> Programme:
    return ledger.programme


@pytest.fixture(scope="module")
def lines(plan: Programme) -> list[Prescription]:
    return list(plan.prescriptions())


class TestTheWholeFormat:
    """Every value of a programme that uses all that the format has."""

    def test_no_finding_of_reading_or_schema(self, ledger: Ledger) -> None:
        # the builder has looked at that; what is left here is that there are weeks to speak of
        assert len(ledger.weeks) == 6

    def test_the_head(self, plan: Programme) -> None:
        assert plan.name == "Winter base, lower body first"
        assert at(plan.place) == (1, 12, "Winter base, lower body first")
        assert (plan.goal, plan.phase) == ("hypertrophy", "build")
        assert (plan.starts, plan.weeks) == (date(2026, 1, 5), 6)
        assert plan.note == "one line that every level may carry"
        assert plan.rehabilitation is None

    def test_focus_and_priority(self, plan: Programme) -> None:
        assert [at(term.place) for term in plan.focus] == [(5, 9, "legs"), (5, 15, "trunk")]
        assert [at(term.place) for term in plan.priority] == [(6, 12, "hamstrings")]

    def test_events(self, plan: Programme) -> None:
        (event,) = plan.events
        assert (event.name, event.date) == ("regatta", date(2026, 2, 14))
        assert at(event.place) == (9, 36, "regatta")

    def test_one_block_of_six_weeks_with_one_session_and_one_activity(self, plan: Programme) -> None:
        (block,) = plan.blocks
        assert (block.first, block.weeks, block.deload, block.rotation) == (1, 6, False, ())
        assert [session.name for session in plan.sessions_of(block)] == ["Lower A"]
        assert [activity.name for activity in block.activities] == ["water session"]

    def test_the_session(self, plan: Programme) -> None:
        (session,) = plan.sessions()
        assert at(session.place) == (12, 14, "Lower A")
        assert session.days == (1,)
        assert words(session.preparation) == ["hip mobility", "5 min bike"]
        assert at(session.preparation[1].place) == (14, 33, "5 min bike")
        assert session.block is plan.blocks[0]

    def test_the_lines_in_their_order(self, lines: list[Prescription]) -> None:
        assert [at(line.place) for line in lines] == [
            (16, 19, "stiff-leg deadlift"),
            (26, 19, "back squat"),
            (31, 24, "seated leg curl"),
            (32, 24, "standing calf raise"),
            (33, 66, "push-up"),
            (33, 97, "side plank"),
            (34, 20, "kettlebell swing"),
        ]
        assert [line.order for line in lines] == list(range(7))
        assert all(not line.unread for line in lines)

    def test_the_deadlift_by_week(self, lines: list[Prescription]) -> None:
        line = lines[0]
        assert values(line, "sets") == [(1, 3, "3"), (4, 5, "4"), (6, 6, "2")]
        assert [at(held.place) for held in line.groups[0]["sets"]] == [
            (17, 21, "3"),
            (17, 29, "4"),
            (17, 35, "2"),
        ]

    def test_the_deadlift_in_week_four(self, lines: list[Prescription]) -> None:
        (work,) = lines[0].in_week(4)
        assert work.exercise == "stiff-leg deadlift"
        assert work.sets == Range(4, 4)
        assert work.reps is not None
        assert work.reps.a_set() == Range(5, 8)
        assert work.load is not None
        assert (work.load.kind, work.load.span) == ("percent", Range(80, 85))
        assert (work.rir, work.rpe) == (Range(2, 2), None)
        assert work.rest == Range(180, 180)
        assert work.tempo == (3, 1, None, 0)
        assert (work.hold, work.distance, work.velocity) == (None, None, None)
        assert work.readable
        assert {key: at(place)[:2] for key, place in work.places.items()} == {
            "exercise": (16, 19),
            "sets": (17, 29),
            "reps": (18, 15),
            "load": (19, 15),
            "rir": (20, 14),
            "rest": (21, 15),
            "tempo": (22, 16),
        }

    def test_what_only_describes_the_deadlift(self, lines: list[Prescription]) -> None:
        line = lines[0]
        assert line.warm_up_sets == Range(2, 2)
        assert words(line.alternates) == ["good morning"]
        assert at(line.alternates[0].place) == (24, 14, "good morning")
        assert line.progression is not None
        assert (line.progression.add, line.progression.when) == ("2.5 kg", "top of range in all sets")
        assert (line.progression.every, line.progression.note) == ("", "")
        assert line.progression.place.line == 25

    def test_the_squat_in_groups(self, lines: list[Prescription]) -> None:
        top, back_off = lines[1].in_week(1)
        assert (top.sets, top.rpe, top.load) == (Range(1, 1), Range(8, 8), None)
        assert (back_off.sets, back_off.rpe) == (Range(3, 3), None)
        assert back_off.load is not None
        assert (back_off.load.kind, back_off.load.span) == ("top set", Range(90, 90))
        assert top.reps is not None
        assert back_off.reps is not None
        assert (top.reps.a_set(), back_off.reps.a_set()) == (Range(3, 3), Range(5, 5))
        assert at(back_off.places["load"]) == (29, 38, "90 % of top set")
        assert at(back_off.places["exercise"]) == (26, 19, "back squat")

    def test_the_superset(self, lines: list[Prescription]) -> None:
        curl, calf = lines[2:4]
        assert curl.paired is calf.paired
        assert curl.paired is not None
        assert (curl.paired.kind, curl.paired.rest) == ("superset", None)
        assert curl.in_week(1)[0].rest == Range(90, 90)
        assert calf.in_week(1)[0].rest is None

    def test_the_circuit_gives_its_rounds_as_sets(self, lines: list[Prescription]) -> None:
        push_up, plank = lines[4:6]
        assert push_up.paired is plank.paired
        assert push_up.paired is not None
        assert (push_up.paired.kind, push_up.paired.rest) == ("circuit", Range(120, 120))
        for line in (push_up, plank):
            assert line.in_week(6)[0].sets == Range(3, 3)
            assert at(line.in_week(6)[0].places["sets"]) == (33, 27, "3")
        assert plank.in_week(1)[0].hold == Range(30, 30)
        assert plank.in_week(1)[0].reps is None
        assert [line.in_week(1)[0].side for line in (push_up, plank)] == ["", "each"]

    def test_the_swing_starts_a_set_each_minute_for_ten(self, lines: list[Prescription]) -> None:
        swing = lines[6]
        assert (swing.every, swing.lasts) == (Range(60, 60), Range(600, 600))
        assert swing.in_week(1)[0].sets == Range(10, 10)  # 600 s / 60 s
        assert at(swing.in_week(1)[0].places["sets"]) == (34, 56, "10 min")

    def test_the_activity(self, plan: Programme) -> None:
        (activity,) = plan.blocks[0].activities
        assert at(activity.place) == (35, 15, "water session")
        assert activity.days == (3,)
        assert (activity.minutes, activity.effort) == (Range(75, 75), Range(7, 7))
        assert [(area.words, how) for area, how in activity.loads] == [
            ("hamstrings", "high"),
            ("lower back", "high"),
        ]
        assert at(activity.loads[1][0].place) == (39, 31, "lower back")

    def test_the_athlete(self, plan: Programme) -> None:
        (mara,) = plan.athletes
        assert (mara.name, mara.level, mara.age, mara.body_mass) == ("Mara", "intermediate", 27, 68)
        assert mara.sport == "rowing"
        assert at(mara.place) == (1, 7, "Mara")
        assert words(mara.equipment) == ["barbell", "rack"]
        assert (mara.days, mara.minutes) == (("monday", "thursday"), 60)
        assert (mara.clearance, mara.screening) == (date(2025, 11, 1), date(2025, 10, 1))
        assert (mara.supervision, mara.note) == ("coach present", "rows at seven")

    def test_the_athletes_best_lifts(self, plan: Programme) -> None:
        squat, pull_up, press = plan.athletes[0].best_lifts
        assert (squat.exercise.words, squat.kilograms, squat.reps, squat.tested) == (
            "back squat",
            105,
            2,
            date(2025, 12, 12),
        )
        assert at(squat.exercise.place) == (7, 3, "back squat")
        assert (pull_up.load.kind, pull_up.kilograms, pull_up.reps, pull_up.tested) == (
            "bodyweight",
            10,
            1,
            None,
        )
        assert (press.load.pieces, press.kilograms) == (2, 48)

    def test_what_the_athlete_spares(self, plan: Programme) -> None:
        shoulder, knee = plan.athletes[0].protect
        assert (shoulder.kind, shoulder.subject.words, shoulder.adviser) == (
            "area",
            "left shoulder",
            "physiotherapist",
        )
        assert (shoulder.review_on, shoulder.note) == (date(2026, 3, 1), "no pain so far")
        assert (knee.kind, knee.subject.words, knee.adviser, knee.review_on) == (
            "movement",
            "deep knee bend under load",
            "physician",
            None,
        )


class TestFurtherKeys:
    def test_of_a_line(self) -> None:
        text = one_line(
            "exercise: deadlift, sets: 2, reps: 2+2+2, cluster rest: 20 s, method: cluster, velocity: 0.45-0.55 m/s, velocity loss: 10-20 %, note: belt on, side: left, progression: when it feels easy"
        )
        line = line_of(text)
        sound(text)
        assert line.cluster_rest == Range(20, 20)
        assert line.method == "cluster"
        assert line.velocity_loss == Range(10, 20)
        assert (line.note, line.in_week(1)[0].side) == ("belt on", "left")
        assert line.in_week(1)[0].velocity == Range(0.45, 0.55)
        assert line.progression is not None
        assert (line.progression.note, line.progression.add) == ("when it feels easy", "")
        reps = line.in_week(1)[0].reps
        assert reps is not None
        assert reps.parts == (2, 2, 2)

    def test_of_a_carry(self) -> None:
        line = line_of(one_line("exercise: farmer's carry, sets: 3, distance: 30-40 m, load: 2 x 24 kg"))
        assert line.in_week(1)[0].distance == Range(30, 40)
        assert line.in_week(1)[0].load is not None

    def test_rehabilitation(self) -> None:
        head = (
            "rehabilitation: {stage: heel drops under load, advised by: physiotherapist, until: 2026-04-01}\n"
        )
        stage = sound(one_line("exercise: back squat, sets: 3", head)).rehabilitation
        assert stage is not None
        assert (stage.stage, stage.adviser, stage.until) == (
            "heel drops under load",
            "physiotherapist",
            date(2026, 4, 1),
        )
        assert stage.place.line == 2

    def test_several_athletes_one_written_in_the_programme(self) -> None:
        text = one_line(
            "exercise: back squat, sets: 3", "athletes: [a.athlete.yaml, {name: Mara, days: 3}]\n"
        )
        mara = sound(text).athletes[1]
        assert [athlete.name for athlete in sound(text).athletes] == ["a.athlete.yaml", "Mara"]
        assert mara.days == 3
        assert at(mara.place) == (2, 35, "Mara")

    def test_one_alternate_without_a_list(self) -> None:
        line = line_of(one_line("exercise: back squat, sets: 3, or: front squat"))
        assert words(line.alternates) == ["front squat"]

    def test_a_superset_done_in_rounds(self) -> None:
        text = "programme: Test\nsessions:\n  - session: Gym\n    exercises:\n      - superset: [{exercise: push-up, reps: 8}, {exercise: pull-up, reps: 5}]\n        rounds: 3-4\n        rest: 90 s\n        note: brisk\n"
        plan = sound(text)
        for line in plan.prescriptions():
            assert line.in_week(1)[0].sets == Range(3, 4)
            assert line.paired is not None
            assert (line.paired.rest, line.paired.note) == (Range(90, 90), "brisk")


class TestByWeek:
    def test_any_value_may_change(self) -> None:
        text = one_line(
            "exercise: {1: back squat, 2: front squat}, sets: {1: 3, 2: 4}, reps: {1: 5, 2: 8/6/5/5}, load: {1: 60 kg, 2: 70 %},"
            " rir: {1: 3, 2: 1-2}, rpe: {1: 7, 2: 8-9}, rest: {1: 2 min, 2: 3 min}, tempo: {1: 3-0-1-0, 2: X-0-X-0}",
            "weeks: 2\n",
        )
        line = next(sound(text).prescriptions())
        (first,), (second,) = line.in_week(1), line.in_week(2)
        assert (first.exercise, second.exercise) == ("back squat", "front squat")
        assert (first.sets, second.sets) == (Range(3, 3), Range(4, 4))
        assert first.load is not None
        assert second.load is not None
        assert (first.load.kind, second.load.kind) == ("mass", "percent")
        assert (first.rir, second.rir) == (Range(3, 3), Range(1, 2))
        assert (first.rpe, second.rpe) == (Range(7, 7), Range(8, 9))
        assert (first.rest, second.rest) == (Range(120, 120), Range(180, 180))
        assert (first.tempo, second.tempo) == ((3, 0, 1, 0), (None, 0, None, 0))
        assert line.in_week(3) == ()

    def test_a_hold_and_rounds_may_change(self) -> None:
        text = "programme: Test\nweeks: 2\nsessions:\n  - session: Gym\n    exercises:\n      - circuit: {rounds: {1: 2, 2: 3}, exercises: [{exercise: plank, hold: {1: 20 s, 2: 30 s}}]}\n"
        line = next(sound(text).prescriptions())
        assert values(line, "sets") == [(1, 1, "2"), (2, 2, "3")]
        assert values(line, "hold") == [(1, 1, "20"), (2, 2, "30")]

    def test_weeks_of_a_block_count_from_its_own_first(self) -> None:
        text = """\
programme: Test
blocks:
  - {name: One, weeks: 2, sessions: [{session: Gym, exercises: [{exercise: back squat, sets: 3}]}]}
  - {name: Two, weeks: 2, sessions: [{session: Gym, exercises: [{exercise: back squat, sets: {1: 4, 2: 5}}]}]}
"""
        plan = sound(text)
        assert [(block.first, block.weeks) for block in plan.blocks] == [(1, 2), (3, 2)]
        assert values(list(plan.prescriptions())[1], "sets") == [(1, 1, "4"), (2, 2, "5")]
        assert plan.weeks == 4

    @pytest.mark.parametrize(
        ("sets", "expected", "counted"),
        [
            (
                "{1-2: 3, 4: 2}",
                ("weeks-left-out", 6, 38),
                "No value for week 3; the values here must cover weeks 1-4.",
            ),
            (
                "{2-3: 3}",
                ("weeks-left-out", 6, 38),
                "No value for weeks 1, 4; the values here must cover weeks 1-4.",
            ),
            ("{1-3: 3, 3-4: 2}", ("weeks-overlap", 6, 47), "Week 3 stands under 1-3 and under 3-4."),
            ("{1-4: 3, 2: 2}", ("weeks-overlap", 6, 47), "Week 2 stands under 1-4 and under 2."),
            ("{1-4: 3, 5: 2}", ("weeks-beyond", 6, 47), "5 goes past week 4, the last one here."),
            ("{1-6: 3}", ("weeks-beyond", 6, 39), "1-6 goes past week 4, the last one here."),
            ("{4-1: 3}", ("range-backwards", 6, 39), "4-1 runs backwards; it was read as 1-4."),
        ],
    )
    def test_weeks_that_cannot_be_meant(
        self, sets: str, expected: tuple[str, int, int], counted: str
    ) -> None:
        text = one_line(f"exercise: back squat, sets: {sets}", "weeks: 4\n")
        (finding,) = read(text)[1]
        assert (finding.rule, finding.place.line, finding.place.column) == expected
        assert finding.counted == counted
        assert finding.change

    def test_the_earlier_value_counts_where_two_overlap(self) -> None:
        line = line_of(one_line("exercise: back squat, sets: {1-3: 3, 3-4: 5}", "weeks: 4\n"))
        assert [work.sets for week in range(1, 5) for work in line.in_week(week)] == [Range(3, 3)] * 3 + [
            Range(5, 5)
        ]

    def test_weeks_that_the_programme_does_not_have_are_cut_off(self) -> None:
        line = line_of(one_line("exercise: back squat, sets: {1-9: 3}", "weeks: 4\n"))
        assert values(line, "sets") == [(1, 4, "3")]

    def test_a_week_without_sets_is_zero_sets(self) -> None:
        line = line_of(one_line("exercise: back squat, sets: {1: 3, 2: 0}", "weeks: 2\n"))
        assert [work.sets for week in (1, 2) for work in line.in_week(week)] == [Range(3, 3), Range(0, 0)]

    def test_shared_weeks_are_spoken_of_once(self) -> None:
        text = """\
programme: Test
weeks: 4
shared: {sets: &growing {1-2: 3, 4: 2}}
sessions:
  - session: Gym
    exercises:
      - {exercise: back squat, sets: *growing}
      - {exercise: leg press, sets: *growing}
"""
        assert said(text) == [("weeks-left-out", 3, 25)]
        assert [place.excerpt for place in read(text)[1][0].place.through] == ["*growing"]

    @pytest.mark.parametrize(
        ("weeks", "words"),
        [([3], "week 3"), ([1, 2, 3], "weeks 1-3"), ([1, 2, 4], "weeks 1-2, 4"), ([], "weeks ")],
    )
    def test_weeks_in_words(self, weeks: list[int], words: str) -> None:
        assert week_list(weeks) == words


class TestBackwards:
    @pytest.mark.parametrize(
        ("key", "written", "turned"),
        [
            ("sets", "4-3", "3-4"),
            ("reps", "8-5", "5-8"),
            ("reps", "12/10-8", "12/8-10"),
            ("load", "85-80 %", "80-85 %"),
            ("rir", "2-1", "1-2"),
            ("rpe", "9-8", "8-9"),
            ("rest", "3-2 min", "2-3 min"),
            ("hold", "40-30 s", "30-40 s"),
            ("distance", "40-30 m", "30-40 m"),
        ],
    )
    def test_said_and_read_the_right_way_round(self, key: str, written: str, turned: str) -> None:
        lead = "" if key == "sets" else "sets: 3, "
        text = one_line(f"exercise: back squat, {lead}{key}: {written}")
        (finding,) = read(text)[1]
        assert (finding.rule, finding.severity) == ("range-backwards", "warning")
        assert finding.place.excerpt == written
        assert finding.counted == f"{written} runs backwards; it was read as {turned}."
        assert [edit.words for edit in finding.edits] == [turned]
        mended = text.replace(written, turned)
        assert not read(mended)[1]
        assert str(getattr(line_of(text).in_week(1)[0], key)) == str(
            getattr(line_of(mended).in_week(1)[0], key)
        ) or key in ("reps", "load")

    @pytest.mark.parametrize(
        "words", ["tempo: 3-1-X-0", "load: red band", "load: bodyweight - 20 kg", "reps: 12/10/8"]
    )
    def test_what_is_no_range_is_left_alone(self, words: str) -> None:
        assert said(one_line(f"exercise: back squat, sets: 3, {words}")) == []


class TestBlocks:
    TWO = """\
programme: Test
{head}blocks:
  - name: Base
    weeks: 3
    phase: build
    focus: [legs]
    rotation: [monday, friday]
    note: slow
    sessions: [{{session: Gym, exercises: [{{exercise: back squat, sets: 3}}]}}]
  - name: Easy
    weeks: 1
    deload: true
    sessions: [{{session: Gym, exercises: [{{exercise: back squat, sets: 1}}]}}, {{activity: run}}]
"""

    def test_what_a_block_says(self) -> None:
        base, easy = sound(self.TWO.format(head="")).blocks
        assert at(base.place) == (3, 11, "Base")
        assert (base.phase, words(base.focus), base.rotation, base.note) == (
            "build",
            ["legs"],
            (1, 5),
            "slow",
        )
        assert (base.deload, easy.deload) == (False, True)
        assert (easy.first, easy.weeks, easy.rotation) == (4, 1, ())
        assert [activity.name for activity in easy.activities] == ["run"]

    def test_weeks_that_agree_with_the_blocks(self) -> None:
        assert sound(self.TWO.format(head="weeks: 4\n")).weeks == 4

    def test_weeks_that_disagree_with_the_blocks(self) -> None:
        text = self.TWO.format(head="weeks: 6\n")
        (finding,) = read(text)[1]
        assert (finding.rule, at(finding.place)) == ("weeks-disagree", (2, 8, "6"))
        assert finding.counted == "The programme says 6 weeks; its blocks add up to 4."
        assert read(text)[0].weeks == 4

    @pytest.mark.parametrize(
        ("weeks", "read_in"), [((52, 52), 2), ((104,), 1), ((52, 52, 1), 2), ((52, 53, 1), 1)]
    )
    def test_no_more_weeks_than_a_programme_may_say(self, weeks: tuple[int, ...], read_in: int) -> None:
        session = "sessions: [{session: Gym, exercises: [{exercise: back squat, sets: 3}]}]"
        rows = "".join(f"  - {{name: a, weeks: {number}, {session}}}\n" for number in weeks)
        plan, found = read("programme: Test\nblocks:\n" + rows)
        assert len(plan.blocks) == read_in
        assert plan.weeks == sum(weeks[:read_in]) <= 104
        assert [(finding.rule, finding.place.line) for finding in found] == [
            ("weeks-too-many", read_in + 3)
        ] * (sum(weeks) > 104)

    def test_one_week_where_nothing_is_said(self) -> None:
        assert sound(one_line("exercise: back squat, sets: 3")).weeks == 1


class TestDays:
    @pytest.mark.parametrize(
        ("starts", "day", "days"),
        [
            ("", "monday", (1,)),
            ("", "sunday", (7,)),
            ("", "3", (3,)),
            ("", "[monday, thursday]", (1, 4)),
            ("", "[thursday, monday]", (4, 1)),
            ("", "[1, wednesday, 5]", (1, 3, 5)),
            ("", "[monday, monday, 1]", (1,)),
            ("starts: 2026-01-05\n", "monday", (1,)),
            # 1 January 2026 is a Thursday, so the programme's weeks run from Thursday to Wednesday
            ("starts: 2026-01-01\n", "thursday", (1,)),
            ("starts: 2026-01-01\n", "monday", (5,)),
            ("starts: 2026-01-01\n", "wednesday", (7,)),
            ("starts: 2026-01-01\n", "2", (2,)),
            ("starts: 2026-01-01\n", "[monday, 1]", (5, 1)),
        ],
    )
    def test_counted_from_the_start_day(self, starts: str, day: str, days: tuple[int, ...]) -> None:
        assert date(2026, 1, 1).strftime("%A") == "Thursday"
        text = f"programme: Test\n{starts}sessions:\n  - session: Gym\n    day: {day}\n    exercises: [{{exercise: back squat, sets: 3}}]\n"
        assert [session.days for session in sound(text).sessions()] == [days]

    def test_none_where_none_is_stated(self) -> None:
        assert [session.days for session in sound(one_line("exercise: back squat, sets: 3")).sessions()] == [
            ()
        ]

    def test_a_rotation_runs_in_the_order_of_the_week(self) -> None:
        text = "programme: Test\nstarts: 2026-01-01\nrotation: [monday, thursday, saturday]\nsessions: [{session: A, exercises: [{exercise: back squat, sets: 3}]}]\n"
        assert sound(text).blocks[0].rotation == (1, 3, 5)

    @pytest.mark.parametrize("day", ["0", "8", "wensday", "1.5", "true"])
    def test_a_day_that_there_is_not(self, day: str) -> None:
        text = f"programme: Test\nsessions:\n  - session: Gym\n    day: {day}\n    exercises: [{{exercise: back squat, sets: 3}}]\n"
        plan, found = read(text)
        assert [(finding.place.line, finding.place.column, finding.severity) for finding in found] == [
            (4, 10, "error")
        ]
        assert [session.days for session in plan.sessions()] == [()]


class TestDates:
    @pytest.mark.parametrize(
        ("head", "place"),
        [
            ("starts: 2026-02-30\n", (2, 9)),
            ("starts: 2026-13-01\n", (2, 9)),
            ("starts: 2027-02-29\n", (2, 9)),
            ("starts: 2026-00-10\n", (2, 9)),
            ("events: [{date: 2026-02-30, event: regatta}]\n", (2, 17)),
            ("rehabilitation: {stage: a, advised by: b, until: 2026-06-31}\n", (2, 50)),
            ("athlete: {name: Mara, clearance on file: 2026-04-31}\n", (2, 42)),
        ],
    )
    def test_a_day_that_the_calendar_lacks(self, head: str, place: tuple[int, int]) -> None:
        (finding,) = read(one_line("exercise: back squat, sets: 3", head))[1]
        assert (finding.rule, finding.place.line, finding.place.column) == ("date-impossible", *place)
        assert finding.counted == f"{finding.place.excerpt} is not in the calendar."

    def test_a_leap_day(self) -> None:
        assert sound(one_line("exercise: back squat, sets: 3", "starts: 2028-02-29\n")).starts == date(
            2028, 2, 29
        )

    @pytest.mark.parametrize("written", ["5.1.2026", "2026-1-5", "tomorrow", "20260105"])
    def test_what_is_written_otherwise_is_left_to_the_schema(self, written: str) -> None:
        plan, found = read(one_line("exercise: back squat, sets: 3", f"starts: {written}\n"))
        assert plan.starts is None
        assert [finding.rule for finding in found] == ["value-unreadable"]


class TestAliasesAndMerges:
    MERGED = """\
programme: Test
shared:
  main: &main {sets: 3, reps: 5-8, rir: 2}
sessions:
  - session: Gym
    exercises:
      - {exercise: back squat, <<: *main}
      - {exercise: leg press, <<: *main, sets: 4}
"""

    def test_merged_values_stand_where_they_are_written(self) -> None:
        squat, press = sound(self.MERGED).prescriptions()
        (work,) = squat.in_week(1)
        assert (work.sets, work.rir) == (Range(3, 3), Range(2, 2))
        assert at(work.places["reps"]) == (3, 31, "5-8")
        assert [at(place) for place in work.places["reps"].through] == [(7, 36, "*main")]
        (own,) = press.in_week(1)
        assert own.sets == Range(4, 4)
        assert (at(own.places["sets"]), own.places["sets"].through) == ((8, 48, "4"), ())
        assert [at(place) for place in own.places["rir"].through] == [(8, 35, "*main")]

    def test_an_aliased_line(self) -> None:
        text = """\
programme: Test
shared: [&plank {exercise: plank, sets: 3, hold: 40 s}]
sessions:
  - {session: A, exercises: [*plank]}
  - {session: B, exercises: [*plank]}
"""
        first, second = sound(text).prescriptions()
        assert at(first.place) == at(second.place) == (2, 28, "plank")
        assert [at(place) for place in first.place.through] == [(4, 30, "*plank")]
        assert [at(place) for place in second.place.through] == [(5, 30, "*plank")]
        assert (first.session.name, second.session.name) == ("A", "B")

    def test_an_aliased_value_by_week(self) -> None:
        text = """\
programme: Test
weeks: 2
shared: {sets: &growing {1: 3, 2: 4}}
sessions: [{session: A, exercises: [{exercise: back squat, sets: *growing}]}]
"""
        line = next(sound(text).prescriptions())
        assert values(line, "sets") == [(1, 1, "3"), (2, 2, "4")]
        assert at(line.groups[0]["sets"][1].place) == (3, 35, "4")
        assert [at(place) for place in line.groups[0]["sets"][1].place.through] == [(4, 66, "*growing")]

    def test_an_alias_inside_a_merge_is_named_on_the_way(self) -> None:
        text = """\
programme: Test
shared:
  sets: &three 3
  main: &main {sets: *three, reps: 5}
sessions: [{session: A, exercises: [{exercise: back squat, <<: *main}]}]
"""
        (work,) = next(sound(text).prescriptions()).in_week(1)
        place = work.places["sets"]
        assert work.sets == Range(3, 3)
        assert "*main" in [one.excerpt for one in place.through]

    def test_nothing_in_shared_is_read_by_itself(self) -> None:
        plan = sound(
            "programme: Test\nshared: {sessions: [{exercise: back squat, sets: 30}]}\nsessions: [{session: A, exercises: [{exercise: plank, sets: 1}]}]\n"
        )
        assert [line.place.excerpt for line in plan.prescriptions()] == ["plank"]

    @pytest.mark.parametrize("style", ["back squat", "'back squat'", '"back squat"', '"back\\x20squat"'])
    def test_every_way_of_quoting(self, style: str) -> None:
        line = line_of(one_line(f"exercise: {style}, sets: '3', reps: \"5-8\""))
        (work,) = line.in_week(1)
        assert work.exercise == "back squat"
        assert work.sets == Range(3, 3)
        assert at(line.place) == (5, 20, style)


class TestBrokenFiles:
    """What can be read is read; the line says what could not be."""

    @pytest.mark.parametrize(
        ("words", "unread"),
        [
            ("exercise: back squat, sets: many", {"sets"}),
            ("exercise: back squat, sets: 3x5", {"sets"}),
            ("exercise: back squat, sets: [3]", {"sets"}),
            ("exercise: back squat, sets: 3, reps: to fail", {"reps"}),
            ("exercise: back squat, sets: 3, rest: 9", {"rest"}),
            ("exercise: back squat, sets: 3, tempo: 3-0-1", {"tempo"}),
            ("exercise: back squat, sets: 3, rir: hard, rpe: harder", {"rir", "rpe"}),
            ("exercise: 5, sets: 3", {"exercise"}),
            ("sets: 3", {"exercise"}),
            ("exercise: back squat", {"sets"}),
            ("exercise: back squat, sets: {1: many}", {"sets"}),
        ],
    )
    def test_what_could_not_be_read(self, words: str, unread: set[str]) -> None:
        plan, found = read(one_line(words))
        (line,) = plan.prescriptions()
        assert set(line.unread) == unread
        assert found
        assert all(finding.severity == "error" for finding in found)

    @pytest.mark.parametrize(
        ("words", "readable"),
        [
            ("exercise: back squat, sets: many", False),
            ("exercise: back squat", False),
            ("exercise: back squat, sets: 3, reps: to fail", True),
            ("exercise: back squat, sets: 3, load: 60", True),
        ],
    )
    def test_only_what_decides_the_sets_makes_them_unsure(self, words: str, readable: bool) -> None:
        (work,) = line_of(one_line(words)).in_week(1)
        assert work.readable is readable

    def test_a_broken_line_does_not_take_the_others_along(self) -> None:
        text = "programme: Test\nsessions:\n  - session: Gym\n    exercises:\n      - back squat\n      - {exercise: leg press, sets: 3}\n      - [1, 2]\n      - {exercise: plank, sets: 2}\n"
        plan, found = read(text)
        assert [line.place.excerpt for line in plan.prescriptions()] == ["leg press", "plank"]
        assert sorted({finding.place.line for finding in found}) == [5, 7]

    @pytest.mark.parametrize(
        "text",
        [
            "programme: Test\n",
            "programme: [a]\nsessions: {}\n",
            "programme: Test\nsessions: none\n",
            "programme: Test\nsessions: [none, 5, [1]]\n",
            "programme: Test\nsessions: [{session: [1], exercises: 5, day: {a: b}}]\n",
            "programme: Test\nsessions: [{activity: {a: b}, loads: [1], minutes: long}]\n",
            "programme: Test\nblocks: 5\n",
            "programme: Test\nblocks: [5, {name: x, weeks: x}, {weeks: -3, sessions: [{}]}]\n",
            "programme: Test\nweeks: 0\nsessions: []\n",
            "programme: Test\nweeks: 99999\nsessions: []\n",
            "programme: Test\nathlete: [1, {}]\nathletes: 5\nsessions: [{session: A, exercises: [{}]}]\n",
            "programme: Test\nstarts: {}\nevents: [1, {date: x}]\nrehabilitation: yes please\nfocus: {a: b}\n",
            "programme: Test\nsessions: [{session: A, exercises: [{superset: 5}, {circuit: 5}, {circuit: {rounds: x, exercises: [5, {exercise: plank}]}}]}]\n",
            "programme: Test\nsessions: [{session: A, exercises: [{exercise: plank, work: [5, {sets: x}]}]}]\n",
            "{}\n",
        ],
    )
    def test_anything_at_all_is_read_with_a_finding(self, text: str) -> None:
        plan, found = read(text)
        assert found
        assert all(1 <= block.weeks <= 104 for block in plan.blocks)
        for line in plan.prescriptions():
            line.in_week(1)

    @pytest.mark.parametrize("text", ["- a\n", "word\n", "5\n"])
    def test_no_programme_where_there_are_no_keys(self, text: str) -> None:
        reading = parse("x", text)
        if reading.root is not None:
            assert read_programme(reading.root, lambda term: Athlete("", term.place)) == (None, [])
            assert read_athlete(reading.root) == (None, [])
        assert checked(reading, "programme")

    @pytest.mark.parametrize(
        ("text", "held"),
        [
            ("name: Mara\nage: old\n", {"age": None, "name": "Mara"}),
            ("name: Mara\nbody mass: 70\n", {"body_mass": None}),
            ("name: Mara\nbest lifts: {back squat: heavy, bench press: 60 kg}\n", {}),
            ("name: Mara\nprotect: [{}]\n", {}),
            ("name: Mara\ndays: [monday, {a: b}]\n", {"days": ("monday",)}),
            ("level: novice\n", {"name": "", "level": "novice"}),
        ],
    )
    def test_broken_athletes(self, text: str, held: dict[str, Any]) -> None:
        reading = parse("x.athlete.yaml", text)
        assert reading.root is not None
        athlete, _ = read_athlete(reading.root)
        assert athlete is not None
        assert {key: getattr(athlete, key) for key in held} == held
        assert checked(reading, "athlete")

    def test_a_best_lift_that_cannot_be_read_is_left_out_alone(self) -> None:
        reading = parse("x", "name: Mara\nbest lifts: {back squat: heavy, bench press: 60 kg}\n")
        assert reading.root is not None
        athlete, _ = read_athlete(reading.root)
        assert athlete is not None
        assert [lift.exercise.words for lift in athlete.best_lifts] == ["bench press"]


def test_a_reviewed_file_brings_what_reading_the_schema_and_the_rules_say(
    reviewed: Callable[..., Review],
) -> None:
    text = one_line("exercise: back sqat, sets: 4-3, reps: x", "starts: 2026-02-30\n")
    (one,) = reviewed(text).files
    assert {"date-impossible", "range-backwards", "value-unreadable", "exercise-unknown"} <= {
        finding.rule for finding in one.findings
    }
    places = [finding.place.start for finding in one.findings]
    assert places == sorted(places)


def test_loads_and_repetitions_are_typed() -> None:
    (work,) = line_of(one_line("exercise: back squat, sets: 3, reps: 5, load: 60 kg")).in_week(1)
    assert isinstance(work.load, Load)
    assert isinstance(work.reps, Reps)


class TestSetsThatFollow:
    def test_one_every_so_often(self) -> None:
        line = line_of(one_line("exercise: kettlebell swing, every: 90 s, for: 10 min, reps: 10"))
        assert line.in_week(1)[0].sets == Range(6, 6)

    @pytest.mark.parametrize(("every", "lasts"), [("60 s", "30 s"), ("0 s", "10 min"), ("2-3 min", "2 min")])
    def test_none_fits(self, every: str, lasts: str) -> None:
        text = one_line(f"exercise: kettlebell swing, every: {every}, for: {lasts}, reps: 10")
        (finding,) = [one for one in read(text)[1] if one.rule == "no-set-fits"]
        assert finding.severity == "error"
        assert finding.counted == f"A set every {every} does not go into {lasts}."
        assert finding.place.excerpt == lasts

    def test_a_side_of_its_own_in_a_group_of_sets(self) -> None:
        text = one_line(
            "exercise: split squat, work: [{sets: 3, reps: 8, side: left}, {sets: 2, reps: 8, side: right}]"
        )
        assert [work.side for work in line_of(text).in_week(1)] == ["left", "right"]

    def test_a_side_that_holds_for_all_groups(self) -> None:
        text = one_line("exercise: split squat, side: left, work: [{sets: 3, reps: 8}, {sets: 2, reps: 8}]")
        assert [work.side for work in line_of(text).in_week(1)] == ["left", "left"]
