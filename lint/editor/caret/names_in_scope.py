"""The names that a place wants where the schema asks for words only: exercises, athletes, rules, muscles."""

from __future__ import annotations

import os
import re
from functools import lru_cache
from itertools import islice

from ...body import catalogue, equipment, restrictions
from ...counting.credits import INDIRECT_WEIGHT
from ...engine.limits import Limits
from ...findings.finding import SEVERITIES
from ...model import quantities
from ...project.discovery import kind_of, searched
from ...reporters.exercises_text import gathered
from ...team.own_rules import PATTERNS
from ...team.read_settings import COUNT_OPTION, shown
from ...text import repository
from ...wording.words import plain
from .exercise_prefixes import ALIAS_BEGINS, ALIAS_WORDS, BEGINS, fitting
from .tree_path import BY_WEEK

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator

    from ...body.catalogue import Exercise
    from ...body.known import Known
    from ...engine.limits import Option
    from ...engine.registry import Rule
    from ...model.sessions import Prescription
    from ..documents.answers import CompletionKind
    from ..documents.view import View
    from .context import Chain, Context
    from .exercise_prefixes import Fit

    Name = Callable[["NamesInScope"], Iterator["Offer"]]

    Pattern = tuple[str, ...]

MOST_EXERCISES = 60
"""Exercises that are offered at once."""

MOST_FILES = 2000
"""Files and folders that are looked at for a path."""

EQUIPMENT_RULE, ALWAYS_THERE = "equipment-missing", "always there"
"""Where the team says which pieces nobody needs to list."""


class Offer:
    """A name or value that may stand at a place.

    ``words`` is what it is called; ``form``, where it has one, how it is written. ``filter`` is what the
    words typed so far are compared with, ``behind`` the value that comes with a key, ``note`` Markdown.
    """

    __slots__ = ("behind", "detail", "filter", "form", "kind", "note", "words")

    def __init__(
        self,
        words: str,
        kind: CompletionKind,
        detail: str = "",
        note: str = "",
        *,
        form: str = "",
        filter: str = "",
        behind: str = "",
    ) -> None:
        self.words = words
        self.kind: CompletionKind = kind
        self.detail = detail
        self.note = note
        self.form = form
        self.behind = behind
        self.filter = filter or words


