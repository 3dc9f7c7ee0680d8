"""Proposals for a file: from what is asked to edits that the review finds sound, or to why there are none."""

from __future__ import annotations

from ..body.names import fold
from ..engine.registry import all_rules
from ..findings.causes import by_cause
from ..findings.finding import SEVERITIES
from ..project.discovery import discovered
from ..project.known import KnownApart
from ..project.overlay import Overlay
from ..project.review import reviewed
from ..project.workspace import Workspace
from .conflict import why_none
from .effects import effects
from .foresight import Foresight
from .ground import Ground
from .judge import Judge, with_spans
from .lines import Plan, caution_for
from .search import MOST_REVIEWS, Search, finished

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence
    from datetime import date

    from ..findings.finding import Finding
    from ..project.results import FileReview
    from ..text.places import Text
    from .search import Work
    from .steps import EditStep


class NothingToSolveError(Exception):
    """Why nothing is worked out for a file. ``of_asking``: there is nothing of what was asked for."""

    def __init__(self, words: str, *, of_asking: bool = False) -> None:
        super().__init__(words)
        self.of_asking = of_asking


class Ask:
    """What is asked: findings of a ``line`` (0: any) or ``rule`` ("": any), and words for what to ``keep``.

    Without line and rule it is all that blocks. ``about`` is the group or subject that is meant ("": any).
    """

    __slots__ = ("about", "keep", "line", "rule")

    def __init__(self, line: int = 0, rule: str = "", keep: Sequence[str] = (), about: str = "") -> None:
        self.line = line
        self.rule = rule
        self.keep = tuple(keep)
        self.about = about

    def means(self, finding: Finding, blocking: Sequence[str]) -> bool:
        """Whether a finding is asked about."""
        if not self.line and not self.rule:
            return finding.severity in blocking
        at_line = not self.line or self.line in (finding.place.line, finding.line.line)
        at_group = not self.about or self.about in (finding.group, finding.subject)
        return at_line and at_group and (not self.rule or finding.rule == self.rule)


class Stays:
    """A finding for which nothing is proposed, and why, in sentences."""

    __slots__ = ("finding", "why")

    def __init__(self, finding: Finding, why: Sequence[str]) -> None:
        self.finding = finding
        self.why = tuple(why)


class Card:
    """One proposal: the text ``after`` it, its ``steps``, what it ``costs`` in words, what it ``clears``.

    ``caution`` is what has to be said beside it, "" if nothing.
    """

    __slots__ = ("after", "caution", "clears", "costs", "steps")

    def __init__(
        self,
        after: str,
        steps: Sequence[EditStep],
        costs: Sequence[str],
        clears: Sequence[Finding],
        caution: str,
    ) -> None:
        self.after = after
        self.steps = tuple(steps)
        self.costs = tuple(costs)
        self.clears = tuple(clears)
        self.caution = caution


class Solution:
    """What is proposed for a file: ``cards``, the cheapest first; what ``stays``; ``reviews`` made for it.

    ``at_once`` is False where several findings were cleared one after another: all at once may cost less.
    ``to_the_end`` is False where the search was cut short before it found something: that may cost less, too.
    """

    __slots__ = ("ask", "at_once", "cards", "review", "reviews", "stays", "to_the_end")

    def __init__(self, review: FileReview, ask: Ask) -> None:
        self.review = review
        self.ask = ask
        self.cards: list[Card] = []
        self.stays: list[Stays] = []
        self.reviews = 0
        self.at_once = True
        self.to_the_end = True

    @property
    def kept_in_vain(self) -> list[str]:
        """The words for what must stay that name no line and no session."""
        groups = [pair for ledger in self.review.ledgers for pair in ledger.entries()]
        names = {fold(name) for visit, one in groups for name in (one.name, visit.session.name)}
        return [words for words in self.ask.keep if not any(fold(words) in name for name in names)]

    @property
    def before(self) -> str:
        """The text as it is."""
        return _text(self.review).content


def solve(path: str, today: date, ask: Ask) -> Solution:
    """The proposals for a programme file. Raises NothingToSolveError."""
    return finished(solving(path, today, ask, {}))


def solving(path: str, today: date, ask: Ask, opened: Mapping[str, str]) -> Work[Solution]:
    """Works out the proposals for a programme file, as `solve` does, in small parts.

    ``opened`` are texts that stand in front of files, by path. Raises NothingToSolveError.
    """
    review = _read(path, today, opened)
    aims = _aims(review, ask)
    solution = Solution(review, ask)
    if not aims:
        return solution
    judge = Judge(path, today, opened)
    if len(aims) == 1:
        yield from _one(solution, judge, aims[0])
    else:
        findings = sorted((one for aim in aims for one in aim.findings), key=_after_volume)
        yield from _in_turn(solution, judge, findings, review)
    solution.reviews = judge.reviews
    return solution


