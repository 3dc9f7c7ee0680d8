"""Checks the tests of rules and counting: changes these at one place at a time, and looks whether a test then fails.

    python tests/mutation.py [MODULE|RULE ...] [--every N [--past K]] [--list]
    python tests/mutation.py --changed [REV] [--every N [--past K]] [--list]
    python tests/mutation.py [MODULE|RULE ...] --again

A change that no test notices survives: it does the same as the original, or a test is missing. Prints those that
survive, then how many were killed for each rule. What several rules of a module use counts by itself, as shared.
With --changed only what is not as it was at a revision is tried: a rule is when its function is, or anything that
it uses in rules/. With --every N each Nth change to each rule is tried, but six at the least: a sample, whose score
stands with its 95 % interval. Once what survived in it is tested, it says nothing of the changes outside it: --past K
draws another one. With --again only what survived when it was last tried is, and no score is kept.

Scores are kept in tests/mutation.json, those of a sample as such: they take no place of a whole score and are no
bar for the next one. --changed compares and leaves them alone. Exit code 0 if of each rule no less was killed than
is on record of all changes, or where none is 95 percent, of the counting 90; 1 if less, 2 if a test fails with
nothing changed.

The tests are collected once. One run of them under a trace tells which lines each of them comes by; traces are kept
in .mutation_cache until the files are others. Then every change is made in a process forked for it, which runs the
tests that come by and name a rule that uses what is changed, or no rule at all, until the first that fails: those
that killed before, then the short ones. What is changed in the counting is tried by the tests of the counting alone:
nearly all others come by.
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
from collections import Counter
from collections.abc import Callable, Iterator
from dis import get_instructions
from functools import partial
from graphlib import TopologicalSorter
from importlib import import_module
from itertools import zip_longest
from pathlib import Path
from time import monotonic, process_time
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
from spotline.tests.mutation_scores import judged, record, recorded, report, sampled, updated, whose
from spotline.tests.mutation_traces import FOLDER, Place, Trace, Traces

TRIED = FOLDER / "tried"
"""A line of JSON for each mutant that was tried."""
SECONDS = 10
"""Of processor time for one mutant, beside three times what its tests take; past it, it hangs: killed."""
MEMORY = 4 << 30
"""Bytes for one mutant, since one that hangs may also hoard."""
FAILED = 1
KILLER = "killer"
"""The file in which a mutant's process names the test that killed it."""

FEW = 5
"""Rules that a test may name: one that names more is about them as a whole, and slow."""
EVERY_RULE = "read_at_work"
"""A fixture that runs all rules over all their programmes: too slow to be worked out for each mutant."""

TESTS = ("rules", "counting", "mending/test_remedies.py")


# The modules


