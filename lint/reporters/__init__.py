"""The forms that things are printed in, from reviews to sheets: a module a form.

Such a module prints by its function ``report``. The tables below name it for each form: from them the command
line takes which forms there are, and a module is imported when its form is asked for.
"""

from __future__ import annotations

from importlib import import_module

REVIEW = {
    "cards": "cards",
    "lines": "lines",
    "short": "short",
    "json": "review_json",
    "sarif": "sarif",
    "junit": "junit",
    "annotations": "annotations",
    "code-quality": "code_quality",
}
"""Forms of a review, and the modules that print them: ``part(one, look)`` is what is said of a file, as plain
data; ``report(parts, verdict)`` prints those of all files; ``look()`` asks the terminal where it matters."""

EXERCISES = {"text": "exercises_text", "json": "exercises_json"}
"""Forms of the exercises found: ``report(answer)``."""

RULES = {"text": "rules_text", "json": "rules_json"}
"""Forms of rules: ``report(rules, named)``, where ``named`` says that they were asked for by name."""

CHANGES = {"text": "changes_text", "markdown": "changes_markdown", "json": "changes_json"}
"""Forms of a comparison: ``report(comparison)``."""

TALLY = {"table": "tally_text", "json": "tally_json", "csv": "tally_csv", "markdown": "tally_markdown"}
"""Forms of a tally: ``report(tallies)``."""

PROPOSALS = {"text": "proposals", "json": "proposals_json"}
"""Forms of what is proposed for a programme: ``report(solution)``."""

SHEET = {"html": "sheet_html", "markdown": "sheet_markdown", "csv": "sheet_csv"}
"""Forms of a sheet: ``report(sheet)`` prints it, ``text(sheet)`` is the whole file."""


def print_as(form: str, forms: dict[str, str], *what: object) -> None:
    """Prints what a module of ``forms`` takes, in one of them."""
    import_module(f".{forms[form]}", __name__).report(*what)


def text_as(form: str, forms: dict[str, str], *what: object) -> str:
    """What a module of ``forms`` prints, in one of them, as text."""
    text: str = import_module(f".{forms[form]}", __name__).text(*what)
    return text
