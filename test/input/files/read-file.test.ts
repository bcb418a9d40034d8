import { execFileSync } from "node:child_process";
import { chmodSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { platform, tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { FileError, type FileFault } from "../../../src/input/files/file-error.ts";
import { entriesIn, readBytes, readText } from "../../../src/input/files/read-file.ts";
import type { FileKind } from "../../../src/input/files/site-file.ts";

const POSIX = platform() !== "win32";
/** An administrator may read everything. */
const RESTRICTED = POSIX && process.getuid?.() !== 0;

let base: string;
beforeEach(() => {
  base = mkdtempSync(join(tmpdir(), "leaflight-files-"));
  mkdirSync(join(base, "content/kits/moon"), { recursive: true });
});
afterEach(() => rmSync(base, { recursive: true, force: true }));

const FILE = "content/kits/moon/index.md";
const HOME = "content/kits/moon";

function put(content: string | Uint8Array, file = FILE): void {
  writeFileSync(join(base, file), content);
}

function read(kind: FileKind = "page", home: string | undefined = HOME): string {
  return readText({ base, file: FILE, kind, home });
}

function faultOf(run: () => unknown): FileFault {
  try {
    run();
  } catch (error) {
    if (error instanceof FileError) return error.fault;
    throw error;
  }
  throw new Error("nothing was wrong");
}

describe("readText(source)", () => {
  it("reads UTF-8, also with a byte order mark, which is no part of the text", () => {
    put("Löwe, 月\n");
    expect(read()).toBe("Löwe, 月\n");
    put(Buffer.from([0xef, 0xbb, 0xbf, 0x61]));
    expect(read()).toBe("a");
    put("");
    expect(read()).toBe("");
  });

  it("reads a table also in UTF-16 with a mark, and nothing else so", () => {
    put(Buffer.from([0xff, 0xfe, 0x61, 0, 0xf6, 0]));
    expect(read("table")).toBe("aö");
    expect(faultOf(read)).toEqual({ kind: "encoding", seems: "UTF-16LE", wrong: undefined });
    put(Buffer.from([0xfe, 0xff, 0, 0x61, 0, 0xf6]));
    expect(read("table")).toBe("aö");
    expect(faultOf(read)).toEqual({ kind: "encoding", seems: "UTF-16BE", wrong: undefined });
  });

  it("tells the line, the column and the byte that is not UTF-8", () => {
    put(Buffer.from("one\ntwö \xe9\n", "latin1"));
    expect(faultOf(read)).toEqual({
      kind: "encoding",
      seems: "ISO-8859-1",
      wrong: { line: 2, column: 3, byte: 0xf6 },
    });
    put(Buffer.concat([Buffer.from("zwölf Löwen\r\nä"), Buffer.from([0xff])]));
    expect(faultOf(read)).toEqual({ kind: "encoding", seems: "damaged", wrong: { line: 2, column: 2, byte: 0xff } });
  });

  it("tells a control character with its place, and takes tabs and all line ends", () => {
    put("a\tb\r\nc\rd\n");
    expect(read()).toBe("a\tb\r\nc\rd\n");
    put("a\r\nbc\u0000\n");
    expect(faultOf(read)).toEqual({ kind: "control", code: 0, line: 2, column: 3 });
    put("a\u009b");
    expect(faultOf(read)).toEqual({ kind: "control", code: 0x9b, line: 1, column: 2 });
  });

  it("stops at the limit of its kind, and not before", () => {
    put("m".repeat(1_000_000));
    expect(read()).toHaveLength(1_000_000);
    put("m".repeat(1_000_001));
    expect(faultOf(read)).toEqual({ kind: "too-large", size: 1_000_001, most: 1_000_000 });
    expect(read("table")).toHaveLength(1_000_001);
  });

  it("tells what is not there", () => {
    expect(faultOf(read)).toEqual({ kind: "missing" });
    const named = (file: string) => () => readText({ base, file, kind: "page" });
    expect(faultOf(named(`content/${"m".repeat(300)}`))).toEqual({ kind: "missing" });
    expect(faultOf(named("content/a\u0000b"))).toEqual({ kind: "missing" });
    put("text");
    expect(faultOf(named(`${FILE}/below`))).toEqual({ kind: "missing" });
  });

  it("reads no folder", () => {
    mkdirSync(join(base, FILE));
    expect(faultOf(read)).toEqual({ kind: "not-a-file", is: "folder" });
  });

  it.runIf(POSIX)("waits for no pipe and no socket", async () => {
    execFileSync("mkfifo", [join(base, FILE)]);
    expect(faultOf(read)).toEqual({ kind: "not-a-file", is: "pipe" });
    rmSync(join(base, FILE));
    const server = createServer();
    await new Promise<void>((resolve) => server.listen(join(base, FILE), resolve));
    expect(faultOf(read)).toEqual({ kind: "not-a-file", is: "socket" });
    await new Promise((resolve) => server.close(resolve));
  });

  it.runIf(POSIX)("follows links inside its home only", () => {
    put("inside", `${HOME}/true.md`);
    symlinkSync("true.md", join(base, FILE));
    expect(read()).toBe("inside");
    rmSync(join(base, FILE));
    put("beside", "content/kits/other.md");
    symlinkSync("../other.md", join(base, FILE));
    expect(faultOf(read)).toEqual({ kind: "link-outside", home: HOME });
    expect(readText({ base, file: FILE, kind: "page" })).toBe("beside");
    rmSync(join(base, FILE));
    put("outside", "secret.md");
    symlinkSync("../../../secret.md", join(base, FILE));
    expect(faultOf(() => readText({ base, file: FILE, kind: "page" }))).toEqual({
      kind: "link-outside",
      home: "content",
    });
  });

  it.runIf(POSIX)("follows no link into a device, to nothing or in a circle", () => {
    symlinkSync("/dev/zero", join(base, FILE));
    expect(faultOf(read)).toEqual({ kind: "link-outside", home: HOME });
    rmSync(join(base, FILE));
    symlinkSync("nothing", join(base, FILE));
    expect(faultOf(read)).toEqual({ kind: "link-nowhere" });
    rmSync(join(base, FILE));
    symlinkSync("index.md", join(base, FILE));
    expect(faultOf(read)).toEqual({ kind: "link-nowhere" });
  });

  it.runIf(RESTRICTED)("tells what may not be read", () => {
    put("text");
    chmodSync(join(base, FILE), 0o000);
    expect(faultOf(read)).toEqual({ kind: "forbidden" });
  });
});

describe("readBytes(source)", () => {
  it("reads bytes as they are, and no empty file", () => {
    put(Buffer.from([0, 255, 13]));
    expect([...readBytes({ base, file: FILE, kind: "photo" })]).toEqual([0, 255, 13]);
    put("");
    expect(faultOf(() => readBytes({ base, file: FILE, kind: "photo" }))).toEqual({ kind: "empty" });
  });
});

describe("entriesIn(base, folder)", () => {
  it("lists by name and leaves hidden files out", () => {
    for (const name of ["b.md", "a.md", ".DS_Store", "._a.md"]) put("", `${HOME}/${name}`);
    expect(entriesIn(base, HOME).map(({ name }) => name)).toEqual(["a.md", "b.md"]);
    expect(entriesIn(base, "content/nothing")).toEqual([]);
  });

  it("lists no file", () => {
    put("text");
    expect(faultOf(() => entriesIn(base, FILE))).toEqual({ kind: "not-a-folder" });
  });
});
