import { latestFirst } from "../../core/piece/piece.ts";
import * as say from "../../words/messages.ts";
import { linkTo, make } from "../shared/dom.ts";
import { LoadError, loadScript } from "../shared/load-script.ts";
import { EARLIER } from "./base-name.ts";
import { type Glance, glances } from "./glance.ts";
import { openBase, type PieceBase } from "./piece-base.ts";
import { continueCard } from "./piece-card.ts";
import { PieceNews } from "./piece-news.ts";

/** So many pieces stand on a page; a link leads to all. */
const MOST = 3;

/** Script that the catalogue and kits' pages fetch where a device may have pieces: shows what is under way. It holds nothing of the bench. */
const section = document.querySelector<HTMLElement>("[data-continue]");
if (section) open(section);

async function open(place: HTMLElement): Promise<void> {
  const base = await openBase();
  if (!base) return;
  if (hasEarlier()) await takeEarlier(place);
  await show(place, base);
  const again = (): Promise<void> => show(place, base);
  new PieceNews().follow(again);
  addEventListener("pageshow", ({ persisted }) => persisted && again());
}

async function show(place: HTMLElement, base: PieceBase): Promise<void> {
  const site = place.dataset["continue"]!;
  const pieces = latestFirst(await glances(base)).filter((piece) => isHere(place, piece));
  const cards = pieces.slice(0, MOST).map((piece) => continueCard(piece, site));
  const all = linkTo(`${site}pieces/index.html`, say.pieceAllCount({ count: pieces.length }));
  place.replaceChildren(make("ul", "continue-cards", ...cards), ...(pieces.length > MOST ? [make("p", "", all)] : []));
  place.hidden = cards.length === 0;
}

/** Under way, and of a kit of this page. */
function isHere({ dataset }: HTMLElement, { kit, summary }: Glance): boolean {
  const here = dataset["own"] ?? document.querySelector(`[data-kit="${kit}"]`)?.getAttribute("data-kit");
  return here === kit && summary.percent !== 100;
}

function hasEarlier(): boolean {
  try {
    return Object.keys(localStorage).some((key) => key.startsWith(EARLIER));
  } catch {
    return false;
  }
}

/** What earlier versions kept is taken over by a script of its own, once. */
async function takeEarlier({ dataset }: HTMLElement): Promise<void> {
  try {
    await loadScript(`${dataset["continue"]}assets/scripts/take-over.js`, "pieces");
    await self.leaflightTakeOver?.(titlesHere(dataset));
  } catch (error) {
    // It stays where it is, for the bench or the next visit.
    if (!(error instanceof LoadError)) throw error;
  }
}

function titlesHere({ own, title }: DOMStringMap): Record<string, string> {
  if (own !== undefined) return { [own]: title ?? own };
  const cards = [...document.querySelectorAll<HTMLElement>("[data-kit]")];
  return Object.fromEntries(cards.map((card) => [card.dataset["kit"]!, card.querySelector("h3")?.textContent ?? ""]));
}
