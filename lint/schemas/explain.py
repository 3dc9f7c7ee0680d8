"""Findings for a tree that does not fit its schema, each at the key or value that is wrong.

The jsonschema library decides what is wrong. First misspelt keys are corrected in a copy of the data and the
copy is checked again, until no misspelt key is left. Then every violation that remains becomes a finding.
"""

from __future__ import annotations

from ... import schema as schemas
from ..findings.finding import Edit, Finding, Related
from ..syntax.tree import Mapping
from ..wording.words import counted_noun
from .causes import CauseExplainer
from .corrected_data import CorrectedData
from .explain_keys import KeyExplainer
from .explain_values import ValueExplainer
from .lookup import MANY, MOST_EXPLAINED, SchemaLookup

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable

    from ..syntax.tree import Node
    from .violation import Violation


def explain(root: Node, schema_name: str) -> list[Finding]:
    """Findings for all that breaks the schema of that name, in the order of the text; none where all fits.

    A root that is no Mapping gives none: reading the tree has already reported that.
    """
    if not isinstance(root, Mapping):
        return []
    data = CorrectedData(root)
    schema = SchemaLookup(schemas.load(schema_name))
    keys, values = KeyExplainer(data, schema), ValueExplainer(data, schema)
    found = list(CauseExplainer(data, schema).findings())
    while True:
        violations = schema.violations(data.plain)
        misspelt = [finding for one in violations for finding in keys.correct_misspelt(one)]
        found += misspelt
        if not misspelt or len(found) > MOST_EXPLAINED:
            break
    for one in violations[:MOST_EXPLAINED]:
        found += _explained(one, keys, values)
    found = _drawn_together(_each_once(found))
    return [*found, _more(found[-1])] if len(violations) > MOST_EXPLAINED else found


def _more(last: Finding) -> Finding:
    """Says that there are more faults than are explained."""
    return Finding(
        MANY,
        "error",
        last.place,
        f"This file has more than {MOST_EXPLAINED} faults of form; only some of them are told.",
        change="Mend these, and review it again.",
    )


def _explained(violation: Violation, keys: KeyExplainer, values: ValueExplainer) -> Iterable[Finding]:
    if violation.keyword == "additionalProperties":
        return keys.unknown(violation)
    if not violation.keyword:
        return [keys.at_odds(violation)]
    if violation.keyword in ("required", "dependentRequired"):
        return [keys.missing(violation)]
    if "propertyNames" in violation.steps:
        return [values.wrong_name(violation)]
    return values.wrong_value(violation)


def _drawn_together(found: list[Finding]) -> list[Finding]:
    """The findings, those on ``3x5`` in one: whoever writes sets and repetitions so does it in every line."""
    from .readings import RULE, are_sets_and_reps

    alike = [
        one
        for one in found
        if one.rule == RULE and len(one.edits) == 2 and are_sets_and_reps(one.place.excerpt)
    ]
    if len(alike) < 2:
        return found
    first, *others = alike
    edits = tuple(
        Edit(edit.place, edit.words, f"{edit.label}, and the others alike", further=tuple(rest))
        for edit, *rest in zip(*(one.edits for one in alike), strict=True)
    )
    one = Finding(
        first.rule,
        first.severity,
        first.place,
        f"{first.counted[:-1]}; so in {counted_noun(len(others), 'more place')}.",
        change=f"{first.change[:-1]}, and the others alike.",
        where=first.where,
        related=tuple(Related(other.place, f"{other.where}: `{other.place.excerpt}`") for other in others),
        edits=edits,
    )
    return [one if each is first else each for each in found if each not in others]


def _each_once(found: list[Finding]) -> list[Finding]:
    """The findings in the order of the text; of several alike at one place only the first."""
    first = {(finding.place.key, finding.rule, finding.subject): finding for finding in reversed(found)}
    return sorted(first.values(), key=lambda one: (one.place.start, one.rule, one.subject))
