import { DOMParser, type Element, onErrorStopParsing } from "@xmldom/xmldom";
import { describe, expect, it } from "vitest";
import type { Kit } from "../../../src/core/kit/kit.ts";
import type { Pattern } from "../../../src/core/pattern/pattern.ts";
import { closing } from "../../../src/output/drawing/diagrams/closing.ts";
import { cutDepth } from "../../../src/output/drawing/diagrams/cut-depth.ts";
import { doorHinge } from "../../../src/output/drawing/diagrams/door-hinge.ts";
import { foldSteps } from "../../../src/output/drawing/diagrams/fold-steps.ts";
import { holdWidth } from "../../../src/output/drawing/diagrams/hold-width.ts";
import { holderInPlace } from "../../../src/output/drawing/diagrams/holder-in-place.ts";
import { leafAndPages } from "../../../src/output/drawing/diagrams/leaf-and-pages.ts";
import { lineLegend } from "../../../src/output/drawing/diagrams/line-legend.ts";
import { measureBook } from "../../../src/output/drawing/diagrams/measure-book.ts";
import { scoring } from "../../../src/output/drawing/diagrams/scoring.ts";
import { foldedLayers } from "../../../src/output/drawing/diagrams/section.ts";
import { tucking } from "../../../src/output/drawing/diagrams/tucking.ts";
import { wholeLeaf } from "../../../src/output/drawing/diagrams/whole-leaf.ts";
import type { Figure } from "../../../src/output/drawing/figure.ts";
import { KITS } from "../../core/plan/made.ts";

type Diagram = (kit: Kit, pattern: Pattern) => Figure | undefined;

const DIAGRAMS: Readonly<Record<string, Diagram>> = {
  closing,
  cutDepth,
  doorHinge,
  foldSteps,
  holdWidth,
  holderInPlace,
  leafAndPages,
  lineLegend,
  measureBook,
  scoring,
  tucking,
  wholeLeaf,
};

const folderOf = (slug: string) => KITS.find(([name]) => name === slug)![1];

function parsed(figure: Figure): Element {
  return new DOMParser({ onError: onErrorStopParsing }).parseFromString(figure.svg, "image/svg+xml").documentElement!;
}

/** The words of a diagram, with plain spaces. */
function textsOf(figure: Figure | undefined): string[] {
  return linesOf(parsed(figure!)).map(({ words }) => words.replaceAll("\u00a0", " "));
}

function drawn(slug: string, name: string): string[] {
  const { kit, pattern } = folderOf(slug);
  return textsOf(DIAGRAMS[name]!(kit, pattern));
}

const all = KITS.flatMap(([slug, { kit, pattern }]) =>
  Object.entries(DIAGRAMS).flatMap(([name, draw]) => {
    const figure = draw(kit, pattern);
    return figure ? [[`${name} of ${slug}`, figure] as const] : [];
  }),
);