class Book:
    """The modules of rules and of the counting, those that others take from before them."""

    def __init__(self) -> None:
        known = {module.name: module for module in modules_now()}
        needs = {name: {source for source, _ in module.imports} for name, module in known.items()}
        self.modules = [known[name] for name in TopologicalSorter(needs).static_order()]
        self.users = rules_using(self.modules)
        for module in self.modules:
            import_module(module.imported)

    def mutants(self) -> list[Mutant]:
        """Every change to every module."""
        taken = taken_from(self.modules)
        mutants = [mutant for module in self.modules for mutant in module.mutants(taken)]
        seen: Counter[str] = Counter()
        for mutant in mutants:
            seen[mutant.key] += 1
            mutant.key += f" #{seen[mutant.key]}"
        return mutants

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
            for holder in [one.__dict__ for key, one in sys.modules.items() if key.startswith("spotline.")]:
                if holder.get(name) is old:
                    holder[name] = new


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
        self.traces = Traces()
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
        tests = [item for item in session.items if isinstance(item, pytest.Function)]
        named = ((item, rules_named(item)) for item in tests if EVERY_RULE not in item.fixturenames)
        one_each = {mutant.place: mutant for mutant in self.mutants}.values()
        self.items = [
            (item, names)
            for item, names in named
            if len(names) <= FEW and any(self.may_notice(item, names, mutant) for mutant in one_each)
        ]
        with tempfile.TemporaryDirectory() as folder:
            self.folder = Path(folder)
            self.warm_up()
            gc.freeze()
            if not self.failing:
                self.trace()
            if not self.failing:
                self.try_all()
        return True

    # With nothing changed

    def warm_up(self) -> None:
        """Runs one test, so that what is imported when it is first needed need not be in every process."""
        config = self.items[0][0].config
        self.run([self.items[0][0]])
        config._tmp_path_factory._basetemp = None  # type: ignore[attr-defined]

    def trace(self) -> None:
        """Finds the tests that fail as it is, and for each line of the rules those that come by."""
        tests = [item.nodeid for item, _ in self.items]
        missing = self.traces.missing(tests)
        parts = [{*missing[at :: self.at_once]} for at in range(min(self.at_once, len(missing)))]
        for source in [self.told_of(partial(self.traced, part)) for part in parts]:
            with os.fdopen(source, "rb") as told:
                failing, found = pickle.load(told)
            self.joined()
            self.failing += failing
            self.traces.add(found)
        self.seconds = self.traces.seconds()
        self.lines = self.traces.lines(tests)

    def told_of(self, work: Callable[[], Any]) -> int:
        """Starts some work in a process of its own: where to read what it gives."""
        reading, writing = os.pipe()

        def tell() -> None:
            with os.fdopen(writing, "wb") as out:
                pickle.dump(work(), out)

        self.fork(tell)
        os.close(writing)
        return reading

    def traced(self, wanted: set[str]) -> tuple[list[str], dict[str, Trace]]:
        """Runs tests: those that fail, and what each comes by."""
        names = {sys.modules[module.imported].__file__: module.name for module in self.book.modules}
        found: dict[str, Trace] = {}
        places: set[Place] = set()
        known: dict[Place, Place] = {}

        def enter(frame: FrameType, event: str, argument: Any) -> Any:
            return step(frame, event, argument) if frame.f_code.co_filename in names else None

        def step(frame: FrameType, event: str, argument: Any) -> Any:
            place = names[frame.f_code.co_filename], frame.f_lineno
            places.add(known.setdefault(place, place))
            return step

        for item, _ in self.items:
            if item.nodeid in wanted:
                began = process_time()
                sys.settrace(enter)
                self.run([item])
                sys.settrace(None)
                if not self.failing:
                    found[item.nodeid] = Trace({*places}, process_time() - began)
                places.clear()
        return self.failing, found

    def run(self, items: list[pytest.Item]) -> None:
        """Runs tests one after the other."""
        for item, following in zip_longest(items, items[1:]):
            item.config.hook.pytest_runtest_protocol(item=item, nextitem=following)

    # With a change

    def try_all(self) -> None:
        """Tries every mutant, a few at a time, and prints those that survive."""
        waiting = self.mutants[::-1]
        running: dict[int, Mutant] = {}
        with TRIED.open("a", encoding="utf-8") as tried:
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
                tried.write(json.dumps([mutant.key, bool(status)]) + "\n")
                tried.flush()

    def may_notice(self, item: pytest.Item, names: set[str], mutant: Mutant) -> bool:
        """Whether a test that names these rules is about what a mutant changes."""
        if mutant.module.name in COUNTED:
            return item.path.parent.name == "counting"
        if not names:
            return item.path.parent.name == "rules"
        return not names.isdisjoint(self.book.users[mutant.place])

    def concerned(self, mutant: Mutant) -> list[pytest.Item]:
        """The tests that come by a mutant's lines: first such as killed others, the last one before all."""
        tests = 0 if mutant.lines else -1
        for line in mutant.lines:
            tests |= self.lines.get((mutant.module.name, line), 0)
        items = [
            (
                -self.killers.get(item.nodeid, -1),
                len(names - {mutant.owner}),
                self.seconds[item.nodeid],
                index,
            )
            for index, (item, names) in enumerate(self.items)
            if tests >> index & 1 and self.may_notice(item, names, mutant)
        ]
        return [self.items[index][0] for *_, index in sorted(items)]

    def trial(self, mutant: Mutant) -> None:
        """Runs tests on a mutant; the first to fail ends the process."""
        tests = self.concerned(mutant)
        patience = SECONDS + 3 * int(sum(self.seconds[test.nodeid] for test in tests))
        resource.setrlimit(resource.RLIMIT_CPU, (patience, patience))
        resource.setrlimit(resource.RLIMIT_AS, (MEMORY, MEMORY))
        self.fail = self.end_killed
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


def rules_named(item: pytest.Function) -> set[str]:
    """The rules that a test names: by its parameter, else by its class and in the code that it runs."""
    given = [*item.callspec.params.values()] if hasattr(item, "callspec") else []
    for one in given:
        if isinstance(one, registry.Rule):
            return {one.name}
    its_own = getattr(item.cls, "RULE", "")
    beside = [one for name, one in vars(item.cls or object).items() if not name.startswith(("test", "_"))]
    texts = words_in([given, its_own, beside, item.function], [])
    names = set(re.findall(r"[a-z]+(?:-[a-z]+)+", " ".join(texts))) & RULES
    return {its_own} if its_own and len(names) > FEW else names


