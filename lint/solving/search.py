"""The search: sets of steps, the cheapest first, each judged by the review, until some do.

What is left or brought by an edit says which steps may come next. So only edits that touch what a finding
speaks of are tried, and the first that is sound is the cheapest of its kinds. Ties go by the file's order.
"""

from __future__ import annotations

from heapq import heappop, heappush

from .minutes import fits
from .steps import together

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Generator, Iterable
    from typing import TypeVar

    from .candidates import Candidates
    from .foresight import Broken
    from .ground import Ground
    from .judge import Judge, Judgement, Mark, Seen, Spans
    from .steps import Cost, EditStep

    State = tuple[EditStep, ...]

    Needs = list[tuple[Candidates, State]]
    """Pools, each with the steps that stood when it was worked out."""

    ResultT = TypeVar("ResultT")

    Work = Generator[None, None, ResultT]
    """Work in small parts, at most a review each: who lets it go on may look up between two, or end it."""

MOST_REVIEWS = 24
"""Reviews after which the search ends with the best that it has found."""

MOST_LETTERS = 800_000
"""Letters that are reviewed in one search: a review of a long text takes longer, so fewer are made."""

MOST_AFTER = 5
"""Reviews that are spent on further proposals once there is one."""

LAST_REVIEWS = 3
"""Reviews, of those that may be spent, that go to the cheapest attempt which clears all and brings little:
where nothing is found until then, only that one is taken further."""

MOST_STATES = 20_000
"""Sets of steps that are looked at, reviewed or not."""

MOST_STEPS = 4
"""Steps that a proposal has at most: more are another programme."""

MOST_PROPOSALS = 3

DEARER, DEARER_BY = 2, 40
"""How many times as much as the cheapest, and how much more, a further proposal costs at most."""

MOST_CAUSES = 2
"""Findings brought by an edit that further steps may set right; one that brings more is given up."""


def finished(work: Work[ResultT]) -> ResultT:
    """The result of work that is done in one go."""
    while True:
        try:
            next(work)
        except StopIteration as end:
            return end.value  # type: ignore[no-any-return]


class SoundEdit:
    """Steps that are sound together: their ``spans``, ``cost`` and the ``verdict`` on the edited text."""

    __slots__ = ("cost", "spans", "steps", "verdict")

    def __init__(self, steps: State, spans: Spans, cost: Cost, verdict: Judgement) -> None:
        self.steps = steps
        self.spans = spans
        self.cost = cost
        self.verdict = verdict

    @property
    def kinds(self) -> frozenset[str]:
        """The kinds of its steps."""
        return frozenset(step.kind for step in self.steps)


class Attempt:
    """Steps that clear what is aimed at, and what they bring."""

    __slots__ = ("brought", "steps")

    def __init__(self, steps: State, brought: list[Seen]) -> None:
        self.steps = steps
        self.brought = brought


class Branch:
    """Where further steps come from: ``pools``; and ``needs``, pools with the steps that stood when each was
    worked out: what comes after those must be enough for it.
    """

    __slots__ = ("_steps", "needs", "pools")

    def __init__(self, pools: Iterable[Candidates], needs: Iterable[tuple[Candidates, State]]) -> None:
        self.pools = tuple(pools)
        self.needs = tuple(needs)
        self._steps: list[EditStep] | None = None

    @property
    def steps(self) -> list[EditStep]:
        """Every step of its pools once, the cheapest first."""
        if self._steps is None:
            found = {step.key: step for pool in self.pools for step in pool.steps}
            self._steps = sorted(found.values(), key=lambda one: (one.cost, one.key))
        return self._steps

    def may_do(self, steps: State) -> bool:
        """Whether some steps may be enough for all that is needed."""
        return all(pool.enough([one for one in steps if one not in base]) for pool, base in self.needs)

    def may_come_to_it(self, steps: State) -> bool:
        """Whether some steps may be enough with as many more as a proposal can have."""
        further = MOST_STEPS - len(steps)
        return all(
            pool.within_reach([one for one in steps if one not in base], further, self.steps)
            for pool, base in self.needs
        )


class Children:
    """Sets of steps with each one more, in the order of their cost; ``at`` is the next that is looked at."""

    __slots__ = ("at", "branch", "parent")

    def __init__(self, parent: State, branch: Branch) -> None:
        self.parent = parent
        self.branch = branch
        self.at = 0


