/** A message may quote a name as long as the file. */
const MOST_LETTERS = 400;

/** One thing of a picture file that cannot be honoured. */
export interface PictureFault {
  /** Line in the file, 1-based. */
  readonly line: number;
  readonly message: string;
}

/** A picture file that cannot be honoured as it stands. */
export class PictureError extends Error {
  /** Line of the first fault in the file, 1-based. */
  readonly line: number;
  /** Everything that is wrong, the first fault among it; at least one. */
  readonly faults: readonly PictureFault[];

  constructor(line: number, message: string, more: readonly PictureFault[] = []) {
    super(shortened(message));
    this.name = "PictureError";
    this.line = line;
    this.faults = [{ line, message: this.message }, ...more];
  }
}

/** A picture that is beyond all use, or no picture: nothing after it is read. */
export class PictureLimit extends PictureError {}

/** A value that its parser rejects; whoever knows the line and what was read turns it into a {@link PictureError}. */
export class ValueError extends Error {
  /** What is wrong, about what was read: `<rect> width`. */
  readonly about: (what: string) => string;

  constructor(about: (what: string) => string) {
    super(about("…"));
    this.about = about;
  }
}

/** A value as messages show it: in quotes, cut to about 40 characters. */
export function quoted(value: string): string {
  const flat = value.replace(/\s+/g, " ").trim();
  return `"${flat.length > 40 ? `${flat.slice(0, 39)}…` : flat}"`;
}

function shortened(message: string): string {
  return message.length > MOST_LETTERS ? `${message.slice(0, MOST_LETTERS)}…` : message;
}
