import { formatMessages } from "../../input/files/format-message.ts";
import type { KitMessage } from "../../input/files/message.ts";
import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";

/** No height was found at which a picture fits its book; with what the last try says. */
export class NoFit extends BuildError {
  readonly last: readonly KitMessage[];
  constructor(last: readonly KitMessage[]) {
    super(say.newNoFit({ why: formatMessages(last) }));
    this.last = last;
  }
}
