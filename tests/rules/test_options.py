"""Options of rules: each is read, and what a finding says of a limit that a team has moved is the team's.

Every option of every rule is moved, over the programmes on the rule's page and a few more, and the words of
the findings are read.
"""

from __future__ import annotations

import ast
import re
from collections.abc import Callable, Iterable, Iterator
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest

from spotline.lint.body import catalogue
from spotline.lint.counting.credits import HELPING, INDIRECT_WEIGHT
from spotline.lint.engine import run
from spotline.lint.engine.limits import COUNTING, FORMS, Condition, Length, Limits, Option
from spotline.lint.engine.registry import Rule, all_rules
from spotline.lint.engine.rule_page import Page
from spotline.lint.findings.finding import Finding

if TYPE_CHECKING:
    from spotline.lint.engine.limits import Default

Findings = Callable[..., list[Finding]]
Files = dict[str, str]


def plan(*lines: str, head: str = "") -> str:
    """The text of a programme with one session."""
    listed = "".join(f"      - {{{line}}}\n" for line in lines)
    return f"programme: Test\n{head}sessions:\n  - session: Gym\n    exercises:\n{listed}"


def followed(lift: str, was: str, now: str) -> tuple[str, Files]:
    """A programme that starts where another ends, with another load on a lift."""
    head = "starts: 2026-0{}-02\nweeks: 4\nathlete: mara.athlete.yaml\n"
    winter, spring = (
        plan(f"exercise: {lift}, sets: 3, reps: 5, load: {load}", head=head.format(month))
        for load, month in ((was, 2), (now, 3))
    )
    return spring, {"mara.athlete.yaml": "name: Mara\n", "winter.programme.yaml": winter}


JUMP = "exercise: barbell squat jump, sets: 3, reps: 3"
LIFT = "exercise: bench press, sets: 3"
LONG = "exercise: back squat, sets: 10, reps: 10, rest: 5 min"
STEP = "exercise: {}, sets: 3, reps: 5, load: {{1: {}, 2: {}}}"
FURTHER: dict[str, list[str | tuple[str, Files]]] = {
    "antagonist-imbalance": [
        plan("exercise: bench press, sets: 9, reps: 8", "exercise: seated cable row, sets: 1, reps: 8")
    ],
    "dates-at-odds": [plan(f"{LIFT}, reps: 5", head="phase: test\nweeks: 15\n")],
    "load-outside-zone": [
        plan(f"{LIFT}, reps: 5, load: 30 %", head="goal: strength\nathlete: {name: Ida, age: 80}\n"),
        plan(f"{JUMP}, load: 10 %", head="goal: power\n"),
        plan(f"{JUMP}, load: 95 %", head="goal: power\n"),
        plan(f"{LIFT}, reps: 5, load: 90 %", head="goal: muscular endurance\n"),
        plan(f"{LIFT}, reps: 2, load: 95 %", head="goal: hypertrophy\n"),
    ],
    "load-step-large": [
        plan(
            "exercise: bench press, sets: 3, reps: {1: 6, 2: 5}, load: {1: 80 kg, 2: 110 kg}",
            head="weeks: 2\n",
        ),
        plan(STEP.format("bench press", "20 kg", "40 kg"), head="weeks: 2\n"),
        plan(STEP.format("dumbbell bench press", "2 x 10 kg", "2 x 30 kg"), head="weeks: 2\n"),
        plan(STEP.format("medicine ball slam", "4 kg", "20 kg"), head="weeks: 2\n"),
        plan(STEP.format("leg press", "20 kg", "50 kg"), head="weeks: 2\n"),
        plan(f"{LIFT}, reps: {{1-4: 6, 5: 5}}, load: {{1-4: 100 kg, 5: 220 kg}}", head="weeks: 5\n"),
    ],
    "impact-days-consecutive": [
        "programme: Test\nsessions:\n"
        "  - {session: A, day: [monday, tuesday, wednesday, thursday], exercises: [{exercise: box jump, sets: 3}]}\n"
    ],
    "more-reps-than-load-allows": [plan(f"{LIFT}, reps: 15, load: 5RM")],
    "near-maximal-before-event": [
        "programme: Test\nstarts: 2026-01-12\nevents: [{date: 2026-01-17, event: meet}]\nsessions:\n"
        "  - {session: A, day: wednesday, exercises: [{exercise: back squat, sets: 1, reps: 1, load: 95 %}]}\n"
    ],
    "number-implausible": [
        plan(f"{LIFT}, reps: 300"),
        plan(f"{LIFT}, reps: 5, rest: 2 s"),
        plan(f"{LIFT}, reps: 5, rest: 50 min"),
        plan(f"{LIFT}, reps: 5, load: 2 %"),
        plan(
            f"{LIFT}, reps: 5, load: 300 kg", head="athlete: {name: Ida, best lifts: {bench press: 60 kg}}\n"
        ),
    ],
    "room-too-small": [
        plan("superset: [{exercise: back squat, sets: 3, reps: 8}, {exercise: push-up, sets: 3, reps: 8}]"),
        plan(
            "circuit: {rounds: 3, exercises: [{exercise: back squat, reps: 8}, {exercise: push-up, reps: 8}]}"
        ),
    ],
    "session-too-long": [plan(LONG, LONG.replace("back squat", "leg press"), head="goal: general health\n")],
    "sessions-too-close": [
        "programme: Test\nsessions:\n"
        "  - {session: A, day: monday, exercises: [{exercise: leg press, sets: 9, reps: 6, rir: 0}]}\n"
        "  - {session: B, day: tuesday, exercises: [{exercise: leg press, sets: 9, reps: 6, rir: 0}]}\n",
        "programme: Test\nsessions:\n"
        "  - {session: A, day: monday, exercises: [{exercise: leg press, sets: 9, reps: 6}]}\n"
        "  - {activity: match, day: tuesday, loads: {legs: high}}\n",
    ],
    "start-does-not-follow": [
        followed("bench press", was="40 kg", now="90 kg"),
        followed("medicine ball slam", was="4 kg", now="20 kg"),
        followed("leg press", was="20 kg", now="90 kg"),
    ],
}
"""Programmes that come to limits to which the one on the rule's page does not."""

