import { existsSync, lstatSync, mkdirSync, readlinkSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { inTransaction } from "../../../src/build/making/transaction.ts";
import { newSwapping, type Swapping } from "./swapping.ts";

describe("inTransaction", () => {
  let swapping: Swapping;
  beforeEach(() => {
    swapping = newSwapping();
  });
  afterEach(() => swapping.remove());

  it("puts the new site in place and leaves nothing else", async () => {
    expect((await swapping.make("old")).code).toBe(0);
    expect(swapping.word()).toBe("old");
    expect((await swapping.make("new")).code).toBe(0);
    expect(swapping.word()).toBe("new");
    expect(swapping.left()).toEqual([]);
  });

  // Between the two renames there is no site; at every other step the old or the new one is there whole.
  for (const [step, then] of [
    ["make", "old"],
    ["journal", "old"],
    ["aside", "old"],
    ["place", "none"],
    ["seal", "new"],
    ["clear", "new"],
  ] as const) {
    it(`is whole when a kill cuts it off before “${step}”, and the next start clears what was left`, async () => {
      await swapping.make("old");
      expect((await swapping.make("new", step)).signal).toBe("SIGKILL");
      expect(swapping.word()).toBe(then);
      expect(swapping.left()).not.toEqual([]);
      // The next one fails before it has made anything, so what is there is what it found and mended.
      const next = inTransaction({ base: swapping.base, output: "dist" }, () =>
        Promise.reject(new Error("broken kit")),
      );
      await expect(next).rejects.toThrow("broken kit");
      expect(swapping.word()).toBe(then === "none" ? "old" : then);
      expect(swapping.left()).toEqual([]);
    });
  }

  it("finishes a first site that was cut off between the steps", async () => {
    await swapping.make("first", "place");
    expect(swapping.word()).toBe("none");
    await expect(
      inTransaction({ base: swapping.base, output: "dist" }, () => Promise.reject(new Error("broken kit"))),
    ).rejects.toThrow("broken kit");
    expect(swapping.word()).toBe("first");
  });

  it("lets one wait for another, says so once, and both sites are whole", async () => {
    const words = ["one", "two", "three", "four"];
    const ended = await Promise.all(words.map((word) => swapping.make(word)));
    expect(ended.map(({ code }) => code)).toEqual([0, 0, 0, 0]);
    expect(words).toContain(swapping.word());
    for (const { told } of ended) expect(told.match(/Another build/g)?.length ?? 0).toBeLessThanOrEqual(1);
    expect(swapping.left()).toEqual([]);
  });

  it("refuses when its patience is over, naming the other process", async () => {
    const { base } = swapping;
    const inner = inTransaction({ base, output: "dist" }, async () => {
      await inTransaction({ base, output: "dist", patience: 0 }, async () => undefined);
    });
    await expect(inner).rejects.toThrow(
      new RegExp(`another build of dist is running \\(process ${process.pid} on .*dist\\.lock`),
    );
    expect(existsSync(join(base, "dist"))).toBe(false);
  });

  it("leaves a link, and a file in the place of dist, as they are", async () => {
    const { base } = swapping;
    mkdirSync(join(base, "elsewhere"));
    writeFileSync(join(base, "elsewhere/mine.txt"), "mine");
    symlinkSync(join(base, "elsewhere"), join(base, "dist"));
    const made = async (): Promise<void> => undefined;
    await expect(inTransaction({ base, output: "dist" }, made)).rejects.toThrow(/dist is a link to .*elsewhere/);
    expect(readlinkSync(join(base, "dist"))).toBe(join(base, "elsewhere"));
    expect(existsSync(join(base, "elsewhere/mine.txt"))).toBe(true);
    writeFileSync(join(base, "file"), "mine");
    await expect(inTransaction({ base, output: "file" }, made)).rejects.toThrow(/file is a file/);
    expect(lstatSync(join(base, "file")).isFile()).toBe(true);
  });

  it("makes the site beside dist where the cache is a file", async () => {
    writeFileSync(join(swapping.base, ".cache"), "");
    expect((await swapping.make("new")).code).toBe(0);
    expect(swapping.word()).toBe("new");
  });

  // The same words as node:fs gives them.
  it.each([
    ["ENOSPC", /the disk is full/],
    ["EDQUOT", /share of the disk/],
    ["EROFS", /read-only/],
    ["EACCES", /permission is missing/],
    ["EMFILE", /too many files are open/],
    ["EFBIG", /ulimit -f/],
  ])("tells %s in one message with its path, also where a library wraps it", async (code, words) => {
    const fault = Object.assign(new Error(`${code}: write`), { code, path: "/somewhere/a.html" });
    const wrapped = new Error("Having trouble writing", { cause: fault });
    for (const error of [fault, wrapped]) {
      const run = inTransaction({ base: swapping.base, output: "dist" }, () => Promise.reject(error));
      await expect(run).rejects.toThrow(words);
      await expect(run).rejects.toThrow("/somewhere/a.html");
    }
    expect(swapping.left()).toEqual([]);
  });
});
