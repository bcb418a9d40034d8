import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parse, stringify } from "yaml";
import { patternKit } from "../../../src/build/library/pattern-kit.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import type { PatternedKit } from "../../../src/core/pattern/patterned-kit.ts";
import { KitError, type KitMessage } from "../../../src/input/files/message.ts";
import { readKit as readStated } from "../../../src/input/kit/read-kit.ts";
import { readMotifs } from "../../../src/input/kit/read-motifs.ts";

/** A project of the tests’ own: kits, a class and motifs that stay as they are, whatever a maker puts into content. */
export const FIXTURES = join(import.meta.dirname, "../../fixtures");

export const FIXTURE_KITS = ["evening-boat", "harbour-moon", "little-gull", "tide-and-lamp"] as const;

const KITS = join(FIXTURES, "content/kits");

/** The text of a fixture’s index.md. */
export function fixtureText(slug: string): string {
  return readFileSync(join(KITS, slug, "index.md"), "utf8");
}

/** A fixture’s front matter as plain YAML gives it. */
// biome-ignore lint/suspicious/noExplicitAny: tests change and read it freely
export function fixtureFrontMatter(slug: string): any {
  return parse(fixtureText(slug).split(/^---$/m)[1]!);
}

export function fixtureFolder(slug: string): string {
  return join(KITS, slug);
}

/** A fixture as it is stated. */
export function fixtureKit(slug: string): Kit {
  return readKit(fixtureFolder(slug), FIXTURES).kit;
}

/** Reads a kit's folder in the project `base` with the project's motifs, or the fixtures' where it has none, and computes its pattern. */
export function readKit(folder: string, base: string): PatternedKit {
  const { made } = readMotifs(base);
  return patternKit(readStated(folder, base, made.length > 0 ? made : readMotifs(FIXTURES).made));
}

/** Runs `use` with a folder for one test's kits and removes it afterwards. */
export function inFolder<T>(use: (base: string) => T): T {
  const base = mkdtempSync(join(tmpdir(), "leaflight-kits-"));
  try {
    return use(base);
  } finally {
    rmSync(base, { recursive: true, force: true });
  }
}

/** Reads a kit that is made of front matter and a picture. */
export function readMadeKit(frontMatter: object, svg: string, slug = "made"): PatternedKit {
  return inMadeFolder(frontMatter, svg, slug, readKit);
}

/** The same as it is stated, before its pattern. */
export function statedMadeKit(frontMatter: object, svg: string): Kit {
  return inMadeFolder(frontMatter, svg, "made", (folder, base) => readStated(folder, base, []).kit);
}

function inMadeFolder<T>(frontMatter: object, svg: string, slug: string, read: (folder: string, base: string) => T): T {
  return inFolder((base) => {
    const folder = join(base, slug);
    mkdirSync(folder, { recursive: true });
    writeFileSync(join(folder, "index.md"), `---\n${stringify(frontMatter)}---\nA kit for tests.\n`);
    writeFileSync(join(folder, "picture.svg"), svg);
    return read(folder, base);
  });
}

/** Copies a fixture to `<base>/kits/<slug>`, so that a test can spoil it; gives the folder. */
export function copyFixture(base: string, slug: string, to: string = slug): string {
  const folder = join(base, "kits", to);
  cpSync(join(KITS, slug), folder, { recursive: true });
  return folder;
}

/** The messages that reading a kit folder ends with; none when it can be read. */
export function messagesOf(folder: string, base: string): readonly KitMessage[] {
  try {
    readKit(folder, base);
    return [];
  } catch (error) {
    if (error instanceof KitError) return error.messages;
    throw error;
  }
}
