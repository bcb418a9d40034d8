import type { LeafNumber } from "../core/book/leaf-number.ts";
import type { LeafName } from "../core/book/numbering.ts";
import type { PatternLeafBase } from "../core/pattern/pattern.ts";
import type { LeafRun } from "../core/plan/scoring.ts";
import * as say from "./messages.ts";

/** What a leaf is found by in its book: its printed page's number, or which unnumbered leaf it is (`plate 1 of 4 after p. 192`). */
export function leafName(name: LeafName): string {
  switch (name.kind) {
    case "numbered":
      return String(name.recto);
    case "plate":
      return say.leafPlate({ index: name.index, of: name.of, page: name.afterPage });
    case "front":
      return say.leafFront({ index: name.index, of: name.of });
    case "end":
      return say.leafEnd({ index: name.index, of: name.of });
  }
}

/** `leaf 13, p. 17` or `leaf 3 (front leaf 3 of 4)`. */
export function leafAndPage({ leaf, name }: Pick<PatternLeafBase, "leaf" | "name">): string {
  return name.kind === "numbered"
    ? say.leafWithPage({ leaf, page: name.recto })
    : say.leafWithName({ leaf, name: leafName(name) });
}

/** `leaves 3 to 12 (p. 5 to p. 23)`, or one leaf with its page. */
export function leafRun({ first, last }: LeafRun, nameOf: (leaf: LeafNumber) => LeafName): string {
  const [from, to] = [first, last].map((leaf) => pageOrName(nameOf(leaf))) as [string, string];
  return first === last ? say.leafWithName({ leaf: first, name: from }) : say.leafRunPages({ first, last, from, to });
}

function pageOrName(name: LeafName): string {
  return name.kind === "numbered" ? say.leafPage({ page: name.recto }) : leafName(name);
}
