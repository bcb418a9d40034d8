import { join } from "node:path";
import { onceEach } from "../../core/lazily.ts";
import type { Story } from "../../core/story/story.ts";
import { plainCatalogue, readCatalogue } from "../../input/catalogue/read-catalogue.ts";
import { cautionsFile } from "../../input/cautions/read-cautions.ts";
import { contentPath } from "../../input/files/content-folder.ts";
import { slugOf } from "../../input/files/folders.ts";
import type { KitMessage } from "../../input/files/message.ts";
import type { Strays } from "../../input/files/strays.ts";
import { readGuide } from "../../input/guide/read-guide.ts";
import type { Draft } from "../../input/kit/drafts.ts";
import type { AuthoredText } from "../../input/texts/authored-text.ts";
import { statedWords } from "../../input/words/read-words.ts";
import { hasFeed } from "../../output/feeds/feed.ts";
import type { AnyPrintedKit } from "../../output/views/any-kit-view.ts";
import { codeKey } from "../store/code-keys.ts";
import { folderKey } from "../store/folder-key.ts";
import { keyOf, type Store } from "../store/store.ts";
import { addressesOf } from "./addresses.ts";
import { checkLetters } from "./check-letters.ts";
import type { ClassEntry } from "./class-entry.ts";
import { deadLinks } from "./dead-links.ts";
import { Gathering } from "./gathering.ts";
import type { KitEntry, ReadKits } from "./kit-entry.ts";
import { kitFolders } from "./kit-folders.ts";
import { recordedView } from "./kit-record.ts";
import type { Opening } from "./opening.ts";
import type { PageSource } from "./page-source.ts";
import { type ClassShelf, readClassEntries, readClassView } from "./read-class-entries.ts";
import { readFacts, type SiteFacts } from "./site-facts.ts";
import { type SitePhoto, toldPhotos } from "./site-photos.ts";
import { siteStrays } from "./site-strays.ts";
import { classTexts, kitTexts, sharedTexts } from "./site-texts.ts";

/** What is known of a site, read and computed once a run. Kits and classes themselves are asked for one by one. */
export interface Library extends Omit<PageSource, "wanted" | "isServed" | "troubles"> {
  readonly store: Store;
  /** Where a kit is read from. */
  readonly folder: (slug: string) => string;
  /** Photos of the catalogue and of classes, and what is wrong with photos of kits. */
  readonly photos: readonly SitePhoto[];
  readonly photoMessages: readonly KitMessage[];
  /** Every text that authors wrote, with its place. */
  readonly texts: () => readonly AuthoredText[];
  /** What may disappoint in texts, in sentences. */
  readonly warnings: readonly string[];
  /** Files that nothing names. */
  readonly strays: readonly Strays[];
  /** Kits that are not published yet. */
  readonly drafts: readonly Draft[];
  /** Names of kits and classes that are not read yet: none but at the beginning of serving. */
  readonly waiting: Waiting;
  /** About what is left out, as it cannot be built. */
  readonly messages: readonly KitMessage[];
}

/** Names of kits and of classes that are not read yet; of each class with the kits that it waits for. */
export interface Waiting {
  readonly kits: ReadonlySet<string>;
  readonly classes: ReadonlyMap<string, readonly string[]>;
}

/** What a library is opened with. */
export interface Reading {
  readonly store: Store;
  readonly readKits: (facts: SiteFacts) => ReadKits;
  /** Gives what all parts share, where that is not simply read. */
  readonly readFacts?: typeof readFacts;
}

/**
 * Reads the site's content in the project folder `base`; from then on the site's language is spoken.
 * @throws BuildError for a kit that is not there; KitError where something is broken and that is to stop; WordsError where the program's own words are
 */
