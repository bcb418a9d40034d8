/** What the server refused, in a sentence. */
export interface Refused {
  readonly refused: string;
}

/** What the table needs of the desk that it stands on. */
export interface BringHost {
  /** Reads a route of the server. */
  readonly get: <T>(route: string, query: Readonly<Record<string, string>>) => Promise<T | Refused>;
  /** Posts JSON, or bytes as they are. */
  readonly post: <T>(route: string, body: object | Uint8Array<ArrayBuffer>) => Promise<T | Refused>;
  /** Names of folders that are there. */
  readonly taken: () => readonly string[];
  /** Names of fonts that the settings name. */
  readonly fonts: () => readonly string[];
  /** A kit's folder was made: goes to it as soon as it is on the desk. */
  readonly made: (slug: string) => Promise<void>;
}

export function isRefused(answer: object): answer is Refused {
  return "refused" in answer;
}
