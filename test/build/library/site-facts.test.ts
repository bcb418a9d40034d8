import { cpSync, mkdtempSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { Gathering } from "../../../src/build/library/gathering.ts";
import { readFacts, type SiteFacts } from "../../../src/build/library/site-facts.ts";
import { Store } from "../../../src/build/store/store.ts";
import { FIXTURES } from "../../input/kit/kit-folders.ts";

const ROOT = join(import.meta.dirname, "../../..");
const SQUARE = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><path d="M1 1h8v8h-8z"/></svg>';
const APART = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><path d="M1 1h3v8h-3zM6 1h3v8h-3z"/></svg>';

let base: string;
beforeEach(() => {
  base = mkdtempSync(join(tmpdir(), "leaflight-facts-"));
  for (const name of ["motifs", "site.yaml"])
    cpSync(join(FIXTURES, "content", name), join(base, "content", name), { recursive: true });
  cpSync(join(ROOT, "content/words"), join(base, "content/words"), { recursive: true });
});
afterEach(() => rmSync(base, { recursive: true }));

/** The facts as a new run reads them, and how many messages there are. */
function read(): { readonly motifs: SiteFacts["motifs"]; readonly messages: number } {
  const gathering = new Gathering("leave out");
  const { motifs } = readFacts(base, gathering, new Store(join(base, "made")));
  return { motifs, messages: gathering.messages.length };
}

const namesOf = ({ motifs }: ReturnType<typeof read>): string[] => motifs.map(({ name }) => name);

describe("motifs of a site that is read again", () => {
  it("are the same, and those that came, went or changed meanwhile are not", () => {
    const first = read();
    expect(first.motifs.length).toBeGreaterThan(1);
    expect(read()).toEqual(first);
    writeFileSync(join(base, "content/motifs/square.svg"), SQUARE);
    const added = read();
    expect(namesOf(added)).toContain("square");
    renameSync(join(base, "content/motifs/gull.svg"), join(base, "content/motifs/bird.svg"));
    expect(namesOf(read())).toContain("bird");
    expect(namesOf(read())).not.toContain("gull");
    writeFileSync(join(base, "content/motifs/square.svg"), SQUARE.replace("h8v8h-8", "h8v4h-8"));
    const areaOf = ({ motifs }: ReturnType<typeof read>): unknown => motifs.find(({ name }) => name === "square")!.area;
    expect(areaOf(read())).not.toEqual(areaOf(added));
  });

  it("are told of each time where one is no silhouette", () => {
    writeFileSync(join(base, "content/motifs/square.svg"), APART);
    expect([read().messages, read().messages]).toEqual([1, 1]);
  });
});
