/** How a stored picture is turned to stand upright: axes swapped first, then counted from the other end. */
interface Turn {
  readonly swap: boolean;
  readonly fromRight: boolean;
  readonly fromBottom: boolean;
}

/** The eight orientations of Exif 2.3 (tag 0x0112) by number less one. */
const TURNS: readonly Turn[] = [
  { swap: false, fromRight: false, fromBottom: false },
  { swap: false, fromRight: true, fromBottom: false },
  { swap: false, fromRight: true, fromBottom: true },
  { swap: false, fromRight: false, fromBottom: true },
  { swap: true, fromRight: false, fromBottom: false },
  { swap: true, fromRight: false, fromBottom: true },
  { swap: true, fromRight: true, fromBottom: true },
  { swap: true, fromRight: true, fromBottom: false },
];

/** Pixels of four bytes, row by row. */
export interface Stored {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array;
}

/** Whether an orientation exchanges width and height. */
export function swapsSides(orientation: number): boolean {
  return TURNS[orientation - 1]?.swap ?? false;
}

/** Turns a stored picture upright, as its orientation tag says; numbers but 1…8 leave it as it is. */
export function upright({ width, height, data }: Stored, orientation: number): Stored {
  const turn = TURNS[orientation - 1];
  if (!turn || orientation === 1) return { width, height, data };
  const from = new Uint32Array(data.buffer, data.byteOffset, width * height);
  const to = new Uint32Array(width * height);
  const [across, down] = turn.swap ? [height, width] : [width, height];
  for (let y = 0, at = 0; y < down; y += 1) {
    for (let x = 0; x < across; x += 1, at += 1) {
      const [column, row] = turn.swap ? [y, x] : [x, y];
      const u = turn.fromRight ? width - 1 - column : column;
      const v = turn.fromBottom ? height - 1 - row : row;
      to[at] = from[v * width + u]!;
    }
  }
  return { width: across, height: down, data: new Uint8Array(to.buffer) };
}
