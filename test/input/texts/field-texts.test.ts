import { describe, expect, it } from "vitest";
import { classMatter } from "../../../src/input/class/schema.ts";
import { readYaml } from "../../../src/input/files/yaml.ts";
import { frontMatter } from "../../../src/input/kit/schema.ts";
import { fieldTexts } from "../../../src/input/texts/field-texts.ts";
import { textsWithin } from "../../../src/input/texts/find-text.ts";
import { pageTexts } from "../../../src/input/texts/page-texts.ts";

const KIT = `title: Moon over ice
summary: A summary
units: mm
picture: { file: moon.svg, levels: { rim: ["#rim"] } }
levels:
  - { name: rim, line: 1 }
  - name: sky
    background: true
light: { in: rim, diameter: 30, height: 40, cells: CR2032 }
insert: { outline: rim }
sheets: [a4, { name: Big card, width: 300, height: 400 }]
supplies:
  - { item: paint, unit: tubes, quantity: 2 }
photos: [{ file: one.jpg, alt: On the sill }]
credit: { work: An old moon, licence: free, source: a book, url: "https://example.org/" }
`;

const textsOf = (yaml: string, schema: Parameters<typeof fieldTexts>[0]["schema"] = frontMatter) =>
  fieldTexts({ file: "index.md", yaml: readYaml("index.md", yaml, 1, "front matter"), schema, whole: "front matter" });

describe("fieldTexts({ file, yaml, schema, whole })", () => {
  it("finds what people read, and no names of files, levels under other keys, ids, lengths or addresses", () => {
    const found = textsOf(KIT).map(({ field, text }) => `${field}: ${text}`);
    expect(found).toEqual([
      "title: Moon over ice",
      "summary: A summary",
      "credit.work: An old moon",
      "credit.licence: free",
      "credit.source: a book",
      "photos[1].alt: On the sill",
      "levels[1].name: rim",
      "levels[2].name: sky",
      "light.cells: CR2032",
      "sheets[2].name: Big card",
      "supplies[1].item: paint",
      "supplies[1].unit: tubes",
    ]);
  });

  it("names lines of the file, counted with the line above the YAML", () => {
    const lines = new Map(textsOf(KIT).map(({ field, line }) => [field, line]));
    expect(lines.get("title")).toBe(2);
    expect(lines.get("levels[2].name")).toBe(8);
    expect(lines.get("supplies[1].item")).toBe(14);
  });

  it("knows what packets print and what pages alone show", () => {
    const printed = new Map(textsOf(KIT).map(({ field, printed }) => [field, printed]));
    expect(printed.get("title")).toBe(true);
    expect(printed.get("photos[1].alt")).toBe(false);
    const bring = textsOf("bring: [a lamp]\nplace: the hall\n", classMatter);
    expect(bring.map(({ field, printed }) => [field, printed])).toEqual([
      ["place", true],
      ["bring[1]", true],
    ]);
  });

  it("leaves out what is not as the schema has it", () => {
    expect(textsOf("title: 7\nlevels: none\nsupplies: [[deep]]\nlight: 3\n")).toEqual([]);
    expect(textsOf("- a list\n")).toEqual([]);
  });
});

describe("pageTexts(file, text, field)", () => {
  it("has the lines below the front matter with their numbers", () => {
    const page = "---\ntitle: x\n---\n\nOne line.\r\n\n  Another\n";
    expect(pageTexts("a.md", page, "text").map(({ line, text }) => [line, text])).toEqual([
      [5, "One line."],
      [7, "Another"],
    ]);
  });
});

describe("textsWithin(texts, printed)", () => {
  const texts = textsOf(KIT);
  const fields = (printed: string): string[] => textsWithin(texts, printed).map(({ field }) => field);

  it("finds the authored texts in what a box says, the longest first", () => {
    expect(fields("Picture after An old moon, Moon over ice")).toEqual(["title", "credit.work"]);
  });

  it("takes no notice of spaces and of places where a word may break", () => {
    expect(fields("M\u200bo\u200bo\u200bn  over\u00a0ice: the steps")).toEqual(["title"]);
  });

  it("takes the beginning of a text for it", () => {
    expect(fields("Moon ov")).toEqual(["title"]);
  });

  it("finds nothing where the program itself wrote, and nothing by very short words", () => {
    expect(fields("Pattern table, continued")).toEqual([]);
    expect(fields("the rim of the sky")).toEqual([]);
  });
});
