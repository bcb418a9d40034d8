import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "puppeteer";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { type OwnSite, openOwnSite } from "../../site/own-site.ts";
import type { Answer } from "../../site/serve.ts";
import { newReader, textOf, visit } from "../../site/visit.ts";

const GULL = "kits/little-gull/";
const KEPT = "[data-kept]";
const NOTE = ".newer";

/** The gate of an open network: it answers everything with its own page. */
const PORTAL: Answer = {
  status: 200,
  type: "text/html",
  body: "<!doctype html><title>Gate</title><h1>Please sign in</h1>",
};
const MISSING: Answer = { status: 404, type: "text/html", body: "<!doctype html><h1>Nothing here</h1>" };

/** Deploys while readers keep a kit: what is kept stays of one version. */
export function wholeSuite(): void {
  describe("a kept kit and its host", () => {
    let own: OwnSite;
    let isOther = false;
    const closing: (() => Promise<void>)[] = [];

    beforeAll(async () => {
      own = await openOwnSite({ kits: ["little-gull"] });
    });
    afterAll(() => own?.close());
    afterEach(async () => {
      own.host.instead = undefined;
      for (const close of closing.splice(0)) await close();
    });

    const title = (): string => (isOther ? "Little Gull at Dawn" : "Little Gull");
    /** Puts the other of two versions in the place of the one on the host: each is printed once. */
    const deploy = async (): Promise<void> => {
      const before = title();
      isOther = !isOther;
      own.change(`content/${GULL}index.md`, `title: ${before}`, `title: ${title()}`);
      await own.rebuild();
    };
    const keeps = async (): Promise<Page> => {
      const { context, page } = await newReader(own, { keeps: true });
      closing.push(() => context.close());
      await visit(own, page, `${GULL}index.html`);
      await textOf(page, KEPT, /works offline/);
      return page;
    };
    const heading = (page: Page): Promise<string> => page.$eval("h1", (one) => one.textContent!);
    const packet = (page: Page): Promise<string> =>
      page.evaluate(async () => {
        const bytes = new Uint8Array(await (await fetch("packet-a4.pdf")).arrayBuffer());
        return Array.from(bytes, (byte) => String.fromCharCode(byte)).join("");
      });
    const built = (): string => readFileSync(join(own.dist, GULL, "packet-a4.pdf"), "latin1");
    /** Addresses of what is kept. */
    const stored = (page: Page): Promise<string[]> =>
      page.evaluate(async () => {
        const cache = await caches.open((await caches.keys())[0]!);
        return (await cache.keys()).map((request) => request.url).sort();
      });

    it("gives no packet of a newer version with a kept page, but leads to that version", async () => {
      const page = await keeps();
      expect(await packet(page)).toBe(built());
      const old = title();
      await deploy();
      await visit(own, page, `${GULL}packet-a4.pdf`);
      expect(await textOf(page, "h1", /newer/)).toBe("The site has a newer version");
      expect(await textOf(page, "[data-absent-text]", /on this device is version/)).toContain(
        "newer version of the kit",
      );
      await Promise.all([page.waitForNavigation(), page.click("[data-absent-again]")]);
      expect(await heading(page)).toBe(old);
      await textOf(page, NOTE, /A newer version is ready/);
      await Promise.all([page.waitForNavigation(), page.click(`${NOTE} button`)]);
      expect(await heading(page)).toBe(title());
      expect(await packet(page)).toBe(built());
    });

    it("keeps the packet of the kept version after a deploy", async () => {
      const page = await keeps();
      await page.click(".kept button");
      await textOf(page, KEPT, /All of this kit/);
      const [old, oldPacket] = [title(), built()];
      await deploy();
      await page.reload();
      expect(await heading(page)).toBe(old);
      expect(await packet(page)).toBe(oldPacket);
      await textOf(page, NOTE, /A newer version is ready/);
      await own.host.stop();
      await Promise.all([page.waitForNavigation(), page.click(`${NOTE} button`)]);
      expect([await heading(page), await packet(page)]).toEqual([title(), built()]);
      await own.host.start();
    });

    it.each<[string, (path: string) => Answer | undefined]>([
      ["cut off halfway", (path) => (path.endsWith("kit-data.js") ? MISSING : undefined)],
      [
        "given truncated files",
        (path) =>
          path.endsWith("kit-data.js") ? { status: 200, type: "text/javascript", body: "leaf", cut: true } : undefined,
      ],
      ["given pages in place of files", (path) => (/\.(svg|json)$/.test(path) ? PORTAL : undefined)],
    ])("stays whole at its version while an update is %s, and says so", async (_, fault) => {
      const page = await keeps();
      const [old, before] = [title(), new Set(await stored(page))];
      await deploy();
      own.host.instead = fault;
      await page.reload();
      await textOf(page, NOTE, /could not be saved whole/);
      expect(await heading(page)).toBe(old);
      const after = new Set(await stored(page));
      expect([...before].filter((address) => !after.has(address))).toEqual([]);
      await own.host.stop();
      await page.reload();
      expect(await heading(page)).toBe(old);
      await own.host.start();
      own.host.instead = undefined;
      await page.reload();
      await textOf(page, NOTE, /A newer version is ready/);
    });

    it.each<[string, RegExp, (() => Answer) | undefined]>([
      ["is a captive portal", /answers with something that is not this site/, () => PORTAL],
      ["has nothing any more", /no longer there/, () => MISSING],
      ["breaks", /answers with something that is not this site/, () => ({ ...MISSING, status: 500 })],
      ["does not answer", /could not be reached/, undefined],
    ])("is told where the host %s, with the kept version, and nothing of it is kept", async (_, words, instead) => {
      const page = await keeps();
      const before = await stored(page);
      own.host.instead = instead;
      if (!instead) await own.host.stop();
      await page.reload();
      const note = await textOf(page, NOTE, words);
      expect(note).toMatch(/kept on this device: version \S+ of \d+ \w+ \d{4}\./);
      expect(await heading(page)).toBe(title());
      await visit(own, page, `${GULL}packet-a4.pdf`);
      expect(await textOf(page, "h1", /file/)).toBe("This file is not on this device");
      await page.goBack();
      expect(await stored(page)).toEqual(before);
      if (!instead) await own.host.start();
    });

    it("says that there is no room, and gives the room back", async () => {
      const { context, page } = await newReader(own, { keeps: true });
      closing.push(() => context.close());
      await visit(own, page, "index.html");
      await page.waitForFunction(async () => (await navigator.serviceWorker.ready).active?.state === "activated");
      const before = await stored(page);
      const session = await page.createCDPSession();
      const { usage } = await session.send("Storage.getUsageAndQuota", { origin: new URL(own.host.site).origin });
      await session.send("Storage.overrideQuotaForOrigin", {
        origin: new URL(own.host.site).origin,
        quotaSize: usage + 20_000,
      });
      await visit(own, page, `${GULL}index.html`);
      await textOf(page, KEPT, /There is no room left/);
      const kept = (await stored(page)).filter((address) => !before.includes(address));
      expect(kept.filter((address) => address.includes("offline.json"))).toEqual([]);
      expect(existsSync(join(own.dist, GULL, "offline.json"))).toBe(true);
    });
  });
}
