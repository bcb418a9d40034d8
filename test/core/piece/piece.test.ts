import { describe, expect, it } from "vitest";
import { beginPiece, latestFirst, nextNumber, noteOn, workOn } from "../../../src/core/piece/piece.ts";
import { begin } from "../bench/made.ts";
import { madePiece } from "./made-piece.ts";

const NOW = "2026-11-29T19:00:00.000Z";

describe("a piece", () => {
  it("begins without name and notes, with its device's first change", () => {
    const { id, kit, title, number, address, edition, summary } = madePiece();
    const start = { id, kit, title, number, address, edition, summary, progress: begin() };
    expect(beginPiece(start, { device: "d", now: NOW })).toEqual({
      ...start,
      name: "",
      notes: "",
      begun: NOW,
      last: NOW,
      versions: { d: 1 },
    });
  });

  it("keeps its begin, name and notes while work goes on, and counts the change", () => {
    const piece = madePiece({ name: "Gull for the door", notes: "new blade", versions: { a: 1 } });
    const done = { address: "lost=4", progress: begin(), summary: { done: 3 } };
    const after = workOn(piece, done, { device: "b", now: NOW });
    expect(after).toEqual({ ...piece, ...done, last: NOW, versions: { a: 1, b: 1 } });
  });

  it("takes a name without spaces around it and notes, both bounded; that is no evening's work", () => {
    const piece = madePiece();
    const named = noteOn(piece, { name: `  ${"x".repeat(70)}  `, notes: "n".repeat(3000) }, { device: "a" });
    expect([named.name.length, named.notes.length, named.last, named.versions]).toEqual([
      60,
      2000,
      piece.last,
      { a: 2 },
    ]);
    expect(noteOn(named, { notes: "" }, { device: "a" })).toMatchObject({ name: named.name, notes: "" });
  });

  it("has a number of its own among those of its kit, also after one was removed", () => {
    expect(nextNumber([], "little-gull")).toBe(1);
    const kept = [madePiece({ number: 3 }), madePiece({ id: "p2", number: 1 }), madePiece({ kit: "other", number: 9 })];
    expect(nextNumber(kept, "little-gull")).toBe(4);
  });

  it("comes first where it was worked on last", () => {
    const days = ["2026-10-03T20:00:00Z", "2026-11-20T20:00:00Z", "2026-10-10T20:00:00Z"];
    const pieces = days.map((last, i) => madePiece({ id: `p${i}`, last }));
    expect(latestFirst(pieces).map(({ id }) => id)).toEqual(["p1", "p2", "p0"]);
  });
});
