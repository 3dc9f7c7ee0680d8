"""A random session at the editor: does the server publish what a review of the same files finds?

    python -m spotline.tests.editor.random_session [--seeds 1-20] [--edits 2000] [--encoding utf-16]

The server is a process of its own. Now and then the files as they stand, open texts over those on the disk, are
written to a second folder. There they are reviewed in a fresh workspace. A session is a list of numbers, one for
each step. What a step does follows from its number and from the steps before. So a session that fails is made
shorter, step by step, and printed.
"""

from __future__ import annotations

import argparse
import difflib
import os
import re
import shutil
import tempfile
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import date
from functools import cache
from pathlib import Path
from random import Random
from time import monotonic

import yaml

from spotline.lint.findings.finding import Finding
from spotline.lint.project.review import review
from spotline.lint.reporters.sentences import sentence_by_the_line
from spotline.lint.text.places import Place
from spotline.lint.wording.words import safe

from . import edits
from .pipe_client import Encoding, Json, PipeClient, SilenceError

ROOT = Path(__file__).parent.parent.parent

PLAN, EXTRA, SQUAD = "plan.programme.yaml", "winter/extra.programme.yaml", "squad.programme.yaml"
ANA, BO = "ana.athlete.yaml", "bo.athlete.yaml"
TEAM, OWN = "spotline.yaml", "club.exercises.yaml"

FILES = {
    PLAN: """\
# Sechs Wochen 💪 für Ana
programme: Frühling
athlete: ana.athlete.yaml
goal: hypertrophy
focus: [legs, chest]
starts: 2026-11-30
shared:
  fives: &fives {sets: 3, reps: 5, rir: 2-3, rest: 3 min, warm-up sets: 3}
blocks:
  - name: Aufbau
    weeks: 3
    sessions:
      - session: Lower 🦵
        day: monday
        exercises:
          - {note: "früh 🏋️‍♀️", exercise: back squat, <<: *fives, load: {1: 75 %, 2: 77.5 %, 3: 80 %}}
          - {exercise: boathouse hinge, sets: 3, reps: 8, rir: 2, rest: 2 min}
          - {exercise: seated leg curl, sets: {1: 3, 2-3: 4}, reps: 10-15, rir: 1, rest: 90 s}
          - superset:
              - {exercise: standing calf raise, sets: 3, reps: 8-12, rir: 2}
              - {exercise: plank, sets: 3, hold: 40 s, rpe: 8, rest: 90 s}
      - session: Upper
        day: thursday
        exercises:
          - exercise: bench press
            <<: *fives
            load: 75 %
          - {exercise: pull-up, sets: 3, reps: 5-8, load: bodyweight, rir: 2, rest: 2-3 min}
          - {exercise: lateral raise, sets: 3, reps: 10-15, rir: 2, rest: 90 s}
  - name: Schwer
    weeks: 2
    sessions:
      - session: Lower 🦵
        day: monday
        exercises:
          - {exercise: back squat, sets: 4, reps: 3, load: 85 %, rir: 2, rest: 4 min}
          - {exercise: pier curl, sets: 3, reps: 8, rir: 2, rest: 2 min}  # spotline: waive exercise-by-alias because ours
      - session: Upper
        day: thursday
        exercises:
          - exercise: bench press
            work:
              - {sets: 1, reps: 3, rpe: 8, rest: 4 min}
              - {sets: 3, reps: 5, load: 90 % of top set, rest: 3 min}
""",
    EXTRA: """\
programme: On the side
athlete: ../ana.athlete.yaml
starts: 2026-12-07
weeks: 2
sessions:
  - session: Legs
    day: saturday
    exercises:
      - {exercise: leg press, sets: 4, reps: 8-12, rir: 2, rest: 2 min}
      - {exercise: seated leg curl, sets: 4, reps: 8-12, rir: 2, rest: 2 min}
""",
    SQUAD: """\
programme: The eight
athletes:
  - ana.athlete.yaml
  - athlete: bo.athlete.yaml
    adjust:
      - {exercise: back squat, swap: front squat}
      - {exercise: plank, leave out: true}
goal: strength
starts: 2027-02-01
weeks: 3
sessions:
  - session: Land
    day: tuesday
    exercises:
      - {exercise: back squat, sets: 5, reps: 5, load: 80 %, rest: 3 min}
      - {exercise: Romanian deadlift, sets: 3, reps: 6-8, rir: 3, rest: 3 min}
      - {exercise: bench press, sets: 3, reps: 6, rir: 2, rest: 2 min}
      - {exercise: plank, sets: 3, hold: 40 s, rpe: 8, rest: 60 s}
  - activity: Wasser 🚣
    day: wednesday
    minutes: 75
    effort: 7
    loads: {hamstrings: high, lower back: high}
""",
    ANA: """\
name: Ana
level: intermediate
age: 24
body mass: 68 kg
best lifts:
  back squat: {load: 110 kg, tested: 2026-11-02}
  bench press: {load: 62.5 kg, tested: 2026-03-02}
equipment: [barbell, rack, bench, dumbbell, machine, sandbag]
days: 3
minutes: 60
screening on file: 2026-10-02
""",
    BO: """\
name: Bo
level: novice
age: 17
best lifts:
  back squat: 80 kg
protect:
  - {area: lower back, advised by: physiotherapist, review on: 2027-02-01}
""",
    TEAM: """\
exercises: [club.exercises.yaml]
weekly limits: {quadriceps: 14}
rules:
  weekly-hard-sets-high: run
rule pages: https://pages.example/rules/
""",
    OWN: """\
exercises:
  - name: boathouse hinge
    implement: sandbag
    path: {hip: [90, 0], knee: 15, ankle: 0}
  - name: plank-seat curl
    also: [pier curl]
    implement: sliders
    path: {hip: 60, knee: [10, 100]}
""",
}
"""The files of the folder at the start."""

