import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { drawingsOf } from "../../../src/build/library/drawings-of.ts";

let base: string;

beforeEach(() => {
  base = mkdtempSync(join(tmpdir(), "leaflight-drawings-"));
  mkdirSync(join(base, "content/kits/moon"), { recursive: true });
});

afterEach(() => rmSync(base, { recursive: true, force: true }));

function write(name: string, text: string): void {
  writeFileSync(join(base, "content/kits/moon", name), text);
}

describe("drawingsOf(base, slug)", () => {
  it("tells what each drawing's shapes can be picked by, with the share of the canvas", () => {
    const half = '<g data-name="Sea"><rect y="5" width="10" height="5" fill="#00f"/></g>';
    write("picture.svg", `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10">${half}</svg>`);
    write("index.md", "");
    expect(drawingsOf(base, "moon")).toEqual([{ name: "picture.svg", found: '"Sea" (50%), fill: "#0000ff" (50%)' }]);
  });

  it("leaves out what paints nothing, and finds nothing in a kit of words", () => {
    expect(drawingsOf(base, "moon")).toEqual([]);
    write("empty.svg", '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"/>');
    expect(drawingsOf(base, "moon")).toEqual([]);
  });
});
