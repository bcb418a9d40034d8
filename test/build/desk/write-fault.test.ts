import fs, { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { syncBuiltinESMExports } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { BringWork } from "../../../src/build/desk/bring-work.ts";
import { USUAL_BOOK } from "../../../src/core/beginning/answers.ts";
import { newKitForm } from "../../../src/input/beginning/new-kit-form.ts";
import { MOON, openTestDesk, type TestDesk } from "./open-test-desk.ts";

const { writeSync, writeFileSync } = fs;

/** From now on the disk answers so to every write of a text, and of a file below a folder; undefined: it writes. */
function diskAnswers(code: string | undefined, folder = ""): void {
  const refused = (): never => {
    throw Object.assign(new Error(`${code}: write`), { code, syscall: "write" });
  };
  fs.writeSync = code === undefined ? writeSync : refused;
  fs.writeFileSync = (...asked) =>
    code !== undefined && String(asked[0]).startsWith(folder) ? refused() : writeFileSync(...asked);
  syncBuiltinESMExports();
}

const FILE = "content/kits/moon/index.md";
const FULL = "Nothing was written, as the disk is full: make room on it, and try again.";

/** Codes of the system, by its manual (errno(3)). */
const TOLD: readonly (readonly [code: string, status: number, told: string])[] = [
  ["ENOSPC", 500, FULL],
  ["EDQUOT", 500, FULL],
  [
    "EACCES",
    403,
    "Nothing was written, as permission is missing: give yourself permission to write in its folder, and try again.",
  ],
  ["EROFS", 403, "Nothing was written, as the file is read-only: let it be written, and try again."],
  ["EIO", 500, "Nothing was written, as the disk cannot be written (EIO): check it, and try again."],
];

afterEach(() => {
  diskAnswers(undefined);
});

describe("a text that the disk does not take", () => {
  let desk: TestDesk;
  beforeEach(async () => {
    desk = await openTestDesk();
  });
  afterEach(() => desk.close());

  it.each(TOLD)("is told of in one sentence at %s, and the file stays as it was", async (code, status, told) => {
    const { mark } = desk.texts.read(FILE);
    diskAnswers(code);
    const answer = await desk.post("/api/write", { file: FILE, text: `${MOON}More.\n`, mark, page: "a-page-12" });
    expect([answer.status, answer.json()]).toEqual([status, { refused: told }]);
    diskAnswers(undefined);
    expect(readFileSync(join(desk.base, FILE), "utf8")).toBe(MOON);
    expect(readdirSync(dirname(join(desk.base, FILE)))).toEqual(["index.md", "moon.svg"]);
    expect(desk.told).toEqual([]);
  });
});

describe("a new kit that the disk does not take", () => {
  it("is told of in the same sentence, and leaves nothing behind", () => {
    const base = mkdtempSync(join(tmpdir(), "leaflight-bring-"));
    mkdirSync(join(base, "content"));
    const picture = { from: "outline", name: "ring" } as const;
    const form = newKitForm.parse({
      slug: "ring",
      title: "Ring",
      picture,
      book: USUAL_BOOK,
      units: "mm",
      draft: false,
    });
    diskAnswers("ENOSPC", base);
    const made = new BringWork(base, () => []).make(form);
    diskAnswers(undefined);
    expect(made).toEqual({ hurdles: [{ place: undefined, given: FULL, allowed: "", remedy: "" }] });
    expect(readdirSync(join(base, "content/kits"))).toEqual([]);
    rmSync(base, { recursive: true });
  });
});
