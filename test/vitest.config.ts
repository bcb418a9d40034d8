import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    root: fileURLToPath(new URL("..", import.meta.url)),
    setupFiles: ["test/english.ts"],
    include: ["test/**/*.test.ts"],
    testTimeout: 60_000,
    hookTimeout: 300_000,
  },
});
