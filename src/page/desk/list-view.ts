import type { DeskEntry, DeskNews, PrintAsk } from "../../input/desk/protocol.ts";
import { deskList, type ListedPrinting, printingLine } from "../../output/parts/desk/desk-list.ts";
import * as say from "../../words/messages.ts";
import { Covers } from "./covers.ts";
import { DeskRefused } from "./desk-server.ts";
import type { OpenDesk, View } from "./view.ts";

/** How far the printing of each entry is, whichever view is open; by kind and name: `kit moon`. */
const printings = new Map<string, ListedPrinting>();

/** All kits and classes with their state. */
export const listView: View = (place, desk) => {
  const list = new ListView(place, desk);
  desk.listen((news) => list.hear(news));
  return () => {
    list.close();
    return true;
  };
};

class ListView {
  readonly #place: HTMLElement;
  readonly #desk: OpenDesk;
  readonly #ends = new AbortController();
  readonly #covers = new Covers();
  #find = "";

  constructor(place: HTMLElement, desk: OpenDesk) {
    this.#place = place;
    this.#desk = desk;
    place.addEventListener("click", (event) => void this.#press(event), this.#ends);
    place.addEventListener("input", (event) => this.#look(event), this.#ends);
    this.#show();
  }

  close(): void {
    this.#covers.close();
    this.#ends.abort();
  }

  hear(news: DeskNews): void {
    if (news.news === "state") this.#show();
    if (news.news !== "printing") return;
    const { kind, slug, ...far } = news;
    printings.set(`${kind} ${slug}`, far);
    this.#showPrinting(`${kind} ${slug}`);
  }

  /** Shows the list anew; where she was on it, and what she opened, stays. */
  #show(): void {
    const held = document.activeElement instanceof HTMLElement ? whereIn(document.activeElement) : undefined;
    const opened = [...this.#place.querySelectorAll("details[open]")].map((one) => whereIn(one)).filter(Boolean);
    this.#place.innerHTML = String(deskList({ ...this.#desk.state(), site: this.#desk.site() }));
    this.#covers.watch(this.#place);
    for (const at of opened) for (const one of this.#place.querySelectorAll<HTMLDetailsElement>(at!)) one.open = true;
    for (const key of printings.keys()) this.#showPrinting(key);
    const field = this.#place.querySelector<HTMLInputElement>("[data-find]");
    if (field) field.value = this.#find;
    this.#sift();
    if (held) this.#place.querySelector<HTMLElement>(held)?.focus({ preventScroll: true });
  }

  #showPrinting(key: string): void {
    const [kind, slug] = key.split(" ") as [PrintAsk["kind"], string];
    const all = kind === "kit" ? this.#desk.state().kits : this.#desk.state().classes;
    const entry = all.find((one) => one.slug === slug);
    const item = this.#place.querySelector(`[data-entry="${key}"]`);
    const far = printings.get(key);
    if (!entry || !item || !far) return;
    item.querySelector("[data-printing]")!.innerHTML = String(printingLine(far, entry, this.#desk.site() ?? ""));
    item.querySelector<HTMLButtonElement>("[data-print]")?.toggleAttribute("disabled", far.ended !== true);
  }

  #look({ target }: Event): void {
    if (!(target instanceof HTMLInputElement) || target.dataset["find"] === undefined) return;
    this.#find = target.value;
    this.#sift();
  }

  /** Only what has the words in its title stays in sight. */
  #sift(): void {
    const wanted = this.#find.trim().toLocaleLowerCase();
    for (const item of this.#place.querySelectorAll<HTMLElement>("[data-title]"))
      item.hidden = !item.dataset["title"]!.toLocaleLowerCase().includes(wanted);
  }

  async #press({ target }: Event): Promise<void> {
    const button = target instanceof Element ? target.closest<HTMLButtonElement>("button") : null;
    const { open, line, column, print } = button?.dataset ?? {};
    try {
      if (open !== undefined) {
        await this.#desk.server.open({ file: open, line: numberOf(line), column: numberOf(column) });
        this.#desk.tell(say.deskOpeningFile({ file: open }));
      }
      if (print !== undefined) await this.#print(print);
    } catch (error) {
      if (!(error instanceof DeskRefused)) throw error;
      this.#desk.tell(error.message);
    }
  }

  async #print(key: string): Promise<void> {
    const [kind, slug] = key.split(" ") as [PrintAsk["kind"], DeskEntry["slug"]];
    printings.set(key, { done: 0, of: 0 });
    this.#showPrinting(key);
    try {
      await this.#desk.server.print({ kind, slug });
    } catch (error) {
      printings.delete(key);
      this.#show();
      throw error;
    }
  }
}

function numberOf(text: string | undefined): number | undefined {
  return text === undefined ? undefined : Number(text);
}

/** Where an element of an entry, or of the head, is: it is found there again when the list was written anew. */
function whereIn(element: Element): string | undefined {
  const entry = element.closest<HTMLElement>("[data-entry]")?.dataset["entry"];
  const mark = ["data-find", "data-print", "data-open", "class", "href"].find((name) => element.hasAttribute(name));
  if (mark === undefined) return undefined;
  const isPlain = mark === "href" ? ":not([class])" : "";
  const own = `${element.localName}[${mark}="${CSS.escape(element.getAttribute(mark)!)}"]${isPlain}`;
  return entry === undefined ? own : `[data-entry="${entry}"] ${own}`;
}
