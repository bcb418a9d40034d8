import { type Desk, deskAddress, moveDesk, openDesk } from "../../core/bench/desk.ts";
import { gateBefore } from "../../core/bench/gates.ts";
import { isDone, placeAfter, placeBeside, placeNow } from "../../core/bench/moving.ts";
import type { Place } from "../../core/bench/places.ts";
import { type Progress, passGate, showPlace } from "../../core/bench/progress.ts";
import { atWork } from "../../core/bench/sitting.ts";
import { tickPlace, untickPlace } from "../../core/bench/tick-place.ts";
import type { LeafNumber } from "../../core/book/leaf-number.ts";
import type { Failure } from "../../core/findings/failure.ts";
import { isFailure } from "../../core/findings/outcome.ts";
import * as say from "../../words/messages.ts";
import type { KitData } from "../shared/kit-data.ts";
import { bindAwake } from "./bench-awake.ts";
import { part } from "./bench-dom.ts";
import { keepFocus, keepFocusAfterDialogs } from "./bench-focus.ts";
import { frontOf } from "./bench-front.ts";
import { renderGate } from "./bench-gates.ts";
import { bindHands, type Hands } from "./bench-hands.ts";
import type { BenchHost } from "./bench-host.ts";
import { bindKeys, bindMove, bindSwipe } from "./bench-input.ts";
import { bindJump } from "./bench-jump.ts";
import { renderEdge } from "./bench-leaf-view.ts";
import { bindRecovery } from "./bench-lost.ts";
import { bindMeasure } from "./bench-measure.ts";
import { bindMenu } from "./bench-menu.ts";
import { renderNotices } from "./bench-notices.ts";
import type { BenchPiece } from "./bench-piece.ts";
import { showPieceLine } from "./bench-piece-line.ts";
import { keepUnits } from "./bench-store.ts";
import { bindSwitch } from "./bench-switch.ts";
import { bindTap } from "./bench-tap.ts";
import { cameAbout, driesWords } from "./bench-times.ts";
import { bindTone } from "./bench-tone.ts";
import { renderCount, renderPlace } from "./bench-view.ts";
import { faceOf } from "./face-of.ts";
import { type AsMisfit, type OpenedPiece, openPiece } from "./open-piece.ts";

/** The times in the page's head follow the clock this often, ms. */
const TIMES = 20_000;

/** Opens the bench for the piece that an address means, or says why the kit does not fit its book. */
export async function openBench(
  root: HTMLElement,
  data: KitData,
  address: URLSearchParams,
): Promise<AsMisfit | undefined> {
  const opened = await openPiece(data, address);
  if ("failure" in opened) return opened;
  new BenchPage(root, opened);
  showPieceLine(root, opened);
  return undefined;
}

/** The page that goes along with the work: one leaf or step at a time, ticked as it is done. */
class BenchPage implements BenchHost {
  readonly openMeasure: () => void;
  readonly openJump: (reason?: string) => void;
  readonly openRecovery: (leaf: LeafNumber) => void;
  #root: HTMLElement;
  #desk: Desk;
  #standing: readonly string[];
  #piece: BenchPiece;
  /** An answer to what the maker just did; it stands until she goes on. */
  #told: string | undefined;
  #kept = true;
  #drawFront: (desk: Desk) => void;
  #hands: Hands;
  #showTap: () => void;

