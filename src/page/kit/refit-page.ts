import { isCutKit } from "../../core/kit/cut-kit.ts";
import { type AddressRead, fromAddress, toAddress } from "../../core/refit/address.ts";
import { type Refit, refitKit } from "../../core/refit/refit.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import { ignoredText } from "../../words/fields.ts";
import * as say from "../../words/messages.ts";
import { after } from "../shared/after.ts";
import { keepBook, keptBook } from "../shared/kept-book.ts";
import { type KitData, loadKitData } from "../shared/kit-data.ts";
import { LoadError } from "../shared/load-script.ts";
import { hasWrongField } from "../shared/marked-control.ts";
import { fetchedStep } from "../shared/step-drawings.ts";
import { showOwnBook } from "../view3d/follow.ts";
import { needWay } from "./corner-way.ts";
import { FitAnswer } from "./fit-answer.ts";
import type { FitMade } from "./fit-maker.ts";
import { readPanel, touchedBy, writePanel } from "./fit-panel.ts";
import { FitTelling } from "./fit-telling.ts";
import { FitWork } from "./fit-work.ts";
import { viewOf } from "./fitted.ts";
import { FrontPictures } from "./front-pictures.ts";
import { giveFile, isFitted } from "./give-file.ts";
import { isHeld } from "./held.ts";
import { carryBook } from "./packet-links.ts";
import { fillParts, isSlow, type PartsToFill, partOf, partsToFill, type Reach } from "./page-parts.ts";
import { knowMarkup, putMarkup } from "./put-markup.ts";
import { drawWays } from "./way-pictures.ts";

/** This script, as a kit's page finds it: a worker runs it, too. */
const SCRIPT = "../../assets/scripts/refit.js";
const DATA = "kit-data.js";

/** What is in sight is not painted by itself where all that is shown comes within this, ms: each painting holds up the next. */
const SOON = 50;

/** What nobody sees waits this long for another key, ms: the worker would be busy with it when that comes. */
const QUIET = 120;

/** Binds the fit panel of a kit page, and shows the book that the page was opened with. What it gives takes figures of another. */
export function bindRefit(form: HTMLFormElement): (book: Refit) => void {
  const page = new RefitPage(form);
  form.addEventListener("input", (event) => page.follow((event.target as HTMLInputElement).name));
  form.addEventListener("reset", (event) => {
    event.preventDefault();
    page.show();
  });
  form.querySelector("[data-refit-keep]")?.addEventListener("click", () => page.keep());
  form.querySelector("[data-refit-match]")?.addEventListener("click", () => page.match());
  form.querySelector("[data-refit-kept]")?.addEventListener("click", () => page.show(keptBook()));
  document.querySelector("main")?.addEventListener("click", (event) => page.giveFile(event));
  const radios = [...document.querySelectorAll<HTMLInputElement>('.hero input[name="units"]')];
  for (const radio of radios) radio.addEventListener("change", () => page.measureIn(otherUnits(radio)));
  // What was kept from another page may differ from the units that this page was built in.
  const other = radios.find((radio) => radio.checked && !radio.defaultChecked);
  if (other || location.search.length > 1) page.open(other && otherUnits(other));
  else page.wake();
  return (book) => page.take(book);
}

/** The units of a choice; undefined for the kit's own. */
function otherUnits({ value, defaultChecked }: HTMLInputElement): UnitSystem | undefined {
  return defaultChecked ? undefined : (value as UnitSystem);
}

class RefitPage {
  #form: HTMLFormElement;
  #refit: Refit = {};
  /** The reader's choice; undefined while it is the kit's own. */
  #units: UnitSystem | undefined;
  #work: FitWork | undefined;
  /** Counts what was asked for: an answer to an older one comes too late. */
  #turn = 0;
  /** Light and window included: is done when the page shows what was asked for last. */
  #settled: Promise<void> = Promise.resolve();
  #pictures = new FrontPictures((error) => this.#notDrawn(error));
  #answer: FitAnswer;
  #telling: FitTelling;
  /** The refit that the page was last shown for, light and window included; at first the kit's own book. */
  #shown: Refit = {};
  /** Whether parts of the page may follow another book than it was last shown for, or stand in other units. */
  #ahead = false;
  /** Fields that the reader has written; the others follow from them. */
  #touched = new Set<string>();
  /** Whether all that is shown came soon the last time: then what is in sight need not be ready before it. */
  #cameSoon = false;

