"""The forms that a review, exercises and rules are printed in: one module a form.

Such a module prints by its function ``report``. The tables below name it for each form: from them the command
line takes which forms there are, and a module is imported when its form is asked for.
"""

from __future__ import annotations

from importlib import import_module

REVIEW = {"cards": "cards", "lines": "lines", "short": "short", "json": "review_json"}
"""Forms of a review, and the modules that print them: ``report(review)``."""

EXERCISES = {"text": "exercises_text", "json": "exercises_json"}
"""Forms of the exercises found: ``report(answer)``."""

RULES = {"text": "rules_text", "json": "rules_json"}
"""Forms of rules: ``report(rules, named)``, where ``named`` says that they were asked for by name."""


def print_as(form: str, forms: dict[str, str], *what: object) -> None:
    """Prints what a module of ``forms`` takes, in one of them."""
    import_module(f".{forms[form]}", __name__).report(*what)
