import type { DeskMessage } from "../../input/desk/protocol.ts";
import { formatMessage } from "../../input/files/format-message.ts";
import type { KitMessage } from "../../input/files/message.ts";

/** Messages with the sentences that they are told in. */
export function told(messages: readonly KitMessage[]): DeskMessage[] {
  return messages.map((message) => ({ ...message, sentence: formatMessage(message) }));
}