RULES = all_rules()
OPTIONS = [(rule, option) for rule in RULES for option in rule.options]


def of_kind(fits: Callable[[Option], bool]) -> pytest.MarkDecorator:
    held = [(rule, option) for rule, option in OPTIONS if fits(option)]
    ids = [f"{rule.name}: {option.name}" for rule, option in held]
    return pytest.mark.parametrize(("rule", "option"), held, ids=ids)


def is_list(option: Option) -> bool:
    return isinstance(option.default, tuple)


def is_limit(option: Option) -> bool:
    return not is_list(option) and not isinstance(option, (Condition, Length))


GROUNDS = re.compile(r"common practice|convention|trial|guideline|benefit|measure|minimum")
"""Words in which findings give the ground of a default."""

WHOSE = re.compile(r" \(([^()]*your team's limits?[^()]*)\)")


def numbers(default: float, odd: float = 0.0) -> list[float]:
    """Other numbers, less and more than a default; ``odd`` makes them such as no programme holds by chance."""
    tried = [default * share for share in (0.5, 0.75, 1.25, 1.5, 2.5)]
    tried += [default - 1, default + 1, default + 2.5]
    return list(dict.fromkeys(round(one + odd, 2) for one in tried if one > 0 and round(one, 2) != default))


def others(default: Default, odd: float = 0.0) -> Iterator[Default]:
    """Other values for an option, in the form of its default."""
    if isinstance(default, dict):
        named = default or dict.fromkeys(catalogue.groups, 10.0)
        for share in (0.5, 0.75, 1.5, 2.5):
            yield {name: round(number * share + (odd or 0.01), 2) for name, number in named.items()}
    elif isinstance(default, tuple):
        yield (*default, "no such name")
    else:
        yield from numbers(default, odd)


def texts(rule: Rule) -> list[tuple[str, Files]]:
    """Programmes that the rule flags, each with the files beside it."""
    beside = Page(rule).beside
    more = [(one, beside) if isinstance(one, str) else one for one in FURTHER.get(rule.name, ())]
    return [(Page(rule).flags, beside), *more]


def written(value: Default) -> str:
    """A value as a settings file writes it."""
    return str(list(value)) if isinstance(value, tuple) else str(value)


class Read:
    """What a rule says of a text by default, and after an option of it has been moved."""

    def __init__(self, findings: Findings, rule: Rule, text: str, beside: Files) -> None:
        self._findings = findings
        self._rule = rule
        self._text = text
        self._beside = beside
        self.usual = self.said("run")
        assert self.usual, "not flagged by default"

    def said(self, settings: str) -> list[Finding]:
        team = f"{self._beside.get('spotline.yaml', '')}rules: {{{self._rule.name}: {settings}}}\n"
        return self._findings(self._text, self._rule.name, {**self._beside, "spotline.yaml": team})

    def moved(self, option: Option, value: Default) -> list[Finding]:
        return self.said(f"{{'{option.name}': {written(value)}}}")


