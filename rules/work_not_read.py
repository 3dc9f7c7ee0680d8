"""What of a programme is not read: sets of unknown exercises, and names given to exercises in vain."""

from __future__ import annotations

from ..lint.body.names import fold
from ..lint.counting.counts import counted_lines
from ..lint.counting.unknown import is_unknown
from ..lint.engine.limits import Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Edit, Related, found
from ..lint.wording.words import did_you_mean, first_of, shortened
from .offers import dropping
from .shared import MOST_SUGGESTED, names_of, where_named

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.body.catalogue import Exercise
    from ..lint.counting.counts import Count
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.text.places import Place
    from .offers import Offer


NOTHING = (0.0, 0.0)
"""What a line of other weeks brings to the number of sets in the worst week."""


@rule(
    "sets-not-read",
    family="upkeep",
    severity="warning",
    confidence="fact",
    why="With so much work that nobody can read, the sums of the week say little, and what is called missing"
    " may be there.",
    sources=(),
    options=(
        Option("share", 25, "% of a week's sets that may be of unknown exercises", "common practice"),
        Option("heavy", 80, "% load from which one such line is too many", "common practice"),
    ),
    asks=True,
)
def sets_not_read(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """A programme of which much is not counted, because its exercises are not known.

    Counts the work sets of each week whose exercise is not known; leaves out slips of a known name, and what
    is surely no lift by its words, as a stretch or a run. Wants no more than a quarter of the week's sets to
    be such, and none of them to be at 80 % or more. One finding for the programme, on its worst week; it
    lists what is said of each name.

    Flags:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: back squat, sets: 3, reps: 8}
              - {exercise: quarry drill, sets: 3, reps: 8}  # <- here

    Passes:
        programme: Legs
        our names: {quarry drill: step-up}
        sessions:
          - session: Lower
            exercises:
              - {exercise: back squat, sets: 3, reps: 8}
              - {exercise: quarry drill, sets: 3, reps: 8}
    """
    share, heavy = limits.number("share"), limits.number("heavy")
    over: list[tuple[int, Count, Count]] = []
    slips: dict[str, Exercise | None] = {}
    for week in ledger.weeks:
        if not any(isinstance(lift, str) for lift in week.lifts()):
            continue
        every = week.all_sets()
        unread = every.where(lambda entry: is_unknown(entry, slips))
        much = unread.high > every.high * share / 100
        if much or any(_is_at_least(heavy, part.entry) for part in unread.parts):
            over.append((week.number, unread, every))
    if over:
        _, unread, every = max(over, key=lambda one: one[1].high)
        names = names_of(part.entry for part in unread.parts)
        counted = counted_lines(unread)
        lines = {line.place.key: line for _, one, _ in over for line, _ in one.lines()}
        for one in counted:
            lines.pop(one.place.key, None)
        yield found(
            unread.lines()[0][0].place,
            f"{unread.most} of {every.most} sets not read: {first_of(list(map(shortened, names)))}"
            f" {'is' if len(names) == 1 else 'are'} not known.",
            wanted=limits.words("at most {:%} of a week's sets, none at {:%} or more", "share", "heavy"),
            change=_which_is_meant(ledger, names)
            or "Write the usual names, or teach them under `our names`.",
            where=where_named(unread),
            edits=_naming(ledger, [part.entry for part in unread.parts]),
            related=(*counted, *(Related(line.place, "in other weeks", NOTHING) for line in lines.values())),
            weeks=tuple(number for number, _, _ in over),
            once=True,
        )


def _which_is_meant(ledger: Ledger, names: list[str]) -> str:
    """The question what a single name may mean; empty where nothing is like it, and for several."""
    near = ledger.known.suggestions(names[0], level=ledger.level) if len(names) == 1 else None
    return did_you_mean(near.names) if near and not near.lifts else ""


def _naming(ledger: Ledger, entries: list[SetGroup]) -> Offer:
    """Each of the first few names written as one that it may mean."""

    def work_out() -> Iterator[Edit]:
        named = {entry.name: entry.work.places["exercise"] for entry in reversed(entries)}
        for name in names_of(entries)[:MOST_SUGGESTED]:
            suggested = ledger.known.suggestions(name, level=ledger.level)
            of = f" for {shortened(name)}" if len(named) > 1 else ""
            for other in () if suggested.lifts else suggested.names:
                yield Edit(named[name], other, f"write {other}{of}", certain=False)

    return work_out


def _is_at_least(percent: float, entry: SetGroup) -> bool:
    return entry.percent is not None and entry.percent.high >= percent


@rule(
    "our-name-unclear",
    family="upkeep",
    severity="warning",
    confidence="fact",
    why="A name that means nothing known, or two things, is counted for nothing or for the wrong muscles.",
    sources=(),
)
def our_name_unclear(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """A name that the programme gives to an exercise, and that is of no use as it stands.

    Looks up what each of `our names` means; wants a known exercise, one meaning for each name, and not the
    catalogue's own name of another exercise; a short word for one, such as `squat`, is the team's to use.

    Flags:
        programme: Legs
        our names: {Romanian deadlift: stiff-leg deadlift}  # <- here
        sessions: [{session: Lower, exercises: [{exercise: Romanian deadlift, sets: 3, reps: 10}]}]

    Passes:
        programme: Legs
        our names: {RDL: stiff-leg deadlift}
        sessions: [{session: Lower, exercises: [{exercise: RDL, sets: 3, reps: 10}]}]
    """
    given = ledger.programme.our_names
    if not given:
        return
    from ..lint.body.given_names import name_faults

    pairs = [(name.words, meant.words) for name, meant in given]
    for fault in name_faults(pairs, ledger.header.resources.known):
        name, meant = given[fault.index]
        at = meant if fault.of_meaning else name
        yield found(
            at.place,
            fault.counted,
            change=did_you_mean(fault.near) or fault.change,
            where="our names",
            line=_first_named(ledger, name.words),
            related=() if fault.first is None else (Related(given[fault.first][0].place, "here"),),
            edits=tuple(Edit(at.place, other, f"write {other}", certain=False) for other in fault.near)
            or dropping(name.place),
        )


def _first_named(ledger: Ledger, name: str) -> Place | None:
    """The first place at which a line is called by a name; None where no line is."""
    terms = (term for line in ledger.programme.prescriptions() for term in line.names())
    return next((term.place for term in terms if fold(term.words) == fold(name)), None)
