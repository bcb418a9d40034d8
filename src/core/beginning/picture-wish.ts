/** A rectangle from the canvas's corner, in units of the canvas. */
export interface CropBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** What picks some of a drawing's shapes, or some of a photograph's colours, and the level that they are to be. */
export interface Marked {
  /** What people call it. */
  readonly name: string;
  readonly selector: string | { readonly fill: string } | { readonly stroke: string };
  /** From 1 at the front; 0 is the ground. */
  readonly level: number;
}

/** What is wished of a picture that was brought; what is left out is as the reader of pictures has it. */
export interface PictureWish {
  readonly crop?: "canvas" | "drawing" | CropBox | undefined;
  /** Of a drawing, and of a photograph parted by colours. */
  readonly marks?: readonly Marked[] | undefined;
  readonly parting?: Parting | undefined;
}

/** How a photograph becomes levels. */
export interface Parting {
  readonly trace: "silhouette" | "tones" | "depth" | "colours";
  readonly near?: "dark" | "light" | undefined;
  /** Lightness 0…255, ascending. */
  readonly limits?: readonly number[] | undefined;
  /** mm on the book. */
  readonly tolerance?: number | undefined;
  /** mm on the book. */
  readonly least?: number | undefined;
  /** Of tones and depth: how many, with the ground. */
  readonly levels?: number | undefined;
}

/** Levels that a picture may be parted into, with the ground. */
export const MOST_PARTED = 6;
