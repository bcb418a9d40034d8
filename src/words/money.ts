import { language } from "./language.ts";
import { fixed } from "./numbers.ts";

/** A price with two decimals: with the sign of a currency that ISO 4217 knows by its code, otherwise with the words the author wrote. */
export function money(amount: number, currency: string): string {
  if (!/^[A-Z]{3}$/.test(currency)) return `${fixed(amount, 2)} ${currency}`.trim();
  const digits = { minimumFractionDigits: 2, maximumFractionDigits: 2 };
  return new Intl.NumberFormat(language(), { style: "currency", currency, ...digits }).format(amount);
}
