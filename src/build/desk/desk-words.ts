import { readSettings } from "../../input/settings/read-settings.ts";
import { catalogueOf } from "../../input/words/fluent.ts";
import { readLanguage, readWords, SOURCE } from "../../input/words/read-words.ts";
import type { Catalogue } from "../../words/message.ts";
import { speak } from "../../words/speak.ts";
import { foreseen } from "../errors/foreseen.ts";

/** The words that the desk speaks. */
export interface DeskWords {
  readonly words: Catalogue;
  readonly language: string;
  /** The site's title; empty where the settings cannot be read. */
  readonly title: string;
}

/** Reads the words of the site's language and speaks them; English ones, where those or the settings cannot be read. @throws WordsError */
export function deskWords(base: string): DeskWords {
  const known = siteWords(base) ?? { words: catalogueOf(readLanguage(base, SOURCE)), language: SOURCE, title: "" };
  speak(known.words, known.language);
  return known;
}

function siteWords(base: string): DeskWords | undefined {
  try {
    const { language, title } = readSettings(base, undefined);
    return { words: readWords(base, language), language, title };
  } catch (error) {
    if (foreseen(error) !== undefined) return undefined;
    throw error;
  }
}
