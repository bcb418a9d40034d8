import { describe, expect, it } from "vitest";
import { type Edit, editText } from "../../../src/input/desk/edit.ts";

const page = (yaml: string): string => `---\n${yaml}\n---\nTold *below*.\n`;

/** The YAML of an edited front matter. */
function edited(yaml: string, ...edits: Edit[]): string {
  const text = editText(page(yaml), edits)!;
  expect(text.startsWith("---\n")).toBe(true);
  expect(text.endsWith("\n---\nTold *below*.\n")).toBe(true);
  return text.slice(4, -"\n---\nTold *below*.\n".length);
}

/** A column: what is written, what is asked, and what is written then. */
const CASES: Readonly<Record<string, readonly [yaml: string, edit: Edit, wanted: string]>> = {
  "a number": ["a: 1 # one\nb: 2", { at: ["a"], value: 7 }, "a: 7 # one\nb: 2"],
  "a number with its decimals": ["a: 10.0", { at: ["a"], value: 12 }, "a: 12.0"],
  "a number with more decimals than before": ["a: 10.0", { at: ["a"], value: 12.25 }, "a: 12.25"],
  "a word for a number": ["height: 130  # tall", { at: ["height"], value: "solve" }, "height: solve  # tall"],
  "a number for a word in quotes": ['height: "solve"', { at: ["height"], value: 130 }, "height: 130"],
  "a text in double quotes": ['a: "one" # x', { at: ["a"], value: "two" }, 'a: "two" # x'],
  "a text in single quotes": ["a: 'one'", { at: ["a"], value: "it's" }, "a: 'it''s'"],
  "a plain text that needs quotes": ["a: one", { at: ["a"], value: "true" }, 'a: "true"'],
  "a text with a colon": ["a: one", { at: ["a"], value: "b: c # d" }, 'a: "b: c # d"'],
  "a text of several lines": ["a: one\nb: 2", { at: ["a"], value: "b\nc" }, 'a: "b\\nc"\nb: 2'],
  "a text below a bar": ["a: |\n  one\n  two\nb: 2", { at: ["a"], value: "three" }, "a: three\nb: 2"],
  "a plain text over two lines": ["a: one\n  two\nb: 2", { at: ["a"], value: "three" }, "a: three\nb: 2"],
  "a place in a list": [
    "fit: { borderLeaves: [12, 12] }",
    { at: ["fit", "borderLeaves", 1], value: 9 },
    "fit: { borderLeaves: [12, 9] }",
  ],
  "a list by its places": ["a: [1,  2 , 3]", { at: ["a"], value: [1, 5, 3] }, "a: [1,  5 , 3]"],
  "a shorter list": ["a: [1,  2 , 3]", { at: ["a"], value: [1, 3] }, "a: [1,  3]"],
  "a longer list": ["a: [1, 3]", { at: ["a"], value: [1, 2, 3] }, "a: [1, 2, 3]"],
  "a list in a list that is one longer at its end": [
    "a: [1, 2, ] # x",
    { at: ["a"], value: [1, 2, 3] },
    "a: [1, 2, 3, ] # x",
  ],
  "a map by its keys": ["a: {x: 1, y: 2} # c", { at: ["a"], value: { y: 2, x: 3 } }, "a: {x: 3, y: 2} # c"],
  "a map for a number": ["a: 1\nb: 2", { at: ["a"], value: { x: 1 } }, "a: { x: 1 }\nb: 2"],
  "a number for a map": ["a: # why\n  x: 1\n  y: 2\nb: 2", { at: ["a"], value: 3 }, "a: 3 # why\nb: 2"],
  "a key that had no value": ["a: # why\nb: 2", { at: ["a"], value: 3 }, "a: 3 # why\nb: 2"],
  "a key in a key that had no value": ["a:\nb: 2", { at: ["a", "x"], value: 3 }, "a: { x: 3 }\nb: 2"],
  "the last key of all": ["a: 1\nb: 2", { at: ["c"], value: 3 }, "a: 1\nb: 2\nc: 3"],
  "the last key before a comment": [
    "a:\n  x: 1 # x\n  # end\nb: 2",
    { at: ["a", "y"], value: 3 },
    "a:\n  x: 1 # x\n  y: 3\n  # end\nb: 2",
  ],
  "a key in braces": ["a: {x: 1}", { at: ["a", "y"], value: 3 }, "a: {x: 1, y: 3}"],
  "a key in empty braces": ["a: {}\nb: 2", { at: ["a", "y"], value: 3 }, "a: { y: 3 }\nb: 2"],
  "a key in braces over lines": [
    "a: {\n  x: 1, # x\n  y: 2 # y\n}\nb: 2",
    { at: ["a", "z"], value: 3 },
    "a: {\n  x: 1, # x\n  y: 2, # y\n  z: 3\n}\nb: 2",
  ],
  "a key in braces over lines that end with a comma": [
    "a: {\n  x: 1,\n  y: 2, # y\n}",
    { at: ["a", "z"], value: 3 },
    "a: {\n  x: 1,\n  y: 2, # y\n  z: 3,\n}",
  ],
  "an item behind dashes": [
    "a:\n  - 1 # x\n  - 2\nb: 2",
    { at: ["a", 2], value: 3 },
    "a:\n  - 1 # x\n  - 2\n  - 3\nb: 2",
  ],
  "an item between dashes": [
    "a:\n  - 1 # x\n  # two\n  - 2\nb: 2",
    { at: ["a"], value: [1, 5, 2] },
    "a:\n  - 1 # x\n  - 5\n  # two\n  - 2\nb: 2",
  ],
  "an item before all dashes": ["a:\n- 1\n- 2", { at: ["a"], value: [0, 1, 2] }, "a:\n- 0\n- 1\n- 2"],
  "an item that is a map as its neighbours are": [
    "a:\n  - name: one\n    line: 1\nb: 2",
    { at: ["a", 1], value: { name: "two", line: 2 } },
    "a:\n  - name: one\n    line: 1\n  - name: two\n    line: 2\nb: 2",
  ],
  "a key of a map behind a dash": [
    "a:\n  - name: one\n  - x: 1",
    { at: ["a", 0, "line"], value: 2 },
    "a:\n  - name: one\n    line: 2\n  - x: 1",
  ],
  "no key": ["a: 1 # one\n# of b\nb: 2\nc: 3", { at: ["b"], value: undefined }, "a: 1 # one\n# of b\nc: 3"],
  "no key that is a map": [
    "a: 1\nb:\n  x: 1\n  # in b\n  y: 2\n# of c\nc: 3",
    { at: ["b"], value: undefined },
    "a: 1\n# of c\nc: 3",
  ],
  "no last key": ["a: 1\nb: 2", { at: ["b"], value: undefined }, "a: 1"],
  "no key behind a dash": [
    "a:\n  - name: one\n    line: 1",
    { at: ["a", 0, "name"], value: undefined },
    "a:\n  - line: 1",
  ],
  "no key behind a dash before a comment": [
    "a:\n  - name: one\n    # line\n    line: 1",
    { at: ["a", 0, "name"], value: undefined },
    "a:\n  -\n    # line\n    line: 1",
  ],
  "no key in braces": ["a: { x: 1, y: 2, z: 3 }", { at: ["a", "y"], value: undefined }, "a: { x: 1, z: 3 }"],
  "no first key in braces": ["a: { x: 1, y: 2 }", { at: ["a", "x"], value: undefined }, "a: { y: 2 }"],
  "no last key in braces": ["a: { x: 1, y: 2 }", { at: ["a", "y"], value: undefined }, "a: { x: 1 }"],
  "no only key": ["a: { x: 1 }\nb: 2", { at: ["a", "x"], value: undefined }, "a: {}\nb: 2"],
  "no line in braces": [
    "a: {\n  x: 1, # x\n  y: 2, # y\n}",
    { at: ["a", "x"], value: undefined },
    "a: {\n  y: 2, # y\n}",
  ],
  "no item": ["a:\n  - 1\n  # two\n  - 2 # 2\n  - 3", { at: ["a", 1], value: undefined }, "a:\n  - 1\n  # two\n  - 3"],
  "no key that is not there": ["a: 1", { at: ["b", "c"], value: undefined }, "a: 1"],
  "a long list below its key": [
    "a: 1",
    {
      at: ["b"],
      value: {
        shapes: ["#a-rather-long-name-of-a-shape", "#another-rather-long-name-of-a-shape", "#and-one-more-of-them"],
      },
    },
    'a: 1\nb:\n  shapes:\n    - "#a-rather-long-name-of-a-shape"\n    - "#another-rather-long-name-of-a-shape"\n    - "#and-one-more-of-them"',
  ],
  "a list of maps on lines of its own": [
    "a: 1",
    { at: ["b"], value: [{ c: 1 }, { c: 2 }] },
    "a: 1\nb:\n  - { c: 1 }\n  - { c: 2 }",
  ],
  "an alias for itself": ["a: &x 1\nb: *x\nc: *x", { at: ["b"], value: 2 }, "a: &x 1\nb: 2\nc: *x"],
  "what aliases stand for": ["a: &x 1 # x\nb: *x\nc: *x", { at: ["a"], value: 2 }, "a: 2 # x\nb: &x 1\nc: *x"],
  "something in what an alias stands for": [
    "a: &m {x: 1, y: 2}\nb: *m",
    { at: ["a", "x"], value: 3 },
    "a: {x: 3, y: 2}\nb: &m { x: 1, y: 2 }",
  ],
  "something in an alias": [
    "a: &m\n  x: 1\n  y: 2\nb: *m # b",
    { at: ["b", "x"], value: 3 },
    "a: &m\n  x: 1\n  y: 2\nb: { x: 3, y: 2 } # b",
  ],
  "an anchor that goes": ["a: &x 1\nb: *x", { at: ["a"], value: undefined }, "b: &x 1"],
  "an anchor inside of what goes": ["a: { x: &x one, y: 2 }\nb: *x", { at: ["a"], value: 3 }, "a: 3\nb: &x one"],
  "a value with a tag": ["a: !!str 5 # five", { at: ["a"], value: 7 }, "a: 7 # five"],
  "a value behind a question mark": ["? a\n: 1\nb: 2", { at: ["a"], value: 3 }, "? a\n: 3\nb: 2"],
  "a key in quotes": ['"a": 1', { at: ["a"], value: 3 }, '"a": 3'],
  "a key that is a number": ["1: a\n2: b", { at: ["2"], value: "c" }, "1: a\n2: c"],
  "nothing where it is so already": ["a: 0x10\nb: [1,2]", { at: ["b"], value: [1, 2] }, "a: 0x10\nb: [1,2]"],
  "tabs between": ["a:\t1\t# one\nb:\t{x:\t1}", { at: ["b", "x"], value: 3 }, "a:\t1\t# one\nb:\t{x:\t3}"],
};

