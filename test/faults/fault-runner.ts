import { readFileSync } from "node:fs";
import { join } from "node:path";
import { createVitest } from "vitest/node";
import { boundLoops } from "./bound-loops.ts";

/** Runs one folder's tests again and again, each time with another text in place of one source file. */
export interface FaultRunner extends AsyncDisposable {
  /** Whether a test fails, or none can run, while `file` has this source. */
  readonly notices: (file: string, source: string) => Promise<boolean>;
}

/**
 * A runner of the tests whose path contains `filter`; the files stay as they are, only Vitest is given other texts.
 * @throws Error where these tests fail without a fault, or are none
 */
export async function faultRunner(root: string, filter: string): Promise<FaultRunner> {
  const planted = new Map<string, string>();
  const core = join(root, "src/core/");
  const load = (id: string): string | undefined =>
    id.startsWith(core) ? boundLoops(planted.get(id) ?? readFileSync(id, "utf8")) : undefined;
  const vitest = await createVitest(
    "test",
    {
      root,
      // The projects of test/vitest.config.ts take no plugin from here, and keep modules between runs.
      config: false,
      setupFiles: ["test/english.ts"],
      include: ["test/**/*.test.ts"],
      exclude: ["test/**/*.site.test.ts"],
      watch: true,
      reporters: [{}],
      bail: 1,
      maxWorkers: 1,
      execArgv: ["--max-old-space-size=1500"],
      testTimeout: 30_000,
    },
    { plugins: [{ name: "planted-fault", enforce: "pre", load }], server: { watch: null } },
  );
  await vitest.standalone();
  const tests = await vitest.globTestSpecifications([filter]);
  const fails = async (): Promise<boolean> => {
    const { testModules, unhandledErrors } = await vitest.runTestSpecifications(tests);
    return unhandledErrors.length > 0 || testModules.some((one) => one.state() === "failed");
  };
  if (tests.length === 0 || (await fails())) {
    await vitest.close();
    throw new Error(`the tests of ${filter} fail without a planted fault, or there are none`);
  }
  return {
    notices: async (file, source) => {
      planted.set(file, source);
      vitest.invalidateFile(file);
      const noticed = await fails();
      planted.delete(file);
      vitest.invalidateFile(file);
      return noticed;
    },
    [Symbol.asyncDispose]: () => vitest.close(),
  };
}
