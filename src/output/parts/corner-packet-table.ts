import * as say from "../../words/messages.ts";
import { unitName } from "../../words/units.ts";
import { hereDrawing, mergedDrawing } from "../drawing/front/here.ts";
import { type CornerBlock, type CornerLine, type PrintedCorner, smallFront } from "../views/corner-packet.ts";
import type { TableSize } from "../views/table-setting.ts";
import { creaseWords, emptyWords } from "./corner-pattern.ts";
import { type Html, html, type Markup, raw } from "./markup.ts";
import { classes, headed, pagesOf } from "./packet-table.ts";

/** The table on paper where corners are folded, batch by batch: rows, check figures and place in the front. `reading` shows how a row is read. */
export function cornerPacketTable(view: PrintedCorner, size: TableSize, reading?: Html): Html {
  const { packet, kit, pattern, counts } = view;
  const { turned, turns } = pattern.corner;
  const words = [
    say.cornerPacketText({ units: unitName(kit.units) }),
    ...(turned > 0 ? [say.cornerTableTurned()] : []),
    ...(turns.leaves > 0 ? [say.cornerTableTurns({ of: turns.most })] : []),
  ].join(" ");
  return html`${raw(packet.front)}<p class="words">${words}</p>
${reading}${merged(view, size)}<div ${classes(`batches corner-batches ${size}`, size === "large" && "batches corner-batches compact")}>${packet.table.map(
    (block) => html`
<section class="batch${block.batch ? "" : " borders"}">${heading(view, block, size)}
<table class="table corners"><thead><tr>${heads(block)}</tr></thead>
<tbody>${block.lines.map((one) => line(one, block.hasTurns))}
</tbody></table>
${foot(block, counts.folds)}</section>`,
  )}</div>`;
}

function heading({ shown }: PrintedCorner, { batch, lines }: CornerBlock, size: TableSize): Html {
  const [first, last] = [lines[0]!.first.leaf, lines.at(-1)!.last.leaf];
  if (!batch)
    return headed(say.packetTableBorder({ place: first === shown.leaves[0]!.leaf ? "opening" : "closing" }), size);
  const words = say.packetTableBatch({ number: batch.number, first, last });
  return html`<header>${raw(hereDrawing(smallFront(shown), batch))}${headed(words, size)}</header>`;
}

function heads({ hasTurns }: CornerBlock): Html[] {
  const names = [
    say.tableLeaf(),
    say.packetTablePage(),
    say.cornerTableUpper(),
    say.cornerTableLower(),
    ...(hasTurns ? [say.cornerTableTurn()] : []),
  ];
  return [html`<td></td>`, ...names.map((name) => html`<th scope="col">${name}</th>`)];
}

function line({ first, last }: CornerLine, turns: boolean): Html {
  const run = first.leaf !== last.leaf;
  const unnumbered = first.unnumbered || last.unnumbered;
  const kind = [first.border ? "border" : "", !run && first.checkpoint ? "checkpoint" : ""].join(" ").trim();
  const page = run ? pagesOf(first, last) : first.bookPage;
  const name = unnumbered && html`<div class="name">${page}</div>`;
  const folds =
    first.kind === "corners"
      ? html`<td>${name}${creaseWords(first.upper)}</td><td>${creaseWords(first.lower)}</td>`
      : html`<td colspan="2">${name}<div class="name">${emptyWords(first)}</div></td>`;
  return html`
<tr${kind !== "" && html` class="${kind}"`}><td></td><th scope="row">${
    run ? say.packetTableRun({ first: first.leaf, last: last.leaf }) : first.leaf
  }</th><td>${!unnumbered && page}</td>${folds}${turns && html`<td>${first.turn}</td>`}</tr>`;
}

/** Figures to check the batch by. */
function foot({ batch, lines, leaves, folds, foldsSoFar: sofar, last }: CornerBlock, all: number): Markup {
  if (!batch && !last) return false;
  return html`<p class="batch-foot">${batch && html`<span>${say.cornerPacketCheck({ leaves, folds, sofar, all })}</span>`}${
    last && html` <strong>${say.packetTableLast({ leaf: lines.at(-1)!.last.leaf })}</strong>`
  }</p>`;
}

/** Strips too short to fold, on the front in small. */
function merged({ pattern, shown }: PrintedCorner, size: TableSize): Markup {
  const count = pattern.merged.length;
  if (count === 0) return false;
  return html`<div class="merged">${raw(mergedDrawing(smallFront(shown)))}<div>${headed(say.packetMerged(), size)}<p>${say.cornerPacketMergedText({ count })}</p></div></div>`;
}
