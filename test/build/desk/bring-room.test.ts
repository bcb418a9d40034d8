import { cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { BringRoom } from "../../../src/build/desk/bring-room.ts";
import { BuildError } from "../../../src/build/errors/build-error.ts";
import { USUAL_BOOK } from "../../../src/core/beginning/answers.ts";
import type { NewKitForm } from "../../../src/input/beginning/new-kit-form.ts";

let base = "";
let rooms: BringRoom[] = [];

beforeEach(() => {
  base = mkdtempSync(join(tmpdir(), "leaflight-room-"));
  cpSync(join(import.meta.dirname, "../../../content/words"), join(base, "content/words"), { recursive: true });
});

afterEach(async () => {
  await Promise.all(rooms.map((room) => room.close()));
  rooms = [];
  rmSync(base, { recursive: true, force: true });
});

function roomWith(mostTime?: number): BringRoom {
  const room = new BringRoom({ base, content: "content" }, mostTime);
  rooms.push(room);
  return room;
}

function heart(title: string): NewKitForm {
  const picture = { from: "outline", name: "heart" } as const;
  return { slug: "heart", title, picture, book: USUAL_BOOK, units: "mm", draft: false };
}

describe("BringRoom", () => {
  it("answers one look after the other, and of those that wait only the last", async () => {
    const room = roomWith();
    const looks = await Promise.all(["a", "b", "c", "d"].map((title) => room.look(heart(title))));
    expect(looks.map((look) => (look === "late" ? look : look?.kit?.title))).toEqual(["a", "late", "late", "d"]);
    expect(await room.look(heart("e"))).toMatchObject({ kit: { title: "e" } });
  });

  it("makes a kit", async () => {
    expect(await roomWith().make(heart("Heart"))).toEqual({ slug: "heart" });
  });

  it("gives up what takes too long, and goes on with another thread", async () => {
    const room = roomWith(1);
    await expect(room.make(heart("Heart"))).rejects.toThrow(BuildError);
    await expect(room.look(heart("Heart"))).rejects.toThrow(/takes too long/);
    await expect(Promise.all([room.look(heart("a")), room.look(heart("b"))])).rejects.toThrow(BuildError);
  });

  it("finds icons by what they show", async () => {
    const icons = await roomWith().icons("sailboat");
    expect(icons[0]).toMatchObject({ name: "sailboat", path: expect.stringMatching(/^M/) });
    expect(await roomWith().seen("00000000-0000-4000-8000-000000000000")).toBeUndefined();
  });
});
