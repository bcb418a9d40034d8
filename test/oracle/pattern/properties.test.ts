import { describe, expect, it } from "vitest";
import type { PatternedKit } from "../../../src/core/pattern/patterned-kit.ts";
import { published } from "../../core/pattern/published.ts";
import { readMadeKit } from "../../input/kit/kit-folders.ts";
import { fc } from "../../seed.ts";
import type { Published } from "../compare.ts";
import { randomKits } from "../random-kits.ts";
import { type PolygonKit, polygonKit, polygonSvg } from "./polygons.ts";

/** Runs a property over pictures of polygons; straight sides, so that two ways to write one picture give one pattern exactly. */
function forPolygons(property: (kit: PolygonKit, plain: Published) => void, runs = 25): void {
  const seeds = fc.integer({ min: 1, max: 2 ** 31 });
  const check = fc.property(seeds, (seed) => {
    const kit = polygonKit(seed);
    const plain = read(kit.frontMatter, polygonSvg(kit));
    expect(Math.max(...plain.leaves.map((leaf) => leaf.spans.length))).toBeGreaterThanOrEqual(5);
    property(kit, plain);
  });
  fc.assert(check, { numRuns: runs, endOnFailure: true });
}

function read(frontMatter: object, svg: string): Published {
  return published(readMadeKit(frontMatter, svg));
}

const fold = (pattern: Published) => pattern.leaves.map(({ spans, cuts }) => ({ spans, cuts }));

/** What is said of absorbed spans, without the leaf. */
const absorbedBy = (pattern: Published, leafOf: (leaf: number) => number) =>
  pattern.absorbed
    .map((span) => ({ ...span, leaf: leafOf(span.leaf) }))
    .sort((a, b) => a.leaf - b.leaf || a.from - b.from);

const mirror = (kit: PolygonKit) => `matrix(-1 0 0 1 ${kit.width} 0)`;

describe("properties of the pattern", () => {
  it("a mirrored picture gives the mirrored leaves in reversed order", () => {
    forPolygons((kit, plain) => {
      const mirrored = read(kit.frontMatter, polygonSvg(kit, undefined, mirror(kit)));
      expect(fold(mirrored)).toEqual(fold(plain).toReversed());
      const { leaves } = kit.frontMatter.book;
      expect(absorbedBy(mirrored, (leaf) => leaves + 1 - leaf)).toEqual(absorbedBy(plain, (leaf) => leaf));
    });
  });

  it("a book read the other way needs the mirrored picture's leaves", () => {
    forPolygons((kit, plain) => {
      const { book } = kit.frontMatter;
      const turned = {
        ...kit.frontMatter,
        book: { ...book, direction: book.direction === "ltr" ? "rtl" : "ltr" },
      };
      const other = read(turned, polygonSvg(kit, undefined, mirror(kit)));
      const same = (pattern: Published) => pattern.leaves.map(({ x: _, ...leaf }) => leaf);
      expect(same(other)).toEqual(same(plain));
      expect(other.absorbed).toEqual(plain.absorbed);
      expect(other.leaves.map((leaf) => leaf.x.map((x) => 0 - x))).toEqual(plain.leaves.map((leaf) => leaf.x));
    });
  });

  it("a kit written in inches gives the pattern of the same kit in millimetres", () => {
    forPolygons((kit, plain) => {
      const inches = { ...toInches(kit.frontMatter), units: "in" };
      const { leaves, absorbed, levels, fit } = read(inches, polygonSvg(kit));
      expect({ leaves, absorbed, levels, fit }).toEqual({
        leaves: plain.leaves,
        absorbed: plain.absorbed,
        levels: plain.levels,
        fit: plain.fit,
      });
    });
  });

  it("the picture's origin does not matter", () => {
    forPolygons((kit, plain) => {
      const [x, y] = [-0.7 * kit.width, 3.3 * kit.height];
      const shifted = read(kit.frontMatter, polygonSvg(kit, [x, y, kit.width, kit.height], `translate(${x} ${y})`));
      expect(shifted).toEqual(plain);
    });
  });

  it.each([0.013, 40])("the picture's own scale does not matter, times %d", (scale) => {
    forPolygons((kit, plain) => {
      const box = [0, 0, kit.width * scale, kit.height * scale];
      expect(read(kit.frontMatter, polygonSvg(kit, box, `scale(${scale})`))).toEqual(plain);
    }, 12);
  });

  it("a level split over two depths 0.001 mm apart folds as the one level did", () => {
    let [leaves, differing] = [0, 0];
    forPolygons((kit) => {
      const { levels, picture } = kit.frontMatter;
      const at = levels.findIndex((level) => !level.background);
      const [first, second] = Object.entries(picture.levels);
      const joined = {
        ...kit.frontMatter,
        picture: { ...picture, levels: { ...picture.levels, [first![0]]: ["#a", "#b"] } },
      };
      delete joined.picture.levels[second![0]];
      joined.levels = levels.filter((level) => level.name !== second![0]);
      const twin = { name: "twin", depth: (levels[at]!.depth as number) + 0.001 };
      const split = {
        ...joined,
        picture: { ...picture, levels: { ...joined.picture.levels, [first![0]]: ["#a"], twin: ["#b"] } },
        levels: joined.levels.flatMap((level) => (level.name === first![0] ? [level, twin] : [level])),
      };
      const one = read(joined, polygonSvg(kit));
      const two = read(split, polygonSvg(kit));
      const oldLevel = (level: number) => (level > at + 1 ? level - 1 : level);
      one.leaves.forEach((leaf, i) => {
        leaves += 1;
        const spans = joinLevels(two.leaves[i]!.spans.map((span) => ({ ...span, level: oldLevel(span.level) })));
        if (JSON.stringify(spans) !== JSON.stringify(leaf.spans)) differing += 1;
      });
    });
    // A short span of one twin is absorbed into the other one first, so the order of absorption may differ here and there.
    expect(leaves).toBeGreaterThan(2000);
    expect(differing / leaves).toBeLessThan(0.005);
  });
});

