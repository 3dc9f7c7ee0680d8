"""What holds for the repository as a whole: what lies in it, who imports whom, and that tests are run."""

from __future__ import annotations

import ast
import re
import subprocess
from collections.abc import Iterator
from functools import cache
from graphlib import TopologicalSorter
from pathlib import Path

import pytest
from hypothesis import HealthCheck, settings

from spotline.lint.cli.commands import COMMANDS
from spotline.lint.reporters import REVIEW

ROOT = Path(__file__).parent.parent

TOP = {
    ".ci",
    ".gitignore",
    ".pre-commit-hooks.yaml",
    "DEVELOPERS.md",
    "LICENSE",
    "README.md",
    "__init__.py",
    "__main__.py",
    "examples",
    "lint",
    "py.typed",
    "pyproject.toml",
    "rules",
    "schema",
    "tests",
}

FLOORS = (
    "version",
    "schema",
    "text",
    "wording",
    "findings",
    "syntax",
    "schemas",
    "model",
    "body",
    "counting",
    "remedies",
    "engine",
    "api",
    "rules",
    "team",
    "project",
    "weighing",
    "mending",
    "solving",
    "starting",
    "sheets",
    "reporters",
    "guide",
    "editor",
    "cli",
)
"""The packages from the ground up: each imports only those before it."""

HOSTS = (
    "json-schema.org",
    "docs.oasis-open.org",
    "doi.org",
    "yaml.org",
    "gnu.org",
    "pre-commit.com",
    "pages.example",
    "localhost",
    "",
)
"""Whose addresses may be written: open standards, references, what carries the hook, an example's (RFC 2606), ours."""

ADDRESS = re.compile(r"\b[a-z][a-z0-9+.-]*://(?:www\.)?([^/\s\"'<>`)\]]*)")
MAIL = re.compile(r"[\w.+-]+@(?!example\.invalid)[A-Za-z][\w-]*(?:\.[A-Za-z][\w-]*)+")
REGISTRY = re.compile(
    r"(?i)\b(?:pypi[.]org|pythonhosted[.]|npmjs[.]|debian[.]org|github[.]com|githubusercontent[.])"
)
PATH = re.compile(r"(?<![\w.~)}\]*/<-])/(?:home|root|work|tmp|Users|mnt|opt|srv|var|private)/|\b[A-Z]:\\\w")


@cache
def tracked() -> list[str]:
    """The files that git tracks, as paths from the root."""
    listed = subprocess.run(
        ["git", "ls-files", "-z"], cwd=ROOT, check=True, capture_output=True, text=True
    ).stdout
    return [name for name in listed.split("\0") if name and (ROOT / name).is_file()]


def text_of(name: str) -> str:
    """The text of a file; of a picture, the names of its parts that could say who made it, where and when."""
    if name.endswith(".png"):
        content = (ROOT / name).read_bytes()
        return " ".join(part for part in ("tEXt", "zTXt", "iTXt", "tIME", "eXIf") if part.encode() in content)
    is_any_bytes = name.startswith("tests/fuzzing/corpus/")
    return (ROOT / name).read_text(encoding="utf-8", errors="replace" if is_any_bytes else "strict")


def test_pictures_hold_nothing_but_what_they_show() -> None:
    pictures = [name for name in tracked() if name.endswith(".png")]
    assert pictures
    assert [name for name in pictures if text_of(name)] == []


# What lies in it


def test_nothing_else_lies_at_the_top() -> None:
    assert {name.partition("/")[0] for name in tracked()} <= TOP


def test_the_checks_can_be_started() -> None:
    listed = subprocess.run(
        ["git", "ls-files", "--stage", ".ci/run"], cwd=ROOT, check=True, capture_output=True, text=True
    ).stdout
    assert listed.startswith("100755 ")


def strangers(text: str) -> list[str]:
    """Addresses, mail addresses, hosts of registries and absolute paths that have no place in a text."""
    addresses = [found[0] for found in ADDRESS.finditer(text) if found[1] not in HOSTS]
    return addresses + [found[0] for one in (MAIL, REGISTRY, PATH) for found in one.finditer(text)]


def test_no_file_names_a_machine_or_a_stranger() -> None:
    found = {name: strangers(text_of(name)) for name in tracked()}
    assert {name: words for name, words in found.items() if words} == {}


@pytest.mark.parametrize(
    "parts",
    [
        ("https:", "", "club.example", "x"),
        ("see http:", "", "www.doi.org.example"),
        ("", "home", "ann", "x"),
        ("open('", "tmp", "x')"),
        ("ann" + "@club.example",),
        ("index on pypi" + ".org", "simple"),
    ],
)
def test_a_stranger_is_found(parts: tuple[str, ...]) -> None:
    assert strangers("/".join(parts))


@pytest.mark.parametrize(
    "text", ["#!/usr/bin/env bash", "> /dev/null", "https://doi.org/10.1", "a/tmp/b", "8/10"]
)
def test_ordinary_words_are_no_strangers(text: str) -> None:
    assert strangers(text) == []


