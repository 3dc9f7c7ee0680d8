"""Files told group by group: what leans on one another stays together, and nothing is kept of what is told."""

from __future__ import annotations

import gc
import os
from collections.abc import Iterator
from datetime import date
from functools import partial
from pathlib import Path

import pytest

from spotline.lint.counting.ledger import Ledger
from spotline.lint.counting.tally import Visit
from spotline.lint.model.sessions import Prescription
from spotline.lint.project.discovery import discovered
from spotline.lint.project.groups import grouped
from spotline.lint.project.mentions import ANY, mentions
from spotline.lint.project.telling import Teller
from spotline.lint.project.workspace import Workspace
from spotline.lint.reporters import review_json
from spotline.lint.syntax.tree import Node, Reading
from spotline.lint.text.places import Text
from spotline.tests.steps import growth

DAY = date(2026, 1, 5)

PLAN = """\
programme: Winter
athlete: NAME
starts: 2026-01-05
weeks: 2
sessions:
  - session: Lower
    day: monday
    exercises:
      - {exercise: back squat, sets: 30, reps: 5}
      - {exercise: leg curl of ours, sets: 3, reps: 8-5}
"""
CLOSED = (Ledger, Visit, Prescription, Node, Reading, Text)


@pytest.fixture
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    (tmp_path / ".git").mkdir()
    monkeypatch.chdir(tmp_path)
    return tmp_path


def groups_of(*paths: str) -> list[set[str]]:
    workspace = Workspace(DAY)
    return [
        {file.name for file in group.files}
        for group in grouped(workspace, discovered(workspace, paths or (".",)))
    ]


class TestGroups:
    def test_an_athlete_and_all_programmes_that_name_them(self, folder: Path) -> None:
        for name in ("mara", "kim"):
            (folder / f"{name}.athlete.yaml").write_text(f"name: {name}\n")
            for number in (1, 2):
                plan = folder / f"{name}-{number}.programme.yaml"
                plan.write_text(PLAN.replace("NAME", f"{name}.athlete.yaml"))
        (folder / "open.programme.yaml").write_text(PLAN.replace("athlete: NAME\n", ""))
        assert groups_of() == [
            {f"{name}.athlete.yaml", f"{name}-1.programme.yaml", f"{name}-2.programme.yaml"}
            for name in ("kim", "mara")
        ] + [{"open.programme.yaml"}]

    @pytest.mark.parametrize(
        "written",
        [
            "people/mara.athlete.yaml",
            '"people/ma\\x72a.athlete.yaml"',
            "people/other.athlete.yaml",
            "{athlete: people/mara.athlete.yaml}",
            "people/MARA.athlete.yaml",
        ],
        ids=["plain", "letters by number", "a link", "among more", "another case"],
    )
    def test_however_the_file_is_named(self, folder: Path, written: str) -> None:
        (folder / "people").mkdir()
        (folder / "people/mara.athlete.yaml").write_text("name: Mara\n")
        (folder / "people/other.athlete.yaml").symlink_to("mara.athlete.yaml")
        (folder / "a.programme.yaml").write_text(PLAN.replace("NAME", "people/mara.athlete.yaml"))
        (folder / "b.programme.yaml").write_text(PLAN.replace("NAME", written))
        assert groups_of("a.programme.yaml", "b.programme.yaml") == [{"a.programme.yaml", "b.programme.yaml"}]

    def test_a_file_of_another_name_is_one_athlete_too(self, folder: Path) -> None:
        (folder / "mara.yaml").write_text("name: Mara\n")
        for name in "ab":
            (folder / f"{name}.programme.yaml").write_text(PLAN.replace("NAME", "mara.yaml"))
        assert groups_of() == [{"a.programme.yaml", "b.programme.yaml"}]

    @pytest.mark.parametrize(
        ("text", "found"),
        [
            (b"athlete: ../Mara.athlete.yaml", ["mara.athlete.yaml"]),
            (b"athlete: {name: Mara}", []),
            (b"athlete:\n  name: Mara\n", []),
            (b"athletes:\n  - {name: Mara}\n", []),
            (b"athlete: mara.yaml", [ANY]),
            (b"athletes: [mara.txt]", [ANY]),
            (b'athlete: "m\\x61ra.athlete.yaml"', [ANY, "ra.athlete.yaml"]),
        ],
    )
    def test_what_a_text_mentions(self, text: bytes, found: list[str]) -> None:
        assert sorted(mentions(text)) == sorted(found) or (ANY in found and ANY in mentions(text))

    @pytest.mark.parametrize("unit", [b"x", b" ", b"athlete:", b"athlete: ", b".athlete.yaml"])
    def test_looking_for_mentions_takes_no_longer_than_reading(self, unit: bytes) -> None:
        assert growth(lambda size: lambda: mentions(unit * size), 2000) < 2.2
        mentions(b"athlete" + b" " * 500_000 + b": " + unit * 200_000)  # would take hours with the square


class TestNothingIsKept:
    @pytest.fixture(autouse=True)
    def _without_collections(self) -> Iterator[None]:
        gc.collect()
        gc.disable()
        yield
        gc.enable()

    @staticmethod
    def alive() -> dict[str, int]:
        found = gc.get_objects()
        return {kind.__name__: sum(isinstance(one, kind) for one in found) for kind in CLOSED}

    @pytest.mark.parametrize(
        "ending",
        ["", "  - {session: [}\n", "zones: 3\n", "  - session: Upper\n    day: never\n"],
        ids=["sound", "unreadable", "unknown key", "a day that is none"],
    )
    def test_trees_and_ledgers_go_with_their_group(self, folder: Path, ending: str) -> None:
        for number in range(6):
            (folder / f"a{number}.athlete.yaml").write_text("name: Mara\n")
            text = PLAN.replace("NAME", f"a{number}.athlete.yaml") + ending
            (folder / f"a{number}.programme.yaml").write_text(text)
        workspace = Workspace(DAY)
        groups = grouped(workspace, discovered(workspace, ["."]))
        assert len(groups) == 6
        teller = Teller(workspace, review_json.part)
        teller.group(groups[0].files)
        teller.group(groups[1].files)
        before = self.alive()
        for group in groups[2:]:
            teller.group(group.files)
        assert self.alive() == before

    def test_what_stays_is_gone_through_once(self, folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
        """To freeze it, and to ask how much is frozen, each goes through all of it."""
        for number in range(4):
            (folder / f"b{number}.programme.yaml").write_text(PLAN.replace("athlete: NAME\n", ""))
        workspace = Workspace(DAY)
        called: list[str] = []
        for name in ("freeze", "get_freeze_count"):
            monkeypatch.setattr(gc, name, partial(called.append, name))
        teller = Teller(workspace, review_json.part)
        for group in grouped(workspace, discovered(workspace, ["."])):
            teller.group(group.files)
        assert called == ["freeze"]

    def test_a_review_that_is_kept_whole_would_show(self, folder: Path) -> None:
        (folder / "a.programme.yaml").write_text(PLAN.replace("athlete: NAME\n", ""))
        from spotline.lint.project.review import review

        before = self.alive()
        kept = review(["."], DAY)
        now = self.alive()
        assert all(now[kind.__name__] > before[kind.__name__] for kind in (Ledger, Visit, Prescription, Node))
        assert kept.files
        assert os.path.exists("a.programme.yaml")
