"""A finding is complete when it is made: nothing changes it afterwards."""

from __future__ import annotations

import ast
from collections.abc import Callable
from pathlib import Path

import pytest

from spotline.lint.findings import finding
from spotline.lint.findings.finding import DraftFinding, Edit, Finding, Related
from spotline.lint.project.results import Review
from spotline.lint.text.places import Text

CLASSES = (DraftFinding, Finding, Related, Edit)
ATTRIBUTES = {name for one in CLASSES for name in one.__slots__}

NO_FINDINGS = {
    ("lint/model/read_programme.py", "programme.weeks"),
    ("lint/model/read_progression.py", "found.weeks"),
    ("lint/engine/limits.py", "one.words"),
    ("lint/engine/demands.py", "demand.rule"),
    ("lint/engine/demands.py", "demand.weeks"),
    ("lint/model/changes.py", "other.words"),
}
"""What is assigned to and only shares a name with a finding's attribute."""


def tree(path: str | Path) -> ast.Module:
    return ast.parse(Path(path).read_text(encoding="utf-8"))


@pytest.mark.parametrize("one", CLASSES, ids=lambda one: one.__name__)
def test_every_attribute_is_final_so_that_the_type_checker_watches_it(one: type) -> None:
    (declared,) = (
        node
        for node in ast.walk(tree(finding.__file__))
        if isinstance(node, ast.ClassDef) and node.name == one.__name__
    )
    final = [
        node.target.attr
        for node in ast.walk(declared)
        if isinstance(node, ast.AnnAssign)
        and isinstance(node.target, ast.Attribute)
        and ast.unparse(node.annotation).partition("[")[0] == "Final"
    ]
    assert sorted(final) == sorted(one.__slots__)  # type: ignore[attr-defined]


def assigned(code: ast.AST) -> set[str]:
    """Assignments to attributes that are called like a finding's, but for an object's own."""
    return {
        ast.unparse(node)
        for node in ast.walk(code)
        if isinstance(node, ast.Attribute)
        and isinstance(node.ctx, (ast.Store, ast.Del))
        and node.attr in ATTRIBUTES
        and ast.unparse(node.value) != "self"
    }


def test_no_code_assigns_to_the_attribute_of_a_finding(root: Path) -> None:
    files = [*(root / "lint").rglob("*.py"), *(root / "rules").rglob("*.py")]
    found = {(str(path.relative_to(root)), words) for path in files for words in assigned(tree(path))}
    assert found == NO_FINDINGS


@pytest.mark.parametrize(
    "code", ["one.counted = 'x'", "one.weeks += (1,)", "del one.why", "one.place, rest = x", "a.b.rule = 1"]
)
def test_an_assignment_is_found(code: str) -> None:
    assert assigned(ast.parse(code))


FILES = {
    "ida.athlete.yaml": "name: Ida\nlevel: novice\n",
    "bad.athlete.yaml": "- a list\n",
}
PLAN = """\
programme: Test
athletes: [ida.athlete.yaml, bad.athlete.yaml, {athlete: {name: Bo}, adjust: [{exercise: plank, sets: 40}]}]
waivers: [{rule: exercise-twice, reason: meant}]
weeks: 4
sessions:
  - session: A
    exercises:
      - {exercise: plank, sets: {1-2: 30, 3-4: 31}}
      - {exercise: leg press, sets: {1-2: 11, 3-4: 12}, reps: 8, rir: 1}
      - {exercise: Nordic curl, sets: 3, reps: 200}
      - {exercise: Nordic curl, sets: 3, reps: 200, unknown: 1}
"""


def test_nothing_is_assigned_once_it_is_made(
    monkeypatch: pytest.MonkeyPatch, reviewed: Callable[..., Review]
) -> None:
    """A review of all kinds of findings in which a second assignment to an attribute raises."""

    def assign(self: object, name: str, value: object) -> None:
        if hasattr(self, name):
            raise AttributeError(f"{name} of a {type(self).__name__} is assigned twice")
        object.__setattr__(self, name, value)

    for one in CLASSES:
        monkeypatch.setattr(one, "__setattr__", assign)
    related = Related(Text("a", "x").place(0, 1), "x")
    with pytest.raises(AttributeError, match="words of a Related is assigned twice"):
        related.words = "y"  # type: ignore[misc]
    (file,) = reviewed(PLAN, FILES).files
    assert file.faults == []
    found = [said for one in file.findings for said in (one, *one.follows)]
    found += [one.finding for one in file.waived]
    assert any(one.athletes for one in found)
    assert any(one.told for one in found)
    assert {"athlete-unreadable", "key-unknown", "number-implausible", "exercise-twice"} <= {
        one.rule for one in found
    }
