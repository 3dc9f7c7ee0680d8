// The extension: finds the server, runs it, and shows what it says.
import { existsSync, readFileSync, realpathSync } from "node:fs";
import { homedir } from "node:os";
import * as vscode from "vscode";
import { ExecuteCommandRequest, LanguageClient, RevealOutputChannelOn } from "vscode-languageclient/node";
import { ask } from "./asking.js";
import { Fallback } from "./fallback.js";
import { Lines } from "./lines.js";
import { Pages } from "./pages.js";
import { find } from "./search.js";
import { Status } from "./status.js";

const OURS = [
  { scheme: "file", pattern: "**/*.{programme,athlete,exercises}.{yaml,yml}" },
  { scheme: "file", pattern: "**/spotline.yaml" },
  { scheme: "untitled", pattern: "**/*.{programme,athlete,exercises}.{yaml,yml}" },
];
const UNTITLED = { scheme: "untitled", language: "yaml" };
const PYTHON = "ms-python.python";

/** Opens the list of proposals, and says nothing where there are none. */
const NEXT_LIST = { command: "editor.action.triggerSuggest", title: "Values", arguments: [{ auto: true }] };

let server;

export async function activate(context) {
  server = new Server(context);
  await server.meet(vscode.workspace.textDocuments);
}

export function deactivate() {
  return server?.stop();
}

/** The one server of this window, from the first file of ours on. */
class Server {
  #client;
  #output = vscode.window.createOutputChannel("spotline", { log: true });
  #status = new Status(isOurs);
  #pages = new Pages((command, words) => this.#ask(command, words));
  #fallback;
  #python;
  #settled = Promise.resolve();
  #isSettling = false;
  #isStale = false;
  #isWanted = false;
  #told = new Set();
  #version;

  constructor(context) {
    const schemas = context.asAbsolutePath("schemas");
    this.#version = context.extension.packageJSON.version;
    this.#fallback = new Fallback(schemas, [...OURS, UNTITLED]);
    context.subscriptions.push(
      this.#output,
      this.#status,
      this.#fallback,
      this.#pages.register(),
      new Lines(
        ["programme", "athlete", "exercises", "team"].map((name) =>
          JSON.parse(readFileSync(`${schemas}/${name}.json`, "utf8")),
        ),
        isOurs,
      ),
      { dispose: () => this.#python?.dispose() },
      vscode.commands.registerCommand("spotline.restart", () => this.#restartAsAsked()),
      vscode.commands.registerCommand("spotline.showOutput", () => this.#output.show(true)),
      vscode.commands.registerCommand("spotline.newProgramme", newProgramme),
      vscode.commands.registerCommand("spotline.showRule", (...words) => this.#showRule(...words)),
      vscode.commands.registerCommand("spotline.showChanges", () => this.#showChanges()),
      vscode.workspace.onDidOpenTextDocument((document) => this.meet([document])),
      vscode.workspace.onDidSaveTextDocument((document) => this.meet([document])),
      vscode.workspace.onDidChangeTextDocument(({ document }) => !this.#isWanted && this.meet([document])),
      vscode.workspace.onDidChangeConfiguration((change) => this.#configured(change)),
      vscode.workspace.onDidGrantWorkspaceTrust(() => this.#isWanted && this.restart()),
    );
  }

  /** Starts the server at the first document of ours; looks again for one that was absent. */
  async meet(documents) {
    if (this.#client || !documents.some(isOurs)) return;
    this.#isWanted = true;
    await this.#settle();
  }

  restart() {
    this.#isStale = true;
    return this.#settle();
  }

  /** Stops what is stale, starts what is not there: one after the other, however often it is asked for. */
  #settle() {
    if (!this.#isSettling) {
      this.#isSettling = true;
      this.#settled = this.#settled.then(async () => {
        this.#isSettling = false;
        if (this.#isStale) await this.stop();
        this.#isStale = false;
        if (!this.#client) await this.#start();
      });
    }
    return this.#settled;
  }

  async stop() {
    const client = this.#client;
    this.#client = undefined;
    await client?.dispose();
  }

  async #start() {
    this.#status.says({ state: "starting" });
    const found = await find(await this.#around(), ask);
    if (found.absent) return this.#isAbsent(found.absent);
    this.#output.info(`spotline ${found.version}: ${found.command}`);
    this.#client = this.#clientOf(found.command);
    try {
      await this.#client.start();
    } catch (fault) {
      this.#output.error(String(fault));
      return this.#isAbsent(`spotline at ${found.command} does not start; its output says more.`);
    }
    this.#fallback.stop();
    this.#says({ state: found.old ? "old" : "running", ...found });
    if (found.old) this.#tell(found.old, "Copy the command", () => vscode.env.clipboard.writeText(found.update));
  }

  #isAbsent(sentence) {
    this.#output.warn(sentence);
    this.#client = undefined;
    this.#fallback.start();
    this.#says({ state: "absent", absent: sentence });
    this.#tell(sentence, "Open the setting", () =>
      vscode.commands.executeCommand("workbench.action.openSettings", "spotline.path"),
    );
  }

  /** Tells a sentence once, with a button for what can be done. */
  async #tell(sentence, button, act) {
    if (this.#told.has(sentence)) return;
    this.#told.add(sentence);
    if ((await vscode.window.showWarningMessage(sentence, button)) === button) act();
  }

  #says(status) {
    this.#status.says(status);
    vscode.commands.executeCommand("setContext", "spotline.running", this.#client !== undefined);
  }

  async #around() {
    const folders = vscode.workspace.workspaceFolders ?? [];
    return {
      setting: setting("path").trim(),
      folders: folders.filter(({ uri }) => uri.scheme === "file").map(({ uri }) => uri.fsPath),
      interpreter: await this.#interpreter(folders[0]?.uri),
      env: process.env,
      home: homedir(),
      platform: process.platform,
      trusted: vscode.workspace.isTrusted,
      real,
      isThere: existsSync,
      wanted: this.#version,
    };
  }

  /** The Python chosen for the workspace, where an extension is there that has it chosen; else "". */
  async #interpreter(folder) {
    const extension = vscode.extensions.getExtension(PYTHON);
    if (!extension) return "";
    try {
      const { environments } = await extension.activate();
      this.#python ??= environments.onDidChangeActiveEnvironmentPath(() => this.restart());
      const chosen = await environments.resolveEnvironment(environments.getActiveEnvironmentPath(folder));
      return chosen?.executable.uri?.fsPath ?? "";
    } catch (fault) {
      this.#output.warn(`The chosen Python is not known: ${fault}`);
      return "";
    }
  }

  #clientOf(command) {
    return new LanguageClient(
      "spotline",
      "spotline",
      { command, args: ["editor"] },
      {
        documentSelector: [...OURS, UNTITLED],
        outputChannel: this.#output,
        revealOutputChannelOn: RevealOutputChannelOn.Never,
        initializationOptions: { ...options(), showsMarkdown: true },
        markdown: { isTrusted: { enabledCommands: ["spotline.rule", "spotline.week", "spotline.changes"] } },
        middleware: {
          executeCommand: (name, words, next) =>
            this.#pages.has(name) ? this.#pages.show(name, words) : next(name, words),
          provideCompletionItem: async (document, position, context, token, next) =>
            withValues(await next(document, position, context, token)),
          handleDiagnostics: (file, diagnostics, next) => {
            diagnostics.forEach((one) => linkToRule(one, file));
            next(file, diagnostics);
            this.#pages.refresh(file);
          },
          workspace: {
            // A server about to be stopped is told nothing more.
            didChangeConfiguration: async (sections, next) => (this.#isStale ? undefined : next(sections)),
          },
        },
      },
    );
  }

  #ask(command, words) {
    return this.#client?.sendRequest(ExecuteCommandRequest.type, { command, arguments: words });
  }

  #configured(change) {
    if (this.#isWanted && change.affectsConfiguration("spotline.path")) this.restart();
  }

  #restartAsAsked() {
    this.#isWanted = true;
    this.#told.clear();
    return this.restart();
  }

  /** Shows what changed in the file at hand since the last commit. */
  async #showChanges() {
    const file = vscode.window.activeTextEditor?.document.uri.toString();
    if (file) await this.#pages.show("spotline.changes", [file]);
  }

  /**
   * Shows a rule's page as the settings for a file have it: of the rule named, else of the one found at the cursor,
   * else of one chosen from those in the file.
   */
  async #showRule(name, file = vscode.window.activeTextEditor?.document.uri.toString()) {
    const rule = name ?? (await chosenRule(vscode.window.activeTextEditor));
    if (rule) await this.#pages.show("spotline.rule", [rule, file]);
  }
}

