/** A kit's front matter with every length a number in millimetres; what the oracle reads of it. */
export interface KitInput {
  title?: string;
  summary?: string;
  picture: { file?: string; levels: Record<string, string[]>; crop?: string };
  levels: { name: string; depth?: number; line?: number; background?: boolean }[];
  gauge?: { lines: number[] };
  book: BookInput;
  fit: FitInput;
}

export interface BookInput {
  leafHeight: number;
  leafWidth: number;
  blockThickness: number;
  leaves: number;
  /** The leaf, counted from 1, whose recto is printed page 1. */
  pageOneLeaf: number;
  lastPage: number;
  plates?: { afterPage: number; leaves: number }[];
  direction?: "ltr" | "rtl";
}

export interface FitInput {
  borderLeaves: [number, number];
  pictureLeaves: number | "fill" | "solve";
  head: number;
  height: number | "solve";
  /** Degrees. */
  opening: number | "solve";
  view?: "front" | "along";
  spine?: "flat" | "rounded";
  markStep?: number;
  leastTab?: number;
  foldStyle?: "single" | "stepped";
}

/** A stretch of one leaf at one level (1 = proudest), measured from the head. */
export interface Run {
  from: number;
  to: number;
  level: number;
}
