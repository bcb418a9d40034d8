import { copyFileSync } from "node:fs";
import { join } from "node:path";
import axe from "axe-core";
import type { Browser, BrowserContext, Page } from "puppeteer";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { FIXTURES } from "../../../input/kit/kit-folders.ts";
import { newDevice, sharedBrowser } from "../../../site/shared-site.ts";
import { textOf } from "../../../site/visit.ts";
import { type ClassDesk, openClassDesk } from "./open-class.ts";

const BOOKS = "content/classes/winter-evenings/books.csv";

/** A class of as many seats as there may be, none with a book yet. */
const FULL = `---
title: A full house
date: 2027-05-06
place: Reading room
kits: [little-gull]
places: 200
sessions: [{ minutes: 120 }]
---
`;

/** A figure that is typed stands in its cell within so long, ms: on a machine that does much else beside, too. */
const SOON = 1000;

/** A class with its seats in its front matter, in inches, with a note that must stay. */
const SPRING = `---
title: Spring # in April
date: 2027-04-08
place: Reading room
units: in
kits: [harbour-moon]
places: 3 # places
seats:
  - { seat: 1, book: { leafHeight: 8 1/2 in, leafWidth: 5 1/2 in, blockThickness: 1 in, leaves: 204, lastPage: 399 } } # mine
sessions: [{ minutes: 120 }]
---
`;

