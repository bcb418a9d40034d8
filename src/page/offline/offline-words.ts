import type { HostState, Reason } from "../../output/offline/messages.ts";
import type { Edition } from "../../output/offline/site-list.ts";
import { dayText } from "../../words/dates.ts";
import * as say from "../../words/messages.ts";

/** What is told beside a page that comes from the device; empty where all is well, or where a newer version is about to be offered. */
export function hostText(state: HostState | undefined, edition: Edition | undefined): string {
  if (state === undefined || state === "same" || state === "newer") return "";
  return `${HOST[state]()} ${seenText(edition)}`;
}

/** The heading and the sentences of the page that stands in for a file of a kept kit. */
export function fileText(
  why: Reason,
  edition: Edition | undefined,
): { readonly heading: string; readonly text: string } {
  const of = edition ? ` ${say.offlineFileOf({ version: edition.version, day: dayText(edition.date) })}` : "";
  if (why === "newer") return { heading: say.offlineFileNewerHeading(), text: `${say.offlineFileNewer()}${of}` };
  const text = why === "wrong" ? say.offlineFileWrong() : HOST[why]();
  return { heading: say.offlineFileHeading(), text: `${text}${of}` };
}

const HOST: Readonly<Record<Exclude<HostState, "same" | "newer">, () => string>> = {
  gone: () => say.offlineHostGone(),
  wrong: () => say.offlineHostWrong(),
  unreachable: () => say.offlineHostUnreachable(),
};

function seenText(edition: Edition | undefined): string {
  return edition ? say.offlineSeenEdition({ version: edition.version, day: dayText(edition.date) }) : say.offlineSeen();
}