SEVERITIES = {"error": 1, "warning": 2, "note": 3}
"""The protocol's numbers."""

LONGEST = 9_000
"""Characters at which a text is put back to its first state."""

SETTLED = 15.0
"""Seconds of silence after which the server has published everything."""

REQUESTS = (
    "hover",
    "inlayHint",
    "documentSymbol",
    "codeLens",
    "codeAction",
    "completion",
    "definition",
    "references",
)

Range = tuple[int, int, int, int]
Said = tuple[tuple[Range, ...], int, str, str, tuple[tuple[str, Range, str], ...], tuple[int, ...], str]
"""A finding as it is sent: the ranges it may have (an empty one may take in a neighbour), severity, rule,
message, related places, tags, page."""


class DifferenceError(AssertionError):
    """What is published is not what a review finds."""


@cache
def pasted() -> list[str]:
    """Whole files that are pasted."""
    found = [*(ROOT / "examples").rglob("*.programme.yaml"), *(ROOT / "tests" / "published").glob("*.yaml")]
    return [path.read_text(encoding="utf-8") for path in sorted(found)]


@contextmanager
def working_in(folder: Path) -> Iterator[None]:
    """Makes a folder the working folder for a while."""
    before = Path.cwd()
    os.chdir(folder)
    try:
        yield
    finally:
        os.chdir(before)


class ClientDocument:
    """An open document as the client holds it; ``before`` are texts that it was."""

    def __init__(self, text: str) -> None:
        self.text = text
        self.version = 1
        self.before: list[str] = []
        self.sound = text
        self.broken = 0


