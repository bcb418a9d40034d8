import { readdirSync, readFileSync, statSync } from "node:fs";
import { join, relative } from "node:path";
import { gzipSync } from "node:zlib";
import sharp from "sharp";
import { afterEach, describe, expect, it } from "vitest";
import { type KitList, listSite } from "../../../src/output/offline/site-list.ts";
import { MOST_KEPT } from "../../benchmark/bounds.ts";
import { keptBytes } from "../../benchmark/first-visit.ts";
import { FIXTURE_KITS } from "../../input/kit/kit-folders.ts";
import { openOwnSite } from "../../site/own-site.ts";
import type { OpenedSite } from "../../site/shared-site.ts";
import { newReader, textOf, visit } from "../../site/visit.ts";

const KEPT = "[data-kept]";
const MOON = "kits/harbour-moon/";
const GULL = "kits/little-gull/";

/** The site without network: its host is stopped, so nothing answers. Kits: all fixtures. */
export function offlineSuite(served: () => OpenedSite): void {
  describe("the kept site", () => {
    const closing: (() => Promise<void>)[] = [];
    afterEach(async () => {
      for (const close of closing.splice(0)) await close();
    });
    const reader = async () => {
      const { context, page } = await newReader(served(), { keeps: true });
      closing.push(() => context.close());
      return page;
    };
    const cutOff = async () => {
      await served().host.stop();
      closing.push(() => served().host.start());
    };

    // Texts are kept packed.
    it("has a shell below a megabyte, as it is kept", () => {
      const { dist } = served();
      const files = readdirSync(dist, { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile())
        .map((entry) => relative(dist, join(entry.parentPath, entry.name)).replaceAll("\\", "/"));
      const bytesOf = (path: string): number => {
        const bytes = readFileSync(join(dist, path));
        return Math.min(bytes.length, gzipSync(bytes).length);
      };
      const { site } = listSite(
        files.map((path) => ({ path, name: path, bytes: () => bytesOf(path) })),
        (text) => text,
      );
      const shell = Object.keys(site.shell).reduce((sum, path) => sum + bytesOf(path), 0);
      expect(shell).toBeGreaterThan(300_000);
      expect(shell).toBeLessThan(1_000_000);
    });

    // Read back with sharp, which measures what the file holds.
    it.each([
      ["mark-192.png", 192],
      ["mark-512.png", 512],
      ["mark-maskable-512.png", 512],
    ])("has the icon %s of %d px", async (file, size) => {
      const { width, height, format } = await sharp(join(served().dist, "assets/icons", file)).metadata();
      expect([width, height, format]).toEqual([size, size, "png"]);
    });

    it("lists every file of a kit", () => {
      const folder = join(served().dist, MOON);
      const list = JSON.parse(readFileSync(join(folder, "offline.json"), "utf8")) as KitList;
      const there = readdirSync(folder, { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile())
        .map((entry) => join(entry.parentPath, entry.name).slice(folder.length))
        .filter(
          (path) =>
            !["offline.json", "social.jpg", "makeability.json", "small.webp"].includes(path) &&
            !/\/.*\.jpg$/.test(path),
        );
      expect([...Object.keys(list.files), ...Object.keys(list.rest)].sort()).toEqual(there.sort());
    });

    it("shows a visited kit with page and refit, all its files once they were asked for, and the pictures of the others", async () => {
      const page = await reader();
      await visit(served(), page, "index.html");
      await visit(served(), page, `${MOON}index.html`);
      await textOf(page, KEPT, /works offline/);
      await page.click(".kept button");
      await textOf(page, KEPT, /All of this kit/);
      await cutOff();

      await page.reload();
      expect(await page.$eval("h1", (title) => title.textContent)).toBe("Harbour Moon");
      await page.evaluate(() => document.fonts.ready);
      const drawn = await page.$eval(".hero-picture .day", (image) => (image as HTMLImageElement).naturalWidth);
      expect(drawn).toBeGreaterThan(0);
      expect(await page.evaluate(() => document.fonts.check('1rem "Source Sans 3"'))).toBe(true);

      await page.click("#fit-leaves", { count: 3 });
      await page.type("#fit-leaves", "196");
      await textOf(page, "[data-refit-state]", /worked out for your book/);

      for (const file of ["pattern.json", "pattern.csv", "cut/door-mm.svg", "cut/door-mm.dxf", "front-lit.svg"]) {
        const text = await page.evaluate(async (path) => (await fetch(path)).text(), file);
        expect(text, file).toBe(readFileSync(join(served().dist, MOON, file), "utf8"));
      }
      await visit(served(), page, `${MOON}packet/index.html?leaves=196`);
      expect(await page.$$eval("[data-sheet]", (sheets) => sheets.length)).toBeGreaterThan(5);
      await visit(served(), page, MOON);
      expect(await page.$eval("h1", (title) => title.textContent)).toBe("Harbour Moon");
      await visit(served(), page, MOON.slice(0, -1));
      expect(await page.$eval("h1", (title) => title.textContent)).toBe("Harbour Moon");

      await visit(served(), page, "");
      expect(await page.$$eval(".card", (cards) => cards.length)).toBe(FIXTURE_KITS.length);
      expect(await textOf(page, `[data-kit="harbour-moon"] .kept-tag`)).toBe("on this device");
      expect(await page.$(`[data-kit="little-gull"] .kept-tag`)).toBeNull();
      await page.waitForFunction(() =>
        [...document.querySelectorAll<HTMLImageElement>(".card-picture img")].every((one) => one.naturalWidth > 0),
      );

      await visit(served(), page, `${GULL}index.html`);
      expect(await page.$eval("h1", (title) => title.textContent)).toBe("Not on this device yet");
      const again = await page.$eval("[data-absent-again]", (link) => (link as HTMLAnchorElement).href);
      expect(again).toBe(`${served().host.site}${GULL}index.html`);
    });

    it("keeps the bench page of a visited kit", async () => {
      const page = await reader();
      await visit(served(), page, `${MOON}index.html`);
      await textOf(page, KEPT, /works offline/);
      await cutOff();
      await visit(served(), page, `${MOON}bench/index.html`);
      expect(await page.title()).toContain("Harbour Moon");
      expect(page.url()).toContain("/bench/");
    });

    it("keeps at a visit what a kit is chosen and worked by, less than a megabyte with the site, and the rest only when it is asked to", async () => {
      const page = await reader();
      await visit(served(), page, `${GULL}index.html`);
      expect(await textOf(page, KEPT)).toBe("On this device: works offline, with its bench.");
      expect(await keptBytes(page)).toBeLessThan(MOST_KEPT);
      expect(served().host.asked.filter((path) => path.startsWith(GULL) && path.endsWith(".pdf"))).toEqual([]);
      await page.click(".kept button");
      await textOf(page, KEPT, /All of this kit/);
      expect(await page.$eval(".kept button", (button) => button.checkVisibility())).toBe(false);
      await cutOff();
      await page.reload();
      const bytes = await page.evaluate(async () => (await (await fetch("packet-a4.pdf")).arrayBuffer()).byteLength);
      expect(bytes).toBe(statSync(join(served().dist, GULL, "packet-a4.pdf")).size);
    });

    it("keeps less than a megabyte of the site and its heaviest kit", async () => {
      const page = await reader();
      await visit(served(), page, `${MOON}index.html`);
      await textOf(page, KEPT, /works offline/);
      expect(await keptBytes(page)).toBeLessThan(MOST_KEPT);
    });

    it("is absent from the disk", async () => {
      const page = await reader();
      const failed: string[] = [];
      page.on("requestfailed", (request) => failed.push(request.url()));
      page.on("console", (message) => failed.push(message.text()));
      await page.goto(`file://${join(served().dist, GULL, "index.html")}`);
      expect(await page.$(KEPT)).toBeNull();
      expect(await page.$('link[rel="manifest"]')).toBeNull();
      expect(failed).toEqual([]);
    });

    it("lets a newer version wait, says so, and shows it after a reload with everything stored kept", async () => {
      const own = await openOwnSite({ kits: ["little-gull"], options: ["--no-packets"] });
      closing.push(own.close);
      const { context, page } = await newReader(own, { keeps: true });
      closing.unshift(() => context.close());
      await visit(own, page, "index.html");
      await visit(own, page, `${GULL}index.html`);
      await textOf(page, KEPT, /works offline/);
      await page.evaluate(() => localStorage.setItem("leaflight-bench", "leaf 57"));
      expect(await page.$eval(".newer", (note) => note.textContent)).toBe("");

      own.change("content/kits/little-gull/index.md", "title: Little Gull", "title: Little Gull at Dawn");
      await own.rebuild();
      await page.reload();
      expect(await page.$eval("h1", (title) => title.textContent)).toBe("Little Gull");
      await textOf(page, ".newer", /A newer version is ready/);
      expect(await page.$eval("h1", (title) => title.textContent)).toBe("Little Gull");

      // What is kept of the old version goes; what is new came while it waited.
      await own.host.stop();
      await Promise.all([page.waitForNavigation(), page.click(".newer button")]);
      expect(await page.$eval("h1", (title) => title.textContent)).toBe("Little Gull at Dawn");
      expect(await page.evaluate(() => localStorage.getItem("leaflight-bench"))).toBe("leaf 57");
      const twice = await page.evaluate(async () => {
        const cache = await caches.open((await caches.keys())[0]!);
        const paths = (await cache.keys()).map((request) => new URL(request.url).pathname);
        return paths.filter((path, i) => paths.indexOf(path) !== i);
      });
      expect(twice).toEqual([]);
      await visit(own, page, "index.html");
      expect(await page.$eval('[data-kit="little-gull"] h3', (title) => title.textContent)).toBe("Little Gull at Dawn");
    });
  });
}
