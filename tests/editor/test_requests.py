"""The server and three clients as they announce themselves: all that a coach asks for in a day."""

from __future__ import annotations

import asyncio
import sys
from collections.abc import AsyncIterator, Sequence
from pathlib import Path

import pytest
import pytest_lsp
from lsprotocol import types
from pygls.exceptions import JsonRpcException
from pytest_lsp import ClientServerConfig, LanguageClient, client_capabilities, make_test_lsp_client

ATHLETE = "name: Orla\nlevel: intermediate\nbest lifts: {back squat: 100 kg}\n"

PLAN = """\
programme: Legs 😀
athlete: orla.athlete.yaml
goal: hypertrofy
focus: [legs]
starts: 2026-01-05
sessions:
  - session: Lower
    day: monday
    exercises:
      - {exercise: back squat, sets: 3, reps: 6-8, load: 75 %, rest: 2 min}
      - {exercise: leg extension, sets: 2, reps: 8-12, rir: 2, rest: 2 min}
      - {exercise: seated leg curl, sets: 3, reps: 8-12, rir: 2, rest: 2 min}
      - {exercise: stiff-leg deadlift, sets: 2, reps: 8-12, rir: 2, rest: 2 min}
      - {note: 😀, exercise: standing calf raize, sets: 3, reps: 8-12, rir: 2, rest: 2 min}
"""


ASKED_OF_CLIENTS = (
    types.CLIENT_REGISTER_CAPABILITY,
    types.WORKSPACE_INLAY_HINT_REFRESH,
    types.WORKSPACE_CODE_LENS_REFRESH,
)
"""Requests that the clients say they answer."""


def patient() -> LanguageClient:
    """A client that says yes to all that it is asked."""
    client = make_test_lsp_client()
    for method in ASKED_OF_CLIENTS:
        client.feature(method)(lambda *params: None)
    return client


@pytest_lsp.fixture(
    scope="module",
    params=["visual_studio_code", "neovim", "emacs"],
    config=ClientServerConfig(
        server_command=[sys.executable, "-m", "spotline", "editor"], client_factory=patient
    ),
)
async def client(
    request: pytest.FixtureRequest, lsp_client: LanguageClient, tmp_path_factory: pytest.TempPathFactory
) -> AsyncIterator[None]:
    folder = tmp_path_factory.mktemp(request.param)
    (folder / ".git").mkdir()
    (folder / "orla.athlete.yaml").write_text(ATHLETE, encoding="utf-8")
    announced = client_capabilities(request.param)
    lsp_client.root = folder.as_uri()
    lsp_client.able = await lsp_client.initialize_session(
        types.InitializeParams(
            capabilities=announced,
            root_uri=folder.as_uri(),
            workspace_folders=[types.WorkspaceFolder(folder.as_uri(), "team")],
        )
    )
    yield
    await lsp_client.shutdown_session()


UNITS = {
    types.PositionEncodingKind.Utf8: ("utf-8", 1),
    types.PositionEncodingKind.Utf16: ("utf-16-le", 2),
    types.PositionEncodingKind.Utf32: ("utf-32-le", 4),
}


