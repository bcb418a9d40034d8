import { readFileSync } from "node:fs";
import { connect } from "node:net";
import { networkInterfaces } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Asked, openTestDesk, type TestDesk } from "./open-test-desk.ts";

const FILE = "content/kits/moon/index.md";
const ROUTES = ["/api/session", "/api/state", "/api/news", `/api/text?file=${FILE}`];

/**
 * What browsers send by themselves is taken from their standards: Sec-Fetch-Site, -Mode and -Dest from Fetch Metadata Request
 * Headers (W3C), Origin from Fetch, Host from RFC 9110. A page cannot set any of them.
 */
describe("the gate of the desk", () => {
  let desk: TestDesk;
  beforeAll(async () => {
    desk = await openTestDesk();
  });
  afterAll(() => desk.close());

  const write = () => ({
    file: FILE,
    text: "taken over",
    mark: desk.texts.read(FILE).mark,
    page: "a-page-12",
    anyway: true,
  });
  const own = (): NonNullable<Asked["headers"]> => ({
    cookie: desk.cookie,
    origin: desk.origin,
    "content-type": "application/json",
    "x-leaflight-desk": desk.token,
  });

  it("stands open to nobody but this machine", async () => {
    const others = Object.values(networkInterfaces())
      .flatMap((all) => all ?? [])
      .filter(({ internal }) => !internal);
    const refused = (host: string): Promise<boolean> =>
      new Promise((resolve) => {
        const socket = connect({ host, port: desk.port, timeout: 2000 });
        socket.once("connect", () => resolve(false));
        for (const event of ["error", "timeout"]) socket.once(event, () => resolve(true));
      });
    for (const { address } of others) expect(await refused(address), address).toBe(true);
    expect(await refused("127.0.0.1")).toBe(false);
  });

  it.each(ROUTES.slice(0, 2))("answers %s only to who has the cookie", async (route) => {
    expect((await desk.get(route)).status).toBe(200);
    expect((await desk.ask(route)).status).toBe(403);
    const wrong = `${desk.cookie.slice(0, -1)}${desk.cookie.endsWith("A") ? "B" : "A"}`;
    expect((await desk.ask(route, { headers: { cookie: wrong } })).status).toBe(403);
  });

  it.each([...ROUTES, "/", "/assets/desk-entry.js", "/open?key=x"])("knows %s by no other name", async (route) => {
    const host = desk.origin.slice("http://".length);
    for (const name of [
      "harbour.example",
      `harbour.example:${desk.port}`,
      "127.0.0.1",
      `127.0.0.2:${desk.port}`,
      `${host}.example`,
    ])
      expect([400, 403], name).toContain(
        (await desk.ask(route, { headers: { cookie: desk.cookie, host: name } })).status,
      );
  });

  it.each([
    "GET /api/state HTTP/1.1\r\nHost:\r\n",
    "GET /api/state HTTP/1.0\r\n",
    "GET http://harbour.example/api/state HTTP/1.1\r\n",
  ])("answers nothing to %j, which names no host", async (head) => {
    const socket = connect(desk.port, "127.0.0.1");
    socket.write(`${head}Cookie: ${desk.cookie}\r\nConnection: close\r\n\r\n`);
    let answer = "";
    for await (const part of socket) answer += part;
    expect(answer).toMatch(/^HTTP\/1\.1 40[03] /);
    expect(answer).not.toContain("Harbour");
  });

  it.each(["same-site", "cross-site"])("gives nothing to a page that is %s", async (site) => {
    for (const route of [...ROUTES, "/assets/desk-entry.js", "/assets/desk.css"])
      for (const mode of ["cors", "no-cors", "navigate"]) {
        const headers = {
          cookie: desk.cookie,
          "sec-fetch-site": site,
          "sec-fetch-mode": mode,
          "sec-fetch-dest": "script",
        };
        expect((await desk.ask(route, { headers })).status, `${route} ${mode}`).toBe(403);
      }
  });

  it("shows its page to who goes there, and not in a frame", async () => {
    const going = { cookie: desk.cookie, "sec-fetch-mode": "navigate", "sec-fetch-site": "cross-site" };
    const page = await desk.ask("/", { headers: { ...going, "sec-fetch-dest": "document" } });
    expect(page.status).toBe(200);
    expect(page.text).not.toContain(desk.token);
    for (const dest of ["iframe", "frame", "object", "embed"])
      expect((await desk.ask("/", { headers: { ...going, "sec-fetch-dest": dest } })).status).toBe(403);
    expect(page.headers["content-security-policy"]).toContain("frame-ancestors 'none'");
    expect(page.headers["x-frame-options"]).toBe("DENY");
    expect(page.headers["cross-origin-resource-policy"]).toBe("same-origin");
    expect(page.headers["cross-origin-opener-policy"]).toBe("same-origin");
  });

  it("asks a browser that comes from elsewhere to come again from here, once", async () => {
    const headers = { accept: "text/html" };
    const first = await desk.ask("/kits/moon", { headers });
    expect(first.text).toContain('http-equiv="refresh" content="0; url=/kits/moon?again=1"');
    const second = await desk.ask("/kits/moon?again=1", { headers });
    expect(second.status).toBe(403);
    expect(second.text).not.toContain("http-equiv");
    expect(first.text + second.text).not.toContain("<script");
  });

  it("opens with its key alone", async () => {
    const wrong = await desk.ask("/open?key=0000");
    expect([wrong.status, wrong.headers["set-cookie"]]).toEqual([403, undefined]);
    const right = await desk.ask(desk.address.slice(desk.origin.length));
    expect(right.status).toBe(303);
    expect(right.headers.location).toBe("/");
    expect(String(right.headers["set-cookie"])).toMatch(/; Path=\/; HttpOnly; SameSite=Strict$/);
  });

  it.each<[string, NonNullable<Asked["headers"]>, number]>([
    ["no cookie", { cookie: undefined }, 403],
    ["no token", { "x-leaflight-desk": undefined }, 403],
    ["another token", { "x-leaflight-desk": "x".repeat(43) }, 403],
    ["no origin", { origin: undefined }, 403],
    ["another origin", { origin: "http://harbour.example" }, 403],
    ["the served site's origin", { origin: "http://localhost:8080" }, 403],
    ["an origin that is none", { origin: "null" }, 403],
    ["another host's origin", { host: "harbour.example", origin: "http://harbour.example" }, 403],
    ["a form's type", { "content-type": "application/x-www-form-urlencoded" }, 415],
    ["plain text", { "content-type": "text/plain" }, 415],
    ["plain text with JSON in it", { "content-type": "text/plain; application/json" }, 415],
    ["no type", { "content-type": undefined }, 415],
  ])("writes nothing with %s", async (_, headers, status) => {
    const before = readFileSync(join(desk.base, FILE));
    const answer = await desk.ask("/api/write", {
      method: "POST",
      headers: { ...own(), ...headers },
      body: JSON.stringify(write()),
    });
    expect(answer.status).toBe(status);
    expect(readFileSync(join(desk.base, FILE)).equals(before)).toBe(true);
    expect(answer.headers["access-control-allow-origin"]).toBeUndefined();
  });

  it.each(["PUT", "DELETE", "PATCH", "OPTIONS"])("does nothing by %s", async (method) => {
    const answer = await desk.ask("/api/write", { method, headers: own() });
    expect(answer.status).toBe(405);
    expect(Object.keys(answer.headers).filter((name) => name.startsWith("access-control"))).toEqual([]);
  });

  it("takes no more than a text can have", async () => {
    const body = JSON.stringify({ ...write(), text: "x".repeat(5_000_000) });
    expect((await desk.ask("/api/write", { method: "POST", headers: own(), body })).status).toBe(413);
    const chunked = { ...own(), "transfer-encoding": "chunked" };
    expect((await desk.ask("/api/write", { method: "POST", headers: chunked, body })).status).toBe(413);
  });

  it.each(["", "{", "[]", "null", '{"file":1}', '{"file":"content/site.yaml","text":"","mark":"","page":""}'])(
    "refuses %j as what was never asked",
    async (body) => {
      for (const route of ["/api/write", "/api/open", "/api/print", "/api/picture"])
        expect((await desk.ask(route, { method: "POST", headers: own(), body })).status, route).toBe(400);
    },
  );

  it("prints what is listed, and nothing else", async () => {
    expect((await desk.post("/api/print", { kind: "kit", slug: "no-such" })).status).toBe(404);
    expect((await desk.post("/api/print", { kind: "kit", slug: "moon" })).status).toBe(200);
    expect(desk.printed).toEqual([{ kind: "kit", slug: "moon" }]);
  });

  it("tells no place of the machine where an address leads nowhere", async () => {
    for (const path of [
      "/etc/passwd",
      "/../../etc/passwd",
      "/assets/..%2f..%2fpackage.json",
      "/assets/fonts/..%2Fx.woff2",
      "/covers/..%2f..%2f",
      "/covers/no-such",
      "/%ff",
    ]) {
      const { status, text } = await desk.get(path);
      expect([400, 404], path).toContain(status);
      expect(text).not.toContain(desk.base);
    }
  });
});
