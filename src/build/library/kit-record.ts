import type { AnyPatternedKit } from "../../core/pattern/patterned-kit.ts";
import { readKit } from "../../input/kit/read-kit.ts";
import { type AnyPrintedKit, printedKit, viewAnyKit } from "../../output/views/any-kit-view.ts";
import { keyOf, type Store } from "../store/store.ts";
import { patternAnyKit } from "./pattern-kit.ts";
import type { SiteFacts } from "./site-facts.ts";

/** Where a kit with its pattern is kept, by what names all that it is read from. */
export function recordKey(kit: string): string {
  return keyOf("record", kit);
}

/** The kit in a folder with its pattern: as it is kept, or read and computed again. `key` names all that it is read from. */
export function kitRecord(
  store: Store,
  key: string,
  folder: string,
  { base, motifs, fonts }: SiteFacts,
): AnyPatternedKit {
  return store.value(recordKey(key), () => patternAnyKit(readKit(folder, base, motifs, fonts)));
}

/** The same with all that its pages and its packet show. */
export function recordedView(store: Store, key: string, folder: string, facts: SiteFacts): AnyPrintedKit {
  return printedKit(viewAnyKit(kitRecord(store, key, folder, facts), facts.cautions));
}