class Plan:
    """A document at the client, kept as the client keeps it: as units of the encoding agreed on."""

    def __init__(self, client: LanguageClient, name: str, text: str = PLAN) -> None:
        self.client = client
        self.uri = f"{client.root}/{name}.programme.yaml"
        self.text = text
        self.version = 1
        self.encoding = client.able.capabilities.position_encoding or types.PositionEncodingKind.Utf16
        client.text_document_did_open(
            types.DidOpenTextDocumentParams(types.TextDocumentItem(self.uri, "yaml", 1, text))
        )

    @property
    def id(self) -> types.TextDocumentIdentifier:
        return types.TextDocumentIdentifier(self.uri)

    @property
    def whole(self) -> types.Range:
        return types.Range(types.Position(0, 0), types.Position(self.text.count("\n"), 0))

    def units(self, words: str) -> int:
        codec, size = UNITS[self.encoding]
        return len(words.encode(codec)) // size

    def position(self, index: int) -> types.Position:
        before = self.text[:index]
        return types.Position(before.count("\n"), self.units(before.rpartition("\n")[2]))

    def at(self, words: str, plus: int = 1) -> types.Position:
        return self.position(self.text.index(words) + plus)

    def index(self, position: types.Position) -> int:
        lines = self.text.splitlines(keepends=True)
        index = sum(len(line) for line in lines[: position.line])
        left = position.character
        while left > 0:
            left -= self.units(self.text[index])
            index += 1
        assert left == 0
        return index

    def words(self, range: types.Range) -> str:
        return self.text[self.index(range.start) : self.index(range.end)]

    def apply(self, edits: Sequence[types.TextEdit]) -> None:
        """Applies edits as a client does, and tells the server of each."""
        changes: list[types.TextDocumentContentChangeEvent] = []
        for edit in sorted(edits, key=lambda one: -self.index(one.range.start)):
            start, end = self.index(edit.range.start), self.index(edit.range.end)
            self.text = self.text[:start] + edit.new_text + self.text[end:]
            changes.append(types.TextDocumentContentChangePartial(edit.range, edit.new_text))
        self.version += 1
        self.client.diagnostics.pop(self.uri, None)
        self.client.text_document_did_change(
            types.DidChangeTextDocumentParams(
                types.VersionedTextDocumentIdentifier(self.version, self.uri), changes
            )
        )

    def replace(self, old: str, new: str) -> None:
        start = self.text.index(old)
        place = types.Range(self.position(start), self.position(start + len(old)))
        self.apply([types.TextEdit(place, new)])

    async def diagnostics(self) -> Sequence[types.Diagnostic]:
        """What is told of this document since it was opened or changed, among all that is told of others."""
        async with asyncio.timeout(60):
            while self.uri not in self.client.diagnostics:
                await asyncio.sleep(0.005)
        return self.client.diagnostics[self.uri]

    async def actions(self, range: types.Range) -> list[types.CodeAction]:
        found = await self.client.text_document_code_action_async(
            types.CodeActionParams(self.id, range, types.CodeActionContext([]))
        )
        return [one for one in found or [] if isinstance(one, types.CodeAction)]

    def edits(self, action: types.CodeAction) -> list[types.TextEdit]:
        """The edits of an action on this document, in the form that the client has announced."""
        assert action.edit is not None
        announced = self.client.capabilities.workspace
        assert announced is not None
        if announced.workspace_edit and announced.workspace_edit.document_changes:
            assert action.edit.changes is None
            (change,) = action.edit.document_changes or ()
            assert isinstance(change, types.TextDocumentEdit)
            assert (change.text_document.uri, change.text_document.version) == (self.uri, self.version)
            return [one for one in change.edits if isinstance(one, types.TextEdit)]
        assert action.edit.document_changes is None
        assert action.edit.changes is not None
        assert list(action.edit.changes) == [self.uri]
        return list(action.edit.changes[self.uri])


async def test_findings_are_mended_until_none_is_left(client: LanguageClient) -> None:
    plan = Plan(client, "mended")
    found = await plan.diagnostics()
    by_rule = {str(one.code): one for one in found}
    assert set(by_rule) == {"value-unknown", "exercise-unknown"}
    assert plan.words(by_rule["value-unknown"].range) == "hypertrofy"
    assert plan.words(by_rule["exercise-unknown"].range) == "standing calf raize"
    assert {one.source for one in found} == {"spotline"}
    for rule, title in (
        ("value-unknown", "Write hypertrophy"),
        ("exercise-unknown", "Write standing calf raise"),
    ):
        actions = await plan.actions(by_rule[rule].range)
        (action,) = [one for one in actions if one.title == title]
        assert action.kind == types.CodeActionKind.QuickFix
        assert action.diagnostics is not None
        assert [one.code for one in action.diagnostics] == [rule]
        plan.apply(plan.edits(action))
        found = await plan.diagnostics()
    assert list(found) == []


async def test_a_waiver_silences_only_with_a_reason(client: LanguageClient) -> None:
    plan = Plan(client, "waived", PLAN.replace("hypertrofy", "hypertrophy"))
    (one,) = await plan.diagnostics()
    title = "Waive exercise-unknown here, with a reason"
    (action,) = [action for action in await plan.actions(one.range) if action.title == title]
    plan.apply(plan.edits(action))
    assert {str(one.code) for one in await plan.diagnostics()} == {
        "exercise-unknown",
        "waiver-without-reason",
    }
    plan.replace("REASON", "it is new")
    assert list(await plan.diagnostics()) == []


