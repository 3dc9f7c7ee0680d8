"""Cuts the name of a lift into words that can be compared.

"BB RDLs (paused 2 s), w/ straps" becomes barbell, romanian, deadlift; paused, 2s; with, strap. Abbreviations
are spelled out, and several words that make one are joined by hyphens.
"""

from __future__ import annotations

import re

from .names import fold

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping, Sequence

    Raw = tuple[str, str, int, int]
    """A stretch of a name: its kind, the text that is compared, and where it begins and ends."""

WORD, MEASURE, TEMPO = "word", "measure", "tempo"
"""Kinds of tokens."""

JOINING, FILLER = "joining", "filler"
"""Kinds of words that are no part of a lift's name: see data/name-words.yaml."""

LONGEST_PHRASE = 6
"""Words that a phrase of the spellings may have."""

_UNITS = {
    "s": "s sec secs second seconds",
    "ct": "ct cts count counts",
    "min": "min mins minute minutes",
    "deg": "deg degs degree degrees °",
    "in": 'in inch inches " ″',
    "cm": "cm m mm ft foot yd km",
    "kg": "kg kgs kilo kilos lb lbs pood",
    "%": "%",
    "x": "x rep reps set sets rm",
}
"""How coaches write units, by the unit that is compared. Only seconds and counts are reckoned with."""

_UNIT = {word: unit for unit, words in _UNITS.items() for word in words.split()}
_NUMBER = r"\d+(?:[.,]\d+)?"
_LETTER = r"[^\W\d_]"
_WRITTEN = "|".join(sorted(map(re.escape, _UNIT), key=len, reverse=True))
_PATTERN = re.compile(
    rf"""
    (?P<tempo>
        (?<![\w.,-]) \d[-/.]\d[-/.][\dx](?:[-/.][\dx])? (?![\w/-]|\.\d)  # 3-1-X-0, 5/0/0
      | (?<![\w.,]) \d\d[\dx]\d (?![\w%]|\s?(?:k?m|kg|lbs?)(?!\w))   # 3010, 31X0, not 2000 m
    )
  | (?P<fraction> (?:\d\s(?:1/4|1/2|¼|½) | \d[¼½])s?(?!\w) | (?<!\d)[13]/[24](?!\d) | [¼½¾] )
  | (?P<ratio> 90[/-]90 )
  | (?P<measure>                                                         # 3 s, 2x10s, 45-degree, 2", x 20 m
        (?:(?<!\w)x\s?)? {_NUMBER} (?:\s?[-/x]\s?{_NUMBER})*
        (?: [\s-]?(?:{_WRITTEN})(?!(?<={_LETTER}){_LETTER}) | \s?'{{1,2}}(?!\w) | 's(?!\w) )?
    )
  | (?P<with> (?<!\w)w/(?:o(?!\w))? )
  | (?P<short> (?<!\w){_LETTER}/{_LETTER}(?!\w) | (?<![\w-])a(?=-{_LETTER}) )  # U/H, L/R, A-skip
  | (?P<word> {_LETTER}+(?:'{_LETTER}+)? )
  | (?P<joiner> [+&@→] | [-=]> | /(?=\s*{_LETTER}) )
  | (?P<break> [,;:()\[\]{{}}|] | (?<=\s)-+(?=\s) )
    """,
    re.VERBOSE,
)
_MARKS = str.maketrans(
    {**dict.fromkeys("‐‑‒–—−", "-"), **dict.fromkeys("’‘´`", "'"), **dict.fromkeys("“”", '"'), "×": "x"}
)
_FRACTIONS = str.maketrans({"¼": " 1/4", "½": " 1/2", "¾": " 3/4"})
_JOINERS = {
    "+": "and",
    "&": "and",
    "@": "at",
    **dict.fromkeys(("→", "->", "=>"), "then"),
    "/": "or",
    "w/": "with",
    "w/o": "without",
    "a": "a-",  # a letter that a hyphen ties to a word is no article
}
_ARTICLES = frozenset(("a", "an", "the"))
_IRREGULAR = {"feet": "foot", "calve": "calf"}
_PLURAL = {"chins": "chinup", "deads": "deadlift", "hammers": "hammercurl"}
"""Words that name a lift only in the plural: the chin and a dead stop name none."""


class NameToken:
    """One word of a name.

    ``word`` is the text that is compared, ``kind`` is word, measure or tempo. ``part`` numbers the parts of
    the name between commas, brackets and dashes. ``start`` and ``end`` are where it stands in the name.
    """

    __slots__ = ("end", "kind", "part", "start", "word")

    def __init__(self, word: str, kind: str, part: int, start: int, end: int) -> None:
        self.word = word
        self.kind = kind
        self.part = part
        self.start = start
        self.end = end


