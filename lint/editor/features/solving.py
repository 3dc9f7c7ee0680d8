"""A quick fix that is worked out once the coach chooses it: the cheapest edits that clear a finding."""

from __future__ import annotations

from difflib import SequenceMatcher

from ...findings.edits import in_one
from ...findings.finding import Edit
from ...reporters.proposals import title
from ...solving.solve import Ask, NothingToSolveError, only_the_coach, solving
from ...wording.words import counted_noun
from ..documents.answers import Fix

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ...findings.finding import Finding
    from ...project.results import FileReview
    from ...solving.search import Work
    from ...solving.solve import Card, Solution
    from ...text.places import Text
    from ..documents.snapshot import Snapshot


class WorkedOut:
    """What came of the work: the ``edit``, None where nothing sound was found, and what the coach is told."""

    __slots__ = ("edit", "words")

    def __init__(self, edit: Edit | None, words: str) -> None:
        self.edit = edit
        self.words = words


def fixes_to_work_out(review: FileReview, touched: list[Finding]) -> Iterator[Fix]:
    """A fix without edits for each finding of a programme that the search may be asked about."""
    if not review.is_judged or not review.ledgers:
        return
    for finding in touched:
        if not only_the_coach(review, finding):
            yield Fix(f"Work out the smallest change that clears {finding.rule}", [finding], [])


def work_out(snapshot: Snapshot, aim: tuple[int, str, str]) -> Work[WorkedOut]:
    """Works out the edit for the finding on a line, of a rule, that speaks of something; in small parts."""
    line, rule, about = aim
    opened = snapshot.workspace.overlay.opened()
    ask = Ask(line, rule, about=about)
    try:
        solution = yield from solving(snapshot.review.name, snapshot.workspace.today, ask, opened)
    except NothingToSolveError as fault:
        return WorkedOut(None, f"{rule}: {fault}.")
    return _answer(solution, snapshot, rule)


def _answer(solution: Solution, snapshot: Snapshot, rule: str) -> WorkedOut:
    if not solution.cards:
        why = " ".join(words for one in solution.stays for words in one.why)
        return WorkedOut(None, f"No change was found that clears {rule}. {why}".rstrip())
    card = solution.cards[0]
    edit = in_one(title(card), _edits(snapshot.text, card.after))
    return WorkedOut(edit, _told(card, len(solution.cards) - 1))


def _told(card: Card, others: int) -> str:
    """What was done and what it costs, in a message beside the text."""
    said = [title(card), *(one.said for one in card.steps), f"Costs: {'; '.join(card.costs)}", card.caution]
    if others:
        said.append(f"{counted_noun(others, 'other proposal')}: spotline mend --solve")
    return " ".join(f"{words.rstrip('.')}." for words in said if words)


def _edits(text: Text, after: str) -> Iterator[Edit]:
    """The lines that differ, as edits of the text."""
    old, new = text.content.splitlines(keepends=True), after.splitlines(keepends=True)
    starts = [0]
    for line in old:
        starts.append(starts[-1] + len(line))
    for what, first, last, start, end in SequenceMatcher(None, old, new, autojunk=False).get_opcodes():
        if what != "equal":
            yield Edit(text.place(starts[first], starts[last]), "".join(new[start:end]), "")
