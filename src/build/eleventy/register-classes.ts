import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fileName } from "../../core/file-name.ts";
import { bookFields } from "../../core/refit/fields.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import { printedRuler } from "../../output/drawing/class/ruler.ts";
import { SHEET } from "../../output/drawing/sheets/true-scale.ts";
import type { ClassView } from "../../output/views/class/class-view.ts";
import type { SeatView } from "../../output/views/class/seat-view.ts";
import { seatsText } from "../../output/views/class/words.ts";
import type { SiteConfig } from "./register.ts";

/** Registers the pages of classes: seats with their packets, the teacher's packet, the measuring card. */
export function registerClasses(config: SiteConfig, classes: () => readonly ClassView[]): void {
  const viewOf = (slug: string): ClassView => {
    const found = classes().find((one) => one.slug === slug);
    if (!found) throw new Error(`no class "${slug}"`);
    return found;
  };
  const seatOf = (key: string): SeatView => viewOf(key.split("/")[0]!).seats.find((seat) => seat.key === key)!;
  config.addFilter("classView", viewOf);
  config.addFilter("seatView", seatOf);
  config.addFilter("classOfSeat", (key: string) => viewOf(key.split("/")[0]!));
  config.addFilter("slugs", (kits: readonly { readonly slug: string }[]) => kits.map((kit) => kit.slug));
  config.addFilter("cutName", (name: string) => fileName(name));
  config.addFilter("money", (amount: number) => amount.toFixed(2));
  config.addFilter("hasLight", (view: ClassView) => view.seats.some((seat) => seat.view?.pocket));
  config.addFilter("hasWindow", (view: ClassView) => view.seats.some((seat) => seat.view?.window));
  config.addFilter("misfits", (seats: readonly SeatView[]) => {
    const away = seats.filter((seat) => seat.misfit).map((seat) => seat.number);
    return away.length === 0 ? "" : seatsText(away);
  });
  config.addFilter("cardSheets", (view: ClassView) => chunks(view.seats, CARDS_A_SHEET));
  config.addFilter("measured", (view: ClassView) => measuredFields(view.plan.units));
  config.addFilter("ruler", () => printedRuler(SHEET.width));
  config.addGlobalData("classSlugs", () => classes().map((one) => one.slug));
  config.addGlobalData("seatKeys", () => classes().flatMap((one) => one.seats.map((seat) => seat.key)));
  config.addGlobalData("fittingKeys", () =>
    classes().flatMap((one) => one.seats.filter((seat) => seat.view).map((seat) => seat.key)),
  );
  config.addTemplate("seat.njk", "", {
    ...paged("seat.njk", "seatKeys", "seat"),
    eleventyComputed: {
      title: ({ seat }: { seat: string }) => `Seat ${seatOf(seat).number}: ${viewOf(seat.split("/")[0]!).plan.title}`,
    },
  });
  const packet = `{% set one = seat | seatView %}{% set view = one.view %}{% set seatWords = "seat " + one.number %}{% include "pages/packet.njk" %}`;
  config.addTemplate("seat-packet.njk", packet, {
    ...paged("packet.njk", "fittingKeys", "seat"),
    permalink: "classes/{{ seat | replace('/', '/seat-') }}/packet/index.html",
    template: "packet",
  });
  for (const name of ["teacher", "measuring-card"])
    config.addTemplate(`${name}.njk`, page(name), {
      ...paged("class-print.njk", "classSlugs", "slug"),
      permalink: `classes/{{ slug }}/${name}/index.html`,
      template: name,
    });
}

/** Seat cards of 90 × 54 mm on a sheet of 182 × 245 mm. */
const CARDS_A_SHEET = 8;

function chunks<T>(list: readonly T[], size: number): T[][] {
  return Array.from({ length: Math.ceil(list.length / size) }, (_, i) => list.slice(i * size, (i + 1) * size));
}

/** A line of the measuring card: choices to tick, or room to write before a unit. */
interface MeasuredField {
  readonly label: string;
  readonly help: string;
  readonly choices: readonly string[];
  readonly unit: string;
}

const LENGTHS = ["leafHeight", "leafWidth", "blockThickness"];

function measuredFields(units: UnitSystem): MeasuredField[] {
  return bookFields().map(({ name, label, help, options }) => ({
    label,
    help,
    choices: options?.map((option) => option.label) ?? [],
    unit: LENGTHS.includes(name) ? units : "",
  }));
}

function page(name: string): string {
  return readFileSync(join(process.cwd(), `layouts/pages/${name}.njk`), "utf8");
}

function paged(layout: string, data: string, alias: string): Record<string, unknown> {
  return {
    layout,
    permalink: "classes/{{ seat | replace('/', '/seat-') }}/index.html",
    pagination: { data, size: 1, alias },
    eleventyExcludeFromCollections: true,
  };
}
