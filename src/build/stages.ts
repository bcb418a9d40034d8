import { FINDER_INDEX } from "../output/data/finder-index.ts";
import type { Asked } from "./asked.ts";
import { makeScripts } from "./bundle/make-scripts.ts";
import { copyFonts } from "./fonts/copy-fonts.ts";
import { PUBLISHED_STAGES } from "./kits/kit-stages.ts";
import type { Surroundings } from "./library/page-source.ts";
import { LICENCES } from "./licences/write-licences.ts";
import { writeOffline } from "./offline/write-offline.ts";
import { byFields } from "./print/overflow-fields.ts";
import { type ReadSite, readSite } from "./read-site.ts";
import { makeRest } from "./rest/make-rest.ts";
import type { WholeSite } from "./shards/whole-site.ts";
import { Placing } from "./store/placing.ts";
import { tellWarnings } from "./tell.ts";

/** One making of a site. */
export interface Run extends Asked {
  /** The project's folder. */
  readonly base: string;
  /** Where the site is made. */
  readonly output: string;
  /** An empty folder for what is not yet part of the site. */
  readonly aside: string;
  /** What the whole site has, where these are only some of its kits. */
  readonly whole?: WholeSite;
  /** The site with its kits and their packets, where they were made before, in parts. */
  readonly joined?: Placing;
}

/** A run with the site that was read for it. */
export interface Making extends Run, ReadSite {
  readonly surroundings: Surroundings;
  readonly placing: Placing;
}

/** A step of making a site. */
export interface Stage {
  readonly name: string;
  /** What it makes below the output, as globs. */
  readonly makes: readonly string[];
  readonly run: (making: Making) => Promise<void> | void;
}

/** All stages in their order, after the site was read; each works on what those before it made. */
export const STAGES: readonly Stage[] = [
  { name: "warnings", makes: [], run: tellWarnings },
  {
    name: "kits",
    makes: PUBLISHED_STAGES.flatMap(({ makes }) => makes),
    run: async ({ crew, library, joined, ...site }) => {
      if (!joined) await crew.make(library.kits, library, site);
      // What follows is made by one thread, and needs room of its own.
      await crew.sendHome();
    },
  },
  {
    name: "rest",
    makes: [
      "*.html",
      "{pieces,glossary,private}/index.html",
      "guide/**",
      "classes/*/{*.html,class.ics,pictures/*}",
      "classes/*/measuring-card/index.html",
      "classes/*/seat-*/{index.html,packet/*.html,pattern.json,pattern.csv,front.svg,front-lit.svg,cover.jpg,cut/*}",
      "private/classes/*/{cut/*,cut-sheets.pdf,*/index.html}",
      "{sitemap,feed}.xml",
      "schema/*",
      "pictures/*",
      "manifest.webmanifest",
      "assets/icons/*",
      FINDER_INDEX,
    ],
    run: ({ library, ...site }) => makeRest(library, site),
  },
  {
    name: "fonts",
    makes: ["assets/fonts/**"],
    run: ({ base, output, library }) => copyFonts(base, output, library.fonts),
  },
  {
    name: "scripts",
    makes: ["assets/scripts/**", LICENCES],
    run: ({ library, ...site }) => makeScripts(library.store, library, site),
  },
  {
    name: "print",
    makes: [
      "kits/*/*.pdf",
      "classes/*/*.pdf",
      "classes/*/seat-*/*.pdf",
      "private/classes/*/{teacher,print-plan,all-seats-*,to-read-*,to-cut-out-*}.pdf",
    ],
    run: async ({ output, packets, joined, library: { kits, classes, classView, settings, texts } }) => {
      if (!packets) return;
      // What writes PDFs takes half a second to load.
      const { printPackets } = await import("./print/print-packets.ts");
      const facts = (joined ? [] : kits).map(({ card }) => card.kit);
      const views = classes.map(({ slug }) => classView(slug));
      await printPackets(output, facts, views, settings.url).catch((error: unknown) => {
        throw byFields(error, texts());
      });
    },
  },
  {
    name: "offline",
    makes: ["sw.js", "kits/*/offline.json"],
    run: async ({ output, library: { kits, store }, placing }) => {
      await writeOffline({ output, kits, names: placing.names, store });
    },
  },
];

/** What is made of a part of a site: fonts are what packets are printed with. */
export const PART_STAGES = STAGES.filter(({ name }) => ["warnings", "kits", "fonts", "print"].includes(name));

/** Reads the site and runs every stage. */
export async function runBuild(run: Run, stages: readonly Stage[] = STAGES): Promise<void> {
  const site = await readSite(run.base, run.kits);
  const { library, crew } = site;
  const { hasGuide, hasFeed, store } = library;
  try {
    const surroundings = { hasGuide, hasFeed, ...run.whole, isServed: false };
    const making: Making = { ...run, ...site, surroundings, placing: run.joined ?? new Placing(run.output) };
    for (const stage of stages) await stage.run(making);
  } finally {
    store.close(await crew.close());
  }
}
