"""What editors show that do not read Markdown: the words, without its signs."""

from __future__ import annotations

import re
from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from spotline.lint.editor.documents.snapshot import Snapshot
from spotline.lint.editor.explain.markdown import md, table
from spotline.lint.editor.explain.plain_text import plain_text
from spotline.lint.editor.explain.rules import rule_markdown
from spotline.lint.editor.features.hover import hover
from spotline.lint.editor.features.week_table import week_table
from spotline.lint.engine.registry import all_rules
from spotline.lint.team.settings import Team

SIGNS = re.compile(r"\*\*|(?<!\w)_\w|\\[^\w\s]|^\||^#|\]\(", re.MULTILINE)
"""Signs of Markdown that no word of a page holds."""


@pytest.mark.parametrize(
    ("markdown", "text"),
    [
        ("**back squat** trains `legs`", "back squat trains legs"),
        ("_As last readable._ snake_case stays", "As last readable. snake_case stays"),
        ("# Week 1\n\ntext", "Week 1\n======\n\ntext"),
        ("- one\n- two", "- one\n- two"),
        (r"Two \| three \*not\* \_this\_", "Two | three *not* _this_"),
        ("[a page](x.md)", "a page (x.md)"),
        ("| a | long head |\n| --- | --- |\n| **1** | x \\| y |\n\nend", "a  long head\n1  x | y\n\nend"),
    ],
)
def test_signs_go_and_words_stay(markdown: str, text: str) -> None:
    assert plain_text(markdown) == text


@given(
    st.text(st.characters(categories=("L", "N", "P", "S", "Zs"), exclude_characters="\u00a0"), max_size=40)
)
def test_a_coachs_words_come_out_as_they_went_in(words: str) -> None:
    shown = " ".join(words.split())
    if md(shown).replace("\\", "") == shown.replace(
        "\\", ""
    ):  # what cannot be shown at all is replaced before
        assert plain_text(f"x {md(shown)} x") == f"x {shown} x"
        assert plain_text("\n".join(table(("a",), [(md(shown),)]))).split("\n")[-1] == shown or not shown


def test_no_page_keeps_a_sign(example: Callable[..., Snapshot]) -> None:
    snapshot = example("bram-winter-strength.programme.yaml")
    (ledger,) = snapshot.review.ledgers
    pages = [week_table(ledger, week.number) for week in ledger.weeks]
    pages += [rule_markdown(rule.name, Team()) for rule in all_rules()]
    found = (hover(snapshot, at) for at in range(0, len(snapshot.text.content), 5))
    pages += [one.markdown for one in found if one is not None]
    for page in pages:
        assert not SIGNS.search(plain_text(page)), plain_text(page)
