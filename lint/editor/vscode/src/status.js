// The server's state in the status bar: which version was found where, and what can be done.
import * as vscode from "vscode";

const LOOKS = {
  starting: () => ["$(sync~spin) spotline", "Looking for spotline and starting it."],
  running: ({ version, command }) => [`$(check) spotline ${version}`, `spotline ${version} runs: ${command}`],
  old: ({ version, old }) => [`$(arrow-up) spotline ${version} is old`, old],
  absent: ({ absent }) => ["$(warning) spotline is not running", absent],
};

export class Status {
  #item = vscode.window.createStatusBarItem("spotline.server", vscode.StatusBarAlignment.Right, 50);
  #isOurs;
  #now = { state: "" };
  #subscriptions;

  /** `isOurs(document)` says whether the server is for a document: elsewhere nothing is shown. */
  constructor(isOurs) {
    this.#isOurs = isOurs;
    this.#item.name = "spotline";
    this.#item.command = "spotline.status";
    this.#subscriptions = vscode.Disposable.from(
      this.#item,
      vscode.commands.registerCommand("spotline.status", () => this.#choose()),
      vscode.window.onDidChangeActiveTextEditor(() => this.#show()),
    );
  }

  dispose() {
    this.#subscriptions.dispose();
  }

  /** `{state, ...}`: starting, running (`version`, `command`), old (`old`, `update` too) or absent (`absent`). */
  says(status) {
    this.#now = status;
    const [text, tooltip] = LOOKS[status.state](status);
    const isCalm = status.state === "running" || status.state === "starting";
    this.#item.text = text;
    this.#item.tooltip = `${tooltip}\nClick for what can be done.`;
    this.#item.accessibilityInformation = { label: `${text.replace(/^\S+ /, "")}. ${tooltip}` };
    this.#item.backgroundColor = isCalm ? undefined : new vscode.ThemeColor("statusBarItem.warningBackground");
    this.#show();
  }

  #show() {
    const document = vscode.window.activeTextEditor?.document;
    if (this.#now.state && document && this.#isOurs(document)) this.#item.show();
    else this.#item.hide();
  }

  async #choose() {
    const { state, update = "", absent, old, command } = this.#now;
    const run = (name, ...words) => () => vscode.commands.executeCommand(name, ...words);
    const install = 'pip install "spotline[editor]"';
    const copied = update || (state === "absent" ? install : "");
    const choices = [
      ...(copied ? [{ label: `Copy: ${copied}`, act: () => vscode.env.clipboard.writeText(copied) }] : []),
      { label: "Restart the server", act: run("spotline.restart") },
      { label: "Show the output", act: run("spotline.showOutput") },
      { label: "Set the path of spotline", act: run("workbench.action.openSettings", "spotline.path") },
      { label: "Begin with spotline", act: run("workbench.action.openWalkthrough", "spotline.spotline#begin", false) },
    ];
    const chosen = await vscode.window.showQuickPick(choices, { placeHolder: old ?? absent ?? command ?? "spotline" });
    await chosen?.act();
  }
}
