// Sits at VS Code in a browser as a coach would, and prints what there is to see, as JSON.
//   drive.mjs '{"url", "installed", "environment", "folder", "screens"}'
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import path from "node:path";

const { url, browser: program, installed, environment, folder, screens, only } = JSON.parse(process.argv[2]);
const { chromium } = createRequire(path.join(installed, "/"))("playwright-core");

const PATIENCE = 90_000;
const PROFILE = mkdtempSync(path.join(tmpdir(), "browser-"));
const QUIET = ["disable-background-networking", "disable-component-update", "disable-sync", "no-first-run"];
const PLAIN = ["no-sandbox", "disable-gpu", "disable-quic"];

const begun = Date.now();
const seen = { seconds: {} };
let page;

function took(what) {
  seen.seconds[what] = Math.round((Date.now() - begun) / 100) / 10;
}

let kept = 0;

/** Keeps a picture of the window, numbered in the order in which they are made. */
function keep(name) {
  kept += 1;
  return page.screenshot({ path: path.join(screens, `${String(kept).padStart(2, "0")}-${name}.png`) });
}

let pressed = 0;

function press(keys) {
  pressed += 1;
  return page.keyboard.press(keys);
}

function type(words) {
  pressed += words.length;
  return page.keyboard.type(words, { delay: 30 });
}

const plain = (text) => text.replace(/[\u00a0\u200a]/g, " ").replaceAll("\u200b", "");

/** Waits until something holds in the page: `condition` is asked again and again. */
async function until(condition, what) {
  const end = Date.now() + PATIENCE;
  for (;;) {
    const found = await condition();
    if (found) return found;
    if (Date.now() > end) throw new Error(`never seen: ${what}`);
    await page.waitForTimeout(100);
  }
}

const texts = async (selector) => (await page.locator(selector).allInnerTexts()).map(plain);
const labels = (selector) =>
  page.locator(selector).evaluateAll((all) => all.map((one) => one.getAttribute("aria-label") ?? ""));

/** The lines that the editor shows, from the top. */
async function lines() {
  const shown = await page.locator(".editor-group-container .view-lines .view-line").evaluateAll((all) =>
    all
      .map((line) => [line.getBoundingClientRect().top, line.textContent])
      .sort(([one], [other]) => one - other)
      .map(([, text]) => text),
  );
  return shown.map(plain);
}

/** The middle of a word in the first shown line that holds some text. */
async function place(text, word = text) {
  const find = ([text, word]) => {
    const same = (words) => words.replaceAll("\u00a0", " ");
    const line = [...document.querySelectorAll(".editor-group-container .view-line")].find((one) =>
      same(one.textContent).includes(text),
    );
    if (!line) return null;
    let from = same(line.textContent).indexOf(text) + text.indexOf(word) + Math.floor(word.length / 2);
    const walker = document.createTreeWalker(line, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) {
      const { length } = walker.currentNode;
      if (from < length) {
        const range = document.createRange();
        range.setStart(walker.currentNode, from);
        range.setEnd(walker.currentNode, from + 1);
        const { left, top, width, height } = range.getBoundingClientRect();
        return [left + width / 2, top + height / 2];
      }
      from -= length;
    }
    return null;
  };
  return until(() => page.evaluate(find, [text, word]), `the line "${text}"`);
}

async function click(text, word) {
  await page.mouse.click(...(await place(text, word)));
}

async function open(file) {
  await press("Control+p");
  await type(file);
  await page.locator(".quick-input-list .monaco-list-row", { hasText: file }).first().waitFor();
  await press("Enter");
  await page.locator(".tab.active", { hasText: file }).waitFor();
  await until(async () => (await lines()).length > 3, `the text of ${file}`);
}

