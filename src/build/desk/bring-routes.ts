import type { Context, Hono } from "hono";
import { newKitForm, uploadName } from "../../input/beginning/new-kit-form.ts";
import { FILE_LIMITS, MB } from "../../input/files/site-file.ts";
import { TEXT } from "../../input/files/text-bounds.ts";
import * as say from "../../words/messages.ts";
import { askedFor } from "./asked-for.ts";
import type { Desk } from "./desk.ts";
import { BYTES_TYPE, bounded, refuse } from "./gate.ts";

/** Takes a picture: the one thing that may be larger than a text. */
export function bringRoute(app: Hono, { bring }: Pick<Desk, "bring">): void {
  app.post("/api/new/bring", bounded(FILE_LIMITS.raster * MB), async (context) => {
    const name = context.req.query("name") ?? "";
    if (name === "" || name.length > TEXT.path || context.req.header("content-type") !== BYTES_TYPE)
      return refuse(context, 400, say.deskOtherForm());
    return context.json(await bring.bring(name, new Uint8Array(await context.req.arrayBuffer())));
  });
}

/** Looks at a kit that is being begun, and makes its folder. What the room does not know any more is “gone”. */
export function newKitRoutes(app: Hono, { bring }: Pick<Desk, "bring">): void {
  app.get("/api/new/seen", async (context, next) => {
    const upload = uploadName.safeParse(context.req.query("upload"));
    const seen = upload.success ? await bring.seen(upload.data) : undefined;
    return seen ? context.body(new Uint8Array(seen), 200, { "Content-Type": "image/webp" }) : next();
  });
  app.get("/api/new/icons", async (context) =>
    context.json({ icons: await bring.icons((context.req.query("word") ?? "").slice(0, TEXT.name)) }),
  );
  app.post("/api/new/look", async (context) => {
    const form = await askedFor(context, newKitForm);
    if (!form) return refuse(context, 400, say.deskOtherForm());
    const look = await bring.look(form);
    return context.json(look === "late" ? { late: true } : orGone(look && { look }));
  });
  app.post("/api/new", async (context: Context) => {
    const form = await askedFor(context, newKitForm);
    if (!form) return refuse(context, 400, say.deskOtherForm());
    return context.json(orGone(await bring.make(form)));
  });
}

function orGone(answer: object | undefined): object {
  return answer ?? { gone: true };
}
