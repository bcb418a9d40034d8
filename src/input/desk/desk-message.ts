import { formatMessage } from "../files/format-message.ts";
import type { KitMessage } from "../files/message.ts";
import type { DeskMessage } from "./protocol.ts";

/** Messages with the sentences that they are told in. */
export function told(messages: readonly KitMessage[]): DeskMessage[] {
  return messages.map((message) => ({ ...message, sentence: formatMessage(message) }));
}
