"""The commands: one short function each, which imports what it needs when it is called.

A command stands here alone: the usage and the help are put together from what is said beside its function.
"""

from __future__ import annotations

import sys

from ..reporters import CHANGES, EXERCISES, PROPOSALS, REVIEW, RULES, SHEET, TALLY, print_as
from .options import MAY_FOLLOW, split
from .refused import RefusedError, no_such
from .streams import complain

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable

    Run = Callable[[list[str]], int]
    """Takes the words that follow the command's name, and gives the exit code."""

BY = ("muscle", "action", "day", "session", "lift")
"""What a tally may be by; a test holds it to the tables that there are."""

COMMANDS: dict[str, Run] = {}
"""The commands by name, in the order of the help."""

HELP: dict[str, tuple[str, str]] = {}
"""How each command is called, and what it does; ``{schemas}`` stands for the names of the schemas."""

EXAMPLES: dict[str, tuple[str, ...]] = {}
"""How commands may be called, for their own help."""


def _command(usage: str, about: str, *examples: str) -> Callable[[Run], Run]:
    """Makes a function a command, with its help: ``usage`` is its name and what may follow."""

    def add(run: Run) -> Run:
        name = usage.partition(" ")[0]
        COMMANDS[name] = run
        HELP[name] = usage, about
        EXAMPLES[name] = examples
        return run

    return add


def _forms(table: Iterable[str]) -> str:
    return f"[--as {'|'.join(table)}]"


@_command(
    f"review {_forms(REVIEW)} [--changed [REVISION]] [--record-known] [--report] [--rules-from MODULE]"
    " [--jobs N] [--] [PATH ...]",
    """
    reviews programme and athlete files (*.programme.yaml, *.athlete.yaml), or all of them below
    the folders named; without a path, below this folder. Cards are for people and the default on a
    terminal, lines the default elsewhere, short is for hooks. --changed reviews what differs from a
    revision of git, else from the last commit, and all that leans on it. --record-known puts what is
    found on record, so that only what is new or worse blocks from then on. --report says in five
    lines at most what files that pass change against the last commit. --rules-from adds the rules of
    a Python module of your own. --jobs says how many processes share the work of many files.
    """,
    "review",
    "review programmes/winter.programme.yaml --as lines",
)
def _review(words: list[str]) -> int:
    options = {
        "--as": REVIEW,
        "--changed": MAY_FOLLOW,
        "--record-known": (),
        "--report": (),
        "--rules-from": None,
        "--jobs": None,
    }
    chosen, paths = split(words, options)
    from datetime import date

    if "--rules-from" in chosen and not _take_rules(chosen["--rules-from"]):
        return 2
    if "--record-known" in chosen:
        if "--changed" in chosen:
            raise RefusedError("--changed and --record-known exclude one another")
        from .mends import record

        return record(paths or ["."], date.today())
    form = chosen.get("--as") or ("cards" if sys.stdout.isatty() else "lines")
    jobs = _number_of_jobs(chosen)
    if "--changed" in chosen:
        from ..project.git import GitError
        from .reviewing import review_changed

        try:
            result = review_changed(chosen["--changed"], paths, date.today(), form, jobs)
        except GitError as fault:
            complain(str(fault))
            return 2
    else:
        from .reviewing import review

        result = review(paths or ["."], date.today(), form, jobs)
    if "--report" in chosen and result.exit_code == 0:
        from .weigh import report

        report(paths, date.today())
    return result.exit_code


@_command(
    "mend [--spelling] [--show | --ask | --undo | --solve [--line N] [--rule NAME] [--keep WORDS]"
    f" [--write N | {_forms(PROPOSALS)[1:-1]}]] [--] [PATH ...]",
    """
    writes what is certain into the files: slips of keys, values, names, units and quotes. The result
    is reviewed before it is written; all else in the file stays as it is. --spelling also writes what
    is valid in its plain spelling: 1:30 as 90 s. --show prints the difference and writes nothing,
    --ask walks through what leaves a choice, --undo takes the last run back. --solve works out edits
    of one programme that clear what blocks, or the finding on a line or of a rule, and bring nothing
    new: fewest and smallest changes first, each reviewed. --keep names lines or sessions that must
    stay, parted by commas. Nothing is written without --write and the number of a proposal.
    """,
    "mend --show",
    "mend winter.programme.yaml --solve --line 20",
    "mend --spelling programmes",
    "mend --undo",
)
def _mend(words: list[str]) -> int:
    of_solving = {**dict.fromkeys(("--line", "--rule", "--keep", "--write")), "--as": PROPOSALS}
    options = {"--spelling": (), "--show": (), "--ask": (), "--undo": (), "--solve": (), **of_solving}
    chosen, paths = split(words, options)
    if "--solve" in chosen:
        from .solving import solve

        return solve(chosen, paths)
    for one in chosen:
        if one in of_solving:
            raise RefusedError(f"{one} goes with --solve only")
    apart = [one for one in chosen if one != "--spelling" or "--undo" in chosen]
    if len(apart) > 1:
        raise RefusedError(f"{' and '.join(apart)} exclude one another")
    if "--undo" in chosen:
        if len(paths) > 1:
            raise RefusedError("--undo takes the whole last run back: name one folder at most")
        from .mends import undo

        return undo(paths[0] if paths else "")
    from datetime import date

    from .mends import mend

    return mend(chosen, paths or ["."], date.today())


