import { pathBelow } from "../files/folders.ts";
import { KitError, type KitMessage } from "../files/message.ts";
import type { KitFolder } from "../files/named-files.ts";
import type { PictureFiles } from "../layers/draw-file.ts";
import { type DrawnParts, notedParts } from "./drawn-parts.ts";
import { type Lent, partsOfFiles } from "./parts-of-files.ts";
import { kitText, stateKit } from "./state-kit.ts";

/** What the files of a kit draw for a text that need not be the one on the disk, or why nothing is drawn. */
export type TextDrawing = { readonly files: PictureFiles } & (
  | { readonly drawn: DrawnParts }
  | { readonly messages: readonly KitMessage[] }
);

/**
 * Draws what a text of a kit's index.md states. What is wrong with it beside its drawings is no matter here: whoever reads
 * the text with `stateKit` is told of that.
 */
export function drawText(slug: string, text: string, folder: KitFolder, lent: Lent): TextDrawing {
  const { files, ...own } = partsOfFiles(folder, lent);
  const parts = notedParts(own);
  try {
    stateKit(kitText(slug, `${pathBelow(folder.base, folder.folder)}/index.md`, text), parts);
  } catch (error) {
    if (!(error instanceof KitError)) throw error;
    const drawn = parts.drawn();
    return drawn ? { drawn, files } : { messages: error.messages, files };
  }
  return { drawn: parts.drawn()!, files };
}
