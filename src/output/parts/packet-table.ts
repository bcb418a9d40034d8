import { rowText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import { tableIntroduction } from "../../words/packet-table.ts";
import { hereDrawing, mergedDrawing } from "../drawing/front/here.ts";
import type { KitViewBase } from "../views/kit-view.ts";
import type { PrintedKit } from "../views/packet-view.ts";
import type { Row } from "../views/row.ts";
import { isWhole, type Pair, type TableBlock, type TableLine } from "../views/table-blocks.ts";
import type { TableSize } from "../views/table-setting.ts";
import { bundle } from "./bundle.ts";
import { type Html, html, type Markup, raw } from "./markup.ts";

/** The pattern's table on paper, batch by batch: each with its rows, notches, tacks, check figures and place in the front. `reading` shows how a row is read. */
export function packetTable(view: PrintedKit, size: TableSize, reading?: Html): Html {
  const words = html`<p class="words">${tableIntroduction(view.kit, view.pattern)} ${say.packetTableReading()}${
    view.pattern.pocket && html` ${say.packetTableNotches()}`
  }</p>`;
  const perLine = view.packet.perLine(size);
  return html`${raw(view.packet.front)}${words}
${reading}${merged(view, size)}<div ${classes(`batches ${size}`, size === "large" && "batches compact")}>${view.packet.table.map(
    (block) => html`
<section class="batch${kindOf(block, size, perLine)}">${heading(view, block, size)}
<table ${pairsOf(view, block, size)}><thead><tr>${heads(block)}</tr></thead>
<tbody>${block.rows.map((row) => line(row, block))}
</tbody></table>
${foot(block, view.counts.cuts)}</section>`,
  )}</div>`;
}

/** The table alone in large print; what is printed in short is made of it. */
export function tablePart(view: PrintedKit): Html {
  return tableAlone(view, packetTable(view, "large"));
}

/** A page with nothing but a table, under a title for either size. */
export function tableAlone({ kit: { title } }: KitViewBase, table: Html): Html {
  const [large, short] = [
    say.packetTableAlone({ title, size: "large" }),
    say.packetTableAlone({ title, size: "compact" }),
  ];
  return html`<section class="flow" data-flow><h1 data-short-title="${short}">${large}</h1>
${bundle(say.packetBundleTable(), table)}</section>`;
}

/** Classes of an element, and what they are in the table in short that is printed from the same page. */
export function classes(own: string, short: string | false): Html {
  return html`class="${own}"${short !== false && html` data-short="${short}"`}`;
}

/** How many pairs of folds and marks stand in a line. */
function pairsOf({ packet: { perLine } }: PrintedKit, { notched }: TableBlock, size: TableSize): Html {
  const at = (one: TableSize): string => `table pairs-${perLine(one)(notched > 0)}`;
  return classes(at(size), size === "large" && at("compact"));
}

/** More lines than this take more than half a page: two such batches do not stand on one. */
const HALF_PAGE = 26;

function kindOf({ batch, rows, notched }: TableBlock, size: TableSize, perLine: (notched: boolean) => number): string {
  if (!batch) return " borders";
  if (size !== "normal") return "";
  const most = perLine(notched > 0);
  const lines = rows.map(({ pairs }) => Math.max(1, Math.ceil((pairs.length - 1) / most)));
  return lines.reduce((sum, count) => sum + count, 0) > HALF_PAGE ? " long" : "";
}

function heading({ shown, preparation }: PrintedKit, { batch, rows }: TableBlock, size: TableSize): Html {
  const [first, last] = [rows[0]!.first.leaf, rows.at(-1)!.last.leaf];
  if (!batch)
    return headed(say.packetTableBorder({ place: first === shown.leaves[0]!.leaf ? "opening" : "closing" }), size);
  const { number } = batch;
  const { packing, pieces } = preparation.batches[number - 1]!;
  const packed = say.packetTablePacking({ packing, pieces: pieces ?? 0 });
  return html`<header>${raw(hereDrawing(shown, batch))}${headed(say.packetTableBatch({ number, first, last }), size)}<p>${packed}</p></header>`;
}

/** A heading below the table's own: the packet's is of the second level, the table alone has a title only. */
export function headed(words: string, size: TableSize): Html {
  return size === "normal" ? html`<h3>${words}</h3>` : html`<h2>${words}</h2>`;
}

function heads({ notches, notched }: TableBlock): Html[] {
  const names = [say.tableLeaf(), say.packetTablePage(), say.packetTableMarks()];
  if (notched > 0) names.push(notches ? say.packetTableNotchAt(notches) : say.packetTableNotch());
  return [html`<td></td>`, ...names.map((name) => html`<th scope="col">${name}</th>`)];
}

function line({ first, last, pairs }: TableLine, block: TableBlock): Html {
  const run = first.leaf !== last.leaf;
  const unnumbered = first.unnumbered || last.unnumbered;
  const kind = [first.border ? "border" : "", !run && first.checkpoint ? "checkpoint" : ""].join(" ").trim();
  const page = run ? pagesOf(first, last) : first.bookPage;
  return html`
<tr${kind !== "" && html` class="${kind}"`}><td></td><th scope="row">${
    run ? say.packetTableRun({ first: first.leaf, last: last.leaf }) : first.leaf
  }</th><td>${!unnumbered && page}</td><td>${unnumbered && html`<div class="name">${page}</div>`}${
    isWhole(first)
      ? html`<div class="name"><b>${first.folds[0]}</b> <span>${say.tableWhole()}</span></div>`
      : marksOf(pairs)
  }</td>${block.notched > 0 && html`<td>${notchText(first.notch, block)}</td>`}</tr>`;
}

type Located = Pick<Row, "bookPage" | "unnumbered">;

/** Where a run of leaves is in the book: printed pages, or which leaves they are where some have none. */
export function pagesOf(first: Located, last: Located): string {
  if (!first.unnumbered && !last.unnumbered) return say.packetTableRun({ first: first.bookPage, last: last.bookPage });
  const [from, to] = [first, last].map((row) => (row.unnumbered ? row.bookPage : say.leafPage({ page: row.bookPage })));
  return say.packetTableNamed({ from: from!, to: to! });
}

/** Folds and marks; where a line is full, the style sheet ends it with a sign and begins another. */
function marksOf(pairs: readonly Pair[]): Html {
  const items = pairs.map(({ fold, mark }) =>
    mark ? html`<i><b>${fold}</b> ${mark.at}<u>›${mark.cut}</u></i> ` : html`<b>${fold}</b>`,
  );
  return html`<div>${items}</div>`;
}

function notchText(notch: TableLine["first"]["notch"], { notches }: TableBlock): Markup {
  if (!notch) return false;
  const { from, to, depth } = notch;
  return notches ? `›${depth}` : html`${from}–${to} ›${depth}`;
}

/** What follows the batch's leaves, and figures to check it by. */
function foot({ batch, rows, leaves, cuts, cutsSoFar: sofar, notched, tacks, last }: TableBlock, all: number): Markup {
  const then = [
    notched > 0 && say.packetTableThenNotch({ count: notched }),
    tacks.length > 0 &&
      say.packetTableThenTack({
        list: rowText(tacks.map(({ leaf, place }) => say.packetTableTack({ leaf, place }))),
      }),
  ].filter((one) => one !== false);
  const check = say.packetTableCheck({ leaves, cuts, sofar, all });
  if (!batch && then.length === 0 && !last) return false;
  return html`<p class="batch-foot">${then.map((one) => html`${one} `)}${
    batch && html`<span>${check}</span>`
  }${last && html` <strong>${say.packetTableLast({ leaf: rows.at(-1)!.last.leaf })}</strong>`}</p>`;
}

/** Strips too short to fold, on the front in small. */
function merged({ pattern, shown }: PrintedKit, size: TableSize): Markup {
  const count = pattern.merged.length;
  if (count === 0) return false;
  return html`<div class="merged">${raw(mergedDrawing(shown))}<div>${headed(say.packetMerged(), size)}<p>${say.packetMergedText({ count })}</p></div></div>`;
}
