import { describe, expect, it } from "vitest";
import type { Printed, PrintedPdf, Published, PublishedLeaf } from "./printed.ts";
import { darkRuns, rasterOf } from "./raster.ts";
import { type Box, heightOf, type Outline, type ReadPage, type Words, widthOf } from "./read-pdf.ts";
import { ARROW, inchFraction } from "./table.ts";

/** Bars of known size, mm: in both axes, and for a kit in inches one of 4 in. */
const BARS = {
  mm: [
    { width: 100, height: 2 },
    { width: 2, height: 100 },
  ],
  in: [
    { width: 100, height: 2 },
    { width: 2, height: 100 },
    { width: 4 * 25.4, height: 2 },
  ],
} as const;

const TRUE_SCALE = ", true scale";
const GAUGE = `Scoring gauge${TRUE_SCALE}`;
const GAUGE_STRIPS = `Strips of the gauge${TRUE_SCALE}`;
const STRIPS = `Marking strips${TRUE_SCALE}`;

interface Sheet {
  readonly pdf: PrintedPdf;
  readonly page: ReadPage;
  readonly name: string;
}

function sheetsOf(printed: Printed, heading: string): Sheet[] {
  return printed.packets.flatMap((pdf) =>
    pdf.pages
      .filter(({ words }) => words.some(({ text }) => text.includes(heading)))
      .map((page) => ({ pdf, page, name: `${pdf.name} page ${page.number}` })),
  );
}

function rectangles(page: ReadPage, width: number, height: number, slack = 0.5): Outline[] {
  return page.outlines.filter(
    ({ closed, rectangle, box }) =>
      closed && rectangle && Math.abs(widthOf(box) - width) < slack && Math.abs(heightOf(box) - height) < slack,
  );
}

