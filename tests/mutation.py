"""Checks the tests of rules and effort: changes these at one place at a time, and looks whether a test then fails.

    python tests/mutation.py [MODULE|RULE ...] [--list]
    python tests/mutation.py --changed [REV] [--list]

A change that no test notices survives: it does the same as the original, or a test is missing. Prints those that
survive, then how many were killed for each rule. What several rules of a module use counts by itself, as shared.
With --changed only what is not as it was at a revision is tried: a rule is when its function is, or anything that
it uses in rules/.

Scores are kept in tests/mutation.json; --changed compares with them and leaves them alone. Exit code 0 if of each
rule no less was killed than is on record, or 95 percent where none is; 1 if less, 2 if a test fails with nothing
changed.

The tests are collected once. One run of them under a trace tells which lines each of them comes by; then every
change is made in a process forked for it, which runs the tests that come by and name a rule that uses what is
changed, or no rule at all, until the first that fails.
"""

from __future__ import annotations

import argparse
import gc
import json
import os
import pickle
import re
import resource
import shutil
import sys
import tempfile
from collections.abc import Callable, Iterator
from functools import partial
from graphlib import TopologicalSorter
from itertools import zip_longest
from math import ceil
from pathlib import Path
from time import monotonic
from types import CodeType, FrameType, FunctionType
from typing import Any

import pytest

from spotline.lint.engine import registry
from spotline.tests.mutants import (
    COUNTED,
    ROOT,
    Module,
    Mutant,
    changed_since,
    modules_now,
    rules_using,
    taken_from,
)

RECORD = ROOT / "tests" / "mutation.json"
LEAST = 95.0
"""Percent of the changes to a rule that a test must notice."""
SECONDS = 10
"""Of processor time for one mutant, beside three times what all tests take; past it, it hangs: killed."""
MEMORY = 4 << 30
"""Bytes for one mutant, since one that hangs may also hoard."""
FAILED = 1
KILLER = "killer"
"""The file in which a mutant's process names the test that killed it."""

FEW = 4
"""Rules that a test may name: one that names more is about them as a whole, and slow."""
EVERY_RULE = "read_at_work"
"""A fixture that runs all rules over all their programmes: too slow to be worked out for each mutant."""

Tests = int
"""Some of the tests: one bit each, in the order in which they were collected."""


# The modules


class Book:
    """The modules of rules and of the counting, those that others take from before them."""

    def __init__(self) -> None:
        known = {module.name: module for module in modules_now()}
        needs = {name: {source for source, _ in module.imports} for name, module in known.items()}
        self.modules = [known[name] for name in TopologicalSorter(needs).static_order()]
        self.users = rules_using(self.modules)

    def mutants(self) -> list[Mutant]:
        """Every change to every module."""
        taken = taken_from(self.modules)
        return [mutant for module in self.modules for mutant in module.mutants(taken)]

    def install(self, mutant: Mutant) -> None:
        """Makes a change and puts it in place of what is live, which the tests hold on to."""
        mutant.change.make()
        module = mutant.module
        live = sys.modules[module.imported].__dict__
        if mutant.lines:
            take_codes(live, module.compiled())
        elif module.name in COUNTED:
            put_in_place(module, live)
        else:
            self.declare_anew(module)

    def declare_anew(self, changed: Module) -> None:
        """Runs the modules of rules anew, ``changed`` from its tree as it now is; the rules stay the same objects."""
        declared = dict(registry._RULES)
        registry._RULES.clear()
        for module in self.modules:
            if module.name in COUNTED:
                continue
            code = module.compiled() if module is changed else module.code
            exec(code, sys.modules[module.imported].__dict__)
        for name, rule in declared.items():
            for slot in registry.Rule.__slots__:
                setattr(rule, slot, getattr(registry._RULES[name], slot))
            registry._RULES[name] = rule


def take_codes(live: dict[str, Any], code: CodeType) -> None:
    """Gives live functions, and those of live classes, the code that a module or class now has for them."""
    for new in code.co_consts:
        old = live.get(new.co_name) if isinstance(new, CodeType) else None
        old = getattr(old, "fget", None) or getattr(old, "__wrapped__", old)
        if isinstance(old, type):
            take_codes(dict(vars(old)), new)
        elif isinstance(old, FunctionType):
            old.__code__ = new


