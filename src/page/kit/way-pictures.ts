import type { Refit } from "../../core/refit/refit.ts";
import { LoadError } from "../shared/load-script.ts";

/** A way out, and the place of its picture. */
export interface PicturedWay {
  readonly image: HTMLImageElement;
  readonly refit: Refit;
}

/** Draws beside each way the book as it would come out, one after the other, for as long as they stand on the page. */
export async function drawWays(
  ways: readonly PicturedWay[],
  draw: (refit: Refit) => Promise<string | undefined>,
): Promise<void> {
  for (const { image, refit } of ways) {
    const svg = image.isConnected ? await drawn(draw(refit)) : undefined;
    if (svg === undefined || !image.isConnected) continue;
    const address = URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));
    image.addEventListener("load", () => URL.revokeObjectURL(address), { once: true });
    image.src = address;
  }
}

/** Without the script that draws, the words stand alone. */
async function drawn(picture: Promise<string | undefined>): Promise<string | undefined> {
  try {
    return await picture;
  } catch (error) {
    if (!(error instanceof LoadError)) throw error;
    return undefined;
  }
}
