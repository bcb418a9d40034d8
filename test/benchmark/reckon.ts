/** What so many kits took. */
export interface Point {
  readonly kits: number;
  readonly taken: number;
}

/** What kits take, by two measurements: so much each, and so much for any number of them. */
export interface Reckoned {
  readonly each: number;
  readonly of: (kits: number) => number;
}

/** A straight line through two measurements. */
export function reckon(few: Point, many: Point): Reckoned {
  const each = (many.taken - few.taken) / (many.kits - few.kits);
  return { each, of: (kits) => few.taken + each * (kits - few.kits) };
}
