import type { PrintedPdf, PublishedLeaf } from "./printed.ts";
import type { ReadPage } from "./read-pdf.ts";

/** The sign between a mark and its cut. */
export const ARROW = "›";

/** A length in inches as a fraction in lowest terms, to 1/32 in; the inch is 25.4 mm. */
export function inchFraction(mm: number): string {
  const parts = Math.round((mm * 32) / 25.4);
  const [whole, rest] = [Math.floor(parts / 32), parts % 32];
  let [above, below] = [rest, 32];
  while (above > 0 && above % 2 === 0) [above, below] = [above / 2, below / 2];
  return [whole > 0 || rest === 0 ? String(whole) : "", rest > 0 ? `${above}/${below}` : ""].join(" ").trim();
}

/** A row of the printed table as its cells say it. */
export interface TableRow {
  readonly leaf: string;
  readonly patternPage: string;
  readonly bookPage: string;
  readonly marks: string;
  readonly folds: string;
}

/** One printed page of the table. */
export interface TablePage {
  readonly page: ReadPage;
  readonly head: readonly string[];
  readonly rows: readonly TableRow[];
  readonly foot: string;
}

interface Node {
  readonly role?: string;
  readonly type?: string;
  readonly id?: string;
  readonly children?: readonly Node[];
}

/** The pages of the pattern table, read through the document's own structure: Table, TR, TH and TD. */
export async function tableOf(pdf: PrintedPdf): Promise<TablePage[]> {
  const found: TablePage[] = [];
  for (const page of pdf.pages.filter(({ text }) => /pattern table/i.test(text))) {
    const tree = (await page.page.getStructTree()) as Node;
    const said = await markedText(page);
    const tables = all(tree, "Table").filter((table) =>
      cells(all(table, "TR")[0]!, said).includes("Folds, head to tail"),
    );
    if (tables.length === 0) continue;
    const rows = tables.flatMap((table) => all(table, "TR").map((row) => cells(row, said)));
    const foot = all(tree, "P").map((paragraph) => textIn(paragraph, said));
    found.push({
      page,
      head: rows[0]!,
      rows: rows.slice(1).map(([leaf = "", patternPage = "", bookPage = "", marks = "", folds = ""]) => ({
        leaf,
        patternPage,
        bookPage,
        marks,
        // The end of a line stands for the point between two folds.
        folds: folds.replaceAll(" · ", " "),
      })),
      foot: foot.find((text) => text.startsWith("Check:")) ?? "",
    });
  }
  return found;
}

/** The cells from the leaf's own on: the one before it holds the box to tick and says nothing. */
function cells(row: Node, said: ReadonlyMap<string, string>): string[] {
  const found = all(row, "TH", "TD");
  return found.slice(found.findIndex(({ role }) => role === "TH")).map((cell) => textIn(cell, said));
}

function all(node: Node, ...roles: readonly string[]): Node[] {
  if (node.role !== undefined && roles.includes(node.role)) return [node];
  return (node.children ?? []).flatMap((child) => all(child, ...roles));
}

function textIn(node: Node, said: ReadonlyMap<string, string>): string {
  const pieces = (one: Node): string[] =>
    one.type === "content" ? [said.get(one.id!) ?? ""] : (one.children ?? []).flatMap(pieces);
  return pieces(node)
    .join("")
    .replace(/\s+/g, " ")
    .replaceAll(new RegExp(` ?${ARROW} ?`, "g"), ARROW)
    .trim();
}

/** What stands in each piece of marked content. Lines are parted by a space. */
async function markedText(page: ReadPage): Promise<Map<string, string>> {
  const { items } = await page.page.getTextContent({ includeMarkedContent: true });
  const said = new Map<string, string>();
  const open: (string | undefined)[] = [];
  for (const item of items) {
    if ("str" in item) {
      const id = open.findLast((one) => one !== undefined);
      if (id !== undefined) said.set(id, `${said.get(id) ?? ""}${item.str}${item.hasEOL ? " " : ""}`);
    } else if (item.type === "endMarkedContent") open.pop();
    else open.push(item.id ?? undefined);
  }
  return said;
}

/** A row as the published pattern has it, written by the rules that the packet states. */
export function expectedRow(leaf: PublishedLeaf, { pattern, units }: PrintedPdf): TableRow {
  const decimals = pattern.fit.markStep === 0.5 ? 1 : 0;
  const front = pattern.fit.foldStyle === "stepped" ? pattern.levels[0]!.depth : 0;
  const mark = (mm: number): string => (units === "in" ? inchFraction(mm) : mm.toFixed(decimals));
  const depth = (mm: number): string => (units === "in" ? inchFraction(mm) : String(Math.round(mm * 10) / 10));
  return {
    leaf: String(leaf.leaf),
    patternPage: leaf.patternPage === null ? "border" : String(leaf.patternPage),
    bookPage: leaf.bookPage === null ? nameOf(leaf) : String(leaf.bookPage),
    marks:
      leaf.cuts.length === 0
        ? "whole leaf"
        : leaf.cuts.map(({ at, depth: cut }) => `${mark(at)}${ARROW}${depth(cut - front)}`).join(" "),
    folds: leaf.spans.map(({ level }) => level).join(" "),
  };
}

function nameOf({ unnumbered }: PublishedLeaf): string {
  const { kind, index, of, afterPage } = unnumbered!;
  return kind === "plate" ? `plate ${index} of ${of} after p. ${afterPage}` : `${kind} leaf ${index} of ${of}`;
}
