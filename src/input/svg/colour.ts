import Color from "colorjs.io/dist/color.js";

/** Colours that are kept; files may state a new one for each of their elements. */
const MOST_KEPT = 5000;

const known = new Map<string, string | undefined>();

/** A colour of CSS as `#rrggbb` in sRGB, its alpha left out; undefined for what is no colour. */
export function hexOf(css: string): string | undefined {
  if (/^#[0-9a-f]{6}$/.test(css)) return css;
  if (known.has(css)) return known.get(css);
  if (known.size >= MOST_KEPT) known.clear();
  const hex = convert(css);
  known.set(css, hex);
  return hex;
}

/** The relative luminance of `#rrggbb`, 0…1, linear in sRGB as masks take it. Source: CSS Masking 1, "Mask processing". */
export function luminanceOf(hex: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255);
  return 0.2125 * r! + 0.7154 * g! + 0.0721 * b!;
}

function convert(css: string): string | undefined {
  // Exporters put a colour of print beside the one of the screen.
  const plain = css.replace(/\s+(?:icc-color|device-\w+)\([^)]*\)\s*$/, "").trim();
  if (plain.length > 100) return undefined;
  try {
    const hex = new Color(plain).to("srgb").toGamut().toString({ format: "hex", collapse: false });
    return /^#[0-9a-f]{6}/.test(hex) ? hex.slice(0, 7) : undefined;
  } catch {
    return undefined;
  }
}