def _number_of_jobs(chosen: dict[str, str]) -> int | None:
    """How many processes are asked for; None where nobody says."""
    if (words := chosen.get("--jobs")) is None:
        return None
    if not (words.isascii() and words.isdecimal() and int(words[:4]) > 0 and len(words) < 4):
        raise RefusedError("--jobs takes a number from 1 to 999")
    return int(words)


def _take_rules(module: str) -> bool:
    """Takes in the rules of a module; says why where that fails."""
    from ..engine.registry import load_module

    try:
        load_module(module)
    except Exception as fault:
        reason = f"{type(fault).__name__}: {fault}"
        complain(f"the rules of {module!r} cannot be used ({reason})")
        return False
    return True


@_command(
    f"compare {_forms(CHANGES)} [--] OLD NEW | --since REV [--] [PATH ...]",
    """
    says what changed in training between two files or folders, or since a revision that git knows
    (--since HEAD): the most telling first, athlete by athlete. Markdown is for a pull request.
    """,
    "compare --since HEAD",
    "compare old.programme.yaml new.programme.yaml",
)
def _compare(words: list[str]) -> int:
    chosen, paths = split(words, {"--as": CHANGES, "--since": None})
    if "--since" not in chosen and len(paths) != 2:
        raise RefusedError("compare takes two files or two folders, or --since and a revision")
    from datetime import date

    from .weigh import compare

    return compare(chosen, paths, date.today())


@_command(
    f"tally {_forms(TALLY)} [--week N] [--by muscle|action|day|session|lift] [--] [PATH ...]",
    """
    says what the weeks hold: sets by muscle group against floor and limit, under 8 and from 8
    repetitions, joint actions that get nothing, sessions with minutes, the hardest lifts; weeks
    side by side where they differ.
    """,
    "tally programmes/winter.programme.yaml",
    "tally --week 3 --by muscle",
)
def _tally(words: list[str]) -> int:
    chosen, paths = split(words, {"--as": TALLY, "--week": None, "--by": BY})
    week = chosen.get("--week", "0")
    if not week.isdecimal() or len(week) > 4 or ("--week" in chosen and not int(week)):
        raise RefusedError("--week takes the number of a week, from 1")
    from datetime import date

    from .weigh import show_tally

    return show_tally(chosen, int(week), paths or ["."], date.today())


@_command(
    f"exercises {_forms(EXERCISES)} [--] [WORDS ...]",
    """
    finds exercises by muscle or area, joint action, implement, length (long, middle, short), kind,
    stance, level, pattern or name, and says what each trains and why: hamstrings long dumbbell.
    In a team's folder its own exercises are among them.
    Without a word, counts the catalogue.
    """,
    "exercises hamstrings long dumbbell",
    "exercises 'seated leg curl'",
)
def _exercises(words: list[str]) -> int:
    chosen, asked = split(words, {"--as": EXERCISES})
    from datetime import date

    from ..body.search import search
    from ..project.workspace import Workspace

    try:
        workspace = Workspace(date.today())
        answer = search(" ".join(asked), workspace.team_in(workspace.files.folder("")).resources.known)
    except ValueError as fault:
        raise RefusedError(str(fault)) from fault
    print_as(chosen.get("--as", "text"), EXERCISES, answer)
    return 0 if answer.found else 1


