import {
  appendFileSync,
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { filesOfTar } from "../../../src/build/browser/tar.ts";
import { holds } from "../../../src/build/browser/verified.ts";

const FILES = [
  { path: "chromium", bytes: Buffer.from("a program") },
  { path: "fonts/one.ttf", bytes: Buffer.from("letters") },
];

/** A header of a tar archive as POSIX.1-1988 lays it out; its checksum is not read. */
function archive(path: string, text: string, kind = "0"): Buffer {
  const header = Buffer.alloc(512);
  header.write(path, 0);
  header.write(`${text.length.toString(8).padStart(11, "0")} `, 124);
  header.write(kind, 156);
  const body = Buffer.alloc(Math.ceil(text.length / 512) * 512);
  body.write(text);
  return Buffer.concat([header, body]);
}

describe("filesOfTar", () => {
  it("gives regular files with their bytes, and passes over folders and links", () => {
    const tar = [
      archive("fonts/", "", "5"),
      archive("fonts/a.ttf", "x".repeat(600)),
      archive("b", "", "2"),
      archive("c", "c"),
    ];
    const files = filesOfTar(Buffer.concat([...tar, Buffer.alloc(1024)]));
    expect(files.map(({ path, bytes }) => [path, bytes.length])).toEqual([
      ["fonts/a.ttf", 600],
      ["c", 1],
    ]);
  });

  it("refuses a path that leads out", () => {
    for (const path of ["../a", "/a", "a/../../b"]) expect(() => filesOfTar(archive(path, "x"))).toThrow(path);
  });
});

describe.skipIf(process.platform === "win32")("holds", () => {
  const cases: readonly (readonly [string, (folder: string) => void])[] = [
    ["a file cut off", (folder) => truncateSync(join(folder, "chromium"), 3)],
    ["a file with more at its end", (folder) => appendFileSync(join(folder, "chromium"), "more")],
    ["another file of the same length", (folder) => writeFileSync(join(folder, "chromium"), "B program")],
    ["a file more", (folder) => writeFileSync(join(folder, "libnss3.so"), "planted")],
    ["a file that others may write", (folder) => chmodSync(join(folder, "chromium"), 0o777)],
    ["a folder that others may write", (folder) => chmodSync(folder, 0o777)],
    [
      "a link in the place of a file",
      (folder) => {
        rmSync(join(folder, "chromium"));
        writeFileSync(`${folder}-elsewhere`, "a program");
        symlinkSync(`${folder}-elsewhere`, join(folder, "chromium"));
      },
    ],
    ["a file missing", (folder) => rmSync(join(folder, "fonts/one.ttf"))],
  ];

  const unpacked = (): string => {
    const folder = mkdtempSync(join(tmpdir(), "leaflight-unpacked-"));
    for (const { path, bytes } of FILES) {
      mkdirSync(dirname(join(folder, path)), { recursive: true, mode: 0o700 });
      writeFileSync(join(folder, path), bytes, { mode: 0o700 });
    }
    return folder;
  };

  it("is true for what was unpacked", () => {
    const folder = unpacked();
    expect(holds(folder, FILES)).toBe(true);
    expect(readFileSync(join(folder, "chromium"), "utf8")).toBe("a program");
    rmSync(folder, { recursive: true });
  });

  it.each(cases)("is false with %s", (_, damage) => {
    const folder = unpacked();
    damage(folder);
    expect(holds(folder, FILES)).toBe(false);
    for (const path of [folder, `${folder}-elsewhere`]) rmSync(path, { recursive: true, force: true });
  });
});
