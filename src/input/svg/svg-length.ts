import { MM_PER_INCH } from "../../core/units/length.ts";
import * as say from "../../words/messages.ts";
import { quoted, ValueError } from "./picture-error.ts";

/** User units (CSS px) in one of each unit; source: CSS Values 4, "Absolute lengths". */
const PX_PER_UNIT: Readonly<Record<string, number>> = {
  "": 1,
  px: 1,
  in: 96,
  cm: 96 / (MM_PER_INCH / 10),
  mm: 96 / MM_PER_INCH,
  q: 24 / MM_PER_INCH,
  pt: 96 / 72,
  pc: 16,
};

const LENGTH = /^([+-]?(?:\d+(?:\.\d+)?|\.\d+)(?:e[+-]?\d+)?)(%|[a-z]*)$/i;

/**
 * A length in user units.
 *
 * @param text a number alone or with px, mm, cm, in, pt, pc, Q or %
 * @param percentOf what 100 % is, in user units; undefined where a percentage has no meaning
 * @throws ValueError for anything else
 */
export function parseSvgLength(text: string, percentOf: number | undefined): number {
  const [, digits, unit] = LENGTH.exec(text.trim()) ?? [];
  if (digits === undefined || unit === undefined) {
    throw new ValueError((what) => say.pictureNoLength({ what, value: quoted(text) }));
  }
  const factor = unit === "%" ? percent(text, percentOf) : PX_PER_UNIT[unit.toLowerCase()];
  const length = Number(digits) * (factor ?? Number.NaN);
  if (Number.isNaN(length)) {
    throw new ValueError((what) => say.pictureOtherUnit({ what, value: quoted(text), unit: quoted(unit) }));
  }
  if (!Number.isFinite(length)) throw new ValueError((what) => say.pictureTooLarge({ what, value: quoted(text) }));
  return length;
}

function percent(text: string, percentOf: number | undefined): number {
  if (percentOf === undefined) throw new ValueError((what) => say.picturePartOfNothing({ what, value: quoted(text) }));
  return percentOf / 100;
}
