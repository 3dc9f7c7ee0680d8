"""The command line: runs the command that its first word names."""

from __future__ import annotations

import sys

NOT_DONE = 2
"""The exit code where the job was not done; 1 always means that it was, and that something was found."""

STOPPED = 130
"""The exit code of a program that was stopped from the keyboard, by the custom of shells."""

TRACEBACK = "SPOTLINE_TRACEBACK"
"""Set in the environment, it shows where a fault of our own has happened."""


def command() -> None:
    """The program `spotline`: runs a command, and ends the process at once.

    Taking apart all that a review has made would take a twentieth of its time. All is printed by then.
    """
    import os

    from . import compiled

    compiled.use()
    code = main()
    for stream in (sys.stdout, sys.stderr):
        try:
            stream.flush()
        except (OSError, ValueError):  # nobody is left to read it
            code = code or NOT_DONE
    compiled.keep()
    os._exit(code)


def main(arguments: list[str] | None = None) -> int:
    """Runs a command and returns its exit code. What goes wrong is told on one line, not by a traceback.

    Without ``arguments`` the process is the command's own, with the words that it was started with. A caller
    who gives them goes on afterwards, so there garbage is collected as ever.
    """
    if arguments is not None:
        return _run(arguments)
    import gc

    gc.disable()  # one short run: collecting costs a third of the time of a large file
    code = _run(sys.argv[1:])
    gc.freeze()  # nor is all that was made to be gone through once more on the way out
    return code


def _run(words: list[str]) -> int:
    try:
        code = _answer(words)
        sys.stdout.flush()
    except KeyboardInterrupt:
        return _not_done("stopped", STOPPED)
    except BrokenPipeError:
        return _not_done("")  # the reader has gone, as with `| head`: nobody waits for what is left to say
    except OSError as fault:
        return _not_done(f"the job was not done: {_reason(fault)}")
    except Exception as fault:
        import os

        if os.environ.get(TRACEBACK):
            raise
        words_of = f"{type(fault).__name__}: {fault}" if str(fault) else type(fault).__name__
        return _not_done(
            f"the job was not done, by a fault of our own ({words_of}; {TRACEBACK}=1 shows where)"
        )
    return code


def _answer(words: list[str]) -> int:
    from .streams import complain, settle

    if not settle():
        complain("there is no output to print to")
        return NOT_DONE
    from .commands import COMMANDS, print_version
    from .refused import RefusedError, no_such_command

    if words[:1] == ["help"] and len(words) > 1:
        words = [words[1], "--help"]
    if not words or words[0] in ("--help", "-h", "help"):
        from .usage import help_text

        print(help_text(), end="")
        return 0 if words else NOT_DONE
    if words[0] == "--version":
        return print_version()
    try:
        command = COMMANDS.get(words[0])
        if command is None:
            raise no_such_command(words[0], COMMANDS)
        if _asks_for_help(words[1:]):
            from .usage import command_help

            print(command_help(words[0]), end="")
            return 0
        return command(words[1:])
    except RefusedError as refused:
        from .usage import how_to_call

        complain(str(refused))
        print(how_to_call(words[0]), file=sys.stderr)
        return NOT_DONE


def _asks_for_help(words: list[str]) -> bool:
    """Whether an option asks for the help of a command; behind ``--`` it is the name of a file."""
    options = words[: words.index("--")] if "--" in words else words
    return "--help" in options or "-h" in options


def _not_done(words: str, code: int = NOT_DONE) -> int:
    """Says why the job was not done, if there are words for it, and gives the exit code."""
    from .streams import complain, give_up_output

    give_up_output()
    if words:
        complain(words)
    return code


def _reason(fault: OSError) -> str:
    """What the system says, and of which file."""
    import os

    try:
        os.getcwd()
    except OSError:
        return "the working folder is no longer there"
    said = (fault.strerror or str(fault) or "the system gives no reason").lower()
    return f"{said}: {fault.filename}" if fault.filename else said
