import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { pathToFileURL } from "node:url";
import type { Page } from "puppeteer";
import { describe, expect, it } from "vitest";
import { axeFindings } from "../../site/axe.ts";
import type { OpenedSite } from "../../site/shared-site.ts";
import { newReader, settled, visit } from "../../site/visit.ts";

/** One kit has every kind of page, with light and window; of the guide, a chapter and a table of keys. */
const OF_OTHERS = /^classes\/|^kits\/(?!harbour-moon\/)|^guide\/(?!making-a-kit|site-settings)/;

/** The pages' policy: nothing inline, nothing from elsewhere, from a host and from the disk. */
export function policySuite(served: () => OpenedSite): void {
  const pages = () =>
    readdirSync(served().dist, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && entry.name.endsWith(".html"))
      .map((entry) => relative(served().dist, join(entry.parentPath, entry.name)))
      .sort();

  const kinds = () => pages().filter((one) => !OF_OTHERS.test(one));

  /** Uses what a page offers, so that scripts make what they make. */
  async function use(page: Page, file: string): Promise<void> {
    try {
      await touch(page);
    } catch (error) {
      throw new Error(`${file} could not be used`, { cause: error });
    }
  }

  async function touch(page: Page): Promise<void> {
    for (const selector of ["[data-finder]:not([open]) summary", 'label:has(input[value="in"])', "[data-round-open]"]) {
      const found = await page.$(selector);
      if (found && (await found.isVisible())) await found.click();
    }
    for (const [selector, text] of [
      ["#fit-blockThickness", "0.9 in"],
      ["#find-leafHeight", "8 in"],
    ] as const) {
      const field = await page.$(selector);
      if (!field) continue;
      await field.click({ count: 3 });
      await field.type(text);
    }
    await settled(page);
  }

  describe("the policy", () => {
    it("stands in every page, before anything that could load", () => {
      for (const file of pages()) {
        const html = readFileSync(join(served().dist, file), "utf8");
        const [, policy] = /<meta http-equiv="Content-Security-Policy" content="([^"]+)">/.exec(html) ?? [];
        expect(policy, file).toContain("default-src 'none'");
        expect(policy, file).not.toMatch(/unsafe|https?:|\*/);
        expect(html.indexOf("Content-Security-Policy")).toBeLessThan(html.search(/<(link|script|img|style)\b/));
      }
    });

    it("leaves no inline style or script for it to block", () => {
      for (const file of pages()) {
        const html = readFileSync(join(served().dist, file), "utf8");
        expect(html, file).not.toMatch(/<style\b|<[a-z][^>]*\s(style|on[a-z]+)=/i);
      }
    });

    // Sources: axe-core's rules after WCAG 2.2; 1.4.10 Reflow: 320 px wide without scrolling sideways, drawings to scale in boxes of their own.
    it.each([
      ["host", "light", 320],
      ["disk", "dark", 1280],
    ] as const)(
      "is not violated by any page from the %s, nothing leaves the site, and in %s at %d px axe finds nothing and nothing scrolls sideways",
      async (from, scheme, width) => {
        const { host, dist } = served();
        const base = from === "host" ? host.site : pathToFileURL(`${dist}/`).href;
        const { context, page } = await newReader(served());
        await page.setViewport({ width, height: 800 });
        await page.emulateMediaFeatures([{ name: "prefers-color-scheme", value: scheme }]);
        const wrong = watch(page, base);
        // Only a host has a page for missing addresses.
        for (const file of kinds().filter((one) => from === "host" || one !== "404.html")) {
          const many = wrong.length;
          await (from === "host" ? visit(served(), page, file) : page.goto(base + file));
          const styled = await page.evaluate(() => getComputedStyle(document.body).marginTop);
          expect(styled, file).toBe("0px");
          await use(page, file);
          wrong.push(...(await axeFindings(page)));
          const wide = await page.evaluate(() => document.documentElement.scrollWidth);
          if (wide > width) wrong.push(`${wide} px wide`);
          for (let i = many; i < wrong.length; i += 1) wrong[i] = `${file}: ${wrong[i]}`;
        }
        await context.close();
        expect(wrong.join("\n")).toBe("");
      },
    );

    it("lets a packet page lay itself out for another book and paper", async () => {
      const { context, page } = await newReader(served());
      const wrong: string[] = [];
      page.on("console", (message) => wrong.push(message.text()));
      await visit(served(), page, "kits/little-gull/packet/index.html?leaves=120&thick=14");
      await page.waitForFunction(() => document.adoptedStyleSheets.length > 0);
      const drawn = await page.waitForFunction(() => {
        const image = document.querySelector<HTMLImageElement>(".cover-picture")!;
        return image.src.startsWith("blob:") && image.complete && image.naturalWidth;
      });
      expect(await drawn.jsonValue()).toBeGreaterThan(0);
      expect(wrong).toEqual([]);
      await context.close();
    });
  });
}

/** What goes wrong on a page from now on: what leaves its site, fails, or is told. */
function watch(page: Page, base: string): string[] {
  const wrong: string[] = [];
  page.on("request", (request) => {
    const url = request.url();
    if (!url.startsWith(base) && !/^(blob|data):/.test(url)) wrong.push(`left the site: ${url}`);
  });
  page.on("requestfailed", (request) => {
    const why = request.failure()?.errorText;
    // What a page still asks for while it is left is no fault of it.
    if (why !== "net::ERR_ABORTED") wrong.push(`failed: ${request.url()}: ${why}`);
  });
  page.on("response", (response) => {
    if (response.status() >= 400) wrong.push(`${response.status()}: ${response.url()}`);
  });
  page.on("pageerror", (error) => wrong.push(String(error)));
  page.on("console", (message) => {
    // Chromium without a graphics card says this of WebGL.
    if (!/GPU stall|GL Driver Message|WebGL/.test(message.text())) wrong.push(message.text());
  });
  return wrong;
}
