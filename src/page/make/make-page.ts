import { type Desk, deskStyle, moveDesk } from "../../core/bench/desk.ts";
import { isFinished, placeNow } from "../../core/bench/moving.ts";
import { remainingTime } from "../../core/bench/pace.ts";
import type { Progress } from "../../core/bench/progress.ts";
import { stageProgress } from "../../core/bench/stage-progress.ts";
import { isFailure } from "../../core/findings/outcome.ts";
import { summaryOf } from "../../core/piece/summary.ts";
import type { Caution } from "../../core/plan/caution.ts";
import { makeBook } from "../../output/parts/make-parts.ts";
import { itemName } from "../../output/views/item-name.ts";
import { leafWords, timeWords } from "../../words/bench.ts";
import * as say from "../../words/messages.ts";
import { pieceName } from "../../words/pieces.ts";
import { stageTitle } from "../../words/stages.ts";
import { part } from "../bench/bench-dom.ts";
import type { BenchPiece } from "../bench/bench-piece.ts";
import { showPieceLine } from "../bench/bench-piece-line.ts";
import type { OpenedPiece } from "../bench/open-piece.ts";
import type { Change } from "./change.ts";
import { bindNotes } from "./make-notes.ts";
import { StageList } from "./make-stages.ts";
import { SupplyList } from "./make-supplies.ts";

/** The page of one piece: where it is, what is laid out, and its stages. */
export class MakePage {
  readonly #root: HTMLElement;
  readonly #piece: BenchPiece;
  readonly #stages: StageList;
  readonly #supplies: SupplyList;
  #desk: Desk;

  constructor(root: HTMLElement, opened: OpenedPiece, cautions: readonly Caution[]) {
    this.#root = root;
    this.#desk = opened.desk;
    this.#piece = opened.piece;
    const change: Change = (make) => this.#change(make);
    this.#stages = new StageList(root, cautions, change);
    this.#supplies = new SupplyList(root, change);
    bindNotes(root, opened);
    bindUnits(root, opened.desk);
    showPieceLine(root, opened);
    opened.piece.follow((progress) => this.#follow(progress));
    this.#show();
    this.#stages.openCurrent();
  }

  #change(make: (progress: Progress) => Progress): void {
    this.#follow(make(this.#desk.progress));
    this.#piece.keep(this.#desk).then((kept) => {
      if (!kept) this.#notKept();
      this.#showLinks();
    });
  }

  #follow(progress: Progress): void {
    const moved = moveDesk(this.#desk, progress);
    if (isFailure(moved)) return;
    this.#desk = moved.value;
    this.#show();
  }

  #show(): void {
    const { plan, progress } = this.#desk;
    const stages = stageProgress(plan, progress);
    const here = stages.find(({ now }) => now);
    part(this.#root, "now").hidden = false;
    part(this.#root, "stage-name").textContent = here ? stageTitle(here) : say.makeFinished();
    part(this.#root, "told").textContent = toldOf(this.#desk);
    part<HTMLProgressElement>(this.#root, "percent").value = summaryOf(this.#desk).percent ?? 0;
    part(this.#root, "book").textContent = makeBook(plan.kit.book, this.#desk.units);
    this.#stages.show(this.#desk, stages);
    this.#supplies.show(this.#desk);
    this.#showLinks();
  }

  #showLinks(): void {
    const search = this.#piece.search(this.#desk);
    part(this.#root, "name").textContent = `${pieceName(this.#piece.now(this.#desk))}.`;
    const go = part<HTMLAnchorElement>(this.#root, "go");
    go.href = `../bench/index.html${search}`;
    go.textContent = goWords(this.#desk);
    part<HTMLAnchorElement>(this.#root, "home").href = `../index.html${search}`;
    history.replaceState(null, "", `${location.pathname}${search}${location.hash}`);
  }

  #notKept(): void {
    const place = part(this.#root, "wait");
    place.hidden = false;
    place.textContent = say.makeNotKept();
  }
}

/** `64% done, about 3 h to go`. */
function toldOf(desk: Desk): string {
  const share = summaryOf(desk).percent ?? 0;
  const done = say.makeNow({ percent: say.unitPercent({ share }) });
  if (share === 100) return done;
  return `${done}, ${say.makeLeft({ time: timeWords(remainingTime(desk.plan, desk.progress).ms, "about") })}`;
}

function goWords(desk: Desk): string {
  const { plan, progress } = desk;
  if (isFinished(plan, progress) || progress.ticks.length + progress.passed.length === 0) return say.makeBegin();
  const { leaf, item } = placeNow(plan, progress);
  return say.makeGo({ place: item ? itemName(plan, item, deskStyle(desk)) : leafWords(plan, leaf) });
}

/** Other units are other marks: the page is laid out anew. */
function bindUnits(root: HTMLElement, { units }: Desk): void {
  for (const radio of root.querySelectorAll<HTMLInputElement>('input[name="units"]')) {
    radio.checked = radio.value === units;
    radio.addEventListener("change", () => {
      const address = new URLSearchParams(location.search);
      address.delete("units");
      location.search = String(address);
    });
  }
}
