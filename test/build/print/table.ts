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

/** A row of the printed table as its cells say it: a leaf, or a run of whole leaves. */
export interface TableRow {
  readonly first: number;
  readonly last: number;
  readonly page: string;
  /** Folds and marks from head to tail; before them the name of an unnumbered leaf. */
  readonly work: string;
}

/** One printed page of the table. */
export interface TablePage {
  readonly page: ReadPage;
  readonly heads: readonly string[];
  readonly rows: readonly TableRow[];
  /** What follows the rows of a batch, for checking them. */
  readonly feet: readonly string[];
}

interface Node {
  readonly role?: string;
  readonly type?: string;
  readonly id?: string;
  readonly children?: readonly Node[];
}

/** The pages of the pattern table, read through the document's own structure: TR, TH and TD. */
export async function tableOf(pdf: PrintedPdf): Promise<TablePage[]> {
  const found: TablePage[] = [];
  for (const page of pdf.pages) {
    const tree = (await page.page.getStructTree()) as Node;
    const said = await markedText(page);
    const lines = all(tree, "TR").map((row) => all(row, "TH", "TD"));
    const heads = lines.map((cells) => cells.map((cell) => textIn(cell, said)).join("|")).filter(isHead);
    const rows = lines.flatMap((cells) => rowOf(cells, said));
    if (rows.length === 0) continue;
    const feet = all(tree, "P").map((paragraph) => textIn(paragraph, said));
    found.push({
      page,
      heads,
      rows,
      feet: feet.filter((text) => text.includes("Check:") || text.includes("ends the")),
    });
  }
  return found;
}

function isHead(text: string): boolean {
  return text.includes("Folds and marks, head to tail");
}

/** A leaf that is folded whole, or with marks and their cuts: no other table says so. */
function isWork(text: string): boolean {
  return text.includes(ARROW) || text.endsWith("whole leaf");
}

/** A row's leaf is its head, after the box to tick, which says nothing. */
function rowOf(cells: readonly Node[], said: ReadonlyMap<string, string>): TableRow[] {
  const at = cells.findIndex(({ role }) => role === "TH");
  const [leaf = "", ...others] = cells.slice(at).map((cell) => textIn(cell, said));
  const work = others.find(isWork);
  // The cell of a leaf without a page is empty, and empty cells need not be in the structure.
  const page = others[0] === work ? "" : others[0]!;
  const [, first, last = first] = /^(\d+)(?:– ?(\d+))?$/.exec(leaf) ?? [];
  if (first === undefined || work === undefined) return [];
  // The sign at the end of a line that goes on in the next.
  return [{ first: Number(first), last: Number(last), page, work: work.replaceAll(/ ?…/g, "") }];
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

/** A leaf's work as the published pattern has it, written by the rules that the packet states. */
export function expectedWork(leaf: PublishedLeaf, { pattern, units }: PrintedPdf): string {
  const decimals = pattern.fit.markStep === 0.5 ? 1 : 0;
  const front = pattern.fit.foldStyle === "stepped" ? pattern.levels[0]!.depth : 0;
  const mark = (mm: number): string => (units === "in" ? inchFraction(mm) : mm.toFixed(decimals));
  const depth = (mm: number): string => (units === "in" ? inchFraction(mm) : String(Math.round(mm * 10) / 10));
  if (leaf.cuts.length === 0) return `${leaf.spans[0]!.level} whole leaf`;
  return leaf.spans
    .map(({ level }, i) => {
      const cut = leaf.cuts[i];
      return cut ? `${level} ${mark(cut.at)}${ARROW}${depth(cut.depth - front)}` : String(level);
    })
    .join(" ");
}

/** What an unnumbered leaf is called; nothing for one with a page. */
export function nameOf({ unnumbered }: PublishedLeaf): string | undefined {
  if (!unnumbered) return undefined;
  const { kind, index, of, afterPage } = unnumbered;
  return kind === "plate" ? `plate ${index} of ${of} after p. ${afterPage}` : `${kind} leaf ${index} of ${of}`;
}
