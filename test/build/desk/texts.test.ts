import {
  chmodSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { dirname, join } from "node:path";
import { Worker } from "node:worker_threads";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { MOON, openTestDesk, type TestDesk } from "./open-test-desk.ts";

const FILE = "content/kits/moon/index.md";
const PAGE = "a-page-12";

describe("texts of the desk", () => {
  let desk: TestDesk;
  beforeEach(async () => {
    desk = await openTestDesk();
  });
  afterEach(() => desk.close());

  const path = (file = FILE): string => join(desk.base, file);
  const mark = (file = FILE): string => desk.texts.read(file).mark;
  const write = (text: string, more: object = {}) =>
    desk.post("/api/write", { file: FILE, text, mark: mark(), page: PAGE, ...more });
  const left = (): string[] => readdirSync(dirname(path()));

  it("are read as they lie there, with what names their bytes", async () => {
    const { status, json } = await desk.get(`/api/text?file=${FILE}`);
    expect(status).toBe(200);
    // SHA-256 of the file by another program: sha256sum.
    expect(json()).toEqual({ file: FILE, text: MOON, mark: expect.stringMatching(/^[0-9a-f]{64}$/) });
  });

  it("are written whole, with the file's mode, and nothing is left beside them", async () => {
    chmodSync(path(), 0o640);
    const text = MOON.replace("title: Moon", "title: Half Moon");
    const { status, json } = await write(text);
    expect([status, json().written, json().mark]).toEqual([200, true, mark()]);
    expect(readFileSync(path(), "utf8")).toBe(text);
    expect(statSync(path()).mode & 0o777).toBe(0o640);
    expect(left()).toEqual(["index.md", "moon.svg"]);
  });

  it("keep line ends and byte order mark", async () => {
    const windows = MOON.replaceAll("\n", "\r\n");
    writeFileSync(path(), `\ufeff${windows}`);
    const read = desk.texts.read(FILE).text;
    expect(read).toBe(windows);
    await write(read.replace("Moon #", "New Moon #"));
    expect(readFileSync(path(), "utf8")).toBe(`\ufeff${windows.replace("Moon #", "New Moon #")}`);
    // A field of a page ends its lines in its own way.
    await write(MOON);
    expect(readFileSync(path(), "utf8")).toBe(`\ufeff${windows}`);
  });

  it("keep the encoding of a table", async () => {
    const file = "content/classes/evening/books.csv";
    for (const big of [false, true]) {
      const bytes = Buffer.from("\ufeffseat,leaves\r\n1,180\r\n", "utf16le");
      writeFileSync(path(file), big ? bytes.swap16() : bytes);
      const { text } = desk.texts.read(file);
      expect(text).toBe("seat,leaves\r\n1,180\r\n");
      const answer = await desk.post("/api/write", {
        file,
        text: text.replace("180", "190"),
        mark: mark(file),
        page: PAGE,
      });
      expect(answer.status).toBe(200);
      const after = Buffer.from("\ufeffseat,leaves\r\n1,190\r\n", "utf16le");
      expect(readFileSync(path(file)).equals(big ? after.swap16() : after)).toBe(true);
    }
  });

  it("are not written over what somebody else wrote", async () => {
    const old = mark();
    writeFileSync(path(), `${MOON}She wrote this.\n`);
    const { status, json } = await write(MOON, { mark: old });
    expect(status).toBe(409);
    expect(json()).toEqual({ written: false, found: { file: FILE, text: `${MOON}She wrote this.\n`, mark: mark() } });
    expect(readFileSync(path(), "utf8")).toBe(`${MOON}She wrote this.\n`);
  });

  it("are written broken only where that is asked for", async () => {
    const broken = MOON.replace("leaves: 180", "leaves: many");
    const { status, json } = await write(broken);
    expect(status).toBe(422);
    expect(json().messages).toMatchObject([{ file: FILE, line: 8, field: "book.leaves" }]);
    expect(json().messages[0].sentence).toContain(`${FILE}:8:`);
    expect(readFileSync(path(), "utf8")).toBe(MOON);
    expect((await write(broken, { anyway: true })).status).toBe(200);
    expect(readFileSync(path(), "utf8")).toBe(broken);
  });

  it.each([
    ["no front matter", "Moon\n", "front matter"],
    ["a control character", MOON.replace("Moon", "Mo\u0007on"), "file"],
    ["no YAML", MOON.replace("title: Moon", "title: ["), "front matter"],
  ])("tell of %s before they are written", async (_, text) => {
    const { status, json } = await write(text);
    expect(status).toBe(422);
    expect(json().messages.length).toBeGreaterThan(0);
  });

  it.each([
    "content/kits/moon/moon.svg",
    "content/kits/moon/other.md",
    "content/kits/moon/../../../secret.txt",
    "content/kits/../../secret.txt",
    "content/kits/moon/./index.md",
    "content/kits//index.md",
    "content/kits/Moon/index.md",
    "content\\kits\\moon\\index.md",
    "content/classes/evening/other.csv",
    "content/words/en/own.ftl",
    "content/index.md",
    "secret.txt",
    "/etc/hostname",
    "",
    "content/kits/moon/index.md\u0000.txt",
  ])("are none of the desk's at %j", async (file) => {
    expect((await desk.get(`/api/text?file=${encodeURIComponent(file)}`)).status).toBe(403);
    const answer = await desk.post("/api/write", { file, text: MOON, mark: mark(), page: PAGE, anyway: true });
    expect([400, 403]).toContain(answer.status);
    expect((await desk.post("/api/open", { file })).status).toBe(answer.status);
    expect(readFileSync(path("secret.txt"), "utf8")).toBe("secret");
  });

  it.each([
    ["a file outside", (at: string, base: string) => symlinkSync(join(base, "secret.txt"), at)],
    [
      "another kit's file",
      (at: string, base: string) => {
        mkdirSync(join(base, "content/kits/sun"));
        writeFileSync(join(base, "content/kits/sun/index.md"), MOON);
        symlinkSync(join(base, "content/kits/sun/index.md"), at);
      },
    ],
    ["nowhere", (at: string) => symlinkSync("no-such-file", at)],
  ])("are not read through a link to %s", async (_, link) => {
    rmSync(path());
    link(path(), desk.base);
    const { status, text } = await desk.get(`/api/text?file=${FILE}`);
    expect(status).toBe(422);
    expect(text).not.toContain('secret"');
    const answer = await desk.post("/api/write", { file: FILE, text: MOON, mark: "0".repeat(64), page: PAGE });
    expect(answer.status).toBe(403);
    expect(lstatSync(path()).isSymbolicLink()).toBe(true);
  });

  it("are not written where the file became a link to itself elsewhere", async () => {
    const old = mark();
    writeFileSync(join(dirname(path()), "real.md"), MOON);
    rmSync(path());
    symlinkSync("real.md", path());
    const { status, json } = await desk.post("/api/write", {
      file: FILE,
      text: `${MOON}More.\n`,
      mark: old,
      page: PAGE,
    });
    expect([status, json().refused]).toEqual([403, expect.stringContaining("is a link now")]);
    expect(readFileSync(path(), "utf8")).toBe(MOON);
  });

  it("are not reached through a kit's folder that leads out of the project", async () => {
    const outside = join(desk.base, "outside");
    mkdirSync(outside);
    writeFileSync(join(outside, "index.md"), MOON);
    symlinkSync(outside, path("content/kits/away"));
    const file = "content/kits/away/index.md";
    expect((await desk.get(`/api/text?file=${file}`)).status).toBe(422);
    const answer = await desk.post("/api/write", { file, text: `${MOON}More.\n`, mark: mark(), page: PAGE });
    expect(answer.status).toBe(403);
    expect(readFileSync(join(outside, "index.md"), "utf8")).toBe(MOON);
  });

  it("tell where the file is read-only, a folder or gone", async () => {
    const old = mark();
    const refused = async (): Promise<string> => {
      const { status, json } = await desk.post("/api/write", {
        file: FILE,
        text: `${MOON}More.\n`,
        mark: old,
        page: PAGE,
      });
      expect(status).toBe(403);
      return json().refused;
    };
    chmodSync(path(), 0o444);
    expect(await refused()).toContain("read-only");
    expect(readFileSync(path(), "utf8")).toBe(MOON);
    rmSync(path());
    expect(await refused()).toContain(FILE);
    mkdirSync(path());
    expect(await refused()).toContain(FILE);
    expect(left()).toEqual(["index.md", "moon.svg"]);
  });

  it("are told of once, with the page that wrote them", async () => {
    const text = `${MOON}One more line.\n`;
    await write(text);
    const own = { news: "text", file: FILE, mark: mark(), page: PAGE };
    expect(desk.told).toEqual([own]);
    // What the watcher of files says of the desk's own write is no news.
    desk.texts.follow([FILE, "content/kits/moon/moon.svg"]);
    expect(desk.told).toEqual([own]);
    writeFileSync(path(), MOON);
    desk.texts.follow([FILE]);
    expect(desk.told.slice(1)).toEqual([{ news: "text", file: FILE, mark: mark(), page: undefined }]);
    rmSync(path());
    desk.texts.follow([FILE]);
    expect(desk.told.slice(2)).toEqual([{ news: "text", file: FILE, mark: undefined, page: undefined }]);
  });

  it("reach every page that listens", async () => {
    const { promise, resolve } = Promise.withResolvers<string>();
    const response = await fetch(`${desk.origin}/api/news`, { headers: { cookie: desk.cookie } });
    const reader = response.body!.pipeThrough(new TextDecoderStream()).getReader();
    void (async () => {
      let heard = "";
      while (!heard.includes("data:")) heard += (await reader.read()).value ?? "";
      resolve(heard);
    })();
    await write(`${MOON}Heard.\n`);
    expect(await promise).toContain(
      `event: news\ndata: ${JSON.stringify({ news: "text", file: FILE, mark: mark(), page: PAGE })}`,
    );
    await reader.cancel();
  });
});

/** A program beside the desk that adds a line to a file again and again, in place or by putting another file in its place. */
const EDITOR = `
const { readFileSync, renameSync, writeFileSync } = require("node:fs");
const { parentPort, workerData: { path, count, renames } } = require("node:worker_threads");
for (let i = 0; i < count; i += 1) {
  const text = readFileSync(path, "utf8") + "editor " + i + "\\n";
  if (renames) { writeFileSync(path + ".tmp", text); renameSync(path + ".tmp", path); }
  else writeFileSync(path, text);
  Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 1 + (i % 7));
}
parentPort.postMessage("done");
`;

describe("two desks at once", () => {
  it("never lose a text: each that was written is there, or was seen by who wrote after it", async () => {
    const desk = await openTestDesk();
    const path = join(desk.base, FILE);
    const written: string[] = [];
    const author = async (name: string): Promise<void> => {
      for (let i = 0; i < 10; ) {
        const { text, mark } = (await desk.get(`/api/text?file=${FILE}`)).json();
        const line = `${name} ${i}\n`;
        const { status } = await desk.post("/api/write", { file: FILE, text: text + line, mark, page: `${name}-page` });
        expect([200, 409]).toContain(status);
        if (status !== 200) continue;
        written.push(line);
        i += 1;
      }
    };
    await Promise.all(["one", "two", "three"].map(author));
    const text = readFileSync(path, "utf8");
    expect(text).toBe(MOON + written.join(""));
    expect(written).toHaveLength(30);
    await desk.close();
  });

  it.each([
    ["in place", false],
    ["by another file", true],
  ])("keep what an editor writes %s meanwhile", async (_, renames) => {
    const desk = await openTestDesk();
    const path = join(desk.base, FILE);
    const count = 60;
    const editor = new Worker(EDITOR, { eval: true, workerData: { path, count, renames } });
    const ended = new Promise((resolve) => editor.once("message", resolve));
    let isOver = false;
    void ended.then(() => (isOver = true));
    let i = 0;
    while (!isOver) {
      const read = await desk.get(`/api/text?file=${FILE}`);
      // In the middle of writing in place, a file has not all of its text.
      if (read.status !== 200) continue;
      const { text, mark } = read.json();
      if (!text.startsWith(MOON)) continue;
      const { status } = await desk.post("/api/write", {
        file: FILE,
        text: `${text}desk ${i}\n`,
        mark,
        page: PAGE,
        anyway: true,
      });
      if (status === 200) i += 1;
    }
    const lines = readFileSync(path, "utf8").slice(MOON.length).split("\n");
    // The editor itself knows no marks: it may write over a line of the desk, but never the desk over one of its own.
    const own = lines.filter((line) => line.startsWith("editor"));
    expect(own).toEqual(Array.from({ length: count }, (_, n) => `editor ${n}`));
    expect(readdirSync(dirname(path)).filter((name) => name.startsWith("."))).toEqual([]);
    await desk.close();
  });
});
