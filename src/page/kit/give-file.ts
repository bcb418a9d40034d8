import type { KitView } from "../../output/views/kit-view.ts";
import { loadScript } from "../shared/load-script.ts";
import { offerFile } from "../shared/offer-file.ts";
import type { fittedFile } from "./files.ts";

declare global {
  interface Window {
    leaflightFile?: typeof fittedFile;
  }
}

/** Whether an address on a kit's page is a file that the page can make anew. */
export function isFitted(address: string): boolean {
  return /^(pattern\.(json|csv)|cut\/)/.test(address);
}

/** Gives a file of the kit for the reader's own book. @throws Error where it is none or its script cannot be loaded */
export async function giveFile(address: string, view: KitView): Promise<void> {
  if (!window.leaflightFile) await loadScript("../../assets/scripts/files.js", "what makes the files");
  const text = window.leaflightFile?.(address, view);
  if (text === undefined) throw new Error("this kit has no such file on your book");
  const link = document.createElement("a");
  offerFile(link, text, `${view.slug}-${address.split("/").at(-1)}`);
  link.click();
}
