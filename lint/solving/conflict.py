"""Why there is no proposal: the demands that no edit tried meets together, and what to loosen."""

from __future__ import annotations

from math import ceil

from ..wording.words import listed, plain
from .cannot import would_do
from .judge import Seen

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..findings.finding import Finding
    from .lines import Plan
    from .search import Attempt, Search

MOST_DEMANDS = 3
"""Demands that are named beside the one aimed at."""


def why_none(search: Search, aim: Finding) -> list[str]:
    """Why nothing is proposed for a finding, in sentences: what stands in its way, and what would do."""
    plan, conflicts, seen = search.plan, search.ground.conflicts, Seen(aim)
    if plan.in_rehabilitation:
        return ["The programme states rehabilitation: what changes there is for the clinician to say."]
    said = []
    if plan.kept:
        said.append("What you keep was left alone.")
    if plan.apart:
        names = listed(plan.apart[:MOST_DEMANDS])
        said.append(f"Left alone, since the words are used elsewhere, too: {names}.")
    together = conflicts.cannot(seen) if conflicts is not None else []
    if together:
        return [*said, *together]
    if search.near:
        return [*said, *_against(search.near)]
    if not search.ended:
        return [*said, "The search ended before it had tried all; nothing sound was found so far."]
    if not search.ground.pool(seen, own=True).steps:
        return [*said, *_nothing_to_try(plan, seen)]
    return [
        *said,
        "No edit of up to four lines clears it: it asks for another programme or another limit.",
    ]


def _nothing_to_try(plan: Plan, seen: Seen) -> list[str]:
    """Why not a single step can be tried."""
    for part in seen.parts:
        said = would_do(plan, part)
        if said:
            return [said]
    return ["It asks for a fact or a decision that only you can write."]


def smallest(attempts: list[Attempt]) -> list[Seen]:
    """The fewest demands such that each attempt breaks one of them, by leaving out one after another.

    Those broken most often are kept longest; of two alike, the first met stands.
    """
    broken = [{_demand(one): one for one in attempt.brought} for attempt in attempts]
    every: dict[tuple[str, str], Seen] = {key: one for several in broken for key, one in several.items()}
    often = {key: sum(key in several for several in broken) for key in every}
    kept = dict(every)
    for key in sorted(every, key=lambda one: often[one]):
        without = {other for other in kept if other != key}
        if all(without & set(several) for several in broken):
            del kept[key]
    return list(kept.values())


def _demand(seen: Seen) -> tuple[str, str]:
    return seen.rule, seen.group


def _against(attempts: list[Attempt]) -> list[str]:
    """The demands that stand against the aim, and the attempt that breaks fewest of them."""
    demands = smallest(attempts)
    named = [_in_words(one) for one in demands[:MOST_DEMANDS]]
    more = len(demands) - MOST_DEMANDS
    against = listed([*named, *([f"{more} more"] if more > 0 else [])])
    nearest = min(attempts, key=lambda one: (len(one.brought), len(one.steps)))
    steps = listed([one.label for one in nearest.steps])
    broken = "; ".join(_loosened(one) for one in nearest.brought[:MOST_DEMANDS])
    return [
        f"Every edit tried that clears it goes against {against}.",
        f"Nearest: {steps}. That takes: {broken}.",
    ]


def _in_words(seen: Seen) -> str:
    """What a demand wants: ``the athlete's 45 min for Lower A (session-too-long)``."""
    about = f" for {seen.group}" if seen.group else ""
    return f"{seen.finding.wanted.rstrip('.') or 'what is asked'}{about} ({seen.rule})"


def _loosened(seen: Seen) -> str:
    """What would have to be accepted: the number that would be reached, and what is wanted."""
    if seen.counted is None or seen.wanted is None:
        return f"{seen.words.rstrip('.')} ({seen.rule})"
    about = f" for {seen.group}" if seen.group else ""
    reached = ceil(seen.counted) if seen.unit == "min" else seen.counted
    return f"{plain(reached)} {seen.unit}{about} instead of {plain(seen.wanted)} ({seen.rule})"
