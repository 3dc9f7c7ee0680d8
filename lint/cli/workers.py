"""Further processes that share the review of many files. Each reviews a few groups of files at a time.

A worker is a process of the same Python with the same places to look for modules. It is sent the files of a
batch and sends back what is told of them, both as plain data through its pipes; see `worker`.
"""

from __future__ import annotations

import marshal
import subprocess
import sys
from collections import deque
from contextlib import suppress
from threading import Condition, Thread

from ..engine.run import Fault

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator
    from typing import Any

    from ..project.groups import Group
    from ..project.telling import Teller, Told
    from ..project.workspace import Workspace
    from ..text.repository import SourceFile

    Batch = list[list[SourceFile]]
    """Groups of files."""

BATCH = 20_000
"""Bytes of files from which on a batch is sent: so few that at the end nobody waits long for the last."""

PROGRAM = """\
import sys; sys.path[:] = {path!r}
from {ours}.compiled import use; use()
from {ours}.worker import serve; serve()
"""

TICK = 0.1
"""Seconds after which the main thread looks up, since some systems tell it of Ctrl-C only then."""


class _LostError(Exception):
    """A worker has ended before it was told to; says how."""


class _NotStartedError(Exception):
    """The system starts no further process."""


class Job:
    """What workers are to do: ``start`` is told to each at first, ``take`` takes in what is told."""

    __slots__ = ("start", "take", "teller", "workspace")

    def __init__(
        self,
        workspace: Workspace,
        teller: Teller,
        start: tuple[Any, ...],
        take: Callable[[list[SourceFile], Iterable[Told]], None],
    ) -> None:
        self.workspace = workspace
        self.teller = teller
        self.start = start
        self.take = take


def review_by_workers(job: Job, groups: list[Group], number: int) -> None:
    """Reviews groups of files by a number of workers, and takes in what each tells as it comes."""
    Workers(job, groups).run(number)


class Workers:
    """The workers of one run, a thread for each, which waits for its answers.

    A batch whose worker ends before its time is sent once more, group by group: so only those files are named
    as not reviewed that no worker bears. Where no worker can be started, the main thread reviews the batch.
    """

    def __init__(self, job: Job, groups: list[Group]) -> None:
        self.job = job
        self.waiting: deque[Batch] = deque(_batches(groups))
        self.out = 0
        self.at_work = 0
        self.state = Condition()
        self.processes: set[subprocess.Popen[bytes]] = set()
        self.failed: BaseException | None = None
        self.done: deque[tuple[Batch, list[Told] | Fault | None]] = deque()
        self.broken: set[str] = set()
        self.is_over = False

    def run(self, number: int) -> None:
        """Has all groups reviewed. Whatever ends it, no worker is left behind."""
        threads = [Thread(target=self._work, daemon=True) for _ in range(min(number, len(self.waiting)))]
        self.at_work = len(threads)
        try:
            for thread in threads:
                thread.start()
            while self.at_work or self.done:
                with self.state:
                    self.state.wait_for(lambda: self.done or not self.at_work, TICK)
                self._take_in()
            if self.failed is not None:
                raise self.failed
        finally:
            with self.state:
                self.is_over = True
                self.state.notify_all()
            for process in list(self.processes):
                process.kill()
        for name in sorted(self.broken):
            self.job.workspace.team_at(self.job.workspace.files.file(name))

    def _take_in(self) -> None:
        teller = self.job.teller
        while self.done:
            batch, told = self.done.popleft()
            files = [file for group in batch for file in group]
            if isinstance(told, Fault):
                told = teller.failed(files, told)
            elif told is None:
                told = [one for group in batch for one in teller.group(group)]
            self.job.take(files, told)

    # In the thread of a worker

    def _work(self) -> None:
        worker: _Worker | None = None
        try:
            while (batch := self._next()) is not None:
                try:
                    worker = worker or _Worker(self)
                    told, broken = worker.answer([[file.name for file in group] for group in batch])
                except _NotStartedError:
                    self._tell(batch, None)
                except _LostError as lost:
                    worker = None
                    self._lost(batch, str(lost))
                else:
                    self.broken.update(broken)
                    self._tell(batch, told)
        except BaseException as fault:
            with self.state:
                self.failed = self.failed or fault
                self.is_over = True
                self.state.notify_all()
        finally:
            if worker is not None:
                worker.end()
            with self.state:
                self.at_work -= 1
                self.state.notify_all()

    def _next(self) -> Batch | None:
        """The next batch. None where there is none, nor can come back from a worker that is lost."""
        with self.state:
            self.state.wait_for(lambda: self.waiting or not self.out or self.is_over)
            if self.is_over or not self.waiting:
                return None
            self.out += 1
            return self.waiting.popleft()

    def _tell(self, batch: Batch, told: list[Told] | Fault | None) -> None:
        with self.state:
            self.done.append((batch, told))
            self.out -= 1
            self.state.notify_all()

    def _lost(self, batch: Batch, how: str) -> None:
        if len(batch) > 1:
            with self.state:
                self.waiting.extend([group] for group in batch)
                self.out -= 1
                self.state.notify_all()
        else:
            self._tell(batch, Fault("review", f"the process that reviewed it was lost ({how})"))


class _Worker:
    """One further process."""

    def __init__(self, workers: Workers) -> None:
        self.workers = workers
        program = PROGRAM.format(path=sys.path, ours=__package__)
        try:
            self.process = subprocess.Popen(
                [sys.executable, "-c", program],
                stdin=subprocess.PIPE,
                stdout=subprocess.PIPE,
                stderr=subprocess.DEVNULL,
            )
        except OSError as fault:
            raise _NotStartedError from fault
        workers.processes.add(self.process)
        self._send(workers.job.start)

    def answer(self, names: list[list[str]]) -> tuple[list[Told], list[str]]:
        """What is told of a batch, and the names of settings that are broken. Raises _LostError."""
        self._send(names)
        assert self.process.stdout is not None
        try:
            told, broken = marshal.load(self.process.stdout)
        except (EOFError, ValueError, TypeError, OSError) as fault:
            raise self._lost() from fault
        return told, broken

    def _send(self, data: Any) -> None:
        assert self.process.stdin is not None
        try:
            self.process.stdin.write(marshal.dumps(data))
            self.process.stdin.flush()
        except OSError as fault:
            raise self._lost() from fault

    def _lost(self) -> _LostError:
        self.process.kill()
        code = self.process.wait()
        self.end()
        return _LostError(f"signal {-code}" if code < 0 else f"exit code {code}")

    def end(self) -> None:
        """Lets it go: it ends by itself where nothing more comes."""
        assert self.process.stdin is not None
        assert self.process.stdout is not None
        self.workers.processes.discard(self.process)
        for pipe in (self.process.stdin, self.process.stdout):
            with suppress(OSError):  # it has gone before
                pipe.close()
        self.process.wait()


def _batches(groups: list[Group]) -> Iterator[Batch]:
    """The groups in batches, each of a size that is worth to be sent."""
    batch: Batch = []
    size = 0
    for group in groups:
        batch.append(group.files)
        size += group.size
        if size >= BATCH:
            yield batch
            batch, size = [], 0
    if batch:
        yield batch
