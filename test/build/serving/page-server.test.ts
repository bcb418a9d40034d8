import { mkdtempSync, rmSync } from "node:fs";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { PageServer } from "../../../src/build/serving/page-server.ts";

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
});