/** Lengths keep the unit that they were written in. */
const LENGTHS: Readonly<Record<string, readonly [yaml: string, mm: number, wanted: string]>> = {
  "a number": ["a: 8", 9.5, "a: 9.5"],
  "a number with decimals": ["a: 8.0", 9, "a: 9.0"],
  "mm without a space": ["a: 8mm", 9.5, "a: 9.5mm"],
  "mm in quotes": ['a: "8 mm" # a', 9.5, 'a: "9.5 mm" # a'],
  cm: ["a: 1.2 cm", 15, "a: 1.5 cm"],
  "a part of an inch": ['a: "1/4 in"', 9.525, 'a: "3/8 in"'],
  "an inch and a part": ["a: 8 1/4 in", 215.9, "a: 8 1/2 in"],
  "inches with decimals": ["a: 0.5 in", 19.05, "a: 0.75 in"],
  "inches where rulers have no part": ["a: 1/4 in", 10, "a: 0.3937 in"],
  "an inch mark": ["a: '8 1/4\"'", 215.9, "a: '8 1/2 in'"],
  "a word": ["a: auto", 12.5, "a: 12.5"],
  "a word in a kit in inches": ["units: in\na: auto", 12.7, "units: in\na: 1/2 in"],
  "nothing in a kit in inches": ["units: in", 31.75, "units: in\na: 1 1/4 in"],
  "the same length in other words": ["a: 0.50 in", 12.7, "a: 0.50 in"],
};