def put_in_place(changed: Module, live: dict[str, Any]) -> None:
    """Gives the live functions of a counting module what its changed tree says: all hold on to them."""
    fresh = dict(live)
    exec(changed.compiled(), fresh)
    for name in changed.defined:
        old, new = live[name], fresh[name]
        if isinstance(old, type):
            for member in vars(old).keys() & vars(new).keys():
                take_code(vars(old)[member], vars(new)[member])
        elif not take_code(old, new):
            live[name] = new


def take_code(old: Any, new: Any) -> bool:
    """Gives a function, or a property's, the code of another; whether it is one."""
    old, new = getattr(old, "fget", old), getattr(new, "fget", new)
    if not isinstance(old, FunctionType):
        return False
    old.__code__, old.__defaults__, old.__kwdefaults__ = new.__code__, new.__defaults__, new.__kwdefaults__
    return True


# Running the tests


class Check:
    """A plugin of pytest that runs the collected tests for every mutant, instead of once."""

    def __init__(self, book: Book, mutants: list[Mutant], at_once: int) -> None:
        self.book = book
        self.at_once = at_once
        self.mutants = mutants
        self.failing: list[str] = []
        self.killed: set[Mutant] = set()
        self.killers: dict[str, int] = {}
        self.patience = SECONDS
        self.fail: Callable[[str], None] = self.failing.append

    def pytest_collectreport(self, report: pytest.CollectReport) -> None:
        """A module of tests has been read, or not."""
        if report.failed:
            self.failing.append(report.nodeid)

    def pytest_runtest_logreport(self, report: pytest.TestReport) -> None:
        """A part of a test is over."""
        if report.failed:
            self.fail(report.nodeid)

    def pytest_runtestloop(self, session: pytest.Session) -> bool:
        """All tests once under a trace; then, for every mutant, those that concern it."""
        named = ((item, rules_named(item)) for item in session.items if EVERY_RULE not in item.fixturenames)
        self.items = [
            (item, names)
            for item, names in named
            if len(names) <= FEW and any(self.may_notice(item, names, mutant) for mutant in self.mutants)
        ]
        with tempfile.TemporaryDirectory() as folder:
            self.folder = Path(folder)
            self.warm_up()
            gc.freeze()
            if not self.failing:
                self.failing, self.lines = self.traced()
            if not self.failing:
                self.try_all()
        return True

    # With nothing changed

    def warm_up(self) -> None:
        """Runs one test, so that what is imported when it is first needed need not be in every process."""
        config = self.items[0][0].config
        self.run([self.items[0][0]])
        config._tmp_path_factory._basetemp = None  # type: ignore[attr-defined]

    def traced(self) -> tuple[list[str], dict[tuple[str, int], Tests]]:
        """The tests that fail as it is, and for each line of the rules those that come by."""
        reading, writing = os.pipe()

        def work() -> None:
            told = self.failing, self.lines_run()
            with os.fdopen(writing, "wb") as out:
                pickle.dump(told, out)

        self.fork(work)
        os.close(writing)
        with os.fdopen(reading, "rb") as source:
            told: tuple[list[str], dict[tuple[str, int], Tests]] = pickle.load(source)
        self.joined()
        self.patience += 3 * ceil(resource.getrusage(resource.RUSAGE_CHILDREN).ru_utime)
        return told

    def lines_run(self) -> dict[tuple[str, int], Tests]:
        """Runs all tests: for each line of the rules those that come by."""
        names = {sys.modules[module.imported].__file__: module.name for module in self.book.modules}
        lines: dict[tuple[str, int], Tests] = {}
        test = 1

        def enter(frame: FrameType, event: str, argument: Any) -> Any:
            return step(frame, event, argument) if frame.f_code.co_filename in names else None

        def step(frame: FrameType, event: str, argument: Any) -> Any:
            place = names[frame.f_code.co_filename], frame.f_lineno
            lines[place] = lines.get(place, 0) | test
            return step

        for item, _ in self.items:
            sys.settrace(enter)
            self.run([item])
            sys.settrace(None)
            test <<= 1
        return lines

    def run(self, items: list[pytest.Item]) -> None:
        """Runs tests one after the other."""
        for item, following in zip_longest(items, items[1:]):
            item.config.hook.pytest_runtest_protocol(item=item, nextitem=following)

    # With a change

    def try_all(self) -> None:
        """Tries every mutant, a few at a time, and prints those that survive."""
        waiting = self.mutants[::-1]
        running: dict[int, Mutant] = {}
        while waiting or running:
            if waiting and len(running) < self.at_once:
                mutant = waiting.pop()
                running[self.fork(partial(self.trial, mutant))] = mutant
                continue
            process, status = self.joined()
            mutant = running.pop(process)
            if status:
                self.killed.add(mutant)
            else:
                print(mutant, flush=True)

    def may_notice(self, item: pytest.Item, names: set[str], mutant: Mutant) -> bool:
        """Whether a test that names these rules is about what a mutant changes."""
        about = item.path.stem.removeprefix("test_")
        if mutant.module.name in COUNTED:
            return about == mutant.module.name
        if not names:
            return item.path.parent.name == "rules"
        return not names.isdisjoint(self.book.users[mutant.place])

    def concerned(self, mutant: Mutant) -> list[pytest.Item]:
        """The tests that come by a mutant's lines: first such as killed others, the last one before all."""
        tests = 0 if mutant.lines else -1
        for line in mutant.lines:
            tests |= self.lines.get((mutant.module.name, line), 0)
        items = [
            (-self.killers.get(item.nodeid, -1), len(names - {mutant.owner}), index)
            for index, (item, names) in enumerate(self.items)
            if tests >> index & 1 and self.may_notice(item, names, mutant)
        ]
        return [self.items[index][0] for _, _, index in sorted(items)]

    def trial(self, mutant: Mutant) -> None:
        """Runs tests on a mutant; the first to fail ends the process."""
        resource.setrlimit(resource.RLIMIT_CPU, (self.patience, self.patience))
        resource.setrlimit(resource.RLIMIT_AS, (MEMORY, MEMORY))
        self.fail = self.end_killed
        tests = self.concerned(mutant)
        self.book.install(mutant)
        self.run(tests)

    def end_killed(self, test: str) -> None:
        """Ends the process of a mutant, and leaves word of the test that killed it."""
        (self.folder / str(os.getpid()) / KILLER).write_text(test, encoding="utf-8")
        os._exit(FAILED)

    # Processes

    def fork(self, work: Callable[[], None]) -> int:
        """Starts a process for some work, silent and with a folder of its own; it fails if the work raises."""
        process = os.fork()
        if process:
            return process
        try:
            folder = self.folder / str(os.getpid())
            folder.mkdir()
            os.environ["PYTEST_DEBUG_TEMPROOT"] = str(folder)
            cache = os.open(os.devnull, os.O_WRONLY)
            os.dup2(cache, 1)
            os.dup2(cache, 2)
            work()
            os._exit(0)
        finally:
            os._exit(FAILED)

    def joined(self) -> tuple[int, int]:
        """Waits for a process to end; its number and status."""
        process, status = os.wait()
        folder = self.folder / str(process)
        if (folder / KILLER).exists():
            self.killers[(folder / KILLER).read_text(encoding="utf-8")] = len(self.killed)
        shutil.rmtree(folder)
        return process, status


