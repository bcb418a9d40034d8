/** A short name for a state: 32-bit FNV-1a of its JSON, eight hexadecimal digits. It tells versions apart and keeps nothing safe. */
export function revisionOf(state: unknown): string {
  let hash = 0x811c9dc5;
  for (const letter of JSON.stringify(state)) {
    hash = Math.imul(hash ^ letter.charCodeAt(0), 0x01000193) >>> 0;
  }
  return hash.toString(16).padStart(8, "0");
}
