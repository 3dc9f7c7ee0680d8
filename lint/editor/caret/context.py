"""What is known of the caret's place in a text that may be half typed."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    KeyPath = tuple[str | int, ...]
    """What leads to a value from the top: keys as text, places in lists as numbers from 0."""

    SiblingKeys = tuple[frozenset[str], ...]
    """The keys that stand beside each step of a path, and last those of the group at its end."""


class CaretContext:
    """Where the caret stands, and what may stand there.

    ``key_path`` leads to the caret. ``takes_key`` says that a key may stand there, ``takes_value`` that a
    value may. ``item_path`` is the path of the list item that may begin there with a dash, None where none
    may.

    The word at the caret stands from ``start`` to ``end``, inside its quotes; ``quote`` is their character,
    "" where there are none. ``has_colon`` says that a colon follows the word. ``needs_space`` says that a
    space must be put before it. ``anchor_sign`` is "&" in the name of an anchor, "*" in that of an alias.

    ``sibling_keys`` are those of the path, without the word at the caret. ``in_flow`` says that brackets are
    open at the caret. ``comment_start`` is where the comment starts that holds the caret, else -1.
    """

    __slots__ = (
        "anchor_sign",
        "comment_start",
        "end",
        "has_colon",
        "in_flow",
        "item_path",
        "key_path",
        "needs_space",
        "quote",
        "sibling_keys",
        "start",
        "takes_key",
        "takes_value",
    )

    def __init__(self, offset: int) -> None:
        self.key_path: KeyPath = ()
        self.sibling_keys: SiblingKeys = (frozenset(),)
        self.takes_key = False
        self.takes_value = False
        self.item_path: KeyPath | None = None
        self.start = offset
        self.end = offset
        self.quote = ""
        self.has_colon = False
        self.needs_space = False
        self.anchor_sign = ""
        self.in_flow = False
        self.comment_start = -1
