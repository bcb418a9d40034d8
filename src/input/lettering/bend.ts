import { type Affine, compose, translation } from "../../core/geometry/affine.ts";
import type { Cluster, SetLine } from "./set-line.ts";

/** How lines stand to each other. */
export interface Arrangement {
  readonly align: "left" | "centre" | "right";
  /** From line to line, as a share of the letters' height. */
  readonly lineHeight: number;
  /** Degrees over which the longest line is bent: its middle rises above 0 and sags below. */
  readonly arc: number;
}

/** Maps a cluster of a line from its own start on the baseline, y down, to where it stands. */
export type Seat = (line: number, cluster: Cluster) => Affine;

/** Where the letters of lines stand. Undefined where lines lie further from the longest than the middle of its arc. */
export function seatsOf(lines: readonly SetLine[], { align, lineHeight, arc }: Arrangement): Seat | undefined {
  const longest = Math.max(...lines.map(({ advance }) => advance));
  const share = { left: 0, centre: 0.5, right: 1 }[align];
  const startOf = (line: number): number => share * (longest - lines[line]!.advance);
  if (arc === 0 || longest === 0) return (line, { x }) => translation(startOf(line) + x, line * lineHeight);
  const bent = (arc * Math.PI) / 180;
  const first = lines.findIndex(({ advance }) => advance === longest);
  // The middle of all circles lies below a line that rises, and above one that sags.
  const sense = Math.sign(bent);
  const radiusOf = (line: number): number => longest / Math.abs(bent) + sense * (first - line) * lineHeight;
  const least = lines.length > 1 ? lineHeight / 2 : 0;
  if (lines.some((_, line) => radiusOf(line) <= least)) return undefined;
  return (line, { x, advance }) => {
    const radius = radiusOf(line);
    const begins =
      (share - 0.5) * (Math.abs(bent) - lines[line]!.advance / radius) - lines[line]!.advance / (2 * radius);
    const angle = sense * (begins + (x + advance / 2) / radius);
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    const seat = translation(radius * sense * sin, -radius * sense * cos);
    return compose(seat, compose([cos, sin, -sin, cos, 0, 0], translation(-advance / 2, 0)));
  };
}
