"""What reviews are measured against: tools from the registry, in an environment of their own, and bare Python."""

from __future__ import annotations

import os
import subprocess
import sys
import sysconfig
from collections.abc import Sequence
from pathlib import Path
from time import perf_counter

ROOT = Path(__file__).parent.parent

PACKAGES = {"yamllint": "yamllint==1.38.0", "check-jsonschema": "check-jsonschema==0.39.0"}
"""A linter of YAML's style and a checker against any JSON Schema, each with its default settings."""

LOAD = "import sys, yaml; [yaml.load(open(p, 'rb'), yaml.CSafeLoader) for p in sys.argv[1:]]"


class Run:
    """A whole process: seconds by the clock (``wall``) and of work (``cpu``), and its largest memory in MB."""

    __slots__ = ("cpu", "peak", "wall")

    def __init__(self, wall: float, cpu: float, peak: float) -> None:
        self.wall = wall
        self.cpu = cpu
        self.peak = peak


def run(command: Sequence[str], compiled: str) -> Run:
    """Runs a command; 0 and 1 are the codes of one that has done its job.

    As after an ordinary installation, all code is there in its compiled form: below a folder, after one run.
    The largest memory is that of the largest process among it and those that it started; no process is told as
    smaller than the one that measures.
    """
    kept = {name: value for name, value in os.environ.items() if not name.startswith("PYTHON")}
    start = perf_counter()
    process = subprocess.Popen(
        command,
        env={**kept, "PYTHONPYCACHEPREFIX": compiled},
        stdin=subprocess.DEVNULL,
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )
    _, status, used = os.wait4(process.pid, 0)
    wall = perf_counter() - start
    process.returncode = os.waitstatus_to_exitcode(status)
    if process.returncode not in (0, 1):
        raise SystemExit(f"exit code {process.returncode}: {' '.join(command[:6])}")
    return Run(wall, used.ru_utime + used.ru_stime, used.ru_maxrss / 1024)


def installed(folder: Path) -> str:
    """The command `spotline` of this checkout in the same environment; the one of this Python where it fails.

    An install that follows the checkout looks for modules in another way, which costs a short run a tenth.
    """
    program = folder / "bin" / "spotline"
    options = ["--quiet", "--disable-pip-version-check", "--force-reinstall", "--no-deps"]
    command = [folder / "bin" / "python", "-m", "pip", "install", *options, str(ROOT)]
    if program.parent.exists():
        subprocess.run([*command[:4], "PyYAML", "jsonschema"], capture_output=True, check=False)
        subprocess.run(command, capture_output=True, check=False)
    return str(program) if program.exists() else os.path.join(sysconfig.get_path("scripts"), "spotline")


def outside(folder: Path) -> tuple[dict[str, str], list[str]]:
    """The programs of the outside tools by name, and sentences on those that could not be had."""
    programs, lacking = {}, []
    python = folder / "bin" / "python"
    if not python.exists():
        done = subprocess.run([sys.executable, "-m", "venv", folder], capture_output=True, check=False)
        if done.returncode:
            return {}, [f"{name}: no environment could be made" for name in PACKAGES]
    for name, package in PACKAGES.items():
        program = folder / "bin" / name
        if not program.exists():
            command = [python, "-m", "pip", "install", "--quiet", "--disable-pip-version-check", package]
            subprocess.run(command, capture_output=True, check=False)
        if program.exists():
            programs[name] = str(program)
        else:
            lacking.append(f"{name}: {package} could not be installed")
    return programs, lacking
