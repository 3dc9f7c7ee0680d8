// Asks a command whether it is spotline, and whether it can serve an editor.
import { execFile } from "node:child_process";

/** Milliseconds that a cold start may take. */
const PATIENCE = 20_000;

/** `{version, editor}` of a command, or null where no spotline answers. */
export async function ask(command) {
  const version = (await printed(command, "--version"))?.match(/^spotline (\S+)\s*$/)?.[1];
  if (!version) return null;
  return { version, editor: (await printed(command, "editor", "--version")) !== null };
}

/** What a command prints, or null where it cannot be run or fails. */
function printed(command, ...words) {
  return new Promise((done) => {
    execFile(command, words, { timeout: PATIENCE, windowsHide: true }, (fault, text) => done(fault ? null : text));
  });
}
