"""Changes to the rules and to the counting, one place at a time: what may be changed, whose it is, and which rules differ from before."""

from __future__ import annotations

import ast
import re
import subprocess
from collections.abc import Iterable, Iterator
from pathlib import Path
from typing import Any, TypeVar

from spotline.lint.engine import limits

ROOT = Path(__file__).resolve().parent.parent
RULES = ROOT / "rules"
COUNTING = ROOT / "lint" / "counting"
COUNTED = tuple(sorted(path.stem for path in COUNTING.glob("[!_]*.py")))
"""Modules of the counting that are changed too."""

OPTIONS = {
    name for name, one in vars(limits).items() if isinstance(one, type) and issubclass(one, limits.Option)
}
"""What options of rules are declared with."""

Name = tuple[str, str]
"""A module of rules, and a name in it."""

N = TypeVar("N")


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
        case ast.Call(ast.Name(name)) if name in OPTIONS:
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
    """A change to a module: its line, whose it is, and the lines of which a test must run one to notice it.

    ``place`` is the definition that it is in, ``owner`` a rule or what a module's rules share; ``lines`` is empty for what is worked out when the module
    is imported. ``key`` names the change whatever its line; of changes that read alike it counts which.
    """

    def __init__(
        self, change: Change, module: Module, name: str, line: int, owner: str, lines: range
    ) -> None:
        self.change = change
        self.module = module
        self.place = module.name, name
        self.line = line
        self.owner = owner
        self.lines = lines
        self.key = f"{module.name} {name} {owner}: {change.words}"

    def __str__(self) -> str:
        return f"{self.module.path.relative_to(ROOT)}:{self.line} {self.owner}: {self.change.words}"


class Module:
    """A module of rules, or of the counting: its tree, and what it takes from the other ones."""

    def __init__(self, name: str, text: str) -> None:
        self.name = name
        self.shared = f"shared in {name}"
        self.path = (COUNTING if name in COUNTED else RULES) / f"{name}.py"
        self.tree = ast.parse(text)
        self.code = self.compiled()
        self.imports = {
            (str(node.module), alias.name)
            for node in ast.walk(self.tree)
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

    @property
    def imported(self) -> str:
        """The name that Python knows it by."""
        return (
            f"spotline.lint.counting.{self.name}" if self.name in COUNTED else f"spotline.rules.{self.name}"
        )

    def compiled(self) -> Any:
        """The code of the tree as it now is."""
        return compile(self.tree, str(self.path), "exec")

    def uses(self, name: str) -> set[Name]:
        """What a definition names, of this module and of others that it takes from."""
        sources = {
            **{taken: source for source, taken in self.imports},
            **dict.fromkeys(self.defined, self.name),
        }
        named = {one.id for one in ast.walk(self.defined[name]) if isinstance(one, ast.Name)}
        return {(sources[one], one) for one in named & set(sources)}

    def owners(self, taken: set[Name]) -> dict[str, str]:
        """For each name the rule that it belongs to: the only one that comes by it, else what is shared."""
        uses = {
            name: {used for source, used in self.uses(name) if source == self.name} for name in self.defined
        }
        users: dict[str, set[str]] = {name: set() for name in self.defined}
        for name, node in self.defined.items():
            owner = rule_of(node) or (self.shared if (self.name, name) in taken else "")
            for used in within_reach(name, uses) if owner else ():
                users[used].add(owner)
        return {name: next(iter(one)) if len(one) == 1 else self.shared for name, one in users.items()}

    def mutants(self, taken: set[Name]) -> Iterator[Mutant]:
        """Every change to the module; ``taken`` are the names that modules take from one another."""
        owners = self.owners(taken)
        for name, top in self.defined.items():
            for change, line, lines in changes_within(top, top.lineno, range(0)):
                yield Mutant(change, self, name, line, owners[name], lines)


def rule_of(node: ast.stmt) -> str:
    """The rule that a function declares, else nothing."""
    match node:
        case ast.FunctionDef(decorator_list=[ast.Call(ast.Name("rule"), [ast.Constant(str(name)), *_])]):
            return name
    return ""


def within_reach(name: N, uses: dict[N, set[N]]) -> set[N]:
    reached: set[N] = set()
    waiting = {name}
    while waiting:
        reached |= waiting
        waiting = {used for one in waiting for used in uses.get(one, ())} - reached
    return reached


def taken_from(modules: Iterable[Module]) -> set[Name]:
    """The names that modules take from one another."""
    return set().union(*(module.imports for module in modules))


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


# What has changed since


def modules_now() -> list[Module]:
    """The modules as they are."""
    paths = [*sorted(RULES.glob("[!_]*.py")), *(COUNTING / f"{name}.py" for name in COUNTED)]
    return [Module(path.stem, path.read_text(encoding="utf-8")) for path in paths]


def modules_at(revision: str) -> list[Module]:
    """The modules as git has them at a revision."""
    wanted = rf"rules/[^_].*[.]py|lint/counting/({'|'.join(COUNTED)})[.]py"
    paths = git("ls-tree", "--name-only", revision, "rules/", "lint/counting/").split()
    return [
        Module(Path(path).stem, git("show", f"{revision}:{path}"))
        for path in paths
        if re.fullmatch(wanted, path)
    ]


def git(*words: str) -> str:
    return subprocess.run(["git", *words], cwd=ROOT, check=True, capture_output=True, text=True).stdout


def rules_using(modules: list[Module]) -> dict[Name, set[str]]:
    """For each definition the rules that come by it, by way of other modules too."""
    uses = {(module.name, name): module.uses(name) for module in modules for name in module.defined}
    users: dict[Name, set[str]] = {place: set() for place in uses}
    for module in modules:
        for name, node in module.defined.items():
            if rule := rule_of(node):
                for place in within_reach((module.name, name), uses) & users.keys():
                    users[place].add(rule)
    return users


def made_of(modules: list[Module]) -> dict[str, set[str]]:
    """The code of each rule, and of all that it uses in any of the modules; and of what a module's rules share."""
    code = {
        (module.name, name): ast.dump(node) for module in modules for name, node in module.defined.items()
    }
    uses = {(module.name, name): module.uses(name) for module in modules for name in module.defined}
    taken = taken_from(modules)
    parts: dict[str, set[str]] = {}
    for module in modules:
        owners = module.owners(taken)
        parts[module.shared] = {code[module.name, name] for name in owners if owners[name] == module.shared}
        for name, node in module.defined.items():
            if rule_of(node):
                parts[rule_of(node)] = {code.get(one, "") for one in within_reach((module.name, name), uses)}
    return parts


def differing(now: dict[str, set[str]], then: dict[str, set[str]]) -> set[str]:
    """What is made of other code than before."""
    return {owner for owner, parts in now.items() if parts and parts != then.get(owner)}


def changed_since(revision: str) -> set[str]:
    """The rules, and what modules share, whose code is not as it was at a revision, wherever it stood."""
    return differing(made_of(modules_now()), made_of(modules_at(revision)))
