import { cpSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { stringify } from "yaml";
import { patternKit } from "../../../src/build/library/pattern-kit.ts";
import type { PatternedKit } from "../../../src/core/pattern/patterned-kit.ts";
import { refitKit } from "../../../src/core/refit/refit.ts";
import { KitError } from "../../../src/input/files/message.ts";
import { fieldName } from "../../../src/input/files/schema-messages.ts";
import { readKit, type StatedKit } from "../../../src/input/kit/read-kit.ts";
import { frontMatter } from "../../../src/input/kit/schema.ts";
import { drawStep } from "../../../src/output/views/step-drawing.ts";
import { viewOf } from "../../../src/page/kit/fitted.ts";
import { readTexts } from "../../../src/page/kit/panel-texts.ts";
import { authorFailure } from "../../../src/words/findings/author-failure.ts";
import { FIXTURES, fixtureFrontMatter } from "../../input/kit/kit-folders.ts";
import { fc } from "../../seed.ts";
import { anyReader, type Reader, SLUGS, type Written } from "./random-reader.ts";

const READERS = 500;

const base = mkdtempSync(join(tmpdir(), "leaflight-readers-"));
afterAll(() => rmSync(base, { recursive: true, force: true }));
cpSync(join(FIXTURES, "content"), join(base, "content"), { recursive: true });

/** Plain pictures for the kits without a window, squares in squares by the ids of their levels, as drawings take longest to read. */
const SQUARES = {
  "little-gull/gull.svg": ["sky", "gull"],
  "evening-boat/boat.svg": ["sky", "evening", "sailboat"],
  "tide-and-lamp/tide.svg": ["night", "openings", "far", "town", "quay"],
};
for (const [file, ids] of Object.entries(SQUARES)) {
  const square = (id: string, i: number) =>
    `<rect id="${id}" x="${9 * i}" y="${9 * i}" width="${100 - 18 * i}" height="${100 - 18 * i}"/>`;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100">${ids.map(square).join("")}</svg>`;
  writeFileSync(join(base, "content/kits", file), svg);
}

type Verdict =
  /** Fields whose figures cannot be taken. */
  | { readonly wrong: readonly string[] }
  /** Fields of the front matter, each with what it gives. */
  | { readonly misfit: readonly (readonly string[])[] }
  | { readonly fits: string };

/** A fixture's front matter: its picture may stand where there is room, no plates are known, and no motifs are set. */
function frontMatterOf(slug: string) {
  const data = fixtureFrontMatter(slug);
  delete data.fit.head;
  data.book.plates = [];
  if (data.insert) data.insert.motifs = [];
  return data;
}

function stated(slug: string, data: object): StatedKit {
  const folder = join(base, "content/kits", slug);
  writeFileSync(join(folder, "index.md"), `---\n${stringify(data)}---\nA kit for tests.\n`);
  return readKit(folder, base, []);
}

const OWN = new Map(SLUGS.map((slug) => [slug as string, stated(slug, frontMatterOf(slug)).kit]));

/** Of a kit that fits: how, every leaf, room for the light, and what may disappoint. */
function fitOf({ pattern, findings }: Pick<PatternedKit, "pattern" | "findings">): Verdict {
  return { fits: JSON.stringify([pattern.fit, pattern.leaves, pattern.pocket, findings]) };
}

/** With these it is another book: its last page follows from the leaves where it is not stated. */
const COUNTED = ["leaves", "pageOneLeaf", "plates"];

/** The front matter with the reader's figures in it. */
function statedBy({ slug, written }: Reader): object {
  const data = frontMatterOf(slug);
  for (const { path, yaml, field } of written) {
    const place = path.slice(0, -1).reduce((at, key) => at[key], data);
    const key = path.at(-1)!;
    if (COUNTED.includes(field) && JSON.stringify(place[key]) !== JSON.stringify(yaml)) delete data.book.lastPage;
    if (key === "depth") delete place.line;
    place[key] = yaml;
  }
  const last = written.find(({ field }) => field === "lastPage");
  if (last) data.book.lastPage = last.yaml;
  return data;
}

function byBuild(reader: Reader): Verdict {
  const data = statedBy(reader);
  const parsed = frontMatter.safeParse(data);
  if (!parsed.success) {
    const paths = parsed.error.issues.map((issue) => fieldName(issue.path));
    const isWrong = ({ path }: Written): boolean => paths.some((one) => one.startsWith(fieldName(path)));
    return { wrong: reader.written.filter(isWrong).map(({ field }) => field) };
  }
  try {
    return fitOf(patternKit(stated(reader.slug, data)));
  } catch (error) {
    if (error instanceof KitError) return { misfit: error.messages.map(({ field, given }) => [field, given]) };
    throw error;
  }
}

function byPage({ slug, written }: Reader): Verdict {
  const kit = OWN.get(slug)!;
  const texts = new Map(written.map(({ field, text }) => [field, text]));
  const { refit, read } = readTexts(kit, (field) => texts.get(field));
  const wrong = read.filter(({ fault }) => fault !== undefined).map(({ field }) => field.name);
  if (wrong.length > 0) return { wrong };
  const fitted = refitKit(kit, refit);
  const result = viewOf({ kit, cautions: [] }, fitted, drawStep);
  if ("view" in result) {
    if (result.view.way !== "cut") throw new Error("no reader here folds corners");
    return fitOf(result.view);
  }
  const { path, given } = authorFailure(result.failure, fitted);
  return { misfit: [[fieldName(path), given]] };
}

describe("a book of somebody's own", () => {
  it(`gets the same verdict and the same faults from page and build: ${READERS} readers`, () => {
    const kinds = { wrong: 0, misfit: 0, fits: 0 };
    fc.assert(
      fc.property(anyReader, (reader) => {
        const verdict = byBuild(reader);
        expect(byPage(reader)).toEqual(verdict);
        kinds[Object.keys(verdict)[0] as keyof typeof kinds] += 1;
      }),
      { numRuns: READERS },
    );
    // All three are met often, so that none is compared by chance alone.
    expect(Math.min(...Object.values(kinds))).toBeGreaterThan(READERS / 10);
  }, 300_000);
});
