import { describe, expect, it } from "vitest";
import { DRAWING, type ExportedDrawer, exportedDrawers } from "./drawers.ts";
import { SCENES } from "./scenes.ts";

/** What others take from the drawings' room that gives text but is no drawing. */
const NO_DRAWINGS: Readonly<Record<string, string>> = {
  insideTone: "a colour",
  levelTone: "a colour",
  paperTone: "a colour",
  linePath: "path data of cut files",
  ringPath: "path data of cut files",
  num: "a number's digits",
};

const all = exportedDrawers();
const shown = new Set(SCENES.map(({ of }) => of.name));

/** What only other drawings use is looked at in them. */
const isPiece = ({ usedIn }: ExportedDrawer): boolean =>
  usedIn.length > 0 && usedIn.every((file) => file.startsWith(`${DRAWING}/`));

describe("functions that src/output/drawing exports", () => {
  it("are found: front, a diagram, a sheet, a piece", () => {
    const names = all.map(({ name }) => name);
    expect(names).toEqual(
      expect.arrayContaining(["frontPicture", "closing", "stripSheets", "partDrawing", "pocketPlan"]),
    );
  });

  it("each have a scene, are pieces of other drawings, or draw nothing", () => {
    const without = all.filter((one) => !shown.has(one.name) && !isPiece(one) && !(one.name in NO_DRAWINGS));
    expect(without.map(({ name, file }) => `${name} (${file}) has no scene in test/gallery/rooms`)).toEqual([]);
  });

  it("are shown under their own names, from one file each", () => {
    for (const name of shown) expect(all.filter((one) => one.name === name).map((one) => one.name)).toEqual([name]);
  });

  it("that draw nothing are still there, and used outside", () => {
    const pieces = all.filter((one) => !isPiece(one) && !shown.has(one.name)).map(({ name }) => name);
    expect(pieces.sort()).toEqual(Object.keys(NO_DRAWINGS).sort());
  });
});
