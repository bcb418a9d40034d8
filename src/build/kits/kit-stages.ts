import { join } from "node:path";
import type { AnyPrintedKit } from "../../output/views/any-kit-view.ts";
import { makePages, PAGES_MADE_BY } from "../eleventy/make-pages.ts";
import { writeKitData } from "../files/kit-data.ts";
import { writeKitCutFiles, writeKitFiles, writeKitPictures } from "../files/publish-files.ts";
import { writeRoundData } from "../files/round-files.ts";
import { writePhotos } from "../images/write-photos.ts";
import type { KitEntry } from "../library/kit-entry.ts";
import { NO_PAGES, type PageSource } from "../library/page-source.ts";

/** Kits of which something is made at once. */
export interface Batch {
  readonly base: string;
  /** Where files are written, as below the site. */
  readonly output: string;
  readonly kits: readonly KitEntry[];
  readonly source: PageSource;
}

/** A step of making what belongs to one kit. */
export interface KitStage {
  readonly name: string;
  /** What it makes below the site, as globs. */
  readonly makes: readonly string[];
  /** The modules that it begins with, as whole paths or from this room, and the program's folders that it reads. */
  readonly code: { readonly modules: readonly string[]; readonly folders?: readonly string[] };
  /** Whether what it makes depends on what the site has beside the kit. */
  readonly seesSite: boolean;
  /** Whether it is there only while the site is served. */
  readonly isServed?: boolean;
  readonly run: (batch: Batch) => Promise<void>;
}

/** What is made of each kit. */
export const KIT_STAGES = [
  {
    name: "pages",
    makes: ["kits/*/{index.html,{make,bench,packet}/*.html}", "bundle/**"],
    code: PAGES_MADE_BY,
    seesSite: true,
    run: ({ output, kits, source }) =>
      makePages(output, { ...source, wanted: { ...NO_PAGES, kits: kits.map(({ slug }) => slug) } }),
  },
  {
    name: "data",
    makes: ["kits/*/{pattern.json,pattern.csv,makeability.json,kit-data.js,round-data.js}"],
    code: { modules: ["../files/publish-files.ts", "../files/kit-data.ts", "../files/round-files.ts"] },
    seesSite: false,
    run: forEach((folder, view, { source }) => {
      writeKitFiles(folder, view);
      writeRoundData(folder);
      writeKitData(folder, view.kit, source.cautions);
    }),
  },
  {
    name: "pictures",
    makes: ["kits/*/{front.svg,front-lit.svg,cover.jpg,small.webp,social.jpg}"],
    code: { modules: ["../files/publish-files.ts"] },
    seesSite: false,
    run: forEach(writeKitPictures),
  },
  {
    name: "cut files",
    makes: ["kits/*/cut/*"],
    code: { modules: ["../files/publish-files.ts"] },
    seesSite: false,
    run: forEach((folder, view) => writeKitCutFiles(folder, view)),
  },
  {
    name: "photos",
    makes: ["kits/*/{photos,pictures}/*"],
    code: { modules: ["../images/write-photos.ts"] },
    seesSite: false,
    run: async ({ base, output, kits }) => {
      for (const { photos } of kits) await writePhotos(base, output, photos);
    },
  },
  {
    name: "author",
    makes: ["author/*/index.html"],
    code: PAGES_MADE_BY,
    seesSite: true,
    isServed: true,
    run: ({ output, kits, source }) =>
      makePages(output, { ...source, wanted: { ...NO_PAGES, authored: kits.map(({ slug }) => slug) } }),
  },
] as const satisfies readonly KitStage[];

/** What is made of kits to be published. */
export const PUBLISHED_STAGES: readonly (typeof KIT_STAGES)[number][] = KIT_STAGES.filter(
  (stage: KitStage) => !stage.isServed,
);

export type KitStageName = (typeof KIT_STAGES)[number]["name"];

/** A step that is done with one kit after the other. */
function forEach(write: (folder: string, view: AnyPrintedKit, batch: Batch) => Promise<void> | void): KitStage["run"] {
  return async (batch) => {
    for (const { slug } of batch.kits) await write(join(batch.output, "kits", slug), batch.source.view(slug), batch);
  };
}