class NamesInScope:
    """What may be named at a caret; ``typed`` is the word so far, within its quotes."""

    def __init__(self, view: View, here: Context, chain: Chain, typed: str) -> None:
        self.view = view
        self.workspace = view.workspace
        self.team = view.review.team
        self.here = here
        self.chain = chain
        self.typed = typed

    def values(self) -> Iterator[Offer] | None:
        """What may stand as a value at the chain; None where the schema knows better."""
        return self._named(VALUES)

    def keys(self) -> Iterator[Offer] | None:
        """What may stand as a key in the group at the chain; None where the schema knows better."""
        return self._named(KEYS)

    def _named(self, table: dict[str, tuple[tuple[Pattern, Name], ...]]) -> Iterator[Offer] | None:
        for pattern, name in table.get(self.view.review.kind, ()):
            if _fits(pattern, self.chain):
                return name(self)
        return None

    # Exercises

    @property
    def known(self) -> Known:
        """The exercises that may be named."""
        return self.team.around.known

    def exercises(self) -> Iterator[Offer]:
        """Exercises for the words so far, those first for which the athlete has the equipment."""
        missing, rank = self.missing(), self.rank()
        fits = [(missing(fit.exercise), fit) for fit in fitting(self.typed, self.known)]
        fits.sort(key=lambda one: (bool(one[0]), one[1].step, rank(one[1].exercise)))
        left_out = [one for one in fits[MOST_EXERCISES:] if self.typed.strip() and one[1].step <= BEGINS]
        for lacking, fit in [*fits[: MOST_EXERCISES - len(left_out[:10])], *left_out[:10]]:
            yield self.exercise(fit, lacking)

    def exercise(self, fit: Fit, lacking: tuple[str, ...]) -> Offer:
        """One exercise: what it trains, and what of it the athlete has not got."""
        one = fit.exercise
        notes = []
        if lacking:
            pieces = " and ".join(map(equipment.in_words, lacking))
            notes.append(f"Takes {pieces}, not among the athlete's equipment.")
        if fit.step in (ALIAS_BEGINS, ALIAS_WORDS):
            notes.append(f"Also called {', '.join(one.aliases)}.")
        # A client goes on comparing what is typed; a muscle in the words so far is no part of the name.
        typed = f"{self.typed} " if self.typed.strip() else ""
        return Offer(one.name, "exercise", _trained(one), " ".join(notes), filter=f"{typed}{one.name}")

    def missing(self) -> Callable[[Exercise], tuple[str, ...]]:
        """What an exercise takes that is not among the equipment of the programme's athletes."""
        ledgers = self.view.good.ledgers if self.view.good is not None else []
        lists = [ledger.equipment for ledger in ledgers if ledger.equipment is not None]
        if not lists:
            return lambda exercise: ()
        always = self.always_there()
        return lambda exercise: next(
            (lacking for pieces in lists if (lacking := _lacking(exercise, pieces, always))), ()
        )

    def always_there(self) -> tuple[str, ...]:
        """Pieces of equipment that nobody needs to list."""
        rule = self._rule(EQUIPMENT_RULE)
        moved = self.team.choices.moved.get(EQUIPMENT_RULE, {})
        return Limits(rule.options, moved).names(ALWAYS_THERE) if rule is not None else ()

    def rank(self) -> Callable[[Exercise], int]:
        """Which exercises come first of those that fit alike: close variants where another is replaced.

        Without a word, those that the programme uses, then the team's own, then what its priorities train.
        """
        other = self.replaced()
        if other is not None:
            return lambda exercise: 2 if exercise is other else int(not other.is_close_to(exercise))
        if self.typed.strip():
            return _alike
        ledger = self.view.good.ledger if self.view.good is not None else None
        if ledger is None:
            return _alike
        programme = ledger.programme
        used = set(_names(programme.prescriptions()))
        meant = [_muscles(programme.priority), _muscles(programme.focus)]
        own = set(self.known.own)

        def rank(exercise: Exercise) -> int:
            if exercise.name in used:
                return 0
            if exercise in own:
                return 1
            trains = (n for n, muscles in enumerate(meant) if not muscles.isdisjoint(exercise.direct))
            return 2 + 2 * next(trains, len(meant)) + (exercise.kind != "dynamic")

        return rank

    def replaced(self) -> Exercise | None:
        """The exercise that an alternate or a swap at the caret stands in for."""
        if not any(key in ("or", "swap") for key in self.chain[-2:]):
            return None
        before = self.view.text.content[max(0, self.here.start - MOST_BEFORE) : self.here.start]
        found = _EXERCISE.findall(before)
        return self.known.exercise(found[-1].strip()) if found else None

    def lines(self) -> Iterator[Offer]:
        """Exercises that the programme has."""
        ledger = self.view.good.ledger if self.view.good is not None else None
        if ledger is None:
            return
        for words in dict.fromkeys(_names(ledger.programme.prescriptions())):
            known = self.known.exercise(words)
            yield Offer(words, "exercise", _trained(known) if known else "")

    # Parts of the body and movements

    def areas(self) -> Iterator[Offer]:
        """Muscle groups first, then regions, then muscles."""
        for name in _areas():
            detail = "muscle group" if name in catalogue.groups else ""
            yield Offer(name, "muscle", detail or ("region" if name in catalogue.regions else ""))

    def areas_and_exercises(self) -> Iterator[Offer]:
        """Areas, and lifts once a word of one is typed."""
        yield from self.areas()
        if len(self.typed.strip()) > 1:
            yield from self.exercises()

    def parts(self) -> Iterator[Offer]:
        """Parts of the body that can be looked for in exercises."""
        for name in dict.fromkeys((*restrictions.PARTS, *_areas())):
            if restrictions.read(name).traits:
                yield Offer(name, "muscle")

    def movements(self) -> Iterator[Offer]:
        """Movements that can be looked for."""
        for name in restrictions.MOVEMENTS:
            yield Offer(name, "value", "movement")

    def actions(self) -> Iterator[Offer]:
        """Joint actions."""
        for name in catalogue.actions():
            yield Offer(name, "value", "joint action")

    def actions_and_patterns(self) -> Iterator[Offer]:
        """What sets can be counted in."""
        yield from self.actions()
        for name in PATTERNS:
            yield Offer(name, "value", "movement pattern")

    def counted(self) -> Iterator[Offer]:
        """What sets can be counted of."""
        yield from self.areas()
        yield from self.actions_and_patterns()

    def pieces(self) -> Iterator[Offer]:
        """Pieces of equipment, the team's own sets of them first."""
        if self.view.review.kind != "team":
            for name, held in self.team.around.equipment.items():
                yield Offer(name, "value", ", ".join(held))
        always = self.always_there()
        for piece in (piece for piece in _pieces() if piece not in always):
            yield Offer(equipment.in_words(piece), "value", "machine" if piece.startswith("machine ") else "")

    def stations(self) -> Iterator[Offer]:
        """Stations as the catalogue calls them."""
        for station in _stations():
            yield Offer(station, "value")

    # Files

    def athletes(self) -> Iterator[Offer]:
        """Athlete files of the repository."""
        yield from self.files("athlete", "athlete")

    def exercise_files(self) -> Iterator[Offer]:
        """Files of a team's own exercises, below its settings."""
        yield from self.files("exercises", "value")

    def files(self, kind: str, shown_as: CompletionKind) -> Iterator[Offer]:
        """Files of a kind, by the paths that lead to them from this one, the nearest first."""
        path = self.view.path
        if not path:
            return
        folder = os.path.dirname(path) or os.curdir
        root = self.workspace.root_of(path) if kind == "athlete" else folder
        if kind == "athlete" and not repository.is_marked(root):
            root = folder
        files = islice(
            searched(self.workspace, os.path.relpath(root), asked=repository.real(root)), MOST_FILES
        )
        paths = [_relative(one, folder) for one in files if kind_of(one) == kind]
        for one in sorted(paths, key=lambda one: (one.count("../"), one.count("/"), one)):
            name = one.rpartition("/")[2]
            yield Offer(one, shown_as, filter=one if one == name else f"{one} {name}")

    def folders(self) -> Iterator[Offer]:
        """Folders below the settings."""
        base = os.path.dirname(self.view.path) or os.curdir
        seen = 0
        for folder, inner, _ in os.walk(base):
            inner[:] = sorted(name for name in inner if not name.startswith((".", "_")))
            for name in inner:
                seen += 1
                if seen > MOST_FILES:
                    return
                yield Offer(_relative(os.path.join(folder, name), base), "value", "folder")

    # Rules and what they take

    def waivable(self) -> Iterator[Offer]:
        """Rules whose findings can be waived, those found nearest to the caret first."""
        rules = [*self.workspace.rules, *self.team.rules]
        at = self.here.start
        near: dict[str, int] = {}
        for finding in self.view.review.findings:
            away = abs(finding.place.start - at)
            near[finding.rule] = min(away, near.get(finding.rule, away))
        found = [rule for rule in rules if rule.name in near]
        found.sort(key=lambda rule: near[rule.name])
        for rule in found:
            yield _rule(rule, "found in this file")
        yield from (_rule(rule, rule.severity) for rule in rules if rule.name not in near)

    def settable(self) -> Iterator[Offer]:
        """Rules that settings may set limits for."""
        yield from (_rule(rule, rule.severity) for rule in self.workspace.rules)

    def places(self) -> Iterator[Offer]:
        """Sessions of the programme, and their lines."""
        ledger = self.view.good.ledger if self.view.good is not None else None
        sessions = list(ledger.programme.sessions()) if ledger is not None else []
        for name in dict.fromkeys(session.name for session in sessions):
            yield Offer(name, "value", "session")
        for session in sessions:
            for name in dict.fromkeys(_names(session.prescriptions)):
                yield Offer(f"{session.name}, {name}", "value", "line")

    def options(self) -> Iterator[Offer]:
        """Limits of the rule that the keys belong to, each with its default."""
        rule = self._rule(str(self.chain[-1]))
        for option in rule.options if rule is not None else ():
            yield Offer(
                option.name,
                "key",
                option.unit,
                _ground(option),
                behind=shown(option.default),
            )
        if rule is not None:
            yield Offer("severity", "key", rule.severity, "How serious its findings are.")

    def limits(self) -> Iterator[Offer]:
        """The value of a limit: its default, or the words that it takes."""
        name = self.chain[-1]
        if name == "severity":
            yield from (Offer(severity, "value") for severity in reversed(SEVERITIES))
            return
        option = self._option(str(self.chain[-2]), str(name))
        if option is None:
            return
        if option.name == COUNT_OPTION:
            yield from (
                Offer(f"[{kind}]", "value", option.unit, form=f"[{kind}]") for kind in INDIRECT_WEIGHT
            )
            return
        values = [option.default, *(value for _, value in option.by)]
        for form in dict.fromkeys(map(shown, values)):
            yield Offer(form, "value", option.unit, _ground(option), form=form)

    def limit_names(self) -> Iterator[Offer]:
        """Names within a limit that gives a number to each."""
        option = self._option(str(self.chain[-2]), str(self.chain[-1]))
        if option is None or not isinstance(option.default, dict):
            return
        for name, number in option.default.items():
            yield Offer(name, "key", option.unit, behind=plain(number))
        if all(catalogue.area(name) for name in option.default):
            yield from (offer for offer in self.areas() if offer.words not in option.default)

    def _rule(self, name: str) -> Rule | None:
        return next((rule for rule in self.workspace.rules if rule.name == name), None)

    def _option(self, rule: str, name: str) -> Option | None:
        found = self._rule(rule)
        return next((one for one in found.options if one.name == name), None) if found else None

    # Weeks

    def weeks(self) -> Iterator[Offer]:
        """The weeks that the keys beside leave out, where there are some."""
        taken: set[int] = set()
        for key in self.here.groups[-1]:
            first, last = quantities.weeks(key) or (1, 0)
            taken.update(range(first, min(last, MOST_FILES) + 1))
        whole = self.whole()
        left = [week for week in range(1, whole + 1) if week not in taken]
        if not taken or not left:
            return
        last = next((week for week in left if week + 1 not in left), left[0])
        yield Offer(f"{left[0]}-{last}" if last > left[0] else f"{last}", "key", "weeks left out so far")

    def whole(self) -> int:
        """How many weeks values by week have to cover at the caret."""
        ledger = self.view.good.ledger if self.view.good is not None else None
        if ledger is None:
            return 0
        programme, chain = ledger.programme, self.chain
        if chain[0] != "blocks":
            return programme.weeks
        at = chain[1] if len(chain) > 1 and isinstance(chain[1], int) else len(programme.blocks)
        return programme.blocks[at].weeks if at < len(programme.blocks) else 0


