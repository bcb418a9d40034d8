import { readFileSync } from "node:fs";
import { parse } from "yaml";
import type { Counts } from "../plan/effort.ts";

const OCCASIONS = ["always", "cuts", "glue", "light"] as const;

export interface Caution {
  readonly id: string;
  readonly title: string;
  /** For the list of cautions. */
  readonly text: string;
  /** For the step that needs it. */
  readonly short: string;
  readonly when: (typeof OCCASIONS)[number];
}

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

/** The cautions that a kit's work calls for. */
export function cautionsFor(cautions: readonly Caution[], counts: Counts, hasLight: boolean): Caution[] {
  const called = {
    always: true,
    cuts: counts.cuts + counts.notches + counts.parts > 0,
    glue: counts.tacks + counts.parts > 0,
    light: hasLight,
  };
  return cautions.filter((caution) => called[caution.when]);
}
