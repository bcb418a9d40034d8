import { PRICED, type SupplyId, type SupplyUnit, TOOL_SUPPLIES } from "../core/kit/supply-id.ts";
import type { CardSheets } from "../core/supplies/card-sheets.ts";
import type { Supply, SupplyReason } from "../core/supplies/supply.ts";
import type { UnitSystem } from "../core/units/length.ts";
import type { Part } from "../core/window/part.ts";
import { formatByHand, formatOnRuler } from "./lengths.ts";
import { rowText } from "./lists.ts";
import * as say from "./messages.ts";
import { percentText } from "./numbers.ts";
import { partName } from "./parts.ts";
import { shortName } from "./short-name.ts";

type Named = Pick<Supply, "id" | "own" | "quantity">;

/** What a supply is called, in the number of its quantity. */
export function supplyName({ id, own, quantity }: Named): string {
  return own?.item ?? (id === undefined ? "" : nameOf(id, quantity));
}

/** A supply as people write it: `4 craft-knife blades`, `2 sheets of card`, `1.1 m of double-sided tape`. */
export function supplyLine(supply: Pick<Supply, "id" | "own" | "quantity" | "unit">): string {
  const { quantity, unit, own } = supply;
  const item = supplyName(supply);
  switch (unit) {
    case "each":
      return say.supplyLineEach({ amount: quantity, item });
    case "sheet":
      return say.supplyLineSheet({ quantity, amount: quantity, item });
    case "set":
      return say.supplyLineSet({ quantity, amount: quantity, item });
    case "m":
      return say.supplyLineM({ amount: quantity, item });
    case "ft":
      return say.supplyLineFt({ amount: quantity, item });
    case undefined:
      return say.supplyLineOwn({ amount: quantity, unit: own?.unit ?? "", item });
  }
}

/** What a quantity counts, by itself. */
export function supplyUnit({ unit, own, quantity }: Pick<Supply, "unit" | "own" | "quantity">): string {
  return unit === undefined ? (own?.unit ?? "") : unitOf(unit, quantity);
}

/** Why a supply is needed, or which it is; empty where its name says it all. */
export function supplyNote({ id, reason }: Pick<Supply, "id" | "reason">, units: UnitSystem): string {
  return reason ? reasonText(reason, id, units) : "";
}

/** The supply that a text names: by its id, or as the words in force call one or more of it; undefined where none does. */
export function supplyNamed(text: string): SupplyId | undefined {
  const wanted = text.trim().toLowerCase();
  return SUPPLIES.find((id) => [id, nameOf(id, 1), nameOf(id, 2)].some((name) => name.toLowerCase() === wanted));
}

/** The same of a text that may be the beginning of a name: a bone folder is a “bone folder or other blunt scoring tool”. */
export function supplyCalled(text: string): SupplyId | undefined {
  const wanted = `${text.trim().toLowerCase()} `;
  return supplyNamed(text) ?? SUPPLIES.find((id) => nameOf(id, 1).toLowerCase().startsWith(wanted));
}

/** The unit that a text names, or undefined. */
export function unitNamed(text: string): SupplyUnit | undefined {
  const wanted = text.trim().toLowerCase();
  return UNITS.find((unit) => [unit, unitOf(unit, 1), unitOf(unit, 2)].some((name) => name.toLowerCase() === wanted));
}

const SUPPLIES: readonly SupplyId[] = [...PRICED, ...TOOL_SUPPLIES];

const UNITS: readonly SupplyUnit[] = ["each", "set", "sheet", "m", "ft"];

function nameOf(id: SupplyId, quantity: number): string {
  switch (id) {
    case "book":
      return say.supplyBook({ quantity });
    case "card":
      return say.supplyCard();
    case "acetate":
      return say.supplyAcetate();
    case "tape":
      return say.supplyTape();
    case "glueDots":
      return say.supplyGlueDots({ quantity });
    case "string":
      return say.supplyString();
    case "button":
      return say.supplyButton({ quantity });
    case "light":
      return say.supplyLight({ quantity });
    case "cells":
      return say.supplyCells();
    case "glue":
      return say.supplyGlue({ quantity });
    case "bakingPaper":
      return say.supplyBakingPaper({ quantity });
    case "blades":
      return say.supplyBlades({ quantity });
    case "spacers":
      return say.supplySpacers({ quantity });
    case "boneFolder":
      return say.supplyBoneFolder();
    case "ruler":
      return say.supplyRuler();
    case "pencil":
      return say.supplyPencil();
    case "awl":
      return say.supplyAwl();
    case "scissors":
      return say.supplyScissors();
    case "slips":
      return say.supplySlips();
    case "weight":
      return say.supplyWeight();
    case "knife":
      return say.supplyKnife();
    case "mat":
      return say.supplyMat();
    case "packing":
      return say.supplyPacking();
  }
}

