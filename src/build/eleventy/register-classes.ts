import { classPage } from "../../output/parts/class/class-page.ts";
import { measuringCard } from "../../output/parts/class/measuring-card.ts";
import { seatPage } from "../../output/parts/class/seat-page.ts";
import { teacherPacket } from "../../output/parts/class/teacher-packet.ts";
import type { PageHead } from "../../output/parts/head.ts";
import { type Html, raw } from "../../output/parts/markup.ts";
import type { ClassView } from "../../output/views/class/class-view.ts";
import type { SeatView } from "../../output/views/class/seat-view.ts";
import * as say from "../../words/messages.ts";
import type { Library } from "../library/library.ts";
import { pageHead } from "./page-head.ts";
import { relativeUrl } from "./relative-url.ts";
import type { SiteConfig } from "./site-config.ts";
import { stated } from "./stated.ts";

/** A class's printed sheets with what their frame says of them. */
interface FramedPrint {
  readonly head: PageHead;
  readonly heading: string;
  readonly units: string;
  readonly main: Html;
}

/** What is printed for a whole class, by the name of its page. */
const PRINTS = {
  teacher: { heading: say.printTeacher, part: teacherPacket },
  "measuring-card": { heading: say.printMeasuringCard, part: measuringCard },
} as const;

type Print = keyof typeof PRINTS;

/** Registers the pages of classes: seats with their packets, the teacher's packet, the measuring card. */
export function registerClasses(config: SiteConfig, opened: () => Library): void {
  const classes = (): readonly ClassView[] => opened().classes;
  const viewOf = (slug: string): ClassView => found(classes(), ({ slug: own }) => own === slug, slug);
  const classOf = (key: string): ClassView => viewOf(key.split("/")[0]!);
  const seatOf = (key: string): SeatView => found(classOf(key).seats, (seat) => seat.key === key, key);
  config.addFilter("classPage", (slug: string, page: string, story: string) =>
    classPage(viewOf(slug), raw(stated(story)), (target) => relativeUrl(target, stated(page))),
  );
  config.addFilter("seatPage", (key: string) => seatPage(seatOf(key), classOf(key)));
  config.addFilter("classPrint", (name: Print, page: string, slug: string) =>
    framedPrint(opened(), name, stated(page), viewOf(slug)),
  );
  addData(config, classes);
  addPages(config, (key) => say.seatTitle({ seat: seatOf(key).number, class: classOf(key).plan.title }));
}

function found<T>(list: readonly T[], is: (one: T) => boolean, name: string): T {
  const one = list.find(is);
  if (!one) throw new Error(`no class or seat "${name}"`);
  return one;
}

function framedPrint(library: Library, name: Print, page: string, view: ClassView): FramedPrint {
  const { title, summary, units } = view.plan;
  const { heading: headingOf, part } = PRINTS[name];
  const heading = headingOf({ title });
  const link = (target: string): string => relativeUrl(target, page);
  return { head: pageHead(library, page, { title: heading, summary, link }), heading, units, main: part(view) };
}

function addData(config: SiteConfig, classes: () => readonly ClassView[]): void {
  const seats = (): SeatView[] => classes().flatMap((one) => one.seats);
  config.addGlobalData("classSlugs", () => classes().map((one) => one.slug));
  config.addGlobalData("seatKeys", () => seats().map((seat) => seat.key));
  config.addGlobalData("fittingKeys", () =>
    seats()
      .filter((seat) => seat.view)
      .map((seat) => seat.key),
  );
}

function addPages(config: SiteConfig, titleOf: (key: string) => string): void {
  config.addTemplate("seat.njk", "", {
    ...paged("seat.njk", "seatKeys", "seat"),
    eleventyComputed: { title: ({ seat }: { seat: string }) => titleOf(seat) },
  });
  config.addTemplate("seat-packet.njk", "", {
    ...paged("packet.njk", "fittingKeys", "seat"),
    permalink: "classes/{{ seat | replace('/', '/seat-') }}/packet/index.html",
    template: "packet",
  });
  for (const name of Object.keys(PRINTS))
    config.addTemplate(`${name}.njk`, "", {
      ...paged("class-print.njk", "classSlugs", "slug"),
      permalink: `classes/{{ slug }}/${name}/index.html`,
      template: name,
    });
}

function paged(layout: string, data: string, alias: string): Record<string, unknown> {
  return {
    layout,
    permalink: "classes/{{ seat | replace('/', '/seat-') }}/index.html",
    pagination: { data, size: 1, alias },
    eleventyExcludeFromCollections: true,
  };
}
