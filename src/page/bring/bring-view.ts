import type { Brought, Look, Made } from "../../core/beginning/brought.ts";
import { FILE_LIMITS, MB } from "../../input/files/site-file.ts";
import { bringFrame } from "../../output/parts/bring/frame.ts";
import * as say from "../../words/messages.ts";
import { type BringHost, isRefused, type Refused } from "./bring-host.ts";
import { type Bringing, formOf, NOTHING_BROUGHT, slugShown, withPicture } from "./bringing.ts";
import { partOf } from "./fill.ts";
import { Looker } from "./looker.ts";
import { OriginPane } from "./origin-pane.ts";
import { ParticularsPane } from "./particulars-pane.ts";
import { ResultPane } from "./result-pane.ts";
import { SeenPane } from "./seen-pane.ts";
import { SteeringPane } from "./steering-pane.ts";

/** What a choice of files offers. */
const ACCEPT = ".svg,.png,.jpg,.jpeg,.webp,.avif,image/svg+xml,image/png,image/jpeg,image/webp,image/avif";

/** Being drawn is said only where it takes longer, ms. */
const SOON = 250;

/** Fills `place` with the table on which a picture becomes a kit. @returns whether it may be left, asked before it is */
export function bringView(place: HTMLElement, host: BringHost): () => boolean {
  place.innerHTML = String(bringFrame({ most: FILE_LIMITS.raster, accept: ACCEPT }));
  const table = new BringTable(place, host);
  return () => table.leave();
}

class BringTable {
  readonly #table: HTMLElement;
  readonly #host: BringHost;
  readonly #looker: Looker;
  readonly #result: ResultPane;
  readonly #panes: readonly { readonly show: (state: Bringing) => void }[];
  readonly #particulars: ParticularsPane;
  readonly #left = new AbortController();
  #state: Bringing = NOTHING_BROUGHT;
  /** The file that was brought last: the server may be another one by now. */
  #file: File | undefined;
  #look: Look | undefined;
  #asked = "";
  #isMaking = false;
  /** She wants it made as soon as it is drawn. */
  #isWanted = false;
  #isReading = false;
  #slow: ReturnType<typeof setTimeout> | undefined;