/** Runs a command by its name; asked again where a page that was still loading took the keys. */
async function command(name) {
  const row = page.locator(".quick-input-list .monaco-list-row").getByText(name, { exact: true }).first();
  await until(async () => {
    await press("F1");
    await type(name);
    const isChosen = await row.click({ timeout: 8000 }).then(
      () => true,
      () => false,
    );
    if (!isChosen) await press("Escape");
    return isChosen;
  }, `the command "${name}"`);
}

async function hover(text, word) {
  await page.mouse.move(5, 5);
  await page.mouse.move(...(await place(text, word)), { steps: 3 });
  const rows = ".monaco-hover:not(.hidden) .hover-row";
  await page.locator(rows).first().waitFor();
  await until(async () => !(await texts(rows)).some((row) => /^Loading/.test(row)), "what loads on pointing");
  await page.waitForTimeout(400);
  return (await texts(rows)).join("\n");
}

async function completions() {
  await press("Control+Space");
  const rows = ".suggest-widget.visible .monaco-list-row";
  await page.locator(rows).first().waitFor();
  await page.waitForTimeout(400);
  return labels(rows);
}

const isSaved = () => until(async () => (await page.locator(".tab.active.dirty").count()) === 0, "the file saved");

async function save() {
  await press("Control+s");
  await isSaved();
}

/** The text of the page beside the editor, once it says what is waited for. */
async function preview(words) {
  return until(async () => {
    for (const frame of page.frames()) {
      const text = await frame.evaluate(() => document.body?.innerText ?? "").catch(() => "");
      const shown = plain(text).replace(/[^\S\n]+/g, " ");
      if (frame !== page.mainFrame() && shown.includes(words)) return shown;
    }
    return "";
  }, `a page that says "${words}"`);
}

/** The list of problems, opened over the whole window and closed again. */
async function problems() {
  await press("Control+Shift+m");
  await page.locator(".markers-panel .monaco-list-row").first().waitFor();
  await keep("problems");
  await command("View: Toggle Maximized Panel");
  await page.waitForTimeout(500);
  const rows = await texts(".markers-panel .monaco-list-row");
  await keep("all-problems");
  await command("View: Toggle Maximized Panel");
  await press("Control+j");
  return rows.map((row) => row.replace(/\s+/g, " "));
}

/** No server yet: what is said, once, and what is completed all the same. */
async function withoutServer() {
  await open("unbalanced.programme.yaml");
  took("file open");
  const toast = page.locator(".notification-toast", { hasText: "spotline" });
  await toast.waitFor();
  seen.absence = (await texts(".notification-toast .notification-list-item-message")).join("\n");
  seen.absentStatus = await page.locator(".statusbar-item", { hasText: "spotline" }).innerText();
  seen.absenceButtons = await texts(".notification-toast .notification-list-item-buttons-container .monaco-button");
  await page.waitForTimeout(400);
  await keep("no-server");
  await command("Notifications: Clear All Notifications");
  await click("programme: Beach");
  await press("Control+End");
  await type("ph");
  seen.schemaKeys = await completions();
  await keep("keys-from-the-schema");
  await press("Enter");
  seen.schemaValues = await completions();
  await press("Escape");
  await command("File: Revert File");
  await isSaved();
  await open("wil.athlete.yaml");
  await page.waitForTimeout(1500);
  seen.absenceAgain = await page.locator(".notification-toast").count();
}

