import { type Desk, deskStyle } from "../../core/bench/desk.ts";
import { tickUntimed } from "../../core/bench/progress.ts";
import { type BatchProgress, batchProgress } from "../../core/bench/stage-progress.ts";
import { leafWords } from "../../words/bench.ts";
import * as say from "../../words/messages.ts";
import type { SheetRange } from "../bench/piece-sheets.ts";
import { button, make } from "../shared/dom.ts";
import type { Change } from "./change.ts";
import { sheetsOf } from "./sheets.ts";

/** Shows the batches with what is folded of each; a batch's table comes when it is asked for. What is open stays open. */
export function showBatches(place: HTMLElement, desk: Desk, change: Change): void {
  const open = [...place.querySelectorAll("details[open]")].map((one) => (one as HTMLElement).dataset["batch"]);
  const items = batchProgress(desk.plan, desk.progress).map((batch) => {
    const item = batchItem(desk, batch, change);
    item.querySelector("details")!.open = open.includes(String(batch.batch.number));
    return item;
  });
  const list = make("ol", "batch-list", ...items);
  list.setAttribute("aria-label", say.makeBatches());
  place.replaceChildren(list);
}

function batchItem(desk: Desk, { batch, done, of }: BatchProgress, change: Change): HTMLElement {
  const { plan } = desk;
  const { number, first, last } = batch;
  const name = say.makeBatch({ number, first: leafWords(plan, first.leaf), last: leafWords(plan, last.leaf) });
  const table = make("details", "", make("summary", "", say.makeBatchTable({ number })));
  table.dataset["batch"] = String(number);
  table.addEventListener("toggle", () => {
    if (!table.open || table.childElementCount > 1) return;
    table.append(tableOf(name, desk, { first: first.leaf, last: last.leaf }));
  });
  const item = make("li", done === of ? "done" : "", make("p", "", make("b", "", name), " ", counted(done, of)), table);
  if (done < of) {
    const leaves = plan.stops.filter((leaf) => leaf >= first.leaf && leaf <= last.leaf);
    const tickAll = (): void => change((progress) => tickUntimed(progress, leaves));
    item.append(button(say.makeBatchTick({ number }), "batch-tick", tickAll));
  }
  return item;
}

function counted(done: number, count: number): HTMLElement {
  return make("span", "gist", say.makeBatchDone({ done, count }));
}

function tableOf(caption: string, desk: Desk, range: SheetRange): HTMLElement {
  const place = make("div", "");
  place.innerHTML = sheetsOf(desk.plan).table(caption, desk.plan, range, deskStyle(desk));
  return place;
}
