"""Asks the coach, finding by finding, which of several mends is meant."""

from __future__ import annotations

from ..mending.edits import Mend
from ..reporters.mends import findings_to_choose
from ..reporters.sentences import sentence
from ..wording.words import safe, safe_name

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable

    from ..findings.finding import Finding
    from ..mending.rounds import Rounds
    from ..project.results import FileReview

QUESTION = "Number, Enter to leave it, q to stop: "


def ask(rounds: Rounds, answer: Callable[[str], str] = input) -> None:
    """Walks through what leaves a choice and mends what is chosen; ``answer`` gives the words to a question.

    An end of the input stops it; what was chosen before stands.
    """
    passed: set[tuple[str, str, str, str]] = set()
    while True:
        waiting = (pair for pair in findings_to_choose(rounds) if _key(*pair) not in passed)
        file, finding = next(waiting, ("", None))
        if finding is None:
            return
        passed.add(_key(file, finding))
        print(f"\n{safe_name(file)}:{finding.place.line}: {sentence(finding)}")
        for number, edit in enumerate(finding.edits, start=1):
            print(f"  {number}  {safe(edit.label)}")
        chosen = _chosen(finding, answer)
        if chosen is None:
            return
        rounds.run(_choosing(finding, chosen))


def _key(file: str, finding: Finding) -> tuple[str, str, str, str]:
    return (file, finding.rule, finding.where, finding.counted)


def _chosen(finding: Finding, answer: Callable[[str], str]) -> int | None:
    """The index of the edit, -1 for none of them, None to stop."""
    while True:
        try:
            said = answer(QUESTION).strip().lower()
        except EOFError:
            return None
        if said == "q":
            return None
        if not said:
            return -1
        if said.isdecimal() and 1 <= int(said) <= len(finding.edits):
            return int(said) - 1
        print(f"A number from 1 to {len(finding.edits)}, please.")


def _choosing(finding: Finding, index: int) -> Callable[[FileReview], list[Mend]]:
    """Picks the chosen edit of this very finding, once."""

    def choose(one: FileReview) -> list[Mend]:
        if index < 0 or finding not in one.findings:
            return []
        chosen = finding.edits[index]
        return [Mend(finding, edit) for edit in (chosen, *chosen.also)]

    return choose
