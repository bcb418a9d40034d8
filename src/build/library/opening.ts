import type { WhenBroken } from "./gathering.ts";

/** Which part of a site is opened, and what becomes of the rest. */
export interface Opening {
  readonly whenBroken?: WhenBroken;
  /** Kits that are not to be published yet. */
  readonly drafts?: "leave out" | "take";
  /** Folders of the only kits to read, drafts too, and no classes; none for the whole site. */
  readonly kits?: readonly string[];
}
