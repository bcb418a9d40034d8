import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { parse, stringify } from "yaml";
import { offeredOf } from "../../../src/input/class/kit-named.ts";
import { readClasses } from "../../../src/input/class/read-classes.ts";
import { formatMessage } from "../../../src/input/files/format-message.ts";
import {
  copyFixture,
  fixtureFrontMatter,
  fixtureKit,
  fixtureText,
  inFolder,
  messagesOf,
  readMadeKit,
} from "../kit/kit-folders.ts";

const GUIDE = join(import.meta.dirname, "../../../content/guide/en");
const README = join(import.meta.dirname, "../../../README.md");

/** What stands in a document's blocks of code in a language, in order. */
function blocks(file: string, language: string): string[] {
  const text = readFileSync(file, "utf8");
  return [...text.matchAll(new RegExp(`^\`\`\`${language}\\n(.*?)^\`\`\``, "gms"))].map((match) => match[1]!);
}

/** The front matter of a block of YAML. */
const matterOf = (yaml: string) => parse(/^---\n(.*?)^---$/ms.exec(yaml)![1]!);

const KIT = join(GUIDE, "making-a-kit.md");
const CLASS = join(GUIDE, "holding-a-class.md");

describe("the guide's example of a kit", () => {
  const [svg] = blocks(KIT, "svg");
  const [matter, light] = blocks(KIT, "yaml");
  const kit = { ...matterOf(matter!), picture: { ...matterOf(matter!).picture, file: "picture.svg" } };

  it("fits its book without a doubt", () => {
    const { pattern, findings } = readMadeKit(kit, svg!);
    expect(findings).toEqual([]);
    expect(pattern.fit.height).toBe(100);
  });

  it("takes the light that is added to it", () => {
    const { pattern, findings } = readMadeKit({ ...kit, ...parse(light!) }, svg!);
    expect(findings).toEqual([]);
    expect(pattern.pocket).toBeDefined();
  });

  it("shows motifs that a kit with a window takes", () => {
    const { insert } = parse(blocks(KIT, "yaml").at(-1)!);
    const messages = inFolder((base) => {
      const folder = copyFixture(base, "harbour-moon");
      writeFileSync(join(folder, "boat.svg"), svg!);
      const shown = { ...fixtureFrontMatter("harbour-moon"), insert };
      writeFileSync(join(folder, "index.md"), `---\n${stringify(shown)}---\nTold.\n`);
      return messagesOf(folder, base).map(formatMessage);
    });
    expect(messages).toEqual([]);
  });

  it("is the one that README shows", () => {
    const shown = matterOf(blocks(README, "yaml")[0]!);
    expect(shown).toEqual(matterOf(matter!));
  });
});

describe("the guide's example of a class", () => {
  it("is read with its table of books", () => {
    const kits = ["little-gull", "harbour-moon"].map(fixtureKit);
    const { made, messages } = inFolder((base) => {
      const folder = join(base, "content/classes/winter-evenings");
      mkdirSync(folder, { recursive: true });
      writeFileSync(join(folder, "index.md"), blocks(CLASS, "yaml")[0]!);
      writeFileSync(join(folder, "books.csv"), blocks(CLASS, "csv")[0]!);
      return readClasses(join(base, "content/classes"), base, { ...offeredOf(kits), broken: [], drafts: [] });
    });
    expect(messages).toEqual([]);
    expect(made[0]!.plan.seats.map(({ number, kit }) => [number, kit.slug])).toEqual([
      [1, "little-gull"],
      [2, "harbour-moon"],
      [3, "little-gull"],
    ]);
  });
});

describe("the guide's examples of messages", () => {
  const [told] = blocks(KIT, "text");

  /** What is told of the fixture with one line changed. */
  function toldOf(line: string, changed: string): string {
    return inFolder((base) => {
      const folder = copyFixture(join(base, "content"), "little-gull");
      const text = fixtureText("little-gull");
      expect(text.split(line)).toHaveLength(2);
      writeFileSync(join(folder, "index.md"), text.replace(line, changed));
      return messagesOf(folder, base).map(formatMessage).join("\n");
    });
  }

  it("are what is told of such a kit", () => {
    expect(told!.trim().split("\n")).toEqual([
      toldOf("  leaves: 112", "  leaves: 0"),
      toldOf("  height: 125", "  height: 400"),
    ]);
  });
});
