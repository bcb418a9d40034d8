import { deskStyle } from "../../core/bench/desk.ts";
import { type Gate, gateBefore } from "../../core/bench/gates.ts";
import { placeNow } from "../../core/bench/moving.ts";
import { passGate } from "../../core/bench/progress.ts";
import { leafWords } from "../../words/bench.ts";
import { formatLength, formatSize } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";
import { button, make, part } from "./bench-dom.ts";
import type { BenchHost } from "./bench-host.ts";
import { faceOf } from "./face-of.ts";

/** Shows the question before what lies on the bench, and what else to know about it. Gives the question's words to be spoken. */
export function renderGate(root: HTMLElement, host: BenchHost): string {
  const { desk } = host;
  const gate = gateBefore(desk.plan, desk.progress, placeNow(desk.plan, desk.progress));
  const place = part(root, "gate");
  place.hidden = gate === undefined;
  if (!gate) {
    place.replaceChildren();
    return "";
  }
  const [question, ...more] = gateWords(gate, host);
  place.className = `gate gate-${gate.kind}`;
  place.replaceChildren(
    make("p", "gate-words", make("strong", "", question), ...more.map((line) => make("span", "", line))),
  );
  const others = otherAnswers(gate, host);
  if (others.length > 0) place.append(make("p", "gate-answers", ...others));
  return [question, ...more].join(" ");
}

function gateWords(gate: Gate, host: BenchHost): [question: string, ...more: string[]] {
  if (gate.kind === "check") return [checkWords(host)];
  const { number, count } = gate.batch;
  if (gate.kind === "measure") return [say.benchMeasureGate({ number }), say.benchMeasureWhy({ count })];
  const { plan } = host.desk;
  return [batchWords(gate, host), say.benchBatchLeaves({ count, last: leafWords(plan, gate.batch.last.leaf) })];
}

function checkWords({ desk }: BenchHost): string {
  const { plan, progress } = desk;
  const face = faceOf(plan);
  const card = face.leaf(plan, progress.at, deskStyle(desk));
  const first = face.marks(plan, progress.at)[0];
  return say.benchCheck({
    kind: card.bigIsPage ? "numbered" : "unnumbered",
    page: card.big,
    leaf: leafWords(plan, progress.at),
    marks: first !== undefined ? "some" : "none",
    mark: first !== undefined ? formatLength(first, deskStyle(desk)) : "",
  });
}

function batchWords({ batch }: Extract<Gate, { kind: "batch" }>, { desk }: BenchHost): string {
  const { kit, batches } = desk.plan;
  const packed = {
    number: batch.number,
    count: batches.length,
    packing: formatLength(batch.packing, deskStyle(desk)),
  };
  return batch.tiles === undefined || kit.gaugeTile === undefined
    ? say.benchBatch(packed)
    : say.benchBatchPieces({ ...packed, pieces: batch.tiles, size: formatSize(kit.gaugeTile, desk.units) });
}

function otherAnswers(gate: Gate, host: BenchHost): HTMLButtonElement[] {
  if (gate.kind === "check") return [button(say.benchCheckNo(), "quiet", () => host.openJump(say.benchCheckReason()))];
  if (gate.kind === "measure")
    return [button(say.benchMeasureLater(), "quiet", () => host.move((progress) => passGate(progress, gate.name)))];
  return [];
}