class RandomSession:
    """A client with its server, in a folder of its own below ``base``; it makes random steps."""

    def __init__(
        self, base: Path, encoding: Encoding, *, watches: bool = True, settled: float = SETTLED
    ) -> None:
        self.encoding = encoding
        self.watches = watches
        self.settled = settled
        self.folder, self.mirror = base / "team", base / "mirror"
        self.disk = dict(FILES)
        self.mirrored: dict[str, str] = {}
        for folder in (self.folder, self.mirror):
            (folder / ".git").mkdir(parents=True)
        for name, text in self.disk.items():
            self._write(self.folder, name, text)
        self.client = PipeClient(self.folder)
        self.can = self.client.initialize(encoding)
        self.documents: dict[str, ClientDocument] = {}
        self.story: list[str] = []
        self._open(PLAN)

    def __enter__(self) -> RandomSession:
        return self

    def __exit__(self, *failure: object) -> None:
        self.client.__exit__()

    @staticmethod
    def _write(folder: Path, name: str, text: str) -> None:
        path = folder / name
        path.parent.mkdir(exist_ok=True)
        path.write_bytes(text.encode())

    # One step

    def step(self, number: int) -> None:
        """Does the step that a number stands for."""
        chance = Random(number)
        kinds = (
            self._edit,
            self._type,
            self._paste,
            self._open_or_close,
            self._touch_disk,
            self._save,
            self._ask,
        )
        (kind,) = chance.choices(kinds, (72, 6, 2, 4, 5, 4, 7))
        kind(chance)

    def _sheet(self, chance: Random) -> str:
        """The name of a document, mostly that of the programme."""
        return PLAN if chance.random() < 0.75 else chance.choice(list(self.documents))

    def _edit(self, chance: Random) -> None:
        name = self._sheet(chance)
        document = self.documents[name]
        if document.broken > chance.choice((2, 6)) or len(document.text) > LONGEST:
            new = FILES[name] if len(document.text) > LONGEST or chance.random() < 0.2 else document.sound
        else:
            new = edits.edited(document.text, chance, document.before)
        self._become(name, new, chance)

    def _paste(self, chance: Random) -> None:
        name = self._sheet(chance)
        words = chance.choice(pasted() if name.endswith("programme.yaml") else list(FILES.values()))
        text = self.documents[name].text
        at = chance.randrange(len(text) + 1)
        self._become(name, chance.choice((words, words, text[:at] + words + text[at:])), chance)

    def _type(self, chance: Random) -> None:
        """Types some words letter by letter, too fast for each to be reviewed."""
        name = self._sheet(chance)
        text = self.documents[name].text
        at = chance.randrange(len(text) + 1)
        for letter in chance.choice(
            ("rest: 2 min", "  # für später 💪", "\r\n      - {exercise: plank}", "back squat")
        ):
            text = text[:at] + letter + text[at:]
            at += 1
            self._become(name, text, chance, wait=False)

    def _become(self, name: str, new: str, chance: Random, *, wait: bool | None = None) -> None:
        """Sends a new text of a document to the server, in one of the ways in which clients do."""
        document = self.documents[name]
        old, document.text = document.text, new
        document.version += 1
        document.before = [*document.before[-20:], old]
        uri = self.client.uri(name)
        way = chance.random()
        if way < 0.2:
            changes = [{"text": new}]
        elif way < 0.3:
            between = edits.typed(old, chance, ())
            changes = [
                edits.change(old, between, self.encoding),
                edits.change(between, new, self.encoding),
            ]
        else:
            changes = [edits.change(old, new, self.encoding)]
        self.client.change(uri, document.version, *changes)
        self._remember(document)
        shown = list(difflib.unified_diff(old.splitlines(), new.splitlines(), lineterm="", n=0))[2:]
        self.story.append("\n".join([f"{name} {document.version}:", *map(repr, shown[:12])]))
        if chance.random() < 0.4 if wait is None else wait:
            self.client.findings(uri, document.version)

    @staticmethod
    def _remember(document: ClientDocument) -> None:
        """Notes whether the text is still YAML."""
        try:
            yaml.load(document.text, getattr(yaml, "CSafeLoader", yaml.SafeLoader))
            document.sound, document.broken = document.text, 0
        except Exception:
            document.broken += 1

    def _open(self, name: str) -> None:
        text = self.disk.get(name, FILES[name])
        self.documents[name] = ClientDocument(text)
        self.client.open(self.client.uri(name), text)
        self.story.append(f"{name} opened")

    def _open_or_close(self, chance: Random) -> None:
        name = chance.choice([name for name in FILES if name != PLAN])
        if name in self.documents:
            self.client.close(self.client.uri(name))
            del self.documents[name]
            self.story.append(f"{name} closed")
        else:
            self._open(name)

    def _touch_disk(self, chance: Random) -> None:
        """Changes a file on the disk, open or not; a client that watches the disk reports it."""
        known = [ANA, BO, TEAM, OWN] if not self.watches else list(FILES)
        name = chance.choice(known)
        text = self.disk.get(name)
        new: str | None
        if text is None or chance.random() < 0.3:
            new = FILES[name]
        elif chance.random() < 0.15:
            new = None
        else:
            new = edits.edited(text, chance, ()).replace("\ufeff", "")
        kind = 3 if new is None else 2 if name in self.disk else 1
        if new is None:
            (self.folder / name).unlink()
            del self.disk[name]
        else:
            self.disk[name] = new
            self._write(self.folder, name, new)
        self.story.append(f"{name} on the disk: {'gone' if new is None else 'changed'}")
        self._told_of_disk(name, kind)

    def _told_of_disk(self, name: str, kind: int) -> None:
        if self.watches:
            changes = {"changes": [{"uri": self.client.uri(name), "type": kind}]}
            self.client.notify("workspace/didChangeWatchedFiles", changes)
        else:
            self.client.notify("textDocument/didSave", {"textDocument": {"uri": self.client.uri(PLAN)}})

    def _save(self, chance: Random) -> None:
        name = self._sheet(chance)
        kind = 2 if name in self.disk else 1
        self.disk[name] = self.documents[name].text
        self._write(self.folder, name, self.disk[name])
        self.story.append(f"{name} saved")
        self.client.notify("textDocument/didSave", {"textDocument": {"uri": self.client.uri(name)}})
        self._told_of_disk(name, kind)

    def _ask(self, chance: Random) -> None:
        """Makes a request on a document, which must be answered without an error."""
        name = self._sheet(chance)
        asked = chance.choice([one for one in REQUESTS if self.can.get(f"{one}Provider")])
        text = self.documents[name].text
        at = chance.randrange(len(text) + 1)
        at -= text[at - 1 : at] == "\r" and text[at : at + 1] == "\n"
        here = edits.position(text, at, self.encoding)
        params: Json = {"textDocument": {"uri": self.client.uri(name)}, "position": here}
        if asked in ("inlayHint", "codeAction"):
            params |= {"range": {"start": here, "end": {"line": here["line"] + 30, "character": 0}}}
            params |= {"context": {"diagnostics": []}}
        if asked == "references":
            params |= {"context": {"includeDeclaration": True}}
        self.story.append(f"{name}: {asked} at {here}")
        self.client.result_of(f"textDocument/{asked}", params)

    # What is published

    def check(self) -> None:
        """Compares what is published with a review, once the server has had enough time."""
        end = monotonic() + self.settled
        want = self._wanted()
        while (wrong := self._differences(want)) and monotonic() < end:
            try:
                self.client.read(end)
            except SilenceError:
                if self.client.process.poll() is not None:
                    raise
        if wrong:
            raise DifferenceError(wrong)
        failed = [line for line in self.client.log().splitlines() if "failed" in line]
        if failed:
            raise DifferenceError("in the log: " + "\n".join(failed))

    def check_at_rest(self) -> None:
        """The same, and that nothing else comes afterwards."""
        self.check()
        self.client.read_until_quiet(0.4)
        self.check()

    def _wanted(self) -> dict[str, list[Said]]:
        files = self.disk | {name: document.text for name, document in self.documents.items()}
        for name in self.mirrored.keys() - files.keys():
            (self.mirror / name).unlink()
        for name, text in files.items():
            if self.mirrored.get(name) != text:
                self._write(self.mirror, name, text)
        self.mirrored = files
        with working_in(self.mirror):
            return {name: self._reviewed(name) for name in self.documents}

    def _reviewed(self, name: str) -> list[Said]:
        path = os.path.realpath(self.mirror / name)
        found = review([path], date.today())
        for one in found.files:
            for fault in one.faults:
                raise DifferenceError(f"{fault.rule} failed on {one.name}: {fault.words}")
        (one,) = (one for one in found.files if os.path.realpath(one.name) == path)
        return [self._said(finding, one.team.rule_pages) for finding in one.findings]

    def _said(self, finding: Finding, pages: str) -> Said:
        words = sentence_by_the_line(finding)
        related = [(place, f"used here by {place.excerpt}") for place in finding.place.through]
        related += [(one.place, one.words) for one in finding.related]
        unneeded = finding.rule in ("anchor-unused", "waiver-unused")
        return (
            tuple(self._ranges(finding.place)),
            SEVERITIES[finding.severity],
            finding.rule,
            words.replace(str(self.mirror), str(self.folder)),
            tuple(
                (self._uri(place), self._range(place, place.start, place.end), safe(words))
                for place, words in related
            ),
            (1,) if unneeded else (),
            f"{pages}{finding.rule}" if pages else "",
        )

    def _name(self, place: Place) -> str:
        return os.path.relpath(os.path.realpath(place.text.name), os.path.realpath(self.mirror))

    def _uri(self, place: Place) -> str:
        return self.client.uri(self._name(place))

    def _ranges(self, place: Place) -> Iterator[Range]:
        """The range of a finding; one that stands on nothing may take in the character behind or before."""
        if place.start < place.end:
            yield self._range(place, place.start, place.end)
            return
        content = place.text.content
        neighbours = ((place.start, place.start + 1), (place.start - 1, place.start))
        for start, end in neighbours:
            if start >= 0 and end <= len(content) and content[start] not in "\r\n":
                yield self._range(place, start, end)
        if not any(0 <= start < len(content) and content[start] not in "\r\n" for start, _ in neighbours):
            yield self._range(place, place.start, place.end)

    def _range(self, place: Place, start: int, end: int) -> Range:
        """A range as the client counts: the byte order mark of a text that it holds counts too."""
        document = self.documents.get(self._name(place))
        text = place.text.content
        mark = "\ufeff" if document is not None and document.text.startswith("\ufeff") else ""
        first = edits.position(mark + text, start + len(mark), self.encoding)
        last = edits.position(mark + text, end + len(mark), self.encoding)
        return first["line"], first["character"], last["line"], last["character"]

    def _differences(self, want: dict[str, list[Said]]) -> str:
        """What is wrong, in words; empty where nothing is."""
        found = []
        for name, document in self.documents.items():
            version, diagnostics = self.client.published.get(self.client.uri(name), (None, []))
            if version != document.version:
                found.append(f"{name}: version {version} instead of {document.version}")
                continue
            got = [_heard(one) for one in diagnostics]
            found += self._outside(name, document, diagnostics)
            found += [f"{name} {line}" for line in _unlike(got, want[name])]
        for uri, (_, diagnostics) in self.client.published.items():
            if diagnostics and uri not in map(self.client.uri, self.documents):
                found.append(f"{uri} is closed and has findings still")
        return "\n".join(found)

    def _outside(self, name: str, document: ClientDocument, diagnostics: list[Json]) -> list[str]:
        """Ranges that do not lie inside the document."""
        lengths = edits.lines_in_units(document.text, self.encoding)
        ranges = [one["range"] for one in diagnostics]
        for one in diagnostics:
            for related in one.get("relatedInformation") or ():
                if related["location"]["uri"] == self.client.uri(name):
                    ranges.append(related["location"]["range"])
        return [f"{name}: {one} is outside" for one in ranges if not _inside(one, lengths)]


