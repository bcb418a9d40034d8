import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

/** Tests that need a built site or a browser are named so; they share one of each. */
const SITE = "test/**/*.site.test.ts";

export default defineConfig({
  test: {
    root: fileURLToPath(new URL("..", import.meta.url)),
    setupFiles: ["test/english.ts"],
    maxWorkers: 2,
    projects: [
      {
        extends: true,
        test: { name: "pure", include: ["test/**/*.test.ts"], exclude: [SITE], isolate: false, testTimeout: 120_000 },
      },
      {
        extends: true,
        test: {
          name: "site",
          include: [SITE],
          isolate: false,
          globalSetup: ["test/site/setup.ts"],
          testTimeout: 300_000,
          hookTimeout: 600_000,
        },
      },
    ],
  },
});
