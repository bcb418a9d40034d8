import { spawnSync } from "node:child_process";
import { rmSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { stringify } from "yaml";
import { makeProject, type Project } from "../../site/project.ts";
import { readPdf } from "../print/read-pdf.ts";

/** Classes of every size, in both papers and units, with texts at their bounds and dear prices. */
const CLASSES = [
  { seats: 1, paper: "letter", units: "in", title: "W".repeat(120), price: 99_999.99 },
  { seats: 12, paper: "a4", units: "mm", title: "Twelve", price: 4_321.99 },
  { seats: 16, paper: "letter", units: "mm", title: "Wide words ".repeat(11).slice(0, 120), price: 99_999.99 },
  { seats: 40, paper: "a4", units: "in", title: "W".repeat(120), price: 99_999.99 },
  { seats: 60, paper: "a4", units: "mm", title: "Sixty", price: 0.35 },
] as const;

const HEAD = "seat,kit,leafHeight,leafWidth,blockThickness,leaves,pageOneLeaf,lastPage";
const BOOKS = ["little-gull,178,110,9.5,96,3,186", "harbour-moon,222,148,31,248,5,486"];

function write(project: Project, { seats, paper, units, title, price }: (typeof CLASSES)[number]): void {
  const long = title.length > 10;
  const matter = {
    ...{ title, date: "2027-01-14", place: long ? "W".repeat(120) : "Room", units, paper, books: "books.csv" },
    kits: ["little-gull", "harbour-moon"],
    sessions: [14, 21, 28].map((day) => ({
      ...{ title: long ? "W".repeat(60) : "Evening", date: `2027-01-${day}`, minutes: 150 },
    })),
    prices: { card: price, acetate: price, tape: price, glueDots: price, light: price },
    currency: long ? "W".repeat(12) : "EUR",
  };
  const rows = Array.from({ length: seats }, (_, i) => `${i + 1},${BOOKS[i % BOOKS.length]}`);
  project.write(`content/classes/of-${seats}/index.md`, `---\n${stringify(matter)}---\nWords.\n`);
  project.write(`content/classes/of-${seats}/books.csv`, `${[HEAD, ...rows].join("\n")}\n`);
}

describe("classes of every size", () => {
  let project: Project;
  beforeAll(() => {
    project = makeProject({ kits: ["little-gull", "harbour-moon"], classes: true });
    rmSync(join(project.folder, "content/classes/winter-evenings"), { recursive: true });
    for (const one of CLASSES) write(project, one);
    const { status, stderr } = spawnSync(process.execPath, [join(import.meta.dirname, "print-teachers.ts")], {
      cwd: project.folder,
      encoding: "utf8",
    });
    if (status !== 0) throw new Error(stderr);
  });
  afterAll(() => project?.remove());

  // Source: ISO 216 and ASME Y14.1, in points of 1/72 in.
  const SIZES = { a4: [595, 842], letter: [612, 792] };

  it.each(CLASSES)("with $seats seats have every seat in every table, at true scale", async ({ seats, paper }) => {
    const folder = join(project.folder, `dist/private/classes/of-${seats}`);
    const { pages } = await readPdf(join(folder, "teacher.pdf"));
    const [width, height] = SIZES[paper];
    for (const page of pages) {
      expect(Math.abs((page.width * 72) / 25.4 - width!)).toBeLessThan(1);
      expect(Math.abs((page.height * 72) / 25.4 - height!)).toBeLessThan(1);
    }
    const html = project.read(`dist/private/classes/of-${seats}/teacher/index.html`);
    const count = (table: string, row: string) =>
      (new RegExp(`<table class="${table}">[\\s\\S]*?</table>`).exec(html)?.[0].split(row).length ?? 0) - 1;
    expect(count("costs", '<th scope="row">')).toBe(seats);
    expect(count("roster", '<th scope="row">')).toBe(seats);
    const costs = pages.filter(({ text }) => text.includes("Paid"));
    expect(costs).toHaveLength(seats > 50 ? 2 : 1);
  });
});