  constructor(root: HTMLElement, { desk, piece, told }: OpenedPiece) {
    this.#root = root;
    this.#drawFront = frontOf(root);
    this.#desk = desk;
    this.#standing = told;
    this.#piece = piece;
    this.openMeasure = bindMeasure(root, this);
    this.openJump = bindJump(root, this);
    this.openRecovery = bindRecovery(root, this);
    this.#hands = bindHands(root, this);
    this.#showTap = this.#bind(bindMenu(root, this, () => this.#renderEdge()));
    piece.follow((progress) => {
      const moved = moveDesk(this.#desk, progress);
      if (isFailure(moved)) return;
      this.#desk = moved.value;
      this.#render();
    });
    this.#render();
  }

  get desk(): Desk {
    return this.#desk;
  }

  get piece(): BenchPiece {
    return this.#piece;
  }

  get #place(): Place {
    return placeNow(this.#desk.plan, this.#desk.progress);
  }

  tell(words: string): void {
    this.#told = words;
    this.#render(words);
  }

  move(change: (progress: Progress) => Progress, spoken?: string): void {
    this.#told = undefined;
    const { progress } = this.#desk;
    const before = this.#place;
    const moved = moveDesk(this.#desk, change(atWork(progress, Date.now())));
    // Leaves are left out only after the dialog has laid the rest out without them.
    if (isFailure(moved)) throw new Error(`the bench cannot go on: ${moved.failure.kind}`);
    this.#desk = moved.value;
    this.#keep();
    this.#render(spoken);
    if (this.#place !== before) window.scrollTo(0, 0);
  }

  reopen(change: { readonly units?: Desk["units"]; readonly progress?: Progress | undefined }): Failure | undefined {
    const { kit, refit, units, plan, progress } = this.#desk;
    const asked = change.units ?? units;
    if (change.units) keepUnits(asked);
    const next = change.units && refit.units ? { ...refit, units: asked } : refit;
    const opened = openDesk(
      kit,
      next,
      { units: asked, way: plan.way },
      "progress" in change ? change.progress : progress,
    );
    if (isFailure(opened)) return opened.failure;
    this.#desk = opened.value;
    this.#keep();
    this.#render();
    return undefined;
  }

  /** Gives back what shows how a tap goes on. */
  #bind(openMenu: () => void): () => void {
    const root = this.#root;
    const moves = bindTap(root, this, {
      next: () => this.#step(1),
      back: () => this.#step(-1),
      go: () => this.#go(),
    });
    const pedal = part<HTMLInputElement>(root, "pedal");
    bindSwitch(pedal, "pedal");
    bindKeys(moves, { arrowsTick: () => pedal.checked, letters: () => this.#hands.letters() });
    keepFocusAfterDialogs(root);
    bindSwipe(part(root, "stage"), moves);
    bindAwake(part<HTMLButtonElement>(root, "awake"));
    for (const name of ["next", "back", "go"] as const) bindMove(part(root, name), moves[name]);
    part<HTMLInputElement>(root, "done").addEventListener("change", (event) => {
      const place = this.#place;
      const ticked = (event.target as HTMLInputElement).checked;
      this.move(
        (progress) => (ticked ? tickPlace : untickPlace)(progress, place),
        ticked ? say.benchSpokenTicked() : say.benchSpokenNotTicked(),
      );
    });
    part(root, "open-jump").addEventListener("click", () => this.openJump());
    part(root, "open-menu").addEventListener("click", openMenu);
    part(root, "lose").textContent = faceOf(this.#desk.plan).lost.button();
    part(root, "lose").addEventListener("click", () => this.openRecovery(this.#desk.progress.at));
    new ResizeObserver(() => this.#renderEdge()).observe(part(root, "edge"));
    const tone = bindTone(part<HTMLInputElement>(root, "tone"));
    setInterval(() => {
      renderCount(root, this.#desk);
      tone(cameAbout(this.#desk));
    }, TIMES);
    return moves.show;
  }

  #step(side: 1 | -1): void {
    const place = placeBeside(this.#desk.plan, this.#place, side);
    if (place !== this.#place) this.move((one) => showPlace(one, place));
  }

  /** The main button: answers the prompt before what lies on the bench; else ticks that and goes on. */
  #go(): void {
    const { plan, progress } = this.#desk;
    const place = this.#place;
    const gate = gateBefore(plan, progress, place);
    if (gate?.kind === "measure") this.openMeasure();
    else if (gate) this.move((one) => passGate(one, gate.name));
    else {
      this.move((one) => {
        const ticked = tickPlace(one, place);
        return showPlace(ticked, placeAfter(plan, ticked, place));
      }, driesWords(place));
    }
  }

  async #keep(): Promise<void> {
    const kept = await this.#piece.keep(this.#desk);
    this.#showAddress();
    if (kept === this.#kept) return;
    this.#kept = kept;
    this.#render();
  }

  #showAddress(): void {
    const address = deskAddress(this.#desk);
    history.replaceState(null, "", `${location.pathname}${this.#piece.search(this.#desk)}${location.hash}`);
    part<HTMLAnchorElement>(this.#root, "home").href = `../index.html${address ? `?${address}` : ""}`;
  }

  #render(told?: string): void {
    keepFocus(this.#root, () => this.#write(told));
  }

  /** `told` is spoken before the question and what lies on the bench. */
  #write(told?: string): void {
    const spoken = renderPlace(this.#root, this.#desk);
    const question = renderGate(this.#root, this);
    renderNotices(this.#root, this, [
      ...(this.#told ? [this.#told] : []),
      ...this.#standing,
      ...(this.#kept ? [] : [say.benchNotSaved()]),
      ...(this.#desk.changedSince ? [say.benchKitChanged()] : []),
    ]);
    this.#renderEdge();
    this.#drawFront(this.#desk);
    const state = isDone(this.#desk.progress, this.#place) ? say.benchSpokenTicked() : "";
    part(this.#root, "say").textContent = [told, question, state, spoken].filter(Boolean).join(" ");
    this.#hands.tell([told ?? "", question].filter(Boolean), spoken);
    this.#showTap();
    this.#showAddress();
  }

  #renderEdge(): void {
    renderEdge(this.#root, this.#desk);
    this.#hands.marks.show();
  }
}
