"""A further process that reviews batches of files, as `workers` sends them."""

from __future__ import annotations

import gc
import marshal
import os
import sys
from importlib import import_module

from .. import reporters
from ..project.beside import Beside
from ..project.telling import Teller
from ..project.workspace import Workspace

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


def serve() -> None:
    """Answers one batch after another, until nothing more comes.

    What anything in here prints goes nowhere: the answers alone go where the output went.
    """
    import signal

    signal.signal(signal.SIGINT, signal.SIG_IGN)  # who started us is told, and ends us
    gc.disable()
    asks, answers = os.fdopen(os.dup(0), "rb"), os.fdopen(os.dup(1), "wb")
    nowhere = os.open(os.devnull, os.O_RDWR)
    for stream in (0, 1):
        os.dup2(nowhere, stream)
    sys.stdout = open(os.devnull, "w", encoding="utf-8")  # noqa: SIM115  it closes with the process
    try:
        worker = _Reviewer(*marshal.load(asks))
        while True:
            answers.write(marshal.dumps(worker.answer(marshal.load(asks))))
            answers.flush()
    except (EOFError, BrokenPipeError):
        os._exit(0)  # nobody asks, or nobody listens, any more


class _Reviewer:
    """Reviews in a workspace that is laid out as that of the process which asks."""

    def __init__(
        self,
        today: int,
        form: str,
        look: tuple[Any, ...],
        renamed: dict[str, str],
        not_in_git: list[str],
        twins: dict[str, str],
        beside: dict[str, Any],
    ) -> None:
        from datetime import date

        module = import_module(f".{reporters.REVIEW[form]}", reporters.__name__)
        self.workspace = Workspace(date.fromordinal(today), asks_git=True)
        self.workspace.renamed = renamed
        self.workspace.not_in_git = set(not_in_git)
        self.workspace.twins = twins
        for root, plain in beside.items():
            self.workspace.beside[root] = Beside.of(plain, self.workspace.files)
        self.teller = Teller(self.workspace, lambda one: module.part(one, look))

    def answer(self, batch: list[list[str]]) -> tuple[list[Any], list[str]]:
        """What is told of groups of files, by their names; and the names of settings that are broken."""
        file = self.workspace.files.file
        told = [one for group in batch for one in self.teller.group([file(name) for name in group])]
        return told, [one.name for one in self.workspace.broken_settings() if one.kind == "team"]
