import type { BuildOptions } from "esbuild";

/** How every script is bundled. A classic script, because a module does not load from a page opened from the disk. */
export const CLASSIC_SCRIPT = {
  bundle: true,
  format: "iife",
  target: "es2022",
  minify: true,
  charset: "utf8",
  logLevel: "warning",
} as const satisfies BuildOptions;