export function trueScaleSuite(printed: () => Printed): void {
  const trueScale = (): Sheet[] => sheetsOf(printed(), TRUE_SCALE);

  describe("every true-scale sheet", () => {
    it("is there: one gauge, and strips on as many sheets as they take", () => {
      for (const pdf of printed().packets) {
        expect(
          sheetsOf(printed(), GAUGE).filter((sheet) => sheet.pdf === pdf),
          pdf.name,
        ).toHaveLength(1);
        expect(sheetsOf(printed(), STRIPS).filter((sheet) => sheet.pdf === pdf).length, pdf.name).toBeGreaterThan(1);
      }
    });

    it("has calibration bars of 100 mm both ways within 0.02 mm, and of 4 in for a kit in inches", () => {
      for (const { pdf, page, name } of trueScale()) {
        for (const bar of BARS[pdf.units]) {
          const found = rectangles(page, bar.width, bar.height);
          expect(found, `${name} ${bar.width} × ${bar.height}`).toHaveLength(1);
          expect(Math.abs(widthOf(found[0]!.box) - bar.width), `${name} ${bar.width} across`).toBeLessThan(0.02);
          expect(Math.abs(heightOf(found[0]!.box) - bar.height), `${name} ${bar.height} upright`).toBeLessThan(0.02);
        }
      }
    });

    it("ticks each bar with fields of 10 mm", () => {
      for (const { page, name } of trueScale()) {
        for (const bar of BARS.mm) {
          const outer = rectangles(page, bar.width, bar.height)[0]!.box;
          const level = bar.width > bar.height;
          const fields = page.outlines
            .filter(({ paint, rectangle, box }) => paint === "fill" && rectangle && inside(box, outer))
            .map(({ box }) => (level ? [box.left - outer.left, widthOf(box)] : [box.top - outer.top, heightOf(box)]));
          expect(
            fields.map(([at]) => Math.round(at! * 50) / 50),
            name,
          ).toEqual([0, 20, 40, 60, 80]);
          for (const [, length] of fields) expect(Math.abs(length! - 10), name).toBeLessThan(0.02);
        }
      }
    });

    it("says what the bars are for", () => {
      for (const { pdf, page, name } of trueScale()) {
        const wanted = [
          "100 mm across",
          "100 mm upright",
          "99.5 to 100.5 mm is good",
          "actual size",
          "measure both bars",
        ];
        for (const words of pdf.units === "in" ? [...wanted, "4 in across"] : wanted)
          expect(page.text, name).toContain(words);
      }
    });

    it("is drawn, not a picture of points", () => {
      for (const { page, name } of trueScale()) expect(page.images, name).toBe(0);
    });
  });

  describe("the calibration bars on the raster at 300 dpi", () => {
    it("measure 100 mm across and upright within 0.1 mm, and fields of 10 mm", async () => {
      const firstOfEach = printed().packets.flatMap((pdf) =>
        [GAUGE, STRIPS].map((heading) => sheetsOf(printed(), heading).find((sheet) => sheet.pdf === pdf)!),
      );
      for (const { pdf, page, name } of firstOfEach) {
        const raster = await rasterOf(pdf.document, page.page, 300);
        for (const bar of BARS.mm) {
          const { box } = rectangles(page, bar.width, bar.height)[0]!;
          const runs = darkRuns(raster, box, bar.width > bar.height ? "across" : "upright");
          const axis = `${name} ${bar.width} × ${bar.height}`;
          // Five black fields and the line at the bar's end; half of that line's width stands outside at either end.
          expect(runs, axis).toHaveLength(6);
          const line = runs[5]!.end - runs[5]!.start;
          expect(Math.abs(runs[5]!.end - runs[0]!.start - line - 100), axis).toBeLessThan(0.1);
          for (const [i, run] of runs.slice(1, 5).entries()) {
            expect(Math.abs(run.end - run.start - 10), axis).toBeLessThan(0.1);
            expect(Math.abs(run.end - runs[0]!.start - line / 2 - (30 + 20 * i)), axis).toBeLessThan(0.1);
          }
        }
      }
    });
  });

  describe("the scoring gauge", () => {
    it("has each line of the kit at its distance from the gauge's left edge within 0.02 mm, and no other", () => {
      for (const { pdf, page, name } of sheetsOf(printed(), GAUGE)) {
        const { edge, lines } = gaugeOf(page);
        const depths = [...pdf.gauge, ...pdf.pattern.levels.map(({ depth }) => depth)];
        const expected = [...new Set(depths.map((depth) => Number(depth.toFixed(4))))].sort((a, b) => a - b);
        expect(lines.length, name).toBe(expected.length);
        for (const [i, depth] of expected.entries()) {
          expect(Math.abs(lines[i]! - edge.left - depth), `${name} ${depth} mm`).toBeLessThan(0.02);
        }
      }
    });

    it("names each level at its line, by its number in the table", () => {
      for (const { pdf, page, name } of sheetsOf(printed(), GAUGE)) {
        const { edge } = gaugeOf(page);
        for (const [i, level] of pdf.pattern.levels.entries()) {
          const named = `${i + 1} ${level.name} ·`;
          const label = page.words.filter(
            ({ upright, text, x }) => !upright && text.startsWith(named) && x < edge.right,
          );
          expect(label, `${name} ${level.name}`).toHaveLength(1);
          // On the far side of the line from the fore-edge, so that it is not cut off with the gauge's edge.
          const gap = label[0]!.x - (edge.left + level.depth);
          expect(gap, `${name} ${level.name}`).toBeGreaterThan(0);
          expect(gap, `${name} ${level.name}`).toBeLessThan(4);
        }
      }
    });

    it("has beside it, or on further sheets, a strip as wide as each level's line within 0.02 mm, and as high as the gauge", () => {
      for (const pdf of printed().packets) {
        const own = [GAUGE, GAUGE_STRIPS].flatMap((heading) =>
          sheetsOf(printed(), heading).filter((sheet) => sheet.pdf === pdf),
        );
        const [gauge, ...strips] = own.flatMap(({ page }) => cutOutOf(page));
        const depths = pdf.pattern.levels.map(({ depth }) => depth);
        const expected = [...new Set(depths.map((depth) => Number(depth.toFixed(4))))].sort((a, b) => a - b);
        expect(strips.length, pdf.name).toBe(expected.length);
        for (const [i, depth] of expected.entries()) {
          expect(Math.abs(widthOf(strips[i]!) - depth), `${pdf.name} ${depth} mm`).toBeLessThan(0.02);
          expect(Math.abs(heightOf(strips[i]!) - heightOf(gauge!)), `${pdf.name} ${depth} mm`).toBeLessThan(0.02);
        }
      }
    });

    it("is as high as the leaf, or as the sheet allows", () => {
      for (const { pdf, page, name } of sheetsOf(printed(), GAUGE)) {
        const height = heightOf(gaugeOf(page).edge);
        if (pdf.pattern.book.leafHeight < 200)
          expect(Math.abs(height - pdf.pattern.book.leafHeight), name).toBeLessThan(0.02);
        else expect(height, name).toBeGreaterThan(200);
      }
    });
  });

  describe("the marking strips", () => {
    it("stand for every leaf with marks once in each part, in order", () => {
      for (const pdf of printed().packets) {
        const wanted = pdf.pattern.leaves.filter(({ cuts }) => cuts.length > 0).map(({ leaf }) => leaf);
        const parts = partsOf(pdf, printed());
        expect([...parts.keys()], pdf.name).toEqual(pdf.pattern.kit === "tall" ? [1, 2] : [1]);
        for (const [part, strips] of parts)
          expect(
            strips.map(({ leaf }) => leaf),
            `${pdf.name} ${part}`,
          ).toEqual(wanted);
      }
    });

    it("carry every mark at its distance from the fold of the tab within 0.05 mm, with the depth of its cut", () => {
      for (const pdf of printed().packets) {
        for (const strips of partsOf(pdf, printed()).values()) {
          for (const strip of strips) {
            const leaf = pdf.pattern.leaves.find(({ leaf }) => leaf === strip.leaf)!;
            const cuts = leaf.cuts.filter(({ at }) => at > strip.from + 0.01 && at < strip.to - 0.01);
            const name = `${pdf.name} leaf ${strip.leaf} from ${strip.from} mm`;
            expect(strip.marks.length, name).toBe(cuts.length);
            for (const [i, cut] of cuts.entries()) {
              const mark = strip.marks[i]!;
              expect(Math.abs(mark.at - cut.at), `${name}, mark at ${cut.at}`).toBeLessThan(0.05);
              expect(mark.cut, `${name}, mark at ${cut.at}`).toBe(`${ARROW}${benchDepth(cut.depth, pdf)}`);
            }
          }
        }
      }
    });

    it("show every mark of a leaf, in parts that overlap where it is higher than the sheet", () => {
      for (const pdf of printed().packets) {
        const parts = [...partsOf(pdf, printed()).values()];
        for (const { leaf, cuts } of pdf.pattern.leaves.filter(({ cuts }) => cuts.length > 0)) {
          const strips = parts.map((part) => part.find((strip) => strip.leaf === leaf)!);
          expect(strips[0]!.from, pdf.name).toBe(0);
          for (const [i, strip] of strips.slice(1).entries())
            expect(strips[i]!.to - strip.from, `${pdf.name} leaf ${leaf}`).toBeGreaterThanOrEqual(10);
          for (const { at } of cuts)
            expect(
              strips.some(({ from, to }) => at >= from && at <= to),
              `${pdf.name} leaf ${leaf}: ${at}`,
            ).toBe(true);
        }
      }
    });

    it("keep their words to themselves, where they are cut apart", () => {
      const astray = printed().packets.flatMap((pdf) =>
        [...partsOf(pdf, printed())].flatMap(([part, strips]) =>
          strips.flatMap(({ leaf, beyond }) => beyond.map((text) => `${pdf.name} part ${part} leaf ${leaf}: ${text}`)),
        ),
      );
      expect(astray).toEqual([]);
    });

    it("name the leaf's book page and pattern page", () => {
      for (const pdf of printed().packets) {
        for (const strips of partsOf(pdf, printed()).values()) {
          for (const { leaf, labels } of strips) {
            const { bookPage, patternPage } = leafOf(pdf.pattern, leaf);
            const book = bookPage === null ? "no p." : `p. ${bookPage}`;
            expect(labels, pdf.name).toEqual([String(leaf), book, `(${patternPage})`]);
          }
        }
      }
    });
  });
}

