// Where the spotline command may be, best guess first. Nothing here knows the editor.
import path from "node:path";

/** Names that a workspace's Python environment usually has. */
const ENVIRONMENTS = [".venv", "venv", "env"];

/**
 * Paths at which the command may stand, in the order to try them, each once.
 *
 * `around` says where we are: `setting` (spotline.path, or ""), `folders` (of the workspace), `interpreter` (the
 * Python chosen for it, or ""), `env`, `home`, `platform` (as in process.platform), `trusted` (whether what lies
 * in the workspace may be run), `real` (a path with its links followed), `isThere` (whether a file is there) and
 * `wanted` (the version that the extension goes with).
 */
export function candidates(around) {
  const { delimiter, isAbsolute } = paths(around);
  const places = around.setting ? asSet(around) : guessed(around);
  const named = (around.env.PATH ?? "").split(delimiter).filter((folder) => isAbsolute(folder));
  const tried = places.flatMap((place) =>
    isAbsolute(place) ? [place] : named.map((folder) => paths(around).join(folder, place)),
  );
  return [...new Set(tried)].filter((place) => around.trusted || isOutside(place, around));
}

/**
 * The first candidate that answers: `{command, version}`, with `{old, update}` where it is older than
 * `around.wanted` - one sentence, and the command that updates it; else `{absent}`, how to get it.
 *
 * `ask(command)` resolves to its `{version, editor}` (`editor`: whether the server can run), or to null.
 */
export async function find(around, ask) {
  let lacking = "";
  for (const command of candidates(around)) {
    const answer = await ask(command);
    if (answer?.editor) return { command, version: answer.version, ...age(around, command, answer.version) };
    if (answer) lacking ||= command;
  }
  return { absent: howToGetIt(around, lacking) };
}

function howToGetIt({ setting, trusted }, lacking) {
  const install = 'pip install "spotline[editor]"';
  if (lacking) return `${lacking} has no editor part yet: run ${install} in its Python environment.`;
  if (setting) return `No spotline answers at ${setting}: run ${install} there, or change the setting.`;
  if (!trusted) return `No spotline is found outside this workspace: trust it, or run ${install} elsewhere.`;
  return `spotline is not found: run ${install} in this workspace's Python environment, or set its path.`;
}

function age(around, command, version) {
  if (!isOlder(version, around.wanted)) return {};
  const update = updateOf(around, command);
  return { old: `spotline ${version} is older than this extension (${around.wanted}): run ${update}`, update };
}

/** Whether a version, such as 0.9.2, comes before another. */
export function isOlder(version, other) {
  const numbers = (text) => text.split(".").map((part) => parseInt(part, 10) || 0);
  const [ones, others] = [numbers(version), numbers(other)];
  const at = others.findIndex((number, index) => number !== (ones[index] ?? 0));
  return at >= 0 && (ones[at] ?? 0) < others[at];
}

/** The command that updates a spotline, by where it is installed. */
export function updateOf(around, command) {
  const { dirname, join } = paths(around);
  const place = around.real(command).replaceAll("\\", "/");
  if (place.includes("/pipx/venvs/")) return "pipx upgrade spotline";
  if (place.includes("/uv/tools/")) return "uv tool upgrade spotline";
  const python = join(dirname(command), around.platform === "win32" ? "python.exe" : "python");
  const pip = around.isThere(python) ? `${quoted(python)} -m pip` : "pip";
  return `${pip} install --upgrade "spotline[editor]"`;
}

function quoted(file) {
  return /[\s&()]/.test(file) ? `"${file}"` : file;
}

function paths({ platform }) {
  return platform === "win32" ? path.win32 : path.posix;
}

/** The setting's path: `~` is the home, `${workspaceFolder}` and a relative path the first folder. */
function asSet(around) {
  const { isAbsolute, join, normalize } = paths(around);
  const [folder = ""] = around.folders;
  const named = around.setting
    .replace(/^~(?=$|[\\/])/, () => around.home)
    .replaceAll("${workspaceFolder}", folder);
  const isName = !/[\\/]/.test(named);
  if (isName || isAbsolute(named)) return [isName ? named : normalize(named)];
  return folder ? [join(folder, named)] : [];
}

function guessed(around) {
  const { dirname, join } = paths(around);
  const isWindows = around.platform === "win32";
  const program = isWindows ? "spotline.exe" : "spotline";
  const within = (environment) => join(environment, isWindows ? "Scripts" : "bin", program);
  const chosen = around.interpreter && dirname(around.interpreter);
  return [
    ...(chosen ? [join(chosen, program)] : []),
    ...(chosen && isWindows ? [within(chosen)] : []),
    ...around.folders.flatMap((folder) => ENVIRONMENTS.map((name) => within(join(folder, name)))),
    ...[around.env.VIRTUAL_ENV, around.env.CONDA_PREFIX].filter(Boolean).map(within),
    program,
  ];
}

/** Whether a place lies in no folder of the workspace, by its name as by where its links lead. */
function isOutside(place, around) {
  const { isAbsolute, relative, sep } = paths(around);
  const ways = (one) => [one, around.real(one)].map((way) => cased(way, around));
  return around.folders.every((folder) =>
    ways(place).every((one) =>
      ways(folder).every((top) => {
        const way = relative(top, one);
        return way === ".." || way.startsWith(`..${sep}`) || isAbsolute(way); // `..tools` is a name
      }),
    ),
  );
}

/** A path as its system compares it: macOS tells no case apart, nor how letters with marks are put together. */
function cased(way, { platform }) {
  return platform === "darwin" ? way.normalize("NFC").toLowerCase() : way;
}
