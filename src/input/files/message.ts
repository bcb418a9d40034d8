/** One thing wrong with a file of the site, for its author. */
export interface KitMessage {
  /** Path of the file as the author knows it, relative to the project. */
  readonly file: string;
  /** 1-based; undefined where the whole file or folder is meant. */
  readonly line: number | undefined;
  readonly column: number | undefined;
  /** Front matter path, or the SVG element. */
  readonly field: string;
  readonly given: string;
  readonly allowed: string;
  readonly remedy: string;
}

/** Something of a site that cannot be built, with every message about it; format-message.ts writes them. */
export class KitError extends Error {
  readonly messages: readonly KitMessage[];
  constructor(messages: readonly KitMessage[]) {
    super(messages.map((one) => `${placeText(one)}  ${one.field}: ${one.given}`).join("\n"));
    this.messages = messages;
  }
}

/** File, line and column as editors and terminals read them: `content/kits/moon/index.md:14:3`. */
export function placeText({ file, line, column }: Pick<KitMessage, "file" | "line" | "column">): string {
  return [file, line, column].filter((part) => part !== undefined).join(":");
}
