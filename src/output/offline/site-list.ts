/** Files by their path below the folder that the list is about, each with the name of its contents. */
export type FileNames = Readonly<Record<string, string>>;

/** What a device keeps of a site: the same files give the same list. */
export interface SiteList {
  /** Named by everything below. */
  readonly version: string;
  /** Kept at the first visit: catalogue, styles, scripts, fonts, icons. Paths below the site. */
  readonly shell: FileNames;
  /** Kept once they were loaded: letters of other scripts, the catalogue's pictures, the kits' data, pages of classes and of the guide. */
  readonly seen: FileNames;
  /** Each kit's list by its slug: the name of its contents. */
  readonly kits: FileNames;
}

/** What a device keeps of one kit; paths below the kit's folder. */
export interface KitList {
  /** Undefined where the kit states no versions. */
  readonly edition?: Edition;
  /** Kept when the kit's page is visited. */
  readonly files: FileNames;
  /** Kept when the reader asks for it: what is printed already. */
  readonly packet: FileNames;
}

/** A kit's newest version as its author names it, and its day (ISO). */
export interface Edition {
  readonly version: string;
  readonly date: string;
}

/** A file of the built site: path below it with `/`, and the name of its contents. */
export interface SiteFile {
  readonly path: string;
  readonly name: string;
}

/** Where a kit's list stands below its folder, and the worker below the site. */
export const KIT_LIST = "offline.json";
export const WORKER = "sw.js";

const KIT_PATH = /^kits\/([^/]+)\/(.+)$/;
/** In the catalogue, where also kits show that were not visited. */
const SEEN = /^(front|front-lit)\.svg$|^kit-data\.js$/;
/** Class pages with what they show: kept once they were opened. Packets and cut files of a class are fetched when they are asked for. */
const OF_CLASSES = /^classes\//;
const SEEN_OF_CLASS = /^classes\/[^/]+\/(seat-\d+\/)?(index\.html|front(-lit)?\.svg|pattern\.(csv|json))$/;
/** Of the guide, its pages: kept once they were opened. */
const OF_GUIDE = /^guide\//;
/** The turning view's large script: kept once the reader has asked for the view. */
const ON_DEMAND = /^assets\/scripts\/round-view\.js$/;
/** Letters beyond the Latin ones that every page shows, and fonts that the settings name: kept once a page has shown some. */
const RARE_LETTERS =
  /^assets\/fonts\/(own-|.*-(latin-ext|vietnamese|greek|greek-ext|cyrillic|cyrillic-ext)(-\d+)?\.woff2$)/;
/** For link previews, authors, editors, teachers, other programs, terms of licences, missing addresses, and photos in the format that no browser with a worker asks for. */
const NOT_KEPT =
  /^(schema|private)\/|^(404\.html|sitemap\.xml|feed\.xml|licences\.txt)$|^kits\/[^/]+\/((social\.png|makeability\.json)$|(photos|pictures)\/.*\.jpg$)/;

/** Sorts a built site's files into what is kept when. `nameOf` names a text as files are named; `editions` are by slug. */
export function listSite(
  files: readonly SiteFile[],
  nameOf: (text: string) => string,
  editions: Readonly<Record<string, Edition>> = {},
): { readonly site: SiteList; readonly kits: Readonly<Record<string, string>> } {
  const kept = files.filter(({ path }) => !NOT_KEPT.test(path) && path !== WORKER && !path.endsWith(`/${KIT_LIST}`));
  const shell = kept.filter(
    ({ path }) => ![KIT_PATH, OF_CLASSES, OF_GUIDE, ON_DEMAND, RARE_LETTERS].some((seen) => seen.test(path)),
  );
  const inKits = kept.flatMap(({ path, name }) => {
    const match = KIT_PATH.exec(path);
    return match ? [{ path, name, slug: match[1]!, inside: match[2]! }] : [];
  });
  const slugs = [...new Set(inKits.map((file) => file.slug))].sort();
  const kits = Object.fromEntries(
    slugs.map((slug) => {
      const own = inKits.filter((file) => file.slug === slug).map(({ inside, name }) => ({ path: inside, name }));
      return [slug, writeList(kitList(own, editions[slug]))];
    }),
  );
  const seen = inKits.filter((file) => SEEN.test(file.inside));
  const visited = kept.filter(({ path }) =>
    [SEEN_OF_CLASS, OF_GUIDE, ON_DEMAND, RARE_LETTERS].some((seen) => seen.test(path)),
  );
  const names = {
    shell: namesOf(shell),
    seen: namesOf([...seen, ...visited]),
    kits: Object.fromEntries(slugs.map((slug) => [slug, nameOf(kits[slug]!)])),
  };
  return { site: { version: nameOf(JSON.stringify(names)), ...names }, kits };
}

function kitList(files: readonly SiteFile[], edition: Edition | undefined): KitList {
  const isPrinted = (file: SiteFile): boolean => file.path.endsWith(".pdf");
  return {
    ...(edition && { edition }),
    files: namesOf(files.filter((file) => !isPrinted(file))),
    packet: namesOf(files.filter(isPrinted)),
  };
}

function writeList(list: KitList): string {
  return `${JSON.stringify(list, null, 1)}\n`;
}

/** Sorted by path, whatever order the files came in. */
function namesOf(files: readonly SiteFile[]): FileNames {
  const sorted = [...files].sort((a, b) => (a.path < b.path ? -1 : 1));
  return Object.fromEntries(sorted.map(({ path, name }) => [path, name]));
}
