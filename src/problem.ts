/**
 * Something in a kit that cannot be made as it stands. The reader of the kit turns it into one message with file and place.
 * `field` is the path in the front matter (`fit.height`); texts are short, lower-case and carry the offending values.
 */
export class Problem extends Error {
  readonly field: string;
  readonly given: string;
  readonly allowed: string;
  readonly remedy: string;
  constructor(field: string, parts: { given: string; allowed: string; remedy: string }) {
    super(`${field}: ${parts.given}; ${parts.allowed}; ${parts.remedy}`);
    this.field = field;
    this.given = parts.given;
    this.allowed = parts.allowed;
    this.remedy = parts.remedy;
  }
}
