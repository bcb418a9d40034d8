import { join } from "node:path";
import type { Kit } from "../../core/kit/kit.ts";
import { readClass, type StatedClass } from "../../input/class/read-classes.ts";
import { contentPath } from "../../input/files/content-folder.ts";
import { FileError } from "../../input/files/file-error.ts";
import { foldersIn, pathBelow, slugOf } from "../../input/files/folders.ts";
import { readText } from "../../input/files/read-file.ts";
import { type Readings, readListed } from "../../input/files/readings.ts";
import { classCard } from "../../output/views/class/class-card.ts";
import { type ClassView, viewClass } from "../../output/views/class/class-view.ts";
import { codeKey } from "../store/code-keys.ts";
import { folderKey } from "../store/folder-key.ts";
import { keyOf, type Store } from "../store/store.ts";
import type { ClassEntry } from "./class-entry.ts";
import { classReport } from "./class-report.ts";
import type { KitEntry } from "./kit-entry.ts";
import type { SiteFacts } from "./site-facts.ts";

/** What classes are read with. */
export interface ClassShelf {
  readonly facts: SiteFacts;
  readonly store: Store;
  readonly kits: readonly KitEntry[];
  /** Names of kits that cannot be built at present, and of drafts. */
  readonly broken: readonly string[];
  readonly drafts: readonly string[];
  /** Names of kits that are not read yet. */
  readonly waiting: ReadonlySet<string>;
  readonly kit: (slug: string) => Kit;
  readonly view: (slug: string) => ClassView["kits"][number];
}

/** Classes as they were read, and those that wait, each with the kits that are not read yet. */
export interface ClassReadings extends Readings<ClassEntry> {
  readonly waiting: ReadonlyMap<string, readonly string[]>;
}

/**
 * Reads all classes, in the order of their days; one that cannot be held stops none of the others. One that names a kit that is
 * not read yet waits for it.
 */
export function readClassEntries(shelf: ClassShelf): ClassReadings {
  const { base, settings } = shelf.facts;
  const root = join(base, contentPath("classes"));
  const awaitedBy = (folder: string): readonly string[] => {
    if (shelf.waiting.size === 0) return [];
    const text = textsFor(folder, base).text;
    return [...shelf.waiting].filter((slug) => text.includes(slug));
  };
  const waiting = new Map<string, readonly string[]>();
  const list = (): string[] =>
    foldersIn(root, base).filter((folder) => {
      const kits = awaitedBy(folder);
      if (kits.length > 0) waiting.set(slugOf(folder), kits);
      return kits.length === 0;
    });
  const { made, messages } = readListed(list, (folder) => readEntry(folder, shelf));
  const sorted = made.toSorted(
    ({ card: { plan: a } }, { card: { plan: b } }) =>
      a.date.localeCompare(b.date) || a.title.localeCompare(b.title, settings.language),
  );
  return { made: sorted, messages, waiting };
}

/** All that the pages of a class show. @throws KitError where it cannot be held any more */
export function readClassView(slug: string, shelf: ClassShelf): ClassView {
  const { base } = shelf.facts;
  return viewOf(readStated(join(base, contentPath("classes"), slug), shelf), shelf);
}

function readEntry(folder: string, shelf: ClassShelf): ClassEntry {
  const key = classKey(folder, shelf);
  return shelf.store.value(keyOf("class entry", key), () => {
    const stated = readStated(folder, shelf);
    const view = viewOf(stated, shelf);
    const { story, strays } = stated;
    return { slug: view.slug, key, card: classCard(view), report: classReport(view), story, strays };
  });
}

function readStated(folder: string, { facts: { base }, kits, broken, drafts, kit }: ClassShelf): StatedClass {
  const names = kits.map(({ slug }) => slug);
  return readClass(folder, base, { names, kit, broken, drafts });
}

function viewOf({ plan }: StatedClass, { facts: { cautions, settings }, view }: ClassShelf): ClassView {
  return viewClass(
    plan,
    plan.kits.map(({ slug }) => view(slug)),
    cautions,
    settings.url,
  );
}

/** Names all that a class is read and computed from: also the kits that it names, and the classes where it takes over from one. */
function classKey(folder: string, { facts, kits }: ClassShelf): string {
  const root = join(folder, "..");
  const { read, text } = textsFor(folder, facts.base);
  const named = kits.filter(({ slug }) => text.includes(slug)).map(({ slug, key }) => [slug, key]);
  const code = codeKey(import.meta.filename);
  return keyOf(
    "class",
    slugOf(folder),
    code,
    facts.key,
    read.map((one) => folderKey(one, root)),
    named,
  );
}

/** The folders that a class is read from, and the texts of their files; where it takes over from one, it may be any. */
function textsFor(folder: string, base: string): { readonly read: readonly string[]; readonly text: string } {
  const own = textOf(folder, base);
  if (!/^from:/m.test(own)) return { read: [folder], text: own };
  const read = foldersIn(join(folder, ".."), base);
  return { read, text: read.map((one) => textOf(one, base)).join("\n") };
}

/** A class's file; what cannot be read is told by who reads it for use. */
function textOf(folder: string, base: string): string {
  const file = pathBelow(base, join(folder, "index.md"));
  try {
    return readText({ base, file, kind: "page", home: pathBelow(base, folder) });
  } catch (error) {
    if (error instanceof FileError) return "";
    throw error;
  }
}
