import { writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser, BrowserContext, Page } from "puppeteer";
import { type Serving, serveProject } from "../../../build/site/serving.ts";
import { fixtureText } from "../../../input/kit/kit-folders.ts";
import { makeProject, type Project } from "../../../site/project.ts";
import { newDevice } from "../../../site/shared-site.ts";

export const FILE = "content/kits/harbour-moon/index.md";

/** A kit with remarks of its author everywhere, some of them beside what is changed. */
export const REMARKED = fixtureText("harbour-moon")
  .replace("picture:\n", "picture: # drawn at the window table\n")
  .replace("  head: 40\n", "  # Room for the moon's light above it.\n  head: 40   # not less\n")
  .replace(
    "gauge: { lines: [10, 18, 26, 34, 42] }",
    "gauge: { lines: [10, 18, 26, 34, 42] } # the one in the cupboard",
  );

/** A kit that is laid out on a desk of its own, as `npm start` opens it. */
export interface LaidKit {
  readonly project: Project;
  readonly page: Page;
  /** What its index.md says now. */
  readonly text: () => string;
  readonly write: (text: string) => void;
  /** Lays the kit out anew as it was at first. */
  readonly again: () => Promise<void>;
  /** Errors that scripts of the page threw. */
  readonly errors: readonly string[];
  readonly close: () => Promise<void>;
}

/** Opens the desk in a browser and lays the kit out. */
export async function layOutKit(browser: Browser): Promise<LaidKit> {
  const project = makeProject({ kits: ["harbour-moon"] });
  project.write(FILE, REMARKED);
  const serving: Serving = await serveProject(project);
  const address = await addressOf(serving);
  const device: BrowserContext = await newDevice(browser);
  const page = await device.newPage();
  const errors: string[] = [];
  page.setDefaultNavigationTimeout(0);
  page.on("pageerror", (error) => errors.push(String(error)));
  // What is not written yet is left when the kit is laid out anew.
  page.on("dialog", (dialog) => void dialog.accept());
  await page.setViewport({ width: 1280, height: 900 });
  await page.goto(address);
  const write = (text: string): void => writeFileSync(join(project.folder, FILE), text);
  const again = async (): Promise<void> => {
    write(REMARKED);
    await page.goto(`${new URL(address).origin}/kits/harbour-moon`);
    await atRest(page);
  };
  await again();
  return {
    project,
    page,
    errors,
    text: () => project.read(FILE),
    write,
    again,
    close: async () => {
      await device.close();
      await serving.stop();
      project.remove();
    },
  };
}

/** The desk's address as `npm start` tells it; a busy machine takes minutes to start. */
async function addressOf(serving: Serving): Promise<string> {
  for (let patience = 5; ; patience -= 1) {
    try {
      const told = await serving.says(OPENS);
      return OPENS.exec(told)![0];
    } catch (error) {
      if (patience === 0) throw error;
    }
  }
}

const OPENS = /http:\/\/\S+\/open\?\S+/;

/** Waits until workers have found what would help: nothing more changes by itself. */
export async function atRest(page: Page): Promise<void> {
  await page.waitForFunction(() => document.querySelector("[data-table]")?.getAttribute("aria-busy") === "false", {
    polling: 50,
  });
}

/** What the ribbon says. */
export function told(page: Page): Promise<string> {
  return page.$eval("[data-told]", (one) => one.textContent ?? "");
}

/** Goes on with the Tab key until something has the focus, as someone without a mouse does. */
export async function tabTo(page: Page, selector: string): Promise<void> {
  for (let i = 0; i < 200; i += 1) {
    if (await page.evaluate((wanted) => document.activeElement?.matches(wanted) ?? false, selector)) return;
    await page.keyboard.press("Tab");
  }
  throw new Error(`no way leads to ${selector} with the Tab key`);
}

/** Drags from the middle of something by so many pixels. */
export async function drag(page: Page, selector: string, across: number, down: number): Promise<void> {
  const box = (await (await page.$(selector))!.boundingBox())!;
  // A handle for a depth is as tall as the leaf; its knob is at the top.
  const [x, y] = [box.x + box.width / 2, box.y + Math.min(12, box.height / 2)];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let step = 1; step <= 4; step += 1) await page.mouse.move(x + (across * step) / 4, y + (down * step) / 4);
  await page.mouse.up();
}
