"""Makes the tables of built_names.py: how words are written, their kinds, and the words of each name."""

from __future__ import annotations

from .name_tokens import handle_of, key_of, tokens_of, words_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping, Sequence

    from .build_data import Data, DataEntry

    Words = Mapping[str, Sequence[str]]

SAME_AS = {"machine": ("sled",), "suspension": ("bodyweight",)}

SPELLING, ALONE = "spelling", "alone"
IMPLEMENT, THING, FREE, LIFT = "implement", "thing", "free", "lift"

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

    A name that is only an implement is left out: it is no lift by itself.
    """
    for entry in data["exercises"]:
        for name in (entry["name"], *entry.get("also", ())):
            whole = words_of(name, spellings, kinds)
            for words in _in_short(whole):
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
