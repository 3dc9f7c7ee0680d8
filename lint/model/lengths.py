"""A length that no value by week fits is one finding, where the length is written."""

from __future__ import annotations

from functools import partial

from ..findings.finding import Amount, Finding, Related
from ..wording.words import counted_noun
from .naming import line_name
from .values import place_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..findings.finding import Edit
    from ..text.places import Place
    from .programme import Programme
    from .sessions import Block, Prescription
    from .values import LocatedNode

RULES = ("weeks-left-out", "weeks-beyond")
"""What is said of a value by week that does not fit its block."""

FEWEST = 2
"""Values from which on the length is what is wrong, and not the values."""


def by_length(findings: list[Finding], at: LocatedNode, programme: Programme) -> list[Finding]:
    """The findings; where all values by week of a block fit another length, one on that in their place."""
    listed = at.get("blocks")
    items = [at] if listed is None else listed.items()
    lengths = {block: block.weeks for block in programme.blocks}
    for block, item in zip(programme.blocks, items, strict=False):
        own = [one for one in findings if one.rule in RULES and _lies_in(one, item, block)]
        wrong, fitting = _sorted_out(programme, block, own)
        meant = {one.amount.counted if one.amount else 0.0 for one in _furthest(own)}
        if len(wrong) < FEWEST or fitting or len(meant) != 1 or 0.0 in meant:
            continue
        lengths[block] = int(meant.pop())
        said = _length(block, item, wrong, lengths[block])
        findings = [said if one is own[0] else one for one in findings if one is own[0] or one not in own]
    stated = at.get("weeks")
    if stated is None or stated.words != str(sum(lengths.values())):
        return findings
    return [one for one in findings if one.rule != "weeks-disagree" or one.place != stated.place]


def _lies_in(finding: Finding, item: LocatedNode, block: Block) -> bool:
    amount = finding.amount
    of_block = amount is None or amount.wanted == block.weeks
    return of_block and item.place.start <= finding.place.start < item.place.end


def _furthest(own: list[Finding]) -> Iterator[Finding]:
    """For each value by week the finding that reaches furthest."""
    by_value: dict[object, Finding] = {}
    for one in own:
        known = by_value.get(one.line.key)
        if known is None or (one.amount and known.amount and one.amount.counted > known.amount.counted):
            by_value[one.line.key] = one
    return iter(by_value.values())


def _sorted_out(
    programme: Programme, block: Block, own: list[Finding]
) -> tuple[list[tuple[Prescription, str, Finding]], bool]:
    """The lines whose values by week do not fit, with key and finding; and whether other values do."""
    wrong: dict[object, tuple[Prescription, str, Finding]] = {}
    fitting = False
    for session in programme.sessions_of(block):
        for line in session.prescriptions:
            for group in line.groups:
                for key, slices in group.items():
                    if not slices:
                        continue
                    at = slices[0].place
                    said = next((one for one in own if one.line.start <= at.start < one.line.end), None)
                    if said is not None:
                        wrong.setdefault(said.line.key, (line, key, said))
                    elif len({one.place.start for one in slices}) > 1:
                        fitting = True
    return list(wrong.values()), fitting


def _fitting(
    stated: Place, wrong: list[tuple[Prescription, str, Finding]], meant: int, length: int
) -> Iterator[Edit]:
    from .week_edits import all_fitted

    return all_fitted(stated, [said.line for _, _, said in wrong], meant, length)


def _length(
    block: Block, item: LocatedNode, wrong: list[tuple[Prescription, str, Finding]], meant: int
) -> Finding:
    here = counted_noun(block.weeks, "week")
    return Finding(
        "weeks-disagree",
        "error",
        place_of(item, "weeks"),
        f"{here} here; all {len(wrong)} values by week run to week {meant}.",
        change=f"Write `weeks: {meant}`, or give the values for {here}.",
        where=block.name,
        edits=partial(_fitting, place_of(item, "weeks"), wrong, meant, block.weeks),
        amount=Amount(block.weeks, meant, "weeks"),
        related=tuple(Related(said.line, f"{line_name(line)}, {key}") for line, key, said in wrong),
    )
