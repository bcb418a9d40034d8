/** One thing wrong with one kit, for its author. */
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

/** A kit that cannot be built, with every message about it. */
export class KitError extends Error {
  readonly messages: readonly KitMessage[];
  constructor(messages: readonly KitMessage[]) {
    super(messages.map(formatMessage).join("\n"));
    this.messages = messages;
  }
}

/** `content/kits/moon/index.md:14:3  book.leaves: given 0; allowed: …; do: …` */
export function formatMessage(message: KitMessage): string {
  const place = [message.file, message.line, message.column].filter((part) => part !== undefined).join(":");
  return `${place}  ${message.field}: ${message.given}; allowed: ${message.allowed}; do: ${message.remedy}`;
}
