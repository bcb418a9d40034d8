import * as say from "../../words/messages.ts";
import { openForPrint } from "../shared/closed-details.ts";
import { LoadError, loadScript } from "../shared/load-script.ts";
import { foldBundles } from "./bundles.ts";
import type { layOut } from "./lay-out.ts";

/** Script of a packet page: with a book in its address the packet is laid out for it by a script that is fetched then. */
const main = document.querySelector("main");
const bar = document.querySelector<HTMLElement>("[data-print-bar]");

/** The way back leads to the book that the sheets are laid out for. */
const home = document.querySelector<HTMLAnchorElement>("[data-home]");

foldBundles();
openForPrint();
if (home) home.href += location.search;
if (bar) bar.hidden = false;
bar?.querySelector("button")?.addEventListener("click", () => window.print());
if (main && location.search.length > 1) fill(main);

declare global {
  interface Window {
    leaflightPacket?: typeof layOut;
  }
}

async function fill(target: HTMLElement): Promise<void> {
  try {
    await loadScript("../../../assets/scripts/fit-packet.js", "packet");
    await window.leaflightPacket?.(target, bar);
    foldBundles();
  } catch (error) {
    if (!(error instanceof LoadError)) throw error;
    // The sheets of the kit's own book must not pass for hers.
    target.textContent = say.loadPacket();
  }
}
