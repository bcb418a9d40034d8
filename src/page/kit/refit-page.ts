import { type AddressRead, fromAddress, toAddress } from "../../core/refit/address.ts";
import { type Refit, refitKit } from "../../core/refit/refit.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import type { KitView } from "../../output/views/kit-view.ts";
import { ignoredText } from "../../words/fields.ts";
import * as say from "../../words/messages.ts";
import { keepBook, keptBook } from "../shared/kept-book.ts";
import { type KitData, loadKitData } from "../shared/kit-data.ts";
import { LoadError } from "../shared/load-script.ts";
import { hasWrongField } from "../shared/marked-control.ts";
import { showOwnBook } from "../view3d/follow.ts";
import { FitAnswer } from "./fit-answer.ts";
import { readPanel, touchedBy, writePanel } from "./fit-panel.ts";
import { FitTelling } from "./fit-telling.ts";
import { fitted } from "./fitted.ts";
import { FrontPictures } from "./front-pictures.ts";
import { giveFile, isFitted } from "./give-file.ts";
import { isHeld } from "./held.ts";
import { carryBook } from "./packet-links.ts";
import { fillParts, fillSteps, isSlow, partsToFill, type Reach } from "./page-parts.ts";
import { drawWays } from "./way-pictures.ts";

/** What is out of sight, light and window follow this long after the last key, ms; what is in sight follows at once. */
const REST = 200;

/** Binds the fit panel of a kit page, and shows the book that the page was opened with. What it gives takes figures of another. */
export function bindRefit(form: HTMLFormElement): (book: Refit) => void {
  const page = new RefitPage(form);
  form.addEventListener("input", (event) => page.follow((event.target as HTMLInputElement).name));
  form.addEventListener("reset", (event) => {
    event.preventDefault();
    page.show();
  });
  form.querySelector("[data-refit-keep]")?.addEventListener("click", () => page.keep());
  form.querySelector("[data-refit-kept]")?.addEventListener("click", () => page.show(keptBook()));
  document.querySelector("main")?.addEventListener("click", (event) => page.giveFile(event));
  const radios = [...document.querySelectorAll<HTMLInputElement>('.hero input[name="units"]')];
  for (const radio of radios) radio.addEventListener("change", () => page.measureIn(otherUnits(radio)));
  // What was kept from another page may differ from the units that this page was built in.
  const other = radios.find((radio) => radio.checked && !radio.defaultChecked);
  if (other || location.search.length > 1) page.open(other && otherUnits(other));
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
  #view: KitView | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;
  /** Paints at once what still waits; undefined where nothing waits. */
  #settle: (() => void) | undefined;
  #pictures = new FrontPictures();
  #answer: FitAnswer;
  #telling: FitTelling;
  /** The refit that the page was last shown for, light and window included; at first the kit's own book. */
  #shown: Refit = {};
  /** Whether parts of the page follow another book, or stand in other units. */
  #ahead = false;
  /** Fields that the reader has written; the others follow from them. */
  #touched = new Set<string>();

  constructor(form: HTMLFormElement) {
    this.#form = form;
    this.#answer = new FitAnswer(form.querySelector<HTMLElement>("[data-refit-state]")!);
    this.#telling = new FitTelling(this.#answer, {
      take: (refit) => this.show({ refit, ignored: [] }),
      draw: async (ways) => drawWays((await this.#data())!, ways),
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

  /** A link to a file of the kit gives the file for the reader's book, and in a form that no build wrote for the kit's own, too. */
  async giveFile(event: Event): Promise<void> {
    const link = (event.target as Element).closest<HTMLAnchorElement>("a[href]");
    const address = link?.getAttribute("href") ?? "";
    const isMade = link?.dataset["made"] !== undefined;
    if ((Object.keys(this.#refit).length === 0 && !isHeld() && !isMade) || !isFitted(address)) return;
    event.preventDefault();
    if (isMade && !this.#view && !isHeld()) await this.show({ refit: this.#refit, ignored: [] });
    this.#settle?.();
    if (isHeld() || !this.#view) {
      this.#answer.add(say.fitPanelFilesWait());
      return;
    }
    try {
      if (!(await giveFile(address, this.#view))) this.#answer.add(say.fitPanelNoFile());
    } catch (error) {
      if (!(error instanceof LoadError)) throw error;
      this.#answer.add(say.loadFileMaker());
    }
  }

  async #data(): Promise<KitData | undefined> {
    try {
      const data = await loadKitData("kit-data.js");
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
    clearTimeout(this.#timer);
    this.#refit = refit;
    writePanel(this.#form, refitKit(data.kit, refit), this.#touched);
    this.#paint(data, "in sight");
    this.#settle = () => {
      clearTimeout(this.#timer);
      this.#settle = undefined;
      this.#paint(data, "all");
      const view = this.#view;
      // A task of its own: with thousands of leaves each takes a while.
      this.#timer = setTimeout(() => this.#draw(view));
    };
    this.#timer = setTimeout(this.#settle, REST);
    const address = toAddress(refit);
    history.replaceState(null, "", `${location.pathname}${address ? `?${address}` : ""}${location.hash}`);
  }

  async #draw(view: KitView | undefined): Promise<void> {
    try {
      if (view) await fillSteps(view, () => this.#view === view);
      if (view) await this.#pictures.draw(view);
    } catch (error) {
      if (!(error instanceof LoadError)) throw error;
      this.#answer.add(say.loadFrontPicture());
    }
    performance.mark("fit settled");
  }

  #paint(data: KitData, reach: Reach): void {
    const start = performance.now();
    const result = fitted(data, this.#refit, reach === "in sight");
    const filled = "view" in result ? fillParts(partsToFill(data.kit, reach), result.view) : [];
    performance.measure(`fit ${reach}`, { start });
    this.#view = "view" in result ? result.view : undefined;
    if ("failure" in result) {
      if (reach === "all") this.#goBack(data);
      this.#telling.misfit(result);
      return;
    }
    for (const { part, text } of filled) part.innerHTML = text;
    this.#ahead = reach === "in sight";
    if (reach === "all") this.#show(result.view);
    const changed = Object.keys(this.#refit).length > 0;
    this.#form.querySelector<HTMLElement>("[data-refit-keep]")!.hidden = !changed;
    if (hasWrongField(this.#form)) this.#telling.wrongField();
    else if (reach === "all" || !isSlow(data.kit)) this.#telling.fit(result, changed ? data.kit : undefined);
  }

  /** What leads on from the page follows only a book that fits with light and window. */
  #show(view: KitView): void {
    this.#shown = this.#refit;
    showOwnBook(view);
    carryBook(toAddress({ ...this.#refit, ...(this.#units && { units: this.#units }) }));
  }

  /** Fills the parts again that follow a book that did not fit after all, or stand in other units. */
  #goBack(data: KitData): void {
    if (!this.#ahead) return;
    this.#ahead = false;
    const last = fitted(data, this.#shown);
    if ("failure" in last) return;
    for (const { part, text } of fillParts(partsToFill(data.kit, "all"), last.view)) part.innerHTML = text;
    void fillSteps(last.view, () => this.#view === undefined);
  }
}
