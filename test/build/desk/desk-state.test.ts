import { rmSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { waitingDesk } from "../../../src/build/desk/desk-state.ts";
import { openTestDesk, type TestDesk } from "./open-test-desk.ts";

describe("waitingDesk(base, title, language)", () => {
  let desk: TestDesk;
  beforeEach(async () => {
    desk = await openTestDesk();
  });
  afterEach(() => desk.close());

  it("lists all kits and classes by the titles that they state", () => {
    const { site, kits, classes, isBusy } = waitingDesk(desk.base, "Harbour", "en");
    expect([site.title, isBusy]).toEqual(["Harbour", true]);
    expect(kits).toMatchObject([{ slug: "moon", title: "Moon", state: "waiting", page: "/kits/moon/", messages: [] }]);
    expect(classes).toMatchObject([{ slug: "evening", title: "An evening", state: "waiting" }]);
  });

  it("has nothing on it where there is no content", () => {
    rmSync(join(desk.base, "content"), { recursive: true });
    expect(waitingDesk(desk.base, "", "en")).toMatchObject({ kits: [], classes: [], messages: [] });
  });
});
