/** Files by their path below the folder that the list is about, each with the name of its contents. */
export type FileNames = Readonly<Record<string, string>>;

/** What a device keeps of a site: the same files give the same list. */
export interface SiteList {
  /** Named by everything below. */
  readonly version: string;
  /** Kept at the first visit: catalogue with its pictures as far as there is room, styles, scripts, fonts, icons. Paths below the site. */
  readonly shell: FileNames;
  /** Kept once they were loaded: letters of other scripts, pictures of the catalogue that found no room, the kits' data, pages of classes and of the guide. */
  readonly seen: FileNames;
  /** Kept, too, once everything of a kit is asked for: what its packet, its cut files and the view from all sides need. */
  readonly asked: FileNames;
  /** Each kit's list by its slug: the name of its contents. */
  readonly kits: FileNames;
}

/** What a device keeps of one kit; paths below the kit's folder. */
export interface KitList {
  /** Undefined where the kit states no versions. */
  readonly edition?: Edition;
  /** Kept when the kit's page is visited: what she needs to choose it and to work it. */
  readonly files: FileNames;
  /** Kept with them: scripts of the site that only some kits need. Paths below the site; undefined where it needs none. */
  readonly shared?: FileNames;
  /** Kept once the reader asks for everything: packets, cut files, the view from all sides, large photos, files for programs. */
  readonly rest: FileNames;
}

/** A kit's newest version as its author names it, and its day (ISO). */
export interface Edition {
  readonly version: string;
  readonly date: string;
}

/** What is known of a kit beside its files. */
export interface ListedKit {
  readonly edition?: Edition | undefined;
  /** Whether its leaves are folded by corners: page and bench then need scripts of their own. */
  readonly byCorners?: boolean;
}

/** A file of the built site: path below it with `/`, the name of its contents, and how many bytes it takes on a device, as far as that is asked. */
export interface SiteFile {
  readonly path: string;
  readonly name: string;
  readonly bytes: () => number;
}

/** Where a kit's list stands below its folder, and the worker below the site. */
export const KIT_LIST = "offline.json";
export const WORKER = "sw.js";

const KIT_PATH = /^kits\/([^/]+)\/(.+)$/;
/** Of a kit, what is kept at a visit: its page, bench and data, its front, and photos as small as a page shows them. */
const AT_VISIT = /^(index\.html|kit-data\.js|front(-lit)?\.svg|(bench|make)\/.+|(photos|pictures)\/.+-480\.webp)$/;
/** What the finder loads of kits that were not visited. */
const SEEN = /^kit-data\.js$/;
/** A kit's picture in the catalogue. */
const SMALL = /^kits\/[^/]+\/small\.webp$/;
/** With so many bytes of shell, and no more, the pictures of the catalogue are kept with it: there is room for the first kit that is visited. */
const SHELL_WITH_PICTURES = 700_000;
/** Class pages with what they show: kept once they were opened. Packets and cut files of a class are fetched when they are asked for. */
const OF_CLASSES = /^classes\//;
const SEEN_OF_CLASS = /^classes\/[^/]+\/(seat-\d+\/)?(index\.html|front(-lit)?\.svg|pattern\.(csv|json))$/;
/** Of the guide, its pages: kept once they were opened. */
const OF_GUIDE = /^guide\//;
/** Scripts and letters of packets, cut files and the view from all sides: kept once one of these was opened, or everything of a kit is asked for. */
const ON_ASKING =
  /^assets\/(scripts\/(round-view|fit-packet|files|corner|corner-bench)\.js|fonts\/(literata-600|source-sans-3-(400|600|700))\.woff2)$/;
/** Of these, what folds corners on a kit's page and at its bench. */
const OF_CORNERS = /^assets\/scripts\/corner(-bench)?\.js$/;
/** Letters beyond the Latin ones that every page shows, and fonts that the settings name: kept once a page has shown some. */
const RARE_LETTERS =
  /^assets\/fonts\/(own-|.*-(latin-ext|vietnamese|greek|greek-ext|cyrillic|cyrillic-ext)(-\d+)?\.woff2$)/;
