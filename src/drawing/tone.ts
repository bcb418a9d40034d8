type Rgb = readonly [number, number, number];

/** Paper from the proudest level to the deepest, and the shade inside the book. */
const PROUD: Rgb = [253, 247, 232];
const DEEP: Rgb = [176, 142, 99];
const INSIDE: Rgb = [92, 66, 44];

/** Paper tone at a depth share (0 proudest, 1 deepest) and a brightness (1 full light). */
export function paperTone(share: number, brightness: number): string {
  return hex(shade(mix(PROUD, DEEP, share), brightness));
}

/** The face of a leaf seen behind its tip, toward the spine. */
export function insideTone(share: number, brightness: number): string {
  return hex(shade(mix(mix(PROUD, DEEP, share), INSIDE, 0.55), brightness));
}

function mix(a: Rgb, b: Rgb, share: number): Rgb {
  const at = (i: 0 | 1 | 2): number => a[i] + (b[i] - a[i]) * share;
  return [at(0), at(1), at(2)];
}

function shade(colour: Rgb, brightness: number): Rgb {
  return [colour[0] * brightness, colour[1] * brightness, colour[2] * brightness];
}

function hex(colour: Rgb): string {
  return `#${colour
    .map((part) =>
      Math.round(Math.min(255, Math.max(0, part)))
        .toString(16)
        .padStart(2, "0"),
    )
    .join("")}`;
}