RULES = {rule.name for rule in registry.all_rules()}


def rules_named(item: pytest.Item) -> set[str]:
    """The rules that a test names: by its parameter, else by its class and in the code that it runs."""
    given = [*item.callspec.params.values()] if hasattr(item, "callspec") else []
    for one in given:
        if isinstance(one, registry.Rule):
            return {one.name}
    texts = words_in([given, getattr(item.cls, "RULE", ""), item.function], [])
    return set(re.findall(r"[a-z]+(?:-[a-z]+)+", " ".join(texts))) & RULES


def words_in(part: Any, seen: list[Any]) -> Iterator[str]:
    """Every text in a value, or in a function and in what it names of its module."""
    if any(part is one for one in seen):
        return
    seen.append(part)
    match part:
        case str():
            yield part
        case list() | tuple() | set() | frozenset():
            for one in part:
                yield from words_in(one, seen)
        case dict():
            yield from words_in([*part, *part.values()], seen)
        case CodeType():
            yield from words_in(part.co_consts, seen)
        case FunctionType() if Path(part.__code__.co_filename).is_relative_to(ROOT / "tests"):
            yield from words_in(part.__code__, seen)
            for name in part.__code__.co_names:
                yield from words_in(part.__globals__.get(name), seen)


# The command


class Score:
    """How many changes were made to a rule, or to what rules share, and how many of them a test noticed."""

    def __init__(self, mutants: int, killed: int) -> None:
        self.mutants = mutants
        self.killed = killed

    @property
    def percent(self) -> float:
        return 100 * self.killed / self.mutants