  constructor(table: HTMLElement, host: BringHost) {
    [this.#table, this.#host] = [table, host];
    const change = (make: (state: Bringing) => Bringing): void => this.#change(make(this.#state));
    const steering = new SteeringPane(table, change);
    this.#particulars = new ParticularsPane(table, change, host.taken);
    const seen = new SeenPane(table, change, (mark) => steering.find(mark));
    this.#panes = [new OriginPane(partOf(table, "origin"), host, change), steering, seen, this.#particulars];
    this.#result = new ResultPane(table);
    this.#looker = new Looker(host, {
      heard: (look) => this.#hear(look),
      refused: (why) => this.#refused(why),
      gone: () => this.#bringAgain(),
    });
    this.#listen();
    this.#show();
  }

  /** Ends the view, unless a picture was brought that she wants to keep. */
  leave(): boolean {
    if (this.#file && !this.#isMaking && !confirm(say.deskNewLeave())) return false;
    this.#left.abort();
    return true;
  }

  #listen(): void {
    const file = partOf(this.#table, "file") as HTMLInputElement;
    file.addEventListener("change", () => {
      void this.#bring([...(file.files ?? [])]);
      file.value = "";
    });
    partOf(this.#table, "make").addEventListener("click", () => void this.#make());
    const { signal } = this.#left;
    document.addEventListener("dragover", (event) => this.#over(event, true), { signal });
    document.addEventListener("dragleave", (event) => this.#over(event, event.relatedTarget !== null), { signal });
    document.addEventListener(
      "drop",
      (event) => {
        this.#over(event, false);
        void this.#bring([...(event.dataTransfer?.files ?? [])]);
      },
      { signal },
    );
    document.addEventListener(
      "paste",
      ({ clipboardData }) => {
        if (clipboardData?.files.length) void this.#bring([...clipboardData.files]);
      },
      { signal },
    );
    addEventListener(
      "beforeunload",
      (event) => {
        if (this.#file && !this.#isMaking) event.preventDefault();
      },
      { signal },
    );
  }

  #over(event: DragEvent, isOver: boolean): void {
    if (!event.dataTransfer?.types.includes("Files")) return;
    event.preventDefault();
    partOf(this.#table, "mat").classList.toggle("drop-here", isOver);
  }

  async #bring([file, ...more]: readonly File[]): Promise<void> {
    if (!file || this.#isReading) return;
    if (file.size > FILE_LIMITS.raster * MB) {
      this.#refused(say.deskNewTooLarge({ file: file.name, most: FILE_LIMITS.raster }));
      return;
    }
    this.#isReading = true;
    this.#tell(say.deskNewReading());
    const brought = await this.#send(file);
    this.#isReading = false;
    if (isRefused(brought)) return this.#refused(brought.refused);
    if ("hurdles" in brought) {
      this.#result.hurdles(brought.hurdles);
      this.#tell(say.deskNewToldHurdles());
      return;
    }
    this.#file = file;
    this.#change(withPicture(this.#state, brought));
    if (more.length > 0) this.#tell(say.deskNewOneFile());
    // Whoever chose a file by keys goes on where its levels are chosen.
    if (document.activeElement === document.body || document.activeElement?.id === "bring-file")
      partOf(this.#table, "steering").querySelector<HTMLElement>("input, select")?.focus();
  }

  async #send(file: File): Promise<Brought | Refused> {
    const bytes = await bytesOf(file);
    if (!bytes) return { refused: say.deskNewUnread({ file: file.name }) };
    return await this.#host.post<Brought>(`/api/new/bring?${new URLSearchParams({ name: file.name })}`, bytes);
  }

  /** The server was started again, or kept too many since. */
  async #bringAgain(): Promise<boolean> {
    const brought = this.#file && (await this.#send(this.#file));
    if (!brought || isRefused(brought) || "hurdles" in brought) {
      this.#refused(say.deskNewDrop());
      return false;
    }
    this.#asked = "";
    this.#change({ ...this.#state, brought });
    return true;
  }

  #change(state: Bringing): void {
    const isSame = state === this.#state;
    this.#state = state;
    if (isSame) this.#showMake();
    else this.#show();
  }

  #show(): void {
    for (const pane of this.#panes) pane.show(this.#state);
    const isEmpty = this.#state.origin === "file" && !this.#state.brought;
    partOf(this.#table, "drop").hidden = !isEmpty;
    this.#result.name(slugShown(this.#state, this.#host.taken()));
    this.#askToLook();
    this.#showMake();
  }

  /** Asks where the picture or its book became another; names change nothing of how it looks. */
  #askToLook(): void {
    const form = formOf(this.#state, []);
    const asked = form ? JSON.stringify({ ...form, slug: "", title: "", draft: false }) : "";
    if (asked === this.#asked) return;
    this.#asked = asked;
    if (!form) {
      this.#look = undefined;
      this.#result.show(undefined);
    } else this.#sayLater();
    this.#looker.ask(form);
  }

  #hear(look: Look): void {
    if (this.#left.signal.aborted || this.#asked === "") return;
    clearTimeout(this.#slow);
    this.#look = look;
    this.#result.show(look);
    this.#showMake();
    if (this.#isWanted && !this.#looker.isBusy) void this.#make();
  }

  #sayLater(): void {
    clearTimeout(this.#slow);
    this.#slow = setTimeout(() => {
      if (this.#looker.isBusy) this.#tell(say.deskNewToldLooking());
    }, SOON);
  }

  #refused(why: string): void {
    clearTimeout(this.#slow);
    this.#result.hurdles([{ place: undefined, given: say.deskNewFailed({ why }), allowed: "", remedy: "" }]);
    this.#tell(say.deskNewToldHurdles());
  }

  /** Whether all is there that a kit is made of. */
  get #isReady(): boolean {
    const isLooked = this.#look?.kit !== undefined && !this.#looker.isBusy;
    return isLooked && !this.#isMaking && this.#particulars.wrong() === null;
  }

  #showMake(): void {
    const button = partOf(this.#table, "make") as HTMLButtonElement;
    button.disabled = this.#asked === "";
    button.setAttribute("aria-disabled", String(!this.#isReady));
    if (this.#isMaking || this.#isReading || this.#looker.isBusy) return;
    const folder = `content/kits/${slugShown(this.#state, this.#host.taken())}`;
    if (this.#asked === "") this.#tell(say.deskNewToldNothing());
    else this.#tell(this.#isReady ? say.deskNewToldReady({ folder }) : say.deskNewToldHurdles());
  }

  #tell(sentence: string): void {
    const place = partOf(this.#table, "told");
    if (place.textContent !== sentence) place.textContent = sentence;
  }

  async #make(): Promise<void> {
    this.#isWanted = this.#looker.isBusy;
    // What was changed a moment ago is drawn first, and then made.
    if (this.#isWanted) return this.#tell(say.deskNewToldLooking());
    if (!this.#isReady) return this.#particulars.wrong()?.focus();
    const form = formOf(this.#state, this.#host.taken())!;
    const shape = this.#look!.kit!.fit.shape;
    this.#isMaking = true;
    this.#tell(say.deskNewToldMaking());
    const near = "height" in shape ? shape.height : undefined;
    const made = await this.#host.post<Made | { readonly gone: true }>("/api/new", { ...form, near });
    if ("slug" in made) return await this.#host.made(made.slug);
    this.#isMaking = false;
    if ("gone" in made) {
      if (await this.#bringAgain()) this.#showMake();
    } else if (isRefused(made)) this.#refused(made.refused);
    else {
      this.#result.hurdles(made.hurdles);
      this.#tell(say.deskNewToldHurdles());
    }
  }
}

/** The bytes of a file; undefined where it is gone since it was chosen. */
async function bytesOf(file: File): Promise<Uint8Array<ArrayBuffer> | undefined> {
  try {
    return new Uint8Array(await file.arrayBuffer());
  } catch (error) {
    if (error instanceof DOMException) return undefined;
    throw error;
  }
}
