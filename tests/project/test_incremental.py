"""A review that builds on the last one of the same file says what a fresh one says, and looks at what is new."""

from __future__ import annotations

import gc
import random
import re
from collections.abc import Callable, Iterator
from datetime import date
from pathlib import Path
from typing import Any

import pytest

from spotline.lint.counting.ledger import Ledger
from spotline.lint.counting.tally import Visit
from spotline.lint.engine.limits import Limits
from spotline.lint.engine.registry import Rule
from spotline.lint.findings.finding import DraftFinding, Finding, found
from spotline.lint.project.overlay import Overlay
from spotline.lint.project.results import FileReview
from spotline.lint.project.review import review_on
from spotline.lint.project.workspace import Workspace
from spotline.lint.syntax.builder import parse
from spotline.lint.syntax.cache import MOST_COMPARED, Fingerprint
from spotline.lint.text.places import Place

ROOT = Path(__file__).parent.parent.parent
DAY = date(2026, 1, 5)

BLOCKS = """\
programme: Two blocks
athlete: {name: Orla, level: intermediate, best lifts: {back squat: 100 kg}}
goal: hypertrophy
blocks:
  - name: One
    weeks: 2
    sessions:
      - session: Lower
        day: monday
        exercises:
          - {exercise: back squat, sets: 3, reps: 8, rir: 2}
          - {exercise: seated leg curl, sets: 3, reps: 6-8, rir: 2}
      - session: Upper
        day: thursday
        exercises:
          - {exercise: bench press, sets: 3, reps: 8, rir: 2}
          - {exercise: seated cable row, sets: 3, reps: 6-8, rir: 2}
  - name: Two
    weeks: 2
    sessions:
      - session: Lower
        day: monday
        exercises:
          - {exercise: back squat, sets: 3, reps: 8, rir: 2}
          - {exercise: seated leg curl, sets: 3, reps: 6-8, rir: 2}
"""


class Typed:
    """A programme as it is typed: each text is reviewed in one workspace, building on the last."""

    def __init__(self, folder: Path, rules: list[Rule] | None = None, name: str = "plan") -> None:
        self.path = str(folder / f"{name}.programme.yaml")
        self.overlay = Overlay()
        self.workspace = Workspace(DAY, rules, self.overlay, incremental=True)

    def now(self, text: str) -> FileReview:
        self.overlay.open(self.path, text)
        return review_on(self.workspace, [self.path]).files[0]

    def afresh(self, text: str) -> FileReview:
        overlay = Overlay()
        overlay.open(self.path, text)
        return review_on(Workspace(DAY, self.workspace.rules, overlay), [self.path]).files[0]


@pytest.fixture
def typed(tmp_path: Path) -> Typed:
    (tmp_path / ".git").mkdir()
    return Typed(tmp_path)


def all_of(finding: Finding) -> tuple[object, ...]:
    """All that a finding says, its places as they are now."""
    paths = [finding.place, *(one.place for one in finding.related), *(one.place for one in finding.edits)]
    return (
        finding.rule,
        finding.severity,
        [
            (at_path.text.name, at_path.line, at_path.column, at_path.excerpt, len(at_path.through))
            for at_path in paths
        ],
        (finding.counted, finding.wanted, finding.change, finding.where, finding.subject),
        [one.words for one in finding.related],
        [(one.words, one.label) for one in finding.edits],
        (finding.weeks, finding.told, finding.is_worst, finding.athletes),
    )


def everything(one: FileReview) -> tuple[object, ...]:
    assert one.faults == [], [fault.words for fault in one.faults]
    return [all_of(each) for each in one.findings], [all_of(each.finding) for each in one.waived]


# The same findings


PROGRAMMES = [
    *sorted((ROOT / "examples").rglob("*.programme.yaml")),
    *sorted((ROOT / "tests" / "published").glob("*.programme.yaml")),
]

VALUES = (
    *("back squat", "seated leg curl", "plank", "squatt", "30", "3", "8-12", "12/10/8", "80 %", "100 kg"),
    *("2 min", "45 s", "monday", "{1: 3, 2: 4}", "each", "left", "strength", "general health", "true"),
    *("rehab", "ü 💪", "[legs]", "{stage: early, advised by: physiotherapist, until: 2027-01-01}", "0"),
    *("deload week", "2026-03-02", "", "*a", "&a 3", "sick \u2028 since"),
)
SCRAPS = ("{", "[", ": ", "- ", "#", '"', "'", "\n", "\n  ", "<<: *a", "|", "x", "\r\n", "\t", "\ufeff")


