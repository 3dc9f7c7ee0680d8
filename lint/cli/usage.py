"""The help: put together from what each command says of itself."""

from __future__ import annotations

from textwrap import dedent, indent

from ...schema import names
from .commands import EXAMPLES, HELP

COLUMN = 9
"""Columns that the names of commands take in the help."""

EXIT_CODES = """\
Exit code: 0 nothing blocks, 1 a finding blocks or no exercise is found, 2 the job could not be done,
130 it was stopped from the keyboard."""

CLOSING = f"""\
{EXIT_CODES}
spotline reviews what is written down. It clears nobody to train: questions of health belong to the
athlete's clinician or another licensed professional, and local rules come first.
"""


def help_text() -> str:
    """How each command is called, what each does, and what the exit codes mean."""
    paragraphs = [_paragraph(name, about) for name, (_, about) in HELP.items()]
    return "\n".join([usage_lines(), "", *paragraphs, "", CLOSING]).replace("{schemas}", ", ".join(names()))


def command_help(name: str) -> str:
    """How one command is called, what it does, and examples of it."""
    usage, about = HELP[name]
    words = dedent(about).strip()
    examples = [f"  spotline {example}" for example in EXAMPLES.get(name, ())]
    lines = [
        f"usage: spotline {usage}",
        "",
        words[:1].upper() + words[1:],
        *(["", "Examples:" if len(examples) > 1 else "Example:", *examples] if examples else []),
        "",
        EXIT_CODES,
    ]
    return "\n".join(lines).replace("{schemas}", ", ".join(names())) + "\n"


def usage_lines() -> str:
    """How each command is called, a line each."""
    calls = [*(usage for usage, _ in HELP.values()), "[COMMAND] --help | --version"]
    return "usage: " + "\n       ".join(f"spotline {call}" for call in calls)


def how_to_call(name: str) -> str:
    """What to write where words could not be followed: the usage of the command, or where all are shown."""
    if name not in HELP:
        return f"Commands: {', '.join(HELP)}. What each does: spotline --help"
    example = f"Such as: spotline {EXAMPLES[name][0]}. " if EXAMPLES.get(name) else ""
    return f"usage: spotline {HELP[name][0]}\n{example}More: spotline {name} --help"


def _paragraph(name: str, about: str) -> str:
    """What a command does, beside its name, or below where the name is too long for its column."""
    words = indent(dedent(about).strip("\n"), " " * COLUMN)
    return name + words[len(name) :] if len(name) < COLUMN else f"{name}\n{words}"
