import { join, resolve } from "node:path";
import type { Caution } from "../../core/plan/caution.ts";
import type { SiteSettings } from "../../core/site-settings.ts";
import type { Motif } from "../../core/window/motif.ts";
import { readCautions } from "../../input/cautions/read-cautions.ts";
import { contentPath, PROJECT_CONTENT } from "../../input/files/content-folder.ts";
import type { Readings } from "../../input/files/readings.ts";
import { type OwnFont, ownFonts } from "../../input/fonts/own-fonts.ts";
import { readMotifs } from "../../input/kit/read-motifs.ts";
import { readSettings } from "../../input/settings/read-settings.ts";
import { siteSettings, URL_VARIABLE } from "../../input/settings/settings.ts";
import { catalogueOf } from "../../input/words/fluent.ts";
import { readLanguage, readWords, SOURCE } from "../../input/words/read-words.ts";
import type { Catalogue as Words } from "../../words/message.ts";
import { speak } from "../../words/speak.ts";
import { codeKey } from "../store/code-keys.ts";
import { folderKey, isStill } from "../store/folder-key.ts";
import { keyOf, type Store } from "../store/store.ts";
import type { Gathering } from "./gathering.ts";

/** What all kits, classes and pages of a site share. */
export interface SiteFacts {
  /** The project's folder. */
  readonly base: string;
  /** Names all that is read here. */
  readonly key: string;
  /** Names what of it is content, whichever address was stated for this run. */
  readonly content: string;
  readonly settings: SiteSettings;
  /** The words of the site's language. */
  readonly words: Words;
  readonly cautions: readonly Caution[];
  /** Silhouettes that kits pick from. */
  readonly motifs: readonly Motif[];
  /** Fonts that the settings name. */
  readonly fonts: readonly OwnFont[];
}

const READ_MOTIFS = resolve(import.meta.dirname, "../../input/kit/read-motifs.ts");

/** What of the content belongs to one part of a site. */
const OF_PARTS = ["kits", "classes", "guide", "index.md"];

/** Reads what a site's parts share, in the project `base`; from then on the site's language is spoken. What takes long is kept. @throws KitError, WordsError */
export function readFacts(base: string, gathering: Gathering, store: Store): SiteFacts {
  const { settings, words } = openLanguage(base, gathering);
  const cautions = gathering.one(
    () => readCautions(base, settings.language),
    () => [],
  );
  return {
    base,
    key: factsKey(base),
    content: contentKey(base),
    settings,
    words,
    cautions,
    motifs: gathering.all(keptMotifs(base, store)),
    fonts: ownFonts(base, settings.fonts),
  };
}

/** Motifs are areas that are worked out: they are taken from the store, where each of them could be read. */
function keptMotifs(base: string, store: Store): Readings<Motif> {
  const place = [join(base, contentPath("motifs")), join(base, contentPath())] as const;
  const key = keyOf("motifs", folderKey(...place), codeKey(READ_MOTIFS));
  const kept = store.take<readonly Motif[]>(key);
  if (kept) return { made: kept.data, messages: [] };
  const read = readMotifs(base);
  if (read.messages.length === 0 && isStill(...place)) store.put(key, { files: [], data: read.made });
  return read;
}

/** Names all that `readFacts` reads. */
export function factsKey(base: string): string {
  return keyOf(contentKey(base), process.env[URL_VARIABLE]);
}

function contentKey(base: string): string {
  const own = folderKey(join(base, contentPath()), join(base, contentPath()), OF_PARTS);
  const words = folderKey(join(base, PROJECT_CONTENT, "words"), base);
  return keyOf(contentPath(), own, words);
}

/** Settings and words of the site's language. Messages about the settings are English, as they say which language it is. */
function openLanguage(base: string, gathering: Gathering): Pick<SiteFacts, "settings" | "words"> {
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
