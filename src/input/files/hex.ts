/** A number as programs name bytes and characters: 0xE9, U+0007. */
export function hex(before: string, value: number, digits: number): string {
  return `${before}${value.toString(16).toUpperCase().padStart(digits, "0")}`;
}
