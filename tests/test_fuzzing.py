"""Replays the inputs that fuzzing kept, and those that went wrong once; see fuzzing/run.py, which looks for more."""

from __future__ import annotations

from pathlib import Path

import pytest

from spotline.tests.fuzzing.targets import TARGETS, Folder, sound_input

CORPUS = Path(__file__).parent / "fuzzing" / "corpus"
INPUTS = sorted(CORPUS.glob("*/*"))


@pytest.mark.parametrize("name", TARGETS)
def test_what_is_sound_passes_and_the_corpus_is_there(name: str, tmp_path: Path) -> None:
    TARGETS[name](Folder(tmp_path), sound_input(name))
    assert list((CORPUS / name).iterdir())


@pytest.mark.parametrize("path", INPUTS, ids=lambda path: f"{path.parent.name}-{path.name}")
def test_what_fuzzing_found_is_told_and_raises_nothing(path: Path, tmp_path: Path) -> None:
    TARGETS[path.parent.name](Folder(tmp_path), path.read_bytes())
