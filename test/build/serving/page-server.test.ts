import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { type IncomingMessage, request } from "node:http";
import type { AddressInfo } from "node:net";
import { hostname, tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { PageServer } from "../../../src/build/serving/page-server.ts";
import "../../english.ts";

const folder = mkdtempSync(join(tmpdir(), "leaflight-served-"));
afterAll(() => rmSync(folder, { recursive: true }));

const silent = { logger: { info: () => {}, log: () => {}, error: () => {} } };

describe("PageServer", () => {
  it.each([
    [false, /^127\.0\.0\.1$/],
    // Every address of the machine, of IPv6 where there is one.
    [true, /^(::|0\.0\.0\.0)$/],
  ])("where it is open to the network is %s, listens to %s", async (isOpenToNetwork, address) => {
    const server = new PageServer(folder, isOpenToNetwork, silent);
    server.serve(0);
    await server.ready();
    expect((server.server.address() as AddressInfo).address).toMatch(address);
    await server.close();
  });

  it("takes the next port where one is taken", async () => {
    const [first, second] = [new PageServer(folder, false, silent), new PageServer(folder, false, silent)];
    first.serve(0);
    await first.ready();
    const { port } = first.server.address() as AddressInfo;
    second.serve(port);
    await second.ready();
    const taken = second.server.address() as AddressInfo;
    expect(taken.port).toBeGreaterThan(port);
    expect(taken.address).toBe("127.0.0.1");
    await Promise.all([first.close(), second.close()]);
  });

  /** Which names lead to the machine that asks: RFC 6761 (localhost), RFC 1122 (127.0.0.1), RFC 4291 (::1); the form of Host: RFC 9110. */
  describe("by its names", () => {
    const PAGE = "<!doctype html><title>Draft</title>";
    const served = async (isOpenToNetwork: boolean, work: (port: number) => Promise<void>): Promise<void> => {
      writeFileSync(join(folder, "index.html"), PAGE);
      const server = new PageServer(folder, isOpenToNetwork, silent);
      server.serve(0);
      await server.ready();
      await work((server.server.address() as AddressInfo).port);
      await server.close();
    };

    it.each(["127.0.0.1", "localhost", "[::1]"])("answers to %s with its port", (name) =>
      served(false, async (port) => {
        const { status, text } = await ask(port, { host: `${name}:${port}` });
        expect([status, text]).toEqual([200, expect.stringContaining("Draft")]);
      }),
    );

    it("refuses others in one plain sentence, and shows nothing", () =>
      served(false, async (port) => {
        const others = ["harbour.example", "127.0.0.2", "localhost.harbour.example", "0.0.0.0"].map(
          (one) => `${one}:${port}`,
        );
        for (const host of [...others, "localhost", "127.0.0.1:1", "harbour.example"]) {
          const { status, type, text } = await ask(port, { host });
          expect([status, type], host).toEqual([403, "text/plain; charset=utf-8"]);
          expect(text).toMatch(/^This site answers to 127\.0\.0\.1, localhost and \[::1\] alone\. .+\n$/);
        }
      }));

    it("answers to addresses and to the machine's own name, too, where it is open to the network, and to no name that others made", () =>
      served(true, async (port) => {
        for (const name of ["localhost", "192.168.1.20", "[fe80::1]", hostname()])
          expect((await ask(port, { host: `${name}:${port}` })).status, name).toBe(200);
        const { status, text } = await ask(port, { host: `harbour.example:${port}` });
        expect([status, text]).toEqual([
          403,
          expect.stringContaining("an address of this machine, or to its own name"),
        ]);
      }));

    it("tells browsers to give nothing to pages of other origins", () =>
      served(true, async (port) => {
        expect((await ask(port, { host: `localhost:${port}` })).policy).toBe("same-origin");
      }));

    it.each([
      [false, "localhost", "http://localhost", 101],
      [false, "localhost", "http://harbour.example", 401],
      [false, "harbour.example", "http://harbour.example", 401],
      [true, "192.168.1.20", "http://192.168.1.20", 101],
      [true, "192.168.1.20", "http://harbour.example", 401],
      [true, "harbour.example", "http://harbour.example", 401],
    ])("open to the network: %s, tells its news at %s to a page of %s: %i", (isOpenToNetwork, name, origin, status) =>
      served(isOpenToNetwork, async (port) => {
        const upgrade = {
          ...{ connection: "Upgrade", upgrade: "websocket" },
          ...{ "sec-websocket-version": "13", "sec-websocket-key": "AAAAAAAAAAAAAAAAAAAAAA==" },
        };
        const headers = { host: `${name}:${port}`, origin: `${origin}:${port}`, ...upgrade };
        expect((await ask(port, headers)).status).toBe(status);
      }),
    );
  });
});

interface Answer {
  readonly status: number | undefined;
  readonly type: string | undefined;
  readonly policy: unknown;
  readonly text: string;
}

/** Asks with headers as another program may send them. */
function ask(port: number, headers: Readonly<Record<string, string>>): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const heard = async (response: IncomingMessage): Promise<void> => {
      const { statusCode: status, headers: told } = response;
      let text = "";
      if (status !== 101) for await (const part of response) text += String(part);
      resolve({ status, type: told["content-type"], policy: told["cross-origin-resource-policy"], text });
    };
    const asked = request({ port, host: "127.0.0.1", path: "/", headers }, (response) => void heard(response));
    asked.on("upgrade", (response, socket) => {
      socket.destroy();
      void heard(response);
    });
    asked.on("error", reject).end();
  });
}
