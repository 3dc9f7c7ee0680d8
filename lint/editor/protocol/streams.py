"""The two ends of the conversation: input that is read ahead, and output that may break off."""

from __future__ import annotations

import asyncio
import os
import sys
from collections import deque
from threading import Thread

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable

_CHUNK = 1 << 16

PAUSE = 0.5
"""Seconds without input after which there is time to tidy up."""


class Input:
    """Bytes as they come, read ahead by a thread.

    ``idle`` is called whenever all that has come is worked off: it does one step of what else there is to do,
    and says whether there may be more. So whatever has queued up is taken together before anything is made
    of it, without a timer. ``pause`` is called once nothing has come for a while.
    """

    def __init__(self, handle: int, idle: Callable[[], bool], pause: Callable[[], None]) -> None:
        self._handle = handle
        self._idle = idle
        self._pause = pause
        self._chunks: deque[bytes] = deque()
        self._buffer = bytearray()
        self._looked = 0
        self._ended = False
        self._more: asyncio.Event | None = None

    @property
    def waiting(self) -> bool:
        """Whether something has come since."""
        return bool(self._chunks)

    def end(self) -> None:
        """Takes the input for ended."""
        self._chunks.append(b"")
        if self._more is not None:
            self._more.set()

    async def readline(self) -> bytes:
        """Bytes up to and with the next line feed; none at the end."""
        while (at := self._buffer.find(b"\n", self._looked)) < 0:
            self._looked = len(self._buffer)
            if not await self._read():
                return b""
        return self._taken(at + 1)

    async def readexactly(self, number: int) -> bytes:
        """So many bytes; none where the end comes before."""
        while len(self._buffer) < number:
            if not await self._read():
                return b""
        return self._taken(number)

    def _taken(self, number: int) -> bytes:
        data = bytes(self._buffer[:number])
        del self._buffer[:number]
        self._looked = 0
        return data

    async def _read(self) -> bool:
        """Waits for the next bytes; False at the end."""
        if self._more is None:
            self._more = asyncio.Event()
            Thread(
                target=self._read_ahead, args=(asyncio.get_running_loop(), self._more), daemon=True
            ).start()
        while not self._chunks and self._idle():
            pass
        if not self._chunks and not self._ended:
            await self._come(self._more)
        if self._chunks:
            chunk = self._chunks.popleft()
            self._ended = self._ended or not chunk
            self._buffer += chunk
        return not self._ended

    async def _come(self, more: asyncio.Event) -> None:
        """Waits for a chunk."""
        pause = asyncio.get_running_loop().call_later(PAUSE, self._pause)
        while not self._chunks:
            more.clear()
            await more.wait()
        pause.cancel()

    def _read_ahead(self, loop: asyncio.AbstractEventLoop, more: asyncio.Event) -> None:
        chunk = b"-"
        while chunk:
            try:
                chunk = os.read(self._handle, _CHUNK)
            except OSError:
                chunk = b""
            self._chunks.append(chunk)
            try:
                loop.call_soon_threadsafe(more.set)
            except RuntimeError:  # the loop has been closed meanwhile
                return


class Output:
    """Bytes to the client; ``broken`` is called once it has gone."""

    def __init__(self, handle: int, broken: Callable[[], None]) -> None:
        self._handle = handle
        self._broken = broken

    def write(self, data: bytes) -> None:
        """Writes all of it."""
        left = memoryview(data)
        try:
            while left:
                left = left[os.write(self._handle, left) :]
        except OSError:
            self._broken()

    def close(self) -> None:
        """Nothing: the handle is closed with the process."""


def taken_over() -> tuple[int, int]:
    """Handles of standard input and output, for the protocol alone.

    What anything else prints goes to standard error from now on.
    """
    handles = os.dup(0), os.dup(1)
    os.dup2(2, 1)
    sys.stdout = sys.stderr
    if sys.platform == "win32":
        import msvcrt

        for handle in handles:
            msvcrt.setmode(handle, os.O_BINARY)
    return handles
