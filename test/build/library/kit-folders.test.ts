import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { BuildError } from "../../../src/build/errors/build-error.ts";
import { kitFolders } from "../../../src/build/library/kit-folders.ts";
import type { Opening } from "../../../src/build/library/opening.ts";

let base = "";

/** A site with a kit, a draft, and a folder that holds no kit yet. */
beforeEach(() => {
  base = mkdtempSync(join(tmpdir(), "leaflight-folders-"));
  for (const slug of ["harbour", "lantern", "sketches"])
    mkdirSync(join(base, "content/kits", slug), { recursive: true });
  writeFileSync(join(base, "content/kits/harbour/index.md"), "---\ntitle: Harbour\n---\n");
  writeFileSync(join(base, "content/kits/lantern/index.md"), "---\ndraft: true\n---\n");
});

afterEach(() => rmSync(base, { recursive: true, force: true }));

function folders(opening: Opening): { readonly read: string[]; readonly left: string[] } {
  const found = kitFolders(base, opening);
  return { read: found.folders.map((one) => basename(one)), left: found.drafts.map(({ slug }) => slug) };
}

describe("kitFolders(base, opening)", () => {
  it("leaves drafts out of a site", () => {
    expect(folders({})).toEqual({ read: ["harbour"], left: ["lantern", "sketches"] });
  });

  it("takes stated drafts where they are wanted", () => {
    expect(folders({ drafts: "take" })).toEqual({ read: ["harbour", "lantern"], left: ["sketches"] });
  });

  it("reads just the kits that are asked for, drafts too", () => {
    expect(folders({ kits: ["lantern"] })).toEqual({ read: ["lantern"], left: [] });
  });

  it("says which kit may be meant, or which there are", () => {
    expect(() => folders({ kits: ["harbor"] })).toThrow(/Did you mean harbour\?/);
    expect(() => folders({ kits: ["whale"] })).toThrow(/There are: harbour, lantern/);
    expect(() => folders({ kits: ["../kits"] })).toThrow(BuildError);
  });

  it("says so where there are no kits", () => {
    rmSync(join(base, "content"), { recursive: true });
    expect(() => folders({ kits: ["harbour"] })).toThrow(/npm run new/);
  });
});
