import { writePlates } from "../core/book/plates.ts";
import { BOUNDS } from "../core/kit/bounds.ts";
import type { Kit } from "../core/kit/kit.ts";
import type { Ignored } from "../core/refit/address.ts";
import type { CarriedField, Field, FieldKey } from "../core/refit/field.ts";
import type { FieldFault } from "../core/refit/read-field.ts";
import { tidy, type UnitSystem } from "../core/units/length.ts";
import { formatSize } from "./lengths.ts";
import * as say from "./messages.ts";

/** The text that stands in a field for a kit. Plain spaces and points: it is read again. */
export function fieldText(field: Field, kit: Kit): string {
  switch (field.form) {
    case "length":
      return formatSize(field.figure(kit), kit.units).replace("\u00a0", " ");
    case "count":
      return String(field.figure(kit));
    case "degrees":
      return String(tidy(field.figure(kit), 1));
    case "choice":
      return field.figure(kit);
    case "plates":
      return writePlates(field.figure(kit), "plain");
    case "borders":
      return field.figure(kit).join(", ");
  }
}

/** What a field asks for; a level's depth names the level. */
export function fieldLabel(field: Field | CarriedField, { levels }: Pick<Kit, "levels">): string {
  const level = field.form === "length" && field.level !== undefined ? levels[field.level - 1] : undefined;
  return LABELS[field.key](level?.name ?? "");
}

/** How a figure is measured. */
export function fieldHelp(field: Field): string {
  return HELPS[field.key]();
}

/** An option of a choice. */
export function optionText(option: string): string {
  return OPTIONS[option]?.() ?? option;
}

/** What would be allowed where a text cannot be taken. */
export function faultText(fault: FieldFault, units: UnitSystem): string {
  switch (fault.kind) {
    case "no-length":
      return units === "mm" ? say.fitAllowedLengthMm() : say.fitAllowedLengthIn();
    case "length-outside":
      return say.fitAllowedLengthBetween({
        least: formatSize(fault.least, units),
        most: formatSize(fault.most, units),
      });
    case "count-outside":
      return say.fitAllowedCount({ least: fault.least, most: fault.most });
    case "degrees-outside":
      return say.fitAllowedDegrees({ least: fault.least, most: fault.most });
    case "number-outside":
      return say.fitAllowedNumber({ least: fault.least, most: fault.most });
    case "no-plates":
      return say.fitAllowedPlates({ page: BOUNDS.page.most, leaves: BOUNDS.plateLeaves.most });
    case "no-borders":
      return say.fitAllowedBorders({ most: BOUNDS.borderLeaves.most });
    case "no-depths":
      return say.fitAllowedDepths({ count: fault.count });
    case "no-leaves":
      return say.fitAllowedLeaves({ most: BOUNDS.leaf.most });
    case "no-option":
      return fault.options.join(", ");
  }
}

/** So much of what an address gives is shown, letters. */
const SHOWN = 40;

/** That a figure of an address is left out: which, what was given, what would be allowed. Lengths as addresses have them, in mm. */
export function ignoredText({ field, given, fault }: Ignored, kit: Pick<Kit, "levels">): string {
  return leftOutText(fieldLabel(field, kit), given, faultText(fault, "mm"));
}

/** That something of an address is left out, whatever it is called. */
export function leftOutText(figure: string, given: string, allowed: string): string {
  const start = given.length > SHOWN ? `${given.slice(0, SHOWN)}…` : given;
  // Neither a line break nor a letter that turns the writing around belongs into a sentence.
  return say.fitIgnored({ figure, given: start.replace(/\p{C}/gu, "·"), allowed });
}

const LABELS: Readonly<Record<(Field | CarriedField)["key"], (level: string) => string>> = {
  leafHeight: say.fitFieldLeafHeight,
  leafWidth: say.fitFieldLeafWidth,
  blockThickness: say.fitFieldBlockThickness,
  leaves: say.fitFieldLeaves,
  pageOneLeaf: say.fitFieldPageOneLeaf,
  lastPage: say.fitFieldLastPage,
  plates: say.fitFieldPlates,
  direction: say.fitFieldDirection,
  borderLeaves: say.fitFieldBorderLeaves,
  height: say.fitFieldHeight,
  openingDegrees: say.fitFieldOpening,
  foldStyle: say.fitFieldFoldStyle,
  markStep: say.fitFieldMarkStep,
  lightDiameter: say.fitFieldLightDiameter,
  lightHeight: say.fitFieldLightHeight,
  depths: (level) => say.fitFieldDepth({ level }),
  head: say.fitFieldHead,
  pictureLeaves: say.figurePictureLeaves,
  units: say.fitFieldUnits,
  flapBulk: say.fitFieldFlapBulk,
  lostLeaves: say.fitFieldLostLeaves,
};

const HELPS: Readonly<Record<FieldKey, () => string>> = {
  leafHeight: say.fitHelpLeafHeight,
  leafWidth: say.fitHelpLeafWidth,
  blockThickness: say.fitHelpBlockThickness,
  leaves: say.fitHelpLeaves,
  pageOneLeaf: say.fitHelpPageOneLeaf,
  lastPage: say.fitHelpLastPage,
  plates: say.fitHelpPlates,
  direction: say.fitHelpDirection,
  borderLeaves: say.fitHelpBorderLeaves,
  height: say.fitHelpHeight,
  openingDegrees: say.fitHelpOpening,
  foldStyle: say.fitHelpFoldStyle,
  markStep: say.fitHelpMarkStep,
  lightDiameter: say.fitHelpLightDiameter,
  lightHeight: say.fitHelpLightHeight,
  depths: say.fitHelpDepth,
};

const OPTIONS: Readonly<Record<string, () => string>> = {
  ltr: say.fitOptionLtr,
  rtl: say.fitOptionRtl,
  single: say.fitOptionSingle,
  stepped: say.fitOptionStepped,
  corner: say.fitOptionCorner,
};
