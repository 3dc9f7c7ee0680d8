"""Lines of a session: tree -> prescriptions, with a value for every week."""

from __future__ import annotations

from functools import partial

from ..findings.finding import Amount, Edit
from ..syntax.tree import Mapping, Scalar
from ..text.places import Place
from ..wording.words import week_list
from . import quantities
from .amounts import in_order
from .bounds import BOUNDED, NONE, OPEN, beyond
from .quantities import Reps
from .sessions import WORK_KEYS, Prescription, Slice
from .values import (
    LocatedNode,
    Reader,
    items_of,
    later,
    misspelt,
    place_of,
    range_of,
    share_of,
    terms_of,
    text_of,
)
from .weeks import covering
from .weeks import weeks as weeks_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Sequence

    from ..findings.finding import Finding
    from ..syntax.tree import Node
    from .pairings import Pairing
    from .sessions import Weeks

    Values = dict[str, tuple[Slice, ...]]
    """Values by key, each with the weeks that it holds for."""

    Member = tuple["LineReader", LocatedNode, "Pairing | None", "LocatedNode | None", "Values | None"]
    """A line of an item: what reads it, its node, what it is paired in, its rounds, and what it shares."""

_DIGITS = frozenset("0123456789")
"""Names with a figure are looked at more closely: sets and repetitions may stand in them."""

_SAID_ONCE = frozenset((
    "every", "for", "rest after", "warm-up sets", "note", "cue", "stop when", "cluster rest", "velocity loss",
    "working best", "method", "or", "progression",
))  # fmt: skip
"""Keys of what a line says once, for all its weeks; most lines have none of them."""

_CHANGES = ("h", "H", "x", "X", "\u00d7", "-", "\u2212")
"""How sets begin that are told by what stood before: half, x 2/3, -1."""


