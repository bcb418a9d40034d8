import type { Kit } from "../../../core/kit/kit.ts";
import { takesFrom, withTaken } from "../../../input/class/take-over.ts";
import { frontValue } from "../../../input/desk/front-value.ts";
import {
  type BooksAnswer,
  DESK_ROUTES,
  type DeskEntry,
  type DeskText,
  type PictureAnswer,
  type TextAnswer,
} from "../../../input/desk/protocol.ts";
import { valueIn, type YamlValue } from "../../../input/desk/yaml-value.ts";
import { KitError } from "../../../input/files/message.ts";
import { partsAsDrawn } from "../../../input/kit/drawn-parts.ts";
import { kitText, stateKit } from "../../../input/kit/state-kit.ts";
import { delimitedText } from "../../../input/tables/edit-delimited.ts";

/** What a class needs of the desk's server. */
export interface ClassServer {
  text(file: string): Promise<TextAnswer>;
  post<T>(route: string, body: object): Promise<T>;
}

/** What a class's seats are read from, as the server has it. */
export interface LoadedClass {
  readonly matter: DeskText;
  /** Its table, where that can be read. */
  readonly table: DeskText | undefined;
  /** The name of its table, where that is a workbook. */
  readonly workbook: string | undefined;
  readonly taken: unknown;
  readonly kits: readonly Kit[];
  /** Files of kits by their names. */
  readonly kitFiles: ReadonlyMap<string, string>;
  /** Names of kits that cannot be worked out. */
  readonly away: readonly string[];
}

/** How far a class is with its kits: which one is waited for, by its title. */
export interface KitsThere {
  readonly kit: string;
  readonly there: number;
  readonly of: number;
}

/** Names of tables that are no texts. */
const WORKBOOK = /\.(xlsx|ods)$/i;

/**
 * Loads a class with its table, the class that it takes over from, and its kits; `waits` is told which kit is waited for, and how
 * many of so many are there. Undefined where its index.md cannot be read. @throws DeskRefused
 */
export async function loadClass(
  entry: DeskEntry,
  { kits, classes }: { readonly kits: readonly DeskEntry[]; readonly classes: readonly DeskEntry[] },
  server: ClassServer,
  waits: (far: KitsThere) => void,
): Promise<LoadedClass | undefined> {
  const matter = await server.text(entry.file);
  if (!("text" in matter)) return undefined;
  const own = frontValue(matter.text);
  const taken = await takenOver(own, classes, server);
  const value = takesFrom(own) === undefined ? own : withTaken(own, taken);
  const names = valueIn(value as YamlValue, ["kits"]);
  const wanted = Array.isArray(names) ? names.filter((name): name is string => typeof name === "string") : [];
  const named = kits.filter(({ slug }) => wanted.includes(slug));
  const loaded: Kit[] = [];
  for (const [there, { slug, file, title }] of named.entries()) {
    waits({ kit: title, there, of: named.length });
    loaded.push(...(await loadKit(slug, file, server)));
  }
  const books = valueIn(own, ["books"]);
  const table = typeof books === "string" ? await tableOf(entry, books, server) : undefined;
  return {
    matter,
    table,
    workbook: typeof books === "string" && WORKBOOK.test(books) ? books : undefined,
    taken,
    kits: loaded,
    kitFiles: new Map(named.map(({ slug, file }) => [slug, file])),
    away: wanted.filter((slug) => loaded.every((kit) => kit.slug !== slug)),
  };
}

/** A kit by the text on the disk; none where that states none. */
export async function loadKit(slug: string, file: string, server: ClassServer): Promise<readonly Kit[]> {
  const found = await server.text(file);
  if (!("text" in found)) return [];
  const answer = await server.post<PictureAnswer>(DESK_ROUTES.picture, { slug, text: found.text });
  if (!("drawn" in answer)) return [];
  try {
    return [stateKit(kitText(slug, file, found.text), partsAsDrawn(answer.drawn)).kit];
  } catch (error) {
    if (error instanceof KitError) return [];
    throw error;
  }
}

/** The front matter of the class that another takes over from, with what that takes over itself. */
async function takenOver(
  own: unknown,
  classes: readonly DeskEntry[],
  server: ClassServer,
  way: readonly string[] = [],
): Promise<unknown> {
  const name = takesFrom(own);
  const entry = name === undefined || way.includes(name) ? undefined : classes.find(({ slug }) => slug === name);
  if (!entry) return undefined;
  const found = await server.text(entry.file);
  const value = "text" in found ? frontValue(found.text) : undefined;
  const before = await takenOver(value, classes, server, [...way, entry.slug]);
  return before === undefined ? value : withTaken(value, before);
}

/** The table of a class as a text; of a workbook its rows as one, which is nowhere written. */
async function tableOf(
  { slug, file }: Pick<DeskEntry, "slug" | "file">,
  books: string,
  server: ClassServer,
): Promise<DeskText | undefined> {
  const path = `${file.slice(0, file.lastIndexOf("/"))}/${books}`;
  if (WORKBOOK.test(books)) {
    const read = await server.post<BooksAnswer>(DESK_ROUTES.books, { slug });
    return "rows" in read ? { file: path, text: delimitedText(read.rows), mark: "" } : undefined;
  }
  const found = await server.text(path);
  return "text" in found ? found : undefined;
}
