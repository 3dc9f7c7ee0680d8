// Keys and values from the JSON Schemas, only while no server runs.
import { readFileSync } from "node:fs";
import path from "node:path";
import * as vscode from "vscode";
import { offered, schemaOf } from "./schemas.js";

/** An extension that reads the same schemas, and completes from them itself. */
const YAML = "redhat.vscode-yaml";

const KINDS = { key: vscode.CompletionItemKind.Property, value: vscode.CompletionItemKind.Value };

export class Fallback {
  #folder;
  #selector;
  #registered;

  /** `folder` holds the schemas; `selector` says which documents they are for. */
  constructor(folder, selector) {
    this.#folder = folder;
    this.#selector = selector;
  }

  start() {
    if (vscode.extensions.getExtension(YAML)) return;
    this.#registered ??= vscode.languages.registerCompletionItemProvider(this.#selector, this, " ", "{", "[");
  }

  stop() {
    this.#registered?.dispose();
    this.#registered = undefined;
  }

  dispose() {
    this.stop();
  }

  provideCompletionItems(document, position) {
    const name = schemaOf(path.basename(document.fileName));
    if (!name) return [];
    const schema = JSON.parse(readFileSync(path.join(this.#folder, `${name}.json`), "utf8"));
    const lines = document.getText().split(/\r?\n/);
    return offered(schema, lines, position.line, position.character).map(({ label, insert, kind, detail, start }) => {
      const item = new vscode.CompletionItem(label, KINDS[kind]);
      item.insertText = insert;
      item.documentation = detail;
      if (kind === "key") {
        item.command = { command: "editor.action.triggerSuggest", title: "Values", arguments: [{ auto: true }] };
      }
      item.range = new vscode.Range(position.line, start, position.line, position.character);
      return item;
    });
  }
}
