import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { KitCrew } from "../../../src/build/kits/kit-crew.ts";
import { type Library, openLibrary } from "../../../src/build/library/library.ts";
import type { Opening } from "../../../src/build/library/opening.ts";
import { Store } from "../../../src/build/store/store.ts";

/** Opens the library of a project in this thread, with a store of its own; `close` takes that away. */
export async function openedLibrary(
  base: string,
  opening: Opening = {},
): Promise<{ readonly library: Library; readonly crew: KitCrew; readonly close: () => void }> {
  const folder = mkdtempSync(join(tmpdir(), "leaflight-store-"));
  const store = new Store(folder);
  const crew = new KitCrew(store, 0);
  const library = await openLibrary(base, opening, { store, readKits: (facts) => crew.reader(facts) });
  return { library, crew, close: () => rmSync(folder, { recursive: true, force: true }) };
}
