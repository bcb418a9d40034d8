import type { Kit } from "../../../core/kit/kit.ts";
import { told } from "../../../input/desk/desk-message.ts";
import type { Edit } from "../../../input/desk/edit.ts";
import type { DeskMessage, DeskShape, DeskText, PictureAnswer } from "../../../input/desk/protocol.ts";
import { KitError } from "../../../input/files/message.ts";
import { type DrawnParts, drawingKey, lookKey, partsAsDrawn } from "../../../input/kit/drawn-parts.ts";
import { type KitText, kitText, stateKit } from "../../../input/kit/state-kit.ts";
import { Draft } from "./draft.ts";

/**
 * One kit on the desk: a draft of its index.md, and the kit that it states by the very reader of the build. Drawings come from
 * `draw`, which asks the server with a text; they are kept, so that a change of a depth or of a place asks nobody.
 *
 *     const kit = new DeskKit("moon", found, (text) => server.post(DESK_ROUTES.picture, { slug: "moon", text }), show);
 *     kit.change([{ at: ["fit", "height"], mm: 120 }], "height");   // `show` is called at once …
 *     kit.stated;                                                    // … with the kit of the draft, or the last good one
 *     kit.messages;                                                  // what is wrong with the draft; empty where it states a kit
 *
 * Everything that changes calls `changed`, also what comes later from the server. Compute with `stated.kit`: see `fit-bench.ts`.
 */
export class DeskKit {
  readonly slug: string;
  readonly draft: Draft;
  readonly #draw: (text: string) => Promise<PictureAnswer>;
  readonly #changed: () => void;
  readonly #drawings = new Map<string, DrawnParts>();
  #latest: { readonly look: string; readonly drawing: DrawnParts } | undefined;
  /** The text that the server is drawing, and how often its files were found changed. */
  #asked: string | undefined;
  #files = 0;
  #stated: StatedNow | undefined;
  /** The text that states it. */
  #statedBy: string | undefined;
  #messages: readonly DeskMessage[] = [];
  #shapes: readonly DeskShape[] = [];

  constructor(slug: string, found: DeskText, draw: (text: string) => Promise<PictureAnswer>, changed: () => void) {
    this.slug = slug;
    this.draft = new Draft(found);
    this.#draw = draw;
    this.#changed = changed;
    this.#look();
  }

  /** The kit of the draft; where that states none, of the last text that did. Undefined until there is one. */
  get stated(): StatedNow | undefined {
    return this.#stated;
  }

  /** What is wrong with the draft. */
  get messages(): readonly DeskMessage[] {
    return this.#messages;
  }

  /** Whether the draft's own drawings are still to come. */
  get isDrawing(): boolean {
    return this.#asked !== undefined;
  }

  /** Shapes of its files that can be picked for a level; also where the text cannot be drawn. */
  get shapes(): readonly DeskShape[] {
    return this.#shapes;
  }

  /** Changes fields; see `Draft.change`. */
  change(edits: readonly Edit[], name?: string): boolean {
    const isTaken = this.draft.change(edits, name);
    if (isTaken) this.#lookAndTell();
    return isTaken;
  }

  replace(text: string, name?: string): void {
    this.draft.replace(text, name);
    this.#lookAndTell();
  }

  rest(): void {
    this.draft.rest();
  }

  undo(): void {
    this.draft.undo();
    this.#lookAndTell();
  }

  redo(): void {
    this.draft.redo();
    this.#lookAndTell();
  }

  written(text: string, mark: string): void {
    this.draft.written(text, mark);
    this.#changed();
  }

  meet(found: DeskText): void {
    this.draft.meet(found);
    this.#lookAndTell();
  }

  decide(what: "keep" | "take" | "merge"): void {
    this.draft.decide(what);
    this.#lookAndTell();
  }

  /** Files beside the text may have changed: what was drawn is shown until it is drawn again, and stays if that comes out the same. */
  filesChanged(): void {
    this.#drawings.clear();
    this.#files += 1;
    if (this.#isAsDrawn) this.#ask(this.draft.text);
    else this.#look();
    this.#changed();
  }

  /** Whether all of the draft is stated as it was drawn. */
  get #isAsDrawn(): boolean {
    return this.#stated?.isExact === true && this.#statedBy === this.draft.text && this.#messages.length === 0;
  }

  #lookAndTell(): void {
    this.#look();
    this.#changed();
  }

  /** States the kit of the draft, as far as its drawings are known. */
  #look(): void {
    const { text } = this.draft;
    const read = this.#reading(() => kitText(this.slug, this.draft.file, text));
    if (!read) return;
    this.#messages = [];
    const drawing = this.#drawings.get(drawingKey(read));
    const near = this.#latest?.look === lookKey(read) ? this.#latest.drawing : undefined;
    if (!drawing) this.#ask(text);
    this.#state(read, drawing ?? near, drawing !== undefined);
  }

  #state(read: KitText, drawing: DrawnParts | undefined, isExact: boolean): void {
    if (!drawing) return;
    if (isExact) this.#latest = { look: lookKey(read), drawing };
    const stated = this.#reading(() => stateKit(read, partsAsDrawn(drawing)));
    if (!stated) return;
    this.#stated = { kit: stated.kit, text: read, isExact };
    this.#statedBy = this.draft.text;
  }

  /** What a reader makes; undefined where it tells of something wrong. */
  #reading<T>(read: () => T): T | undefined {
    try {
      return read();
    } catch (error) {
      if (!(error instanceof KitError)) throw error;
      this.#messages = told(error.messages);
      return undefined;
    }
  }

  /** Has the server draw a text, one at a time: while it does, the text may go on. */
  #ask(text: string): void {
    if (this.#asked !== undefined) return;
    const files = this.#files;
    this.#asked = text;
    this.#draw(text).then(
      (answer) => this.#hear(text, answer, files),
      () => {
        this.#asked = undefined;
        this.#changed();
      },
    );
  }

  #hear(text: string, answer: PictureAnswer, files: number): void {
    this.#asked = undefined;
    if (files === this.#files) {
      if (!isSame(this.#shapes, answer.shapes)) this.#shapes = answer.shapes;
      if (
        "drawn" in answer &&
        text === this.draft.text &&
        this.#isAsDrawn &&
        isSame(this.#latest?.drawing, answer.drawn)
      ) {
        this.#keep(text, this.#latest!.drawing);
        this.#changed();
        return;
      }
      if ("drawn" in answer) this.#keep(text, answer.drawn);
      else if (text === this.draft.text) {
        this.#messages = answer.messages;
        this.#changed();
        return;
      }
    }
    this.#lookAndTell();
  }

  #keep(text: string, drawn: DrawnParts): void {
    if (this.#drawings.size >= MOST_DRAWINGS) this.#drawings.delete(this.#drawings.keys().next().value!);
    this.#drawings.set(drawingKey(kitText(this.slug, this.draft.file, text)), drawn);
  }
}

/** Whether two answers of the server say the same. */
function isSame(one: unknown, other: unknown): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

/** Drawings that are kept: what a slider of a photograph goes through, and back. */
const MOST_DRAWINGS = 24;

/** A kit as its text states it at this moment. */
export interface StatedNow {
  readonly kit: Kit;
  /** The text that states it, by its schema. */
  readonly text: KitText;
  /** Whether it is drawn for this very text: while a height is dragged, a photograph may still be traced for the height before. */
  readonly isExact: boolean;
}
