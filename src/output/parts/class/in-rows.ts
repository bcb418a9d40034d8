/** Seats or sessions in rows of no more than so many, as even as can be: a table has no room for all of a large class side by side. */
export function inRows<T>(things: readonly T[], most: number): (readonly T[])[] {
  const rows = Math.ceil(things.length / most);
  const each = Math.ceil(things.length / rows);
  return Array.from({ length: rows }, (_, i) => things.slice(i * each, (i + 1) * each));
}
