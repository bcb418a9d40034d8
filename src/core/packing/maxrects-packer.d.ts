/** The package's `main` is no module for Node, so its `.mjs` is imported by path; these are the parts that are used. */
declare module "maxrects-packer/dist/maxrects-packer.mjs" {
  export interface PackedRectangle<T> {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
    readonly rot: boolean;
    readonly data: T;
  }
  export class MaxRectsPacker<T> {
    constructor(
      width: number,
      height: number,
      padding: number,
      options: { smart: boolean; pot: boolean; square: boolean; allowRotation: boolean },
    );
    readonly bins: readonly { readonly rects: readonly PackedRectangle<T>[] }[];
    add(width: number, height: number, data: T): unknown;
  }
}
