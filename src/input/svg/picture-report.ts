import * as say from "../../words/messages.ts";
import { MOST_FAULTS, MOST_NOTES } from "./picture-bounds.ts";
import { PictureError, type PictureFault, PictureLimit } from "./picture-error.ts";
import type { PictureNote } from "./svg-picture.ts";

/** What there is to tell about a picture while it is read: faults are gathered, so that all of them come at once. */
export class PictureReport {
  readonly #faults = new Map<string, PictureFault>();
  readonly #notes = new Map<string, Set<number>>();

  /** Runs a step; what is at fault in it is kept, and the reading goes on after it. @throws PictureLimit */
  attempt(step: () => void): void {
    try {
      step();
    } catch (error) {
      if (!(error instanceof PictureError) || error instanceof PictureLimit) throw error;
      for (const fault of error.faults) this.fault(fault.line, fault.message);
    }
  }

  /** Keeps a fault. @throws PictureLimit with all faults where there are too many to go on */
  fault(line: number, message: string): void {
    this.#faults.set(`${line} ${message}`, { line, message });
    if (this.#faults.size >= MOST_FAULTS) this.stopAtFaults();
  }

  /** Keeps a note; the same one at several lines is told once. */
  note(line: number, message: string): void {
    const lines = this.#notes.get(message);
    if (lines) lines.add(line);
    else this.#notes.set(message, new Set([line]));
  }

  /** @throws PictureLimit with all faults, by lines, where there are any */
  stopAtFaults(): void {
    const [first, ...rest] = [...this.#faults.values()].sort((a, b) => a.line - b.line);
    if (first) throw new PictureLimit(first.line, first.message, rest);
  }

  get notes(): PictureNote[] {
    const told = [...this.#notes].map(([note, lines]): PictureNote => {
      const [line] = lines;
      return { line: line!, message: lines.size === 1 ? note : say.pictureNoteAgain({ note, more: lines.size - 1 }) };
    });
    const more = told.length - MOST_NOTES;
    if (more <= 0) return told;
    return [...told.slice(0, MOST_NOTES), { line: told[MOST_NOTES]!.line, message: say.pictureMoreNotes({ more }) }];
  }
}
