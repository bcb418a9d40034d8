import type { DeskState } from "../../input/desk/protocol.ts";
import { servedBand, servedStrip, type WaitingPage, waitingNote } from "../../output/parts/desk/served.ts";
import { html } from "../../output/parts/markup.ts";
import { ownerOf, wrongOnPage } from "./served-notes.ts";

/** Where style and script of what is put on pages stand; nothing of a site has such a name. */
export const NOTES_STYLE = "/.serving/serving.css";
export const NOTES_SCRIPT = "/.serving/desk-served.js";

/** What is known when a page is served. */
export interface Known {
  readonly state: DeskState;
  /** The desk's origin. */
  readonly desk: string | undefined;
  /** Whether the site has the page: otherwise another is shown in its place. */
  readonly isThere: boolean;
}

/** A page as npm start shows it: with what is wrong above it, and below a kit's or class's what can be done here alone. */
export function putNotes(page: string, path: string, { state, desk, isThere }: Known): string {
  const owner = ownerOf(state, path);
  const wrong = wrongOnPage(state, owner);
  const own = owner && isThere;
  const waiting = /^\/(index\.html)?$/.test(path) ? waitingKits(state) : [];
  if (wrong.length + waiting.length === 0 && !own) return page;
  const onDesk = desk && owner ? `${desk}${owner.kind === "kit" ? "/kits/" : "/classes/"}${owner.slug}` : desk;
  const isBroken = owner?.entry.state === "broken";
  const isLastGood = isThere && isBroken;
  const head = html`<link rel="stylesheet" href="${NOTES_STYLE}">${own && html`<script type="module" src="${NOTES_SCRIPT}"></script>`}`;
  const band = wrong.length > 0 && html`${servedBand({ messages: wrong, isLastGood, desk: onDesk })}`;
  const note = waiting.length > 0 && html`${waitingNote(waiting, state.kits.length)}`;
  const strip = own && html`${servedStrip(isBroken ? undefined : `${owner.kind} ${owner.slug}`, onDesk)}`;
  return page
    .replace("</head>", () => `${head}</head>`)
    .replace(/<body[^>]*>/, (body) => `${body}${band || ""}${note || ""}`)
    .replace("</body>", () => `${strip || ""}</body>`);
}

function waitingKits({ kits }: DeskState): WaitingPage[] {
  return kits.flatMap(({ state, title, page }) => (state === "waiting" && page !== undefined ? [{ title, page }] : []));
}
