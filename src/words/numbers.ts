import { language } from "./language.ts";
import * as say from "./messages.ts";

const separators = new Map<string, string>();

/** A number with a point as the language writes it: `46.5` is `46,5` in some. */
export function decimal(text: string): string {
  return text.replace(".", separator());
}

/** A number with fixed decimals. */
export function fixed(value: number, decimals: number): string {
  return decimal(value.toFixed(decimals));
}

/** A share in whole per cent: `64 %`. */
export function percentText(share: number): string {
  return say.unitPercent({ share: Math.round(share * 100) });
}

function separator(): string {
  const known = separators.get(language());
  if (known !== undefined) return known;
  const parts = new Intl.NumberFormat(language()).formatToParts(0.5);
  const found = parts.find((part) => part.type === "decimal")?.value ?? ".";
  separators.set(language(), found);
  return found;
}
