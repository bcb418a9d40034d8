import type { Failure } from "../../../core/findings/failure.ts";
import { type CutKit, isCutKit } from "../../../core/kit/cut-kit.ts";
import type { Kit } from "../../../core/kit/kit.ts";
import { differencesOf } from "../../../core/makeability/differences.ts";
import type { TroubleWithWays } from "../../../core/makeability/makeability.ts";
import { placePicture } from "../../../core/makeability/picture-place.ts";
import { type Trouble, troublesOf } from "../../../core/makeability/trouble.ts";
import type { FitResult } from "../../../core/pattern/compute.ts";
import { computeCorner } from "../../../core/pattern/compute-corner.ts";
import { faceOfFitting } from "../../../core/pattern/face.ts";
import { fitKit } from "../../../core/pattern/fit-kit.ts";
import type { DeskShape } from "../../../input/desk/protocol.ts";
import type { StatedNow } from "../draft/desk-kit.ts";
import { FitBench } from "../draft/fit-bench.ts";
import type { Found, SeenFigures } from "../draft/fit-work.ts";
import { judgedCorner, judgedFit, judgedUnfit } from "./judged.ts";
import type { Shown } from "./shown.ts";
import type { Judged } from "./slip-view.ts";
import type { Things } from "./things.ts";

/**
 * Works out what the things show. The leaves are folded at once, in this thread: they are what a handle moves. Light and window,
 * what will be seen, and what would help come from workers; till they come, the last of them stay in sight.
 */
export class TableWork {
  readonly #things: Things;
  readonly #stale: (isStale: boolean) => void;
  readonly #busy: (isBusy: boolean) => void;
  readonly #bench = new FitBench();
  #stated: StatedNow | undefined;
  #shapes: readonly DeskShape[] = [];
  #shelf: readonly string[] = [];
  /** What is shown, and the last that had light and window. */
  #shown: Shown | undefined;
  #whole: Shown | undefined;
  #figures: SeenFigures | undefined;
  #judged: Judged | undefined;
  #frame = 0;
  #sending: ReturnType<typeof setTimeout> | undefined;
  /** Why the kit cannot be made as it is. */
  #failure: Failure | undefined;

  /** `stale` is told whether the table shows an earlier state, as the kit cannot be made as it is; `busy` whether more is to come. */
  constructor(things: Things, stale: (isStale: boolean) => void, busy: (isBusy: boolean) => void) {
    this.#things = things;
    this.#stale = stale;
    this.#busy = busy;
  }

  /** Lays a kit out; `shelf` are the names of motifs that it may set. */
  lay(stated: StatedNow, shapes: readonly DeskShape[], shelf: readonly string[]): void {
    const { kit } = stated;
    const isSameShelf = shelf.join("\n") === this.#shelf.join("\n");
    if (stated === this.#stated && shapes === this.#shapes && isSameShelf) return;
    this.#stated = stated;
    this.#shapes = shapes;
    this.#shelf = shelf;
    if (!isCutKit(kit)) {
      this.#layCorner(kit, stated);
      return;
    }
    const result = fitKit(withoutWindow(kit));
    this.#busy(true);
    this.#stale(!result.fits);
    if (result.fits) this.#show(kit, stated, result, shelf);
    this.#afterFrame(() => this.#bench.look(kit, (found) => this.#hear(kit, stated, found)));
  }

  /** A kit whose corners are folded is worked out at once: it has neither light nor window. */
  #layCorner(kit: Kit, stated: StatedNow): void {
    this.#leaveWork();
    const result = computeCorner(kit);
    const of = { kit, stated: stated.text.data };
    this.#stale(!result.fits);
    if (result.fits) {
      const shown = { ...of, pattern: result.pattern, findings: result.findings };
      this.#things.showCorner(shown);
      this.#judge(judgedCorner(shown));
    } else this.#judge(judgedUnfit(of, result.finding, []));
    this.#busy(false);
  }

  #leaveWork(): void {
    this.#sendNothing();
    this.#bench.end();
  }

  #sendNothing(): void {
    cancelAnimationFrame(this.#frame);
    clearTimeout(this.#sending);
  }

  /** What is sent to workers is copied, and that takes a while: what is shown is painted first. Of several only the last is done. */
  #afterFrame(work: () => void): void {
    this.#sendNothing();
    this.#frame = requestAnimationFrame(() => {
      this.#sending = setTimeout(work);
    });
  }

  dispose(): void {
    this.#leaveWork();
  }

  #show(kit: CutKit, stated: StatedNow, result: Fitting, shelf: readonly string[]): void {
    const pattern = {
      ...result.pattern,
      pocket: kit.light && this.#whole?.pattern.pocket,
      window: kit.insert && this.#whole?.pattern.window,
    };
    const place = placeOf(kit);
    this.#shown = { kit, stated: stated.text.data, pattern, findings: result.findings, place, shelf };
    this.#things.show(this.#shown, this.#shapes);
    if (this.#judged) this.#things.judge(this.#judged);
  }

  #hear(kit: CutKit, stated: StatedNow, found: Found): void {
    switch (found.stage) {
      case "whole":
        this.#hearWhole(kit, stated, found.result);
        return;
      case "seen":
        this.#figures = found.figures;
        this.#things.mark(differencesOf(found.figures));
        this.#judgeFit(troublesOf({ ...found.figures, place: this.#shown!.place }), undefined);
        return;
      case "ways":
        if (this.#failure) this.#judge(judgedUnfit({ kit, stated: stated.text.data }, this.#failure, found.offers));
        else
          this.#judgeFit(
            found.troubles.map(({ trouble }) => trouble),
            found.troubles,
          );
        this.#busy(false);
    }
  }

  #hearWhole(kit: CutKit, stated: StatedNow, result: FitResult): void {
    this.#stale(!result.fits);
    this.#failure = result.fits ? undefined : result.finding;
    if (!result.fits) {
      this.#judge(judgedUnfit({ kit, stated: stated.text.data }, result.finding, undefined));
      return;
    }
    this.#whole = { ...this.#shown!, pattern: result.pattern, findings: result.findings };
    this.#shown = this.#whole;
    this.#things.showWhole(this.#whole);
    performance.mark("table whole");
  }

  #judgeFit(troubles: readonly Trouble[], ways: readonly TroubleWithWays[] | undefined): void {
    if (this.#shown && this.#figures) this.#judge(judgedFit(this.#shown, this.#figures, troubles, ways));
  }

  #judge(judged: Judged): void {
    this.#judged = judged;
    this.#things.judge(judged);
  }
}

type Fitting = Extract<FitResult, { readonly fits: true }>;

function withoutWindow(kit: CutKit): CutKit {
  return { ...kit, light: undefined, insert: undefined };
}

/** Where the picture of a kit that fits lies on the front. */
function placeOf(kit: CutKit): Shown["place"] {
  return placePicture(kit, faceOfFitting(kit));
}
