import { createHash } from "node:crypto";
import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  truncateSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { KeptFiles } from "../../../src/build/kept/kept-files.ts";

const BYTES = Buffer.from("%PDF-1.7 a packet of some pages");
const key = (text: string): string => KeptFiles.key(createHash("sha256").update(text));

describe("KeptFiles", () => {
  let root: string;
  let folder: string;
  let told: string[];
  beforeEach(() => {
    root = mkdtempSync(join(tmpdir(), "leaflight-kept-"));
    folder = join(root, "packets");
    told = [];
  });
  afterEach(() => rmSync(root, { recursive: true, force: true }));
  const open = (): KeptFiles => new KeptFiles(folder, "pdf", (line) => told.push(line));
  const keep = (name: string, bytes: Buffer = BYTES): string => {
    const before = new Set(readdirSync(root).includes("packets") ? readdirSync(folder) : []);
    open().put(key(name), bytes);
    return join(folder, readdirSync(folder).find((one) => !before.has(one))!);
  };

  it("gives back what was kept, to another run, and nothing under another key", () => {
    keep("one");
    expect(open().take(key("one"))).toEqual(BYTES);
    expect(open().take(key("two"))).toBeUndefined();
  });

  it("names a file by the SHA-256 of its bytes, and leaves none in part", () => {
    // sha256sum of GNU coreutils on the same bytes.
    const path = keep("one", Buffer.from("abc"));
    expect(path).toContain("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    expect(readdirSync(folder)).toHaveLength(1);
  });

  it.each([
    ["halved", (path: string) => truncateSync(path, 15)],
    ["empty", (path: string) => truncateSync(path, 0)],
    ["of five bytes", (path: string) => writeFileSync(path, "%PDF-")],
    ["another file", (path: string) => writeFileSync(path, Buffer.from(BYTES).fill("x", 9))],
    [
      "a folder",
      (path: string) => {
        rmSync(path);
        mkdirSync(path);
      },
    ],
    [
      "a link to a device without end",
      (path: string) => {
        rmSync(path);
        symlinkSync("/dev/zero", path);
      },
    ],
  ])("drops a file that is %s, and tells of it in one line", (_, damage) => {
    for (const path of [keep("one"), keep("two")]) damage(path);
    const kept = open();
    expect(kept.take(key("one"))).toBeUndefined();
    expect(kept.take(key("two"))).toBeUndefined();
    kept.close();
    expect(told).toEqual([`warning: 2 files in ${folder} were damaged and are made anew`]);
    expect(readdirSync(folder)).toEqual([]);
  });

  it("drops files that do not say whether they are whole, and leaves what is not its own", () => {
    keep("one");
    writeFileSync(join(folder, `${key("two")}.pdf`), BYTES);
    writeFileSync(join(folder, "notes.txt"), "");
    expect(open().take(key("two"))).toBeUndefined();
    expect(readdirSync(folder)).toContain("notes.txt");
    expect(readdirSync(folder)).toHaveLength(2);
  });

  it("drops what nobody used for long, and the longest unused where there is too much", () => {
    const day = (back: number): number => Date.now() / 1000 - back * 86_400;
    for (const [name, back] of [
      ["old", 100],
      ["week", 7],
      ["today", 0],
    ] as const) {
      const path = keep(name);
      utimesSync(path, day(back), day(back));
    }
    open().close({ bounds: { bytes: 1e9, days: 90 } });
    expect(open().take(key("old"))).toBeUndefined();
    open().close({ bounds: { bytes: BYTES.length, days: 90 } });
    expect(open().take(key("week"))).toBeUndefined();
    const used = open();
    expect(used.take(key("today"))).toEqual(BYTES);
    used.close({ bounds: { bytes: 0, days: 0 } });
    expect(open().take(key("today"))).toEqual(BYTES);
  });

  it("goes on without keeping where its folder is a file, and says so once", () => {
    writeFileSync(folder, "mine");
    const kept = open();
    kept.put(key("one"), BYTES);
    expect(kept.take(key("one"))).toBeUndefined();
    kept.close();
    expect(told).toHaveLength(1);
    expect(told[0]).toMatch(/^warning: nothing is kept in .*packets/);
    expect(readFileSync(folder, "utf8")).toBe("mine");
  });
});
