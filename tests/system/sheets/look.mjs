// Opens sheets in Chromium as an athlete would, and tells what was wrong: look.mjs INSTALLED SCREENS SHEET ...
// Prints one JSON object a sheet: console messages, requests, faults by axe-core, widths, pages of each paper.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { basename, join } from "node:path";
import { pathToFileURL } from "node:url";

const [installed, screens, ...sheets] = process.argv.slice(2);
const require = createRequire(join(installed, "node_modules", "package.json"));
const { chromium } = require("playwright-core");
const axe = readFileSync(require.resolve("axe-core/axe.min.js"), "utf-8");

const SIZES = { phone: { width: 360, height: 740 }, desk: { width: 1280, height: 900 } };

async function look(browser, path) {
  const name = basename(path, ".html");
  const said = { sheet: name, console: [], requests: [], faults: {}, wider: {}, pages: {}, small: [] };
  for (const [size, viewport] of Object.entries(SIZES)) {
    const context = await browser.newContext({ viewport, offline: true, bypassCSP: true });
    const page = await context.newPage();
    page.on("console", (message) => said.console.push(message.text()));
    page.on("pageerror", (error) => said.console.push(String(error)));
    page.on("request", (request) => said.requests.push(request.url()));
    await page.goto(pathToFileURL(path).href);
    said.wider[size] = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    await page.addScriptTag({ content: axe });
    const found = await page.evaluate(() => axe.run(document));
    said.faults[size] = found.violations.map(({ id, impact, nodes }) => ({ id, impact, at: nodes[0].html }));
    await page.screenshot({ path: join(screens, `${name}-${size}.png`) });
    const session = page.locator("section.session").first();
    await session.screenshot({ path: join(screens, `${name}-${size}-session.png`) });
    if (size === "desk") {
      await page.emulateMedia({ media: "print" });
      for (const format of ["A4", "Letter"]) {
        await page.pdf({ path: join(screens, `${name}-${format}.pdf`), format });
      }
      said.small = await page.$$eval("section.session", (all) =>
        all.map((one) => parseFloat(getComputedStyle(one).fontSize) * 0.75));
      said.sections = await page.locator("section").count();
    }
    await context.close();
  }
  return said;
}

const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM || "/usr/bin/chromium",
  args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking"],
});
for (const path of sheets) console.log(JSON.stringify(await look(browser, path)));
await browser.close();
