"""Makes the tables of built_names.py: how words are written, their kinds, and the words of each name."""

from __future__ import annotations

from .name_tokens import FILLER, JOINING, WORD, handle_of, key_of, tokens_of, words_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping, Sequence

    from .build_data import Data, DataEntry

    Words = Mapping[str, Sequence[str]]

SAME_AS = {"machine": ("sled",), "suspension": ("bodyweight",)}

SPELLING, ALONE = "spelling", "alone"
DIRECTION, MOVEMENT = "direction", "movement"
IMPLEMENT, THING, FREE, LIFT = "implement", "thing", "free", "lift"

OFTEN = 5
"""Names that must end with a word before it counts as a lift's (common practice, no source)."""

LEFT_OUT = {"bench": ("press",), "calf": ("raise",), "kickback": ("glute", "triceps")}
"""What coaches leave out behind or before a word: "bench" for the bench press, "cable kickback"."""


def spellings_of(data: Data) -> dict[str, tuple[str, ...]]:
    """The words that each phrase is written for, by its key. A hyphenated word is a phrase of its own."""
    found: dict[str, tuple[str, ...]] = {}
    for entry in data["name-words"]:
        for word, meant in listed_words(entry):
            if entry["kind"] == SPELLING:
                found[key_of(word)] = tuple(meant.lower().split())
        joined = [
            word
            for pair in listed_words(entry)
            for text in pair
            for word in text.lower().split()
            if "-" in word
        ]
        for word in joined:
            found.setdefault(key_of(word), (word,))
    return dict(sorted(found.items()))


def kinds_of(data: Data, spellings: Words) -> dict[str, tuple[str, ...]]:
    """The kind of each word and what it stands for.

    Other words of names say which lift it is. A thing that stands in no name can make no other lift: it is
    free.
    """
    found: dict[str, tuple[str, ...]] = {}
    for entry in data["name-words"]:
        for word, meant in listed_words(entry):
            if entry["kind"] not in (SPELLING, ALONE):
                (token,) = tokens_of(word, spellings)
                before = found.get(token.word, (entry["kind"],))
                found[token.word] = (*before, meant) if meant else before
    named = {
        word
        for exercise in data["exercises"]
        for name in (exercise["name"], *exercise.get("also", ()))
        for word in words_of(name, spellings, found)
    }
    found.update({word: (LIFT,) for word in named if word not in found})
    found.update({word: (FREE,) for word, kind in found.items() if kind == (THING,) and word not in named})
    return dict(sorted(found.items()))


def heads_of(data: Data, spellings: Words, kinds: Words) -> list[str]:
    """The words that names of lifts end with, before "with", "to" and the like: squat, press, hang.

    A word that tells lifts apart stands there twice or by itself; any other, but a direction or an implement,
    often: the chair of a "captain's chair" is no lift. The step of a step-up is one by itself.
    """
    ends = [
        head
        for entry in data["exercises"]
        if entry["kind"] != "endurance"
        for name in (entry["name"], *entry.get("also", ()))
        for head in _head(name, spellings, kinds)
    ]
    times = {
        word: sum(OFTEN if alone else 1 for other, alone in ends if other == word) for word, _ in set(ends)
    }
    least = {LIFT: 2, DIRECTION: len(ends), IMPLEMENT: len(ends)}
    often = {word for word, found in times.items() if found >= least.get(kinds[word][0], OFTEN)}
    tied = {word.split("-")[0] for word, kind in kinds.items() if kind[0] == MOVEMENT and "-" in word}
    return sorted(often.union(word for word in tied if len(word) > 2))


def _head(name: str, spellings: Words, kinds: Words) -> Iterator[tuple[str, bool]]:
    """The word that a name ends with, before a joining word that no hyphen ties; whether it stands alone."""
    tokens = tokens_of(name, spellings)
    head = ""
    for token in tokens:
        kind = kinds.get(token.word, ("",))[0]
        if head and (token.part or (kind == JOINING and name[token.start - 1] != "-")):
            break
        if token.kind == WORD and kind not in (JOINING, FILLER):
            head = token.word
    if head:
        yield head, len(tokens) == 1


def alone_of(data: Data, spellings: Words) -> dict[str, str]:
    """The exercise that bare words mean where nothing else is named, by these words in alphabetical order."""
    return {
        " ".join(sorted(token.word for token in tokens_of(words, spellings))): meant
        for entry in data["name-words"]
        if entry["kind"] == ALONE
        for words, meant in listed_words(entry)
    }


def listed_words(entry: DataEntry) -> list[tuple[str, str]]:
    """Each word of an entry with what it stands for, or "". A spelling also stands for itself."""
    words = entry["words"]
    if not isinstance(words, dict):
        return [(word, "") for word in words]
    own = [(meant, meant) for meant in words] if entry["kind"] == SPELLING else []
    return own + [(word, meant) for meant, listed in words.items() for word in listed]


def names_by_word(data: Data, spellings: Words, kinds: Words) -> Iterator[str]:
    """A line for each name: the word by which it is found, its words, the exercise, whether it is the
    exercise's own name, and the implement if it names another one.

    A name that is only an implement is left out: it is no lift by itself. So is one that ends with a letter
    read as an article, as "skipping A": without it, it says another thing.
    """
    for entry in data["exercises"]:
        for name in (entry["name"], *entry.get("also", ())):
            whole = words_of(name, spellings, kinds)
            lettered = kinds.get(tokens_of(name, spellings)[-1].word, ("",))[0] == FILLER
            for words in () if lettered else _in_short(whole):
                own = "own" if name == entry["name"] and words is whole else ""
                if any(kinds[word][0] != IMPLEMENT for word in words):
                    fields = (" ".join(words), entry["name"], own, _carried(entry, words, kinds))
                    yield "\t".join((handle_of(words), *fields)).rstrip("\t")


def _in_short(words: tuple[str, ...]) -> list[tuple[str, ...]]:
    """The words of a name, and those that are left where coaches leave out what goes without saying."""
    short = [words]
    for word, silent in LEFT_OUT.items():
        for one in silent:
            if word in words and words.count(one) == 1 and len(words) > 2:
                short.append(tuple(other for other in words if other != one))
    return short


def carried_by(data: Data) -> dict[str, str]:
    """The implement of each name that names another one than its exercise's own."""
    spellings = spellings_of(data)
    kinds = kinds_of(data, spellings)
    return {
        name: implement
        for entry in data["exercises"]
        for name in entry.get("also", ())
        if (implement := _carried(entry, words_of(name, spellings, kinds), kinds))
    }


def _carried(entry: DataEntry, words: Sequence[str], kinds: Words) -> str:
    """The implement that a name states, or "" for the exercise's own.

    A machine may be called after its sled, and without weights the straps stay.
    """
    stated = [one for word in words if kinds[word][0] == IMPLEMENT for one in kinds[word][1:]]
    own = {entry["implement"], *entry["station"], "machine"}
    own.update(SAME_AS.get(entry["implement"], ()))
    return "" if not own.isdisjoint(stated) else "".join(stated[:1])
