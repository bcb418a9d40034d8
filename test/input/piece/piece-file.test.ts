import { describe, expect, it } from "vitest";
import { parsePieces, readPiece, serialisePieces, writePiece } from "../../../src/input/piece/piece-file.ts";
import { progressFailure } from "../../../src/words/progress.ts";
import { anyPiece, madePiece } from "../../core/piece/made-piece.ts";
import { fc } from "../../seed.ts";

const why = (text: string): string => {
  const read = parsePieces(text);
  if ("pieces" in read) throw new Error("the text was taken in");
  return progressFailure(read.failure);
};
const file = (change: object): string => {
  const text = JSON.parse(serialisePieces([madePiece({}, [1, 2])])) as { pieces: object[] };
  return JSON.stringify({ ...text, pieces: [{ ...text.pieces[0], ...change }] });
};

describe("a file of pieces", () => {
  it("gives back what was written, whatever it is", () => {
    fc.assert(
      fc.property(fc.uniqueArray(anyPiece, { selector: ({ id }) => id, maxLength: 3 }), (pieces) => {
        expect(parsePieces(serialisePieces(pieces))).toEqual({ pieces });
      }),
      { numRuns: 200 },
    );
  });

  it("is what a device keeps of each", () => {
    fc.assert(
      fc.property(anyPiece, (piece) => {
        expect(readPiece(structuredClone(writePiece(piece)))).toEqual({ piece });
      }),
      { numRuns: 100 },
    );
  });

  it("is refused with what is wrong, and nothing is thrown, when a part of it is damaged", () => {
    const spoil = fc.oneof(
      fc.string(),
      fc.jsonValue().map((value) => JSON.stringify(value)),
      fc.tuple(anyPiece, fc.nat()).map(([piece, at]) => {
        const text = serialisePieces([piece]);
        return text.slice(0, at % (text.length - 2));
      }),
    );
    fc.assert(
      fc.property(spoil, (text) => {
        expect(why(text)).toMatch(/^[A-Z[a-z].*\.$/s);
      }),
      { numRuns: 200 },
    );
  });

  it.each([
    ["id", "../x", 'pieces[0].id is "../x", but must be 1 to 64 letters, digits and hyphens.'],
    ["id", "", "pieces[0].id"],
    ["kit", "Little Gull", "pieces[0].kit"],
    ["kit", "javascript:alert(1)", "pieces[0].kit"],
    ["title", "x".repeat(301), "text of at most 300 letters"],
    ["name", 7, "pieces[0].name is 7"],
    ["notes", "n".repeat(2001), "text of at most 2000 letters"],
    ["number", 0, "a whole number of 0 or more"],
    ["address", 'x"><b>', "pieces[0].address"],
    ["address", "a b", "pieces[0].address"],
    ["begun", "yesterday", "a date and time like 2026-11-29T20:15:00Z"],
    ["last", "2026-13-45T99:00:00Z", "pieces[0].last"],
    ["versions", { a: -1 }, "pieces[0].versions.a is -1"],
    ["versions", { a: 1.5 }, "pieces[0].versions.a is 1.5"],
    ["versions", null, "pieces[0].versions is null"],
    ["summary", { done: 1, percent: 101 }, "a whole number from 0 to 100"],
    ["progress", {}, "pieces[0].progress"],
  ])("says where it is wrong: %s = %j", (key, value, message) => {
    expect(why(file({ [key]: value }))).toContain(message);
  });

  it("is refused for another schema, with both names", () => {
    expect(why('{"schema":"leaflight/pattern/2"}')).toBe(
      'It is not a file of pieces or progress of this version: its schema is "leaflight/pattern/2", not "leaflight/pieces/1".',
    );
  });

  it("is refused where a piece has progress of another kit, or stands twice", () => {
    expect(why(file({ kit: "harbour-moon" }))).toBe(
      "pieces[0] is of the kit “harbour-moon”, but its progress is of “little-gull”.",
    );
    expect(why(serialisePieces([madePiece(), madePiece({ name: "again" })]))).toBe(
      "pieces[1] has the id of a piece before it.",
    );
  });

  it("holds a bounded number of pieces", () => {
    const many = Array.from({ length: 501 }, (_, i) => madePiece({ id: `p${i}` }));
    expect(why(serialisePieces(many))).toBe("It holds more than 500 pieces.");
    expect("pieces" in parsePieces(serialisePieces(many.slice(1)))).toBe(true);
  });

  it("does not let a name of the language in among the devices", () => {
    const text = file({}).replace('"versions":{"a":1}', '"versions":{"__proto__":1}');
    const read = parsePieces(text);
    expect("pieces" in read && read.pieces[0]!.versions).toEqual({});
    expect(({} as Record<string, unknown>)["a"]).toBeUndefined();
  });
});
