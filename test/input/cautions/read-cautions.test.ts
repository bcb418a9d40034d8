import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { parse, stringify } from "yaml";
import { type Caution, OCCASIONS } from "../../../src/core/plan/caution.ts";
import { readCautions } from "../../../src/input/cautions/read-cautions.ts";
import { formatMessage } from "../../../src/input/files/format-message.ts";
import { KitError } from "../../../src/input/files/message.ts";
import { inFolder } from "../kit/kit-folders.ts";

const ROOT = join(import.meta.dirname, "../../..");
const OURS = readFileSync(join(ROOT, "content/words/en/cautions.yaml"), "utf8");
const BLADE = { id: "blade", title: "Blades", when: "cuts", short: "Cut away from you.", text: "Cut away from you." };
const OF_EACH = OCCASIONS.map((when) => ({ ...BLADE, id: when, when }));

/** The cautions of a language in a site with these files below content/words. */
function read(files: Readonly<Record<string, string>>, language = "en"): Caution[] {
  return inFolder((base) => {
    for (const [name, text] of Object.entries(files)) {
      mkdirSync(dirname(join(base, "content/words", name)), { recursive: true });
      writeFileSync(join(base, "content/words", name), text);
    }
    return readCautions(base, language);
  });
}

function messagesOf(text: string): string[] {
  try {
    read({ "en/cautions.yaml": text });
    return [];
  } catch (error) {
    if (error instanceof KitError) return error.messages.map(formatMessage);
    throw error;
  }
}

/** Which line of our own file says so. */
const lineOf = (words: string): number => OURS.slice(0, OURS.indexOf(words)).split("\n").length;

describe("readCautions(base, language)", () => {
  it("reads those that come with the program", () => {
    expect(readCautions(ROOT, "en")).toEqual(parse(OURS));
  });

  it.each([
    ["nl", "nl"],
    ["nl-BE", "nl"],
    ["en-GB", "en"],
    ["fy", "en"],
  ])("takes for %s those of %s", (language, from) => {
    const files = Object.fromEntries(
      ["en", "nl"].map((one) => [
        `${one}/cautions.yaml`,
        stringify(OF_EACH.map((caution) => ({ ...caution, title: one }))),
      ]),
    );
    expect(read(files, language).map(({ title }) => title)).toEqual(OCCASIONS.map(() => from));
  });

  it.each<[string, string, RegExp]>([
    ["no YAML", "- id: [\n", /^content\/words\/en\/cautions\.yaml:\d+:\d+ {2}cautions: /],
    ["no list", "id: blade\n", /^content\/words\/en\/cautions\.yaml:1:1 {2}cautions: given .*; allowed: A list/],
    ["nothing", "", /cautions: given .*; allowed: A list of cautions/],
    ["an empty list", "[]\n", /cautions: given \[\]; allowed: A list of cautions/],
    [
      "a missing text",
      OURS.replace("title: Blades", "titel: Blades"),
      new RegExp(
        `:${lineOf("title: Blades")}:3 {2}cautions\\[2\\]\\.titel: unknown key "titel"; allowed: .*; do: write "title"`,
      ),
    ],
    [
      "another occasion",
      OURS.replace("when: cuts", "when: cut"),
      new RegExp(
        `:${lineOf("when: cuts")}:3 {2}cautions\\[2\\]\\.when: given "cut"; allowed: .*always, cuts, glue, light`,
      ),
    ],
    [
      "an empty short text",
      stringify([{ ...BLADE, short: " " }]),
      /:4:3 {2}cautions\[1\]\.short: given " "; allowed: .*; do: correct/,
    ],
    ...OCCASIONS.map((when): [string, string, RegExp] => [
      `no caution for ${when}`,
      stringify(parse(OURS).filter((one: Caution) => one.when !== when)),
      new RegExp(
        `cautions: none with "when: ${when}"; allowed: at least one for each of always, cuts, glue, light; do: write`,
      ),
    ]),
    [
      "an id twice",
      stringify([...OF_EACH, { ...BLADE, id: "cuts" }]),
      /:21:3 {2}cautions\[5\]\.id: a second caution "cuts"; allowed: .*; do: rename/,
    ],
  ])("tells of %s with place, and what to do", (_, text, message) => {
    const messages = messagesOf(text);
    expect(messages).toHaveLength(1);
    expect(messages[0]).toMatch(message);
    expect(messages[0]).toMatch(/; do: ./);
  });

  it("tells of a site without cautions", () => {
    expect(() => read({})).toThrow(KitError);
  });
});
