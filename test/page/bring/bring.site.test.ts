import { existsSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import axe from "axe-core";
import type { Browser, BrowserContext, ElementHandle, Page } from "puppeteer";
import sharp from "sharp";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { DeskAtWork } from "../../../src/build/desk/desk-at-work.ts";
import type { DeskState } from "../../../src/input/desk/protocol.ts";
import { readKit } from "../../../src/input/kit/read-kit.ts";
import { mapSeen } from "../../../src/output/parts/bring/seen.ts";
import { emptyDesk } from "../../build/desk/empty-desk.ts";
import { makeProject, type Project } from "../../site/project.ts";
import { newDevice, sharedBrowser } from "../../site/shared-site.ts";
import { textOf } from "../../site/visit.ts";

/** Dark wings and, below, a lighter sea. */
const GULL = `<svg xmlns="http://www.w3.org/2000/svg" width="900" height="700" viewBox="0 0 90 70"><rect width="90" height="70" fill="#eef1f2"/>
<rect y="52" width="90" height="18" fill="#8d9aa0"/><path fill="#252a30" d="M8 24Q28 12 43 32Q62 8 84 20Q66 24 55 44Q45 52 37 43Q27 26 8 24Z"/></svg>`;

/** As a drawing program saves it: layers with names, the last one in front. */
const BOAT = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 120 100">
<g id="sky"><rect width="120" height="100" fill="#334"/></g><g id="sun"><circle cx="80" cy="30" r="18" fill="#e9a25f"/></g>
<g id="boat"><path fill="#b03030" d="M30 55H90L80 72H42Z"/></g><g id="sail"><path fill="#4060a0" d="M58 12V50H34Z"/></g></svg>`;

let project: Project;
let desk: DeskAtWork;
let address = "";
let browser: Browser;
let context: BrowserContext;
let page: Page;
let faults: string[] = [];

beforeAll(async () => {
  project = makeProject({ kits: [] });
  writeFileSync(join(project.folder, "gull.jpg"), await sharp(Buffer.from(GULL)).jpeg({ quality: 92 }).toBuffer());
  project.write("boat.svg", BOAT);
  project.write("broken.svg", '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9">\n<path d="M1 1h5"></svg>');
  const place = { base: project.folder, output: join(project.folder, ".cache/serving") };
  desk = new DeskAtWork({ ...place, site: () => undefined, print: () => {}, visit: async () => {} });
  address = await desk.open(20_000 + Math.floor(Math.random() * 20_000));
  desk.show(site([]));
  browser = await sharedBrowser();
});

afterAll(async () => {
  await browser?.disconnect();
  // A thread of the desk may still be keeping what it compiled.
  if (project) rmSync(project.folder, { recursive: true, force: true, maxRetries: 10, retryDelay: 200 });
});

beforeEach(async () => {
  context = await newDevice(browser);
  page = await context.newPage();
  faults = [];
  page.on("pageerror", (error) => faults.push(String(error)));
  page.on("console", (message) => {
    if (message.type() === "error") faults.push(message.text());
  });
  page.on("dialog", (dialog) => void dialog.accept());
  await page.setViewport({ width: 1280, height: 900 });
  await page.goto(address);
  await page.goto(new URL("/new", address).href);
  await page.waitForSelector("[data-drop]");
});

afterEach(async () => {
  expect(faults).toEqual([]);
  await context.close();
});

async function choose(file: string): Promise<void> {
  const input = (await page.$("[data-file]")) as ElementHandle<HTMLInputElement>;
  await input.uploadFile(join(project.folder, file));
}

/** Waits until the kit can be made as it is stated, and all is drawn that was asked for. */
async function ready(folder: RegExp): Promise<void> {
  await page.waitForSelector('[data-make][aria-disabled="false"]');
  await textOf(page, "[data-told]", folder);
}

/** Presses Tab until an element has the focus, as somebody without a mouse goes there. */
async function tabTo(selector: string): Promise<void> {
  for (let presses = 0; presses < 80; presses += 1) {
    if (await page.evaluate((wanted) => document.activeElement?.matches(wanted) ?? false, selector)) return;
    await page.keyboard.press("Tab");
  }
  throw new Error(`nothing that is reached by keys is ${selector}`);
}

function site(kits: DeskState["kits"]): DeskState {
  return { ...emptyDesk(""), site: { title: "Harbour", language: "en" }, kits };
}

/** Waits until a kit was made, and lets the desk know of it as the maker of the site does. */
async function made(slug: string): Promise<void> {
  const file = `content/kits/${slug}/index.md`;
  while (!existsSync(join(project.folder, file))) await new Promise((resolve) => setTimeout(resolve, 50));
  const known = { slug, title: slug, file, draft: false, state: "fine", messages: [], warnings: [] } as const;
  const kit = { ...known, page: undefined, authorPage: undefined, cover: undefined, papers: [] };
  desk.show(site([kit]));
  await page.waitForFunction((path) => location.pathname === path, {}, `/kits/${slug}`);
}

/** The picture that the desk shows at the moment, as markup. */
function shown(): Promise<string> {
  return page.$eval("[data-map]", (map) => map.innerHTML);
}

/** The picture that a build reads, drawn as the desk draws it. */
async function built(slug: string): Promise<string> {
  const { kit } = readKit(join(project.folder, "content/kits", slug), project.folder, []);
  const markup = String(mapSeen(kit.picture, kit.levels.length));
  return page.evaluate((text) => new DOMParser().parseFromString(text, "text/html").body.innerHTML, markup);
}

async function found(): Promise<string[]> {
  await page.evaluate(axe.source);
  const { violations } = (await page.evaluate("axe.run()")) as axe.AxeResults;
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" | ")}`);
}

