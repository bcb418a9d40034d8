import { readFileSync } from "node:fs";
import { parse } from "yaml";
import { type Caution, OCCASIONS } from "../../output/views/cautions.ts";

/** Reads content/words/cautions.yaml. @throws Error naming the entry that is not as it should be. */
export function readCautions(file: string): Caution[] {
  const entries: unknown = parse(readFileSync(file, "utf8"));
  if (!Array.isArray(entries)) throw new Error(`${file}: a list of cautions is expected`);
  return entries.map((entry: Partial<Caution>, i) => {
    const complete =
      entry.id && entry.title && entry.text && entry.short && OCCASIONS.some((one) => one === entry.when);
    if (!complete)
      throw new Error(`${file}: caution ${i + 1} needs id, title, text, short, and when (${OCCASIONS.join(", ")})`);
    return entry as Caution;
  });
}
