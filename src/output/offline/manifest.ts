import type { SiteSettings } from "../../core/site-settings.ts";

/** An icon of the installed site: file below the site, pixels, and whether a mask may cut it. */
export interface Icon {
  readonly file: string;
  readonly size: number;
  readonly shape: "round" | "full";
}

export const ICONS: readonly Icon[] = [
  { file: "assets/icons/mark-192.png", size: 192, shape: "round" },
  { file: "assets/icons/mark-512.png", size: 512, shape: "round" },
  { file: "assets/icons/mark-maskable-512.png", size: 512, shape: "full" },
];

export const MARK = "assets/icons/mark.svg";
export const MANIFEST = "manifest.webmanifest";

/** The web app manifest. Addresses are relative to it, so that it holds under any folder. */
export function manifestText({ title, summary, language }: SiteSettings): string {
  const manifest = {
    name: title,
    short_name: title,
    description: summary,
    lang: language,
    start_url: "./index.html",
    scope: "./",
    display: "standalone",
    background_color: "#fbf7ee",
    theme_color: "#1d4b53",
    icons: ICONS.map(({ file, size, shape }) => ({
      src: file,
      sizes: `${size}x${size}`,
      type: "image/png",
      purpose: shape === "full" ? "maskable" : "any",
    })),
  };
  return `${JSON.stringify(manifest, null, 2)}\n`;
}
