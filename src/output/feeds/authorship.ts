import type { Organization, Person } from "schema-dts";
import type { SiteSettings } from "../../core/site-settings.ts";

/** The site's author for schema.org; undefined where none is stated. */
export function authorOf({ author }: SiteSettings): Person | Organization | undefined {
  if (!author) return undefined;
  const named = { name: author.name, ...(author.url ? { url: author.url } : {}) };
  return author.kind === "person" ? { "@type": "Person", ...named } : { "@type": "Organization", ...named };
}