/** The server is there from here on: an environment in the folder that has it. */
async function faults() {
  symlinkSync(environment, path.join(folder, ".venv"));
  await open("slips.programme.yaml");
  await page.locator(".monaco-editor .squiggly-error").first().waitFor();
  took("findings seen");
  seen.squiggles = await page.locator(".monaco-editor .squiggly-error, .monaco-editor .squiggly-warning").count();
  await page.waitForTimeout(1000);
  await keep("findings");
  seen.problems = await problems();
  seen.findingHover = await hover("back sqat");
  await keep("finding");

  await click("back sqat");
  await press("Control+.");
  const fixes = ".action-widget .monaco-list-row.action";
  await page.locator(fixes).first().waitFor();
  seen.fixes = await texts(fixes);
  await keep("fixes");
  await press("Enter");
  seen.fixed = await place("exercise: back squat").then(() => true);

  await click("sets: 40", "40");
  await until(async () => {
    await press("Control+."); // asked again where the editor was not done with the last change
    await page.locator(fixes).first().waitFor({ timeout: 8000 }).catch(() => null);
    for (const words of await texts(fixes)) {
      if (words.startsWith("Waive number-implausible here, with a reason")) return true;
      await press("ArrowDown");
    }
    await press("Escape");
    return false;
  }, "the waiver among the fixes");
  await press("Enter");
  await place("waive number-implausible");
  await type("it is a test of grip");
  seen.waiver = (await lines()).find((line) => line.includes("waive number-implausible"));
  await save();
  await page.waitForTimeout(800);
  await keep("fixed-and-waived");
}

/** A rule's page, from its name under the pointer. */
async function rulePage() {
  await hover("front squat, sets: 3, reps: 5, load: 180 %", "180");
  await page.locator(".monaco-hover:not(.hidden) a.code-link", { hasText: "more-reps-than-load-allows" }).first().click();
  seen.rulePage = await preview("more-reps-than-load-allows");
  await page.mouse.move(5, 5);
  await page.waitForTimeout(800);
  await keep("a-rule");
  await command("View: Close Editor");

  await click("bent-over row");
  await command("spotline: Show a Rule's Page");
  const picks = page.locator(".quick-input-list .monaco-list-row", { hasText: "exercise-sets-high" });
  await picks.waitFor();
  seen.rulePicks = await texts(".quick-input-list .monaco-list-row .label-name");
  await keep("which-rule");
  await picks.click();
  seen.chosenPage = await preview("exercise-sets-high");
  await command("View: Close Editor");
}

async function week() {
  await open("unbalanced.programme.yaml");
  await page.locator(".codelens-decoration a").first().waitFor();
  seen.lenses = await texts(".codelens-decoration a");
  await page.waitForTimeout(1500);
  seen.lines = await lines();
  await keep("week");
  seen.exerciseHover = await hover("exercise: leg extension", "extension");
  await keep("an-exercise");

  await page.locator(".codelens-decoration a").first().click();
  seen.table = await preview("quadriceps");
  await page.waitForTimeout(500);
  await keep("the-table");
  seen.tabs = await texts(".tab");
  await page.mouse.dblclick(...(await place("bench press, sets: 5", "5")));
  await type("6");
  seen.tableAfter = await preview("chest 21 over 21 at most 20 Mon, Tue");
  await command("File: Revert File");
  await isSaved();
  await page.locator(".tab", { hasText: "Preview" }).click();
  await command("View: Close Editor");
}

/** What is offered and told while a line is being written. */
async function typing() {
  await open("unbalanced.programme.yaml");
  await page.locator(".statusbar-item", { hasText: "spotline 0" }).waitFor();
  await click("exercise: seated cable row", "exercise");
  await press("End");
  await press("Enter");
  await type("{exercise: ham"); // Enter has put the dash there
  seen.exercises = await completions();
  await keep("exercises");
  await press("Escape");
  for (const _ of "ham") await press("Backspace");
  await type("back squat, sets: 3, reps: 5, load: 75 %, rest: 3 min}");
  await page.waitForTimeout(1500);
  seen.kilograms = (await lines()).find((line) => line.includes("75 %"));
  await keep("kilograms");
  await command("File: Revert File");
  await isSaved();
}

/** Keys pressed one after the other, each the name of a key or, in quotes, words to type. */
async function keys(...all) {
  for (const one of all) {
    if (one.startsWith('"')) await type(one.slice(1, -1));
    else await press(one);
    await page.waitForTimeout(150);
  }
}

