import { isInSight } from "./page-parts.ts";

/** The pictures of the opened book at the head of a kit's page, and the file that each shows. */
const PICTURES = [
  [".hero-picture .day", "front.svg"],
  [".hero-picture .lit", "front-lit.svg"],
] as const;

/** Draws a file of the reader's book; undefined where a newer book was asked for. */
type DrawFile = (file: string) => Promise<string | undefined>;

/** Draws these pictures for the reader's book: at once where one is in sight, else when all that is in sight was shown; the other when it is seen. */
export class FrontPictures {
  readonly #addresses = new Map<HTMLImageElement, string>();
  /** Those that show the book that was asked for last. */
  #drawn = new Set<HTMLImageElement>();
  #draw: DrawFile | undefined;

  /** `failed` hears where what draws cannot be loaded. */
  constructor(failed: (error: unknown) => void) {
    document.querySelector(".moods")?.addEventListener("change", () => this.drawSeen().catch(failed));
  }

  /** @throws LoadError where what draws them cannot be loaded */
  async draw(draw: DrawFile): Promise<void> {
    this.#draw = draw;
    this.#drawn = new Set();
    await this.#show(isInSight);
  }

  /** Draws what is not drawn yet, in sight or not. @throws LoadError */
  drawSeen(): Promise<void> {
    return this.#show((image) => image.checkVisibility?.() !== false);
  }

  async #show(isWanted: (image: Element) => boolean): Promise<void> {
    const draw = this.#draw;
    for (const [place, file] of PICTURES) {
      const image = document.querySelector<HTMLImageElement>(place);
      if (!draw || !image || this.#drawn.has(image) || !isWanted(image)) continue;
      const svg = await draw(file);
      if (this.#draw !== draw) return;
      if (svg !== undefined) this.#put(image, svg);
    }
  }

  #put(image: HTMLImageElement, svg: string): void {
    const before = this.#addresses.get(image);
    if (before !== undefined) URL.revokeObjectURL(before);
    const address = URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));
    this.#addresses.set(image, address);
    this.#drawn.add(image);
    image.src = address;
  }
}