function leafOf(pattern: Published, number: number): PublishedLeaf {
  return pattern.leaves.find(({ leaf }) => leaf === number)!;
}

/** A cut as it is measured at the bench: from the folded front edge where the leaf is folded there first. */
function benchDepth(depth: number, { pattern, units }: PrintedPdf): string {
  const bench = pattern.fit.foldStyle === "stepped" ? depth - pattern.levels[0]!.depth : depth;
  return units === "in" ? inchFraction(bench) : String(Math.round(bench * 10) / 10);
}

function inside(box: Box, room: Box): boolean {
  const slack = 0.01;
  return (
    box.left >= room.left - slack &&
    box.right <= room.right + slack &&
    box.top >= room.top - slack &&
    box.bottom <= room.bottom + slack
  );
}

/** What is cut out of a sheet of the gauge, from left to right. */
function cutOutOf(page: ReadPage): Box[] {
  return page.outlines
    .filter(
      ({ paint, closed, rectangle, box }) =>
        paint === "stroke" && closed && rectangle && widthOf(box) > 5 && heightOf(box) > 105,
    )
    .map(({ box }) => box)
    .sort((a, b) => a.left - b.left);
}

/** The gauge's outline, and the x of each of its upright lines, which the browser draws as a row of filled dashes. */
function gaugeOf(page: ReadPage): { edge: Box; lines: number[] } {
  const edge = cutOutOf(page)[0]!;
  const paths = Map.groupBy(
    page.outlines.filter(({ paint, box }) => paint === "fill" && inside(box, edge)),
    ({ path }) => path,
  );
  const rows = [...paths.values()].filter(
    (dashes) => dashes.length > 10 && dashes.every(({ box }) => widthOf(box) < 0.5),
  );
  const solid = page.outlines.filter(
    ({ paint, box }) => paint === "stroke" && widthOf(box) < 0.01 && heightOf(box) > 50,
  );
  const middle = ({ box }: Outline): number => (box.left + box.right) / 2;
  return { edge, lines: [...rows.map(([first]) => middle(first!)), ...solid.map(middle)].sort((a, b) => a - b) };
}

