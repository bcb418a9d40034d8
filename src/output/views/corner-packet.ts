import { lazily } from "../../core/lazily.ts";
import type { CornerLeaf, CornerPattern } from "../../core/pattern/corner-pattern.ts";
import { type Batch, batchesOf } from "../../core/plan/batches.ts";
import { cornerGaugeSheets } from "../drawing/corner/corner-gauge.ts";
import { cornerStrips } from "../drawing/corner/corner-strips.ts";
import { frontSymbol, type SmallFront } from "../drawing/front/here.ts";
import { SHEET } from "../drawing/sheets/true-scale.ts";
import type { CornerRow } from "./corner-row.ts";
import type { CornerView } from "./corner-view.ts";
import type { PacketSheets } from "./packet-view.ts";
import { parted } from "./table-blocks.ts";

/** One leaf of the printed table, or a run of leaves that are folded alike. */
export interface CornerLine {
  readonly first: CornerRow;
  readonly last: CornerRow;
}

/** What is worked in one go: a batch, or the border leaves before and after the picture. */
export interface CornerBlock {
  /** None for border leaves. */
  readonly batch: Batch<CornerLeaf> | undefined;
  readonly lines: readonly CornerLine[];
  readonly leaves: number;
  /** Folds of the block, and folds up to and with it. */
  readonly folds: number;
  readonly foldsSoFar: number;
  /** Whether one of its leaves takes a turn. */
  readonly hasTurns: boolean;
  readonly last: boolean;
}

/** What only the printed packet has of a kit whose corners are folded. */
export interface CornerPacketView extends PacketSheets {
  readonly table: readonly CornerBlock[];
}

/** A kit whose corners are folded with what its page and its packet show. */
export type PrintedCorner = CornerView & { readonly packet: CornerPacketView };

/** Adds the packet to a kit's view; it is drawn when it is asked for. */
export function withCornerPacket(view: CornerView): PrintedCorner {
  return lazily<{ packet: CornerPacketView }, CornerView>({ packet: () => packetOf(view) }, view);
}

function packetOf({ kit, pattern, shown, rows }: CornerView): CornerPacketView {
  const batches = batchesOf(pattern, kit.fit.batch, kit.gaugeTile);
  return {
    sheet: SHEET,
    gauges: cornerGaugeSheets(kit, shown),
    strips: cornerStrips(kit, shown, batches),
    templates: [],
    front: frontSymbol(smallFront(shown), 0),
    table: blocksOf(rows, batches),
  };
}

/** The front in small: what is shown, before all else. */
export function smallFront({ book, fit, merged, leaves }: CornerPattern): SmallFront {
  const tail = book.leafHeight;
  return {
    book,
    fit,
    merged,
    levels: [1, 2],
    leaves: leaves.map(({ leaf, fold }) => {
      if (fold.kind !== "corners") return { leaf, spans: [{ from: 0, to: tail, level: 2 }] };
      const { from, to } = fold.shown;
      const spans = [
        { from: 0, to: from, level: 2 },
        { from, to, level: 1 },
        { from: to, to: tail, level: 2 },
      ];
      return { leaf, spans };
    }),
  };
}

function blocksOf(rows: readonly CornerRow[], batches: readonly Batch<CornerLeaf>[]): CornerBlock[] {
  const parts = parted(rows, batches);
  let foldsSoFar = 0;
  return parts.map(({ batch, rows: own }, i) => {
    const folds = own.reduce((sum, row) => sum + row.folds, 0);
    foldsSoFar += folds;
    return {
      batch,
      lines: linesOf(own),
      leaves: own.length,
      folds,
      foldsSoFar,
      hasTurns: own.some(({ turn }) => turn !== ""),
      last: i === parts.length - 1,
    };
  });
}

/** Neighbouring leaves that show nothing are folded alike and stand together; every other leaf alone. */
function linesOf(rows: readonly CornerRow[]): CornerLine[] {
  const lines: { first: CornerRow; last: CornerRow }[] = [];
  for (const row of rows) {
    const before = lines.at(-1);
    const alike =
      before && row.kind !== "corners" && before.last.kind === row.kind && !row.checkpoint && !before.last.checkpoint;
    if (alike && before.last.leaf + 1 === row.leaf) before.last = row;
    else lines.push({ first: row, last: row });
  }
  return lines;
}
