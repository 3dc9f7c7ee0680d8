"""The command line: one short function a command, which imports what it needs when it is called."""

from __future__ import annotations

import sys

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable
    from datetime import date

    from ..project.results import Review

USAGE = """\
usage: spotline review [--as cards|lines|json] [--record-known] [--rules-from MODULE] [--] [PATH ...]
       spotline exercises [--as text|json] [--] [WORDS ...]
       spotline rules [--as text|json] [--] [NAME ...]
       spotline schema NAME
       spotline editor [--version]
       spotline --help | --version

review   reviews programme and athlete files (*.programme.yaml, *.athlete.yaml), or all of them below
         the folders named; without a path, below this folder. Cards are for people and the default on a
         terminal, lines the default elsewhere. --record-known puts all that is found on record, so that
         only what is new blocks from then on. --rules-from adds the rules of a Python module of your own.
exercises
         finds exercises by muscle or area, joint action, implement, length (long, middle, short), kind,
         stance, level, pattern or name, and says what each trains and why: hamstrings long dumbbell.
         In a team's folder its own exercises are among them.
         Without a word, counts the catalogue.
rules    lists the rules; with names, shows their pages: what each counts and wants, why, its sources
         and limits, examples, how to move and waive it.
schema   prints a JSON Schema: {schemas}.
editor   runs the language server on standard input and output, for an editor to start. It needs
         pip install "spotline[editor]".

Exit code: 0 nothing blocks, 1 a finding blocks or no exercise is found, 2 the job could not be done.
spotline reviews what is written down. It clears nobody to train: questions of health belong to the
athlete's clinician or another licensed professional, and local rules come first.
"""

FORMS = ("cards", "lines", "json")
FOUND_FORMS = ("text", "json")


def main(arguments: list[str] | None = None) -> int:
    """Runs a command and returns its exit code."""
    import gc

    gc.disable()  # one short run: collecting costs a third of the time of a large file
    words = sys.argv[1:] if arguments is None else arguments
    try:
        code = _command(words)
        sys.stdout.flush()
    except BrokenPipeError:
        # The reader has gone, as with `| head`: nothing is left to say, nor to flush at exit.
        import os

        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 1
    gc.freeze()  # nor is all that was made to be gone through once more on the way out
    return code


def _command(words: list[str]) -> int:
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(errors="backslashreplace")
    if not words or words[0] in ("--help", "-h", "help"):
        print(_usage(), end="")
        return 0 if words else 2
    if words[0] == "--version":
        from ..version import VERSION

        print(f"spotline {VERSION}")
        return 0
    command = COMMANDS.get(words[0])
    return _refuse_name("command", words[0], COMMANDS) if command is None else command(words[1:])


def _usage() -> str:
    from ...schema import names

    return USAGE.format(schemas=", ".join(names()))


def _refuse(reason: str) -> int:
    print(f"spotline: {reason}", file=sys.stderr)
    print(_usage().partition("\n\n")[0], file=sys.stderr)
    return 2


def _refuse_name(kind: str, name: str, known: Iterable[str]) -> int:
    from ..wording.words import near_names

    near = near_names(name, known, 1)
    return _refuse(f"there is no {kind} {name!r}{f'; did you mean {near[0]}?' if near else ''}")


class _RefusedError(Exception):
    """Words of the command line that cannot be followed."""


def _options(words: list[str], known: dict[str, tuple[str, ...] | None]) -> tuple[dict[str, str], list[str]]:
    """Options with their values, and the other words; ``--`` ends the options.

    An option takes one of the values known for it: none where there are none, any where that is None.
    """
    chosen: dict[str, str] = {}
    others: list[str] = []
    rest = iter(words)
    for word in rest:
        if word == "--":
            others.extend(rest)
        elif word.startswith("-") and word != "-":
            name, equals, value = word.partition("=")
            if name not in known:
                raise _RefusedError(f"there is no option {name}")
            values = known[name]
            if values != () and not equals:
                value = next(rest, "")
            if values is None and not value:
                raise _RefusedError(f"{name} takes a name")
            if values is not None and value not in (values or ("",)):
                one = f"one of {', '.join(values)}" if values else "no value"
                raise _RefusedError(f"{name} takes {one}")
            chosen[name] = value
        else:
            others.append(word)
    return chosen, others


def _review(words: list[str]) -> int:
    try:
        chosen, paths = _options(words, {"--as": FORMS, "--record-known": (), "--rules-from": None})
    except _RefusedError as refused:
        return _refuse(str(refused))
    from datetime import date

    if "--rules-from" in chosen and not _take_rules(chosen["--rules-from"]):
        return 2

    from ..project.review import record_known, review

    if "--record-known" in chosen:
        return _record(record_known, paths or ["."], date.today())
    result = review(paths or ["."], date.today())
    form = chosen.get("--as") or ("cards" if sys.stdout.isatty() else "lines")
    PRINTERS[form](result)
    return result.exit_code