def _after_volume(finding: Finding) -> bool:
    """Whether a finding comes after those on too much work: what is taken off may set it right, too."""
    amount = finding.amount
    over = amount is not None and amount.unit == "sets" and amount.counted > amount.wanted
    return not over or any(one.of for one in finding.related)


def _read(path: str, today: date, opened: Mapping[str, str], content: str | None = None) -> FileReview:
    """The review of a programme file, or of a text in its place, with what is on record told apart."""
    overlay = Overlay(opened)
    if content is not None:
        overlay.open(path, content)
    workspace = Workspace(today, overlay=overlay)
    one = reviewed(workspace, discovered(workspace, [path]))[0]
    KnownApart(workspace).split(one)
    if one.kind in ("athlete", "exercises", "team"):
        raise NothingToSolveError(f"{one.name} is no programme: only a programme's lines can be worked out")
    if not one.opened:
        raise NothingToSolveError(f"{one.name} cannot be opened")
    if one.reading is None or one.reading.root is None or not one.ledgers:
        raise NothingToSolveError(f"{one.name} cannot be read to its end: mend that first")
    if len(one.reading.text.content) > LONGEST:
        raise NothingToSolveError(
            f"{one.name} is too long to try edits on (over {LONGEST} letters): part it into files"
        )
    if one.team.broken or one.faults:
        raise NothingToSolveError(f"{one.name} could not be judged by every rule: spotline review says why")
    return one


class Aim:
    """A finding to clear, and those that follow from it: they have one cause, and are cleared together."""

    __slots__ = ("findings", "follows", "lead")

    def __init__(self, lead: Finding, raw: list[Finding]) -> None:
        self.lead = next(one for one in raw if _is_same(one, lead) and one.place == lead.place)
        self.follows = lead.follows
        self.findings = [self.lead, *lead.follows]


def _aims(review: FileReview, ask: Ask) -> list[Aim]:
    """What is asked about: the more serious first, then in the order of the file."""
    leads = [Aim(one, review.findings) for one in by_cause(review.findings)]
    blocking = tuple(review.team.blocking)
    found = [aim for aim in leads if any(ask.means(one, blocking) for one in aim.findings)]
    if not found and (ask.line or ask.rule):
        asked = (f"on line {ask.line}" if ask.line else "", f"of {ask.rule}" if ask.rule else "")
        where = " ".join(words for words in asked if words)
        lines = ", ".join(map(str, sorted({one.place.line for one in review.findings})))
        others = f"; there are some on lines {lines}" if lines else ""
        raise NothingToSolveError(f"nothing is found {where}{others}", of_asking=True)
    return sorted(found, key=lambda one: (-SEVERITIES.index(one.lead.severity), one.lead.place.start))


def only_the_coach(review: FileReview, finding: Finding) -> str:
    """Why a finding of a programme is not for us to solve; empty where it may be."""
    if not finding.why:
        return "It is about how the file is written. See what can be mended: spotline mend --ask"
    if finding.place.text.name != _text(review).name:
        return "It is about another file."
    if finding.rule in _asking_what_was_meant(review):
        how = "Correct it, or choose: spotline mend --ask" if finding.edits else "Write it."
        return f"Only you know what was meant. {how}"
    return ""


def _asking_what_was_meant(review: FileReview) -> set[str]:
    """The rules that doubt what is written: a guess of ours would be a fact made up."""
    rules = (*all_rules(), *review.team.rules)
    return {rule.name for rule in rules if rule.takes_out or rule.asks}


def _one(solution: Solution, judge: Judge, aim: Aim) -> Work[None]:
    """Up to three proposals for one finding; with what follows from it, or else for itself alone."""
    review = solution.review
    why = only_the_coach(review, aim.lead)
    if why:
        solution.stays.append(Stays(aim.lead, [why]))
        return
    ground = _ground(review, judge, solution.ask)
    search, cleared = yield from _first_found(ground, judge, aim)
    solution.to_the_end = search.is_cheapest
    for one in search.found:
        after = _read(judge.file, judge.today, judge.opened, with_spans(solution.before, one.spans))
        yield
        if one is search.found[0] and len(cleared) < len(aim.findings):
            yield from _in_turn(solution, judge, aim.follows, after, one.steps, cleared)
        else:
            solution.cards.append(_card(solution, after, one.steps, cleared))
    if not solution.cards:
        solution.stays.append(Stays(aim.lead, why_none(search, aim.lead)))


