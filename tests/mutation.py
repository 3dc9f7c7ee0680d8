"""Checks the rules' tests: changes rules/*.py at one place at a time, and looks whether a test then fails.

    python tests/mutation.py [FAMILY ...] [--rule NAME] [--list] [--least PERCENT]

A change that no test notices survives: it does the same as the original, or a test is missing. Prints those that
survive, then how many were killed for each rule. Exit code 0 if at least 90 percent were killed, 1 if fewer, 2 if
a test fails with nothing changed.

The tests are collected once. One run of them under a trace tells which lines each of them comes by; then every
change is made in a process forked for it, which runs the tests that come by, until the first that fails.
"""

from __future__ import annotations

import argparse
import ast
import gc
import os
import pickle
import resource
import shutil
import sys
import tempfile
from collections import Counter
from collections.abc import Callable, Iterator
from functools import partial
from graphlib import TopologicalSorter
from importlib import import_module
from math import ceil
from pathlib import Path
from time import monotonic
from types import FrameType
from typing import Any

import pytest

from spotline.lint.engine import registry

ROOT = Path(__file__).resolve().parent.parent
AT_ONCE = 2
SECONDS = 10
"""Of processor time for one mutant, beside three times what all tests take; past it, it hangs: killed."""
MEMORY = 4 << 30
"""Bytes for one mutant, since one that hangs may also hoard."""
FAILED = 1
KILLER = "killer"
"""The file in which a mutant's process names the test that killed it."""

Tests = int
"""Some of the tests: one bit each, in the order in which they were collected."""


# What is changed


class Change:
    """``new`` instead of what stands at ``place``, a field of the node ``holder`` or an index into a list."""

    def __init__(self, holder: Any, place: Any, words: str, new: ast.AST) -> None:
        self.holder = holder
        self.place = place
        self.words = words
        self.new = new

    def make(self) -> None:
        """Changes the tree for good."""
        held = self.holder if isinstance(self.place, int) else self.holder.__dict__
        ast.fix_missing_locations(ast.copy_location(self.new, held[self.place]))
        held[self.place] = self.new


NEIGHBOURS: dict[type[ast.cmpop], type[ast.cmpop]] = {
    ast.Lt: ast.LtE,
    ast.LtE: ast.Lt,
    ast.Gt: ast.GtE,
    ast.GtE: ast.Gt,
    ast.Eq: ast.NotEq,
    ast.NotEq: ast.Eq,
    ast.In: ast.NotIn,
    ast.NotIn: ast.In,
    ast.Is: ast.IsNot,
    ast.IsNot: ast.Is,
}
OPPOSITES = {"min": "max", "max": "min", "any": "all", "all": "any"}


def replacements(node: ast.AST) -> Iterator[ast.AST]:
    """What may stand in a node's place, wherever the node stands."""
    match node:
        case ast.Compare(left, operators, others):
            for index, operator in enumerate(operators):
                turned = [*operators[:index], NEIGHBOURS[type(operator)](), *operators[index + 1 :]]
                yield ast.Compare(left, turned, others)
        case ast.BoolOp(operator, values):
            yield ast.BoolOp(ast.Or() if isinstance(operator, ast.And) else ast.And(), values)
            for index in range(len(values)):
                rest = without(values, index)
                yield ast.BoolOp(operator, rest) if len(rest) > 1 else rest[0]
        case ast.UnaryOp(ast.Not(), operand):
            yield operand
        case ast.BinOp(left, ast.Add(), right):
            yield ast.BinOp(left, ast.Sub(), right)
        case ast.BinOp(left, ast.Sub(), right):
            yield ast.BinOp(left, ast.Add(), right)
        case ast.AugAssign(target, ast.Add(), value):
            yield ast.AugAssign(target, ast.Sub(), value)
        case ast.AugAssign(target, ast.Sub(), value):
            yield ast.AugAssign(target, ast.Add(), value)
        case ast.Constant(bool(value)):
            yield ast.Constant(not value)
        case ast.Constant(int(value)):
            yield ast.Constant(value + 1)
        case ast.Constant(float(value)):
            yield ast.Constant(value + 1)
            yield ast.Constant(value + 0.5)
        case ast.Call(ast.Name(name), arguments, keywords) if name in OPPOSITES:
            yield ast.Call(ast.Name(OPPOSITES[name], ast.Load()), arguments, keywords)


