import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { faultsOf } from "./faults.ts";
import { GOLDENS, goldenPaths } from "./golden.ts";
import { KNOWN_FAULTS } from "./known-faults.ts";
import { seen } from "./seen.ts";

describe("every drawing of the gallery", () => {
  it.each(goldenPaths())(
    "%s is well-formed, inside its frame, large enough, its words free, its ids unique",
    (path) => {
      const text = readFileSync(join(GOLDENS, `${path}.svg`), "utf8");
      const known = KNOWN_FAULTS.filter(({ of }) => of.includes(path));
      const faults = faultsOf(seen(text));
      expect(faults.filter((fault) => !known.some((one) => one.fault.test(fault)))).toEqual([]);
      const mended = known.filter((one) => !faults.some((fault) => one.fault.test(fault)));
      expect(mended, "no longer so: take it out of known-faults.ts").toEqual([]);
      expect(text).not.toMatch(/NaN|Infinity|undefined/);
    },
  );

  it("is there where a fault of it is known", () => {
    expect(KNOWN_FAULTS.flatMap(({ of }) => of).filter((path) => !goldenPaths().includes(path))).toEqual([]);
  });
});

/** 100 × 50 units, printed as millimetres. */
const drawn = (inside: string, width = "100mm"): string[] =>
  faultsOf(
    seen(`<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="50mm" viewBox="0 0 100 50">${inside}</svg>`),
  );

const words = (x: number, y: number, said: string): string => `<text x="${x}" y="${y}" font-size="4">${said}</text>`;
const LINE = '<path d="M0 20h90" stroke="#000" fill="none"/>';

describe("faults that are found", () => {
  it.each([
    ["words that end outside: 20 letters of 2 mm from 70", words(70, 20, "twenty letters wide.."), "outside: twenty"],
    ["a shape outside", '<rect x="90" y="0" width="11" height="5"/>', "outside: a rect"],
    ["a curve that leaves by its handle", '<path d="M10 10Q50 -40 90 10"/>', "outside: a path"],
    ["words upon words", words(10, 20, "one") + words(12, 21, "two"), "upon each other: one | two"],
    [
      "words upon turned words",
      `${words(10, 20, "level")}<text x="0" y="0" font-size="4" transform="translate(16 24) rotate(-90)">upright</text>`,
      "upon each other: level | upright",
    ],
    ["words with a line through them", LINE + words(10, 21, "word"), "crossed: word"],
    ["an id that is there twice", '<g id="a"/><g id="a"/>', "twice: id a"],
  ])("%s", (_, inside, fault) => {
    expect(drawn(inside)).toEqual([expect.stringContaining(fault)]);
  });

  it("letters of 4 units, where 100 units are 50 mm: 2 mm", () => {
    expect(drawn(words(10, 20, "word"), "50mm")).toEqual(["small (2.0 mm): word"]);
  });

  it("no line where paper lies over it, none above or below words, nothing in a clipped part", () => {
    expect(drawn(`${LINE}<rect x="5" y="15" width="30" height="10" fill="#fff"/>${words(10, 21, "word")}`)).toEqual([]);
    expect(drawn(LINE + words(10, 19.5, "word") + words(10, 24, "word"))).toEqual([]);
    expect(drawn('<svg x="10" y="10" width="20" height="20" viewBox="0 0 20 20"><path d="M-90 0h300"/></svg>')).toEqual(
      [],
    );
  });

  it("and a text that is not well-formed is not read", () => {
    expect(() => drawn("<g>")).toThrow();
  });
});