describe("editText(text, edits)", () => {
  it.each(Object.entries(CASES))("writes %s", (_, [yaml, edit, wanted]) => {
    expect(edited(yaml, edit)).toBe(wanted);
  });

  it.each(Object.entries(CASES))("writes %s between line ends of other systems", (_, [yaml, edit, wanted]) => {
    const crlf = (text: string): string => text.replaceAll("\n", "\r\n");
    expect(editText(crlf(page(yaml)), [edit])).toBe(crlf(page(wanted)));
  });

  it.each(Object.entries(LENGTHS))("writes a length in the place of %s", (_, [yaml, mm, wanted]) => {
    expect(edited(yaml, { at: ["a"], mm })).toBe(wanted);
  });

  it("makes what is missing on the way", () => {
    expect(edited("a: 1", { at: ["b", "c", 0, "d"], value: 2 })).toBe("a: 1\nb: { c: [{ d: 2 }] }");
  });

  it("makes changes one after the other", () => {
    expect(edited("a: [1]", { at: ["a", 1], value: 2 }, { at: ["a", 0], value: undefined })).toBe("a: [2]");
  });

  it.each([
    "no front matter",
    "---\na: [1\n---\n",
    "---\na: 1\na: 2: 3\n---\n",
    "---\na: 1\nb: *nowhere\n---\n",
    "---\na: 1\nb: &b { c: *b }\n---\n",
    "---\na: 1\na: 2\n---\n",
  ])("writes nothing into %j", (text) => {
    expect(editText(text, [{ at: ["a"], value: 1 }])).toBeUndefined();
  });
});