  constructor(form: HTMLFormElement) {
    this.#form = form;
    this.#answer = new FitAnswer(form.querySelector<HTMLElement>("[data-refit-state]")!);
    this.#telling = new FitTelling(this.#answer, {
      take: (refit) => this.show({ refit, ignored: [] }),
      draw: async (ways) => {
        const [turn, units] = [this.#turn, this.#units];
        await drawWays(ways, (refit) => this.#work!.make(turn, "front", { refit, units }));
      },
    });
  }

  /** Shows the book of the page's address; where there is none, the page stays as it is built unless it has other units. */
  async open(units: UnitSystem | undefined): Promise<void> {
    this.#units = units;
    const data = await this.#data();
    if (!data) return;
    const asked = fromAddress(new URLSearchParams(location.search), data.kit);
    if (units || asked.ignored.length > 0 || Object.keys(asked.refit).length > 0) this.#put(data, asked);
  }

  /** Has a worker make the page as it stands, so that it need not be written anew where it stays the same. */
  async wake(): Promise<void> {
    const data = await this.#data();
    if (!data || this.#turn > 0 || !this.#work!.isBeside) return;
    const { shown: parts, unseen } = partsToFill(data.kit);
    const made = await this.#work!.make(0, "fit", { refit: {}, units: undefined, parts, quick: false });
    if (this.#turn > 0 || !made || "failure" in made) return;
    for (const [name, markup] of made.parts) knowMarkup(partOf(name)!, markup);
    // The steps stand there with drawings that are written otherwise.
    for (const name of unseen.filter((one) => one !== "steps")) {
      const markup = await this.#work!.make(0, "part", name);
      if (this.#turn > 0 || markup === undefined) return;
      knowMarkup(partOf(name)!, markup);
    }
  }

  /** Follows what stands in the panel. */
  async follow(name: string): Promise<void> {
    this.#touched.add(name);
    const data = await this.#data();
    if (!data) return;
    this.#answer.standing = [];
    const refit = readPanel(this.#form, data, { touched: this.#touched, shown: this.#refit });
    if (hasWrongField(this.#form)) this.#telling.wrongField();
    else this.#apply(data, refit);
  }

  /** Puts a refit into the panel and on the page, and tells what of it is left out. */
  async show(asked: AddressRead = { refit: {}, ignored: [] }): Promise<void> {
    const data = await this.#data();
    if (data) this.#put(data, asked);
  }

  /** Shows the page, its panel and its drawings in other units; the book stays. */
  async measureIn(units: UnitSystem | undefined): Promise<void> {
    this.#units = units;
    this.#ahead = true;
    await this.show({ refit: this.#refit, ignored: [] });
  }

  /** Takes figures that were asked for one by one. */
  take(book: Refit): void {
    this.show({ refit: { ...this.#refit, ...book }, ignored: [] });
  }

  keep(): void {
    const kept = keepBook(this.#refit);
    this.#answer.say([kept ? say.fitPanelSaved() : say.fitPanelNotSaved()]);
    this.#form.querySelector<HTMLElement>("[data-refit-kept]")!.hidden = !kept;
  }

  /** Tells how closely folded corners match the drawing on the reader's book: it takes too long to be told at every key. */
  async match(): Promise<void> {
    const turn = this.#turn;
    this.#answer.add(say.fitPanelMatching());
    await this.#settled;
    const words = await this.#work!.make(turn, "match");
    if (words !== undefined && turn === this.#turn) this.#answer.replace(say.fitPanelMatching(), words);
  }

  /** A link to a file of the kit gives the file for the reader's book, and in a form that no build wrote for the kit's own, too. */
  async giveFile(event: Event): Promise<void> {
    const link = (event.target as Element).closest<HTMLAnchorElement>("a[href]");
    const address = link?.getAttribute("href") ?? "";
    const isMade = link?.dataset["made"] !== undefined;
    if ((Object.keys(this.#refit).length === 0 && !isHeld() && !isMade) || !isFitted(address)) return;
    event.preventDefault();
    if (isMade && this.#turn === 0 && !isHeld()) await this.show({ refit: this.#refit, ignored: [] });
    await this.#settled;
    if (isHeld() || !this.#work) {
      this.#answer.add(say.fitPanelFilesWait());
      return;
    }
    try {
      const text = await this.#work.make(this.#turn, "file", address);
      const { kit } = (await this.#data())!;
      if (text === undefined) this.#answer.add(say.fitPanelNoFile());
      else giveFile(address, text, kit.slug);
    } catch (error) {
      if (!(error instanceof LoadError)) throw error;
      this.#answer.add(say.loadFileMaker());
    }
  }

  async #data(): Promise<KitData | undefined> {
    try {
      const data = await loadKitData(DATA);
      this.#work ??= new FitWork(data, SCRIPT, DATA);
      return this.#units ? { ...data, kit: { ...data.kit, units: this.#units } } : data;
    } catch (error) {
      if (!(error instanceof LoadError)) throw error;
      this.#answer.say([say.loadKitData(), say.fitPanelStillOwn()]);
      return undefined;
    }
  }

  #put(data: KitData, { refit, ignored }: AddressRead): void {
    this.#answer.standing = ignored.map((one) => ignoredText(one, data.kit));
    this.#touched = touchedBy(data, refit);
    writePanel(this.#form, refitKit(data.kit, refit), new Set());
    this.#apply(data, refit);
  }

  #apply(data: KitData, refit: Refit): void {
    this.#refit = refit;
    this.#turn += 1;
    performance.mark("fit asked");
    this.#settled = this.#follow(data, this.#turn);
    writePanel(this.#form, refitKit(data.kit, refit), this.#touched);
  }

  /** Paints what is in sight, unless all comes soon, then all that is shown; stops where another book is asked for meanwhile. */
  async #follow(data: KitData, turn: number): Promise<void> {
    const parts = partsToFill(data.kit);
    // All is asked for at once.
    const quick = this.#make("in sight", this.#cameSoon ? [] : parts.quick);
    const whole = this.#make("all", parts.shown);
    const drawn = this.#draw(turn, parts);
    await after();
    if (turn !== this.#turn) return;
    this.#keepAddress();
    const cameWhole = whole.then((made) => made !== undefined);
    this.#cameSoon = this.#work!.isBeside && (await Promise.race([cameWhole, after(SOON)])) === true;
    for (const [reach, made] of [["in sight", quick] as const, ["all", whole] as const].slice(this.#cameSoon ? 1 : 0)) {
      const result = await made;
      if (!result || turn !== this.#turn) return;
      await this.#paint(data, result, reach);
    }
    await drawn;
    if (turn !== this.#turn) return;
    performance.mark("fit settled");
    void this.#fillRest(turn, parts);
  }

  /** Puts the book into the address: that takes a browser a while, in which the worker is busy. */
  #keepAddress(): void {
    const address = toAddress(this.#refit);
    history.replaceState(null, "", `${location.pathname}${address ? `?${address}` : ""}${location.hash}`);
  }

  async #make(reach: Reach, parts: readonly string[]): Promise<FitMade | undefined> {
    const start = performance.now();
    const [refit, units] = [this.#refit, this.#units];
    const made = await this.#work!.make(this.#turn, "fit", { refit, units, parts, quick: reach === "in sight" });
    performance.measure(`fit ${reach}`, { start });
    return made;
  }

  async #draw(turn: number, { stepsShown }: PartsToFill): Promise<void> {
    const pictures = this.#pictures.draw((file) => this.#work!.make(turn, "file", file));
    const steps = stepsShown && this.#fillPart(turn, "steps");
    await Promise.all([pictures, steps]).catch((error) => this.#notDrawn(error));
  }

  /** What nobody sees follows part by part, so that another key need not wait for it; before it a picture out of sight. */
  async #fillRest(turn: number, { unseen }: PartsToFill): Promise<void> {
    await after(QUIET);
    if (turn !== this.#turn) return;
    if (!isHeld()) {
      await this.#pictures.drawSeen().catch((error) => this.#notDrawn(error));
      for (const name of unseen) await this.#fillPart(turn, name);
      if (turn === this.#turn) this.#ahead = false;
    }
    if (turn !== this.#turn) return;
    performance.mark("fit filled");
  }

  /** A part of the book that was made last. */
  async #fillPart(turn: number, name: string): Promise<void> {
    const markup = turn === this.#turn ? await this.#work!.make(turn, "part", name) : undefined;
    const place = partOf(name);
    const wanted = (): boolean => turn === this.#turn;
    if (place && markup !== undefined && wanted()) await putMarkup(place, markup, wanted);
  }

  #notDrawn(error: unknown): void {
    if (!(error instanceof LoadError)) throw error;
    this.#answer.add(say.loadFrontPicture());
  }

  async #paint(data: KitData, made: FitMade, reach: Reach): Promise<void> {
    const kit = refitKit(data.kit, this.#refit);
    if ("failure" in made) {
      this.#telling.misfit(made, kit);
      if (reach === "all") await this.#goBack(data);
      return;
    }
    const turn = this.#turn;
    const changed = Object.keys(this.#refit).length > 0;
    this.#ahead ||= reach === "in sight";
    this.#form.querySelector<HTMLElement>("[data-refit-keep]")!.hidden = !changed;
    if (hasWrongField(this.#form)) this.#telling.wrongField();
    else if (reach === "all" || !isSlow(data.kit)) {
      if (changed) this.#telling.fit(made, kit);
      else this.#telling.own();
    }
    if (reach === "all") this.#show(data);
    await fillParts(made.parts, () => turn === this.#turn);
  }

  /** What leads on from the page follows only a book that fits with light and window. */
  #show(data: KitData): void {
    const refit = this.#refit;
    this.#shown = refit;
    this.#ahead = true;
    const kit = refitKit(data.kit, refit);
    const byCorners = !isCutKit(kit);
    // Where corners are folded there is neither light nor window.
    document.querySelector("main")?.classList.toggle("by-corners", byCorners);
    this.#form.querySelector<HTMLElement>("[data-refit-match]")!.hidden =
      !byCorners || kit.fit.view === "along" || Object.keys(refit).length === 0;
    showOwnBook(
      () => needWay(kit),
      () => {
        const result = viewOf(data, kit, fetchedStep);
        if ("failure" in result) throw new Error(`a book that fitted fits no more: ${result.failure.kind}`);
        return result.view;
      },
    );
    carryBook(toAddress({ ...refit, ...(this.#units && { units: this.#units }) }));
  }

  /** Fills the parts again that follow a book that did not fit after all, or stand in other units. */
  async #goBack({ kit }: KitData): Promise<void> {
    if (!this.#ahead) return;
    const [turn, units, toFill] = [this.#turn, this.#units, partsToFill(kit)];
    const asked = { refit: this.#shown, units, parts: toFill.shown, quick: false };
    const last = await this.#work!.make(turn, "fit", asked);
    if (!last || "failure" in last || turn !== this.#turn) return;
    await fillParts(last.parts, () => turn === this.#turn);
    for (const name of [...(toFill.stepsShown ? ["steps"] : []), ...toFill.unseen]) await this.#fillPart(turn, name);
    if (turn === this.#turn) this.#ahead = false;
  }
}
