/** What is wanted at a key: a length in mm, anything else as YAML has it; undefined takes the key out. */
export type Wanted = Length | readonly [Length, Length] | Plain | undefined;

export interface Length {
  readonly mm: number;
}

export type Plain = number | string | boolean | readonly Plain[] | { readonly [key: string]: Plain };

/** One key of the front matter and what is wanted there. */
export interface Wish {
  readonly at: readonly (string | number)[];
  readonly value: Wanted;
}

/** A length at a key. */
export function lengthAt(at: Wish["at"], mm: number): Wish {
  return { at, value: { mm } };
}
