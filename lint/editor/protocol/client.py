"""What the client at the other end can do, as it has announced, and what it has been set to."""

from __future__ import annotations

from lsprotocol.types import MarkupKind
from pygls.capabilities import get_capability

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Sequence
    from typing import Any

    from lsprotocol.types import ClientCapabilities

UNNECESSARY = 1
"""The protocol's number of the tag for what can go."""


class Client:
    """One client. All that it has not announced is taken for impossible."""

    __slots__ = (
        "configuration",
        "counts_bytes",
        "data",
        "document_changes",
        "documentation_kind",
        "hierarchy",
        "hints",
        "hints_refresh",
        "hover_kind",
        "lenses",
        "lenses_refresh",
        "links",
        "listens",
        "related",
        "show_document",
        "shows_markdown",
        "snippets",
        "tags",
        "versions",
        "watches",
    )

    def __init__(self, announced: ClientCapabilities) -> None:
        said = announced.text_document.publish_diagnostics if announced.text_document else None
        self.related = bool(said and said.related_information)
        self.tags = bool(said and said.tag_support and UNNECESSARY in said.tag_support.value_set)
        self.links = bool(said and said.code_description_support)
        self.versions = bool(said and said.version_support)
        self.data = bool(said and said.data_support)

        def can(name: str) -> bool:
            return bool(get_capability(announced, name, None))

        self.document_changes = can("workspace.workspace_edit.document_changes")
        self.snippets = can("workspace.workspace_edit.snippet_edit_support")
        self.hierarchy = can("text_document.document_symbol.hierarchical_document_symbol_support")
        self.hints_refresh = can("workspace.inlay_hint.refresh_support")
        self.lenses_refresh = can("workspace.code_lens.refresh_support")
        self.watches = can("workspace.did_change_watched_files.dynamic_registration")
        self.listens = can("workspace.did_change_configuration.dynamic_registration")
        self.configuration = can("workspace.configuration")
        self.show_document = can("window.show_document.support")
        self.hover_kind = _kind(get_capability(announced, "text_document.hover.content_format"))
        formats = get_capability(announced, "text_document.completion.completion_item.documentation_format")
        self.documentation_kind = _kind(formats)
        self.hints = frozenset({"sets", "kg"})
        self.lenses = True
        self.shows_markdown = False
        self.counts_bytes = False

    def set(self, settings: Any) -> None:
        """Takes over settings as they come, ``{"hints": {"sets": false}}``; anything else is left alone."""
        if not isinstance(settings, dict):
            return
        hints = settings.get("hints")
        for name, kind in (("sets", "sets"), ("kilograms", "kg")):
            wanted = hints.get(name) if isinstance(hints, dict) else None
            if isinstance(wanted, bool):
                self.hints = self.hints | {kind} if wanted else self.hints - {kind}
        if isinstance(settings.get("lenses"), bool):
            self.lenses = settings["lenses"]
        if isinstance(settings.get("showsMarkdown"), bool):
            self.shows_markdown = settings["showsMarkdown"]
        if isinstance(settings.get("countsBytes"), bool):
            self.counts_bytes = settings["countsBytes"]


def _kind(formats: Sequence[MarkupKind] | None) -> MarkupKind | None:
    """Markdown where the client shows it; None where it does not know that there are several kinds."""
    if not formats:
        return None
    return MarkupKind.Markdown if MarkupKind.Markdown in formats else MarkupKind.PlainText
