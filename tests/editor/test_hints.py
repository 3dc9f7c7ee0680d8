"""What is shown behind the coach's words; sums done by hand stand beside the numbers."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.editor.documents.answers import Hint
from spotline.lint.editor.documents.snapshot import Snapshot
from spotline.lint.editor.features.hints import hints
from spotline.tests.steps import growth, steps

Open = Callable[..., Snapshot]

BOTH = frozenset({"sets", "kg"})

PLAN = """\
programme: Test
athlete: {name: Mara, body mass: 70 kg, best lifts: {back squat: {load: 100 kg, tested: 2026-01-02}}}
weeks: 4
sessions:  # two a week
  - session: Lower
    day: monday
    exercises:
      - {exercise: back squat, sets: {1-3: 3, 4: 2}, reps: 5, load: {1-3: 72.5-77.5 %, 4: '75 %'}}
      - {exercise: seated leg curl, sets: 3, reps: 8}  # slowly
  # between
  - session: Upper
    day: thursday
    exercises:
      - {exercise: bench press, sets: 4, reps: 8, load: 80 %}
      - {exercise: cable pushdown, sets: 3, reps: 10}
"""


def all_of(snapshot: Snapshot, shown: frozenset[str] = BOTH) -> list[Hint]:
    return hints(snapshot, 0, len(snapshot.text.content), shown)


def drawn(snapshot: Snapshot, shown: frozenset[str] = BOTH) -> list[str]:
    """The lines that carry hints, with the hints in place."""
    text = snapshot.text.content
    for hint in reversed(all_of(snapshot, shown)):
        text = f"{text[: hint.offset]}<{hint.label}>{text[hint.offset :]}"
    return [line.strip() for line in text.splitlines() if "<" in line]


def test_sets_and_kilograms(opened: Open) -> None:
    # squat: quadriceps, gluteals, adductors 3; curl: hamstrings 3. bench: chest 4, triceps 2; pushdown: triceps 3
    assert drawn(opened(PLAN)) == [
        "sessions:  # two a week<weeks 1-3: triceps 5, chest 4, hamstrings 3, quadriceps 3, 2 more>",
        "- session: Lower<session, weeks 1-3: hamstrings 3, quadriceps 3, gluteals 3, adductors 3>",
        "- {exercise: back squat, sets: {1-3: 3, 4: 2}, reps: 5,"
        " load: {1-3: 72.5-77.5 %<= 72.5-77.5 kg>, 4: '75 %'<= 75 kg>}}",
        "- session: Upper<session: triceps 5, chest 4>",
    ]


def test_each_kind_can_be_turned_off(opened: Open) -> None:
    snapshot = opened(PLAN)
    assert {hint.kind for hint in all_of(snapshot)} == BOTH
    assert {hint.kind for hint in all_of(snapshot, frozenset({"sets"}))} == {"sets"}
    assert {hint.kind for hint in all_of(snapshot, frozenset({"kg"}))} == {"kg"}
    assert all_of(snapshot, frozenset()) == []


def test_only_those_in_a_stretch(opened: Open) -> None:
    snapshot = opened(PLAN)
    start = PLAN.index("  - session: Upper")
    assert [hint.label for hint in hints(snapshot, start, len(PLAN), BOTH)] == ["session: triceps 5, chest 4"]
    (first,) = hints(snapshot, PLAN.index("# two"), PLAN.index("  - session: Lower"), BOTH)
    assert PLAN[: first.offset].endswith("# two a week")


def test_tooltips_hold_the_whole_table(opened: Open) -> None:
    week, lower, squat, _, upper = all_of(opened(PLAN))
    assert "**Week 4:** triceps 5, chest 4, hamstrings 3, quadriceps 2" in week.tooltip
    assert "| triceps | 5 | 3 |\n" in week.tooltip  # 4 x 0.5 + 3; 3 direct
    assert (
        squat.tooltip
        == "Mara: 72.5-77.5 % = 72.5-77.5 kg; best on file: back squat 100 kg, tested 2026-01-02"
    )
    assert "**Week 4:** hamstrings 3, quadriceps 2, gluteals 2, adductors 2" in lower.tooltip
    assert "| front shoulder | 2 | 0 |" in upper.tooltip  # helps in the bench press: 4 x 0.5


@pytest.mark.parametrize(
    ("line", "label"),
    [
        ("back squat, sets: 3, reps: 5, load: 60 kg", "= 60 % 1RM"),
        ("back squat, sets: 3, reps: 5, load: 60-70 kg", "= 60-70 % 1RM"),
        ("back squat, sets: 3, reps: 5, load: 60/65/70 kg", "= 60/65/70 % 1RM"),
        ("back squat, sets: 3, reps: 5, load: 66.7 %", "= 66.5 kg"),  # steps of 0.5 kg on a bar
        ("leg press, sets: 3, reps: 5, load: 80 %", "= 56 kg"),  # of 70 kg
        # nuzzo-2024: 10 repetitions at 75 + 5 x 2.37 / 2.62 = 79.5 % on the main curve
        ("back squat, sets: 3, load: 10RM", "= 79.5 kg"),
        ("pull-up, sets: 3, reps: 5, load: bodyweight", "= 88 % 1RM"),  # 70 of 80 kg
        ("pull-up, sets: 3, reps: 5, load: bodyweight + 2 kg", "= 90 % 1RM"),
    ],
)
def test_what_a_load_is_worth(opened: Open, line: str, label: str) -> None:
    lifts = "{back squat: 100 kg, leg press: 70 kg, pull-up: bodyweight + 10 kg}"
    head = f"programme: T\nathlete: {{name: A, body mass: 70 kg, best lifts: {lifts}}}\n"
    text = f"{head}sessions: [{{session: S, exercises: [{{exercise: {line}}}]}}]\n"
    (hint,) = all_of(opened(text), frozenset({"kg"}))
    assert hint.label == label
    assert text[: hint.offset].endswith(line.partition("load: ")[2])


@pytest.mark.parametrize(
    "line",
    [
        "front squat, sets: 3, reps: 5, load: 80 %",
        "back squat, sets: 3, reps: 5, load: red band",
        "back squat, sets: 3, reps: 5",
        "nothing known, sets: 3, reps: 5, load: 80 %",
    ],
)
def test_no_worth_is_guessed(opened: Open, line: str) -> None:
    text = f"programme: T\nathlete: {{name: A, best lifts: {{back squat: 100 kg}}}}\nsessions: [{{session: S, exercises: [{{exercise: {line}}}]}}]\n"
    assert all_of(opened(text), frozenset({"kg"})) == []


def squad(names: dict[str, str]) -> str:
    athletes = ", ".join(
        f"{{name: {name}{f', best lifts: {{back squat: {lift}}}' if lift else ''}}}"
        for name, lift in names.items()
    )
    return (
        f"programme: T\nathletes: [{athletes}]\nsessions:\n  - session: S\n    exercises:\n"
        "      - {exercise: back squat, sets: 3, reps: 5, load: 75 %}\n"
    )


@pytest.mark.parametrize(
    ("names", "label"),
    [
        ({"Ada": "80 kg", "Bo": "120 kg"}, "= Ada 60 kg, Bo 90 kg"),
        ({"Ada": "80 kg", "Bo": "80 kg"}, "= 60 kg"),
        ({"Ada": "80 kg", "Bo": ""}, "= Ada 60 kg"),
        ({"A": "80 kg", "B": "100 kg", "C": "120 kg", "D": "140 kg"}, "= A 60 kg, B 75 kg, C 90 kg, ..."),
    ],
)
def test_several_athletes(opened: Open, names: dict[str, str], label: str) -> None:
    (hint,) = all_of(opened(squad(names)), frozenset({"kg"}))
    assert hint.label == label
    assert hint.tooltip.count("back squat") == sum(bool(lift) for lift in names.values())


def test_athletes_whose_sets_differ(opened: Open) -> None:
    text = squad({"Ada": "", "Bo": ""}).replace(
        "{name: Bo}", "{athlete: {name: Bo}, adjust: [{exercise: back squat, sets: 2}]}"
    )
    week, session = all_of(opened(text))
    assert week.label == "Ada: quadriceps 3, gluteals 3, adductors 3"
    assert session.label == "session, Ada: quadriceps 3, gluteals 3, adductors 3"
    assert "**Bo:** quadriceps 2, gluteals 2, adductors 2" in session.tooltip


def test_a_load_shared_by_several_lifts(opened: Open) -> None:
    text = """\