class LineReader(Reader):
    """Reads one line in a run of ``weeks`` weeks; ``unread`` are the keys whose values cannot be read.

    ``before`` are the lines that stand before it in its session, ``spans`` the runs of weeks in which that
    takes place; empty where it does in all. ``reads_its_own`` is False for a line whose values all come from
    the whole that it is a part of. ``given`` are the weeks of its block for which `everything` gives a value,
    by key. ``pairs`` are, by key, sets or repetitions that stand under the other of the two: ``reps: 3x12``.
    """

    line: LocatedNode | None = None
    in_later_group = by_visit = by_athlete = False
    reads_its_own = True
    named_by = "exercise"
    warm_up: LocatedNode | None = None
    held: Values
    pairs: Values
    sides: tuple[Slice, ...]

    def __init__(
        self, findings: list[Finding], weeks: int, before: Sequence[Prescription] = (), spans: Weeks = ()
    ) -> None:
        self.findings = findings
        self.weeks = weeks
        self.spans = spans or ((1, weeks),)
        self.before = before
        self.unread: set[str] = set()
        self.given: dict[str, frozenset[int]] = {}
        self.held, self.pairs, self.sides = {}, {}, ()

    def prescription(
        self, at: LocatedNode, order: int, rounds: LocatedNode | None, shared: Values | None = None
    ) -> Prescription:
        """The line; ``rounds`` are those of its superset or circuit, which may stand for its sets. ``shared``
        are values that it has from the whole that it is a part of; its own ones win.
        """
        if shared is None:
            self.begin(at)
        own = self.values(at) if self.reads_its_own else {}
        if shared:
            from .read_pairing import with_shared

            own = with_shared(own, shared)
        if rounds is not None and "sets" not in at and (sets := self._slices("rounds", rounds)):
            if "sets" in own:
                from .two_readings import rounds_at_odds

                rounds_at_odds(self, own["sets"], sets)
            own["sets"] = sets
        line = Prescription(place_of(at, self.named_by), order, self._groups(at, own))
        if self.warm_up is not None or not _SAID_ONCE.isdisjoint(at.keys()):
            self.state(line, at)
            line.cluster_rest = self.duration(at.get("cluster rest"))
            loss = at.get("velocity loss")
            line.velocity_loss = None if loss is None else quantities.percent(loss.plain)
            line.working_best = share_of(at.get("working best"))
            line.alternates = terms_of(at.get("or"))
            if (stated := at.get("progression")) is not None:
                from .read_progression import progression_of

                line.progression = progression_of(stated, self, self.weeks)
        if "exercise" not in own:
            self.unread.add("exercise")
        for name in own.get("exercise", ()):
            if not _DIGITS.isdisjoint(str(name.value)):
                from .two_readings import dose_in_name

                dose_in_name(self, at, name)
        line.unread = frozenset(self.unread)
        line.by_visit, line.by_athlete = self.by_visit, self.by_athlete
        return line

    def state(self, line: Prescription, at: LocatedNode) -> None:
        """Gives a line what it says once: its clock, method, warm-up sets and words (else `by_parts`)."""
        line.method = text_of(at.get("method"))
        line.every = self.duration(at.get("every"))
        line.lasts = self.length(at.get("for"))
        line.rest_after = self.duration(at.get("rest after"))
        line.warm_up_sets = range_of(at.get("warm-up sets") or self.warm_up)
        line.note = text_of(at.get("note"))
        line.cue = text_of(at.get("cue"))
        line.stop_when = text_of(at.get("stop when"))

    def begin(self, at: LocatedNode) -> None:
        """Turns to a line, or a whole of several; from here on only its own weeks count."""
        self.line = at
        if "in weeks" in at:
            self._keep_to(self.in_weeks(at.get("in weeks"), self.weeks), place_of(at, "in weeks"))

    def always(self, value: object, place: Place) -> tuple[Slice, ...]:
        """A value for all weeks in which the line takes place."""
        if len(self.spans) == 1:
            return (Slice(*self.spans[0], value, place),)
        return tuple([Slice(first, last, value, place) for first, last in self.spans])

    def _keep_to(self, spans: Weeks, place: Place) -> None:
        """Keeps to the weeks in which the line takes place, which must be weeks of its session."""
        own = [week for first, last in spans for week in range(first, last + 1)]
        kept = tuple((week, week) for week in own if any(low <= week <= high for low, high in self.spans))
        if own and not kept:
            self.report(
                "weeks-beyond",
                place,
                "The session takes place in none of these weeks.",
                change="Correct the weeks of the line, or those of its session.",
            )
        self.spans = kept or self.spans

    def follows_sets(self) -> bool:
        """Whether a set of the same exercise comes before, of which a load can be a share."""
        name = "" if self.line is None else text_of(self.line.get("exercise"))
        return self.in_later_group or any(one.words == name for line in self.before for one in line.names())

    def values(self, at: LocatedNode, keys: tuple[str, ...] = WORK_KEYS) -> Values:
        """The values of these keys that are there and can be read."""
        held: Values = {}
        self.held, self.pairs, self.sides = held, {}, ()
        self.unread |= misspelt(at, keys)
        within, begins = at.within, at.within.start
        for key, node, through in at.among(keys):
            value = self._sound(key, node)
            if value is not None:
                held[key] = self.always(value, Place(within, node.start - begins, node.end - begins, through))
            elif slices := self._slices(key, LocatedNode(node, within, through)):
                held[key] = slices
        reps = held.get("reps")
        if self.pairs or self.sides or (reps and any(map(_says_more, reps))):
            from .two_readings import read_apart

            read_apart(self, at, held)
        return held

    def one(self, key: str, at: LocatedNode) -> object:
        """A single value of a key, for all weeks; None where it cannot be read."""
        slices = self._slices(key, at)
        return slices[0].value if slices else None

    def _groups(self, at: LocatedNode, own: Values) -> tuple[Values, ...]:
        """The groups of like sets of a line: those under ``work``, else the line itself."""
        if "work" in at:
            groups: list[Values] = []
            for group in items_of(at.get("work")):
                groups.append({**own, **self.values(group)})
                self.in_later_group = True
            return tuple(groups)
        if "sets" not in own:
            implied = self.implied_sets(at, own)
            if implied:
                own["sets"] = implied
        return (own,)

    def implied_sets(self, at: LocatedNode, own: Values) -> tuple[Slice, ...]:
        """Sets that follow from the rest of the line: one every so often, or one number for each set."""
        from .implied import implied_sets

        return implied_sets(self, at, own)

    def _slices(self, key: str, at: LocatedNode) -> tuple[Slice, ...]:
        """The value of a key for all weeks, or one for each span of weeks; those that can be read."""
        if (value := self._sound(key, at.node)) is not None:
            return self.always(value, at.place)
        if whole := self._whole(at):
            return self.read_parts(key, whole)
        if isinstance(at.node, Mapping) and not all(word[:1].isdigit() for word in at.node.entries):
            if any(word[:5] in ("again", "visit") for word in at.node.entries):
                from .cycles import cycled

                return cycled(self, key, at)
            from .by_athlete import names_in, read_by_athlete

            if names_in(at):
                return read_by_athlete(self, key, at)
        return self.read_parts(key, self.by_week(at, key))

    def read_parts(self, key: str, parts: list[tuple[int, int, LocatedNode]]) -> tuple[Slice, ...]:
        """The values of a key that can be read, each with its first and last week."""
        slices: list[Slice] = []
        for first, last, part in parts:
            if (value := self._sound(key, part.node)) is None:
                value = self._looked_at(key, first, last, part, slices)
            if value is not None:
                slices.append(Slice(first, last, value, part.place))
        return tuple(slices)

    def _sound(self, key: str, node: Node) -> object:
        """The value of what has one plain meaning, of which there is nothing to say; else None."""
        return quantities.sound(key, node.plain, node.text) if isinstance(node, Scalar) else None

    def _looked_at(self, key: str, first: int, last: int, part: LocatedNode, before: list[Slice]) -> object:
        """What any other value means, with whatever is to be said of it; None where it cannot be read."""
        if part.plain == "none" and key in NONE:
            return None
        value = quantities.READ[key](part.plain)
        if key in quantities.RANGES and key != "load" and part.words[:1] in ("+", "-"):
            value = self._otherwise(key, first, last, part, value, before)
        elif key in BOUNDED and (takes := beyond(key, value)):
            self.beyond(part, takes)
            value = None
        elif value is None or (key == "load" and getattr(value, "kind", "") == "change"):
            value = self._otherwise(key, first, last, part, value, before)
        if value is None:
            self.unread.add(key)
            return None
        if key in quantities.RANGES and "-" in part.words:
            self._check_direction(part.place, part.words, key)
        if key == "tempo" and part.words[:1] in ("X", "x"):
            from .two_readings import ask_about_tempo

            ask_about_tempo(self, part)
        return value

    def _otherwise(
        self, key: str, first: int, last: int, part: LocatedNode, value: object, before: list[Slice]
    ) -> object:
        """What a value means that is no plain quantity; None where it cannot be read."""
        if isinstance(value, quantities.Load):
            from .two_readings import changed_load

            return changed_load(self, part, value, [one for one in before if one.last < first])
        if key in ("hold", "distance"):
            from .two_readings import each_side

            return each_side(self, key, first, last, part)
        value = quantities.OTHERWISE[key](part.plain) if key in quantities.OTHERWISE else None
        signed = part.words[:1] in ("+", "-") and isinstance(part.plain, (int, float))
        if signed or (value is None and key == "sets" and part.words[:1] in _CHANGES):
            from .cycles import changed_from_before

            return changed_from_before(self, key, part, [one for one in before if one.last < first])
        if value is not None and "/" in str(value):
            from .two_readings import check_listed

            check_listed(self, key, part.place, str(value))
        return self._pair(key, first, last, part) if value is None and key in ("sets", "reps") else value

    def _pair(self, key: str, first: int, last: int, part: LocatedNode) -> object:
        """What ``3x12`` says of a key; what it says of the other is kept for when the line has been read."""
        from .two_readings import sets_of_reps

        pair = sets_of_reps(part.plain)
        if pair is None:
            return None
        own, other = (0, 1) if key == "sets" else (1, 0)
        partner = "reps" if key == "sets" else "sets"
        said = Slice(first, last, pair[other], part.place)
        self.pairs[partner] = (*self.pairs.get(partner, ()), said)
        return pair[own]

    def _check_direction(self, place: Place, words: str, key: str = "") -> None:
        """Reports a range that runs from its high end to its low one; it is read as if turned round."""
        turned = in_order(words)
        if turned == words:
            return
        if key == "reps" and {str(one.value) for one in self.held.get("sets", ())} == {"2"}:
            from .two_readings import ask_about_two_sets

            ask_about_two_sets(self, place, words, turned)
            return
        self.report(
            "range-backwards",
            place,
            f"{words} runs backwards; it was read as {turned}.",
            severity="warning",
            change=f"Write {turned}, the smaller number first.",
            edits=(Edit(place, turned, f"write {turned}"),),
        )

    def _whole(self, at: LocatedNode) -> list[tuple[int, int, LocatedNode]]:
        """First week, last week and value, where each week of the block has one; else none."""
        if not isinstance(at.node, Mapping) or self.spans != ((1, self.weeks),):
            return []
        whole = covering(tuple(at.node.entries), self.weeks)
        return [(first, last, part) for key, first, last in whole if (part := at.get(key)) is not None]

    def by_week(self, at: LocatedNode, key: str = "") -> list[tuple[int, int, LocatedNode]]:
        """First week, last week and value; reports weeks that have no value, two values, or are not there."""
        weeks = self.weeks
        if not isinstance(at.node, Mapping):
            return [(first, last, at) for first, last in self.spans]
        if whole := self._whole(at):
            return whole
        parts: list[tuple[int, int, LocatedNode]] = []
        taken: dict[int, str] = {}
        for week_key, place, value in at.pairs():
            spans = weeks_of(week_key)
            if "-" in week_key and spans:
                self._check_direction(place, week_key)
            for first, last in spans:
                own = range(first, min(last, weeks) + 1)
                if not taken.keys().isdisjoint(own):
                    twice = [week for week in own if week in taken]
                    self.report(
                        "weeks-overlap",
                        place,
                        f"Week {twice[0]} stands under {taken[twice[0]]} and under {week_key}.",
                        change="Give each week one value.",
                        edits=partial(later, "parted", place, twice, taken[twice[0]], week_key),
                    )
                if last > weeks:
                    self.report(
                        "weeks-beyond",
                        place,
                        f"{week_key} goes past week {weeks}, the last one here.",
                        change="Correct the weeks, or the length of the block or programme.",
                        edits=partial(later, "fitted", place, weeks),
                        amount=Amount(last, weeks, "weeks"),
                        line=at.written,
                    )
                taken.update(dict.fromkeys(own, week_key))
                parts.append((first, min(last, weeks), value))
        wanted = [week for first, last in self.spans for week in range(first, last + 1)]
        if "again" in at and "other" not in at:
            wanted = [week for week in wanted if week <= max(taken, default=0)]
        given = self.given.get(key, ()) if self.given else ()
        left_out = [week for week in wanted if week not in taken and week not in given]
        others = at.get("other")
        if others is not None and left_out:
            parts += [(week, week, others) for week in left_out]
            parts.sort(key=lambda one: one[0])  # `half` is of what stands before it
        elif others is not None and others.plain != "none":  # which says nothing, of no week
            self.report(
                "weeks-overlap",
                others.place,
                "No week is left for `other`.",
                change="Take it out, or give it a week.",
                edits=partial(later, "taken_out", others.place),
            )
        elif parts and left_out and key not in OPEN:
            is_gap = left_out[0] + len(left_out) != weeks + 1 or len(wanted) < weeks
            self.report(
                "weeks-left-out",
                at.written,
                f"No value for {week_list(left_out)}; the values here must cover {week_list(wanted)}.",
                change=f"Add the missing weeks{', or `other: none` for them' if key in NONE else ''}.",
                edits=partial(later, "filled", at.written, left_out),
                amount=None if is_gap else Amount(left_out[0] - 1, weeks, "weeks"),
                line=at.written,
            )
        return parts


def _says_more(held: Slice) -> bool:
    return isinstance(held.value, Reps) and held.value.says_more
