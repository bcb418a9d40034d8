import * as say from "../../words/messages.ts";
import type { FoundBrowser } from "../browser/find-browser.ts";
import { BuildError } from "../errors/build-error.ts";
import { type Overflow, sayOverflow } from "./overflow.ts";
import type { PrintedPage } from "./print-job.ts";

/** A packet that cannot be printed as it must be. */
export class PrintError extends BuildError {}

/** A page whose content is larger than its boxes, with each of them, so that a reader of findings can name fields instead. */
export class OverflowError extends PrintError {
  readonly page: PrintedPage;
  readonly boxes: readonly Overflow[];

  constructor(page: PrintedPage, boxes: readonly Overflow[]) {
    super(say.printOverflow({ page: page.name, boxes: boxes.map(sayOverflow).join("; ") }));
    this.page = page;
    this.boxes = boxes;
  }
}

/** What a browser or a reader of PDFs fails with, as an error of the page's printing. */
export function failed(error: unknown, { name }: PrintedPage, { path }: FoundBrowser): PrintError {
  const fault = (error instanceof Error ? error.message : String(error)).split("\n")[0]!.slice(0, 200);
  return new PrintError(say.printFailed({ page: name, path, fault }));
}
