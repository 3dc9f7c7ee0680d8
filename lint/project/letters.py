"""What is said of files whose names differ in case from what is written, or from another's."""

from __future__ import annotations

import os

from ..findings.finding import Edit, Finding
from ..syntax.tree import Mapping, Scalar, Sequence
from ..text.letters import in_other_case

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..syntax.tree import Node, Reading
    from ..text.repository import SourceFile
    from .workspace import Workspace


def written_in_other_case(workspace: Workspace, programme: SourceFile, root: Node) -> Iterator[Finding]:
    """A finding for each athlete file that a programme names by other letters than it has.

    Such a file is found here, on a system that ignores case, and on no other.
    """
    folder = os.path.dirname(programme.real)
    for node in _named(root):
        path = os.path.normpath(os.path.join(folder, *node.text.split("/")))
        true = in_other_case(programme.root, path, workspace.overlay.opened())
        if not true or not workspace.overlay.exists(workspace.named_in(programme, node.text)):
            continue
        words = os.path.relpath(true, folder).replace(os.sep, "/")
        yield Finding(
            "athlete-in-other-letters",
            "warning",
            node.place,
            f"The file is called {words}: on Linux, where commits are checked, {node.text} is not there.",
            change=f"Write {words}.",
            where="athlete",
            edits=(Edit(node.place, words, f"write {words}", certain=True),),
        )


def _named(root: Node) -> Iterator[Scalar]:
    """The nodes that name athlete files in a programme."""
    entries = root.entries if isinstance(root, Mapping) else {}
    several = entries["athletes"].value if "athletes" in entries else None
    nodes = [entries["athlete"].value] if "athlete" in entries else []
    for node in (*nodes, *(several.items if isinstance(several, Sequence) else ())):
        if isinstance(node, Mapping) and "athlete" in node.entries:
            node = node.entries["athlete"].value
        if isinstance(node, Scalar) and isinstance(node.plain, str):
            yield node


def one_of_two(reading: Reading, name: str, other: str) -> Finding:
    """The finding for a file beside which another differs in the case of its name alone."""
    return Finding(
        "file-in-two-cases",
        "warning",
        reading.text.place(0, 0),
        f"{name} and {other} are one file on Windows and macOS: a checkout there keeps one of the two.",
        change="Rename one of them.",
    )
