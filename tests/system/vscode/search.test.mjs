// Where the extension looks for the server, tried without an editor.
import assert from "node:assert/strict";
import { test } from "node:test";
import { candidates, find, isOlder, updateOf } from "../../../lint/editor/vscode/src/search.js";

const AROUND = {
  setting: "",
  folders: ["/team"],
  interpreter: "",
  env: { PATH: "/near/bin:/far/bin" },
  home: "/ann",
  platform: "linux",
  trusted: true,
  real: (path) => path,
  isThere: () => false,
  wanted: "0.1.0",
};

const around = (changes) => ({ ...AROUND, ...changes });

test("the chosen Python comes first, then the folders' environments, the surrounding ones, and PATH", () => {
  const env = { VIRTUAL_ENV: "/ann/training", CONDA_PREFIX: "/conda", PATH: "/near/bin:/far/bin" };
  assert.deepEqual(candidates(around({ env, interpreter: "/pythons/3.12/bin/python", folders: ["/team", "/club"] })), [
    "/pythons/3.12/bin/spotline",
    "/team/.venv/bin/spotline",
    "/team/venv/bin/spotline",
    "/team/env/bin/spotline",
    "/club/.venv/bin/spotline",
    "/club/venv/bin/spotline",
    "/club/env/bin/spotline",
    "/ann/training/bin/spotline",
    "/conda/bin/spotline",
    "/near/bin/spotline",
    "/far/bin/spotline",
  ]);
});

test("each place is tried once", () => {
  const env = { VIRTUAL_ENV: "/team/.venv", PATH: "/team/.venv/bin:/far/bin" };
  assert.deepEqual(candidates(around({ env, interpreter: "/team/.venv/bin/python" })), [
    "/team/.venv/bin/spotline",
    "/team/venv/bin/spotline",
    "/team/env/bin/spotline",
    "/far/bin/spotline",
  ]);
});

test("on Windows programs stand in Scripts and end in .exe, but not beside every Python", () => {
  const env = { PATH: "C:/tools;D:/tools" };
  assert.deepEqual(
    candidates(around({ env, platform: "win32", folders: ["C:/team"], interpreter: "C:/conda/python.exe" })),
    [
      "C:\\conda\\spotline.exe",
      "C:\\conda\\Scripts\\spotline.exe",
      "C:\\team\\.venv\\Scripts\\spotline.exe",
      "C:\\team\\venv\\Scripts\\spotline.exe",
      "C:\\team\\env\\Scripts\\spotline.exe",
      "C:\\tools\\spotline.exe",
      "D:\\tools\\spotline.exe",
    ],
  );
});

test("the setting is followed alone, in each way to write it", () => {
  const at = (setting, changes) => candidates(around({ setting, ...changes }));
  assert.deepEqual(at("/ann/bin/spotline"), ["/ann/bin/spotline"]);
  assert.deepEqual(at("~/bin/spotline"), ["/ann/bin/spotline"]);
  assert.deepEqual(at("${workspaceFolder}/tools/spotline"), ["/team/tools/spotline"]);
  assert.deepEqual(at("tools/spotline"), ["/team/tools/spotline"]);
  assert.deepEqual(at("./tools/../spotline"), ["/team/spotline"]);
  assert.deepEqual(at("tools/spotline", { folders: [] }), []);
  assert.deepEqual(at("spotline-next"), ["/near/bin/spotline-next", "/far/bin/spotline-next"]);
});

test("a folder of PATH that depends on where one stands is passed over", () => {
  const env = { PATH: ".::bin:/far/bin" };
  assert.deepEqual(candidates(around({ env, folders: [] })), ["/far/bin/spotline"]);
  assert.deepEqual(candidates(around({ env: {}, folders: [] })), []);
});

test("nothing inside a workspace that is not trusted is run, by whatever way it is come to", () => {
  const links = {
    "/ann/bin/spotline": "/team/tools/spotline",
    "/shortcut/bin/spotline": "/team/tools/spotline",
    "/linked": "/real/linked",
  };
  const distrusted = around({
    trusted: false,
    folders: ["/team", "/linked"],
    interpreter: "/team/.venv/bin/python",
    env: {
      VIRTUAL_ENV: "/shortcut",
      CONDA_PREFIX: "/conda",
      PATH: "/ann/bin:/team/bin:/team/../team/bin:/real/linked/bin:/team-tools/bin:/far/bin",
    },
    real: (path) => links[path] ?? path,
  });
  assert.deepEqual(candidates(distrusted), [
    "/conda/bin/spotline",
    "/team-tools/bin/spotline",
    "/far/bin/spotline",
  ]);
  assert.deepEqual(candidates({ ...distrusted, setting: "tools/spotline" }), []);
  assert.deepEqual(candidates({ ...distrusted, setting: "/opt-like/spotline" }), ["/opt-like/spotline"]);
});

