import { join } from "node:path";
import { contentPath, sharedPaths } from "../../input/files/content-folder.ts";
import { privateFolder } from "../../output/private-folder.ts";
import { makePages, PAGES_MADE_BY } from "../eleventy/make-pages.ts";
import { writeFinderIndex } from "../files/finder-index.ts";
import { troublesToSee } from "../files/makeability-file.ts";
import { publishClass } from "../files/publish-classes.ts";
import { writeSchemas } from "../files/publish-files.ts";
import { writeSiteFiles } from "../files/site-files.ts";
import { writePhotos } from "../images/write-photos.ts";
import type { ClassEntry } from "../library/class-entry.ts";
import type { Library } from "../library/library.ts";
import { NO_PAGES, type Surroundings, type WantedPages } from "../library/page-source.ts";
import { toldPhotos } from "../library/site-photos.ts";
import { INSTALLABLE, writeInstallable } from "../offline/write-installable.ts";
import { codeKey } from "../store/code-keys.ts";
import { folderKey } from "../store/folder-key.ts";
import { filesOf, gatherMade } from "../store/gather.ts";
import type { Placing } from "../store/placing.ts";
import { keyOf } from "../store/store.ts";

/** Where what is of no kit alone is made. */
interface Site {
  readonly placing: Placing;
  readonly aside: string;
  readonly surroundings: Surroundings;
}

/** A part of a site beside its kits, which is made as a whole. */
interface Part {
  /** As it is called among the parts of the site. */
  readonly name: string;
  readonly key: string;
  /** Its pages, as Eleventy is asked for them. */
  readonly pages: Partial<WantedPages>;
  /** Whether a file below the site is its own. */
  readonly isOwn: (path: string) => boolean;
  /** Writes its other files. */
  readonly write: (output: string) => Promise<void> | void;
}

/** Puts what belongs to no kit alone in place in a site: classes, the guide, the catalogue and all that is of the whole site. What is kept is taken from the store. `isAsked` picks parts by their names. */
export async function makeRest(
  library: Library,
  { placing, aside, surroundings }: Site,
  isAsked: (part: string) => boolean = () => true,
): Promise<void> {
  const { store } = library;
  const parts = partsOf(library, surroundings).filter(({ name, key }) => {
    if (!isAsked(name) || placing.stands(name, key)) return false;
    const kept = store.take(key);
    if (kept) placing.put(name, key, kept.files);
    return kept === undefined;
  });
  if (parts.length === 0) return;
  const troubles = (slug: string): number => troublesToSee(join(placing.output, "kits", slug));
  const files = await gatherMade(aside, async (scratch) => {
    if (parts.some(({ pages }) => Object.keys(pages).length > 0))
      await makePages(scratch, { ...library, ...surroundings, troubles, wanted: allOf(parts) });
    for (const { write } of parts) await write(scratch);
  });
  for (const { name, key, isOwn } of parts) {
    const own = filesOf(files, isOwn);
    store.put(key, { files: own, data: undefined });
    placing.put(name, key, own);
  }
}

function allOf(parts: readonly Part[]): WantedPages {
  return {
    ...NO_PAGES,
    classes: parts.flatMap(({ pages }) => pages.classes ?? []),
    guide: parts.some(({ pages }) => pages.guide),
    site: parts.some(({ pages }) => pages.site),
    authors: parts.some(({ pages }) => pages.authors),
  };
}

function partsOf(library: Library, surroundings: Surroundings): Part[] {
  const code = codeKey([import.meta.filename, ...PAGES_MADE_BY.modules], PAGES_MADE_BY.folders);
  const common = [code, library.key, surroundings];
  return [
    ...library.classes.map((one) => classPart(one, library, common)),
    guidePart(library, common),
    framePart(library, common),
    sitePart(library, common),
    ...(surroundings.isServed ? [authorsPart(library, common)] : []),
  ];
}

function classPart({ slug, key, story }: ClassEntry, library: Library, common: readonly unknown[]): Part {
  const folders = [`classes/${slug}/`, `${privateFolder(slug)}/`];
  return {
    name: `classes/${slug}`,
    key: keyOf("class", ...common, key),
    pages: { classes: [slug] },
    isOwn: (path) => folders.some((folder) => path.startsWith(folder)),
    write: async (output) => {
      await publishClass(output, library.classView(slug), library.settings);
      await writePhotos(library.base, output, toldPhotos(`/classes/${slug}/`, story));
    },
  };
}

/** The guide shows drawings of the first kit. */
function guidePart({ base, kits, settings }: Library, common: readonly unknown[]): Part {
  const folders = sharedPaths("guide").map((folder) => folderKey(join(base, folder), base));
  return {
    name: "guide",
    key: keyOf("guide", ...common, settings.language, folders, kits[0]?.key),
    pages: { guide: true },
    isOwn: (path) => path.startsWith("guide/"),
    write: () => undefined,
  };
}

/** What is the same whatever kits and classes the site has: schemas, and what makes it installable. */
function framePart({ settings }: Library, common: readonly unknown[]): Part {
  return {
    name: "frame",
    key: keyOf("frame", ...common),
    pages: {},
    isOwn: isOfFrame,
    write: async (output) => {
      writeSchemas(output);
      await writeInstallable(output, settings);
    },
  };
}

function isOfFrame(path: string): boolean {
  return path.startsWith("schema/") || INSTALLABLE.includes(path);
}

function sitePart(library: Library, common: readonly unknown[]): Part {
  const { base, catalogue, kits, hasWaiting, classes, guide } = library;
  const pictures = catalogue.story.pictures.map(({ file }) => folderKey(join(base, contentPath(file)), base));
  const shown = [
    catalogue,
    pictures,
    kits.map(({ card, outline }) => [card, outline]),
    hasWaiting && kits.length === 0,
    classes.map(({ card }) => card),
    guide.map(({ name }) => name),
  ];
  const key = keyOf("site", ...common, shown);
  return {
    name: "site",
    key,
    pages: { site: true },
    isOwn: (path) => !/^(kits|classes|guide|private\/classes|author|bundle)\//.test(path) && !isOfFrame(path),
    write: async (output) => {
      writeFinderIndex(output, kits);
      writeSiteFiles(output, library);
      await writePhotos(base, output, toldPhotos("/", catalogue.story));
    },
  };
}

/** The list for authors says of each kit how much is to be looked at. */
function authorsPart({ kits }: Library, common: readonly unknown[]): Part {
  return {
    name: "author",
    key: keyOf(
      "author",
      ...common,
      kits.map(({ key }) => key),
    ),
    pages: { authors: true },
    isOwn: (path) => path.startsWith("author/"),
    write: () => undefined,
  };
}