def _inside(one: Json, lengths: list[int]) -> bool:
    start, end = one["start"], one["end"]
    ordered = (start["line"], start["character"]) <= (end["line"], end["character"])
    return ordered and all(
        0 <= at["line"] < len(lengths) and 0 <= at["character"] <= lengths[at["line"]] for at in (start, end)
    )


def _heard(one: Json) -> Said:
    related = one.get("relatedInformation") or ()
    return (
        (_flat(one["range"]),),
        one["severity"],
        one["code"],
        one["message"],
        tuple(
            (part["location"]["uri"], _flat(part["location"]["range"]), part["message"]) for part in related
        ),
        tuple(one.get("tags") or ()),
        (one.get("codeDescription") or {}).get("href", ""),
    )


def _flat(one: Json) -> Range:
    start, end = one["start"], one["end"]
    return start["line"], start["character"], end["line"], end["character"]


def _unlike(got: list[Said], want: list[Said]) -> Iterator[str]:
    """Where two lists of findings differ."""
    alike = len(got) == len(want) and all(
        one[0][0] in other[0] and one[1:] == other[1:] for one, other in zip(got, want, strict=True)
    )
    if alike:
        return
    said = False
    for one in got:
        if not any(one[0][0] in other[0] and one[1:] == other[1:] for other in want):
            said = True
            yield f"says {one}"
    for other in want:
        if not any(one[0][0] in other[0] and one[1:] == other[1:] for one in got):
            said = True
            yield f"lacks {other}"
    if not said:
        yield f"says all, but in another order or number: {[one[2] for one in got]}, not {[one[2] for one in want]}"