# Who imports whom


def modules() -> dict[str, str]:
    """Dotted name within the package -> file, for all code that is shipped."""
    files = [name for name in tracked() if name.endswith(".py") and not name.startswith("tests/")]
    return {name.removesuffix(".py").replace("/", ".").removesuffix(".__init__"): name for name in files}


def imports(module: str, known: dict[str, str]) -> Iterator[str]:
    """The modules of the package that one of them imports, anywhere in it, for types or at run time."""
    path = known[module].removesuffix(".py").split("/")
    for node in ast.walk(ast.parse(text_of(known[module]))):
        if isinstance(node, ast.ImportFrom) and node.level:
            package = [*path[: -node.level], *(node.module.split(".") if node.module else ())]
            for alias in node.names:
                inner = ".".join([*package, alias.name])
                found = inner if inner in known else ".".join(package)
                assert found in known, f"{module} imports {found}, which is not there"
                yield found
        elif isinstance(node, (ast.Import, ast.ImportFrom)):
            names = [node.module] if isinstance(node, ast.ImportFrom) else [one.name for one in node.names]
            assert not any(name and name.startswith("spotline") for name in names), (
                f"{module}: import relatively"
            )


@cache
def graph() -> dict[str, set[str]]:
    """Every module -> the modules that it imports."""
    known = modules()
    return {module: set(imports(module, known)) for module in known}


def part_of(module: str) -> str:
    """The part of the house that a module belongs to: `lint.reporters.cards` to reporters, `rules.rest` to rules."""
    parts = module.split(".")
    return parts[1] if parts[0] == "lint" and len(parts) > 1 else parts[0]


FLOOR_OF = {part: number for number, part in enumerate(FLOORS)}


def test_every_module_has_its_floor() -> None:
    parts = {part_of(module) for module in graph()} - {"__init__", "__main__", "lint"}
    assert parts == set(FLOOR_OF)


def test_no_module_imports_a_higher_floor() -> None:
    climbing = [
        f"{module} imports {other}"
        for module, others in graph().items()
        if part_of(module) not in ("__init__", "__main__", "lint")
        for other in others
        if FLOOR_OF[part_of(other)] > FLOOR_OF[part_of(module)]
    ]
    assert climbing == []


def test_no_modules_import_each_other_in_a_circle() -> None:
    order = list(TopologicalSorter(graph()).static_order())
    assert (
        order.index("lint.text.places") < order.index("lint.findings.finding") < order.index("lint.cli.main")
    )


def listed_in_the_guide(first: str) -> list[str]:
    """The names at the beginnings of the indented lines of the guide, from a name on."""
    lines = text_of("DEVELOPERS.md").split("\n")
    start = next(at for at, line in enumerate(lines) if line.startswith(f"    {first} "))
    end = next(at for at in range(start, len(lines)) if not lines[at].startswith("    "))
    return [line.split()[0] for line in lines[start:end]]


def test_the_guide_lists_the_packages_in_their_order() -> None:
    packages = [name for name in FLOORS if name not in ("version", "schema", "rules")]
    assert listed_in_the_guide("text") == packages


def test_the_guides_walk_matches_the_imports() -> None:
    walk = listed_in_the_guide("lint.text.files")
    assert len(walk) == 10
    assert set(walk) <= set(graph())
    floors = [FLOOR_OF[part_of(module)] for module in walk]
    assert floors == sorted(floors)
    for number, module in enumerate(walk):
        assert not reached_from(module).intersection(walk[number + 1 :]), module
    # What is found and called by name (rules, reporters) is imported by none; all else by the review.
    assert reached_from("lint.project.review") >= set(walk[:7])


def reached_from(module: str) -> set[str]:
    """All modules that a module imports, itself or through others."""
    seen: set[str] = set()
    waiting = [module]
    while waiting:
        for other in graph()[waiting.pop()] - seen:
            seen.add(other)
            waiting.append(other)
    return seen


def test_no_module_is_over_400_lines() -> None:
    longest = {
        name: lines
        for name in tracked()
        if re.match(r"(lint|rules|schema)/.*\.py$", name) and not re.search(r"/built(_names)?\.py$", name)
        if (lines := text_of(name).count("\n")) > 400
    }
    assert longest == {}


def class_names() -> Iterator[tuple[str, str]]:
    """Every class, and every type that is given a name of its own, with its module."""
    for module, path in modules().items():
        for node in ast.walk(ast.parse(text_of(path))):
            if isinstance(node, ast.ClassDef):
                yield node.name.lstrip("_"), module


def test_a_class_name_stands_for_one_thing() -> None:
    where: dict[str, list[str]] = {}
    for name, module in class_names():
        where.setdefault(name, []).append(module)
    assert {name: several for name, several in where.items() if len(several) > 1} == {}


