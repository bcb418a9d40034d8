/** What becomes of a raster picture: what parts its levels, and how fine it is traced. */
export interface RasterPlan {
  readonly trace: "silhouette" | "tones" | "depth" | "colours";
  /** Which side of a limit is nearer; left out: dark, and light of a depth picture. */
  readonly near?: "dark" | "light" | undefined;
  /** Lightness 0…255, ascending; a limit belongs to the darker side. Left out: by Otsu's method. */
  readonly limits?: readonly number[] | undefined;
  /** Of `colours`: as CSS writes them, and the level of each. */
  readonly colours?: readonly StatedColour[] | undefined;
  /** Numbers of the levels that tones go over, from front to back; a silhouette lies at the first. */
  readonly levels: readonly number[];
  /** The level that shows where nothing is drawn. */
  readonly background: number;
  /** How far an outline may stray, mm on the book. */
  readonly tolerance: number;
  /** What is smaller than a disc of this diameter is left out, mm on the book. */
  readonly least: number;
  /** Millimetres on the book of a pixel of the picture as it was saved, turned upright. */
  readonly mmPerUnit: (saved: { readonly width: number; readonly height: number }) => number;
}

export interface StatedColour {
  readonly colour: string;
  readonly level: number;
  /** Steps to it in the front matter. */
  readonly at: readonly (string | number)[];
}

/** What holds where the front matter is silent, mm on the book. */
export const RASTER_USUAL = { tolerance: 0.2, least: 2 } as const;
