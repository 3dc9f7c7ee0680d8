"""What is proposed clears what it aims at, brings nothing new, and costs least; nothing dangerous is proposed."""

from __future__ import annotations

import re
from collections.abc import Iterable
from itertools import combinations
from pathlib import Path

import pytest

from spotline.lint.project.discovery import discovered
from spotline.lint.project.review import reviewed
from spotline.lint.project.workspace import Workspace
from spotline.lint.solving.amounts import fewer_sets, more_sets, paired, taken_out
from spotline.lint.solving.candidates import Candidates
from spotline.lint.solving.conflict import smallest
from spotline.lint.solving.days import other_days
from spotline.lint.solving.ground import Ground
from spotline.lint.solving.judge import Judge, Seen, marks_of, unshifted, with_spans
from spotline.lint.solving.lines import Plan
from spotline.lint.solving.minutes import fits
from spotline.lint.solving.search import Attempt, Search, finished
from spotline.lint.solving.solve import Ask, NothingToSolveError, Solution, solve
from spotline.lint.solving.steps import EditStep, together
from spotline.tests.conftest import TODAY
from spotline.tests.solving.faulty import FAULTS, NO_CURLS, SOUND, faulty, line_of


@pytest.fixture(autouse=True)
def repository(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """An empty repository, which is the working folder, and a home of its own for the state."""
    (tmp_path / "here" / ".git").mkdir(parents=True)
    monkeypatch.setenv("XDG_STATE_HOME", str(tmp_path / "state"))
    monkeypatch.chdir(tmp_path / "here")
    return tmp_path / "here"


def written(text: str, name: str = "plan.programme.yaml") -> str:
    Path(name).write_bytes(text.encode())
    return name


def solved(text: str, rule: str = "", *, line: int = 0, keep: Iterable[str] = ()) -> Solution:
    return solve(written(text), TODAY, Ask(line, rule, tuple(keep)))


def labels(solution: Solution) -> list[list[str]]:
    return [[step.label for step in card.steps] for card in solution.cards]


def search_for(text: str, rule: str) -> Search:
    """The search for all findings of a rule, not yet run."""
    path = written(text)
    workspace = Workspace(TODAY)
    (review,) = reviewed(workspace, discovered(workspace, [path]))
    judge = Judge(path, TODAY, {})
    before = judge.look(text)
    assert review.reading is not None
    found = [Seen(one) for one in review.findings if one.rule == rule]
    assert found, [one.rule for one in review.findings]
    marks = [mark for seen in found for mark in marks_of(seen)]
    before.seen.update((mark, seen) for seen in found for mark in marks_of(seen))
    return Search(Ground(Plan(review.reading.text, review.ledgers), before), judge, marks)


# What is proposed


@pytest.mark.parametrize("fault", FAULTS)
def test_each_proposal_clears_its_aim_and_brings_nothing_new(fault: str) -> None:
    text, rule = FAULTS[fault]
    solution = solved(text, rule)
    assert solution.cards, solution.stays[0].why
    judge = Judge("plan.programme.yaml", TODAY, {})
    for card in solution.cards:
        before, after = judge.look(text), judge.look(card.after)
        assert after.brought(before) == []
        aims = [mark for finding in card.clears for mark in marks_of(Seen(finding))]
        assert aims
        assert after.left(aims) == []


@pytest.mark.parametrize("fault", FAULTS)
def test_what_is_mended_once_offers_nothing_more(fault: str) -> None:
    text, rule = FAULTS[fault]
    after = solved(text, rule).cards[0].after
    while any(one.rule == rule for one in _findings(after)):  # the fault may stand in several places
        further = solved(after, rule)
        assert further.cards, further.stays[0].why
        after = further.cards[0].after
    with pytest.raises(NothingToSolveError):
        solved(after, rule)


def _findings(text: str) -> list[Seen]:
    return list(Judge(written(text), TODAY, {}).look(text).seen.values())


@pytest.mark.parametrize("fault", FAULTS)
@pytest.mark.parametrize("end", ["\n", "\r\n"])
def test_every_line_that_is_not_named_stays_byte_for_byte(fault: str, end: str) -> None:
    text, rule = FAULTS[fault]
    text = text.replace("\n", end)
    for card in solved(text, rule).cards:
        old, new = text.split(end), card.after.split(end)
        assert "\n" not in "".join(new)
        gone = [line for line in old if line not in new]
        come = [line for line in new if line not in old]
        assert len(gone) <= sum(len(step.touches) + 1 for step in card.steps)
        assert len(come) <= sum(len(step.touches) + 2 for step in card.steps)
        assert [one for one in old if one not in gone] == [one for one in new if one not in come]
        head = text.index("sessions:")
        assert card.after[:head] == text[:head]  # no fact, no date, no best lift, no ban


@pytest.mark.parametrize("fault", FAULTS)
def test_the_order_of_keys_and_line_ends_change_no_answer(fault: str) -> None:
    text, rule = FAULTS[fault]
    head, sessions = text.split("sessions:")
    turned = "\n".join(reversed(head.rstrip("\n").split("\n")))
    assert labels(solved(f"{turned}\nsessions:{sessions}", rule)) == labels(solved(text, rule))


def test_the_cheapest_repairs_are_those_that_a_coach_would_choose() -> None:
    first = {fault: labels(solved(*FAULTS[fault]))[0] for fault in FAULTS}
    assert first["no knee flexion"] == [
        "Romanian deadlift (Lower A) raised to 4 sets",
        "seated leg curl in place of leg extension (Lower B)",
    ]
    assert first["calves only with bent knees"] == [
        "standing calf raise in place of seated calf raise (Lower B)"
    ]
    assert first["much pressing"] == ["lat pulldown (Upper A) raised to 3 sets"]
    assert first["legs two days running"] == ["Lower B moved to Saturday"]
    assert first["too many repetitions for the load"] == ["back squat (Lower A): write 74 %"]
    assert first["one heavy week"] == ["bench press (Upper A) cut to 10 sets in week 3"]
    assert first["little rest"] == ["back squat (Lower A): rest 3 min, as other heavy lifts"]


def test_proposals_differ_in_kind_and_have_no_step_too_many() -> None:
    for text, rule in FAULTS.values():
        search = search_for(text, rule)
        found = finished(search.run())
        for number, one in enumerate(found):
            known = {kind for other in found[:number] for kind in other.kinds}
            assert not number or one.kinds - known
            assert [other.cost for other in found[: number + 1]] == sorted(
                other.cost for other in found[: number + 1]
            )


# Nothing cheaper


SHORT = """\
programme: Short
athlete: {{name: Bo, level: intermediate, minutes: 60}}
goal: hypertrophy
focus: [{focus}]
weeks: 4
sessions:
  - session: One
    day: monday
    exercises:
{one}
  - session: Two
    day: {day}
    exercises:
{two}
"""


def short(one: str, two: str, *, focus: str = "legs", day: str = "thursday") -> str:
    def lines(several: str) -> str:
        named = (each.rsplit(" ", 1) for each in several.split(", "))
        return "\n".join(
            f"      - {{exercise: {name}, sets: {sets}, reps: 8-12, rir: 2, rest: 2 min}}"
            for name, sets in named
        )

    return SHORT.format(one=lines(one), two=lines(two), focus=focus, day=day)


SMALL = [
    (
        short("back squat 3, Romanian deadlift 3, leg extension 2", "leg press 3, hip thrust 3"),
        "knee-flexion-missing",
    ),
    (short("back squat 12, seated leg curl 3", "Romanian deadlift 3, leg press 3"), "exercise-sets-high"),
    (
        short(
            "bench press 8, dumbbell fly 6, seated cable row 8",
            "dip 7, cable fly 5, lat pulldown 8",
            focus="upper body",
        ),
        "weekly-sets-over-limit",
    ),
    (
        short(
            "bench press 5, dumbbell fly 3, seated cable row 2",
            "dip 5, lat pulldown 2, barbell curl 3",
            focus="upper body",
        ),
        "antagonist-imbalance",
    ),
    (
        short(
            "back squat 4, Romanian deadlift 4",
            "leg press 4, seated leg curl 4, seated calf raise 3",
            day="tuesday",
        ).replace("rir: 2", "rir: 1"),
        "sessions-too-close",
    ),
    (
        short("back squat 3, seated calf raise 3", "Romanian deadlift 3, seated leg curl 3"),
        "straight-knee-calf-missing",
    ),
    (
        short("back squat 3, seated leg curl 3", "Romanian deadlift 3, leg press 3").replace(
            "back squat, sets: 3", "back squat, sets: {1-2: 3, 3: 12, 4: 3}"
        ),
        "exercise-sets-high",
    ),
    (
        short("back squat 3, leg curl 2, leg extension 2", "Romanian deadlift 3, leg press 2")
        .replace("weeks: 4", "weeks: 8")
        .replace("leg curl,", "seated leg curl, in weeks: 1-4,")
        .replace("leg extension,", "leg extension, in weeks: 5-8,"),
        "knee-flexion-missing",
    ),
    (
        short(
            "bench press 3, lat pulldown 3, leg extension 3, barbell curl 3", "back squat 3, leg curl 3"
        ).replace("minutes: 60", "minutes: 22"),
        "session-too-long",
    ),
]


@pytest.mark.parametrize("number", range(len(SMALL)))
def test_brute_force_finds_nothing_cheaper_on_up_to_six_lines(number: int) -> None:
    text, rule = SMALL[number]
    search = search_for(text, rule)
    plan, judge, before, aims = search.plan, search.judge, search.before, search.aims
    every = {step.key: step for seen in before.left(aims) for step in Candidates(plan, seen, own=True).steps}
    weeks = {week for seen in before.left(aims) for week in seen.finding.weeks}
    for held in plan.sessions:
        several: list[EditStep] = [*paired(plan, held), *other_days(plan, held, weeks)]
        for line in held.lines:
            several += [*fewer_sets(plan, line, "", weeks), *more_sets(plan, line, "", weeks)]
            several += taken_out(plan, line, held, weeks)
        every |= {step.key: step for step in several if step.key not in every}
    answer = finished(search.run(1))
    assert answer, rule
    steps = sorted(every.values(), key=lambda one: one.cost)
    tried = 0
    for several_steps in [*((one,) for one in steps), *combinations(steps, 2)]:
        cost = tuple(sum(step.cost[at] for step in several_steps) for at in range(3))
        if cost >= answer[0].cost or len({at for one in several_steps for at in one.touches}) < len(
            several_steps
        ):
            continue
        spans = together(several_steps)
        if spans is None:
            continue
        tried += 1
        verdict = judge.look(text, spans)
        sound = verdict.judged and not verdict.left(aims) and not verdict.brought(before)
        sound = sound and fits(plan, before.left(aims), verdict)
        assert not sound, [one.label for one in several_steps]
    assert tried or answer[0].cost == min(one.cost for one in steps)


# What is never proposed


LOADED = {
    "many repetitions": FAULTS["too many repetitions for the load"],
    "little rest": FAULTS["little rest"],
    "one week typed wrong": (
        faulty(
            (
                "back squat, sets: 3, reps: 6-8, rir: 2,",
                "back squat, sets: 3, reps: 5, load: {1: 75 %, 2: 95 %, 3: 78 %, 4: 80 %},",
            )
        ),
        "load-step-large",
    ),
}
"""Faults in programmes that state loads, each of which has a repair."""


def loads_of(text: str) -> list[float]:
    return [float(one) for one in re.findall(r"([0-9.]+) %", text)]


@pytest.mark.parametrize("fault", LOADED)
def test_no_load_ever_rises(fault: str) -> None:
    text, rule = LOADED[fault]
    cards = solved(text, rule).cards
    assert cards
    for card in cards:
        before, after = loads_of(text), loads_of(card.after)
        assert len(before) == len(after)
        assert all(now <= was for was, now in zip(before, after, strict=True))


def test_where_only_a_heavier_load_would_do_nothing_is_proposed() -> None:
    text = faulty(
        ("back squat, sets: 3, reps: 6-8, rir: 2,", "back squat, sets: 3, reps: 3, rir: 0, load: 70 %,")
    )
    solution = solved(text, "effort-against-load")
    assert solution.cards == []
    assert solution.stays[0].why


def test_no_more_work_for_what_is_spared() -> None:
    spared = "minutes: 70, protect: [{movement: knee flexion against load, advised by: physiotherapist}]"
    solution = solved(NO_CURLS.replace("minutes: 70", spared))
    for card in solution.cards:
        assert "curl, sets: 3, reps: 10-15, rir: 2" not in card.after


def test_nothing_is_added_above_the_level_or_without_the_equipment() -> None:
    text = NO_CURLS.replace("leg curl machine, ", "").replace("level: intermediate", "level: novice")
    for card in solved(text, "knee-flexion-missing").cards:
        assert "Nordic" not in card.after
        assert "exercise: seated leg curl" not in card.after


def test_rehabilitation_is_left_to_the_clinician() -> None:
    stage = "goal: hypertrophy\nrehabilitation: {stage: return to full training, advised by: physiotherapist, until: 2026-03-01}"
    text = faulty(
        ("goal: hypertrophy", stage),
        (
            "back squat, sets: 3, reps: 6-8, rir: 2, rest: 3 min",
            "back squat, sets: 3, reps: 3-5, rir: 2, rest: 60 s",
        ),
    )
    solution = solved(text)
    assert all(not step.adds_work for card in solution.cards for step in card.steps)


@pytest.mark.parametrize(("age", "word"), [("15", "junior"), ("71", "older")])
def test_more_work_for_the_young_and_the_old_comes_with_a_word_of_caution(age: str, word: str) -> None:
    supervised = f"level: intermediate, age: {age}, supervision: every session"
    solution = solved(NO_CURLS.replace("level: intermediate", supervised), "knee-flexion-missing")
    assert solution.cards
    assert word in solution.cards[0].caution
    assert solved(NO_CURLS, "knee-flexion-missing").cards[0].caution == ""


def test_what_only_the_coach_can_know_is_asked_for() -> None:
    solution = solved(faulty(("bench press, sets: 3", "bench press, sets: 33")), "number-implausible")
    assert solution.cards == []
    assert "Only you know" in solution.stays[0].why[0]


def test_what_is_kept_stays() -> None:
    text, rule = FAULTS["calves only with bent knees"]
    for card in solved(text, rule, keep=["seated calf", "Lower B"]).cards:
        assert line_of("seated calf raise") in card.after
        lower_b = text[text.index("  - session: Lower B") : text.index("  - session: Upper B")]
        assert lower_b in card.after


def test_words_to_keep_that_name_nothing_are_said() -> None:
    assert solved(NO_CURLS, "knee-flexion-missing", keep=["zercher"]).kept_in_vain == ["zercher"]


# Files of every kind


def test_lines_used_elsewhere_too_are_left_alone_and_said() -> None:
    fly = line_of("dumbbell fly").strip()[2:].replace("sets: 2", "sets: 12")
    text = faulty(
        ("sessions:\n", f"shared:\n  - &fly {fly}\nsessions:\n"),
        (line_of("dumbbell fly").strip()[2:], "*fly"),
    )
    solution = solved(text, "exercise-sets-high")
    assert solution.cards == []
    assert any("used elsewhere" in why for why in solution.stays[0].why)


def test_a_line_in_rows_is_mended_in_its_rows() -> None:
    rows = """\
      - exercise: dumbbell fly
        sets: 12   # since May
        reps: 12-15
        rir: 1
        rest: 90 s
"""
    solution = solved(faulty((line_of("dumbbell fly"), rows)), "exercise-sets-high")
    assert "        sets: 10   # since May\n" in solution.cards[0].after


def test_a_remark_of_the_coach_makes_a_line_dearer() -> None:
    text, rule = FAULTS["much pressing"]
    row = line_of("lat pulldown").replace("sets: 3", "sets: 2").rstrip("\n")
    remarked = text.replace(row, f"{row}  # her shoulder likes two")
    assert labels(solved(remarked, rule))[0] != labels(solved(text, rule))[0]


def test_a_squad_is_judged_for_everybody() -> None:
    strong = "{name: Bo, level: intermediate, minutes: 70}"
    novice = "{name: Cy, level: novice, minutes: 70}"
    head = re.sub(r"athlete: .*\n", f"athletes: [{strong}, {novice}]\n", NO_CURLS)
    for card in solved(head, "knee-flexion-missing").cards:
        assert "Nordic" not in card.after


def test_what_does_not_suit_one_of_a_squad_changes_for_that_one_alone() -> None:
    spared = "protect: [{movement: hip hinge, advised by: physician}], clearance on file: 2025-12-20"
    squad = f"athletes: [{{name: Bo, level: intermediate}}, {{name: Cy, level: intermediate, {spared}}}]\n"
    text = re.sub(r"athlete: .*\n", squad, SOUND)
    solution = solved(text, "protected-area-loaded")
    assert solution.cards
    first = solution.cards[0]
    assert first.steps[0].label.startswith("for Cy: ")
    assert first.after[first.after.index("sessions:") :] == text[text.index("sessions:") :]


def test_an_easy_week_never_asks_for_more_than_a_line_does() -> None:
    text = SOUND.replace("weeks: 4\n", "weeks: 4\ndeload: [4]\n").replace("rir: 2", "rir: 5")
    solution = solved(text, "deload-without-cut")
    assert "everything: {4: {sets: half, rir: 5}}" in solution.cards[0].after


@pytest.mark.parametrize(
    ("name", "text", "said"),
    [
        ("plan.programme.yaml", "programme: [", "cannot be read"),
        ("bo.athlete.yaml", "name: Bo\n", "is no programme"),
        ("none.programme.yaml", None, "cannot be"),
    ],
)
def test_what_cannot_be_worked_on_is_said_in_a_sentence(name: str, text: str | None, said: str) -> None:
    if text is not None:
        written(text, name)
    with pytest.raises(NothingToSolveError, match=said):
        solve(name, TODAY, Ask())


def test_a_sound_programme_needs_nothing() -> None:
    solution = solved(SOUND)
    assert (solution.cards, solution.stays) == ([], [])


def test_all_that_blocks_is_cleared_in_one_proposal() -> None:
    text = NO_CURLS.replace(
        "back squat, sets: 3, reps: 6-8, rir: 2,", "back squat, sets: 3, reps: 10-12, load: 90 %,"
    )
    (card,) = solved(text).cards
    assert {one.rule for one in card.clears} >= {"knee-flexion-missing", "more-reps-than-load-allows"}


# Why there is none


FULL = short("back squat 4, Romanian deadlift 4", "leg press 4, hip thrust 4").replace(
    "minutes: 60", "minutes: 21"
)
"""Two sessions that fill their time; nothing of them bends the knee."""


def test_where_there_is_none_the_demands_that_clash_are_named() -> None:
    solution = solved(FULL, "knee-flexion-missing", keep=["squat", "Romanian", "press", "thrust"])
    assert solution.cards == []
    why = " ".join(solution.stays[0].why)
    assert "goes against the athlete's 21 min for One (session-too-long)" in why
    assert re.search(
        r"Nearest: .* leg curl added to (One|Two)\. That takes: 2[2-9] min for (One|Two) instead of 21 ", why
    )


def test_what_may_give_way_is_found_where_less_is_kept() -> None:
    (first, *_) = labels(solved(FULL, "knee-flexion-missing"))
    assert any("leg curl" in label for label in first)


def test_the_smallest_set_of_demands_breaks_every_attempt() -> None:
    def demand(rule: str) -> Seen:
        return next(seen for seen in seen_of if seen.rule == rule)

    text = faulty(("minutes: 70", "minutes: 24"), (line_of("standing calf raise"), ""))
    seen_of = _findings(text)
    long, calf = demand("session-too-long"), demand("straight-knee-calf-missing")
    attempts = [Attempt((), [long]), Attempt((), [long, calf])]
    assert smallest(attempts) == [long]
    assert smallest([*attempts, Attempt((), [calf])]) == [long, calf]


def test_an_offset_is_led_back_through_edits() -> None:
    text, spans = "abcdefgh", ((1, 2, "XYZ"), (4, 4, "--"), (6, 7, ""))
    after = with_spans(text, spans)
    assert after == "aXYZcd--efh"
    assert [text[unshifted(after.index(one), spans)] for one in "acdefh"] == list("acdefh")
