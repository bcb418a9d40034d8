import { readFileSync } from "node:fs";
import { parse } from "yaml";
import type { Counts } from "../plan/effort.ts";

export interface Caution {
  readonly id: string;
  readonly title: string;
  readonly text: string;
  readonly when: "always" | "cuts" | "tacks";
}

/** Reads content/words/cautions.yaml. @throws Error naming the entry that is not as it should be. */
export function readCautions(file: string): Caution[] {
  const entries: unknown = parse(readFileSync(file, "utf8"));
  if (!Array.isArray(entries)) throw new Error(`${file}: a list of cautions is expected`);
  return entries.map((entry: Partial<Caution>, i) => {
    const complete = entry.id && entry.title && entry.text && ["always", "cuts", "tacks"].includes(entry.when ?? "");
    if (!complete) throw new Error(`${file}: caution ${i + 1} needs id, title, text, and when (always, cuts or tacks)`);
    return entry as Caution;
  });
}

/** The cautions that a kit's work calls for. */
export function cautionsFor(cautions: readonly Caution[], counts: Counts): Caution[] {
  return cautions.filter((caution) => caution.when === "always" || counts[caution.when] > 0);
}
