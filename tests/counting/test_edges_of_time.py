"""How long clocks, distances, rounds and what stands around them take, at their edges; the sums stand beside each."""

from __future__ import annotations

import pytest

from spotline.lint.counting.session_time import seconds_around, session_time, set_time, until_next
from spotline.lint.model.quantities import NOTHING, Range


@pytest.fixture(scope="module")
def visit(programme):
    def run(*items, keys="", head=""):
        lines = "".join(f"      - {one}\n" for one in items)
        text = f"programme: T\n{head}sessions:\n  - session: A\n{keys}    exercises:\n{lines}"
        return programme(text).weeks[0].visits[0]

    return run


def parts(time):
    """Work, rest, around and assumed rest, each by its two ends."""
    return [one.ends for one in (time.work, time.rest, time.around, time.assumed_rest)]


NONE = (0, 0)
MOVE = "{exercise: %s, reps: 5, tempo: 1-0-1-0%s}"  # 10 s
UP, ROW = MOVE % ("push-up", ""), MOVE % ("inverted row", "")
SETS = MOVE % ("push-up", ", sets: %d")


@pytest.mark.parametrize(
    ("item", "work", "rest", "around"),
    [
        # every: as many rounds as there are, each as long as it says
        (f"{{circuit: {{every: 2 min, for: 12 min, exercises: [{UP}]}}}}", (720, 720), NONE, NONE),
        (f"{{circuit: {{every: 90 s, rounds: 4, exercises: [{UP}, {ROW}]}}}}", (360, 360), NONE, NONE),
        (
            f"{{circuit: {{every: 2 min, for: 12 min, exercises: [{MOVE % ('dip', ', warm-up sets: 2')}]}}}}",
            (720, 720),
            NONE,
            (120, 300),
        ),
        (f"{{circuit: {{change every: 60 s, rounds: 3, exercises: [{UP}, {ROW}]}}}}", (360, 360), NONE, NONE),
        # a turn each: three rounds of two stations of 30 s, five times off, and the rest between rounds
        (f"{{circuit: {{rounds: 3, on: 30 s, exercises: [{UP}, {ROW}]}}}}", (180, 180), NONE, NONE),
        (
            f"{{circuit: {{rounds: 3, on: 30 s, off: 10 s, exercises: [{UP}, {ROW}]}}}}",
            (180, 180),
            (50, 50),
            NONE,
        ),
        (
            f"{{circuit: {{rounds: 3, on: 30 s, off: 10 s, rest: 60 s, exercises: [{UP}, {ROW}]}}}}",
            (180, 180),
            (170, 170),
            NONE,
        ),
        (
            f"{{circuit: {{rounds: 1, on: 30 s, off: 10 s, rest: 60 s, exercises: [{UP}]}}}}",
            (30, 30),
            NONE,
            NONE,
        ),
        (
            f"{{circuit: {{change every: 60 s, for: 10 min, exercises: [{UP}, {ROW}]}}}}",
            (600, 600),
            NONE,
            NONE,
        ),
        # a cap cuts in only where the work goes past it: 4 rounds of 10 s, three times 20 s and 5-20 s between
        (
            f"{{circuit: {{rounds: 4, for time: true, time cap: 160 s, rest: 20 s, exercises: [{UP}]}}}}",
            (40, 40),
            (75, 120),
            NONE,
        ),
        (
            f"{{circuit: {{rounds: 4, for time: true, time cap: 159 s, rest: 20 s, exercises: [{UP}]}}}}",
            (115, 159),
            NONE,
            NONE,
        ),
        (
            f"{{circuit: {{rounds: 4, for time: true, time cap: 100 s, rest: 20 s, exercises: [{UP}]}}}}",
            (100, 100),
            NONE,
            NONE,
        ),
        (
            f"{{circuit: {{rounds: 4, for time: true, rest: 20 s, exercises: [{UP}]}}}}",
            (40, 40),
            (75, 120),
            NONE,
        ),
        # without a clock: 3 x 2 x 10 s; five times 5-20 s to the next station, and twice 60 s
        (
            f"{{circuit: {{rounds: 3, rest: 60 s, exercises: [{UP}, {ROW}]}}}}",
            (60, 60),
            (2 * 60 + 5 * 5, 2 * 60 + 5 * 20),
            NONE,
        ),
        (f"{{circuit: {{rounds: 1, exercises: [{UP}, {ROW}]}}}}", (20, 20), (5, 20), NONE),
        # where one has more sets, the rounds are its: four times 5-20 s, and twice 60 s
        (f"{{superset: [{SETS % 3}, {SETS % 2}], rest: 60 s}}", (50, 50), (140, 200), NONE),
        (f"{{superset: [{SETS % 2}, {SETS % 3}], rest: 60 s}}", (50, 50), (140, 200), NONE),
        # a complex goes on at once, and rests after each set as long as what is asked of it needs
        (f"{{complex: [{UP}, {ROW}], sets: 3, rest: 90 s, load: 40 kg}}", (60, 60), (180, 180), NONE),
        (f"{{complex: [{UP}, {ROW}], sets: 3, load: 40 kg}}", (60, 60), (240, 600), NONE),
        (
            "{complex: [{exercise: front squat, reps: 10}, {exercise: back squat, reps: 2}], sets: 2, load: 40 kg}",
            (48, 96),
            (30, 90),  # by its first lift, which is light
            NONE,
        ),
        # intervals are work and rest in turn, ten times, and none after the last
        ("{intervals: bike, on: 30 s, off: 30 s, for: 10 min}", (300, 300), (270, 270), NONE),
        # every minute: what the clock says, and the warm-up sets before it
        ("{exercise: dip, every: 60 s, for: 5 min, reps: 3, warm-up sets: 2}", (300, 300), NONE, (120, 300)),
    ],
)
def test_what_a_whole_takes(visit, item, work, rest, around):
    assert parts(visit(item).time())[:3] == [work, rest, around]


