import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { Placing } from "../../../src/build/store/placing.ts";
import { type MadeFile, nameOf } from "../../../src/build/store/store.ts";

let output: string;
beforeEach(() => {
  output = mkdtempSync(join(tmpdir(), "leaflight-placing-"));
});
afterEach(() => rmSync(output, { recursive: true }));

function file(path: string, text: string): MadeFile {
  return { path, bytes: Buffer.from(text), name: nameOf(text) };
}

const read = (path: string): string => readFileSync(join(output, path), "utf8");

describe("Placing", () => {
  it("knows a part that stands with its key", () => {
    const placing = new Placing(output);
    expect(placing.stands("moon", "1")).toBe(false);
    placing.put("moon", "1", [file("kits/moon/index.html", "one")]);
    expect(placing.stands("moon", "1")).toBe(true);
    expect(placing.stands("moon", "2")).toBe(false);
    expect(read("kits/moon/index.html")).toBe("one");
  });

  it("writes only files whose contents changed, and says which", () => {
    const placing = new Placing(output);
    placing.put("moon", "1", [file("a.html", "one"), file("b.html", "two")]);
    placing.takeChanged();
    const before = statSync(join(output, "a.html")).mtimeMs;
    placing.put("moon", "2", [file("a.html", "one"), file("b.html", "three")]);
    expect(statSync(join(output, "a.html")).mtimeMs).toBe(before);
    expect(read("b.html")).toBe("three");
    expect(placing.takeChanged()).toEqual(["b.html"]);
    expect(placing.takeChanged()).toEqual([]);
  });

  it("removes files that a part has no more, with folders that are empty then", () => {
    const placing = new Placing(output);
    placing.put("moon", "1", [file("kits/moon/cut/a.svg", "a"), file("kits/moon/index.html", "i")]);
    placing.put("moon", "2", [file("kits/moon/index.html", "i")]);
    expect(readdirSync(join(output, "kits/moon"))).toEqual(["index.html"]);
    expect([...placing.names.keys()]).toEqual(["kits/moon/index.html"]);
  });

  it("keeps what another part has, too", () => {
    const placing = new Placing(output);
    const style = file("bundle/x.css", "p {}");
    placing.put("moon", "1", [style]);
    placing.put("gull", "1", [style]);
    placing.put("moon", "2", []);
    expect(read("bundle/x.css")).toBe("p {}");
    placing.put("gull", "2", []);
    expect(existsSync(join(output, "bundle"))).toBe(false);
  });

  it("sweeps parts that nobody asked for", () => {
    const placing = new Placing(output);
    placing.put("moon", "1", [file("kits/moon/index.html", "m")]);
    placing.put("gull", "1", [file("kits/gull/index.html", "g")]);
    placing.sweep();
    expect(readdirSync(join(output, "kits"))).toEqual(["gull", "moon"]);
    placing.stands("gull", "1");
    placing.sweep();
    expect(readdirSync(join(output, "kits"))).toEqual(["gull"]);
    expect(placing.stands("moon", "1")).toBe(false);
  });

  it("takes note of what was put in place by another", () => {
    const placing = new Placing(output);
    writeFileSync(join(output, "a.html"), "one");
    placing.note({ part: "moon", key: "1", files: [{ path: "a.html", name: nameOf("one") }] });
    expect(placing.stands("moon", "1")).toBe(true);
    expect(placing.names.get("a.html")).toBe(nameOf("one"));
    expect(placing.takeChanged()).toEqual(["a.html"]);
  });
});
