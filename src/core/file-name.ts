/** `base frame` → `base-frame`, `12 × 12 in` → `12x12-in`: small letters, digits and hyphens. */
export function fileName(name: string): string {
  return name
    .toLowerCase()
    .replace(/\s*×\s*/g, "x")
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");
}
