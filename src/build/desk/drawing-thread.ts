import type { PictureAnswer, PictureAsk } from "../../input/desk/protocol.ts";
import { AskedThread, type ThreadPlace } from "./asked-thread.ts";

/** What it is asked: to draw what a text states. */
export interface DrawingQuestion {
  readonly draw: PictureAsk;
}

/** What it is told: something that all kits share has changed. */
export interface DrawingNews {
  readonly forget: true;
}

/** A thread that draws for the desk. */
export class DrawingThread {
  readonly #thread: AskedThread<DrawingQuestion>;

  constructor(place: ThreadPlace) {
    this.#thread = new AskedThread(new URL("./drawing-worker.ts", import.meta.url), place);
  }

  /** Starts it before it is asked: it takes a moment. */
  warm(): void {
    this.#thread.start();
  }

  /** Something that all kits share has changed. */
  forget(): void {
    this.#thread.tell({ forget: true } satisfies DrawingNews);
  }

  /** Draws the picture and the motifs that a text states. @throws BuildError where the program fails at it */
  draw(picture: PictureAsk): Promise<PictureAnswer> {
    return this.#thread.ask({ draw: picture });
  }
}
