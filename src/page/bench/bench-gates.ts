import { type Gate, gateBefore, isFinished, untickedBefore } from "../../core/bench/bench-plan.ts";
import { holdingOf } from "../../core/bench/calibration.ts";
import { deskStyle } from "../../core/bench/desk.ts";
import { leafInWords } from "../../core/bench/jump.ts";
import { passGate, showLeaf, tickUntimed } from "../../core/bench/progress.ts";
import type { LeafCard } from "../../output/views/leaf-card.ts";
import { leafAndPage } from "../../words/leaves.ts";
import { formatLength, formatSize } from "../../words/lengths.ts";
import { button, make, part } from "./bench-dom.ts";
import type { BenchHost } from "./bench-host.ts";

/** Paints the question before a leaf, and what else to know about it. Gives the question's words to be spoken. */
export function paintGate(root: HTMLElement, host: BenchHost, card: LeafCard): string {
  const { desk } = host;
  const gate = gateBefore(desk.plan, desk.progress, desk.progress.at);
  const place = part(root, "gate");
  place.hidden = gate === undefined;
  if (!gate) {
    place.replaceChildren();
    return "";
  }
  const words = gateWords(gate, host, card);
  place.className = `gate gate-${gate.kind}`;
  place.replaceChildren(
    make("p", "gate-words", ...words.map((line, i) => make(i === 0 ? "strong" : "span", "", line))),
  );
  const others = otherAnswers(gate, host);
  if (others.length > 0) place.append(make("p", "gate-answers", ...others));
  return words.join(" ");
}

function gateWords(gate: Gate, { desk }: BenchHost, card: LeafCard): string[] {
  const { plan } = desk;
  const style = deskStyle(desk);
  if (gate.kind === "check") {
    const mark = card.row.marks[0];
    const page = card.bigIsPage ? `page ${card.big}` : card.row.bookPage;
    return [`Checkpoint: ${page}, ${mark ? `first mark ${mark.at}` : "no mark"}: right?`];
  }
  const { batch } = gate;
  if (gate.kind === "measure") {
    return [
      `Batch ${batch.number} is folded.`,
      `Press its ${batch.count} leaves together at the flaps and measure them: that tells how far your book will close.`,
    ];
  }
  const packing = formatLength(batch.packing, style);
  const tiles =
    batch.tiles === undefined
      ? ""
      : ` (${batch.tiles} ${batch.tiles === 1 ? "tile" : "tiles"} of ${formatSize(plan.kit.gaugeTile!, desk.units)})`;
  return [
    `Batch ${batch.number} of ${plan.batches.length}: packing ${packing}${tiles} under the working side.`,
    `${batch.count} leaves, to ${leafAndPage(batch.last)}.`,
  ];
}

function otherAnswers(gate: Gate, host: BenchHost): HTMLButtonElement[] {
  if (gate.kind === "check")
    return [button("No, something is off", "quiet", () => host.openJump("What page is in front of you?"))];
  if (gate.kind === "measure")
    return [button("Not now", "quiet", () => host.move((progress) => passGate(progress, gate.name)))];
  return [];
}

/** Paints what is out of the ordinary: open leaves before this one, leaves left out, the end of the work. */
export function paintNotices(root: HTMLElement, host: BenchHost, standing: readonly string[]): void {
  part(root, "notices").replaceChildren(
    ...standing.map((words) => make("p", "notice", words)),
    ...leftOutNotices(host),
    ...openNotice(host),
    ...endNotice(host),
  );
}

function leftOutNotices(host: BenchHost): HTMLElement[] {
  const { plan, progress } = host.desk;
  const before = plan.stops[plan.stops.indexOf(progress.at) - 1] ?? 0;
  return plan.pattern.lostLeaves
    .filter((leaf) => leaf > before && leaf < progress.at)
    .map((leaf) =>
      make(
        "p",
        "notice lost",
        `Left out before this: ${leafInWords(plan, leaf)}. `,
        button("Take it back in", "quiet", () => host.openRecovery(leaf)),
      ),
    );
}

function openNotice(host: BenchHost): HTMLElement[] {
  const { plan, progress } = host.desk;
  const open = untickedBefore(plan, progress, progress.at);
  if (open.length === 0) return [];
  const named =
    open.length <= 3
      ? open.map((leaf) => leafInWords(plan, leaf)).join(", ")
      : `${open.length} leaves, the first ${leafInWords(plan, open[0]!)}`;
  return [
    make(
      "p",
      "notice",
      `Not ticked before this: ${named}. `,
      button("Go there", "quiet", () => host.move((one) => showLeaf(one, open[0]!))),
      " ",
      button("They are folded", "quiet", () => host.move((one) => tickUntimed(one, open))),
    ),
  ];
}

function endNotice(host: BenchHost): HTMLElement[] {
  const { plan, progress, units } = host.desk;
  if (!isFinished(plan, progress)) return [];
  const holding = holdingOf(plan.pattern);
  const width = formatSize(holding.holdWidth, units);
  const wider = holding.holds ? "" : ` (your flaps push it to about ${formatSize(holding.restingWidth, units)})`;
  const link = make("a", "", "the kit’s steps");
  link.href = `../index.html${location.search}#steps`;
  return [
    make(
      "p",
      "notice end",
      make("strong", "", `All ${plan.stops.length} leaves are folded.`),
      ` Next: glue the tacks, then open the book to a hold width of ${width}${wider}, from the folded edge of the first picture leaf to that of the last, at the head; see `,
      link,
      ".",
    ),
  ];
}