describe("properties of the pattern with curves", () => {
  it.each(randomKits(3).map((kit) => [kit.slug, kit] as const))(
    "%s: origin and scale of the picture do not matter",
    (_, kit) => {
      const [x, y, width, height] = /viewBox="([^"]+)"/.exec(kit.svg)![1]!.split(" ").map(Number) as [
        number,
        number,
        number,
        number,
      ];
      const moved = kit.svg
        .replace(/viewBox="[^"]+"/, `viewBox="${[0, 7 * height, 8 * width, 8 * height].join(" ")}"`)
        .replace(
          /(<svg[^>]*>)([\s\S]*)(<\/svg>)/,
          `$1<g transform="translate(0 ${7 * height}) scale(8) translate(${-x} ${-y})">$2</g>$3`,
        );
      const plain = readMadeKit(kit.frontMatter, kit.svg);
      expect(share(plain, readMadeKit(kit.frontMatter, moved))).toBeGreaterThan(0.99);
    },
  );
});

/** Share of leaves whose spans are the same; a curve's chords may move a mark over a rounding limit. */
function share(one: PatternedKit, other: PatternedKit): number {
  const same = one.pattern.leaves.filter(
    (leaf, i) => JSON.stringify(leaf.spans) === JSON.stringify(other.pattern.leaves[i]!.spans),
  );
  return same.length / one.pattern.leaves.length;
}

function joinLevels(spans: Published["leaves"][number]["spans"]) {
  const joined: typeof spans = [];
  for (const span of spans) {
    const last = joined.at(-1);
    if (last?.level === span.level) last.to = span.to;
    else joined.push({ ...span });
  }
  return joined;
}

const LENGTHS = ["depth", "leafHeight", "leafWidth", "blockThickness", "head", "height", "leastTab", "markStep"];

/** Every length as a text in inches; 25.4 mm are one inch exactly. */
function toInches(value: unknown, key = ""): Record<string, unknown> {
  if (LENGTHS.includes(key) && typeof value === "number") return `${value / 25.4} in` as never;
  if (Array.isArray(value)) return value.map((item) => toInches(item)) as never;
  if (value === null || typeof value !== "object") return value as never;
  return Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, toInches(inner, name)]));
}
