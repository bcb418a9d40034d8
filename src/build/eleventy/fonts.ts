import type { SiteConfig } from "./site-config.ts";

const FONTS = "node_modules/@fontsource";

/** Weights of the text face in packets. */
const PRINTED = [400, 600, 700];

/** Copies the faces that pages and packets are set in. */
export function registerFonts(config: SiteConfig): void {
  const printed = PRINTED.map((weight) => [
    `${FONTS}/source-sans-3/files/source-sans-3-latin-${weight}-normal.woff2`,
    `assets/fonts/source-sans-3-${weight}.woff2`,
  ]);
  config.addPassthroughCopy({
    [`${FONTS}-variable/literata/files/literata-latin-wght-normal.woff2`]: "assets/fonts/literata.woff2",
    [`${FONTS}-variable/source-sans-3/files/source-sans-3-latin-wght-normal.woff2`]: "assets/fonts/source-sans-3.woff2",
    [`${FONTS}-variable/source-sans-3/files/source-sans-3-latin-ext-wght-normal.woff2`]:
      "assets/fonts/source-sans-3-ext.woff2",
    ...Object.fromEntries(printed),
    [`${FONTS}/literata/files/literata-latin-600-normal.woff2`]: "assets/fonts/literata-600.woff2",
  });
}