async def test_a_half_typed_text_has_one_finding_and_keeps_its_hints(client: LanguageClient) -> None:
    plan = Plan(client, "typed", PLAN.replace("hypertrofy", "hypertrophy").replace("raize", "raise"))
    assert list(await plan.diagnostics()) == []
    asked = types.InlayHintParams(plan.id, plan.whole)
    hints = await client.text_document_inlay_hint_async(asked)
    assert hints
    plan.replace("[legs]", "[legs")
    (one,) = await plan.diagnostics()
    assert one.severity == types.DiagnosticSeverity.Error
    kept = await client.text_document_inlay_hint_async(asked)
    assert kept is not None
    assert [hint.label for hint in kept] == [hint.label for hint in hints]
    plan.replace("[legs", "[legs]")
    assert list(await plan.diagnostics()) == []


async def test_what_is_asked_of_a_sound_programme(client: LanguageClient) -> None:
    plan = Plan(client, "asked", PLAN.replace("hypertrofy", "hypertrophy").replace("raize", "raise"))
    assert list(await plan.diagnostics()) == []

    hover = await client.text_document_hover_async(types.HoverParams(plan.id, plan.at("seated leg curl")))
    assert hover is not None
    words = hover.contents.value if isinstance(hover.contents, types.MarkupContent) else str(hover.contents)
    assert "hamstrings" in words
    assert hover.range is not None
    assert plan.words(hover.range) == "seated leg curl"

    hints = await client.text_document_inlay_hint_async(types.InlayHintParams(plan.id, plan.whole))
    assert hints is not None
    assert any("75 kg" in str(hint.label) for hint in hints)

    symbols = await client.text_document_document_symbol_async(types.DocumentSymbolParams(plan.id))
    assert symbols
    announced = client.capabilities.text_document
    assert announced is not None
    assert announced.document_symbol is not None
    if announced.document_symbol.hierarchical_document_symbol_support:
        (programme,) = [one for one in symbols if isinstance(one, types.DocumentSymbol)]
        assert programme.name == "Legs 😀"
        assert plan.words(programme.selection_range) == "Legs 😀"
        (session,) = programme.children or ()
        assert [one.name for one in session.children or ()][:1] == ["back squat"]
    else:
        names = [one.name for one in symbols if isinstance(one, types.SymbolInformation)]
        assert names[:3] == ["Legs 😀", "Lower", "back squat"]

    lenses = await client.text_document_code_lens_async(types.CodeLensParams(plan.id))
    assert lenses
    command = lenses[0].command
    assert command is not None
    assert command.command == "spotline.week"


async def test_names_are_completed(client: LanguageClient) -> None:
    plan = Plan(client, "completed", PLAN.replace("standing calf raize", "nordic"))
    await plan.diagnostics()
    caret = plan.at("nordic", len("nordic"))
    found = await client.text_document_completion_async(types.CompletionParams(plan.id, caret))
    assert isinstance(found, types.CompletionList)
    assert found.is_incomplete
    (first, *_) = found.items
    assert isinstance(first.text_edit, types.TextEdit)
    assert plan.words(first.text_edit.range) == "nordic"
    plan.apply([first.text_edit])
    assert "exercise-unknown" not in {one.code for one in await plan.diagnostics()}


async def test_a_blank_in_a_sentence_calls_for_nothing(client: LanguageClient) -> None:
    plan = Plan(client, "sentence", PLAN.replace("Legs 😀", "Legs and "))
    await plan.diagnostics()
    typed = types.CompletionContext(types.CompletionTriggerKind.TriggerCharacter, " ")
    caret = plan.at("Legs and ", len("Legs and "))
    assert await client.text_document_completion_async(types.CompletionParams(plan.id, caret, typed)) is None
    behind = plan.at("goal: ", len("goal: "))
    found = await client.text_document_completion_async(types.CompletionParams(plan.id, behind, typed))
    assert isinstance(found, types.CompletionList)
    assert "hypertrophy" in [one.label for one in found.items]


