import { tickUntimed } from "../../../src/core/bench/progress.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import type { Piece } from "../../../src/core/piece/piece.ts";
import { fc } from "../../seed.ts";
import { anyProgress, begin } from "../bench/made.ts";

/** A piece by hand: the first of its kit, with these leaves folded. */
export function madePiece(change: Partial<Piece> = {}, folded: readonly number[] = []): Piece {
  return {
    id: "p1",
    kit: "little-gull",
    title: "Little Gull",
    number: 1,
    name: "",
    address: "",
    progress: tickUntimed(begin(), folded.map(leafNumber)),
    notes: "",
    begun: "2026-10-03T18:00:00.000Z",
    last: "2026-10-03T20:15:00.000Z",
    edition: "little-gull/0123abcd",
    versions: { a: 1 },
    summary: { done: folded.length },
    ...change,
  };
}

/** The same piece on another fit. */
export function onFit(fit: string, change: Partial<Piece> = {}): Piece {
  return madePiece({ address: fit, progress: { ...begin(), fit }, ...change });
}

const LETTERS = "abcdefghijklmnopqrstuvwxyz0123456789-".split("");
const id = fc.string({ unit: fc.constantFrom(...LETTERS), minLength: 1, maxLength: 40 });
const count = fc.nat(1_000_000);
const instant = fc
  .date({ min: new Date("2020-01-01"), max: new Date("2099-01-01"), noInvalidDate: true })
  .map((date) => date.toISOString());
const maybe = <T>(one: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> => fc.option(one, { nil: undefined });

/** Any piece that a device can keep. */
export const anyPiece: fc.Arbitrary<Piece> = fc
  .record({
    id,
    kit: id,
    title: fc.string({ maxLength: 80 }),
    number: fc.integer({ min: 1, max: 1000 }),
    name: fc.string({ maxLength: 60 }),
    address: fc.constantFrom("", "leaves=128&thick=14", "lost=4_5"),
    progress: anyProgress,
    notes: fc.string({ maxLength: 200 }),
    begun: instant,
    last: instant,
    edition: fc.string({ maxLength: 40 }),
    declined: maybe(fc.string({ maxLength: 40 })),
    versions: fc.dictionary(id, count, { maxKeys: 4 }),
    summary: fc.record({
      done: count,
      of: maybe(count),
      percent: maybe(fc.integer({ min: 0, max: 100 })),
      leaf: maybe(fc.integer({ min: 1, max: 3000 }).map(leafNumber)),
      page: maybe(count),
    }),
  })
  .map((piece) => ({ ...piece, progress: { ...piece.progress, kit: piece.kit } }));
