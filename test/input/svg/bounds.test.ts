import { describe, expect, it } from "vitest";
import { PictureError, readSvg } from "../../../src/input/svg/read-svg.ts";

const OPEN = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100">';
const many = (count: number, make: (i: number) => string): string =>
  Array.from({ length: count }, (_, i) => make(i)).join("\n");

function faultOf(body: string): string {
  try {
    readSvg(`${OPEN}\n${body}</svg>`);
  } catch (error) {
    if (error instanceof PictureError) return `${error.line} ${error.message}`;
    throw error;
  }
  throw new Error("nothing was wrong");
}

describe("readSvg(text): bounds", () => {
  it("reads an export of 20,000 elements, each with its style", () => {
    const shapes = many(
      20_000,
      (i) => `<path style="fill:#12${i % 9}" d="M${i % 100} ${Math.floor(i / 200)}h.5v.5z"/>`,
    );
    expect(readSvg(`${OPEN}<g id="all">${shapes}</g></svg>`).shapes).toHaveLength(20_000);
  });

  it("shows nested symbols as a plain drawing would, however deep", () => {
    const symbols = many(12, (i) => `<symbol id="s${i + 1}"><use href="#s${i}"/></symbol>`);
    const { shapes } = readSvg(
      `${OPEN}<defs><rect id="s0" width="9" height="9"/>${symbols}</defs><use href="#s12"/></svg>`,
    );
    expect(shapes.map(({ rings }) => rings)).toEqual([
      [
        [
          [0, 0],
          [9, 0],
          [9, 9],
          [0, 9],
        ],
      ],
    ]);
  });

  it("finds the rules of an element among thousands, in their order", () => {
    const rules = many(3000, (i) => `.c${i}{fill:none}`);
    const body = `<style>${rules} .seen{fill:red} rect.seen{fill:blue} #x{fill:none}</style>`;
    const shapes =
      '<rect class="c7 seen" width="1" height="1"/><rect class="c7" width="1" height="1"/><rect id="x" class="seen" width="1" height="1"/>';
    expect(readSvg(`${OPEN}${body}${shapes}</svg>`).shapes).toHaveLength(1);
  });

  it("tells where there is too much", () => {
    expect(faultOf("<g>".repeat(200) + "</g>".repeat(200))).toBe("2 more than 200 levels of groups: flatten groups");
    expect(faultOf(many(100_000, () => "<g/>"))).toMatch(/^100001 the picture has more than 100,000 elements/);
    expect(faultOf(many(6000, () => '<rect width="100" height="100"/>'))).toMatch(
      /^5002 the outlines together are more than 20,000 times/,
    );
  });

  it("tells the first twenty notes, and how many more there are", () => {
    const { notes } = readSvg(`${OPEN}${many(25, (i) => `<rect width="1" height="1" opacity=".${i + 10}"/>`)}</svg>`);
    expect(notes).toHaveLength(21);
    expect(notes.at(-1)).toEqual({ line: 21, message: "and 5 notes more" });
  });
});
