"""Reviews many files by one process and by several, and compares every byte and the exit code.

    python tests/same_bytes.py [--files 2000] [--jobs 2 3] [--as lines json]

The files are all examples, all published programmes, and as many made from seeds as are asked for, a part of them
with a fault. Exit code 1 where anything differs.
"""

from __future__ import annotations

import argparse
import os
import shutil
import subprocess
import sys
import sysconfig
import tempfile
from pathlib import Path

from spotline.tests.benchmark_corpus import faulty, programme

ROOT = Path(__file__).parent.parent
COMMAND = os.path.join(sysconfig.get_path("scripts"), "spotline")

EVERY = 7
"""One generated file in so many has a fault."""

LINES = (40, 60, 90, 150)


def corpus(folder: Path, files: int) -> int:
    """Lays all the files below a folder; returns how many there are."""
    (folder / ".git").mkdir(parents=True)
    shutil.copytree(ROOT / "examples", folder / "examples")
    shutil.copytree(ROOT / "tests" / "published", folder / "published")
    for number in range(files):
        text = programme(LINES[number % len(LINES)], number)
        path = folder / "made" / f"{number // 100:02}" / f"plan-{number:04}.programme.yaml"
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text if number % EVERY else faulty(text), encoding="utf-8")
    return sum(path.suffix == ".yaml" for path in folder.rglob("*.yaml"))


def told(folder: Path, form: str, jobs: int) -> tuple[int, bytes]:
    """The exit code and all that is printed."""
    words = [COMMAND, "review", "--as", form, "--jobs", str(jobs), "--", "."]
    done = subprocess.run(words, cwd=folder, capture_output=True, check=False)
    return done.returncode, done.stdout + done.stderr


def main() -> int:
    parser = argparse.ArgumentParser(description=(__doc__ or "").partition("\n")[0])
    parser.add_argument("--files", type=int, default=2000)
    parser.add_argument("--jobs", type=int, nargs="+", default=[2, 3])
    parser.add_argument("--as", dest="forms", nargs="+", default=["lines", "json"])
    asked = parser.parse_args()
    differs = False
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name) / "team"
        print(f"{corpus(folder, asked.files)} files", flush=True)
        for form in asked.forms:
            alone = told(folder, form, 1)
            if not alone[1]:
                print(f"{form}: nothing was printed (exit code {alone[0]})")
                return 1
            for jobs in asked.jobs:
                same = told(folder, form, jobs) == alone
                differs = differs or not same
                said = "the same" if same else "NOT the same"
                print(
                    f"{form}, {jobs} processes: {said} {len(alone[1])} bytes, exit code {alone[0]}",
                    flush=True,
                )
    return int(differs)


if __name__ == "__main__":
    sys.exit(main())
