import type { Shown, Turn } from "./leaf-fold.ts";

/** One stretch of the picture as it goes on from leaf to leaf. */
interface Strand {
  /** The leaf (from 0) that meets it first. */
  readonly first: number;
  /** What each leaf from there on meets of it. */
  readonly met: Shown[];
  /** Leaves since it was shown last, or since it began. */
  waited: number;
  isSeen: boolean;
  /** Turns that its weight gave it and it did not have yet. */
  credit: number;
}

/** What turns there are in a kit. */
export interface TurnFacts {
  /** Leaves that meet the picture more than once. */
  readonly leaves: number;
  /** The most stretches that a leaf meets. */
  readonly most: number;
  /** Every stretch is shown at least by each so-many-th leaf. */
  readonly every: number;
  /** Parts of the picture that no leaf shows, as they go over fewer leaves than wait for their turn. */
  readonly unseen: number;
}

/** Which leaf shows what. */
export interface Turns {
  /** Of each leaf which of its stretches it shows; null where it meets the picture once or not at all. */
  readonly byLeaf: readonly (Turn | null)[];
  readonly facts: TurnFacts;
}

/** Every stretch is shown by each third leaf at least, where no more than three ask for a turn. */
const EVERY = 3;

/** A millimetre by which an edge moves to the next leaf weighs as much as so many of its stretch's length; an estimate. */
const SPEED = 2;

/**
 * Lets neighbouring leaves take turns where they meet several stretches. A stretch gets turns by its weight: its length, and
 * more where its edges move fast from leaf to leaf, as fewer leaves would draw them coarsely. None waits longer than for two
 * leaves; of four or more, none waits longer than until each of the others had its turn. A turn is only given where all others
 * still get theirs in time: of those that wait, k of them must not all be due within fewer than k leaves.
 */
export function takeTurns(leaves: readonly (readonly Shown[])[]): Turns {
  const { strands, of } = followStrands(leaves);
  let every = 1;
  const byLeaf = of.map((here, leaf): Turn | null => {
    if (here.length === 0) return null;
    const chosen = here.length === 1 ? here[0]! : choose(here, leaf);
    for (const strand of here) {
      strand.waited = strand === chosen ? 0 : strand.waited + 1;
      every = Math.max(every, strand.waited + 1);
    }
    chosen.isSeen = true;
    return here.length === 1 ? null : { which: here.indexOf(chosen) + 1, of: here.length };
  });
  return {
    byLeaf,
    facts: {
      leaves: byLeaf.filter((turn) => turn !== null).length,
      most: Math.max(0, ...leaves.map(({ length }) => length)),
      every,
      unseen: strands.filter(({ isSeen }) => !isSeen).length,
    },
  };
}

/**
 * Within how many leaves each strand must be shown, this one counted: one that ends before that need not be, but one that was
 * never shown should be before it ends, where the others have time for it.
 */
function choose(here: readonly Strand[], leaf: number): Strand {
  const weights = here.map((strand) => weightAt(strand, leaf));
  const sum = weights.reduce((all, weight) => all + weight, 0);
  here.forEach((strand, i) => {
    strand.credit += weights[i]! / sum;
  });
  const certain = here.map((strand) => {
    const due = Math.max(EVERY, here.length) - strand.waited;
    return leftOf(strand, leaf) < due ? Number.POSITIVE_INFINITY : due;
  });
  const due = certain.map((within, i) => (here[i]!.isSeen ? within : Math.min(within, leftOf(here[i]!, leaf))));
  const allowed = [due, certain].map(mayBeShown).find(({ length }) => length > 0) ?? [due.indexOf(Math.min(...due))];
  const chosen = allowed.map((i) => here[i]!).reduce((best, one) => (one.credit > best.credit ? one : best));
  chosen.credit -= 1;
  return chosen;
}

/**
 * Which of some strands may be shown now, so that all others still are in time, each on a leaf of its own. In the order in
 * which they are due, those before the shown one move up by one leaf less: so it stands at or before the first that is due no
 * later than its own place, and at or after the last that is overdue.
 */
function mayBeShown(due: readonly number[]): readonly number[] {
  const order = due.map((_, i) => i).sort((a, b) => due[a]! - due[b]!);
  const pressing = order.findIndex((strand, place) => due[strand]! <= place + 1);
  const overdue = order.findLastIndex((strand, place) => due[strand]! < place + 1);
  return order.slice(Math.max(0, overdue), pressing < 0 ? order.length : pressing + 1);
}

/** Leaves that still meet a strand, this one counted. */
function leftOf({ first, met }: Strand, leaf: number): number {
  return first + met.length - leaf;
}

function weightAt({ first, met }: Strand, leaf: number): number {
  const at = leaf - first;
  const here = met[at]!;
  const beside = met[at + 1] ?? met[at - 1] ?? here;
  return here.to - here.from + SPEED * (Math.abs(beside.from - here.from) + Math.abs(beside.to - here.to));
}

/** Follows each stretch from leaf to leaf: it goes on where it overlaps one of the next leaf most. */
function followStrands(leaves: readonly (readonly Shown[])[]): {
  readonly strands: readonly Strand[];
  /** The strands that each leaf meets, from the head. */
  readonly of: readonly (readonly Strand[])[];
} {
  const strands: Strand[] = [];
  let before: readonly Strand[] = [];
  const of = leaves.map((stretches, leaf) => {
    const goesOn = matched(before, stretches);
    before = stretches.map((stretch, i): Strand => {
      const known = goesOn.get(i);
      if (known) known.met.push(stretch);
      const strand = known ?? { first: leaf, met: [stretch], waited: 0, isSeen: false, credit: 0 };
      if (!known) strands.push(strand);
      return strand;
    });
    return before;
  });
  return { strands, of };
}

/** Which strand goes on in which stretch, the greatest overlaps first. A thin one that runs aslant may miss its next by its own length. */
function matched(before: readonly Strand[], stretches: readonly Shown[]): Map<number, Strand> {
  const pairs: { readonly strand: Strand; readonly i: number; readonly overlap: number }[] = [];
  let first = 0;
  for (const strand of before) {
    const last = strand.met.at(-1)!;
    const own = last.to - last.from;
    while (first < stretches.length && stretches[first]!.to <= last.from - own) first += 1;
    for (let i = first; i < stretches.length && stretches[i]!.from < last.to + own; i += 1) {
      const { from, to } = stretches[i]!;
      const overlap = Math.min(last.to, to) - Math.max(last.from, from);
      if (overlap > -Math.min(own, to - from)) pairs.push({ strand, i, overlap });
    }
  }
  const goesOn = new Map<number, Strand>();
  const taken = new Set<Strand>();
  for (const { strand, i } of pairs.sort((a, b) => b.overlap - a.overlap)) {
    if (taken.has(strand) || goesOn.has(i)) continue;
    goesOn.set(i, strand);
    taken.add(strand);
  }
  return goesOn;
}