class Search:
    """Looks for proposals that clear ``aims``, marks of the verdict before all edits on the text of a ground.

    ``ended`` says whether all was tried, ``is_cheapest`` whether all that is cheaper than the first that is
    found was; ``near`` are the attempts that bring something.
    """

    def __init__(self, ground: Ground, judge: Judge, aims: list[Mark]) -> None:
        self.ground = ground
        self.plan = ground.plan
        self.judge = judge
        self.before = ground.before
        self.aims = aims
        self.near: list[Attempt] = []
        self.found: list[SoundEdit] = []
        self.ended = True
        self.is_cheapest = True
        self.foresight = ground.foresight
        self._known: dict[Broken, Seen] = {}
        self._heap: list[tuple[Cost, tuple[object, ...], int, State, Branch, Children | None]] = []
        self._failed: set[frozenset[tuple[object, ...]]] = set()
        self._met: set[frozenset[tuple[object, ...]]] = set()
        self._number = 0

    def run(self, most: int = MOST_PROPOSALS, reviews: int = MOST_REVIEWS) -> Work[list[SoundEdit]]:
        """Works out the proposals, the cheapest first, each of other kinds than those before.

        ``most`` is how many are looked for, ``reviews`` how many reviews may be spent until there is one.
        """
        content = self.plan.text.content
        start = self.judge.reviews
        targets = self.before.left(self.aims)
        pools = [self.ground.pool(one, own=True) for one in targets]
        aimed: Needs = [(pool, ()) for pool in pools]
        self._push((), Branch(pools, aimed))
        before = {one.words for one in targets}
        looked = 0
        barely: SoundEdit | None = None
        nearest: tuple[State, Branch] | None = None
        stop = max(1, min(reviews, MOST_LETTERS // max(1, len(content))))
        while self._heap and len(self.found) < most:
            if nearest and not self.found and self.judge.reviews - start >= stop - LAST_REVIEWS:
                self._go_on_from(*nearest)
                nearest = None
                continue
            cost, _, _, steps, branch, siblings = heappop(self._heap)
            if siblings is not None:
                self._next(siblings)
            looked += 1
            if self.judge.reviews - start >= stop or looked > MOST_STATES:
                self.ended = False
                break
            if self.found and cost[0] > DEARER * self.found[0].cost[0] + DEARER_BY:
                break
            spans = together(steps)
            if spans is None:
                continue
            if not branch.may_do(steps) or self._is_like_found(steps):
                self._push(steps, branch)
                continue
            effect = frozenset(one.effect for one in steps)
            if effect in self._failed:
                continue
            broken = self.foresight.breaks(steps) if self.foresight is not None else frozenset()
            if broken and (self.found or broken <= self._known.keys()):
                self._push_foretold(steps, broken, aimed)
                continue
            verdict = self.judge.look(content, spans)
            yield
            if not verdict.judged:
                continue
            again = all(step.again for step in steps)
            left, brought = verdict.left(self.aims), verdict.brought(self.before, again=again)
            brought = [one for one in brought if one not in left]
            self._known |= {(one.rule, part): one for one in brought for part in (*one.parts, one.group)}
            if not left and not brought and not self.found and not fits(self.plan, targets, verdict):
                barely = barely or SoundEdit(steps, spans, cost, verdict)
                self._push(steps, branch)
                continue
            if not left and not brought:
                if self.found and not self._is_needed(steps):
                    continue
                self.is_cheapest = self.is_cheapest if self.found else self.ended
                self.found.append(SoundEdit(steps, spans, cost, verdict))
                stop = min(stop, self.judge.reviews - start + MOST_AFTER)
                continue
            self._failed.add(effect)
            if not left:
                self.near.append(Attempt(steps, brought))
            elif all(one.words in before for one in left) and not brought:
                continue  # it does nothing to what is aimed at
            if len(brought) <= MOST_CAUSES:
                further = [] if self.found else [self.ground.pool(one, own=False) for one in brought]
                needs = [*(aimed if left else []), *((pool, steps) for pool in further)]
                branch = Branch([*(pools if left else []), *further], needs)
                if not left and self.ended:
                    nearest = nearest or (steps, branch)
                self._push(steps, branch)
        if not self.found and barely is not None:
            self.found.append(barely)
            self.is_cheapest = self.ended
        return self.found

    def _go_on_from(self, steps: State, branch: Branch) -> None:
        """Leaves all that is on the heap for what comes after some steps."""
        self.ended = False
        self._heap.clear()
        self._met.clear()
        self._push(steps, branch)

    def _push_foretold(self, steps: State, broken: frozenset[Broken], aimed: Needs) -> None:
        """Goes on from steps that surely bring something, without a review: others have shown what."""
        assert self.foresight is not None
        seen = [self.before.seen[mark] for mark in self.aims if mark in self.before.seen]
        needs = [] if self.foresight.clears(steps, {(one.rule, one.group) for one in seen}) else aimed
        brought = {} if self.found else {id(self._known[one]): self._known[one] for one in sorted(broken)}
        if len(brought) <= MOST_CAUSES:
            further = [self.ground.pool(one, own=False) for one in brought.values()]
            self._push(steps, Branch([*(pool for pool, _ in needs), *further], needs))

    def _is_needed(self, steps: State) -> bool:
        """Whether each of some steps is needed: fewer may not have been tried, as they are like others."""
        for one in steps if len(steps) > 1 else ():
            fewer = tuple(other for other in steps if other is not one)
            spans = together(fewer)
            verdict = self.judge.look(self.plan.text.content, spans or ())
            if verdict.judged and not verdict.left(self.aims) and not verdict.brought(self.before):
                return False
        return True

    def _is_like_found(self, steps: State) -> bool:
        """Whether each kind of these steps, or a proposal with some of them alone, is there already."""
        known = frozenset[str]().union(*(one.kinds for one in self.found))
        if self.found and ({step.kind for step in steps} <= known or self._takes_back(steps)):
            return True
        return any(set(one.steps) <= set(steps) for one in self.found)

    def _takes_back(self, steps: State) -> bool:
        """Whether a new line does what one did that gives way: without both it was proposed before."""
        lines = [self.plan.line_at(one.line) for one in steps if one.kind in ("swap", "drop")]
        gone = [line.exercise.direct for line in lines if line is not None and line.exercise is not None]
        return any(one.kind == "add" and one.exercise and one.exercise.direct in gone for one in steps)

    def _push(self, steps: State, branch: Branch) -> None:
        """Puts a set of steps with each one more on the heap, as far as they may come to something."""
        if len(steps) < MOST_STEPS and branch.may_come_to_it(steps):
            self._next(Children(steps, branch))

    def _next(self, children: Children) -> None:
        """Puts the cheapest sets of steps that are left of some on the heap: all that cost the same."""
        parent, steps = children.parent, children.branch.steps
        touched = frozenset[int]().union(*(step.touches for step in parent))
        run_cost: Cost = (0, 0, 0)
        new = [one.exercise for one in parent]
        run: list[tuple[Cost, tuple[object, ...], State]] = []
        while children.at < len(steps):
            step = steps[children.at]
            if run and step.cost != run_cost:
                break
            children.at += 1
            if step.touches & touched or (step.exercise is not None and step.exercise in new):
                continue
            if any(_is_twice(step, one) for one in parent):
                continue
            several = tuple(sorted((*parent, step), key=lambda one: one.key))
            key = tuple(one.key for one in several)
            if frozenset(key) in self._met:
                continue
            self._met.add(frozenset(key))
            run_cost = step.cost
            run.append((_total(several), key, several))
        run.sort(key=lambda one: one[:2])
        for cost, place, several in run:
            self._number += 1
            siblings = children if several is run[-1][2] else None
            heappush(self._heap, (cost, place, self._number, several, children.branch, siblings))


def _is_twice(one: EditStep, other: EditStep) -> bool:
    """Whether two new lines at one place are for the same movement: more sets of one do as well."""
    if one.kind != "add" or other.kind != "add" or one.exercise is None or other.exercise is None:
        return False
    alike = one.exercise.direct == other.exercise.direct
    pattern = one.exercise.pattern
    return one.spans[0][0] == other.spans[0][0] and (
        alike or bool(pattern and pattern == other.exercise.pattern)
    )


def _total(steps: State) -> Cost:
    first, second, third = (sum(step.cost[at] for step in steps) for at in range(3))
    return first, second, third
