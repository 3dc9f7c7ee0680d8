"""Writes what is made from the rules: their table in the README, and the newest preset, their defaults and names.

    python tests/write_from_rules.py [--check]

Run it after a rule was added or its words were changed. With --check it writes nothing and says what it would
write. What has been shipped is never overwritten: where a default moved, or an older preset would
run other rules, nothing at all is written.

Exit code 0 if all is as the rules make it, 1 if --check found something to write, 2 if what was shipped moved.
"""

from __future__ import annotations

import argparse
import json
import sys
from pathlib import Path
from typing import Any

from spotline.lint.engine.registry import Rule, all_rules
from spotline.lint.engine.rule_page import Page
from spotline.lint.team.presets import PRESETS, rules_after, rules_before

ROOT = Path(__file__).resolve().parent.parent

TABLE = "| rule | severity | what it finds |\n|---|---|---|\n"
"""The head of the README's table of rules; an empty line ends it."""


class MovedError(Exception):
    """A preset that has been shipped is not what the rules now say."""


def with_table(readme: str, rules: list[Rule]) -> str:
    """The README's text with a row for each rule."""
    before, table, after = readme.partition(TABLE)
    assert table, "README.md has no table of rules: restore its two lines of head"
    rows = [f"| `{rule.name}` | {rule.severity} | {Page(rule).finds.rstrip('.')} |" for rule in rules]
    return before + table + "\n".join([*rows, "", after.partition("\n\n")[2]])


def defaults(preset: str, rules: list[Rule]) -> dict[str, object]:
    """The default of every limit under a preset, and those for some situations, as JSON holds them."""
    held = PRESETS[preset]
    whole = {
        f"{rule.name}: {option.name}": {
            "default": held.get(rule.name, {}).get(option.name, option.default),
            "by": [] if option.name in held.get(rule.name, {}) else option.by,
        }
        for rule in rules
        for option in rule.options
    }
    plain: dict[str, object] = json.loads(json.dumps(whole))
    return plain


def runs(preset: str, rules: list[Rule]) -> list[str]:
    """The names of the rules that run under a preset where the team says nothing of them."""
    later, still = rules_after(preset), rules_before(preset)
    return [rule.name for rule in rules if (not rule.off or rule.name in still) and rule.name not in later]


def kept_and_new(preset: str, kept: dict[str, Any], rules: list[Rule]) -> dict[str, Any]:
    """What the file of a preset is to hold: what it holds, and in the newest one what has come since.

    Raises `MovedError` where a limit that it holds is gone or has another default, where a rule that it runs
    would not be run, and where an older preset would run a new one.
    """
    now = {"limits": defaults(preset, rules), "rules": runs(preset, rules)}
    for name, default in kept["limits"].items():
        if now["limits"].get(name) != default:
            said = json.dumps(now["limits"][name]) if name in now["limits"] else "nothing"
            raise MovedError(
                f"tests/presets/{preset}.json has been shipped with {json.dumps(default)} for `{name}`, and the"
                f" rules now say {said}. Leave the file as it is: give the old default to every preset in"
                " lint/team/presets.py and date a new preset there."
            )
    gone = [name for name in kept["rules"] if name not in now["rules"]]
    if gone:
        raise MovedError(
            f"tests/presets/{preset}.json has been shipped with {', '.join(gone)}, which would not run now. Leave"
            " the file as it is: a preset goes on running its rules."
        )
    if preset == list(PRESETS)[-1]:
        return now
    new = [name for name in now["rules"] if name not in kept["rules"]]
    if new:
        raise MovedError(
            f"tests/presets/{preset}.json has been shipped without {', '.join(new)}. Leave the file as it is: name"
            " what is new in NEW_RULES of lint/team/presets.py, with the newest preset."
        )
    return kept


def wanted(rules: list[Rule]) -> dict[Path, str]:
    """Every file that holds something made from the rules, with the text that it is to have."""
    readme = ROOT / "README.md"
    texts = {readme: with_table(readme.read_text(encoding="utf-8"), rules)}
    for preset in PRESETS:
        file = ROOT / "tests" / "presets" / f"{preset}.json"
        kept = json.loads(file.read_text(encoding="utf-8")) if file.exists() else {"limits": {}, "rules": []}
        texts[file] = json.dumps(kept_and_new(preset, kept, rules), indent=1) + "\n"
    return texts


def main(words: list[str] | None = None) -> int:
    parser = argparse.ArgumentParser(description="Writes what is made from the rules.")
    parser.add_argument("--check", action="store_true", help="write nothing, say what would be written")
    check = parser.parse_args(words).check
    try:
        texts = wanted(all_rules())
    except MovedError as moved:
        print(moved, file=sys.stderr)
        return 2
    stale = [
        file for file, text in texts.items() if not file.exists() or file.read_text(encoding="utf-8") != text
    ]
    for file in stale:
        if not check:
            file.write_text(texts[file], encoding="utf-8")
        print(f"{file.relative_to(ROOT)} {'is not as the rules make it' if check else 'is written'}")
    if stale and check:
        print("Write it: python tests/write_from_rules.py", file=sys.stderr)
    return 1 if stale and check else 0


if __name__ == "__main__":
    raise SystemExit(main())
