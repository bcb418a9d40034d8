/** Control characters but tab and line ends, halves of letters, and what XML has no place for. */
const STRAY = /(?![\t\n\r])[\p{Cc}\p{Cs}\uFFFE\uFFFF]/u;

/** The first character of a text that no text of a site may hold; undefined where there is none. */
export function strayCharacter(text: string): { readonly at: number; readonly code: number } | undefined {
  const at = text.search(STRAY);
  return at < 0 ? undefined : { at, code: text.codePointAt(at)! };
}
