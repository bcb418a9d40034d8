import { join } from "node:path";
import type { Kit, Version } from "../../../src/core/kit/kit.ts";
import type { PatternedKit } from "../../../src/core/pattern/patterned-kit.ts";
import type { SiteSettings } from "../../../src/core/site-settings.ts";
import { readCautions } from "../../../src/input/cautions/read-cautions.ts";
import { siteSettings } from "../../../src/input/settings/settings.ts";
import { type KitView, viewKit } from "../../../src/output/views/kit-view.ts";
import { FIXTURES, fixtureFolder, readKit } from "../../input/kit/kit-folders.ts";

const ROOT = join(import.meta.dirname, "../../..");

export const SITE = "https://folds.example.org/quay/";

/** Settings as a file with these fields gives them. */
export function settingsWith(fields: object = {}): SiteSettings & { readonly url: string } {
  return { ...siteSettings.parse({ title: "Folds & more", ...fields }), url: SITE };
}

export function version(name: string, date: string, note?: string): Version {
  return { version: name, date, note };
}

/** As much of a kit as its publication needs. */
export function kitWith(slug: string, fields: Partial<Kit>): Kit {
  const none = { versions: [], licence: undefined, summary: "One line.", title: slug };
  return { ...none, slug, ...fields } as unknown as Kit;
}

/** A fixture kit as its page shows it, with some fields changed. */
export function fixtureView(slug: string, fields: Partial<Kit> = {}): KitView {
  const folder: PatternedKit = readKit(fixtureFolder(slug), FIXTURES);
  return viewKit({ ...folder, kit: { ...folder.kit, ...fields } }, readCautions(ROOT, "en"));
}
