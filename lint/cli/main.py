"""The command line: runs the command that its first word names."""

from __future__ import annotations

import sys


def main(arguments: list[str] | None = None) -> int:
    """Runs a command and returns its exit code."""
    import gc

    gc.disable()  # one short run: collecting costs a third of the time of a large file
    words = sys.argv[1:] if arguments is None else arguments
    try:
        code = _answer(words)
        sys.stdout.flush()
    except BrokenPipeError:
        # The reader has gone, as with `| head`: nothing is left to say, nor to flush at exit.
        import os

        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 1
    gc.freeze()  # nor is all that was made to be gone through once more on the way out
    return code


def _answer(words: list[str]) -> int:
    from .commands import COMMANDS, RefusedError, no_such, print_version

    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(errors="backslashreplace")
    if words[:1] == ["help"] and len(words) > 1:
        words = [words[1], "--help"]
    if not words or words[0] in ("--help", "-h", "help"):
        from .usage import help_text

        print(help_text(), end="")
        return 0 if words else 2
    if words[0] == "--version":
        return print_version()
    try:
        command = COMMANDS.get(words[0])
        if command is None:
            raise no_such("command", words[0], COMMANDS)
        if _asks_for_help(words[1:]):
            from .usage import command_help

            print(command_help(words[0]), end="")
            return 0
        return command(words[1:])
    except RefusedError as refused:
        from .usage import usage_lines

        print(f"spotline: {refused}", file=sys.stderr)
        print(usage_lines(), file=sys.stderr)
        return 2


def _asks_for_help(words: list[str]) -> bool:
    """Whether an option asks for the help of a command; behind ``--`` it is the name of a file."""
    options = words[: words.index("--")] if "--" in words else words
    return "--help" in options or "-h" in options
