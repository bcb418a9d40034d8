import { join } from "node:path";
import { told } from "../../input/desk/desk-message.ts";
import type { PictureAnswer, PictureAsk } from "../../input/desk/protocol.ts";
import { contentPath } from "../../input/files/content-folder.ts";
import { KitError } from "../../input/files/message.ts";
import { ProblemError } from "../../input/files/problem.ts";
import { drawText } from "../../input/kit/draw-text.ts";
import { resolveLevels } from "../../input/kit/resolve-levels.ts";
import { kitText } from "../../input/kit/state-kit.ts";
import type { PictureFiles } from "../../input/layers/draw-file.ts";
import { pickableShapes } from "../../input/layers/pickable.ts";
import type { PickableShape } from "../../input/layers/pickable-shape.ts";
import type { SiteFacts } from "../library/site-facts.ts";

/** Draws the picture and the motifs that a text states, with the files of its kit's folder. */
export function drawPicture(
  { slug, text }: PictureAsk,
  { base, motifs, fonts }: SiteFacts,
  kits: string,
): PictureAnswer {
  const { files, ...drawing } = drawText(slug, text, { base, folder: join(kits, slug) }, { shelf: motifs, fonts });
  const shapes = shapesOf(slug, text, files);
  return "drawn" in drawing ? { drawn: drawing.drawn, shapes } : { messages: told(drawing.messages), shapes };
}

/** Shapes that can be picked; none as long as the text or its levels cannot be read. */
function shapesOf(slug: string, text: string, files: PictureFiles): readonly PickableShape[] {
  try {
    const { data } = kitText(slug, contentPath(`kits/${slug}/index.md`), text);
    return pickableShapes(files, data.picture, resolveLevels(data));
  } catch (error) {
    if (error instanceof KitError || error instanceof ProblemError) return [];
    throw error;
  }
}
