import type { Part } from "../../../core/window/part.ts";
import { BAR_ROOM, SHEET } from "./true-scale.ts";

/** One true-scale template sheet: its drawing and what it shows. */
export interface TemplateSheet {
  readonly title: string;
  readonly drawing: string;
}

/** Where parts may lie on a sheet, below key and legend, mm. */
export const FIELD = {
  left: BAR_ROOM.left + 3,
  top: 27,
  width: SHEET.width - BAR_ROOM.left - 4,
  height: SHEET.height - BAR_ROOM.foot - 30,
} as const;

/** A lettered disc needs this much material, mm. */
export const LETTER_ROOM = 6.5;

/** The letter of each part, by which it is found on its sheet. */
export type Letters = ReadonlyMap<Part, string>;