def edited(text: str, choose: random.Random) -> str:
    """The text after one edit, such as a coach makes, or a slip of the finger."""
    lines = text.split("\n")
    at, to, kind = choose.randrange(len(lines)), choose.randrange(len(lines)), choose.random()
    if kind < 0.12:
        del lines[at]
    elif kind < 0.24:
        lines.insert(to, lines[at])
    elif kind < 0.36:
        lines[to:to] = lines[at : at + choose.randrange(2, 12)]
    elif kind < 0.70:
        key, colon, _ = lines[at].partition(": ")
        lines[at] = f"{key}{colon}{choose.choice(VALUES)}" if colon else lines[at]
    elif kind < 0.85:
        numbers = list(re.finditer(r"\d+", text)) or [None]
        number = choose.choice(numbers)
        if number is not None:
            new = str(choose.choice((1, 2, 3, 4, 5, 6, 8, 12, 20, 40)))
            return text[: number.start()] + new + text[number.end() :]
    else:
        here = choose.randrange(len(text) + 1)
        gone = choose.randrange(1, 6) if choose.random() < 0.5 else 0
        return text[:here] + ("" if gone else choose.choice(SCRAPS)) + text[here + gone :]
    return "\n".join(lines)


@pytest.mark.parametrize("seed", range(12))
def test_whatever_is_typed_the_review_is_that_of_the_text(seed: int, tmp_path: Path) -> None:
    (tmp_path / ".git").mkdir()
    choose = random.Random(seed)
    start = choose.choice(PROGRAMMES)
    for beside in start.parent.parent.rglob("*.athlete.yaml"):
        at = tmp_path / beside.relative_to(start.parent.parent)
        at.parent.mkdir(parents=True, exist_ok=True)
        at.write_bytes(beside.read_bytes())
    folder = tmp_path / start.parent.name
    folder.mkdir(exist_ok=True)
    typed = Typed(folder)
    texts = [start.read_text(encoding="utf-8")]
    for step in range(30):
        text = texts[-1]
        assert everything(typed.now(text)) == everything(typed.afresh(text)), f"step {step}:\n{text}"
        again = choose.random() < 0.25
        texts.append(edited(choose.choice(texts[-6:]) if again else text, choose))


def test_the_same_for_a_squad_with_what_is_adjusted_for_each(typed: Typed) -> None:
    squad = BLOCKS.replace(
        "athlete: {name: Orla, level: intermediate, best lifts: {back squat: 100 kg}}\n",
        "athletes:\n"
        "  - athlete: {name: Orla, protect: [{area: knee, advised by: physiotherapist}]}\n"
        "    adjust: [{exercise: back squat, sets: {1: 2, 2: 5}}]\n"
        "  - {name: Bo, level: novice}\n",
    )
    for old, new in (("", ""), ("{1: 2, 2: 5}", "9"), ("level: novice", "level: advanced"), ("9", "2")):
        squad = squad.replace(old, new) if old else squad
        assert everything(typed.now(squad)) == everything(typed.afresh(squad))


def test_a_session_that_moves_to_another_block_is_judged_there(typed: Typed) -> None:
    back = "    phase: return\n    sessions:\n      - session: Upper"
    for text in (BLOCKS, BLOCKS.replace("    sessions:\n      - session: Upper", back), BLOCKS):
        assert everything(typed.now(text)) == everything(typed.afresh(text))


# What is taken over


def ledger(one: FileReview) -> Ledger:
    assert one.ledger is not None
    return one.ledger


def visits(one: FileReview) -> list[object]:
    return list(ledger(one).visits)


def test_a_comment_leaves_everything_as_it_was(typed: Typed) -> None:
    before = visits(typed.now(BLOCKS))
    assert visits(typed.now("# Weeks of rain.\n" + BLOCKS)) == before


def test_an_edit_renews_the_session_that_it_stands_in(typed: Typed) -> None:
    one, two, *rest = visits(typed.now(BLOCKS))
    now = visits(typed.now(BLOCKS.replace("bench press, sets: 3", "bench press, sets: 4")))
    assert now[0] is one
    assert now[1] is not two
    assert now[4:] == rest[2:]


def test_of_two_sessions_in_the_same_words_each_stays_itself(typed: Typed) -> None:
    before = visits(typed.now(BLOCKS))
    first = BLOCKS.replace("back squat, sets: 3", "back squat, sets: 4", 1)
    now = visits(typed.now(first))
    assert now[0] is not before[0]
    assert now[-1] is before[-1]


