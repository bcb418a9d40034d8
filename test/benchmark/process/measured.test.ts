import { tmpdir } from "node:os";
import { describe, expect, it } from "vitest";
import { measure } from "./measured.ts";

/** Uses 0.4 s of processor, however long that takes. */
const BUSY = "const used = () => process.threadCpuUsage().user; const end = used() + 400_000; while (used() < end);";

describe("measure(folder, words)", () => {
  it("counts what a thread and a Node below use", async () => {
    const thread = `new (require("node:worker_threads").Worker)(${JSON.stringify(BUSY)}, { eval: true })`;
    const below = `require("node:child_process").execFileSync(process.execPath, ["-e", ${JSON.stringify(BUSY)}])`;
    const idle = await measure(tmpdir(), ["-e", ""]);
    const own = await measure(tmpdir(), ["-e", `${thread}; ${below};`]);
    expect(own.cpu).toBeGreaterThan(0.8);
    expect(idle.cpu).toBeLessThan(0.8);
    expect(own.wall).toBeGreaterThan(0.4);
    expect(idle.peak).toBeGreaterThan(1e7);
  });

  it("says what a command told that did not end well", async () => {
    await expect(measure(tmpdir(), ["-e", 'console.error("no room"); process.exit(3)'])).rejects.toThrow(/3: no room/);
  });
});
