import { after } from "../shared/after.ts";

/** Markup that stands in parts of the page. */
const STANDS = new WeakMap<Element, string>();

/** So many rows of a table are read before the page does something else: a slow device takes 10 ms for them. */
const ROWS_AT_ONCE = 50;

/** Tells that a part holds this markup already. */
export function knowMarkup(part: Element, markup: string): void {
  STANDS.set(part, markup);
}

/**
 * Writes a part anew where its markup is another; of a pattern's table only what is. What the reader opened stays open. Many
 * rows are read aside, some at a time; they are put in place if the part is still `wanted` then.
 */
export async function putMarkup(part: Element, markup: string, wanted: () => boolean): Promise<void> {
  const stands = STANDS.get(part);
  if (stands === markup) return;
  const now = tabled(markup);
  const before = now && sameTable(part, tabled(stands), now);
  const changed = before && changedRows(before, now);
  const read = now && !changed ? await readRows(now.rows, wanted) : undefined;
  if (!wanted()) return;
  if (STANDS.get(part) !== stands) return putMarkup(part, markup, wanted);
  const open = [...part.querySelectorAll("details")].map((one) => one.open);
  if (before) putAround(part.querySelector("table.pattern")!, before, now);
  else part.innerHTML = now ? now.above + now.head + now.foot + now.below : markup;
  if (read) bodyOf(part)!.replaceChildren(read);
  else if (changed) putRows([...bodyOf(part)!.children], now!.rows, changed);
  for (const [i, one] of part.querySelectorAll("details").entries()) one.open = open[i] ?? one.open;
  STANDS.set(part, markup);
}

/** Markup with a pattern's table: what stands before it, its head, its rows, its end, and what stands after it. */
interface Tabled {
  readonly above: string;
  readonly head: string;
  readonly rows: readonly string[];
  readonly foot: string;
  readonly below: string;
}

function tabled(markup: string | undefined): Tabled | undefined {
  const found = /^(.*?)(<table class="pattern">.*?<tbody>)(.*?)(<\/tbody>.*?<\/table>)(.*)$/s.exec(markup ?? "");
  if (!found) return undefined;
  const [, above, head, rows, foot, below] = found as unknown as readonly [
    string,
    string,
    string,
    string,
    string,
    string,
  ];
  return { above, head, rows: rows.split(/(?=\n<tr)/).filter((row) => row.trim() !== ""), foot, below };
}

function bodyOf(part: Element): Element | null {
  return part.querySelector("table.pattern > tbody");
}

/** What stood before where its table goes on with other rows. */
function sameTable(part: Element, before: Tabled | undefined, now: Tabled): Tabled | undefined {
  return before?.head === now.head && bodyOf(part)?.children.length === before.rows.length ? before : undefined;
}

/** Which rows are others where these are few, so that they are written one by one. */
function changedRows(before: Tabled, now: Tabled): number[] | undefined {
  if (before.rows.length !== now.rows.length) return undefined;
  const changed = now.rows.flatMap((row, i) => (row === before.rows[i] ? [] : [i]));
  return changed.length > now.rows.length / 4 ? undefined : changed;
}

function putRows(there: readonly Element[], rows: readonly string[], changed: readonly number[]): void {
  for (const i of changed) there[i]!.outerHTML = rows[i]!.trim();
}

function putAround(table: Element, before: Tabled, now: Tabled): void {
  if (before.above !== now.above) {
    while (table.previousSibling) table.previousSibling.remove();
    table.insertAdjacentHTML("beforebegin", now.above);
  }
  if (before.below !== now.below) {
    while (table.nextSibling) table.nextSibling.remove();
    table.insertAdjacentHTML("afterend", now.below);
  }
}

/** Rows of a table, to be put into it. */
async function readRows(rows: readonly string[], wanted: () => boolean): Promise<DocumentFragment> {
  const all = document.createDocumentFragment();
  for (let i = 0; i < rows.length && wanted(); i += ROWS_AT_ONCE) {
    if (i > 0) await after();
    const some = document.createElement("tbody");
    some.innerHTML = rows.slice(i, i + ROWS_AT_ONCE).join("");
    all.append(...some.childNodes);
  }
  return all;
}
