import { told } from "../../input/desk/desk-message.ts";
import type { DeskText, WriteAnswer, WriteAsk } from "../../input/desk/protocol.ts";
import { KitError } from "../../input/files/message.ts";
import { checkText } from "./check-text.ts";
import { type DeskFile, deskFile } from "./desk-file.ts";
import { readDeskText } from "./desk-text.ts";
import type { News } from "./news.ts";
import { swapText } from "./swap-text.ts";
import type { FaultFound } from "./write-fault.ts";

/** A file that is none of the desk's, or cannot be written. */
export class NotWritten extends Error {
  readonly why: FaultFound | "not of the desk";

  constructor(why: NotWritten["why"]) {
    super(typeof why === "string" ? why : why.fault);
    this.why = why;
  }
}

/** The texts of the desk on the disk. */
export class Texts {
  readonly #base: string;
  readonly #news: News;
  /** What was told of each file last. */
  readonly #told = new Map<string, string | undefined>();

  constructor(base: string, news: News) {
    this.#base = base;
    this.#news = news;
  }

  /** @throws NotWritten, KitError */
  read(file: string): DeskText {
    const { form: _form, ...text } = readDeskText(this.#file(file));
    return text;
  }

  /** @throws NotWritten, KitError */
  write({ file, text, mark, page, anyway }: Required<WriteAsk>): WriteAnswer {
    const source = this.#file(file);
    const messages = anyway ? [] : checkText(source, text);
    if (messages.length > 0) return { written: false, messages: told(messages) };
    const swapped = swapText(source, text, mark);
    if (swapped.kind === "fault") throw new NotWritten(swapped);
    if (swapped.kind === "other") {
      const { form: _form, ...found } = swapped.found;
      return { written: false, found };
    }
    this.#tell(file, swapped.mark, page);
    return { written: true, mark: swapped.mark };
  }

  /** Paths below the project that changed on the disk: those of the desk are told of, but what the desk wrote itself was told already. */
  follow(paths: readonly string[]): void {
    for (const file of paths) {
      const source = deskFile(this.#base, file);
      if (source) this.#tell(file, this.#markOf(source), undefined);
    }
  }

  #tell(file: string, mark: string | undefined, page: string | undefined): void {
    if (this.#told.has(file) && this.#told.get(file) === mark) return;
    this.#told.set(file, mark);
    this.#news.tell({ news: "text", file, mark, page });
  }

  #markOf(source: DeskFile): string | undefined {
    try {
      return readDeskText(source).mark;
    } catch (error) {
      if (error instanceof KitError) return undefined;
      throw error;
    }
  }

  #file(file: string): DeskFile {
    const source = deskFile(this.#base, file);
    if (!source) throw new NotWritten("not of the desk");
    return source;
  }
}
