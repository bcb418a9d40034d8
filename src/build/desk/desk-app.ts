import { Hono } from "hono";
import { setCookie } from "hono/cookie";
import { DESK_ROUTES, type DeskSession } from "../../input/desk/protocol.ts";
import * as say from "../../words/messages.ts";
import { foreseen } from "../errors/foreseen.ts";
import { programFault } from "../errors/program-fault.ts";
import { booksRoute } from "./books-route.ts";
import { bringRoute, newKitRoutes } from "./bring-routes.ts";
import type { Desk } from "./desk.ts";
import { bounded, cookieName, type Gate, gate, OPEN, refuse } from "./gate.ts";
import { isKey } from "./keys.ts";
import { newsRoute } from "./news-route.ts";
import { pageRoutes } from "./page-routes.ts";
import { pictureRoute } from "./picture-route.ts";
import { plainPage } from "./plain-page.ts";
import { printRoute } from "./print-route.ts";
import { textRoutes } from "./text-routes.ts";

/** All that the desk's server answers; who may ask is decided before (`gate`). */
export function deskApp(desk: Desk, at: () => Gate): Hono {
  const app = new Hono();
  app.use(gate(at));
  bringRoute(app, desk);
  app.use(bounded());
  app.get(OPEN, (context) => {
    const { keys, port } = at();
    if (!isKey(context.req.query("key"), keys.cookie))
      return context.html(plainPage(say.deskClosedTitle(), [say.deskUnopened()]), 403);
    setCookie(context, cookieName(port), keys.cookie, { httpOnly: true, sameSite: "Strict", path: "/" });
    return context.redirect("/", 303);
  });
  app.get(DESK_ROUTES.session, (context) => {
    // A page is opened: soon it may ask for pictures.
    desk.drawing.warm();
    return context.json({ token: at().keys.token, site: desk.site() } satisfies DeskSession);
  });
  app.get(DESK_ROUTES.state, (context) => context.json(desk.state()));
  newsRoute(app, desk);
  textRoutes(app, desk);
  pictureRoute(app, desk);
  booksRoute(app, desk);
  printRoute(app, desk);
  newKitRoutes(app, desk);
  pageRoutes(app, desk);
  app.notFound((context) => refuse(context, 404, say.deskNotFound()));
  app.onError((error, context) => {
    const told = foreseen(error) ?? programFault(error, desk.base);
    console.error(told);
    return refuse(context, 500, told);
  });
  return app;
}
