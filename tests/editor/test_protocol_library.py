"""The editor uses only the public names of the libraries that speak the protocol: theirs may change at any time."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

import cattrs
import lsprotocol
import pygls
import pytest

from spotline.lint.editor.protocol.strict_protocol import StrictProtocol
from spotline.lint.editor.server import Server

LIBRARIES = (pygls, lsprotocol, cattrs)
EDITOR = Path(__file__).parents[2] / "lint" / "editor"
MODULES = sorted(EDITOR.rglob("*.py"))


def is_private(name: str) -> bool:
    return name.startswith("_") and not name.endswith("__")


def private_names(code: str) -> set[str]:
    """Private attributes, functions and classes that some code defines or uses."""
    found = set()
    for node in ast.walk(ast.parse(code)):
        if isinstance(node, ast.Attribute):
            found.add(node.attr)
        elif isinstance(node, ast.Name) and isinstance(node.ctx, ast.Store):
            found.add(node.id)
        elif isinstance(node, (ast.FunctionDef, ast.AsyncFunctionDef, ast.ClassDef)):
            found.add(node.name)
    return {name for name in found if is_private(name)}


def imported(code: str) -> Iterator[str]:
    """Dotted names that some code imports from one of the libraries, at run time or for types."""
    names = tuple(library.__name__ for library in LIBRARIES)
    for node in ast.walk(ast.parse(code)):
        if isinstance(node, ast.ImportFrom) and not node.level:
            dotted = [f"{node.module}.{alias.name}" for alias in node.names]
        elif isinstance(node, ast.Import):
            dotted = [alias.name for alias in node.names]
        else:
            continue
        yield from (name for name in dotted if name.partition(".")[0] in names)


def private_uses(code: str, of_libraries: set[str]) -> list[str]:
    """Private modules that some code imports, and private names of the libraries that it uses."""
    names = list(imported(code))
    modules = [name for name in names if any(map(is_private, name.split(".")))]
    # A module that imports none of the libraries may have attributes of the same name.
    return modules + sorted(private_names(code) & of_libraries if names else ())


@pytest.fixture(scope="module")
def of_pygls() -> set[str]:
    """The private names of pygls, whose classes the editor extends."""
    assert pygls.__file__ is not None
    files = Path(pygls.__file__).parent.rglob("*.py")
    return set().union(*(private_names(file.read_text(encoding="utf-8")) for file in files))


@pytest.mark.parametrize("module", MODULES, ids=lambda path: path.relative_to(EDITOR).as_posix())
def test_only_public_names_are_used(module: Path, of_pygls: set[str]) -> None:
    assert private_uses(module.read_text(encoding="utf-8"), of_pygls) == []


def test_the_private_names_are_known(of_pygls: set[str]) -> None:
    assert {"_send_response", "_shutdown", "_workspace", "_server", "_stop_event"} <= of_pygls


@pytest.mark.parametrize(
    "code",
    [
        "from pygls.lsp._capabilities import get_capability",
        "import pygls.lsp._base_server",
        "from pygls.protocol import _dict_to_object",
        "if False:\n    from cattrs._compat import is_bare",
        "from pygls.lsp.server import LanguageServer\nclass Server(LanguageServer):\n    _workspace = None",
        "from pygls.lsp.server import LanguageServer\nLanguageServer('a', '1').protocol._send_response(1)",
    ],
)
def test_a_private_use_is_found(code: str, of_pygls: set[str]) -> None:
    assert private_uses(code, of_pygls)


@pytest.mark.parametrize("ours", [Server, StrictProtocol])
def test_what_is_extended_is_public(ours: type) -> None:
    """A method that replaces one of pygls is one that pygls has: else a new version would no longer call it."""
    theirs = next(base for base in ours.__mro__ if base.__module__.startswith("pygls."))
    replaced = {name for name in vars(ours) if hasattr(theirs, name) and not name.startswith("__")}
    assert not any(map(is_private, replaced))
    wanted = {
        Server: {"report_server_error"},
        StrictProtocol: {
            "handle_message",
            "lsp_exit",
            "lsp_text_document__did_change",
            "lsp_text_document__did_close",
            "lsp_text_document__did_open",
            "structure_message",
        },
    }
    assert replaced == wanted[ours]


def imported_from_ours(module: Path) -> Iterator[str]:
    """Dotted names, from the root of the repository, that a module of the editor imports."""
    package = module.relative_to(EDITOR.parents[1]).parts[:-1]
    for node in ast.walk(ast.parse(module.read_text(encoding="utf-8"))):
        if isinstance(node, ast.ImportFrom) and node.level:
            start = [*package[: len(package) - node.level + 1], *([node.module] if node.module else [])]
            yield from (".".join([*start, alias.name]) for alias in node.names)


def test_the_editor_imports_no_rules() -> None:
    """What a rule and the editor both ask of a prescription is answered by the counting."""
    found = {name for module in MODULES for name in imported_from_ours(module)}
    assert {"lint.counting.set_group.SetGroup", "schema"} <= found
    assert [name for name in found if name.partition(".")[0] == "rules"] == []
