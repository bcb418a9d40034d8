import type { Failure } from "../../core/findings/failure.ts";
import type { Offer } from "../../core/refit/offer.ts";
import { type Refit, refitKit } from "../../core/refit/refit.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import type { AnyKitView } from "../../output/views/any-kit-view.ts";
import type { KitData } from "../shared/kit-data.ts";
import type { loadScript } from "../shared/load-script.ts";
import { fetchedStep, fetchStepDrawings } from "../shared/step-drawings.ts";
import { needWay } from "./corner-way.ts";
import { fitted, viewOf } from "./fitted.ts";
import { fileText } from "./give-file.ts";
import { renderPart } from "./render.ts";
import { verdictWords } from "./verdict-words.ts";

/** A book that a page asks for. `units` are the reader's choice; undefined for the kit's own. */
export interface AskedBook {
  readonly refit: Refit;
  readonly units: UnitSystem | undefined;
}

/** What is to be made of it: the parts by their names; `quick` leaves light, window and offers out. */
export interface FitAsk extends AskedBook {
  readonly parts: readonly string[];
  readonly quick: boolean;
}

/** What a page shows of a book: plain text, so that it may come from a worker. */
export type FitMade = Made | NotMade;

interface Made {
  /** Each part's name with its markup. */
  readonly parts: readonly (readonly [string, string])[];
  /** How the kit comes out, beside its author's book. */
  readonly words: readonly [string, ...string[]];
  readonly offers: readonly Offer[] | undefined;
}

interface NotMade {
  readonly failure: Failure;
  readonly offers: readonly Offer[] | undefined;
}

/** Makes what a kit's page shows of a reader's book; knows nothing of the page. */
export class FitMaker {
  readonly #data: KitData;
  readonly #load: typeof loadScript;
  /** The last book that was made whole. */
  #view: AnyKitView | undefined;
  /** The last book that was made without light and window, and what it was asked with. */
  #open: { readonly asked: string; readonly view: AnyKitView } | undefined;

  /** `load` fetches scripts where this works. */
  constructor(data: KitData, load: typeof loadScript) {
    this.#data = data;
    this.#load = load;
  }

  /** @throws LoadError */
  async fit({ refit, units, parts, quick }: FitAsk): Promise<FitMade> {
    const data = this.#in(units);
    await this.#needWay(refit);
    const asked = JSON.stringify([refit, units]);
    const open = this.#open?.asked === asked ? this.#open.view : undefined;
    const result = fitted(data, refit, { quick, open });
    const made = "view" in result ? result.view : undefined;
    if (quick) this.#open = made && { asked, view: made };
    else this.#view = made;
    if ("failure" in result) return { failure: result.failure, offers: result.offers };
    const { view, judgement, offers } = result;
    return {
      parts: parts.map((name) => [name, renderPart(name, view)] as const),
      words: verdictWords(data.kit, view, judgement),
      offers,
    };
  }

  /** A part of the last book; the steps with their drawings. */
  async part(name: string): Promise<string | undefined> {
    if (name === "steps") await fetchStepDrawings("../../", this.#load);
    return this.#view && renderPart(name, this.#view);
  }

  /** How closely the last book matches the drawing where its corners are folded; undefined where that cannot be told. */
  match(): string | undefined {
    return this.#view?.way === "corner" ? self.leaflightCorner!.match(this.#view) : undefined;
  }

  /** A file of the last book. @throws LoadError */
  async file(address: string): Promise<string | undefined> {
    return this.#view && fileText(address, this.#view, this.#load);
  }

  /** The front of another book, as a picture. @throws LoadError */
  async front({ refit, units }: AskedBook): Promise<string | undefined> {
    const data = this.#in(units);
    await this.#needWay(refit);
    const result = viewOf(data, refitKit(data.kit, refit), fetchedStep);
    return "view" in result ? fileText("front.svg", result.view, this.#load) : undefined;
  }

  #needWay(refit: Refit): Promise<void> {
    return needWay(refitKit(this.#data.kit, refit), "../../", this.#load);
  }

  #in(units: UnitSystem | undefined): KitData {
    return units ? { ...this.#data, kit: { ...this.#data.kit, units } } : this.#data;
  }
}
