// Packages the extension: `node package.js [--repository ADDRESS] [--to FOLDER]`, by default as dist/spotline.vsix. What stands elsewhere in the project - the version, the schemas, the
// licence - is taken from there, so it stands there only. The listing shows pictures by their address in the repository
// alone: without one they are left out of its text, and stand in the walkthrough only.
import { execFileSync } from "node:child_process";
import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { build } from "esbuild";
import { icon } from "./icon.js";

const here = path.dirname(fileURLToPath(import.meta.url));
const project = path.resolve(here, "../../..");
const { values: options } = parseArgs({ options: { repository: { type: "string" }, to: { type: "string" } } });
const repository = options.repository?.replace(/\/+$/, "");
const target = path.resolve(options.to ?? path.join(here, "dist"));
const staged = path.join(target, "extension");
const place = path.relative(project, here).replaceAll(path.sep, "/");
const python = process.platform === "win32" ? "python" : "python3";

function stage(name, content) {
  writeFileSync(path.join(staged, name), content);
}

function manifest() {
  const { devDependencies, private: _, scripts, type, ...kept } = JSON.parse(
    readFileSync(path.join(here, "package.json"), "utf8"),
  );
  const version = /VERSION = "(.+)"/.exec(readFileSync(path.join(project, "lint/version.py"), "utf8"))[1];
  const addresses = repository && {
    homepage: repository,
    repository: { type: "git", url: `${repository}.git` },
    bugs: { url: `${repository}/issues` },
  };
  return JSON.stringify({ ...kept, version, ...addresses }, null, 2);
}

/** The text of the listing; without an address for its pictures, without them. */
function readme() {
  const text = readFileSync(path.join(here, "README.md"), "utf8");
  return repository ? text : text.replace(/^!\[.*\]\(media\/.*\)\n\n/gm, "");
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

rmSync(target, { recursive: true, force: true });
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
stage("README.md", readme());
for (const name of ["CHANGELOG.md", "media"]) {
  cpSync(path.join(here, name), path.join(staged, name), { recursive: true });
}
cpSync(path.join(project, "LICENSE"), path.join(staged, "LICENSE"));
execFileSync(
  process.execPath,
  [
    path.join(here, "node_modules/@vscode/vsce/vsce"),
    "package",
    ...(repository
      ? ["--baseContentUrl", `${repository}/blob/main/${place}`, "--baseImagesUrl", `${repository}/raw/main/${place}`]
      : ["--allow-missing-repository"]),
    "--no-dependencies",
    "--out",
    path.join(target, "spotline.vsix"),
  ],
  { cwd: staged, stdio: "inherit" },
);
