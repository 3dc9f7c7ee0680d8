"""Hostile files through every command that reads, and through the editor's server: what may come of each.

Run by itself it takes every case through every command, each in a process of its own, and prints a table:

    python tests/hostile_commands.py [--every N] [COMMAND ...]

With ``--every 3`` it takes each third case.
"""

from __future__ import annotations

import json
import os
import re
import shutil
import subprocess
import sys
import tempfile
from collections import Counter
from collections.abc import Iterator
from pathlib import Path
from typing import Any

if __name__ == "__main__":
    sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from spotline.tests.hostile_files import KINDS, PLAN, Case, cases

SECONDS = 5.0
"""Seconds of CPU that a case may take: no clock on the wall, so a busy machine changes little."""
MEGABYTES = 300

LOCATED = re.compile(r"(?m)^.+?:[0-9]+:[0-9]+: (error|warning|note): [a-z0-9-]+: \S")
PLACED = re.compile(r"(?m)^.+?:[0-9]+:[0-9]+: \S|\bline [0-9]+: \S")
SAID = re.compile(r"(?m)^spotline: \S")
FAULT = re.compile(r"Traceback|fault of our own|rule-failed|nothing is told of|failed \(|has not answered")

PLAN_NAME = "plan.programme.yaml"

COMMANDS: dict[str, list[str]] = {
    # FILE stands for the programme that is asked about, PATHS for what the case names
    "review": ["review", "--as", "lines", "--", "PATHS"],
    "review --changed": ["review", "--as", "lines", "--changed"],
    "review --record-known": ["review", "--record-known", "--", "PATHS"],
    "review --report": ["review", "--as", "short", "--report", "--", "PATHS"],
    "review --jobs": ["review", "--as", "lines", "--jobs", "2", "--", "PATHS"],
    "review --as cards": ["review", "--as", "cards", "--", "PATHS"],
    "review --as json": ["review", "--as", "json", "--", "PATHS"],
    "review --as sarif": ["review", "--as", "sarif", "--", "PATHS"],
    "review --as junit": ["review", "--as", "junit", "--", "PATHS"],
    "review --as annotations": ["review", "--as", "annotations", "--", "PATHS"],
    "review --as code-quality": ["review", "--as", "code-quality", "--", "PATHS"],
    "mend": ["mend", "--", "PATHS"],
    "mend --show": ["mend", "--spelling", "--show", "--", "PATHS"],
    "mend --ask": ["mend", "--ask", "--", "PATHS"],
    "mend --undo": ["mend", "--undo"],
    "mend --solve": ["mend", "--solve", "--", "FILE"],
    "compare": ["compare", "--", "FILE", "before/plan.programme.yaml"],
    "compare --since": ["compare", "--as", "json", "--since", "HEAD"],
    "tally": ["tally", "--", "PATHS"],
    "tally --as json": ["tally", "--as", "json", "--by", "action", "--", "PATHS"],
    "sheet": ["sheet", "--to", "-", "--", "FILE"],
    "sheet --as csv": ["sheet", "--as", "csv", "--to", "-", "--", "FILE"],
    "exercises": ["exercises", "--", "wobble"],
    "rules": ["rules"],
    "guide": ["guide", "weeks"],
    "schema": ["schema", "programme"],
    "set-up": ["set-up", "--name", "Mara"],
    "editor": ["editor"],
}

READS_NOTHING = ("rules", "guide", "schema")
"""Commands that read no file of a team: what lies there is nothing to them."""

PLAIN = ("exercises", "set-up", "mend --undo", *READS_NOTHING)
"""Commands that review nothing: the place of a finding is told by those that do."""


def name_of_file(case: Case) -> str:
    """The programme of a case that a command is asked about."""
    names = [name for name in case.files if name.endswith(".programme.yaml")]
    return names[-1] if names else PLAN_NAME


def words_for(command: str, case: Case) -> list[str]:
    """The words of a command, for a case."""
    filled = {"PATHS": case.words, "FILE": [name_of_file(case)]}
    return [word for part in COMMANDS[command] for word in filled.get(part, [part])]


def codes_of(command: str, case: Case) -> set[int]:
    """The exit codes that are right: 1 is for what blocks, 2 for a job that was not done."""
    if command in READS_NOTHING:
        return {0}
    if command.startswith("review --as") or command in ("review", "review --report", "review --jobs"):
        return case.codes
    if command in ("review --changed", "mend", "mend --show", "mend --ask"):
        return case.codes | {0, 1}  # what is not committed may not count; what is mended blocks no more
    return {
        "review --record-known": {0, 1, 2},  # 1: what may not be on record blocks
        "mend --undo": {2},
        "mend --solve": {0, 1, 2},
        "exercises": {0, 1, 2},
        "editor": {0},
    }.get(command, {0, 2})