/** Takes the first proposal once it is the one that is meant; with a name, keeps a picture of the list. */
async function take(label, name = "") {
  await page.locator(".suggest-widget.visible .monaco-list-row.focused", { hasText: label }).waitFor();
  if (name) await keep(name);
  await press("Enter");
  await page.waitForTimeout(250);
}

/** A session of four exercises, written from nothing with as few keys as a coach would press. */
async function writing() {
  writeFileSync(path.join(folder, "written.programme.yaml"), "");
  await press("Control+p");
  await type("written.programme");
  await page.locator(".quick-input-list .monaco-list-row", { hasText: "written" }).first().waitFor();
  await press("Enter");
  await page.locator(".tab.active", { hasText: "written" }).waitFor();
  seen.status = await page.locator(".statusbar-item", { hasText: "spotline 0" }).innerText();
  await page.waitForTimeout(1000);
  pressed = 0;
  await type("pr");
  await take("new programme", "written-a-programme-is-offered");
  await keep("written-its-stops");
  await keys('"Base"', "Tab", "Tab", "Tab", '"Lower"', "Tab", "Tab");
  await keep("written-a-first-line-is-due");
  await type("back sq");
  await take("back squat", "written-a-line-is-offered");
  await keep("written-a-line-with-stops");
  await keys('"4"', "Tab", '"5"', "Tab", "Tab", '"3 min"', "Tab", "Enter");
  for (const [words, label, reps] of [
    ["rdl", "Romanian deadlift", "8"],
    ["leg ext", "leg extension", "12"],
    ["seated leg c", "seated leg curl", "12"],
  ]) {
    await type(words);
    await take(label);
    await keys('"3"', "Tab", `"${reps}"`, "Tab", "Tab", '"2 min"', "Tab");
    await keep(`written-${label}`.replaceAll(" ", "-"));
    if (label !== "seated leg curl") await press("Enter");
  }
  await save();
  await page.waitForTimeout(1200);
  await keep("written");
  seen.pressed = pressed;
  seen.written = await lines();
  await keys("Enter", "Enter");
  seen.afterTheList = (await lines()).at(-1);
  await keep("written-the-list-is-left");
  await type("ses");
  await take("new session");
  await keep("written-the-next-session");
  seen.nextSession = await lines();
  await command("File: Revert File");
  await isSaved();
}

/** Values behind a key, notes, another name for an exercise, names of other files. */
async function names() {
  await open("written.programme.yaml");
  await click("weeks: 4");
  await press("End");
  await press("Enter");
  await type("pha");
  await take("phase");
  await page.locator(".suggest-widget.visible .monaco-list-row", { hasText: "taper" }).waitFor();
  seen.valuesAfterKey = await labels(".suggest-widget.visible .monaco-list-row");
  await keep("values-after-a-key");
  await press("Enter");
  await press("Enter");
  await type("note: lower squ");
  await page.waitForTimeout(1200);
  seen.guessed = await page.locator(".suggest-widget.visible .monaco-list-row").count();
  await keep("a-note");
  await click("exercise: back squat", "squat");
  await press("F2");
  await until(() => page.evaluate(() => document.activeElement?.closest(".rename-box") !== null), "the box for a name");
  await press("Control+a");
  await type("the big one");
  await press("Enter");
  await place("our names:");
  seen.renamed = await lines();
  await keep("renamed");
  await command("File: Revert File");
  await isSaved();
  await press("Control+t");
  await type("chest");
  await page.locator(".quick-input-list .monaco-list-row", { hasText: "Chest and legs" }).first().waitFor();
  seen.symbols = await labels(".quick-input-list .monaco-list-row");
  await keep("names-of-the-folder");
  await press("Escape");
}

