import { z } from "zod";
import * as say from "../../words/messages.ts";
import { contentPath } from "../files/content-folder.ts";
import { choice, described, leftOut, list, words } from "../files/schema-fields.ts";
import type { JsonSchema } from "../files/schema-messages.ts";
import { TEXT } from "../files/text-bounds.ts";

/** Settings of a site, as its author writes them in content/site.yaml. */

/** Where the settings stand below the project, and the environment variable that overrides `url`. */
export const settingsFile = (): string => contentPath("site.yaml");
export const URL_VARIABLE = "LEAFLIGHT_SITE_URL";

/** Where a site stands on the web: a folder, so that addresses below it are made by appending. */
export const siteUrl = z
  .url({ protocol: /^https?$/ })
  .max(TEXT.site)
  .refine((text) => !URL.canParse(text) || isFolder(new URL(text)), { params: { fault: { kind: "more-than-folder" } } })
  .transform((text) => new URL(text).href.replace(/\/?$/, "/"))
  .meta(described(say.fieldSiteUrl));

const author = z
  .strictObject({
    name: words(say.fieldAuthorName, TEXT.title, "page"),
    kind: choice(say.fieldAuthorKind, ["organisation", "person"]).default("organisation"),
    url: z
      .url({ protocol: /^https?$/ })
      .max(TEXT.address)
      .optional()
      .meta(described(say.fieldAuthorUrl)),
  })
  .meta(described(say.fieldAuthor));

const font = z
  .strictObject({
    file: z
      .string()
      .regex(/^[^./\\][^/\\]*$/)
      .max(TEXT.path)
      .meta(described(say.fieldFontFile)),
    name: leftOut(words(say.fieldFontName, TEXT.name, "page"), say.fieldFontNameUsual),
    licence: words(say.fieldFontLicence, TEXT.name, "page").optional(),
  })
  .meta(described(say.fieldFont));

export const siteSettings = z
  .strictObject({
    title: words(say.fieldSiteTitle, TEXT.title, "page").default("Leaflight"),
    summary: words(say.fieldSiteSummary, TEXT.summary, "page").default(() => say.fieldSiteSummaryUsual()),
    url: siteUrl.optional(),
    feedId: leftOut(z.url().max(TEXT.address).meta(described(say.fieldSiteFeedId)), say.fieldSiteFeedIdUsual),
    author: author.optional(),
    language: z
      .string()
      .regex(/^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$/)
      .refine(isLocale)
      .max(TEXT.name)
      .default("en")
      .meta(described(say.fieldSiteLanguage)),
    fonts: list(say.fieldFonts, font, 0, 12).default([]),
  })
  .meta({
    title: "Leaflight site",
    get description() {
      return say.fieldSite();
    },
  });

/** The settings' JSON Schema (draft 2020-12) as the file that is published and that stands beside them. */
export function settingsSchemaText(): string {
  return `${JSON.stringify(settingsJsonSchema(), null, 2)}\n`;
}

export function settingsJsonSchema(): JsonSchema & Record<string, unknown> {
  return z.toJSONSchema(siteSettings, { io: "input", target: "draft-2020-12" }) as JsonSchema & Record<string, unknown>;
}

/** The folder of the host below which the site stands, with a slash at both ends: `/folder/`. */
export function basePath(url: string): string {
  return new URL(url).pathname;
}

/** Whether numbers, dates and lists can be written in a language. */
function isLocale(language: string): boolean {
  try {
    return Intl.getCanonicalLocales(language).length === 1;
  } catch {
    return false;
  }
}

function isFolder(url: URL): boolean {
  return url.search === "" && url.hash === "" && url.username === "" && url.password === "";
}
