import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { isTurned } from "../../../src/core/corner/crease.ts";
import { creasesOf } from "../../../src/core/corner/leaf-fold.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { computeCorner } from "../../../src/core/pattern/compute-corner.ts";
import { refitKit } from "../../../src/core/refit/refit.ts";
import { CORNER_PACKET_PAGES } from "../../../src/output/parts/corner-packet.ts";
import { type PrintedCorner, withCornerPacket } from "../../../src/output/views/corner-packet.ts";
import { viewCorner } from "../../../src/output/views/corner-view.ts";
import { cornerKit } from "../../gallery/corner-kits.ts";
import {
  fixtureFolder,
  fixtureFrontMatter,
  fixtureKit,
  fixtureText,
  statedMadeKit,
} from "../../input/kit/kit-folders.ts";

const KITS = ["gull", "moon", "narrow", "rtl"] as const;

const printed = (name: (typeof KITS)[number]): PrintedCorner => withCornerPacket(viewCorner(cornerKit(name), []));

describe.each(KITS)("the packet of %s, walked with hands", (name) => {
  const view = printed(name);
  const packet = String(CORNER_PACKET_PAGES.packet(view));

  it("uses nothing before it is made, and lists every tool that a step names", () => {
    const made = new Set<string>();
    const listed = new Set(view.supplies.map(({ id }) => id));
    for (const step of view.work) {
      for (const part of step.uses) expect(made).toContain(part);
      for (const part of step.makes) made.add(part as string);
      for (const id of step.supplies) expect(listed).toContain(id);
    }
  });

  it("asks for no blade, no mat and no glue", () => {
    const ids = view.supplies.map(({ id }) => id);
    for (const id of ["knife", "blades", "mat", "glue", "glueDots", "awl"] as const) expect(ids).not.toContain(id);
    const told = view.steps.map(({ text, cautions }) => [text, ...cautions].join(" ")).join(" ");
    expect(told).not.toMatch(/knife|blade|\bcut\b(?! out)|glue|tuck/);
    expect(packet).not.toMatch(/craft knife|blades|dot of glue/i);
  });

  it("has a strip for each leaf with a crease, and a row for every leaf that is folded", () => {
    const marked = view.pattern.leaves.filter(
      ({ fold, patternPage }) => patternPage !== null && creasesOf(fold).length > 0,
    );
    const drawings = view.packet.strips.filter(({ partNumber }) => partNumber === 1).map(({ drawing }) => drawing);
    const tabs = drawings.flatMap((one) =>
      [...one.matchAll(/font-weight="700"[^>]*>(\d+)</g)].map(([, leaf]) => Number(leaf)),
    );
    expect(tabs).toEqual(marked.map(({ leaf }) => leaf));
    const told = view.packet.table.flatMap(({ lines }) => lines.map(({ first, last }) => last.leaf - first.leaf + 1));
    expect(told.reduce((sum, count) => sum + count, 0)).toBe(view.pattern.leaves.length);
  });

  it("counts its folds batch by batch up to all of them", () => {
    const folds = view.pattern.leaves.map(({ fold }) => (fold.kind === "straight" ? 1 : creasesOf(fold).length));
    expect(view.packet.table.at(-1)!.foldsSoFar).toBe(folds.reduce((sum, one) => sum + one, 0));
  });

  it("has a gauge of 45° at true scale that is as wide as its longest such crease, as far as the sheet has room", () => {
    const d = /<path d="M([^"]+)Z" class="corner-gauge"/.exec(view.packet.gauges[0]!)![1]!;
    const [point, foot, , top] = d.split("L").map((one) => one.split(" ").map(Number)) as [number, number][];
    expect(point![0]).toBeCloseTo(foot![0]!, 6);
    // The straight side is where the page before the hands has its fore-edge: to the left in a book that reads right to left.
    const side = view.kit.book.direction === "rtl" ? -1 : 1;
    expect(point![1]! - top![1]!).toBeCloseTo(side * (point![0]! - top![0]!), 6);
    const longest = Math.max(
      0,
      ...view.pattern.leaves.flatMap(({ fold }) =>
        creasesOf(fold)
          .filter((one) => !isTurned(one))
          .map(({ to }) => to.depth),
      ),
    );
    const wide = side * (point![0]! - top![0]!);
    expect(wide).toBeGreaterThanOrEqual(Math.min(longest - 0.5, 130));
  });

  it("has a folding card as wide as the fold of whole leaves", () => {
    const width = Number(/<path d="M[^h]*h([\d.]+)[^"]*" class="folding-card"/.exec(view.packet.gauges.join(""))![1]);
    expect(width).toBeCloseTo(view.pattern.corner.emptyDepth!, 2);
  });
});

describe("a kit that a reader folds by corners", () => {
  it("is the same as one that its author folds so", () => {
    const matter = fixtureFrontMatter("little-gull");
    const svg = readFileSync(join(fixtureFolder("little-gull"), "gull.svg"), "utf8");
    const stated = statedMadeKit(
      { ...matter, picture: { ...matter.picture, file: "picture.svg" }, fit: { ...matter.fit, foldStyle: "corner" } },
      svg,
    );
    const read = refitKit(fixtureKit("little-gull"), { foldStyle: "corner" });
    expect(fixtureText("little-gull")).toContain("foldStyle: single");
    const rows = (kit: Kit) => {
      const result = computeCorner(kit);
      if (!result.fits) throw new Error(result.finding.kind);
      const { pattern, findings } = result;
      const view = viewCorner({ kit, pattern, findings, pictureNotes: [] }, []);
      return [view.rows, view.warnings, view.figures, view.steps.map(({ text }) => text)];
    };
    expect(rows(read)).toEqual(rows(stated));
  });
});
