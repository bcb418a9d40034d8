/** What a trial is given. */
export interface Bench {
  /** From 0 to 1, the same for the same seed. */
  readonly random: () => number;
  /** Whether there is time for more. */
  readonly goesOn: () => boolean;
  /** Says how far it is, or what it leaves out and why. */
  readonly say: (line: string) => void;
}

/** A trial; it throws where the program did not stand it. */
export interface Trial {
  readonly name: string;
  readonly run: (bench: Bench) => Promise<void>;
}

/** @throws Error with the words where it is not so */
export function hold(is: boolean, words: string): void {
  if (!is) throw new Error(words);
}
