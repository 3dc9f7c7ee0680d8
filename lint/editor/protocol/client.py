"""What the client at the other end can do, and which settings the coach has chosen there."""

from __future__ import annotations

from lsprotocol.types import InsertTextMode, MarkupKind
from pygls.capabilities import get_capability

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Sequence
    from typing import Any

    from lsprotocol.types import ClientCapabilities

UNNECESSARY = 1
"""The protocol's number for the tag of text that can be removed."""


class Client:
    """One client; it is taken to be able to do what it has announced, and no more.

    The first group of attributes follows the client's capabilities, the last one (``hint_kinds``, ``lenses``,
    ``shows_markdown``, ``shows_text``, ``counts_bytes``) its settings. ``shows_text`` says that Markdown
    would be shown with its signs.
    """

    __slots__ = (
        "adjusts_indentation",
        "answers_configuration",
        "code_descriptions",
        "counts_bytes",
        "diagnostic_data",
        "diagnostic_versions",
        "document_changes",
        "documentation_kind",
        "hierarchical_symbols",
        "hint_kinds",
        "hover_kind",
        "lenses",
        "refreshes_hints",
        "refreshes_lenses",
        "registers_configuration",
        "registers_watchers",
        "related_information",
        "resolves_edits",
        "shows_documents",
        "shows_markdown",
        "shows_text",
        "snippet_edits",
        "snippets",
        "unnecessary_tag",
    )

    def __init__(self, announced: ClientCapabilities) -> None:
        self.read_capabilities(announced)
        self.hint_kinds = frozenset({"sets", "kg"})
        self.lenses = True
        self.shows_markdown = False
        self.shows_text = False
        self.counts_bytes = False

    def read_capabilities(self, announced: ClientCapabilities) -> None:
        """Takes over what the client has announced."""
        diagnostics = announced.text_document.publish_diagnostics if announced.text_document else None
        tags = diagnostics.tag_support if diagnostics else None
        self.related_information = bool(diagnostics and diagnostics.related_information)
        self.unnecessary_tag = bool(tags and UNNECESSARY in tags.value_set)
        self.code_descriptions = bool(diagnostics and diagnostics.code_description_support)
        self.diagnostic_versions = bool(diagnostics and diagnostics.version_support)
        self.diagnostic_data = bool(diagnostics and diagnostics.data_support)

        def can(name: str) -> bool:
            return bool(get_capability(announced, name, None))

        self.document_changes = can("workspace.workspace_edit.document_changes")
        self.snippet_edits = can("workspace.workspace_edit.snippet_edit_support")
        resolved = get_capability(announced, "text_document.code_action.resolve_support.properties") or ()
        keeps_data = can("text_document.code_action.data_support")
        self.resolves_edits = keeps_data and "edit" in resolved
        self.snippets = can("text_document.completion.completion_item.snippet_support")
        modes = get_capability(
            announced, "text_document.completion.completion_item.insert_text_mode_support", None
        )
        self.adjusts_indentation = bool(modes and InsertTextMode.AdjustIndentation in modes.value_set)
        self.hierarchical_symbols = can("text_document.document_symbol.hierarchical_document_symbol_support")
        self.refreshes_hints = can("workspace.inlay_hint.refresh_support")
        self.refreshes_lenses = can("workspace.code_lens.refresh_support")
        self.registers_watchers = can("workspace.did_change_watched_files.dynamic_registration")
        self.registers_configuration = can("workspace.did_change_configuration.dynamic_registration")
        self.answers_configuration = can("workspace.configuration")
        self.shows_documents = can("window.show_document.support")
        self.hover_kind = _preferred(get_capability(announced, "text_document.hover.content_format"))
        formats = get_capability(announced, "text_document.completion.completion_item.documentation_format")
        self.documentation_kind = _preferred(formats)

    def apply_settings(self, settings: Any) -> None:
        """Takes over settings such as ``{"hints": {"sets": false}}``; ignores anything it does not know."""
        if not isinstance(settings, dict):
            return
        hints = settings.get("hints")
        for name, kind in (("sets", "sets"), ("kilograms", "kg")):
            wanted = hints.get(name) if isinstance(hints, dict) else None
            if isinstance(wanted, bool):
                self.hint_kinds = self.hint_kinds | {kind} if wanted else self.hint_kinds - {kind}
        if isinstance(settings.get("lenses"), bool):
            self.lenses = settings["lenses"]
        if isinstance(settings.get("showsMarkdown"), bool):
            self.shows_markdown = settings["showsMarkdown"]
        if isinstance(settings.get("plainText"), bool):
            self.shows_text = settings["plainText"]
        if isinstance(settings.get("countsBytes"), bool):
            self.counts_bytes = settings["countsBytes"]


def _preferred(formats: Sequence[MarkupKind] | None) -> MarkupKind | None:
    """Markdown where the client shows it; None where the client does not say that there are several kinds."""
    if not formats:
        return None
    return MarkupKind.Markdown if MarkupKind.Markdown in formats else MarkupKind.PlainText
