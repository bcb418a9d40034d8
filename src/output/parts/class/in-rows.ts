/** Seats in rows of no more than so many, as even as can be: a table has no room for all of a large class side by side. */
export function inRows<T>(seats: readonly T[], most: number): (readonly T[])[] {
  const rows = Math.ceil(seats.length / most);
  const each = Math.ceil(seats.length / rows);
  return Array.from({ length: rows }, (_, i) => seats.slice(i * each, (i + 1) * each));
}
