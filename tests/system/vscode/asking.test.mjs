// Whether a command is taken for spotline: real programs are asked.
import assert from "node:assert/strict";
import { chmodSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { after, test } from "node:test";
import { ask } from "../../../lint/editor/vscode/src/asking.js";

const folder = mkdtempSync(path.join(tmpdir(), "asking-"));
after(() => rmSync(folder, { recursive: true }));

function program(name, script) {
  const file = path.join(folder, name);
  writeFileSync(file, `#!/bin/sh\n${script}\n`);
  chmodSync(file, 0o755);
  return file;
}

test("the command of this Python answers with its version, and can serve an editor", async () => {
  const answer = await ask(process.env.SPOTLINE);
  assert.match(answer.version, /^\d+\.\d+\.\d+$/);
  assert.equal(answer.editor, true);
});

test("one without the editor part says so", async () => {
  const command = program("bare", '[ "$1" = --version ] && echo "spotline 1.2.3" || exit 2');
  assert.deepEqual(await ask(command), { version: "1.2.3", editor: false });
});

test("another program, one that fails and none at all are no spotline", async () => {
  assert.equal(await ask(program("other", "echo stagehand 1.0")), null);
  assert.equal(await ask(program("broken", "echo spotline 1.0; exit 1")), null);
  assert.equal(await ask(path.join(folder, "nothing")), null);
});
