/** Which kits show a caution: all, those cut with a knife, glued, or lit. */
export const OCCASIONS = ["always", "cuts", "glue", "light"] as const;

/** A caution, in the words of those who answer for it. */
export interface Caution {
  readonly id: string;
  readonly title: string;
  /** For the list of cautions. */
  readonly text: string;
  /** For the step that needs it. */
  readonly short: string;
  readonly when: (typeof OCCASIONS)[number];
}