export async function openLibrary(base: string, opening: Opening, reading: Reading): Promise<Library> {
  const { store, readKits } = reading;
  const gathering = new Gathering(opening.whenBroken ?? "stop");
  const facts = (reading.readFacts ?? readFacts)(base, gathering, reading.store);
  const { settings } = facts;
  const { folders, drafts } = gathering.one(
    () => kitFolders(base, opening),
    () => ({ folders: [], drafts: [] }),
  );
  const news = await readKits(facts)(folders);
  gathering.all({ made: [], messages: news.flatMap(({ broken }) => broken) });
  const guide = gathering.all(readGuide(base, settings.language));
  const catalogue = gathering.one(() => readCatalogue(base), plainCatalogue);
  const isPart = (opening.kits ?? []).length > 0;
  const letters = lettersOf(facts, store, isPart, gathering);
  gathering.all({ made: [], messages: news.flatMap((one) => one.letters) });
  gathering.stopWhereBroken();
  const kits = news
    .flatMap(({ entry }) => entry ?? [])
    .toSorted((a, b) => a.card.kit.title.localeCompare(b.card.kit.title, settings.language));
  const folder = (slug: string): string => found(folders, (one) => slugOf(one) === slug, slug);
  const view = (slug: string): AnyPrintedKit => {
    const { key } = found(kits, (one) => one.slug === slug, slug);
    return recordedView(store, key, folder(slug), facts);
  };
  const waiting = new Set(folders.filter((_, i) => news[i]!.isWaiting).map(slugOf));
  const broken = folders.map(slugOf).filter((slug) => !waiting.has(slug) && !kits.some((kit) => kit.slug === slug));
  const shelf: ClassShelf = {
    facts,
    store,
    kits,
    broken,
    waiting,
    drafts: drafts.map(({ slug }) => slug),
    view: onceEach(view),
    kit: (slug) => shelf.view(slug).kit,
  };
  const read = isPart ? { made: [], messages: [], waiting: new Map() } : readClassEntries(shelf);
  const classes = gathering.all(read);
  const stories = storiesOf(catalogue.story, kits, classes);
  gathering.all({
    made: [],
    messages: deadLinks(stories, addressesOf({ kits, classes, guide }), isPart || waiting.size > 0),
  });
  gathering.stopWhereBroken();
  const fed = { kits: kits.map(({ card }) => card.kit), classes: classes.map(({ card }) => card.plan) };
  const told = [...stories].filter(([address]) => !address.startsWith("/kits/"));
  return {
    ...facts,
    store,
    kits,
    hasWaiting: waiting.size > 0,
    classes,
    guide,
    catalogue,
    hasGuide: guide.length > 0,
    hasFeed: hasFeed(settings, fed),
    folder,
    view,
    classView: onceEach((slug) => readClassView(slug, shelf)),
    guidePage: (name) => found(guide, (page) => page.name === name, name),
    story: (page) => found([...stories], ([address]) => address === page, page)[1],
    photos: told.flatMap(([address, story]) => toldPhotos(address, story)),
    photoMessages: news.flatMap(({ photos }) => photos),
    texts: () => [
      ...sharedTexts(base, cautionsFile(base, settings.language)),
      ...folders.flatMap((one) => kitTexts(base, one)),
      ...classTexts(base),
    ],
    warnings: [...letters, ...kits.flatMap((kit) => kit.letters)],
    strays: [...siteStrays(base, catalogue.story), ...[...kits, ...classes].flatMap(({ strays }) => strays)],
    drafts,
    waiting: { kits: waiting, classes: read.waiting },
    messages: gathering.messages,
  };
}

function found<T>(list: readonly T[], is: (one: T) => boolean, name: string): T {
  const one = list.find(is);
  if (!one) throw new Error(`nothing is called "${name}"`);
  return one;
}

/** What is told on pages, by their addresses below the site: `/kits/moon/`. */
function storiesOf(
  catalogue: Story,
  kits: readonly KitEntry[],
  classes: readonly ClassEntry[],
): ReadonlyMap<string, Story> {
  return new Map([
    ["/", catalogue],
    ...kits.map(({ slug, story }) => [`/kits/${slug}/`, story] as const),
    ...classes.map(({ slug, story }) => [`/classes/${slug}/`, story] as const),
  ]);
}

/** What may disappoint in texts and words that are of no kit; letters that could not be printed are gathered. */
function lettersOf(facts: SiteFacts, store: Store, isPart: boolean, gathering: Gathering): readonly string[] {
  const { base, settings, fonts } = facts;
  const content = join(base, contentPath());
  const of = ["index.md", "classes"].map((name) => folderKey(join(content, name), content));
  const key = keyOf("letters", codeKey(import.meta.filename), facts.key, of, isPart);
  const words = gathering.one(
    () => statedWords(base, settings.language),
    () => [],
  );
  const { wrong, warnings } = store.value(key, () => {
    const texts = [...sharedTexts(base, cautionsFile(base, settings.language)), ...(isPart ? [] : classTexts(base))];
    return checkLetters(texts, words, fonts);
  });
  gathering.all({ made: [], messages: wrong });
  return warnings;
}
