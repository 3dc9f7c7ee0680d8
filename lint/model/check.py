"""Checks a tree against its schema: findings for what does not fit."""

from __future__ import annotations

from ..findings.finding import Edit, Finding
from ..schemas.fast_check import fits
from ..syntax.tree import Mapping

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..syntax.tree import Anchor, Reading
    from ..text.places import Place


def checked(reading: Reading, schema: str) -> list[Finding]:
    """The findings of reading a file, and those for what breaks its schema.

    Where the fast check says that all is valid, that is final; else the jsonschema library decides.
    """
    found = [one for one in reading.findings if not (_is_clock_time(one) or _is_on_or_off(one))]
    if reading.root is not None and not fits(schema)(reading.root.plain):
        from ..schemas.explain import explain

        found += explain(reading.root, schema)
    if not any(finding.severity == "error" for finding in reading.findings):
        found += [_unused(one) for one in reading.anchors if not one.used and _is_shared(one, reading)]
    return found


def _is_shared(anchor: Anchor, reading: Reading) -> bool:
    """Whether an anchor stands under `shared`, where parts do nothing until they are used elsewhere."""
    entries = reading.root.entries if isinstance(reading.root, Mapping) else {}
    shared = entries.get("shared")
    return shared is not None and shared.value.start <= anchor.place.start < shared.value.end


def further(known: list[Finding], meant: list[Finding]) -> list[Finding]:
    """What reading adds to what the schema says: no second error at a place that has one."""
    if not known or not meant:
        return meant
    said = {one.place.key for one in known if one.severity == "error"}
    return [one for one in meant if one.severity != "error" or one.place.key not in said]


def _is_clock_time(finding: Finding) -> bool:
    """Whether it only says that others take 1:30 for the number 90, the very seconds that are meant."""
    if finding.rule != "quote-this":
        return False
    minutes, _, seconds = finding.place.excerpt.partition(":")
    return minutes.isdecimal() and seconds.isdecimal()


def _is_on_or_off(finding: Finding) -> bool:
    """Whether it only says that others take a key of intervals, ``on`` or ``off``, for true or false; or the
    word in place of a day, in a week without the session.
    """
    place = finding.place
    if finding.rule != "quote-this" or place.excerpt.lower() not in ("on", "off"):
        return False
    before = place.text.content[max(place.start - 16, 0) : place.start].rstrip(" ")
    is_of_a_week = before[-1:] == ":" and (before[-2:-1].isdigit() or before.endswith("other:"))
    return is_of_a_week or place.text.content[place.end :].lstrip(" ").startswith(":")


def _unused(anchor: Anchor) -> Finding:
    return Finding(
        "anchor-unused",
        "note",
        anchor.place,
        f"Nothing uses the anchor `{anchor.name}`.",
        change="Take it out, or use it.",
        edits=lambda: _without(anchor.place),
    )


def _without(place: Place) -> Iterator[Edit]:
    """Takes an anchor out, with the blanks behind it."""
    content, end = place.text.content, place.end
    while content[end : end + 1] == " ":
        end += 1
    yield Edit(place.text.place(place.start, end), "", f"take out {place.excerpt}", certain=False)