function unitOf(unit: SupplyUnit, quantity: number): string {
  switch (unit) {
    case "each":
      return say.supplyUnitEach({ quantity });
    case "sheet":
      return say.supplyUnitSheet({ quantity });
    case "set":
      return say.supplyUnitSet({ quantity });
    case "m":
      return say.supplyUnitM();
    case "ft":
      return say.supplyUnitFt();
  }
}

function reasonText(reason: SupplyReason, id: SupplyId | undefined, units: UnitSystem): string {
  const size = (mm: number): string => formatOnRuler(mm, units);
  switch (reason.kind) {
    case "book": {
      const { leaves, leafHeight, leafWidth } = reason;
      return say.whyBook({ leaves, leafHeight: size(leafHeight), leafWidth: size(leafWidth) });
    }
    case "blades":
      return say.whyBlades({ cuts: reason.cuts, perBlade: reason.perBlade });
    case "glue-dots":
      return glueText(reason);
    case "card": {
      const { gauge, lines, window, colours } = reason;
      const figures = { sheet: sheetText(reason), gauge, lines };
      if (colours) return say.whyCardColours({ ...figures, colours: cardSheetsText(colours) });
      return window > 0 ? say.whyCardWindow({ ...figures, window }) : say.whyCardGauge(figures);
    }
    case "corner-card":
      return say.whyCardCorners({ sheet: reason.sheet });
    case "acetate":
      return say.whyAcetate({ sheet: sheetText(reason) });
    case "light":
      return say.whyLight({ diameter: size(reason.diameter), height: size(reason.height) });
    case "cells":
      return say.whyCells();
    case "tape": {
      const frame = formatByHand(reason.frame, units);
      return reason.waste > 0 ? say.whyTapeWaste({ frame, waste: percentText(reason.waste) }) : say.whyTape({ frame });
    }
    case "string":
      return reason.waste > 0 ? say.whyStringWaste({ waste: percentText(reason.waste) }) : say.whyString();
    case "button":
      return say.whyButton();
    case "tool":
      return toolText(id, units);
    case "card-scissors":
      return say.whyScissorsCard();
    case "packing": {
      const { height, piece, pieces } = reason;
      if (piece === undefined) return say.whyPacking({ height: size(height) });
      return say.whyPackingPieces({ pieces, piece: size(piece), height: size(height) });
    }
  }
}

/** Sheets of card by their colours: `2 teal, 1 black`. */
export function cardSheetsText(colours: readonly CardSheets[]): string {
  return rowText(
    colours.map(({ colour, count }) =>
      colour === undefined ? say.sheetsOfAny({ count }) : say.sheetsOfColour({ count, colour: shortName(colour) }),
    ),
  );
}

function glueText({ tacks, window }: Extract<SupplyReason, { readonly kind: "glue-dots" }>): string {
  if (window === 0) return say.whyGlueDotsTacks({ tacks });
  return tacks === 0 ? say.whyGlueDotsWindow({ window }) : say.whyGlueDotsBoth({ tacks, window });
}

function toolText(id: SupplyId | undefined, units: UnitSystem): string {
  switch (id) {
    case "boneFolder":
      return say.whyBoneFolder();
    case "ruler":
      return units === "mm" ? say.whyRulerMm() : say.whyRulerIn();
    case "pencil":
      return say.whyPencil();
    case "glue":
      return say.whyGlue();
    case "bakingPaper":
      return say.whyBakingPaper();
    case "awl":
      return say.whyAwl();
    case "knife":
      return say.whyKnife();
    case "mat":
      return say.whyMat();
    default:
      return "";
  }
}

function sheetText({ sheet, tooLarge }: { readonly sheet: string; readonly tooLarge: readonly Part[] }): string {
  return tooLarge.length === 0 ? sheet : say.whySheetTooSmall({ sheet, parts: rowText(tooLarge.map(partName)) });
}
