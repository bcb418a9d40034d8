import { describe, expect, it } from "vitest";
import { Turns } from "../../../src/page/kit/turns.ts";

describe("work in turns", () => {
  it("is done one after the other, and what a newer turn makes void is left out", async () => {
    const turns = new Turns();
    const done: string[] = [];
    const work = (name: string) => (): string => {
      done.push(name);
      return name;
    };
    const answers = [
      turns.take(1, work("first")),
      turns.take(1, work("second")),
      turns.take(2, work("newer")),
      turns.take(2, work("newer, all")),
    ];
    expect(await Promise.all(answers)).toEqual([undefined, undefined, "newer", "newer, all"]);
    expect(done).toEqual(["newer", "newer, all"]);
  });

  it("goes on after work that failed", async () => {
    const turns = new Turns();
    const failed = turns.take(1, () => {
      throw new Error("no");
    });
    const next = turns.take(1, () => "yes");
    await expect(failed).rejects.toThrow("no");
    expect(await next).toBe("yes");
  });
});
