"""The compiled code of our modules in one file, since finding 150 of them takes longer than reading it.

Python keeps the code of each module in a file of its own (``__pycache__``), and looks through folders for it.
The command keeps it once more, in one file beside these. A module is taken from there while its source is as
it was, by size and time; any other is found by Python as ever, and put there when the command ends. Nothing
is written where Python may write no compiled code. Where the file is damaged or gone, Python does without.
"""

from __future__ import annotations

import marshal
import os
import sys
from importlib.machinery import ModuleSpec, SourceFileLoader

TYPE_CHECKING = False
if TYPE_CHECKING:
    from types import CodeType
    from typing import BinaryIO

    Entry = tuple[bool, int, int, int, int]
    """Whether it is a package; time and size of its source; where its code begins, and its length."""

    Part = tuple[tuple[bool, int, int], bytes]
    """The first three of these, and the code."""

OURS = __name__.partition(".")[0]
HOME = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
FORM = f"1 {sys.version} {HOME}"
"""What the file must have been written by and for."""

_SIZE = 3
"""Bytes that tell how long the index is."""


class _Finder:
    """Finds our modules in the file. ``before`` are the modules that were there before it was asked."""

    def __init__(self, path: str) -> None:
        self.path = path
        self.before = frozenset(sys.modules)
        self.entries: dict[str, Entry] = {}
        self.given: set[str] = set()
        self.start = 0
        self.file: BinaryIO | None = None
        try:
            self.file = open(path, "rb", buffering=0)  # noqa: SIM115  it closes with the process
            size = int.from_bytes(self.file.read(_SIZE), "little")
            form, entries = marshal.loads(self.file.read(size))
        except (OSError, ValueError, EOFError, TypeError):
            return
        if form == FORM:
            self.entries, self.start = entries, _SIZE + size

    def find_spec(self, name: str, path: object = None, target: object = None) -> ModuleSpec | None:
        """Where a module comes from, if its code is there and its source is the same."""
        entry = self.entries.get(name)
        if entry is None:
            return None
        is_package, *stamp, _, _ = entry
        source = _source_of(name, is_package)
        if _stamp_of(source) != stamp:
            del self.entries[name]
            return None
        spec = ModuleSpec(name, _Loader(name, source), origin=source, is_package=is_package)
        spec.has_location = True
        spec.cached = self.path  # Python would take a while to work it out
        if spec.submodule_search_locations is not None:
            spec.submodule_search_locations.append(os.path.dirname(source))
        self.given.add(name)
        return spec

    def data_of(self, name: str) -> bytes:
        """The code of a module as it was written; empty where it is not there whole."""
        entry = self.entries.get(name)
        if entry is None or self.file is None:
            return b""
        *_, at, length = entry
        self.file.seek(self.start + at)
        data = self.file.read(length)
        return data if len(data) == length else b""

    def code_of(self, name: str) -> CodeType | None:
        """The code of a module; None where it is damaged, and is to be written anew."""
        try:
            code: CodeType = marshal.loads(self.data_of(name))
        except (OSError, ValueError, EOFError, TypeError):
            self.entries.pop(name, None)
            self.given.discard(name)
            return None
        return code


class _Loader(SourceFileLoader):
    """Takes the code of a module from the file; all else is as with any module."""

    def get_code(self, fullname: str) -> CodeType | None:
        """The code, from where Python has it if the file does not hold it whole."""
        code = None if _finder is None else _finder.code_of(fullname)
        return super().get_code(fullname) if code is None else code


_finder: _Finder | None = None


def use() -> None:
    """Finds our modules in the file from now on."""
    global _finder
    if _finder is None and __spec__ is not None and __spec__.cached:
        _finder = _Finder(f"{os.path.splitext(__spec__.cached)[0]}.all")
        sys.meta_path.insert(0, _finder)


def keep() -> None:
    """Writes the file anew where modules were imported that it did not hold."""
    if _finder is None or sys.dont_write_bytecode:
        return
    known = _finder.before | _finder.given
    new = [name for name in sys.modules if name.startswith(f"{OURS}.") and name not in known]
    if new:
        from contextlib import suppress

        parts = {name: part for name in {*_finder.entries, *new} if (part := _part(_finder, name))}
        with suppress(OSError):  # as where Python cannot write what it compiles
            _write(_finder.path, parts)


def _part(finder: _Finder, name: str) -> Part | None:
    """What is to be kept of a module: what the file holds of it already, else what Python has compiled."""
    if data := finder.data_of(name):
        return finder.entries[name][:3], data
    spec = sys.modules[name].__spec__ if name in sys.modules else None
    if spec is None or not isinstance(spec.loader, SourceFileLoader):
        return None
    is_package = spec.submodule_search_locations is not None
    time, size = _stamp_of(_source_of(name, is_package))  # before the code: a later change shows
    return (is_package, time, size), marshal.dumps(spec.loader.get_code(name))


def _write(path: str, parts: dict[str, Part]) -> None:
    entries: dict[str, Entry] = {}
    at = 0
    for name, (stamp, data) in parts.items():
        entries[name] = *stamp, at, len(data)
        at += len(data)
    index = marshal.dumps((FORM, entries))
    beside = f"{path}.{os.getpid()}"
    try:
        with open(beside, "wb") as file:
            file.write(len(index).to_bytes(_SIZE, "little") + index)
            file.writelines(data for _, data in parts.values())
        os.replace(beside, path)
    except OSError:
        if os.path.lexists(beside):
            os.unlink(beside)
        raise


def _source_of(name: str, is_package: bool) -> str:
    path = HOME + name.removeprefix(OURS).replace(".", os.sep)
    return f"{path}{os.sep}__init__.py" if is_package else f"{path}.py"


def _stamp_of(source: str) -> list[int]:
    """The time and the size of a source; [0, 0] where there is none."""
    try:
        told = os.stat(source)
    except OSError:
        return [0, 0]
    return [told.st_mtime_ns, told.st_size]
