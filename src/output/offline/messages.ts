/** What a page asks the worker. */
export type Question =
  /** Keep a kit on this device, with or without its printed packet. */
  | { readonly ask: "keep"; readonly kit: string; readonly packet: boolean }
  /** Which kits are kept? */
  | { readonly ask: "kept" }
  /** Let a newer version that waits take over. */
  | { readonly ask: "take over" };

/** What the worker answers. */
export interface Answer {
  /** Slugs of the kits that are kept whole. */
  readonly kits: readonly string[];
  /** Those of them whose packet is kept, too. */
  readonly packets: readonly string[];
  /** Why what was asked could not be done. */
  readonly problem: string | undefined;
}
