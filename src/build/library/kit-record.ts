import type { PatternedKit } from "../../core/pattern/patterned-kit.ts";
import { readKit } from "../../input/kit/read-kit.ts";
import { viewKit } from "../../output/views/kit-view.ts";
import { type PrintedKit, withPacket } from "../../output/views/packet-view.ts";
import { keyOf, type Store } from "../store/store.ts";
import { patternKit } from "./pattern-kit.ts";
import type { SiteFacts } from "./site-facts.ts";

/** Where a kit with its pattern is kept, by what names all that it is read from. */
export function recordKey(kit: string): string {
  return keyOf("record", kit);
}

/** The kit in a folder with its pattern: as it is kept, or read and computed again. `key` names all that it is read from. */
export function kitRecord(store: Store, key: string, folder: string, { base, motifs, fonts }: SiteFacts): PatternedKit {
  return store.value(recordKey(key), () => patternKit(readKit(folder, base, motifs, fonts)));
}

/** The same with all that its pages and its packet show. */
export function recordedView(store: Store, key: string, folder: string, facts: SiteFacts): PrintedKit {
  return withPacket(viewKit(kitRecord(store, key, folder, facts), facts.cautions));
}
