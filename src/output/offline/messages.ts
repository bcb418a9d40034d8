/** What a page asks the worker. */
export type Question =
  /** Keep a kit on this device, with or without its printed packet. */
  | { readonly ask: "keep"; readonly kit: string; readonly packet: boolean }
  /** Which kits are kept? */
  | { readonly ask: "kept" }
  /** Let a newer version that waits take over. */
  | { readonly ask: "take over" };

/** Why something could not be kept. Paths are below the site. */
export type KeepFailure =
  | { readonly kind: "absent"; readonly path: string }
  /** The host gives another file than the build wrote. */
  | { readonly kind: "other-version"; readonly path: string }
  | { readonly kind: "no-kit"; readonly kit: string }
  /** The device has no room left. */
  | { readonly kind: "full" }
  | { readonly kind: "unreachable" };

/** What the worker answers. */
export interface Answer {
  /** Slugs of the kits that are kept whole. */
  readonly kits: readonly string[];
  /** Those of them whose packet is kept, too. */
  readonly packets: readonly string[];
  /** Why what was asked could not be done. */
  readonly failure: KeepFailure | undefined;
}
