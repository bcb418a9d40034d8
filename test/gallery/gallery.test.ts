import { relative } from "node:path";
import { describe, expect, it } from "vitest";
import { DRAWING, type ExportedDrawer, exportedDrawers } from "./drawers.ts";
import { changedFile, compared, goldenFile, isChanged, leaveBeside, strayGoldens } from "./golden.ts";
import { pathOf, type Scene } from "./scene.ts";
import { SCENES } from "./scenes.ts";

describe("a drawing is as it was accepted", () => {
  it.each(SCENES.map((scene) => [pathOf(scene), scene] as const))("%s", (_, scene) => {
    const one = compared(scene);
    leaveBeside(one);
    if (isChanged(one)) expect.fail(whatToDo(scene, one.golden));
  });

  it("and every golden has its scene, every scene a name of its own", () => {
    expect(strayGoldens(SCENES), "no scene draws them; `npm run gallery -- --accept` takes them out").toEqual([]);
    expect(new Set(SCENES.map(pathOf)).size).toBe(SCENES.length);
  });
});

function whatToDo(scene: Scene, golden: string | undefined): string {
  const [was, is] = [goldenFile(scene), changedFile(scene)].map((file) => relative(process.cwd(), file));
  const what = golden === undefined ? `${was} is missing; it is drawn in ${is}.` : `${was} differs from ${is}.`;
  return `${what}\n\`npm run gallery\` shows both; \`npm run gallery -- --accept\` takes the change over.`;
}

/** What others take from the drawings' room that gives text but is no drawing. */
const NO_DRAWINGS: Readonly<Record<string, string>> = {
  insideTone: "a colour",
  levelTone: "a colour",
  paperTone: "a colour",
  linePath: "path data of cut files",
  ringPath: "path data of cut files",
  num: "a number's digits",
  shortRings: "path data of what is brought to the desk",
};

/** What only other drawings use is looked at in them. */
const isPiece = ({ usedIn }: ExportedDrawer): boolean =>
  usedIn.length > 0 && usedIn.every((file) => file.startsWith(`${DRAWING}/`));

describe("functions that src/output/drawing exports", () => {
  const all = exportedDrawers();
  const shown = new Set(SCENES.map(({ of }) => of.name));

  it("are found: front, a diagram, a sheet, a piece", () => {
    const found = all.map(({ name }) => name);
    const some = ["frontPicture", "closing", "stripSheets", "partDrawing", "pocketPlan"];
    expect(found).toEqual(expect.arrayContaining(some));
  });

  it("have a scene each, or are pieces of other drawings, or draw nothing", () => {
    const without = all.filter((one) => !shown.has(one.name) && !isPiece(one) && !(one.name in NO_DRAWINGS));
    expect(without.map(({ name, file }) => `${name} (${file}) has no scene in test/gallery/rooms`)).toEqual([]);
  });

  it("are shown under their own names, from one file each", () => {
    for (const name of shown) expect(all.filter((one) => one.name === name).map((one) => one.name)).toEqual([name]);
  });

  it("and those that draw nothing are still there", () => {
    const rest = all.filter((one) => !isPiece(one) && !shown.has(one.name)).map(({ name }) => name);
    expect(rest.sort()).toEqual(Object.keys(NO_DRAWINGS).sort());
  });
});
