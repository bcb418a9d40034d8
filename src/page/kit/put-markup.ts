/** Markup that stands in parts of the page. */
const STANDS = new WeakMap<Element, string>();

/** Tells that a part holds this markup already. */
export function knowMarkup(part: Element, markup: string): void {
  STANDS.set(part, markup);
}

/** Writes a part anew where its markup is another; of a pattern's table only what is. What the reader opened stays open. */
export function putMarkup(part: Element, markup: string): void {
  const stands = STANDS.get(part);
  if (stands === markup) return;
  STANDS.set(part, markup);
  const open = [...part.querySelectorAll("details")].map((one) => one.open);
  const table = part.querySelector("table.pattern");
  const [before, after] = [tabled(stands), tabled(markup)];
  if (!table || !before || !after || before.head !== after.head) part.innerHTML = markup;
  else putTable(table, before, after);
  for (const [i, one] of part.querySelectorAll("details").entries()) one.open = open[i] ?? one.open;
}

/** Markup with a pattern's table: what stands before it, its head, its rows, and what stands after it. */
interface Tabled {
  readonly above: string;
  readonly head: string;
  readonly rows: readonly string[];
  readonly below: string;
}

function tabled(markup: string | undefined): Tabled | undefined {
  const found = /^(.*?)(<table class="pattern">.*?<tbody>)(.*?)(<\/tbody>.*?<\/table>)(.*)$/s.exec(markup ?? "");
  if (!found) return undefined;
  const [, above, head, rows, , below] = found as unknown as readonly [string, string, string, string, string, string];
  return { above, head, rows: rows.split(/(?=\n<tr)/).filter((row) => row.trim() !== ""), below };
}

function putTable(table: Element, before: Tabled, after: Tabled): void {
  if (before.above !== after.above) {
    while (table.previousSibling) table.previousSibling.remove();
    table.insertAdjacentHTML("beforebegin", after.above);
  }
  if (before.below !== after.below) {
    while (table.nextSibling) table.nextSibling.remove();
    table.insertAdjacentHTML("afterend", after.below);
  }
  putRows(table.querySelector("tbody")!, before.rows, after.rows);
}

/** Few rows are written one by one, many at once. */
function putRows(body: Element, before: readonly string[], after: readonly string[]): void {
  const there = [...body.children];
  const changed = after.flatMap((row, i) => (row === before[i] ? [] : [i]));
  if (changed.length === 0 && before.length === after.length) return;
  if (before.length !== after.length || there.length !== before.length || changed.length > after.length / 4) {
    body.innerHTML = after.join("");
    return;
  }
  for (const i of changed) there[i]!.outerHTML = after[i]!.trim();
}
