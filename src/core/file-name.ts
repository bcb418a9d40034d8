/** As many letters leave room for what is put before and behind a name: disks take 255 bytes. */
const MOST_LETTERS = 80;

/** `base frame` → `base-frame`, `Lübeck, 12 × 12 in` → `lubeck-12x12-in`: small letters, digits and hyphens. May be empty. */
export function fileName(name: string): string {
  return name
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/\s*×\s*/g, "x")
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-/, "")
    .slice(0, MOST_LETTERS)
    .replace(/-$/, "");
}

/**
 * A file name for each of several things, no two the same, also where a disk takes no notice of capitals: those that would be
 * are numbered in their order, `rim`, `rim-2`. A name without Latin letters and digits becomes `other`.
 */
export function fileNames(names: readonly string[], other: string): string[] {
  const wished = names.map((name) => fileName(name) || other);
  const taken = new Set(wished);
  const given = new Set<string>();
  return wished.map((wish) => {
    let name = wish;
    for (let number = 2; given.has(name) || (name !== wish && taken.has(name)); number += 1) name = `${wish}-${number}`;
    given.add(name);
    return name;
  });
}
