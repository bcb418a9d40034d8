import type { LeafNumber } from "../../core/book/leaf-number.ts";
import type { Kit } from "../../core/kit/kit.ts";
import { layOut } from "../../core/packing/lay-out.ts";
import { sheetNames } from "../../core/packing/sheet-sizes.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import type { PanelKind } from "../../core/window/panel.ts";
import { type Part, sizeOfPart } from "../../core/window/part.ts";
import { type BookWindow, partsOf } from "../../core/window/window.ts";
import { leafAndPage } from "../../words/leaves.ts";
import { formatLength, formatSize, styleFor } from "../../words/lengths.ts";
import { rowText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import { materialName, partName, partUse } from "../../words/parts.ts";
import { pocketElevation } from "../drawing/diagrams/pocket-elevation.ts";
import { pocketPlan } from "../drawing/diagrams/pocket-plan.ts";
import { windowLayers } from "../drawing/diagrams/window-layers.ts";
import type { Figure } from "../drawing/figure.ts";
import { litWindow } from "../drawing/front/lit-window.ts";
import { partFigure } from "../drawing/parts-figure.ts";
import { notchText } from "./row.ts";

/** The light's pocket as the page and the packet show it. */
export interface PocketView {
  readonly plan: Figure;
  readonly elevation: Figure;
  readonly floor: string;
  readonly notches: readonly { readonly leaf: string; readonly notch: string }[];
  readonly leastRemaining: string;
  readonly largest: {
    readonly diameter: string;
    readonly height: string;
    readonly share: number;
    readonly given: string;
  };
}

/** The window as the page and the packet show it. */
export interface WindowView {
  readonly layers: Figure;
  /** The closed window with its light on, where it has one. */
  readonly lit: Figure | undefined;
  readonly parts: readonly PartView[];
  readonly sheets: readonly { readonly name: string; readonly files: readonly string[]; readonly note: string }[];
  readonly panel: PanelKind;
}

/** A part of the window with its files. */
export interface PartView {
  readonly name: string;
  /** What its files' names begin with. */
  readonly file: string;
  readonly count: number;
  readonly material: string;
  readonly use: string;
  readonly size: string;
  readonly figure: Figure;
}

export function pocketView(kit: Kit, pattern: Pattern): PocketView | undefined {
  const { pocket } = pattern;
  if (!pocket) return undefined;
  const { units } = kit;
  const style = styleFor(units, kit.fit.markStep);
  const leafOf = new Map(pattern.leaves.map((leaf) => [leaf.leaf, leaf]));
  const name = (leaf: LeafNumber): string => {
    const found = leafOf.get(leaf);
    return found ? leafAndPage(found) : say.leafNotFolded({ leaf });
  };
  return {
    plan: pocketPlan(pattern, pocket, units),
    elevation: pocketElevation(pattern, pocket, units),
    floor: formatLength(pocket.floor, style),
    notches: pocket.notches.map((notch) => ({
      leaf: name(notch.leaf),
      notch: say.kitNotchPlace({ ...notchText(notch, style)!, unit: units }),
    })),
    leastRemaining: formatSize(
      Math.min(pattern.book.leafWidth, ...pocket.notches.map((notch) => notch.remaining)),
      units,
    ),
    largest: {
      diameter: formatSize(pocket.largest.diameter, units),
      height: formatSize(pocket.largest.height, units),
      given: formatSize(pocket.light.diameter, units),
      share: Math.round((100 * pocket.light.diameter) / pocket.largest.diameter),
    },
  };
}

export function windowView(kit: Kit, pattern: Pattern): WindowView | undefined {
  const { window } = pattern;
  if (!window) return undefined;
  const parts = partsOf(window);
  const names = sheetNames(kit.sheets);
  return {
    layers: windowLayers(window),
    lit: litWindow(kit, pattern),
    parts: parts.map((part) => partView(part, window, kit.units)),
    sheets: kit.sheets.map((sheet, i) => {
      const { sheets, tooLarge } = layOut(parts, sheet);
      return {
        name: sheet.name,
        files: sheets.map((laid) => `sheet-${names[i]!}-${laid.material}-${laid.number}`),
        note: tooLarge.length > 0 ? say.kitSheetTooSmall({ parts: rowText(tooLarge.map(partName)) }) : "",
      };
    }),
    panel: window.wish.panel,
  };
}

function partView(part: Part, window: BookWindow, units: UnitSystem): PartView {
  const { width, height } = sizeOfPart(part);
  return {
    name: partName(part),
    file: part.id,
    count: part.count,
    material: materialName(part),
    use: partUse(part, window, units),
    size: say.kitPartSize({ width: formatSize(width, units), height: formatSize(height, units) }),
    figure: partFigure(part, window, units),
  };
}
