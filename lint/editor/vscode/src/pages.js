// Pages that the server writes as Markdown (a rule's page, a week's table), shown beside the editor.
// An address says which command writes the page, so a page needs no file and is written anew when asked for.
import * as vscode from "vscode";

const SCHEME = "spotline";

/** Server commands whose answer is a page -> its title. */
const TITLES = {
  "spotline.rule": (name) => name,
  "spotline.week": (file, week) => `Week ${week}`,
  "spotline.changes": () => "Since the last commit",
};

export class Pages {
  #changed = new vscode.EventEmitter();
  #write;

  onDidChange = this.#changed.event;

  /** `write(command, words)` asks the server for the Markdown of a page. */
  constructor(write) {
    this.#write = write;
  }

  register() {
    return vscode.Disposable.from(
      this.#changed,
      vscode.workspace.registerTextDocumentContentProvider(SCHEME, this),
    );
  }

  has(command) {
    return command in TITLES;
  }

  async show(command, words) {
    const path = `/${TITLES[command](...words)}.md`;
    const address = vscode.Uri.from({ scheme: SCHEME, path, query: JSON.stringify({ command, words }) });
    this.#changed.fire(address);
    await vscode.commands.executeCommand("markdown.showPreviewToSide", address);
  }

  async provideTextDocumentContent(address) {
    const { command, words } = JSON.parse(address.query);
    const page = await Promise.resolve(this.#write(command, words)).catch(() => null);
    return page ?? "This page cannot be shown: the output of spotline may say why.";
  }

  /** Has the open pages about a file written anew. */
  refresh(file) {
    for (const { uri } of vscode.workspace.textDocuments) {
      if (uri.scheme === SCHEME && JSON.parse(uri.query).words[0] === file.toString()) this.#changed.fire(uri);
    }
  }
}
