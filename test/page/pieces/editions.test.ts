import { describe, expect, it } from "vitest";
import { editionOf } from "../../../src/core/piece/edition.ts";
import { dropEditions, keepEdition, keptEdition } from "../../../src/page/pieces/editions.ts";
import { madeKit } from "../../core/kit/made-kit.ts";
import { madePiece } from "../../core/piece/made-piece.ts";
import { fakeStore } from "./fake-store.ts";

const DATA = { kit: madeKit(), cautions: [] };
const EDITION = editionOf(DATA.kit);

describe("a kit's state that is kept with a piece", () => {
  it("comes back as it was, and takes a fraction of its room", async () => {
    const { store, kept } = fakeStore();
    await keepEdition(store, DATA);
    expect(await keptEdition(store, EDITION)).toEqual(JSON.parse(JSON.stringify(DATA)));
    expect(kept.get(EDITION)!.byteLength).toBeLessThan(JSON.stringify(DATA).length / 1.5);
  });

  it("has another name after any change, and the same for the same kit", () => {
    expect(editionOf(structuredClone(DATA.kit))).toBe(EDITION);
    expect(editionOf({ ...DATA.kit, title: `${DATA.kit.title}.` })).not.toBe(EDITION);
  });

  it("is not opened where it is damaged, of another form, or not what its name says", async () => {
    const { store, kept } = fakeStore();
    await keepEdition(store, DATA);
    const whole = kept.get(EDITION)!;
    kept.set("half", whole.slice(0, whole.byteLength / 2));
    kept.set("empty", new ArrayBuffer(0));
    kept.set("other", whole);
    for (const name of ["half", "empty", "other", "absent"]) expect(await keptEdition(store, name)).toBeUndefined();
    const packed = await new Response(
      new Blob([JSON.stringify({ form: 0, data: DATA })]).stream().pipeThrough(new CompressionStream("gzip")),
    ).arrayBuffer();
    kept.set(EDITION, packed);
    expect(await keptEdition(store, EDITION)).toBeUndefined();
  });

  it("goes once no piece needs it", async () => {
    const { store, kept } = fakeStore();
    await keepEdition(store, DATA);
    await dropEditions(store, [madePiece({ edition: EDITION })]);
    expect([...kept.keys()]).toEqual([EDITION]);
    await dropEditions(store, [madePiece()]);
    expect([...kept.keys()]).toEqual([]);
  });
});
