import { fileURLToPath } from "node:url";
import type { BuildOptions } from "esbuild";

/** What the packing library offers to Node is written for old browsers; its own sources make a smaller script. */
const PACKER = {
  "maxrects-packer/dist/maxrects-packer.mjs": fileURLToPath(import.meta.resolve("maxrects-packer/src/index.ts")),
};

/** How every script is bundled. A classic script, because a module does not load from a page opened from the disk. */
export const CLASSIC_SCRIPT = {
  bundle: true,
  format: "iife",
  target: "es2022",
  minify: true,
  charset: "utf8",
  logLevel: "warning",
  alias: PACKER,
} as const satisfies BuildOptions;
