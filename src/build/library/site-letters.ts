import type { SiteSettings } from "../../core/site-settings.ts";
import { cautionsFile } from "../../input/cautions/read-cautions.ts";
import { type OwnFont, ownFonts } from "../../input/fonts/own-fonts.ts";
import type { AuthoredText } from "../../input/texts/authored-text.ts";
import { statedWords } from "../../input/words/read-words.ts";
import { checkLetters } from "./check-letters.ts";
import type { Gathering } from "./gathering.ts";
import { siteTexts } from "./site-texts.ts";

/** The texts of a site and what they are set in. */
export interface SiteLetters {
  /** Fonts that the settings name. */
  readonly fonts: readonly OwnFont[];
  /** Every text that authors wrote, with its place. */
  readonly texts: readonly AuthoredText[];
  /** What may disappoint in the texts, in sentences. */
  readonly warnings: readonly string[];
}

/** Reads every text of the site in `base`; letters that its packets could not print are gathered as messages. */
export function siteLetters(base: string, settings: SiteSettings, gathering: Gathering): SiteLetters {
  const fonts = ownFonts(base, settings.fonts);
  const texts = siteTexts(base, cautionsFile(base, settings.language));
  const words = gathering.one(
    () => statedWords(base, settings.language),
    () => [],
  );
  const { wrong, warnings } = checkLetters(texts, words, fonts);
  gathering.all({ made: [], messages: wrong });
  return { fonts, texts, warnings };
}