@pytest.mark.parametrize("fewer", ["push-up", "inverted row"])
def test_a_circuit_goes_on_as_long_as_the_one_with_most_rounds(visit, fewer):
    head = f"athletes: [{{athlete: {{name: Ida}}, adjust: [{{exercise: {fewer}, sets: 2}}]}}]\n"
    held = visit(f"{{circuit: {{every: 90 s, rounds: 4, exercises: [{UP}, {ROW}]}}}}", head=head)
    assert sorted(group.sets.high for group in held.own) == [2, 4]
    assert parts(held.time()) == [(360, 360), NONE, NONE, NONE]


@pytest.mark.parametrize(
    ("line", "seconds"),
    [
        ("dip, sets: 3, reps: 5, tempo: 3-0-1-0", (20, 20)),
        ("dip, sets: 3, reps: 5-8, tempo: 3-0-1-0", (20, 32)),
        ("dip, sets: 3, reps: 12/10/8, tempo: 1-0-1-0", (16, 24)),
        ("step-up, sets: 3, reps: 5, tempo: 3-0-1-0, side: each", (20, 20)),  # one side
        ('"RDL 3-1-X-0", sets: 3, reps: 5', (25, 25)),  # 3 + 1 + 1 + 0
        ('"RDL 3-1-X-0", sets: 3, reps: 5, tempo: 2-0-1-0', (15, 15)),
        ('"RDL 3-1-X-0", sets: 3', None),
        ('"front squat, 3 s pause", sets: 3, reps: 5', None),  # seconds, but no tempo
        ("dip, sets: 3, reps: 5", None),
        ("dip, sets: 3, reps: amrap, tempo: 3-0-1-0", None),
        ("dip, sets: 3, tempo: 3-0-1-0", None),
        ("dip, sets: 3", None),
    ],
)
def test_how_long_one_set_takes_by_its_tempo(visit, line, seconds):
    (group,) = visit(f"{{exercise: {line}}}").own
    found = set_time(group.work, group.seconds_said)
    assert (found and found.ends) == seconds


