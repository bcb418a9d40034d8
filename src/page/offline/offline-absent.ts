import type { Answer } from "../../output/offline/messages.ts";
import { fileText } from "./offline-words.ts";
import { askedPage, askedReason, kitOf } from "./paths.ts";

/** On the page that stands for one that is not on this device: the way to it, taken as soon as there is network again. */
export function offerAbsent(site: URL): void {
  const again = document.querySelector<HTMLAnchorElement>("[data-absent-again]");
  const page = askedPage(location.search);
  if (!again || !page) return;
  const kit = kitOf(page);
  // A file of another version is not to be tried again, but its kit is to be opened.
  const newer = askedReason(location.search) === "newer" && kit !== undefined;
  again.href = new URL(newer ? `kits/${kit}/index.html` : page, site).href;
  again.hidden = false;
  if (!askedReason(location.search)) addEventListener("online", () => location.replace(again.href));
}

/** There: why the file is not given, and what version of its kit the device keeps. */
export function tellReason({ editions }: Answer): void {
  const heading = document.querySelector("[data-absent-heading]");
  const text = document.querySelector("[data-absent-text]");
  const why = askedReason(location.search);
  if (!heading || !text || !why) return;
  const kit = kitOf(askedPage(location.search) ?? "");
  const told = fileText(why, kit === undefined ? undefined : editions[kit]);
  heading.textContent = told.heading;
  text.textContent = told.text;
}