describe("a class on the desk", () => {
  let desk: ClassDesk;
  let browser: Browser;
  let device: BrowserContext;
  let page: Page;
  const faults: string[] = [];
  beforeAll(async () => {
    const workbook = SPRING.replace(/seats:\n.*\n/, "books: books.xlsx\n").replace("places: 3 # places\n", "");
    desk = await openClassDesk({
      spring: { "index.md": SPRING },
      full: { "index.md": FULL },
      workbook: { "index.md": workbook.replace("[harbour-moon]", "[little-gull, harbour-moon, evening-boat]") },
    });
    const books = join(desk.project.folder, "content/classes/workbook/books.xlsx");
    copyFileSync(join(FIXTURES, "tables/books.xlsx"), books);
    browser = await sharedBrowser();
    device = await newDevice(browser);
  });
  beforeEach(async () => {
    page = await device.newPage();
    page.on("pageerror", (error) => faults.push(String(error)));
    await page.setViewport({ width: 1280, height: 900 });
    await page.goto(desk.address, { waitUntil: "load" });
    return async () => {
      expect(faults.splice(0)).toEqual([]);
      page.on("dialog", (dialog) => void dialog.accept());
      await page.close();
    };
  });
  afterAll(async () => {
    await device?.close();
    await browser?.disconnect();
    await desk?.close();
  });

  const open = async (slug: string): Promise<void> => {
    await page.goto(`${desk.origin}/classes/${slug}`);
    await page.waitForSelector("td[data-row]", { timeout: 120_000 });
  };
  const cell = (row: number, column: string): Promise<string> =>
    page.evaluate(
      (r, name) => {
        const heads = [...document.querySelectorAll("thead th")].map((one) => one.textContent);
        return document.querySelectorAll("tbody tr")[r]!.children[heads.indexOf(name)]!.textContent ?? "";
      },
      row,
      column,
    );
  const judged = () => page.waitForFunction(() => !document.querySelector("td.mark.working"), { timeout: 120_000 });
  const press = async (...keys: string[]): Promise<void> => {
    for (const key of keys) await page.keyboard.press(key as "Enter");
  };
  const withControl = async (key: string): Promise<void> => {
    await page.keyboard.down("Control");
    await page.keyboard.press(key as "KeyZ");
    await page.keyboard.up("Control");
  };
  const paste = (text: string): Promise<void> =>
    page.evaluate((given) => {
      const data = new DataTransfer();
      data.setData("text/plain", given);
      document.activeElement!.dispatchEvent(new ClipboardEvent("paste", { clipboardData: data, bubbles: true }));
    }, text);

  it("is filled with the keyboard alone, judged as it is typed, and written where its seats stand", async () => {
    await open("winter-evenings");
    await judged();
    expect(await cell(5, "How it comes out")).toBe("With a change");
    await page.focus('[data-row="0"][data-column="0"]');
    await press(..."ArrowDown ArrowDown ArrowDown ArrowDown ArrowDown ArrowRight ArrowRight".split(" "));
    await page.keyboard.type("21x");
    expect(await textOf(page, "[data-seat] .mark", /mend/)).toBe("To mend");
    expect(await textOf(page, "[data-seat]", /unit/)).toContain("40 to 600 mm");
    await press("Escape");
    expect(await cell(5, "Leaf height")).toBe("105");
    await page.keyboard.type("216");
    await press("Tab");
    await page.keyboard.type("140");
    await press("Enter");
    await judged();
    expect([await cell(5, "Leaf height"), await cell(5, "Leaf width")]).toEqual(["216", "140"]);
    expect(await textOf(page, "[data-told]", /2/)).toContain("2 changes");
    await withControl("KeyZ");
    expect(await cell(5, "Leaf width")).toBe("72");
    await withControl("KeyY");
    await withControl("KeyS");
    expect(await textOf(page, "[data-difference-lines]", /216/)).toContain("+ 6,harbour-moon,216,140");
    const before = desk.project.read(BOOKS);
    await press("Enter");
    await textOf(page, "[data-told]", /^Written/);
    expect(desk.project.read(BOOKS)).toBe(before.replace("6,harbour-moon,105,72", "6,harbour-moon,216,140"));
  });

  it("takes an offer into the cells of its seat, in the units that its file has", async () => {
    await open("spring");
    await judged();
    await page.click('[data-row="0"][data-column="1"]');
    await page.keyboard.type("4 1/8 in");
    await press("Enter", "ArrowUp");
    await judged();
    await page.waitForSelector("[data-offer]", { timeout: 60_000 });
    await page.click("[data-offer]");
    await judged();
    expect(await cell(0, "How it comes out")).not.toBe("With a change");
    await withControl("KeyS");
    await press("Enter");
    await textOf(page, "[data-told]", /^Written/);
    const text = desk.project.read("content/classes/spring/index.md");
    expect(text).toMatch(
      /title: Spring # in April\n[\s\S]*places: 3 # places\n[\s\S]*leafHeight: 4 1\/8 in.*height: .* in.*# mine\n/,
    );
  });

  it("takes rows of a spreadsheet, and makes seats of those beyond the last", async () => {
    await open("winter-evenings");
    await page.focus('[data-row="7"][data-column="2"]');
    await paste("210\t140\t21\t190\r\n211\t141\t22\t191\r\n212\t142\t23\t192\r\n");
    expect([await cell(7, "Leaf height"), await cell(8, "Leaf height"), await cell(9, "Leaves")]).toEqual([
      "210",
      "211",
      "192",
    ]);
    expect(await cell(9, "Seat")).toBe("10");
    await withControl("KeyZ");
    expect(await page.$$eval("tbody tr", (rows) => rows.length)).toBe(8);
    await paste('"open');
    expect(await textOf(page, "[data-line]", /table/)).toContain("no table");
  });

  it("tells of another hand at the same table, and loses neither", async () => {
    await open("winter-evenings");
    await page.click('[data-row="0"][data-column="5"]');
    await page.keyboard.type("97");
    await press("Enter");
    desk.project.write(BOOKS, desk.project.read(BOOKS).replace("2,harbour-moon,222", "2,harbour-moon,223"));
    desk.follow([BOOKS]);
    await page.waitForSelector('[data-news-do="take"]', { timeout: 60_000 });
    expect(await cell(0, "Leaves")).toBe("97");
    await page.click('[data-news-do="take"]');
    expect([await cell(0, "Leaves"), await cell(1, "Leaf height")]).toEqual(["96", "223"]);
  });

  it("shows a workbook, and gives its rows as a table that can be written", async () => {
    await open("workbook");
    expect(await textOf(page, ".news", /workbook/)).toContain("books.xlsx is a workbook");
    await page.click('[data-row="0"][data-column="5"]');
    await page.keyboard.type("111");
    await press("Enter");
    expect(await page.$eval("[data-write]", (button) => (button as HTMLButtonElement).disabled)).toBe(true);
    const given = await page.evaluate(async () => {
      const link = document.querySelector<HTMLAnchorElement>("[data-csv]")!;
      const made: Blob[] = [];
      const make = URL.createObjectURL;
      URL.createObjectURL = (blob) => {
        made.push(blob as Blob);
        return make.call(URL, blob);
      };
      link.addEventListener("click", (event) => event.preventDefault());
      link.click();
      return [link.download, await made[0]!.text()];
    });
    expect(given[0]).toBe("books.csv");
    expect(given[1]).toMatch(/^seat,.*\n1,.*111/);
  });

  it.each([
    ["light", 1280],
    ["dark", 1280],
    ["light", 390],
  ] as const)("has no fault that axe finds: %s, %i px", async (scheme, width) => {
    await page.emulateMediaFeatures([{ name: "prefers-color-scheme", value: scheme }]);
    await page.setViewport({ width, height: 900 });
    await open("winter-evenings");
    await judged();
    await page.click('[data-row="5"][data-column="2"]');
    await holdAccessible(width);
  });

  it.each([
    ["light", 1280],
    ["dark", 390],
  ] as const)("has no fault in the list of all either: %s, %i px", async (scheme, width) => {
    await page.emulateMediaFeatures([{ name: "prefers-color-scheme", value: scheme }]);
    await page.setViewport({ width, height: 900 });
    await page.goto(`${desk.origin}/`);
    await page.waitForSelector(".shelf-list");
    await holdAccessible(width);
  });

  it("takes figures quickly in a class of 200 seats", async () => {
    await open("full");
    await page.click('tbody tr:nth-child(199) [data-column="2"]');
    const times = await page.evaluate(async () => {
      const press = (at: Element, key: string): void =>
        void at.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true, cancelable: true }));
      const taken: number[] = [];
      for (let i = 0; i < 7; i += 1) {
        const began = performance.now();
        press(document.activeElement!, "1");
        const field = document.querySelector<HTMLInputElement>("td input")!;
        field.value = String(178 + i);
        press(field, "Enter");
        taken.push(performance.now() - began);
        await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
        press(document.activeElement!, "ArrowUp");
      }
      return taken.sort((a, b) => a - b);
    });
    expect(await page.$eval("table", (table) => table.textContent)).toContain("184");
    expect(times[3]).toBeLessThan(SOON);
  });

  async function holdAccessible(width: number): Promise<void> {
    await page.evaluate(axe.source);
    const found = await page.evaluate(async () => {
      const { violations } = await (window as unknown as { axe: typeof axe }).axe.run(document);
      return violations.map(
        ({ id, nodes }) =>
          `${id}: ${nodes
            .map((node) => node.html)
            .join(" | ")
            .slice(0, 300)}`,
      );
    });
    expect(found).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  }
});
