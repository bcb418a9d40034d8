import type { LeafName } from "../../core/book/numbering.ts";

/** Which unnumbered leaf this is, in the fixed English of data files: `plate 1 of 4 after p. 192`; empty where it has a page number. */
export function leafToken(name: LeafName): string {
  switch (name.kind) {
    case "numbered":
      return "";
    case "plate":
      return `plate ${name.index} of ${name.of} after p. ${name.afterPage}`;
    case "front":
      return `front leaf ${name.index} of ${name.of}`;
    case "end":
      return `end leaf ${name.index} of ${name.of}`;
  }
}
