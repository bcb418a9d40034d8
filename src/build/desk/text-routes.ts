import type { Context, Hono } from "hono";
import { told } from "../../input/desk/desk-message.ts";
import { DESK_ROUTES, openAsk, writeAsk } from "../../input/desk/protocol.ts";
import { formatMessages } from "../../input/files/format-message.ts";
import { KitError } from "../../input/files/message.ts";
import * as say from "../../words/messages.ts";
import { askedFor } from "./asked-for.ts";
import type { Desk } from "./desk.ts";
import { refuse } from "./gate.ts";
import { openInEditor } from "./open-editor.ts";
import { NotWritten } from "./texts.ts";
import { writeFaultText } from "./write-fault.ts";

/** Reading, writing and opening texts. */
export function textRoutes(app: Hono, { texts, base }: Pick<Desk, "texts" | "base">): void {
  app.get(DESK_ROUTES.text, (context) =>
    answered(context, () => {
      try {
        return context.json(texts.read(context.req.query("file") ?? ""));
      } catch (error) {
        if (error instanceof KitError) return context.json({ messages: told(error.messages) }, 422);
        throw error;
      }
    }),
  );
  app.post(DESK_ROUTES.write, async (context) => {
    const asked = await askedFor(context, writeAsk);
    if (!asked) return refuse(context, 400, say.deskOtherForm());
    return answered(context, () => {
      const answer = texts.write(asked);
      if (answer.written) return context.json(answer);
      return context.json(answer, "found" in answer ? 409 : 422);
    });
  });
  app.post(DESK_ROUTES.open, async (context) => {
    const asked = await askedFor(context, openAsk);
    if (!asked) return refuse(context, 400, say.deskOtherForm());
    return answered(context, async () => {
      const failure = await openInEditor(base, asked);
      return failure === undefined ? context.json({}) : refuse(context, 503, failure);
    });
  });
}

/** Answers; what cannot be read or written is told. */
async function answered(context: Context, answer: () => Response | Promise<Response>): Promise<Response> {
  try {
    return await answer();
  } catch (error) {
    if (error instanceof KitError) return refuse(context, 403, formatMessages(error.messages));
    if (!(error instanceof NotWritten)) throw error;
    const { why } = error;
    if (why === "not of the desk") return refuse(context, 403, say.deskNotOfDesk());
    return refuse(context, why.fault === "full" || why.fault === "failing" ? 500 : 403, writeFaultText(why));
  }
}
