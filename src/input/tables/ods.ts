import type { Element, Node } from "@xmldom/xmldom";
import type { SheetRow } from "./sheet-row.ts";
import { allNamed, attributeOf, BrokenPart, childrenNamed, rootOf } from "./xml-part.ts";

/** The part of an OpenDocument spreadsheet that holds its tables. Source: OASIS OpenDocument 1.3, part 3. */
export const ODS_PART = "content.xml";

/** Elements around rows that only group them. */
const GROUPS = ["table-row-group", "table-header-rows", "table-rows"];

/** The rows of a spreadsheet's first table. @throws BrokenPart */
export function odsRows(parts: ReadonlyMap<string, string>): SheetRow[] {
  const [sheet] = allNamed(rootOf(parts.get(ODS_PART)), "table");
  if (!sheet) throw new BrokenPart();
  let row = 1;
  return rowsIn(sheet).map((one) => {
    const read = { row, cells: cellsOf(one) };
    row += repeats(one, "number-rows-repeated");
    return read;
  });
}

function rowsIn(element: Element): Element[] {
  return childrenNamed(element, "table-row", ...GROUPS).flatMap((child) =>
    child.localName === "table-row" ? [child] : rowsIn(child),
  );
}

/** Rows are filled up with empty cells, one for thousands; a text that is repeated stands in each. */
function cellsOf(row: Element): Map<number, string> {
  const cells = new Map<number, string>();
  let column = 1;
  for (const cell of childrenNamed(row, "table-cell", "covered-table-cell")) {
    const count = repeats(cell, "number-columns-repeated");
    const text = cellText(cell);
    for (let i = 0; text !== "" && i < count && i < MOST_ALIKE; i += 1) cells.set(column + i, text);
    column += count;
  }
  return cells;
}

/** Cells with one text that are taken; no table of books has as many columns. */
const MOST_ALIKE = 100;

function repeats(element: Element, name: string): number {
  return Math.max(1, Math.floor(Number(attributeOf(element, name) ?? 1)) || 1);
}

/** A number as it was typed; of everything else what is shown. */
function cellText(cell: Element): string {
  const value = attributeOf(cell, "value");
  if (attributeOf(cell, "value-type") === "float" && value !== undefined) return String(Number(value));
  return childrenNamed(cell, "p").map(shownText).join("\n");
}

/** A paragraph's text; several spaces are an element of their own. */
function shownText(paragraph: Node): string {
  let text = "";
  for (let node = paragraph.firstChild; node !== null; node = node.nextSibling) {
    const element = node.nodeType === node.ELEMENT_NODE ? (node as Element) : undefined;
    if (!element) text += node.nodeValue ?? "";
    else if (element.localName === "s") text += " ";
    else if (element.localName !== "annotation") text += shownText(element);
  }
  return text;
}
