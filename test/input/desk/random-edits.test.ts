import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { parseLength } from "../../../src/core/units/length.ts";
import { type Edit, editText } from "../../../src/input/desk/edit.ts";
import { isList, isYamlMap, sameValue, withValue, type YamlValue } from "../../../src/input/desk/yaml-value.ts";
import type { FieldPath } from "../../../src/input/files/problem.ts";
import { fc } from "../../seed.ts";

const ROOT = join(import.meta.dirname, "../../..");

/** Every index.md of kits and classes, of the site and of the tests. */
const PAGES = ["content", "test/fixtures/content"].flatMap((content) =>
  ["kits", "classes"].flatMap((kind) => {
    const folders = readdirSync(join(ROOT, content, kind), { withFileTypes: true }).filter((one) => one.isDirectory());
    return folders.map(({ name }) => readFileSync(join(ROOT, content, kind, name, "index.md"), "utf8"));
  }),
);

/** Front matters that people write who know YAML well, or not at all. */
const NASTY = [
  "# top\n\n\na: 1   # one\n\n# of b\nb: {x: 1 , 'y': [ 1,2 , ], } # comment\nc:\n- 1 # x\n\n- 2\n# end\n",
  'a: &x {u: 1, v: &y "2 in"} # a\nb: *x\nc: [*y , *x, 3]\nd:\n  e: *y # d\n  f: &z\n    - 1\n    # two\n    - 2\n\n  # after\ng: *z',
  "a:\n    b:\n            c: 1\n            d: |+\n              text # no comment\n\n            e: >-\n              folded\n              lines\n    f:\n      -   - 1\n          - 2\n      - g: 1\n\n        h: 2\n",
  "? a\n: 1\n? b\n: - 1\n  - 2\nc:    'it''s # no comment'\nd: \"a \\\"b\\\" \\\n  c\"\ne: 0x1F\nf: 1e3\ng: +5.50\nh: ~\ni:\nj: .5",
  "a: [\n  1, # one\n  # of two\n  2\n  , 3 ] # end\nb: {\n  x: 1,\n\n  # of y\n  y: { z: 1,\n       w: 2 }\n  }\nc: plain text\n  that goes on\n\n  and on\nd: 1",
  `long: [${Array.from({ length: 60 }, (_, i) => `"#shape-${i}"`).join(", ")}] # long\nshort: 1`,
].map((yaml) => `---\n${yaml}\n---\nBelow: [not, yaml\n`);

const CRLF = [PAGES[0]!, ...NASTY].map((page) => page.replaceAll("\n", "\r\n"));

/** The package itself reads what was written: nothing of ours is between. */
function meaning(page: string): YamlValue {
  return parse(/^---\r?\n([\s\S]*?)\r?\n---/.exec(page)![1]!, { schema: "core", version: "1.2" }) as YamlValue;
}

/** Every path that leads somewhere. */
function pathsIn(value: YamlValue, at: FieldPath = []): FieldPath[] {
  const here = at.length > 0 ? [at] : [];
  if (isList(value)) return [...here, ...value.flatMap((one, i) => pathsIn(one, [...at, i]))];
  if (isYamlMap(value)) return [...here, ...Object.entries(value).flatMap(([key, one]) => pathsIn(one, [...at, key]))];
  return here;
}

const scalar = fc.oneof(
  fc.integer({ min: -1000, max: 1000 }),
  fc.double({ min: -100, max: 100, noNaN: true }).map((one) => Math.round(one * 100) / 100 + 0),
  fc.constantFrom(
    "solve",
    "1/4 in",
    "#rim",
    "a: b",
    "- c",
    "true",
    "it's",
    "",
    " ",
    "x, y",
    "[z]",
    "# no",
    "ä “ö”",
    "12",
    "a\nb",
  ),
  fc.boolean(),
  fc.constant(null),
);
const value: fc.Arbitrary<YamlValue> = fc.oneof(
  { weight: 4, arbitrary: scalar },
  fc.array(scalar, { maxLength: 3 }),
  fc.dictionary(fc.constantFrom("x", "y", "new", "a key"), scalar, { maxKeys: 3 }),
);

/** A page, and a change of something in it: another value, no value, or something new below it. */
const change = fc.constantFrom(...PAGES, ...NASTY, ...CRLF).chain((page) => {
  const paths = pathsIn(meaning(page));
  const at = fc.constantFrom(...paths);
  const below = fc.tuple(at, fc.constantFrom("x", "new", 0, 1)).map(([path, step]) => [...path, step]);
  return fc.record({
    page: fc.constant(page),
    at: fc.oneof({ weight: 3, arbitrary: at }, below, fc.constantFrom(["new"], ["new", "x", 0])),
    put: fc.oneof({ weight: 4, arbitrary: value }, fc.constant(undefined)),
  });
});

