import { eventOf } from "../../output/feeds/event.ts";
import { dataBlock } from "../../output/feeds/how-to.ts";
import { classPage } from "../../output/parts/class/class-page.ts";
import { measuringCard } from "../../output/parts/class/measuring-card.ts";
import { printPlanPage } from "../../output/parts/class/print-plan-page.ts";
import { privatePage } from "../../output/parts/class/private-page.ts";
import { roomPage } from "../../output/parts/class/room-page.ts";
import { seatPage } from "../../output/parts/class/seat-page.ts";
import { teacherPacket } from "../../output/parts/class/teacher-packet.ts";
import type { PageHead } from "../../output/parts/head.ts";
import type { Html } from "../../output/parts/markup.ts";
import { storyPart } from "../../output/parts/story.ts";
import { privateFolder } from "../../output/private-folder.ts";
import type { ClassView } from "../../output/views/class/class-view.ts";
import type { SeatView } from "../../output/views/class/seat-view.ts";
import * as say from "../../words/messages.ts";
import type { PageSource } from "../library/page-source.ts";
import { pageHead } from "./page-head.ts";
import { relativeUrl } from "./relative-url.ts";
import type { SiteConfig } from "./site-config.ts";
import { stated } from "./stated.ts";

/** A class's printed sheets with what their frame says of them. */
interface FramedPrint {
  readonly head: PageHead;
  readonly heading: string;
  readonly main: Html;
}

/** What is printed for a whole class, by the name of its page; the teacher's packet is hers alone. */
const PRINTS = {
  teacher: { heading: say.printTeacher, part: teacherPacket, folder: privateFolder("{{ slug }}") },
  "print-plan": {
    heading: say.printPlanOfClass,
    part: (view: ClassView) => printPlanPage(view),
    folder: privateFolder("{{ slug }}"),
  },
  "measuring-card": { heading: say.printMeasuringCard, part: measuringCard, folder: "classes/{{ slug }}" },
} as const;

type Print = keyof typeof PRINTS;

/** Registers the pages of classes: seats with their packets, the teacher's packet, the measuring card. */
export function registerClasses(config: SiteConfig, opened: () => PageSource): void {
  const viewOf = (slug: string): ClassView => opened().classView(slug);
  const classOf = (key: string): ClassView => viewOf(key.split("/")[0]!);
  const seatOf = (key: string): SeatView => found(classOf(key).seats, (seat) => seat.key === key, key);
  config.addFilter("classPage", (slug: string, page: string) => {
    const link = (target: string): string => relativeUrl(target, stated(page));
    return classPage(viewOf(slug), storyPart(opened().story(page), page, link), link);
  });
  config.addFilter("classEvent", (slug: string) => dataBlock(eventOf(viewOf(slug), opened().settings)));
  config.addFilter("privatePage", (page: string) =>
    privatePage(
      opened()
        .classes.map(({ card }) => card)
        .filter(({ plan }) => plan.state !== "closed"),
      (target) => relativeUrl(target, stated(page)),
    ),
  );
  config.addFilter("roomPage", (slug: string) => roomPage(viewOf(slug)));
  config.addFilter("seatPage", (key: string) => seatPage(seatOf(key), classOf(key)));
  config.addFilter("classPrint", (name: Print, page: string, slug: string) =>
    framedPrint(opened(), name, stated(page), viewOf(slug)),
  );
  addPages(config, viewOf, (key) => say.seatTitle({ seat: seatOf(key).number, class: classOf(key).plan.title }));
}

function found<T>(list: readonly T[], is: (one: T) => boolean, name: string): T {
  const one = list.find(is);
  if (!one) throw new Error(`no class or seat "${name}"`);
  return one;
}

function framedPrint(library: PageSource, name: Print, page: string, view: ClassView): FramedPrint {
  const { title, summary } = view.plan;
  const { heading: headingOf, part } = PRINTS[name];
  const heading = headingOf({ title });
  const link = (target: string): string => relativeUrl(target, page);
  return { head: pageHead(library, page, { title: heading, summary, link }), heading, main: part(view) };
}

function addPages(config: SiteConfig, viewOf: (slug: string) => ClassView, titleOf: (key: string) => string): void {
  config.addTemplate("class.njk", "", {
    ...paged("class.njk", "library.classes", "slug"),
    permalink: "classes/{{ slug }}/index.html",
    eleventyComputed: {
      title: ({ slug }: { slug: string }) => viewOf(slug).plan.title,
      summary: ({ slug }: { slug: string }) => viewOf(slug).plan.summary,
    },
  });
  config.addTemplate("seat.njk", "", {
    ...paged("seat.njk", "library.seats", "seat"),
    eleventyComputed: { title: ({ seat }: { seat: string }) => titleOf(seat) },
  });
  config.addTemplate("seat-packet.njk", "", {
    ...paged("packet.njk", "library.fitting", "seat"),
    permalink: "classes/{{ seat | replace('/', '/seat-') }}/packet/index.html",
    template: "packet",
  });
  for (const [name, { folder }] of Object.entries(PRINTS))
    config.addTemplate(`${name}.njk`, "", {
      ...paged("class-print.njk", "library.open", "slug"),
      permalink: `${folder}/${name}/index.html`,
      template: name,
    });
  config.addTemplate("room.njk", "", {
    ...paged("room.njk", "library.open", "slug"),
    permalink: `${privateFolder("{{ slug }}")}/room/index.html`,
    eleventyComputed: { title: ({ slug }: { slug: string }) => say.roomTitle({ title: viewOf(slug).plan.title }) },
  });
  config.addTemplate("private.njk", "{{ page.url | privatePage | safe }}", {
    ...paged("base.njk", "library.papers", "papers"),
    permalink: "{{ papers }}/index.html",
    eleventyComputed: { title: () => say.privateTitle(), summary: () => say.privateLede() },
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
