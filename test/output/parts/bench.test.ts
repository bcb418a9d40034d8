import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { benchPart } from "../../../src/output/parts/bench.ts";

const SCRIPTS = join(import.meta.dirname, "../../../src/page/bench");

describe("benchPart(kit)", () => {
  const markup = String(benchPart({ title: "Salt & “Pepper” <3" }));

  it("has every part that the page's script looks for, once", () => {
    const code = readdirSync(SCRIPTS).map((file) => readFileSync(join(SCRIPTS, file), "utf8"));
    const wanted = new Set(
      code.flatMap((text) => [...text.matchAll(/part(?:<\w+>)?\(\s*\S+ "([a-z-]+)"/g)].map(([, name]) => name!)),
    );
    expect(wanted.size).toBeGreaterThan(30);
    for (const name of wanted)
      expect([name, [...markup.matchAll(new RegExp(`data-${name}[\\s>]`, "g"))].length]).toEqual([name, 1]);
  });

  it("writes a title as text", () => {
    expect(markup).toContain('<h1 class="sr">Salt &amp; “Pepper” &lt;3: work along</h1>');
    expect(markup).not.toContain("<3");
  });

  it("has no style of its own, for the policy of the pages forbids it", () => {
    expect(markup).not.toMatch(/\sstyle=|<style/);
  });
});
