import { KitError, type KitMessage } from "../../input/files/message.ts";
import type { AuthoredText } from "../../input/texts/authored-text.ts";
import { textsWithin } from "../../input/texts/find-text.ts";
import * as say from "../../words/messages.ts";
import { OverflowError } from "./print-error.ts";

/**
 * An overflow as its author can mend it: the longest of the texts that stand in each box, with its place. What nobody wrote
 * stays what it is, a fault of the program.
 */
export function byFields(error: unknown, texts: readonly AuthoredText[]): unknown {
  if (!(error instanceof OverflowError)) return error;
  const messages = error.boxes.flatMap(({ text, heading }): KitMessage[] => {
    const [longest] = [...textsWithin(texts, text), ...textsWithin(texts, heading)];
    if (!longest) return [];
    const { file, line, column, field } = longest;
    const given = say.printTextOver({ page: error.page.name });
    return [{ file, line, column, field, given, allowed: say.printTextFits(), remedy: say.checkShorten() }];
  });
  return messages.length > 0 ? new KitError(messages) : error;
}
