import type { LeafNumber } from "../book/leaf-number.ts";
import type { UnitSystem } from "../units/length.ts";
import type { PictureWish } from "./picture-wish.ts";

/** Where the picture of a new kit comes from. */
export type PictureAnswer =
  | { readonly from: "file"; readonly path: string }
  /** A file that was brought: its own name, its bytes, and what is wished of it. */
  | { readonly from: "bytes"; readonly name: string; readonly bytes: Uint8Array; readonly wish: PictureWish }
  | {
      readonly from: "word";
      readonly text: string;
      /** A font of the project by name, or where a font file lies. */
      readonly font?: string | undefined;
      /** A font that the project or the site's settings name. */
      readonly family?: string | undefined;
    }
  | { readonly from: "outline"; readonly name: OutlineName }
  | { readonly from: "icon"; readonly name: string };

/** Outlines that make a picture by themselves. */
export const OUTLINES = ["heart", "star", "moon", "ring", "oval", "arch"] as const;

export type OutlineName = (typeof OUTLINES)[number];

/** The numbers of an outline where it has none by itself, as front matter states them. */
export function outlineNumbers(name: OutlineName): Readonly<Record<string, string>> {
  return name === "ring" ? { width: "22%" } : {};
}

/** A closed book, lengths in mm. */
export interface BookAnswer {
  readonly leafHeight: number;
  readonly leafWidth: number;
  readonly blockThickness: number;
  readonly leaves: number;
  readonly pageOneLeaf?: LeafNumber | undefined;
  readonly lastPage?: number | undefined;
}

/** A battery light, mm. */
export interface LightAnswer {
  readonly diameter: number;
  readonly height: number;
}

/** Where the picture stands: before its ground, or as a hollow in it that a light shines from. */
export type Relief = "raised" | "hollow";

/** What a new kit is begun from. */
export interface Answers {
  /** The name of its folder. */
  readonly slug: string;
  readonly title: string;
  readonly picture: PictureAnswer;
  readonly book: BookAnswer;
  readonly light: LightAnswer | undefined;
  /** Left out, it follows from the light. Pictures of several levels stand before their ground. */
  readonly relief?: Relief | undefined;
  readonly units: UnitSystem;
  readonly draft: boolean;
}

/** A paperback of the usual size, for those who have not measured theirs yet; common practice, no source. */
export const USUAL_BOOK: BookAnswer = { leafHeight: 198, leafWidth: 126, blockThickness: 21, leaves: 180 };
