import { describe, expect, it } from "vitest";
import type { Level } from "../../../src/core/kit/kit.ts";
import { ProblemError } from "../../../src/input/files/problem.ts";
import type { Asked } from "../../../src/input/picture/asked.ts";
import { drawSvg } from "../../../src/input/picture/assign-levels.ts";
import { foundIn } from "../../../src/input/picture/found-in.ts";
import { readSvg } from "../../../src/input/svg/read-svg.ts";

const LEVELS: readonly Level[] = ["near", "middle", "far"].map((name, i) => ({
  name,
  depth: 10 + i,
  line: i + 1,
  background: name === "far",
}));

const svg = (body: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" xmlns:ed="http://example.org/editor" viewBox="0 0 100 100">\n${body}</svg>`;

/** The levels of a drawing's shapes in order. */
function levelsOf(body: string, asked: Asked): number[] {
  return drawSvg(readSvg(svg(body)), asked, LEVELS, { file: "a.svg", at: ["picture"] }).shapes.map(
    ({ level }) => level,
  );
}

/** What is told of a drawing, as one text for each problem. */
function problemsOf(body: string, asked: Asked): string[] {
  try {
    levelsOf(body, asked);
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error;
    return error.problems.map(({ given, allowed, remedy }) => `${given} | ${allowed} | ${remedy}`);
  }
  return [];
}

const rect = (attributes: string): string => `<rect width="50" height="50" ${attributes}/>\n`;

describe("a selection", () => {
  it.each<[string, string, Asked["levels"]]>([
    ["an id", rect('id="Front rim"'), { near: "#Front rim" }],
    ["an escaped id by its name", rect('id="Front_x20_rim"'), { near: "Front rim" }],
    ["an escaped id as it stands", rect('id="Front_x20_rim"'), { near: "#Front_x20_rim" }],
    ["an id that an exporter has numbered", rect('id="rim_1_"'), { near: "rim" }],
    ["a label of an editor", `<g id="layer1" ed:label=" Front  rim ">${rect("")}</g>`, { near: "Front rim" }],
    ["a data-name", rect('id="a" data-name="Front rim"'), { near: ["Front rim"] }],
    ["a title", `<g><title>Front rim</title>${rect("")}</g>`, { near: "Front rim" }],
    ["a name with letters that are composed otherwise", rect('data-name="Lo\u0308we"'), { near: "Löwe" }],
    ["a class", rect('class="x st0"'), { near: ".st0" }],
    ["a class of a group", `<g class="st0">${rect("")}</g>`, { near: ".st0" }],
    ["a colour, however it is written", rect('fill="rgb(204, 51, 51)"'), { near: { fill: "#C33" } }],
    ["an inherited colour", `<g fill="#cc3333">${rect("")}</g>`, { near: [{ fill: "#c33" }] }],
    [
      "the colour that is meant by currentColor",
      `<g color="#c33">${rect('fill="currentColor"')}</g>`,
      { near: { fill: "#c33" } },
    ],
    [
      "the colour that a use hands down",
      `<defs><path id="p" d="M0 0h9v9z" fill="context-fill"/></defs><use href="#p" fill="#c33"/>`,
      { near: { fill: "#c33" } },
    ],
    ["a colour of the default", rect(""), { near: { fill: "black" } }],
    ["the colour of a stroke", '<path d="M0 0h50" stroke="teal" stroke-width="9"/>', { near: { stroke: "teal" } }],
  ])("picks shapes by %s", (_, body, levels) => {
    expect(levelsOf(body, { levels })).toEqual([1]);
  });

  it.each<[string, string, Asked["levels"], number[]]>([
    ["the nearest element", `<g id="out">${rect('id="in"')}${rect("")}</g>`, { near: "#out", middle: "#in" }, [2, 1]],
    ["id before name", rect('id="a" data-name="b"'), { near: "b", middle: "#a" }, [2]],
    ["name before class", rect('class="c" data-name="b"'), { near: ".c", middle: "b" }, [2]],
    ["class before colour", rect('class="c" fill="red"'), { near: { fill: "red" }, middle: ".c" }, [2]],
    [
      "its own colour before a group's id",
      `<g id="g">${rect('fill="red"')}${rect("")}</g>`,
      { near: "#g", middle: { fill: "red" } },
      [2, 1],
    ],
    [
      "fill and stroke apart",
      rect('fill="red" stroke="blue"'),
      { near: { fill: "red" }, middle: { stroke: "blue" } },
      [1, 2],
    ],
    ["a stroke with its fill", rect('fill="red" stroke="blue"'), { near: { fill: "red" } }, [1, 1]],
    ["a fill with its stroke", rect('fill="red" stroke="blue"'), { near: { stroke: "blue" } }, [1, 1]],
    ["two elements of one id", `${rect('id="a"')}${rect('id="a"')}`, { near: "#a" }, [1, 1]],
  ])("takes %s", (_, body, levels, found) => {
    expect(levelsOf(body, { levels })).toEqual(found);
  });

  it("takes the shapes of one level and leaves the others", () => {
    const body = `${rect('id="a"')}${rect('id="b"')}`;
    expect(levelsOf(body, { level: "middle", names: ["#b"] })).toEqual([2]);
    expect(levelsOf(body, { level: "middle" })).toEqual([2, 2]);
    expect(problemsOf(body, { level: "midle" })).toEqual([expect.stringMatching(/did you mean "middle"/)]);
  });
});

describe("levels that nobody states", () => {
  it("are found by their names, with a note", () => {
    const body = `<g ed:label="NEAR">${rect("")}</g><g id="Middle">${rect("")}</g>${rect('class="far"')}`;
    const drawn = drawSvg(readSvg(svg(body)), {}, LEVELS, { file: "a.svg", at: ["picture"] });
    expect(drawn.shapes.map(({ level }) => level)).toEqual([1, 2, 3]);
    expect(drawn.notes.at(-1)!.message).toMatch(/“near”, “middle”, and “far”/);
  });

  it("are an error with colours, names and their shares where nothing is called like them", () => {
    const half =
      '<g ed:label="Hull"><rect width="100" height="50" fill="#c33"/></g><rect y="50" width="25" height="50"/>';
    const [text, ...more] = problemsOf(half, {});
    expect(more).toEqual([]);
    // Half of the canvas, and an eighth of it.
    expect(text).toContain('"Hull" (50%)');
    expect(text).toContain('fill: "#cc3333" (50%)');
    expect(text).toContain('fill: "#000000" (13%)');
  });
});

describe("what is wrong with a selection", () => {
  it.each<[string, string, Asked["levels"], RegExp]>([
    ["a misspelt name", rect('data-name="Hull"'), { near: "hul" }, /given "hul"|"hul".*did you mean "Hull"/],
    ["a misspelt id", rect('id="hull"'), { near: "#hul" }, /#hull.*did you mean "#hull"/],
    [
      "an id without its sign that is no name",
      `<defs><g id="hull"/></defs>${rect("")}`,
      { near: "hull" },
      /did you mean "#hull"/,
    ],
    ["a misspelt class", rect('class="st0"'), { near: ".st1" }, /did you mean ".st0"/],
    ["a colour that no shape has", rect('fill="red"'), { near: { fill: "#c33" } }, /fill: #c33.*"#ff0000" \(25%\)/],
    ["what is no colour", rect(""), { near: { fill: "reddish" } }, /reddish.*as CSS writes it/],
    ["a level that is misspelt", rect('id="a"'), { neer: "#a" }, /did you mean "near"/],
    ["the same twice", rect('id="a" data-name="b"'), { near: "b", middle: ["#a", "b"] }, /a second time/],
    [
      "a shape of no level",
      `${rect('id="a"')}${rect('fill="red"')}`,
      { near: "#a" },
      /<rect> without an id, fill #ff0000/,
    ],
  ])("is told: %s", (_, body, levels, says) => {
    expect(problemsOf(body, { levels })).toEqual([expect.stringMatching(says)]);
  });

  it("names of many shapes without level the first ten, and how many more there are", () => {
    const told = problemsOf(rect('id="a"') + rect("").repeat(30), { levels: { near: "#a" } });
    expect(told).toHaveLength(10);
    expect(told.at(-1)).toMatch(/and 20 shapes more/);
  });
});

describe("foundIn(picture)", () => {
  it("tells what shows, by shares of the canvas, without the furniture of an editor", () => {
    const body = `<metadata id="m"/><defs id="d"><linearGradient id="g"/></defs><view id="v"/>
      <g id="sky" class="k"><rect width="100" height="100" fill="#00f"/></g>
      <g id="layer1" ed:label="Sun"><rect width="50" height="50" fill="url(#g)" stroke="none"/></g>
      <g id="hidden" display="none"><rect width="9" height="9"/></g>`;
    expect(foundIn(readSvg(svg(body)))).toEqual([
      { kind: "fill", value: "#0000ff", share: 0.75 },
      { kind: "id", value: "sky", share: 0.75 },
      { kind: "class", value: "k", share: 0.75 },
      { kind: "name", value: "Sun", share: 0.25 },
    ]);
  });
});
