import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, describe, expect, it } from "vitest";
import { draftIn } from "../../../src/input/kit/drafts.ts";

let base = "";

afterEach(() => rmSync(base, { recursive: true, force: true }));

/** What is found in a kit's folder with an index.md of this text, or with none. */
function found(text?: string): string | undefined {
  base = mkdtempSync(join(tmpdir(), "leaflight-draft-"));
  const folder = join(base, "content/kits/lantern");
  mkdirSync(folder, { recursive: true });
  if (text !== undefined) writeFileSync(join(folder, "index.md"), text);
  return draftIn(folder, base)?.why;
}

describe("draftIn(folder)", () => {
  it("is a draft where index.md says so, however unfinished the rest is", () => {
    expect(found("---\ntitle: Lantern\ndraft: true\n---\n")).toBe("stated");
  });

  it("is a draft where there is no index.md yet", () => {
    expect(found()).toBe("no index");
  });

  it.each([
    "---\ntitle: Lantern\n---\n",
    "---\ndraft: false\n---\n",
    '---\ndraft: "true"\n---\n',
    "---\n[draft: true\n---\n",
    "draft: true\n",
    "---\n- draft\n---\n",
  ])("is none otherwise: %j", (text) => {
    expect(found(text)).toBeUndefined();
  });
});
