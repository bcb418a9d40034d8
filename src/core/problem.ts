/**
 * Something in a kit that cannot be made as it stands. The reader of the kit turns it into one message with file and place.
 * `field` is the path in the front matter (`fit.height`); texts are short, lower-case and carry the offending values.
 */
export class Problem extends Error {
  readonly field: string;
  readonly path: readonly (string | number)[];
  readonly given: string;
  readonly allowed: string;
  readonly remedy: string;
  /** `place` is `fit.height`, or its steps where one of them is an author's own word, which may hold a dot or be a number. */
  constructor(place: string | readonly (string | number)[], parts: { given: string; allowed: string; remedy: string }) {
    const path =
      typeof place === "string" ? place.split(".").map((step) => (/^\d+$/.test(step) ? Number(step) : step)) : place;
    super(`${path.join(".")}: ${parts.given}; ${parts.allowed}; ${parts.remedy}`);
    this.path = path;
    this.field = path.join(".");
    this.given = parts.given;
    this.allowed = parts.allowed;
    this.remedy = parts.remedy;
  }
}
