"""The help: put together from what each command says of itself."""

from __future__ import annotations

from textwrap import dedent, indent

from ...schema import names
from .commands import HELP

COLUMN = 9
"""Columns that the names of commands take in the help."""

CLOSING = """\
Exit code: 0 nothing blocks, 1 a finding blocks or no exercise is found, 2 the job could not be done,
130 it was stopped from the keyboard.
spotline reviews what is written down. It clears nobody to train: questions of health belong to the
athlete's clinician or another licensed professional, and local rules come first.
"""


def help_text() -> str:
    """How each command is called, what each does, and what the exit codes mean."""
    paragraphs = [_paragraph(name, about) for name, (_, about) in HELP.items()]
    return "\n".join([usage_lines(), "", *paragraphs, "", CLOSING]).replace("{schemas}", ", ".join(names()))


def usage_lines() -> str:
    """How each command is called, a line each."""
    calls = [*(usage for usage, _ in HELP.values()), "--help | --version"]
    return "usage: " + "\n       ".join(f"spotline {call}" for call in calls)


def _paragraph(name: str, about: str) -> str:
    """What a command does, beside its name, or below where the name is too long for its column."""
    words = indent(dedent(about).strip("\n"), " " * COLUMN)
    return name + words[len(name) :] if len(name) < COLUMN else f"{name}\n{words}"
