import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { accept, changedFile, compared, goldenFile, isChanged, leaveBeside, strayGoldens } from "./golden.ts";
import { galleryPage } from "./page.ts";
import type { Scene } from "./scene.ts";

const folder = mkdtempSync(join(tmpdir(), "leaflight-goldens-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** A drawing of one line of this length. */
function scene(name: string, length: number): Scene {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="96" height="48" viewBox="0 0 96 48"><path class="edge-cut" d="M0 9h${length}"/><text x="1" y="20"><tspan>two</tspan> <tspan>words</tspan></text></svg>`;
  return { room: "made", name, of: scene as never, draw: () => svg };
}

const goldenOf = (one: Scene): string => readFileSync(goldenFile(one, folder), "utf8");

describe("a golden", () => {
  const line = scene("line", 10);
  const longer = scene("line", 11);

  it("that is missing is written beside, and becomes the golden when it is accepted", () => {
    expect(isChanged(compared(line, folder))).toBe(true);
    leaveBeside(compared(line, folder), folder);
    expect(existsSync(goldenFile(line, folder))).toBe(false);
    expect(readFileSync(changedFile(line, folder), "utf8")).toContain("M0 9h10");
    accept(compared(line, folder), folder);
    expect(goldenOf(line)).toContain("M0 9h10");
    expect(existsSync(changedFile(line, folder))).toBe(false);
    expect(isChanged(compared(line, folder))).toBe(false);
  });

  it("has an element a line, words in one piece, and the looks of its classes", () => {
    const lines = goldenOf(line).split("\n");
    expect(lines).toContain('<path class="edge-cut" d="M0 9h10"/>');
    expect(lines).toContain('<text x="1" y="20"><tspan>two</tspan> <tspan>words</tspan></text>');
    expect(lines.find((one) => one.startsWith(".edge-cut{"))).toMatch(/stroke:#[0-9a-f]{6};stroke-width:3/);
    expect(goldenOf(line)).not.toContain("var(");
  });

  it("that differs stays, what is drawn now lies beside it, and goes when they are alike again", () => {
    leaveBeside(compared(longer, folder), folder);
    expect(goldenOf(line)).toContain("M0 9h10");
    expect(readFileSync(changedFile(line, folder), "utf8")).toContain("M0 9h11");
    leaveBeside(compared(line, folder), folder);
    expect(existsSync(changedFile(line, folder))).toBe(false);
  });

  it("is the same with the line ends of Windows", () => {
    writeFileSync(goldenFile(line, folder), goldenOf(line).replaceAll("\n", "\r\n"));
    expect(isChanged(compared(line, folder))).toBe(false);
  });

  it("that nothing draws is named", () => {
    expect(strayGoldens([line], folder)).toEqual([]);
    expect(strayGoldens([scene("other", 10)], folder)).toEqual(["made/line"]);
  });

  it("is on the page beside what is drawn now, before the rooms; the page needs nothing beside it", () => {
    const same = scene("same", 5);
    accept(compared(same, folder), folder);
    const page = galleryPage([compared(same, folder), compared(longer, folder)]);
    const places = ['id="changed"', "M0 9h10", "M0 9h11", 'id="made"', "M0 9h5"].map((text) => page.indexOf(text));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    expect(Math.min(...places)).toBeGreaterThan(0);
    expect(page).toContain("25 × 13 mm");
    expect(page).not.toMatch(/(src|href)="(?!#)/);
  });
});
