import * as say from "../../words/messages.ts";
import { LoadError, loadScript } from "../shared/load-script.ts";
import type { layOut } from "./lay-out.ts";

/** Script of a packet page: with a book in its address the packet is laid out for it by a script that is fetched then. */
const main = document.querySelector("main");
const bar = document.querySelector<HTMLElement>("[data-print-bar]");

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
  } catch (error) {
    if (!(error instanceof LoadError)) throw error;
    // The sheets of the kit's own book must not pass for hers.
    target.textContent = say.loadPacket();
  }
}
