import { type KitEntry, type Known, minutesOf } from "../../core/finder/kit-list.ts";
import { type Query, soughtRefit } from "../../core/finder/query.ts";
import { toAddress } from "../../core/refit/address.ts";
import type { Offer } from "../../core/refit/offer.ts";
import type { Refit } from "../../core/refit/refit.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import type { Telling } from "../../words/findings/failure-figures.ts";
import { whyText } from "../../words/findings/failure-why.ts";
import { offerText } from "../../words/findings/offers.ts";
import { reasonText } from "../../words/findings/reasons.ts";
import { hoursText } from "../../words/hours.ts";
import * as say from "../../words/messages.ts";

/** What is known of a card's kit, and how it is told. */
export type Judged = Known & { readonly telling: Telling };

/** A card of the catalogue with what it states about its kit. */
export interface Card extends KitEntry {
  readonly element: HTMLElement;
  /** The site's folder as seen from the page. */
  readonly site: string;
}

export function readCards(list: Element): Card[] {
  const site = (list as HTMLElement).dataset["site"] ?? "";
  return [...list.querySelectorAll<HTMLElement>("[data-kit]")].map((element) => ({
    element,
    site,
    slug: element.dataset.kit!,
    title: element.querySelector("h3")?.textContent?.trim() ?? "",
    minutes: Number(element.dataset.minutes),
    levels: Number(element.dataset.levels),
    light: element.dataset.light === "with",
    madeToFold: element.dataset.knife === "made",
    folded: element.dataset.folded === undefined ? undefined : Number(element.dataset.folded),
  }));
}

/** Puts the wanted cards first and in order, and hides the others. */
export function arrangeCards(list: Element, all: readonly Card[], shown: readonly Card[]): void {
  const hidden = all.filter((card) => !shown.includes(card));
  for (const card of hidden) card.element.hidden = true;
  for (const card of shown) card.element.hidden = false;
  const wanted = [...shown, ...hidden].map((card) => card.element);
  if (wanted.some((element, i) => list.children[i] !== element)) list.append(...wanted);
}

/** Writes a verdict (`soFar`: from figures that are not all stated) on its card and lets its links carry the book, with the first change where one is needed. */
export function writeCard(card: Card, query: Query, verdicts: ReadonlyMap<string, Judged>, soFar: boolean): void {
  const verdict = verdicts.get(card.slug);
  const carried = verdict?.kind === "change" ? verdict.offers[0]!.refit : soughtRefit(query);
  card.element.querySelector(".verdict")?.remove();
  for (const link of card.element.querySelectorAll<HTMLAnchorElement>("a[href]")) {
    link.dataset.to ??= link.getAttribute("href")!;
    link.href = withBook(link.dataset.to, carried);
  }
  const text = card.element.querySelector<HTMLElement>(".card-text");
  const minutes = minutesOf(card, verdicts, query.knife);
  const to = text?.querySelector<HTMLAnchorElement>("h3 a")?.dataset.to ?? "";
  const told = verdict ? verdictElement(verdict, minutes, to, soFar) : query.knife && foldedElement(minutes);
  if (told) text?.querySelector("h3 ~ p")?.after(told);
}

/** How long a kit takes without a knife, where no book is stated. */
function foldedElement(minutes: number): HTMLElement {
  const box = document.createElement("div");
  box.className = "verdict";
  box.textContent = say.finderFolded({ hours: hoursText(minutes) });
  return box;
}

function verdictElement(verdict: Judged, minutes: number, to: string, soFar: boolean): HTMLElement {
  const box = document.createElement("div");
  box.className = `verdict ${verdict.kind}`;
  const title = document.createElement("strong");
  title.textContent = titleOf(verdict, soFar);
  box.append(title);
  const time = say.finderTime({ hours: hoursText(minutes) });
  const { telling } = verdict;
  switch (verdict.kind) {
    case "fits":
      box.append(time);
      break;
    case "check":
    case "poor":
      box.append(time, ...verdict.reasons.map((reason) => paragraph(reasonText(reason, telling))));
      break;
    case "change":
      box.append(changes(verdict.offers, telling.units, to), time);
      break;
    case "no":
      box.append(whyText(verdict.failure, telling));
      break;
    case "unknown":
      box.append(verdict.cause === "not-loaded" ? say.loadKitData() : say.finderFailed());
  }
  return box;
}

function titleOf({ kind }: Known, soFar: boolean): string {
  switch (kind) {
    case "check":
      return say.finderFitsCheck();
    case "fits":
      return soFar ? say.finderFitsSoFar() : say.finderFitsOwn();
    case "poor":
      return say.finderFitsPoor();
    case "change":
      return say.finderFitsChange();
    case "no":
      return say.finderFitsNot();
    case "unknown":
      return say.finderNotChecked();
  }
}

function paragraph(text: string): HTMLElement {
  const element = document.createElement("p");
  element.textContent = text;
  return element;
}

function changes(offers: readonly Offer[], units: UnitSystem, to: string): HTMLElement {
  const list = document.createElement("ul");
  for (const offer of offers) {
    const item = document.createElement("li");
    const link = document.createElement("a");
    link.href = withBook(to, offer.refit);
    link.textContent = offerText(offer, units);
    item.append(link);
    list.append(item);
  }
  return list;
}

function withBook(to: string, refit: Refit): string {
  const address = toAddress(refit);
  return address === "" ? to : `${to}?${address}`;
}
