"""Where a file that is missing has gone: by what git says, by the case of its name, by its name elsewhere."""

from __future__ import annotations

import os
import re
from functools import partial

from ..findings.finding import Edit, Finding
from ..syntax import builder
from ..text import files, repository
from ..text.letters import in_other_case
from ..wording.words import did_you_mean
from .discovery import searched
from .git import GitError, Repository
from .workspace import MISSING

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..model.athlete import Athlete
    from ..syntax.tree import Reading
    from ..text.places import Term
    from ..text.repository import SourceFile
    from .workspace import Workspace


def named_athlete(workspace: Workspace, programme: SourceFile, term: Term) -> Athlete | Finding:
    """The athlete whose file a programme names, else a finding with edits to where it may have gone."""
    found = workspace.named_athlete(programme, term)
    if not isinstance(found, Finding) or found.rule != MISSING:
        return found
    edits = _edits(workspace, programme, term, workspace.named_in(programme, term.words))
    if not edits:
        return found
    change = did_you_mean([edit.words for edit in edits])
    if edits[0].certain:
        change = f"Write {edits[0].words}: that is the same athlete's file now."
    return Finding(
        MISSING, found.severity, found.place, found.counted, change=change, where=found.where, edits=edits
    )


def _edits(workspace: Workspace, programme: SourceFile, term: Term, gone: SourceFile) -> tuple[Edit, ...]:
    """An edit for each athlete file that may be meant by a path at which there is none.

    It is certain where git says that the file was renamed and the name of the athlete in it is the same, or
    where only the case of the path differs. A file of that name elsewhere may be another person's.
    """
    certain = (
        _with_slashes(workspace, programme, term)
        or workspace.answer(("other case", gone.real), partial(_in_other_case, workspace, gone))
        or _renamed(workspace, gone)
    )
    if certain:
        return (_edit(programme, term, certain, certain=True),)
    return tuple(
        _edit(programme, term, real, certain=False) for real in _of_the_same_name(workspace, programme, gone)
    )


def _edit(programme: SourceFile, term: Term, real: str, *, certain: bool) -> Edit:
    path = os.path.relpath(real, os.path.dirname(programme.real)).replace(os.sep, "/")
    is_plain = re.fullmatch(r"[\w.](?:[\w./ -]*[\w-])?", path)
    return Edit(
        term.place,
        path if is_plain else "'" + path.replace("'", "''") + "'",
        f"write {path}",
        certain=certain,
    )


def _with_slashes(workspace: Workspace, programme: SourceFile, term: Term) -> str:
    """The file that is meant by a path written with the backslashes of Windows; empty where there is none."""
    if "\\" not in term.words:
        return ""
    meant = workspace.named_in(programme, term.words.replace("\\", "/"))
    inside = repository.is_inside(programme.root, meant.real)
    return meant.real if inside and workspace.overlay.is_file(meant) else ""


def _in_other_case(workspace: Workspace, gone: SourceFile) -> str:
    """The one path that differs in case alone; empty where there is none, or more than one."""
    return in_other_case(gone.root, gone.real, workspace.overlay.opened())


def _renamed(workspace: Workspace, gone: SourceFile) -> str:
    """The real path of what git says is the same file under another name; empty where it does not say so."""
    if not workspace.asks_git:
        return ""
    try:
        asked = Repository(gone.root)
        commit = asked.commit("HEAD")
        if not workspace.renamed:
            renamed = asked.changes(commit).renamed
            workspace.renamed = {_at(gone.root, old): _at(gone.root, new) for old, new in renamed.items()}
        new = workspace.renamed.get(gone.real, "")
        if not new or not os.path.isfile(new):
            return ""
        before = dict(asked.contents(commit, [gone.path_from_root], files.LONGEST_FILE))
        text = files.decoded(gone.name, before.get(gone.path_from_root, b""))
    except (GitError, files.UnreadableError):
        return ""
    was = _name_in(builder.parse(gone.name, text))
    now = _name_in(workspace.overlay.read(workspace.files.file(repository.shown(new))))
    return new if was and was == now else ""


def _at(root: str, path: str) -> str:
    return repository.real(os.path.join(root, *path.split("/")))


def _name_in(reading: Reading) -> str:
    """The name of the athlete in an athlete file."""
    plain = reading.root.plain if reading.root is not None else None
    name = plain.get("name") if isinstance(plain, dict) else None
    return name if isinstance(name, str) else ""


def _of_the_same_name(workspace: Workspace, programme: SourceFile, gone: SourceFile) -> list[str]:
    """Athlete files of the repository with the same name in other folders (real paths), three at most."""
    if not repository.is_marked(programme.root):
        return []
    files = workspace.answer(("athletes", programme.root), partial(_athletes, workspace, programme.root))
    name = os.path.basename(gone.real)
    return [real for real in files if os.path.basename(real).casefold() == name.casefold()][:3]


def _athletes(workspace: Workspace, root: str) -> list[str]:
    """The athlete files of a repository, on the disk and among the texts that are open (real paths)."""
    found = {file.real for file in searched(workspace, repository.shown(root)) if file.kind == "athlete"}
    found.update(
        path
        for path in workspace.overlay.opened()
        if repository.kind_of(path) == "athlete" and repository.is_inside(root, path)
    )
    return sorted(found)
