import type { Edit } from "../../../input/desk/edit.ts";

/** A length for the field at a path, mm. */
export function lengthAt(at: Edit["at"], mm: number): Edit {
  return { at, mm };
}
