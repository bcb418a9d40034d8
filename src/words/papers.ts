import * as say from "./messages.ts";

/** A paper that packets are printed on. */
export type PaperName = "a4" | "letter";

/** A paper's name in full: `A4`, `US Letter`. */
export function paperLabel(name: PaperName): string {
  return name === "a4" ? say.paperA4() : say.paperLetter();
}
