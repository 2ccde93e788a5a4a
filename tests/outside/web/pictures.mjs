// Draws every SVG in a folder as Chromium does, two pixels a point: node pictures.mjs FOLDER writes NAME.chromium.png
// beside each.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { delimiter, join } from "node:path";
import { chromium } from "playwright-core";

const folder = process.argv[2];
const folders = process.env.PATH.split(delimiter);
const executablePath = ["chromium", "chromium-browser", "google-chrome"]
  .flatMap((name) => folders.map((each) => join(each, name)))
  .find(existsSync);
const browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
try {
  const page = await browser.newPage();
  for (const name of readdirSync(folder).filter((each) => each.endsWith(".svg"))) {
    const drawing = readFileSync(join(folder, name), "utf8");
    const [, width, height] = drawing.match(/viewBox="0 0 ([\d.]+) ([\d.]+)"/).map(Number);
    const [wide, high] = [Math.round(width * 2), Math.round(height * 2)];
    await page.setViewportSize({ width: wide, height: high });
    const address = `data:image/svg+xml;base64,${Buffer.from(drawing).toString("base64")}`;
    await page.setContent(`<body style="margin:0"><img style="display:block;width:${wide}px;height:${high}px" src="${address}">`);
    await page.locator("img").evaluate((image) => image.decode());
    await page.screenshot({ path: join(folder, name.replace(/\.svg$/, ".chromium.png")) });
  }
} finally {
  await browser.close();
}
