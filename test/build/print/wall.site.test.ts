import { readFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import type { Browser } from "puppeteer";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { findBrowser } from "../../../src/build/browser/find-browser.ts";
import { PrintError } from "../../../src/build/print/print-error.ts";
import { printEach } from "../../../src/build/print/printing.ts";
import { Wall } from "../../../src/build/print/wall.ts";
import { sharedBrowser } from "../../site/shared-site.ts";
import { type Canary, type MadeSite, madeSite, openCanary, SECRET } from "./made-site.ts";

/** A page without a policy of its own that tries what a page can try. */
function greedy(host: string, secret: string): string {
  return `<!doctype html><html><head><title>quiet</title>
<meta http-equiv="refresh" content="1; url=http://${host}/refresh">
<link rel="preconnect" href="http://${host}"><link rel="dns-prefetch" href="//greedy.example">
<link rel="stylesheet" href="http://${host}/sheet.css"><link rel="stylesheet" href="own.css">
<script>document.title = "ran"; fetch("http://${host}/fetch"); new WebSocket("ws://${host}/socket");
new RTCPeerConnection({ iceServers: [{ urls: "stun:${host}" }] }).createDataChannel("a");
fetch("${secret}").then((a) => a.text()).then((text) => document.body.append(text));</script>
<script src="own.js"></script></head><body onload="document.title = 'ran'">
<img id="own" src="own.svg"><img id="net" src="http://${host}/picture.png"><img id="disk" src="${secret}">
<img id="link" src="leads-out.svg"><img id="up" src="../secret.svg"><img id="coded" src="..%2fsecret.svg">
<iframe src="${secret}"></iframe><iframe src="http://${host}/frame"></iframe><object data="${secret}"></object>
<embed src="${secret}"><video src="http://${host}/film"></video><form action="http://${host}/form"></form>
<p class="red">text</p></body></html>`;
}

describe("a page that tries to get out while it is printed", () => {
  let site: MadeSite;
  let canary: Canary;
  let browser: Browser;
  beforeAll(async () => {
    site = madeSite();
    canary = await openCanary();
    browser = await sharedBrowser();
    const secret = pathToFileURL(site.secret).href;
    site.write("greedy.html", greedy(canary.address, secret));
    site.write(
      "own.css",
      `@import "http://${canary.address}/more.css"; .red { color: rgb(255, 0, 0);
      background: url(http://${canary.address}/back.png) } @font-face { font-family: f; src: url(${secret}) }`,
    );
    site.write("own.js", 'document.title = "ran"');
    site.write("plain.html", "<!doctype html><html><head><title>p</title></head><body><p>plain</p></body></html>");
  });
  afterAll(async () => {
    await browser?.disconnect();
    await canary?.stop();
    site?.remove();
  });

  it("gets its own files and nothing else, and runs nothing", async () => {
    const page = await browser.newPage();
    const wall = await Wall.around(page, site.output);
    await wall.open(site.job("greedy.html").page, "@page { margin: 1mm }");
    const seen = await page.evaluate(() => ({
      title: document.title,
      text: document.body.textContent,
      colour: getComputedStyle(document.querySelector(".red")!).color,
      origin: location.origin,
      sheets: [...document.styleSheets].map((sheet) => sheet.href?.split("/").at(-1)),
      widths: Object.fromEntries([...document.images].map((image) => [image.id, image.naturalWidth])),
    }));
    const frames = await Promise.all(
      page
        .frames()
        .slice(1)
        .map((frame) => frame.content().catch(() => "")),
    );
    await page.close();
    expect(seen.title).toBe("quiet");
    expect(seen.text).not.toContain(SECRET);
    expect(seen.colour).toBe("rgb(255, 0, 0)");
    expect(seen.origin).toBe("https://packet.invalid");
    expect(seen.sheets.at(-1)).toBe(".packet-rule.css");
    expect(seen.widths).toEqual({ own: 40, net: 0, disk: 0, link: 0, up: 0, coded: 0 });
    expect(frames.join("")).not.toContain(SECRET);
    expect(canary.visits()).toBe(0);
    const blocked = wall.blocked().join(" ");
    for (const asked of ["sheet.css", "picture.png", "leads-out.svg", "more.css", "secret.svg"])
      expect(blocked).toContain(asked);
  });

  it("is told of, with what it asked for, and not printed", async () => {
    const printing = { found: await findBrowser(), output: site.output, address: undefined, note: () => undefined };
    const printed: string[] = [];
    const run = printEach(printing, [site.job("plain.html"), site.job("greedy.html")], ({ title }) =>
      printed.push(title),
    );
    await expect(run).rejects.toBeInstanceOf(PrintError);
    await expect(run).rejects.toThrow(/greedy\.html: asks for what is no file of this site.*127\.0\.0\.1/);
    expect(printed).toEqual(["plain.html"]);
    expect(canary.visits()).toBe(0);
    expect(readFileSync(site.secret, "utf8")).toContain(SECRET);
  });
});