def words(finding: Finding) -> list[str]:
    """All that a finding says, but for why the rule is there."""
    related = [one.words for one in finding.related]
    return [finding.counted, finding.wanted, finding.change, *related]


def ways(value: Default) -> set[str]:
    """The ways to write a number, or those of a table."""
    given = [*value.values()] if isinstance(value, dict) else [value]
    return {form(one) for form in FORMS.values() for one in given if isinstance(one, (int, float)) and one}


def times(written: str, text: str) -> int:
    """How often a number, or words for one, stand by themselves in a text."""
    return len(re.findall(rf"(?<![\w.:]){re.escape(written)}(?![\w:]|\.\d)", text))


def more(written: Iterable[str], text: str, than: Iterable[str]) -> bool:
    """Whether one of some ways to write a number stands more often in a text than in any of some others."""
    return any(times(way, text) > max((times(way, one) for one in than), default=0) for way in written)


@of_kind(is_limit)
def test_a_limit_that_is_moved_is_said_and_called_the_teams(
    rule: Rule, option: Option, findings: Findings
) -> None:
    """Nothing of the default is left in the sentence, neither its number, in whatever form, nor its ground."""
    said = []
    for text, beside in texts(rule):
        read = Read(findings, rule, text, beside)
        for value in others(option.default):
            for finding in read.moved(option, value):
                for at, sentence in enumerate(words(finding)):
                    usual = [words(one)[at] for one in read.usual if at < len(words(one))]
                    is_called = WHOSE.search(sentence) is not None and sentence not in usual
                    is_written = more(ways(value), sentence, usual)
                    if sentence == finding.wanted and is_written:
                        assert is_called, (value, sentence)
                    if is_called:
                        said.append(sentence)
                        assert is_written, (value, sentence)
                        assert not GROUNDS.search(sentence), (value, sentence)
                        left = {way for way in ways(option.default) if times(way, sentence)}
                        assert all(more((way,), one, [sentence]) for way in left for one in usual), sentence
    assert said, f"no finding says {option.name}"


@pytest.mark.parametrize(
    ("rule", "settings", "at", "wanted"),
    [
        ("antagonist-imbalance", "{near: 1.25, far: 4}", 0, "4:5 to 5:4 (your team's limit)"),
        (
            "antagonist-imbalance",
            "{near: 3, far: 4}",
            1,
            "at most 4 times as many on one side (your team's limit)",
        ),
        (
            "deload-without-cut",
            "{load: 15}",
            0,
            "15 % less load or 2 more in reserve (your team's limit: 15 %)",
        ),
        (
            "fast-work-missing",
            "{lightest: 20, heaviest: 60}",
            0,
            "tempo X or loads of 20-60 % (your team's limits: 20 % and 60 %)",
        ),
        ("load-step-large", "{a repetition: 2.5}", 1, "(your team's limit: 2.5 % for each repetition fewer)"),
        (
            "load-step-large",
            "{smallest step: {dumbbell: 1.5}}",
            3,
            "(your team's limit: 1.5 kg for each one held)",
        ),
        (
            "more-reps-than-load-allows",
            "{few manage: 1}",
            0,
            "at most 9 (your team's limit: 1 standard deviation above the mean)",
        ),
        ("number-implausible", "{shortest rest: 20}", 2, "between 20 s and 15 min (your team's limit: 20 s)"),
        (
            "number-implausible",
            "{shortest rest: 20, longest rest: 100}",
            2,
            "between 20 s and 100 s (your team's limits)",
        ),
        (
            "priority-late",
            "{parts: 2}",
            0,
            "a strength priority in the first half (your team's limit)",
        ),
        (
            "priority-not-ahead",
            "{lead: 2}",
            0,
            "over 2 sets more than the rest (your team's limit)",
        ),
        ("tempo-too-long", "{longest: 90}", 0, "at most 90 s (your team's limit)"),
    ],
)
def test_the_words_of_moved_limits(
    rule: str, settings: str, at: int, wanted: str, findings: Findings
) -> None:
    (held,) = (one for one in RULES if one.name == rule)
    (finding,) = Read(findings, held, *texts(held)[at]).said(settings)
    assert finding.wanted.endswith(wanted)


@of_kind(lambda option: isinstance(option, Condition))
def test_a_condition_is_not_said(rule: Rule, option: Option, findings: Findings) -> None:
    """It decides what is looked at, and with it what is counted; but no word stands for it."""
    alike = 0
    for text, beside in texts(rule):
        read = Read(findings, rule, text, beside)
        usual = [words(one) for one in read.usual]
        for value in others(option.default, odd=0.07):
            now = [words(one) for one in read.moved(option, value)]
            alike += now == usual
            for sentence in (sentence for one in now for sentence in one if sentence not in str(usual)):
                assert not WHOSE.search(sentence), (value, sentence)
                assert not any(times(way, sentence) for way in ways(value)), (value, sentence)
    assert alike


