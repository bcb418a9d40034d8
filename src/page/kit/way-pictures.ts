import { type Refit, refitKit } from "../../core/refit/refit.ts";
import type { KitData } from "../shared/kit-data.ts";
import { LoadError } from "../shared/load-script.ts";
import { fetchedStep } from "../shared/step-drawings.ts";
import { viewOf } from "./fitted.ts";
import { fileText } from "./give-file.ts";

/** A way out, and the place of its picture. */
export interface PicturedWay {
  readonly image: HTMLImageElement;
  readonly refit: Refit;
}

/** Draws beside each way the book as it would come out, one after the other, for as long as they stand on the page. */
export async function drawWays(data: KitData, ways: readonly PicturedWay[]): Promise<void> {
  for (const { image, refit } of ways) {
    await new Promise((resolve) => setTimeout(resolve));
    if (!image.isConnected) return;
    const result = viewOf(data, refitKit(data.kit, refit), fetchedStep);
    const svg = "view" in result ? await frontOf(result.view) : undefined;
    if (svg === undefined) continue;
    const address = URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));
    image.addEventListener("load", () => URL.revokeObjectURL(address), { once: true });
    image.src = address;
  }
}

/** Without the script that draws, the words stand alone. */
async function frontOf(view: Parameters<typeof fileText>[1]): Promise<string | undefined> {
  try {
    return await fileText("front.svg", view);
  } catch (error) {
    if (!(error instanceof LoadError)) throw error;
    return undefined;
  }
}
