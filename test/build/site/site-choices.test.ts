import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { BuildError } from "../../../src/build/errors/build-error.ts";
import { chooseSite, outputFolder } from "../../../src/build/site/choose-site.ts";
import { choice, SITE_VARIABLES, settleChoices, takeChoices } from "../../../src/build/site/site-choices.ts";
import { contentPath, readContentFrom } from "../../../src/input/files/content-folder.ts";

const VARIABLES = Object.values(SITE_VARIABLES);

describe("what a command is told of its site", () => {
  const before = VARIABLES.map((name) => [name, process.env[name]] as const);
  let base: string;
  const state = (name: string, value: string | undefined): void => {
    if (value === undefined) delete process.env[name];
    else process.env[name] = value;
  };
  beforeEach(() => {
    base = mkdtempSync(join(tmpdir(), "leaflight-choices-"));
    for (const name of ["content", "src", "sites/north/kits"]) mkdirSync(join(base, name), { recursive: true });
    for (const name of VARIABLES) state(name, undefined);
  });
  afterEach(() => {
    for (const [name, value] of before) state(name, value);
    readContentFrom("content");
    rmSync(base, { recursive: true, force: true });
  });
  const env = (text: string): void => writeFileSync(join(base, ".env"), text);

  it("takes its options out of the words, whichever way they are written", () => {
    expect(takeChoices(["moon", "--content", "sites/north", "--url=https://a/b/", "--x"], ["content", "url"])).toEqual({
      said: { content: "sites/north", url: "https://a/b/" },
      rest: ["moon", "--x"],
    });
    expect(takeChoices(["--output", "a"], ["content"])).toEqual({ said: {}, rest: ["--output", "a"] });
  });

  it.each([[["--content"]], [["--content", "--url"]], [["--content="]], [["--content", "a", "--content", "b"]]])(
    "refuses %j",
    (words) => {
      expect(() => takeChoices(words, ["content"])).toThrow(BuildError);
    },
  );

  it("lets an option count more than the environment, and that more than the project's .env", () => {
    env("\uFEFFLEAFLIGHT_CONTENT=c\r\nLEAFLIGHT_OUTPUT='o'\r\nLEAFLIGHT_SITE_URL=https://file/\r\nOTHER_THING=x\r\n");
    state("LEAFLIGHT_SITE_URL", "https://environment/");
    state("LEAFLIGHT_OUTPUT", "");
    settleChoices(base, { said: { content: "said" } });
    expect([choice("content"), choice("output"), choice("url")]).toEqual(["said", "o", "https://environment/"]);
    expect(process.env["OTHER_THING"]).toBeUndefined();
  });

  it("reads the chosen content, from the project or from elsewhere", () => {
    expect(chooseSite(base, ["moon", "--content", "sites/north/"], ["content"])).toEqual(["moon"]);
    expect(contentPath("kits")).toBe("sites/north/kits");
    const other = mkdtempSync(join(tmpdir(), "leaflight-other-"));
    state("LEAFLIGHT_CONTENT", other);
    chooseSite(base, [], ["content"]);
    expect(join(base, contentPath())).toBe(other);
    rmSync(other, { recursive: true });
  });

  it.each([["nowhere"], ["."], [".."], ["src"]])("refuses to read content from %s", (folder) => {
    expect(() => chooseSite(base, ["--content", folder], ["content"])).toThrow(BuildError);
  });

  it.each([["."], [".."], ["content"], ["content/kits"], ["src/x"], ["sites"], ["sites/north"], ["sites/north/x"]])(
    "refuses to make a site in %s",
    (output) => {
      state("LEAFLIGHT_OUTPUT", output);
      expect(() => outputFolder(base, "sites/north")).toThrow(BuildError);
    },
  );

  it("replaces a site and nothing else", () => {
    state("LEAFLIGHT_OUTPUT", "made");
    expect(outputFolder(base, "content")).toBe("made");
    mkdirSync(join(base, "made/assets"), { recursive: true });
    for (const name of ["index.html", "licences.txt"]) {
      expect(() => outputFolder(base, "content")).toThrow(/would be lost/);
      writeFileSync(join(base, "made", name), "");
    }
    expect(outputFolder(base, "content")).toBe("made");
    state("LEAFLIGHT_OUTPUT", undefined);
    expect(outputFolder(base, "content")).toBe("dist");
  });
});
