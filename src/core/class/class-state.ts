/**
 * How far a class is: no seat has a book yet, some have, all have; or, as its teacher states it, it was held and its patterns
 * are still there, or it is closed and only its page remains.
 */
export type ClassState = "announced" | "collecting" | "fitted" | StatedState;

/** What a teacher states; the rest shows in the seats. */
export type StatedState = "held" | "closed";

/** By how many seats have a book, and of how many it is still to come. */
export function stateOf(stated: StatedState | undefined, books: number, awaiting: number): ClassState {
  if (stated) return stated;
  if (books === 0) return "announced";
  return awaiting > 0 ? "collecting" : "fitted";
}

/** Whether a class lies behind those who made something in it. */
export function isOver(state: ClassState): boolean {
  return state === "held" || state === "closed";
}
