"""What is told of files until it is printed: in memory while it is little, else in a file of its own."""

from __future__ import annotations

import marshal

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from typing import Any, BinaryIO

MOST_BYTES = 16_000_000
"""Bytes that are kept in memory."""


class Shelf:
    """Plain data by numbers from 0, gone through in the order of these as often as asked for."""

    __slots__ = ("_bytes", "_file", "_kept")

    def __init__(self, size: int) -> None:
        self._kept: list[bytes | tuple[int, int]] = [b""] * size
        self._bytes = 0
        self._file: BinaryIO | None = None

    def __len__(self) -> int:
        return len(self._kept)

    def __iter__(self) -> Iterator[Any]:
        for one in self._kept:
            yield marshal.loads(one if isinstance(one, bytes) else self._read(*one))

    def put(self, number: int, data: Any) -> None:
        """Keeps something under a number, that of one more included. Raises OSError where a disk is full."""
        kept = marshal.dumps(data)
        if number == len(self._kept):
            self._kept.append(b"")
        self._bytes += len(kept)
        self._kept[number] = kept if self._bytes <= MOST_BYTES else self._written(kept)

    def _written(self, data: bytes) -> tuple[int, int]:
        if self._file is None:
            from tempfile import TemporaryFile

            self._file = TemporaryFile()  # noqa: SIM115  it closes with the process
        start = self._file.seek(0, 2)
        self._file.write(data)
        return start, len(data)

    def _read(self, start: int, size: int) -> bytes:
        assert self._file is not None
        self._file.seek(start)
        return self._file.read(size)