class Bench:
    """A place in which cases are laid out, and the process that runs commands there."""

    def __init__(self, folder: Path, root: Path) -> None:
        home = folder / "home"
        home.mkdir()
        (home / "spotline").symlink_to(root, target_is_directory=True)
        steering = ("PYTHON", "GIT_", "PRE_COMMIT", "XDG_")
        kept = {name: value for name, value in os.environ.items() if not name.startswith(steering)}
        self.environment = {**kept, "PYTHONPATH": str(home), "HOME": str(home), "GIT_CONFIG_NOSYSTEM": "1"}
        self.folder = folder
        self.repository = folder / "repository"
        self._commit()
        self.process = subprocess.Popen(
            [sys.executable, str(root / "tests" / "hostile_server.py")],
            env=self.environment,
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            text=True,
        )

    def _commit(self) -> None:
        """A repository whose last commit holds the sound programme."""
        self.repository.mkdir()
        (self.repository / PLAN_NAME).write_text(PLAN)
        who = ["-c", "user.name=Scratch", "-c", "user.email=scratch@example.invalid"]
        for words in (
            ["init", "--quiet"],
            ["add", "--all"],
            [*who, "commit", "--quiet", "--message", "Sound"],
        ):
            subprocess.run(["git", *words], cwd=self.repository, env=self.environment, check=True)

    def close(self) -> None:
        assert self.process.stdin is not None
        self.process.stdin.close()
        self.process.wait()

    def result_of(self, command: str, case: Case) -> dict[str, Any]:
        """What came of a case; its files are gone afterwards, as there are many and some are large."""
        place = self.folder / "place"
        root = place / "team"
        try:
            root.mkdir(parents=True)
            if command in ("review --changed", "compare --since", "review --report"):
                shutil.copytree(self.repository / ".git", root / ".git")
            else:
                (root / ".git").mkdir()
            if command == "compare":
                (root / "before").mkdir()
                (root / "before" / PLAN_NAME).write_text(PLAN)
            (self.folder / "outside.yaml").write_text("name: Outside\n")
            for name, made in case.files.items():
                if callable(made):
                    made(root / name)
                else:
                    (root / name).write_bytes(made)
            assert self.process.stdin is not None
            assert self.process.stdout is not None
            print(json.dumps([str(root), words_for(command, case)]), file=self.process.stdin, flush=True)
            result: dict[str, Any] = json.loads(self.process.stdout.readline())
            return result
        finally:
            shutil.rmtree(place)


def faults(command: str, case: Case, result: dict[str, Any]) -> Iterator[str]:
    """What is wrong with what came of a case, in the words of the table."""
    told = result["out"] + result["err"]
    if FAULT.search(told):
        yield "traceback"
    if result["cpu"] > SECONDS:
        yield "hang"
    if result["megabytes"] > MEGABYTES:
        yield "memory"
    if result["code"] not in codes_of(command, case):
        yield "exit"
    if "root:" in told or "Outside" in told:  # nothing of a file outside is shown
        yield "leak"
    if not is_told(command, case, result):
        yield "not told"


def is_told(command: str, case: Case, result: dict[str, Any]) -> bool:
    """Whether words say what is wrong, and where it must have a place, name the place."""
    if command == "review":
        return bool(LOCATED.search(result["out"])) or not case.located
    if command == "editor":
        is_open = not callable(case.files[case.hostile])
        is_ours = case.hostile != "spotline-known.json"
        return bool(LOCATED.search(result["out"])) or not (case.located and is_open and is_ours)
    if command.startswith("review --as"):
        return bool(result["out"].strip())  # what these forms say stands in their own tests
    if result["code"] == 2:
        if command == "compare --since" and '"faults": [\n' in result["out"]:
            return True
        return bool(SAID.search(result["err"])) or bool(PLACED.search(result["out"] + result["err"]))
    return bool(result["out"].strip() or result["err"].strip()) or command not in PLAIN


def sample(size: int) -> list[Case]:
    """Cases of every sort that are small enough to be run through every command."""
    small = [
        one
        for one in cases()
        if all(callable(made) or len(made) < 20_000 for made in one.files.values())
        and "1.5 GB" not in one.name
    ]
    return small[:: max(1, len(small) // size)]


def classes() -> Counter[str]:
    """How many cases there are of each kind of file."""
    return Counter(one.hostile if one.hostile in KINDS else "other" for one in cases())


COLUMNS = ("traceback", "hang", "memory", "exit", "leak", "not told")


def main(words: list[str]) -> int:
    root = Path(__file__).resolve().parents[1]
    step = int(words.pop(1)) if words[:1] == ["--every"] else 1
    every = cases()[::step]
    total: Counter[str] = Counter()
    print(
        f"{'command':26}{'cases':>7}" + "".join(f"{one:>11}" for one in COLUMNS) + "   most CPU, memory",
        flush=True,
    )
    with tempfile.TemporaryDirectory() as folder:
        bench = Bench(Path(folder), root)
        for command in words[step > 1 :] or COMMANDS:
            found: Counter[str] = Counter()
            cpu = megabytes = 0.0
            for case in every:
                result = bench.result_of(command, case)
                wrong = list(faults(command, case, result))
                found.update(wrong)
                cpu, megabytes = max(cpu, result["cpu"]), max(megabytes, result["megabytes"])
                if wrong:
                    about = f"{result['code']}, {result['cpu']:.1f} s, {result['megabytes']:.0f} MB"
                    said = f"{result['out'][-300:]}{result['err'][-200:]}"
                    print(f"    {command}: {case.name}: {', '.join(wrong)} ({about}) {said!r}", flush=True)
            counts = "".join(f"{found[one]:>11}" for one in COLUMNS)
            print(f"{command:26}{len(every):>7}{counts}   {cpu:.1f} s, {megabytes:.0f} MB", flush=True)
            total.update(found)
        bench.close()
    return 1 if total else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