# Whole sessions


def numbers_of(seed: int | str, count: int) -> list[int]:
    """The numbers of a session."""
    chance = Random(seed)
    return [chance.getrandbits(48) for _ in range(count)]


def run_session(
    numbers: list[int], encoding: Encoding, *, each: int, watches: bool = True, settled: float = SETTLED
) -> tuple[int, str, list[str]]:
    """Runs a session; compares what is published with a review after every ``each`` steps and at the end.

    Returns after how many steps it differed, how, and what was done; 0 and nothing where it never did.
    """
    base = Path(tempfile.mkdtemp(prefix="session-"))
    done = 0
    try:
        with RandomSession(base, encoding, watches=watches, settled=settled) as session:
            try:
                for number in numbers:
                    done += 1
                    session.step(number)
                    if done % each == 0:
                        (session.check_at_rest if done % (each * 20) == 0 else session.check)()
                session.check_at_rest()
                if session.client.shut_down() != 0:
                    raise DifferenceError("the server did not end well")
            except (AssertionError, SilenceError) as difference:
                return done, f"{type(difference).__name__}: {difference}", session.story
    finally:
        shutil.rmtree(base, ignore_errors=True)
    return 0, "", []


def shrunk(numbers: list[int], fails: Callable[[list[int]], bool], seconds: float) -> list[int]:
    """Fewer steps that still fail, as few as are found in some time."""
    end = monotonic() + seconds
    size = max(1, len(numbers) // 2)
    while size:
        at = 0
        while at < len(numbers) and monotonic() < end:
            fewer = numbers[:at] + numbers[at + size :]
            if fails(fewer):
                numbers = fewer
            else:
                at += size
        size //= 2
    return numbers


def verdict(
    seed: int | str,
    count: int,
    encoding: Encoding,
    *,
    each: int = 10,
    watches: bool = True,
    patience: float = 120,
) -> str:
    """What is wrong with the session of a seed, made as short as possible; empty where nothing is."""
    numbers = numbers_of(seed, count)
    done, words, _ = run_session(numbers, encoding, each=each, watches=watches)
    if not done:
        return ""
    said = f"seed {seed}, {encoding}, {'watching' if watches else 'not watching'}: differs after {done} steps\n{words}"
    numbers = numbers[:done]

    def fails(some: list[int]) -> bool:
        return run_session(some, encoding, each=len(some) + 1, watches=watches, settled=SETTLED / 5)[0] > 0

    if not fails(numbers):
        return f"{said}\n(not every time: no difference the second time)"
    numbers = shrunk(numbers, fails, patience)
    _, words, story = run_session(numbers, encoding, each=len(numbers) + 1, watches=watches)
    return f"{said}\nas short as it could be made, {numbers}:\n{words}\nafter\n" + "\n".join(story)


def main() -> None:
    parser = argparse.ArgumentParser()
    parser.add_argument("--seeds", default="1-5")
    parser.add_argument("--edits", type=int, default=2000)
    parser.add_argument("--encoding", default="utf-16")
    parser.add_argument("--each", type=int, default=10)
    parser.add_argument("--shrink", type=float, default=120)
    parser.add_argument("--unwatched", action="store_true")
    chosen = parser.parse_args()
    first, last = (int(part) for part in re.fullmatch(r"(\d+)-(\d+)", chosen.seeds).groups())  # type: ignore[union-attr]
    for seed in range(first, last + 1):
        start = monotonic()
        words = verdict(
            seed,
            chosen.edits,
            chosen.encoding,
            each=chosen.each,
            watches=not chosen.unwatched,
            patience=chosen.shrink,
        )
        print(f"== seed {seed}: {'WRONG' if words else 'same'}, {monotonic() - start:.1f} s", flush=True)
        if words:
            print(words, flush=True)


if __name__ == "__main__":
    main()
