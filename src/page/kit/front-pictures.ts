import type { KitView } from "../../output/views/kit-view.ts";
import { fileText } from "./give-file.ts";

/** The pictures of the opened book at the head of a kit's page, and the file that each shows. */
const PICTURES = [
  [".hero-picture .day", "front.svg"],
  [".hero-picture .lit", "front-lit.svg"],
] as const;

/** Draws these pictures for the reader's book. */
export class FrontPictures {
  #addresses: string[] = [];
  /** The book that was asked for last. */
  #asked: KitView | undefined;

  /** @throws LoadError where what draws them cannot be loaded */
  async draw(view: KitView): Promise<void> {
    this.#asked = view;
    const drawn: (readonly [HTMLImageElement, string])[] = [];
    for (const [place, file] of PICTURES) {
      const image = document.querySelector<HTMLImageElement>(place);
      const svg = image && (await fileText(file, view));
      if (this.#asked !== view) return;
      if (svg) drawn.push([image, URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }))]);
    }
    for (const address of this.#addresses) URL.revokeObjectURL(address);
    this.#addresses = drawn.map(([, address]) => address);
    for (const [image, address] of drawn) image.src = address;
  }
}
