// New lines: where the next key or item belongs, and how a list is left.
import * as vscode from "vscode";
import { isEmptyItem, leftList, listKeys, newLineRules } from "./newlines.js";

export class Lines {
  #isOurs;
  #subscriptions;

  /** `schemas` say which keys hold lists; `isOurs(document)` whether a document is one of those reviewed. */
  constructor(schemas, isOurs) {
    this.#isOurs = isOurs;
    const onEnterRules = newLineRules(listKeys(schemas)).map(({ before, after, begin }) => ({
      beforeText: before,
      afterText: after,
      action: { indentAction: vscode.IndentAction.None, appendText: begin },
    }));
    this.#subscriptions = vscode.Disposable.from(
      vscode.languages.setLanguageConfiguration("yaml", { onEnterRules }),
      vscode.window.onDidChangeTextEditorSelection(({ textEditor }) => this.#look(textEditor)),
      vscode.window.onDidChangeActiveTextEditor((editor) => this.#look(editor)),
      vscode.commands.registerTextEditorCommand("spotline.leaveList", (editor) => this.#leave(editor)),
    );
  }

  dispose() {
    this.#subscriptions.dispose();
  }

  /** Notes whether Enter would leave a list: on an item with nothing in it. */
  #look(editor) {
    const isThere =
      editor !== undefined &&
      editor.selections.length === 1 &&
      editor.selection.isEmpty &&
      this.#isOurs(editor.document) &&
      isEmptyItem(editor.document.lineAt(editor.selection.active.line).text);
    vscode.commands.executeCommand("setContext", "spotline.onEmptyItem", isThere);
  }

  async #leave(editor) {
    const { document, selection } = editor;
    const line = document.lineAt(selection.active.line);
    if (!isEmptyItem(line.text)) return; // the caret was elsewhere by the time that the key came
    const lines = document.getText().split(/\r?\n/);
    await editor.edit((edit) => edit.replace(line.range, leftList(lines, line.lineNumber)));
  }
}
