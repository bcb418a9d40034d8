import nunjucks from "nunjucks";
import { makeabilityOf } from "../../core/makeability/makeability.ts";
import { seenBothWays } from "../../core/makeability/silhouette-seen.ts";
import { referenceOf } from "../../input/guide/references.ts";
import { dataBlock, howTo } from "../../output/feeds/how-to.ts";
import { packetPageOf } from "../../output/parts/any-packet.ts";
import { benchPart } from "../../output/parts/bench.ts";
import { cataloguePage } from "../../output/parts/catalogue.ts";
import { seatPacket as seatPacketPart } from "../../output/parts/class/seat-packet.ts";
import { continuePart } from "../../output/parts/continue.ts";
import { footPart } from "../../output/parts/foot.ts";
import { glossaryPage } from "../../output/parts/glossary.ts";
import { guideContents } from "../../output/parts/guide/guide-contents.ts";
import { guidePagePart } from "../../output/parts/guide/guide-page.ts";
import { GUIDE, guideLink } from "../../output/parts/guide-address.ts";
import { headPart } from "../../output/parts/head.ts";
import { keptPart, seenPart } from "../../output/parts/kept.ts";
import { kitPage } from "../../output/parts/kit-page.ts";
import { makePage } from "../../output/parts/make-page.ts";
import { type Html, type Markup, raw } from "../../output/parts/markup.ts";
import type { PacketPage } from "../../output/parts/packet.ts";
import { PIECES, piecesLink, piecesPage } from "../../output/parts/pieces.ts";
import { type PacketOf, printBar } from "../../output/parts/print-bar.ts";
import { absentPage, missingPage } from "../../output/parts/stand-ins.ts";
import { storyPart } from "../../output/parts/story.ts";
import type { AnyKitView } from "../../output/views/any-kit-view.ts";
import * as say from "../../words/messages.ts";
import type { PageSource } from "../library/page-source.ts";
import { LICENCES } from "../licences/write-licences.ts";
import { linkFromPage } from "./link-from-page.ts";
import { feedOf, pageHead } from "./page-head.ts";
import type { SiteConfig } from "./site-config.ts";
import { stated } from "./stated.ts";

/** A packet's sheets with what its frame says of them. */
interface Packet extends PacketOf {
  readonly heading: string;
  readonly summary: string;
  readonly main: Html;
}

/** Gives the page frames their markup, as filters of what a page is about. `link` leads from one page's address to another's. */
export function registerParts(
  config: SiteConfig,
  opened: () => PageSource,
  link: (from: string, target: string) => string,
): void {
  const linkOf = linkFromPage(link);
  const guideOf = (page: string): string | undefined => (opened().hasGuide ? linkOf(page)(GUIDE) : undefined);
  // The engine's own filter of this name writes nothing for a misspelt name.
  config.addFilter("safe", (markup?: string | Html) => new nunjucks.runtime.SafeString(String(stated(markup))));
  config.addFilter("pageHead", (page: string, title: string, summary?: string) =>
    pageHead(opened(), page, { title: stated(title), summary, link: linkOf(page) }),
  );
  config.addFilter("headPart", headPart);
  config.addFilter("guideLink", (page: string) => {
    const guide = guideOf(page);
    return guide === undefined ? "" : guideLink(guide);
  });
  config.addFilter("piecesLink", (page: string) => piecesLink(linkOf(page)(PIECES)));
  config.addFilter("piecesPage", (page: string) =>
    piecesPage(
      opened().kits.map(({ card }) => card.kit),
      linkOf(page),
    ),
  );
  config.addFilter("footPart", (page: string) => {
    const { summary, author } = opened().settings;
    const glossary = linkOf(page)("/glossary/index.html");
    const guide = guideOf(page);
    const licences = linkOf(page)(`/${LICENCES}`);
    return footPart({ summary, author, guide, glossary, licences, feed: feedOf(opened(), linkOf(page))?.address });
  });
  config.addFilter("benchPart", benchPart);
  config.addFilter("kitPage", (slug: string, page: string) => {
    const view = opened().view(slug);
    const started = continuePart(linkOf(page), view.kit);
    const told = raw(`<script type="application/ld+json">${dataBlock(howTo(view, opened().settings))}</script>`);
    const story = storyPart(opened().story(stated(page)), page, linkOf(page));
    return kitPage(view, story, { kept: keptOf(view), started, told });
  });
  config.addFilter("makePage", (slug: string) => makePage(opened().view(slug)));
  config.addFilter("cataloguePage", (page: string) => {
    const { kits, hasWaiting, classes, catalogue, story } = opened();
    const links = { link: linkOf(page), guide: guideOf(page) };
    return cataloguePage({
      heading: catalogue.heading,
      story: storyPart(story(page), page, links.link),
      kits: kits.map(({ card }) => card),
      hasWaiting,
      classes: classes.map(({ card }) => card),
      ...links,
    });
  });
  config.addFilter("glossaryPage", glossaryPage);
  config.addFilter("guideContents", (page: string) => guideContents(opened().guide, linkOf(page)));
  config.addFilter("guidePage", (page: string, name: string) => {
    const { guide, guidePage, kits, view } = opened();
    const kit = kits[0] && view(kits[0].slug);
    return guidePagePart({ page: guidePage(stated(name)), guide, kit, reference: referenceOf, link: linkOf(page) });
  });
  config.addFilter("missingPage", (page: string) =>
    missingPage(
      opened().kits.map(({ card }) => card),
      linkOf(page),
    ),
  );
  config.addFilter("absentPage", (page: string) => absentPage(linkOf(page)));
  config.addFilter("packetPage", (template: PacketPage, page: string, slug?: string, seat?: string) => {
    const packet = seat === undefined ? kitPacket(opened(), template, slug!) : seatPacket(opened(), seat);
    const { heading: title, summary } = packet;
    return { ...packet, bar: printBar(packet), head: pageHead(opened(), page, { title, summary, link: linkOf(page) }) };
  });
}

/** How much of each level is seen on the kit's own book; too much to compute for a reader's. */
function keptOf(view: AnyKitView): Markup {
  if (view.way === "corner") return seenPart(seenBothWays(view.kit, view.pattern));
  return keptPart(view.kit, makeabilityOf(view).seen);
}

function kitPacket(library: PageSource, template: PacketPage, slug: string): Packet {
  const view = library.view(slug);
  const { title, summary } = view.kit;
  const main = packetPageOf(view, template);
  return { heading: say.packetTitle({ title }), summary, main, kit: view.kit, seat: undefined };
}

/** `key` is the seat's: its class and its number. */
function seatPacket({ classView }: PageSource, key: string): Packet {
  const own = classView(key.split("/")[0]!);
  const seat = own.seats.find((one) => one.key === key);
  if (!seat?.inClass) throw new Error(`no packet for seat "${key}"`);
  const { kit } = seat.inClass;
  return {
    heading: say.packetSeatTitle({ seat: seat.number, title: kit.title }),
    summary: kit.summary,
    main: seatPacketPart(seat, seat.inClass, own.plan),
    kit,
    seat: say.seatNumber({ seat: seat.number }),
  };
}