@pytest.mark.parametrize(
    ("line", "work"),
    [
        ("dip, sets: 2, reps: 3, hold: 4 s", (24, 24)),
        ("side plank, sets: 2, reps: 3, hold: 4 s, side: each", (48, 48)),
        ("side plank, sets: 2, hold: 4 s, side: right", (8, 8)),
        ("farmer's carry, sets: 2, distance: 60 m", (80, 150)),
        ("farmer's carry, sets: 1, distance: 199 m", (199 / 1.5, 199 / 0.8)),
        ("farmer's carry, sets: 1, distance: 200 m", (200 / 8, 200 / 1.5)),  # that far nobody carries
        ("dip, sets: 2", (40, 90)),
        ("dip, every: 2 min, sets: 3, reps: 5, tempo: 1-0-1-0", (30, 30)),
        ("dip, sets: 0-2, reps: 5, tempo: 1-0-1-0", (0, 20)),
        ("dip, sets: 1, reps: 2, tempo: X-0-X-0", (4, 4)),
    ],
)
def test_what_the_work_takes(visit, line, work):
    assert visit(
        f"{{exercise: {line.replace('sets: 0-2', 'sets: {1: 0-2}')}}}"
    ).time().work.ends == pytest.approx(work)


@pytest.mark.parametrize(
    ("line", "rest", "assumed"),
    [
        ("dip, sets: 3, reps: 7", (240, 600), (240, 600)),
        ("dip, sets: 3, reps: 8", (60, 180), (60, 180)),
        ("dip, sets: 3", (60, 600), (60, 600)),
        ("dip, sets: 3, reps: 8, rest: 50 s", (100, 100), NONE),
        ("dip, sets: 1, reps: 8", NONE, NONE),
        ("dip, work: [{sets: 2, reps: 8, rest: 50 s}, {sets: 2, reps: 8}]", (130, 190), (130, 190)),
        ("dip, work: [{sets: 2, reps: 8}, {sets: 2, reps: 8, rest: 50 s}]", (110, 230), (110, 230)),
    ],
)
def test_rest_that_nobody_wrote_is_told_as_assumed(visit, line, rest, assumed):
    time = visit(f"{{exercise: {line}}}").time()
    assert (time.rest.ends, time.assumed_rest.ends) == (rest, assumed)


PLANK = "{exercise: plank, sets: 1, hold: 30 s%s}"


@pytest.mark.parametrize(
    ("items", "rest", "around"),
    [
        ([PLANK % ""], NONE, NONE),
        ([PLANK % "", PLANK % ""], NONE, (60, 180)),
        ([PLANK % "", PLANK % "", PLANK % ""], NONE, (120, 360)),
        ([PLANK % ", rest after: 2 min", PLANK % "", PLANK % ""], (120, 120), (60, 180)),
        ([PLANK % "", PLANK % ", rest after: 2 min"], NONE, (60, 180)),  # nothing comes after the last
        (
            ["{{superset: [{}, {}], rest: 60 s}}".format(PLANK % "", PLANK % ""), PLANK % ""],
            (5, 20),
            (60, 180),
        ),
        (["{{superset: [{}, {}]}}".format(PLANK % "", PLANK % "")] * 2, (10, 40), (60, 180)),
    ],
)
def test_from_one_to_the_next(visit, items, rest, around):
    assert parts(visit(*items).time())[1:3] == [rest, around]


@pytest.mark.parametrize(
    ("words", "seconds"),
    [
        (["bike"], (300, 600)),
        (["5 min bike"], (300, 300)),
        (["5-8 minutes of rowing"], (300, 480)),
        (["5 min bike", "hips"], (300, 600)),  # the hips may take what is left
        (["12 min bike", "hips"], (720, 720)),
        (["5 min bike", "4 min hips"], (540, 540)),
        (["5 min bike, 3 min rope", "4 min hips"], (720, 720)),
        (["5' bike"], (300, 300)),
        (["5'' hold"], (300, 600)),
        (["30 minor steps"], (300, 600)),
        (["1000 min"], (300, 600)),
    ],
)
def test_what_stands_around_it(visit, words, seconds):
    keys = f"    preparation: [{', '.join(f'{chr(34)}{one}{chr(34)}' for one in words)}]\n"
    held = visit(PLANK % "", keys=keys)
    assert held.time().around.ends == seconds
    assert seconds_around(held.session.preparation).ends == seconds


