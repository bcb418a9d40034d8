import type { PatternedKit } from "../../../src/core/pattern/patterned-kit.ts";
import { KitError, type KitMessage } from "../../../src/input/files/message.ts";
import { readMadeKit } from "../../input/kit/kit-folders.ts";
import { publishedText } from "../pattern/published.ts";
import { type Changes, discKit } from "./disc-kit.ts";
import type { PublishedWindow } from "./published-window.ts";

export function discFolder(changes: Changes = {}): PatternedKit {
  const { frontMatter, svg } = discKit(changes);
  return readMadeKit(frontMatter, svg);
}

/** The published pattern of a disc kit, parsed. */
export function discPattern(changes: Changes = {}): PublishedWindow {
  return JSON.parse(publishedText(discFolder(changes))) as PublishedWindow;
}

/** The one message with which a disc kit is refused. */
export function discMessage(changes: Changes): KitMessage {
  try {
    discFolder(changes);
  } catch (error) {
    if (!(error instanceof KitError)) throw error;
    if (error.messages.length !== 1) throw new Error(`${error.messages.length} messages`);
    return error.messages[0]!;
  }
  throw new Error("the kit was read");
}

export function isRefused(changes: Changes): boolean {
  try {
    discFolder(changes);
    return false;
  } catch (error) {
    if (error instanceof KitError) return true;
    throw error;
  }
}
