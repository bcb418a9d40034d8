/** A line of a text that changed, or of its surroundings. */
export interface ChangedLine {
  readonly kind: "gone" | "come" | "same";
  readonly text: string;
}

/** Lines that are shown around one that changed. */
const AROUND = 2;

/** Lines of both texts that are compared with each other at most: front matters have a hundredth of it. */
const MOST_COMPARED = 4_000_000;

/** Lines that differ between two texts, each with two of its neighbours; line ends do not count. */
export function lineDifference(was: string, is: string): ChangedLine[] {
  const lines = compared(linesOf(was), linesOf(is));
  const near = lines.map((_, i) =>
    lines.slice(Math.max(0, i - AROUND), i + AROUND + 1).some(({ kind }) => kind !== "same"),
  );
  return lines.filter((_, i) => near[i]);
}

function linesOf(text: string): string[] {
  return text.split(/\r?\n/);
}

/** All lines, by the longest sequence of lines that both texts have. */
function compared(was: readonly string[], is: readonly string[]): ChangedLine[] {
  let before = 0;
  while (before < Math.min(was.length, is.length) && was[before] === is[before]) before += 1;
  let behind = 0;
  while (behind < Math.min(was.length, is.length) - before && was.at(-1 - behind) === is.at(-1 - behind)) behind += 1;
  const old = was.slice(before, was.length - behind);
  const fresh = is.slice(before, is.length - behind);
  return [
    ...was.slice(0, before).map(same),
    ...(old.length * fresh.length > MOST_COMPARED ? [...old.map(gone), ...fresh.map(come)] : between(old, fresh)),
    ...was.slice(was.length - behind).map(same),
  ];
}

function between(old: readonly string[], fresh: readonly string[]): ChangedLine[] {
  // How many lines both have in common from each pair of places on.
  const common = Array.from({ length: old.length + 1 }, () => new Uint32Array(fresh.length + 1));
  for (let i = old.length - 1; i >= 0; i -= 1)
    for (let k = fresh.length - 1; k >= 0; k -= 1)
      common[i]![k] =
        old[i] === fresh[k] ? common[i + 1]![k + 1]! + 1 : Math.max(common[i + 1]![k]!, common[i]![k + 1]!);
  const lines: ChangedLine[] = [];
  let [i, k] = [0, 0];
  while (i < old.length || k < fresh.length) {
    if (i < old.length && k < fresh.length && old[i] === fresh[k]) {
      lines.push(same(old[i]!));
      i += 1;
      k += 1;
    } else if (i < old.length && (k === fresh.length || common[i + 1]![k]! >= common[i]![k + 1]!)) {
      lines.push(gone(old[i]!));
      i += 1;
    } else {
      lines.push(come(fresh[k]!));
      k += 1;
    }
  }
  return lines;
}

const same = (text: string): ChangedLine => ({ kind: "same", text });
const gone = (text: string): ChangedLine => ({ kind: "gone", text });
const come = (text: string): ChangedLine => ({ kind: "come", text });
