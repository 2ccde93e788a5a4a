// Drives the preview in the system's Chromium: saving, every control, the sewing, the cursor, by keyboard alone where
// a keyboard would be used; axe judges it in light and dark, wide and narrow. Prints what it found as JSON.

import { readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { chromium } from "playwright-core";

const [address, file, executablePath, folder] = process.argv.slice(2);
const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core"), "utf-8");
const found = { errors: [], requests: [], axe: {}, saves: [] };
const browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, bypassCSP: false, acceptDownloads: true });
const page = await context.newPage();
page.on("pageerror", (fault) => found.errors.push(String(fault)));
page.on("console", (message) => { if (message.type() === "error") found.errors.push(message.text()); });
page.on("request", (request) => found.requests.push(request.url()));

const number = () => page.evaluate(() => Number(document.body.dataset.number));

// The page's policy forbids what Playwright's own waiting does (it evaluates text), so we look again and again.
async function until(holds, argument) {
  const stop = Date.now() + 30_000;
  while (!(await page.evaluate(holds, argument))) {
    if (Date.now() > stop) throw new Error(`never came true: ${holds}`);
    await new Promise((after) => setTimeout(after, 4));
  }
}

const settled = (least) => until((n) => Number(document.body.dataset.number) >= n, least);
const text = (selector) => page.locator(selector).innerText();

async function judge(name) {
  // axe is put in by the driver, past the page's own policy, which must stay as strict as it is.
  const session = await context.newCDPSession(page);
  await session.send("Runtime.evaluate", { expression: axe });
  const { violations } = await page.evaluate(() => globalThis.axe.run());
  found.axe[name] = violations.map((each) => `${each.id}: ${each.nodes.map((node) => node.html).join(" ")}`);
}

await page.goto(address);
await page.waitForSelector("#drawing .over path");
found.name = await text("#name");
found.patches = await page.locator("#drawing .over path").count();
await judge("light wide");

// Saving, twelve times: from the save to the new drawing on the page.
const source = readFileSync(file, "utf-8");
for (let turn = 0; turn < 12; turn++) {
  const before = await number();
  const begun = Date.now();
  writeFileSync(file, source.replace("size 6 in", `size ${turn % 2 ? 6 : 8} in`));
  await settled(before + 1);
  found.saves.push(Date.now() - begun);
  await page.waitForTimeout(150);
}
found.size = await text("#size");

// A slip: the last good drawing stays, the problem stands beside it with its line.
let before = await number();
writeFileSync(file, source.replace("fog\\slate", "frog\\slate"));
await settled(before + 1);
found.stale = await page.locator("#stale").isVisible();
found.problem = await text("#problems");
found.patchesStill = await page.locator("#drawing .over path").count();
before = await number();
writeFileSync(file, source);
await settled(before + 1);
found.mended = !(await page.locator("#stale").isVisible());

// A patch by mouse, the next one by keyboard.
await page.locator("#drawing .over path").first().click({ position: { x: 220, y: 60 } });
found.patch = await text("#patch");
await page.keyboard.press("ArrowRight");
found.nextPatch = await page.evaluate(() => document.activeElement.getAttribute("aria-label"));

// Every control, by keyboard.
for (const [id, key] of [["#colourway", "N"], ["#choice-size", "9"], ["#eyes", "i"]]) {
  await page.locator(id).focus();
  await page.keyboard.press(key);
  await page.waitForTimeout(400);
}
found.chosen = await page.evaluate(() => ["colourway", "choice-size", "eyes"].map((id) => document.getElementById(id).value));
found.chosenSize = await text("#size");
found.eyes = await page.evaluate(() => document.querySelector("#drawing .cloth").getAttribute("class"));
await page.locator("#letters").focus();
await page.keyboard.press("Space");
found.letters = await page.locator("#drawing .over text").allTextContents();

// The sewing, seam by seam, with the arrow keys.
await page.locator("#sew").focus();
await page.keyboard.press("Space");
await page.waitForSelector("#frame svg");
found.frames = [];
for (let turn = 0; turn < 4; turn++) {
  found.frames.push(await text("#where"));
  await page.keyboard.press("ArrowRight");
  await until((n) => Number(document.getElementById("sewing").dataset.frame) === n, turn + 1);
}
await page.keyboard.press("ArrowLeft");
await until(() => document.getElementById("sewing").dataset.frame === "3");
await page.screenshot({ path: `${folder}/wide.png`, fullPage: true });

// An editor's cursor lights what its line draws.
before = await number();
const told = await page.evaluate(async (name) => (await fetch("cursor", { method: "POST", body: JSON.stringify({ file: name, line: 5 }) })).status, file);
await settled(before + 1);
found.cursor = [told, await page.locator("#drawing .over path.lit").count()];

// What may be taken away.
const link = page.locator("#downloads a").first();
const [download] = await Promise.all([page.waitForEvent("download"), link.click()]);
found.download = [download.suggestedFilename(), readFileSync(await download.path()).subarray(0, 5).toString()];

await page.setViewportSize({ width: 390, height: 844 });
await page.emulateMedia({ colorScheme: "dark" });
await judge("dark narrow");
found.overflow = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
await page.screenshot({ path: `${folder}/narrow.png`, fullPage: true });
console.log(JSON.stringify(found));
await browser.close();
