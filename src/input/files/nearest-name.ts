import leven from "leven";

/** The name that a misspelt one may mean: up to two letters off, or a third of them; undefined where none is near. */
export function nearestName(given: string, names: Iterable<string>): string | undefined {
  const [nearest] = [...names]
    .map((name) => ({ name, off: leven(name, given) }))
    .toSorted((a, b) => a.off - b.off)
    .filter(({ off, name }) => off <= Math.max(2, name.length / 3));
  return nearest?.name;
}