MOST_BEFORE = 600
"""Characters before the caret in which its line's exercise is looked for."""

_EXERCISE = re.compile(r"exercise[\"']?[ \t]*:[ \t]+[\"']?([^,{}\[\]#\r\n\"']+)")


def _alike(exercise: Exercise) -> int:
    return 0


def _fits(pattern: Pattern, chain: Chain) -> bool:
    """Whether a chain ends as a pattern: "#" is a place in a list, "*" any key, "^" the top."""
    if pattern[0] == "^":
        return len(chain) == len(pattern) - 1 and _fits(pattern[1:], chain)
    if len(chain) < len(pattern):
        return False
    return all(
        (wanted == "#" if isinstance(step, int) else wanted in ("*", step))
        for step, wanted in zip(chain[len(chain) - len(pattern) :], pattern, strict=True)
    )


def _names(lines: Iterable[Prescription]) -> Iterator[str]:
    """The exercises that some lines name."""
    for line in lines:
        for group in line.groups:
            for held in group.get("exercise", ()):
                yield str(held.value)


def _muscles(terms: Iterable[object]) -> set[str]:
    return {muscle for term in terms for muscle in catalogue.area(getattr(term, "words", "")) or ()}


@lru_cache(maxsize=2000)
def _trained(exercise: Exercise) -> str:
    """What an exercise trains directly, in short."""
    return gathered(exercise.direct)


