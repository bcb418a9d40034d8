import { readdirSync } from "node:fs";
import { open } from "node:fs/promises";
import { join } from "node:path";

/** So many files are written out at once. */
const AT_ONCE = 8;

/** Writes all files below a folder out to the disk, so that a power cut after the swap leaves none of them empty. */
export async function syncAll(folder: string): Promise<void> {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
  const line = files[Symbol.iterator]();
  await Promise.all(
    Array.from({ length: AT_ONCE }, async () => {
      for (const path of line) {
        const file = await open(path, "r+");
        try {
          await file.sync();
        } finally {
          await file.close();
        }
      }
    }),
  );
}