programme: T
athlete: {name: A, best lifts: {back squat: 100 kg, bench press: 60 kg}}
shared: {e: &e {reps: 5, load: 80 %}}
sessions: [{session: S, exercises: [{exercise: back squat, sets: 3, <<: *e}, {exercise: bench press, sets: 3, <<: *e}]}]
"""
    (hint,) = all_of(opened(text), frozenset({"kg"}))
    assert hint.label == "= back squat 80 kg, bench press 48 kg"


def test_blocks_each_have_their_weeks(opened: Open) -> None:
    text = """\
programme: T
blocks:
  - name: One
    weeks: 2
    sessions:
      - {session: A, exercises: [{exercise: leg extension, sets: 3, reps: 5}]}
  - name: Two
    weeks: 1
    sessions: [{session: B, exercises: [{exercise: leg extension, sets: 2}]}, {session: C, exercises: [{exercise: dumbbell fly, sets: 2}]}]
  - {name: Three, weeks: 1, sessions: [{activity: match, day: saturday}]}
"""
    assert drawn(opened(text)) == [
        "sessions:<a week: quadriceps 3>",
        "- {session: A<session: quadriceps 3>, exercises: [{exercise: leg extension, sets: 3, reps: 5}]}",
        "sessions: [{session: B<session: quadriceps 2>, exercises: [{exercise: leg extension, sets: 2}]},"
        " {session: C<session: chest 2>, exercises: [{exercise: dumbbell fly, sets: 2}]}]"
        "<a week: quadriceps 2, chest 2>",
    ]


def test_aliases_carry_their_hints_once(opened: Open) -> None:
    text = """\