/** Lines that both begin with, and that both end with, without what stands between. */
function hunk(was: string, is: string): { readonly taken: readonly string[]; readonly put: readonly string[] } {
  const [a, b] = [was.split("\n"), is.split("\n")];
  let before = 0;
  while (before < Math.min(a.length, b.length) && a[before] === b[before]) before += 1;
  let behind = 0;
  while (behind < Math.min(a.length, b.length) - before && a.at(-1 - behind) === b.at(-1 - behind)) behind += 1;
  return { taken: a.slice(before, a.length - behind), put: b.slice(before, b.length - behind) };
}

describe("editText(text, edits) of any page", () => {
  it("means what was asked, and nothing else", () => {
    fc.assert(
      fc.property(change, ({ page, at, put }) => {
        const wanted = withValue(meaning(page), at, put);
        const edited = editText(page, [{ at, value: put }])!;
        expect(sameValue(meaning(edited), wanted), edited).toBe(true);
        expect(edited.replace(/^---\r?\n[\s\S]*?\r?\n---/, "")).toBe(page.replace(/^---\r?\n[\s\S]*?\r?\n---/, ""));
      }),
      { numRuns: 300 },
    );
  });

  it("has the line ends of the page", () => {
    fc.assert(
      fc.property(change, ({ page, at, put }) => {
        const edited = editText(page, [{ at, value: put }])!;
        expect(/[^\r]\n/.test(edited)).toBe(/[^\r]\n/.test(page));
        expect(edited.includes("\r")).toBe(page.includes("\r"));
      }),
      { numRuns: 150 },
    );
  });
});

/** Pages without aliases: there, a change of one scalar is a change of its own lines. */
const PLAIN = [...PAGES, ...NASTY.filter((page) => !page.includes("*"))];
const scalarChange = fc.constantFrom(...PLAIN).chain((page) => {
  const is = meaning(page);
  const paths = pathsIn(is).filter((path) => !isYamlMap(at(is, path)) && !isList(at(is, path)));
  return fc.record({ page: fc.constant(page), at: fc.constantFrom(...paths), put: scalar });
});

function at(value: YamlValue, path: FieldPath): YamlValue {
  return path.reduce<YamlValue>((inside, step) => (inside as Record<string, YamlValue>)[String(step)]!, value);
}

describe("editText(text, edits) of one scalar", () => {
  it("changes the lines of that scalar alone", () => {
    fc.assert(
      fc.property(scalarChange, ({ page, at: path, put }) => {
        const { taken, put: given } = hunk(page, editText(page, [{ at: path, value: put }])!);
        const most = String(at(meaning(page), path)).split("\n").length + 2;
        expect(taken.length).toBeLessThanOrEqual(most);
        expect(given.length).toBeLessThanOrEqual(1);
      }),
      { numRuns: 300 },
    );
  });

  it("gives the text back when the figure comes back", () => {
    fc.assert(
      fc.property(scalarChange, fc.double({ min: 1, max: 400, noNaN: true }), ({ page, at: path }, figure) => {
        const was = at(meaning(page), path);
        const written = editText(page, [{ at: path, value: 4711 }])!;
        fc.pre(typeof was === "number" && hunk(page, written).taken.some((line) => line.includes(String(was))));
        const there: Edit[] = [{ at: path, value: Math.round(figure * 2) / 2 }];
        const again = editText(editText(page, there)!, [{ at: path, value: was }])!;
        expect(
          hunk(page, again)
            .taken.join("\n")
            .replaceAll(/[+]|\.0+\b/g, ""),
        ).toBe(
          hunk(page, again)
            .put.join("\n")
            .replaceAll(/[+]|\.0+\b/g, ""),
        );
      }),
      { numRuns: 300 },
    );
  });

  it("writes lengths that are read as that length", () => {
    const was = fc.constantFrom("8", "8.0", "8mm", "'8 mm'", "1.2 cm", '"1/4 in"', "8 1/4 in", "0.5 in", "auto", "");
    fc.assert(
      fc.property(
        was,
        fc.constantFrom("mm", "in"),
        fc.integer({ min: -40_000, max: 40_000 }),
        (old, units, hundredths) => {
          const mm = hundredths / 100;
          const page = editText(`---\nunits: ${units}\na: ${old}\n---\n`, [{ at: ["a"], mm }])!;
          const { a } = meaning(page) as { a: YamlValue };
          const isInch = /in/.test(String(a));
          expect(Math.abs(parseLength(a) - mm)).toBeLessThan(isInch ? 0.0013 : 1e-9);
        },
      ),
      { numRuns: 300 },
    );
  });

  it("writes parts of an inch exactly", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 64 * 30 }), (parts) => {
        const mm = (parts * 25.4) / 64;
        const page = editText('---\na: "1/4 in"\n---\n', [{ at: ["a"], mm }])!;
        expect(parseLength((meaning(page) as { a: string }).a)).toBeCloseTo(mm, 9);
      }),
    );
  });
});
