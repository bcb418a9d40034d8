/** How much is measured. */
export interface Scale {
  /** As on a machine that checks each change: few kits, few turns. */
  readonly quick: boolean;
  /** Also a thousand kits. */
  readonly full: boolean;
}
