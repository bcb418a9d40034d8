import { LoadError, loadScript } from "../shared/load-script.ts";
import { BASE_NAME } from "./base-name.ts";
import { earlierKeys } from "./earlier.ts";

/** Script of the catalogue and of kits' pages: fetches what shows pieces where this device may have some, so that it costs a first visit little. */
const section = document.querySelector<HTMLElement>("[data-continue]");
if (section) open(section);

async function open({ dataset }: HTMLElement): Promise<void> {
  try {
    if (await mayHavePieces()) await loadScript(`${dataset["continue"]}assets/scripts/piece-cards.js`, "pieces");
  } catch (error) {
    // The page goes without them; the bench finds each piece by itself.
    if (!(error instanceof LoadError || error instanceof DOMException)) throw error;
  }
}

async function mayHavePieces(): Promise<boolean> {
  if (earlierKeys().length > 0) return true;
  // Some browsers do not tell which bases there are.
  const bases: (() => Promise<readonly IDBDatabaseInfo[]>) | undefined = indexedDB.databases?.bind(indexedDB);
  return !bases || (await bases()).some(({ name }) => name === BASE_NAME);
}
