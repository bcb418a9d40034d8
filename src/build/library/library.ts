import { join } from "node:path";
import type { GuidePage } from "../../core/guide/guide-page.ts";
import type { Caution } from "../../core/plan/caution.ts";
import type { SiteSettings } from "../../core/site-settings.ts";
import type { Story } from "../../core/story/story.ts";
import { type Catalogue, plainCatalogue, readCatalogue } from "../../input/catalogue/read-catalogue.ts";
import { readCautions } from "../../input/cautions/read-cautions.ts";
import { readClasses } from "../../input/class/read-classes.ts";
import { contentPath } from "../../input/files/content-folder.ts";
import { slugOf } from "../../input/files/folders.ts";
import type { KitMessage } from "../../input/files/message.ts";
import { readEach } from "../../input/files/readings.ts";
import type { Strays } from "../../input/files/strays.ts";
import { ownFonts } from "../../input/fonts/own-fonts.ts";
import { readGuide } from "../../input/guide/read-guide.ts";
import type { Draft } from "../../input/kit/drafts.ts";
import { readKits } from "../../input/kit/read-kit.ts";
import { readMotifs } from "../../input/kit/read-motifs.ts";
import { readSettings } from "../../input/settings/read-settings.ts";
import { siteSettings, URL_VARIABLE } from "../../input/settings/settings.ts";
import { catalogueOf } from "../../input/words/fluent.ts";
import { readLanguage, readWords, SOURCE } from "../../input/words/read-words.ts";
import { type ClassView, viewClass } from "../../output/views/class/class-view.ts";
import { viewKit } from "../../output/views/kit-view.ts";
import { type PrintedKit, withPacket } from "../../output/views/packet-view.ts";
import type { Catalogue as Words } from "../../words/message.ts";
import { speak } from "../../words/speak.ts";
import { addressesOf } from "./addresses.ts";
import { deadLinks } from "./dead-links.ts";
import { Gathering } from "./gathering.ts";
import { kitFolders } from "./kit-folders.ts";
import type { Opening } from "./opening.ts";
import { patternKit } from "./pattern-kit.ts";
import { type SiteLetters, siteLetters } from "./site-letters.ts";
import { type SitePhoto, sitePhotos } from "./site-photos.ts";
import { siteStories } from "./site-stories.ts";
import { siteStrays } from "./site-strays.ts";
import { smallLetters } from "./small-letters.ts";

/** All kits and classes of a site, read and computed once a run; templates look them up by slug. */
export interface Library extends SiteLetters {
  readonly views: readonly PrintedKit[];
  readonly classes: readonly ClassView[];
  readonly cautions: readonly Caution[];
  /** The guide in its order. */
  readonly guide: readonly GuidePage[];
  readonly settings: SiteSettings;
  readonly catalogue: Catalogue;
  readonly photos: readonly SitePhoto[];
  /** Files that nothing names. */
  readonly strays: readonly Strays[];
  /** By what shapes of drawings can be picked, a text for each file, by kit; only of kits that were asked for. */
  readonly offers: ReadonlyMap<string, readonly string[]>;
  /** Kits that are not published yet. */
  readonly drafts: readonly Draft[];
  /** The words of the site's language. */
  readonly words: Words;
  /** About what is left out, as it cannot be built. */
  readonly messages: readonly KitMessage[];
  readonly view: (slug: string) => PrintedKit;
  readonly guidePage: (name: string) => GuidePage;
  /** What is told on the page at an address below the site: `/kits/moon/`. */
  readonly story: (page: string) => Story;
}

/**
 * Reads the site's content in the project folder `base`; from then on the site's language is spoken.
 * @throws BuildError for a kit that is not there; KitError where something is broken and that is to stop; WordsError where the program's own words are
 */
export function openLibrary(base: string, opening: Opening = {}): Library {
  const gathering = new Gathering(opening.whenBroken ?? "stop");
  const { settings, words } = openLanguage(base, gathering);
  const motifs = gathering.all(readMotifs(base));
  const { folders, drafts } = gathering.one(
    () => kitFolders(base, opening),
    () => ({ folders: [], drafts: [] }),
  );
  const statedKits = gathering.all(readKits(folders, base, motifs, ownFonts(base, settings.fonts)));
  const patterned = gathering
    .all(readEach(statedKits, patternKit))
    .toSorted((a, b) => a.kit.title.localeCompare(b.kit.title, settings.language));
  const cautions = gathering.one(
    () => readCautions(base, settings.language),
    () => [],
  );
  const guide = gathering.all(readGuide(base, settings.language));
  const catalogue = gathering.one(() => readCatalogue(base), plainCatalogue);
  const { fonts, texts, warnings } = siteLetters(base, settings, gathering);
  gathering.stopWhereBroken();
  const views = patterned.map((kit) => withPacket(viewKit(kit, cautions)));
  const kits = patterned.map(({ kit }) => kit);
  const broken = folders.map(slugOf).filter((slug) => !kits.some((kit) => kit.slug === slug));
  const offered = { kits, broken, drafts: drafts.map(({ slug }) => slug) };
  const isPart = (opening.kits ?? []).length > 0;
  const held = isPart ? [] : gathering.all(readClasses(join(base, contentPath("classes")), base, offered));
  const plans = held
    .map(({ plan }) => plan)
    .toSorted((a, b) => a.date.localeCompare(b.date) || a.title.localeCompare(b.title, settings.language));
  const classes = plans.map((plan) => viewClass(plan, views, cautions, settings.url));
  const made = statedKits.filter(({ kit }) => kits.includes(kit));
  const stories = siteStories(catalogue, made, held);
  gathering.all({ made: [], messages: deadLinks(stories, addressesOf({ views, classes, guide }), isPart) });
  gathering.stopWhereBroken();
  return {
    views,
    classes,
    cautions,
    guide,
    settings,
    catalogue,
    photos: sitePhotos(made, stories),
    strays: [...siteStrays(base, catalogue.story), ...[...statedKits, ...held].flatMap(({ strays }) => strays)],
    drafts,
    words,
    fonts,
    texts,
    warnings: [...warnings, ...views.flatMap((view) => smallLetters(view.kit, texts, fonts))],
    messages: gathering.messages,
    offers: new Map(isPart ? statedKits.map(({ kit, offers }) => [kit.slug, offers()] as const) : []),
    view: (slug) => found(views, (view) => view.slug === slug, slug),
    guidePage: (name) => found(guide, (page) => page.name === name, name),
    story: (page) => found([...stories], ([address]) => address === page, page)[1],
  };
}

function found<T>(list: readonly T[], is: (one: T) => boolean, name: string): T {
  const one = list.find(is);
  if (!one) throw new Error(`nothing is called "${name}"`);
  return one;
}

/** Settings and words of the site's language. Messages about the settings are English, as they say which language it is. */
function openLanguage(base: string, gathering: Gathering): Pick<Library, "settings" | "words"> {
  const english = gathering.one(
    () => readWords(base, SOURCE),
    () => catalogueOf(readLanguage(base, SOURCE)),
  );
  speak(english, SOURCE);
  const read = (): SiteSettings => readSettings(base, process.env[URL_VARIABLE]);
  const settings = gathering.one(read, () => siteSettings.parse({}));
  const { language } = settings;
  const words = gathering.one(
    () => (language === SOURCE ? english : readWords(base, language)),
    () => english,
  );
  gathering.stopWhereBroken();
  speak(words, language);
  // What settings leave out is filled in with words of their language.
  return { settings: language === SOURCE ? settings : read(), words };
}
