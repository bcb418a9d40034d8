import { join, sep } from "node:path";
import { told } from "../../input/desk/desk-message.ts";
import type { DeskEntry, DeskState } from "../../input/desk/protocol.ts";
import { contentPath } from "../../input/files/content-folder.ts";
import { foldersIn, pathBelow, slugOf } from "../../input/files/folders.ts";
import { readFrontMatter } from "../../input/files/front-matter.ts";
import { KitError, type KitMessage } from "../../input/files/message.ts";
import { pageText } from "../../input/files/page-text.ts";
import { draftIn } from "../../input/kit/drafts.ts";
import { authorAddress } from "../../output/parts/author.ts";
import type { ClassEntry } from "../library/class-entry.ts";
import type { KitEntry } from "../library/kit-entry.ts";
import type { Library, Waiting } from "../library/library.ts";
import { kitJobs } from "../print/kit-jobs.ts";
import { coverPath } from "./cover.ts";

/** What of a library is on the desk. */
export type ShownLibrary = Pick<
  Library,
  "base" | "kits" | "classes" | "messages" | "photoMessages" | "motifs" | "fonts" | "waiting"
> & { readonly settings: Pick<Library["settings"], "title" | "language"> };

/** Where something of the desk lies, and what was said of it. */
interface Place {
  readonly base: string;
  readonly folder: string;
  readonly messages: readonly KitMessage[];
  /** Not looked at yet: nothing is known of it. */
  readonly isWaiting: boolean;
}

/** All that is on the desk, by a library; `names` are those of the contents of what stands in the site, by paths below it. */
export function deskState(
  library: ShownLibrary,
  isBusy: boolean,
  names: ReadonlyMap<string, string> = new Map(),
): DeskState {
  const { base, settings, kits, classes, motifs, fonts, waiting } = library;
  const messages = [...library.messages, ...library.photoMessages];
  const folders = { kits: listed(base, "kits"), classes: listed(base, "classes") };
  const place = (of: keyof Waiting, folder: string): Place => ({
    base,
    folder,
    messages: messages.filter(({ file }) => isIn(file, pathBelow(base, folder))),
    isWaiting: waiting[of].has(slugOf(folder)),
  });
  const own = [...folders.kits, ...folders.classes].map((folder) => pathBelow(base, folder));
  const order = new Intl.Collator(settings.language);
  const sorted = (entries: readonly DeskEntry[]) => entries.toSorted((a, b) => order.compare(a.title, b.title));
  return {
    site: { title: settings.title, language: settings.language },
    kits: sorted(
      folders.kits.map((folder) =>
        kitEntry(
          place("kits", folder),
          kits.find(({ slug }) => slug === slugOf(folder)),
          names.get(coverPath(slugOf(folder))),
        ),
      ),
    ),
    classes: sorted(
      folders.classes.map((folder) =>
        classEntry(
          place("classes", folder),
          classes.find(({ slug }) => slug === slugOf(folder)),
        ),
      ),
    ),
    messages: told(messages.filter(({ file }) => !own.some((folder) => isIn(file, folder)))),
    shelf: motifs.map(({ name }) => name),
    fonts: [...new Set(fonts.map(({ name }) => name))],
    isBusy,
  };
}

/** What is on the desk before anything of it was read: all kits and classes wait. */
export function waitingDesk(base: string, title: string, language: string): DeskState {
  const names = (of: keyof Waiting): ReadonlySet<string> => new Set(listed(base, of).map(slugOf));
  const waiting = { kits: names("kits"), classes: new Map([...names("classes")].map((slug) => [slug, []])) };
  const nothing = { kits: [], classes: [], messages: [], photoMessages: [], motifs: [], fonts: [] };
  return deskState({ base, settings: { title, language }, ...nothing, waiting }, true);
}

/** `cover` is the name of the cover's content; a cover that is not made yet goes by the name of its kit's. */
function kitEntry(place: Place, entry: KitEntry | undefined, cover: string | undefined): DeskEntry {
  const { base, folder } = place;
  const draft = draftIn(folder, base);
  const slug = slugOf(folder);
  const warnings = entry ? [...entry.outcome.troubles, ...entry.warnings, ...entry.letters] : [];
  const isFine = entry?.outcome.quality === "fits";
  return {
    ...common(place, { title: entry?.card.kit.title, warnings, isFine, isKnown: entry !== undefined }),
    draft: draft !== undefined,
    page: draft?.why === "no index" ? undefined : `/kits/${slug}/`,
    authorPage: entry && authorAddress(slug).replace("index.html", ""),
    cover: entry && `/covers/${slug}?${(cover ?? entry.key).slice(0, 16)}`,
    papers: entry ? kitJobs("", entry.card.kit).map(({ target }) => `/${target.split(sep).join("/")}`) : [],
  };
}

function classEntry(place: Place, entry: ClassEntry | undefined): DeskEntry {
  const { awaiting = [], misfits = [], doubts = [], isGrave = false } = entry?.report ?? {};
  const warnings = [...awaiting, ...misfits, ...doubts];
  const isFine = awaiting.length + misfits.length === 0 && !isGrave;
  return {
    ...common(place, { title: entry?.card.plan.title, warnings, isFine, isKnown: entry !== undefined }),
    draft: false,
    page: `/classes/${slugOf(place.folder)}/`,
    authorPage: undefined,
    cover: undefined,
    papers: [],
  };
}

interface Known {
  readonly title: string | undefined;
  readonly warnings: readonly string[];
  /** Whether nothing need be looked at before it is begun. */
  readonly isFine: boolean;
  readonly isKnown: boolean;
}

function common(
  { base, folder, messages, isWaiting }: Place,
  { title, warnings, isFine, isKnown }: Known,
): Pick<DeskEntry, "slug" | "title" | "file" | "state" | "messages" | "warnings"> {
  const slug = slugOf(folder);
  const file = pathBelow(base, join(folder, "index.md"));
  const isBroken = messages.length > 0 || !(isKnown || isWaiting);
  const state = isBroken ? "broken" : isWaiting && !isKnown ? "waiting" : isFine ? "fine" : "look";
  return { slug, title: title ?? statedTitle(base, file) ?? slug, file, state, messages: told(messages), warnings };
}

/** The title that a file states, whatever else is wrong with it. */
function statedTitle(base: string, file: string): string | undefined {
  try {
    const { value } = readFrontMatter(file, pageText({ base, file }));
    const title = typeof value === "object" && value !== null && "title" in value ? value.title : undefined;
    return typeof title === "string" ? title : undefined;
  } catch (error) {
    if (error instanceof KitError) return undefined;
    throw error;
  }
}

function listed(base: string, of: keyof Waiting): string[] {
  try {
    return foldersIn(join(base, contentPath(of)), base);
  } catch (error) {
    // That folders cannot be listed is among the messages.
    if (error instanceof KitError) return [];
    throw error;
  }
}

function isIn(file: string, folder: string): boolean {
  return file === folder || file.startsWith(`${folder}/`);
}