/** A spotline that is older than the extension. */
async function oldVersion() {
  const old = path.join(folder, "old-spotline");
  writeFileSync(old, '#!/bin/sh\n[ "$1" = --version ] && echo "spotline 0.0.1" && exit\nexec "$(dirname "$0")/.venv/bin/spotline" "$@"\n', {
    mode: 0o755,
  });
  const file = path.join(folder, ".vscode", "settings.json");
  mkdirSync(path.dirname(file), { recursive: true });
  writeFileSync(file, JSON.stringify({ "spotline.path": "./old-spotline" }));
  const toast = page.locator(".notification-toast", { hasText: "0.0.1" });
  await toast.waitFor();
  seen.oldSaid = await toast.locator(".notification-list-item-message").innerText();
  seen.oldStatus = await page.locator(".statusbar-item", { hasText: "is old" }).innerText();
  await keep("an-old-version");
  writeFileSync(file, "{}");
  await command("Notifications: Clear All Notifications");
}

/** Settings that are changed are followed at once. */
async function settings() {
  const file = path.join(folder, ".vscode", "settings.json");
  mkdirSync(path.dirname(file));
  const off = { "spotline.lenses": false, "spotline.hints.sets": false, "spotline.hints.kilograms": false };
  writeFileSync(file, JSON.stringify(off));
  const lenses = page.locator(".codelens-decoration a");
  await lenses.first().waitFor({ state: "detached", timeout: 15000 }).catch(() => {}); // the test tells which stay
  await page.waitForTimeout(2000);
  seen.quiet = { lenses: await texts(".codelens-decoration a"), lines: await lines() };
  await keep("hints-off");
  writeFileSync(file, "{}");
  await page.waitForTimeout(2000);
  writeFileSync(file, JSON.stringify({ "spotline.path": "nowhere/spotline" }));
  await page.locator(".notification-toast", { hasText: "nowhere" }).waitFor();
  seen.wrongPath = (await texts(".notification-toast .notification-list-item-message")).join("\n");
  await keep("wrong-path");
  writeFileSync(file, "{}");
  await command("Notifications: Clear All Notifications");
  await page.locator(".monaco-editor .squiggly-error, .monaco-editor .squiggly-warning").first().waitFor();
}

/** A text that has no name yet. */
async function unnamed() {
  await command("File: New Untitled Text File");
  await page.locator(".tab.active", { hasText: "Untitled-1" }).waitFor();
  await command("Change Language Mode");
  await type("YAML");
  await page.locator(".quick-input-list .monaco-list-row").getByText("YAML", { exact: true }).first().click();
  await type("programme: New\ngoal: power lifting\nphase: build");
  await page.locator(".suggest-widget.visible .monaco-list-row").first().waitFor();
  await press("Enter");
  await type("weeks: 4\n");
  await page.locator(".editor-group-container.active .squiggly-error").first().waitFor();
  await page.waitForTimeout(1000);
  seen.unnamedLines = await lines();
  seen.unnamed = await hover("power lifting", "lifting");
  await keep("no-name-yet");
}

mkdirSync(screens, { recursive: true });
const browser = await chromium.launchPersistentContext(PROFILE, {
  executablePath: program,
  headless: true,
  viewport: { width: 1440, height: 1000 },
  args: [...PLAIN, ...QUIET].map((word) => `--${word}`),
});
try {
  page = browser.pages()[0] ?? (await browser.newPage());
  page.setDefaultTimeout(PATIENCE);
  await until(() => page.goto(url).catch(() => null), `a page at ${url}`);
  await page.locator(".explorer-folders-view .monaco-list-row").first().waitFor();
  took("window open");
  const parts = [withoutServer, faults, rulePage, week, settings, unnamed, typing, writing, names, oldVersion];
  for (const part of parts) {
    if (only && !only.includes(part.name)) continue;
    await part();
    took(part.name);
  }
} catch (fault) {
  seen.fault = `${fault.stack}`;
  await keep("fault");
} finally {
  await browser.close();
  rmSync(PROFILE, { recursive: true, force: true });
}
console.log(JSON.stringify(seen));
process.exit(seen.fault ? 1 : 0);
