/** A stretch of height and how far out it is covered, mm from the head and from the middle. */
interface Covered {
  readonly from: number;
  readonly to: number;
  readonly out: number;
}

/** How far out the leaves that are drawn already cover one half of an opened book, height by height. */
export class Skyline {
  #covered: readonly Covered[];

  constructor(height: number) {
    this.#covered = [{ from: 0, to: height, out: Number.NEGATIVE_INFINITY }];
  }

  /** The pieces of a stretch between its two sides, the one nearer to the middle first, that nothing covers. */
  free(from: number, to: number, [inner, outer]: readonly [number, number]): Covered[] {
    return joined(
      this.#covered
        .filter((piece) => piece.from < to && piece.to > from && piece.out < outer)
        .map((piece) => ({
          from: Math.max(piece.from, from),
          to: Math.min(piece.to, to),
          out: Math.max(piece.out, inner),
        })),
    );
  }

  /** Covers a stretch as far as a side. */
  cover(from: number, to: number, out: number): void {
    this.#covered = joined(
      this.#covered.flatMap((piece) => {
        if (piece.to <= from || piece.from >= to || piece.out >= out) return [piece];
        const raised = { from: Math.max(piece.from, from), to: Math.min(piece.to, to), out };
        return [{ ...piece, to: raised.from }, raised, { ...piece, from: raised.to }].filter(
          (part) => part.to > part.from,
        );
      }),
    );
  }
}

/** Neighbours that reach equally far as one. */
function joined(pieces: readonly Covered[]): Covered[] {
  const all: Covered[] = [];
  for (const piece of pieces) {
    const last = all.at(-1);
    if (last && last.to === piece.from && last.out === piece.out) all[all.length - 1] = { ...last, to: piece.to };
    else all.push(piece);
  }
  return all;
}