def without(members: list[Any], index: int) -> list[Any]:
    return members[:index] + members[index + 1 :]


def conditions(node: ast.AST) -> Iterator[tuple[Any, Any, ast.expr]]:
    """Where a node holds conditions; those for what types alone import are none."""
    match node:
        case ast.If(ast.Name("TYPE_CHECKING")):
            return
        case ast.If(test) | ast.IfExp(test) | ast.While(test):
            yield node, "test", test
        case ast.comprehension(ifs=tests):
            yield from ((tests, index, test) for index, test in enumerate(tests))


def defaults(option: ast.Call) -> Iterator[tuple[Any, Any, ast.expr, ast.expr]]:
    """An option's list or table without its first member, and without each of its other defaults."""
    match option.args[1]:
        case ast.Tuple(first) as default:
            yield option.args, 1, default, ast.Tuple(first[1:], ast.Load())
        case ast.Dict(keys, values) as default if keys:
            yield option.args, 1, default, ast.Dict(keys[1:], values[1:])
        case ast.Call() as default:
            rest = ast.Slice(ast.Constant(1))
            yield option.args, 1, default, ast.Subscript(default, rest, ast.Load())
    for keyword in option.keywords:
        match keyword.value:
            case ast.Tuple(others) as default if keyword.arg == "by":
                for index in range(len(others)):
                    yield keyword, "value", default, ast.Tuple(without(others, index), ast.Load())


def changes_to(child: ast.AST, holder: Any, place: Any) -> Iterator[Change]:
    """Every change to one node."""
    for new in replacements(child):
        yield Change(holder, place, f"{short(child)} -> {short(new)}", new)
    for held, at, test in conditions(child):
        for value in (True, False):
            yield Change(held, at, f"if {short(test)} -> {value}", ast.Constant(value))
    match child:
        case ast.Expr(ast.Yield() | ast.YieldFrom()) if not is_guarded(holder, child):
            yield Change(holder, place, f"{short(child)} -> pass", ast.Pass())
        case ast.Call(ast.Name("Option")):
            for held, at, old, new in defaults(child):
                yield Change(held, at, f"{short(old)} -> {short(new)}", new)


def is_guarded(body: list[ast.stmt], statement: ast.stmt) -> bool:
    """Whether a statement is all that hangs on a condition: without it is as if that were never true."""
    return body == [statement]


def short(node: ast.AST) -> str:
    words = " ".join(ast.unparse(node).split())
    return words if len(words) <= 70 else f"{words[:67]}..."


# Where it stands


class Mutant:
    """A change to a module: its line, its rule, and the lines of which a test must run one to notice it.

    ``lines`` is empty for what is worked out when the module is imported.
    """

    def __init__(self, change: Change, module: Module, line: int, rule: str, lines: range) -> None:
        self.change = change
        self.module = module
        self.line = line
        self.rule = rule
        self.lines = lines

    def __str__(self) -> str:
        return f"rules/{self.module.name}.py:{self.line} {self.rule}: {self.change.words}"


