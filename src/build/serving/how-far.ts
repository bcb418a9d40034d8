import type { PrintAsk, PrintingNews } from "../../input/desk/protocol.ts";
import { type PrintLog, printLog } from "../print/progress.ts";
import { TimeLeft } from "../print/time-left.ts";

/** How far the printing of a kit or of a class is: it is told as news, and on the terminal as well. */
export class HowFar {
  readonly #of: PrintAsk;
  readonly #tell: (news: PrintingNews) => void;
  #count = 0;
  #done = 0;

  constructor(of: PrintAsk, tell: (news: PrintingNews) => void) {
    this.#of = of;
    this.#tell = tell;
  }

  /** Follows the printing of so many PDFs, beside those that were printed before. */
  readonly log = (count: number): PrintLog => {
    const terminal = printLog(count);
    const left = new TimeLeft(count);
    this.#count += count;
    this.#news({});
    return {
      ...terminal,
      step: (title) => {
        terminal.step(title);
        this.#done += 1;
        const ms = left.step();
        this.#news(ms === undefined ? {} : { left: Math.ceil(ms / 1000) });
      },
    };
  };

  /** All are printed or were kept, or none any more. */
  end(failure?: string): void {
    if (failure === undefined) this.#done = this.#count;
    this.#news(failure === undefined ? { ended: true } : { ended: true, failure });
  }

  #news(more: Partial<Pick<PrintingNews, "left" | "failure" | "ended">>): void {
    this.#tell({ news: "printing", ...this.#of, done: this.#done, of: this.#count, ...more });
  }
}
