import { join } from "node:path";
import type { Story } from "../../core/story/story.ts";
import * as say from "../../words/messages.ts";
import { atPlace } from "../files/at-place.ts";
import { contentPath } from "../files/content-folder.ts";
import { readFrontMatter } from "../files/front-matter.ts";
import { KitError } from "../files/message.ts";
import { pageText } from "../files/page-text.ts";
import { isThere } from "../files/real-path.ts";
import { schemaMessages } from "../files/schema-messages.ts";
import { readStory } from "../story/read-story.ts";
import { catalogueJsonSchema, catalogueMatter } from "./schema.ts";

/** The first page of a site, as its author states it. */
export interface Catalogue {
  readonly title: string;
  readonly heading: string;
  readonly summary: string | undefined;
  readonly story: Story;
}

/** Where it stands below the project. */
export const catalogueFile = (): string => contentPath("index.md");

/** Reads the catalogue's own words in the project `base`. @throws KitError with one message for each thing wrong */
export function readCatalogue(base: string): Catalogue {
  const file = catalogueFile();
  if (!isThere(base, file)) return plainCatalogue();
  const text = pageText({ base, file });
  const yaml = readFrontMatter(file, text);
  const parsed = catalogueMatter.safeParse(yaml.value);
  if (!parsed.success) {
    const checked = { file, yaml, schema: catalogueJsonSchema(), whole: say.checkFieldFrontMatter() };
    throw new KitError(schemaMessages(checked, parsed.error.issues));
  }
  const { title = plainCatalogue().title, heading = title, summary } = parsed.data;
  return {
    title,
    heading,
    summary,
    story: atPlace(file, yaml, () => readStory({ base, folder: join(base, contentPath()) }, file, text)),
  };
}

/** The catalogue of a site that says nothing of it. */
export function plainCatalogue(): Catalogue {
  const title = say.catalogueKits();
  return {
    title,
    heading: title,
    summary: undefined,
    story: { file: catalogueFile(), markdown: "", pictures: [], links: [] },
  };
}