async def test_the_athletes_file_is_gone_to(client: LanguageClient) -> None:
    plan = Plan(client, "linked")
    await plan.diagnostics()
    found = await client.text_document_definition_async(types.DefinitionParams(plan.id, plan.at("orla")))
    assert isinstance(found, Sequence)
    assert [Path(str(one.uri)).name for one in found if isinstance(one, types.Location)] == [
        "orla.athlete.yaml"
    ]
    named = types.ReferenceParams(types.ReferenceContext(True), plan.id, plan.at("seated leg curl"))
    used = await client.text_document_references_async(named)
    assert plan.uri in [one.uri for one in used or ()]


async def test_no_formatting_is_offered(client: LanguageClient) -> None:
    able = client.able.capabilities
    assert able.document_formatting_provider is None
    assert able.document_range_formatting_provider is None
    assert able.document_on_type_formatting_provider is None
    assert isinstance(able.text_document_sync, types.TextDocumentSyncOptions)
    assert able.text_document_sync.change == types.TextDocumentSyncKind.Incremental
    assert isinstance(able.code_action_provider, types.CodeActionOptions)
    assert list(able.code_action_provider.code_action_kinds or ()) == [types.CodeActionKind.QuickFix]


async def test_an_exercise_is_renamed_and_marked(client: LanguageClient) -> None:
    plan = Plan(client, "renamed", PLAN.replace("hypertrofy", "hypertrophy"))
    await plan.diagnostics()
    caret = plan.at("leg extension")
    marked = await client.text_document_document_highlight_async(
        types.DocumentHighlightParams(plan.id, caret)
    )
    assert [plan.words(one.range) for one in marked or ()] == ["leg extension"]
    asked = await client.text_document_prepare_rename_async(types.PrepareRenameParams(plan.id, caret))
    assert isinstance(asked, types.PrepareRenamePlaceholder)
    assert (plan.words(asked.range), asked.placeholder) == ("leg extension", "leg extension")
    edit = await client.text_document_rename_async(types.RenameParams(plan.id, caret, "kick-outs of ours"))
    plan.apply(plan.edits(types.CodeAction("rename", edit=edit)))
    assert "\nour names: {kick-outs of ours: leg extension}\n" in plan.text
    assert "{exercise: kick-outs of ours, sets: 2" in plan.text
    found = await plan.diagnostics()
    assert "kick-outs of ours" not in " ".join(one.message for one in found)


async def test_why_something_is_not_renamed_is_said(client: LanguageClient) -> None:
    plan = Plan(client, "unnamed")
    await plan.diagnostics()
    with pytest.raises(JsonRpcException, match="Put the caret on the name of an exercise"):
        await client.text_document_rename_async(types.RenameParams(plan.id, plan.at("sessions:"), "x"))


async def test_names_are_found_in_the_whole_folder(client: LanguageClient) -> None:
    found = await client.workspace_symbol_async(types.WorkspaceSymbolParams("orl"))
    names = [(one.name, Path(str(one.location.uri)).name) for one in found or ()]
    assert names == [("Orla", "orla.athlete.yaml")]


async def test_whole_lines_are_offered_to_those_who_can_fill_them_in(client: LanguageClient) -> None:
    plan = Plan(client, "lines")
    await plan.diagnostics()
    text_document = client.capabilities.text_document
    assert text_document is not None
    assert text_document.completion is not None
    item = text_document.completion.completion_item
    plan.replace("      - {note: 😀", "      - front sq\n      - {note: 😀")
    caret = plan.at("- front sq", len("- front sq"))
    found = await client.text_document_completion_async(types.CompletionParams(plan.id, caret))
    assert isinstance(found, types.CompletionList)
    lines = [one for one in found.items if one.insert_text_format == types.InsertTextFormat.Snippet]
    assert bool(lines) == bool(item and item.snippet_support)
    if lines:
        written = next(one for one in lines if one.label == "front squat").text_edit
        assert isinstance(written, types.TextEdit)
        assert written.new_text.startswith("{exercise: front squat, sets: ${1:2}, reps: ${2:8-12}, ")