def test_what_uses_an_anchor_is_read_anew(typed: Typed) -> None:
    shared = BLOCKS.replace("reps: 8, rir: 2}", "reps: &r 8, rir: 2}", 1).replace(
        "reps: 8, rir", "reps: *r, rir"
    )
    before = visits(typed.now(shared))
    now = visits(typed.now(shared + "# more\n"))
    assert not set(before).intersection(now)


def test_what_cannot_be_meant_is_said_every_time(typed: Typed) -> None:
    wrong = BLOCKS.replace("reps: 6-8", "reps: 8-6", 1)
    first, second = typed.now(wrong), typed.now(f"{wrong}# more\n")
    assert [one.rule for one in first.findings].count("range-backwards") == 1
    assert [one.rule for one in second.findings].count("range-backwards") == 1


def test_places_move_with_the_text(typed: Typed) -> None:
    text = BLOCKS.replace("sets: 3", "sets: 40", 1)
    (before,) = (one for one in typed.now(text).findings if one.rule == "number-implausible")
    at = before.place.line
    (after,) = (
        one for one in typed.now(f"# one\n# two\n{text}").findings if one.rule == "number-implausible"
    )
    assert (at, after.place.line) == (11, 13)
    assert after.place.excerpt == before.place.excerpt


def test_after_a_text_that_cannot_be_read_the_last_one_is_built_on(typed: Typed) -> None:
    before = visits(typed.now(BLOCKS))
    broken = typed.now(BLOCKS.replace("goal: hypertrophy", "goal: [hyper"))
    assert [one.severity for one in broken.findings] == ["error"]
    assert broken.ledger is None
    assert visits(typed.now(BLOCKS)) == before


def test_weeks_and_counts_stay(typed: Typed) -> None:
    before = ledger(typed.now(BLOCKS))
    week, count = before.weeks[2], before.weeks[2].sets("quadriceps")
    after = ledger(typed.now(BLOCKS.replace("bench press, sets: 3", "bench press, sets: 4")))
    assert after.weeks[2] is week
    assert after.weeks[2].sets("quadriceps") is count
    assert after.weeks[0].sets("chest").high == 4


def test_a_workspace_that_is_not_incremental_reuses_nothing(tmp_path: Path) -> None:
    workspace = Workspace(DAY, overlay=Overlay())
    workspace.overlay.open(str(tmp_path / "plan.programme.yaml"), BLOCKS)
    one, two = (review_on(workspace, [str(tmp_path / "plan.programme.yaml")]).files[0] for _ in range(2))
    assert not set(visits(one)).intersection(visits(two))


# Which rules are asked again


class Watched:
    """A rule of one scope that notes what it is asked, and speaks where it is told to."""

    def __init__(
        self, looks_at: str, says: Callable[[Any], bool] = lambda unit: False, beyond: str = ""
    ) -> None:
        self.asked: list[object] = []

        def check(unit: object, limits: Limits) -> Iterator[DraftFinding]:
            self.asked.append(unit)
            if says(unit):
                yield found(_place(unit), "Here.", severity="note")

        def check_with_more(unit: object, further: object, limits: Limits) -> Iterator[Finding]:
            assert type(further).__name__ == beyond
            return check(unit, limits)

        asked: Any = check_with_more if beyond else check
        asked.__annotations__["unit"] = looks_at
        if beyond:
            asked.__annotations__["further"] = beyond
        self.rule = Rule("watched", "dose", "note", "fact", "Why.", (), (), (), asked)

    def since(self) -> int:
        """How many units it has been asked about since this was last asked."""
        count = len(self.asked)
        self.asked.clear()
        return count


def _place(unit: Any) -> Place:
    place: Place = unit.programme.place if hasattr(unit, "programme") else unit.session.place
    return place


EDITS = {
    "nothing": BLOCKS,
    "comment": BLOCKS + "# more\n",
    "looks": BLOCKS.replace("sets: 3", "sets:  3", 1).replace(
        "- {exercise: bench", "# flat\n          - {exercise: bench"
    ),
    "upper": BLOCKS.replace("bench press, sets: 3", "bench press, sets: 4"),
    "goal": BLOCKS.replace("goal: hypertrophy", "goal: strength"),
}