def words_in(part: Any, seen: list[Any]) -> Iterator[str]:
    """Every text in a value, or in a function of the tests and in what it names of its module."""
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
        case FunctionType() if Path(part.__code__.co_filename).is_relative_to(ROOT / "tests"):
            for code in codes_in(part.__code__):
                yield from words_in(code.co_consts, seen)
                for name in globals_of(code):
                    yield from words_in(part.__globals__.get(name), seen)


def globals_of(code: CodeType) -> set[str]:
    """What code takes from its module; a method of the same name as something there is not meant."""
    return {str(step.argval) for step in get_instructions(code) if step.opname == "LOAD_GLOBAL"}


def codes_in(code: CodeType) -> Iterator[CodeType]:
    """Code with the code of all that is defined in it, comprehensions too."""
    yield code
    for one in code.co_consts:
        if isinstance(one, CodeType):
            yield from codes_in(one)


# The command


def survived() -> set[str]:
    """The mutants, by key, that survived when they were last tried."""
    lines = TRIED.read_text(encoding="utf-8").splitlines() if TRIED.exists() else []
    return {key for key, killed in dict(json.loads(line) for line in lines).items() if not killed}


def main() -> int:
    asked = arguments()
    book = Book()
    every = book.mutants()
    known = {name for mutant in every for name in (mutant.owner, mutant.module.name)}
    for name in asked.names:
        if name not in known:
            print(f"no module of rules/ or the counting and no rule is called {name}", file=sys.stderr)
            return 2
    chosen = changed_since(asked.changed) if asked.changed else set(asked.names) or known
    mutants = [mutant for mutant in every if {mutant.owner, mutant.module.name} & chosen]
    if asked.again:
        once_survived = survived()
        mutants = [mutant for mutant in mutants if mutant.key in once_survived]
    mutants = sampled(mutants, asked.every, asked.past)
    if asked.list or not mutants:
        print(*mutants or ["There is nothing to change."], sep="\n")
        return 0
    began = monotonic()
    check = Check(book, mutants, asked.at_once)
    if run_tests(check) == pytest.ExitCode.INTERNAL_ERROR:
        return 2
    if check.failing:
        print("These tests fail with nothing changed:", *check.failing, sep="\n  ")
        return 2
    scores = report(mutants, check.killed, Counter(map(whose, mutants if asked.again else every)))
    print(f"{monotonic() - began:.0f} s")
    if asked.again:
        return 0 if len(check.killed) == len(mutants) else 1
    before = recorded()
    if not asked.changed:
        owners = {mutant.owner for mutant in every}
        record({owner: score for owner, score in updated(before, scores).items() if owner in owners})
    return judged(scores, before)


def arguments() -> argparse.Namespace:
    """What is asked for."""
    parser = argparse.ArgumentParser(
        description="Changes rules and counting place by place and runs their tests."
    )
    parser.add_argument("names", nargs="*", metavar="MODULE|RULE", help="what to change; all by default")
    parser.add_argument(
        "--changed",
        nargs="?",
        const="HEAD",
        metavar="REV",
        help="rules that are not as they were at REV (HEAD)",
    )
    parser.add_argument("--every", type=int, default=1, metavar="N", help="each Nth change to each rule")
    parser.add_argument("--past", type=int, default=0, metavar="K", help="leave out the first K changes")
    parser.add_argument("--again", action="store_true", help="only what survived when it was last tried")
    parser.add_argument("--at-once", type=int, default=2, metavar="N", help="processes at a time (2)")
    parser.add_argument("--list", action="store_true", help="print the changes and run nothing")
    asked = parser.parse_args()
    if asked.names and asked.changed:
        parser.error("name modules and rules, or ask for those that changed")
    if asked.every < 1 or asked.past < 0:
        parser.error("--every counts from 1, --past from 0")
    return asked


def run_tests(check: Check) -> int:
    """Collects the tests and hands them to a check; the exit code of pytest."""
    plugins = [
        word for name in ("terminal", "cacheprovider", "faulthandler") for word in ("-p", f"no:{name}")
    ]
    settings = ["-o", "addopts=", "--import-mode=importlib", "--assert=plain", "-s", "--rootdir", str(ROOT)]
    return pytest.main([*settings, *plugins, *(str(ROOT / "tests" / one) for one in TESTS)], plugins=[check])


if __name__ == "__main__":
    raise SystemExit(main())
