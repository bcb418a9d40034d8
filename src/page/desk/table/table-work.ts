import { type CutKit, isCutKit } from "../../../core/kit/cut-kit.ts";
import { differencesOf } from "../../../core/makeability/differences.ts";
import { makeabilityOf } from "../../../core/makeability/makeability.ts";
import { placePicture } from "../../../core/makeability/picture-place.ts";
import { faceOf, layOutPicture } from "../../../core/pattern/face.ts";
import { fitKit } from "../../../core/pattern/fit-kit.ts";
import type { DeskShape } from "../../../input/desk/protocol.ts";
import type { StatedNow } from "../draft/desk-kit.ts";
import { judgedFit, judgedSoon, judgedUnfit } from "./judged.ts";
import type { Shown } from "./shown.ts";
import type { Judged } from "./slip-view.ts";
import type { Things } from "./things.ts";

/** Works out what the things show: the leaves at once, light, window and judgement when nothing has changed for a moment. */
export class TableWork {
  readonly #things: Things;
  readonly #stale: (isStale: boolean) => void;
  #stated: StatedNow | undefined;
  #shapes: readonly DeskShape[] = [];
  #whole: Shown | undefined;
  #judged: Judged | undefined;
  #waits: ReturnType<typeof setTimeout> | undefined;

  constructor(things: Things, stale: (isStale: boolean) => void) {
    this.#things = things;
    this.#stale = stale;
  }

  lay(stated: StatedNow, shapes: readonly DeskShape[], shelf: readonly string[]): void {
    if (stated === this.#stated && shapes === this.#shapes) return;
    this.#stated = stated;
    this.#shapes = shapes;
    const { kit } = stated;
    if (!isCutKit(kit)) return;
    const result = fitKit({ ...kit, light: undefined, insert: undefined });
    clearTimeout(this.#waits);
    this.#stale(!result.fits);
    if (!result.fits) {
      this.#things.judge(judgedUnfit({ kit, stated: stated.text.data }, result.finding, undefined));
      return;
    }
    const pattern = {
      ...result.pattern,
      pocket: kit.light && this.#whole?.pattern.pocket,
      window: kit.insert && this.#whole?.pattern.window,
    };
    const shown = { kit, stated: stated.text.data, pattern, findings: result.findings, place: placeOf(kit), shelf };
    this.#things.show(shown, shapes);
    this.#things.judge(this.#judged ?? judgedSoon(shown));
    this.#waits = setTimeout(() => this.#finish(shown), 50);
  }

  dispose(): void {
    clearTimeout(this.#waits);
  }

  #finish(quick: Shown): void {
    const { kit } = quick;
    const result = fitKit(kit);
    this.#stale(!result.fits);
    if (!result.fits) {
      this.#judged = undefined;
      this.#things.judge(judgedUnfit(quick, result.finding, undefined));
      return;
    }
    this.#whole = { ...quick, pattern: result.pattern, findings: result.findings };
    this.#things.show(this.#whole, this.#shapes);
    const made = makeabilityOf(this.#whole);
    this.#things.mark(differencesOf(made));
    this.#judged = judgedFit(this.#whole, made);
    this.#things.judge(this.#judged);
  }
}

/** Where the picture of a kit that fits lies on the front. */
function placeOf(kit: CutKit): Shown["place"] {
  const layout = layOutPicture(kit);
  if ("failure" in layout) throw new Error(`${kit.slug} fits, but has no layout: ${layout.failure.kind}`);
  return placePicture(kit, faceOf(kit, layout.value));
}