def _record(record: Callable[[list[str], date], list[str]], paths: list[str], today: date) -> int:
    """Puts all that is found now on record."""
    try:
        written = record(paths, today)
    except OSError as fault:
        print(f"spotline: nothing was recorded ({fault.strerror}: {fault.filename})", file=sys.stderr)
        return 2
    for path in written:
        print(f"Recorded what is found now in {path}; from now on only what is new blocks.")
    return 0


def _take_rules(module: str) -> bool:
    """Takes in the rules of a module; says why where that fails."""
    from ..engine.registry import load_module

    try:
        load_module(module)
    except Exception as fault:
        reason = f"{type(fault).__name__}: {fault}"
        print(f"spotline: the rules of {module!r} cannot be used ({reason})", file=sys.stderr)
        return False
    return True


def _print_cards(result: Review) -> None:
    from ..reporters.cards import cards

    print("\n".join(cards(result, _width(), bold=_bold())))


def _print_lines(result: Review) -> None:
    from ..reporters.lines import lines
    from ..reporters.sentences import closing

    for line in lines(result):
        print(line)
    sys.stdout.flush()
    print(closing(result), file=sys.stderr)


def _print_json(result: Review) -> None:
    from ..reporters.review_json import review_json

    print(review_json(result))


def _bold() -> bool:
    import os

    return sys.stdout.isatty() and not os.environ.get("NO_COLOR")


def _width() -> int:
    """Columns to write in."""
    import shutil

    return min(shutil.get_terminal_size((96, 24)).columns, 110)


def _exercises(words: list[str]) -> int:
    from datetime import date

    from ..body.search import search
    from ..project.workspace import Workspace

    try:
        chosen, asked = _options(words, {"--as": FOUND_FORMS})
        workspace = Workspace(date.today())
        answer = search(" ".join(asked), workspace.team_in(workspace.files.folder("")).resources.known)
    except (_RefusedError, ValueError) as refused:
        return _refuse(str(refused))
    if chosen.get("--as") == "json":
        from ..reporters.exercises_json import exercises_json

        print(exercises_json(answer))
    else:
        from ..reporters.exercises_text import exercises_text

        print("\n".join(exercises_text(answer, _width(), bold=_bold())))
    return 0 if answer.found else 1


def _rules(words: list[str]) -> int:
    from ..engine.registry import all_rules

    try:
        chosen, names = _options(words, {"--as": FOUND_FORMS})
    except _RefusedError as refused:
        return _refuse(str(refused))
    rules = {rule.name: rule for rule in all_rules()}
    unknown = next((name for name in names if name not in rules), None)
    if unknown is not None:
        return _refuse_name("rule", unknown, rules)
    asked = [rules[name] for name in names] or list(rules.values())
    if chosen.get("--as") == "json":
        from ..reporters.rules_json import rules_json

        print(rules_json(asked))
        return 0
    from ..reporters.rules_text import rule_text, rules_list

    if names:
        print("\n".join(line for rule in asked for line in rule_text(rule, _width(), bold=_bold())))
    else:
        print("\n".join(rules_list(asked, _width(), bold=_bold())))
    return 0


def _schema(words: list[str]) -> int:
    from ...schema import names, text

    if len(words) != 1 or words[0] not in names():
        return _refuse(f"name one schema: {', '.join(names())}")
    print(text(words[0]), end="")
    return 0


def _editor(words: list[str]) -> int:
    try:
        chosen, others = _options(words, {"--stdio": (), "--version": ()})
        if others:
            raise _RefusedError("the editor command takes no names")
    except _RefusedError as refused:
        return _refuse(str(refused))
    if "--version" in chosen:
        # What an editor asks before it starts the server: whether that can run, at the price of a look.
        from importlib.util import find_spec

        return _command(["--version"]) if find_spec("pygls") else _refuse_editor()
    try:
        from ..editor.server import serve
    except ModuleNotFoundError as missing:
        if (missing.name or "").partition(".")[0] not in ("pygls", "lsprotocol", "cattrs", "attrs", "attr"):
            raise
        return _refuse_editor()
    return serve()


def _refuse_editor() -> int:
    print('spotline: the editor needs one thing more: pip install "spotline[editor]"', file=sys.stderr)
    return 2


COMMANDS: dict[str, Callable[[list[str]], int]] = {
    "review": _review,
    "exercises": _exercises,
    "rules": _rules,
    "schema": _schema,
    "editor": _editor,
}

PRINTERS: dict[str, Callable[[Review], None]] = {
    "cards": _print_cards,
    "lines": _print_lines,
    "json": _print_json,
}
