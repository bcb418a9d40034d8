import { latestFirst } from "../../core/piece/piece.ts";
import * as say from "../../words/messages.ts";
import { linkTo, make } from "../shared/dom.ts";
import { glances } from "./glance.ts";
import { openBase, type PieceBase } from "./piece-base.ts";
import { continueCard } from "./piece-card.ts";
import { PieceNews } from "./piece-news.ts";
import { takeEarlier } from "./take-earlier.ts";

/** So many pieces stand on a page; a link leads to all. */
const MOST = 3;

/** Script that the catalogue and kits' pages fetch where a device may have pieces: shows what is under way. It holds nothing of the bench. */
const section = document.querySelector<HTMLElement>("[data-continue]");
if (section) open(section);

async function open(place: HTMLElement): Promise<void> {
  const base = await openBase();
  if (!base) return;
  await takeEarlier(place.dataset["continue"]!, titlesHere(place.dataset));
  await show(place, base);
  const again = (): Promise<void> => show(place, base);
  new PieceNews().follow(again);
  addEventListener("pageshow", ({ persisted }) => persisted && again());
}

/** Shows what is under way of this page's kits. */
async function show(place: HTMLElement, base: PieceBase): Promise<void> {
  const site = place.dataset["continue"]!;
  const titles = titlesHere(place.dataset);
  const pieces = latestFirst(await glances(base)).filter(
    ({ kit, summary }) => Object.hasOwn(titles, kit) && summary.percent !== 100,
  );
  const titled = pieces.slice(0, MOST).map((piece) => ({ ...piece, title: titles[piece.kit]! }));
  const cards = titled.map((piece) => continueCard(piece, site));
  const all = linkTo(`${site}pieces/index.html`, say.pieceAllCount({ count: pieces.length }));
  place.replaceChildren(make("ul", "continue-cards", ...cards), ...(pieces.length > MOST ? [make("p", "", all)] : []));
  place.hidden = cards.length === 0;
}

/** The titles of this page's kits by their slugs. */
function titlesHere({ own, title }: DOMStringMap): Record<string, string> {
  if (own !== undefined) return { [own]: title ?? own };
  const cards = [...document.querySelectorAll<HTMLElement>("[data-kit]")];
  return Object.fromEntries(cards.map((card) => [card.dataset["kit"]!, card.querySelector("h3")?.textContent ?? ""]));
}
