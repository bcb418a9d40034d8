import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { readYaml } from "../files/front-matter.ts";
import { KitError } from "../files/message.ts";
import { fieldName, schemaMessages } from "../files/schema-messages.ts";
import {
  SETTINGS_FILE,
  type SiteSettings,
  settingsJsonSchema,
  siteSettings,
  siteUrl,
  URL_VARIABLE,
} from "./settings.ts";

/** What a message calls the file as a whole. */
const WHOLE = "settings";

/**
 * Reads content/site.yaml below `base`; without the file, all defaults. `override` is the value of LEAFLIGHT_SITE_URL: a
 * workflow states where it puts the site. Empty is not stated.
 * @throws KitError with one message for each thing wrong.
 */
export function readSettings(base: string, override: string | undefined): SiteSettings {
  const path = join(base, SETTINGS_FILE);
  const text = existsSync(path) ? readFileSync(path, "utf8").replace(/^\uFEFF/, "") : "";
  const settings = readYaml(SETTINGS_FILE, text, 0, WHOLE);
  const parsed = siteSettings.safeParse(settings.value);
  if (!parsed.success) {
    const messages = schemaMessages(SETTINGS_FILE, settings, parsed.error.issues, settingsJsonSchema());
    throw new KitError(messages.map((one) => ({ ...one, field: one.field === fieldName([]) ? WHOLE : one.field })));
  }
  return override ? { ...parsed.data, url: readOverride(override) } : parsed.data;
}

function readOverride(given: string): string {
  const parsed = siteUrl.safeParse(given);
  if (parsed.success) return parsed.data;
  throw new KitError([
    {
      file: "environment",
      line: undefined,
      column: undefined,
      field: URL_VARIABLE,
      given: `given ${JSON.stringify(given)}`,
      allowed: siteUrl.meta()!.description!,
      remedy: `correct the variable, or leave it out to use url in ${SETTINGS_FILE}`,
    },
  ]);
}
