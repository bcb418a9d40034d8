import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { deserialize } from "node:v8";
import { knownPath, PART_SITE, type PartFile } from "../../input/part/part-manifest.ts";
import { entryKey } from "../kits/kit-keys.ts";
import type { KitNews } from "../library/kit-entry.ts";
import type { Placing } from "../store/placing.ts";
import { nameOfHash, type Store } from "../store/store.ts";
import type { NamedFile } from "../store/write-made.ts";
import { readPartFile } from "./part-files.ts";
import type { Part } from "./read-part.ts";

const BELOW = `${PART_SITE}/`;

/** Puts into the store what the site has to know of parts' kits: who reads the kits finds it there. @throws BuildError */
export function keepKnown(parts: readonly Part[], store: Store): void {
  for (const { folder, kits } of parts)
    for (const { slug, key, files } of kits) {
      const known = files.find(({ path }) => path === knownPath(slug));
      if (known) store.put(entryKey(key), { files: [], data: deserialize(readPartFile(folder, known)) as KitNews });
    }
}

/** Puts the files of parts into a site. @throws BuildError for a file that is not what its part says */
export function placeParts(placing: Placing, parts: readonly Part[]): void {
  for (const { folder, kits, shared } of parts) {
    for (const { slug, key, files } of kits)
      placing.note({ part: `kit ${slug}`, key, files: placed(placing, folder, files) });
    placing.note({ part: `shared ${folder}`, key: "", files: placed(placing, folder, shared) });
  }
}

function placed({ output }: Placing, folder: string, files: readonly PartFile[]): NamedFile[] {
  return files
    .filter(({ path }) => path.startsWith(BELOW))
    .map((file) => {
      const path = file.path.slice(BELOW.length);
      const target = join(output, path);
      mkdirSync(dirname(target), { recursive: true });
      writeFileSync(target, readPartFile(folder, file));
      return { path, name: nameOfHash(file.sha256) };
    });
}
