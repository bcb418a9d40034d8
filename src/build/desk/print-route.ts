import type { Hono } from "hono";
import { DESK_ROUTES, printAsk } from "../../input/desk/protocol.ts";
import * as say from "../../words/messages.ts";
import { askedFor } from "./asked-for.ts";
import type { Desk } from "./desk.ts";
import { refuse } from "./gate.ts";

/** Begins to print what the list has; how far it is comes with the news. */
export function printRoute(app: Hono, { state, print }: Pick<Desk, "state" | "print">): void {
  app.post(DESK_ROUTES.print, async (context) => {
    const asked = await askedFor(context, printAsk);
    if (!asked) return refuse(context, 400, say.deskOtherForm());
    const { kits, classes } = state();
    const listed = asked.kind === "kit" ? kits : classes;
    if (!listed.some(({ slug }) => slug === asked.slug)) return refuse(context, 404, say.deskNotFound());
    print(asked);
    return context.json({});
  });
}