class Module:
    """A module of rules: its tree, and what it takes from the other ones."""

    def __init__(self, path: Path) -> None:
        self.name = path.stem
        self.path = path
        self.tree = ast.parse(path.read_text(encoding="utf-8"))
        self.code = self.compiled()
        self.imports = {
            (node.module, alias.name)
            for node in self.tree.body
            if isinstance(node, ast.ImportFrom) and node.level == 1
            for alias in node.names
        }
        self.defined: dict[str, ast.stmt] = {}
        for node in self.tree.body:
            match node:
                case ast.FunctionDef(name) | ast.ClassDef(name):
                    self.defined[name] = node
                case ast.Assign([ast.Name(name)]) | ast.AnnAssign(ast.Name(name)) if name != "TYPE_CHECKING":
                    self.defined[name] = node

    def compiled(self) -> Any:
        """The code of the tree as it now is."""
        return compile(self.tree, str(self.path), "exec")

    def owners(self, shared: set[str]) -> dict[str, str]:
        """For each name the rule that it belongs to: the only one that comes by it, else "shared"."""
        uses = {
            name: {one.id for one in ast.walk(node) if isinstance(one, ast.Name)} & set(self.defined)
            for name, node in self.defined.items()
        }
        users: dict[str, set[str]] = {name: set() for name in self.defined}
        for name, node in self.defined.items():
            reached = {rule_of(node)} if rule_of(node) else {"shared"} if name in shared else set()
            for used in within_reach(name, uses) if reached else ():
                users[used] |= reached
        return {name: next(iter(rules)) if len(rules) == 1 else "shared" for name, rules in users.items()}

    def mutants(self, shared: set[str]) -> Iterator[Mutant]:
        """Every change to the module; ``shared`` are the names that others take from it."""
        owners = self.owners(shared)
        for name, top in self.defined.items():
            for change, line, lines in changes_within(top, top.lineno, range(0)):
                yield Mutant(change, self, line, owners[name], lines)


def rule_of(node: ast.stmt) -> str:
    """The rule that a function declares, else nothing."""
    match node:
        case ast.FunctionDef(decorator_list=[ast.Call(ast.Name("rule"), [ast.Constant(str(name)), *_])]):
            return name
    return ""


def within_reach(name: str, uses: dict[str, set[str]]) -> set[str]:
    reached: set[str] = set()
    waiting = {name}
    while waiting:
        reached |= waiting
        waiting = {used for one in waiting for used in uses[one]} - reached
    return reached


def changes_within(node: ast.AST, line: int, lines: range) -> Iterator[tuple[Change, int, range]]:
    """Every change to what a node holds, with its line, and the lines that run when it counts."""
    for holder, place, child in children(node):
        if isinstance(child, ast.keyword) and child.arg == "strict":
            continue  # for pairs that are known to be as many
        its_line = getattr(child, "lineno", line)
        its_lines = head_of(child) if isinstance(child, ast.stmt) else lines
        for change in changes_to(child, holder, place):
            yield change, its_line, its_lines
        yield from changes_within(child, its_line, its_lines)


def children(node: ast.AST) -> Iterator[tuple[Any, Any, ast.AST]]:
    """The nodes in a node, each with what holds it and where."""
    for field, value in ast.iter_fields(node):
        if isinstance(value, ast.AST):
            yield node, field, value
        elif isinstance(value, list):
            yield from ((value, index, one) for index, one in enumerate(value) if isinstance(one, ast.AST))


def head_of(node: ast.stmt) -> range:
    """The lines of a statement without the statements in it; none for what stands before a function."""
    if isinstance(node, ast.FunctionDef):
        return range(0)
    inner = [one.lineno for one in ast.walk(node) if isinstance(one, ast.stmt) and one is not node]
    return range(node.lineno, max(node.lineno + 1, min(inner, default=(node.end_lineno or node.lineno) + 1)))


