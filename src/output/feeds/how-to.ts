import type { HowTo, HowToSection, HowToStep, HowToSupply, HowToTool, MonetaryAmount, WithContext } from "schema-dts";
import type { Kit } from "../../core/kit/kit.ts";
import type { SiteSettings } from "../../core/site-settings.ts";
import { costOf } from "../../core/supplies/supplies.ts";
import * as say from "../../words/messages.ts";
import { money } from "../../words/money.ts";
import { sectionName } from "../../words/steps.ts";
import { supplyUnit } from "../../words/supplies.ts";
import type { KitViewBase } from "../views/kit-view.ts";
import { photoViews } from "../views/photo-files.ts";
import type { Step } from "../views/step.ts";
import type { SupplyView } from "../views/supply-view.ts";
import { authorOf } from "./authorship.ts";
import { isoDuration } from "./duration.ts";

/** A kit's page as a HowTo of schema.org, from what the page shows. Without the site's address, links are relative to the page. */
export function howTo(view: KitViewBase, settings: SiteSettings): WithContext<HowTo> {
  const { kit, supplies } = view;
  const author = authorOf(settings);
  const page = settings.url === undefined ? "" : `${settings.url}kits/${view.slug}/`;
  return {
    "@context": "https://schema.org",
    "@type": "HowTo",
    ...(page === "" ? {} : { "@id": page, url: page }),
    name: kit.title,
    description: kit.summary,
    inLanguage: settings.language,
    image: [`${page}social.jpg`, ...photoViews(kit.photos, "photos").map((photo) => page + photo.fallback)],
    ...(author ? { author } : {}),
    ...publication(kit),
    yield: say.howToYield(),
    ...times(view),
    ...cost(kit, costOf(supplies)),
    supply: supplies.filter((one) => one.kind === "material").map((one) => supplyOf(kit, one)),
    tool: supplies.filter((one) => one.kind === "tool").map(toolOf),
    step: sections(view, page),
  };
}

/** JSON for a script element: `<` is escaped, so that no text can end it (HTML, 4.12.1.3). */
export function dataBlock(data: object): string {
  return JSON.stringify(data).replaceAll("<", "\\u003c");
}

function publication({ versions, licence, credit }: Kit) {
  const current = versions[0];
  return {
    ...(current ? { version: current.version, dateModified: current.date, datePublished: versions.at(-1)!.date } : {}),
    ...(licence ? { license: licence.url ?? ({ "@type": "CreativeWork", name: licence.name } as const) } : {}),
    ...(credit
      ? { creditText: say.howToCredit({ work: credit.work, source: credit.source, licence: credit.licence }) }
      : {}),
    ...(credit?.url ? { isBasedOn: credit.url } : {}),
  };
}

/** Scoring prepares the leaves; all else is the performance. Whole minutes, of which the total is the exact sum. */
function times({ effort }: KitViewBase) {
  const total = Math.round(effort.minutes);
  const preparing = Math.min(total, Math.round(effort.byStage.score));
  return {
    prepTime: isoDuration(preparing),
    performTime: isoDuration(total - preparing),
    totalTime: isoDuration(total),
  };
}

/** An amount where the currency is a code of ISO 4217, otherwise text as the author writes it. */
function cost(kit: Kit, price: number | undefined): { readonly estimatedCost?: MonetaryAmount | string } {
  if (price === undefined) return {};
  if (!/^[A-Z]{3}$/.test(kit.currency)) return { estimatedCost: money(price, kit.currency) };
  return { estimatedCost: { "@type": "MonetaryAmount", currency: kit.currency, value: Number(price.toFixed(2)) } };
}

function supplyOf(kit: Kit, supply: SupplyView): HowToSupply {
  const { item, quantity, note, price } = supply;
  return {
    "@type": "HowToSupply",
    name: item,
    ...(note === "" ? {} : { description: note }),
    requiredQuantity: { "@type": "QuantitativeValue", value: quantity, unitText: supplyUnit(supply) },
    ...cost(kit, price),
  };
}

function toolOf({ item, note }: SupplyView): HowToTool {
  return { "@type": "HowToTool", name: item, ...(note === "" ? {} : { description: note }) };
}

function sections(view: KitViewBase, page: string): HowToSection[] {
  const ids = [...new Set(view.steps.map((step) => step.section))];
  return ids.map((id) => ({
    "@type": "HowToSection",
    name: sectionName(id),
    itemListElement: view.steps.flatMap((step, at) => (step.section === id ? [stepOf(view, step, at + 1, page)] : [])),
  }));
}

/** `number` is the step's own on the page. */
function stepOf(view: KitViewBase, step: Step, number: number, page: string): HowToStep {
  const cautions = view.cautions.filter(({ id }) => step.cautions.includes(id));
  return {
    "@type": "HowToStep",
    name: step.title,
    url: `${page}#step-${number}`,
    itemListElement: [
      { "@type": "HowToDirection", text: step.text },
      ...cautions.map(({ title, short }) => ({
        "@type": "HowToTip" as const,
        text: say.howToTip({ title, text: short }),
      })),
    ],
  };
}
