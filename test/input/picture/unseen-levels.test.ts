import { describe, expect, it } from "vitest";
import { KitError } from "../../../src/input/files/message.ts";
import { readMadeKit } from "../kit/kit-folders.ts";

const MATTER = {
  title: "A test",
  summary: "Levels that hide",
  picture: { file: "picture.svg", levels: { near: ["#near"], middle: ["#middle"] } },
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

const NEAR = '<rect id="near" x="10" y="10" width="40" height="40"/>';

describe("levels that a picture does not show", () => {
  it("are told with the elements that cover them, and the line", () => {
    const covered = `<rect id="middle" x="20" y="20" width="10" height="10"/>\n${NEAR}`;
    expect(notes(covered)).toEqual([
      expect.stringMatching(/picture\.svg:2: nothing of level “middle” shows: it lies behind <rect> #near \(line 3\)/),
    ]);
  });

  it("are told where they lie outside the viewBox", () => {
    const outside = `${NEAR}\n<rect id="middle" x="120" y="20" width="10" height="10"/>`;
    expect(notes(outside)).toEqual([expect.stringMatching(/picture\.svg:3: .*“middle”.* outside the picture’s frame/)]);
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

  it("leave nothing to fold: that is an error at the picture, with the reason", () => {
    const empty =
      '<rect id="near" x="-50" width="40" height="40"/>\n<rect id="middle" x="120" y="20" width="10" height="10"/>';
    let found: KitError | undefined;
    try {
      notes(empty);
    } catch (error) {
      found = error as KitError;
    }
    expect(found).toBeInstanceOf(KitError);
    const [message] = found!.messages;
    expect(message!.field).toBe("picture.levels");
    expect(message!.given).toContain("gives no leaf a cut");
    expect(message!.given).toContain("“near”");
  });
});