class Book:
    """The modules of rules, those that others take from before them."""

    def __init__(self) -> None:
        modules = [Module(path) for path in (ROOT / "rules").glob("[!_]*.py")]
        known = {module.name: module for module in modules}
        needs = {module.name: {str(source) for source, _ in module.imports} for module in modules}
        self.modules = [known[name] for name in TopologicalSorter(needs).static_order()]
        for module in self.modules:
            import_module(f"spotline.rules.{module.name}")

    def mutants(self) -> list[Mutant]:
        """Every change to every module."""
        taken = set().union(*(module.imports for module in self.modules))
        return [
            mutant
            for module in self.modules
            for mutant in module.mutants({name for source, name in taken if source == module.name})
        ]

    def using(self, module: Module) -> set[str]:
        """The names of a module and of those that take from it, by way of others too."""
        using = {module.name}
        for one in self.modules:
            if any(source in using for source, _ in one.imports):
                using.add(one.name)
        return using

    def install(self, changed: Module | None = None) -> None:
        """Runs the modules anew, ``changed`` from its tree as it now is. Tests hold on to rules: they stay."""
        declared = dict(registry._RULES)
        registry._RULES.clear()
        for module in self.modules:
            code = module.compiled() if module is changed else module.code
            exec(code, sys.modules[f"spotline.rules.{module.name}"].__dict__)
        for name, rule in declared.items():
            for slot in registry.Rule.__slots__:
                setattr(rule, slot, getattr(registry._RULES[name], slot))
            registry._RULES[name] = rule


# Running the tests


class Check:
    """A plugin of pytest that runs the collected tests for every mutant, instead of once."""

    def __init__(self, book: Book, mutants: list[Mutant]) -> None:
        self.book = book
        self.mutants = mutants
        self.failing: list[str] = []
        self.killed: set[Mutant] = set()
        self.killers: set[str] = set()
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
        wanted = set().union(*(self.book.using(mutant.module) for mutant in self.mutants))
        self.items = [item for item in session.items if family_tested(item) in wanted]
        with tempfile.TemporaryDirectory() as folder:
            self.folder = Path(folder)
            gc.freeze()
            if not self.failing:
                self.failing, self.lines = self.traced()
            if not self.failing:
                self.try_all()
        return True

    # With nothing changed

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
        names = {str(module.path): module.name for module in self.book.modules}
        lines: dict[tuple[str, int], Tests] = {}
        test = 1

        def enter(frame: FrameType, event: str, argument: Any) -> Any:
            return step(frame, event, argument) if frame.f_code.co_filename in names else None

        def step(frame: FrameType, event: str, argument: Any) -> Any:
            place = names[frame.f_code.co_filename], frame.f_lineno
            lines[place] = lines.get(place, 0) | test
            return step

        self.book.install()
        for item in self.items:
            sys.settrace(enter)
            self.run([item])
            sys.settrace(None)
            test <<= 1
        return lines

    def run(self, items: list[pytest.Item]) -> None:
        """Runs tests one after the other."""
        for item, following in zip(items, [*items[1:], None], strict=True):
            item.config.hook.pytest_runtest_protocol(item=item, nextitem=following)

    # With a change

    def try_all(self) -> None:
        """Tries every mutant, a few at a time, and prints those that survive."""
        waiting = self.mutants[::-1]
        running: dict[int, Mutant] = {}
        while waiting or running:
            if waiting and len(running) < AT_ONCE:
                mutant = waiting.pop()
                running[self.fork(partial(self.trial, mutant))] = mutant
                continue
            process, status = self.joined()
            mutant = running.pop(process)
            if status:
                self.killed.add(mutant)
            else:
                print(mutant, flush=True)

    def concerned(self, mutant: Mutant) -> list[pytest.Item]:
        """The tests that come by a mutant's lines: those of its rule first, of these such as killed others."""
        families = self.book.using(mutant.module) if mutant.rule == "shared" else {mutant.module.name}
        tests = 0 if mutant.lines else -1
        for line in mutant.lines:
            tests |= self.lines.get((mutant.module.name, line), 0)
        items = [
            item
            for index, item in enumerate(self.items)
            if tests >> index & 1 and family_tested(item) in families
        ]
        return sorted(
            items, key=lambda item: (rule_tested(item) != mutant.rule, item.nodeid not in self.killers)
        )

    def trial(self, mutant: Mutant) -> None:
        """Runs tests on a mutant; the first to fail ends the process."""
        resource.setrlimit(resource.RLIMIT_CPU, (self.patience, self.patience))
        resource.setrlimit(resource.RLIMIT_AS, (MEMORY, MEMORY))
        self.fail = self.end_killed
        tests = self.concerned(mutant)
        mutant.change.make()
        self.book.install(mutant.module)
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
            self.killers.add((folder / KILLER).read_text(encoding="utf-8"))
        shutil.rmtree(folder)
        return process, status


