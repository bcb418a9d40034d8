import * as say from "../../words/messages.ts";
import { loadScript } from "../shared/load-script.ts";

declare global {
  interface Window {
    /** The code of a text as a drawing; of a script that is fetched once there is a row. */
    leaflightCode?: (text: string, label: string) => string;
  }
}

/** Draws the code of a row into its place; hidden where there is no row, or its script cannot be fetched. */
export async function drawRowCode(place: HTMLElement, row: string): Promise<void> {
  place.hidden = true;
  if (row === "") return;
  if (!window.leaflightCode) await loadScript("../../assets/scripts/row-code.js", "figures").catch(() => undefined);
  const svg = window.leaflightCode?.(row, say.classRowCodeAlt());
  if (svg === undefined) return;
  place.querySelector("div")!.innerHTML = svg;
  place.hidden = false;
}
