import Eleventy from "@11ty/eleventy";
import { contentPath, PROJECT_CONTENT } from "../input/files/content-folder.ts";
import { FINDER_INDEX } from "../output/data/finder-index.ts";
import { bundleScripts } from "./bundle/scripts.ts";
import { writeFinderIndex } from "./files/finder-index.ts";
import { writeKitData } from "./files/kit-data.ts";
import { publishClasses } from "./files/publish-classes.ts";
import { publishFiles } from "./files/publish-files.ts";
import { writeRoundData } from "./files/round-files.ts";
import { writeSiteFiles } from "./files/site-files.ts";
import { copyFonts } from "./fonts/copy-fonts.ts";
import { writePhotos } from "./images/write-photos.ts";
import { currentLibrary, holdLibrary } from "./library/current-library.ts";
import { openLibrary } from "./library/library.ts";
import { LICENCES, writeLicences } from "./licences/write-licences.ts";
import { retireWorker, writeInstallable, writeOffline } from "./offline/write-offline.ts";
import { byFields } from "./print/overflow-fields.ts";
import { printPackets } from "./print/print-packets.ts";
import { readSite } from "./read-site.ts";
import { tellLeftOut, tellWarnings } from "./tell.ts";

/** One making of a site: all that a build does, or each turn of serving it. */
export interface Run {
  /** The project's folder. */
  readonly base: string;
  /** Where the site is made. */
  readonly output: string;
  readonly serving: boolean;
  /** Folders of the only kits to make; none for the whole site. */
  readonly kits: readonly string[];
  /** Whether a seat whose book does not fit stops the run. */
  readonly stopAtMisfit: boolean;
}

/** A step of making a site. */
export interface Stage {
  readonly name: string;
  /** Folders of the project that it reads: a change in them changes what it makes. */
  readonly reads: readonly string[];
  /** What it makes below the output, as globs. */
  readonly makes: readonly string[];
  /** What becomes of it while the site is served: it runs as in a build, Eleventy runs it, it is left out, or it runs only then. */
  readonly serving: "same" | "by Eleventy" | "left out" | "only";
  readonly run: (run: Run) => Promise<void> | void;
}

/** All stages in their order; each works on what those before it made. */
export const STAGES: readonly Stage[] = [
  {
    name: "read",
    reads: ["content"],
    makes: [],
    serving: "same",
    run: async ({ base, serving, kits }) => {
      if (serving) holdLibrary(openLibrary(base, { whenBroken: "leave out", drafts: "take" }));
      else await readSite(base, kits);
    },
  },
  { name: "warnings", reads: ["content"], makes: [], serving: "left out", run: tellWarnings },
  { name: "left out", reads: ["content"], makes: [], serving: "only", run: tellLeftOut },
  {
    name: "pages",
    reads: ["content", "layouts"],
    makes: ["**/*.html", "bundle/**"],
    serving: "by Eleventy",
    run: async ({ output }) => {
      const eleventy = new Eleventy(undefined, output, { configPath: ".eleventy.js", quietMode: true });
      // What fails in it is told by the command, without a trace.
      eleventy.logger.overrideLogger({ log: () => {}, info: () => {}, warn: () => {}, error: () => {} });
      await eleventy.write();
    },
  },
  {
    name: "fonts",
    reads: ["content"],
    makes: ["assets/fonts/**"],
    serving: "same",
    run: ({ base, output }) => copyFonts(base, output, currentLibrary().fonts),
  },
  {
    name: "scripts",
    reads: ["src", "layouts", "content"],
    makes: ["assets/scripts/**", LICENCES],
    serving: "same",
    run: async ({ output }) => writeLicences(output, await bundleScripts(output, currentLibrary())),
  },
  {
    name: "kit files",
    reads: ["content"],
    makes: [
      "kits/*/{pattern.json,pattern.csv,makeability.json,front.svg,front-lit.svg,cover.jpg,small.webp,social.jpg,kit-data.js,round-data.js}",
      "kits/*/cut/*",
      "schema/*",
      FINDER_INDEX,
    ],
    serving: "same",
    run: async ({ output }) => {
      const { views } = currentLibrary();
      await publishFiles(output, views);
      writeRoundData(output, views);
      writeKitData(output, currentLibrary());
      writeFinderIndex(output, currentLibrary());
    },
  },
  {
    name: "photos",
    reads: ["content"],
    makes: ["pictures/*", "kits/*/{photos,pictures}/*", "classes/*/pictures/*"],
    serving: "same",
    run: ({ base, output }) => writePhotos(base, output, currentLibrary().photos),
  },
  {
    name: "class files",
    reads: ["content"],
    makes: [
      "private/classes/*/{cut/*,cut-sheets.pdf}",
      "classes/*/class.ics",
      "classes/*/seat-*/{pattern.json,pattern.csv,front.svg,front-lit.svg,cover.jpg}",
      "classes/*/seat-*/cut/*",
    ],
    serving: "same",
    run: ({ output }) => publishClasses(output, currentLibrary()),
  },
  {
    name: "site files",
    reads: ["content"],
    makes: ["sitemap.xml", "feed.xml"],
    serving: "same",
    run: ({ output }) => writeSiteFiles(output, currentLibrary()),
  },
  {
    name: "print",
    reads: ["content", "layouts", "src"],
    makes: [
      "kits/*/*.pdf",
      "classes/*/*.pdf",
      "classes/*/seat-*/*.pdf",
      "private/classes/*/{teacher,print-plan,all-seats-*,to-read-*,to-cut-out-*}.pdf",
    ],
    serving: "same",
    run: async ({ output }) => {
      const { views, classes, settings, texts } = currentLibrary();
      await printPackets(output, views, classes, settings.url).catch((error: unknown) => {
        throw byFields(error, texts);
      });
    },
  },
  {
    name: "manifest",
    reads: ["content"],
    makes: ["manifest.webmanifest", "assets/icons/*"],
    serving: "same",
    run: ({ output }) => writeInstallable(output, currentLibrary().settings),
  },
  {
    name: "offline",
    reads: ["content", "layouts", "src"],
    makes: ["sw.js", "kits/*/offline.json"],
    serving: "left out",
    run: async ({ output }) => {
      await writeOffline(output, currentLibrary().views);
    },
  },
  {
    name: "no worker",
    reads: [],
    makes: ["sw.js"],
    serving: "only",
    run: ({ output }) => retireWorker(output),
  },
];

/** Runs every stage of a build. */
export async function runBuild(run: Run): Promise<void> {
  for (const stage of STAGES) if (stage.serving !== "only") await stage.run(run);
}

/** While serving, Eleventy makes the pages: this runs the stages on one side of it. One that fails stops none of the others; `tell` is given why. */
export async function runServing(
  run: Run,
  side: "before pages" | "after pages",
  tell: (error: unknown) => void,
): Promise<void> {
  const pages = STAGES.findIndex((stage) => stage.serving === "by Eleventy");
  const stages = side === "before pages" ? STAGES.slice(0, pages) : STAGES.slice(pages + 1);
  for (const stage of stages) {
    if (stage.serving === "left out") continue;
    try {
      await stage.run(run);
    } catch (error) {
      tell(error);
    }
  }
}

/** Folders whose changes call for another turn. */
export function watchedFolders(): string[] {
  const read = [...new Set(STAGES.flatMap((stage) => stage.reads))];
  return contentPath() === PROJECT_CONTENT ? read : [...read, contentPath()];
}
