import type { FrontMatter } from "../../../input/kit/schema.ts";
import { type Selection, type Selector, selectorsOf } from "../../../input/picture/selection.ts";

type Picture = FrontMatter["picture"];

/** What states levels of a picture, and where: the picture itself, or one of its layers. */
export type PictureSource = Pick<Picture, "file" | "level" | "levels"> & { readonly at: readonly (string | number)[] };

/** The picture itself, then its layers. */
export function sourcesOf(picture: Picture): readonly PictureSource[] {
  return [
    { ...picture, at: ["picture"] },
    ...(picture.layers ?? []).map((layer, i) => ({ ...layer, at: ["picture", "layers", i] })),
  ];
}

/** What picks the shapes of a level; nothing where nothing is stated. */
export function selectorsIn(selection: Selection | undefined): readonly Selector[] {
  return selection === undefined ? [] : selectorsOf(selection).map(({ selector }) => selector);
}