_needs = lru_cache(maxsize=4000)(equipment.needs)


@lru_cache(maxsize=16)
def _lacks(pieces: frozenset[str], always: tuple[str, ...]) -> dict[tuple[str, ...], tuple[str, ...]]:
    """What a list of equipment lacks of what exercises need: filled as it is asked for."""
    return {}


def _lacking(exercise: Exercise, pieces: frozenset[str], always: tuple[str, ...]) -> tuple[str, ...]:
    known, needed = _lacks(pieces, always), _needs(exercise)
    if needed not in known:
        known[needed] = equipment.missing(exercise, pieces, always)
    return known[needed]


@lru_cache(maxsize=1)
def _areas() -> tuple[str, ...]:
    """Names of areas: groups, regions, what else coaches speak of, muscles."""
    names = catalogue.area_names()
    muscles = catalogue.muscles()
    words = [name for name in names if name not in muscles]
    return tuple(dict.fromkeys([*catalogue.groups, *catalogue.regions, *words, *names]))


@lru_cache(maxsize=1)
def _stations() -> tuple[str, ...]:
    return tuple(sorted({station for one in catalogue.exercises() for station in one.station}))


@lru_cache(maxsize=1)
def _pieces() -> tuple[str, ...]:
    """Pieces of equipment that exercises take, those that most of them take first."""
    counts: dict[str, int] = {}
    for one in catalogue.exercises():
        for piece in equipment.needs(one):
            counts[piece] = counts.get(piece, 0) + 1
    return tuple(sorted(counts, key=lambda piece: (-counts[piece], piece)))


