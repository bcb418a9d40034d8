import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { openTestDesk, type TestDesk } from "./open-test-desk.ts";

describe("covers on the desk", () => {
  let desk: TestDesk;
  beforeEach(async () => {
    desk = await openTestDesk();
  });
  afterEach(() => desk.close());

  it("are made first, and are not there where they could not be", async () => {
    expect((await desk.get("/covers/moon?1")).status).toBe(404);
    expect(desk.visited).toEqual(["/kits/moon/small.webp"]);
    const folder = join(desk.base, ".cache/serving/kits/moon");
    mkdirSync(folder, { recursive: true });
    writeFileSync(join(folder, "small.webp"), "cover");
    const { status, text, headers } = await desk.get("/covers/moon?1");
    expect([status, text, headers["content-type"]]).toEqual([200, "cover", "image/webp"]);
    expect(desk.visited).toHaveLength(1);
  });

  it("are none of a kit that is not there", async () => {
    expect((await desk.get("/covers/sun")).status).toBe(404);
    expect(desk.visited).toEqual([]);
  });
});