@_command(
    f"rules {_forms(RULES)} [--] [NAME ...]",
    """
    lists the rules; with names, shows their pages: what each counts and wants, why, its sources
    and limits, examples, how to move and waive it.
    """,
    "rules",
    "rules knee-flexion-missing",
)
def _rules(words: list[str]) -> int:
    chosen, names = split(words, {"--as": RULES})
    from ..engine.registry import all_rules

    rules = {rule.name: rule for rule in all_rules()}
    for name in names:
        if name not in rules:
            raise no_such("rule", name, rules)
    print_as(chosen.get("--as", "text"), RULES, [rules[name] for name in names or rules], bool(names))
    return 0


@_command(
    f"sheet {_forms(SHEET)} [--athlete NAME] [--week N] [--to FILE] [--overwrite] [--] PROGRAMME",
    """
    writes what the athlete takes along: each session with sets, repetitions, what to load, rest, and
    boxes for what was done. HTML, the default, prints one page a session and reads on a phone. The file
    lies beside the programme, one for each athlete, or where --to says (- prints it). It is written over
    an earlier sheet that nobody has changed, over anything else only with --overwrite. A programme with
    errors gets no sheet.
    """,
    "sheet programmes/winter.programme.yaml",
    "sheet --as markdown --week 3 programmes/winter.programme.yaml",
)
def _sheet(words: list[str]) -> int:
    options = {"--athlete": None, "--week": None, "--to": None}
    chosen, paths = split(words, {"--as": SHEET, "--overwrite": (), **options})
    if len(paths) != 1:
        raise RefusedError("sheet takes one programme: name its file")
    week = chosen.get("--week", "")
    if week and not (week.isascii() and week.isdecimal() and len(week) < 5 and int(week)):
        raise RefusedError("--week takes the number of a week")
    from .sheets import print_or_write

    form, to = chosen.get("--as", "html"), chosen.get("--to", "")
    return print_or_write(
        paths[0], form, to, chosen.get("--athlete", ""), int(week or 0), overwrite="--overwrite" in chosen
    )


@_command("guide [--] [TOPIC ...]", "shows what to write for what one has on paper, by topic.", "guide weeks")
def _guide(words: list[str]) -> int:
    from ..guide.show import report

    return report(split(words, {})[1], no_such)


@_command("schema NAME", "prints a JSON Schema: {schemas}.", "schema programme")
def _schema(words: list[str]) -> int:
    from ...schema import names, text

    if len(words) != 1 or words[0] not in names():
        raise RefusedError(f"name one schema: {', '.join(names())}")
    print(text(words[0]), end="")
    return 0


@_command(
    "set-up [--name N] [--level L] [--goal G] [--days D] [--minutes M] [--equipment E] [--] [FOLDER]",
    """
    writes the first files of a team into a folder: settings, an athlete, a programme that passes,
    the hook, how editors indent, what git leaves out. On a terminal it asks for what no option says;
    elsewhere the usual holds. What is there already is never overwritten.
    """,
    "set-up",
    "set-up my-team --name Mara --level intermediate --days 'monday thursday'",
)
def _set_up(words: list[str]) -> int:
    from ..starting.answers import QUESTIONS

    chosen, folders = split(words, {f"--{question.name}": None for question in QUESTIONS})
    if len(folders) > 1:
        raise RefusedError("set-up takes one folder")
    from datetime import date

    from .beginning import set_up

    given = {name.removeprefix("--"): value for name, value in chosen.items()}
    try:
        return set_up(folders[0] if folders else ".", given, date.today())
    except ValueError as fault:
        raise RefusedError(str(fault)) from fault


@_command(
    "editor [--version]",
    """
    runs the language server on standard input and output, for an editor to start. It needs
    pip install "spotline[editor]".
    """,
    "editor --version",
)
def _editor(words: list[str]) -> int:
    chosen, others = split(words, {"--stdio": (), "--version": ()})
    if others:
        raise RefusedError("the editor command takes no names")
    if "--version" in chosen:
        # What an editor asks before it starts the server: whether that can run, at the price of a look.
        from importlib.util import find_spec

        return print_version() if find_spec("pygls") else _lack_editor()
    try:
        from ..editor.server import serve
    except ModuleNotFoundError as missing:
        if (missing.name or "").partition(".")[0] not in ("pygls", "lsprotocol", "cattrs", "attrs", "attr"):
            raise
        return _lack_editor()
    return serve()


def _lack_editor() -> int:
    complain('the editor needs one thing more: pip install "spotline[editor]"')
    return 2


def print_version() -> int:
    """Says which version this is; the exit code."""
    from ..version import VERSION

    print(f"spotline {VERSION}")
    return 0