test("a folder of the workspace whose name begins with dots is inside it", () => {
  const at = (PATH, changes) => candidates(around({ trusted: false, env: { PATH }, ...changes }));
  assert.deepEqual(at("/team/..tools/bin:/team/.../bin:/team/../bin:/bin"), ["/bin/spotline"]);
  assert.deepEqual(at("/team/tools/../../bin"), ["/bin/spotline"]);
  assert.deepEqual(at("/"), ["/spotline"]);
  assert.deepEqual(at("/team"), []);
});

test("case tells no folders apart on Windows and macOS", () => {
  const at = (platform, folder, PATH) => candidates(around({ trusted: false, platform, folders: [folder], env: { PATH } }));
  assert.deepEqual(at("win32", "C:\\Team", "c:\\team\\..tools;C:\\TEAM\\bin;C:\\team-tools;D:\\team"), [
    "C:\\team-tools\\spotline.exe",
    "D:\\team\\spotline.exe",
  ]);
  assert.deepEqual(at("darwin", "/Team/Ru\u0308ckblick", "/team/r\u00fcckblick/bin:/team/bin"), ["/team/bin/spotline"]);
  assert.deepEqual(at("linux", "/Team", "/team/bin"), ["/team/bin/spotline"]);
});

const whole = { version: "1.2.0", editor: true };
const bare = { version: "1.1.0", editor: false };
const answers = (known) => async (command) => known[command] ?? null;

test("the first that answers and can serve an editor is taken, and nothing asked after it", async () => {
  const asked = [];
  const known = answers({ "/team/venv/bin/spotline": bare, "/near/bin/spotline": whole, "/far/bin/spotline": whole });
  const found = await find(AROUND, (command) => (asked.push(command), known(command)));
  assert.deepEqual(found, { command: "/near/bin/spotline", version: "1.2.0" });
  assert.equal(asked.at(-1), "/near/bin/spotline");
});

test("where none answers, one sentence says how to get it", async () => {
  const cases = [
    [AROUND, {}, "in this workspace's Python environment"],
    [AROUND, { "/team/venv/bin/spotline": bare, "/far/bin/spotline": bare }, "/team/venv/bin/spotline has no editor part"],
    [around({ setting: "/ann/bin/spotline" }), {}, "/ann/bin/spotline"],
    [around({ trusted: false }), {}, "trust it"],
  ];
  for (const [surroundings, known, wanted] of cases) {
    const { absent, command } = await find(surroundings, answers(known));
    assert.equal(command, undefined);
    assert.ok(absent.includes(wanted), absent);
    assert.ok(absent.includes('pip install "spotline[editor]"'), absent);
    assert.match(absent, /^[^.!?\n]*(?:\.[a-z/][^.!?\n]*)*\.$/, "one sentence");
    assert.ok(absent.length < 130, absent);
  }
});

test("an old version runs, and the command that updates it is said", async () => {
  const here = around({ setting: "/team/.venv/bin/spotline", isThere: (path) => path === "/team/.venv/bin/python" });
  const found = await find({ ...here, wanted: "0.10.0" }, async () => ({ version: "0.9.2", editor: true }));
  const update = '/team/.venv/bin/python -m pip install --upgrade "spotline[editor]"';
  assert.deepEqual(found, {
    command: "/team/.venv/bin/spotline",
    version: "0.9.2",
    update,
    old: `spotline 0.9.2 is older than this extension (0.10.0): run ${update}`,
  });
  for (const version of ["0.10.0", "0.10.1", "1.0"])
    assert.deepEqual(await find({ ...here, wanted: "0.10.0" }, async () => ({ version, editor: true })), {
      command: "/team/.venv/bin/spotline",
      version,
    });
});

test("versions are compared number by number", () => {
  assert.ok(isOlder("0.9", "0.10"));
  assert.ok(isOlder("0.1", "0.1.1"));
  assert.ok(!isOlder("1.0.0", "1.0"));
  assert.ok(!isOlder("2.0.0rc1", "1.9.9"));
});

test("what installed a spotline updates it", () => {
  const real = () => "/ann/.local/share/pipx/venvs/spotline/bin/spotline";
  assert.equal(updateOf(around({ real }), "/ann/.local/bin/spotline"), "pipx upgrade spotline");
  const tool = () => "/ann/.local/share/uv/tools/spotline/bin/spotline";
  assert.equal(updateOf(around({ real: tool }), "/ann/.local/bin/spotline"), "uv tool upgrade spotline");
  assert.equal(updateOf(around(), "/usr/bin/spotline"), 'pip install --upgrade "spotline[editor]"');
  const spaced = around({ isThere: () => true });
  assert.match(updateOf(spaced, "/my team/bin/spotline"), /^"\/my team\/bin\/python" -m pip /);
});
