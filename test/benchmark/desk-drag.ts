import { readFileSync } from "node:fs";
import { join } from "node:path";
import { asCutKit } from "../../src/core/kit/cut-kit.ts";
import { fitKit } from "../../src/core/pattern/fit-kit.ts";
import type { PictureAnswer } from "../../src/input/desk/protocol.ts";
import { drawText } from "../../src/input/kit/draw-text.ts";
import { readMotifs } from "../../src/input/kit/read-motifs.ts";
import { DeskKit } from "../../src/page/desk/draft/desk-kit.ts";
import "../english.ts";
import { FIXTURES, fixtureFolder } from "../input/kit/kit-folders.ts";

/** A lit kit of 204 leaves with a window. */
const SLUG = "harbour-moon";

/** What a handle on the desk is dragged through: a height, and the depth of the front level; lengths in mm. */
export interface DeskDrag {
  /** One movement: the text is edited and read, and the leaves are folded. */
  readonly leaves: () => void;
  /** The same with light and window. */
  readonly whole: () => void;
}

/** A kit on the desk that is dragged to and fro by half a millimetre. */
export async function openDrag(): Promise<DeskDrag> {
  const folder = fixtureFolder(SLUG);
  const lent = { shelf: readMotifs(FIXTURES).made, fonts: [] };
  const draw = async (text: string): Promise<PictureAnswer> => {
    const { files, ...drawn } = drawText(SLUG, text, { base: FIXTURES, folder }, lent);
    if (!("drawn" in drawn)) throw new Error(`${SLUG} is not drawn`);
    return { ...drawn, shapes: [] };
  };
  const text = readFileSync(join(folder, "index.md"), "utf8");
  const found = { file: `content/kits/${SLUG}/index.md`, text, mark: "" };
  const kit = await new Promise<DeskKit>((resolve) => {
    const opened = new DeskKit(SLUG, found, draw, () => resolve(opened));
  });
  let turn = 0;
  const move = (): void => {
    turn += 1;
    const by = turn % 3 === 0 ? 0.5 : 0;
    if (turn % 2 === 0) kit.change([{ at: ["fit", "height"], mm: 130 + by }], "height");
    else kit.change([{ at: ["gauge", "lines", 1], mm: 18 + by }], "depth");
  };
  return {
    leaves: () => {
      move();
      fitKit(asCutKit({ ...kit.stated!.kit, light: undefined, insert: undefined, motifs: [] }));
    },
    whole: () => {
      move();
      fitKit(asCutKit(kit.stated!.kit));
    },
  };
}