/** Has the list of values open once a key is taken. */
function withValues(proposed) {
  for (const item of Array.isArray(proposed) ? proposed : (proposed?.items ?? [])) {
    const isKey = item.kind === vscode.CompletionItemKind.Property;
    if (isKey && `${item.insertText}`.endsWith(": ")) item.command = NEXT_LIST;
  }
  return proposed;
}

/** A programme that is not saved yet, and what the server offers at its beginning. */
async function newProgramme() {
  const folder = vscode.workspace.workspaceFolders?.[0]?.uri.path ?? homedir();
  const address = vscode.Uri.from({ scheme: "untitled", path: `${folder}/new.programme.yaml` });
  const document = await vscode.workspace.openTextDocument(address);
  await vscode.window.showTextDocument(document);
  await server.meet([document]);
  await vscode.commands.executeCommand("editor.action.triggerSuggest");
}

async function chosenRule(editor) {
  if (!editor) return undefined;
  const found = vscode.languages.getDiagnostics(editor.document.uri).filter(({ source }) => source === "spotline");
  const here = found.filter(({ range }) => range.intersection(editor.selection));
  const rules = new Map((here.length ? here : found).map((one) => [nameOf(one), one]));
  if (rules.size <= 1) return [...rules.keys()][0];
  const items = [...rules].map(([label, { message }]) => ({ label, detail: message.split("\n", 1)[0] }));
  return (await vscode.window.showQuickPick(items, { placeHolder: "Whose page?" }))?.label;
}

function nameOf({ code }) {
  return typeof code === "object" ? code.value : code;
}

/** Has a finding's rule name open the rule's page, unless the team's own pages have an address. */
function linkToRule(diagnostic, file) {
  const name = diagnostic.code;
  if (typeof name !== "string") return;
  const words = encodeURIComponent(JSON.stringify([name, file.toString()]));
  diagnostic.code = { value: name, target: vscode.Uri.parse(`command:spotline.showRule?${words}`) };
}

/** Whether a document is one of those reviewed; a new one without a name is, once it names its programme. */
function isOurs(document) {
  if (vscode.languages.match(OURS, document)) return true;
  return vscode.languages.match(UNTITLED, document) > 0 && /^programme[ \t]*:/m.test(document.getText());
}

function setting(name) {
  return vscode.workspace.getConfiguration("spotline").get(name);
}

/** What the server is told of the settings. */
function options() {
  return {
    hints: { sets: setting("hints.sets"), kilograms: setting("hints.kilograms") },
    lenses: setting("lenses"),
  };
}

function real(path) {
  try {
    return realpathSync(path);
  } catch {
    return path;
  }
}
