// Drives a site with keys alone: node drive.mjs FOLDER BLOCK WORD, pages named without ending. Prints one JSON object:
//   sizes      the sizes of the switch, and of each what is seen when it is chosen: `cells` of the cutting table, `steps`
//   kept       the size that the next block's page begins with, and whether that was chosen
//   printed    what of the switch is seen on paper
//   found      the pages that the search finds for WORD, in order; `status` what it says
//   opened     the page that Enter on the first of them opens
//   enlarged   the width of a picture before and after the space bar, and after Escape
//   unscripted the same page without scripts: choosing works, and the search page lists all pages
//   unable     in a browser that cannot choose: the sizes that are seen
import { existsSync, readFileSync } from "node:fs";
import { delimiter, join } from "node:path";
import { pathToFileURL } from "node:url";
import { chromium } from "playwright-core";

const [folder, block, word] = process.argv.slice(2);
const folders = process.env.PATH.split(delimiter);
const executablePath = ["chromium", "chromium-browser", "google-chrome"]
  .flatMap((name) => folders.map((each) => join(each, name)))
  .find(existsSync);
const browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
const address = (name) => pathToFileURL(join(folder, `${name}.html`)).href;
const told = {};

async function tabTo(page, selector, most = 400) {
  for (let pressed = 0; pressed < most; pressed += 1) {
    if (await page.evaluate((wanted) => document.activeElement?.matches(wanted), selector)) return;
    await page.keyboard.press("Tab");
  }
  throw new Error(`${selector} cannot be reached by the Tab key`);
}

function seen(page) {
  return page.evaluate(() => {
    const shown = (selector) => [...document.querySelectorAll(selector)].filter((each) => each.checkVisibility());
    return {
      chosen: document.querySelector(".switch input:checked")?.value ?? "",
      cells: shown("td.size").map((cell) => cell.textContent.replaceAll("\u00a0", " ")),
      steps: shown(".steps .tickable").map((line) => line.textContent.trim().replaceAll("\u00a0", " ")),
    };
  });
}

async function choosing(page) {
  const sizes = [];
  await tabTo(page, ".switch input");
  const count = await page.locator(".switch input").count();
  for (let place = 0; place < count; place += 1) {
    sizes.push(await seen(page));
    await page.keyboard.press("ArrowRight");
  }
  return sizes;
}

try {
  const phone = { viewport: { width: 390, height: 844 } };
  const context = await browser.newContext(phone);
  const page = await context.newPage();
  await page.goto(address(block));
  told.sizes = await choosing(page);
  await page.keyboard.press("ArrowLeft"); // the last size
  await page.goto(address(block));
  told.kept = (await seen(page)).chosen;
  await page.emulateMedia({ media: "print" });
  told.printed = await page.evaluate(() =>
    [...document.querySelectorAll(".switch label")]
      .filter((each) => each.checkVisibility())
      .map((each) => each.textContent.replaceAll("\u00a0", " ")),
  );
  await page.emulateMedia({ media: "screen" });

  const picture = ".steps .larger";
  await tabTo(page, picture);
  const width = () =>
    page.evaluate(() => document.activeElement.parentElement.querySelector("svg").getBoundingClientRect().width);
  told.enlarged = [await width()];
  await page.keyboard.press("Space");
  told.enlarged.push(await width());
  await page.keyboard.press("Escape");
  told.enlarged.push(await width());

  await page.goto(address(block));
  await tabTo(page, ".find a");
  await page.keyboard.press("Enter");
  await page.waitForSelector("#find:focus");
  await page.keyboard.type(word); // the field has the focus
  const items = () =>
    page.evaluate(() =>
      [...document.querySelectorAll("#found li")]
        .filter((each) => each.checkVisibility())
        .map((each) => each.querySelector("a").textContent),
    );
  told.found = await items();
  told.status = await page.evaluate(() => document.getElementById("status").textContent);
  await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  await page.waitForSelector("body:not(:has(#find))");
  told.opened = await page.evaluate(() => document.querySelector("h1").textContent);
  await context.close();

  const bare = await browser.newContext({ ...phone, javaScriptEnabled: false });
  const still = await bare.newPage();
  await still.goto(address(block));
  told.unscripted = { sizes: await choosing(still) };
  await still.goto(address("search"));
  told.unscripted.listed = await still.locator("#found li").count();
  told.unscripted.field = await still.locator("#find").isVisible();

  // Without `:has` a browser drops the rules that choose.
  await still.route("**/style.css", async (route) => {
    const style = readFileSync(join(folder, "style.css"), "utf8");
    await route.fulfill({ body: style.replaceAll(":has(", ":no-such("), contentType: "text/css" });
  });
  await still.goto(address(block));
  told.unable = (await seen(still)).cells;
  await bare.close();
} finally {
  await browser.close();
}
process.stdout.write(JSON.stringify(told));