def _relative(path: str, folder: str) -> str:
    return os.path.relpath(path, folder).replace(os.sep, "/")


def _rule(rule: Rule, detail: str) -> Offer:
    return Offer(rule.name, "rule", detail, rule.why)


def _ground(option: Option) -> str:
    return f"Default: {shown(option.default)} ({option.ground})."


_ATHLETE_VALUES: tuple[tuple[Pattern, Name], ...] = (
    (("equipment", "#"), NamesInScope.pieces),
    (("protect", "#", "area"), NamesInScope.parts),
    (("protect", "#", "movement"), NamesInScope.movements),
)
_ATHLETE_KEYS: tuple[tuple[Pattern, Name], ...] = ((("best lifts",), NamesInScope.exercises),)

VALUES: dict[str, tuple[tuple[Pattern, Name], ...]] = {
    "programme": (
        (("adjust", "#", "exercise"), NamesInScope.lines),
        (("exercise",), NamesInScope.exercises),
        (("exercise", "*"), NamesInScope.exercises),
        (("swap",), NamesInScope.exercises),
        (("or",), NamesInScope.exercises),
        (("or", "#"), NamesInScope.exercises),
        (("^", "athlete"), NamesInScope.athletes),
        (("^", "athletes", "#"), NamesInScope.athletes),
        (("^", "athletes", "#", "athlete"), NamesInScope.athletes),
        (("focus", "#"), NamesInScope.areas_and_exercises),
        (("^", "priority", "#"), NamesInScope.areas_and_exercises),
        (("^", "waivers", "#", "rule"), NamesInScope.waivable),
        (("^", "waivers", "#", "place"), NamesInScope.places),
        *_ATHLETE_VALUES,
    ),
    "athlete": _ATHLETE_VALUES,
    "team": (
        (("rules", "*", "*"), NamesInScope.limits),
        (("^", "team rules", "#", "weekly sets of"), NamesInScope.counted),
        (("^", "team rules", "#", "in"), NamesInScope.actions_and_patterns),
        (("^", "equipment", "*", "#"), NamesInScope.pieces),
        (("^", "exercises", "#"), NamesInScope.exercise_files),
        (("^", "leave out", "#"), NamesInScope.folders),
    ),
    "exercises": (
        (("actions", "#"), NamesInScope.actions),
        (("assists", "#"), NamesInScope.actions),
        (("easier", "#"), NamesInScope.exercises),
        (("harder", "#"), NamesInScope.exercises),
        (("station", "#"), NamesInScope.stations),
    ),
}
"""What values name, by the kind of file and the end of the chain."""

KEYS: dict[str, tuple[tuple[Pattern, Name], ...]] = {
    "programme": (
        (("loads",), NamesInScope.areas),
        *(((key,), NamesInScope.weeks) for key in sorted(BY_WEEK)),
        *_ATHLETE_KEYS,
    ),
    "athlete": _ATHLETE_KEYS,
    "team": (
        (("weekly limits",), NamesInScope.areas),
        (("rules",), NamesInScope.settable),
        (("rules", "*"), NamesInScope.options),
        (("rules", "*", "*"), NamesInScope.limit_names),
        (("^", "folders"), NamesInScope.folders),
        (("^", "stations"), NamesInScope.pieces),
    ),
    "exercises": (),
}
"""What keys name, likewise."""
