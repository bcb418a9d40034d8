/** A raster picture, decoded: upright, in sRGB, reduced to its working size. */
export interface Pixels {
  /** Working size. */
  readonly width: number;
  readonly height: number;
  /** Red, green, blue, alpha of each pixel, row by row from the top; colours are not multiplied by alpha. */
  readonly data: Uint8Array;
  /** The size as it was saved, turned upright. */
  readonly saved: { readonly width: number; readonly height: number };
  /** Pictures in the file: more than one where it is animated; the first was taken. */
  readonly frames: number;
}

/** Why a picture cannot be decoded. */
export type PixelFault =
  | { readonly kind: "pixels"; readonly count: number }
  /** What the program that decodes says, in English. */
  | { readonly kind: "undecoded"; readonly words: string };

export type Decoded = { readonly pixels: Pixels } | { readonly fault: PixelFault };
