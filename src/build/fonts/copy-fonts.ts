import { copyFileSync, mkdirSync } from "node:fs";
import { join } from "node:path";
import type { OwnFont } from "../../input/fonts/own-fonts.ts";
import { facesFor } from "./faces.ts";

/** Puts the faces of pages and packets, and the fonts that the settings of the project `base` name, into the site. */
export function copyFonts(base: string, output: string, own: readonly OwnFont[]): void {
  const folder = join(output, "assets/fonts");
  mkdirSync(folder, { recursive: true });
  for (const { source, file } of [...facesFor("site"), ...facesFor("print")]) copyFileSync(source, join(folder, file));
  for (const { file, target } of own) copyFileSync(join(base, file), join(folder, target));
}
