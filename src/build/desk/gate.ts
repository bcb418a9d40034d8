import type { Context, MiddlewareHandler } from "hono";
import { bodyLimit } from "hono/body-limit";
import { getCookie } from "hono/cookie";

import { DESK_HEADER, type DeskRefusal } from "../../input/desk/protocol.ts";
import { html } from "../../output/parts/markup.ts";
import * as say from "../../words/messages.ts";
import { type DeskKeys, isKey } from "./keys.ts";
import { isLoopbackHost } from "./loopback.ts";
import { plainPage } from "./plain-page.ts";

/** Who may come in: this machine's own browser, with a page that this server gave it. */
export interface Gate {
  readonly keys: DeskKeys;
  /** The port that the desk is served on. */
  readonly port: number;
}

/** Where the address of the terminal leads: it leaves the cookie and goes on to the desk. */
export const OPEN = "/open";

/** Most bytes of a request in JSON: a text of the largest size, and what is around it. */
const MOST = 4_000_000;

/** Nothing is taken in a form that a page elsewhere can send by itself. */
export const JSON_TYPE = "application/json";
export const BYTES_TYPE = "application/octet-stream";

/** What a browser is told with every answer. */
const HEADERS = {
  "Content-Security-Policy": [
    "default-src 'none'",
    ...["script", "style", "font", "connect", "worker"].map((kind) => `${kind}-src 'self'`),
    "img-src 'self' blob: data:",
    "base-uri 'none'",
    "form-action 'none'",
    "frame-ancestors 'none'",
  ].join("; "),
  "Cross-Origin-Opener-Policy": "same-origin",
  "Cross-Origin-Resource-Policy": "same-origin",
  "Referrer-Policy": "no-referrer",
  "X-Content-Type-Options": "nosniff",
  "X-Frame-Options": "DENY",
  "Cache-Control": "no-store",
} as const;

/** The name of the cookie. Cookies know no ports: each desk of this machine has its own. */
export function cookieName(port: number): string {
  return `leaflight-desk-${port}`;
}

/** Lets through what a page of the desk asks, and refuses everything else before a route sees it. */
export function gate(at: () => Gate): MiddlewareHandler {
  return async (context, next) => {
    for (const [name, value] of Object.entries(HEADERS)) context.header(name, value);
    const refused = refusal(context, at());
    if (refused) return refused;
    await next();
  };
}

/** Bounds the bytes of a request, also of one that does not say how many it has. */
export function bounded(most = MOST): MiddlewareHandler {
  return bodyLimit({ maxSize: most, onError: (context) => refuse(context, 413, say.deskTooMuch()) });
}

/** An answer that says in a sentence why nothing was done. */
export function refuse(context: Context, status: 400 | 403 | 404 | 405 | 413 | 415 | 500 | 503, why: string): Response {
  return context.json({ refused: why } satisfies DeskRefusal, status);
}

function refusal(context: Context, gate: Gate): Response | undefined {
  const { method, path } = context.req;
  const host = context.req.header("host");
  // A name that somebody made lead to this machine is no name of this server.
  if (!isLoopbackHost(host, gate.port)) return refuse(context, 403, say.deskOtherHost());
  const origin = context.req.header("origin");
  if (origin !== undefined && origin !== `http://${host}`) return refuse(context, 403, say.deskOtherOrigin());
  if (!["GET", "HEAD", "POST"].includes(method)) return refuse(context, 405, say.deskOtherMethod());
  if (method !== "POST" && path === OPEN) return undefined;
  const isVisit = method !== "POST" && !path.startsWith("/api/") && isNavigation(context);
  if (!isVisit && !isOwnRequest(context)) return refuse(context, 403, say.deskOtherOrigin());
  if (!isKey(getCookie(context, cookieName(gate.port)), gate.keys.cookie))
    return isVisit ? unopened(context) : refuse(context, 403, say.deskUnopened());
  return method === "POST" ? unposted(context, gate, origin) : undefined;
}

/** A person who goes to an address, and no frame, picture or script of a page. Old browsers and other programs do not say. */
function isNavigation(context: Context): boolean {
  const dest = context.req.header("sec-fetch-dest");
  return dest === undefined ? (context.req.header("accept") ?? "").includes("text/html") : dest === "document";
}

function isOwnRequest(context: Context): boolean {
  return ["same-origin", "none", undefined].includes(context.req.header("sec-fetch-site"));
}

/** What changes something also has the token, which no other page can read, and says where it comes from. */
function unposted(context: Context, { keys }: Gate, origin: string | undefined): Response | undefined {
  if (origin === undefined) return refuse(context, 403, say.deskOtherOrigin());
  if (!isKey(context.req.header(DESK_HEADER), keys.token)) return refuse(context, 403, say.deskUnopened());
  const type = context.req.header("content-type") ?? "";
  return [JSON_TYPE, BYTES_TYPE].includes(type) ? undefined : refuse(context, 415, say.deskOtherType());
}

/**
 * A browser keeps the cookie back when the way to the desk began on another site, as on the served one: it is asked to come
 * again from here, once.
 */
function unopened(context: Context): Response {
  const isSecond = context.req.query("again") !== undefined;
  const address = new URL(context.req.url);
  address.searchParams.set("again", "1");
  const again = isSecond
    ? html``
    : html`<meta http-equiv="refresh" content="0; url=${address.pathname}${address.search}">`;
  const page = plainPage(say.deskClosedTitle(), [say.deskUnopened()], again);
  return context.html(page, isSecond ? 403 : 200);
}
