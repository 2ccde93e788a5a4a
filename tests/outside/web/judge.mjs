// Judges every page below a folder of web sites: node judge.mjs FOLDER. Prints one JSON object, a member for each page:
//   html       what the validator finds
//   faults     what the accessibility checker finds, on a phone and on a desk
//   too_wide   by how many pixels the page is wider than the screen, for each screen
//   asked_for  addresses that the page loads
//   fonts      the font files that were loaded
import { existsSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import { pathToFileURL } from "node:url";
import { FileSystemConfigLoader, HtmlValidate } from "html-validate";
import { chromium } from "playwright-core";

const FOLDER = process.argv[2];
const SCREENS = { phone: { width: 390, height: 844 }, desk: { width: 1200, height: 800 } };
const AXE = createRequire(import.meta.url).resolve("axe-core/axe.min.js");
const BROWSERS = ["chromium", "chromium-browser", "google-chrome"];
const FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

function browserPath() {
  const folders = process.env.PATH.split(delimiter);
  const found = BROWSERS.flatMap((name) => folders.map((folder) => join(folder, name))).find(existsSync);
  if (!found) throw new Error(`none of ${BROWSERS.join(", ")} is installed`);
  return found;
}

// A page is titled as its block, however long the quilter made that name.
const validator = new HtmlValidate(
  new FileSystemConfigLoader({
    root: true,
    extends: ["html-validate:recommended", "html-validate:a11y"],
    rules: { "long-title": "off" },
  }),
);

async function validate(path) {
  const report = await validator.validateFile(path);
  return report.results.flatMap((result) =>
    result.messages.map((fault) => `${fault.line}:${fault.column} ${fault.ruleId}: ${fault.message}`),
  );
}

async function judge(browser, name) {
  const path = join(FOLDER, name);
  const told = { html: await validate(path), faults: {}, too_wide: {}, asked_for: [], fonts: [] };
  const page = await browser.newPage();
  page.on("request", (request) => told.asked_for.push(request.url()));
  await page.goto(pathToFileURL(path).href);
  await page.addScriptTag({ path: AXE });
  for (const [screen, size] of Object.entries(SCREENS)) {
    await page.setViewportSize(size);
    await page.evaluate(() => document.fonts.ready);
    told.too_wide[screen] = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    told.faults[screen] = await page.evaluate(async () => {
      const { violations } = await window.axe.run(document, { resultTypes: ["violations"] });
      return violations.map((fault) => `${fault.id}: ${fault.nodes.map((node) => node.target).join("; ")}`);
    });
  }
  told.fonts = await page.evaluate(() =>
    [...document.fonts].filter((font) => font.status === "loaded").map((font) => `${font.family} ${font.weight}`),
  );
  await page.close();
  return told;
}

const profile = mkdtempSync(join(tmpdir(), "blockdsl-web-"));
const context = await chromium.launchPersistentContext(profile, {
  executablePath: browserPath(),
  headless: true,
  args: FLAGS,
});
const waiting = readdirSync(FOLDER, { recursive: true }).filter((name) => name.endsWith(".html")).sort();
const judged = {};
async function worker() {
  for (let name = waiting.shift(); name; name = waiting.shift()) judged[name] = await judge(context, name);
}
try {
  await Promise.all([worker(), worker()]);
} finally {
  await context.close();
  rmSync(profile, { recursive: true, force: true, maxRetries: 3 });
}
process.stdout.write(JSON.stringify(judged));
