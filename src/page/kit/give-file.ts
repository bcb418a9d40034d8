import type { AnyKitView } from "../../output/views/any-kit-view.ts";
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

/** The text of a file of the kit for the reader's own book; undefined for another address. @throws LoadError where its script cannot be loaded */
export async function fileText(address: string, view: AnyKitView, load = loadScript): Promise<string | undefined> {
  if (view.way === "corner") return self.leaflightCorner!.file(address, view);
  if (!self.leaflightFile) await load("../../assets/scripts/files.js", "file-maker");
  return self.leaflightFile?.(address, view);
}

/** Gives a file of a kit. */
export function giveFile(address: string, text: string, slug: string): void {
  const link = document.createElement("a");
  offerFile(link, text, `${slug}-${address.split("/").at(-1)}`);
  link.click();
}
