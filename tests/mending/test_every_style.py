"""Mending in every style of YAML: bytes outside the edits stay, a second run changes nothing, nothing new is found.

ruamel.yaml is the independent reader: what a mended file says is what the sound one says, comments and all.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Callable
from difflib import SequenceMatcher
from pathlib import Path
from typing import Any

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from ruamel.yaml import YAML

from spotline.lint.cli.main import main
from spotline.lint.mending.edits import Mend, with_edits
from spotline.lint.mending.rounds import Rounds
from spotline.lint.mending.run import write
from spotline.lint.project.results import FileReview
from spotline.tests.conftest import TODAY

NAME = "plan.programme.yaml"


@pytest.fixture(autouse=True)
def repository(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """An empty repository, which is the working folder, and a home of its own for the state."""
    (tmp_path / "here" / ".git").mkdir(parents=True)
    monkeypatch.setenv("XDG_STATE_HOME", str(tmp_path / "state"))
    monkeypatch.chdir(tmp_path / "here")
    return tmp_path / "here"


# Programmes, generated: what they say, and how it is written

Pairs = list[tuple[str, str]]
Style = Callable[[Pairs, str], str]


def braces(pairs: Pairs, indent: str) -> str:
    return "{" + ", ".join(f"{key}: {value}" for key, value in pairs) + "}"


def wide_braces(pairs: Pairs, indent: str) -> str:
    return "{ " + " , ".join(f"{key}:  {value}" for key, value in pairs) + " }  # why not"


def split_braces(pairs: Pairs, indent: str) -> str:
    return "{\n" + ",\n".join(f"{indent}  {key}: {value}" for key, value in pairs) + f"\n{indent}}}"


def lines(pairs: Pairs, indent: str) -> str:
    return f"\n{indent}".join(f"{key}: {value}" for key, value in pairs)


def remarked(pairs: Pairs, indent: str) -> str:
    return f"   # a remark\n{indent}".join(f"{key}: {value}" for key, value in pairs)


def quoted(pairs: Pairs, indent: str) -> str:
    """Keys and names in quotes."""
    return braces(
        [(f'"{key}"', f"'{value}'" if key == "exercise" else value) for key, value in pairs], indent
    )


def as_json(pairs: Pairs, indent: str) -> str:
    """All keys and words in double quotes, as JSON has them."""
    words = [
        (f'"{key}"', value if value[0] in "{*&" or value.isdecimal() else f'"{value}"')
        for key, value in pairs
    ]
    return braces(words, indent)


def explicit(pairs: Pairs, indent: str) -> str:
    """Keys behind question marks, values behind colons on lines of their own."""
    return f"\n{indent}".join(f"? {key}\n{indent}: {value}" for key, value in pairs)


def folded(pairs: Pairs, indent: str) -> str:
    """A key a line, with a note over several lines, in which nothing is a key."""
    return lines([*pairs, ("note", f">-\n{indent}  slowly, load: as told\n{indent}  # no remark")], indent)


def merged(pairs: Pairs, indent: str) -> str:
    """A key a line, and one that another group brings."""
    return lines([*pairs, ("<<", "{tempo: 3-1-X-0}")], indent)


STYLES: tuple[Style, ...] = (
    braces,
    wide_braces,
    split_braces,
    lines,
    remarked,
    quoted,
    as_json,
    explicit,
    folded,
    merged,
)

EXERCISES = ("back squat", "bench press", "bent-over row", "seated leg curl", "lat pulldown")

SLIPS = {
    "rest": "rets",
    "sets": "stes",
    "reps": "resp",
    "back squat": "back sqaut",
    "bench press": "bench pres",
    "seated leg curl": "seated leg crul",
    "monday": "mondya",
    "strength": "stregnth",
}
"""Words, and slips of them that have one right answer."""


class Plan:
    """A sound programme as a text, and the same with slips of the pen."""

    def __init__(self, sound: str, faulty: str) -> None:
        self.sound = sound
        self.faulty = faulty


@st.composite
def plans(draw: st.DrawFn) -> Plan:
    """Sessions of lines, each line in a style of its own; anchors, line ends and a mark as they come."""
    items: list[str] = []
    exercises = draw(st.lists(st.sampled_from(EXERCISES), min_size=1, max_size=3, unique=True))
    anchored = len(exercises) > 1 and draw(st.booleans())
    for number, exercise in enumerate(exercises):
        rest = "&pause 2 min" if anchored and number == 0 else "*pause" if anchored else "2 min"
        sets = draw(st.sampled_from(["3", "{1-2: 3, 3: 4}", "{1: 3, 2-3: 4}"]))
        pairs = [("exercise", exercise), ("sets", sets), ("reps", "5-8"), ("rest", rest), ("rir", "2")]
        style = draw(st.sampled_from(STYLES))
        items.append(f"      - {style(pairs, ' ' * 8)}")
    head = draw(st.sampled_from(["", "# head\n", "---\n", "%YAML 1.2\n---\n# both\n"]))
    foot = draw(st.sampled_from(["\n", "", "\n# foot\n", "\n\n\n", "\n# foot"]))
    between = draw(st.sampled_from(["", "\n", "  # between\n"]))
    text = (
        f"{head}programme: Quarry\ngoal: strength\nweeks: 3\n{between}sessions:\n  - session: A\n    day: monday\n"
        f"    exercises:\n" + "\n".join(items) + foot
    )
    faulty = text
    for right in draw(st.sets(st.sampled_from(sorted(SLIPS)), min_size=1)):
        count = len(re.findall(rf"(?<![\w-]){right}(?![\w-])", faulty))
        if count:
            faulty = re.sub(
                rf"(?<![\w-]){right}(?![\w-])", SLIPS[right], faulty, count=draw(st.integers(1, count))
            )
    end = draw(st.sampled_from(["\n", "\r\n", "\r"]))
    mark = draw(st.sampled_from(["", "\ufeff"]))
    return Plan(*(mark + one.replace("\n", end) for one in (text, faulty)))


def read(text: str) -> Any:
    """What the independent reader makes of a text; it knows no line that ends at CR alone."""
    return YAML(typ="safe").load(re.sub("\r\n?", "\n", text.removeprefix("\ufeff")))


def comments(text: str) -> list[str]:
    return re.findall(r"(?:(?<=\s)|^)#[^\r\n]*", text, re.MULTILINE)


def found(review: FileReview) -> Counter[tuple[str, str]]:
    return Counter((one.rule, one.counted) for one in review.findings)


@given(plans())
@settings(max_examples=20)
def test_slips_are_mended_to_the_very_bytes_that_were_meant(plan: Plan) -> None:
    path = Path(NAME)
    path.write_bytes(plan.sound.encode())
    sound = Rounds(["."], TODAY).review.files[0]
    assert not [one for one in sound.findings if not one.why]
    path.write_bytes(plan.faulty.encode())
    main(["mend"])
    now = path.read_bytes().decode()
    assert now == plan.sound or '"' in plan.sound  # a name is written without the quotes that it had
    assert comments(now) == comments(plan.sound)
    assert read(now) == read(plan.sound)
    assert found(Rounds(["."], TODAY).review.files[0]) == found(sound)
    before = path.stat().st_mtime_ns
    main(["mend"])
    assert (path.read_bytes().decode(), path.stat().st_mtime_ns) == (now, before)


FAULTS = {
    "sets: 3": ("sets: 40", "stes: 3"),
    "{1-2: 3, 3: 4}": ("{1-2: 3}", "{1-2: 3, 2-3: 4}", "{1-2: 3, 3-6: 4}"),
    "{1: 3, 2-3: 4}": ("{1: 3, 3: 4}",),
    "rir: 2": ("rir: 22", "rir: 2, rir: 3", "rir: 2, rpe: 10"),
    "reps: 5-8": ("reps: 5-8, load: 100",),
}
"""What leaves a choice, by what is right; only in braces, where a comma parts two keys."""


@given(plans(), st.data())
@settings(max_examples=20)
def test_a_choice_changes_its_place_alone_and_brings_nothing(plan: Plan, data: st.DataObject) -> None:
    """Every edit of every finding, as `--ask` would make it, tried on a text with one fault."""
    possible = [one for one in FAULTS if one in plan.sound]
    assume(possible)
    right = data.draw(st.sampled_from(possible))
    wrong = data.draw(st.sampled_from(FAULTS[right]))
    at = plan.sound.index(right)
    line = plan.sound[max(plan.sound.rfind("\n", 0, at), plan.sound.rfind("\r", 0, at)) + 1 : at]
    if ", " in wrong and "{" not in right and "{" not in line:
        return
    text = plan.sound.replace(right, wrong, 1)
    path = Path(NAME)
    path.write_bytes(text.encode())
    rounds = Rounds(["."], TODAY)
    (one,) = rounds.review.files
    assert one.reading is not None
    content = one.reading.text.content
    for finding in one.findings:
        if finding.severity == "note":
            continue
        assert finding.edits, (finding.rule, finding.change)
        for edit in finding.edits:
            now = with_edits(content, [edit])
            kept = [content[part.place.end :] for part in edit.parts][-1]
            assert now.startswith(content[: edit.parts[0].place.start])
            assert now.endswith(kept)
            assert comments(now) == comments(content)
            tried = Rounds(["."], TODAY)
            tried.run(lambda each, edit=edit, finding=finding: _the_same(each, finding.rule, edit.label))  # type: ignore[misc]
            write(tried)
            if tried.refused:  # a longer programme leaves the other values by week behind
                assert edit.label.startswith("write weeks: ")
                assert path.read_bytes() == text.encode()
                continue
            assert path.read_bytes().decode().removeprefix("\ufeff") == now, edit.label
            assert read(now) is not None
            after = tried.review.files[0]
            assert not found(after)[finding.rule, finding.counted]
            path.write_bytes(text.encode())


def _the_same(review: FileReview, rule: str, label: str) -> list[Mend]:
    return [
        Mend(one, edit)
        for one in review.findings
        for edit in one.edits
        if (one.rule, edit.label) == (rule, label)
    ][:1]


SPELT = {"2 min": ("2:00", "2'", "120 s"), "5-8": ("5 to 8", "5 – 8"), "monday": ("Mon", "mondays")}


@given(plans(), st.data())
@settings(max_examples=20)
def test_plain_spellings_say_the_same_and_change_nothing_else(plan: Plan, data: st.DataObject) -> None:
    spelt = plan.sound
    for plain, others in SPELT.items():
        spelt = spelt.replace(plain, data.draw(st.sampled_from(others)))
    path = Path(NAME)
    path.write_bytes(spelt.encode())
    before = found(Rounds(["."], TODAY).review.files[0])
    assert main(["mend", "--spelling"]) in (0, 1)
    now = path.read_bytes().decode()
    assert found(Rounds(["."], TODAY).review.files[0]) == before
    assert comments(now) == comments(spelt)
    changed = [
        plan.sound[low:high]
        for kind, low, high, *_ in SequenceMatcher(None, plan.sound, now, autojunk=False).get_opcodes()
        if kind != "equal"
    ]
    without_quotes = [
        one for one in changed if one != '"'
    ]  # a plain value is written without those that it had
    assert not without_quotes or "120 s" in now  # two minutes have two plain spellings
    main(["mend", "--spelling"])
    assert path.read_bytes().decode() == now
