import { BuildError } from "../errors/build-error.ts";

/** A browser that is not there, does not start, ends or does not answer. */
export class BrowserError extends BuildError {
  /** Whether another try may help: the browser ended while it worked. */
  readonly died: boolean;

  constructor(message: string, died = false) {
    super(message);
    this.died = died;
  }
}
