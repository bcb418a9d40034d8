import { join } from "node:path";
import type { Story } from "../../core/story/story.ts";
import { contentPath } from "../../input/files/content-folder.ts";
import { foldersIn, slugOf } from "../../input/files/folders.ts";
import { entriesIn } from "../../input/files/read-file.ts";
import { type Strays, straysIn } from "../../input/files/strays.ts";

/** What the program reads of `content`, and the schema that it writes there for editors. */
const CONTENT = ["index.md", "site.yaml", "site.schema.json", "kits", "classes", "motifs", "guide", "words", "fonts"];

/** What lies about in `content` beside the folders of kits and classes and in those with them. `catalogue` is what the first page tells. */
export function siteStrays(base: string, catalogue: Story): Strays[] {
  const slugs = (kind: string): string[] => foldersIn(join(base, contentPath(kind)), base).map(slugOf);
  return [
    ...straysIn(base, contentPath(), [...CONTENT, ...catalogue.pictures.map(({ file }) => file)]),
    ...straysIn(base, contentPath("kits"), ["kit.schema.json", ...slugs("kits")]),
    ...straysIn(base, contentPath("classes"), ["class.schema.json", ...slugs("classes")]),
    ...straysIn(base, contentPath("motifs"), silhouettes(base)),
  ];
}

function silhouettes(base: string): string[] {
  return entriesIn(base, contentPath("motifs"))
    .map(({ name }) => name)
    .filter((name) => name.endsWith(".svg"));
}
