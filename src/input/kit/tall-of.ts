import type { FrontMatter } from "./schema.ts";

/** About how tall the picture is on the book, mm, before it is fitted. */
export function tallOf({ fit, book }: Pick<FrontMatter, "fit" | "book">): number {
  return fit.height === "solve" ? book.leafHeight : fit.height;
}
