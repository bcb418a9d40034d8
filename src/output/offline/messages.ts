import type { Edition } from "./site-list.ts";

/** What a page asks the worker. */
export type Question =
  /** Keep a kit on this device: what it is chosen and worked by, or everything. */
  | { readonly ask: "keep"; readonly kit: string; readonly all: boolean }
  /** Which kits are kept? */
  | { readonly ask: "kept" }
  /** Which kits are kept, and how does the site's host answer? */
  | { readonly ask: "host" }
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

/** How the site's host answers: with this version of the site, a newer one, that nothing is there, something else, or not at all. */
export type HostState = "same" | "newer" | "gone" | "wrong" | "unreachable";

/** Why a file of a kept kit is not given: what the host has instead. */
export const REASONS = ["newer", "gone", "wrong", "unreachable"] as const satisfies readonly HostState[];

export type Reason = (typeof REASONS)[number];

/** What the worker answers. */
export interface Answer {
  /** Slugs of the kits whose page and bench work. */
  readonly kits: readonly string[];
  /** Those of them of which everything is kept. */
  readonly all: readonly string[];
  /** Which version of each kept kit it is, by slug; nothing for a kit that states none. */
  readonly editions: Readonly<Record<string, Edition>>;
  /** Why what was asked could not be done. */
  readonly failure: KeepFailure | undefined;
  /** Undefined where it was not asked for. */
  readonly host: HostState | undefined;
}