def test_the_body_stands_by_itself() -> None:
    others = {other for module, named in graph().items() if part_of(module) == "body" for other in named}
    assert {part_of(other) for other in others} == {"body"}


def test_rules_know_only_what_they_judge() -> None:
    others = {
        part_of(other) for module, named in graph().items() if part_of(module) == "rules" for other in named
    }
    judged = {"text", "wording", "findings", "model", "body", "counting", "remedies", "engine", "rules"}
    assert others <= judged


# That tests are run

WAYS_OUT = {
    "skip",
    "skipif",
    "skipIf",
    "skipUnless",
    "skipTest",
    "SkipTest",
    "xfail",
    "importorskip",
    "expectedFailure",
}


def ways_out(code: str) -> list[str]:
    """Names in a test by which it could be left out."""
    nodes = list(ast.walk(ast.parse(code)))
    named = [node.attr for node in nodes if isinstance(node, ast.Attribute)]
    named += [alias.name for node in nodes if isinstance(node, ast.ImportFrom) for alias in node.names]
    named += [node.id for node in nodes if isinstance(node, ast.Name)]
    return [name for name in named if name in WAYS_OUT]


def test_no_test_can_be_skipped() -> None:
    found = {name: ways_out(text_of(name)) for name in tracked() if re.match(r"tests/.*\.py$", name)}
    assert {name: words for name, words in found.items() if words} == {}


@pytest.mark.parametrize(
    "code",
    [
        "@pytest.mark.skip\ndef test(): ...",
        "@pytest.mark.skipif(True, reason='')\ndef test(): ...",
        "from pytest import importorskip",
        "def test(): pytest.xfail('')",
    ],
)
def test_a_way_out_is_found(code: str) -> None:
    assert ways_out(code)


CLOCK = re.compile(
    r"\b(?:perf_counter|monotonic|process_time|thread_time|time_ns|timeit|getrusage|clock_gettime)(?:_ns)?\b"
    r"|\bimport time\b|\btime\.time\b|\b(?:date\.today|datetime\.(?:now|today|utcnow))\b"
)

MAY_READ_A_CLOCK = {
    "tests/benchmark.py",
    "tests/benchmark_editor.py",
    "tests/benchmark_tools.py",
    "tests/mutation.py",
    "tests/editor/random_session.py",
    "tests/fuzzing/run.py",
    "tests/long_trials.py",
    "tests/editor/pipe_client.py",
    "tests/test_repository_hygiene.py",
}
"""Commands that measure, and clients that give up waiting for a server that says no more. And what names clocks."""


def collected() -> list[str]:
    """The code below `tests` that the README's command runs, or that such code calls."""
    return [name for name in tracked() if re.match(r"tests/(?!system/).*\.py$", name)]


def test_no_test_reads_a_clock() -> None:
    found = {name: CLOCK.findall(text_of(name)) for name in collected() if name not in MAY_READ_A_CLOCK}
    assert {name: words for name, words in found.items() if words} == {}
    assert set(collected()) >= MAY_READ_A_CLOCK


@pytest.mark.parametrize(
    "code",
    [
        "start = perf_counter()",
        "from time import monotonic_ns",
        "import time, json",
        "'-c', 'import time'",
        "date.today()",
    ],
)
def test_a_clock_is_found(code: str) -> None:
    assert CLOCK.search(code)


@pytest.mark.parametrize("code", ["the clock", "timeout=60", "today: date", "session_time", "import timed"])
def test_other_words_are_no_clock(code: str) -> None:
    assert not CLOCK.search(code)


def test_no_property_is_given_up_for_taking_long() -> None:
    """What the library that draws examples measures by default: the time of each, and that of drawing them."""
    assert settings.default.deadline is None
    assert HealthCheck.too_slow in settings.default.suppress_health_check


# What the reader meets first


def shell_blocks() -> list[str]:
    return re.findall(r"^```sh\n(.*?)^```$", text_of("README.md"), re.MULTILINE | re.DOTALL)


def test_the_readme_opens_with_the_job_in_one_paragraph() -> None:
    title, opening = text_of("README.md").split("\n\n")[:2]
    assert title == "# spotline"
    assert len(opening.split()) > 50
    assert "coach" in opening
    assert not opening.startswith(("#", "-", "`", "|", "!", ">"))


def test_the_readme_names_every_command_and_every_form_of_a_review() -> None:
    commands = text_of("README.md").partition("\n## Commands\n")[2].partition("\n## ")[0]
    assert [name for name in COMMANDS if f"`spotline {name}" not in commands] == []
    assert [form for form in REVIEW if f"`--as {form}`" not in commands] == []


def test_the_readmes_first_two_shell_blocks_are_a_command_line_each() -> None:
    blocks = shell_blocks()[:2]
    assert [block.count("\n") for block in blocks] == [1, 1]
    assert not any(block.endswith("\\\n") for block in blocks)
    assert "spotline review examples" in blocks[0]
    assert "pytest" in blocks[1]
