import { openBrowser } from "./site/open-browser.ts";

const browser = await openBrowser();
const page = await browser.newPage();
const url = `file://${process.cwd()}/dist/private/classes/winter-evenings/room/index.html`;
for (const [w, h, name] of [
  [1280, 720, "desk"],
  [390, 844, "phone"],
] as const) {
  await page.setViewport({ width: w, height: h });
  await page.goto(url);
  await page.evaluate(() => localStorage.clear());
  await page.reload();
  await page.click("[data-begin]");
  await page.click("[data-next]");
  await page.click("[data-next]");
  await page.click("[data-next]");
  await page.type("[name=page]", "87");
  await page.screenshot({ path: `/tmp/room-${name}.png`, fullPage: true });
  await page.screenshot({ path: `/tmp/room-${name}-top.png` });
}
await page.pdf({ path: "/tmp/room.pdf", format: "A4" });
await browser.close();
