"""What is worked out is worked out by the house's own code: no solver comes with the command."""

from __future__ import annotations

import json
import re
import subprocess
import sys
import tomllib
from importlib.metadata import packages_distributions
from pathlib import Path

from spotline.tests.solving.faulty import FAULTS

ROOT = Path(__file__).parent.parent.parent

SOLVERS = {"highspy", "ortools", "scipy", "numpy", "pulp", "pyomo", "cvxpy", "z3-solver", "python-sat", "mip"}

WORKED_OUT = """\
import json, pkgutil, sys
from datetime import date
from importlib import import_module
from spotline.lint import solving
from spotline.lint.cli.solving import solve as command
from spotline.lint.solving.solve import Ask, solve
for one in pkgutil.iter_modules(solving.__path__):
    import_module(f"{solving.__name__}.{one.name}")
cards = solve(sys.argv[1], date(2026, 1, 5), Ask()).cards
print(json.dumps([len(cards), sorted({name.partition(".")[0] for name in sys.modules})]))
"""


def plain_dependencies() -> set[str]:
    """The packages that come with the command alone, without any extra."""
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    return {re.split(r"[<>=~!\[; ]", one)[0].casefold() for one in project["dependencies"]}


def test_the_command_needs_no_solver() -> None:
    assert plain_dependencies()
    assert not plain_dependencies() & SOLVERS


def test_no_solver_is_imported_where_proposals_are_worked_out(tmp_path: Path) -> None:
    (tmp_path / ".git").mkdir()
    path = tmp_path / "plan.programme.yaml"
    path.write_text(FAULTS["no knee flexion"][0], encoding="utf-8")
    run = subprocess.run(
        [sys.executable, "-c", WORKED_OUT, str(path)], capture_output=True, text=True, check=True
    )
    cards, imported = json.loads(run.stdout)
    assert cards  # it was worked out
    of_others = {
        distribution.casefold()
        for name, several in packages_distributions().items()
        if name in imported and name not in sys.stdlib_module_names and name != "spotline"
        for distribution in several
    }
    assert not {name.casefold() for name in imported} & SOLVERS
    assert not of_others & SOLVERS
    assert {"spotline", "json"} <= set(imported)  # what is imported is seen