def test_preparation_that_is_asked_for_is_added_where_none_is_written(visit):
    bare = visit(PLANK % "")
    assert bare.time().around == NOTHING
    assert bare.time(prepared=True).around.ends == (300, 600)
    written = visit(PLANK % "", keys="    preparation: 4 min bike\n")
    assert written.time(prepared=True).around.ends == (240, 240)
    down = visit(PLANK % "", keys="    cool-down: 4 min bike\n")
    assert down.time(prepared=True).around.ends == (540, 840)
    two = visit(PLANK % "", PLANK % "")
    assert two.time(change_over=Range(10, 20)).around.ends == (10, 20)


def test_sets_that_cannot_be_read_take_no_time(reviewed, week):
    (one,) = reviewed(
        week({"Gym": ["dip, sets: many, reps: 5", "plank, sets: 2, hold: 10 s, rest: 30 s"]})
    ).files
    time = one.ledger.weeks[0].visits[0].time()
    assert (time.work, time.rest) == (Range(20, 20), Range(30, 30))


@pytest.mark.parametrize("more", ["", "every: 2 min, ", "rest: 30 s, "])
def test_rounds_that_cannot_be_read_take_no_time(reviewed, more):
    circuit = f"{{circuit: {{rounds: many, {more}exercises: [{UP}]}}}}"
    (one,) = reviewed(f"programme: T\nsessions: [{{session: A, exercises: [{circuit}]}}]\n").files
    held = one.ledger.weeks[0].visits[0]
    assert [group.work.sets for group in held.own] == [None]
    assert held.time().total == NOTHING


def test_nothing_takes_no_time():
    assert session_time([]).total == NOTHING
    assert session_time([], around=Range(60, 90)).total == Range(60, 90)


def test_a_line_of_no_pair_takes_its_own_time(visit):
    held = visit(
        "{exercise: dip, sets: 1, hold: 10 s}",
        PLANK % "",
        "{{superset: [{}, {}]}}".format(PLANK % "", PLANK % ""),
    )
    dip, plank, first, second = held.session.prescriptions
    assert [held.time_of(one).work.low for one in (dip, plank, first, second)] == [10, 30, 60, 60]
    assert held.time_of(dip).around == NOTHING


def groups_of(held):
    """What `until_next` and `session_time` take of each group of sets."""
    return [(one.work, one.slot, one.seconds_said) for one in held.own]


# From a set to the next of its lift: all rest of the round, and one set of each other lift


