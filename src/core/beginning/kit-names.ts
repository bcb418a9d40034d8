/** As long as a folder's name that is proposed. */
const PROPOSED = 60;

/** What a name with hyphens may be called: `evening-boat` as `Evening boat`. */
export function titleOf(name: string): string {
  return capital(name.replaceAll(/[-_\s]+/g, " ").trim());
}

/** With a capital letter at its beginning. */
export function capital(text: string): string {
  return text.replace(/^./u, (letter) => letter.toUpperCase());
}

/** A title as a folder's name: letters without their accents, small, with hyphens; `kit` where none is left. */
export function slugOf(title: string): string {
  const plain = title.normalize("NFKD").replaceAll(/\p{M}/gu, "").toLowerCase();
  const joined = plain.replaceAll(/[^a-z0-9]+/g, "-").slice(0, PROPOSED);
  return joined.replaceAll(/^-+|-+$/g, "") || "kit";
}

/** The name of another folder beside those that are taken: `moon-2`. */
export function freeName(slug: string, taken: readonly string[]): string {
  for (let count = 1; ; count += 1) {
    const name = count === 1 ? slug : `${slug}-${count}`;
    if (!taken.includes(name)) return name;
  }
}
