/** A picture as a new kit's front matter states it, with the files that come along. */
export interface Sketch {
  /** What stands under `picture`. */
  readonly picture: Readonly<Record<string, unknown>>;
  /** Names of the levels that the picture draws, front to back. */
  readonly levels: readonly string[];
  /** Whether the last level is the ground, as nothing is seen behind it. */
  readonly grounded: boolean;
  readonly files: readonly { readonly name: string; readonly bytes: Buffer | string }[];
  readonly credit: Readonly<Record<string, string>> | undefined;
}
