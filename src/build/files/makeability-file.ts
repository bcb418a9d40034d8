import { readFileSync } from "node:fs";
import { join } from "node:path";
import { isSlight, type Trouble } from "../../core/makeability/trouble.ts";

/** Where it is told how well a kit's picture can be made, in the kit's folder of a site. */
export function makeabilityFile(folder: string): string {
  return join(folder, "makeability.json");
}

/** How many things in the picture its author should look at, of a kit that was made into a folder of a site. */
export function troublesToSee(folder: string): number {
  const { troubles } = JSON.parse(readFileSync(makeabilityFile(folder), "utf8")) as { readonly troubles: Trouble[] };
  return troubles.filter((trouble) => !isSlight(trouble)).length;
}