@pytest.mark.parametrize(
    ("superset", "seconds"),
    [
        # 5 x 2 s of push-ups, 5 x 4 s of rows; 60 s + 90 s
        (["push-up, sets: 3, tempo: 1-0-1-0, rest: 60 s", "inverted row, sets: 3, tempo: 2-0-2-0, rest: 90 s"], [(170, 170), (160, 160)]),
        # where none is written, 5-20 s to the next
        (["push-up, sets: 3, tempo: 1-0-1-0", "inverted row, sets: 3, tempo: 2-0-2-0, rest: 90 s"], [(115, 130), (105, 120)]),
        # a set of each of two others
        (["push-up, sets: 2, tempo: 1-0-1-0, rest: 0 s"] * 2 + ["inverted row, sets: 2, tempo: 2-0-2-0, rest: 30 s"], [(60, 60), (60, 60), (50, 50)]),
        # one set is one set, two to three are each as long
        (["push-up, sets: 1, tempo: 1-0-1-0, rest: 0 s", "inverted row, sets: {1: 2-3}, tempo: 2-0-2-0, rest: 0 s"], [(20, 20), (10, 10)]),
        # one that may be left out takes nothing at the least
        (["push-up, sets: {1: 0-1}, tempo: 1-0-1-0, rest: 0 s", "inverted row, sets: 1, tempo: 2-0-2-0, rest: 30 s"], [(50, 50), (30, 40)]),
        (["push-up, sets: {1: 0}, tempo: 1-0-1-0, rest: 10 s", "inverted row, sets: 1, tempo: 2-0-2-0, rest: 30 s"], [(60, 60), (40, 40)]),
    ],
)  # fmt: skip
def test_from_a_set_to_the_next_of_its_lift(visit, superset, seconds):
    held = visit(f"{{superset: [{', '.join(f'{{exercise: {one}, reps: 5}}' for one in superset)}]}}")
    members = groups_of(held)
    paired = held.session.prescriptions[0].paired
    assert [until_next(paired, members, one).ends for one in members] == seconds


def test_the_rest_of_a_round_comes_before_the_next_set_of_its_lift(visit):
    held = visit(f"{{superset: [{UP}, {ROW}], rounds: 3, rest: 2 min}}")
    members = groups_of(held)
    paired = held.session.prescriptions[0].paired
    assert [until_next(paired, members, one).ends for one in members] == [(140, 170)] * 2  # 120, 2 x 5-20, 10


def test_a_lift_whose_sets_cannot_be_read_takes_its_rest_alone(reviewed):
    text = (
        "programme: T\nsessions:\n  - session: A\n    exercises:\n      - superset:\n"
        "          - {exercise: dip, sets: many, reps: 5, rest: 60 s}\n"
        "          - {exercise: inverted row, sets: 3, reps: 5, tempo: 1-0-1-0, rest: 30 s}\n"
    )
    (one,) = reviewed(text).files
    held = one.ledger.weeks[0].visits[0]
    dip, row = members = groups_of(held)
    paired = held.session.prescriptions[0].paired
    assert [until_next(paired, members, each).ends for each in (dip, row)] == [(100, 100), (90, 90)]


def test_from_one_exercise_to_the_next_takes_one_to_three_minutes(visit):
    held = visit(PLANK % "", PLANK % "", PLANK % "")
    lines = [(group.prescription, (timed,)) for group, timed in zip(held.own, groups_of(held), strict=True)]
    assert parts(session_time(lines)) == [(90, 90), NONE, (120, 360), NONE]


# As many rounds as there is time for


AMRAP = "{circuit: {for: %s%s, exercises: [%s]}}"


@pytest.mark.parametrize(
    ("lasts", "keys", "moves", "rounds"),
    [
        ("60 s", "", [UP], (6, 6)),  # 10 s a round
        ("69 s", "", [UP], (6, 6)),  # the one that is begun is not counted
        ("60 s", ", rest: 5 s", [UP], (4, 4)),
        ("60-90 s", "", [UP], (6, 9)),
        ("100 s", "", [UP, ROW], (2, 4)),  # 20 s, and 5-20 s to the next: 25-40 s
        ("100 s", "", [MOVE % ("push-up", ", rest: 10 s"), ROW], (2, 2)),  # 35-50 s
        ("10 s", ", rest: 5 s", [UP], (1, 1)),  # one at least
        ("60 s", "", ["{exercise: side plank, hold: 10 s, side: each}"], (3, 3)),
    ],
)
def test_rounds_that_go_into_the_time(visit, lasts, keys, moves, rounds):
    held = visit(AMRAP % (lasts, keys, ", ".join(moves)), PLANK % "")
    assert {group.sets.ends for group in held.own[:-1]} == {rounds}
    assert held.own[-1].sets.ends == (1, 1)  # a line beside it keeps its own
    seconds = float(lasts.split("-")[0].removesuffix(" s"))
    assert held.time_of(held.session.prescriptions[0]).total.low == seconds
