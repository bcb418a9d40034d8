import { fileName } from "../../core/file-name.ts";
import type { Kit } from "../../core/kit/kit.ts";
import { layOut } from "../../core/packing/lay-out.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import { sizeOfPart } from "../../core/window/part.ts";
import { type Dual, dual, dualDepth, dualLength, styleFor } from "../../words/dual.ts";
import type { Figure } from "../drawing/figure.ts";
import { partFigure, windowLayers } from "../drawing/parts-figure.ts";
import { pocketElevation, pocketPlan } from "../drawing/pocket-figure.ts";
import { leafAndPage, type NotchText, notchText } from "./row.ts";

/** The light's pocket as the page and the packet show it. */
export interface PocketView {
  readonly plan: Figure;
  readonly elevation: Figure;
  readonly floor: Dual;
  readonly notches: readonly { readonly leaf: string; readonly notch: Dual<NotchText>; readonly remaining: Dual }[];
  readonly leastRemaining: Dual;
  readonly largest: { readonly diameter: Dual; readonly height: Dual; readonly share: number; readonly given: Dual };
}

/** The window as the page and the packet show it. */
export interface WindowView {
  readonly layers: Figure;
  readonly parts: readonly {
    readonly name: string;
    readonly file: string;
    readonly count: number;
    readonly material: string;
    readonly use: string;
    readonly size: Dual;
    readonly figure: Figure;
  }[];
  readonly sheets: readonly { readonly name: string; readonly files: readonly string[]; readonly note: string }[];
  readonly panel: string;
}

export function pocketView(kit: Kit, pattern: Pattern): PocketView | undefined {
  const { pocket } = pattern;
  if (!pocket) return undefined;
  const leafOf = new Map(pattern.leaves.map((leaf) => [leaf.leaf, leaf]));
  const name = (leaf: number): string => {
    const found = leafOf.get(leaf);
    return found ? leafAndPage(found) : `leaf ${leaf} (not folded)`;
  };
  return {
    plan: pocketPlan(pattern, pocket, kit.units),
    elevation: pocketElevation(pattern, pocket, kit.units),
    floor: dualLength(pocket.floor, kit.fit.markStep),
    notches: pocket.notches.map((notch) => ({
      leaf: name(notch.leaf),
      notch: dual((units) => notchText(notch, styleFor(units, kit.fit.markStep))!),
      remaining: dualDepth(notch.remaining),
    })),
    leastRemaining: dualDepth(Math.min(pattern.book.leafWidth, ...pocket.notches.map((notch) => notch.remaining))),
    largest: {
      diameter: dualDepth(pocket.largest.diameter),
      height: dualDepth(pocket.largest.height),
      given: dualDepth(pocket.light.diameter),
      share: Math.round((100 * pocket.light.diameter) / pocket.largest.diameter),
    },
  };
}

export function windowView(kit: Kit, pattern: Pattern): WindowView | undefined {
  const { insert } = pattern;
  if (!insert) return undefined;
  return {
    layers: windowLayers(insert.parts),
    parts: insert.parts.map((part) => {
      const size = sizeOfPart(part);
      return {
        name: part.name,
        file: fileName(part.name),
        count: part.count,
        material: part.material,
        use: part.use,
        size: dual((units) => `${dualDepth(size.width)[units]} × ${dualDepth(size.height)[units]}`),
        figure: partFigure(part),
      };
    }),
    sheets: kit.sheets.map((sheet) => {
      const layout = layOut(insert.parts, sheet);
      return {
        name: sheet.name,
        files: layout.sheets.map((laid) => `sheet-${fileName(sheet.name)}-${laid.material}-${laid.number}`),
        note: layout.tooLarge.length > 0 ? `too small for ${layout.tooLarge.join(", ")}` : "",
      };
    }),
    panel:
      insert.wish.panel === "wrap"
        ? "unrolled along the front, for card that bends round it"
        : "as seen from the front, for a stiff panel",
  };
}
