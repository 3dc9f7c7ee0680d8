"""Dose: weekly sets between what trials can measure and what can be recovered from."""

from __future__ import annotations

from ..lint.body import catalogue
from ..lint.finding import found
from ..lint.ledger import DIRECT, Week
from ..lint.quantities import plain
from ..lint.registry import Limits, Option, rule
from .words import counted_lines, line_name, listed, sets_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.finding import Finding, Severity
    from ..lint.ledger import Count
    from ..lint.programme import Prescription, Term


@rule(
    "weekly-sets-over-limit",
    family="dose",
    severity="warning",
    confidence="common practice",
    why="More sets bring less and less and must be recovered from. No trial sets a ceiling; this is the"
    " limit that your team, or common practice, has chosen. A set in which the muscle helps counts half.",
    sources=("cp-cap", "bazvalle-2022", "pelland-2026-frac", "pelland-2026-hyp"),
    options=(
        Option("most", 20, "sets a week for a muscle group", "cp-cap"),
        Option(
            "without limit",
            (
                "gluteals",
                "hip abductors",
                "adductors",
                "hip flexors",
                "abdominals",
                "obliques",
                "lower back",
                "forearms",
            ),
            "muscle groups",
            "common practice: compounds feed them all",
        ),
        Option("groups", {}, "sets a week, by muscle group", "the team's own settings"),
    ),
    stands_back=True,
)
def weekly_sets_over_limit(week: Week, limits: Limits) -> Iterator[Finding]:
    """More hard sets for a muscle group in a week than its limit.

    Counts hard sets, those in which the muscle only helps as half; wants no more than the limit, which is
    judged on the high end of a range. It points at the line that crosses it.

    Flags:
        programme: Chest
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 12, reps: 8}
              - {exercise: dumbbell fly, sets: 9, reps: 12}  # <- here

    Passes:
        programme: Chest
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 12, reps: 8}
              - {exercise: dumbbell fly, sets: 8, reps: 12}
    """
    own = {_group_of(name): sets for name, sets in limits.table("groups").items()}
    crossed: dict[Prescription, list[_Excess]] = {}
    for group in dict.fromkeys([*week.groups(), *own]):
        limit = own.get(group, None if group in limits.names("without limit") else limits.number("most"))
        count = week.sets(group)
        if limit is not None and count.high > limit:
            excess = _Excess(week, group, count, limit, group in own)
            crossed.setdefault(excess.line(), []).append(excess)
    for line, over in crossed.items():
        worst = max(over, key=lambda one: one.sets)
        yield found(
            line.place,
            f"{listed([one.words() for one in over])}.",
            wanted=f"at most {listed(list(dict.fromkeys(one.bound() for one in over)))}",
            change=f"Take {sets_of(worst.sets)} off, or move the limit in spotline.yaml.",
            where=line_name(line),
            subject=listed([one.group for one in over]),
            related=counted_lines(*(one.count for one in over)),
            excess=worst.sets,
        )


class _Excess:
    """A muscle group over its limit; groups that one line takes past theirs share a finding."""

    def __init__(self, week: Week, group: str, count: Count, limit: float, own: bool) -> None:
        self.group = group
        self.count = count
        self.limit = limit
        self.own = own
        self.sets = count.high - limit
        self.direct = week.sets(group, DIRECT).high

    def words(self) -> str:
        if self.direct == self.count.high:
            share = "all direct"
        else:
            share = (
                f"{plain(self.direct)} direct, the rest as a helper" if self.direct else "as a helper only"
            )
        return f"{sets_of(self.count.most)} for the {self.group} ({share})"

    def bound(self) -> str:
        ground = "your team's limit" if self.own else "common practice; no trial sets a ceiling"
        return f"{plain(self.limit)} a week ({ground})"

    def line(self) -> Prescription:
        """The line at which the running sum goes past the limit."""
        total = 0.0
        for part in self.count.parts:
            total += part.sets.high
            if total > self.limit:
                return part.entry.prescription
        return self.count.parts[-1].entry.prescription


def _group_of(name: str) -> str:
    """The muscle group that a coach's word stands for; the word itself where it stands for anything else."""
    muscles = set(catalogue.area(name) or ())
    return next((group for group, members in catalogue.groups.items() if set(members) == muscles), name)


def _is_one_group(area: str) -> bool:
    """Whether an area is a muscle group or a part of one; whole regions are fed by too much to be judged."""
    muscles = set(catalogue.area(area) or ())
    return any(muscles <= set(members) for members in catalogue.groups.values())


@rule(
    "weekly-sets-under-floor",
    family="dose",
    severity="warning",
    confidence="trial",
    why="Below about four sets a week trials can hardly tell growth from none. That is a limit of what they"
    " can measure, not a minimum that the body sets.",
    sources=("pelland-2026-min", "pelland-2026-frac"),
    options=(Option("least", 4, "sets a week for a muscle", "pelland-2026-min"),),
    stands_back=True,
)
def weekly_sets_under_floor(week: Week, limits: Limits) -> Iterator[Finding]:
    """Fewer hard sets in a typical week than trials can measure, for a muscle that the programme names.

    Looks at muscles and muscle groups in the focus or among the priorities of a programme for size, where
    they get something. Counts hard sets, helping ones as half; wants the floor, judged on the low end of a
    range. A warning for a priority, else a note.

    Flags:
        programme: Arms
        goal: hypertrophy
        priority: [biceps]
        sessions:
          - session: Arms
            exercises:
              - {exercise: barbell curl, sets: 3, reps: 10}  # <- here

    Passes:
        programme: Arms
        goal: hypertrophy
        priority: [biceps]
        sessions:
          - session: Arms
            exercises:
              - {exercise: barbell curl, sets: 4, reps: 10}
    """
    programme = week.programme
    if programme.goal != "hypertrophy" or not week.is_typical():
        return
    named: dict[str, tuple[Term, Severity]] = {}
    for term in week.block.focus or programme.focus:
        named[_group_of(term.words)] = (term, "note")
    for term in programme.priority:
        named[_group_of(term.words)] = (term, "warning")
    least = limits.number("least")
    for area, (term, serious) in named.items():
        count = week.sets(area)
        if not _is_one_group(area) or not count or count.low >= least or week.could_hold(areas=(area,)):
            continue
        line = count.lines()[0][0]
        yield found(
            line.place,
            f"{sets_of(count.low)} a week for the {term.words}, counting half where it helps.",
            severity=serious,
            wanted=f"at least {plain(least)}, the least that trials can measure (no biological minimum)",
            change=f"Add {sets_of(least - count.low)}, or take {term.words} out of the"
            f" {'priorities' if serious == 'warning' else 'focus'}.",
            where=line_name(line),
            subject=area,
            related=counted_lines(count),
            excess=least - count.low,
        )
