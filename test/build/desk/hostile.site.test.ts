import { readFileSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import type { Browser, Page } from "puppeteer";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "../../site/open-browser.ts";
import { MOON, openTestDesk, type TestDesk } from "./open-test-desk.ts";

const FILE = "content/kits/moon/index.md";

/** A browser may take so long on a busy machine, ms. */
const PATIENCE = 240_000;

/** A name that its owner makes lead to this machine once a page of his is open (DNS rebinding). */
const REBOUND = "rebound.example";

/** What a page tried, and what came of it. */
type Outcome = Readonly<Record<string, string>>;

/** What a hostile page does, with all that it may know: the address of the desk and its routes, but none of its keys. */
const ATTACK = async (origin: string, write: string): Promise<Outcome> => {
  const found: Record<string, string> = {};
  const tried = async (name: string, work: () => Promise<string>): Promise<void> => {
    const slow = new Promise<string>((resolve) => setTimeout(() => resolve("nothing"), 2500));
    found[name] = await Promise.race([work(), slow]).catch((error: unknown) => `error ${String(error)}`);
  };
  const routes = ["/", "/api/session", "/api/state", "/api/text?file=content/site.yaml", "/assets/desk.css"];
  for (const route of routes)
    for (const mode of ["cors", "no-cors", "same-origin"] as const)
      await tried(`fetch ${mode} ${route}`, async () => {
        const answer = await fetch(origin + route, { mode, credentials: "include", redirect: "follow" });
        return `read ${await answer.text()}`;
      });
  for (const type of ["application/json", "text/plain", "application/x-www-form-urlencoded", "multipart/form-data"])
    for (const mode of ["cors", "no-cors"] as const)
      for (const route of ["/api/write", "/api/print", "/api/open"])
        await tried(`post ${mode} ${type} ${route}`, async () => {
          const headers = { "content-type": type, "x-leaflight-desk": "guess" };
          const sent = { method: "POST", mode, credentials: "include", headers, body: write } as const;
          return `read ${await (await fetch(origin + route, sent)).text()}`;
        });
  await tried("beacon", async () => `${navigator.sendBeacon(`${origin}/api/write`, write)}`);
  await tried("old request", async () => {
    const request = new XMLHttpRequest();
    request.withCredentials = true;
    request.open("POST", `${origin}/api/write`);
    request.setRequestHeader("content-type", "text/plain");
    const ended = new Promise((resolve) => request.addEventListener("loadend", resolve));
    request.send(write);
    await ended;
    return request.responseText === "" ? "nothing" : `read ${request.responseText}`;
  });
  const loaded = (element: HTMLElement): Promise<string> =>
    new Promise((resolve) => {
      element.addEventListener("load", () => resolve("loaded"));
      element.addEventListener("error", () => resolve("nothing"));
      document.body.append(element);
    });
  const made = <K extends keyof HTMLElementTagNameMap>(name: K, fields: object): HTMLElementTagNameMap[K] =>
    Object.assign(document.createElement(name), fields);
  for (const route of ["/covers/moon", "/api/state", "/assets/fonts/literata-latin-wght-normal.woff2"])
    await tried(`picture ${route}`, () => loaded(made("img", { src: origin + route })));
  for (const route of ["/api/state", "/api/session", "/assets/desk-entry.js"])
    await tried(`script ${route}`, () => loaded(made("script", { src: origin + route })));
  await tried("module", () => loaded(made("script", { type: "module", src: `${origin}/assets/desk-entry.js` })));
  await tried("style", () => loaded(made("link", { rel: "stylesheet", href: `${origin}/assets/desk.css` })));
  for (const name of ["iframe", "object", "embed"] as const)
    await tried(`${name} to look into`, async () => {
      const element = made(name, name === "object" ? { data: `${origin}/` } : { src: `${origin}/` });
      await loaded(element);
      try {
        const inside = (element as HTMLIFrameElement).contentDocument?.body?.textContent ?? "";
        return inside.includes("desk") ? `read ${inside}` : "nothing";
      } catch {
        return "nothing";
      }
    });
  for (const enctype of ["text/plain", "application/x-www-form-urlencoded", "multipart/form-data"])
    await tried(`form ${enctype}`, async () => {
      const frame = made("iframe", { name: `frame-${enctype}` });
      const form = made("form", { method: "post", action: `${origin}/api/write`, enctype, target: frame.name });
      // As plain text, a name and a value with a sign between them can be JSON.
      form.append(made("input", { name: write.slice(0, -1), value: "}" }));
      document.body.append(frame, form);
      form.submit();
      await new Promise((resolve) => setTimeout(resolve, 300));
      return "nothing";
    });
  await tried("events", () => {
    const source = new EventSource(`${origin}/api/news`, { withCredentials: true });
    return new Promise((resolve) => {
      source.addEventListener("open", () => resolve("read news"));
      source.addEventListener("error", () => resolve("nothing"));
    });
  });
  await tried("socket", () => {
    const socket = new WebSocket(`${origin.replace("http", "ws")}/api/news`);
    return new Promise((resolve) => {
      socket.addEventListener("open", () => resolve("read socket"));
      socket.addEventListener("error", () => resolve("nothing"));
    });
  });
  await tried("worker", async () => {
    try {
      new Worker(`${origin}/assets/desk-entry.js`);
      return "loaded";
    } catch {
      return "nothing";
    }
  });
  await tried("window", async () => {
    const other = open(`${origin}/`, "_blank");
    await new Promise((resolve) => setTimeout(resolve, 800));
    try {
      const inside = other?.document?.body?.textContent ?? "";
      return inside.includes("desk") ? `read ${inside}` : "nothing";
    } catch {
      return "nothing";
    }
  });
  return found;
};

describe("a hostile page in the browser that has the desk open", () => {
  let desk: TestDesk;
  let server: Server;
  let browser: Browser;
  let port: number;
  beforeAll(async () => {
    desk = await openTestDesk();
    server = createServer((_, response) => {
      response.setHeader("content-type", "text/html");
      response.end("<!doctype html><title>Hostile</title><body>");
    });
    await new Promise<void>((resolve) => server.listen(0, "0.0.0.0", resolve));
    port = (server.address() as AddressInfo).port;
    browser = await openBrowser([`--host-resolver-rules=MAP ${REBOUND} 127.0.0.1`, "--disable-popup-blocking"]);
    const page = await browser.newPage();
    await page.goto(desk.address);
  }, PATIENCE);
  afterAll(async () => {
    await browser.close();
    server.close();
    await desk.close();
  });

  const write = (): string =>
    JSON.stringify({ file: FILE, text: "taken", mark: desk.texts.read(FILE).mark, page: "hostile-page", anyway: true });
  const visit = async (address: string): Promise<Page> => {
    const page = await browser.newPage();
    await page.goto(address);
    return page;
  };
  const untouched = (): void => {
    expect(readFileSync(join(desk.base, FILE), "utf8")).toBe(MOON);
    expect(desk.told).toEqual([]);
    expect(desk.printed).toEqual([]);
  };

  it.each([
    ["another port of this address", () => `http://127.0.0.1:${port}/`],
    ["another name of this machine", () => `http://localhost:${port}/`],
    ["a name that leads to this machine", () => `http://${REBOUND}:${port}/`],
  ])("at %s reads nothing and writes nothing", { timeout: PATIENCE }, async (_, address) => {
    const page = await visit(address());
    const outcome = (await page.evaluate(ATTACK, desk.origin, write())) as Outcome;
    expect(Object.keys(outcome).length).toBeGreaterThan(50);
    const got = Object.entries(outcome).filter(([, what]) => /^(read .*\S|loaded)/s.test(what));
    expect(got).toEqual([]);
    untouched();
    await page.close();
  });

  it("at the desk's port by a name that leads there is refused as a whole", { timeout: PATIENCE }, async () => {
    const page = await visit(`http://${REBOUND}:${desk.port}/`);
    expect(await page.evaluate(() => document.body.textContent)).toContain("127.0.0.1, localhost");
    const outcome = (await page.evaluate(ATTACK, `http://${REBOUND}:${desk.port}`, write())) as Outcome;
    for (const what of Object.values(outcome)) {
      expect(what).not.toContain("Harbour");
      expect(what).not.toContain(desk.token);
    }
    untouched();
    await page.close();
  });

  // Shows that the attacks could succeed: from the desk's own origin, with its token, they do.
  it("would have written, had it been the desk's own", { timeout: PATIENCE }, async () => {
    const page = await visit(`${desk.origin}/no-such-view-but-its-own-origin`);
    const status = await page.evaluate(
      async (body, token) => {
        const session = (await (await fetch("/api/session")).json()) as { token: string };
        const headers = { "content-type": "application/json", "x-leaflight-desk": session.token };
        if (session.token !== token) return 0;
        return (await fetch("/api/write", { method: "POST", headers, body })).status;
      },
      write(),
      desk.token,
    );
    expect(status).toBe(200);
    expect(readFileSync(join(desk.base, FILE), "utf8")).toBe("taken");
    await page.close();
  });
});
