"""The first files of a team: their texts, and how they are written without touching what is there."""

from __future__ import annotations

import os
import re

from ..project.overlay import Overlay
from ..project.review import review_on
from ..project.workspace import Workspace
from ..team.presets import PRESETS
from ..text.repository import SETTINGS, shown
from ..text.safe_writer import NotWrittenError, replace
from .first_programme import ONLY, programme, quoted

TYPE_CHECKING = False
if TYPE_CHECKING:
    from datetime import date

    from .answers import Answers

SETTINGS_TEXT = """\
# What holds for all programmes in this repository. Every line can go; then the usual holds.
# What may stand here: spotline schema team. What each rule wants: spotline rules.

preset: "{preset}"          # dated: a new version moves no limit and runs no new rule

# weekly limits: {{chest: 18}}      # hard sets a week; 20 a group where nothing is said
# block commit on: [error, warning]
# rules:
#   rep-range-narrow: skip
# our names: {{toe push: standing calf raise}}
# screening: {{stated: 2026-09-01, by: head coach}}   # said once, in place of a date in each athlete's file
"""

HOOK_TEXT = """\
# Reviews what each commit and each merge changes, and all that leans on it.
# Once: pip install pre-commit, then: pre-commit install
default_install_hook_types: [pre-commit, pre-merge-commit]
repos:
  - repo: local
    hooks:
      - id: spotline
        name: review strength-training programmes
        entry: spotline review --as short --changed --
        language: system
        files: '\\.(programme|athlete|exercises)\\.ya?ml$|(^|/)spotline\\.yaml$'
        always_run: true
        verbose: true
        stages: [pre-commit, pre-merge-commit, pre-push, manual]
        require_serial: true
"""

EDITOR_TEXT = """\
root = true

[*.{yaml,yml}]
charset = utf-8
indent_style = space
indent_size = 2
insert_final_newline = true
"""

IGNORE_TEXT = """\
# Sheets for athletes are made from the programmes: spotline sheet. They need no commit.
*.sheet.html
*.sheet.md
*.sheet.csv
"""


class FirstFile:
    """A file to write: its path from the folder, its text, and whether something stood there already."""

    __slots__ = ("kept", "path", "text")

    def __init__(self, path: str, text: str) -> None:
        self.path = path
        self.text = text
        self.kept = False


def first_files(folder: str, answers: Answers, today: date) -> list[FirstFile]:
    """The files for a folder; the programme holds as many lifts a session as pass the review."""
    name = _file_name(answers.name)
    athlete = FirstFile(f"athletes/{name}.athlete.yaml", _athlete(answers))
    settings = FirstFile(SETTINGS, SETTINGS_TEXT.format(preset=max(PRESETS)))
    others = [
        settings,
        FirstFile(".pre-commit-config.yaml", HOOK_TEXT),
        FirstFile(".editorconfig", EDITOR_TEXT),
        FirstFile(".gitignore", IGNORE_TEXT),
    ]
    path = f"programmes/{name}-first.programme.yaml"
    texts = [
        programme(answers, f"../{athlete.path}", _monday_after(today), lifts)
        for lifts in range(len(ONLY), 1, -1)
    ]
    passing = (text for text in texts if _passes(folder, [settings, athlete, FirstFile(path, text)], today))
    return [settings, athlete, FirstFile(path, next(passing, texts[0])), *others[1:]]


def write(folder: str, files: list[FirstFile]) -> None:
    """Writes the files that are not there yet, and marks the others as kept. Raises NotWrittenError."""
    try:
        for file in files:
            os.makedirs(os.path.dirname(os.path.join(folder, file.path)), exist_ok=True)
    except OSError as error:
        raise NotWrittenError(shown(folder), (error.strerror or str(error)).lower()) from error
    for file in files:
        path = os.path.join(folder, file.path)
        if os.path.lexists(path):
            file.kept = True
        else:
            replace(path, None, file.text.encode(), folder)


def _file_name(name: str) -> str:
    """A file name for a person's name: plain letters, digits and hyphens."""
    from unicodedata import normalize

    plain = normalize("NFKD", name).encode("ascii", "ignore").decode().lower()
    return re.sub(r"[^a-z0-9]+", "-", plain).strip("-") or "athlete"


def _athlete(answers: Answers) -> str:
    lines = [
        f"name: {quoted(answers.name)}",
        f"level: {answers.level}",
        f"days: [{', '.join(answers.days)}]",
        f"minutes: {answers.minutes}",
    ]
    if answers.equipment:
        lines.append(f"equipment: [{', '.join(map(quoted, answers.equipment))}]")
    lines += REMARKS
    return "\n".join(lines) + "\n"


REMARKS = (
    "# age: 34                             # under 18 and from 65 other limits hold, so write it then",
    "# best lifts: {back squat: 100 kg}    # by which percentages become loads",
    "# screening on file: 2026-01-05       # the date only; what was found has no place in git",
)
"""What an athlete's file may say further."""


def _monday_after(today: date) -> str:
    from datetime import timedelta

    return (today + timedelta(days=7 - today.weekday())).isoformat()


def _passes(folder: str, files: list[FirstFile], today: date) -> bool:
    """Whether nothing in the last of some files blocks, with the others beside it; none is on the disk."""
    overlay = Overlay()
    for file in files:
        overlay.open(os.path.join(folder, file.path), file.text)
    review = review_on(Workspace(today, overlay=overlay), [os.path.join(folder, files[-1].path)])
    return review.exit_code == 0