@of_kind(lambda option: is_list(option) and option is not COUNTING)
def test_a_list_with_a_name_more_changes_no_word(rule: Rule, option: Option, findings: Findings) -> None:
    for text, beside in texts(rule):
        read = Read(findings, rule, text, beside)
        for value in others(option.default):
            assert [words(one) for one in read.moved(option, value)] == [words(one) for one in read.usual]


@of_kind(lambda option: option is COUNTING)
def test_another_way_of_counting_is_said(rule: Rule, option: Option, findings: Findings) -> None:
    read = Read(findings, rule, *texts(rule)[0])
    for kind in INDIRECT_WEIGHT:
        for finding in read.moved(option, (kind,)):
            said = [one for one in HELPING if HELPING[one] in " ".join(words(finding))]
            assert said in ([], [kind])


@of_kind(lambda option: isinstance(option, Length))
def test_a_length_is_not_said(rule: Rule, option: Option, findings: Findings) -> None:
    read = Read(findings, rule, *texts(rule)[0])
    said = [words(finding) for value in (1, 3) for finding in read.moved(option, value)]
    assert len(said) == len({str(one) for one in said}) == 2
    assert not WHOSE.search(str(said))


# Each is read


@cache
def module_of(name: str) -> ast.Module:
    return ast.parse((Path(__file__).parents[2] / "rules" / f"{name}.py").read_text(encoding="utf-8"))


def code_of(module: str, name: str, seen: set[tuple[str, str]]) -> Iterator[ast.stmt]:
    """The code of a function or class of the rules, and of all that it names."""
    if (module, name) in seen:
        return
    seen.add((module, name))
    for statement in module_of(module).body:
        if isinstance(statement, ast.ImportFrom) and statement.level == 1:
            if name in {one.name for one in statement.names}:
                yield from code_of(str(statement.module), name, seen)
        elif isinstance(statement, (ast.FunctionDef, ast.ClassDef)) and statement.name == name:
            for part in statement.body:
                yield part
                for node in ast.walk(part):
                    if isinstance(node, ast.Name):
                        yield from code_of(module, node.id, seen)


def named(rule: Rule) -> set[str]:
    """The options that a rule's code reads by name."""
    code = code_of(rule.check.__module__.rpartition(".")[2], rule.check.__name__, set())
    calls = [node for part in code for node in ast.walk(part) if isinstance(node, ast.Call)]
    return {
        node.value
        for call in calls
        if isinstance(call.func, ast.Attribute)
        and isinstance(call.func.value, ast.Name)
        and call.func.value.id == "limits"
        for argument in call.args[call.func.attr in ("words", "worked_out") :]
        for node in ast.walk(argument)
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and "{" not in node.value
    }


@pytest.fixture(scope="module")
def read_at_work(findings: Findings) -> dict[tuple[Option, ...], set[str]]:
    """What rules read of their options over all the programmes, by those options."""
    read: dict[tuple[Option, ...], set[str]] = {}

    class Values(dict[str, Any]):
        def __init__(self, options: tuple[Option, ...], values: dict[str, Any]) -> None:
            super().__init__(values)
            self.read = read.setdefault(options, set())

        def __getitem__(self, name: str) -> Any:
            self.read.add(name)
            return super().__getitem__(name)

    class Watched(Limits):
        __slots__ = ()

        def __init__(self, options: tuple[Option, ...], *others: Any) -> None:
            super().__init__(options, *others)
            self._values = values = Values(options, self._values)
            look_up = self.number

            def number(name: str | tuple[str, str]) -> float:
                values.read.add(name if isinstance(name, str) else name[0])
                return look_up(name)

            self.number = number

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(run, "Limits", Watched)
        patch.setattr(run, "_usual", run._usual.__wrapped__)  # none that another test has had made
        for rule in RULES:
            for text, beside in texts(rule):
                Read(findings, rule, text, beside)
    return read


@pytest.mark.parametrize("rule", RULES, ids=lambda rule: rule.name)
def test_what_is_declared_is_read_and_what_is_read_is_declared(
    rule: Rule, read_at_work: dict[tuple[Option, ...], set[str]]
) -> None:
    read = named(rule) | read_at_work.get(rule.options, set())
    assert read == {option.name for option in rule.options}
