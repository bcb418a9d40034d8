import { join } from "node:path";
import type { SiteSettings } from "../../core/site-settings.ts";
import * as say from "../../words/messages.ts";
import { atPlace } from "../files/at-place.ts";
import { sharedPaths } from "../files/content-folder.ts";
import { toldOfFile } from "../files/file-message.ts";
import { foldersIn, slugOf } from "../files/folders.ts";
import { KitError } from "../files/message.ts";
import { readText } from "../files/read-file.ts";
import { isThere } from "../files/real-path.ts";
import { schemaMessages } from "../files/schema-messages.ts";
import { readYaml } from "../files/yaml.ts";
import { ownFonts } from "../fonts/own-fonts.ts";
import { SOURCE } from "../words/read-words.ts";
import { settingsFile, settingsJsonSchema, siteSettings, siteUrl, URL_VARIABLE } from "./settings.ts";

/**
 * Reads the site.yaml of the content in the project `base`; without the file, all defaults. `override` is the value of LEAFLIGHT_SITE_URL: a
 * workflow states where it puts the site. Empty is not stated.
 * @throws KitError with one message for each thing wrong.
 */
export function readSettings(base: string, override: string | undefined): SiteSettings {
  const source = { base, file: settingsFile(), kind: "settings" } as const;
  const text = isThere(base, settingsFile()) ? toldOfFile(() => readText(source)) : "";
  const whole = say.checkFieldSettings();
  const yaml = readYaml(settingsFile(), text, 0, whole);
  const parsed = siteSettings.safeParse(yaml.value);
  if (!parsed.success) {
    const checked = { file: settingsFile(), yaml, schema: settingsJsonSchema(), whole };
    throw new KitError(schemaMessages(checked, parsed.error.issues));
  }
  const { language } = parsed.data;
  const languages = languagesOf(base);
  if (!languages.includes(language.split("-")[0]!) && !languages.includes(language)) {
    const advice = {
      given: say.checkLanguageWithoutWords({ language }),
      allowed: say.checkLanguagesWithWords({ languages: languages.join(", ") }),
      remedy: say.checkLanguageRemedy(),
    };
    throw new KitError([{ file: settingsFile(), ...yaml.placeOf(["language"]), field: "language", ...advice }]);
  }
  atPlace(settingsFile(), yaml, () => ownFonts(base, parsed.data.fonts));
  return override ? { ...parsed.data, url: readOverride(override) } : parsed.data;
}

/** Languages that the project has words in: the names of their folders. */
function languagesOf(base: string): string[] {
  const folders = sharedPaths("words").flatMap((folder) => foldersIn(join(base, folder), base));
  return [...new Set([SOURCE, ...folders.map(slugOf)])];
}

function readOverride(given: string): string {
  const parsed = siteUrl.safeParse(given);
  if (parsed.success) return parsed.data;
  throw new KitError([
    {
      file: say.checkEnvironment(),
      line: undefined,
      column: undefined,
      field: URL_VARIABLE,
      given: say.checkGiven({ value: JSON.stringify(given) }),
      allowed: say.fieldSiteUrl(),
      remedy: say.checkCorrectVariable({ file: settingsFile() }),
    },
  ]);
}