def tokens_of(name: str, spellings: Mapping[str, Sequence[str]]) -> list[NameToken]:
    """The words of a name. ``spellings`` gives the words that a phrase is written for, by its key."""
    runs = enumerate(_runs(_plain(name)))
    return [token for part, run in runs for token in _spelled(name, run, spellings, part)]


def words_of(
    name: str, spellings: Mapping[str, Sequence[str]], kinds: Mapping[str, Sequence[str]]
) -> tuple[str, ...]:
    """The words that make a name, in alphabetical order, with "and" but without other joining words."""
    words = [token.word for token in tokens_of(name, spellings)]
    silent = [word for word in words if kinds.get(word, ("",))[0] in (JOINING, FILLER) and word != "and"]
    return tuple(sorted(word for word in words if word not in silent))


def handle_of(words: Iterable[str]) -> str:
    """The word by which a name is found: the longest one, or the last of them in the alphabet."""
    return max(words, key=lambda word: (len(word), word))


def key_of(phrase: str) -> str:
    """The key of a phrase among the spellings. Capitals that end in S are an abbreviation, no plural."""
    if phrase.isalpha() and phrase.isupper() and phrase.endswith("S"):
        return phrase
    return "".join(text for run in _runs(_plain(phrase)) for _, text, _, _ in run if text not in _ARTICLES)


def seconds_of(token: NameToken) -> float:
    """The seconds, or counts, that a measure states. 0 for any other word, and for several numbers."""
    amount = token.word.removesuffix("ct").removesuffix("s") if token.kind == MEASURE else token.word
    return float(amount) if amount != token.word and amount.replace(".", "", 1).isdecimal() else 0.0


def _plain(name: str) -> str:
    """A name in small letters and with plain marks, each word in its place."""
    return "".join(letter.lower()[:1] for letter in name).translate(_MARKS)


def _runs(name: str) -> list[list[Raw]]:
    """The stretches of each part of a plain name."""
    runs: list[list[Raw]] = [[]]
    for found in _PATTERN.finditer(name):
        if found.lastgroup == "break":
            runs.append([])
        else:
            runs[-1].append((*_compared(str(found.lastgroup), found.group()), found.start(), found.end()))
    return [run for run in runs if run]


def _compared(group: str, text: str) -> tuple[str, str]:
    """The kind of a stretch and the text that is compared."""
    if group == "measure":
        return _measured(text)
    if group == "tempo":
        phases = re.split(r"[-/.]", text)
        return TEMPO, "-".join(phases if len(phases) > 1 else text)
    if group == "word":
        single = _PLURAL.get(text) or fold(text)
        return WORD, _IRREGULAR.get(single, single)
    if group == "fraction":
        return WORD, "-".join(text.removesuffix("s").translate(_FRACTIONS).split())
    return WORD, "90/90" if group == "ratio" else _JOINERS.get(text, text)


def _measured(text: str) -> tuple[str, str]:
    """A number with its unit as one text, or a bare whole number as a word."""
    found = re.match(r"x?\s?([\d.,\s/x-]*\d)[\s-]*(.*)", text)
    assert found is not None
    amount, unit = found[1].replace(",", "."), found[2]
    if unit:
        return MEASURE, f"{amount}{_UNIT.get(unit, unit)}"
    return (WORD if amount.isdigit() else MEASURE), amount


def _spelled(name: str, run: list[Raw], spellings: Mapping[str, Sequence[str]], part: int) -> list[NameToken]:
    """The words of a part, the longest phrases spelled out first.

    A measure and articles may stand within a phrase.
    """
    tokens: list[NameToken] = []
    start = 0
    while start < len(run):
        for size in range(min(LONGEST_PHRASE, len(run) - start), 0, -1):
            phrase = run[start : start + size]
            said = [text for kind, text, _, _ in phrase if kind == WORD and text not in _ARTICLES]
            words = spellings.get("".join(said))
            if size == 1:
                words = spellings.get(name[phrase[0][2] : phrase[0][3]], words)
            first, last = phrase[0], phrase[-1]
            ends = first[0] == last[0] == WORD and _ARTICLES.isdisjoint((first[1], last[1]))
            behind = run[start + size : start + size + 1]
            ends = ends and not (last[1] == "in" and behind and behind[0][:2] != (WORD, "and"))
            if words is not None and ends:
                tokens += [NameToken(word, WORD, part, first[2], last[3]) for word in words]
                tokens += [
                    NameToken(text, kind, part, at, end) for kind, text, at, end in phrase if kind != WORD
                ]
                break
        else:
            size = 1
            kind, text, at, end = run[start]
            tokens.append(NameToken(text, kind, part, at, end))
        start += size
    return tokens
