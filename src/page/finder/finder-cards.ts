import { type KitEntry, minutesOf, type Verdicts } from "../../core/finder/kit-list.ts";
import type { Verdict } from "../../core/finder/verdict.ts";
import { toAddress } from "../../core/refit/address.ts";
import type { Offer } from "../../core/refit/offers.ts";
import type { Refit } from "../../core/refit/refit.ts";
import { hoursText } from "../../output/views/figures.ts";
import * as say from "../../words/messages.ts";

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
export function writeCard(card: Card, book: Refit, verdicts: Verdicts, soFar: boolean): void {
  const verdict = verdicts.get(card.slug);
  const carried = verdict?.kind === "change" ? verdict.offers[0]!.refit : book;
  card.element.querySelector(".verdict")?.remove();
  for (const link of card.element.querySelectorAll<HTMLAnchorElement>("a[href]")) {
    link.dataset.to ??= link.getAttribute("href")!;
    link.href = withBook(link.dataset.to, carried);
  }
  if (!verdict) return;
  const text = card.element.querySelector<HTMLElement>(".card-text");
  const to = text?.querySelector<HTMLAnchorElement>("h3 a")?.dataset.to ?? "";
  text?.querySelector("h3 ~ p")?.after(verdictElement(verdict, minutesOf(card, verdicts), to, soFar));
}

function verdictElement(verdict: Verdict, minutes: number, to: string, soFar: boolean): HTMLElement {
  const box = document.createElement("div");
  box.className = `verdict ${verdict.kind}`;
  const title = document.createElement("strong");
  title.textContent = titleOf(verdict, soFar);
  box.append(title);
  const time = say.finderTime({ hours: hoursText(minutes) });
  if (verdict.kind === "own") box.append(time, ...verdict.look.map(paragraph));
  else if (verdict.kind === "change") box.append(changes(verdict.offers, to), time);
  else box.append(verdict.why);
  return box;
}

function titleOf({ kind }: Verdict, soFar: boolean): string {
  switch (kind) {
    case "own":
      return soFar ? say.finderFitsSoFar() : say.finderFitsOwn();
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

function changes(offers: readonly Offer[], to: string): HTMLElement {
  const list = document.createElement("ul");
  for (const offer of offers) {
    const item = document.createElement("li");
    const link = document.createElement("a");
    link.href = withBook(to, offer.refit);
    link.textContent = offer.words;
    item.append(link);
    list.append(item);
  }
  return list;
}

function withBook(to: string, refit: Refit): string {
  const address = toAddress(refit).toString();
  return address === "" ? to : `${to}?${address}`;
}