interface Strip {
  readonly leaf: number;
  /** Stretch of the leaf that it shows, mm from the head. */
  readonly from: number;
  readonly to: number;
  readonly marks: readonly { readonly at: number; readonly cut: string }[];
  readonly labels: readonly string[];
  /** What stands over the strip's sides or foot. */
  readonly beyond: readonly string[];
}

/** A packet's strips by part of the leaf, each part in the order of its sheets and from left to right. */
function partsOf(pdf: PrintedPdf, printed: Printed): Map<number, Strip[]> {
  const parts = new Map<number, Strip[]>();
  for (const { page } of sheetsOf(printed, STRIPS).filter((sheet) => sheet.pdf === pdf)) {
    const part = Number(/part (\d+) of \d+/.exec(page.text)?.[1] ?? 1);
    parts.set(part, [...(parts.get(part) ?? []), ...stripsOf(page)]);
  }
  return parts;
}

function stripsOf(page: ReadPage): Strip[] {
  const from = Number(/your own mark at ([\d.]+) mm from the head/.exec(page.text)?.[1] ?? 0);
  const [all, ...more] = page.outlines
    .filter(({ paint, closed, rectangle, box }) => paint === "stroke" && closed && rectangle && heightOf(box) > 20)
    .filter(({ box }) => widthOf(box) > 5);
  if (!all || more.length > 0)
    throw new Error(`page ${page.number} has ${more.length + Number(!!all)} outlines of strips`);
  const sides = page.outlines
    .filter(({ paint, box }) => paint === "stroke" && widthOf(box) < 0.01 && isAsHigh(box, all.box))
    .map(({ box }) => box.left);
  const edges = [all.box.left, ...sides, all.box.right].sort((a, b) => a - b);
  return edges.slice(1).map((right, i) => stripOf(page, { ...all.box, left: edges[i]!, right }, from));
}

function isAsHigh(box: Box, other: Box): boolean {
  return Math.abs(box.top - other.top) < 0.01 && Math.abs(box.bottom - other.bottom) < 0.01;
}

function stripOf(page: ReadPage, outer: Box, from: number): Strip {
  if (widthOf(outer) < 5 || widthOf(outer) > 12)
    throw new Error(`a strip on page ${page.number} is ${widthOf(outer)} mm wide`);
  const words = page.words.filter(
    ({ box, y }) =>
      box.right > outer.left + 0.4 && box.right < outer.right + 0.4 && y > outer.top && y < outer.bottom + 3,
  );
  const middle = ({ box }: Outline): number => (box.top + box.bottom) / 2;
  const level = page.outlines.filter(
    ({ box }) =>
      heightOf(box) < 0.5 &&
      box.top > outer.top + 1 &&
      box.top < outer.bottom - 0.1 &&
      box.left < outer.right - 0.1 &&
      box.right > outer.left + 0.1,
  );
  // The fold of the tab is a row of dashes, a mark one line over this strip or several; the sides of a notch are rows, too.
  const fold = Math.min(...level.map(middle));
  const lines = level
    .filter(({ box }) => box.left < outer.left + 0.01 && box.right > outer.right - 0.01)
    .filter((one) => middle(one) > fold + 0.1)
    .map(middle)
    .sort((a, b) => a - b);
  const tab = words.filter(({ y }) => y < fold);
  return {
    leaf: Number(tab[0]!.text),
    from,
    to: from + outer.bottom - fold,
    marks: lines
      .filter((y) => y > fold + 0.01 && y < outer.bottom - 0.01)
      .map((y) => ({ at: from + y - fold, cut: cutBelow(words, y) })),
    labels: [...Map.groupBy(tab, ({ y }) => Math.round(y * 10)).values()].map((runs) => textOf(runs)),
    beyond: words.filter(({ box }) => !inside({ ...box, top: box.bottom }, outer)).map(({ text }) => text),
  };
}

/** The words that begin with an arrow just below a line. */
function cutBelow(words: readonly Words[], line: number): string {
  const arrow = words.find(({ text, y }) => text.startsWith(ARROW) && y > line && y < line + 3.2);
  if (!arrow) return "";
  return textOf(words.filter(({ x, y, size }) => Math.abs(y - arrow.y) < 0.05 && x >= arrow.x && size === arrow.size));
}

function textOf(runs: readonly Words[]): string {
  return [...runs]
    .sort((a, b) => a.x - b.x)
    .map(({ text }) => text)
    .join("");
}