/** For link previews, authors, editors, teachers, other programs, terms of licences, missing addresses, and photos in the format that no browser with a worker asks for. */
const NOT_KEPT =
  /^(schema|private)\/|^(404\.html|sitemap\.xml|feed\.xml|licences\.txt)$|^kits\/[^/]+\/((social\.jpg|makeability\.json)$|(photos|pictures)\/.*\.jpg$)/;

/** Sorts a built site's files into what is kept when. `nameOf` names a text as files are named; `known` is by slug. */
export function listSite(
  files: readonly SiteFile[],
  nameOf: (text: string) => string,
  known: Readonly<Record<string, ListedKit>> = {},
): { readonly site: SiteList; readonly kits: Readonly<Record<string, string>> } {
  const kept = files.filter(({ path }) => !NOT_KEPT.test(path) && path !== WORKER && !path.endsWith(`/${KIT_LIST}`));
  const bare = kept.filter(
    ({ path }) => ![KIT_PATH, OF_CLASSES, OF_GUIDE, ON_ASKING, RARE_LETTERS].some((seen) => seen.test(path)),
  );
  const small = kept.filter(({ path }) => SMALL.test(path));
  const pictures = withRoom(small, SHELL_WITH_PICTURES - bytesOf(bare));
  const inKits = kept.flatMap(({ path, name }) => {
    const match = KIT_PATH.exec(path);
    return match && !SMALL.test(path) ? [{ path, name, slug: match[1]!, inside: match[2]! }] : [];
  });
  const ofCorners = kept.filter(({ path }) => OF_CORNERS.test(path));
  const bySlug = Map.groupBy(inKits, ({ slug }) => slug);
  const slugs = [...bySlug.keys()].sort();
  const kits = Object.fromEntries(
    slugs.map((slug) => {
      const own = bySlug.get(slug)!.map(({ inside, name }) => ({ path: inside, name }));
      const { edition, byCorners = false } = known[slug] ?? {};
      return [slug, writeList(kitList(own, byCorners ? ofCorners : [], edition))];
    }),
  );
  const seen = inKits.filter((file) => SEEN.test(file.inside));
  const visited = kept.filter(({ path }) =>
    [SEEN_OF_CLASS, OF_GUIDE, ON_ASKING, RARE_LETTERS].some((one) => one.test(path)),
  );
  const names = {
    shell: namesOf([...bare, ...pictures]),
    seen: namesOf([...seen, ...visited, ...small.filter((one) => !pictures.includes(one))]),
    asked: namesOf(kept.filter(({ path }) => ON_ASKING.test(path))),
    kits: Object.fromEntries(slugs.map((slug) => [slug, nameOf(kits[slug]!)])),
  };
  return { site: { version: nameOf(JSON.stringify(names)), ...names }, kits };
}

/** The first of these, by path, that find room in so many bytes. */
function withRoom(files: readonly SiteFile[], room: number): SiteFile[] {
  let left = room;
  return byPath(files).filter(({ bytes }) => {
    if (left >= 0) left -= bytes();
    return left >= 0;
  });
}

function bytesOf(files: readonly SiteFile[]): number {
  return files.reduce((sum, { bytes }) => sum + bytes(), 0);
}

type Named = Pick<SiteFile, "path" | "name">;

function kitList(files: readonly Named[], shared: readonly Named[], edition: Edition | undefined): KitList {
  const isAtVisit = (file: Named): boolean => AT_VISIT.test(file.path);
  return {
    ...(edition && { edition }),
    files: namesOf(files.filter(isAtVisit)),
    ...(shared.length > 0 && { shared: namesOf(shared) }),
    rest: namesOf(files.filter((file) => !isAtVisit(file))),
  };
}

function writeList(list: KitList): string {
  return `${JSON.stringify(list, null, 1)}\n`;
}

/** Sorted by path, whatever order the files came in. */
function namesOf(files: readonly Named[]): FileNames {
  return Object.fromEntries(byPath(files).map(({ path, name }) => [path, name]));
}

function byPath<T extends Named>(files: readonly T[]): T[] {
  return files.toSorted((a, b) => (a.path < b.path ? -1 : 1));
}
