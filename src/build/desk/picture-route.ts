import type { Hono } from "hono";
import { DESK_ROUTES, type PictureAsk, pictureAsk } from "../../input/desk/protocol.ts";
import { contentPath } from "../../input/files/content-folder.ts";
import { FileError } from "../../input/files/file-error.ts";
import { realPath } from "../../input/files/real-path.ts";
import * as say from "../../words/messages.ts";
import { askedFor } from "./asked-for.ts";
import type { Desk } from "./desk.ts";
import { refuse } from "./gate.ts";

/** Draws what a text states, in a thread of its own. */
export function pictureRoute(app: Hono, { base, drawing }: Pick<Desk, "base" | "drawing">): void {
  app.post(DESK_ROUTES.picture, async (context) => {
    const asked = await askedFor(context, pictureAsk);
    if (!asked) return refuse(context, 400, say.deskOtherForm());
    if (!isFolder(base, asked)) return refuse(context, 404, say.deskNotFound());
    const answer = await drawing.draw(asked);
    return context.json(answer, "drawn" in answer ? 200 : 422);
  });
}

/** Whether a kit's folder is there, and leads nowhere out of content. */
function isFolder(base: string, { slug }: PictureAsk): boolean {
  try {
    realPath({ base, file: contentPath(`kits/${slug}`), kind: undefined });
    return true;
  } catch (error) {
    if (error instanceof FileError) return false;
    throw error;
  }
}
