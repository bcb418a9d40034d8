import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { type ClassShelf, readClassEntries } from "../../../src/build/library/read-class-entries.ts";
import { inFolder } from "../../input/kit/kit-folders.ts";

/** Classes by the lines of their front matter, and what waits while kits of some names are not read. */
function waitingFor(kits: readonly string[], classes: Readonly<Record<string, string>>) {
  return inFolder((base) => {
    for (const [slug, lines] of Object.entries(classes)) {
      mkdirSync(join(base, "content/classes", slug), { recursive: true });
      writeFileSync(join(base, "content/classes", slug, "index.md"), `---\n${lines}\n---\n`);
    }
    const settings = { language: "en" };
    // Of a class that waits nothing else is looked at.
    const shelf = { facts: { base, settings }, waiting: new Set(kits) } as unknown as ClassShelf;
    return Object.fromEntries(readClassEntries(shelf).waiting);
  });
}

describe("readClassEntries(shelf)", () => {
  it("lets a class wait for the kits that it names and that are not read yet", () => {
    const classes = { spring: "kits: [moon, gull]", winter: "kits: [boat]" };
    expect(waitingFor(["moon", "boat", "sun"], classes)).toEqual({ spring: ["moon"], winter: ["boat"] });
  });

  it("lets one wait that takes its kits over from another", () => {
    const classes = { spring: "kits: [moon]", autumn: "from: spring\ndate: 2027-10-01" };
    expect(waitingFor(["moon"], classes)).toEqual({ spring: ["moon"], autumn: ["moon"] });
  });
});