def recorded() -> dict[str, Score]:
    """The scores on record."""
    kept = json.loads(RECORD.read_text(encoding="utf-8")) if RECORD.exists() else {}
    return {owner: Score(**numbers) for owner, numbers in kept.items()}


def record(scores: dict[str, Score]) -> None:
    """Puts scores on record, in order."""
    whole = {owner: vars(score) for owner, score in sorted(scores.items())}
    RECORD.write_text(json.dumps(whole, indent=1) + "\n", encoding="utf-8")


def wanted(owner: str, before: dict[str, Score]) -> float:
    """The percentage that is enough: no less than is on record, else what is asked of all."""
    return before[owner].percent if owner in before else LEAST


def main() -> int:
    parser = argparse.ArgumentParser(
        description="Changes rules and effort place by place and runs their tests."
    )
    parser.add_argument("names", nargs="*", metavar="MODULE|RULE", help="what to change; all by default")
    parser.add_argument(
        "--changed",
        nargs="?",
        const="HEAD",
        metavar="REV",
        help="rules that are not as they were at REV (HEAD)",
    )
    parser.add_argument("--at-once", type=int, default=2, metavar="N", help="processes at a time (2)")
    parser.add_argument("--list", action="store_true", help="print the changes and run nothing")
    asked = parser.parse_args()
    if asked.names and asked.changed:
        parser.error("name modules and rules, or ask for those that changed")
    book = Book()
    mutants = book.mutants()
    owners = {mutant.owner for mutant in mutants}
    known = owners | {module.name for module in book.modules}
    for name in asked.names:
        if name not in known:
            parser.error(f"no module of rules/ or the counting and no rule is called {name}")
    chosen = changed_since(asked.changed) if asked.changed else set(asked.names) or known
    mutants = [mutant for mutant in mutants if {mutant.owner, mutant.module.name} & chosen]
    if not mutants:
        print("There is nothing to change.")
        return 0
    if asked.list:
        print(*mutants, sep="\n")
        return 0
    began = monotonic()
    check = Check(book, mutants, asked.at_once)
    plugins = [
        word for name in ("terminal", "cacheprovider", "faulthandler") for word in ("-p", f"no:{name}")
    ]
    settings = ["-o", "addopts=", "--import-mode=importlib", "--assert=plain", "-s", "--rootdir", str(ROOT)]
    tests = ["rules", "counting", "mending/test_remedies.py"]
    pytest.main([*settings, *plugins, *(str(ROOT / "tests" / one) for one in tests)], plugins=[check])
    if check.failing:
        print("These tests fail with nothing changed:", *check.failing, sep="\n  ")
        return 2
    scores = report(mutants, check.killed)
    print(f"{monotonic() - began:.0f} s")
    before = recorded()
    if not asked.changed:
        record({owner: score for owner, score in (before | scores).items() if owner in owners})
    return judged(scores, before)


def report(mutants: list[Mutant], killed: set[Mutant]) -> dict[str, Score]:
    """Prints the table, by module and owner; the scores of the owners."""
    rows: dict[tuple[str, str], Score] = {}
    for mutant in mutants:
        for row in ((mutant.module.name, mutant.owner), (mutant.module.name, ""), ("", "")):
            score = rows.setdefault(row, Score(0, 0))
            score.mutants += 1
            score.killed += mutant in killed
    print(f"\n{'':42}{'mutants':>9}{'killed':>9}{'survived':>10}{'score':>9}")
    for (module, owner), score in sorted(rows.items(), reverse=True):
        name = f"  {owner}" if owner else module or "all"
        survived = score.mutants - score.killed
        print(f"{name:42}{score.mutants:9}{score.killed:9}{survived:10}{score.percent:8.1f}%")
    return {owner: score for (_, owner), score in rows.items() if owner}


def judged(scores: dict[str, Score], before: dict[str, Score]) -> int:
    """Says of which rules too few changes were noticed; the exit code."""
    short = [owner for owner, score in sorted(scores.items()) if score.percent < wanted(owner, before)]
    for owner in short:
        least = wanted(owner, before)
        print(
            f"{owner}: {scores[owner].percent:.1f} % are too few, {least:.1f} % are wanted: test what survived."
        )
    return 1 if short else 0


if __name__ == "__main__":
    raise SystemExit(main())
