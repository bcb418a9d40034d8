import { join } from "node:path";
import { createCanvas, GlobalFonts, type SKRSContext2D } from "@napi-rs/canvas";

const FONTS = join(import.meta.dirname, "../../../node_modules/@fontsource");

/** A font file of a package, by its name there: `literata-latin-600-normal.woff`. */
export function fontFile(name: string): string {
  const family = ["source-sans-3", "literata", "noto-sans-hebrew"].find((one) => name.startsWith(one))!;
  return join(FONTS, family, "files", name);
}

/** How much of each pixel Skia covers, with these font files as the families f0, f1 …, asked in order. */
export function skiaRaster(
  files: readonly string[],
  [width, height]: readonly [number, number],
  draw: (context: SKRSContext2D, families: string) => void,
): Float64Array {
  const families = files.map((file) => {
    const name = file.split("/").at(-1)!.replace(/\W/g, "-");
    if (!GlobalFonts.has(name)) GlobalFonts.registerFromPath(file, name);
    return `"${name}"`;
  });
  const context = createCanvas(width, height).getContext("2d");
  context.fillStyle = "#000";
  draw(context, families.join(", "));
  const { data } = context.getImageData(0, 0, width, height);
  return Float64Array.from({ length: width * height }, (_, i) => data[4 * i + 3]! / 255);
}
