import { z } from "zod";

/** Settings of a site, as its author writes them in content/site.yaml. Descriptions say what is allowed and appear in messages. */

/** Where the settings stand below the project, and the environment variable that overrides `url`. */
export const SETTINGS_FILE = "content/site.yaml";
export const URL_VARIABLE = "LEAFLIGHT_SITE_URL";

const words = (description: string): z.ZodString =>
  z
    .string()
    .trim()
    .min(1)
    .meta({ description: `${description} Text.` });

/** Where a site stands on the web: a folder, so that addresses below it are made by appending. */
export const siteUrl = z
  .url({ protocol: /^https?$/ })
  .refine((text) => !URL.canParse(text) || isFolder(new URL(text)), { error: "is more than the address of a folder" })
  .transform((text) => new URL(text).href.replace(/\/?$/, "/"))
  .meta({ description: "Address of the site's folder, without parameters: https://host/folder/" });

const author = z
  .strictObject({
    name: words("Who makes the kits."),
    kind: z
      .enum(["organisation", "person"])
      .default("organisation")
      .meta({ description: "One of: organisation, person." }),
    url: z
      .url({ protocol: /^https?$/ })
      .optional()
      .meta({ description: "The author's own address: https://…" }),
  })
  .meta({ description: "Who makes the kits: name, kind, url." });

export const siteSettings = z
  .strictObject({
    title: words("The site's name.").default("Leaflight"),
    summary: words("One line about the site.").default("Pictures worked into books, one leaf at a time."),
    url: siteUrl.optional(),
    feedId: z
      .url()
      .optional()
      .meta({ description: "The address that the feed's ids are made from, kept when the site moves: its first url." }),
    author: author.optional(),
    language: z
      .string()
      .regex(/^en(-[A-Za-z0-9]{2,8})*$/)
      .default("en")
      .meta({ description: "Language of the pages; the program's own words are English: en, en-GB, en-US …" }),
  })
  .meta({ title: "Leaflight site", description: "Settings of the site." });

/** Settings with defaults filled in; `url` ends with a slash. */
export type SiteSettings = z.output<typeof siteSettings>;

/** The settings' JSON Schema (draft 2020-12) as the file that is published and that stands beside them. */
export function settingsSchemaText(): string {
  return `${JSON.stringify(settingsJsonSchema(), null, 2)}\n`;
}

export function settingsJsonSchema(): Record<string, unknown> {
  return z.toJSONSchema(siteSettings, { io: "input", target: "draft-2020-12" }) as Record<string, unknown>;
}

/** The folder of the host below which the site stands, with a slash at both ends: `/folder/`. */
export function basePath(url: string): string {
  return new URL(url).pathname;
}

function isFolder(url: URL): boolean {
  return url.search === "" && url.hash === "" && url.username === "" && url.password === "";
}