programme: T
shared:
  s: &s
    session: A
    exercises:
      - {exercise: leg extension, sets: 3}
blocks:
  - name: One
    weeks: 2
    sessions:
      - *s
  - name: Two
    weeks: 2
    sessions:
      - *s
"""
    assert drawn(opened(text)) == ["sessions:<a week: quadriceps 3>", "- *s<session: quadriceps 3>"] * 2


def test_groups_within_groups_are_said_once(opened: Open) -> None:
    text = "programme: T\nsessions: [{session: S, exercises: [{exercise: barbell curl, sets: 3}]}]\n"
    assert all_of(opened(text))[0].label == "session: biceps 3"  # the elbow flexors get no more than that


def test_a_session_that_trains_nothing_has_none(opened: Open) -> None:
    text = "programme: T\nsessions: [{session: S, exercises: [{exercise: nothing known, sets: 3}]}]\n"
    assert all_of(opened(text)) == []


# While the text cannot be read


def test_hints_stay_while_the_text_cannot_be_read(opened: Open) -> None:
    now = PLAN.replace("reps: 8}  # slowly", "reps: [8}  # slowly")
    lines = drawn(opened(PLAN, now=now))
    assert any("72.5-77.5 %<= 72.5-77.5 kg>" in line for line in lines)
    totals = "<session, weeks 1-3: hamstrings 3, quadriceps 3, gluteals 3, adductors 3>"
    assert f"- session: Lower{totals}" in lines
    now = PLAN.replace("72.5-77.5 %", "[72.5-77.5 %")
    assert "= 72.5-77.5 kg" in [hint.label for hint in all_of(opened(PLAN, now=now))]
    now = PLAN.replace("'70 %'}}", "'7")
    assert "= 70 kg" not in [hint.label for hint in all_of(opened(PLAN, now=now))]  # rewritten


def test_a_text_that_was_never_readable_has_none(opened: Open) -> None:
    assert all_of(opened("programme: [\n")) == []
    assert all_of(opened("name: A\n", name="a.athlete.yaml")) == []


def long(opened: Open, sessions: int) -> Snapshot:
    """A programme of eight weeks, of 30 lines a session."""
    lines = "".join(
        f"      - exercise: {name}\n        sets: {{1-4: 3, 5-8: 4}}\n        reps: 5-8\n        load: {{1-4: 75 %, 5-8: 80 %}}\n"
        for name in (
            "back squat",
            "bench press",
            "seated leg curl",
            "lat pulldown",
            "leg press",
            "barbell curl",
            "deadlift",
        )
    )
    head = "programme: Long\nathlete: {name: A, best lifts: {back squat: 100 kg}}\nweeks: 8\nsessions:\n"
    return opened(head + "".join(f"  - session: S{one}\n    exercises:\n{lines}" for one in range(sessions)))


def test_hints_take_few_steps_once_the_weeks_are_counted(opened: Open) -> None:
    snapshot = long(opened, 4)
    assert steps(lambda: all_of(snapshot)) < 20_000  # a little more than a hundred for each line


def test_the_steps_grow_with_the_programme_and_no_faster(opened: Open) -> None:
    def hinting(sessions: int) -> Callable[[], object]:
        snapshot = long(opened, sessions)
        return lambda: all_of(snapshot)

    assert growth(hinting, 8) < 2.1


def test_nothing_hangs_behind_the_last_exercise_nor_moves_while_a_line_is_added(opened: Open) -> None:
    """Key by key, a line is written below the last one: the totals stay at the names of sessions and week."""
    line = "      - {exercise: lateral raise, sets: 3, reps: 12}\n"
    for typed in range(0, len(line) + 1, 7):
        snapshot = opened(PLAN, now=PLAN + line[:typed])
        drawn_at = [text.partition("<")[0] for text in drawn(snapshot, frozenset({"sets"}))]
        assert drawn_at == ["sessions:  # two a week", "- session: Lower", "- session: Upper"], line[:typed]
