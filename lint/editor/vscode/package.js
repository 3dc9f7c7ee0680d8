// Packages the extension as dist/spotline.vsix. What stands elsewhere in the project - the version, the schemas, the
// licence - is taken from there, so it stands there only.
import { execFileSync } from "node:child_process";
import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { icon } from "./icon.js";

const here = path.dirname(fileURLToPath(import.meta.url));
const project = path.resolve(here, "../../..");
const staged = path.join(here, "dist", "extension");
const python = process.platform === "win32" ? "python" : "python3";

function stage(name, content) {
  writeFileSync(path.join(staged, name), content);
}

function manifest() {
  const { devDependencies, private: _, scripts, type, ...kept } = JSON.parse(
    readFileSync(path.join(here, "package.json"), "utf8"),
  );
  const version = /VERSION = "(.+)"/.exec(readFileSync(path.join(project, "lint/version.py"), "utf8"))[1];
  return JSON.stringify({ ...kept, version }, null, 2);
}

/** A schema in one piece, as `spotline schema` prints it. */
function schema(name) {
  const program = "import schema, sys; sys.stdout.write(schema.text(sys.argv[1]))";
  const env = { ...process.env, PYTHONUTF8: "1", PYTHONDONTWRITEBYTECODE: "1" };
  return execFileSync(python, ["-c", program, name], { cwd: project, env });
}

/** The licences of the packages that were bundled. */
function notices(inputs) {
  const names = Object.keys(inputs).map((file) => /.*node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(file)?.[0]);
  return [...new Set(names.filter(Boolean))]
    .sort()
    .map((folder) => {
      const inside = path.join(here, folder);
      const { name, version } = JSON.parse(readFileSync(path.join(inside, "package.json"), "utf8"));
      const licence = readdirSync(inside).find((file) => /^licen[cs]e/i.test(file));
      return `${name} ${version}\n\n${readFileSync(path.join(inside, licence), "utf8").trim()}\n`;
    })
    .join(`\n${"-".repeat(80)}\n\n`);
}

rmSync(path.join(here, "dist"), { recursive: true, force: true });
mkdirSync(path.join(staged, "schemas"), { recursive: true });
const { metafile } = await build({
  absWorkingDir: here,
  entryPoints: ["src/extension.js"],
  outfile: path.join(staged, "extension.cjs"),
  bundle: true,
  external: ["vscode"],
  format: "cjs",
  metafile: true,
  minify: true,
  platform: "node",
  target: "node18",
});
stage("package.json", manifest());
stage("icon.png", icon());
stage("THIRD-PARTY-NOTICES.txt", notices(metafile.inputs));
for (const name of ["programme", "athlete", "exercises", "team"]) stage(`schemas/${name}.json`, schema(name));
for (const name of ["README.md", "CHANGELOG.md", "media"]) {
  cpSync(path.join(here, name), path.join(staged, name), { recursive: true });
}
cpSync(path.join(project, "LICENSE"), path.join(staged, "LICENSE"));
execFileSync(
  process.execPath,
  [
    path.join(here, "node_modules/@vscode/vsce/vsce"),
    "package",
    "--allow-missing-repository",
    "--no-dependencies",
    "--out",
    path.join(here, "dist/spotline.vsix"),
  ],
  { cwd: staged, stdio: "inherit" },
);
