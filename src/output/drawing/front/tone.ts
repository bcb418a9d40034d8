type Rgb = readonly [number, number, number];

/** How the book is lit: by the room, or from inside in a dark room. */
export type Mood = "day" | "lit";

/** Paper from the proudest level to the deepest, and the shade inside the book. */
const PROUD: Rgb = [253, 247, 232];
const DEEP: Rgb = [176, 142, 99];
const INSIDE: Rgb = [92, 66, 44];

/** What a dark room leaves of each colour. */
const NIGHT: Rgb = [0.4, 0.4, 0.5];

/** Paper tone at a depth share (0 proudest, 1 deepest) and a brightness (1 full light). */
export function paperTone(share: number, brightness: number, mood: Mood = "day"): string {
  return hex(seen(mix(PROUD, DEEP, share), brightness, mood));
}

/** The face of a leaf seen behind its tip, toward the spine. */
export function insideTone(share: number, brightness: number, mood: Mood = "day"): string {
  return hex(seen(mix(mix(PROUD, DEEP, share), INSIDE, 0.5), brightness, mood));
}

/** How bright the paper of a leaf is, from 0, that stands at an angle: paper is not even from leaf to leaf. What comes in a regular turn would beat with a screen's pixels, so this does not. */
export function leafLight(j: number, angle: number): number {
  const grain = 1 - 0.03 * (((j * j * 37 + j * 101) % 127) / 126);
  return (0.94 + 0.07 * Math.cos(angle + 0.5)) * grain;
}

/** Paper tones of a kit's levels, the proudest lightest; levels count from 1. */
export function levelTones(levels: readonly { readonly depth: number }[]): (level: number) => string {
  const [front, deepest] = [levels[0]!.depth, levels.at(-1)!.depth];
  const tones = levels.map(({ depth }) => paperTone((depth - front) / Math.max(1e-9, deepest - front), 1));
  return (level) => tones[level - 1]!;
}

/** Any colour as the mood shows it, at a brightness (1 full light). */
export function inMood(colour: Rgb, mood: Mood, brightness = 1): string {
  return hex(seen(colour, brightness, mood));
}

/** The parts of a colour `#rrggbb`. */
export function rgbOf(colour: string): Rgb {
  const part = (from: number): number => Number.parseInt(colour.slice(from, from + 2), 16);
  return [part(1), part(3), part(5)];
}

function mix(a: Rgb, b: Rgb, share: number): Rgb {
  const at = (i: 0 | 1 | 2): number => a[i] + (b[i] - a[i]) * share;
  return [at(0), at(1), at(2)];
}

function seen(colour: Rgb, brightness: number, mood: Mood): Rgb {
  const by = (i: 0 | 1 | 2): number => brightness * (mood === "lit" ? NIGHT[i] : 1);
  return [colour[0] * by(0), colour[1] * by(1), colour[2] * by(2)];
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
