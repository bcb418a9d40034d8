import type { Kit } from "../../../core/kit/kit.ts";
import type { AuthorChange } from "../../../core/makeability/change.ts";
import { atHeight } from "../../../core/refit/height-offer.ts";
import type { Refit } from "../../../core/refit/refit.ts";
import type { Edit } from "../../../input/desk/edit.ts";
import type { FrontMatter } from "../../../input/kit/schema.ts";
import type { Selection } from "../../../input/picture/selection.ts";
import { restatedDepth } from "./depth-edit.ts";
import { lengthAt } from "./length-at.ts";
import { selectorsIn, sourcesOf } from "./picture-sources.ts";

/** A kit and what its front matter states. */
interface Stated {
  readonly kit: Kit;
  readonly stated: FrontMatter;
}

/** What a way out changes of the front matter; undefined where no key of it says such a thing. */
export function wayEdits(of: Stated, change: AuthorChange): readonly Edit[] | undefined {
  switch (change.kind) {
    case "height":
      return refitEdits(of, atHeight(of.kit, change.height));
    case "opening":
      return refitEdits(of, { openingDegrees: change.degrees });
    case "borders":
      return refitEdits(of, { borderLeaves: [change.before, change.after] });
    case "depths":
      return refitEdits(of, { depths: change.depths });
    case "merge-levels":
      return mergeEdits(of.stated, change.level, change.into);
    case "simplify":
      return undefined;
  }
}

/** What an offer's figures change of the front matter. */
export function refitEdits({ kit, stated }: Stated, refit: Refit): Edit[] {
  const lengths = [
    [["fit", "height"], refit.height],
    [["fit", "head"], refit.head],
    [["light", "diameter"], refit.lightDiameter],
    [["light", "height"], refit.lightHeight],
    [["book", "blockThickness"], refit.blockThickness],
  ] as const;
  const plain = [
    [["fit", "opening"], refit.openingDegrees],
    [["fit", "borderLeaves"], refit.borderLeaves],
    [["fit", "pictureLeaves"], refit.pictureLeaves],
    [["fit", "foldStyle"], refit.foldStyle],
    [["book", "leaves"], refit.leaves],
    [["book", "lastPage"], refit.lastPage],
  ] as const;
  return [
    ...lengths.flatMap(([at, mm]) => (mm === undefined ? [] : [lengthAt(at, mm)])),
    ...plain.flatMap(([at, value]) => (value === undefined ? [] : [{ at, value }])),
    ...(refit.depths ?? []).flatMap((mm, i) =>
      Math.abs(mm - kit.levels[i]!.depth) < 1e-6 ? [] : restatedDepth({ stated }, i, mm),
    ),
  ];
}

/** Two neighbouring levels (from 1) as one: what stood at the first is at the other, and the first is gone. */
function mergeEdits({ levels, picture }: FrontMatter, level: number, into: number): Edit[] {
  const [gone, kept] = [levels[level - 1]!, levels[into - 1]!];
  const moved = sourcesOf(picture).flatMap(({ at, level: own, levels: parts }): Edit[] => {
    if (own === gone.name) return [{ at: [...at, "level"], value: kept.name }];
    if (Array.isArray(parts))
      return [{ at: [...at, "levels"], value: parts.map((name) => (name === gone.name ? kept.name : name)) }];
    const selections = parts as Readonly<Record<string, Selection>> | undefined;
    const [from, to] = [selections?.[gone.name], selections?.[kept.name]];
    if (from === undefined) return [];
    return [
      { at: [...at, "levels", kept.name], value: [...selectorsIn(to), ...selectorsIn(from)] },
      { at: [...at, "levels", gone.name], value: undefined },
    ];
  });
  const ground: Edit[] = gone.background ? [{ at: ["levels", into - 1, "background"], value: true }] : [];
  return [...moved, ...ground, { at: ["levels", level - 1], value: undefined }];
}
