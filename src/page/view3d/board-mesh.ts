import { type Fan, leafAngle, leafRoot, type Place } from "../../core/fan/fan.ts";
import type { RoundData } from "../../output/data/round-data.ts";
import { placeIn } from "./pose.ts";

/** The boards and the spine that joins them, as triangles in the fan: x right, y up from the leaves' middle height, z to the viewer. */
export function boardMesh(data: RoundData, fan: Fan): Float32Array {
  const { leaves, square, leafHeight } = data.book;
  const half = leafHeight / 2 + square;
  const sections = [board(data, fan, -0.5, -1), board(data, fan, leaves - 0.5, 1), spine(data, fan)];
  return Float32Array.from(sections.flatMap((section) => prism(section, half)));
}

/**
 * The dark inside of the book, a solid behind all cuts, flaps and folded corners: where leaves are seen on edge it closes the hairs between them.
 */
export function coreMesh(data: RoundData, fan: Fan): Float32Array {
  const { leaves, leafWidth, leafHeight } = data.book;
  const deepest = Math.max(...data.levels.map((level) => 2 * level.depth));
  const notched = Math.max(0, ...(data.light?.notches ?? []).map((notch) => notch.depth));
  const folded = Math.max(0, ...data.leaves.flatMap(({ corners }) => corners?.slice(2) ?? []));
  const radius = Math.max(1, leafWidth - Math.max(deepest, notched, folded) - 1);
  const along = Array.from({ length: PIECES + 1 }, (_, i) => (leaves - 1) * (i / PIECES));
  const section = [
    ...along.map((leaf) => placeIn(fan, leaf, radius)),
    ...along.toReversed().map((leaf) => placeIn(fan, leaf, 0)),
  ];
  return Float32Array.from(prism(section, leafHeight / 2 - 0.5));
}

/** Pieces of a curve across the spine. */
const PIECES = 16;

/** A board's section: it stands like a leaf half a place beyond the outermost one, its thickness outward. */
function board(data: RoundData, fan: Fan, leaf: number, outward: 1 | -1): Place[] {
  const { leafWidth, square, boardThickness } = data.book;
  const aside = (fan.direction === "ltr" ? 1 : -1) * outward * boardThickness;
  const tip = leafWidth + square;
  return [
    placeIn(fan, leaf, -boardThickness / 2),
    placeIn(fan, leaf, tip),
    placeIn(fan, leaf, tip, aside),
    placeIn(fan, leaf, -boardThickness / 2, aside),
  ];
}

/** The spine's section as a chain of pairs: inner edge out, outer edge back. */
function spine(data: RoundData, fan: Fan): Place[] {
  const { leaves, boardThickness } = data.book;
  const inner: Place[] = [];
  const outer: Place[] = [];
  for (let i = 0; i <= PIECES; i += 1) {
    const leaf = -0.5 + (leaves * i) / PIECES;
    const root = leafRoot(fan, leaf);
    const widen = 1 + (2 * boardThickness * (fan.spine === "flat" ? 1 : 0)) / fan.blockThickness;
    const angle = fan.spine === "flat" ? 0 : leafAngle(fan, leaf);
    inner.push({ x: root.x * widen, z: root.z });
    outer.push({
      x: root.x * widen - boardThickness * Math.sin(angle),
      z: root.z - boardThickness * Math.cos(angle),
    });
  }
  return [...inner, ...outer.reverse()];
}

/** An upright solid over a section whose second half runs back along its first. */
function prism(section: readonly Place[], half: number): number[] {
  const ends = [half, -half].flatMap((y) =>
    section.slice(0, section.length / 2 - 1).flatMap((a, i) => {
      const [b, c, d] = [section[i + 1]!, section.at(-1 - i)!, section.at(-2 - i)!];
      return [a, b, c, c, b, d].flatMap((place) => [place.x, y, place.z]);
    }),
  );
  const walls = section.flatMap((a, i) => {
    const b = section[(i + 1) % section.length]!;
    return [
      [a, half],
      [a, -half],
      [b, half],
      [b, half],
      [a, -half],
      [b, -half],
    ].flatMap(([place, y]) => [(place as Place).x, y as number, (place as Place).z]);
  });
  return [...ends, ...walls];
}