describe("a kit from a picture", () => {
  it("is made of a photograph with the mouse alone", async () => {
    const [chooser] = await Promise.all([page.waitForFileChooser(), page.click(".bring-choose")]);
    await chooser.accept([join(project.folder, "gull.jpg")]);
    await ready(/kits\/gull can be made/);
    await page.click("#bring-trace-tones");
    await page.waitForSelector("#bring-limit-1");
    await ready(/kits\/gull can be made/);
    const limit = (await (await page.$("#bring-limit-1"))!.boundingBox())!;
    await page.mouse.click(limit.x + limit.width * 0.8, limit.y + limit.height / 2);
    const edge = (await (await page.$(".crop-left"))!.boundingBox())!;
    await page.mouse.move(edge.x + edge.width / 2, edge.y + edge.height / 2);
    await page.mouse.down();
    await page.mouse.move(edge.x + edge.width / 2 + 12, edge.y + edge.height / 2, { steps: 4 });
    await page.mouse.up();
    await page.waitForFunction(() => Number(document.querySelector(".crop-left")!.getAttribute("aria-valuenow")) > 1);
    await ready(/kits\/gull can be made/);
    const seen = await shown();
    expect(readdirSync(join(project.folder, "content/kits"))).toEqual([]);
    await page.click("[data-make]");
    await made("gull");
    const text = project.read("content/kits/gull/index.md");
    expect(text).toMatch(/trace: tones/);
    expect(text).toMatch(/limits: \[ ?\d+, \d+ ?\]/);
    expect(text).toMatch(/crop: \{ x: [1-9]/);
    expect(await built("gull")).toBe(seen);
    expect(project.run("src/build/check.ts", {}, ["gull"])).toMatchObject({ code: 0 });
  });

  it("is made of a drawing in layers with keys alone", async () => {
    await tabTo("[data-file]");
    // What a browser's own window would give: it is no part of the page.
    await choose("boat.svg");
    await ready(/kits\/boat can be made/);
    await tabTo("#bring-mark-2");
    await page.keyboard.type("ground");
    await page.keyboard.press("Enter");
    await textOf(page, "[data-map-foot]", /^sailboatsky$/);
    await tabTo(".crop-top");
    for (let presses = 0; presses < 4; presses += 1) await page.keyboard.press("ArrowDown");
    await tabTo("#bring-title");
    await page.keyboard.down("Control");
    await page.keyboard.press("a");
    await page.keyboard.up("Control");
    await page.keyboard.type("Evening sail");
    await ready(/kits\/evening-sail can be made/);
    const seen = await shown();
    await tabTo("[data-make]");
    await page.keyboard.press("Enter");
    await made("evening-sail");
    const { kit } = readKit(join(project.folder, "content/kits/evening-sail"), project.folder, []);
    expect([kit.title, kit.levels.map(({ name }) => name)]).toEqual(["Evening sail", ["sail", "boat", "sky"]]);
    expect(kit.picture.height).toBeCloseTo(98, 6);
    expect(await built("evening-sail")).toBe(seen);
    expect(project.run("src/build/check.ts", {}, ["evening-sail"])).toMatchObject({ code: 0 });
  });

  it("tells in one message why a picture cannot be read, and goes on with the next", async () => {
    await choose("broken.svg");
    expect(await textOf(page, "[data-hurdles]", /broken\.svg:2/)).toMatch(/not well-formed/);
    await choose("boat.svg");
    await page.waitForSelector("[data-map] svg");
    await page.waitForSelector("[data-hurdles][hidden]");
  });

  it("says what is wrong with a folder’s name or a figure, and makes nothing meanwhile", async () => {
    await page.click("#bring-origin-outline");
    await ready(/kits\/heart can be made/);
    await page.type("#bring-leafWidth", "x");
    await textOf(page, "#bring-leafWidth-help", /./);
    await page.click("[data-make]");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("bring-leafWidth");
    await page.click("[data-usual-book]");
    await page.click("#bring-slug", { count: 3 });
    await page.keyboard.type("No Name!");
    await textOf(page, "#bring-slug-help", /Small letters/);
    await page.click("[data-make]");
    expect(readdirSync(join(project.folder, "content/kits"))).not.toContain("No Name!");
  });

  it.each([1280, 390])("can be used by everybody, at %i px, and nothing scrolls sideways", async (width) => {
    await page.setViewport({ width, height: 900 });
    expect(await found()).toEqual([]);
    await choose("gull.jpg");
    await ready(/can be made/);
    await page.click("#bring-trace-colours");
    await page.waitForSelector("#bring-colour-0");
    await page.click("[data-lit]");
    await ready(/can be made/);
    expect(await found()).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    await page.emulateMediaFeatures([{ name: "prefers-color-scheme", value: "dark" }]);
    await choose("boat.svg");
    await page.waitForSelector("#bring-mark-0");
    await ready(/can be made/);
    expect(await found()).toEqual([]);
  });
});
