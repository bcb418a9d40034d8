import type { Kit } from "../kit/kit.ts";
import type { Caution } from "../site/cautions.ts";

/** What a page needs to match its kit to another book: the kit with its picture, and the cautions. */
export interface KitData {
  readonly kit: Kit;
  readonly cautions: readonly Caution[];
  readonly notes: readonly string[];
}

declare global {
  interface Window {
    leaflightKit?: KitData;
  }
}

/** Fetches the kit's data once, as a script beside the page, so that it also works from the disk. */
export function loadKitData(address: string): Promise<KitData> {
  if (window.leaflightKit) return Promise.resolve(window.leaflightKit);
  return new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = address;
    script.addEventListener("load", () =>
      window.leaflightKit ? resolve(window.leaflightKit) : reject(new Error("the kit's data is empty")),
    );
    script.addEventListener("error", () => reject(new Error("the kit's data could not be loaded")));
    document.head.append(script);
  });
}
