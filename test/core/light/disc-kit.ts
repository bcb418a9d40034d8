/** What a test changes of the disc kit: each part of the front matter is merged with the kit's own. */
export interface Changes {
  readonly book?: object;
  readonly fit?: object;
  readonly light?: object | false;
  readonly insert?: object | false;
  /** Shapes instead of the discs, with ids rim and well, painted in order. */
  readonly shapes?: string;
  readonly viewBox?: string;
  /** Further front matter. */
  readonly more?: object;
}

export const BOOK = {
  leafHeight: 216,
  leafWidth: 140,
  blockThickness: 24,
  leaves: 204,
  pageOneLeaf: 5,
  lastPage: 399,
  direction: "ltr",
} as const;

export const LEVELS = [
  { name: "rim", depth: 15 },
  { name: "wall", depth: 25, background: true },
  { name: "well", depth: 45 },
] as const;

/** Displayed 130 mm high and, in true shape, 130 mm wide: 0.65 mm to a unit of the picture. */
export const DISCS = { head: 40, height: 130, units: 200, rim: 95, well: 70, cx: 100, cy: 100 } as const;

/** A well inside a rim, both discs about the middle of a square picture, for a light and a window. */
export function discKit(changes: Changes = {}): { readonly frontMatter: object; readonly svg: string } {
  const { cx, cy, rim, well } = DISCS;
  const shapes =
    changes.shapes ??
    `<circle id="rim" cx="${cx}" cy="${cy}" r="${rim}"/><circle id="well" cx="${cx}" cy="${cy}" r="${well}"/>`;
  const light = { in: "well", diameter: 38, height: 45, clearance: 1, setback: 4, ...changes.light };
  return {
    svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${changes.viewBox ?? "0 0 200 200"}">${shapes}</svg>`,
    frontMatter: {
      title: "Discs",
      summary: "A well in a rim.",
      picture: { file: "picture.svg", levels: { rim: ["#rim"], well: ["#well"] }, crop: "canvas" },
      levels: LEVELS,
      book: { ...BOOK, ...changes.book },
      fit: {
        borderLeaves: [12, 12],
        head: DISCS.head,
        height: DISCS.height,
        opening: "solve",
        markStep: 0.5,
        ...changes.fit,
      },
      ...(changes.light === false ? {} : { light }),
      ...(changes.insert ? { insert: { outline: "rim", ...changes.insert } } : {}),
      ...changes.more,
    },
  };
}
