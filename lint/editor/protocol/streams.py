"""The two streams of the connection: input that a thread reads ahead, and output that may break off."""

from __future__ import annotations

import asyncio
import os
import sys
from collections import deque
from threading import Thread

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable

_CHUNK_SIZE = 1 << 16

PAUSE = 0.5
"""Seconds without input after which there is time to tidy up."""


class InputStream:
    """The bytes that the client sends, read ahead by a thread.

    ``on_idle`` is called whenever all input so far has been handled. It does one step of the work that
    waits, and returns whether there may be more. So all messages that have queued up are handled before
    anything is reviewed, and no timer is needed. ``on_pause`` is called once when no input has come for a
    while.
    """

    def __init__(self, handle: int, on_idle: Callable[[], bool], on_pause: Callable[[], None]) -> None:
        self._handle = handle
        self._on_idle = on_idle
        self._on_pause = on_pause
        self._chunks: deque[bytes] = deque()
        self._buffer = bytearray()
        self._searched = 0
        self._ended = False
        self._arrived: asyncio.Event | None = None

    @property
    def has_more(self) -> bool:
        """Whether input has come that is not handled yet."""
        return bool(self._chunks)

    def end(self) -> None:
        """Treats the input as ended."""
        self._chunks.append(b"")
        if self._arrived is not None:
            self._arrived.set()

    async def readline(self) -> bytes:
        """The bytes up to and including the next line feed; empty at the end of the input."""
        while (at := self._buffer.find(b"\n", self._searched)) < 0:
            self._searched = len(self._buffer)
            if not await self._read():
                return b""
        return self._take(at + 1)

    async def readexactly(self, number: int) -> bytes:
        """A number of bytes; empty where the input ends before."""
        while len(self._buffer) < number:
            if not await self._read():
                return b""
        return self._take(number)

    def _take(self, number: int) -> bytes:
        data = bytes(self._buffer[:number])
        del self._buffer[:number]
        self._searched = 0
        return data

    async def _read(self) -> bool:
        """Waits for the next bytes; returns False at the end of the input."""
        if self._arrived is None:
            self._arrived = asyncio.Event()
            Thread(
                target=self._read_ahead, args=(asyncio.get_running_loop(), self._arrived), daemon=True
            ).start()
        while not self._chunks and self._on_idle():
            pass
        if not self._chunks and not self._ended:
            await self._wait(self._arrived)
        if self._chunks:
            chunk = self._chunks.popleft()
            self._ended = self._ended or not chunk
            self._buffer += chunk
        return not self._ended

    async def _wait(self, arrived: asyncio.Event) -> None:
        """Waits until a chunk is there."""
        pause = asyncio.get_running_loop().call_later(PAUSE, self._on_pause)
        while not self._chunks:
            arrived.clear()
            await arrived.wait()
        pause.cancel()

    def _read_ahead(self, loop: asyncio.AbstractEventLoop, arrived: asyncio.Event) -> None:
        """Reads until the end of the input; runs in a thread of its own."""
        chunk = b"-"
        while chunk:
            try:
                chunk = os.read(self._handle, _CHUNK_SIZE)
            except OSError:
                chunk = b""
            self._chunks.append(chunk)
            try:
                loop.call_soon_threadsafe(arrived.set)
            except RuntimeError:  # the loop has been closed meanwhile
                return


class OutputStream:
    """The bytes to the client; ``on_broken`` is called once the client has gone."""

    def __init__(self, handle: int, on_broken: Callable[[], None]) -> None:
        self._handle = handle
        self._on_broken = on_broken

    def write(self, data: bytes) -> None:
        """Writes all of the data."""
        remaining = memoryview(data)
        try:
            while remaining:
                remaining = remaining[os.write(self._handle, remaining) :]
        except OSError:
            self._on_broken()

    def close(self) -> None:
        """Does nothing: the handle is closed when the process ends."""


def claim_standard_streams() -> tuple[int, int]:
    """Handles of standard input and output that only the protocol uses.

    Whatever else is printed goes to standard error from now on.
    """
    handles = os.dup(0), os.dup(1)
    os.dup2(2, 1)
    sys.stdout = sys.stderr
    if sys.platform == "win32":
        import msvcrt

        for handle in handles:
            msvcrt.setmode(handle, os.O_BINARY)
    return handles
