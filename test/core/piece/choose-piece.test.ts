import { describe, expect, it } from "vitest";
import { choosePiece } from "../../../src/core/piece/choose-piece.ts";
import { madePiece, onFit } from "./made-piece.ts";

const OWN = madePiece({ id: "own", last: "2026-10-01T20:00:00.000Z" });
const MINE = onFit("leaves=128", { id: "mine", last: "2026-10-09T20:00:00.000Z" });
const EARLIER = onFit("leaves=128", { id: "earlier", last: "2026-10-02T20:00:00.000Z" });
const MOON = madePiece({ id: "moon", kit: "harbour-moon", last: "2026-11-01T20:00:00.000Z" });
const ALL = [OWN, EARLIER, MINE, MOON];

const asked = (id: string | undefined, fit: string | undefined, pieces = ALL) => {
  const chosen = choosePiece(pieces, { id, kit: "little-gull", fit });
  return [chosen.kind, "piece" in chosen ? chosen.piece?.id : undefined];
};

describe("an address of the bench", () => {
  it("opens the piece that it names", () => {
    expect(asked("earlier", undefined)).toEqual(["found", "earlier"]);
    expect(asked("earlier", "leaves=128")).toEqual(["found", "earlier"]);
  });

  it("opens a named piece on its own book, and tells where the address says another", () => {
    expect(asked("own", "leaves=128")).toEqual(["other-book", "own"]);
    expect(asked("mine", "")).toEqual(["other-book", "mine"]);
  });

  it("means the last piece of its fit where it names none, and never one of another fit or kit", () => {
    expect(asked(undefined, "leaves=128")).toEqual(["likely", "mine"]);
    expect(asked(undefined, "")).toEqual(["likely", "own"]);
    expect(asked(undefined, "leaves=130")).toEqual(["new", undefined]);
  });

  it("means the last piece of the kit where it states no figure", () => {
    expect(asked(undefined, undefined)).toEqual(["likely", "mine"]);
    expect(asked(undefined, undefined, [MOON])).toEqual(["new", undefined]);
  });

  it("begins another one when it is asked to", () => {
    expect(asked("new", "leaves=128")).toEqual(["new", undefined]);
    expect(asked("new", undefined)).toEqual(["new", undefined]);
  });

  it("tells where the named piece is not here, or is of another kit", () => {
    expect(asked("gone", "leaves=128")).toEqual(["absent", "mine"]);
    expect(asked("gone", "leaves=130")).toEqual(["absent", undefined]);
    expect(asked("moon", undefined)).toEqual(["absent", "mine"]);
  });
});