@pytest.mark.parametrize(
    ("looks_at", "counts"),
    [  # at first, after nothing, a comment, other blanks and a comment within, an edit of one session, and of the goal
        ("Ledger", (1, 0, 0, 0, 1, 1)),
        ("Week", (2, 0, 0, 0, 1, 2)),
        ("Visit", (3, 0, 0, 0, 1, 3)),
        ("SetGroup", (6, 0, 0, 0, 2, 6)),
    ],
)
def test_a_silent_rule_is_asked_about_what_is_new(
    tmp_path: Path, looks_at: str, counts: tuple[int, ...]
) -> None:
    watched = Watched(looks_at)
    typed = Typed(tmp_path, [watched.rule])
    asked = []
    for name in ("nothing", "nothing", "comment", "looks", "upper", "goal"):
        typed.now(EDITS[name])
        asked.append(watched.since())
    assert tuple(asked) == counts


@pytest.mark.parametrize(
    ("one", "other", "alike"),
    [
        ("{a: 1, b: [x, y]}", "{a: 1,  b: [x, 'y']}  # so", True),
        ("{a: 1}", "{a: '1'}", False),
        ("{a: 1}", "{a: 1.0}", False),
        ("{a: 10}", "{a: 0xA}", False),
        ("[x, y]", "[y, x]", False),
        ("[[x], y]", "[[x, y]]", False),
        ("{a: {b: 1}}", "{a: [b, 1]}", False),
        ("{a: yes}", "{a: true}", False),
    ],
)
def test_what_says_the_same(one: str, other: str, alike: bool) -> None:
    first, second = (parse("x", text).root for text in (one, other))
    assert first is not None
    assert second is not None
    assert (Fingerprint(first) == Fingerprint(second)) == alike
    assert Fingerprint(first) == Fingerprint(first)
    assert Fingerprint(first) != first


def test_what_is_too_large_to_compare_is_never_the_same() -> None:
    root = parse("x", f"[{'1, ' * (MOST_COMPARED + 1)}]").root
    assert root is not None
    large = Fingerprint(root)
    assert large == large
    assert large != Fingerprint(root)


def test_a_rule_that_speaks_is_asked_again_where_it_spoke(tmp_path: Path) -> None:
    watched = Watched("Visit", lambda unit: unit.session.name == "Upper")
    typed = Typed(tmp_path, [watched.rule])
    for expected in (3, 1, 1):
        assert len(typed.now(BLOCKS).findings) == 1
        assert watched.since() == expected


def test_a_rule_that_looks_beyond_is_asked_about_everything(tmp_path: Path) -> None:
    watched = Watched("Week", beyond="Ledger")
    typed = Typed(tmp_path, [watched.rule])
    for _ in range(2):
        typed.now(BLOCKS)
        assert watched.since() == 2


def test_a_rule_of_a_teams_own_module_is_always_run_on_everything(tmp_path: Path) -> None:
    watched = Watched("Visit")
    watched.rule.foreign = True
    typed = Typed(tmp_path, [watched.rule])
    for _ in range(3):
        typed.now(BLOCKS)
        assert watched.since() == 3


def test_after_a_rule_has_failed_all_are_asked_again(tmp_path: Path) -> None:
    def fails(unit: object) -> bool:
        raise ZeroDivisionError

    watched, other = Watched("Visit", fails), Watched("Visit")
    other.rule.name = "other"
    typed = Typed(tmp_path, [watched.rule, other.rule])
    for _ in range(2):
        assert [fault.rule for fault in typed.now(BLOCKS).faults] == ["watched"]
        assert (watched.since(), other.since()) == (1, 3)


def test_nothing_of_earlier_texts_is_held(tmp_path: Path) -> None:
    watched = [Watched("Visit", lambda unit: True), Watched("Ledger", lambda unit: True, beyond="Text")]
    watched[1].rule.name = "other"
    typed = Typed(tmp_path, [one.rule for one in watched])
    for sets in range(3, 9):
        now = ledger(typed.now(BLOCKS.replace("sets: 3", f"sets: {sets}")))
        for one in watched:
            one.asked.clear()
    gc.collect()
    there = [one for one in gc.get_objects() if isinstance(one, Visit) and one.programme is now.header]
    assert len(there) <= 2 * len(set(now.visits))


def test_visits_that_are_gone_are_freed_without_being_looked_for(typed: Typed) -> None:
    gc.disable()
    try:
        for sets in range(3, 30):
            now = ledger(typed.now(BLOCKS.replace("sets: 3", f"sets: {sets}")))
            there = sum(isinstance(one, Visit) and one.programme is now.header for one in gc.get_objects())
            assert there <= 2 * len(set(now.visits))
    finally:
        gc.enable()
