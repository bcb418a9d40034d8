/** The first name that one before it has, too, whatever its capitals; −1 where there is none. */
export function indexOfTwin(names: readonly string[]): number {
  const alike = names.map((name) => name.normalize().trim().toLowerCase());
  return alike.findIndex((name, i) => alike.indexOf(name) !== i);
}
