import { describe, expect, it } from "vitest";
import { KitError } from "../../../src/input/files/message.ts";
import { readMadeKit } from "../kit/kit-folders.ts";

const MATTER = {
  title: "A test",
  summary: "Levels that hide",
  picture: { file: "picture.svg", levels: { near: ["#near"], middle: ["#middle"] }, crop: "canvas" },
  levels: [
    { name: "near", depth: 12 },
    { name: "middle", depth: 20 },
    { name: "far", depth: 30, background: true },
  ],
  book: { leafHeight: 200, leafWidth: 130, blockThickness: 20, leaves: 200, lastPage: 398 },
  fit: { height: 100, opening: "solve" },
};

const picture = (shapes: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100">\n${shapes}\n</svg>`;

const notes = (shapes: string, matter: object = MATTER): readonly string[] =>
  readMadeKit(matter, picture(shapes)).pictureNotes;

/** What is told of a kit that cannot be read, as one text for each message. */
function errors(shapes: string, matter: object = MATTER): string[] {
  try {
    notes(shapes, matter);
  } catch (error) {
    if (!(error instanceof KitError)) throw error;
    return error.messages.map(({ field, given, remedy }) => `${field}: ${given}; ${remedy}`);
  }
  return [];
}

const NEAR = '<rect id="near" x="10" y="10" width="40" height="40"/>';

describe("levels that a picture does not show", () => {
  it("are an error with the elements that cover them", () => {
    const covered = `<rect id="middle" x="20" y="20" width="10" height="10"/>\n${NEAR}`;
    expect(errors(covered)).toEqual([
      expect.stringMatching(
        /^picture\.levels\.middle: nothing of level “middle” shows: it lies behind <rect> #near \(line 3\); put its shapes after/,
      ),
    ]);
  });

  it("are an error where they lie outside the canvas", () => {
    const outside = `${NEAR}\n<rect id="middle" x="120" y="20" width="10" height="10"/>`;
    expect(errors(outside)).toEqual([expect.stringMatching(/“middle”.* outside the picture’s frame; .*picture\.crop/)]);
  });

  it("are an error where nothing states their shapes", () => {
    expect(
      errors(NEAR, { ...MATTER, picture: { file: "picture.svg", levels: { near: "#near" }, crop: "canvas" } }),
    ).toEqual([expect.stringMatching(/^levels\[2\]: level "middle" has no painted shape; list its shapes/)]);
  });

  it("are told where they reach out of it, and not for a hair’s breadth", () => {
    const half = `${NEAR}\n<rect id="middle" x="80" y="20" width="40" height="10"/>`;
    expect(notes(half)).toEqual([
      expect.stringMatching(/“middle” reaches out of the picture’s frame with <rect> #middle \(line 3\)/),
    ]);
    expect(notes(`${NEAR}\n<rect id="middle" x="80" y="20" width="20.9" height="10"/>`)).toEqual([]);
  });

  it("are told where no leaf shows them, though the picture does", () => {
    const thin = `${NEAR}\n<rect id="middle" x="60" y="60" width="30" height="1"/>`;
    // Walking round, no leaf shows a level beside its shapes.
    const walking = { ...MATTER, fit: { ...MATTER.fit, view: "along" } };
    expect(notes(thin, walking)).toEqual([expect.stringContaining("“middle” comes out on no leaf of this book")]);
  });

  it("may be the background", () => {
    const all = '<rect id="middle" width="100" height="100"/>\n<rect id="near" x="10" y="10" width="40" height="40"/>';
    expect(notes(all)).toEqual([]);
  });

  it("are all told at once", () => {
    const empty =
      '<rect id="near" x="-50" width="40" height="40"/>\n<rect id="middle" x="120" y="20" width="10" height="10"/>';
    expect(errors(empty)).toHaveLength(2);
  });
});

describe("shapes that nobody will see", () => {
  const face = '<g id="near"><circle cx="40" cy="40" r="30" fill="#fc9"/>';
  const middle = '<rect id="middle" y="90" width="100" height="10"/>';

  it("are told where they lie on their own level in another colour", () => {
    const eyes =
      '\n<circle id="eye" cx="30" cy="35" r="4" fill="#000"/>\n<circle cx="50" cy="35" r="4" fill="#000"/></g>';
    expect(notes(`${face}${eyes}${middle}`)).toEqual([
      expect.stringMatching(
        /picture\.svg:3: on level “near” nobody will see <circle> #eye \(line 3\) and <circle> #near \(line 4\)/,
      ),
    ]);
  });

  it("are not those of the same colour, nor those that reach over an edge, nor those of another level", () => {
    expect(notes(`${face}<circle cx="30" cy="35" r="4" fill="#fc9"/></g>${middle}`)).toEqual([]);
    expect(notes(`${face}<circle cx="12" cy="35" r="6" fill="#000"/></g>${middle}`)).toEqual([]);
    expect(notes(`${face}</g><g id="middle"><circle cx="30" cy="35" r="4"/></g>`)).toEqual([]);
  });
});

describe("the drawing as the picture", () => {
  it("is taken where it fills little of its canvas, with a note", () => {
    const small =
      '<rect id="near" x="70" y="70" width="10" height="20"/><rect id="middle" x="80" y="70" width="10" height="20"/>';
    const matter = { ...MATTER, picture: { ...MATTER.picture, crop: undefined } };
    const { kit, pictureNotes } = readMadeKit(JSON.parse(JSON.stringify(matter)), picture(small));
    expect([kit.picture.width, kit.picture.height]).toEqual([20, 20]);
    expect(pictureNotes).toEqual([
      expect.stringMatching(/picture\.svg:1: the drawing \(x 70, y 70, 20 × 20\) fills 4%/),
    ]);
  });
});
