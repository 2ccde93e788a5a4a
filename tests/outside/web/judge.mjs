// Judges every page below a folder of web sites: node judge.mjs FOLDER. Prints one JSON object, a member for each page:
//   html       what the validator finds
//   faults     what the accessibility checker finds, on a phone and on a desk, in light and in dark colours
//   too_wide   by how many pixels the page is wider than the screen, for each screen
//   asked_for  addresses that the page asks for, from its first to its last moment
//   blocked    addresses that could not be loaded, and why
//   refused    what its own content security policy refuses
//   title      its title, after its scripts have run
//   fonts      the font files that were loaded
//   smallest   the least height of letters in its pictures on a phone, in pixels; null where there are none
//   narrow     links, boxes and switches that are smaller than 44 pixels on a phone, but for words in a sentence
//   bytes      what it loads in all
import { existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, statSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { FileSystemConfigLoader, HtmlValidate } from "html-validate";
import { chromium } from "playwright-core";

const FOLDER = process.argv[2];
const SCREENS = { phone: { width: 390, height: 844 }, desk: { width: 1280, height: 800 } };
const COLOURS = ["light", "dark"];
const TARGET = 44;
const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
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

// Run in the page.
function smallestLetters() {
  const heights = [...document.querySelectorAll("svg text")]
    .filter((text) => text.checkVisibility() && text.getBoundingClientRect().width > 0)
    .map((text) => {
      const matrix = text.getScreenCTM();
      return parseFloat(getComputedStyle(text).fontSize) * Math.hypot(matrix.a, matrix.b);
    });
  return heights.length ? Math.min(...heights) : null;
}

function narrowTargets(least) {
  const found = [...document.querySelectorAll("a, label:has(input), input:not(label input), summary, button")];
  const inSentence = (each) => each.localName === "a" && getComputedStyle(each).display === "inline";
  return found
    .filter((each) => each.checkVisibility() && !each.closest(".skip") && !inSentence(each))
    .map((each) => [each.getBoundingClientRect(), each])
    .filter(([box]) => box.width && (box.width < least - 0.5 || box.height < least - 0.5))
    .map(([box, each]) => `${each.localName} ${Math.round(box.width)} × ${Math.round(box.height)}: ${each.textContent}`);
}

async function judge(browser, name) {
  const path = join(FOLDER, name);
  const told = { html: await validate(path), faults: {}, too_wide: {}, asked_for: [], blocked: [], refused: [], fonts: [] };
  const page = await browser.newPage();
  page.on("request", (request) => told.asked_for.push(request.url()));
  page.on("requestfailed", (request) => told.blocked.push(`${request.url()} ${request.failure().errorText}`));
  page.on("console", (said) => said.type() === "error" && told.refused.push(said.text()));
  page.on("pageerror", (error) => told.refused.push(error.message));
  await page.goto(pathToFileURL(path).href);
  await page.evaluate(() => document.fonts.ready);
  told.title = await page.title();
  told.bytes = told.asked_for
    .filter((each) => each.startsWith("file:") && existsSync(fileURLToPath(each)))
    .reduce((sum, each) => sum + statSync(fileURLToPath(each)).size, 0);
  await page.setViewportSize(SCREENS.phone);
  told.smallest = await page.evaluate(smallestLetters);
  told.narrow = await page.evaluate(narrowTargets, TARGET);
  await page.evaluate(AXE);
  for (const [screen, size] of Object.entries(SCREENS)) {
    await page.setViewportSize(size);
    told.too_wide[screen] = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    for (const colours of COLOURS) {
      await page.emulateMedia({ colorScheme: colours });
      told.faults[`${screen}, ${colours}`] = await page.evaluate(async () => {
        const { violations } = await window.axe.run(document, { resultTypes: ["violations"], preload: false });
        return violations.map((fault) => `${fault.id}: ${fault.nodes.map((node) => node.target).join("; ")}`);
      });
    }
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