describe("every diagram of every kit", () => {
  it.each(all)("%s is well-formed, has its text alternative, no ids and no broken number", (_, figure) => {
    const root = parsed(figure);
    expect(root.getAttribute("role")).toBe("img");
    expect(root.getAttribute("aria-label")).toBe(figure.label);
    expect(figure.label.length).toBeGreaterThan(60);
    expect(figure.svg).not.toMatch(/\sid="|NaN|Infinity|undefined/);
  });

  it.each(all)("%s keeps its words inside and at 2.6 mm or more", (_, figure) => {
    const root = parsed(figure);
    const [left, top, width, height] = root.getAttribute("viewBox")!.split(" ").map(Number) as [
      number,
      number,
      number,
      number,
    ];
    expect(width).toBeLessThanOrEqual(85);
    for (const { words, ...box } of linesOf(root)) {
      expect(box.size, words).toBeGreaterThanOrEqual(2.6);
      expect(box.left, words).toBeGreaterThanOrEqual(left - 0.01);
      expect(box.right, words).toBeLessThanOrEqual(left + width + 0.01);
      expect(box.top, words).toBeGreaterThanOrEqual(top - 0.01);
      expect(box.bottom, words).toBeLessThanOrEqual(top + height + 0.01);
    }
  });

  it.each(all)("%s has no words upon words", (_, figure) => {
    const boxes = linesOf(parsed(figure)).filter(({ words, turned }) => words !== "" && !turned);
    const clashes = boxes.flatMap((a, i) =>
      boxes
        .slice(i + 1)
        .filter((b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
        .map((b) => `${a.words} | ${b.words}`),
    );
    expect(clashes).toEqual([]);
  });
});

interface Line {
  readonly words: string;
  readonly size: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** Whether it runs neither level nor upright. */
  readonly turned: boolean;
}

/** Lines of words: a text, or each tspan of one that is wrapped. */
function linesOf(root: Element): Line[] {
  return [...root.getElementsByTagName("text")].flatMap((one) => {
    const spans = [...one.getElementsByTagName("tspan")];
    return spans.length === 0 ? [lineOf(one, one)] : spans.map((span) => lineOf(one, span));
  });
}

/** About the box of a line's letters: 0.46 of their height wide each, from the baseline up to 0.7 of it. */
function lineOf(text: Element, line: Element): Line {
  const words = line.textContent ?? "";
  const size = Number(text.getAttribute("font-size") ?? text.ownerDocument!.documentElement!.getAttribute("font-size"));
  const length = words.length * 0.46 * size;
  const anchor = text.getAttribute("text-anchor");
  const before = anchor === "middle" ? length / 2 : anchor === "end" ? length : 0;
  const transform = text.getAttribute("transform") ?? "";
  const own = { words, size, turned: /rotate\((?!-90)/.test(transform) };
  const upright = /translate\(([-\d.]+) ([-\d.]+)\) rotate\(-90\)/.exec(transform);
  if (upright) {
    const [x, y] = [Number(upright[1]), Number(upright[2])];
    return { ...own, left: x - 0.7 * size, right: x, top: y - length + before, bottom: y + before };
  }
  const moved = /translate\(([-\d.]+) ([-\d.]+)\)/.exec(transform);
  const [x, y] = moved
    ? [Number(moved[1]), Number(moved[2])]
    : [Number(line.getAttribute("x")), Number(line.getAttribute("y"))];
  return { ...own, left: x - before, right: x - before + length, top: y - 0.7 * size, bottom: y };
}

describe("numbers of Harbour Moon, stepped, in mm", () => {
  const { pattern } = folderOf("harbour-moon");
  const most = Math.max(...pattern.leaves.map((leaf) => leaf.cuts.length));
  const leaf = pattern.leaves.find((one) => one.cuts.length === most)!;

  it("measures the kit's book", () => {
    expect(drawn("harbour-moon", "measureBook")).toEqual(
      expect.arrayContaining([
        "leaf height 216 mm",
        "leaf width 140 mm",
        "thickness 24 mm",
        "204 leaves",
        "= 408 pages",
      ]),
    );
  });

  it("finds pattern page 1: 12 border leaves, page 1 on leaf 5, so leaf 13 carries pages 17 and 18", () => {
    expect(drawn("harbour-moon", "leafAndPages")).toEqual(
      expect.arrayContaining(["leaf 13", "p. 17", "p. 18", "leaf 12", "p. 16", "leaf 14", "p. 19", "page 1", "page 3"]),
    );
  });

  it("writes each gauge line's number and distance", () => {
    const texts = drawn("harbour-moon", "scoring");
    expect(texts).toEqual(
      expect.arrayContaining(["1", "2", "3", "4", "5", "10 mm", "18 mm rim", "26 mm wall", "34 mm", "42 mm well"]),
    );
    const batch = texts.find((words) => words.startsWith("packing"))!;
    const [, packing, before] = /packing ([\d.]+) mm before leaf (\d+)/.exec(batch)!;
    expect(Math.abs(Number(packing) - ((Number(before) - 1) * 24) / 204)).toBeLessThanOrEqual(0.25 + 1e-9);
  });

  it("folds at the front line, then cuts from the folded edge to depth less front depth", () => {
    expect(drawn("harbour-moon", "foldSteps")).toEqual(
      expect.arrayContaining(["2", "Fold it all at 18 mm", "18 mm", "42 mm", "cut 24 mm", "folded edge"]),
    );
    expect(drawn("harbour-moon", "cutDepth")).toEqual(
      expect.arrayContaining(["cut = 42 − 18 = 24 mm", "cut 24 mm", "24 mm", "8 mm", "folded edge"]),
    );
  });

  it("shows every mark with its cut and every span with its level on the leaf with most cuts", () => {
    const texts = drawn("harbour-moon", "wholeLeaf");
    const depths = [18, 26, 42];
    const marks = leaf.spans.slice(1).map((span, i) => {
      const deeper = Math.max(depths[span.level - 1]!, depths[leaf.spans[i]!.level - 1]!);
      return `${span.from.toFixed(1)} › ${deeper - 18}`;
    });
    expect(texts.filter((words) => words.includes("›")).slice(1)).toEqual(marks);
    expect(texts.filter((words) => /^\d$/.test(words)).map(Number)).toEqual(leaf.spans.map((span) => span.level));
    expect(texts[0]).toBe(`Leaf ${leaf.leaf}, p. ${2 * (leaf.leaf - 5) + 1}, pattern page ${2 * (leaf.leaf - 13) + 1}`);
  });

  it("says where the notch is, from the unfolded fore-edge, on a leaf that has one", () => {
    const { kit } = folderOf("harbour-moon");
    const [notch] = pattern.pocket!.notches;
    const only = pattern.leaves.map((one) => (one.leaf === notch!.leaf ? one : { ...one, cuts: [] }));
    const texts = textsOf(wholeLeaf(kit, { ...pattern, leaves: only }));
    const down = (mm: number) => (Math.floor(mm / 0.5 + 1e-6) * 0.5).toFixed(1);
    const up = (mm: number) => (Math.ceil(mm / 0.5 - 1e-6) * 0.5).toFixed(1);
    expect(texts).toContain(`notch for the light: ${down(notch!.from)} to ${up(notch!.to)}`);
    expect(texts).toContain(`${up(notch!.depth)} deep from the unfolded fore-edge`);
  });

  it("dimensions the hold width at the head, where both leaves are folded at the wall (26 mm), and the boards, in whole mm", () => {
    const [, hold] = /hold width (\d+) mm/.exec(drawn("harbour-moon", "holdWidth").join())!;
    const [, boards] = /boards (\d+) mm/.exec(drawn("harbour-moon", "holdWidth").join())!;
    const angle = pattern.fit.opening * ((13 - 0.5) / 204 - 0.5);
    const x = 24 * ((13 - 0.5) / 204 - 0.5) + (140 - 26) * Math.sin(angle);
    expect(Number(hold)).toBe(Math.round(2 * Math.abs(x)));
    expect(Number(boards)).toBe(Math.round(24 + 5 + 2 * 143 * Math.sin(pattern.fit.opening / 2)));
    expect(drawn("harbour-moon", "holderInPlace")).toContain(`hold width ${hold} mm`);
  });

  it("ties the string of the window's closure, in whole mm, and folds its flap", () => {
    const { stringLength, door } = pattern.window!;
    expect(drawn("harbour-moon", "closing")).toContain(`string ${Math.round(stringLength)} mm`);
    const flap = door.scores[0]![0]![0] - Math.min(...door.outlines.flat().map(([x]) => x));
    expect(drawn("harbour-moon", "doorHinge")).toContain(`flap ${Number(flap.toFixed(1))} mm`);
  });
});

describe("numbers of Tide and Lamp, single folds, inches, right to left", () => {
  it("measures the kit's book", () => {
    expect(drawn("tide-and-lamp", "measureBook")).toEqual(
      expect.arrayContaining(["leaf height 8 in", "leaf width 5 1/4 in", "thickness 1 in", "232 leaves"]),
    );
  });

  it("finds pattern page 1: 14 border leaves, page 1 on leaf 5, so leaf 15 carries pages 21 and 22", () => {
    expect(drawn("tide-and-lamp", "leafAndPages")).toEqual(expect.arrayContaining(["leaf 15", "p. 21", "p. 22"]));
  });

  it("writes each gauge line's distance and cuts from the fore-edge to the deeper level", () => {
    expect(drawn("tide-and-lamp", "scoring")).toEqual(
      expect.arrayContaining(["1/2 in quay", "3/4 in town", "1 in hills", "1 3/8 in sky"]),
    );
    const texts = drawn("tide-and-lamp", "cutDepth");
    expect(texts).toContain("fore-edge");
    expect(texts.some((words) => /^cut = the deeper of .+: .+ in$/.test(words))).toBe(true);
  });

  it("says how much of the first loose flap is free: the next level's depth less its own", () => {
    expect(drawn("tide-and-lamp", "tucking").filter((words) => /^[\d /]+ in loose$/.test(words))).toHaveLength(1);
  });

  it("has no window diagram without a window", () => {
    const { kit, pattern } = folderOf("tide-and-lamp");
    expect([closing, doorHinge, holderInPlace].map((draw) => draw(kit, pattern))).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });
});

describe("foldedLayers", () => {
  const length = (layers: ReturnType<typeof foldedLayers>) =>
    layers.reduce((sum, one) => sum + Math.abs(one.to - one.from), 0);

  it.each([
    ["single", 42, 18],
    ["stepped, front", 18, 18],
    ["stepped, flap longer than the strip", 26, 18],
    ["stepped, flap shorter than the strip", 42, 18],
  ] as const)("keeps the whole leaf: %s", (name, depth, front) => {
    const layers = foldedLayers(depth, front, name.startsWith("single") ? "single" : "stepped", 140);
    expect(length(layers)).toBe(140);
  });
});
