import type { Kit } from "../../../src/core/kit/kit.ts";
import { tip } from "../../oracle/fan.ts";
import { patternOf } from "../pattern/computed.ts";

/** What a measured first batch says. Angles radians, widths mm. */
export interface ByHand {
  readonly kappa: number;
  readonly rest: number;
  readonly wanted: number;
  /** Folded edges of the outer picture leaves at the head, at the wanted opening and where the book rests. */
  readonly hold: number;
  readonly resting: number;
}

/**
 * The calibration worked out apart from the program. Source of the formulas: the project's own model of the fan. The batch
 * is m·t·(1 + κ) thick; at radius r and height u the stack S is t for each body that reaches r and κ·t for each flap over
 * W − 2d … W − d; the book rests at max (S − T)/r. Sampled at every half millimetre of height, at the flaps' inner ends.
 */
export function calibrateByHand(kit: Kit, leaves: number, thickness: number): ByHand {
  const { book } = kit;
  const pattern = patternOf({ ...kit, insert: undefined });
  const t = book.blockThickness / book.leaves;
  const kappa = thickness / (leaves * t) - 1;
  const depths = kit.levels.map((level) => level.depth);
  let rest = 0;
  for (let u = 0.25; u < book.leafHeight; u += 0.5) {
    const folded = pattern.leaves.map(
      (leaf) => depths[leaf.spans.find((span) => u >= span.from && u < span.to)!.level - 1]!,
    );
    for (const r of depths.map((depth) => book.leafWidth - 2 * depth)) {
      const bodies = book.leaves - folded.length + folded.filter((depth) => r <= book.leafWidth - depth).length;
      const flaps = folded.filter((d) => r >= book.leafWidth - 2 * d - 1e-9 && r <= book.leafWidth - d).length;
      rest = Math.max(rest, (t * (bodies + kappa * flaps) - book.blockThickness) / r);
    }
  }
  const { firstLeaf, lastLeaf, opening: wanted, spine } = pattern.fit;
  const widthAt = (opening: number): number => {
    const [a, b] = [firstLeaf, lastLeaf].map((leaf) => {
      const { spans } = pattern.leaves.find((one) => one.leaf === leaf)!;
      return tip({ ...book, opening, spine }, leaf, depths[spans[0]!.level - 1]!);
    });
    return Math.hypot(a!.x - b!.x, a!.z - b!.z);
  };
  return { kappa, rest, wanted, hold: widthAt(wanted), resting: widthAt(Math.max(rest, wanted)) };
}