def _first_found(ground: Ground, judge: Judge, aim: Aim) -> Work[tuple[Search, list[Finding]]]:
    """The search that finds something: for a finding and what follows from it, else for itself alone."""
    search = _search(ground, judge, aim.findings)
    yield from search.run(reviews=FEW_REVIEWS if aim.follows else MOST_REVIEWS)
    if search.found or not aim.follows:
        return search, aim.findings
    spent = judge.reviews
    search = _search(ground, judge, [aim.lead])
    yield from search.run(reviews=MOST_REVIEWS - min(spent, FEW_REVIEWS) + 1)
    return search, [aim.lead]


LONGEST = 60_000
"""Letters of a programme on which edits are tried, about 800 lines: each try is a review of all of it."""

MOST_AIMS = 12
"""Findings that are worked on together, and what is said of the others."""

LATER = "not tried, as more is found than can be worked on at once: name it with --line or --rule"

MOST_TOGETHER = 120
"""Reviews that are spent on several findings together."""

LETTERS_TOGETHER = 300_000
"""Letters that are reviewed for several findings together: in a long file that is fewer reviews."""

FEW_REVIEWS = 10
"""Reviews that are spent on clearing a finding together with what follows from it."""


def _ground(review: FileReview, judge: Judge, ask: Ask) -> Ground:
    """The text of a review as it stands; findings that are asked about one after another share it."""
    plan = Plan(_text(review), review.ledgers, ask.keep)
    choices = review.team.choices
    rules = [rule for rule in (*all_rules(), *review.team.rules) if review.team.runs(rule)]
    foresight = Foresight(plan, rules, choices.moved, choices.preset)
    return Ground(plan, judge.look(_text(review).content), foresight)


def _search(ground: Ground, judge: Judge, aims: list[Finding]) -> Search:
    return Search(ground, judge, ground.marks_for(aims))


def _in_turn(
    solution: Solution,
    judge: Judge,
    findings: Sequence[Finding],
    now: FileReview,
    steps: Sequence[EditStep] = (),
    cleared: Sequence[Finding] = (),
) -> Work[None]:
    """A card for several findings: the cheapest edits for each, one after another, judged together.

    ``now`` is the review with the ``steps`` that are taken already, by which some are ``cleared``.
    """
    first = judge.look(solution.before)
    steps, cleared, ground = list(steps), list(cleared), None
    most = min(MOST_TOGETHER, LETTERS_TOGETHER // max(len(solution.before), 1))
    for number, finding in enumerate(findings):
        is_late = number >= MOST_AIMS or judge.reviews >= most
        why = LATER if is_late else only_the_coach(solution.review, finding)
        left = [one for one in now.findings if _is_same(one, finding)]
        if why:
            solution.stays.append(Stays(finding, [why]))
            continue
        if left:
            ground = ground or _ground(now, judge, solution.ask)
            search = _search(ground, judge, left)
            found = yield from search.run(1, max(min(MOST_REVIEWS, most - judge.reviews), 1))
            after = with_spans(_text(now).content, found[0].spans) if found else ""
            if not found or judge.look(after).brought(first):
                solution.stays.append(Stays(finding, _said_once(solution, why_none(search, finding))))
                continue
            solution.at_once = solution.at_once and not steps
            solution.to_the_end = solution.to_the_end and search.is_cheapest
            steps += found[0].steps
            now, ground = _read(judge.file, judge.today, judge.opened, after), None
            yield
        cleared.append(finding)
    if steps:
        solution.cards.append(_card(solution, now, steps, cleared))


def _said_once(solution: Solution, why: list[str]) -> list[str]:
    """Why nothing is proposed; of several findings for which it is the same, the first says it."""
    same = next((one.finding for one in solution.stays if one.why == tuple(why)), None)
    return why if same is None else [f"For the same reason as line {same.place.line}, {same.rule}."]


def _is_same(one: Finding, other: Finding) -> bool:
    return (one.rule, one.subject, one.group, one.athletes) == (
        other.rule,
        other.subject,
        other.group,
        other.athletes,
    ) and (bool(one.group or one.subject) or one.where == other.where)


def _card(solution: Solution, after: FileReview, steps: Sequence[EditStep], clears: list[Finding]) -> Card:
    costs = effects(solution.review.ledgers, after.ledgers)
    caution = caution_for(after.ledgers) if any(one.adds_work for one in steps) else ""
    return Card(_text(after).content, steps, costs, clears, caution)


def _text(review: FileReview) -> Text:
    assert review.reading is not None
    return review.reading.text
