import { frontPicture } from "../../output/drawing/front/picture.ts";
import type { KitView } from "../../output/views/kit-view.ts";

/** The pictures of the opened book at the head of a kit's page, drawn for the reader's book. */
export class FrontPictures {
  #addresses: string[] = [];

  draw(view: KitView): void {
    for (const address of this.#addresses) URL.revokeObjectURL(address);
    this.#addresses = [];
    for (const mood of ["day", "lit"] as const) {
      const image = document.querySelector<HTMLImageElement>(`.hero-picture .${mood}`);
      if (!image) continue;
      const svg = frontPicture(view.pattern, { slug: view.slug, title: view.kit.title, mood });
      const address = URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));
      this.#addresses.push(address);
      image.src = address;
    }
  }
}
