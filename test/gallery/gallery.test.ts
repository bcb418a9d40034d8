import { relative } from "node:path";
import { describe, expect, it } from "vitest";
import { changedFile, compared, goldenFile, isChanged, leaveBeside, strayGoldens } from "./golden.ts";
import { pathOf, type Scene } from "./scene.ts";
import { SCENES } from "./scenes.ts";

describe("a drawing is as it was accepted", () => {
  it.each(SCENES.map((scene) => [pathOf(scene), scene] as const))("%s", (_, scene) => {
    const one = compared(scene);
    leaveBeside(one);
    if (isChanged(one)) expect.fail(whatToDo(scene, one.golden));
  });
});

it("every golden has its scene, and every scene a name of its own", () => {
  expect(strayGoldens(SCENES), "drawings that were taken out: `npm run gallery -- --accept` removes them").toEqual([]);
  expect(new Set(SCENES.map(pathOf)).size).toBe(SCENES.length);
});

function whatToDo(scene: Scene, golden: string | undefined): string {
  const [was, is] = [goldenFile(scene), changedFile(scene)].map((file) => relative(process.cwd(), file));
  const what = golden === undefined ? `${was} is missing; it is drawn in ${is}.` : `${was} differs from ${is}.`;
  return `${what}\n\`npm run gallery\` shows both; \`npm run gallery -- --accept\` takes the change over.`;
}
