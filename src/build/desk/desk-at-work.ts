import type { DeskNews, DeskState } from "../../input/desk/protocol.ts";
import { contentPath } from "../../input/files/content-folder.ts";
import { BringRoom } from "./bring-room.ts";
import type { Desk } from "./desk.ts";
import { openDesk } from "./desk-server.ts";
import { waitingDesk } from "./desk-state.ts";
import { type DeskWords, deskWords } from "./desk-words.ts";
import { DrawingThread } from "./drawing-thread.ts";
import { News } from "./news.ts";
import { PageFiles } from "./page-files.ts";
import { Texts } from "./texts.ts";

/** Where a desk stands. */
export type DeskPlace = Pick<Desk, "base" | "output" | "site" | "print" | "visit">;

/** What changes the page of the desk itself. */
const OF_PAGE = /^(src\/page\/|layouts\/styles\/)/;

/** What belongs to one kit or class; everything else they share. */
const OF_ONE = /\/(kits|classes)\/[^/]+\//;

/** The desk while the site is served: what it shows, and its server. */
export class DeskAtWork {
  readonly #place: DeskPlace;
  readonly #news = new News();
  readonly #texts: Texts;
  readonly #bring: BringRoom;
  readonly #files: PageFiles;
  readonly #drawing: DrawingThread;
  #state: DeskState;
  #origin: string | undefined;
  #words: DeskWords | undefined;

  constructor(place: DeskPlace) {
    this.#place = place;
    this.#texts = new Texts(place.base, this.#news);
    this.#bring = new BringRoom({ base: place.base, content: contentPath() });
    this.#files = new PageFiles(() => this.words);
    this.#drawing = new DrawingThread({ base: place.base, content: contentPath() });
    this.#state = waitingDesk(place.base, this.words.title, this.words.language);
  }

  /** Opens it at the first free port from `port` on. @returns the address to open it by @throws BuildError */
  async open(port: number): Promise<string> {
    const own = {
      news: this.#news,
      texts: this.#texts,
      bring: this.#bring,
      files: this.#files,
      drawing: this.#drawing,
    };
    const desk = { ...this.#place, ...own, state: () => this.#state };
    const { address, origin } = await openDesk(desk, port);
    this.#origin = origin;
    return address;
  }

  /** What the served site shares with the desk. */
  get shared() {
    return { news: this.#news, files: this.#files, state: () => this.#state, desk: () => this.#origin };
  }

  /** The words that it speaks. */
  get words(): DeskWords {
    this.#words ??= deskWords(this.#place.base);
    return this.#words;
  }

  /** Shows what was found of the site. */
  show(state: DeskState): void {
    if (state.site.language !== this.words.language) this.#forgetWords();
    this.#state = state;
    this.#news.tell({ news: "state" });
  }

  /** Tells the pages that are open. */
  tell(news: DeskNews): void {
    this.#news.tell(news);
  }

  /** Files below the project changed, by whomever. */
  follow(paths: readonly string[]): void {
    this.#texts.follow(paths);
    if (paths.some((path) => path.includes("/words/") || path.endsWith("/site.yaml"))) this.#forgetWords();
    if (paths.some((path) => !OF_ONE.test(path))) this.#drawing.forget();
    if (paths.some((path) => OF_PAGE.test(path))) this.#files.forget();
  }

  #forgetWords(): void {
    this.#words = undefined;
    this.#files.forget();
  }
}