def rule_tested(item: pytest.Item) -> str:
    """The rule that a test is about, by its parameter or its class; empty where it is about several."""
    rule = rule_given(item)
    return rule.name if rule else getattr(getattr(item, "cls", None), "RULE", "")


def family_tested(item: pytest.Item) -> str:
    """The family of the rule that a test is given, else the one that its module is about."""
    rule = rule_given(item)
    return rule.family if rule else item.path.stem.removeprefix("test_")


def rule_given(item: pytest.Item) -> registry.Rule | None:
    given = getattr(item, "callspec", None)
    rule = given.params.get("rule") if given else None
    return rule if isinstance(rule, registry.Rule) else None


# The command


def main() -> int:
    book = Book()
    names = [module.name for module in book.modules]
    parser = argparse.ArgumentParser(description="Changes rules/*.py place by place and runs their tests.")
    parser.add_argument("families", nargs="*", metavar="FAMILY", help="modules of rules/; all by default")
    parser.add_argument("--rule", help="only changes to one rule")
    parser.add_argument("--list", action="store_true", help="print the changes and run nothing")
    parser.add_argument("--least", type=float, default=90, metavar="PERCENT", help="how many must be killed")
    asked = parser.parse_args()
    for name in set(asked.families) - set(names):
        parser.error(f"no module of rules/ is called {name}")
    chosen = asked.families or names
    mutants = [
        mutant
        for mutant in book.mutants()
        if mutant.module.name in chosen and asked.rule in (None, mutant.rule)
    ]
    if not mutants:
        parser.error("there is nothing to change")
    if asked.list:
        print(*mutants, sep="\n")
        return 0
    began = monotonic()
    check = Check(book, mutants)
    files = {name for mutant in mutants for name in book.using(mutant.module)}
    tests = [
        path for name in sorted(files) if (path := ROOT / "tests" / "rules" / f"test_{name}.py").exists()
    ]
    settings = ["-o", "addopts=", "--import-mode=importlib", "--assert=plain", "-s"]
    plugins = [
        word for name in ("terminal", "cacheprovider", "faulthandler") for word in ("-p", f"no:{name}")
    ]
    tests.append(ROOT / "tests" / "rules" / "test_examples.py")
    pytest.main([*settings, *plugins, "--rootdir", str(ROOT), *map(str, tests)], plugins=[check])
    if check.failing:
        print("These tests fail with nothing changed:", *check.failing, sep="\n  ")
        return 2
    return report(mutants, check.killed, asked.least, monotonic() - began)


def report(mutants: list[Mutant], killed: set[Mutant], least: float, seconds: float) -> int:
    """Prints the table, by family and rule; the exit code."""
    made, ended = Counter[tuple[str, str]](), Counter[tuple[str, str]]()
    for mutant in mutants:
        for row in ((mutant.module.name, mutant.rule), (mutant.module.name, ""), ("", "")):
            made[row] += 1
            ended[row] += mutant in killed
    print(f"\n{'':42}{'mutants':>9}{'killed':>9}{'survived':>10}{'score':>9}")
    for module, rule in sorted(made, reverse=True):
        count, done = made[module, rule], ended[module, rule]
        name = f"  {rule}" if rule else module or "all"
        print(f"{name:42}{count:9}{done:9}{count - done:10}{done / count:9.1%}")
    print(f"{seconds:.0f} s")
    return 0 if 100 * len(killed) >= least * len(mutants) else 1


if __name__ == "__main__":
    raise SystemExit(main())
