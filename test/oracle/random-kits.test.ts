import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { published as publishedOf } from "../core/pattern/published.ts";
import { readMadeKit } from "../input/kit/kit-folders.ts";
import type { KitInput } from "./kit-input.ts";
import { compareWithOracle, type Expected, expectPattern, type Published } from "./oracle.ts";
import { randomKits, writeKit } from "./random-kits.ts";

const kits = randomKits();

/** The oracle's pattern of a random kit, computed once. */
const patternOf = memo((slug: string) => {
  const kit = kits.find((k) => k.slug === slug)!;
  return expectPattern(kit.frontMatter, kit.svg);
});

function memo<K, V>(make: (key: K) => V): (key: K) => V {
  const made = new Map<K, V>();
  return (key) => {
    if (!made.has(key)) made.set(key, make(key));
    return made.get(key)!;
  };
}

describe("random kits", () => {
  it("are the same for the same seed and others for another", () => {
    expect(randomKits()).toEqual(kits);
    expect(randomKits(2)).not.toEqual(kits);
  });

  it("survive being written and read back", async () => {
    const dir = await mkdtemp(join(tmpdir(), "kits-"));
    await writeKit(dir, kits[4]!);
    const [, yaml] = (await readFile(join(dir, kits[4]!.slug, "index.md"), "utf8")).split("---\n");
    expect(parse(yaml!)).toEqual(kits[4]!.frontMatter);
    expect(await readFile(join(dir, kits[4]!.slug, "picture.svg"), "utf8")).toBe(kits[4]!.svg);
    await rm(dir, { recursive: true });
  });

  it.each(kits.map((kit) => [kit.slug, kit] as const))("%s fits its book and shows every level", async (slug, kit) => {
    const { book, fit } = kit.frontMatter;
    const e = await patternOf(slug);
    for (const depth of e.depths) expect(2 * depth + 5).toBeLessThanOrEqual(book.leafWidth);
    expect(fit.head).toBeGreaterThan(0);
    expect(fit.head + e.height).toBeLessThan(book.leafHeight);
    expect(e.lastLeaf + fit.borderLeaves[1]).toBeLessThanOrEqual(book.leaves);
    expect(e.opening).toBeLessThan(Math.PI);
    expect(book.blockThickness / book.leaves).toBeGreaterThan(0.04);
    expect(new Set(e.leaves.flatMap((l) => l.runs.map((r) => r.level))).size).toBe(e.depths.length);
  });
});

// Source: the oracle of test/oracle, which shares no code with the program and reads pictures with librsvg.
describe("the published pattern of the random kits", () => {
  it.each(kits.map((kit) => [kit.slug, kit] as const))("%s agrees with the oracle leaf by leaf", async (_, kit) => {
    const pattern = publishedOf(readMadeKit(kit.frontMatter, kit.svg));
    expect(compareWithOracle(pattern, await patternOf(kit.slug))).toEqual([]);
  });
});

describe("comparing", () => {
  const { slug, frontMatter } = kits[7]!;

  it("finds nothing in plainly rounded patterns of the random kits", async () => {
    for (const kit of kits) {
      const e = await patternOf(kit.slug);
      expect(compareWithOracle(publish(e, kit.frontMatter), e)).toEqual([]);
    }
  });

  const faults: [string, (p: Published) => void, string][] = [
    ["a wrong page", (p) => ([p.leaves[60]!.x, p.leaves[60]!.bookPage] = [[1, 2, 3, 4], 1]), "bookPage is 1"],
    ["a missing leaf", (p) => p.leaves.splice(50, 1), "missing"],
    ["another opening", (p) => (p.fit.opening += 3e-4), "opening is"],
    [
      "the picture of other leaves",
      (p) => {
        for (const [i, leaf] of p.leaves.entries()) leaf.spans = p.leaves[i + 4]?.spans ?? leaf.spans;
      },
      "another level",
    ],
    ["a shallow cut", (p) => (p.leaves[70]!.cuts[0]!.depth = 8), "cuts are"],
    [
      "lost tacks",
      (p) => {
        for (const leaf of p.leaves) leaf.tacks = [];
      },
      "lacks a tack",
    ],
    ["an unreported absorption", (p) => (p.absorbed = []), "vanished unreported"],
    [
      "a mark off the step",
      (p) => (p.leaves[70]!.spans[0]!.to = p.leaves[70]!.spans[1]!.from = 61.3),
      "is no multiple",
    ],
  ];

  it.each(faults)("finds %s", async (_, spoil, note) => {
    const e = await patternOf(slug);
    const published = structuredClone(publish(e, frontMatter));
    spoil(published);
    expect(compareWithOracle(published, e).join("\n")).toContain(note);
  });
});

/** A pattern made from the oracle's runs: short ones go to the longer neighbour, marks to the nearest step. */
function publish(e: Expected, { levels }: KitInput): Published {
  const { markStep, leastTab, book } = e;
  const absorbed: Published["absorbed"] = [];
  const leaves = e.leaves.map((leaf) => {
    const spans = leaf.runs.map((r) => ({ ...r }));
    const round = (v: number) => (v === 0 || v === book.leafHeight ? v : Math.round(v / markStep) * markStep);
    const length = (i: number) => (spans[i] ? round(spans[i].to) - round(spans[i].from) : -1);
    for (;;) {
      const i = spans.findIndex((_, at) => length(at) < leastTab - 1e-9);
      if (i < 0) break;
      const into = length(i - 1) >= length(i + 1) ? i - 1 : i + 1;
      absorbed.push({ leaf: leaf.leaf, ...spans[i]!, into: spans[into]!.level });
      spans[i]!.level = spans[into]!.level;
      for (let k = spans.length - 1; k > 0; k--) {
        if (spans[k]!.level !== spans[k - 1]!.level) continue;
        spans[k - 1]!.to = spans[k]!.to;
        spans.splice(k, 1);
      }
    }
    const rounded = spans.map((s) => ({ from: round(s.from), to: round(s.to), level: s.level }));
    const depth = (i: number) => e.depths[rounded[i]!.level - 1]!;
    const cuts = rounded.slice(1).map((s, i) => ({ at: s.from, depth: Math.max(depth(i), depth(i + 1)) }));
    return { ...leaf, spans: rounded, cuts, tacks: [] as { from: number; to: number }[] };
  });
  for (const [i, leaf] of leaves.entries()) leaf.tacks = looseParts(leaf, leaves[i + 1], e);
  return { levels: levels.map((l, i) => ({ name: l.name, depth: e.depths[i]! })), fit: e, leaves, absorbed };
}

type Spans = { leaf: number; spans: { from: number; to: number; level: number }[] };

/** Tacks pair by pair of overlapping spans. */
function looseParts(leaf: Spans, next: Spans | undefined, { depths, book }: Expected) {
  if (leaf.leaf === book.leaves) return [{ from: 0, to: book.leafHeight }];
  return leaf.spans.flatMap((s) => {
    const limit = 1.5 * depths[s.level - 1]!;
    const loose = (next?.spans ?? []).filter(
      (o) => o.from < s.to && o.to > s.from && depths[o.level - 1]! > limit + 1e-9,
    );
    return loose.map((o) => ({ from: Math.max(s.from, o.from), to: Math.min(s.to, o.to) }));
  });
}
